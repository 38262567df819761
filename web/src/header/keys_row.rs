//! One step back, the working, saving.

use leptos::prelude::*;

use crate::desk::Desk;
use crate::route::{Route, Sheet};

/// The row of keys under the input in hand.
#[component]
pub fn KeysRow() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    view! {
        <div class="keys-row">
            <button type="button" class="key" disabled=move || !desk.can_undo() on:click=move |_| desk.undo()>"Undo"</button>
            <button type="button" class="key" aria-haspopup="dialog" on:click=move |_| route.slide_up(Sheet::Working)>
                "Working"
            </button>
            <button type="button" class="key save" aria-haspopup="dialog" on:click=move |_| route.slide_up(Sheet::Save)>
                "Save"
            </button>
        </div>
    }
}
