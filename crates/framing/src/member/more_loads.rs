//! Loads that are written out, each by its kind: `L 2400 lb at 4'; D 120 plf from 2' to 8'; S 0 to 300 plf`.

use measure::{Force, Length, LengthUnit, LineLoad, read_length};
use members::beam::Load;
use members::flexure::{Acting, Case};

/// The most loads that one beam is given.
const MOST: usize = 20;

/// Reads loads on a beam of this length.
///
/// # Errors
/// A sentence: which load, what is wrong with it, and what is taken.
pub(super) fn read(text: &str, length: Length) -> Result<Vec<Acting>, String> {
    let items: Vec<&str> = text.split(';').map(str::trim).filter(|item| !item.is_empty()).collect();
    if items.len() > MOST {
        return Err(format!("{} loads were given; up to {MOST} are taken.", items.len()));
    }
    items.into_iter().map(|item| one(item, length)).collect()
}

fn one(item: &str, length: Length) -> Result<Acting, String> {
    let taken = "Write such as L 2400 lb at 4', D 120 plf from 2' to 8', or S 0 to 300 plf.";
    let wrong = |what: &str| format!("“{item}”: {what}. {taken}");
    let (kind, rest) = item.split_once(char::is_whitespace).ok_or_else(|| wrong("a kind and a load are needed"))?;
    let (case, sign) = match kind.to_ascii_lowercase().as_str() {
        "d" => (Case::Dead, 1.0),
        "l" => (Case::Live, 1.0),
        "lr" => (Case::RoofLive, 1.0),
        "s" => (Case::Snow, 1.0),
        "w" => (Case::WindDown, 1.0),
        "-w" | "\u{2212}w" => (Case::WindUp, -1.0),
        _ => return Err(wrong("its kind is one of D, L, Lr, S, W, -W")),
    };
    let place = |text: &str| -> Result<Length, String> {
        let read = read_length(text.trim(), LengthUnit::Feet)
            .map_err(|problem| wrong(problem.to_string().trim_end_matches('.')))?;
        if read.length > length || read.length < Length::ZERO {
            let (given, whole) = (crate::words::length(read.length), crate::words::length(length));
            return Err(wrong(&format!("{given} is not on the beam, which is {whole} long")));
        }
        Ok(read.length)
    };
    let number = |text: &str| -> Result<f64, String> {
        let plain = text.trim().replace(',', "");
        match plain.parse::<f64>() {
            Ok(number) if number.is_finite() && (0.0..=200_000.0).contains(&number) => Ok(number),
            _ => Err(wrong(&format!("{text:?} is not a load from 0 to 200,000"))),
        }
    };
    let lower = rest.to_ascii_lowercase();
    if let Some((force, at)) = lower.split_once(" at ") {
        let force = force.trim().strip_suffix("lb").ok_or_else(|| wrong("a load at a point is in lb"))?;
        let load = Load::point(place(at)?, Force::from_pounds(number(force)? * sign));
        return Ok(Acting { case, load });
    }
    let (size, range) = match lower.split_once(" from ") {
        Some((size, range)) => (size, Some(range)),
        None => (lower.as_str(), None),
    };
    let size = size
        .trim()
        .strip_suffix("plf")
        .ok_or_else(|| wrong("a load along it is in plf, one at a point in lb and at a place"))?;
    let (start, end) = match size.split_once(" to ") {
        Some((start, end)) => (number(start)?, number(end)?),
        None => (number(size)?, number(size)?),
    };
    let (from, to) = match range {
        Some(range) => {
            let (from, to) = range.split_once(" to ").ok_or_else(|| wrong("where it ends is missing"))?;
            (place(from)?, place(to)?)
        }
        None => (Length::ZERO, length),
    };
    if to <= from {
        return Err(wrong("it ends where it begins, or before"));
    }
    let plf = |number: f64| LineLoad::from_plf(number * sign);
    Ok(Acting { case, load: Load::linear(from, to, plf(start), plf(end)) })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn loads_as_people_write_them() {
        let length = Length::from_feet(12.0);
        let loads = read("L 2,400 lb at 4'; D 120 plf from 2' to 8'; S 0 to 300 plf; -W 90 plf;", length).unwrap();
        assert_eq!(loads.len(), 4);
        assert_eq!(loads[0].load, Load::point(Length::from_feet(4.0), Force::from_pounds(2400.0)));
        let even = LineLoad::from_plf(120.0);
        assert_eq!(loads[1].load, Load::linear(Length::from_feet(2.0), Length::from_feet(8.0), even, even));
        assert_eq!(loads[2].load, Load::linear(Length::ZERO, length, LineLoad::ZERO, LineLoad::from_plf(300.0)));
        assert_eq!((loads[3].case, loads[2].case), (Case::WindUp, Case::Snow));
    }

    #[test]
    fn what_cannot_be_read_is_named() {
        let length = Length::from_feet(12.0);
        for (text, says) in [
            ("120", "a kind and a load"),
            ("X 120 plf", "one of D, L, Lr, S, W, -W"),
            ("L 300 lb", "in plf"),
            ("L 300 plf at 3'", "in lb"),
            ("L 300 lb at 14'", "not on the beam"),
            ("D ten plf", "not a load"),
            ("D 10 plf from 8' to 2'", "ends where it begins"),
            ("D -10 plf", "not a load"),
        ] {
            let problem = read(text, length).unwrap_err();
            assert!(problem.contains(says), "{text}: {problem}");
        }
    }
}
