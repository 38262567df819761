//! A straight line.

use maud::{Markup, html};

use super::{ink_class, weight_class};
use crate::scene::{Ink, Weight};

/// A line between two points, in pixels.
pub fn line(from: (f64, f64), to: (f64, f64), weight: Weight, ink: Ink) -> Markup {
    html! {
        line class={ "mark " (weight_class(weight)) " " (ink_class(ink)) }
            x1=(from.0) y1=(from.1) x2=(to.0) y2=(to.1) {}
    }
}
