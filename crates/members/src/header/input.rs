//! What a header check is asked.

use loads::header::{HeaderSupport, Tributary};
use loads::site::SiteLoads;
use lumber::{Conditions, Grade, Member, SawnSize, Species};
use measure::{AreaLoad, Length, Ratio};
use standards::asce7_16::chapter_30::WallZone;

pub use crate::check::DeflectionLimits;

/// What stands on the header: it decides whether its top edge can roll sideways.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Above {
    /// Joists or rafters bear on it, directly or through the plates, and hold its top edge.
    FramingBears,
    /// Cripple studs stand on it; nothing holds its top edge between its ends.
    CrippleStuds,
}

/// What closes the opening: it decides where the wind on it goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Closure {
    /// A window or door in a frame that is fixed all round: half of its wind goes up to the header.
    FramedUnit,
    /// An overhead door, whose tracks take its wind to the jambs.
    OverheadDoor,
}

/// The wall around the opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wall {
    /// From under the bottom plate to the top of the double top plate.
    pub height: Length,
    /// From under the bottom plate to the underside of the header.
    pub head_height: Length,
    /// The studs.
    pub stud: SawnSize,
    /// Stud spacing, centre to centre.
    pub spacing: Length,
}

/// How hard the wind presses on the wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wind {
    /// Worked out from the place, for a wall zone.
    Site(WallZone),
    /// Given on the drawing, at allowable-stress level.
    Given(AreaLoad),
    /// An inner wall: none.
    None,
}

/// The inputs of a header check, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct HeaderInput {
    /// Width of the rough opening.
    pub opening: Length,
    /// What it carries.
    pub support: HeaderSupport,
    /// The strips it carries.
    pub tributary: Tributary,
    /// Width of the building at right angles to the ridge, for the code's table.
    pub building_width: Length,
    /// What stands on it; none when it was not said: then the worse is taken.
    pub above: Option<Above>,
    /// What closes the opening.
    pub closure: Closure,
    /// The wall.
    pub wall: Wall,
    /// Species of header, jacks and kings.
    pub species: Species,
    /// Grade of header, jacks and kings.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// Three or more plies are nailed so that they share the load.
    pub plies_share_load: bool,
    /// Loads of the place and the house.
    pub site: SiteLoads,
    /// Wind.
    pub wind: Wind,
    /// Deflection limits.
    pub limits: DeflectionLimits,
    /// A member typed in from its label, tried beside the rest.
    pub labelled: Option<Member>,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Member>,
    /// Edition of the code's header table.
    pub edition: CodeEdition,
    /// What was found between header and jack, where it was measured.
    pub gap: Option<Gap>,
}

/// Edition of the residential code whose header table stands beside the answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CodeEdition {
    /// IRC 2021.
    Irc2021,
    /// IRC 2018: the same header table.
    Irc2018,
    /// IRC 2012 and before: widths of 20, 28 and 36 ft.
    Irc2012,
}

impl CodeEdition {
    /// Its name: `IRC 2021`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Irc2021 => "IRC 2021",
            Self::Irc2018 => "IRC 2018",
            Self::Irc2012 => "IRC 2012",
        }
    }
}

/// A gap found between header and jack.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// The gap.
    pub opening: Length,
    /// Moisture content when the header was set, per cent.
    pub moisture_when_set: Ratio,
    /// Moisture content it dries to, per cent.
    pub moisture_in_service: Ratio,
}
