//! Site: what loads a house at its place, from what the building department says, the ground and the house's outline.

mod starts;

pub use starts::starts;

use crate::Texts;
use crate::field::site_fields;
use crate::reading::Reading;

/// Values of which none was said.
pub struct Nothing;

impl Texts for Nothing {
    fn text(&self, _: &str) -> Option<&str> {
        None
    }
}

/// What was understood of a place, and what follows from it.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteOutcome {
    /// What was understood.
    pub reading: Reading,
}

/// Reads and answers a place. What was not said is assumed.
#[must_use]
pub fn derive_site(fields: &dyn Texts) -> SiteOutcome {
    let reading = Reading::of(site_fields(), fields, &Nothing);
    SiteOutcome { reading }
}
