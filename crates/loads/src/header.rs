//! What comes down on a header: the strips of roof and floor that it carries, and the load along it.
//!
//! The header's own weight is not here; it goes with its size.

use measure::{AreaLoad, Length, LineLoad};
use standards::asce7_16::chapter_2::LoadCase;
use standards::irc_2021::r602_7::{InteriorSupporting, Supporting};

use crate::{
    site::{SiteLoads, WallAbove},
    snow::RoofSnow,
};

/// What a header carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeaderSupport {
    /// Outer wall: roof and ceiling.
    RoofCeiling,
    /// Outer wall: roof, ceiling and one floor that rests on a wall at mid-width.
    OneFloorCenterBearing,
    /// Outer wall: roof, ceiling and one floor that spans the whole width.
    OneFloorClearSpan,
    /// Outer wall: roof, ceiling and two floors that rest on walls at mid-width.
    TwoFloorsCenterBearing,
    /// Outer wall: roof, ceiling and two floors that span the whole width.
    TwoFloorsClearSpan,
    /// Outer wall: one floor that spans the whole width, and the wall on it; the roof bears elsewhere.
    FloorOnly,
    /// Inner bearing wall at mid-width: one floor.
    InteriorOneFloor,
    /// Inner bearing wall at mid-width: two floors, and the wall between them.
    InteriorTwoFloors,
    /// Gable end: neither rafters nor joists bear on it, only the wall above.
    GableEnd,
}

impl HeaderSupport {
    /// Every one.
    pub const ALL: [Self; 9] = [
        Self::RoofCeiling,
        Self::OneFloorCenterBearing,
        Self::OneFloorClearSpan,
        Self::TwoFloorsCenterBearing,
        Self::TwoFloorsClearSpan,
        Self::FloorOnly,
        Self::InteriorOneFloor,
        Self::InteriorTwoFloors,
        Self::GableEnd,
    ];

    /// Its stable name in a check's input: `roof_ceiling`.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::RoofCeiling => "roof_ceiling",
            Self::OneFloorCenterBearing => "one_floor_center_bearing",
            Self::OneFloorClearSpan => "one_floor_clear_span",
            Self::TwoFloorsCenterBearing => "two_floors_center_bearing",
            Self::TwoFloorsClearSpan => "two_floors_clear_span",
            Self::FloorOnly => "floor_only",
            Self::InteriorOneFloor => "interior_one_floor",
            Self::InteriorTwoFloors => "interior_two_floors",
            Self::GableEnd => "gable_end",
        }
    }

    /// The one with this stable name.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|support| support.id() == id)
    }

    /// Its heading in the code's table for outer walls; none where that table has none.
    #[must_use]
    pub const fn exterior_heading(self) -> Option<Supporting> {
        match self {
            Self::RoofCeiling => Some(Supporting::RoofCeiling),
            Self::OneFloorCenterBearing => Some(Supporting::OneFloorCenterBearing),
            Self::OneFloorClearSpan => Some(Supporting::OneFloorClearSpan),
            Self::TwoFloorsCenterBearing => Some(Supporting::TwoFloorsCenterBearing),
            Self::TwoFloorsClearSpan => Some(Supporting::TwoFloorsClearSpan),
            Self::FloorOnly | Self::InteriorOneFloor | Self::InteriorTwoFloors | Self::GableEnd => None,
        }
    }

    /// Its heading in the code's table for inner walls; none where that table has none.
    #[must_use]
    pub const fn interior_heading(self) -> Option<InteriorSupporting> {
        match self {
            Self::InteriorOneFloor => Some(InteriorSupporting::OneFloor),
            Self::InteriorTwoFloors => Some(InteriorSupporting::TwoFloors),
            _ => None,
        }
    }

    const fn carries_roof(self) -> bool {
        self.exterior_heading().is_some()
    }

    /// Share of the building's width whose floor comes down here, and how many floors do.
    const fn floors(self) -> (f64, u8) {
        match self {
            Self::RoofCeiling | Self::GableEnd => (0.0, 0),
            Self::OneFloorCenterBearing => (0.25, 1),
            Self::TwoFloorsCenterBearing => (0.25, 2),
            Self::OneFloorClearSpan | Self::FloorOnly | Self::InteriorOneFloor => (0.5, 1),
            Self::TwoFloorsClearSpan | Self::InteriorTwoFloors => (0.5, 2),
        }
    }

    /// Storeys of wall that stand over the header.
    const fn walls_above(self) -> u8 {
        match self {
            Self::RoofCeiling | Self::InteriorOneFloor => 0,
            Self::OneFloorCenterBearing
            | Self::OneFloorClearSpan
            | Self::FloorOnly
            | Self::InteriorTwoFloors
            | Self::GableEnd => 1,
            Self::TwoFloorsCenterBearing | Self::TwoFloorsClearSpan => 2,
        }
    }
}

