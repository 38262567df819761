//! A closed outline.

use leptos::prelude::*;
use view::scene::{Ink, Weight};

use super::fit::Fit;
use super::{ink_class, weight_class};

/// The corners as the picture's language has them.
pub fn corners(points: &[(f64, f64)], fit: Fit) -> String {
    points.iter().map(|point| fit.at(*point)).map(|(x, y)| format!("{x},{y} ")).collect()
}

/// A polygon, perhaps washed; heavy when its field is in hand.
pub fn shape(points: &[(f64, f64)], fit: Fit, (weight, ink): (Weight, Ink), washed: bool, in_hand: bool) -> AnyView {
    let class = format!("mark {} {}", weight_class(weight), ink_class(ink));
    view! { <polygon class=class class:washed=washed class:in-hand=in_hand points=corners(points, fit) /> }.into_any()
}
