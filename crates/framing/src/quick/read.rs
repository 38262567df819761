//! From what was understood to quantities: what more than one quick check needs.

use lumber::{Conditions, Grade, Species};
use measure::{AreaLoad, Force, LineLoad};
use standards::nds_2018::chapter_2::ServiceMoisture;

use crate::reading::Reading;

/// Species, grade, moisture and treatment.
pub(crate) fn wood(reading: &Reading) -> Option<(Species, Grade, Conditions)> {
    let species = Species::from_text(reading.word("species")?).ok()?;
    let grade = Grade::from_text(reading.word("grade")?).ok()?;
    let service = if reading.word("service")? == "wet" { ServiceMoisture::Wet } else { ServiceMoisture::Dry };
    Some((species, grade, Conditions { service, incised: reading.word("incised")? == "yes", ..Conditions::default() }))
}

pub(crate) fn psf(reading: &Reading, id: &str) -> Option<AreaLoad> {
    reading.number(id).map(AreaLoad::from_psf)
}

/// A load along a wall or a beam; nothing where none was said.
pub(crate) fn plf(reading: &Reading, id: &str) -> LineLoad {
    LineLoad::from_plf(reading.number(id).unwrap_or_default())
}

/// A force; nothing where none was said.
pub(crate) fn pounds(reading: &Reading, id: &str) -> Force {
    Force::from_pounds(reading.number(id).unwrap_or_default())
}
