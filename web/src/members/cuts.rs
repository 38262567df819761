//! What to cut.

use leptos::prelude::*;
use view::model::Cut;

use crate::desk::Desk;
use crate::figure::Figure;

/// The cut list.
#[component]
pub fn Cuts() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let cuts = desk.settled.part(|screen| screen.cuts.clone());
    view! {
        <Show when=move || cuts.with(|cuts| !cuts.is_empty())>
            <section class="cuts">
                <h2 id="cut-list">"Cut list"</h2>
                <table aria-labelledby="cut-list">
                    <thead>
                        <tr><th scope="col">"No."</th><th scope="col">"Piece"</th><th scope="col">"Length"</th></tr>
                    </thead>
                    <tbody>{move || cuts.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </section>
        </Show>
    }
}

fn row(cut: Cut) -> impl IntoView {
    let Cut { count, piece, length, spoken, note } = cut;
    view! {
        <tr>
            <td class="cut-count">{count}</td>
            <td><strong>{piece}</strong><span class="note">{note}</span></td>
            <td class="cut-length"><Figure text=length spoken=spoken /></td>
        </tr>
    }
}
