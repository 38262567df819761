//! Which check is looked at, and how to come to another.

use leptos::html::Details;
use leptos::prelude::*;

use super::Chapter;
use super::book::Book;

/// The kind in hand; a tap shows all of them.
#[component]
pub fn Kinds<K: Chapter>(
    /// The book.
    book: Book<K>,
) -> impl IntoView {
    let details = NodeRef::<Details>::new();
    let close = move || {
        if let Some(details) = details.get_untracked() {
            details.set_open(false);
        }
    };
    let card = move |kind: K| {
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
                <span class="note">{K::ANOTHER}</span>
            </summary>
            <div class="kinds-all" role="group" aria-label=K::ALL_OF_THEM>
                {K::ELSEWHERE.map(|(address, word)| view! { <a class="kind" href=address>{word}</a> })}
                {K::ALL.iter().copied().map(card).collect_view()}
            </div>
        </details>
    }
}
