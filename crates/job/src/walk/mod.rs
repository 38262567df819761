//! The walk: a log of records. Each is added once and never changed; a correction is a record of its own.
//!
//! Two phones may add to one walk. Their logs are brought together by the records' ids ([`merge_logs`]), whichever
//! comes first, and what stands now is read from the whole log ([`Walk::read`]).

mod draft;
mod log;
mod record;
mod stands;

pub use draft::{Draft, open_draft};
pub use log::{merge_logs, next_number};
pub use record::{
    Because, Follows, Lists, Look, MarkVersion, Photo, Record, RecordBody, Signature, Step, Stroke, open_record,
};
pub use stands::{Entry, LookEntry, Mark, Point, Walk};
