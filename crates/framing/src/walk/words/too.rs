//! What a framer says of a thing that is out of its limit.

use inspection::Subject;

/// What is said of it when it is out: `too far apart`.
#[must_use]
pub const fn too(subject: Subject) -> &'static str {
    match subject {
        Subject::StudSpacing | Subject::BoltSpacing | Subject::WidestNailGap => "too far apart",
        Subject::SheetEdgeBearing => "the sheet's edge misses its stud",
        Subject::Plies | Subject::HoldDownStuds => "too few studs",
        Subject::Bow => "bowed too far",
        Subject::Plumb => "out of plumb",
        Subject::Flatness => "out of flat",
        Subject::FaceToFace => "not in one plane",
        Subject::NotchDepth => "too deep",
        Subject::NotchLength => "too long",
        Subject::NotchPlace => "not allowed there",
        Subject::HoleDiameter => "too wide",
        Subject::HoleToEdge | Subject::NailToPanelEdge => "too near the edge",
        Subject::HoleToNext | Subject::HoleBesideNotch => "too near the next cut",
        Subject::DoubledInARow => "too many in a row",
        Subject::PlateCut => "cut too far",
        Subject::Moisture => "too wet",
        other => too_of_fasteners(other),
    }
}

const fn too_of_fasteners(subject: Subject) -> &'static str {
    match subject {
        Subject::NailDiameter | Subject::TieThickness | Subject::WasherThickness => "too thin",
        Subject::NailLength => "too short",
        Subject::EdgeNails | Subject::FieldNails => "too few hold",
        Subject::BoltDiameter | Subject::WasherSide => "too small",
        Subject::Embedment => "not deep enough",
        Subject::ThreadForNut => "too short for its nut",
        Subject::Nut => "not tight",
        Subject::Washer => "no washer that does",
        Subject::BoltAcrossPlate => "too near the face",
        Subject::BoltNotTooNearEnd => "too near the end",
        Subject::BoltNearEnd => "too far from the end",
        Subject::BoltsInPiece => "too few bolts hold",
        Subject::HoldDownThread => "not engaged",
        Subject::HoldDownOffset => "off the post",
        Subject::HoldDownFasteners | Subject::TieNails => "too few fasteners",
        Subject::ConnectionNails | Subject::StrapNails => "too few nails",
        Subject::StrapFlat => "not flat and straight",
        Subject::TieSide => "inside the wall",
        Subject::Uplift => "too weak",
        Subject::TieWidth => "too narrow",
        Subject::TiePastOpening => "too short",
        _ => "out",
    }
}
