//! What was measured, drawn to scale. A kind has a file or two.

mod bolts;
mod cut;
mod hold_down;
mod moisture;
mod nails;
mod plane;
mod roof_tie;
mod row;
mod strap;
mod strip;
mod values;

use framing::walk::WalkReply;

use super::kind::Kind;
use super::typed::{InHand, Typed};
use crate::pen;
use crate::scene::Scene;
use values::Values;

/// The picture of a look that was judged.
pub(super) fn picture(kind: Kind, typed: &Typed, hand: InHand, reply: &WalkReply) -> Scene {
    let values = Values { typed, reply };
    match kind {
        Kind::StudSpacing => row::picture(typed, hand),
        Kind::Nailing => nails::picture(values),
        Kind::HoldDownPoint => hold_down_point(values, hand),
        Kind::NotchFound => cut::picture(values),
        Kind::Flatness => plane::picture(values, hand),
        Kind::Moisture => moisture::picture(values),
    }
}

/// By what was said, or what the core took it for.
fn hold_down_point(values: Values<'_>, hand: InHand) -> Scene {
    match values.text("looking_at") {
        "hold_down" | "a hold-down" => hold_down::picture(values),
        "roof_tie" | "a roof tie" => roof_tie::picture(values),
        "strap" | "a strap" => strap::picture(values),
        _ => bolts::picture(values, hand),
    }
}

/// A sheet with nothing drawn on it.
pub(super) fn empty() -> Scene {
    Scene {
        left: 0.0,
        top: 0.0,
        width: 100.0,
        height: 40.0,
        marks: Vec::new(),
        alt: "Nothing is drawn yet.".to_owned(),
    }
}
