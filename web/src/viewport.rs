//! The part of the page that can be seen while the phone's keyboard is up.

use wasm_bindgen::JsCast;
use web_sys::VisualViewport;

use crate::browser;

/// Below this height, in CSS pixels, the keyboard is taken to be up: the bars give way to the answer and the input.
const SHORT: f64 = 540.0;
/// From this width on the sheet stands beside the hands, and nothing gives way.
const WIDE: f64 = 640.0;

fn viewport() -> Option<VisualViewport> {
    let window = browser::window()?;
    js_sys::Reflect::get(&window, &"visualViewport".into()).ok()?.dyn_into().ok()
}

fn measure(viewport: &VisualViewport) {
    // While the page is pinched larger, the seen part says nothing about the keyboard.
    if viewport.scale() > 1.01 {
        return;
    }
    if let Some(root) = browser::root() {
        let style = root.style();
        let _ = style.set_property("--seen-height", &format!("{}px", viewport.height()));
        let _ = style.set_property("--seen-top", &format!("{}px", viewport.offset_top()));
        let short = viewport.height() < SHORT && viewport.width() < WIDE;
        let _ = root.dataset().set("short", if short { "true" } else { "false" });
    }
}

/// Follows it for as long as the page lives.
pub fn follow() {
    let Some(viewport) = viewport() else { return };
    measure(&viewport);
    for event in ["resize", "scroll"] {
        let seen = viewport.clone();
        browser::listen(&viewport, event, move |_| measure(&seen));
    }
}
