//! The page of the members beside the header: joists, beams, rafters, ridges, hips and valleys, studs, posts, cuts, and the
//! code's span tables.
//!
//! Where to look: [`book`] holds the kind that is looked at and what follows from what was typed; [`page`] is the place;
//! [`app`] the page as a whole.

mod app;
mod book;
mod kinds;
mod page;
mod working;

pub use app::App;
