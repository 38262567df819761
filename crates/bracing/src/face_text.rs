//! How the other face of a wall is written, and how such a line is read: `gypsum 1/2 5d cooler 7`.

use core::fmt;

use measure::{Denominator, Length, LengthUnit, read_length};
use standards::sdpws_2015::table_4_3::{ShearFastener, WallboardFastening};

use crate::faces::OtherFace;
use crate::nailing_text::{NailingTextError, read_nailing};

/// Why a line of the other face is not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OtherFaceTextError {
    /// A line of gypsum board.
    Board {
        /// What was given.
        given: String,
        /// What is wrong with it.
        problem: &'static str,
    },
    /// A line of panels.
    Panels(NailingTextError),
}

impl fmt::Display for OtherFaceTextError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Board { given, problem } => write!(
                f,
                "“{given}” was given; {problem}. Taken is gypsum with its thickness, cooler nails or screws and their spacing, such as gypsum 1/2 5d cooler 7, or gypsum 5/8 screws 8/12 blocked."
            ),
            Self::Panels(problem) => write!(f, "{problem} Gypsum board is taken as gypsum 1/2 5d cooler 7; or none."),
        }
    }
}

impl core::error::Error for OtherFaceTextError {}

impl fmt::Display for OtherFace {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bare => write!(f, "none"),
            Self::Panels(nailing) => write!(f, "{nailing}"),
            Self::Board(board) => write_board(f, board),
        }
    }
}

fn write_board(f: &mut fmt::Formatter<'_>, board: &WallboardFastening) -> fmt::Result {
    let nail = match board.fastener {
        ShearFastener::Cooler5d => "5d cooler",
        ShearFastener::Cooler6d => "6d cooler",
        _ => "screws",
    };
    let inches = |length: Length| length.to_inches_fraction(Denominator::Sixteenth).trim_end_matches('"').to_owned();
    write!(f, "gypsum {} {nail} {}", inches(board.thickness), inches(board.edge))?;
    if let Some(field) = board.field {
        write!(f, "/{}", inches(field))?;
    }
    if board.blocked { write!(f, " blocked") } else { Ok(()) }
}

/// Reads what is on the other face: `gypsum 1/2 5d cooler 7`, `gypsum 5/8 screws 8/12 blocked`; panels as
/// [`read_nailing`] has them; or `none`.
///
/// # Errors
/// Where thickness, fastener or spacing is missing or is none that there is.
///
/// ```
/// use bracing::read_other_face;
/// let read = read_other_face("1/2\" drywall, 5d cooler @ 7")?;
/// assert_eq!(read.to_string(), "gypsum 1/2 5d cooler 7");
/// assert_eq!(read_other_face(&read.to_string()), Ok(read));
/// assert_eq!(read_other_face("15/32 8d 4")?.to_string(), "15/32\" 8d at 4\"");
/// # Ok::<(), bracing::OtherFaceTextError>(())
/// ```
pub fn read_other_face(text: &str) -> Result<OtherFace, OtherFaceTextError> {
    let plain = text.to_ascii_lowercase().replace(['"', ',', '@'], " ");
    let words: Vec<&str> = plain.split_whitespace().collect();
    if matches!(words.as_slice(), ["none" | "nothing" | "bare"]) {
        return Ok(OtherFace::Bare);
    }
    let says = |beginnings: &[&str]| words.iter().any(|word| beginnings.iter().any(|begin| word.starts_with(begin)));
    if says(&["gypsum", "drywall", "wallboard"]) {
        return board(&words).map_err(|problem| OtherFaceTextError::Board { given: text.trim().to_owned(), problem });
    }
    read_nailing(text).map(OtherFace::Panels).map_err(OtherFaceTextError::Panels)
}

fn board(words: &[&str]) -> Result<OtherFace, &'static str> {
    let inches = |word: &str| read_length(word, LengthUnit::Inches).ok().map(|read| read.length);
    let thickness = words.iter().find_map(|word| inches(word)).filter(|thick| thick.inches() < 1.0);
    let thickness = thickness.ok_or("its thickness is not said, 1/2 or 5/8")?;
    let fastener_at = words.iter().position(|word| word.starts_with("screw") || word.starts_with("cooler"));
    let fastener_at = fastener_at.ok_or("neither cooler nails nor screws are named")?;
    let is_screw = words[fastener_at].starts_with("screw");
    let fastener = match (is_screw, words.iter().find(|word| matches!(**word, "5d" | "6d"))) {
        (true, _) => ShearFastener::DrywallScrew,
        (false, Some(&"5d")) => ShearFastener::Cooler5d,
        (false, Some(_)) => ShearFastener::Cooler6d,
        (false, None) => return Err("the cooler nail is 5d or 6d"),
    };
    let spacing = words.iter().skip(fastener_at + 1).find_map(|word| {
        let (edge, field) = word.split_once('/').map_or((*word, None), |(edge, field)| (edge, Some(field)));
        Some((inches(edge)?, field.map(inches)))
    });
    let (edge, field) = match spacing {
        Some((edge, None)) => (edge, None),
        Some((edge, Some(Some(field)))) => (edge, Some(field)),
        _ => return Err("no spacing follows its nails or screws"),
    };
    if is_screw && field.is_none() {
        return Err("screws want both spacings, at the edges and in the field, such as 8/12");
    }
    let fits = |length: Length| (1.0..=24.0).contains(&length.inches());
    if !fits(edge) || !field.is_none_or(fits) {
        return Err("its spacing is not from 1 to 24 in");
    }
    let blocked = words.contains(&"blocked");
    Ok(OtherFace::Board(WallboardFastening { thickness, fastener, edge, field, blocked }))
}
