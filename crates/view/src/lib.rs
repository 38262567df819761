//! What a screen says: pure view models and wording, and pictures as scene data.
//!
//! *Invariant*: no browser type is named here and no engineering is decided here; a view model is a pure function of
//! a `framing` result, tested without a browser.
//!
//! Where to look: [`model`] has the parts of a screen; [`header`], [`quick`] (with [`member`], [`bracing`] and [`layout`]), [`site`] and
//! [`walk`] make them; [`jobs`] lists the jobs; [`scene`] has pictures as data;
//! [`markup`], [`svg`] and [`tape`] write what is read, rather than filled in, as it is put on the page.

pub mod bracing;
pub mod header;
mod inputs;
pub mod jobs;
pub mod layout;
pub mod markup;
pub mod member;
pub mod model;
mod pen;
pub mod quick;
pub mod record;
mod replied;
pub mod scene;
pub mod site;
pub mod svg;
pub mod tape;
pub mod walk;
