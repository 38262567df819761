//! Scenes put on the sheet: one hand, one set of line weights.

mod arrow;
mod dimension;
mod fit;
mod label;
mod pick;
mod picture;
mod shape;
mod stroke;
mod vignette;

pub use picture::Picture;
pub use vignette::Vignette;

use fit::Fit;
use leptos::prelude::*;
use view::scene::{Ink, Mark, Scene, Weight};

const fn weight_class(weight: Weight) -> &'static str {
    match weight {
        Weight::Cut => "cut",
        Weight::Seen => "seen",
        Weight::Fine => "fine",
        Weight::Hidden => "hidden-line",
    }
}

const fn ink_class(ink: Ink) -> &'static str {
    match ink {
        Ink::Ink => "ink",
        Ink::Chalk => "chalk",
        Ink::Carries => "carries",
        Ink::AtLimit => "at-limit",
        Ink::Short => "short",
        Ink::Outside => "outside",
    }
}

/// The order in which strokes are laid down: words over lines, and what is in hand over all.
fn layer(mark: &Mark, hand: &str) -> u8 {
    match mark {
        Mark::Dimension { field, .. } if *field == Some(hand) => 3,
        Mark::Label { .. } => 2,
        Mark::Dimension { .. } | Mark::Arrow { .. } => 1,
        Mark::Shape { .. } | Mark::Line { .. } => 0,
    }
}

/// All strokes of a scene, in order.
fn marks(scene: &Scene, fit: Fit, hand: &str) -> Vec<AnyView> {
    let mut ordered: Vec<&Mark> = scene.marks.iter().collect();
    ordered.sort_by_key(|mark| layer(mark, hand));
    ordered.into_iter().map(|stroke| mark(stroke, fit, hand)).collect()
}

/// One stroke; the one whose field is in hand is drawn heavy.
fn mark(mark: &Mark, fit: Fit, hand: &str) -> AnyView {
    match mark {
        Mark::Line { from, to, weight, ink } => stroke::line(fit.at(*from), fit.at(*to), *weight, *ink),
        Mark::Shape { points, weight, ink, washed, field } => {
            shape::shape(points, fit, (*weight, *ink), *washed, *field == Some(hand))
        }
        Mark::Dimension { from, to, figure, field } => {
            let ends = (fit.at(*from), fit.at(*to));
            dimension::dimension(ends, figure, *field == Some(hand), fit.is_at_right_edge(*from))
        }
        Mark::Arrow { from, to, figure, ink } => arrow::arrow(fit.at(*from), fit.at(*to), figure, *ink),
        Mark::Label { at, text, upright } => label::label(fit.at(*at), text, *upright),
    }
}
