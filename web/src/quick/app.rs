//! The page as a whole: title block, the place, bar of places.

use core::marker::PhantomData;

use leptos::prelude::*;

use super::Chapter;
use super::book::{Book, asked_for};
use super::page::QuickPage;
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
pub fn App<K: Chapter>(
    /// What was kept from before.
    found: Found,
    /// The chapter.
    #[prop(optional)]
    _chapter: PhantomData<K>,
) -> impl IntoView {
    Look::provide();
    let book = Book::<K>::new(&found);
    let put_away = Callback::new(move |()| book.values.keep_now());
    let is_put_away = Signal::derive(move || book.values.state.with(|state| *state == Kept::Safe));
    let work = Work { is_put_away, put_away };
    Worker::provide(work);
    hear_other_windows(Callback::new(move |()| book.values.read_again()), put_away);
    settings::keep_last_page(K::CHAPTER);
    browser::on_window("hashchange", move |_| {
        let asked = browser::hash();
        if let Some(kind) = asked_for(&asked) {
            book.look_at(kind);
        }
        // The word of this chapter is no other place.
        let place = asked.trim_start_matches('#').split('/').find(|word| !word.is_empty()).and_then(Place::at);
        if let Some(place) = place.filter(|place| place.address() != K::CHAPTER) {
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
            <main class="page" id="page" data-place=K::CHAPTER>
                <QuickPage book />
            </main>
            <PlaceBar here=Signal::stored(K::PLACE) go=Callback::new(move |place: Place| leave_for(place, work)) />
            <Working book />
        </div>
    }
}
