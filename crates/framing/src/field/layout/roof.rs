//! The inputs of hand-cut roofs.

use measure::LengthUnit::{Feet, Inches};

use crate::field::Group::{Bears, Shape, Wood};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::site::PITCH;
use crate::field::{FieldSpec, Kind, feet, field, number};

/// Sizes that rafters are cut from.
const RAFTERS: Kind =
    Kind::Choice(&[("2x4", "2x4"), ("2x6", "2x6"), ("2x8", "2x8"), ("2x10", "2x10"), ("2x12", "2x12")]);

/// Every input of hand-cut roofs that the job does not have.
pub const ROOF_LAYOUT_FIELDS: &[FieldSpec] = &[
    field(
        "cut_run",
        "Run",
        "Level, outer face of the plate to the middle of the ridge. Empty: half of the house.",
        feet(Feet, 1.0, 60.0),
        Shape,
        Nothing,
    ),
    field("cut_stick", "Rafter", "", RAFTERS, Wood, Assumed("2x8", "a common rafter")),
    field(
        "ridge_meets",
        "At the ridge",
        "What the rafter comes to at its upper end.",
        Kind::Choice(&[
            ("board", "a ridge board"),
            ("beam_face", "the face of a beam that carries"),
            ("beam_top", "the top of a beam, notched over it"),
            ("rafter", "the rafter across, no board"),
        ]),
        Bears,
        Assumed("board", "the common roof"),
    ),
    field(
        "ridge_thick",
        "Thickness of the ridge",
        "",
        Kind::Length { bare: Inches, least: 0.5, most: 12.0 },
        Bears,
        Assumed("1-1/2\"", "a 2x ridge"),
    ),
    field(
        "ridge_deep",
        "Depth of the ridge",
        "",
        Kind::Length { bare: Inches, least: 3.0, most: 30.0 },
        Bears,
        Assumed("9-1/4\"", "one size deeper than a 2x8 rafter"),
    ),
    field(
        "ridge_seat",
        "Seat on the beam",
        "Level, of one rafter. Both meet over the middle of the beam.",
        Kind::Length { bare: Inches, least: 0.5, most: 6.0 },
        Bears,
        Assumed("1-1/2\"", "the least bearing on wood"),
    ),
    field(
        "seat_level",
        "Seat on the plate",
        "Level, from the outer face of the plate inward.",
        Kind::Length { bare: Inches, least: 0.5, most: 12.0 },
        Bears,
        Assumed("3-1/2\"", "the whole of a 2x4 plate"),
    ),
    field(
        "fascia_thick",
        "Thickness of the fascia",
        "The overhang is measured to its outer face; the rafter is cut shorter by this.",
        Kind::Length { bare: Inches, least: 0.0, most: 3.0 },
        Shape,
        Assumed("3/4\"", "a 1x fascia"),
    ),
    field(
        "tail_cut",
        "Tail",
        "",
        Kind::Choice(&[("plumb", "cut plumb"), ("square", "cut square")]),
        Shape,
        Assumed("plumb", "for a plumb fascia"),
    ),
    field(
        "cut_corner",
        "Corner",
        "A hip stands over an outside corner, a valley lies in an inside one.",
        Kind::Choice(&[("hip", "a hip"), ("valley", "a valley")]),
        Shape,
        Assumed("hip", "an outside corner"),
    ),
    field(
        "cut_other_pitch",
        "Pitch of the other roof",
        "Roof B, around the corner. Empty: the same as roof A.",
        PITCH,
        Shape,
        Nothing,
    ),
    field(
        "corner_angle",
        "Angle of the corner",
        "Between the walls in plan: inside the house at a hip, outdoors at a valley. 135 on an octagon.",
        number("degrees", 20.0, 175.0),
        Shape,
        Assumed("90", "a square corner"),
    ),
    field("hip_stick", "Hip or valley", "", RAFTERS, Wood, Assumed("2x10", "one size deeper than its jacks")),
    field(
        "hip_plies",
        "Plies",
        "",
        Kind::Choice(&[("1", "one"), ("2", "two, side by side")]),
        Wood,
        Assumed("1", "a single stick"),
    ),
    field(
        "hip_top",
        "Its top edge",
        "How it comes into both roofs.",
        Kind::Choice(&[
            ("square", "left square: dropped"),
            ("slid", "left square: dropped and moved sideways"),
            ("backed", "backed: ripped to both roofs"),
        ]),
        Shape,
        Assumed("square", "the least work"),
    ),
    field(
        "hip_meets",
        "At its upper end",
        "What it comes to.",
        Kind::Choice(&[
            ("ridge", "the side of a ridge along roof A"),
            ("commons", "the corner between two commons"),
            ("valley", "a longer valley, square"),
            ("lines", "nothing: to the middle lines"),
        ]),
        Bears,
        Assumed("ridge", "a ridge board"),
    ),
    field(
        "jack_side",
        "Jacks of",
        "",
        Kind::Choice(&[("a", "roof A"), ("b", "roof B, around the corner")]),
        Shape,
        Assumed("a", "the roof whose pitch is given first"),
    ),
    field(
        "jack_every",
        "Spacing",
        "Along the eave.",
        Kind::Length { bare: Inches, least: 8.0, most: 48.0 },
        Shape,
        Assumed("16\"", "the common spacing"),
    ),
    field(
        "jack_start",
        "Laid out from",
        "The first jack stands one spacing from here.",
        Kind::Choice(&[("corner", "the corner"), ("king", "the king common")]),
        Shape,
        Assumed("corner", "the first jack is then one difference long"),
    ),
    field(
        "sheathed_eave",
        "Eave",
        "Its length at the fascia. Empty: the house, out to the fascia at a hip.",
        feet(Feet, 4.0, 200.0),
        Shape,
        Nothing,
    ),
    field(
        "left_end",
        "Left end",
        "",
        Kind::Choice(&[("gable", "a gable"), ("hip", "a hip"), ("valley", "a valley")]),
        Shape,
        Assumed("hip", "to have a cut to look at"),
    ),
    field(
        "right_end",
        "Right end",
        "",
        Kind::Choice(&[("gable", "a gable"), ("hip", "a hip"), ("valley", "a valley")]),
        Shape,
        Assumed("gable", "a square end"),
    ),
    field(
        "sheet_gap",
        "Gap between sheets",
        "As the maker of the sheets says.",
        Kind::Length { bare: Inches, least: 0.0, most: 0.5 },
        Shape,
        Assumed("1/8\"", "common practice"),
    ),
];
