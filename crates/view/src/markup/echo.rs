//! What was understood of the input in hand, or what is wrong with it.

use maud::{Markup, html};

use super::figure;
use crate::model::{Field, Origin};

/// The line under the input.
#[must_use]
pub fn echo(field: &Field) -> Markup {
    html! {
        @if let Some(problem) = &field.problem { p.problem { (problem) } } @else { p { (figure(&understood(field))) } }
    }
}

/// What was understood; before anything is typed, what is used instead, or what helps to fill it.
fn understood(field: &Field) -> String {
    match field.origin {
        _ if !field.echo.is_empty() => field.echo.clone(),
        Origin::Assumed | Origin::Unknown if !field.help.is_empty() => field.help.to_owned(),
        Origin::Assumed => format!("{} is assumed until you say.", field.shown),
        _ => field.shown.clone(),
    }
}
