//! Lines of readings, joist by joist, and the rows that they were read at.

use layout::strapping::{Datum, Readings, Row, Side};
use measure::{Length, LengthUnit, read_length, read_number};

use super::given::{Given, inches};
use super::refused::taken;
use crate::reading::Reading;

/// Rows of readings nearer to a strip's middle than this are its own: places must stand an inch apart.
const ITS_OWN: Length = Length::from_inches(1.0);

/// What was read, and at which of its rows a strip lies.
pub(super) struct Reads {
    pub readings: Readings,
    /// For each row of the readings the strip's row there, counted from 0; none where no strip lies.
    pub strips: Vec<Option<usize>>,
}

type Line = Vec<Option<Length>>;

/// The readings; what is wrong with them is said.
pub(super) fn read(reading: &mut Reading, given: &Given, rows: &[Row]) -> Option<Reads> {
    let joists = given.room.joists.len();
    let lines = lines(reading, joists)?;
    let datum = Datum {
        side: if reading.word("strap_datum")? == "above" { Side::Above } else { Side::Below },
        level: reading.word("strap_level")? == "yes",
    };
    let at = if reading.word("strap_read_at").is_some() {
        elsewhere(reading, given, rows, lines)?
    } else {
        at_strips(reading, rows, lines, joists)?
    };
    let (places, strips, lines) = at;
    let readings = taken(reading, Readings::new(datum, &given.room.joists, &places, &lines))?;
    Some(Reads { readings, strips })
}

type Placed = (Vec<Length>, Vec<Option<usize>>, Vec<Line>);

/// A line for each row of strips from the near wall; rows past the last line were not read.
fn at_strips(reading: &mut Reading, rows: &[Row], mut lines: Vec<Line>, joists: usize) -> Option<Placed> {
    if lines.len() > rows.len() {
        let problem = format!(
            "{} lines were given for {} rows of strips. A line for each row is taken; where they were read elsewhere, say where.",
            lines.len(),
            rows.len()
        );
        reading.refuse("strap_readings", problem);
        return None;
    }
    lines.resize_with(rows.len(), || vec![None; joists]);
    Some((rows.iter().map(|row| row.centre).collect(), (0..rows.len()).map(Some).collect(), lines))
}

/// Lines at places of their own. The strips lie between them, at rows where nothing was read.
fn elsewhere(reading: &mut Reading, given: &Given, rows: &[Row], lines: Vec<Line>) -> Option<Placed> {
    let places = inches(reading, "strap_read_at")?;
    if places.len() != lines.len() {
        let problem = format!(
            "{} places were given for {} lines of readings. One for each line is taken.",
            places.len(),
            lines.len()
        );
        reading.refuse("strap_read_at", problem);
        return None;
    }
    if let Some(far) = places.iter().find(|place| **place > given.room.along) {
        let (far, along) = (crate::words::length(*far), crate::words::length(given.room.along));
        reading.refuse(
            "strap_read_at",
            format!("{far} was given in a room of {along}. Places within the room are taken."),
        );
        return None;
    }
    let off = |row: &Row, place: Length| (row.centre - place).abs();
    // A row is read at the nearest place, where one is near enough.
    let read_at = |row: &Row| {
        let near = places.iter().enumerate().filter(|(_, place)| off(row, **place) < ITS_OWN);
        near.min_by(|one, other| off(row, *one.1).inches().total_cmp(&off(row, *other.1).inches()))
            .map(|(index, _)| index)
    };
    let strip_at = |index: usize| rows.iter().position(|row| read_at(row) == Some(index));
    let is_read = |row: &Row| places.iter().any(|place| off(row, *place) < ITS_OWN);
    let read = places.iter().zip(lines).enumerate().map(|(index, (place, line))| (*place, strip_at(index), line));
    let mut all: Vec<(Length, Option<usize>, Line)> = read.collect();
    let in_order = all.windows(2).all(|pair| pair[0].0 < pair[1].0);
    if in_order {
        let unread = rows.iter().enumerate().filter(|(_, row)| !is_read(row));
        all.extend(unread.map(|(index, row)| (row.centre, Some(index), vec![None; given.room.joists.len()])));
        all.sort_by(|one, other| one.0.inches().total_cmp(&other.0.inches()));
    }
    let mut placed = (Vec::new(), Vec::new(), Vec::new());
    for (place, strip, line) in all {
        placed.0.push(place);
        placed.1.push(strip);
        placed.2.push(line);
    }
    Some(placed)
}

/// The lines as they were typed; what is wrong with the first that cannot be is said.
fn lines(reading: &mut Reading, joists: usize) -> Option<Vec<Line>> {
    let unit = unit(reading.word("strap_read_in")?);
    let text = reading.word("strap_readings")?.to_owned();
    let read = text.lines().enumerate().map(|(index, text)| line(text, index + 1, unit, joists));
    match read.collect() {
        Ok(lines) => Some(lines),
        Err(problem) => {
            reading.refuse("strap_readings", problem);
            None
        }
    }
}

/// Parts of an inch that a bare number is; none for inches as a tape shows them.
fn unit(word: &str) -> Option<f64> {
    match word {
        "eighths" => Some(8.0),
        "sixteenths" => Some(16.0),
        _ => None,
    }
}

fn line(text: &str, row: usize, unit: Option<f64>, joists: usize) -> Result<Line, String> {
    let text = text.trim();
    if text.is_empty() {
        return Err(format!("Line {row} is empty. Write - for a row that was not read, or take the line out."));
    }
    if is_gap(text) {
        return Ok(vec![None; joists]);
    }
    let entries = text.split([',', ';', '\t']).enumerate();
    entries
        .map(|(joist, text)| one(text.trim(), unit).map_err(|why| format!("Row {row}, joist {}: {why}", joist + 1)))
        .collect()
}

fn is_gap(text: &str) -> bool {
    matches!(text, "" | "-" | "\u{2013}" | "\u{2014}" | "?")
}

fn one(text: &str, unit: Option<f64>) -> Result<Option<Length>, String> {
    if is_gap(text) {
        return Ok(None);
    }
    match unit {
        Some(parts) if !text.contains(['"', '\'', '/']) => {
            let count = read_number(text, &[]).map_err(|problem| problem.to_string())?;
            if count < 0.0 {
                return Err(format!("{text} is below zero. Zero and more are taken."));
            }
            Ok(Some(Length::from_inches(count / parts)))
        }
        _ => Ok(Some(read_length(text, LengthUnit::Inches).map_err(|problem| problem.to_string())?.length)),
    }
}
