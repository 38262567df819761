//! The large picture of a sheet, to scale, that fills the room it is given.

use leptos::html::Div;
use leptos::prelude::*;
use view::scene::{FieldId, Scene};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{ResizeObserver, ResizeObserverEntry};

use crate::block::on_act;

/// Follows the room that an element has.
fn follow(element: &web_sys::Element, size: RwSignal<(f64, f64)>) {
    let seen = Closure::<dyn FnMut(js_sys::Array)>::new(move |entries: js_sys::Array| {
        if let Ok(entry) = entries.get(0).dyn_into::<ResizeObserverEntry>() {
            let room = entry.content_rect();
            let _ = size.try_set((room.width(), room.height()));
        }
    });
    if let Ok(observer) = ResizeObserver::new(seen.as_ref().unchecked_ref()) {
        observer.observe(element);
    }
    // The observer lives as long as its element; so must what it calls.
    seen.forget();
}

/// A scene with its text alternative; tapping a part brings its input to hand.
#[component]
pub fn Picture(
    /// What is drawn.
    scene: Memo<Scene>,
    /// The input in hand, drawn heavy.
    hand: Signal<FieldId>,
    /// Does what a tapped part says.
    act: Callback<String>,
) -> impl IntoView {
    let room = NodeRef::<Div>::new();
    let size = RwSignal::new((328.0, 180.0));
    room.on_load(move |element| follow(&element, size));
    let drawn =
        Signal::derive(move || scene.with(|scene| view::svg::picture(scene, size.get(), hand.get()).into_string()));
    let said = Signal::derive(move || scene.with(|scene| scene.alt.clone()));
    view! {
        <div class="picture" node_ref=room>
            <svg role="img" aria-label=said inner_html=drawn on:click=on_act(act)></svg>
        </div>
    }
}
