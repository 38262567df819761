//! How panels and nails are written on a schedule, and how such a line is read: `7/16" 8d at 4"`.

use core::fmt;

use measure::{Denominator, Length, LengthUnit, read_length};
use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};

use crate::strength::Nailing;

/// Why a line of panels and nails is not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NailingTextError {
    given: String,
    problem: &'static str,
}

impl fmt::Display for NailingTextError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "“{}” was given; {}. Taken is the panel's thickness, the common nail and its spacing at the edges, such as 7/16 8d 4, with “Structural I” or “both faces” after it where it is so.",
            self.given, self.problem
        )
    }
}

impl core::error::Error for NailingTextError {}

pub(crate) const NAILS: [(&str, ShearFastener); 3] =
    [("6d", ShearFastener::Common6d), ("8d", ShearFastener::Common8d), ("10d", ShearFastener::Common10d)];

/// The common nail as a schedule has it: `8d`.
pub(crate) fn nail_short(fastener: ShearFastener) -> &'static str {
    NAILS.iter().find(|(_, of)| *of == fastener).map_or("nails", |(name, _)| name)
}

impl fmt::Display for Nailing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} ", self.thickness.to_inches_fraction(Denominator::ThirtySecond))?;
        if self.sheathing == Sheathing::StructuralI {
            write!(f, "Structural I ")?;
        }
        let nail = nail_short(self.fastener);
        write!(f, "{nail} at {}", self.edge.to_inches_fraction(Denominator::Sixteenth))?;
        if self.both_faces { write!(f, ", both faces") } else { Ok(()) }
    }
}

/// Reads a line of panels and nails as it stands on a schedule: `7/16 8d 4`, `15/32" Structural I 10d @ 3, both faces`. Of
/// `4/12` after the nail the first number is the edges'. Panels are taken to stand along the studs.
///
/// # Errors
/// Where thickness, nail or spacing is missing or is none that there is.
///
/// ```
/// use bracing::read_nailing;
/// let read = read_nailing("15/32 structural i 10d @ 3/12 both sides")?;
/// assert_eq!(read.to_string(), "15/32\" Structural I 10d at 3\", both faces");
/// assert_eq!(read_nailing(&read.to_string()), Ok(read));
/// # Ok::<(), bracing::NailingTextError>(())
/// ```
pub fn read_nailing(text: &str) -> Result<Nailing, NailingTextError> {
    let wrong = |problem| NailingTextError { given: text.trim().to_owned(), problem };
    let plain = text.to_ascii_lowercase().replace(['"', ',', '@'], " ");
    let mut words = plain.split_whitespace();
    let thickness = words.next().and_then(|word| read_length(word, LengthUnit::Inches).ok()).map(|read| read.length);
    let thickness = thickness
        .filter(|thick| (0.25..=1.25).contains(&thick.inches()))
        .ok_or_else(|| wrong("the thickness of the panel does not stand first"))?;
    let rest: Vec<&str> = words.collect();
    let named = |word: &str| NAILS.iter().find(|(name, _)| *name == word).map(|(_, fastener)| *fastener);
    let nail_at = rest.iter().position(|word| named(word).is_some()).ok_or_else(|| wrong("no nail is named"))?;
    let after = rest.get(nail_at + 1..).unwrap_or_default();
    let spacing = |word: &&str| read_length(word.split('/').next()?, LengthUnit::Inches).ok().map(|read| read.length);
    let edge = after
        .iter()
        .find_map(spacing)
        .filter(|edge| (1.0..=12.0).contains(&edge.inches()))
        .ok_or_else(|| wrong("no spacing at the edges follows the nail"))?;
    let says = |word: &str| rest.iter().any(|one| one.starts_with(word));
    Ok(Nailing {
        sheathing: if says("structural") || says("str") { Sheathing::StructuralI } else { Sheathing::Sheathing },
        thickness,
        fastener: rest.get(nail_at).and_then(|word| named(word)).ok_or_else(|| wrong("no nail is named"))?,
        edge,
        across_studs: false,
        both_faces: says("both")
            || says("two")
            || after.windows(2).any(|pair| matches!(pair, ["2", "sides" | "faces"])),
    })
}

/// Length the nails of a nailing have: common nails.
#[must_use]
pub const fn nail_length(fastener: ShearFastener) -> Option<Length> {
    match fastener {
        ShearFastener::Common6d => Some(Length::from_inches(2.0)),
        ShearFastener::Common8d => Some(Length::from_inches(2.5)),
        ShearFastener::Common10d => Some(Length::from_inches(3.0)),
        _ => None,
    }
}

/// The common nail by its name: `8d common`.
#[must_use]
pub const fn nail_name(fastener: ShearFastener) -> &'static str {
    match fastener {
        ShearFastener::Common6d => "6d common",
        ShearFastener::Common8d => "8d common",
        ShearFastener::Common10d => "10d common",
        _ => "",
    }
}

/// Diameter and length of the common nail in words: `0.131 x 2-1/2"`.
#[must_use]
pub const fn nail_words(fastener: ShearFastener) -> &'static str {
    match fastener {
        ShearFastener::Common6d => "6d common (0.113 x 2\")",
        ShearFastener::Common8d => "8d common (0.131 x 2-1/2\")",
        ShearFastener::Common10d => "10d common (0.148 x 3\")",
        _ => "nails of the schedule",
    }
}
