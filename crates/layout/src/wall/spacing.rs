//! The layout: how far apart, from where, and to which side of a line the X goes.

use core::fmt;

use measure::{Denominator, Length};

/// Sheets are 8 ft long, and every spacing here goes into that without a rest.
const SHEET: f64 = 96.0;

/// A spacing that brings the ends of 8 ft sheets onto centres.
///
/// Source: common practice; 19.2 in is a fifth of a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Spacing {
    /// 12 in.
    Twelve,
    /// 16 in.
    Sixteen,
    /// 19.2 in, the black diamonds of a tape.
    NineteenPointTwo,
    /// 24 in.
    TwentyFour,
}

impl Spacing {
    /// Every spacing, from close to wide.
    pub const ALL: [Self; 4] = [Self::Twelve, Self::Sixteen, Self::NineteenPointTwo, Self::TwentyFour];

    /// How many go into an 8 ft sheet.
    #[must_use]
    pub const fn in_a_sheet(self) -> u32 {
        match self {
            Self::Twelve => 8,
            Self::Sixteen => 6,
            Self::NineteenPointTwo => 5,
            Self::TwentyFour => 4,
        }
    }

    /// The spacing as a length.
    #[must_use]
    pub fn length(self) -> Length {
        self.mark(1)
    }

    /// The mark so many spacings from the start, as one product: nothing is added up, so nothing drifts.
    #[must_use]
    pub fn mark(self, spacings: u32) -> Length {
        Length::from_inches(SHEET * f64::from(spacings) / f64::from(self.in_a_sheet()))
    }

    /// The whole spacings that come nearest to half a sheet without passing it: what rows of lying sheets are staggered
    /// by. 48 in; at 19.2 in it is 38.4 in, for half a sheet ends between two centres there.
    #[must_use]
    pub fn stagger(self) -> Length {
        self.mark(self.in_a_sheet() / 2)
    }

    /// Whether a sheet of this measure along the wall ends on a centre each time.
    #[must_use]
    pub fn goes_into(self, measure: Length) -> bool {
        let times = measure / self.length();
        times >= 1.0 && (times - times.round()).abs() < 1e-9
    }

    /// The spacing of this length.
    ///
    /// # Errors
    /// When the length is none of the four; the sentence names the nearest.
    ///
    /// ```
    /// use layout::wall::Spacing;
    /// use measure::Length;
    /// assert_eq!(Spacing::of(Length::from_inches(19.2)), Ok(Spacing::NineteenPointTwo));
    /// assert!(Spacing::of(Length::from_inches(17.0)).is_err());
    /// ```
    pub fn of(length: Length) -> Result<Self, NoModule> {
        let off = |spacing: &Self| (spacing.length() - length).abs();
        let nearest =
            Self::ALL.into_iter().fold(Self::Sixteen, |best, next| if off(&next) < off(&best) { next } else { best });
        // 19-3/16 is what a tape without diamonds says for 19.2.
        if off(&nearest) < Length::from_inches(1.0 / 64.0) {
            Ok(nearest)
        } else {
            Err(NoModule { given: length, nearest })
        }
    }
}

impl fmt::Display for Spacing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Twelve => "12\"",
            Self::Sixteen => "16\"",
            Self::NineteenPointTwo => "19.2\"",
            Self::TwentyFour => "24\"",
        })
    }
}

/// A spacing that no sheet is made for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoModule {
    /// What was given.
    pub given: Length,
    /// The nearest that is one.
    pub nearest: Spacing,
}

impl fmt::Display for NoModule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "A spacing of {} was given. 12, 16, 19.2 and 24 in are taken, for an 8 ft sheet ends on their centers: the \
             nearest is {}.",
            self.given.to_inches_fraction(Denominator::Sixteenth),
            self.nearest
        )
    }
}

impl core::error::Error for NoModule {}

/// Where on a piece the tape's mark stands, and so on which side of it the X goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum PullTo {
    /// To the near edge: 15-1/4 in for the first at 16 in. The X goes past the line.
    #[default]
    NearEdge,
    /// To the center. The piece stands over the line.
    Centre,
    /// To the far edge: 16-3/4 in for the first at 16 in. The X goes short of the line.
    FarEdge,
}

impl PullTo {
    /// Where the X goes.
    #[must_use]
    pub const fn x(self) -> XSide {
        match self {
            Self::NearEdge => XSide::Past,
            Self::Centre => XSide::Over,
            Self::FarEdge => XSide::Short,
        }
    }
}

/// On which side of its line a piece stands, seen from the end that the tape is hooked on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum XSide {
    /// Beyond the line.
    Past,
    /// Over the line, half on each side.
    Over,
    /// Before the line.
    Short,
}

impl XSide {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Past => "X past the line",
            Self::Over => "center on the line",
            Self::Short => "X short of the line",
        }
    }
}

/// How a plate is laid out.
///
/// The first pull is to a center one spacing from where the sheets start, so that their edges land on centers: the near
/// edge of the second stud is at 15-1/4 in at 16 in.
///
/// Source: NAVEDTRA 14044, wall layout (looked up): 15-1/4 in to the first stud's edge; for a second wall it is measured
/// from the outer face of the first wall's panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layout {
    /// Center to center.
    pub spacing: Spacing,
    /// Where the sheets start, from the plate's end; negative where they lap past it over another wall.
    pub start: Length,
    /// What the pulls are taken to.
    pub pull_to: PullTo,
}

impl Layout {
    /// Sheets from the plate's end, pulls to the near edge.
    #[must_use]
    pub const fn usual(spacing: Spacing) -> Self {
        Self { spacing, start: Length::ZERO, pull_to: PullTo::NearEdge }
    }

    /// The layout centers of a plate with an end piece of this thickness at each end, with their number from the start
    /// of the sheets. The end pieces stand where they stand: a center on or past one's own is none.
    pub(crate) fn centres(self, length: Length, thickness: Length) -> impl Iterator<Item = (u32, Length)> {
        let first = u32::from(self.start <= thickness);
        let last = length - thickness / 2.0;
        (first..)
            .map(move |number| (number, self.start + self.spacing.mark(number)))
            .skip_while(move |(_, centre)| *centre <= thickness / 2.0)
            .take_while(move |(_, centre)| *centre <= last)
    }
}
