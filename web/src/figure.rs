//! Figures as they are set on the sheet.

use leptos::prelude::*;

/// A text with its fractions set as fractions, and said in words.
#[component]
pub fn Figure(
    /// The text: `6' 2-3/8"`.
    text: Signal<String>,
) -> impl IntoView {
    let set = Signal::derive(move || text.with(|text| view::markup::figure(text).into_string()));
    view! { <span inner_html=set></span> }
}