/// The strips of a building that a header carries, all measured level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tributary {
    /// Strip of roof, the overhang included.
    pub roof: Length,
    /// Strip of ceiling and attic.
    pub ceiling: Length,
    /// Strip of each floor.
    pub floor: Length,
    /// How many floors.
    pub floors: u8,
    /// How many storeys of wall stand over it.
    pub walls_above: u8,
}

impl Tributary {
    /// The strips that follow from the building's width, at right angles to the ridge, and the roof's overhang.
    ///
    /// Roof: half the width and the overhang. Ceiling: half the width. Floor: half the width when it spans clear, a
    /// quarter when it rests on a wall at mid-width; on that wall, a quarter from each side.
    #[must_use]
    pub fn of_building(support: HeaderSupport, width: Length, overhang: Length) -> Self {
        let half = width / 2.0;
        let (roof, ceiling) = if support.carries_roof() { (half + overhang, half) } else { Default::default() };
        let (share, floors) = support.floors();
        Self { roof, ceiling, floor: width * share, floors, walls_above: support.walls_above() }
    }

    /// With a strip of roof that was given. The ceiling under it is as wide without the overhang.
    #[must_use]
    pub fn with_roof(self, roof: Length, overhang: Length) -> Self {
        Self { roof, ceiling: (roof - overhang).max(Length::ZERO), ..self }
    }

    /// With a strip of each floor that was given. Where the support carries none, it is one floor.
    #[must_use]
    pub fn with_floor(self, floor: Length) -> Self {
        Self { floor, floors: self.floors.max(1), ..self }
    }
}

/// The load along a header, by kind. All press down.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CaseLoads {
    /// Dead.
    pub dead: LineLoad,
    /// Live, of floors and of an attic with storage.
    pub live: LineLoad,
    /// Roof live.
    pub roof_live: LineLoad,
    /// Snow.
    pub snow: LineLoad,
    /// Live load of an attic without storage, which acts with dead load only.
    pub attic_alone: LineLoad,
}

impl CaseLoads {
    /// The load of a kind. Wind presses on the side, so there is none of it here; an attic's load that acts alone is
    /// not in the live load.
    #[must_use]
    pub const fn of(&self, case: LoadCase) -> LineLoad {
        match case {
            LoadCase::Dead => self.dead,
            LoadCase::Live => self.live,
            LoadCase::RoofLive => self.roof_live,
            LoadCase::Snow => self.snow,
            LoadCase::Wind => LineLoad::ZERO,
        }
    }
}

/// What a part of the load is the load of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadOf {
    /// Weight of the roof.
    RoofDead,
    /// Weight of the ceiling.
    CeilingDead,
    /// Weight of the floor or floors.
    FloorDead,
    /// Weight of the wall above.
    Wall,
    /// Use of the floor or floors.
    FloorLive,
    /// Use of the attic.
    AtticLive,
    /// People and tools on the roof.
    RoofLive,
    /// Snow on the roof.
    RoofSnow,
}

impl LoadOf {
    /// In words: `roof dead`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::RoofDead => "roof dead",
            Self::CeilingDead => "ceiling dead",
            Self::FloorDead => "floor dead",
            Self::Wall => "wall above",
            Self::FloorLive => "floor live",
            Self::AtticLive => "attic live",
            Self::RoofLive => "roof live",
            Self::RoofSnow => "roof snow",
        }
    }
}

