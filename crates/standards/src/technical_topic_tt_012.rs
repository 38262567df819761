//! Technical Topic TT-012 of the panel makers' association: overdriven nails in shear walls.
//!
//! The original was not read; two practitioners' pages restate it alike.

use measure::{Length, Ratio};

use crate::{Source, Status};

/// The rule for nails driven below the face of the panel.
pub const OVERDRIVEN: Source = Source::new("Technical Topic TT-012", "overdriven nails", Status::PartlyLookedUp);
/// An engineer's note on the same rule: where nails stand close, more of them split the framing.
pub const CLOSE_NAILING: Source = Source::new("Technical Topic TT-012A", "close nailing", Status::PartlyLookedUp);

/// To this depth a nail counts as it is, in a panel that was dry when nailed.
pub const COUNTS_TO: Length = Length::from_inches(1.0 / 16.0);
/// To this depth a share of the perimeter nails counts as it is.
pub const SHARE_COUNTS_TO: Length = Length::from_inches(1.0 / 8.0);
/// That share of the perimeter nails.
pub const SHARE: Ratio = 0.20;
/// Otherwise one nail is added for each of this many overdriven.
pub const OVERDRIVEN_PER_ADDED: u32 = 2;
/// At this spacing or closer no nails are added: an engineer decides.
pub const NO_NAILS_ADDED_AT: Length = Length::from_inches(4.0);

/// Whether so many nails between the two depths, of all perimeter nails, count as they are: not more than one in five.
#[must_use]
pub const fn share_counts(overdriven: u32, perimeter_nails: u32) -> bool {
    overdriven as u64 * 5 <= perimeter_nails as u64
}

/// Nails to add for so many overdriven ones: one for each two, and one for an odd one.
///
/// ```
/// use standards::technical_topic_tt_012::nails_to_add;
///
/// assert_eq!([nails_to_add(14), nails_to_add(1)], [7, 1]);
/// ```
#[must_use]
pub const fn nails_to_add(overdriven: u32) -> u32 {
    overdriven.div_ceil(OVERDRIVEN_PER_ADDED)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: Technical Topic TT-012 as restated: 20 % of the perimeter nails.
    #[test]
    fn one_in_five_counts() {
        assert!(share_counts(9, 48) && !share_counts(14, 48) && share_counts(14, 96));
        assert!(share_counts(12, 60) && !share_counts(13, 60));
        assert_eq!(SHARE, 1.0 / 5.0);
    }
}
