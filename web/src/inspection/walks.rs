//! The walks of the job, and a key for a new one.

use leptos::prelude::*;
use leptos::task::spawn_local;
use view::record;

use super::book::Book;
use super::hand_over::BringIn;
use super::head::Head;
use super::way::{Spot, Way};
use crate::storage::whether_lasting;

/// The part.
#[component]
pub fn Walks() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let lasting = RwSignal::new("");
    spawn_local(async move {
        let _ = lasting.try_set(whether_lasting().await.sentence());
    });
    let rows = move || {
        let one = |walk: std::sync::Arc<job::walk::Walk>| {
            let (id, name, when) = (walk.id.clone(), walk.begun.what.clone(), record::when(&walk.begun.at));
            let open = move |_| {
                book.choose(&id);
                way.go(&Spot::Walk);
            };
            view! {
                <button type="button" class="row-card" on:click=open>
                    <strong>{name}</strong>
                    <span class="note">{format!("begun {when}")}</span>
                </button>
            }
        };
        book.walks().into_iter().rev().map(one).collect_view()
    };
    view! {
        <div class="walk">
            <Head words="Walks" back=Spot::Walk back_words="Walk" />
            <div class="row-cards">{rows}</div>
            <div class="keys-row">
                <button type="button" class="key save" on:click=move |_| book.begin(move || way.go(&Spot::Drawing(None)))>
                    "Start a walk"
                </button>
            </div>
            <BringIn />
            <p class="note">{lasting}</p>
        </div>
    }
}
