//! The path of uplift, read and answered: of a wall under rafters, of a gable end with its overhang, or of a porch's posts.
//!
//! Where to look: `asked` has the inputs and where each counts. `wall`, `gable` and `porch` are what may be lifted; `lifted`
//! is what lifts a foot of wall, `pressures` the wind on parts of the roof, `deck` the nails of the roof sheathing, `ties`
//! and `panels` what is there at the links. `links` names them, `judged` says the verdict and `says` the rest; `by_code` is
//! the code's own table beside it.

mod asked;
mod by_code;
mod deck;
mod gable;
mod judged;
mod lifted;
mod links;
mod panels;
mod porch;
mod pressures;
mod says;
mod ties;
mod wall;

use crate::quick::reply::QuickReply;
use crate::quick::say::unworked;
use crate::reading::Reading;
use crate::site::about::About;

pub(super) use asked::FIELDS;
pub use asked::counts;

/// What is lifted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Lifts {
    /// A wall under rafters or trusses.
    Wall,
    /// A gable wall, by the overhang over it.
    Gable,
    /// The posts of a porch.
    Porch,
}

impl Lifts {
    fn of(reading: &Reading) -> Self {
        match reading.word("uplift_of") {
            Some("gable") => Self::Gable,
            Some("porch") => Self::Porch,
            _ => Self::Wall,
        }
    }
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    match Lifts::of(reading) {
        Lifts::Wall => wall::answer(reading),
        Lifts::Gable => gable::answer(reading),
        Lifts::Porch => porch::answer(reading),
    }
}

/// An input, and the question that it answers.
type Asks = (&'static str, &'static str);

/// Where no rule reaches, the drawing's number is what is asked for.
fn asks_the_engineer(mut about: About<'_>, (input, asks): Asks, sentence: String) -> QuickReply {
    about.ask(input, asks);
    unworked(about, sentence)
}
