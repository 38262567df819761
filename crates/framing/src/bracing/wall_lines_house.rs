//! A house as its wall lines see it, read from what was typed and from what Site works out of the wind.

use bracing::wall_lines::{BracedStorey, Direction, House, StoreyWind, WallLine, Winds};
use loads::house::WindDirection;
use loads::wind::asd_factor;
use measure::{Force, Length};
use members::working::Basis;
use standards::asce7_16::{chapter_27, chapter_28};
use standards::irc_2021::r301_2::SeismicDesignCategory;

use super::{frame, lists};
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::site::{self, input};
use crate::words;

/// The most storeys that are worked.
const STOREYS: usize = 3;

/// The push of a direction from the top storey down, allowable stress design, and where it comes from.
#[derive(Clone)]
pub(super) struct Pushed {
    pub(super) forces: Vec<Force>,
    pub(super) source: Basis,
}

/// The house, the wind that is looked at, and the push of it.
pub(super) struct Looked {
    pub(super) house: House,
    pub(super) wind: Direction,
    /// The push looked at; a sentence where it was not typed and is not worked out.
    pub(super) pushed: Result<Pushed, String>,
    /// Whether the push of the other direction is known.
    pub(super) other_known: bool,
}

/// The inputs of a direction: its pushes, and the lines that run along it.
const fn ids(wind: Direction) -> (&'static str, &'static str) {
    match wind {
        Direction::Crosswise => ("pushes_across", "lines_across"),
        Direction::Lengthwise => ("pushes_along", "lines_along"),
    }
}

/// The input that takes the pushes of a direction.
pub(super) const fn pushes_id(wind: Direction) -> &'static str {
    ids(wind).0
}

/// The house; none where something typed is wrong, which is then said.
pub(super) fn read(reading: &mut Reading) -> Option<Looked> {
    let typed = [typed_pushes(reading, Direction::Lengthwise)?, typed_pushes(reading, Direction::Crosswise)?];
    let storeys = storeys(reading, &typed)?;
    let mut lines = lines_of(reading, Direction::Lengthwise)?;
    lines.extend(lines_of(reading, Direction::Crosswise)?);
    let reading = &*reading;
    let outline = loads::house::House { storeys: u8::try_from(storeys).ok()?, ..input::house(reading)? };
    let [lengthwise, crosswise] = typed;
    let along = pushed(reading, &outline, Direction::Lengthwise, lengthwise)?;
    let across = pushed(reading, &outline, Direction::Crosswise, crosswise)?;
    let wind = if reading.word("push_direction")? == "along" { Direction::Lengthwise } else { Direction::Crosswise };
    let force = |pushed: &Result<Pushed, String>, index: usize| {
        let known = pushed.as_ref().ok().and_then(|pushed| pushed.forces.get(index));
        StoreyWind::Force(known.copied().unwrap_or(Force::ZERO))
    };
    let storey = |index: usize| BracedStorey {
        height: outline.eave_height / storeys as f64,
        winds: Winds { lengthwise: force(&along, index), crosswise: force(&across, index) },
        lines: lines.clone(),
    };
    let house = House {
        length: outline.length,
        width: outline.width,
        storeys: (0..storeys).map(storey).collect(),
        seismic: input::seismic(reading).unwrap_or(SeismicDesignCategory::B),
        regular: reading.word("plain_rectangle")? == "yes",
    };
    let (looked, other) = if wind == Direction::Lengthwise { (along, across) } else { (across, along) };
    Some(Looked { house, wind, pushed: looked, other_known: other.is_ok() })
}

/// The outer none is a refusal; the inner, that nothing was typed.
fn typed_pushes(reading: &mut Reading, wind: Direction) -> Option<Option<Vec<Force>>> {
    let (id, _) = ids(wind);
    if reading.word(id).is_none() {
        return Some(None);
    }
    let pushes = lists::forces(reading, id)?;
    if pushes.len() > STOREYS {
        let problem = format!("{} storeys were given; one to three are taken. An engineer designs more.", pushes.len());
        reading.refuse(id, problem);
        return None;
    }
    Some(Some(pushes))
}

/// How many storeys: as typed pushes say, which agree with what else was said.
fn storeys(reading: &mut Reading, typed: &[Option<Vec<Force>>; 2]) -> Option<usize> {
    let said = reading.get("storeys")?.origin != Origin::Assumed;
    let house: usize = reading.word("storeys")?.parse().ok()?;
    let mut storeys = if said { Some(house) } else { None };
    for (wind, pushes) in [Direction::Lengthwise, Direction::Crosswise].into_iter().zip(typed) {
        let Some(pushes) = pushes else { continue };
        let expected = *storeys.get_or_insert(pushes.len());
        if pushes.len() != expected {
            let problem = format!(
                "{} pushes were given for {expected} storeys; one for each is taken, from the top down.",
                pushes.len()
            );
            reading.refuse(ids(wind).0, problem);
            return None;
        }
    }
    Some(storeys.unwrap_or(house))
}

fn breadth(reading: &Reading, wind: Direction) -> Option<Length> {
    reading.length(if wind == Direction::Crosswise { "building_length" } else { "house_width" })
}

/// The lines that run along a wind: as typed, else one at each side.
fn lines_of(reading: &mut Reading, wind: Direction) -> Option<Vec<WallLine>> {
    let (_, id) = ids(wind);
    let breadth = breadth(reading, wind)?;
    let places = if reading.word(id).is_none() {
        vec![Length::ZERO, breadth]
    } else {
        lists::lengths(reading, id, (0.0, 200.0))?
    };
    if let Some(off) = places.iter().find(|place| **place > breadth) {
        let problem = format!("{} was given; from 0 to {} is taken.", words::length(*off), words::length(breadth));
        reading.refuse(id, problem);
        return None;
    }
    Some(places.into_iter().map(|at| WallLine { runs: wind, at }).collect())
}

/// The push of a direction: as typed, else as Site works it out.
fn pushed(
    reading: &Reading,
    outline: &loads::house::House,
    wind: Direction,
    typed: Option<Vec<Force>>,
) -> Option<Result<Pushed, String>> {
    if let Some(forces) = typed {
        return Some(Ok(Pushed { forces, source: Basis::Input(ids(wind).0) }));
    }
    let onto = if wind == Direction::Crosswise { WindDirection::AcrossRidge } else { WindDirection::AlongRidge };
    if site::refused(&mut About::of(reading, &[]), reading) {
        return Some(Err("The wind on a house with an open side or a parapet is not worked here.".to_owned()));
    }
    let found = site::governing_push(&input::wind(reading, outline)?, outline, onto);
    Some(found.map_err(|outside| outside.to_string()).map(|(procedure, push)| Pushed {
        forces: push.levels.iter().rev().map(|level| level.here * asd_factor()).collect(),
        source: Basis::Published(if procedure == "envelope" {
            chapter_28::COEFFICIENTS
        } else {
            chapter_27::COEFFICIENTS
        }),
    }))
}

/// What was taken where nobody said it.
pub(super) fn taken(about: &mut About<'_>, reading: &Reading) {
    let sides = [
        ("lines_across", Direction::Crosswise, "Wall lines across the house"),
        ("lines_along", Direction::Lengthwise, "Wall lines along the house"),
    ];
    for (id, wind, label) in sides {
        if reading.word(id).is_none()
            && let Some(breadth) = breadth(reading, wind)
        {
            about.assume(id, &format!("{label}: at 0 and {} (the outer walls).", words::length(breadth)));
            about.ask(id, format!("{label}: are there others between the outer walls, or does one stop short?"));
        }
    }
    frame::seismic_assumed(reading, about);
}
