//! The inputs of the path of uplift of a wall under rafters.

use measure::LengthUnit::Feet;

use super::{PLF, SPACING};
use crate::field::Group::{Bears, Carries, Shape};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, YES_NO, feet, field, number};

/// How a tie at a link is written.
pub(super) const TIE_HELP: &str = "Its label's load, such as 500 lb; or toe nails, such as 3 8d common; or none.";
const WALL_TIE_HELP: &str =
    "Its label's load, such as 500 lb; or nails, such as 3 8d common; or panels, where they lap the plates; or none.";
pub(super) const PSF: Kind = number("psf", 0.0, 500.0);
const SIDES: Kind = Kind::Choice(&[("sheathed", "the sheathed side"), ("inside", "the inside")]);

/// Every input of a wall under rafters.
pub(super) const LIFT_FIELDS: &[FieldSpec] = &[
    field(
        "uplift_of",
        "What is lifted",
        "",
        Kind::Choice(&[
            ("wall", "a wall under rafters"),
            ("gable", "a gable end and its overhang"),
            ("porch", "a porch post"),
        ]),
        Shape,
        Assumed("wall", "the common one"),
    ),
    field(
        "uplift_given",
        "Uplift on the wall",
        "Net, from the drawing, 0.6 of the roof's weight counted. Empty: the code's table of ties.",
        PLF,
        Carries,
        Nothing,
    ),
    field(
        "eave_lift",
        "Lift on the eave overhang",
        "Net, both faces together, where the uplift above does not have it yet.",
        PSF,
        Carries,
        Nothing,
    ),
    field(
        "wall_by_corner",
        "Within 8' of a corner",
        "Of the house.",
        YES_NO,
        Carries,
        Assumed("yes", "the harder case"),
    ),
    field(
        "rafter_every",
        "Rafters or trusses",
        "Centre to centre.",
        SPACING,
        Shape,
        Assumed("24\"", "the common truss spacing"),
    ),
    field(
        "uplift_storeys",
        "Storeys under it",
        "",
        Kind::Choice(&[("1", "1 storey"), ("2", "2 storeys"), ("3", "3 storeys")]),
        Shape,
        Assumed("1", "the common wall"),
    ),
    field("rafter_tie", "Rafter to plate", TIE_HELP, Kind::Name, Bears, Nothing),
    field(
        "rafter_tie_side",
        "Ties at the plate are on",
        "They belong on the side where the panels are, or the plate rolls.",
        SIDES,
        Bears,
        Nothing,
    ),
    field("plate_tie", "Plate to stud", WALL_TIE_HELP, Kind::Name, Bears, Nothing),
    field(
        "plate_tie_side",
        "Ties at the studs are on",
        "One over the other: the side of those above.",
        SIDES,
        Bears,
        Nothing,
    ),
    field("floor_tie", "Stud to stud over a floor", WALL_TIE_HELP, Kind::Name, Bears, Nothing),
    field("sill_tie", "Stud to sill", WALL_TIE_HELP, Kind::Name, Bears, Nothing),
    field(
        "uplift_opening",
        "Widest opening",
        "In the top storey. Empty: none is worked.",
        feet(Feet, 1.0, 20.0),
        Shape,
        Nothing,
    ),
    field("header_tie", "Header to stud", TIE_HELP, Kind::Name, Bears, Nothing),
    field("jamb_tie", "Studs beside it to below", TIE_HELP, Kind::Name, Bears, Nothing),
];
