//! The inputs of straps between storeys, and of the metal of connectors near salt water.

use super::POUNDS_LIST_HELP;
use crate::field::Group::{Bears, Place};
use crate::field::Unsaid::{Assumed, Nothing};
use crate::field::{FieldSpec, Kind, field};

const METALS: Kind = Kind::Choice(&[
    ("electroplated", "electroplated, bright"),
    ("standard", "galvanized, G90 or no mark"),
    ("hot_dip", "thick hot-dip, G185 or A153"),
    ("stainless", "stainless"),
]);

/// Straps and metal.
pub(super) const METAL_FIELDS: &[FieldSpec] = &[
    field("strap_labels", "Straps carry", POUNDS_LIST_HELP, Kind::Name, Bears, Nothing),
    field(
        "strap_nails",
        "Nails in each end",
        "How many and which, such as 14 10d common. They are counted in steel on the posts.",
        Kind::Name,
        Bears,
        Nothing,
    ),
    field(
        "strap_gauge",
        "Strap is thick",
        "",
        Kind::Choice(&[
            ("12", "12 gauge"),
            ("14", "14 gauge"),
            ("16", "16 gauge"),
            ("18", "18 gauge"),
            ("20", "20 gauge"),
        ]),
        Bears,
        Assumed("20", "the thinnest: the careful side"),
    ),
    field(
        "metal_where",
        "The metal sits",
        "Empty: under cover outdoors, which is the worst.",
        Kind::Choice(&[
            ("rained_on", "outdoors, rained on"),
            ("sheltered", "outdoors, sheltered from rain"),
            ("vented", "in a vented space"),
            ("inside", "closed in and dry"),
        ]),
        Place,
        Nothing,
    ),
    field("metal_tie", "Connector is", "", METALS, Place, Nothing),
    field("metal_nails", "Its fasteners are", "", METALS, Place, Nothing),
];
