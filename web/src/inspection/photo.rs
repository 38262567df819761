//! Photos that are kept: small in a list, large to be drawn on. The photo itself stays as it was taken.

use job::walk::{Entry, Photo, RecordBody, Stroke};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::book::Book;
use super::camera::address_of;
use super::head::Head;
use super::ink::Ink;
use super::way::{Spot, Way};
use crate::storage;

/// The address of a kept photo, once it is read.
pub fn kept_photo(id: String, small: bool) -> RwSignal<Option<String>> {
    let address = RwSignal::new(None);
    spawn_local(async move {
        if let Ok(Some(bytes)) = storage::photo(&id, small).await {
            let _ = address.try_set(address_of(&bytes, "image/jpeg"));
        }
    });
    on_cleanup(move || {
        if let Some(address) = address.try_get_untracked().flatten() {
            let _ = web_sys::Url::revoke_object_url(&address);
        }
    });
    address
}

/// Small photos, each a tap from being large.
#[component]
pub fn Photos(
    /// The photos.
    of: Signal<Vec<Entry<Photo>>>,
) -> impl IntoView {
    let way = expect_context::<Way>();
    let one = move |entry: Entry<Photo>| {
        let photo = entry.what;
        let address = kept_photo(photo.photo.clone(), true);
        let words = view::record::photo_words(&photo);
        let said = words.clone();
        let go = move |_| way.go(&Spot::Photo(photo.photo.clone()));
        view! {
            <button type="button" class="thumb" on:click=go>
                <img src=move || address.get() alt=said />
                <span class="note">{words}</span>
            </button>
        }
    };
    view! { <div class="thumbs">{move || of.get().into_iter().map(one).collect_view()}</div> }
}

/// A photo with the lines on it, and what it is of.
fn find(book: Book, id: &str) -> Option<(Photo, Vec<Stroke>, Spot)> {
    let walk = book.walk()?;
    let of_marks = walk
        .marks
        .iter()
        .flat_map(|mark| mark.photos.iter().map(move |(photo, strokes)| (photo, strokes, Spot::Mark(mark.id.clone()))));
    let of_points = walk.points().flat_map(|(_, point)| {
        let look = point.first().map(|look| look.id.clone()).unwrap_or_default();
        point.photos.iter().map(move |(photo, strokes)| (photo, strokes, Spot::Found(look.clone())))
    });
    let found = of_marks.chain(of_points).find(|(photo, ..)| photo.what.photo == id);
    found.map(|(photo, strokes, spot)| (photo.what.clone(), strokes.clone(), spot))
}

/// The part.
#[component]
pub fn PhotoPage(
    /// The photo's id.
    photo: String,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let Some((kept, lines, of)) = untrack(|| find(book, &photo)) else {
        return view! { <p class="walk">"This photo is not in the walk that is looked at."</p> }.into_any();
    };
    let address = kept_photo(photo.clone(), false);
    let strokes = RwSignal::new(lines.clone());
    let changed = move || strokes.with(|strokes| *strokes != lines);
    let back = of.clone();
    let keep = move |_| {
        let body = RecordBody::Drawn { photo: photo.clone(), strokes: strokes.get_untracked() };
        let of = of.clone();
        book.add(body, move |_| way.go_instead(&of));
    };
    view! {
        <div class="walk photo-page">
            <Head words=view::record::photo_words(&kept) back back_words="Back" />
            <Ink strokes label="Photo, to be drawn on">
                <img src=move || address.get() alt=view::record::photo_words(&kept) width=kept.width height=kept.height draggable="false" />
            </Ink>
            <div class="keys-row">
                <button
                    type="button"
                    class="key"
                    disabled=move || strokes.with(Vec::is_empty)
                    on:click=move |_| strokes.update(|strokes| { strokes.pop(); })
                >
                    "Take a line back"
                </button>
                <button type="button" class="key save" disabled=move || !changed() on:click=keep>"Keep the lines"</button>
            </div>
        </div>
    }
    .into_any()
}
