//! Section 202: the wind-borne debris region.

use super::DOCUMENT;
use crate::asce7_16::chapter_26_12::{
    Coast, DEBRIS_ANYWHERE, DEBRIS_NEAR_COAST, DebrisSite, ONE_MILE, hurricane_prone,
};
use crate::{Source, Status};

/// Section 202, wind-borne debris region. That Hawaii belongs to it at any speed was read in Florida's definition only;
/// the wider one is used.
pub const WIND_BORNE_DEBRIS: Source = Source::new(DOCUMENT, "202, wind-borne debris region", Status::Disputed);

/// Whether a place is in a wind-borne debris region by this code: hurricane-prone, and either 140 mph or more, or 130
/// mph or more within a mile of the coast, or in Hawaii. It does not ask, as ASCE 7 does, what the water is like.
#[must_use]
pub fn wind_borne_debris_region(site: &DebrisSite) -> bool {
    let near = site.to_coast <= ONE_MILE && site.speed >= DEBRIS_NEAR_COAST;
    hurricane_prone(site.coast, site.speed) && (near || site.speed >= DEBRIS_ANYWHERE || site.coast == Coast::Hawaii)
}
