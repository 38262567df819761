//! From what a carpenter writes to a length.

use super::error::LengthError;
use super::exact::Exact;
use super::tokens::{Number, Token, Unit, tokens};
use super::{Denominator, LengthUnit};
use crate::Length;
use crate::given::repeated;

/// The longest length that is read: 1,000 ft. More is a slip of the thumb or of the unit.
pub const MAX_READ_LENGTH: Length = Length::from_inches(MOST_INCHES as f64);
const MOST_INCHES: u64 = 12_000;
const INCHES_PER_FOOT: u64 = 12;
const SIXTEENTHS_PER_INCH: u64 = 16;
/// Third numbers below this may as well be eighths.
const FIRST_CERTAIN_SIXTEENTH: u64 = 8;
const FINEST_DENOMINATOR: u64 = 64;

/// A length that was read, with what was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct LengthReading {
    /// The length itself, unrounded.
    pub length: Length,
    /// What was understood, for echoing: `98 3/4 in = 8' 2-3/4"`.
    ///
    /// The right side is to the sixteenth, or to the thirty-second or sixty-fourth when the length is one; `about`
    /// stands before it when it is not exact. It stands alone when the left side would be the same.
    pub echo: String,
}

/// Reads a length as a carpenter writes it; a number without any unit is taken as `bare`.
///
/// Taken are feet and inches (`8' 2-3/4"`, `8'-2 3/4"`, `8 ft 2 in`, `8.23'`), inches (`98 3/4"`, `98-3/4`, `98.75`),
/// feet-inches-fraction with dashes (`8-2-3/4`, `8-2`), feet-inches-sixteenths as truss drawings write them (`8-2-12`,
/// when the third number is 8 to 15 and so cannot be eighths), and one metric number (`2496 mm`, `249.6 cm`,
/// `2.496 m`). Typographic marks and one-character fractions are taken too. Zero is read as zero; whether zero makes
/// sense is for the caller to say.
///
/// # Errors
/// A [`LengthError`], whose text is a sentence, when the text is empty, negative, over [`MAX_READ_LENGTH`], has a
/// fraction that no tape shows, has more than one sensible meaning, or is not a length at all.
///
/// # Example
/// ```
/// use measure::{LengthUnit, read_length};
///
/// let read = read_length("98 3/4", LengthUnit::Inches)?;
/// assert_eq!(read.length.inches(), 98.75);
/// assert_eq!(read.echo, "98 3/4 in = 8' 2-3/4\"");
/// # Ok::<(), measure::LengthError>(())
/// ```
pub fn read_length(text: &str, bare: LengthUnit) -> Result<LengthReading, LengthError> {
    let tokens = tokens(text)?;
    let reader = Reader { text, bare };
    let understood = reader.groups(&tokens)?;
    if understood.inches.is_more_than(MOST_INCHES) {
        return Err(LengthError::TooLong { understood: understood.text });
    }
    let length = understood.inches.as_inches();
    Ok(LengthReading { length, echo: echo(&understood, length) })
}

fn echo(understood: &Understood, length: Length) -> String {
    let exact = [Denominator::Sixteenth, Denominator::ThirtySecond, Denominator::SixtyFourth]
        .into_iter()
        .find(|finest| understood.inches.is_on_a_mark(finest.per_inch()));
    let left = &understood.text;
    match exact.map(|finest| length.to_feet_inches(finest)) {
        Some(right) if right == *left => right,
        Some(right) => format!("{left} = {right}"),
        None => format!("{left} = about {}", length.to_feet_inches(Denominator::Sixteenth)),
    }
}

/// A length before it is echoed: its inches, and its own text in one spelling.
struct Understood {
    inches: Exact,
    text: String,
}

#[derive(Clone, Copy)]
enum Value {
    Number(Number),
    Fraction(u64, u64),
}

#[derive(Clone, Copy)]
struct Piece {
    after_dash: bool,
    value: Value,
}

impl Piece {
    fn whole(self) -> Option<u64> {
        match self.value {
            Value::Number(number) => number.whole(),
            Value::Fraction(..) => None,
        }
    }
}

/// Numbers up to the unit that closes them, or up to the end.
struct Group {
    pieces: Vec<Piece>,
    unit: Option<Unit>,
}

#[derive(Clone, Copy)]
struct Reader<'a> {
    text: &'a str,
    bare: LengthUnit,
}

