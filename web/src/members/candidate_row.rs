//! One size that was tried.

use leptos::prelude::*;
use view::model::Candidate;

use super::state_class;
use super::verdict_beam::VerdictBeam;
use crate::figure::Figure;

/// A size with its verdict; tapping it judges it.
#[component]
pub fn CandidateRow(
    /// The size.
    size: Candidate,
    /// Judges a size.
    judge: Callback<Option<String>>,
) -> impl IntoView {
    let Candidate { value, name, state, note, chosen, smallest, .. } = size;
    view! {
        <li>
            <button
                type="button"
                class=format!("size {}", state_class(state))
                class:chosen=chosen
                aria-pressed=chosen.to_string()
                on:click=move |_| judge.run(Some(value.clone()))
            >
                <VerdictBeam state />
                <span class="size-name"><Figure text=name /></span>
                <span class="size-note">
                    <Figure text=note />
                    {smallest.then(|| view! { <span class="smallest">"smallest that works"</span> })}
                </span>
            </button>
        </li>
    }
}
