//! What slides up over a place.

mod save_sheet;
mod saved_sheet;
mod slide_up;
mod working_sheet;

pub use save_sheet::SaveSheet;
pub use saved_sheet::SavedSheet;
pub use slide_up::SlideUp;
pub use working_sheet::WorkingSheet;
