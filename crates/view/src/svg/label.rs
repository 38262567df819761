//! A word on the drawing.

use maud::{Markup, html};

/// A text around a point, in pixels; turned a quarter to the left when it runs up a stud.
pub fn label((x, y): (f64, f64), text: &str, upright: bool) -> Markup {
    let turn = upright.then(|| format!("rotate(-90 {x} {y})"));
    html! { text.word x=(x) y=(y) transform=[turn] { (text) } }
}

/// A text that begins at a point, in pixels.
pub fn words((x, y): (f64, f64), text: &str) -> Markup {
    html! { text.word.begins x=(x) y=(y) { (text) } }
}
