//! Site: the job's name, its loads, wood and limits, and the look of the sheet.

mod look_choice;
mod page;

pub use page::Site;
