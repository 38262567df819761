//! What a check starts from: the job's values, and what follows from those of Site.

use crate::field::HEADER_FIELDS;
use crate::{HeaderCase, Texts};

/// The values that every header check of the job starts from.
#[must_use]
pub fn starts(fields: &dyn Texts) -> HeaderCase {
    let mut case = HeaderCase::default();
    for spec in HEADER_FIELDS {
        if let Some(text) = fields.text(spec.id) {
            case.set(spec.id, Some(text.to_owned()));
        }
    }
    case
}
