//! From what people write on a note, a drawing or a box to a nail.

mod parts;

use measure::{Length, LengthUnit, read_length};
use standards::nds_2018::appendix_l::{NailKind, NailSize, TABLE_L4};

use self::parts::{Parts, Sizes, parts};
use crate::{Nail, NailError};

/// Whole numbers that are thousandths of an inch: the diameters of nails, and no nail's length.
const THOUSANDTHS: core::ops::RangeInclusive<u32> = 60..=375;

/// A nail that was read, with what was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct NailReading {
    /// The nail.
    pub nail: Nail,
    /// What was understood, for echoing: `0.131 x 2-1/2 in (8d common)`.
    pub echo: String,
    /// Words that were read and say nothing about diameter and length: `ring`, or `16d` beside two sizes.
    pub left_out: Vec<String>,
}

/// Reads a nail as people write it: diameter and length in either order, or a penny size with its kind.
///
/// Taken are `0.131 x 2-1/2`, `2-3/8" x .113"`, `3x131` (a whole number of thousandths), `3.3 x 64 mm` (rounded to
/// a thousandth of an inch), `8d common`, `8d (0.131)` where only one nail of the table fits, and
/// `8d common (2-1/2 x 0.131)` where the two agree. A penny size without a kind beside two sizes is left out: boxes use
/// it loosely.
///
/// # Errors
/// A [`NailError`], whose text is a sentence: a penny size alone, a size the table does not hold, a name and sizes
/// that differ, a word that is not read, or sizes that no nail has.
///
/// ```
/// use fastening::read_nail;
///
/// assert_eq!(read_nail("3x131")?.echo, "0.131 x 3 in");
/// assert_eq!(read_nail("2-1/2 x .131")?.echo, "0.131 x 2-1/2 in (8d common)");
/// let alone = read_nail("16d").unwrap_err().to_string();
/// assert!(alone.contains("16d box 0.135 x 3-1/2 in"));
/// # Ok::<(), fastening::NailError>(())
/// ```
pub fn read_nail(text: &str) -> Result<NailReading, NailError> {
    if text.trim().is_empty() {
        return Err(NailError::Empty);
    }
    let parts = parts(text)?;
    let given = repeated(text);
    let (nail, left_out) = match &parts.sizes {
        Sizes::Two(one, other) => {
            let nail = Nail::from_either_order(size(one)?, size(other)?)?;
            (nail, agreed(nail, &parts, given)?)
        }
        Sizes::None | Sizes::One(_) if parts.cooler => return Err(NailError::Cooler { given }),
        Sizes::None => (named(&parts, None, given)?, parts.left_out),
        Sizes::One(one) => (named(&parts, Some(size(one)?), given)?, parts.left_out),
    };
    Ok(reading(nail, left_out))
}

/// The one nail of the table that has the penny size and whatever else was written: its kind, its diameter or its
/// length.
fn named(parts: &Parts, size: Option<Length>, given: String) -> Result<Nail, NailError> {
    let Some(penny) = parts.penny else { return Err(NailError::NotTwoSizes { given }) };
    let fits = |nail: &&NailSize| {
        nail.penny == penny
            && parts.kind.is_none_or(|kind| nail.kind == kind)
            && size.is_none_or(|size| size == nail.diameter || size == nail.length)
    };
    let can_be: Vec<_> = TABLE_L4.iter().filter(fits).collect();
    match can_be[..] {
        [] => Err(NailError::UnknownPenny { given }),
        [one] => Ok(Nail::from_size(*one)),
        _ => {
            let names = can_be.iter().map(|nail| format!("{} {}", name(nail.kind, penny), Nail::from_size(**nail)));
            Err(NailError::PennyAlone { given, can_be: names.collect::<Vec<_>>().join(", ") })
        }
    }
}

/// What of the name says nothing beside the sizes; refused where the name is another nail's.
fn agreed(nail: Nail, parts: &Parts, given: String) -> Result<Vec<String>, NailError> {
    let mut left_out = parts.left_out.clone();
    match (parts.penny, parts.kind) {
        (Some(penny), Some(kind)) => match Nail::of_size(kind, penny) {
            Some(meant) if meant == nail => {}
            Some(meant) => {
                let (named, is) = (name(kind, penny), meant.to_string());
                return Err(NailError::TwoNails { given, named, is });
            }
            None => return Err(NailError::UnknownPenny { given }),
        },
        (Some(penny), None) => left_out.push(format!("{penny}d")),
        (None, Some(kind)) => left_out.push(kind.name().to_owned()),
        (None, None) => {}
    }
    if parts.cooler {
        left_out.push("cooler".to_owned());
    }
    Ok(left_out)
}

fn reading(nail: Nail, left_out: Vec<String>) -> NailReading {
    let names: Vec<_> = nail.sizes().map(|size| name(size.kind, size.penny)).collect();
    let echo = if names.is_empty() { nail.to_string() } else { format!("{nail} ({})", names.join(", ")) };
    NailReading { nail, echo, left_out }
}

fn name(kind: NailKind, penny: u8) -> String {
    format!("{penny}d {}", kind.name())
}

/// One of the two sizes: thousandths, or a length as it is written anywhere else.
fn size(text: &str) -> Result<Length, NailError> {
    let digits_alone = text.len() <= 3 && text.bytes().all(|byte| byte.is_ascii_digit());
    if let Some(thousandths) = text.parse().ok().filter(|_| digits_alone).filter(|n| THOUSANDTHS.contains(n)) {
        return Ok(Length::from_inches(f64::from(thousandths) / 1000.0));
    }
    let length = read_length(text, LengthUnit::Inches)?.length;
    if text.ends_with("mm") {
        // A box in millimetres is not exact to more than a thousandth of an inch.
        return Ok(Length::from_inches((length.inches() * 1000.0).round() / 1000.0));
    }
    Ok(length)
}

/// The text as a sentence repeats it: on one line, cut where a phone's line would end.
fn repeated(text: &str) -> String {
    const LONGEST: usize = 40;
    let line = text.split_whitespace().collect::<Vec<_>>().join(" ");
    match line.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", &line[..end]),
        None => line,
    }
}
