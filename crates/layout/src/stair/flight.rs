//! A flight between two floors, and every number of risers that the code takes.

use measure::{Angle, Area, Length, math};

use super::check::{Check, Edition, NOISE, Subject};
use super::error::{MOST_RISERS, StairError, count, size, thickness};

/// Flights with lower risers than this are not listed: our own choice, for the code has no least riser. They are ramps
/// that one stumbles on.
const LOWEST_LISTED: Length = Length::from_inches(4.0);
/// What the trade divides the rise by for a first guess. Source: a carpenters' course and a builders' manual.
const FIRST_GUESS: Length = Length::from_inches(7.0);

/// A finish floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Finish {
    /// There already, or none will be: the rise was measured to it.
    Laid,
    /// Laid later, this thick with all that is under it.
    ToCome(Length),
}

impl Finish {
    pub(super) const fn to_come(self) -> Length {
        match self {
            Self::Laid => Length::ZERO,
            Self::ToCome(thickness) => thickness,
        }
    }
}

/// The two floors of a stair.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Floors {
    /// Plumb, from floor to floor as they are now.
    pub measured: Length,
    /// Finish of the lower floor.
    pub bottom: Finish,
    /// Finish of the upper floor.
    pub top: Finish,
}

impl Floors {
    /// Rise between the finished floors, `H = Hs + ft - fb`.
    ///
    /// Source: a builders' training manual; like finishes cancel.
    ///
    /// # Errors
    /// Sizes of nothing or over 100 ft, and finishes that leave no rise.
    pub fn rise(&self) -> Result<Length, StairError> {
        size("height from floor to floor", self.measured)?;
        let bottom = thickness("finish of the lower floor", self.bottom.to_come())?;
        let top = thickness("finish of the upper floor", self.top.to_come())?;
        let rise = self.measured + top - bottom;
        if rise > Length::ZERO { size("rise", rise) } else { Err(StairError::NoRise { rise }) }
    }
}

/// What is known of the run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Run {
    /// The run of one tread, nosing to nosing.
    OfTread(Length),
    /// The run of the whole flight, which its treads share.
    InAll(Length),
}

/// A straight flight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flight {
    /// Its floors.
    pub floors: Floors,
    /// Its run.
    pub run: Run,
    /// The code that it is held to.
    pub edition: Edition,
}

/// Sums that tell how a stair walks. Source: a carpenters' course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Comfort {
    /// Two risers and a tread: 24 to 25 in walks well.
    pub two_risers_and_tread: Length,
    /// A riser and a tread: 17 to 19 in walks well.
    pub riser_and_tread: Length,
    /// Riser times tread: about 75 sq in walks well.
    pub riser_times_tread: Area,
    /// Whether both sums are inside.
    pub walks_well: bool,
}

/// One number of risers and what it makes of the flight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// Risers; the upper floor is the last step.
    pub risers: u16,
    /// Height of one, exact.
    pub riser: Length,
    /// Treads.
    pub treads: u16,
    /// Run of one, exact.
    pub tread: Length,
    /// Run of the flight.
    pub total_run: Length,
    /// From the first nosing to the last, along the slope.
    pub line: Length,
    /// Slope above level.
    pub angle: Angle,
    /// How it walks.
    pub comfort: Comfort,
    /// Riser against the code.
    pub riser_check: Check,
    /// Tread against the code.
    pub tread_check: Check,
}

impl Choice {
    /// Whether the code takes it.
    #[must_use]
    pub const fn holds(&self) -> bool {
        self.riser_check.holds() && self.tread_check.holds()
    }
}

/// Every number of risers that the code takes.
#[derive(Clone, Debug, PartialEq)]
pub struct Choices {
    /// Rise between finished floors.
    pub rise: Length,
    /// The fewest risers that are low enough.
    pub fewest: u16,
    /// What the trade guesses first: a seventh of the rise in inches, the fraction dropped.
    pub first_guess: u16,
    /// The shortest run of the whole flight that the code takes: with the fewest risers.
    pub shortest_run: Length,
    /// The numbers that the code takes, from the fewest up. Empty where the run is too short: give it
    /// [`Self::shortest_run`], or turn the stairs.
    pub within: Vec<Choice>,
    /// Height of the flight against the code. Where it is out, a landing divides it.
    pub flight_rise: Check,
    /// Whether it is over what the code took before 2018, 147 in, which some places still hold to.
    pub over_before_2018: bool,
}

