//! How panels and nails of a floor or a roof are written on a schedule, and how such a line is read:
//! `15/32" 8d at 4"/6", blocked`.

use core::fmt;

use measure::{Denominator, Length, LengthUnit, read_length};
use standards::sdpws_2015::table_4_2::DiaphragmPanel;
use standards::sdpws_2015::table_4_3::Sheathing;

use super::strength::{Blocking, DiaphragmNailing};
use crate::nailing_text::NAILS;

/// Why a line of panels and nails of a floor or a roof is not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DiaphragmTextError {
    given: String,
    problem: &'static str,
}

impl fmt::Display for DiaphragmTextError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "“{}” was given; {}. Taken is the panel's thickness, the common nail and its spacing at the edges, such as 7/16 8d 6, with “blocked” after it where every edge is on framing: 15/32 10d 4/6 blocked is 4 in at boundaries and 6 in at other edges. “Structural I” and “3x” are read too.",
            self.given, self.problem
        )
    }
}

impl core::error::Error for DiaphragmTextError {}

/// Spacing of an unblocked floor's edges: the only one that is printed.
const UNBLOCKED: Length = Length::from_inches(6.0);
/// A second number no less than this is the nails' spacing in the field.
const IN_THE_FIELD: f64 = 9.0;

impl fmt::Display for DiaphragmNailing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let DiaphragmPanel { grade, thickness, fastener, framing } = self.panel;
        write!(f, "{} ", thickness.to_inches_fraction(Denominator::ThirtySecond))?;
        if grade == Sheathing::StructuralI {
            write!(f, "Structural I ")?;
        }
        let nail = NAILS.iter().find(|(_, named)| *named == fastener).map_or("nails", |(name, _)| name);
        let inches = |length: Length| length.to_inches_fraction(Denominator::Sixteenth);
        match self.blocking {
            Blocking::Unblocked => write!(f, "{nail} at {}, unblocked", inches(UNBLOCKED))?,
            Blocking::Blocked { boundary, edge } if boundary == edge => {
                write!(f, "{nail} at {}, blocked", inches(edge))?;
            }
            Blocking::Blocked { boundary, edge } => {
                write!(f, "{nail} at {}/{}, blocked", inches(boundary), inches(edge))?;
            }
        }
        if framing > 2 { write!(f, ", {framing}x framing") } else { Ok(()) }
    }
}

/// Reads a line of panels and nails as it stands on a schedule: `7/16 8d 6/12 unblocked`, `15/32 10d 4/6/12 blocked`. Of
/// several spacings the first is that of the boundaries, the next that of other edges, one of 9 in and more that of the
/// field. What does not say that it is blocked is not.
///
/// # Errors
/// Where thickness, nail or spacing is missing or is none that there is, or an unblocked floor is nailed at other than 6 in.
///
/// ```
/// use bracing::diaphragm::read_diaphragm;
/// let read = read_diaphragm("15/32 10d @ 2-1/2 / 4 / 12 blocked, 3x")?;
/// assert_eq!(read.to_string(), "15/32\" 10d at 2-1/2\"/4\", blocked, 3x framing");
/// assert_eq!(read_diaphragm(&read.to_string()), Ok(read));
/// # Ok::<(), bracing::diaphragm::DiaphragmTextError>(())
/// ```
pub fn read_diaphragm(text: &str) -> Result<DiaphragmNailing, DiaphragmTextError> {
    let wrong = |problem| DiaphragmTextError { given: text.trim().to_owned(), problem };
    let plain = text.to_ascii_lowercase().replace(['"', ',', '@'], " ");
    let mut words = plain.split_whitespace();
    let thickness = words.next().and_then(|word| read_length(word, LengthUnit::Inches).ok()).map(|read| read.length);
    let thickness = thickness
        .filter(|thick| (0.25..=1.25).contains(&thick.inches()))
        .ok_or_else(|| wrong("the thickness of the panel does not stand first"))?;
    let rest: Vec<&str> = words.collect();
    let named = |word: &str| NAILS.iter().find(|(name, _)| *name == word).map(|(_, fastener)| *fastener);
    let (nail_at, fastener) = rest
        .iter()
        .enumerate()
        .find_map(|(at, word)| Some((at, named(word)?)))
        .ok_or_else(|| wrong("no nail is named"))?;
    let (boundary, edge) = spacings(rest.get(nail_at + 1..).unwrap_or_default())
        .ok_or_else(|| wrong("no spacing at the edges follows the nail"))?;
    let says = |word: &str| rest.iter().any(|one| one.starts_with(word));
    let blocking = if says("blocked") { Blocking::Blocked { boundary, edge } } else { Blocking::Unblocked };
    if blocking == Blocking::Unblocked && (boundary, edge) != (UNBLOCKED, UNBLOCKED) {
        return Err(wrong("a floor or roof that is not blocked is nailed at 6 in along its edges"));
    }
    let panel = DiaphragmPanel {
        grade: if says("str") { Sheathing::StructuralI } else { Sheathing::Sheathing },
        thickness,
        fastener,
        framing: if says("3x") { 3 } else { 2 },
    };
    Ok(DiaphragmNailing { panel, blocking })
}

/// Spacings of boundaries and of other edges among the words after the nail.
fn spacings(words: &[&str]) -> Option<(Length, Length)> {
    // A half within a spacing is no slash between two of them.
    let together = words.join(" ").replace("-1/2", ".5");
    let mut read = Vec::new();
    for word in together.split([' ', '/']).filter(|word| word.starts_with(|letter: char| letter.is_ascii_digit())) {
        let Ok(length) = read_length(word, LengthUnit::Inches) else { continue };
        read.push(length.length);
    }
    let edges: Vec<Length> = read
        .iter()
        .copied()
        .enumerate()
        .filter(|(index, length)| *index == 0 || length.inches() < IN_THE_FIELD)
        .map(|(_, length)| length)
        .collect();
    let boundary = *edges.first().filter(|edge| (1.0..=12.0).contains(&edge.inches()))?;
    Some((boundary, edges.get(1).copied().filter(|edge| edge.inches() >= 1.0).unwrap_or(boundary)))
}
