//! The one source of powers, roots and logarithms, so that the same input gives the same bits everywhere.
//!
//! `std`'s versions call the platform's own library and may differ in the last bit between a phone, a server and a
//! test; `clippy.toml` bans them. Square roots are exact by IEEE 754 on every platform and stay `f64::sqrt`.

/// `base` raised to `exponent`.
#[must_use]
pub fn pow(base: f64, exponent: f64) -> f64 {
    libm::pow(base, exponent)
}

/// Natural logarithm.
#[must_use]
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Logarithm to base ten.
#[must_use]
pub fn log10(x: f64) -> f64 {
    libm::log10(x)
}

/// Sine of an angle in radians.
#[must_use]
pub fn sin(radians: f64) -> f64 {
    libm::sin(radians)
}

/// Cosine of an angle in radians.
#[must_use]
pub fn cos(radians: f64) -> f64 {
    libm::cos(radians)
}

/// Tangent of an angle in radians.
#[must_use]
pub fn tan(radians: f64) -> f64 {
    libm::tan(radians)
}

/// Angle in radians whose tangent is `y / x`, in the right quadrant.
#[must_use]
pub fn atan2(y: f64, x: f64) -> f64 {
    libm::atan2(y, x)
}
