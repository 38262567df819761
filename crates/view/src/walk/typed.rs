//! What was typed of a look, as it is stored.

use std::collections::BTreeMap;

use framing::walk::{Walked, judge};

use super::kind::Kind;
use crate::model::FieldId;

/// The inputs of a look by their stable names. A name that its kind does not have is passed over, never lost.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typed {
    /// Those that are one text.
    pub texts: BTreeMap<String, String>,
    /// Those that are a list: one text a reading.
    pub lists: BTreeMap<String, Vec<String>>,
}

/// The input in hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct InHand {
    /// Its name.
    pub field: FieldId,
    /// Which reading of a list, from 0; as many as there are for a new one.
    pub reading: usize,
}

impl Typed {
    /// What was typed in an input that is one text; empty when nothing was.
    #[must_use]
    pub fn text(&self, id: &str) -> &str {
        self.texts.get(id).map_or("", |text| text.trim())
    }

    /// Whether something was typed in an input that is one text.
    #[must_use]
    pub fn has(&self, id: &str) -> bool {
        !self.text(id).is_empty()
    }

    /// The readings of a list. Empty ones at its end were not typed.
    #[must_use]
    pub fn list(&self, id: &str) -> &[String] {
        let list = self.lists.get(id).map_or(&[][..], Vec::as_slice);
        let end = list.iter().rposition(|text| !text.trim().is_empty()).map_or(0, |last| last + 1);
        &list[..end]
    }

    /// The same without some inputs.
    pub(super) fn without(&self, left_out: &[&str]) -> Self {
        let mut rest = self.clone();
        rest.texts.retain(|name, _| !left_out.contains(&name.as_str()));
        rest.lists.retain(|name, _| !left_out.contains(&name.as_str()));
        rest
    }

    /// The core's answer.
    pub(super) fn judged(&self, kind: Kind) -> Walked {
        judge(kind.name(), &self.texts, &self.lists).unwrap_or_else(|| Err(Vec::new()))
    }
}
