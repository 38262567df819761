//! What each wall line is given.

use measure::{Force, Length, Moment};
use standards::irc_2021::r301_2::{SEISMIC, SeismicDesignCategory};
use standards::sdpws_2015::diaphragm::OPEN_FRONT;
use standards::{OutsideTable, Source, Status};

use super::house::{BracedStorey, Direction, House};
use crate::diaphragm::{Diaphragm, Held, Outline};

/// Flexible diaphragms bring the wind to the lines by tributary width: usual for houses of wood.
pub const TRIBUTARY: Source = Source::new("SDPWS 2015", "4.2.5", Status::FromMemory);

/// The most storeys that are worked.
const MOST_STOREYS: usize = 3;

/// A line no farther than this from a side stands at it (*common practice*: sides are measured to the face of the wall,
/// lines to its middle).
pub const AT_A_SIDE: Length = Length::from_feet(1.0);

/// Lines no farther apart than this stand above each other.
pub(super) const STACKED: Length = Length::from_inches(6.0);

/// What one line of a storey is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineForce {
    /// Where it stands.
    pub at: Length,
    /// Breadth of the face that its floor brings to it.
    pub tributary: Length,
    /// What the floor or roof on it brings.
    pub own: Force,
    /// What comes down from the lines above it.
    pub above: Force,
}

impl LineForce {
    /// All that it is given.
    #[must_use]
    pub fn total(&self) -> Force {
        self.own + self.above
    }
}

/// The lines of a storey in one direction.
#[derive(Clone, Debug, PartialEq)]
pub struct StoreyLines {
    /// The storey's shear: all wind that comes in at its top and above.
    pub shear: Force,
    /// Its lines, in order.
    pub lines: Vec<LineForce>,
}

/// A side of a storey without a wall line: the floor turns about the lines that are there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenSide {
    /// Which storey, from the top, counted from 0.
    pub storey: usize,
    /// The wind that turns it.
    pub wind: Direction,
    /// From the side to the nearest line along that wind; none where there is no such line.
    pub reach: Option<Length>,
    /// The turning, where one line stands alone.
    pub turning: Option<Moment>,
    /// What the turning pushes and pulls on the outermost lines across it, besides their own; none where there are not two.
    /// It is no part of any number given for them.
    pub couple: Option<Force>,
}

/// What the wall lines of a house are given, storey by storey from the top.
#[derive(Clone, Debug, PartialEq)]
pub struct HouseAnswer {
    /// Wind along the length.
    pub lengthwise: Result<Vec<StoreyLines>, OutsideTable>,
    /// Wind along the width.
    pub crosswise: Result<Vec<StoreyLines>, OutsideTable>,
    /// Sides without a wall line. An engineer must look at all the lines of such a storey.
    pub open_sides: Vec<OpenSide>,
}

/// Brings the wind to the wall lines.
///
/// Each floor is flexible: a line takes half of the floor to the next line on each side, and out to the side of the house at
/// the ends. What a line is given goes down to the line below it.
///
/// Source: tributary width, common for houses of wood (SDPWS 2015 4.2.5, from memory).
///
/// # Errors
/// The whole house is refused from Seismic Design Category D0 on, over three storeys, where it is irregular or has no size;
/// a direction, where a side has no wall line or a line stands on none.
pub fn wind_to_lines(house: &House) -> Result<HouseAnswer, OutsideTable> {
    is_worked(house)?;
    let open_sides = Direction::ALL.into_iter().flat_map(|wind| open_sides(house, wind)).collect();
    Ok(HouseAnswer {
        lengthwise: down_the_storeys(house, Direction::Lengthwise),
        crosswise: down_the_storeys(house, Direction::Crosswise),
        open_sides,
    })
}

/// Whether wind alone is worked in a seismic design category.
///
/// # Errors
/// From D0 on, where earthquakes decide, and are not worked here.
pub fn wind_decides(seismic: SeismicDesignCategory) -> Result<(), OutsideTable> {
    if seismic < SeismicDesignCategory::D0 {
        return Ok(());
    }
    Err(OutsideTable {
        source: SEISMIC,
        given: format!("a house in Seismic Design Category {}", seismic.name()),
        covers: "wind alone, in categories A to C",
        next_step: "Earthquakes are not worked here: ask the engineer.",
    })
}

fn is_worked(house: &House) -> Result<(), OutsideTable> {
    let outside = |source, given: String, covers, next_step| Err(OutsideTable { source, given, covers, next_step });
    wind_decides(house.seismic)?;
    if !(1..=MOST_STOREYS).contains(&house.storeys.len()) {
        let given = format!("{} storeys", house.storeys.len());
        return outside(
            TRIBUTARY,
            given,
            "one to three storeys, as worked here",
            "An engineer designs a higher house.",
        );
    }
    if !house.regular || house.length <= Length::ZERO || house.width <= Length::ZERO {
        let given = if house.regular { "a house without length or width" } else { "an irregular house" };
        let next = "Divide it into rectangles that stand by themselves, or ask the engineer.";
        return outside(TRIBUTARY, given.to_owned(), "one rectangle through all storeys, as worked here", next);
    }
    Ok(())
}

