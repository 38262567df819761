//! The wind's pull on parts of the roof, as Site works it out: allowable stress design, in the zone that is looked at.

use loads::house::RoofKind;
use loads::wind::roof::{RoofPressure, roof_pressures};
use measure::{Area, AreaLoad};
use members::working::Basis;
use standards::asce7_16::chapter_30::roofs::RoofZone;

use crate::reading::Reading;
use crate::site::input;

/// The area for which a covering and its fasteners are given.
pub(super) const SMALL: Area = Area::from_square_feet(10.0);

/// A pull on a part of the roof, square to it.
#[derive(Clone, Copy)]
pub(super) struct Pull {
    pub(super) psf: AreaLoad,
    pub(super) source: Basis,
}

/// Which part.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Of {
    /// Anywhere between the walls, the hardest zone.
    Roof,
    /// Away from every edge.
    Field,
    /// What stands out over the walls, both faces together, the hardest zone.
    Eaves,
    /// The same of a gable end, which a hip roof has not.
    Rake,
}

/// The pull; a sentence where Site has no pressure for this house.
pub(super) fn pull(reading: &Reading, of: Of, area: Area) -> Option<Result<Pull, String>> {
    let house = input::house(reading)?;
    let wind = input::wind(reading, &house)?;
    if reading.word("open_side") == Some("yes") || reading.word("parapet") == Some("yes") {
        return Some(Err("The wind on a house with an open side or a parapet is an engineer's.".to_owned()));
    }
    if of == Of::Rake && house.roof == RoofKind::Hip {
        return Some(Err("Given: a hip roof. It has no gable end and no rake.".to_owned()));
    }
    Some(match roof_pressures(&wind, &house, area, matches!(of, Of::Eaves | Of::Rake)) {
        Ok((_, zones)) => hardest(zones.iter().filter(|one| of != Of::Field || is_field(one.zone)))
            .ok_or_else(|| "No zone of the roof has a pressure here.".to_owned()),
        Err(outside) => Err(outside.to_string()),
    })
}

const fn is_field(zone: RoofZone) -> bool {
    matches!(zone, RoofZone::One | RoofZone::OnePrime)
}

fn hardest<'a>(zones: impl Iterator<Item = &'a RoofPressure>) -> Option<Pull> {
    let most = zones.max_by(|one, other| one.outward_asd.psf().total_cmp(&other.outward_asd.psf()))?;
    Some(Pull { psf: most.outward_asd, source: Basis::Published(most.source) })
}
