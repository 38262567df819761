//! Several values in one input, with commas between them.

use bracing::Opening;
use measure::{Force, Length, LengthUnit, LineLoad, read_length, read_number};

use crate::reading::Reading;
use crate::words;

/// The most values that one input takes.
const MOST: usize = 12;

/// What stands between commas; a comma within a number, as in `2,400`, parts nothing. None when nothing stands there, or
/// too much; that is then said.
fn parts(reading: &mut Reading, id: &'static str) -> Option<Vec<String>> {
    let text = reading.word(id)?.to_owned();
    let mut parts: Vec<String> = Vec::new();
    for part in text.split([',', ';']) {
        let goes_on = part.len() >= 3
            && part.chars().take(3).all(|letter| letter.is_ascii_digit())
            && !part.chars().nth(3).is_some_and(|letter| letter.is_ascii_digit());
        match parts.last_mut().filter(|last| goes_on && last.trim_end().ends_with(|end: char| end.is_ascii_digit())) {
            Some(last) => last.push_str(part),
            None => parts.push(part.to_owned()),
        }
    }
    let parts: Vec<String> = parts.iter().map(|part| part.trim().to_owned()).filter(|part| !part.is_empty()).collect();
    if (1..=MOST).contains(&parts.len()) {
        return Some(parts);
    }
    let problem = format!("{} values were given; one to {MOST} are taken, with a comma between them.", parts.len());
    reading.refuse(id, problem);
    None
}

/// Each part read; what is wrong with the first that cannot be is said.
pub(crate) fn each<T>(
    reading: &mut Reading,
    id: &'static str,
    mut read: impl FnMut(&str) -> Result<T, String>,
) -> Option<Vec<T>> {
    let parts = parts(reading, id)?;
    match parts.iter().map(|part| read(part)).collect() {
        Ok(values) => Some(values),
        Err(problem) => {
            reading.refuse(id, problem);
            None
        }
    }
}

/// Lengths, a bare number in feet, from the least to the most that is taken.
pub(crate) fn lengths(reading: &mut Reading, id: &'static str, (least, most): (f64, f64)) -> Option<Vec<Length>> {
    each(reading, id, |part| length(part, (least, most)))
}

/// A length, a bare number in feet, from the least to the most that is taken, feet.
pub(crate) fn length(part: &str, (least, most): (f64, f64)) -> Result<Length, String> {
    let read = read_length(part, LengthUnit::Feet).map_err(|problem| problem.to_string())?.length;
    if (least..=most).contains(&read.feet()) {
        return Ok(read);
    }
    let (given, least, most) =
        (words::length(read), words::length(Length::from_feet(least)), words::length(Length::from_feet(most)));
    Err(format!("{given} was given; from {least} to {most} is taken."))
}

/// Forces, in pounds.
pub(super) fn forces(reading: &mut Reading, id: &'static str) -> Option<Vec<Force>> {
    each(reading, id, |part| number(part, &["lb", "lbs", "pounds"]).map(Force::from_pounds))
}

/// Loads along a wall.
pub(super) fn line_loads(reading: &mut Reading, id: &'static str) -> Option<Vec<LineLoad>> {
    each(reading, id, |part| number(part, &["plf", "lb/ft"]).map(LineLoad::from_plf))
}

fn number(part: &str, units: &'static [&'static str]) -> Result<f64, String> {
    let read = read_number(part, units).map_err(|problem| problem.to_string())?;
    if (0.0..=200_000.0).contains(&read) {
        return Ok(read);
    }
    Err(format!("{part} was given; from 0 to 200,000 is taken."))
}

/// Openings: `6' x 4'`, with `open` after one that has no panel above and below it.
pub(super) fn openings(reading: &mut Reading, id: &'static str) -> Option<Vec<Opening>> {
    each(reading, id, |part| {
        let plain = part.to_lowercase();
        let (size, sheathed) = match plain.strip_suffix("open") {
            Some(size) => (size.trim(), false),
            None => (plain.as_str(), true),
        };
        let (width, height) = size
            .split_once(['x', '×'])
            .ok_or_else(|| format!("“{part}” was given; a width and a height are taken, such as 6' x 4'."))?;
        Ok(Opening { width: length(width.trim(), (0.5, 40.0))?, height: length(height.trim(), (0.5, 24.0))?, sheathed })
    })
}

/// Walls of a line one after the other: a length, with `open` after one where there is no wall. True where there is one.
pub(super) fn walls_and_gaps(reading: &mut Reading, id: &'static str) -> Option<Vec<(Length, bool)>> {
    each(reading, id, |part| {
        let plain = part.to_lowercase();
        let (long, is_wall) = match plain.strip_suffix("open") {
            Some(long) => (long.trim(), false),
            None => (plain.as_str(), true),
        };
        Ok((length(long, (0.25, 200.0))?, is_wall))
    })
}
