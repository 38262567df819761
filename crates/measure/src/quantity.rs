//! The quantities, their base units, and the products and quotients that exist between them.
//!
//! Each quantity is one `f64` of its base unit, which the constructor and the accessor name. A constructor takes
//! finite numbers only, and says so in debug builds. Adding, scaling and comparing stay within one quantity; a product
//! or a quotient of two gives the quantity that it is, with feet turned into inches where the base units need it. A
//! product with no meaning here does not compile. Nothing rounds beyond the last bit of the `f64`.

use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

use crate::math;

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $make:ident, $read:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// None of it.
            pub const ZERO: Self = Self(0.0);

            #[doc = concat!("From a number of ", $unit, ". The number must be finite; text is checked where it is read.")]
            #[must_use]
            pub const fn $make(value: f64) -> Self {
                debug_assert!(value.is_finite());
                Self(value)
            }

            #[doc = concat!("As a number of ", $unit, ".")]
            #[must_use]
            pub const fn $read(self) -> f64 {
                self.0
            }

            /// The larger of the two.
            #[must_use]
            pub const fn max(self, other: Self) -> Self {
                if self.0 >= other.0 { self } else { other }
            }

            /// The smaller of the two.
            #[must_use]
            pub const fn min(self, other: Self) -> Self {
                if self.0 <= other.0 { self } else { other }
            }

            /// Without its sign.
            #[must_use]
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Mul<$name> for f64 {
            type Output = $name;
            fn mul(self, quantity: $name) -> $name {
                $name(self * quantity.0)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Div for $name {
            type Output = Ratio;
            /// How many times the second goes into the first: a pure number.
            fn div(self, other: Self) -> Ratio {
                self.0 / other.0
            }
        }

        impl core::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
                parts.fold(Self::ZERO, Add::add)
            }
        }
    };
}

/// A pure number: a factor, a share of capacity, a slenderness.
pub type Ratio = f64;

quantity!(
    /// A length; held in inches.
    Length, from_inches, inches, "inches"
);
quantity!(
    /// An area of a section or of a surface; held in square inches.
    Area, from_square_inches, square_inches, "square inches"
);
quantity!(
    /// Section modulus `S`: what a section's shape gives it in bending; held in cubic inches.
    SectionModulus, from_cubic_inches, cubic_inches, "cubic inches"
);
quantity!(
    /// Second moment of area `I`: what a section's shape gives it in stiffness; held in inches to the fourth.
    SecondMoment, from_inches_fourth, inches_fourth, "inches to the fourth"
);
quantity!(
    /// A force; held in pounds.
    Force, from_pounds, pounds, "pounds"
);
quantity!(
    /// A load per length of a member; held in pounds per foot.
    LineLoad, from_plf, plf, "pounds per foot"
);
quantity!(
    /// A load per area of a surface; held in pounds per square foot.
    AreaLoad, from_psf, psf, "pounds per square foot"
);
quantity!(
    /// A stress, a strength or a modulus of elasticity; held in pounds per square inch.
    Stress, from_psi, psi, "pounds per square inch"
);
quantity!(
    /// A bending moment; held in inch-pounds.
    Moment, from_inch_pounds, inch_pounds, "inch-pounds"
);
quantity!(
    /// Bending stiffness `E I`; held in pound-square inches.
    FlexuralRigidity, from_pound_square_inches, pound_square_inches, "pound-square inches"
);
quantity!(
    /// A wind speed; held in miles per hour.
    Speed, from_mph, mph, "miles per hour"
);
quantity!(
    /// Weight per volume; held in pounds per cubic foot.
    Density, from_pcf, pcf, "pounds per cubic foot"
);
quantity!(
    /// A roof's pitch; held as inches of rise in twelve inches of run.
    Slope, from_rise_in_twelve, rise_in_twelve, "inches of rise in twelve of run"
);

quantity!(
    /// An angle; held in degrees.
    Angle, from_degrees, degrees, "degrees"
);

const INCHES_PER_FOOT: f64 = 12.0;
/// An inch is 25.4 mm exactly, by definition since 1959. As 127/5 both numbers are exact in binary, which 25.4 is not.
const MILLIMETRES_IN_FIVE_INCHES: f64 = 127.0;
const SQUARE_INCHES_PER_SQUARE_FOOT: f64 = INCHES_PER_FOOT * INCHES_PER_FOOT;

impl Length {
    /// From a number of feet.
    #[must_use]
    pub const fn from_feet(feet: f64) -> Self {
        Self::from_inches(feet * INCHES_PER_FOOT)
    }

    /// From a number of millimetres.
    #[must_use]
    pub const fn from_millimetres(millimetres: f64) -> Self {
        Self::from_inches(millimetres * 5.0 / MILLIMETRES_IN_FIVE_INCHES)
    }

    /// As a number of feet.
    #[must_use]
    pub const fn feet(self) -> f64 {
        self.0 / INCHES_PER_FOOT
    }

    /// As a number of millimetres.
    #[must_use]
    pub const fn millimetres(self) -> f64 {
        self.0 * MILLIMETRES_IN_FIVE_INCHES / 5.0
    }
}

