//! A notch, a hole or a cut.

use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Found};
use crate::walk::spec::{COUNT, Condition, Spec, YES_NO, YES_NO_HIDDEN, inches};

/// Unless someone says otherwise it is a stud.
const STUD: &[Condition] = &[("member", &["", "stud"])];
const DOUBLED: &[Condition] = &[("member", &["", "stud"]), ("doubled", &["yes"])];
const JOIST: &[Condition] = &[("member", &["joist", "rafter"])];
const JOIST_OR_PLATE: &[Condition] = &[("member", &["joist", "rafter", "top_plate"])];
const PLATE: &[Condition] = &[("member", &["top_plate"])];
const TIED: &[Condition] = &[("member", &["top_plate"]), ("tie", &["yes"])];
const WALL: &[Condition] = &[("member", &["", "stud", "top_plate"])];

pub(in crate::walk) const WALLS: &[(&str, &str)] =
    &[("exterior_or_bearing", "outer, or it bears"), ("nonbearing", "partition that bears nothing")];
const SIZES: &[(&str, &str)] = &[
    ("2x4", "2x4"),
    ("2x6", "2x6"),
    ("2x8", "2x8"),
    ("2x10", "2x10"),
    ("2x12", "2x12"),
    ("3x4", "3x4"),
    ("4x4", "4x4"),
    ("4x6", "4x6"),
];

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new(
        "member",
        "What was cut",
        "The rule differs for each.",
        Choice(&[
            ("stud", "a stud"),
            ("joist", "a joist"),
            ("rafter", "a rafter"),
            ("engineered", "an I-joist, truss or glued member"),
            ("top_plate", "a top plate"),
        ]),
        Found,
    ),
    Spec::new("notch_depth", "Notch depth", "Into the member.", inches(0.0, 12.0), Found),
    Spec::new(
        "hole_diameter",
        "Hole diameter",
        "Across the member where it is bored at an angle.",
        inches(0.0, 12.0),
        Found,
    ),
    Spec::new("to_edge", "Wood beside the hole", "To the nearer face or edge.", inches(0.0, 12.0), Found).hidden(),
    Spec::new("notch_beside", "Notch at the hole", "In the same section of the stud.", YES_NO_HIDDEN, Found)
        .only(STUD)
        .hidden(),
    Spec::new("notch_length", "Notch length", "Along the member.", inches(0.0, 96.0), Found)
        .only(JOIST_OR_PLATE)
        .hidden(),
    Spec::new(
        "notch_edge",
        "Edge of the notch",
        "Between two bearings.",
        Choice(&[("top", "top"), ("bottom", "bottom")]),
        Found,
    )
    .only(JOIST),
    Spec::new(
        "place",
        "Where along it",
        "By thirds of its span.",
        Choice(&[("end", "at its end"), ("outer_third", "outer third"), ("middle_third", "middle third")]),
        Found,
    )
    .only(JOIST),
    Spec::new("to_next", "Wood to the next cut", "To the next hole or notch; none where there is none.", Text, Found)
        .only(JOIST)
        .hidden(),
    Spec::new("opening", "Opening", "In the plate, along the wall.", inches(0.0, 48.0), Found).only(PLATE),
    Spec::new(
        "tie",
        "Metal tie",
        "Across the cut.",
        Choice(&[("yes", "yes"), ("none", "none"), crate::walk::spec::HIDDEN]),
        Found,
    )
    .only(PLATE)
    .hidden(),
    Spec::new("tie_thickness", "Tie thickness", "As marked or gauged: 0.054.", inches(0.01, 0.5), Found)
        .only(TIED)
        .hidden(),
    Spec::new("tie_width", "Tie width", "Across its length.", inches(0.25, 12.0), Found).only(TIED),
    Spec::new("tie_past_opening", "Tie past the cut", "On the side where it reaches less.", inches(0.0, 48.0), Found)
        .only(TIED),
    Spec::new("tie_nails", "Nails of the tie", "On the side that has fewer.", COUNT, Found).only(TIED),
    Spec::new("tie_nail", "Nail of the tie", "Its size: 0.148 x 1-1/2.", Text, Found).only(TIED).hidden(),
    Spec::new("doubled", "Stud doubled", "Two studs nailed together.", YES_NO, Around).only(STUD),
    Spec::new("bored_in_a_row", "Bored in a row", "Doubled studs, this one among them.", COUNT, Around)
        .only(DOUBLED)
        .hidden(),
    Spec::new("size", "Size", "Nominal.", Choice(SIZES), Around),
    Spec::new("member_width", "Width as measured", "In the direction of the cut.", inches(1.0, 24.0), Around),
    Spec::new("wall", "The wall", "A partition may be cut deeper.", Choice(WALLS), Around).only(WALL),
];
