//! A check's own values among the job's: each kind keeps what was typed for it under its name.

use core::marker::PhantomData;

use framing::{HeaderCase, Texts};

use super::{Fields, Shown};
use crate::model::FieldId;

/// Under this stands the kind of a chapter that was looked at last.
#[must_use]
pub fn kind_key<K: Shown>() -> String {
    format!("{}/kind", K::CHAPTER)
}

/// The kind that was looked at last.
#[must_use]
pub fn kind<K: Shown>(fields: &Fields) -> K {
    fields.get(&kind_key::<K>()).and_then(|id| K::of(id)).unwrap_or(K::ALL[0])
}

/// Where a value of an input is kept: under the kind, or with the job where it is the job's.
#[must_use]
pub fn own_key<K: Shown>(kind: K, field: &str) -> String {
    if K::SHARED.contains(&field) {
        format!("{}/{field}", K::CHAPTER)
    } else if K::is_own(field) {
        format!("{}/{}/{field}", K::CHAPTER, kind.id())
    } else {
        field.to_owned()
    }
}

/// Writes a value; none, or an empty one, clears it. What checks start from is worked out anew.
pub fn write<K: Shown>(fields: &mut Fields, kind: K, field: FieldId, text: Option<String>, now: &str) {
    if K::is_own(field) {
        match text.filter(|text| !text.is_empty()) {
            Some(text) => fields.insert(own_key(kind, field), text),
            None => fields.remove(&own_key(kind, field)),
        };
    } else {
        crate::site::write(fields, field, text, now);
    }
}

/// What was typed for this check alone.
pub(super) struct Own<'f, K> {
    pub(super) kind: K,
    pub(super) fields: &'f Fields,
}

impl<K: Shown> Texts for Own<'_, K> {
    fn text(&self, field: &str) -> Option<&str> {
        if !K::is_own(field) {
            return None;
        }
        self.fields.get(&own_key(self.kind, field)).map(String::as_str)
    }
}

/// What the job has: typed, or worked out by Site.
pub(super) struct Job<'f, K> {
    pub(super) chapter: PhantomData<K>,
    pub(super) fields: &'f Fields,
    pub(super) starts: &'f HeaderCase,
}

impl<K: Shown> Texts for Job<'_, K> {
    fn text(&self, field: &str) -> Option<&str> {
        if K::is_own(field) {
            return None;
        }
        self.starts.text(field).or_else(|| self.fields.get(field).map(String::as_str))
    }
}
