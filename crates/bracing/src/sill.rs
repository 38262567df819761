//! Anchor bolts along one piece of a bottom plate: how many the push and the uplift need, and how far apart they stand.

use core::fmt;

use measure::{Force, Length, LineLoad, Ratio};
use standards::irc_2021::r403_1_6;

/// The most bolts that one piece of plate is given.
const MOST: u32 = 200;

/// A piece of bottom plate and what it hands to its bolts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SillPiece {
    /// Its length.
    pub length: Length,
    /// From each end to the first bolt.
    pub ends: [Length; 2],
    /// Push along it, allowable stress design.
    pub push: Force,
    /// Uplift along it, allowable stress design.
    pub uplift: LineLoad,
}

/// What one bolt carries.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneBolt {
    /// Across its shank.
    pub shear: Force,
    /// Against uplift: washer and anchorage.
    pub uplift: Force,
}

/// A row of bolts in a piece of plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SillAnswer {
    /// How many.
    pub bolts: u32,
    /// From one to the next; none where there is one alone.
    pub spacing: Option<Length>,
    /// What each takes of the push, which all share alike.
    pub shear: Force,
    /// The most that one takes of the uplift: half of the plate to each neighbour, and the end past the last one.
    pub uplift: Force,
    /// `shear` over what one carries.
    pub shear_share: Ratio,
    /// `uplift` over what one holds.
    pub uplift_share: Ratio,
}

impl SillAnswer {
    /// The harder of the two shares. Both at once are not worked: see [`check_sill`].
    #[must_use]
    pub fn used(&self) -> Ratio {
        self.shear_share.max(self.uplift_share)
    }
}

/// Why a piece of plate has no row of bolts.
#[derive(Clone, Debug, PartialEq)]
pub enum SillError {
    /// Nothing of the piece is left between the two ends.
    EndsMeet {
        /// Length of the piece.
        length: Length,
        /// Both distances together.
        ends: Length,
    },
    /// A bolt that carries nothing.
    CarriesNothing,
    /// More bolts than a piece of plate holds.
    TooMany,
}

impl fmt::Display for SillError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::EndsMeet { length, ends } => write!(
                f,
                "The piece is {} in long, and its bolts stand {} in from its two ends together. Give a longer piece, or \
                 shorter distances.",
                length.inches(),
                ends.inches()
            ),
            Self::CarriesNothing => f.write_str(
                "One bolt carries nothing of what is asked. Take another bolt or washer, or ask the engineer.",
            ),
            Self::TooMany => f.write_str(
                "No number of bolts in this piece carries what is asked. Take thicker bolts, larger washers or shorter \
                 ends, or ask the engineer.",
            ),
        }
    }
}

impl core::error::Error for SillError {}

/// So many bolts in a piece of plate, evenly between its ends: what each takes, and its shares.
///
/// Push and uplift are each looked at alone. What washer, plate and concrete carry of both at once is not here: of the
/// concrete its own standard says it.
///
/// Source: statics.
///
/// # Errors
/// When the two ends leave nothing between them, or a load meets a bolt that carries nothing of it.
pub fn check_sill(piece: &SillPiece, one: OneBolt, bolts: u32) -> Result<SillAnswer, SillError> {
    let [left, right] = piece.ends;
    let between = piece.length - left - right;
    let longest_end = left.max(right);
    if between < Length::ZERO {
        return Err(SillError::EndsMeet { length: piece.length, ends: left + right });
    }
    let bolts = bolts.max(1);
    let spacing = (bolts > 1).then(|| between / f64::from(bolts - 1));
    let takes = match spacing {
        None => piece.length,
        Some(spacing) if bolts == 2 => spacing / 2.0 + longest_end,
        Some(spacing) => spacing.max(spacing / 2.0 + longest_end),
    };
    let (shear, uplift) = (piece.push / f64::from(bolts), piece.uplift * takes);
    Ok(SillAnswer {
        bolts,
        spacing,
        shear,
        uplift,
        shear_share: share(shear, one.shear)?,
        uplift_share: share(uplift, one.uplift)?,
    })
}

fn share(takes: Force, of: Force) -> Result<Ratio, SillError> {
    if takes <= Force::ZERO {
        return Ok(0.0);
    }
    if of <= Force::ZERO { Err(SillError::CarriesNothing) } else { Ok(takes / of) }
}

