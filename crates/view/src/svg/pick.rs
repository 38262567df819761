//! Where a thumb meets the drawing: wide, unseen, over everything else.

use maud::{Markup, html};

use super::fit::Fit;
use super::shape::corners;
use crate::markup::Act;
use crate::scene::{Mark, Scene};

/// The places that bring an input to hand. Dimensions lie over shapes: they are thinner; places of their own lie over
/// both, the later over the earlier.
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
        @for mark in &scene.marks {
            @if let Mark::Pick { from, to, act, label } = mark { (place(fit.at(*from), fit.at(*to), act, label)) }
        }
    }
}

/// A place of its own, said in words.
fn place(from: (f64, f64), to: (f64, f64), act: &str, label: &str) -> Markup {
    let (left, top) = (from.0.min(to.0), from.1.min(to.1));
    let (width, height) = ((to.0 - from.0).abs(), (to.1 - from.1).abs());
    html! {
        rect.pick data-act=(act) x=(left) y=(top) width=(width) height=(height) { title { (label) } }
    }
}

fn line(from: (f64, f64), to: (f64, f64), field: &str) -> Markup {
    html! { line.pick data-act=(Act::Bring(field)) x1=(from.0) y1=(from.1) x2=(to.0) y2=(to.1) {} }
}
