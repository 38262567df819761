//! A word on the drawing.

use leptos::prelude::*;

/// A text around a point, in pixels; turned a quarter to the left when it runs up a stud.
pub fn label((x, y): (f64, f64), text: &str, upright: bool) -> AnyView {
    let turn = upright.then(|| format!("rotate(-90 {x} {y})"));
    view! { <text class="word" x=x y=y transform=turn>{text.to_owned()}</text> }.into_any()
}
