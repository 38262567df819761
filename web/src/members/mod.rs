//! Members: the header over the opening.

mod answer_strip;
mod keys_row;
mod page;

pub use page::Members;
