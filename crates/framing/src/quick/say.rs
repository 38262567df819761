//! What all quick checks say alike.

use measure::{Denominator, Force, Length, Rounding};
use members::check::{Check, Verdict};
use members::limit::Limit;

use super::reply::{FactReply, QuickReply, RuleReply};
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words::{self, figure};

/// The cautions of every check.
pub(crate) fn cautions(about: &mut About<'_>) {
    about.caution("The engineer's drawing wins. Where it differs from this, follow it and ask.");
    about.caution("Local code and the building official decide. This is a check, not an approval.");
}

pub(crate) fn fact(name: &str, what: impl Into<String>, value: f64, written: impl Into<String>) -> FactReply {
    FactReply { name: name.to_owned(), what: what.into(), value, written: written.into() }
}

pub(crate) fn length_fact(name: &str, what: impl Into<String>, length: Length) -> FactReply {
    fact(name, what, length.inches(), words::length(length))
}

pub(crate) fn force_fact(name: &str, what: impl Into<String>, force: Force) -> FactReply {
    fact(name, what, force.pounds(), pounds(force))
}

/// A force as it is written: whole pounds, away from zero.
pub(crate) fn pounds(force: Force) -> String {
    let whole = if force < Force::ZERO { force.pounds().floor() } else { force.pounds().ceil() };
    format!("{} lb", figure(whole))
}

/// A length rounded down to a sixteenth: the most that is allowed.
pub(crate) fn down(length: Length) -> String {
    words::length(length.rounded(Denominator::Sixteenth, Rounding::Down))
}

/// A length rounded up to a sixteenth: the least that will do.
pub(crate) fn up(length: Length) -> String {
    words::length(length.rounded(Denominator::Sixteenth, Rounding::Up))
}

pub(crate) fn rule(heading: &str, holds: Option<bool>, figure: impl Into<String>, says: Vec<String>) -> RuleReply {
    RuleReply { heading: heading.to_owned(), holds, figure: figure.into(), says }
}

pub(crate) fn check_reply(check: &Check<Limit>) -> CheckReply {
    CheckReply {
        limit: check.limit.words().to_owned(),
        ratio: check.share,
        demand: check.demand,
        capacity: check.capacity,
        unit: check.unit.to_owned(),
        combination: check.combination.name().to_owned(),
    }
}

/// Where it cannot be worked at all.
pub(crate) fn unworked(about: About<'_>, sentence: String) -> QuickReply {
    QuickReply {
        verdict: words::verdict(Verdict::Outside).to_owned(),
        reason: Some(sentence.clone()),
        action: vec![sentence],
        about: about.finish(),
        ..QuickReply::default()
    }
}

/// The same with a capital letter.
pub(crate) fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}
