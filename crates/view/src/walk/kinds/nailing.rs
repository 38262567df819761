//! Nails: counted along a line, driven too deep, and the nail itself.

use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Found, Required};
use crate::walk::spec::{COUNT, Condition, Spec, YES_NO, inches};

/// What the panel is matters once deep nails were counted.
const EDGE: &[Condition] = &[("line", &["", "edge"])];

pub(in crate::walk) const SIDES: &[(&str, &str)] =
    &[("osb", "OSB"), ("plywood", "plywood"), ("plywood_structural_1", "plywood, Structural I"), ("lumber", "lumber")];
pub(in crate::walk) const WORK: &[(&str, &str)] = &[
    ("engineers_drawing", "what an engineer drew"),
    ("code_panels", "braced panels by the code's table"),
    ("code_framing", "framing by the code's table"),
    ("truss", "a truss"),
    ("metal_connector", "a metal connector"),
    ("no_load", "nothing that carries"),
];

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new(
        "line",
        "Line counted",
        "Along a panel's edge, on a stud between, or along the boundary.",
        Choice(&[("edge", "panel edge"), ("field", "field, on a stud"), ("boundary", "boundary")]),
        Found,
    ),
    Spec::new(
        "line_length",
        "Length counted",
        "From the first nail's place to the last one's.",
        inches(1.0, 120.0),
        Found,
    ),
    Spec::new("driven", "Nails driven", "Counted from outside, hit or missed.", COUNT, Found),
    Spec::new("missed", "Missed the stud", "Seen from inside, in the air beside it.", COUNT, Found).hidden(),
    Spec::new("widest_gap", "Widest gap", "Between two neighbours that hold.", inches(0.25, 48.0), Found),
    Spec::new("found_spacing", "Spacing found", "Where it was measured and not counted.", inches(0.25, 48.0), Found),
    Spec::new("to_panel_edge", "Nail to panel edge", "The nail that is nearest to it.", inches(0.0, 6.0), Found)
        .hidden(),
    Spec::new("overdriven", "Over 1/16\" deep", "Edge nails, to 1/8\" deep.", COUNT, Found).only(EDGE),
    Spec::new("too_deep", "Over 1/8\" deep", "Edge nails deeper than that.", COUNT, Found).only(EDGE),
    Spec::new("depths", "Depth of a nail", "Under the panel's face, one by one.", inches(0.0, 1.0), Found)
        .list()
        .only(EDGE),
    Spec::new("panel_dry", "Panel dry", "When it was nailed.", YES_NO, Found),
    Spec::new("found_nail", "Nail found", "As the box says it: 2-3/8 x .113.", Text, Found),
    Spec::new("required_nail", "Nail required", "Diameter and length, or 8d common.", Text, Required),
    Spec::new("edge_spacing", "Edge spacing", "Asked for along panel edges.", inches(1.0, 16.0), Required),
    Spec::new("field_spacing", "Field spacing", "Asked for on the studs between.", inches(1.0, 24.0), Required),
    Spec::new("boundary_spacing", "Boundary spacing", "Asked for along the boundary.", inches(1.0, 16.0), Required),
    Spec::new("drawing", "Drawing", "The sheet that asks for it.", Text, Required),
    Spec::new("drawing_revision", "Revision", "Of that sheet.", Text, Required),
    Spec::new("work", "Nails hold", "Who must say yes to another nail.", Choice(WORK), Required),
    Spec::new("side", "Under the head", "What the nail goes through.", Choice(SIDES), Around),
    Spec::new("side_thickness", "Its thickness", "Of what is under the head.", inches(0.125, 4.0), Around),
    Spec::new("species", "Framing", "Species of the studs, as stamped.", Text, Around),
    Spec::new("stud_spacing", "Stud spacing", "Behind the panel.", inches(4.0, 48.0), Around),
    Spec::new("panel_width", "Panel width", "Across the studs.", inches(4.0, 144.0), Around),
    Spec::new("panel_height", "Panel height", "Along the studs.", inches(4.0, 192.0), Around),
];
