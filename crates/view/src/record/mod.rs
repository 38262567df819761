//! The record of a walk: its head, how the walk stands, the printed record, and the findings as a table.
//!
//! *Invariant*: nothing is judged here. What a look found stands as it was kept; where it is judged again for the
//! printed record, both answers are shown when they differ. The record says that work conforms only where its signer
//! chose to.

pub mod aside;
mod csv;
mod found;
mod heading;
mod judged;
mod lacks;
mod mark;
mod markup;
mod overview;
mod point;
mod print;
mod words;

pub use csv::findings_csv;
pub use found::{PHOTO_SHOWS, may_sign, next_step, photo_words, point_markup, step_asks, step_key};
pub use heading::{HeadingInput, INPUTS, heading_fields, heading_lacks};
pub use lacks::{Lacking, Of};
pub use mark::{MarkView, mark};
pub use markup::{lacks_markup, mark_markup, not_seen_markup, overview_markup, rows_markup, to_mend_markup};
pub use overview::{MarkRow, Overview, overview};
pub use point::{PointRow, Stage};
pub use print::{not_yet, printed, strokes};
pub use words::{CLOSINGS, SEVERITIES, closing_words, kind_words, severity_words, state_of, when};
