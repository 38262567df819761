//! Quantities as types, and lengths read and written as carpenters do.
//!
//! What is here: [`Length`], [`Force`], [`Stress`] and the other quantities a frame is worked in, with only
//! the products and quotients that mean something; reading and writing feet, inches and fractions
//! ([`mod@length_text`]); and one deterministic [`math`].
//!
//! *Invariant*: no engineering lives here. A value inside a quantity is a finite number of its base unit, which
//! the accessor names; rounding happens only where text is written, and its direction is named there.

pub mod length_text;
pub mod math;
mod quantity;

pub use length_text::{Denominator, LengthError, LengthReading, LengthUnit, read_length};
pub use quantity::{
    Area, AreaLoad, Density, FlexuralRigidity, Force, Length, LineLoad, Moment, Ratio, SecondMoment, SectionModulus,
    Slope, Speed, Stress,
};
