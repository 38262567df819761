//! A stringer with temporary treads, while finish floors are still to come.

use measure::Length;

use super::built::{AsBuilt, judge};
use super::check::Edition;
use super::error::{StairError, size};
use super::marks::between;
use super::site::{SiteUse, site_use};
use super::stringer::{Stringer, stringer};

/// Risers that a crew walks.
#[derive(Clone, Debug, PartialEq)]
pub struct Temporary {
    /// From the floor as it is now, over the temporary treads, to the upper floor as it is now or the top tread.
    pub risers: Vec<Length>,
    /// Against the code for the finished house.
    pub code: AsBuilt,
    /// Against the safety rules while a crew uses it.
    pub in_use: SiteUse,
    /// The thickness of temporary treads that leaves the first riser and the last alike, where there is one: the least spread.
    pub evenest: Option<Length>,
}

/// Works out the risers of a stringer under temporary treads: from the cuts as they are marked.
///
/// Source: arithmetic: `c1 + tp`, `r`, and `r - ft + tt - tp` at the top.
///
/// # Errors
/// As [`stringer`]; treads of nothing, or as thick as the top riser.
pub fn temporary(given: &Stringer, tread_thickness: Length, edition: Edition) -> Result<Temporary, StairError> {
    let cut = stringer(given)?;
    let thickness = size("thickness of the temporary treads", tread_thickness)?;
    let treads = cut.steps.iter().map(|step| step.at + thickness);
    let floor = (cut.steps.len() < usize::from(given.risers)).then_some(given.floors.measured);
    let risers = between(treads.chain(floor));
    Ok(Temporary {
        code: judge(&risers, edition)?,
        in_use: site_use(&risers, Some(given.tread))?,
        evenest: evenest(given),
        risers,
    })
}

/// The first riser is `fb - (tt - tp)` over the others and the last `(tt - tp) - ft`: alike halfway between.
fn evenest(given: &Stringer) -> Option<Length> {
    let halfway = (given.floors.bottom.to_come() + given.floors.top.to_come()) / 2.0;
    Some(given.tread_thickness - halfway).filter(|thickness| *thickness > Length::ZERO)
}
