//! What a doubtful pull may have been meant to say. Only ever shown beside the question.

use measure::Length;

/// How a pull may have been misread or mistyped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slip {
    /// Two neighbouring digits changed places: 84 for 48.
    SwappedDigits,
    /// Millimetres taken for inches.
    MillimetresAsInches,
    /// Feet taken for inches.
    FeetAsInches,
    /// Inches taken for feet.
    InchesAsFeet,
    /// A foot too much or too little.
    OneFoot,
    /// The tape was held at its first inch, and the inch not taken off.
    BurnedInch,
}

impl Slip {
    /// Whether it is a wrong unit: then the pulls beside it are likely to be wrong in the same way.
    pub(super) const fn is_of_unit(self) -> bool {
        matches!(self, Self::MillimetresAsInches | Self::FeetAsInches | Self::InchesAsFeet)
    }
}

/// What may have been meant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guess {
    /// By which slip.
    pub slip: Slip,
    /// What the pull would then be.
    pub pull: Length,
}

const FOOT: Length = Length::from_inches(12.0);

/// Everything that a pull may have been meant to say, whether or not it fits the wall.
pub(super) fn guesses(pull: Length) -> Vec<Guess> {
    let swapped = swapped_digits(pull).into_iter().map(|pull| Guess { slip: Slip::SwappedDigits, pull });
    let others = [
        (Slip::MillimetresAsInches, Length::from_millimetres(pull.inches())),
        (Slip::FeetAsInches, Length::from_feet(pull.inches())),
        (Slip::InchesAsFeet, Length::from_inches(pull.feet())),
        (Slip::OneFoot, pull + FOOT),
        (Slip::OneFoot, pull - FOOT),
    ];
    swapped.chain(others.map(|(slip, pull)| Guess { slip, pull })).collect()
}

/// The same whole inches with two neighbouring digits changed; the fraction stays.
fn swapped_digits(pull: Length) -> Vec<Length> {
    let whole = pull.inches().floor();
    if !(10.0..100_000.0).contains(&whole) {
        return Vec::new();
    }
    let fraction = pull - Length::from_inches(whole);
    let digits = (whole as u32).to_string().into_bytes();
    let swap = |place: usize| {
        let mut digits = digits.clone();
        digits.swap(place, place + 1);
        let value = digits.iter().fold(0, |value, digit| value * 10 + u32::from(digit - b'0'));
        (digits[place] != digits[place + 1] && digits[0] != b'0')
            .then(|| Length::from_inches(f64::from(value)) + fraction)
    };
    (0..digits.len() - 1).filter_map(swap).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn has(pull: f64, slip: Slip, meant: f64) -> bool {
        let found = guesses(Length::from_inches(pull));
        found.iter().any(|guess| guess.slip == slip && (guess.pull.inches() - meant).abs() < 1e-9)
    }

    #[test]
    fn slips_of_the_hand() {
        assert!(has(48.0, Slip::SwappedDigits, 84.0));
        assert!(has(51.25, Slip::SwappedDigits, 15.25));
        assert!(has(121.0, Slip::SwappedDigits, 211.0) && has(121.0, Slip::SwappedDigits, 112.0));
        assert!(!has(33.0, Slip::SwappedDigits, 33.0) && !has(80.0, Slip::SwappedDigits, 8.0));
        assert!(has(406.4, Slip::MillimetresAsInches, 16.0));
        assert!(has(4.0, Slip::FeetAsInches, 48.0) && has(576.0, Slip::InchesAsFeet, 48.0));
        assert!(has(36.0, Slip::OneFoot, 48.0) && has(60.0, Slip::OneFoot, 48.0));
    }
}
