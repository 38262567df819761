//! Stacks of shims: the fewest pieces at hand that make a thickness.

use measure::Length;

use super::error::StrappingError;

/// Sixteenths in an inch.
const TO_THE_INCH: f64 = 16.0;
/// The thickest single shim, in sixteenths: 3 in, two pieces of lumber.
const THICKEST_SHIM: usize = 48;
/// The thickest stack that is made up, in sixteenths: 6 in.
const THICKEST_STACK: usize = 96;

/// The shims at hand, any number of each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ShimSizes {
    /// In sixteenths, the thickest first.
    sizes: Vec<usize>,
    /// For each thickness in sixteenths, the piece that a stack of the fewest pieces begins with.
    first: Vec<Option<usize>>,
}

impl ShimSizes {
    /// From the thicknesses at hand: whole sixteenths, to 3 in.
    ///
    /// # Errors
    /// Where one is no whole number of sixteenths, is nothing, or is over 3 in; or there is none.
    ///
    /// ```
    /// use layout::strapping::ShimSizes;
    /// use measure::Length;
    ///
    /// let inches = Length::from_inches;
    /// let sizes = ShimSizes::new(&[inches(0.125), inches(0.375), inches(0.5)])?;
    /// assert_eq!(sizes.stack(inches(0.75)), Some(vec![inches(0.375), inches(0.375)]));
    /// # Ok::<(), layout::strapping::StrappingError>(())
    /// ```
    pub fn new(sizes: &[Length]) -> Result<Self, StrappingError> {
        if sizes.is_empty() {
            return Err(StrappingError::Count { what: "shim sizes", given: 0, most: THICKEST_SHIM });
        }
        let mut whole = Vec::new();
        for size in sizes {
            let marks = size.inches() * TO_THE_INCH;
            let one = marks.round();
            if (marks - one).abs() > 1e-9 || one < 1.0 || one > THICKEST_SHIM as f64 {
                return Err(StrappingError::ShimSize { given: *size });
            }
            whole.push(one as usize);
        }
        whole.sort_unstable_by(|one, other| other.cmp(one));
        whole.dedup();
        Ok(Self { first: fewest(&whole), sizes: whole })
    }

    /// Every sixteenth to 1/2 in, and 3/4 in: a common set of packers, common practice.
    #[must_use]
    pub fn common() -> Self {
        let sizes = vec![12, 8, 7, 6, 5, 4, 3, 2, 1];
        Self { first: fewest(&sizes), sizes }
    }

    /// The thicknesses at hand, the thickest first.
    pub fn sizes(&self) -> impl Iterator<Item = Length> + '_ {
        self.sizes.iter().map(|size| sixteenths(*size))
    }

    /// The fewest pieces that make a thickness, the thickest first; none where no stack to 6 in makes it. Nothing is made
    /// of no pieces.
    #[must_use]
    pub fn stack(&self, thickness: Length) -> Option<Vec<Length>> {
        let marks = (thickness.inches() * TO_THE_INCH).round();
        if marks < 0.0 || marks > THICKEST_STACK as f64 {
            return None;
        }
        let (mut left, mut stack) = (marks as usize, Vec::new());
        while left > 0 {
            let piece = self.first.get(left).copied().flatten()?;
            stack.push(sixteenths(piece));
            left = left.saturating_sub(piece);
        }
        Some(stack)
    }
}

fn sixteenths(count: usize) -> Length {
    Length::from_inches(count as f64 / TO_THE_INCH)
}

/// For each thickness the first piece of a stack of the fewest; of equal stacks the one with the thickest piece.
fn fewest(sizes: &[usize]) -> Vec<Option<usize>> {
    let mut pieces = vec![Some(0_usize)];
    let mut first = vec![None];
    for thickness in 1..=THICKEST_STACK {
        let with = |size: &usize| {
            let rest = thickness.checked_sub(*size)?;
            Some((pieces.get(rest).copied().flatten()? + 1, *size))
        };
        // The thickest stands first, and the first of the least is taken.
        let best = sizes.iter().filter_map(with).min_by_key(|(count, _)| *count);
        pieces.push(best.map(|(count, _)| count));
        first.push(best.map(|(_, size)| size));
    }
    first
}
