//! A load, a reaction, the wind.

use maud::{Markup, html};

use super::ink_class;
use crate::scene::Ink;

/// Length and half width of the head, pixels.
const HEAD: (f64, f64) = (9.0, 4.0);
/// Between the tail and the middle of its figure, pixels.
const FIGURE_OFF: f64 = 11.0;

/// An arrow with its figure beyond its tail.
pub fn arrow(from: (f64, f64), to: (f64, f64), figure: &str, ink: Ink) -> Markup {
    let (dx, dy) = (to.0 - from.0, to.1 - from.1);
    let length = (dx * dx + dy * dy).sqrt().max(1e-6);
    let (ux, uy) = (dx / length, dy / length);
    let base = (to.0 - ux * HEAD.0, to.1 - uy * HEAD.0);
    let (px, py) = (-uy * HEAD.1, ux * HEAD.1);
    let head = format!("{},{} {},{} {},{}", to.0, to.1, base.0 + px, base.1 + py, base.0 - px, base.1 - py);
    let text = (from.0 - ux * FIGURE_OFF, from.1 - uy * FIGURE_OFF);
    html! {
        g class={ "arrow " (ink_class(ink)) } {
            line x1=(from.0) y1=(from.1) x2=(base.0) y2=(base.1) {}
            polygon points=(head) {}
            @if !figure.is_empty() { text.word x=(text.0) y=(text.1) { (figure) } }
        }
    }
}
