//! What a check starts from: the job's values, and those that Site worked out and put beside them.

use crate::field::HEADER_FIELDS;
use crate::{HeaderCase, Texts};

/// Under this stand the values that Site worked out for checks: `worked/mean_roof_height`.
pub(super) const WORKED: &str = "worked/";

/// The values that every header check of the job starts from. What was typed stands over what Site worked out.
#[must_use]
pub fn starts(fields: &dyn Texts) -> HeaderCase {
    let mut case = HeaderCase::default();
    for spec in HEADER_FIELDS {
        let text = fields.text(spec.id).or_else(|| fields.text(&[WORKED, spec.id].concat()));
        if let Some(text) = text {
            case.set(spec.id, Some(text.to_owned()));
        }
    }
    case
}
