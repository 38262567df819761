//! A number with its unit: a line to type into and steps up and down.

use leptos::html::Input;
use leptos::prelude::*;
use view::model::{Entry, FieldId};

use super::echo::Echo;
use super::next_key::NextKey;
use super::pad::Pad;
use super::typed_text::TypedText;

/// Steps of the keys; in the hundreds and thousands they are larger.
const STEPS: [f64; 4] = [-5.0, -1.0, 1.0, 5.0];

fn scale(number: f64) -> f64 {
    if number >= 10_000.0 {
        10_000.0
    } else if number >= 200.0 {
        10.0
    } else if number > 0.0 && number < 1.0 {
        0.01
    } else {
        1.0
    }
}

/// The entry of a number.
#[component]
pub fn NumberEntry(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let line = NodeRef::<Input>::new();
    let number = pad.follow(id, |field| field.number);
    let unit = untrack(move || {
        pad.look(id, |field| match field.entry {
            Entry::Number { unit } => unit,
            _ => "",
        })
    });
    let step = move |step: f64| {
        let now = number.get_untracked().unwrap_or(0.0);
        let next = ((now + step * scale(now)) * 1000.0).round() / 1000.0;
        pad.write.run((id, Some(format!("{} {unit}", next.max(0.0)).trim_end().to_owned())));
    };
    let words = move |step: f64| {
        Signal::derive(move || {
            let by = step * scale(number.get().unwrap_or(0.0));
            if by < 0.0 { format!("\u{2212}{}", -by) } else { format!("+{by}") }
        })
    };
    view! {
        <TypedText pad id letters=false line unit />
        <Echo pad id />
        <div class="pad steps">
            {STEPS
                .map(|by| view! { <button type="button" class="key" on:click=move |_| step(by)>{words(by)}</button> })
                .into_iter()
                .collect_view()}
            <NextKey pad />
        </div>
    }
}
