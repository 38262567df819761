//! Whether the browser has promised not to clear what is kept.

use wasm_bindgen_futures::JsFuture;
use web_sys::StorageManager;

use crate::browser;

/// The browser's word on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lasting {
    /// It will not clear it by itself.
    Promised,
    /// It may clear it when the phone runs short of room.
    NotPromised,
    /// It does not say.
    NotSaid,
}

impl Lasting {
    /// The same in sentences.
    pub const fn sentence(self) -> &'static str {
        match self {
            Self::Promised => "The browser has promised to keep this until you remove it.",
            Self::NotPromised => {
                "The browser may clear it when the phone runs short of room: put Galeframe on the home screen."
            }
            Self::NotSaid => "This browser does not say how long it keeps this. Put Galeframe on the home screen.",
        }
    }
}

fn manager() -> Option<StorageManager> {
    let navigator = browser::window()?.navigator();
    // Missing in old browsers and outside secure pages.
    let there = js_sys::Reflect::get(&navigator, &"storage".into()).ok()?;
    wasm_bindgen::JsCast::dyn_into(there).ok()
}

async fn answer(promise: Option<js_sys::Promise>) -> Lasting {
    let Some(promise) = promise else { return Lasting::NotSaid };
    match JsFuture::from(promise).await.ok().and_then(|value| value.as_bool()) {
        Some(true) => Lasting::Promised,
        Some(false) => Lasting::NotPromised,
        None => Lasting::NotSaid,
    }
}

/// Asks it to keep what is here. For after the first saved answer: asked at the start, browsers say no.
pub async fn ask_to_last() -> Lasting {
    answer(manager().and_then(|manager| manager.persist().ok())).await
}

/// What it said, without asking for anything.
pub async fn whether_lasting() -> Lasting {
    answer(manager().and_then(|manager| manager.persisted().ok())).await
}
