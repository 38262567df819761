//! A closed outline.

use maud::{Markup, html};

use super::fit::Fit;
use super::{ink_class, weight_class};
use crate::scene::{Ink, Weight};

/// The corners as the picture's language has them.
pub fn corners(points: &[(f64, f64)], fit: Fit) -> String {
    points.iter().map(|point| fit.at(*point)).map(|(x, y)| format!("{x},{y} ")).collect()
}

/// A polygon, perhaps washed; heavy when its field is in hand.
pub fn shape(points: &[(f64, f64)], fit: Fit, (weight, ink): (Weight, Ink), washed: bool, in_hand: bool) -> Markup {
    html! {
        polygon
            class={ "mark " (weight_class(weight)) " " (ink_class(ink)) @if washed { " washed" } @if in_hand { " in-hand" } }
            points=(corners(points, fit)) {}
    }
}
