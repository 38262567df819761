//! The input in hand and the others: how each is filled.

mod chip_group;
mod choice_entry;
mod echo;
mod hand;
mod inputs;
mod keys;
mod length_entry;
mod lines_entry;
mod next_key;
mod number_entry;
mod option_card;
mod pad;
mod sixteenths;
mod tape;
mod tape_drag;
mod text_entry;
mod typed_text;

pub use hand::Hand;
pub use inputs::{Groups, Inputs};
pub use pad::Pad;
