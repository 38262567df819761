//! The inputs of a floor that is laid out.

use measure::LengthUnit::{Feet, Inches};

use crate::field::Group::{Bears, Carries, Limits, Shape, Wood};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, YES_NO, feet, field};

/// How joists end.
const END: Kind = Kind::Choice(&[("plate", "on a plate, with a rim"), ("hangers", "in hangers on a beam or a ledger")]);

/// Every input of a floor that is laid out.
pub const FLOOR_LAYOUT_FIELDS: &[FieldSpec] = &[
    field(
        "joists_long",
        "Length of the floor",
        "Along the plates, out to out: across the joists.",
        feet(Feet, 1.0, 200.0),
        Shape,
        Assumed("24'", "to have something to look at"),
    ),
    field(
        "joists_deep",
        "Along the joists",
        "Out to out of the rims, or between the faces that hangers hang on.",
        feet(Feet, 2.0, 60.0),
        Shape,
        Assumed("14'", "to have something to look at"),
    ),
    field(
        "joists_openings",
        "Openings",
        "Clear, a line each, across the joists first: 3' 6\" x 10' at 12', in 2'. In is from the near side. Then plies 2.",
        Kind::Lines,
        Shape,
        Nothing,
    ),
    field(
        "joists_every",
        "Joist spacing",
        "Inches, centre to centre.",
        Kind::Choice(&[("12", "12\""), ("16", "16\""), ("19.2", "19.2\""), ("24", "24\"")]),
        Shape,
        Assumed("16", "the common spacing"),
    ),
    field(
        "joists_hook",
        "Hook the tape",
        "The panels start there as well. Places are typed from the left end all the same.",
        Kind::Choice(&[("left", "on the left end"), ("right", "on the right end")]),
        Shape,
        Assumed("left", "the common way"),
    ),
    field(
        "joists_pull",
        "Pull to",
        "What each mark of the tape is of its joist.",
        Kind::Choice(&[
            ("near", "the near edge, X past the line"),
            ("center", "the centre, over the line"),
            ("far", "the far edge, X short of the line"),
        ]),
        Shape,
        Assumed("near", "the common way"),
    ),
    field(
        "joists_beyond",
        "Panels start before the end",
        "How far past the end of the plates they begin.",
        Kind::Length { bare: Inches, least: 0.0, most: 24.0 },
        Shape,
        Assumed("0\"", "they start at the end"),
    ),
    field(
        "joists_stick",
        "Joists",
        "",
        Kind::Choice(&[
            ("2x6", "2x6"),
            ("2x8", "2x8"),
            ("2x10", "2x10"),
            ("2x12", "2x12"),
            ("made", "engineered, by their maker's papers"),
        ]),
        Wood,
        Assumed("2x10", "the common joist"),
    ),
    field(
        "joists_made_deep",
        "Depth of the engineered joists",
        "",
        Kind::Length { bare: Inches, least: 5.0, most: 30.0 },
        Wood,
        Assumed("11-7/8\"", "a common depth"),
    ),
    field(
        "joists_flange",
        "Width of their flange",
        "",
        Kind::Length { bare: Inches, least: 1.0, most: 5.0 },
        Wood,
        Assumed("2-1/2\"", "a common width, from memory"),
    ),
    field("joists_near", "Near side", "The joists' ends there.", END, Bears, Assumed("plate", "the common way")),
    field("joists_far", "Far side", "The joists' ends there.", END, Bears, Assumed("plate", "the common way")),
    field(
        "joists_rim",
        "Thickness of the rim",
        "",
        Kind::Length { bare: Inches, least: 0.75, most: 4.0 },
        Bears,
        Assumed("1-1/2\"", "dressed lumber"),
    ),
    field(
        "joists_hanger_gap",
        "Gap in the hangers",
        "How far a joist stops before the face that it hangs on, by the hanger's maker.",
        Kind::Length { bare: Inches, least: 0.0, most: 0.5 },
        Bears,
        Assumed("1/16\"", "the least that makers ask"),
    ),
    field(
        "joists_rows",
        "Rows of blocks",
        "Between the joists.",
        Kind::Choice(&[("code", "as the code asks"), ("0", "none"), ("1", "one"), ("2", "two"), ("3", "three")]),
        Bears,
        Assumed("code", "IRC R502.7.1"),
    ),
    field(
        "joists_walls",
        "Walls above, along the joists",
        "Their centres from the left end, commas between. After one with pipes in it, the gap between its joists: 12', 20' spread 4\".",
        Kind::Name,
        Carries,
        Nothing,
    ),
    field(
        "joists_loads",
        "Posts and stacks of jacks above",
        "Squash blocks under each, and where it stands over a bearing: along the plates x along the joists, commas between: 2 at 12' x 0'.",
        Kind::Name,
        Carries,
        Nothing,
    ),
    field(
        "joists_stock",
        "Boards for rims",
        "How long they are.",
        feet(Feet, 6.0, 40.0),
        Wood,
        Assumed("16'", "a common length"),
    ),
    field(
        "joists_panels",
        "Panels",
        "4' by 8', across the joists.",
        Kind::Choice(&[("yes", "staggered"), ("no", "none here")]),
        Wood,
        Assumed("yes", "the common floor"),
    ),
    field(
        "joists_gap",
        "Gap between panels",
        "At edges and ends. The stamp wins.",
        Kind::Length { bare: Inches, least: 0.0, most: 0.5 },
        Wood,
        Assumed("1/8\"", "the usual gap, from memory"),
    ),
    field(
        "joists_sized",
        "Panels are sized for the gap",
        "Made 1/8\" short of their name, so that gaps do not add up.",
        YES_NO,
        Limits,
        Assumed("yes", "common in panels of 4' by 8'"),
    ),
];
