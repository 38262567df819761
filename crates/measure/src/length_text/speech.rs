//! From a length to what is said aloud.

use super::Denominator;
use super::write::{LengthParts, NOT_A_LENGTH};
use crate::Length;

const UP_TO_NINETEEN: [&str; 20] = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
const TENS: [&str; 10] = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

impl Length {
    /// Said aloud: `eight feet two and three quarters inches`, to the nearest fraction named.
    ///
    /// Numbers to 999 are in words, larger ones in digits.
    #[must_use]
    pub fn spoken(self, finest: Denominator) -> String {
        if !self.inches().is_finite() {
            return NOT_A_LENGTH.to_owned();
        }
        let parts = self.parts(finest);
        let sign = if parts.negative { "minus " } else { "" };
        let feet = match parts.feet {
            0 => None,
            1 => Some("one foot".to_owned()),
            feet => Some(format!("{} feet", number(feet))),
        };
        match (feet, inches(parts)) {
            (Some(feet), Some(inches)) if parts.inches == 0 => format!("{sign}{feet} and {inches}"),
            (Some(feet), Some(inches)) => format!("{sign}{feet} {inches}"),
            (Some(only), None) | (None, Some(only)) => format!("{sign}{only}"),
            (None, None) => "zero inches".to_owned(),
        }
    }
}

fn inches(parts: LengthParts) -> Option<String> {
    let fraction = fraction(parts.numerator, parts.denominator);
    match (parts.inches, fraction) {
        (0, None) => None,
        (0, Some(_)) if parts.denominator == 2 => Some("half an inch".to_owned()),
        (0, Some(fraction)) => Some(format!("{fraction} of an inch")),
        (1, None) => Some("one inch".to_owned()),
        (whole, None) => Some(format!("{} inches", number(whole.into()))),
        (whole, Some(fraction)) => Some(format!("{} and {fraction} inches", number(whole.into()))),
    }
}

/// `a half`, `three quarters`, `an eighth`, `five sixteenths`.
fn fraction(numerator: u32, denominator: u32) -> Option<String> {
    let (one, many) = match denominator {
        2 => ("a half", "halves"),
        4 => ("a quarter", "quarters"),
        8 => ("an eighth", "eighths"),
        16 => ("a sixteenth", "sixteenths"),
        32 => ("a thirty-second", "thirty-seconds"),
        64 => ("a sixty-fourth", "sixty-fourths"),
        _ => return None,
    };
    Some(if numerator == 1 { one.to_owned() } else { format!("{} {many}", number(numerator.into())) })
}

fn number(value: u64) -> String {
    let word = |index: u64| UP_TO_NINETEEN[index as usize];
    match value {
        0..20 => word(value).to_owned(),
        20..100 if value.is_multiple_of(10) => TENS[(value / 10) as usize].to_owned(),
        20..100 => format!("{}-{}", TENS[(value / 10) as usize], word(value % 10)),
        100..1000 if value.is_multiple_of(100) => format!("{} hundred", word(value / 100)),
        100..1000 => format!("{} hundred {}", word(value / 100), number(value % 100)),
        _ => value.to_string(),
    }
}