/// Lists the numbers of risers that the code takes, to risers of 4 in.
///
/// Source: IRC R311.7.5.1, R311.7.5.2, R311.7.3.
///
/// # Errors
/// Sizes of nothing or over 100 ft, finishes that leave no rise.
pub fn choices(flight: &Flight) -> Result<Choices, StairError> {
    let rise = flight.floors.rise()?;
    let limits = flight.edition.limits();
    let fewest = fewest(rise, limits.riser.value);
    let listed =
        (fewest..=MOST_RISERS).take_while(|&risers| risers == fewest || rise / f64::from(risers) >= LOWEST_LISTED);
    let mut within = Vec::new();
    for risers in listed.filter(|&risers| risers > 1) {
        let choice = with_risers(flight, risers)?;
        if choice.holds() {
            within.push(choice);
        }
    }
    Ok(Choices {
        rise,
        fewest,
        first_guess: first_guess(rise),
        shortest_run: limits.tread.value * f64::from(fewest.saturating_sub(1)),
        within,
        flight_rise: Check::at_most(Subject::FlightRise, rise, limits.flight_rise),
        over_before_2018: rise > standards::irc_2021::r311_7::FLIGHT_RISE_BEFORE_2018 + NOISE,
    })
}

/// The fewest risers no higher than the limit.
fn fewest(rise: Length, limit: Length) -> u16 {
    ((rise - NOISE) / limit).ceil().max(1.0) as u16
}

/// The trade's first guess: a seventh of the rise in inches, the fraction dropped; at least one.
#[must_use]
pub fn first_guess(rise: Length) -> u16 {
    (rise / FIRST_GUESS).floor().max(1.0) as u16
}

/// What one number of risers makes of a flight, inside the code or not.
///
/// # Errors
/// As [`choices`]; fewer than two risers, for a single step has no tread, or more than 300.
pub fn with_risers(flight: &Flight, risers: u16) -> Result<Choice, StairError> {
    let rise = flight.floors.rise()?;
    let risers = count(risers.into(), 2)?;
    let treads = risers - 1;
    let tread = match flight.run {
        Run::OfTread(tread) => size("run of a tread", tread)?,
        Run::InAll(run) => size("run of the flight", run)? / f64::from(treads),
    };
    let riser = rise / f64::from(risers);
    let limits = flight.edition.limits();
    Ok(Choice {
        risers,
        riser,
        treads,
        tread,
        total_run: tread * f64::from(treads),
        line: slope_length(riser, tread) * f64::from(treads),
        angle: slope(riser, tread),
        comfort: comfort(riser, tread),
        riser_check: Check::at_most(Subject::Riser, riser, limits.riser),
        tread_check: Check::at_least(Subject::Tread, tread, limits.tread),
    })
}

/// Slope of the line of nosings above level.
pub(super) fn slope(riser: Length, tread: Length) -> Angle {
    Angle::from_degrees(math::atan2(riser.inches(), tread.inches()).to_degrees())
}

/// From nosing to nosing along the slope.
pub(super) fn slope_length(riser: Length, tread: Length) -> Length {
    Length::from_inches((riser * riser + tread * tread).square_inches().sqrt())
}

fn comfort(riser: Length, tread: Length) -> Comfort {
    let two_risers_and_tread = riser * 2.0 + tread;
    let riser_and_tread = riser + tread;
    let inside = |sum: Length, least: f64, most: f64| {
        sum >= Length::from_inches(least) - NOISE && sum <= Length::from_inches(most) + NOISE
    };
    Comfort {
        two_risers_and_tread,
        riser_and_tread,
        riser_times_tread: riser * tread,
        walks_well: inside(two_risers_and_tread, 24.0, 25.0) && inside(riser_and_tread, 17.0, 19.0),
    }
}
