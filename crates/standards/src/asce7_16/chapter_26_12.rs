//! 26.2 and 26.12: how open a building is, where hurricanes come, and where wind carries debris.

use measure::{Area, Length, Ratio, Speed};

use super::{DOCUMENT, chapter_26::Enclosure};
use crate::{OutsideTable, Source, Status};

/// 26.2 and 26.12.2: open, partially enclosed, partially open and enclosed buildings.
pub const ENCLOSURE: Source = Source::new(DOCUMENT, "26.2, 26.12.2", Status::LookedUp);
/// 26.2: hurricane-prone regions. Read in the IBC of 2018, which prints the same.
pub const HURRICANE_PRONE: Source = Source::new(DOCUMENT, "26.2, hurricane-prone regions", Status::LookedUp);
/// 26.12.3.1: wind-borne debris regions. From memory; the residential code of Florida of 2023 was read and says the
/// same, with Hawaii added.
pub const WIND_BORNE_DEBRIS: Source = Source::new(DOCUMENT, "26.12.3.1", Status::PartlyLookedUp);

/// Openings in a wall or in the roof: what is open in the design wind. A shut door or window is none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Openings {
    /// Area of the openings.
    pub open: Area,
    /// Area of the wall or roof, openings and all.
    pub gross: Area,
}

const MOSTLY_OPEN: Ratio = 0.80;
const MORE_THAN_THE_REST: Ratio = 1.10;
const SMALL_OPENINGS: Area = Area::from_square_feet(4.0);
const SMALL_SHARE: Ratio = 0.01;
const TIGHT_REST: Ratio = 0.20;

impl Openings {
    /// Whether the wall is at least 80 per cent open.
    fn is_mostly_open(&self) -> bool {
        self.open >= self.gross * MOSTLY_OPEN
    }

    fn small_limit(&self) -> Area {
        SMALL_OPENINGS.min(self.gross * SMALL_SHARE)
    }

    /// Whether the openings in this wall, when the wind presses on it, are much more than those of the `rest`.
    fn dominate(&self, rest: &Self) -> bool {
        self.open > rest.open * MORE_THAN_THE_REST
            && self.open > self.small_limit()
            && rest.open <= rest.gross * TIGHT_REST
    }

    /// Whether both this wall and the `rest` are tight.
    fn are_small(&self, rest: &Self) -> bool {
        self.open < self.small_limit() && rest.open <= rest.gross * TIGHT_REST
    }
}

/// Classification of a building by its openings, each wall taken in turn as the one that the wind presses on.
///
/// Open: every wall at least 80 per cent open; so also where it would be partially enclosed too. Partially enclosed:
/// one wall has more than 1.10 times the openings of the rest of the envelope, and more than 4 sq ft or 1 per cent of
/// the wall, whichever is less, and the rest is no more than 20 per cent open. Enclosed: every wall under that lesser
/// limit, and the rest no more than 20 per cent open. Partially open: none of the others.
///
/// `roof` belongs to the rest of every wall; its own openings are not tried as those that the wind presses on.
///
/// # Errors
/// No wall, a wall or roof without area, openings that are negative or larger than what they are in.
pub fn enclosure(walls: &[Openings], roof: &Openings) -> Result<Enclosure, OutsideTable> {
    let possible = |one: &Openings| one.gross > Area::ZERO && one.open >= Area::ZERO && one.open <= one.gross;
    if walls.is_empty() || !possible(roof) || !walls.iter().all(possible) {
        return Err(impossible(walls, roof));
    }
    let all = walls.iter().fold(*roof, |sum, one| Openings { open: sum.open + one.open, gross: sum.gross + one.gross });
    let rest = |wall: &Openings| Openings { open: all.open - wall.open, gross: all.gross - wall.gross };
    Ok(if walls.iter().all(Openings::is_mostly_open) {
        Enclosure::Open
    } else if walls.iter().any(|wall| wall.dominate(&rest(wall))) {
        Enclosure::PartiallyEnclosed
    } else if walls.iter().all(|wall| wall.are_small(&rest(wall))) {
        Enclosure::Enclosed
    } else {
        Enclosure::PartiallyOpen
    })
}

fn impossible(walls: &[Openings], roof: &Openings) -> OutsideTable {
    let of = |one: &Openings| format!("{} of {} sq ft", one.open.square_feet(), one.gross.square_feet());
    let walls: Vec<_> = walls.iter().map(of).collect();
    OutsideTable {
        source: ENCLOSURE,
        given: format!("openings {} in the walls, {} in the roof", walls.join(", "), of(roof)),
        covers: "at least one wall, and openings no larger than the wall or the roof that they are in",
        next_step: "Measure the wall and its openings again.",
    }
}

/// Where a place lies, for the definitions of hurricane-prone and wind-borne debris regions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Coast {
    /// On the Atlantic or the Gulf coast of the United States.
    AtlanticOrGulf,
    /// Hawaii.
    Hawaii,
    /// Puerto Rico, Guam, the Virgin Islands or American Samoa.
    IslandTerritory,
    /// Anywhere else.
    Elsewhere,
}

/// Basic wind speed of Risk Category II over which the Atlantic and Gulf coasts are hurricane-prone.
pub const HURRICANE_PRONE_ABOVE: Speed = Speed::from_mph(115.0);

/// Whether a place is in a hurricane-prone region. `speed` is the basic wind speed of Risk Category II.
#[must_use]
pub fn hurricane_prone(coast: Coast, speed: Speed) -> bool {
    match coast {
        Coast::AtlanticOrGulf => speed > HURRICANE_PRONE_ABOVE,
        Coast::Hawaii | Coast::IslandTerritory => true,
        Coast::Elsewhere => false,
    }
}

/// What decides whether wind carries debris at a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DebrisSite {
    /// Where it lies.
    pub coast: Coast,
    /// Basic wind speed; of Risk Category II for a house.
    pub speed: Speed,
    /// Distance to the coast's mean high-water line.
    pub to_coast: Length,
    /// Whether the water makes an Exposure D condition upwind of its edge.
    pub open_water_at_coast: bool,
}

/// Distance to the coast that both definitions name.
pub const ONE_MILE: Length = Length::from_feet(5280.0);
/// Wind speed from which debris counts within a mile of the coast.
pub const DEBRIS_NEAR_COAST: Speed = Speed::from_mph(130.0);
/// Wind speed from which debris counts anywhere.
pub const DEBRIS_ANYWHERE: Speed = Speed::from_mph(140.0);

/// Whether a place is in a wind-borne debris region by this standard: hurricane-prone, and either 140 mph or more, or
/// 130 mph or more within a mile of a coast whose water makes an Exposure D condition at its edge.
#[must_use]
pub fn wind_borne_debris_region(site: &DebrisSite) -> bool {
    let near = site.to_coast <= ONE_MILE && site.open_water_at_coast && site.speed >= DEBRIS_NEAR_COAST;
    hurricane_prone(site.coast, site.speed) && (near || site.speed >= DEBRIS_ANYWHERE)
}
