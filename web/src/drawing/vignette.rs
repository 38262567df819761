//! A small picture beside the words of a choice.

use leptos::prelude::*;
use view::scene::Scene;

use super::fit::Fit;

/// Its room, pixels.
const ROOM: (f64, f64) = (72.0, 60.0);

/// A scene at a fixed small size. The words beside it say the same.
#[component]
pub fn Vignette(
    /// What is drawn.
    scene: Scene,
) -> impl IntoView {
    let fit = Fit::new(&scene, ROOM, 2.0);
    view! {
        <svg class="vignette" width=ROOM.0 height=ROOM.1 aria-hidden="true">
            {super::marks(&scene, fit, "")}
        </svg>
    }
}
