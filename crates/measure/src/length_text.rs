//! Lengths read and written as carpenters do.

use crate::Length;

/// The finest fraction a length is written to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Denominator {
    /// Eighths: layout talk.
    Eighth,
    /// Sixteenths: cuts.
    Sixteenth,
    /// Thirty-seconds: on request.
    ThirtySecond,
}

/// What a bare number is taken to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LengthUnit {
    /// Inches.
    Inches,
    /// Feet.
    Feet,
}

/// A length that was read, with what was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct LengthReading {
    /// The length itself, unrounded.
    pub length: Length,
    /// What was understood, for echoing: `98 3/4 in = 8' 2-3/4"`.
    pub echo: String,
}

/// Why a text is not a length; `Display` is a sentence for the person who typed it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LengthError {
    /// Nothing was typed.
    #[error("Nothing was typed. Write a length such as 8' 2-3/4\" or 98 3/4.")]
    Empty,
}

/// Reads a length as a carpenter writes it.
///
/// # Errors
/// When the text is not a length.
pub fn read_length(text: &str, bare: LengthUnit) -> Result<LengthReading, LengthError> {
    let _ = (text, bare);
    Err(LengthError::Empty)
}

impl Length {
    /// Written as feet, inches and a fraction: `8' 2-3/4"`.
    #[must_use]
    pub fn to_feet_inches(self, finest: Denominator) -> String {
        let _ = finest;
        format!("{}\"", self.inches())
    }

    /// Written as inches and a fraction: `98-3/4"`.
    #[must_use]
    pub fn to_inches_fraction(self, finest: Denominator) -> String {
        let _ = finest;
        format!("{}\"", self.inches())
    }

    /// Said aloud: `eight feet two and three quarters inches`.
    #[must_use]
    pub fn spoken(self, finest: Denominator) -> String {
        let _ = finest;
        format!("{} inches", self.inches())
    }
}
