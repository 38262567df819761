//! What lifts a foot of a wall under rafters, and where that comes from.

use bracing::uplift::{UpliftBasis, eave_uplift};
use loads::wind::uplift::uplift;
use measure::{AreaLoad, LineLoad};
use members::working::Basis;
use standards::asce7_16::chapter_28::COEFFICIENTS;

use super::by_code::{by_table, reduced};
use crate::reading::Reading;
use crate::site::{input, roof_and_ceiling};

/// What lifts a foot of wall, and where that comes from.
pub(super) struct Lifted {
    pub(super) along: LineLoad,
    pub(super) basis: UpliftBasis,
    pub(super) says: String,
    pub(super) source: Basis,
}

/// What lifts the wall: as given, else by the wind standard, else by the code's table; a sentence where neither reaches.
pub(super) fn lifted(reading: &Reading) -> Option<Result<Lifted, String>> {
    if let Some(given) = reading.number("uplift_given") {
        return given_uplift(reading, LineLoad::from_plf(given));
    }
    let house = input::house(reading)?;
    let (roof, ceiling) = roof_and_ceiling(reading, &house)?;
    let worked = uplift(&input::wind(reading, &house)?, &house, roof, ceiling);
    if let Ok(worked) = worked {
        let end = reading.word("wall_by_corner")? == "yes";
        let along = if end { worked.net_asd_end } else { worked.net_asd_interior };
        return Some(Ok(Lifted {
            along: along.max(LineLoad::ZERO),
            basis: UpliftBasis::Computed,
            says: format!(
                "net uplift of a foot of wall, {}",
                if end { "in the end strip" } else { "between the end strips" }
            ),
            source: Basis::Published(COEFFICIENTS),
        }));
    }
    Some(by_table(reading)?.map(|wall| Lifted {
        along: wall.uplift,
        basis: UpliftBasis::Table(wall.reduction),
        says: format!("net uplift of a foot of wall, {}", reduced(wall.reduction)),
        source: Basis::Published(wall.source),
    }))
}

/// As the drawing gives it, with the lift on the eave that it may not have yet.
fn given_uplift(reading: &Reading, given: LineLoad) -> Option<Result<Lifted, String>> {
    let basis = UpliftBasis::Computed;
    let Some(lift) = reading.number("eave_lift").map(AreaLoad::from_psf) else {
        let says = "net uplift of a foot of wall, as given".to_owned();
        return Some(Ok(Lifted { along: given, basis, says, source: Basis::Input("uplift_given") }));
    };
    let house = input::house(reading)?;
    Some(match eave_uplift(lift, house.eave_overhang, house.width) {
        Ok(more) => {
            let says = "net uplift of a foot of wall, as given, and that of its eave".to_owned();
            Ok(Lifted { along: given + more, basis, says, source: Basis::Arithmetic })
        }
        Err(outside) => Err(outside.to_string()),
    })
}
