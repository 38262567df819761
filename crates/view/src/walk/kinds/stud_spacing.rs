//! Studs by their pulls.

use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Found, Required};
use crate::walk::spec::{Condition, Spec, YES_NO, inches};

/// Unless someone says otherwise, pulls run from the plate's end, and the wall is sheathed.
const RUNNING: &[Condition] = &[("pulled", &["", "from_the_end"])];
const BETWEEN: &[Condition] = &[("pulled", &["centre_to_centre"])];
const SHEATHED: &[Condition] = &[("sheathed", &["", "yes"])];
/// Filled by the key under the pull that is asked about, and not asked for.
const BY_ITS_KEY: &[Condition] = &[("pulled", &[])];

pub(in crate::walk) const STUDS: &[(&str, &str)] =
    &[("2x4", "2x4"), ("2x6", "2x6"), ("3x4", "3x4"), ("2x5", "2x5"), ("2x3", "2x3")];
pub(in crate::walk) const CARRIES: &[(&str, &str)] = &[
    ("roof_ceiling", "roof and ceiling"),
    ("one_floor_and_roof", "1 floor and roof"),
    ("two_floors_and_roof", "2 floors and roof"),
    ("one_floor_only", "1 floor only"),
];

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new("pulls", "Pull", "What the tape says at the next stud.", inches(0.0, 480.0), Found).list(),
    Spec::new(
        "pulled",
        "Pulls taken",
        "From one end with the tape left hooked, or from stud to stud.",
        Choice(&[("from_the_end", "from the plate's end"), ("centre_to_centre", "stud to stud")]),
        Found,
    ),
    Spec::new(
        "pulled_to",
        "Pulled to",
        "Which line of the stud the tape is read at.",
        Choice(&[("centre", "its centre"), ("near_edge", "its near edge"), ("far_edge", "its far edge")]),
        Found,
    )
    .only(RUNNING),
    Spec::new(
        "first_pull",
        "First pull from",
        "Where the tape was held for the first one.",
        Choice(&[("plate_end", "the plate's end"), ("end_stud", "the end stud's centre")]),
        Found,
    )
    .only(BETWEEN),
    Spec::new("confirmed", "Pulls that are right", "Pulls that were asked about, as they read: 3: 84.", Text, Found)
        .list()
        .only(BY_ITS_KEY),
    Spec::new("doubles", "Studs in a pack", "Place, found and asked: 64: 1 of 2.", Text, Found).list(),
    Spec::new("studs_found", "Bowed or notched", "Place and what: 33: bowed 3/8, or 33: notched 1.", Text, Found)
        .list(),
    Spec::new(
        "required_spacing",
        "Required spacing",
        "Centre to centre, from the drawing.",
        inches(4.0, 48.0),
        Required,
    ),
    Spec::new("drawing", "Drawing", "The sheet that asks for it.", Text, Required),
    Spec::new("drawing_revision", "Revision", "Of that sheet.", Text, Required),
    Spec::new("studs", "Studs", "Nominal size.", Choice(STUDS), Around),
    Spec::new("carries", "Wall carries", "What stands on this wall.", Choice(CARRIES), Around),
    Spec::new("stud_height", "Stud height", "Between supports at its sides.", inches(12.0, 360.0), Around),
    Spec::new("plate_length", "Plate length", "End to end: the last stud stands there.", inches(12.0, 720.0), Around),
    Spec::new("openings", "Openings", "King to king, inside: 32-3/4 to 71-1/4.", Text, Around).list(),
    Spec::new("stud_thickness", "Stud thickness", "Along the wall, as measured.", inches(0.75, 3.75), Around),
    Spec::new("sheathed", "Sheathed", "Sheets meet on studs.", YES_NO, Around),
    Spec::new("sheet_length", "Sheet length", "Along the wall.", inches(12.0, 144.0), Around).only(SHEATHED),
    Spec::new("sheet_start", "First sheet starts", "From the plate's end.", inches(0.0, 144.0), Around).only(SHEATHED),
    Spec::new(
        "sheet_past_end",
        "Sheet laps past",
        "How far it reaches past the plate's end.",
        inches(0.0, 24.0),
        Around,
    )
    .only(SHEATHED),
    Spec::new("bow_limit", "Bow allowed", "The most that a stud may be bowed.", inches(0.0, 2.0), Around),
];
