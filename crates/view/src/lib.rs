//! What a screen says: pure view models and wording, and pictures as scene data.
//!
//! *Invariant*: no browser type is named here and no engineering is decided here; a view model is a pure function of
//! a `framing` result, tested without a browser.

pub mod header;
pub mod model;
pub mod scene;
