//! A dimension: slashes at its ends, the figure above its line.

use maud::{Markup, html};

/// Half of a slash, pixels.
const SLASH: f64 = 5.0;
/// Between the line and the middle of the figure, pixels.
const FIGURE_OFF: f64 = 11.0;

fn slash((x, y): (f64, f64)) -> Markup {
    html! { line.slash x1=(x - SLASH) y1=(y + SLASH) x2=(x + SLASH) y2=(y - SLASH) {} }
}

/// A dimension between two points, in pixels. One that runs up is read from the right, as on a drawing; its figure
/// stands on the free paper where there is some.
pub fn dimension((from, to): ((f64, f64), (f64, f64)), figure: &str, in_hand: bool, free_at_right: bool) -> Markup {
    let (x, y) = ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0);
    let runs_up = (to.1 - from.1).abs() > (to.0 - from.0).abs();
    let (at, turn) = if runs_up {
        let at = (if free_at_right { x + FIGURE_OFF } else { x - FIGURE_OFF }, y);
        (at, Some(format!("rotate(-90 {} {})", at.0, at.1)))
    } else {
        ((x, y - FIGURE_OFF), None)
    };
    html! {
        g class={ "dimension" @if in_hand { " in-hand" } } {
            line.run x1=(from.0) y1=(from.1) x2=(to.0) y2=(to.1) {}
            (slash(from))
            (slash(to))
            text.word x=(at.0) y=(at.1) transform=[turn] { (figure) }
        }
    }
}
