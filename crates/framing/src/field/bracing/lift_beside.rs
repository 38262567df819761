//! The inputs of the path of uplift beside a wall under rafters: a gable end with its overhang, and the posts of a porch.

use measure::LengthUnit::{Feet, Inches};

use super::lift::{PSF, TIE_HELP};
use super::{PLF, POUNDS, SPACING};
use crate::field::Group::{Bears, Carries, Shape};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, feet, field};

/// Every input of gable ends and porches.
pub(super) const LIFT_BESIDE_FIELDS: &[FieldSpec] = &[
    field(
        "rake_held",
        "The overhang stands on",
        "",
        Kind::Choice(&[
            ("outlookers", "outlookers over the gable wall, back to a truss"),
            ("ladder", "a ladder of short blocks"),
        ]),
        Shape,
        Assumed("outlookers", "the one that can be worked"),
    ),
    field("outlooker_every", "Outlookers", "Centre to centre.", SPACING, Shape, Assumed("24\"", "the common spacing")),
    field(
        "outlooker_back",
        "They run back",
        "From the gable wall to the truss that holds their inner end.",
        feet(Inches, 0.5, 10.0),
        Shape,
        Assumed("24\"", "one bay of trusses"),
    ),
    field(
        "rake_lift",
        "Lift on the rake overhang",
        "Both faces together, 0.6 of the wind, square to the roof. Empty: worked out from the place.",
        PSF,
        Carries,
        Nothing,
    ),
    field(
        "rake_roof_lift",
        "Lift on the roof behind it",
        "The same, between the gable wall and that truss. Empty: worked out from the place.",
        PSF,
        Carries,
        Nothing,
    ),
    field("outlooker_tie", "Outlooker to gable wall", TIE_HELP, Kind::Name, Bears, Nothing),
    field("outlooker_inner_tie", "Outlooker to the truss", TIE_HELP, Kind::Name, Bears, Nothing),
    field(
        "porch_bays",
        "Bays of the porch",
        "From post to post, commas between.",
        Kind::Name,
        Shape,
        Assumed("8', 8'", "to have something to look at"),
    ),
    field(
        "porch_beam",
        "Its beam",
        "",
        Kind::Choice(&[("through", "runs through over the posts"), ("cut", "is cut over each post")]),
        Shape,
        Assumed("through", "it lifts the posts inside more"),
    ),
    field(
        "porch_deep",
        "House wall to the beam",
        "Measured level.",
        feet(Feet, 2.0, 20.0),
        Shape,
        Assumed("8'", "to have something to look at"),
    ),
    field(
        "porch_out",
        "It stands out over the beam",
        "Measured level.",
        feet(Inches, 0.0, 4.0),
        Shape,
        Assumed("1'", "a common eave"),
    ),
    field(
        "porch_lift",
        "Lift on the porch roof",
        "Net, both faces together, 0.6 of the roof's weight taken off, for allowable stress design.",
        PSF,
        Carries,
        Nothing,
    ),
    field(
        "porch_uplift",
        "Uplift on its beam",
        "Net, from the drawing. It goes before the lift on the roof.",
        PLF,
        Carries,
        Nothing,
    ),
    field(
        "post_pull",
        "Uplift at the post",
        "Net, from the drawing. It goes before what is worked from the bays.",
        POUNDS,
        Carries,
        Nothing,
    ),
    field("porch_rafter_tie", "Rafter to beam", TIE_HELP, Kind::Name, Bears, Nothing),
    field("post_top_tie", "Beam to post", TIE_HELP, Kind::Name, Bears, Nothing),
    field(
        "post_base_tie",
        "Post to its footing",
        "The load of its base's label with the anchor in the concrete, the lesser; or none.",
        Kind::Name,
        Bears,
        Nothing,
    ),
    field(
        "footing_weighs",
        "Footing weighs",
        "Concrete, about 145 lb a cubic foot, and earth that surely lies on it.",
        POUNDS,
        Bears,
        Nothing,
    ),
];
