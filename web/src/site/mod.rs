//! The page of Site: what loads a house at its place, and what follows from it.
//!
//! Where to look: [`book`] holds what was typed and keeps it; [`page`] is the place; [`app`] the page as a whole.

mod app;
mod book;
mod look_choice;
mod page;
mod working;

pub use app::App;
