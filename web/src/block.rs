//! Markup put on the page in one go, and what a tap on a part of it does.

use leptos::html::Div;
use leptos::prelude::*;
use view::markup::Act;
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement};

use crate::browser;

/// The attribute that says what a tap does.
const ACT: &str = "data-act";

/// What the tapped part does, as it is written on it or around it.
fn tapped(event: &Event) -> Option<String> {
    let target: Element = event.target()?.dyn_into().ok()?;
    target.closest(&format!("[{ACT}]")).ok()??.get_attribute(ACT)
}

/// Hears taps on parts that say what they do.
pub fn on_act(act: Callback<String>) -> impl Fn(web_sys::MouseEvent) + Clone + 'static {
    move |event| {
        if let Some(what) = tapped(&event) {
            act.run(what);
        }
    }
}

/// The parts that can be tapped, in order.
fn parts(room: &HtmlElement) -> Vec<HtmlElement> {
    let Ok(found) = room.query_selector_all(&format!("[{ACT}]")) else { return Vec::new() };
    (0..found.length()).filter_map(|place| found.item(place)?.dyn_into().ok()).collect()
}

/// Puts new markup down. The part that had the focus has it again; where it is gone, the one in its place has it.
fn put(room: &HtmlElement, markup: &str) {
    let active = browser::document().and_then(|page| page.active_element());
    let focused = active.filter(|active| room.contains(Some(active))).and_then(|active| {
        let place = parts(room).iter().position(|part| **part == active)?;
        Some((place, active.get_attribute(ACT)))
    });
    room.set_inner_html(markup);
    let Some((place, act)) = focused else { return };
    let parts = parts(room);
    if let Some(part) = parts.iter().find(|part| part.get_attribute(ACT) == act).or_else(|| parts.get(place)) {
        let _ = part.focus();
    }
}

/// Does what a part of a check says: brings an input to hand, or judges a size.
pub fn doing(
    bring: impl Fn(&str) + Send + Sync + 'static,
    judge: impl Fn(Option<&str>) + Send + Sync + 'static,
) -> Callback<String> {
    Callback::new(move |what: String| match Act::read(&what) {
        Some(Act::Bring(field)) => bring(field),
        Some(Act::Judge(size)) => judge(Some(size)),
        Some(Act::FindSmallest) => judge(None),
        _ => {}
    })
}

/// A part of the page that is read rather than filled in.
#[component]
pub fn Block(
    /// What stands there.
    markup: Signal<String>,
    /// Does what a tapped part says.
    act: Callback<String>,
) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    Effect::new(move |before: Option<String>| {
        let now = markup.get();
        if let Some(room) = room.get().filter(|_| before.as_ref() != Some(&now)) {
            put(&room, &now);
        }
        now
    });
    view! { <div class="block" node_ref=room on:click=on_act(act)></div> }
}
