//! One group of inputs.

use leptos::prelude::*;
use view::model::{FieldId, Group, Origin};

use super::chip::Chip;
use crate::desk::Pad;

/// A group under its heading; one that is seldom needed is folded, and says how much in it is assumed or wrong.
#[component]
pub fn ChipGroup(
    /// The inputs.
    pad: Pad,
    /// The group.
    group: Group,
    /// Its heading.
    heading: &'static str,
    /// Whether it is folded at first.
    folded: bool,
) -> impl IntoView {
    let ids = Memo::new(move |_| {
        pad.look_at_all(|fields| {
            fields.filter(|field| field.group == group).map(|field| field.id).collect::<Vec<FieldId>>()
        })
    });
    let note = Memo::new(move |_| {
        let (wrong, assumed) = pad.look_at_all(|fields| {
            fields.filter(|field| field.group == group).fold((0, 0), |(wrong, assumed), field| {
                let is_wrong = usize::from(field.problem.is_some());
                (wrong + is_wrong, assumed + usize::from(field.origin == Origin::Assumed))
            })
        });
        match (wrong, assumed) {
            (0, 0) => String::new(),
            (0, assumed) => format!("{assumed} assumed"),
            (wrong, _) => format!("{wrong} wrong"),
        }
    });
    let open = RwSignal::new(!folded);
    let chips = move || {
        view! {
            <Show when=move || open.get()>
                <div class="chips">
                    <For each=move || ids.get() key=|id| *id let:id>
                        <Chip pad id />
                    </For>
                </div>
            </Show>
        }
    };
    view! {
        <Show when=move || ids.with(|ids| !ids.is_empty())>
            {if folded {
                view! {
                    <details class="group" on:toggle:target=move |event| open.set(event.target().has_attribute("open"))>
                        <summary><h2>{heading}</h2><span class="note summary-note">{note}</span></summary>
                        {chips()}
                    </details>
                }
                .into_any()
            } else {
                view! { <section class="group"><h2>{heading}</h2>{chips()}</section> }.into_any()
            }}
        </Show>
    }
}
