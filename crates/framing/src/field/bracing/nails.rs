//! The inputs of nails in a joint, and of one nail in place of another.

use measure::LengthUnit::Inches;

use crate::field::Group::{Bears, Carries, Shape, Wood};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, YES_NO, field, number};

const SHANKS: Kind = Kind::Choice(&[
    ("smooth", "smooth"),
    ("stainless", "smooth, stainless"),
    ("roof_ring", "ring shank for roof sheathing"),
    ("post_ring", "ring shank for post frames"),
]);
const POUNDS: Kind = number("lb", 0.0, 100_000.0);
const NAIL_HELP: &str = "Diameter and length from the box, such as 0.131 x 2-1/2; or 8d common.";

/// Every input of nails.
pub(super) const NAIL_FIELDS: &[FieldSpec] = &[
    field("nail_as", "Nail", NAIL_HELP, Kind::Name, Shape, Assumed("8d common", "to have something to look at")),
    field("asked_nail", "Nail as drawn", NAIL_HELP, Kind::Name, Shape, Assumed("8d common", "the common panel nail")),
    field(
        "found_nail_as",
        "Nail at hand",
        NAIL_HELP,
        Kind::Name,
        Shape,
        Assumed("0.113 x 2-3/8", "to have something to look at"),
    ),
    field(
        "nail_pattern",
        "Pattern as drawn",
        "How far apart along a line, such as 4\"; or how many in the joint, such as 10 nails.",
        Kind::Name,
        Shape,
        Assumed("4\"", "to have something to look at"),
    ),
    field(
        "nailed_work",
        "What is nailed",
        "It decides who must say yes.",
        Kind::Choice(&[
            ("framing", "framing by the code's schedule"),
            ("shear", "panels of a shear wall"),
            ("panels", "panels of a roof or a floor"),
            ("drawn", "anything on the engineer's drawing"),
            ("truss", "a truss, or its repair"),
            ("metal", "a hanger, a strap or a tie"),
        ]),
        Shape,
        Assumed("drawn", "until someone says otherwise, it is the engineer's"),
    ),
    field(
        "code_element",
        "Joint in the code's schedule",
        "Words of it, such as stud bottom plate.",
        Kind::Name,
        Shape,
        Nothing,
    ),
    field("engineer_yes", "Whoever must agree says yes", "In writing.", YES_NO, Shape, Assumed("no", "not yet asked")),
    field("nail_shank", "Shank", "As the box calls it.", SHANKS, Shape, Assumed("smooth", "the weaker common one")),
    field("asked_shank", "Shank as drawn", "", SHANKS, Shape, Assumed("smooth", "where the drawing names no other")),
    field(
        "nail_ringed",
        "Rings",
        "From the point to the last ring.",
        Kind::Length { bare: Inches, least: 0.25, most: 8.0 },
        Shape,
        Assumed("1-1/2\"", "measure them: only rings hold as rings"),
    ),
    field(
        "nail_head",
        "Head across",
        "Measured. Of a clipped head, the round one that fits inside it. Empty: the table's.",
        Kind::Length { bare: Inches, least: 0.1, most: 0.75 },
        Shape,
        Nothing,
    ),
    field(
        "nail_driven",
        "Driven",
        "",
        Kind::Choice(&[
            ("face", "straight, into side grain"),
            ("end", "into end grain"),
            ("toe", "at a slant, a toe nail"),
        ]),
        Bears,
        Assumed("face", "the common way"),
    ),
    field(
        "nail_side",
        "Under the head",
        "",
        Kind::Choice(&[
            ("lumber", "lumber"),
            ("osb", "OSB"),
            ("plywood", "plywood"),
            ("plywood_1", "plywood, Structural I"),
            ("steel", "steel strap"),
        ]),
        Wood,
        Assumed("osb", "the common sheathing"),
    ),
    field(
        "nail_side_thick",
        "Its thickness",
        "Of wood or panel; under overdriven heads, what is left. Empty: the common one.",
        Kind::Length { bare: Inches, least: 0.25, most: 5.5 },
        Wood,
        Nothing,
    ),
    field(
        "nail_gauge",
        "Gauge of the strap",
        "",
        Kind::Choice(&[
            ("20", "20 gauge"),
            ("18", "18 gauge"),
            ("16", "16 gauge"),
            ("14", "14 gauge"),
            ("12", "12 gauge"),
            ("11", "11 gauge"),
            ("10", "10 gauge"),
            ("7", "7 gauge"),
            ("3", "3 gauge"),
        ]),
        Wood,
        Assumed("20", "the thinnest of the table"),
    ),
    field(
        "nail_lasts",
        "Load",
        "The shortest load in it.",
        Kind::Choice(&[
            ("wind", "wind"),
            ("construction", "roof live load, or the crew's"),
            ("snow", "snow"),
            ("floor", "floor live load"),
            ("dead", "dead load alone"),
        ]),
        Carries,
        Assumed("wind", "what this chapter is about"),
    ),
    field("nail_count", "Nails", "How many share the load.", number("", 1.0, 1000.0), Shape, Assumed("1", "one nail")),
    field("nail_across", "Load across them", "On all of them together.", POUNDS, Carries, Nothing),
    field("nail_pull", "Load that pulls them", "Along the shank, on all of them together.", POUNDS, Carries, Nothing),
    field(
        "nail_pulled",
        "Pulled as well",
        "By wind or by a load that hangs.",
        YES_NO,
        Carries,
        Assumed("yes", "the harder case"),
    ),
];
