//! Numbers other than lengths, read with or without their unit: `40 psf`, `1,200 psi`, `0.5`.

use crate::given::repeated;

/// Most digits a number may have: an `f64` holds every whole number of fifteen digits exactly.
const MOST_DIGITS: usize = 15;

/// Why a text is not a number; `Display` is a sentence for the person who typed it.
///
/// `given` is the typed text on one line, cut when it is long; `accepted` names what may stand after the number.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NumberError {
    /// Nothing was typed.
    #[error("Nothing was typed. Write a number {accepted}.")]
    Empty {
        /// What may stand after the number.
        accepted: String,
    },
    /// Not one number in digits.
    #[error("{given} is not one number in digits. Write a number such as 40 or 0.5, {accepted}.")]
    NotANumber {
        /// What was typed.
        given: String,
        /// What may stand after the number.
        accepted: String,
    },
    /// A comma that does not part thousands.
    #[error("{given} has a comma that does not part thousands. Write 1200 or 1,200, and decimals with a point: 0.5.")]
    Comma {
        /// What was typed.
        given: String,
    },
    /// A power of ten.
    #[error("{given} is written with a power of ten. Write all its digits, {accepted}.")]
    PowerOfTen {
        /// What was typed.
        given: String,
        /// What may stand after the number.
        accepted: String,
    },
    /// More digits than a measured value has.
    #[error("{given} has more than {most} digits. Write it with fewer.")]
    TooManyDigits {
        /// What was typed.
        given: String,
        /// How many digits a number may have.
        most: usize,
    },
    /// A unit other than those accepted.
    #[error("{given} is in {unit}. Write the number {accepted}.")]
    WrongUnit {
        /// What was typed.
        given: String,
        /// The unit it was given in.
        unit: String,
        /// What may stand after the number.
        accepted: String,
    },
}

/// Reads one number, alone or with one of `accepted_units`, which must all be spellings of the same unit: nothing is
/// converted.
///
/// Thousands may be parted by commas in groups of three (`1,200`). Capital and small letters in units are the same.
/// A number below zero is read as it is; its range is for the caller to check.
///
/// # Errors
/// A [`NumberError`], whose text is a sentence, when the text is empty, is not one number in digits, has a comma out of
/// place, a power of ten (`1e5`), more than 15 digits, or another unit.
///
/// # Example
/// ```
/// use measure::read_number;
///
/// assert_eq!(read_number("1,200 psi", &["psi"]), Ok(1200.0));
/// let problem = read_number("40 kPa", &["psf"]).unwrap_err();
/// assert_eq!(problem.to_string(), "40 kPa is in kPa. Write the number alone or with psf.");
/// ```
pub fn read_number(text: &str, accepted_units: &[&str]) -> Result<f64, NumberError> {
    let accepted = accepted(accepted_units);
    let given = || repeated(text);
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Err(NumberError::Empty { accepted });
    }
    let (negative, unsigned) = match trimmed.strip_prefix(['-', '\u{2212}']) {
        Some(unsigned) => (true, unsigned),
        None => (false, trimmed),
    };
    let end = unsigned.find(|c: char| !matches!(c, '0'..='9' | '.' | ',')).unwrap_or(unsigned.len());
    let (digits, unit) = unsigned.split_at(end);
    let digits = plain_digits(digits).map_err(|problem| problem.named(given(), accepted.clone()))?;
    check_unit(unit.trim(), accepted_units).map_err(|problem| problem.named(given(), accepted.clone()))?;
    let value = value(&digits).ok_or_else(|| NumberError::NotANumber { given: given(), accepted })?;
    Ok(if negative && value > 0.0 { -value } else { value })
}

/// The number of at most 15 digits: both the digits and the power of ten are exact, so their quotient is the nearest
/// number there is.
fn value(digits: &str) -> Option<f64> {
    let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    let places = u32::try_from(decimals.len()).ok()?;
    let all: u64 = [whole, decimals].concat().parse().ok()?;
    Some(all as f64 / 10_u64.checked_pow(places)? as f64)
}

/// What is wrong, before it is said of a text.
enum Problem {
    NotANumber,
    Comma,
    PowerOfTen,
    TooManyDigits,
    WrongUnit(String),
}

impl Problem {
    fn named(self, given: String, accepted: String) -> NumberError {
        match self {
            Self::NotANumber => NumberError::NotANumber { given, accepted },
            Self::Comma => NumberError::Comma { given },
            Self::PowerOfTen => NumberError::PowerOfTen { given, accepted },
            Self::TooManyDigits => NumberError::TooManyDigits { given, most: MOST_DIGITS },
            Self::WrongUnit(unit) => NumberError::WrongUnit { given, unit, accepted },
        }
    }
}

/// Takes the commas out of a number of digits, commas and points, if they part thousands.
fn plain_digits(typed: &str) -> Result<String, Problem> {
    let (whole, decimals) = typed.split_once('.').map_or((typed, None), |(whole, rest)| (whole, Some(rest)));
    let unfinished = match decimals {
        Some(decimals) => decimals.is_empty() || decimals.contains('.'),
        None => whole.is_empty(),
    };
    if unfinished {
        return Err(Problem::NotANumber);
    }
    if !commas_part_thousands(whole) || decimals.is_some_and(|decimals| decimals.contains(',')) {
        return Err(Problem::Comma);
    }
    let plain = typed.replace(',', "");
    if plain.chars().filter(char::is_ascii_digit).count() > MOST_DIGITS {
        return Err(Problem::TooManyDigits);
    }
    Ok(plain)
}

/// A leading zero is refused with commas: `0,500` is more likely a half than five hundred.
fn commas_part_thousands(whole: &str) -> bool {
    let mut groups = whole.split(',');
    let first = groups.next().unwrap_or_default();
    let mut others = groups.peekable();
    others.peek().is_none()
        || ((1..=3).contains(&first.len()) && !first.starts_with('0') && others.all(|group| group.len() == 3))
}

fn check_unit(unit: &str, accepted_units: &[&str]) -> Result<(), Problem> {
    let same = |accepted: &&str| accepted.eq_ignore_ascii_case(unit);
    if unit.is_empty() || accepted_units.iter().any(same) {
        return Ok(());
    }
    if is_power_of_ten(unit) {
        return Err(Problem::PowerOfTen);
    }
    let looks_like_a_unit = unit.starts_with(|c: char| c.is_alphabetic() || matches!(c, '%' | '°' | '\'' | '"'));
    Err(if looks_like_a_unit { Problem::WrongUnit(repeated(unit)) } else { Problem::NotANumber })
}

/// Whether what follows the digits is the end of a number like `1e5`.
fn is_power_of_ten(unit: &str) -> bool {
    let Some(exponent) = unit.strip_prefix(['e', 'E']) else { return false };
    exponent.trim_start_matches(['+', '-', '\u{2212}']).starts_with(|c: char| c.is_ascii_digit())
}

/// `alone`, `alone or with psf`, `alone or with psf or lb/ft2`.
fn accepted(units: &[&str]) -> String {
    match units {
        [] => "alone".to_owned(),
        [one] => format!("alone or with {one}"),
        [most @ .., last] => format!("alone or with {} or {last}", most.join(", ")),
    }
}
