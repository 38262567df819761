//! The answer of a member, and its bars.

use framing::bracing::{
    BRACES, BRACES_NOTHING, CARRIED_AS_DRAWN, FASTENER_TOO_SHORT, HOLD_DOWN_TOO_WEAK, NOT_ENOUGH, ON_THE_HARDEST_LINE,
    ONLY_IF, POST_TOO_SMALL, SPLITS, STILL_TO_SAY, TIES_ON_THE_WRONG_SIDE, TO_ASK_ABOUT, TOO_SHORT, WILL_DO,
    WILL_DO_AT_NUMBER, WILL_DO_AT_SPACING, WRONG_METAL,
};
use framing::quick::NOT_ALLOWED;
use framing::quick::reply::{QuickReply, TriedReply};
use framing::words::{figure, percent};
use members::check::Verdict;

use crate::model::{Answer, Bar, State};

/// The state that a verdict in words stands for.
pub(super) fn state_of(verdict: &str) -> State {
    let all = [
        (Verdict::Carries, State::Carries),
        (Verdict::AtLimit, State::AtLimit),
        (Verdict::TooSmall, State::Short),
        (Verdict::Outside, State::Outside),
    ];
    let found = all.into_iter().find(|(of, _)| framing::words::verdict(*of) == verdict);
    match verdict {
        NOT_ALLOWED
        | NOT_ENOUGH
        | HOLD_DOWN_TOO_WEAK
        | POST_TOO_SMALL
        | BRACES_NOTHING
        | FASTENER_TOO_SHORT
        | TIES_ON_THE_WRONG_SIDE
        | TOO_SHORT
        | SPLITS
        | TO_ASK_ABOUT
        | WRONG_METAL
        | "does not fit"
        | "not allowed" => State::Short,
        "allowed" | BRACES | CARRIED_AS_DRAWN | WILL_DO | WILL_DO_AT_NUMBER | WILL_DO_AT_SPACING => State::Carries,
        STILL_TO_SAY => State::NotKnown,
        _ if ONLY_IF.contains(&verdict) => State::Outside,
        ON_THE_HARDEST_LINE => State::Told,
        _ => found.map_or(State::Told, |(_, state)| state),
    }
}

pub(super) fn answer(reply: &QuickReply) -> Answer {
    let share_text = match (reply.ratio, &reply.governs) {
        (Some(ratio), Some(governs)) => format!("{}, {governs}", percent(ratio)),
        _ => first_fact(reply),
    };
    Answer {
        state: state_of(&reply.verdict),
        figure: if reply.size.is_empty() { "Not worked".to_owned() } else { reply.size.clone() },
        word: reply.verdict.clone(),
        share: reply.ratio,
        share_text,
        action: reply.action.clone(),
    }
}

fn first_fact(reply: &QuickReply) -> String {
    reply.facts.first().map_or_else(String::new, |fact| format!("{}: {}", fact.what, fact.written))
}

/// The state of a share.
pub(super) fn state_of_share(share: f64) -> State {
    match Verdict::of(share) {
        Verdict::Carries => State::Carries,
        Verdict::AtLimit => State::AtLimit,
        Verdict::TooSmall => State::Short,
        Verdict::Outside => State::Outside,
    }
}

/// The checks of the judged size, governing first.
pub(super) fn bars(reply: &QuickReply) -> Vec<Bar> {
    let mut bars: Vec<Bar> = reply
        .checks
        .iter()
        .map(|check| Bar {
            label: capital(&check.limit),
            share: check.ratio,
            percent: percent(check.ratio),
            detail: detail(check),
            state: state_of_share(check.ratio),
            governs: reply.governs.as_deref() == Some(check.limit.as_str()),
        })
        .collect();
    bars.sort_by(|a, b| b.share.total_cmp(&a.share));
    bars
}

fn detail(check: &framing::reply::CheckReply) -> String {
    if check.unit.is_empty() {
        return check.combination.clone();
    }
    format!("{} of {} {}, {}", figure(check.demand), figure(check.capacity), check.unit, check.combination)
}

/// What a size that was tried is told by.
pub(super) fn note(tried: &TriedReply) -> String {
    if let Some(reason) = &tried.reason {
        return reason.clone();
    }
    match (tried.ratio, &tried.governs) {
        (Some(ratio), Some(governs)) => format!("{}, {governs}", percent(ratio)),
        _ => String::new(),
    }
}

pub(crate) fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}
