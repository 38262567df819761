//! Lengths and counts in use, typed or assumed, as numbers for a drawing. They were judged before; nothing is judged here.

use framing::walk::reply::WalkCheck;
use framing::walk::{WalkReply, words};
use lumber::SawnSize;
use measure::{Force, LengthUnit, read_length, read_number};

use crate::walk::fields::Said;
use crate::walk::typed::Typed;

/// What was typed and what the core said of it.
#[derive(Clone, Copy)]
pub(super) struct Values<'a> {
    pub(super) typed: &'a Typed,
    pub(super) reply: &'a WalkReply,
}

impl<'a> Values<'a> {
    /// The text of an input, or what was assumed for it.
    pub(super) fn text(self, id: &str) -> &'a str {
        let said = Said { assumed: &self.reply.assumed, refused: &[] };
        let typed = self.typed.text(id);
        if typed.is_empty() { said.assumed(id).unwrap_or_default() } else { typed }
    }

    /// A length, inches.
    pub(super) fn length(self, id: &str) -> Option<f64> {
        inches(self.text(id))
    }

    /// The lengths of a list, inches; none where one is not a length.
    pub(super) fn lengths(self, id: &str) -> Vec<Option<f64>> {
        self.typed.list(id).iter().map(|text| inches(text)).collect()
    }

    pub(super) fn count(self, id: &str) -> Option<u32> {
        read_number(self.text(id), &[]).ok().map(|number| number as u32)
    }

    /// A force as it is written; none for another text.
    pub(super) fn pounds(self, id: &str) -> Option<String> {
        let pounds = read_number(self.text(id), &["lb", "lbs", "pounds"]).ok()?;
        Some(words::force(Force::from_pounds(pounds)))
    }

    /// Dressed thickness and depth of a nominal size, inches.
    pub(super) fn size(self, id: &str) -> Option<(f64, f64)> {
        // What is assumed says more than the size: `2x4, 3-1/2"`.
        let name = self.text(id).split(',').next().unwrap_or_default();
        let size = SawnSize::from_text(name).ok()?;
        Some((size.breadth().inches(), size.depth().inches()))
    }

    /// The reading of a list for one of several bolts. Only their diameter is read once for all.
    pub(super) fn of(self, id: &str, index: usize) -> &'a str {
        let list = self.typed.list(id);
        let for_all = id == "diameters" && list.len() == 1;
        list.get(if for_all { 0 } else { index }).map_or("", |text| text.trim())
    }

    pub(super) fn check(self, subject: &str) -> Option<&'a WalkCheck> {
        self.reply.checks.iter().find(|check| check.subject == subject)
    }
}

/// A length in inches; none for another text.
pub(super) fn inches(text: &str) -> Option<f64> {
    read_length(text, LengthUnit::Inches).ok().map(|read| read.length.inches())
}

/// The length of a limit as it is written: `at most 1-9/16" (1.6 in)`.
pub(super) fn limit(check: &WalkCheck) -> Option<f64> {
    written(check.limit.trim_start_matches("at most ").trim_start_matches("at least "))
}

/// A length as the core writes it, perhaps with its exact value behind it: `1-9/16" (1.6 in)`.
pub(super) fn written(text: &str) -> Option<f64> {
    inches(text.split(" (").next().unwrap_or(text))
}
