//! Quantities as types, and lengths read and written as carpenters do.
//!
//! What is here: [`Length`], [`Force`], [`Stress`] and the other quantities a frame is worked in, with only
//! the products and quotients that mean something; reading and writing feet, inches and fractions
//! ([`mod@length_text`]); reading a roof's pitch ([`mod@pitch_text`]) and other numbers with their units
//! ([`mod@number_text`]); and one deterministic
//! [`math`].
//!
//! *Invariant*: no engineering lives here. A value inside a quantity is a finite number of its base unit, which
//! the accessor names; rounding happens only where text is written or where [`Length::rounded`] is called, and its
//! direction is named there.

mod given;
pub mod length_text;
pub mod math;
pub mod number_text;
pub mod pitch_text;
mod quantity;

pub use length_text::{
    Denominator, LengthError, LengthParts, LengthReading, LengthUnit, MAX_READ_LENGTH, Rounding, read_length,
};
pub use number_text::{NumberError, read_number};
pub use pitch_text::{PitchError, read_pitch};
pub use quantity::{
    Angle, Area, AreaLoad, Density, FlexuralRigidity, Force, Length, LineLoad, Moment, Ratio, SecondMoment,
    SectionModulus, Slope, Speed, Stress,
};
