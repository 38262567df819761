//! The verdict as a little beam on two supports.

use maud::{Markup, html};

use crate::model::State;

/// The beam, the broken or dotted lines, and the supports on a field of 96 by 48.
struct Drawing {
    beam: &'static str,
    dashed: &'static str,
    supports: &'static str,
    open: &'static str,
}

const BOTH: &str = "M14 28L6 42H22ZM82 28L74 42H90Z";

const fn drawing(state: State) -> Drawing {
    match state {
        State::Carries => Drawing { beam: "M3 16H93V27H3Z", dashed: "", supports: BOTH, open: "" },
        State::AtLimit => Drawing {
            beam: "M3 16Q48 36 93 16V26Q48 46 3 26Z",
            dashed: "M24 38.5H72",
            supports: "M14 30L6 44H22ZM82 30L74 44H90Z",
            open: "",
        },
        State::Short => Drawing {
            beam: "M3 13L46 27L41 32L46 38L3 25ZM93 13L54 26L50 31L54 37L93 25Z",
            dashed: "",
            supports: BOTH,
            open: "",
        },
        State::Outside => Drawing {
            beam: "",
            dashed: "M3 16H93V27H3Z",
            supports: "M14 28L6 42H22Z",
            open: "M82 28L74 42M82 28L90 42",
        },
        State::Told => Drawing { beam: "", dashed: "", supports: "", open: "" },
        State::NotKnown => Drawing { beam: "", dashed: "", supports: BOTH, open: "" },
    }
}

/// Straight, bent to the dotted line, broken, dashed over an open support, or not there yet.
#[must_use]
pub fn beam(state: State) -> Markup {
    let Drawing { beam, dashed, supports, open } = drawing(state);
    html! {
        svg.verdict-beam viewBox="0 0 96 48" aria-hidden="true" {
            @for (part, class) in [(beam, "beam"), (dashed, "dashed"), (supports, "support"), (open, "open-support")] {
                @if !part.is_empty() { path class=(class) d=(part) {} }
            }
            @if !supports.is_empty() { path.ground d="M0 43.5H28M68 43.5H96" {} }
        }
    }
}
