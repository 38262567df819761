//! A new version is ready: taken up when one says so.

use leptos::prelude::*;

use crate::worker::Worker;

/// The bar that offers it.
#[component]
pub fn UpdateBar() -> impl IntoView {
    let worker = expect_context::<Worker>();
    view! {
        <Show when=move || worker.offers()>
            <div class="notice" role="status">
                <p>"New version ready."</p>
                <button type="button" class="plain" on:click=move |_| worker.take_up()>"Take it up now"</button>
                <button type="button" class="plain" on:click=move |_| worker.later()>"Later"</button>
            </div>
        </Show>
    }
}
