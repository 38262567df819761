//! Anchor bolts of a sill plate, hold-downs, roof ties and straps.

use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Found, Required};
use crate::walk::spec::{COUNT, Condition, HIDDEN, POUNDS, Spec, YES_NO, YES_NO_HIDDEN, inches};

/// Unless someone says otherwise it is the bolts of a sill.
const BOLTS: &[Condition] = &[("looking_at", &["", "anchor_bolt"])];
const HOLD_DOWN: &[Condition] = &[("looking_at", &["hold_down"])];
const ANCHORED: &[Condition] = &[("looking_at", &["", "anchor_bolt", "hold_down"])];
const ROOF_TIE: &[Condition] = &[("looking_at", &["roof_tie"])];
const STRAP: &[Condition] = &[("looking_at", &["strap"])];
const NAILED: &[Condition] = &[("looking_at", &["hold_down", "roof_tie", "strap"])];
const LIFTED: &[Condition] = &[("looking_at", &["roof_tie", "strap"])];
/// Toe nails have neither a side nor a maker's list.
const TIE: &[Condition] = &[("looking_at", &["roof_tie"]), ("held_by", &["", "tie"])];
const LISTED: &[Condition] = &[("looking_at", &["roof_tie", "strap"]), ("held_by", &["", "tie"])];

