//! The few things that are asked of the browser, in one place.

use wasm_bindgen::prelude::*;
use web_sys::{Document, Event, HtmlElement, Window};

/// The window; none only where there is no page.
pub fn window() -> Option<Window> {
    web_sys::window()
}

/// The page.
pub fn document() -> Option<Document> {
    window().and_then(|window| window.document())
}

/// The page's root element.
pub fn root() -> Option<HtmlElement> {
    document()?.document_element()?.dyn_into().ok()
}

/// The part of the address after and with `#`.
pub fn hash() -> String {
    window().and_then(|window| window.location().hash().ok()).unwrap_or_default()
}

/// Goes to another `#` address.
pub fn set_hash(hash: &str) {
    if let Some(window) = window() {
        let _ = window.location().set_hash(hash);
    }
}

/// Goes to another `#` address without a step that the back key would stop at.
pub fn replace_hash(hash: &str) {
    if let Some(window) = window() {
        let place = window.location();
        // A bare `#` would be read against <base>, which may not be where the page stands.
        let here = place.pathname().unwrap_or_default() + &place.search().unwrap_or_default();
        let _ = place.replace(&format!("{here}{hash}"));
    }
}

/// Shows the top of the place, once what changes now is laid.
pub fn to_top() {
    after(0, || {
        if let Some(page) = document().and_then(|page| page.get_element_by_id("page")) {
            page.set_scroll_top(0);
        }
    });
}

/// Brings a part to the top of the sheet that it is on.
pub fn bring_to_top(id: &str) {
    let Some(part) = document().and_then(|page| page.get_element_by_id(id)) else { return };
    if let Ok(Some(sheet)) = part.closest(".slide-up-body") {
        let above = part.get_bounding_client_rect().top() - sheet.get_bounding_client_rect().top();
        sheet.set_scroll_top(sheet.scroll_top() + above as i32);
    }
}

/// Goes to another page of the app, by its address relative to where the app stands.
pub fn go(address: &str) {
    if let Some(window) = window() {
        let _ = window.location().assign(address);
    }
}

/// Opens the phone's own way of printing.
pub fn print() {
    if let Some(window) = window() {
        let _ = window.print();
    }
}

/// Loads the page anew.
pub fn reload() {
    if let Some(window) = window() {
        let _ = window.location().reload();
    }
}

/// Hears an event for as long as the page lives.
pub fn on_window(event: &str, hear: impl FnMut(Event) + 'static) {
    if let Some(window) = window() {
        listen(&window, event, hear);
    }
}

/// Hears an event of the page for as long as it lives.
pub fn on_document(event: &str, hear: impl FnMut(Event) + 'static) {
    if let Some(document) = document() {
        listen(&document, event, hear);
    }
}

/// Hears an event of a target for as long as the page lives.
pub fn listen(target: &web_sys::EventTarget, event: &str, hear: impl FnMut(Event) + 'static) {
    let hear = Closure::<dyn FnMut(Event)>::new(hear);
    let _ = target.add_event_listener_with_callback(event, hear.as_ref().unchecked_ref());
    hear.forget();
}

/// Runs something once, later.
pub fn after(milliseconds: i32, run: impl FnOnce() + 'static) {
    let run = Closure::once_into_js(run);
    if let Some(window) = window() {
        let _ = window.set_timeout_with_callback_and_timeout_and_arguments_0(run.unchecked_ref(), milliseconds);
    }
}

/// Runs something once the next picture is on the screen.
pub fn after_paint(run: impl FnOnce() + 'static) {
    let run = Closure::once_into_js(move || after(0, run));
    if let Some(window) = window() {
        let _ = window.request_animation_frame(run.unchecked_ref());
    }
}

/// Whether the page can be seen.
pub fn is_visible() -> bool {
    document().is_some_and(|document| document.visibility_state() == web_sys::VisibilityState::Visible)
}

/// Takes the opening picture away and marks the page as ready; the first time only.
pub fn say_ready() {
    if let Some(shell) = document().and_then(|document| document.get_element_by_id("app-shell")) {
        shell.remove();
    }
    let Some(page) = root().map(|root| root.dataset()).filter(|page| page.get("ready").is_none()) else { return };
    let _ = page.set("ready", "true");
    crate::worker::register();
}

/// A new id of 16 hexadecimal digits.
pub fn new_id() -> String {
    let mut bytes = [0_u8; 8];
    let drawn = window()
        .and_then(|window| window.crypto().ok())
        .is_some_and(|crypto| crypto.get_random_values_with_u8_array(&mut bytes).is_ok());
    if !drawn {
        for byte in &mut bytes {
            // A cast from 0..256 cannot fail; the source is only asked where the better one is missing.
            *byte = (js_sys::Math::random() * 256.0) as u8;
        }
    }
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
