//! The field book on a phone: components that bind view models, and the glue to the browser's storage and worker.
//!
//! *Invariant*: no engineering is computed and nothing is decided here. What is on the screen comes from
//! `view::header::screen`, a pure function of what was typed; what was typed is the only thing that is kept.
//!
//! Where to look: [`desk`] holds what was typed and the one memo over it; [`storage`] keeps it; `header`,
//! `member`, `bracing`, `layout` and `site` are places, the first three
//! made of [`quick`]; `fields` is the input in hand, its tape and its keys; `block` and `picture` put down what is read
//! rather than filled in.

mod answer_strip;
mod app;
mod bars;
mod block;
mod bracing;
mod broken;
mod browser;
mod desk;
mod fields;
mod figure;
mod header;
mod inspection;
mod laid;
mod layout;
mod local_time;
mod member;
mod picture;
mod place;
mod quick;
mod route;
mod sheets;
mod site;
mod storage;
mod theme;
mod values;
mod viewport;
mod worker;

use framing::bracing::BracingKind;
use framing::layout::LayoutKind;
use framing::member::MemberKind;
use leptos::prelude::*;

#[cfg(target_family = "wasm")]
#[global_allocator]
static MEMORY: talc::wasm::WasmDynamicTalc = talc::wasm::new_wasm_dynamic_allocator();

/// Opens what was kept, then shows the field book.
pub fn start() {
    broken::catch();
    wasm_bindgen_futures::spawn_local(async {
        theme::apply(theme::chosen());
        let found = storage::at_start().await;
        viewport::follow();
        mount_to_body(move || view! { <app::App found=found /> });
    });
}

/// Opens what was kept, then shows the page of Inspection.
pub fn start_inspection() {
    broken::catch();
    wasm_bindgen_futures::spawn_local(async {
        theme::apply(theme::chosen());
        let found = inspection::at_start().await;
        viewport::follow();
        mount_to_body(move || view! { <inspection::App found=found /> });
    });
}

/// Opens what was kept, then shows the page of Site.
pub fn start_site() {
    broken::catch();
    wasm_bindgen_futures::spawn_local(async {
        theme::apply(theme::chosen());
        let found = values::at_start().await;
        viewport::follow();
        mount_to_body(move || view! { <site::App found=found /> });
    });
}

/// Opens what was kept, then shows the page of the members beside the header.
pub fn start_member() {
    start_quick::<MemberKind>();
}

/// Opens what was kept, then shows the page of Bracing.
pub fn start_bracing() {
    start_quick::<BracingKind>();
}

/// Opens what was kept, then shows the page of Layout.
pub fn start_layout() {
    start_quick::<LayoutKind>();
}

fn start_quick<K: quick::Chapter>() {
    broken::catch();
    wasm_bindgen_futures::spawn_local(async {
        theme::apply(theme::chosen());
        let found = values::at_start().await;
        viewport::follow();
        mount_to_body(move || view! { <quick::App<K> found=found /> });
    });
}

#[cfg(test)]
wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);
