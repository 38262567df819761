//! What can be done about a miss, and who must say yes.

use measure::Length;
use standards::irc_2021::r602_6_1::PlateTie;

/// Who must say yes to a remedy before it is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Who {
    /// The crew, by itself: it builds what was asked for.
    Crew,
    /// The code official.
    CodeOfficial,
    /// The licensed engineer.
    Engineer,
    /// The maker of the member or the hardware, or its designer.
    Maker,
}

/// A way out of a miss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remedy {
    /// Add a stud, or a flat one behind the sheet, centred here from the plate's end.
    AddStudAt(Length),
    /// Have the wall judged by the code table's next spacing.
    JudgeByNextSpacing(Length),
    /// Have the wall worked out with the spacing that was built.
    WorkOutAsBuilt,
    /// Add studs to the post or the double until it has so many more.
    AddPlies(u8),
    /// Straighten the stud or change it.
    StraightenOrChange,
    /// Plumb the wall and brace it again.
    PlumbAndBrace,
    /// Plane down or pack out to the neighbours' plane.
    PlaneOrPack,
    /// Double the stud: then a wider hole is allowed.
    DoubleStud,
    /// Treat the stud as cut through: a full-height stud beside it.
    FullHeightStudBeside,
    /// A repair part listed for this stud and this very pipe.
    ListedRepairPart,
    /// A new joist beside it, over its whole length and on both bearings.
    SisterFullLength,
    /// Head the cut joist off to its neighbours.
    HeaderOff,
    /// A metal tie across the opening in the plate, of this length at least.
    TieAcrossPlate {
        /// What the tie must be.
        tie: PlateTie,
        /// Its least length.
        length: Length,
    },
    /// Drive so many nails in place of those that missed, not in the old holes.
    ReplaceMissedNails(u32),
    /// Drive so many nails more.
    AddNails(u32),
    /// Approved staples where nails find no room.
    StaplesInstead,
    /// Set the gun's depth before the next sheet.
    SetGunDepth,
    /// Nail again with the nails that are asked for.
    NailAsRequired,
    /// Have the nails that were used approved, at a spacing that makes up for them.
    ApproveNailsUsed,
    /// Lengthen the bolt with a threaded coupler and a rod of its diameter and grade, both ends fully in and in sight.
    CouplerAndRod,
    /// An anchor set in a drilled hole; the cleaning of the hole is watched.
    DrilledAnchor,
    /// Have the shallow bolt approved as it is.
    ApproveAsIs,
    /// Fit the washer and the nut, and tighten.
    FitWasherAndNut,
    /// Tighten the nut.
    TightenNut,
    /// Fit a plate washer of the size that is asked for.
    FitPlateWasher,
    /// A plate washer with a slot, with a cut washer on it.
    SlottedPlateWasher,
    /// Move the stud that is in the way; do not notch it.
    MoveStud,
    /// A further anchor beside the bolt.
    AnchorBeside,
    /// Add a bolt here, from the end of the plate piece.
    AddBoltAt(Length),
    /// Fill the hold-down's holes with what its maker lists.
    FillHoldDown,
    /// Drive so many nails more in the empty holes of a tie or a strap.
    FillConnector(u32),
    /// A tie that holds the uplift, where toe nails or the tie that is there do not.
    AddTie,
    /// Nail the tie to the sheathed side.
    TieOnSheathedSide,
    /// Carry the uplift on down: connectors to the foundation, or sheathing designed for it.
    CarryUpliftDown,
    /// Let it dry and read again before it is covered.
    DryAndReadAgain,
    /// A detail drawn by the engineer.
    EngineerDetail,
    /// Ask the maker of the member, or its designer.
    AskMaker,
}

impl Remedy {
    /// Everyone who must say yes to it.
    #[must_use]
    pub const fn who(&self) -> &'static [Who] {
        match self {
            Self::JudgeByNextSpacing(_)
            | Self::SisterFullLength
            | Self::HeaderOff
            | Self::CouplerAndRod
            | Self::AnchorBeside
            | Self::AddBoltAt(_) => &[Who::CodeOfficial],
            Self::WorkOutAsBuilt
            | Self::StaplesInstead
            | Self::ApproveNailsUsed
            | Self::CarryUpliftDown
            | Self::EngineerDetail => &[Who::Engineer],
            Self::DrilledAnchor | Self::ApproveAsIs => &[Who::Engineer, Who::CodeOfficial],
            Self::ListedRepairPart | Self::AskMaker => &[Who::Maker],
            Self::AddStudAt(_)
            | Self::AddPlies(_)
            | Self::StraightenOrChange
            | Self::PlumbAndBrace
            | Self::PlaneOrPack
            | Self::DoubleStud
            | Self::FullHeightStudBeside
            | Self::TieAcrossPlate { .. }
            | Self::ReplaceMissedNails(_)
            | Self::AddNails(_)
            | Self::SetGunDepth
            | Self::NailAsRequired
            | Self::FitWasherAndNut
            | Self::TightenNut
            | Self::FitPlateWasher
            | Self::SlottedPlateWasher
            | Self::MoveStud
            | Self::FillHoldDown
            | Self::FillConnector(_)
            | Self::AddTie
            | Self::TieOnSheathedSide
            | Self::DryAndReadAgain => &[Who::Crew],
        }
    }
}
