//! The inputs of the path of uplift that are nails: panels that lap the plates, and the roof sheathing.

use measure::LengthUnit::Inches;

use super::PLF;
use super::lift::PSF;
use crate::field::Group::{Bears, Carries};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, field};

/// Every input of panels and roof sheathing in the path.
pub(super) const LIFT_NAIL_FIELDS: &[FieldSpec] = &[
    field(
        "lap_panels",
        "Panels and their nails for shear",
        "Where they lap the plates and are nailed for uplift too, such as 7/16 8d 6. Empty: the code's schedule alone.",
        Kind::Name,
        Bears,
        Nothing,
    ),
    field(
        "lap_rows",
        "Rows of nails in each plate",
        "The top and the bottom edge of the panels.",
        Kind::Choice(&[("1", "1 row"), ("2", "2 rows, staggered")]),
        Bears,
        Assumed("1", "the weaker one"),
    ),
    field(
        "lap_every",
        "Nails in each row",
        "The tables have 6, 4 and 3 inches.",
        Kind::Length { bare: Inches, least: 2.0, most: 12.0 },
        Bears,
        Assumed("6\"", "the widest of the tables"),
    ),
    field(
        "lap_shear",
        "Shear in these panels",
        "In the same wind, for allowable stress design; 0 where other walls take it.",
        PLF,
        Carries,
        Nothing,
    ),
    field(
        "deck_nail",
        "Nail in the roof sheathing",
        "Diameter and length from the box, such as 0.131 x 2-1/2; or 8d common.",
        Kind::Name,
        Bears,
        Nothing,
    ),
    field(
        "deck_shank",
        "Its shank",
        "As the box calls it.",
        Kind::Choice(&[("smooth", "smooth"), ("ring", "ring shank for roof sheathing")]),
        Bears,
        Assumed("smooth", "the weaker one"),
    ),
    field(
        "deck_ringed",
        "Its rings",
        "From the point to the last ring.",
        Kind::Length { bare: Inches, least: 0.25, most: 8.0 },
        Bears,
        Assumed("1-1/2\"", "measure them: only rings hold as rings"),
    ),
    field(
        "deck_every",
        "Along each rafter, every",
        "",
        Kind::Length { bare: Inches, least: 2.0, most: 24.0 },
        Bears,
        Assumed("12\"", "the widest that the code's schedule has"),
    ),
    field(
        "deck_panel",
        "Roof sheathing",
        "",
        Kind::Choice(&[("osb", "OSB"), ("plywood", "plywood")]),
        Bears,
        Assumed("osb", "the common one"),
    ),
    field(
        "deck_thick",
        "Its thickness",
        "",
        Kind::Length { bare: Inches, least: 0.3125, most: 1.5 },
        Bears,
        Assumed("7/16\"", "the common sheathing"),
    ),
    field(
        "deck_zone",
        "It lies",
        "The pressures of the place are higher along every edge.",
        Kind::Choice(&[
            ("edge", "anywhere: the hardest part of the roof"),
            ("field", "away from eaves, rakes and ridge"),
        ]),
        Carries,
        Assumed("edge", "the harder case"),
    ),
    field(
        "deck_suction",
        "Suction on the roof sheathing",
        "For allowable stress design: 0.6 of the wind. Empty: worked out from the place.",
        PSF,
        Carries,
        Nothing,
    ),
];
