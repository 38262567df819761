//! One group of inputs.

use leptos::prelude::*;
use view::markup;
use view::model::{Group, Origin};

use super::pad::Pad;
use crate::block::{Block, doing};

/// How much of a group is wrong or assumed.
fn summary(pad: Pad, group: Group) -> String {
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
}

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
    let open = RwSignal::new(!folded);
    let chips = Signal::derive(move || {
        if !open.get() {
            return String::new();
        }
        let hand = pad.hand.get();
        pad.look_at_all(|fields| markup::chips(fields.filter(|field| field.group == group), hand).into_string())
    });
    let block = view! { <Block markup=chips act=doing(move |field| pad.bring_named(field), |_| {}) /> };
    if !folded {
        return view! { <section class="group"><h2>{heading}</h2>{block}</section> }.into_any();
    }
    let note = Signal::derive(move || summary(pad, group));
    view! {
        <details class="group" on:toggle:target=move |event| open.set(event.target().has_attribute("open"))>
            <summary><h2>{heading}</h2><span class="note summary-note">{note}</span></summary>
            {block}
        </details>
    }
    .into_any()
}