impl Reader<'_> {
    fn given(self) -> String {
        repeated(self.text)
    }

    fn unreadable(self) -> LengthError {
        LengthError::Unreadable { given: self.given() }
    }

    fn groups(self, tokens: &[Token]) -> Result<Understood, LengthError> {
        match tokens.first() {
            None => return Err(LengthError::Empty),
            Some(Token::Dash { .. }) => return Err(LengthError::Negative { given: self.given() }),
            Some(_) => {}
        }
        let groups = self.split(tokens)?;
        let metric = groups.iter().any(|group| group.unit.is_some_and(is_metric));
        match groups.as_slice() {
            [one] if metric => self.metric(one),
            _ if metric => Err(LengthError::NotOneMetricNumber { given: self.given() }),
            [one] if one.unit == Some(Unit::Feet) => self.mixed(&one.pieces, LengthUnit::Feet),
            [one] if one.unit == Some(Unit::Inches) => self.without_feet_mark(&one.pieces, LengthUnit::Inches),
            [one] => self.without_feet_mark(&one.pieces, self.bare),
            [feet, inches] if feet.unit == Some(Unit::Feet) && inches.unit != Some(Unit::Feet) => {
                match feet.pieces.as_slice() {
                    [feet] => self.after_feet(*feet, &inches.pieces),
                    _ => Err(self.unreadable()),
                }
            }
            _ => Err(self.unreadable()),
        }
    }

    /// Gathers numbers and fractions, and closes a group at each unit.
    fn split(self, tokens: &[Token]) -> Result<Vec<Group>, LengthError> {
        if tokens.iter().filter(|token| **token == Token::Slash).count() > 1 {
            return Err(LengthError::TwoSlashes { given: self.given() });
        }
        let mut groups = Vec::new();
        let mut pieces = Vec::new();
        let mut rest = tokens;
        while !rest.is_empty() {
            if let ([Token::Unit(unit), after @ ..], false) = (rest, pieces.is_empty()) {
                groups.push(Group { pieces: core::mem::take(&mut pieces), unit: Some(*unit) });
                rest = after;
                continue;
            }
            let after_feet = pieces.is_empty() && !groups.is_empty();
            let (after_dash, after) = self.dash(rest, after_feet)?;
            let (value, after) = self.value(after)?;
            pieces.push(Piece { after_dash, value });
            rest = after;
        }
        if !pieces.is_empty() {
            groups.push(Group { pieces, unit: None });
        }
        Ok(groups)
    }

    /// Takes a number or a fraction off the front.
    fn value(self, tokens: &[Token]) -> Result<(Value, &[Token]), LengthError> {
        match tokens {
            [Token::Number(top), Token::Slash, Token::Number(bottom), rest @ ..] => {
                Ok((self.fraction(top.whole(), bottom.whole())?, rest))
            }
            [Token::Slash, ..] | [Token::Number(_), Token::Slash, ..] => {
                Err(LengthError::UnfinishedFraction { given: self.given() })
            }
            [Token::Number(number), rest @ ..] => Ok((Value::Number(*number), rest)),
            [Token::Fraction(top, bottom), rest @ ..] => Ok((self.fraction(Some(*top), Some(*bottom))?, rest)),
            _ => Err(self.unreadable()),
        }
    }

    /// Takes a dash off the front. One after a space may be meant as a minus, save between feet and inches, where
    /// drawings write it so.
    fn dash(self, tokens: &[Token], after_feet: bool) -> Result<(bool, &[Token]), LengthError> {
        match tokens {
            [Token::Dash { after_space: true }, ..] if !after_feet => {
                Err(LengthError::LooseDash { given: self.given() })
            }
            [Token::Dash { .. }, rest @ ..] => Ok((true, rest)),
            _ => Ok((false, tokens)),
        }
    }

    fn fraction(self, top: Option<u64>, bottom: Option<u64>) -> Result<Value, LengthError> {
        let (Some(top), Some(bottom)) = (top, bottom) else {
            return Err(LengthError::UnfinishedFraction { given: self.given() });
        };
        let fraction = || format!("{top}/{bottom}");
        if bottom == 0 {
            return Err(LengthError::ZeroDenominator { given: self.given() });
        }
        if !bottom.is_power_of_two() || !(2..=FINEST_DENOMINATOR).contains(&bottom) {
            return Err(LengthError::NotATapeFraction { given: self.given(), fraction: fraction() });
        }
        if top >= bottom {
            return Err(LengthError::ImproperFraction { given: self.given(), fraction: fraction() });
        }
        Ok(Value::Fraction(top, bottom))
    }

    fn metric(self, group: &Group) -> Result<Understood, LengthError> {
        let problem = || LengthError::NotOneMetricNumber { given: self.given() };
        let [Piece { value: Value::Number(number), .. }] = group.pieces.as_slice() else {
            return Err(problem());
        };
        // One inch is 25.4 mm exactly, which is 127/5.
        let (inches_per_unit, name) = match group.unit {
            Some(Unit::Millimetres) => (Exact::new(5, 127), "mm"),
            Some(Unit::Centimetres) => (Exact::new(50, 127), "cm"),
            Some(Unit::Metres) => (Exact::new(5_000, 127), "m"),
            _ => return Err(problem()),
        };
        Ok(Understood { inches: number.exact().times(inches_per_unit), text: format!("{number} {name}") })
    }

    /// Numbers of which none is marked as feet: `98 3/4`, `8-2`, `8-2-3/4`, `8-2-12`.
    fn without_feet_mark(self, pieces: &[Piece], unit: LengthUnit) -> Result<Understood, LengthError> {
        match pieces {
            [feet, inches @ ..] if inches.first().is_some_and(|next| next.after_dash && next.whole().is_some()) => {
                self.after_feet(*feet, inches)
            }
            [first, second, ..] if first.whole().is_some() && second.whole().is_some() => {
                Err(LengthError::WhichAreFeet { given: self.given() })
            }
            _ => self.mixed(pieces, unit),
        }
    }

    /// One number, a fraction, or a whole number and a fraction, all of one unit.
    fn mixed(self, pieces: &[Piece], unit: LengthUnit) -> Result<Understood, LengthError> {
        let (value, text) = match pieces {
            [Piece { value: Value::Number(number), .. }] => (number.exact(), number.to_string()),
            [Piece { value: Value::Fraction(top, bottom), .. }] => {
                (Exact::new(*top, *bottom), format!("{top}/{bottom}"))
            }
            [first, Piece { value: Value::Fraction(top, bottom), .. }] => {
                let whole = first.whole().ok_or_else(|| self.unreadable())?;
                (Exact::new(whole, 1).plus(Exact::new(*top, *bottom)), format!("{whole} {top}/{bottom}"))
            }
            _ => return Err(self.unreadable()),
        };
        Ok(match unit {
            LengthUnit::Inches => Understood { inches: value, text: format!("{text} in") },
            LengthUnit::Feet => {
                Understood { inches: value.times(Exact::new(INCHES_PER_FOOT, 1)), text: format!("{text} ft") }
            }
        })
    }

    fn after_feet(self, feet: Piece, inches: &[Piece]) -> Result<Understood, LengthError> {
        let feet = feet.whole().ok_or_else(|| self.unreadable())?;
        let (value, text) = match inches {
            [Piece { value: Value::Number(number), .. }] => (number.exact(), number.to_string()),
            [Piece { value: Value::Fraction(top, bottom), .. }] => mixed_inches(0, *top, *bottom),
            [first, Piece { value: Value::Fraction(top, bottom), .. }] => {
                let whole = first.whole().ok_or_else(|| self.unreadable())?;
                mixed_inches(whole, *top, *bottom)
            }
            [first, third @ Piece { after_dash: true, .. }] => {
                let (Some(whole), Some(third)) = (first.whole(), third.whole()) else {
                    return Err(self.unreadable());
                };
                self.sixteenths(feet, whole, third)?
            }
            _ => return Err(self.unreadable()),
        };
        if value.is_at_least(INCHES_PER_FOOT) {
            return Err(LengthError::TooManyInches { given: self.given(), inches: text });
        }
        let inches = Exact::new(feet, 1).times(Exact::new(INCHES_PER_FOOT, 1)).plus(value);
        Ok(Understood { inches, text: format!("{feet}' {text}\"") })
    }

    /// A third number without a slash. Zero is the same in eighths and in sixteenths, and so is no question.
    fn sixteenths(self, feet: u64, inches: u64, third: u64) -> Result<(Exact, String), LengthError> {
        match third {
            0 => Ok((Exact::new(inches, 1), inches.to_string())),
            1..FIRST_CERTAIN_SIXTEENTH => {
                Err(LengthError::EighthsOrSixteenths { given: self.given(), start: format!("{feet}-{inches}"), third })
            }
            FIRST_CERTAIN_SIXTEENTH..SIXTEENTHS_PER_INCH => Ok(mixed_inches(inches, third, SIXTEENTHS_PER_INCH)),
            _ => Err(LengthError::TooManySixteenths { given: self.given(), third }),
        }
    }
}

fn mixed_inches(whole: u64, top: u64, bottom: u64) -> (Exact, String) {
    (Exact::new(whole, 1).plus(Exact::new(top, bottom)), format!("{whole}-{top}/{bottom}"))
}

const fn is_metric(unit: Unit) -> bool {
    matches!(unit, Unit::Millimetres | Unit::Centimetres | Unit::Metres)
}
