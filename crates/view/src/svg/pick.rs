//! Where a thumb meets the drawing: wide, unseen, over everything else.

use maud::{Markup, html};

use super::fit::Fit;
use super::shape::corners;
use crate::markup::Act;
use crate::scene::{Mark, Scene};

/// The places that bring an input to hand. Dimensions lie over shapes: they are thinner.
pub fn picks(scene: &Scene, fit: Fit) -> Markup {
    html! {
        @for mark in &scene.marks {
            @if let Mark::Shape { points, field: Some(field), .. } = mark {
                polygon.pick data-act=(Act::Bring(field)) points=(corners(points, fit)) {}
            }
        }
        @for mark in &scene.marks {
            @if let Mark::Dimension { from, to, field: Some(field), .. } = mark {
                (line(fit.at(*from), fit.at(*to), field))
            }
        }
    }
}

fn line(from: (f64, f64), to: (f64, f64), field: &str) -> Markup {
    html! { line.pick data-act=(Act::Bring(field)) x1=(from.0) y1=(from.1) x2=(to.0) y2=(to.1) {} }
}
