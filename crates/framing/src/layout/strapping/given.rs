//! The ceiling as it was given: joists, strips, how they are bought.

use layout::strapping::{NAILS_A_CROSSING, ONE_BY_THREE, SetOut, Stock, Strip, TakeOffWish};
use measure::{Length, LengthUnit, read_length};

use crate::reading::Reading;

/// What a row is shorter than the room: the most of the usual 1/4 to 1/2 in, common practice.
const CLEARANCE: Length = Length::from_inches(0.5);
/// Wood under each end at a joint: half of a 2x joist.
const BEARING: Length = Length::from_inches(0.75);
/// What a saw takes.
const KERF: Length = Length::from_inches(0.125);
const ONE_BY_FOUR: Strip = Strip { width: Length::from_inches(3.5), thickness: Length::from_inches(0.75) };
/// The most values that a list of places takes.
const MOST_PLACES: usize = 200;

pub(super) struct Given {
    pub room: SetOut,
    pub buy: TakeOffWish,
    /// The strip's name.
    pub strip: String,
}

/// The ceiling; what is wrong with its inputs is said.
pub(super) fn read(reading: &mut Reading) -> Option<Given> {
    let across = reading.length("strap_across")?;
    let thick = reading.length("strap_joist_thick")?;
    let joists = match reading.word("strap_joists_at") {
        Some(_) => inches(reading, "strap_joists_at")?,
        None => spaced(reading, across, thick)?,
    };
    let stock = stock(reading)?;
    let strip = reading.word("strap_strip")?.to_owned();
    let short = reading.word("strap_short")?;
    let room = SetOut {
        across,
        along: reading.length("strap_along")?,
        joists,
        joist_thickness: thick,
        strip: if strip == "1x4" { ONE_BY_FOUR } else { ONE_BY_THREE },
        spacing: reading.length("strap_every")?,
        clearance: CLEARANCE,
        bearing: BEARING,
        stock,
        short_pieces: [matches!(short, "both" | "left"), matches!(short, "both" | "right")],
        obstacles: Vec::new(),
    };
    let buy = TakeOffWish { stock, kerf: KERF, bundle: bundle(reading)?, fasteners: NAILS_A_CROSSING.0 };
    Some(Given { room, buy, strip })
}

/// Joists at their spacing, as far as a whole one stands in the room.
fn spaced(reading: &mut Reading, across: Length, thick: Length) -> Option<Vec<Length>> {
    let every = reading.length("strap_joist_every")?;
    let first = reading.length("strap_joist_first").unwrap_or(every);
    let at = (0..MOST_PLACES).map(|index| first + every * index as f64);
    let last = across - thick / 2.0 + Length::from_inches(1e-9);
    let joists: Vec<Length> = at.take_while(|centre| *centre <= last).collect();
    if joists.is_empty() {
        let problem = format!(
            "Joists every {} from {} leave none in a room of {}. A spacing and a first joist within the room are taken.",
            crate::words::inches(every),
            crate::words::inches(first),
            crate::words::length(across)
        );
        reading.refuse("strap_joist_every", problem);
        return None;
    }
    Some(joists)
}

fn stock(reading: &Reading) -> Option<Stock> {
    let feet: f64 = reading.word("strap_stock")?.parse().ok()?;
    Stock::ALL.into_iter().find(|stock| (stock.length().feet() - feet).abs() < 1e-9)
}

fn bundle(reading: &mut Reading) -> Option<usize> {
    let count = reading.number("strap_bundle")?;
    if count.fract() == 0.0 {
        return Some(count as usize);
    }
    reading.refuse("strap_bundle", format!("{count} strips were given. Whole strips are taken, from 1 to 1,000."));
    None
}

/// Lengths in inches with commas between; what is wrong with the first that cannot be is said.
pub(super) fn inches(reading: &mut Reading, id: &'static str) -> Option<Vec<Length>> {
    let text = reading.word(id)?.to_owned();
    let parts: Vec<&str> = text.split([',', ';', '\n', '\t']).map(str::trim).filter(|part| !part.is_empty()).collect();
    if !(1..=MOST_PLACES).contains(&parts.len()) {
        let problem =
            format!("{} values were given; one to {MOST_PLACES} are taken, with a comma between them.", parts.len());
        reading.refuse(id, problem);
        return None;
    }
    let lengths = parts.iter().map(|part| read_length(part, LengthUnit::Inches).map(|read| read.length));
    match lengths.collect::<Result<Vec<_>, _>>() {
        Ok(lengths) => Some(lengths),
        Err(problem) => {
            reading.refuse(id, problem.to_string());
            None
        }
    }
}
