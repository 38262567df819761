//! Jacks, kings, the code table, the fit: each with an answer of its own.

use maud::{Markup, html};

use super::{beam, figure, state_class};
use crate::model::Panel;

/// In the order of the screen.
#[must_use]
pub fn panels(panels: &[Panel]) -> Markup {
    html! {
        div.panels {
            @for panel in panels {
                section class={ "panel " (state_class(panel.state)) } {
                    h2 { (panel.heading) }
                    p.panel-figure { (figure(&panel.figure)) }
                    (beam(panel.state))
                    @for line in &panel.lines { p.panel-line { (figure(line)) } }
                }
            }
        }
    }
}
