//! What can be found and compared with a limit, each with the fineness it is read to.

use core::ops::Sub;

use measure::{Force, Length, LineLoad};

/// A number of pieces: nails, bolts, plies. A difference of two may be negative.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Count(i64);

impl Count {
    /// So many pieces.
    #[must_use]
    pub fn of(pieces: u32) -> Self {
        Self(i64::from(pieces))
    }

    /// How many; negative for a shortage.
    #[must_use]
    pub const fn pieces(self) -> i64 {
        self.0
    }
}

impl Sub for Count {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

/// Moisture content of wood: the water's weight in per cent of the dry wood's.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct MoistureContent(f64);

impl MoistureContent {
    /// From per cent. The number must be finite; text is checked where it is read.
    #[must_use]
    pub const fn from_percent(percent: f64) -> Self {
        debug_assert!(percent.is_finite());
        Self(percent)
    }

    /// As per cent.
    #[must_use]
    pub const fn percent(self) -> f64 {
        self.0
    }
}

impl Sub for MoistureContent {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

/// A found value, a limit or a margin, of whichever kind.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub enum Amount {
    /// A length.
    Length(Length),
    /// A number of pieces.
    Count(Count),
    /// A force.
    Force(Force),
    /// A load along a wall.
    LineLoad(LineLoad),
    /// A moisture content, or a difference of two in points.
    Moisture(MoistureContent),
}

impl Amount {
    /// The length, if it is one.
    #[must_use]
    pub const fn length(self) -> Option<Length> {
        if let Self::Length(length) = self { Some(length) } else { None }
    }

    /// The number of pieces, if it is one; negative for a shortage.
    #[must_use]
    pub const fn count(self) -> Option<i64> {
        if let Self::Count(count) = self { Some(count.pieces()) } else { None }
    }

    /// The force, if it is one.
    #[must_use]
    pub const fn force(self) -> Option<Force> {
        if let Self::Force(force) = self { Some(force) } else { None }
    }

    /// The moisture content, if it is one.
    #[must_use]
    pub const fn moisture(self) -> Option<MoistureContent> {
        if let Self::Moisture(moisture) = self { Some(moisture) } else { None }
    }
}

/// A quantity that can be judged against a limit.
///
/// Two numbers go with it. `NOISE` is what arithmetic alone can leave between two equal values: less than that is no
/// difference. `HAIR` is the finest step it is read to: less than that to spare is *at the limit*. Neither lets
/// anything pass that is over its limit.
pub trait Judged: Copy + Into<Amount> + Sub<Output = Self> {
    /// Less than this is arithmetic, not a difference.
    const NOISE: f64;
    /// Less to spare than this is at the limit.
    const HAIR: f64;
    /// The plain number, to compare with the two.
    fn number(self) -> f64;
    /// None of it.
    fn none() -> Self;
}

macro_rules! judged {
    ($quantity:ty, $variant:ident, noise: $noise:expr, hair: $hair:expr, |$q:ident| $number:expr, none: $none:expr) => {
        impl From<$quantity> for Amount {
            fn from(quantity: $quantity) -> Self {
                Self::$variant(quantity)
            }
        }

        impl Judged for $quantity {
            const NOISE: f64 = $noise;
            const HAIR: f64 = $hair;
            fn number(self) -> f64 {
                let $q = self;
                $number
            }
            fn none() -> Self {
                $none
            }
        }
    };
}

// A sixty-fourth is the finest mark of a steel rule.
judged!(Length, Length, noise: 1e-9, hair: 1.0 / 64.0, |l| l.inches(), none: Length::ZERO);
// Loads are printed to the pound, and a meter shows tenths of a per cent.
judged!(Force, Force, noise: 1e-6, hair: 1.0, |f| f.pounds(), none: Force::ZERO);
judged!(LineLoad, LineLoad, noise: 1e-6, hair: 1.0, |w| w.plf(), none: LineLoad::ZERO);
judged!(MoistureContent, Moisture, noise: 1e-9, hair: 0.1, |m| m.percent(), none: MoistureContent(0.0));
// As many pieces as were asked for is what was asked for: there is no hair to a count.
judged!(Count, Count, noise: 0.0, hair: 0.0, |c| c.pieces() as f64, none: Count(0));
