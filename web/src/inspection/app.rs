//! The page as a whole: title block, the part of the walk one is at, bar of places.

use leptos::prelude::*;

use super::book::Book;
use super::drafts::Drafts;
use super::drawing::Drawing;
use super::found::FoundPoint;
use super::head::TitleBlock;
use super::heading::Heading;
use super::look::{Again, NewLook};
use super::mark::MarkPage;
use super::photo::PhotoPage;
use super::record::RecordPage;
use super::start::Found;
use super::walk::WalkPage;
use super::walks::Walks;
use super::way::{Spot, Way};
use crate::bars::{NoticeBar, PlaceBar, UpdateBar};
use crate::browser;
use crate::place::Place;
use crate::storage::{Kept, hear_other_windows};
use crate::theme::Look;
use crate::worker::{Work, Worker};

/// The whole.
#[component]
pub fn App(
    /// What was kept from before.
    found: Found,
) -> impl IntoView {
    Look::provide();
    let mut found = found;
    let book = Book::provide(&mut found);
    let drafts = Drafts::provide(book, &found);
    let put_away = Callback::new(move |()| drafts.put_away());
    let is_put_away = Signal::derive(move || book.state.with(|state| *state == Kept::Safe));
    let work = Work { is_put_away, put_away };
    Worker::provide(work);
    let way = Way::provide(work);
    hear_other_windows(Callback::new(move |()| book.read_again()), put_away);
    let spot = Memo::new(move |_| way.spot());
    browser::after_paint(browser::say_ready);
    view! {
        <div class="field-book">
            <TitleBlock />
            <div class="notices">
                <UpdateBar />
                <NoticeBar />
            </div>
            <main class="page" id="page" data-place=Place::Inspection.address()>
                {move || part(spot.get())}
            </main>
            <PlaceBar
                here=Signal::stored(Place::Inspection)
                go=Callback::new(move |place| way.go_to_place(place))
            />
        </div>
    }
}

/// A part of the walk; each begins at its top.
fn part(spot: Spot) -> AnyView {
    if let Some(page) = browser::document().and_then(|page| page.get_element_by_id("page")) {
        page.set_scroll_top(0);
    }
    match spot {
        Spot::Walk => view! { <WalkPage /> }.into_any(),
        Spot::Walks => view! { <Walks /> }.into_any(),
        Spot::Drawing(mark) => view! { <Drawing mark /> }.into_any(),
        Spot::Mark(mark) => view! { <MarkPage mark /> }.into_any(),
        Spot::Look(mark, kind) => view! { <NewLook mark kind /> }.into_any(),
        Spot::Again(look, mended) => view! { <Again look mended /> }.into_any(),
        Spot::Found(look) => view! { <FoundPoint look /> }.into_any(),
        Spot::Photo(photo) => view! { <PhotoPage photo /> }.into_any(),
        Spot::Heading => view! { <Heading /> }.into_any(),
        Spot::Record => view! { <RecordPage /> }.into_any(),
    }
}