pub(in crate::walk) const PLATES: &[(&str, &str)] =
    &[("2x4", "2x4"), ("2x6", "2x6"), ("2x8", "2x8"), ("3x4", "3x4"), ("3x6", "3x6")];

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new(
        "looking_at",
        "Looking at",
        "Bolts of a sill plate, a hold-down, what holds the roof to the wall, or a strap.",
        Choice(&[
            ("anchor_bolt", "anchor bolts"),
            ("hold_down", "a hold-down"),
            ("roof_tie", "a roof tie"),
            ("strap", "a strap"),
        ]),
        Found,
    ),
    Spec::new("plate_length", "Plate piece", "Length of this piece of plate.", inches(1.0, 240.0), Found).only(BOLTS),
    Spec::new("bolts", "Bolt at", "From the end of the plate piece.", inches(0.0, 240.0), Found).list().only(BOLTS),
    Spec::new(
        "nuts",
        "Nut",
        "On, and tight? One a bolt.",
        Choice(&[("tight", "tight"), ("loose", "loose"), ("missing", "missing"), HIDDEN]),
        Found,
    )
    .list()
    .only(ANCHORED)
    .hidden(),
    Spec::new("washers", "Washer", "One a bolt: none, cut, or a plate: 3 x 3 x 0.229.", Text, Found)
        .list()
        .only(BOLTS)
        .hidden(),
    Spec::new("thread", "Rod and nut", "flush or proud, or how far the rod is below the nut's top.", Text, Found)
        .only(HOLD_DOWN)
        .hidden(),
    Spec::new("off_the_post", "Rod off the post", "Whether it stands away from it.", YES_NO_HIDDEN, Found)
        .only(HOLD_DOWN)
        .hidden(),
    Spec::new("diameters", "Diameter", "Of the bolt or rod. One for all, or one a bolt.", inches(0.25, 2.0), Found)
        .list()
        .only(ANCHORED)
        .hidden(),
    Spec::new("embedments", "Embedment", "How deep it is in the concrete.", inches(0.0, 48.0), Found)
        .list()
        .only(ANCHORED)
        .hidden(),
    Spec::new("projections", "Stands up", "Bolt above the foundation.", inches(0.0, 24.0), Found)
        .list()
        .only(BOLTS)
        .hidden(),
    Spec::new(
        "from_faces",
        "From the face",
        "Either face of the plate to the bolt's centre.",
        inches(0.0, 12.0),
        Found,
    )
    .list()
    .only(BOLTS)
    .hidden(),
    Spec::new("plates", "Plate thickness", "Each plate under the nut, from below.", inches(0.5, 6.0), Found)
        .list()
        .only(BOLTS),
    Spec::new(
        "held_by",
        "Held by",
        "What holds rafter or truss to the wall.",
        Choice(&[("tie", "a tie"), ("toe_nails", "toe nails"), HIDDEN]),
        Found,
    )
    .only(ROOF_TIE)
    .hidden(),
    Spec::new(
        "tie_side",
        "Side of the tie",
        "The side of the wall that it is nailed to.",
        Choice(&[("sheathed", "sheathed"), ("inside", "inside"), HIDDEN]),
        Found,
    )
    .only(TIE)
    .hidden(),
    Spec::new("tie_spacing", "Ties apart", "Rafters or trusses along the wall.", inches(4.0, 144.0), Found)
        .only(ROOF_TIE),
    Spec::new("lies_flat", "Lies flat", "Whether the strap lies flat and straight.", YES_NO_HIDDEN, Found)
        .only(STRAP)
        .hidden(),
    Spec::new("fasteners", "Fasteners found", "Nails, screws or bolts. Of a strap, the side with fewer.", COUNT, Found)
        .only(NAILED)
        .hidden(),
    Spec::new("studs", "Studs found", "That the hold-down is fixed to.", COUNT, Found).only(HOLD_DOWN).hidden(),
    Spec::new("stud_in_the_way", "Stud in the way", "Of a nut or a washer.", YES_NO, Found).only(BOLTS),
    Spec::new("plate", "Plate", "Nominal size.", Choice(PLATES), Around).only(BOLTS),
    Spec::new("plate_width", "Plate width", "As measured, where it is not the dressed one.", inches(1.5, 24.0), Around)
        .only(BOLTS),
    Spec::new("required_spacing", "Bolt spacing", "The greatest that is asked for.", inches(1.0, 144.0), Required)
        .only(BOLTS),
    Spec::new(
        "required_bolt_diameter",
        "Bolts required",
        "Their diameter, from the drawing.",
        inches(0.25, 2.0),
        Required,
    )
    .only(BOLTS),
    Spec::new("plate_washers_required", "Plate washers", "Whether they are asked for.", YES_NO, Required).only(BOLTS),
    Spec::new("required_diameter", "Rod required", "Its diameter.", inches(0.25, 2.0), Required).only(HOLD_DOWN),
    Spec::new("required_embedment", "Embedment required", "In the concrete.", inches(0.5, 48.0), Required)
        .only(HOLD_DOWN),
    Spec::new("required_fasteners", "Fasteners required", "By the drawing or the maker.", COUNT, Required)
        .only(HOLD_DOWN),
    Spec::new(
        "required_nails",
        "Nails required",
        "By the drawing or the maker. Of a strap, each side.",
        COUNT,
        Required,
    )
    .only(LIFTED),
    Spec::new("required_uplift", "Uplift asked for", "By the drawing or the roof's table.", POUNDS, Required)
        .only(LIFTED),
    Spec::new("required_studs", "Studs required", "That it must be fixed to.", COUNT, Required).only(HOLD_DOWN),
    Spec::new("drawing", "Drawing", "The sheet that asks for it.", Text, Required),
    Spec::new("drawing_revision", "Revision", "Of that sheet.", Text, Required),
    Spec::new("listed_uplift", "Listed uplift", "What the maker lists, in this wood.", POUNDS, Around).only(LISTED),
    Spec::new(
        "full_walls_above",
        "Full walls above",
        "Each holds this wall down.",
        Choice(&[("0", "none"), ("1", "one"), ("2", "two")]),
        Around,
    )
    .only(ROOF_TIE),
    Spec::new("adhesive_lot", "Adhesive lot", "Of an anchor set in a drilled hole.", Text, Around).only(HOLD_DOWN),
    Spec::new("cleaning_watched_by", "Cleaning watched by", "Who saw the drilled hole cleaned.", Text, Around)
        .only(HOLD_DOWN),
];
