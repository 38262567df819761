//! Scenes as markup: one hand, one set of line weights. The colours are the style sheet's.

mod arrow;
mod dimension;
mod fit;
mod label;
mod pick;
mod shape;
mod stroke;

use fit::Fit;
use maud::{Markup, html};

use crate::scene::{FieldId, Ink, Mark, Scene, Weight};

/// Free edge around a picture, pixels: half a figure may stand beyond its line.
const EDGE: f64 = 12.0;
/// The room of a plate, pixels: so wide, and so high or, where it is a high one, up to the most.
const PLATE: (f64, f64) = (328.0, 230.0);
const HIGHEST_PLATE: f64 = 540.0;
/// The room of a vignette, pixels, and its edge.
const VIGNETTE: (f64, f64, f64) = (72.0, 60.0, 2.0);

/// What stands inside the `svg` of a large picture in a room of so many pixels: its strokes, the one of the input in
/// hand drawn heavy, and unseen over them the places that bring an input to hand.
#[must_use]
pub fn picture(scene: &Scene, room: (f64, f64), hand: FieldId) -> Markup {
    let fit = Fit::new(scene, room, EDGE);
    html! {
        (marks(scene, fit, hand))
        (pick::picks(scene, fit))
    }
}

/// A scene as a picture of its own below the answer, as wide as a phone in the hand.
#[must_use]
pub fn plate(scene: &Scene) -> Markup {
    let (width, least) = PLATE;
    let asks = (width - 2.0 * EDGE) * scene.height / scene.width.max(1e-6) + 2.0 * EDGE;
    let height = if asks > least { asks.min(HIGHEST_PLATE).round() } else { least };
    html! {
        figure.plate {
            svg role="img" aria-label=(scene.alt) viewBox={ "0 0 " (width) " " (height) } {
                (marks(scene, Fit::new(scene, (width, height), EDGE), ""))
            }
        }
    }
}

/// A scene at a fixed small size, beside words that say the same.
#[must_use]
pub fn vignette(scene: &Scene) -> Markup {
    let (width, height, edge) = VIGNETTE;
    let fit = Fit::new(scene, (width, height), edge);
    html! { svg.vignette width=(width) height=(height) aria-hidden="true" { (marks(scene, fit, "")) } }
}

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
const LAYERS: u8 = 4;

fn layer(mark: &Mark, hand: &str) -> u8 {
    match mark {
        Mark::Dimension { field, .. } if *field == Some(hand) => 3,
        Mark::Label { .. } | Mark::Words { .. } => 2,
        Mark::Dimension { .. } | Mark::Arrow { .. } => 1,
        Mark::Shape { .. } | Mark::Line { .. } | Mark::Pick { .. } => 0,
    }
}

/// All strokes of a scene, in order.
fn marks(scene: &Scene, fit: Fit, hand: &str) -> Markup {
    html! {
        @for wanted in 0..LAYERS {
            @for stroke in scene.marks.iter().filter(|stroke| layer(stroke, hand) == wanted) {
                (mark(stroke, fit, hand))
            }
        }
    }
}

/// One stroke; the one whose field is in hand is drawn heavy.
fn mark(mark: &Mark, fit: Fit, hand: &str) -> Markup {
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
        Mark::Words { from, text } => label::words(fit.at(*from), text),
        Mark::Pick { .. } => html! {},
    }
}

#[cfg(test)]
mod tests {
    use super::picture;
    use crate::scene::{Mark, Scene};

    #[test]
    fn a_dimension_in_hand_is_heavy_lies_on_top_and_can_be_tapped() {
        let dimension = |field| Mark::Dimension { from: (0.0, 0.0), to: (10.0, 0.0), figure: "<10".to_owned(), field };
        let scene = Scene {
            left: 0.0,
            top: 0.0,
            width: 10.0,
            height: 10.0,
            marks: vec![dimension(Some("opening_width")), dimension(None)],
            alt: String::new(),
        };
        let drawn = picture(&scene, (100.0, 100.0), "opening_width").into_string();
        let heavy = drawn.find("in-hand").unwrap_or_default();
        assert!(heavy > drawn.find("class=\"dimension\"").unwrap_or(usize::MAX), "{drawn}");
        assert!(drawn.contains("data-act=\"bring opening_width\"") && drawn.contains("&lt;10"), "{drawn}");
    }

    #[test]
    fn an_unseen_place_says_what_a_tap_does_and_draws_nothing() {
        let pick = |act: &str| Mark::Pick {
            from: (10.0, 10.0),
            to: (0.0, 0.0),
            act: act.to_owned(),
            label: "Pull 2, \"33\"".to_owned(),
        };
        let marks = vec![pick("reading pulls 1")];
        let scene = Scene { left: 0.0, top: 0.0, width: 10.0, height: 10.0, marks, alt: String::new() };
        let drawn = picture(&scene, (124.0, 124.0), "").into_string();
        assert!(drawn.contains("data-act=\"reading pulls 1\"") && drawn.contains("width=\"100\""), "{drawn}");
        assert!(drawn.contains("<title>Pull 2, &quot;33&quot;</title>"), "{drawn}");
        assert!(!super::vignette(&scene).into_string().contains("data-act"), "a vignette is not tapped");
    }
}
