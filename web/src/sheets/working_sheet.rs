//! The working, as written by hand: one step a line, the clause in the margin.

use leptos::prelude::*;

use super::slide_up::SlideUp;
use crate::desk::Desk;
use crate::route::{Route, Sheet};

/// The working of the size that the answer is about.
#[component]
pub fn WorkingSheet() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let working =
        Signal::derive(move || desk.screen.with(|screen| view::markup::working(&screen.working).into_string()));
    view! {
        <SlideUp shown=route.shows(Sheet::Working) close=route.closing() heading="Working">
            <div inner_html=working></div>
        </SlideUp>
    }
}
