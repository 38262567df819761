//! A house as its wall lines see it.

use measure::{AreaLoad, Force, Length};
use standards::irc_2021::r301_2::SeismicDesignCategory;

/// A direction in plan: of a wall line, and of the wind that it resists.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// Along the length of the house.
    Lengthwise,
    /// Along its width.
    Crosswise,
}

impl Direction {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Lengthwise, Self::Crosswise];

    /// The other one.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Lengthwise => Self::Crosswise,
            Self::Crosswise => Self::Lengthwise,
        }
    }
}

/// A line of walls through a storey.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallLine {
    /// Which way it runs.
    pub runs: Direction,
    /// How far it stands from the front, where it runs lengthwise; from the left side, where it runs crosswise.
    pub at: Length,
}

/// Wind that comes in at the top of a storey, allowable stress design.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StoreyWind {
    /// The whole of it, even along the face that it blows on.
    Force(Force),
    /// As a pressure: on both faces of the house together, over so much height of it as this level catches. That is half of
    /// the walls below and above it, and of the roof what stands up.
    Pressure {
        /// On the windward and the leeward face together.
        pressure: AreaLoad,
        /// Height that is caught.
        height: Length,
    },
}

impl StoreyWind {
    /// On a face so broad.
    #[must_use]
    pub fn force(self, breadth: Length) -> Force {
        match self {
            Self::Force(force) => force,
            Self::Pressure { pressure, height } => pressure * height * breadth,
        }
    }
}

/// Wind in both directions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Winds {
    /// Along the length, on the ends of the house.
    pub lengthwise: StoreyWind,
    /// Along the width, on its front and back.
    pub crosswise: StoreyWind,
}

/// One storey with the floor or roof on it.
#[derive(Clone, Debug, PartialEq)]
pub struct BracedStorey {
    /// From its floor to the floor or roof above.
    pub height: Length,
    /// Wind that comes in at its top.
    pub winds: Winds,
    /// Its wall lines, in any order.
    pub lines: Vec<WallLine>,
}

/// A rectangular house.
#[derive(Clone, Debug, PartialEq)]
pub struct House {
    /// Its length.
    pub length: Length,
    /// Its width.
    pub width: Length,
    /// Its storeys, from the top down.
    pub storeys: Vec<BracedStorey>,
    /// Seismic design category.
    pub seismic: SeismicDesignCategory,
    /// Whether all storeys are this same rectangle, without a step in a floor, a large opening or a wing.
    pub regular: bool,
}

impl House {
    /// Breadth of the face that wind in a direction blows on: across the lines that resist it.
    #[must_use]
    pub const fn breadth(&self, wind: Direction) -> Length {
        match wind {
            Direction::Lengthwise => self.width,
            Direction::Crosswise => self.length,
        }
    }

    /// Depth of the floors along a wind: as long as the lines that resist it.
    #[must_use]
    pub const fn depth(&self, wind: Direction) -> Length {
        self.breadth(wind.other())
    }
}

impl BracedStorey {
    /// What comes in at its top from the wind in a direction.
    #[must_use]
    pub fn own_force(&self, house: &House, wind: Direction) -> Force {
        let of = match wind {
            Direction::Lengthwise => self.winds.lengthwise,
            Direction::Crosswise => self.winds.crosswise,
        };
        of.force(house.breadth(wind))
    }

    /// Where its lines in a direction stand, in order.
    #[must_use]
    pub fn places(&self, runs: Direction) -> Vec<Length> {
        let mut places: Vec<Length> = self.lines.iter().filter(|line| line.runs == runs).map(|line| line.at).collect();
        places.sort_by(|a, b| a.inches().total_cmp(&b.inches()));
        places.dedup();
        places
    }
}
