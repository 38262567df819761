//! Stairs that a crew works on before they are finished.

use measure::{Angle, Length};
use standards::Source;
use standards::cfr_29_1926::{FLATTEST, RAILS_ABOVE, RAILS_FROM_RISERS, STAIRS_IN_USE, STEEPEST, VARIATION};
use standards::irc_2021::r311_7::StairLimit;

use super::built::judge;
use super::check::{Check, Edition, NOISE, Subject, Verdict};
use super::error::{StairError, size};
use super::flight::slope;

/// A slope beside its limits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlopeCheck {
    /// Slope above level.
    pub found: Angle,
    /// Flattest that is taken.
    pub least: Angle,
    /// Steepest that is taken.
    pub most: Angle,
    /// How it stands.
    pub verdict: Verdict,
    /// Who says so.
    pub source: Source,
}

/// How a stair stands while a crew uses it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SiteUse {
    /// Largest less smallest riser.
    pub variation: Check,
    /// Slope; none where no tread was given.
    pub slope: Option<SlopeCheck>,
    /// Whether it has to have stair rails: four risers, or more than 30 in.
    pub rails: bool,
}

/// Holds measured risers against the safety rules for construction, which are stricter than the code for the finished house.
///
/// Source: 29 CFR 1926.1052. A state may ask for more.
///
/// # Errors
/// As [`judge`]; a tread of nothing or over 100 ft.
pub fn site_use(risers: &[Length], tread: Option<Length>) -> Result<SiteUse, StairError> {
    let built = judge(risers, Edition::default())?;
    let average = built.total / risers.len() as f64;
    let tread = tread.map(|tread| size("run of a tread", tread)).transpose()?;
    Ok(SiteUse {
        variation: variation(built.spread),
        slope: tread.map(|tread| slope_check(slope(average, tread))),
        rails: risers.len() >= RAILS_FROM_RISERS.into() || built.total > RAILS_ABOVE + NOISE,
    })
}

fn variation(spread: Length) -> Check {
    Check::at_most(Subject::RiserVariation, spread, StairLimit { value: VARIATION, source: STAIRS_IN_USE })
}

fn slope_check(found: Angle) -> SlopeCheck {
    // A degree is no length; but a margin that is below zero is out for both.
    let margin = (found - FLATTEST).min(STEEPEST - found);
    let verdict = Verdict::of_margin(Length::from_inches(margin.degrees()));
    SlopeCheck { found, least: FLATTEST, most: STEEPEST, verdict, source: STAIRS_IN_USE }
}
