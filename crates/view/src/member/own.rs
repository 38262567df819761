//! A member's own values among the job's: each kind keeps what was typed for it under its name.

use framing::member::{MemberKind, is_own};
use framing::{HeaderCase, Texts};

use super::Fields;
use crate::model::FieldId;

/// Under this stands the kind that was looked at last.
pub const KIND: &str = "member/kind";

/// The kind that was looked at last.
#[must_use]
pub fn kind(fields: &Fields) -> MemberKind {
    fields.get(KIND).and_then(|id| MemberKind::of(id)).unwrap_or(MemberKind::Joist)
}

/// Where a value of an input is kept: under the kind, or with the job where it is the job's.
#[must_use]
pub fn own_key(kind: MemberKind, field: &str) -> String {
    if is_own(field) { format!("member/{}/{field}", kind.id()) } else { field.to_owned() }
}

/// Writes a value; none, or an empty one, clears it. What checks start from is worked out anew.
pub fn write(fields: &mut Fields, kind: MemberKind, field: FieldId, text: Option<String>, now: &str) {
    if is_own(field) {
        match text.filter(|text| !text.is_empty()) {
            Some(text) => fields.insert(own_key(kind, field), text),
            None => fields.remove(&own_key(kind, field)),
        };
    } else {
        crate::site::write(fields, field, text, now);
    }
}

/// What was typed for this member alone.
pub(super) struct Own<'f> {
    pub(super) kind: MemberKind,
    pub(super) fields: &'f Fields,
}

impl Texts for Own<'_> {
    fn text(&self, field: &str) -> Option<&str> {
        if !is_own(field) {
            return None;
        }
        self.fields.get(&own_key(self.kind, field)).map(String::as_str)
    }
}

/// What the job has: typed, or worked out by Site.
pub(super) struct Job<'f> {
    pub(super) fields: &'f Fields,
    pub(super) starts: &'f HeaderCase,
}

impl Texts for Job<'_> {
    fn text(&self, field: &str) -> Option<&str> {
        if is_own(field) {
            return None;
        }
        self.starts.text(field).or_else(|| self.fields.get(field).map(String::as_str))
    }
}
