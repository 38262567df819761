//! What a ceiling takes: strips, bundles, nails or screws.

use measure::Length;
use standards::{Source, Status};

use super::error::{StrappingError, within};
use super::set_out::Strapping;

/// Two nails of 2-1/2 in, or two screws, where a strip crosses a joist.
pub const NAILS_A_CROSSING: (usize, Source) =
    (2, Source::new("Web article on furring strips", "fastening", Status::LookedUp));

/// Strips as they are bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stock {
    /// 8 ft.
    Eight,
    /// 10 ft.
    Ten,
    /// 12 ft.
    Twelve,
    /// 14 ft.
    Fourteen,
    /// 16 ft.
    Sixteen,
}

impl Stock {
    /// Every length, the shortest first.
    pub const ALL: [Self; 5] = [Self::Eight, Self::Ten, Self::Twelve, Self::Fourteen, Self::Sixteen];

    /// How long it is.
    #[must_use]
    pub const fn length(self) -> Length {
        Length::from_feet(match self {
            Self::Eight => 8.0,
            Self::Ten => 10.0,
            Self::Twelve => 12.0,
            Self::Fourteen => 14.0,
            Self::Sixteen => 16.0,
        })
    }
}

/// How a ceiling is bought and fastened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TakeOffWish {
    /// Length of the strips.
    pub stock: Stock,
    /// What the saw takes at each cut.
    pub kerf: Length,
    /// Strips in a bundle: commonly 10 or 12, from memory.
    pub bundle: usize,
    /// Nails or screws at a crossing; as many again at a joint. See [`NAILS_A_CROSSING`].
    pub fasteners: usize,
}

/// What a ceiling takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TakeOff {
    /// Pieces, the short ones counted.
    pub pieces: usize,
    /// Length of all pieces together.
    pub length: Length,
    /// Strips, each piece cut from the first one with room for it, the longest pieces first.
    pub strips: usize,
    /// No cutting needs fewer than this: length and kerf over the strip's own.
    pub at_least: usize,
    /// Bundles.
    pub bundles: usize,
    /// Nails or screws at crossings and joints. Short pieces along a wall have no joist of their own and are not counted.
    pub fasteners: usize,
    /// What is bought and not used, the kerfs in it.
    pub waste: Length,
}

const KERF: [Length; 2] = [Length::ZERO, Length::from_inches(0.5)];
/// Pieces are differences of places, which may be off by the last bit.
const SAME: Length = Length::from_inches(1e-9);
const MOST_IN_A_BUNDLE: usize = 1000;
const MOST_FASTENERS: usize = 10;

/// Counts what a ceiling takes.
///
/// Source: first fit, the longest first: never more than 11/9 of the fewest strips and a strip more. The best cutting of all
/// pieces together is a takeoff's.
///
/// # Errors
/// Where the kerf is over 1/2 in, a bundle has no strip or over 1,000, a crossing no fastener or over 10, or a piece is
/// longer than the strips, which were not those it was set out for.
pub fn take_off(strapping: &Strapping, wish: &TakeOffWish) -> Result<TakeOff, StrappingError> {
    within("the kerf", wish.kerf, KERF)?;
    count("strips in a bundle", wish.bundle, MOST_IN_A_BUNDLE)?;
    count("fasteners at a crossing", wish.fasteners, MOST_FASTENERS)?;
    let pieces = pieces(strapping);
    let stock = wish.stock.length();
    for piece in &pieces {
        within("a piece", *piece, [Length::ZERO, stock + SAME])?;
    }
    let length: Length = pieces.iter().copied().sum();
    let strips = first_fit(&pieces, stock, wish.kerf);
    let with_kerfs = length + wish.kerf * pieces.len() as f64;
    Ok(TakeOff {
        pieces: pieces.len(),
        length,
        strips,
        // The last cut of a strip may fall off its end: each strip is a kerf longer in this count.
        at_least: (with_kerfs / (stock + wish.kerf) - 1e-9).ceil() as usize,
        bundles: strips.div_ceil(wish.bundle),
        fasteners: wish.fasteners * (strapping.crossings + strapping.joints),
        waste: stock * strips as f64 - length,
    })
}

fn count(what: &'static str, given: usize, most: usize) -> Result<(), StrappingError> {
    if (1..=most).contains(&given) { Ok(()) } else { Err(StrappingError::Count { what, given, most }) }
}

/// All pieces, the longest first.
fn pieces(strapping: &Strapping) -> Vec<Length> {
    let runs = strapping.rows.iter().flat_map(|row| &row.runs);
    let runs = runs.chain(strapping.backing.iter().map(|backing| &backing.run));
    let mut pieces: Vec<Length> = runs.flat_map(|run| run.pieces.iter().copied()).collect();
    pieces.extend(strapping.short_pieces.iter().flatten());
    pieces.sort_unstable_by(|one, other| other.inches().total_cmp(&one.inches()));
    pieces
}

fn first_fit(pieces: &[Length], stock: Length, kerf: Length) -> usize {
    let mut left: Vec<Length> = Vec::new();
    for piece in pieces {
        let place = left.iter().position(|left| *left + SAME >= *piece + kerf);
        match place.and_then(|place| left.get_mut(place)) {
            Some(left) => *left = *left - *piece - kerf,
            None => left.push(stock - *piece),
        }
    }
    left.len()
}
