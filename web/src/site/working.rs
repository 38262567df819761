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

/// The sheet.
#[component]
pub fn Working() -> impl IntoView {
    let book = expect_context::<Book>();
    let hash = RwSignal::new(browser::hash());
    browser::on_window("hashchange", move |_| hash.set(browser::hash()));
    let shown = Memo::new(move |_| hash.with(|hash| hash == ADDRESS));
    let working =
        Signal::derive(move || book.screen.with(|screen| view::markup::working(&screen.working).into_string()));
    view! {
        <SlideUp shown close=Callback::new(|()| browser::replace_hash("#/site")) heading="Working">
            <div inner_html=working></div>
        </SlideUp>
    }
}
