//! The page as a whole: title block, the place, bar of places.

use leptos::prelude::*;

use super::book::Book;
use super::page::SitePage;
use super::working::Working;
use crate::bars::{NoticeBar, PlaceBar, TitleFrame, UpdateBar};
use crate::browser;
use crate::place::Place;
use crate::route::leave_for;
use crate::storage::{Kept, hear_other_windows, settings};
use crate::theme::Look;
use crate::values::Found;
use crate::worker::{Work, Worker};

/// The whole.
#[component]
pub fn App(
    /// What was kept from before.
    found: Found,
) -> impl IntoView {
    Look::provide();
    let book = Book::provide(&found);
    let put_away = Callback::new(move |()| book.values.keep_now());
    let is_put_away = Signal::derive(move || book.values.state.with(|state| *state == Kept::Safe));
    let work = Work { is_put_away, put_away };
    Worker::provide(work);
    provide_context(work);
    let read_again = Callback::new(move |()| {
        book.values.read_again();
        book.list_jobs();
    });
    hear_other_windows(read_again, put_away);
    settings::keep_last_place(Place::Site);
    browser::on_window("hashchange", move |_| {
        let asked = browser::hash();
        let place = asked.trim_start_matches('#').split('/').find(|word| !word.is_empty()).and_then(Place::at);
        if let Some(place) = place.filter(|place| place.page() != Place::Site.page()) {
            leave_for(place, work);
        }
    });
    let name = Signal::derive(move || book.values.job.with(|job| job.name.clone()));
    view! {
        <div class="field-book">
            <TitleFrame name state=book.values.state.into()>
                <span></span>
            </TitleFrame>
            <div class="notices">
                <UpdateBar />
                <NoticeBar />
            </div>
            <main class="page" id="page" data-place=Place::Site.address()>
                <SitePage />
            </main>
            <PlaceBar here=Signal::stored(Place::Site) go=Callback::new(move |place: Place| {
                if place.page() != Place::Site.page() {
                    leave_for(place, work);
                }
            }) />
            <Working />
        </div>
    }
}
