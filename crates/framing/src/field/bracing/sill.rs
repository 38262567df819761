//! The inputs of anchor bolts in a bottom plate, beside those that the path of uplift has.

use measure::LengthUnit::{Feet, Inches};

use crate::field::Group::{Bears, Carries, Shape, Wood};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, feet, field, number};

const FROM_END: Kind = Kind::Length { bare: Inches, least: 1.0, most: 24.0 };

/// Every input of anchor bolts.
pub(super) const SILL_FIELDS: &[FieldSpec] = &[
    field(
        "sill_long",
        "Length of the plate",
        "One piece of it, from end to end.",
        feet(Feet, 1.0, 60.0),
        Shape,
        Assumed("8'", "to have something to look at"),
    ),
    field(
        "sill_push",
        "Push along it",
        "From the shear wall on it, for allowable stress design: so many lb, or plf of its length, such as 350 plf.",
        Kind::Name,
        Carries,
        Assumed("2,400 lb", "to have something to look at"),
    ),
    field(
        "sill_uplift",
        "Uplift along it",
        "Net, for allowable stress design: from a wall with openings, or the path of uplift.",
        number("plf", 0.0, 5000.0),
        Carries,
        Assumed("0 plf", "a wall that is held down at its ends alone"),
    ),
    field(
        "sill_thick",
        "Plate",
        "",
        Kind::Choice(&[("2x", "2x, 1-1/2\" thick"), ("3x", "3x, 2-1/2\" thick")]),
        Wood,
        Assumed("2x", "the common plate"),
    ),
    field(
        "bolt_drawn",
        "Bolts as drawn",
        "Centre to centre. Empty: the widest spacing that carries.",
        Kind::Length { bare: Inches, least: 4.0, most: 96.0 },
        Bears,
        Nothing,
    ),
    field(
        "sill_left_end",
        "Left end to its bolt",
        "To the bolt's middle.",
        FROM_END,
        Bears,
        Assumed("12\"", "the farthest that the code lets it be, IRC R403.1.6"),
    ),
    field(
        "sill_right_end",
        "Right end to its bolt",
        "To the bolt's middle.",
        FROM_END,
        Bears,
        Assumed("12\"", "the farthest that the code lets it be, IRC R403.1.6"),
    ),
    field(
        "bolt_deep",
        "Bolt in the concrete",
        "How deep it is cast in.",
        Kind::Length { bare: Inches, least: 1.0, most: 36.0 },
        Bears,
        Assumed("7\"", "the least that the code takes, IRC R403.1.6"),
    ),
];