impl Angle {
    /// Its sine.
    #[must_use]
    pub fn sin(self) -> Ratio {
        math::sin(self.0.to_radians())
    }

    /// Its cosine.
    #[must_use]
    pub fn cos(self) -> Ratio {
        math::cos(self.0.to_radians())
    }

    /// Its tangent.
    #[must_use]
    pub fn tan(self) -> Ratio {
        math::tan(self.0.to_radians())
    }
}

impl Slope {
    /// The angle that a roof of this pitch makes with the level.
    #[must_use]
    pub fn angle(self) -> Angle {
        Angle(math::atan2(self.0, INCHES_PER_FOOT).to_degrees())
    }

    /// The pitch of a roof that makes this angle with the level; from level to less than upright.
    #[must_use]
    pub fn of_angle(angle: Angle) -> Self {
        Self(angle.tan() * INCHES_PER_FOOT)
    }
}

impl Area {
    /// From a number of square feet.
    #[must_use]
    pub const fn from_square_feet(square_feet: f64) -> Self {
        Self::from_square_inches(square_feet * SQUARE_INCHES_PER_SQUARE_FOOT)
    }

    /// As a number of square feet.
    #[must_use]
    pub const fn square_feet(self) -> f64 {
        self.0 / SQUARE_INCHES_PER_SQUARE_FOOT
    }
}

impl Moment {
    /// From a number of foot-pounds.
    #[must_use]
    pub const fn from_foot_pounds(foot_pounds: f64) -> Self {
        Self::from_inch_pounds(foot_pounds * INCHES_PER_FOOT)
    }

    /// As a number of foot-pounds.
    #[must_use]
    pub const fn foot_pounds(self) -> f64 {
        self.0 / INCHES_PER_FOOT
    }
}

impl LineLoad {
    /// As a number of pounds per inch, the unit beam equations in inches need.
    #[must_use]
    pub const fn pounds_per_inch(self) -> f64 {
        self.0 / INCHES_PER_FOOT
    }
}

macro_rules! product {
    ($left:ident * $right:ident = $result:ident, |$l:ident, $r:ident| $value:expr) => {
        impl Mul<$right> for $left {
            type Output = $result;
            fn mul(self, other: $right) -> $result {
                let ($l, $r) = (self.0, other.0);
                $result($value)
            }
        }
    };
}

macro_rules! quotient {
    ($left:ident / $right:ident = $result:ident, |$l:ident, $r:ident| $value:expr) => {
        impl Div<$right> for $left {
            type Output = $result;
            fn div(self, other: $right) -> $result {
                let ($l, $r) = (self.0, other.0);
                $result($value)
            }
        }
    };
}

product!(Length * Length = Area, |l, r| l * r);
product!(Area * Length = SectionModulus, |a, l| a * l);
product!(SectionModulus * Length = SecondMoment, |s, l| s * l);
product!(Stress * Area = Force, |s, a| s * a);
product!(Stress * SectionModulus = Moment, |f, s| f * s);
product!(Stress * SecondMoment = FlexuralRigidity, |e, i| e * i);
product!(Force * Length = Moment, |f, l| f * l);
product!(LineLoad * Length = Force, |w, l| w * l / INCHES_PER_FOOT);
product!(AreaLoad * Length = LineLoad, |p, l| p * l / INCHES_PER_FOOT);
product!(AreaLoad * Area = Force, |p, a| p * a / SQUARE_INCHES_PER_SQUARE_FOOT);
product!(Density * Area = LineLoad, |g, a| g * a / SQUARE_INCHES_PER_SQUARE_FOOT);
quotient!(Area / Length = Length, |a, l| a / l);
quotient!(Force / Area = Stress, |f, a| f / a);
quotient!(Force / Length = LineLoad, |f, l| f / l * INCHES_PER_FOOT);
quotient!(Force / Stress = Area, |f, s| f / s);
quotient!(Moment / SectionModulus = Stress, |m, s| m / s);
quotient!(Moment / Stress = SectionModulus, |m, f| m / f);
quotient!(Moment / Force = Length, |m, f| m / f);

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: the steel square's brace and angle figures: 6 in 12 is 26.57 degrees, 12 in 12 is 45, 4 in 12 is 18.43;
    /// printed to two places.
    #[test]
    fn a_pitch_and_its_angle() {
        for (rise, degrees) in [(0.0, 0.0), (4.0, 18.43), (6.0, 26.57), (12.0, 45.0), (24.0, 63.43)] {
            let pitch = Slope::from_rise_in_twelve(rise);
            assert!((pitch.angle().degrees() - degrees).abs() < 0.005, "{rise} in 12");
            assert!((Slope::of_angle(pitch.angle()).rise_in_twelve() - rise).abs() < 1e-12, "{rise} in 12");
        }
        let angle = Angle::from_degrees(30.0);
        assert!((angle.sin() - 0.5).abs() < 1e-15);
        assert!((angle.sin() / angle.cos() - angle.tan()).abs() < 1e-15);
    }
}
