//! Lines drawn with a finger, over a picture or by themselves.

use job::walk::Stroke;
use maud::{Markup, html};

/// Lines drawn with a finger, over whatever lies below.
#[must_use]
pub fn strokes(strokes: &[Stroke]) -> Markup {
    drawing("strokes", strokes, "")
}

/// The lines on a field of ten thousand by ten thousand that is stretched to the room it is given. What it shows is
/// said in words; an empty `said` hides it from those who listen.
pub(super) fn drawing(class: &str, strokes: &[Stroke], said: &str) -> Markup {
    html! {
        svg class=(class) viewBox="0 0 10000 10000" preserveAspectRatio="none" role="img"
            aria-label=[(!said.is_empty()).then_some(said)] aria-hidden=[said.is_empty().then_some("true")] {
            @for stroke in strokes.iter().filter(|stroke| !stroke.is_empty()) {
                polyline points=(points(stroke)) fill="none" stroke="currentColor" stroke-width="3"
                    stroke-linecap="round" stroke-linejoin="round" vector-effect="non-scaling-stroke" {}
            }
        }
    }
}

/// A touch without a line is drawn as a point: a line to where it began.
fn points(stroke: &Stroke) -> String {
    let touch = stroke.iter().take(if stroke.len() == 1 { 1 } else { 0 });
    stroke.iter().chain(touch).map(|(across, down)| format!("{across},{down}")).collect::<Vec<String>>().join(" ")
}