fn down_the_storeys(house: &House, wind: Direction) -> Result<Vec<StoreyLines>, OutsideTable> {
    let mut done: Vec<StoreyLines> = Vec::with_capacity(house.storeys.len());
    for storey in &house.storeys {
        let mut here = own_lines(house, storey, wind)?;
        if let Some(above) = done.last() {
            here.shear += above.shear;
            above.lines.iter().try_for_each(|line| put_on(line, &mut here.lines))?;
        }
        done.push(here);
    }
    Ok(done)
}

fn own_lines(house: &House, storey: &BracedStorey, wind: Direction) -> Result<StoreyLines, OutsideTable> {
    let (places, breadth) = (storey.places(wind), house.breadth(wind));
    let (first, last) = match places.as_slice() {
        [first, .., last] if is_closed(*first, *last, breadth) => (*first, *last),
        _ => return Err(open()),
    };
    let shear = storey.own_force(house, wind);
    let load = shear / breadth;
    let line = |index: usize, at: Length| {
        let midway = |next: Option<&Length>, side: Length| next.map_or(side, |next| (*next + at) / 2.0);
        let from = if at == first { Length::ZERO } else { midway(places.get(index.wrapping_sub(1)), Length::ZERO) };
        let to = if at == last { breadth } else { midway(places.get(index + 1), breadth) };
        LineForce { at, tributary: to - from, own: load * (to - from), above: Force::ZERO }
    };
    let lines = places.iter().enumerate().map(|(index, at)| line(index, *at)).collect();
    Ok(StoreyLines { shear, lines })
}

fn is_closed(first: Length, last: Length, breadth: Length) -> bool {
    first >= Length::ZERO && first <= AT_A_SIDE && last <= breadth && last >= breadth - AT_A_SIDE && last > first
}

fn open() -> OutsideTable {
    OutsideTable {
        source: OPEN_FRONT,
        given: "a side of the house without a wall line".to_owned(),
        covers: "houses with a wall line within a foot of each side, as worked here",
        next_step: "Give that side a wall line; else the house turns, and an engineer designs it.",
    }
}

/// Puts what a line is given on the line below it.
fn put_on(above: &LineForce, below: &mut [LineForce]) -> Result<(), OutsideTable> {
    let away = |line: &LineForce| (line.at - above.at).inches().abs();
    let nearest = below.iter_mut().min_by(|a, b| away(a).total_cmp(&away(b)));
    match nearest {
        Some(line) if away(line) <= STACKED.inches() => {
            line.above += above.total();
            Ok(())
        }
        _ => Err(OutsideTable {
            source: TRIBUTARY,
            given: format!("a wall line {} ft from the side with none below it", above.at.feet()),
            covers: "wall lines that stand above each other, within 6 in",
            next_step: "Set a line below it, or have an engineer carry its force over.",
        }),
    }
}

/// Sides of each storey that a wind along them finds open.
fn open_sides(house: &House, wind: Direction) -> Vec<OpenSide> {
    let mut above = Force::ZERO;
    let mut found = Vec::new();
    for (storey, here) in house.storeys.iter().enumerate() {
        above += here.own_force(house, wind);
        let (places, breadth) = (here.places(wind), house.breadth(wind));
        let alone = match places.as_slice() {
            [only] => Some(above * (*only - breadth / 2.0)),
            _ => None,
        };
        let turning = alone.map(|moment| if moment < Moment::ZERO { -moment } else { moment });
        let across = here.places(wind.other());
        let arm = match across.as_slice() {
            [first, .., last] => Some(*last - *first).filter(|arm| *arm > Length::ZERO),
            _ => None,
        };
        let couple =
            turning.zip(arm).map(|(turning, arm)| Force::from_pounds(turning / (Force::from_pounds(1.0) * arm)));
        let reaches = [places.first().copied(), places.last().map(|last| breadth - *last)];
        for reach in reaches.into_iter().filter(|reach| reach.is_none_or(|reach| reach > AT_A_SIDE)) {
            found.push(OpenSide { storey, wind, reach, turning, couple });
        }
    }
    found
}

/// The floors or roofs between the lines of a storey, each as a beam under its own share of the wind.
///
/// # Errors
/// As [`wind_to_lines`] refuses a direction.
pub fn floors_between(house: &House, storey: &BracedStorey, wind: Direction) -> Result<Vec<Diaphragm>, OutsideTable> {
    own_lines(house, storey, wind)?;
    let load = storey.own_force(house, wind) / house.breadth(wind);
    let outline = if house.regular { Outline::Rectangle } else { Outline::Irregular };
    let width = house.depth(wind);
    let floor = |pair: &[Length]| Diaphragm { length: pair[1] - pair[0], width, load, held: Held::AtBothEnds, outline };
    Ok(storey.places(wind).windows(2).map(floor).collect())
}
