//! The field book as a whole: title block, place, bar of places, and what slides up.

use leptos::prelude::*;

use crate::bars::{NoticeBar, PlaceBar, TitleBlock, UpdateBar};
use crate::browser;
use crate::desk::Desk;
use crate::header::HeaderPlace;
use crate::place::Place;
use crate::route::Route;
use crate::sheets::{SaveSheet, SavedSheet, WorkingSheet};
use crate::storage::{Found, Kept, hear_other_windows};
use crate::theme::Look;
use crate::worker::{Work, Worker};

/// The whole.
#[component]
pub fn App(
    /// What was kept from before.
    found: Found,
) -> impl IntoView {
    Look::provide();
    let desk = Desk::provide(&found);
    let keeper = desk.keeper;
    let put_away = Callback::new(move |()| keeper.keep_now(desk));
    let is_put_away = Signal::derive(move || keeper.state.with(|state| *state == Kept::Safe));
    let work = Work { is_put_away, put_away };
    Worker::provide(work);
    let route = Route::provide(work);
    hear_other_windows(Callback::new(move |()| keeper.read_again(desk)), put_away);
    let place = Memo::new(move |_| route.spot().place);
    view! {
        <div class="field-book">
            <TitleBlock />
            <div class="notices">
                <UpdateBar />
                <NoticeBar />
            </div>
            <main class="page" id="page" data-place=move || place.get().address()>
                {move || match place.get() {
                    Place::Members => view! { <HeaderPlace /> }.into_any(),
                    other => view! { <NotHere place=other /> }.into_any(),
                }}
            </main>
            <PlaceBar here=place.into() go=Callback::new(move |place| route.go(place)) />
            <WorkingSheet />
            <SaveSheet />
            <SavedSheet />
        </div>
    }
}

/// A place that has nothing yet says so.
#[component]
fn NotHere(
    /// The place.
    place: Place,
) -> impl IntoView {
    browser::after_paint(browser::say_ready);
    view! {
        <section class="not-here">
            <h1>{place.word()}</h1>
            <p>{format!("{} is not in this version.", place.word())}</p>
        </section>
    }
}
