//! Other windows of the same field book.

use wasm_bindgen::prelude::*;
use web_sys::BroadcastChannel;

use crate::browser;
use crate::desk::Desk;

const CHANNEL: &str = "galeframe";

thread_local! {
    static SPEAK: Option<BroadcastChannel> = BroadcastChannel::new(CHANNEL).ok();
}

/// Tells the other windows that a part has changed.
pub fn tell_other_windows() {
    SPEAK.with(|channel| {
        if let Some(channel) = channel {
            let _ = channel.post_message(&JsValue::from_str("parts"));
        }
    });
}

/// Reads the parts again when another window has changed them, and whenever this one comes back into view; puts the
/// typing away when it goes out of view.
pub fn hear_other_windows(desk: Desk) {
    SPEAK.with(|channel| {
        if let Some(channel) = channel {
            browser::listen(channel, "message", move |_| desk.keeper.read_again(desk));
        }
    });
    browser::on_document("visibilitychange", move |_| {
        if browser::is_visible() {
            desk.keeper.read_again(desk);
        } else {
            desk.keeper.keep_now(desk);
        }
    });
    browser::on_window("pagehide", move |_| desk.keeper.keep_now(desk));
}