/// What a part of the load was multiplied from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MadeOf {
    /// A load per area on a strip, as many times as there are such floors.
    Strip {
        /// Load per area.
        intensity: AreaLoad,
        /// Width of the strip.
        width: Length,
        /// How many of them; 1 for roof and ceiling.
        times: u8,
    },
    /// A wall's weight, as many times as there are storeys of it.
    Walls {
        /// Weight a storey.
        per_storey: LineLoad,
        /// How many.
        storeys: u8,
    },
    /// A line load that was given.
    Given,
}

/// One part of the load along a header, for a working: `roof dead 15 psf x 11 ft`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadPart {
    /// What it is the load of.
    pub what: LoadOf,
    /// Its kind.
    pub case: LoadCase,
    /// What it was multiplied from.
    pub made_of: MadeOf,
    /// The load.
    pub load: LineLoad,
    /// Whether it acts with dead load only.
    pub acts_alone: bool,
}

/// The load along a header, with what it is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct HeaderLoads {
    /// By kind.
    pub cases: CaseLoads,
    /// Part by part; parts that are nothing are left out.
    pub parts: Vec<LoadPart>,
    /// Snow on the roof, and what set it.
    pub roof_snow: RoofSnow,
}

/// The load along a header, from the strips that it carries and the loads of the place.
///
/// Every load spreads evenly over the header. A beam, a girder truss or a post that comes down on it in one place is
/// not counted.
#[must_use]
pub fn line_loads(tributary: &Tributary, site: &SiteLoads) -> HeaderLoads {
    let roof_snow = site.roof_snow();
    let Tributary { roof, ceiling, floor, floors, .. } = *tributary;
    let mut parts = vec![
        strip(LoadOf::RoofDead, LoadCase::Dead, site.roof_dead, roof, 1),
        strip(LoadOf::CeilingDead, LoadCase::Dead, site.ceiling_dead, ceiling, 1),
        strip(LoadOf::FloorDead, LoadCase::Dead, site.floor_dead, floor, floors),
        wall(site.wall_above, tributary.walls_above),
        strip(LoadOf::FloorLive, LoadCase::Live, site.floor_live, floor, floors),
        LoadPart {
            acts_alone: site.attic_live.acts_alone,
            ..strip(LoadOf::AtticLive, LoadCase::Live, site.attic_live.load, ceiling, 1)
        },
        strip(LoadOf::RoofLive, LoadCase::RoofLive, site.roof_live, roof, 1),
        strip(LoadOf::RoofSnow, LoadCase::Snow, roof_snow.load, roof, 1),
    ];
    parts.retain(|part| part.load != LineLoad::ZERO);
    HeaderLoads { cases: sums(&parts), parts, roof_snow }
}

fn strip(what: LoadOf, case: LoadCase, intensity: AreaLoad, width: Length, times: u8) -> LoadPart {
    let load = intensity * width * f64::from(times);
    LoadPart { what, case, made_of: MadeOf::Strip { intensity, width, times }, load, acts_alone: false }
}

fn wall(above: WallAbove, storeys: u8) -> LoadPart {
    let (load, made_of) = match above {
        WallAbove::PerStorey(per_storey) => (per_storey * f64::from(storeys), MadeOf::Walls { per_storey, storeys }),
        WallAbove::Total(total) => (total, MadeOf::Given),
    };
    LoadPart { what: LoadOf::Wall, case: LoadCase::Dead, made_of, load, acts_alone: false }
}

fn sums(parts: &[LoadPart]) -> CaseLoads {
    let sum = |case, acts_alone| {
        parts.iter().filter(|part| part.case == case && part.acts_alone == acts_alone).map(|part| part.load).sum()
    };
    CaseLoads {
        dead: sum(LoadCase::Dead, false),
        live: sum(LoadCase::Live, false),
        roof_live: sum(LoadCase::RoofLive, false),
        snow: sum(LoadCase::Snow, false),
        attic_alone: sum(LoadCase::Live, true),
    }
}
