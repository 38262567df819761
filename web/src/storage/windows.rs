//! Other windows of the same field book.

use leptos::prelude::*;
use wasm_bindgen::JsValue;
use web_sys::BroadcastChannel;

use crate::browser;

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

/// Reads again when another window has changed something, and whenever this one comes back into view; puts the typing
/// away when it goes out of view.
pub fn hear_other_windows(read_again: Callback<()>, put_away: Callback<()>) {
    SPEAK.with(|channel| {
        if let Some(channel) = channel {
            browser::listen(channel, "message", move |_| read_again.run(()));
        }
    });
    browser::on_document("visibilitychange", move |_| {
        if browser::is_visible() {
            read_again.run(());
        } else {
            put_away.run(());
        }
    });
    browser::on_window("pagehide", move |_| put_away.run(()));
}
