//! What was understood, or what is wrong, always in the same place under the input.

use leptos::prelude::*;
use view::model::{Field, FieldId, Origin};

use crate::desk::Pad;
use crate::figure::Figure;

/// One line under the input in hand.
#[component]
pub fn Echo(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let problem = pad.follow(id, |field| field.problem.clone());
    let echo = pad.follow(id, line);
    view! {
        <div class="echo" id="in-hand-echo" aria-live="polite">
            {move || match problem.get() {
                Some(problem) => view! { <p class="problem">{problem}</p> }.into_any(),
                None => view! { <p><Figure text=echo /></p> }.into_any(),
            }}
        </div>
    }
}

/// What was understood; before anything is typed, what is used instead, or what helps to fill it.
fn line(field: &Field) -> String {
    match field.origin {
        _ if !field.echo.is_empty() => field.echo.clone(),
        Origin::Assumed | Origin::Unknown if !field.help.is_empty() => field.help.to_owned(),
        Origin::Assumed => format!("{} is assumed until you say.", field.shown),
        _ => field.shown.clone(),
    }
}
