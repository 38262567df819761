//! The working of the check that is looked at.

use leptos::prelude::*;

use super::Chapter;
use super::book::Book;
use crate::browser;
use crate::sheets::SlideUp;

fn address<K: Chapter>(book: Book<K>) -> String {
    format!("#/{}/{}", K::CHAPTER, book.kind.get_untracked().id())
}

/// Opens the working.
pub fn open<K: Chapter>(book: Book<K>) {
    browser::set_hash(&format!("{}/working", address(book)));
}

/// Opens the working at one of its parts.
pub fn open_at<K: Chapter>(book: Book<K>, part: usize) {
    browser::set_hash(&format!("{}/working/{part}", address(book)));
}

/// The word of the working in an address, and the part after it.
fn part(hash: &str) -> Option<Option<usize>> {
    let mut words = hash.trim_start_matches('#').split('/').filter(|word| !word.is_empty()).skip(2);
    (words.next()? == "working").then(|| words.next().and_then(|part| part.parse().ok()))
}

/// The sheet.
#[component]
pub fn Working<K: Chapter>(
    /// The book.
    book: Book<K>,
) -> impl IntoView {
    let hash = RwSignal::new(browser::hash());
    browser::on_window("hashchange", move |_| hash.set(browser::hash()));
    let shown = Memo::new(move |_| hash.with(|hash| part(hash).is_some()));
    Effect::new(move || {
        if let Some(Some(part)) = hash.with(|hash| part(hash)) {
            // The sheet is there once the page was painted.
            browser::after_paint(move || browser::bring_to_top(&format!("working-{part}")));
        }
    });
    let working =
        Signal::derive(move || book.screen.with(|screen| view::markup::working(&screen.working).into_string()));
    let close = Callback::new(move |()| browser::replace_hash(&address(book)));
    view! {
        <SlideUp shown close heading="Working">
            <div inner_html=working></div>
        </SlideUp>
    }
}
