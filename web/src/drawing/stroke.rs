//! A straight line.

use leptos::prelude::*;
use view::scene::{Ink, Weight};

use super::{ink_class, weight_class};

/// A line between two points, in pixels.
pub fn line(from: (f64, f64), to: (f64, f64), weight: Weight, ink: Ink) -> AnyView {
    let class = format!("mark {} {}", weight_class(weight), ink_class(ink));
    view! { <line class=class x1=from.0 y1=from.1 x2=to.0 y2=to.1 /> }.into_any()
}