/// The fewest bolts of a piece of plate that carry its push and its uplift, and that the code takes: two a piece of any
/// length, no farther apart than 6 ft.
///
/// Source: statics; IRC 2021 R403.1.6 for the least.
///
/// # Errors
/// As [`check_sill`], and when more than 200 bolts would be needed.
///
/// ```
/// use bracing::{OneBolt, SillPiece, fewest_bolts};
/// use measure::{Force, Length, LineLoad};
///
/// let foot = Length::from_inches(12.0);
/// let piece =
///     SillPiece { length: foot * 8.0, ends: [foot, foot], push: Force::from_pounds(3200.0), uplift: LineLoad::ZERO };
/// let one = OneBolt { shear: Force::from_pounds(944.0), uplift: Force::ZERO };
/// let found = fewest_bolts(&piece, one)?;
/// assert_eq!((found.bolts, found.spacing), (4, Some(foot * 2.0)));
/// # Ok::<(), bracing::SillError>(())
/// ```
pub fn fewest_bolts(piece: &SillPiece, one: OneBolt) -> Result<SillAnswer, SillError> {
    // Decimals of an inch and shares of a pound are not exact in binary.
    const ROUNDING: f64 = 1.0 + 1e-9;
    let (least, _) = r403_1_6::bolts_needed(piece.length);
    for bolts in u32::from(least.max(1))..=MOST {
        let answer = check_sill(piece, one, bolts)?;
        let near = answer.spacing.is_none_or(|spacing| spacing <= r403_1_6::SPACING * ROUNDING);
        if near && answer.used() <= ROUNDING {
            return Ok(answer);
        }
        // More bolts help the push and the plate between them, and not the end past the last one.
        let past_end = piece.uplift * piece.ends[0].max(piece.ends[1]);
        if share(past_end, one.uplift)? > ROUNDING {
            return Err(SillError::TooMany);
        }
    }
    Err(SillError::TooMany)
}

/// The bolts that a spacing puts into a piece, the last space no wider than the others.
#[must_use]
pub fn bolts_at(piece: &SillPiece, spacing: Length) -> u32 {
    let between = piece.length - piece.ends[0] - piece.ends[1];
    if between <= Length::ZERO || spacing <= Length::ZERO {
        return 1;
    }
    // A cast of a number that is too large gives the largest there is.
    ((between / spacing - 1e-9).ceil() as u32).saturating_add(1).min(MOST)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn piece(feet: f64, push: f64, uplift: f64) -> SillPiece {
        let end = Length::from_inches(12.0);
        let (push, uplift) = (Force::from_pounds(push), LineLoad::from_plf(uplift));
        SillPiece { length: Length::from_feet(feet), ends: [end, end], push, uplift }
    }

    const ONE: OneBolt = OneBolt { shear: Force::from_pounds(944.0), uplift: Force::from_pounds(1000.0) };

    /// Source: IRC 2021 R403.1.6: two a piece, 6 ft apart at the most; an 8 ft piece has 6 ft between bolts 1 ft from its
    /// ends.
    #[test]
    fn nothing_to_carry_is_the_codes_least() {
        let bolts = |feet| fewest_bolts(&piece(feet, 0.0, 0.0), ONE).map(|found| found.bolts);
        assert_eq!([bolts(8.0), bolts(8.1), bolts(14.0), bolts(14.1)], [Ok(2), Ok(3), Ok(3), Ok(4)]);
    }

    /// Source: statics: what all take is the whole push; inner bolts take a spacing of uplift, outer ones half of it and
    /// the end.
    #[test]
    fn each_takes_its_part() {
        let found = check_sill(&piece(12.0, 4000.0, 300.0), ONE, 5);
        let found = found.map(|found| (found.shear.pounds(), found.uplift.pounds()));
        assert_eq!(found, Ok((800.0, 750.0)));
    }

    #[test]
    fn what_cannot_be_is_refused() {
        assert!(matches!(check_sill(&piece(1.5, 0.0, 0.0), ONE, 1), Err(SillError::EndsMeet { .. })));
        let weak = OneBolt { uplift: Force::ZERO, ..ONE };
        assert_eq!(fewest_bolts(&piece(8.0, 0.0, 10.0), weak), Err(SillError::CarriesNothing));
        // The end past the last bolt alone is too much for it, however many there are.
        assert_eq!(fewest_bolts(&piece(8.0, 0.0, 1100.0), ONE), Err(SillError::TooMany));
    }

    #[test]
    fn a_spacing_is_never_stretched() {
        let at = |inches| bolts_at(&piece(8.0, 0.0, 0.0), Length::from_inches(inches));
        assert_eq!([at(72.0), at(71.9), at(36.0), at(24.0), at(23.9)], [2, 3, 3, 4, 5]);
    }
}
