//! What can be done, in sentences.

use inspection::Remedy;

use super::length;

/// A remedy.
#[must_use]
pub fn remedy(remedy: &Remedy) -> String {
    match remedy {
        Remedy::AddStudAt(at) => format!("Add a stud, or a 2x4 on the flat, centred at {}.", length(*at)),
        Remedy::JudgeByNextSpacing(row) => {
            format!("Have the wall judged by the stud table's {} row, as it was built.", length(*row))
        }
        Remedy::AddPlies(1) => "Add a stud to the pack and nail it off.".to_owned(),
        Remedy::AddPlies(more) => format!("Add {more} studs to the pack and nail them off."),
        Remedy::TieAcrossPlate { tie, length: least } => format!(
            "Put a galvanized tie across the cut: at least {} thick, {} wide and {} long, {} past the opening on each \
             side, with {} nails of {} x {} on each side.",
            length(tie.thickness),
            length(tie.width),
            length(*least),
            length(tie.past_opening),
            tie.nails_each_side,
            length(tie.nail_diameter),
            length(tie.nail_length),
        ),
        Remedy::ReplaceMissedNails(missed) => format!(
            "Drive {missed} good nails, one for each that missed, 3/8\" from the panel's edge and not in the old holes. \
             Pull those that missed where they let water in."
        ),
        Remedy::AddNails(1) => "Add 1 nail, between those that are there.".to_owned(),
        Remedy::AddNails(more) => format!("Add {more} nails, between those that are there."),
        Remedy::FillConnector(1) => "Drive 1 nail more in its empty holes, of those that its maker lists.".to_owned(),
        Remedy::FillConnector(more) => {
            format!("Drive {more} nails more in its empty holes, of those that its maker lists.")
        }
        Remedy::AddBoltAt(at) => format!("Add an anchor at {} from the end of the plate piece.", length(*at)),
        other => remedy_of_the_frame(other).to_owned(),
    }
}

const fn remedy_of_the_frame(remedy: &Remedy) -> &'static str {
    match remedy {
        Remedy::WorkOutAsBuilt => "Have the wall worked out with the spacing that was built.",
        Remedy::StraightenOrChange => "Straighten the stud or change it.",
        Remedy::PlumbAndBrace => "Plumb the wall and brace it again.",
        Remedy::PlaneOrPack => "Plane down or pack out to the neighbours' plane.",
        Remedy::DoubleStud => "Double the stud: then a wider hole is allowed.",
        Remedy::FullHeightStudBeside => {
            "Treat the stud as cut through: a full-height stud beside it, nailed to it all the way up."
        }
        Remedy::ListedRepairPart => "A repair part that is listed for this stud and this very pipe.",
        Remedy::SisterFullLength => "A new joist beside it, over its whole length and on both bearings.",
        Remedy::HeaderOff => "Head the cut joist off to its neighbours.",
        other => remedy_of_fasteners(other),
    }
}

const fn remedy_of_fasteners(remedy: &Remedy) -> &'static str {
    match remedy {
        Remedy::StaplesInstead => "Approved staples, where nails find no room.",
        Remedy::SetGunDepth => "Set the gun's depth before the next sheet.",
        Remedy::NailAsRequired => "Nail it again as it is asked for.",
        Remedy::ApproveNailsUsed => "Have the nails that were used approved, at a spacing that makes up for them.",
        Remedy::CouplerAndRod => {
            "Lengthen the bolt with a coupler and a rod of its diameter and grade, both ends fully in and in sight."
        }
        Remedy::DrilledAnchor => "Set a new anchor in a drilled hole; someone watches the hole being cleaned.",
        Remedy::ApproveAsIs => "Have the bolt approved as it is.",
        Remedy::FitWasherAndNut => "Fit washer and nut, and tighten.",
        Remedy::TightenNut => "Tighten the nut.",
        Remedy::FitPlateWasher => "Fit a plate washer of the size that is asked for.",
        Remedy::SlottedPlateWasher => "A plate washer with a slot, and a cut washer on it.",
        Remedy::MoveStud => "Move the stud that is in the way. Do not notch it.",
        Remedy::AnchorBeside => "An approved anchor beside the bolt.",
        Remedy::FillHoldDown => "Fill the hold-down's holes with what its maker lists.",
        Remedy::AddTie => "Add a tie that is listed for this uplift.",
        Remedy::TieOnSheathedSide => "Nail a tie to the sheathed side.",
        Remedy::CarryUpliftDown => "Carry the uplift on down to the foundation.",
        Remedy::DryAndReadAgain => "Let it dry, and read the same places again before it is covered.",
        Remedy::EngineerDetail => "Ask for a detail drawn by the engineer.",
        Remedy::AskMaker => "Ask the maker of the part or the designer of the member.",
        _ => "Ask the engineer what to do.",
    }
}
