//! The record: read, printed, signed, handed over.

use std::collections::BTreeMap;

use job::walk::{RecordBody, Signature, Walk};
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::record;

use super::book::Book;
use super::camera::address_of_array;
use super::hand_over::HandOver;
use super::head::Head;
use super::ink::Ink;
use super::line::{self, Line};
use super::walk::opening;
use super::way::{Spot, Way};
use crate::block::Block;
use crate::browser;
use crate::local_time;
use crate::storage;

/// The addresses of the walk's photos by their ids; none until they are read.
fn photos(walk: &Walk) -> RwSignal<Option<BTreeMap<String, String>>> {
    let of_marks = walk.marks.iter().flat_map(|mark| &mark.photos);
    let of_points = walk.points().flat_map(|(_, point)| &point.photos);
    let ids: Vec<String> = of_marks.chain(of_points).map(|(photo, _)| photo.what.photo.clone()).collect();
    let addresses = RwSignal::new(ids.is_empty().then(BTreeMap::new));
    if ids.is_empty() {
        return addresses;
    }
    spawn_local(async move {
        // What cannot be read is said in its place on the record.
        let found = storage::photos(ids).await.unwrap_or_default();
        let address = |(id, bytes)| Some((id, address_of_array(&bytes, "image/jpeg")?));
        let _ = addresses.try_set(Some(found.into_iter().filter_map(address).collect()));
    });
    on_cleanup(move || {
        for address in addresses.try_get_untracked().flatten().unwrap_or_default().values() {
            let _ = web_sys::Url::revoke_object_url(address);
        }
    });
    addresses
}

/// The part.
#[component]
pub fn RecordPage() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let Some(first) = untrack(move || book.walk()) else {
        return view! { <p class="walk">"No walk was begun yet."</p> }.into_any();
    };
    let addresses = photos(&first);
    let printed = Signal::derive(move || {
        let Some(walk) = book.walk() else { return String::new() };
        let name = book.job.with(|job| job.name.clone());
        addresses.with(|addresses| {
            // Put together once, with its photos: a long walk's record takes a slow phone a while.
            let Some(addresses) = addresses else { return record::not_yet().into_string() };
            record::printed(&walk, &name, &|id| addresses.get(id).cloned(), &local_time::now()).into_string()
        })
    });
    let lacks = Signal::derive(move || {
        book.walk().map(|walk| record::lacks_markup(&record::overview(&walk).lacks).into_string()).unwrap_or_default()
    });
    view! {
        <div class="walk record-page">
            <div class="screen-only">
                <Head words="Record" back=Spot::Walk back_words="Walk" />
                <div class="keys-row">
                    <button type="button" class="key" on:click=move |_| way.go(&Spot::Heading)>"The head"</button>
                    <button type="button" class="key save" on:click=move |_| browser::print()>"Print"</button>
                </div>
                <HandOver />
                <Block markup=lacks act=opening(way) />
                <Sign />
            </div>
            <div class="printed" inner_html=printed></div>
        </div>
    }
    .into_any()
}

/// Signing, once nothing is lacking.
#[component]
fn Sign() -> impl IntoView {
    let book = expect_context::<Book>();
    let (name, title) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let closing = RwSignal::new(None::<&'static str>);
    let strokes = RwSignal::new(Vec::new());
    let lacks = Memo::new(move |_| book.walk().is_some_and(|walk| !record::may_sign(&walk)));
    let signed = Memo::new(move |_| book.walk().is_some_and(|walk| walk.is_signed()));
    let ready = move || {
        !lacks.get()
            && closing.get().is_some()
            && name.with(|name| !name.trim().is_empty())
            && strokes.with(|strokes| !strokes.is_empty())
    };
    let sign = move |_| {
        let signature = Signature {
            name: name.get_untracked().trim().to_owned(),
            title: title.get_untracked().trim().to_owned(),
            closing: closing.get_untracked().unwrap_or_default().to_owned(),
            strokes: strokes.get_untracked(),
        };
        book.add(RecordBody::Signed(signature), move |_| strokes.set(Vec::new()));
    };
    let card = move |(value, words): (&'static str, &'static str)| {
        view! {
            <label class="option">
                <input type="radio" name="closing" prop:checked=move || closing.get() == Some(value) on:change=move |_| closing.set(Some(value)) />
                <span>{words}</span>
            </label>
        }
    };
    view! {
        <details class="group sign">
            <summary><h2>{move || if signed.get() { "Signed; sign once more" } else { "Sign" }}</h2></summary>
            <p class="problem" hidden=move || !lacks.get()>"The record lacks what is listed above. Write it down first."</p>
            <Line id="signer" label="Name" words=name write=line::into(name) />
            <Line id="signer-title" label="Title and license" words=title write=line::into(title) />
            <div class="options" role="radiogroup" aria-label="Closing words">{record::CLOSINGS.map(card).into_iter().collect_view()}</div>
            <Ink strokes label="Signature, to be drawn"><div class="sign-line"></div></Ink>
            <div class="keys-row">
                <button type="button" class="key" on:click=move |_| strokes.set(Vec::new())>"Clear"</button>
                <button type="button" class="key save" disabled=move || !ready() on:click=sign>"Sign the record"</button>
            </div>
        </details>
    }
}
