//! The text of a length cut into numbers, marks and units.

use core::fmt;
use core::iter::Peekable;
use core::str::Chars;

use super::error::LengthError;
use super::exact::Exact;
use crate::given::repeated;

/// Most digits a number may have: enough for every sixty-fourth up to the longest length, as in 11999.984375.
const MOST_DIGITS: usize = 11;

/// A number as it was typed, so that it can be echoed as it was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Number {
    digits: u64,
    places: u32,
}

impl Number {
    /// Its value when it has no decimal point.
    pub(super) fn whole(self) -> Option<u64> {
        (self.places == 0).then_some(self.digits)
    }

    pub(super) fn exact(self) -> Exact {
        Exact::new(self.digits, self.scale())
    }

    fn scale(self) -> u64 {
        10_u64.pow(self.places)
    }
}

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { digits, places } = *self;
        if places == 0 {
            return write!(f, "{digits}");
        }
        write!(f, "{}.{:0width$}", digits / self.scale(), digits % self.scale(), width = places as usize)
    }
}

/// A unit, or the mark that stands for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Unit {
    Feet,
    Inches,
    Millimetres,
    Centimetres,
    Metres,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Token {
    Number(Number),
    /// A fraction in one character: `¾`.
    Fraction(u64, u64),
    Slash,
    Dash {
        after_space: bool,
    },
    Unit(Unit),
}

/// Cuts a text into tokens; only white space is dropped.
pub(super) fn tokens(text: &str) -> Result<Vec<Token>, LengthError> {
    let mut found = Vec::new();
    let mut rest = text.chars().peekable();
    let mut after_space = false;
    while let Some(&next) = rest.peek() {
        if next.is_whitespace() {
            rest.next();
            after_space = true;
            continue;
        }
        let token = if next.is_ascii_digit() || next == '.' {
            number(text, &mut rest)?
        } else if next.is_alphabetic() {
            Token::Unit(unit(text, &mut rest)?)
        } else {
            rest.next();
            mark(text, next, after_space, &mut rest)?
        };
        found.push(token);
        after_space = false;
    }
    Ok(found)
}

fn number(text: &str, rest: &mut Peekable<Chars<'_>>) -> Result<Token, LengthError> {
    let mut typed = String::new();
    while let Some(c) = rest.next_if(|c| c.is_ascii_digit() || *c == '.') {
        typed.push(c);
    }
    let (whole, decimals) = typed.split_once('.').unwrap_or((&typed, "0"));
    if decimals.is_empty() || decimals.contains('.') {
        return Err(LengthError::NotANumber { given: repeated(text), found: repeated(&typed) });
    }
    let places = if typed.contains('.') { decimals.len() } else { 0 };
    let digits = format!("{whole}{}", if places == 0 { "" } else { decimals });
    let too_many = || LengthError::TooManyDigits { given: repeated(text), most: MOST_DIGITS };
    if places > MOST_DIGITS || digits.trim_start_matches('0').len() > MOST_DIGITS {
        return Err(too_many());
    }
    match (digits.parse(), u32::try_from(places)) {
        (Ok(digits), Ok(places)) => Ok(Token::Number(Number { digits, places })),
        _ => Err(too_many()),
    }
}

/// Reads a word, with the point of an abbreviation: `ft`, `in.`, `mm`.
fn unit(text: &str, rest: &mut Peekable<Chars<'_>>) -> Result<Unit, LengthError> {
    let mut word = String::new();
    while let Some(c) = rest.next_if(|c| c.is_alphabetic()) {
        word.push(c);
    }
    let unit = match word.to_ascii_lowercase().as_str() {
        "ft" | "foot" | "feet" => Unit::Feet,
        "in" | "ins" | "inch" | "inches" => Unit::Inches,
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Unit::Millimetres,
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => Unit::Centimetres,
        "m" | "metre" | "metres" | "meter" | "meters" => Unit::Metres,
        _ => return Err(LengthError::UnknownWord { given: repeated(text), word: repeated(&word) }),
    };
    // `8 ft.5` may be half an inch or five inches.
    if rest.next_if_eq(&'.').is_some() && rest.peek().is_some_and(char::is_ascii_digit) {
        return Err(LengthError::Unreadable { given: repeated(text) });
    }
    Ok(unit)
}

fn mark(text: &str, c: char, after_space: bool, rest: &mut Peekable<Chars<'_>>) -> Result<Token, LengthError> {
    if let Some((numerator, denominator)) = one_character_fraction(c) {
        return Ok(Token::Fraction(numerator, denominator));
    }
    match c {
        // Two feet marks are how a keyboard without inch marks writes inches.
        _ if is_feet_mark(c) && rest.next_if(|next| is_feet_mark(*next)).is_some() => Ok(Token::Unit(Unit::Inches)),
        _ if is_feet_mark(c) => Ok(Token::Unit(Unit::Feet)),
        '"' | '\u{201C}' | '\u{201D}' | '\u{201F}' | '\u{2033}' | '\u{2036}' => Ok(Token::Unit(Unit::Inches)),
        '/' | '\u{2044}' | '\u{2215}' => Ok(Token::Slash),
        '-' | '\u{2010}'..='\u{2015}' | '\u{2212}' => Ok(Token::Dash { after_space }),
        ',' => Err(LengthError::Comma { given: repeated(text) }),
        _ => Err(LengthError::UnknownCharacter { given: repeated(text), found: c }),
    }
}

const fn is_feet_mark(c: char) -> bool {
    matches!(c, '\'' | '`' | '\u{B4}' | '\u{2018}' | '\u{2019}' | '\u{201B}' | '\u{2032}' | '\u{2035}')
}

/// Thirds, fifths and the like are known here so that they are refused by the same sentence as `1/3`.
const fn one_character_fraction(c: char) -> Option<(u64, u64)> {
    Some(match c {
        '½' => (1, 2),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        _ => return None,
    })
}
