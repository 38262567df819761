//! Members: the header over the opening.

mod keys_row;
mod page;

pub use page::HeaderPlace;
