//! A landing between two flights: which riser it is on, how high its frame is, and what each flight is.

use measure::Length;
use standards::irc_2021::r311_7::StairLimit;

use super::check::{Check, Edition, NOISE, Subject};
use super::error::{StairError, count, size, thickness};
use super::flight::{Finish, Floors};
use super::landing_plan::{Rectangle, plan};
use super::marks::to_sixteenth;

/// How a stair goes on past its landing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Turn {
    /// Straight on.
    Straight,
    /// By a right angle: an L.
    Quarter,
    /// Back beside itself: a U.
    Half {
        /// Between the two flights.
        gap: Length,
    },
}

/// A stair with one landing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Landing {
    /// Its floors.
    pub floors: Floors,
    /// Risers of both flights together.
    pub risers: u16,
    /// The riser that ends on the landing, from 1.
    pub on_riser: u16,
    /// Run of a tread.
    pub tread: Length,
    /// Width of both flights.
    pub width: Length,
    /// Depth of the landing along the lower flight.
    pub depth: Length,
    /// Finish of the landing, on top of its frame and subfloor.
    pub finish: Finish,
    /// How the stair goes on.
    pub turn: Turn,
    /// The code that it is held to.
    pub edition: Edition,
}

/// One of the two flights.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Its risers.
    pub risers: u16,
    /// Its treads: one less, for the landing or the floor takes the place of one.
    pub treads: u16,
    /// Its run.
    pub run: Length,
    /// Its rise against the greatest height of one flight.
    pub rise: Check,
}

/// A landing laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LandingAnswer {
    /// One riser, exact.
    pub riser: Length,
    /// Top of the finished landing above the lower finish floor, exact: a whole number of risers.
    pub height: Length,
    /// The same to the nearest sixteenth.
    pub mark: Length,
    /// Top of its frame and subfloor above the lower finish floor.
    pub frame: Length,
    /// The same above the lower floor as it is now: where it is marked.
    pub frame_above_floor: Length,
    /// The flight up to it.
    pub lower: Part,
    /// The flight from it.
    pub upper: Part,
    /// Its depth against the code, and against the width of the stair where the stair turns.
    pub depth: Check,
    /// Lower flight, landing and upper flight from above.
    pub plan: [Rectangle; 3],
}

/// Lays out a landing. Its top is a tread: the height is a whole number of risers.
///
/// Source: geometry; IRC R311.7.3, R311.7.6. Where a stair turns, the landing is as deep as the stair is wide.
///
/// # Errors
/// Sizes of nothing or over 100 ft, finishes that leave no rise, a landing on no riser or on the last.
pub fn landing(given: &Landing) -> Result<LandingAnswer, StairError> {
    let rise = given.floors.rise()?;
    let risers = count(given.risers.into(), 2)?;
    if !(1..risers).contains(&given.on_riser) {
        return Err(StairError::LandingPlace { given: given.on_riser, last: risers - 1 });
    }
    size("run of a tread", given.tread)?;
    size("width of the stair", given.width)?;
    size("depth of the landing", given.depth)?;
    let finish = thickness("finish of the landing", given.finish.to_come())?;
    if let Turn::Half { gap } = given.turn {
        thickness("gap between the flights", gap)?;
    }
    let riser = rise / f64::from(risers);
    let height = rise * f64::from(given.on_riser) / f64::from(risers);
    let [lower, upper] = [given.on_riser, risers - given.on_riser].map(|own| part(given, riser, own));
    Ok(LandingAnswer {
        riser,
        height,
        mark: to_sixteenth(height),
        frame: height - finish,
        frame_above_floor: height - finish + given.floors.bottom.to_come(),
        lower,
        upper,
        depth: Check::at_least(Subject::LandingDepth, given.depth, least_depth(given)),
        plan: plan(given, lower.run, upper.run),
    })
}

fn part(given: &Landing, riser: Length, risers: u16) -> Part {
    let treads = risers - 1;
    let rise = riser * f64::from(risers);
    let limit = given.edition.limits().flight_rise;
    Part {
        risers,
        treads,
        run: given.tread * f64::from(treads),
        rise: Check::at_most(Subject::FlightRise, rise, limit),
    }
}

fn least_depth(given: &Landing) -> StairLimit {
    let limit = given.edition.limits().landing;
    match given.turn {
        Turn::Straight => limit,
        Turn::Quarter | Turn::Half { .. } => StairLimit { value: limit.value.max(given.width), ..limit },
    }
}

/// The riser whose end is nearest to a height above the lower finish floor: where a landing is wanted; the lower of two alike.
///
/// # Errors
/// As [`landing`]; a height below nothing.
pub fn nearest_landing(floors: &Floors, risers: u16, wanted: Length) -> Result<u16, StairError> {
    let rise = floors.rise()?;
    let risers = count(risers.into(), 2)?;
    thickness("height that is wanted", wanted)?;
    let exact = wanted / (rise / f64::from(risers));
    let below = exact.floor();
    let nearest = if exact - below > 0.5 + NOISE.inches() { below + 1.0 } else { below };
    Ok((nearest as u16).clamp(1, risers - 1))
}
