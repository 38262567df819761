//! A mark: what was looked at there, and what can be looked at.

use leptos::prelude::*;
use view::record;
use view::walk::Kind;

use super::book::Book;
use super::camera::Camera;
use super::head::Head;
use super::photo::Photos;
use super::walk::opening;
use super::way::{Spot, Way};
use crate::block::Block;

/// So many rows are shown, and so many more at each tap.
const ROWS: usize = 40;

/// The part.
#[component]
pub fn MarkPage(
    /// The mark's id.
    mark: String,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let mark = StoredValue::new(mark);
    let found = Memo::new(move |_| book.walk().and_then(|walk| mark.with_value(|id| record::mark(&walk, id))));
    let shown = RwSignal::new(ROWS);
    let markup = Signal::derive(move || {
        found
            .with(|found| found.as_ref().map(|found| record::mark_markup(found, 0, shown.get()).into_string()))
            .unwrap_or_default()
    });
    let more = move || found.with(|found| found.as_ref().is_some_and(|found| found.rows.len() > shown.get()));
    let name = Signal::derive(move || {
        found.with(|found| found.as_ref().map(|found| found.head.name.clone())).unwrap_or_default()
    });
    let card = move |kind: Kind| {
        let go = move |_| way.go(&Spot::Look(mark.get_value(), kind.name().to_owned()));
        view! { <button type="button" class="kind-card" on:click=go>{kind.word()}</button> }
    };
    view! {
        <div class="walk">
            <Head words=name back=Spot::Walk back_words="Walk" />
            <section class="kinds" aria-label="Measure">
                {Kind::ALL.map(card).into_iter().collect_view()}
            </section>
            <div class="keys-row">
                <button type="button" class="key" on:click=move |_| way.go(&Spot::Drawing(Some(mark.get_value())))>
                    "The drawing asks"
                </button>
                <Camera of=mark.get_value() />
            </div>
            <Block markup act=opening(way) />
            <Show when=more>
                <button type="button" class="key wide" on:click=move |_| shown.update(|shown| *shown += ROWS)>"More"</button>
            </Show>
            <Photos of=Signal::derive(move || {
                let walk = book.walk();
                let found = walk.as_ref().and_then(|walk| walk.marks.iter().find(|known| mark.with_value(|id| *id == known.id)));
                found.map(|found| found.photos.iter().map(|(photo, _)| photo.clone()).collect()).unwrap_or_default()
            }) />
        </div>
    }
}
