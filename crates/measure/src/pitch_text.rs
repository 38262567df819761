//! A roof's pitch, read as carpenters and drawings write it: `6/12`, `6 in 12`, `4 3/4:12`, `6`, `26.57°`.

use crate::given::repeated;
use crate::{Angle, LengthUnit, Slope, read_length, read_number};

/// Steepest pitch that is read, rise in twelve: some 80 degrees.
const STEEPEST: f64 = 68.0;

/// Why a text is not a pitch; `Display` is a sentence for the person who typed it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PitchError {
    /// Nothing was typed.
    #[error("Nothing was typed. Write a pitch such as 6/12, 6 in 12 or 26.6 degrees.")]
    Empty,
    /// No pitch.
    #[error("{given} is not a pitch. Write the rise on twelve, such as 6/12, 6 in 12 or 4 3/4:12, or degrees: 26.6°.")]
    NotAPitch {
        /// What was typed.
        given: String,
    },
    /// A run other than twelve.
    #[error("{given} is not on a run of 12. Write the rise on twelve, such as 6/12.")]
    NotOnTwelve {
        /// What was typed.
        given: String,
    },
    /// Steeper than any roof.
    #[error("{given} is too steep for a roof. Up to 68/12 is read.")]
    TooSteep {
        /// What was typed.
        given: String,
    },
}

/// Reads a roof's pitch: the rise on twelve, alone or with its run, or an angle with its unit.
///
/// # Errors
/// A [`PitchError`], whose text is a sentence.
///
/// # Example
/// ```
/// use measure::{Slope, read_pitch};
///
/// assert_eq!(read_pitch("4 3/4:12"), Ok(Slope::from_rise_in_twelve(4.75)));
/// assert!(read_pitch("6/10").is_err());
/// ```
pub fn read_pitch(text: &str) -> Result<Slope, PitchError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(PitchError::Empty);
    }
    let given = || repeated(text);
    let slope = match degrees(text) {
        Some(degrees) => Slope::of_angle(degrees),
        None => Slope::from_rise_in_twelve(rise(text)?),
    };
    match slope.rise_in_twelve() {
        rise if rise < 0.0 => Err(PitchError::NotAPitch { given: given() }),
        rise if rise > STEEPEST => Err(PitchError::TooSteep { given: given() }),
        _ => Ok(slope),
    }
}

fn degrees(text: &str) -> Option<Angle> {
    let degrees = read_number(text, &["°", "deg", "degrees"]).ok()?;
    // Without its unit a number is a rise. An upright wall has no pitch.
    let with_unit = !text.ends_with(|last: char| last.is_ascii_digit() || last == '.');
    (with_unit && (0.0..89.0).contains(&degrees)).then(|| Angle::from_degrees(degrees))
}

fn rise(text: &str) -> Result<f64, PitchError> {
    let given = || repeated(text);
    let (rise, run) = in_two(text).unwrap_or((text, "12"));
    if run.trim() != "12" {
        return Err(PitchError::NotOnTwelve { given: given() });
    }
    let rise = rise.trim();
    let in_inches = rise.chars().all(|letter| letter.is_ascii_digit() || " .-/".contains(letter));
    let read = read_length(rise, LengthUnit::Inches).ok().filter(|_| in_inches);
    read.map(|read| read.length.inches()).ok_or_else(|| PitchError::NotAPitch { given: given() })
}

/// Rise and run. A stroke parts them only before the run: `4 3/4/12` has two, and `3/4` alone is no pitch.
fn in_two(text: &str) -> Option<(&str, &str)> {
    const WORDS: [&str; 4] = [":", " in ", " on ", "-in-"];
    WORDS.iter().find_map(|word| text.split_once(word)).or_else(|| text.rsplit_once('/'))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pitches_as_they_are_written() {
        let cases = [
            ("6/12", 6.0),
            ("6", 6.0),
            ("4 in 12", 4.0),
            ("4:12", 4.0),
            ("7-in-12", 7.0),
            ("4 3/4:12", 4.75),
            ("4-3/4 in 12", 4.75),
            ("4 3/4/12", 4.75),
            ("2.5/12", 2.5),
            ("0", 0.0),
            ("12 on 12", 12.0),
        ];
        for (text, rise) in cases {
            assert_eq!(read_pitch(text), Ok(Slope::from_rise_in_twelve(rise)), "{text}");
        }
        for text in ["45°", "45 deg", "45 degrees"] {
            assert!((read_pitch(text).unwrap().rise_in_twelve() - 12.0).abs() < 1e-12, "{text}");
        }
    }

    #[test]
    fn what_is_no_pitch_is_refused_in_a_sentence() {
        for text in ["", "steep", "6/10", "3/4", "-4", "90/12", "89°", "6' /12", "6 ft in 12", "/12"] {
            let problem = read_pitch(text).unwrap_err().to_string();
            assert!(
                problem.ends_with('.') && problem.contains("rit") || problem.contains("68/12"),
                "{text}: {problem}"
            );
        }
    }
}
