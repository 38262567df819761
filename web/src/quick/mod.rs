//! A page of quick checks: a chapter of kinds, one looked at at a time.
//!
//! Where to look: [`Chapter`] is what a chapter gives; [`book`] holds the kind that is looked at and what follows from what
//! was typed; [`page`] is the place; [`app`] the page as a whole.

mod app;
mod book;
mod kinds;
mod page;
mod working;

pub use app::App;

use view::quick::Shown;

use crate::fields::Groups;
use crate::place::Place;

/// A chapter of quick checks on a page of its own.
pub trait Chapter: Shown {
    /// The place in whose room it stands.
    const PLACE: Place;

    /// The groups of its inputs, in order.
    const GROUPS: Groups;

    /// What a tap on the kind leads to: `another member`.
    const ANOTHER: &'static str;

    /// What the kinds are together.
    const ALL_OF_THEM: &'static str;

    /// A kind that is looked at on another page: its address and its word.
    const ELSEWHERE: Option<(&'static str, &'static str)>;
}
