//! The working of what is looked at.

use leptos::prelude::*;

use super::book::Book;
use crate::browser;
use crate::sheets::SlideUp;

/// The part of the address that the working has.
const ADDRESS: &str = "#/site/working";

/// Opens the working.
pub fn open() {
    browser::set_hash(ADDRESS);
}

/// Opens the working at one of its parts.
pub fn open_at(part: usize) {
    browser::set_hash(&format!("{ADDRESS}/{part}"));
}

/// The sheet.
#[component]
pub fn Working() -> impl IntoView {
    let book = expect_context::<Book>();
    let hash = RwSignal::new(browser::hash());
    browser::on_window("hashchange", move |_| hash.set(browser::hash()));
    let shown = Memo::new(move |_| hash.with(|hash| hash.starts_with(ADDRESS)));
    Effect::new(move || {
        let part = hash.with(|hash| hash.strip_prefix(ADDRESS)?.strip_prefix('/')?.parse::<usize>().ok());
        if let Some(part) = part {
            // The sheet is there once the page was painted.
            browser::after_paint(move || browser::bring_to_top(&format!("working-{part}")));
        }
    });
    let working =
        Signal::derive(move || book.screen.with(|screen| view::markup::working(&screen.working).into_string()));
    view! {
        <SlideUp shown close=Callback::new(|()| browser::replace_hash("#/site")) heading="Working">
            <div inner_html=working></div>
        </SlideUp>
    }
}
