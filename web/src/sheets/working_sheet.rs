//! The working, as written by hand: one step a line, the clause in the margin.

use leptos::prelude::*;

use super::slide_up::SlideUp;
use crate::desk::Desk;
use crate::route::Sheet;

/// The working of the size that the answer is about.
#[component]
pub fn WorkingSheet() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let working =
        Signal::derive(move || desk.screen.with(|screen| view::markup::working(&screen.working).into_string()));
    view! {
        <SlideUp sheet=Sheet::Working heading="Working">
            <div inner_html=working></div>
        </SlideUp>
    }
}
