//! Openings of a wall, a line each: `door 3' 2" x 6' 10" at 4'`, `window 5' x 4' at 12' 6", sill 3', jacks 2`.

use layout::wall::{Header, Opening};
use measure::{Length, LengthUnit, read_length};

use super::lined::{Words, lined};
use crate::bracing::lists::length;
use crate::reading::Reading;

/// What a line may be, said where one is not.
const SUCH_AS: &str = "such as door 3' 2\" x 6' 10\" at 4', or window 5' x 4' at 12' 6\", sill 3', jacks 2";
/// Words that what follows them is told by.
const KEYS: [&str; 10] = ["at", "center", "centre", "sill", "head", "jacks", "kings", "header", "flats", "sills"];
/// A head that is given twice may differ by what a tape cannot tell.
const SAME: Length = Length::from_inches(1.0 / 16.0);

/// What an opening has that its line does not say.
#[derive(Clone, Copy)]
pub(super) struct Usual {
    /// Depth of its header.
    pub(super) header: Length,
}

/// Openings with the number of the line that each stands in; what is wrong with the first that cannot be is said.
pub(super) fn openings(reading: &mut Reading, id: &'static str, usual: Usual) -> Option<Vec<(usize, Opening)>> {
    lined(reading, id, |line| opening(line, usual))
}

fn opening(line: &str, usual: Usual) -> Result<Opening, String> {
    let (kind, rest) = line.split_once(char::is_whitespace).unwrap_or((line, ""));
    let kind = kind.to_lowercase();
    if !["door", "window", "opening"].contains(&kind.as_str()) {
        return Err(format!(
            "“{line}” was given; a line that begins with door, window or opening is taken, {SUCH_AS}."
        ));
    }
    let words = Words::of(rest, &KEYS)?;
    let (width, height) =
        words.size().ok_or_else(|| format!("“{line}” was given; a width x a height is taken, {SUCH_AS}."))?;
    let (width, height) = (length(width, (0.25, 60.0))?, length(height, (0.5, 24.0))?);
    let (head, sill) = heights(&kind, &words, height)?;
    Ok(Opening {
        from: from(&words, width)?,
        width,
        head,
        sill,
        sill_plates: words.count("sills", (1, 3))?.unwrap_or(1),
        jacks: words.count("jacks", (0, 6))?.unwrap_or(1),
        kings: words.count("kings", (1, 8))?.unwrap_or(1),
        header: header(&words, usual)?,
    })
}

/// Its near side: given, or half a width before its centre.
fn from(words: &Words, width: Length) -> Result<Length, String> {
    let place = (0.0, 200.0);
    let centre = words.length("center", place)?.or(words.length("centre", place)?);
    match (words.length("at", place)?, centre) {
        (Some(from), None) => Ok(from),
        (None, Some(centre)) => Ok(centre - width / 2.0),
        (None, None) => Err("No place was given; at 4' is taken for its left side, or center 5' 7\".".to_owned()),
        (Some(_), Some(_)) => Err("at and center were both given; one of them is taken.".to_owned()),
    }
}

/// Its top, and its bottom where it has a sill.
fn heights(kind: &str, words: &Words, height: Length) -> Result<(Length, Option<Length>), String> {
    let limits = (0.0, 24.0);
    let (sill, head) = (words.length("sill", limits)?, words.length("head", limits)?);
    match (kind, sill, head) {
        ("door", Some(_), _) => Err("A sill was given at a door; window is taken for what has a sill.".to_owned()),
        ("door" | "opening", None, None) => Ok((height, None)),
        ("door" | "opening", None, Some(head)) if (head - height).abs() <= SAME => Ok((height, None)),
        ("door" | "opening", None, Some(_)) => {
            Err("Another head than its height was given; of what reaches the floor one of both is taken.".to_owned())
        }
        (_, Some(sill), None) => Ok((sill + height, Some(sill))),
        (_, None, Some(head)) => Ok((head, Some(head - height))),
        (_, Some(sill), Some(head)) if (sill + height - head).abs() <= SAME => Ok((sill + height, Some(sill))),
        (_, Some(_), Some(_)) => {
            Err("The sill and the height were given, and another head; two of the three are taken.".to_owned())
        }
        (_, None, None) => {
            Err("No height was given of a window; sill 3' is taken, over the subfloor, or head 6' 10\".".to_owned())
        }
    }
}

/// `9-1/4`, or `9-1/4 x 2` with its plies.
fn header(words: &Words, usual: Usual) -> Result<Header, String> {
    let flat_plates = words.count("flats", (0, 4))?.unwrap_or(0);
    let Some(text) = words.after("header") else {
        return Ok(Header { depth: usual.header, plies: 2, flat_plates });
    };
    let (depth, plies) = text.split_once(['x', '×']).map_or((text, "2"), |(depth, plies)| (depth.trim(), plies.trim()));
    let refused = || {
        format!("header {text} was given; a depth from 1-1/2\" to 36\" and 1 to 6 plies are taken, such as 9-1/4 x 2.")
    };
    let depth = read_length(depth, LengthUnit::Inches).map_err(|_| refused())?.length;
    let plies = plies.parse().ok().filter(|plies| (1..=6).contains(plies)).ok_or_else(refused)?;
    if (1.5..=36.0).contains(&depth.inches()) { Ok(Header { depth, plies, flat_plates }) } else { Err(refused()) }
}
