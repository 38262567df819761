//! The page of Site: what loads a house at its place, and what follows from it.
//!
//! Where to look: [`book`] holds what was typed and keeps it; [`page`] is the place; [`app`] the page as a whole; [`jobs`]
//! opens another job, and [`example`] is the one that comes with the app.

mod app;
mod book;
mod example;
mod jobs;
mod look_choice;
mod page;
mod working;

pub use app::App;
