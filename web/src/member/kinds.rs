//! Which member is looked at, and how to come to another.

use framing::member::MemberKind;
use leptos::html::Details;
use leptos::prelude::*;

use super::book::Book;

/// The kind in hand; a tap shows all of them.
#[component]
pub fn Kinds() -> impl IntoView {
    let book = expect_context::<Book>();
    let details = NodeRef::<Details>::new();
    let close = move || {
        if let Some(details) = details.get_untracked() {
            details.set_open(false);
        }
    };
    let card = move |kind: MemberKind| {
        let here = move || book.kind.get() == kind;
        view! {
            <button type="button" class="kind" class:here=here aria-pressed=move || here().to_string() on:click=move |_| {
                close();
                book.look_at(kind);
            }>
                {kind.word()}
            </button>
        }
    };
    view! {
        <details class="kinds" node_ref=details>
            <summary>
                <strong>{move || book.kind.get().word()}</strong>
                <span class="note">"another member"</span>
            </summary>
            <div class="kinds-all" role="group" aria-label="Members">
                <a class="kind" href="./#/members">"Header"</a>
                {MemberKind::ALL.map(card).into_iter().collect_view()}
            </div>
        </details>
    }
}
