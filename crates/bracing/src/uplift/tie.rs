//! What may be there at a link, and what one connection of it holds.

use core::f64::consts::PI;

use measure::{Area, Force, Length, Stress};
use standards::OutsideTable;
use standards::irc_2021::r602_11;
use standards::sdpws_2015::uplift::{BOLT_SPACING, UpliftNailing};

/// A side of the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The sheathed one.
    Sheathed,
    /// The inner one.
    Inside,
}

/// What is there.
#[derive(Clone, Debug, PartialEq)]
pub enum Tie {
    /// Not known yet.
    Unknown,
    /// Nothing that may count.
    Nothing,
    /// Toe nails or end nails of one connection.
    Nails {
        /// How many.
        count: u8,
        /// What one holds against uplift, allowable stress design, duration of wind counted.
        each: Force,
    },
    /// Strap, clip or tie. One that goes past a link, such as from rafter to stud, stands at both links.
    Metal {
        /// What its label or the maker's listing allows of one connection, in this wood and for wind.
        allowable: Force,
        /// The side that it is nailed to; none while it is not known.
        side: Option<Side>,
    },
    /// Wall panels that lap both plates, nailed for uplift beyond their shear.
    Panels(UpliftNailing),
    /// Wall panels with the nailing of the code's schedule alone.
    ScheduleNailing,
    /// Anchor bolts.
    Bolts(SillBolts),
    /// Concrete, and earth that surely lies on it: 0.6 of its weight counts. Only a footing is held so.
    Weight(Force),
    /// Something that may not count, and why.
    Refused(OutsideTable),
}

/// What is there, and how far apart along the wall.
#[derive(Clone, Debug, PartialEq)]
pub struct Connections {
    /// What is there.
    pub tie: Tie,
    /// On center. Of panels it does not count.
    pub spacing: Length,
}

/// A washer under the nut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Washer {
    /// Plate washer.
    Square {
        /// Its side.
        side: Length,
        /// Its thickness.
        thickness: Length,
    },
    /// Cut washer.
    Round {
        /// Its outer diameter.
        diameter: Length,
    },
}

/// An anchor bolt that holds a sill down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SillBolts {
    /// The washer.
    pub washer: Washer,
    /// Diameter of the hole in the sill.
    pub hole: Length,
    /// Strength of the sill across its grain, all factors counted. It gains nothing from the duration of wind.
    pub fc_perp: Stress,
    /// What the bolt holds in its concrete, allowable stress design, as a drawing or an engineer gives it; none where nobody
    /// gave it.
    pub anchorage: Option<Force>,
}

impl SillBolts {
    /// What the washer presses into the sill before the wood gives; with the anchorage, where that is known, the lesser.
    ///
    /// The help of wood beside the washer (NDS 3.10.4) is not counted. That the washer is stiff enough to press evenly is
    /// taken of a plate washer as of a cut one.
    #[must_use]
    pub fn holds(&self) -> Force {
        let round = |diameter: Length| diameter * diameter * (PI / 4.0);
        let washer = match self.washer {
            Washer::Square { side, .. } => side * side,
            Washer::Round { diameter } => round(diameter),
        };
        let bearing = self.fc_perp * (washer - round(self.hole)).max(Area::ZERO);
        self.anchorage.map_or(bearing, |anchorage| bearing.min(anchorage)).max(Force::ZERO)
    }

    /// Whether the washer is one of those that walls of panels in uplift need.
    fn has_plate_washer(&self) -> bool {
        match self.washer {
            Washer::Square { side, thickness } => side >= r602_11::SIDE && thickness >= r602_11::THICKNESS,
            Washer::Round { .. } => false,
        }
    }
}

impl Connections {
    /// Whether they hold a sill as panels that carry uplift need it: none while they are not known.
    pub(super) fn hold_for_panels(&self) -> Option<bool> {
        match &self.tie {
            Tie::Unknown => None,
            Tie::Bolts(bolts) => Some(self.spacing <= BOLT_SPACING && bolts.has_plate_washer()),
            _ => Some(false),
        }
    }
}

impl Tie {
    /// The side that it is on, where it is on one.
    pub(super) const fn side(&self) -> Option<Side> {
        match self {
            Self::Metal { side, .. } => *side,
            Self::Panels(_) | Self::ScheduleNailing => Some(Side::Sheathed),
            _ => None,
        }
    }

    /// Whether it holds foot by foot.
    pub(super) const fn is_along_the_wall(&self) -> bool {
        matches!(self, Self::Panels(_) | Self::ScheduleNailing)
    }
}
