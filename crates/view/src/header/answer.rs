//! The answer itself, and the share of each limit.

use framing::words;
use members::header::{Check, HeaderAnswer, Tried, Verdict};
use members::working::figure;

use crate::model::{Answer, Bar, State};

/// The answer: the verdict on the judged size.
pub(super) fn answer(found: &HeaderAnswer) -> Answer {
    let judged = &found.tried[found.judged];
    let governing = judged.governing();
    Answer {
        state: state(judged),
        figure: judged.member.name(),
        word: words::verdict_on(judged).to_owned(),
        share: governing.map(|check| check.share),
        share_text: governing.map(share_text).unwrap_or_default(),
        action: words::action(found),
    }
}

fn share_text(check: &Check) -> String {
    format!("{}, {}", words::percent(check.share), check.limit.words())
}

/// The state of a size; one that carries but does not fit counts as short.
pub(super) fn state(tried: &Tried) -> State {
    match tried.verdict() {
        Verdict::Outside => State::Outside,
        Verdict::TooSmall => State::Short,
        _ if tried.misfit.is_some() => State::Short,
        Verdict::AtLimit => State::AtLimit,
        Verdict::Carries => State::Carries,
    }
}

/// The state of a share of capacity.
pub(super) fn state_of(verdict: Verdict) -> State {
    match verdict {
        Verdict::Carries => State::Carries,
        Verdict::AtLimit => State::AtLimit,
        Verdict::TooSmall => State::Short,
        Verdict::Outside => State::Outside,
    }
}

/// The limits of the judged size, the one that governs first.
pub(super) fn bars(found: &HeaderAnswer) -> Vec<Bar> {
    let judged = &found.tried[found.judged];
    let governing = judged.governing().map(|check| check.limit);
    let checks = in_order(judged.checks.iter(), |check| -check.share);
    checks.into_iter().map(|check| bar(check, governing == Some(check.limit))).collect()
}

/// Puts a short list in the order of a number. The general sort would weigh more in the app than what it sorts.
pub(super) fn in_order<T>(items: impl Iterator<Item = T>, number: impl Fn(&T) -> f64) -> Vec<T> {
    let mut ordered: Vec<T> = Vec::new();
    for item in items {
        let place = ordered.partition_point(|before| number(before) <= number(&item));
        ordered.insert(place, item);
    }
    ordered
}

fn bar(check: &Check, governs: bool) -> Bar {
    Bar {
        label: words::limit_heading(check.limit),
        share: check.share,
        percent: words::percent(check.share),
        detail: detail(check),
        state: state_of(Verdict::of(check.share)),
        governs,
    }
}

fn detail(check: &Check) -> String {
    let combination = check.combination.name();
    if check.unit.is_empty() {
        format!("under {combination}")
    } else {
        format!("{} of {} {}, under {combination}", figure(check.demand), figure(check.capacity), check.unit)
    }
}
