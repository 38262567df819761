//! The answer of a look, largest on its screen.

use framing::walk::{Verdict, WalkReply, could_not_be_seen, words};

use super::kind::Kind;
use super::typed::Typed;
use crate::model::{Answer, State};

/// The state of a verdict.
pub(super) const fn state(verdict: Verdict) -> State {
    match verdict {
        Verdict::Within => State::Carries,
        Verdict::AtLimit => State::AtLimit,
        Verdict::NotSeen => State::NotKnown,
        Verdict::NotDecided => State::Outside,
        Verdict::Out => State::Short,
    }
}

/// The state of a verdict in the core's words.
pub(super) fn state_of(verdict: &str) -> State {
    words::verdict_of(verdict).map_or(State::NotKnown, state)
}

/// What is still to be measured is no answer yet; what was hidden is one.
const STILL_TO_MEASURE: &str = "still to be measured";
const ASKED_ABOUT: &str = "a reading is asked about";
const HIDDEN: &str = "could not be seen";

/// The answer of a look that was judged.
pub(super) fn answer(kind: Kind, typed: &Typed, reply: &WalkReply) -> Answer {
    let state = state_of(&reply.verdict);
    let foremost = reply.foremost.as_ref();
    let figure = foremost.map(|first| first.found.as_str()).filter(|found| !found.is_empty());
    Answer {
        state,
        figure: figure.map_or_else(|| subject(kind, reply), str::to_owned),
        word: word(typed, reply, state),
        share: foremost.and_then(|first| first.share).filter(|_| state != State::NotKnown),
        share_text: reply.by_how_much.clone().unwrap_or_default(),
        action: action(reply),
    }
}

/// What stands in the figure's place where no number says it.
fn subject(kind: Kind, reply: &WalkReply) -> String {
    reply.foremost.as_ref().map_or_else(|| kind.word().to_owned(), |first| first.subject.clone())
}

fn word(typed: &Typed, reply: &WalkReply, state: State) -> String {
    match (state, &reply.foremost) {
        (State::NotKnown, _) if reply.questions.iter().any(|question| question.which.is_some()) => ASKED_ABOUT,
        (State::NotKnown, _) if is_hidden(typed) => HIDDEN,
        (State::NotKnown, _) => STILL_TO_MEASURE,
        (State::Short, Some(first)) => &first.word,
        _ => &reply.verdict,
    }
    .to_owned()
}

fn is_hidden(typed: &Typed) -> bool {
    let hidden = |text: &str| could_not_be_seen(text) || text.contains(HIDDEN);
    typed.texts.values().chain(typed.lists.values().flatten()).any(|text| hidden(text))
}

/// What to do, each with those who must say yes.
fn action(reply: &WalkReply) -> Vec<String> {
    let remedies = reply.remedies.iter().map(|remedy| with_who(&remedy.what, &remedy.who_says_yes));
    let left = reply.left_to.iter().map(|left| format!("{}: the {} decides.", left.subject, left.who));
    remedies.chain(left).collect()
}

/// A remedy with those who must say yes; the crew may do its own work without asking.
pub(super) fn with_who(what: &str, who: &[String]) -> String {
    const CREW: &str = "crew";
    let others: Vec<&str> = who.iter().map(String::as_str).filter(|who| *who != CREW).collect();
    match others[..] {
        [] => what.to_owned(),
        _ => format!("{what} First the {} must say yes.", others.join(" and the ")),
    }
}

/// Before anything could be answered.
pub(super) fn nothing_yet(kind: Kind) -> Answer {
    Answer {
        state: State::NotKnown,
        figure: kind.word().to_owned(),
        word: STILL_TO_MEASURE.to_owned(),
        share: None,
        share_text: String::new(),
        action: vec!["Mend what is marked below.".to_owned()],
    }
}

/// The answer in one line, as it is stored with the look.
pub(super) fn summary(answer: &Answer) -> String {
    let Answer { figure, word, share_text, .. } = answer;
    let end = if share_text.is_empty() { String::new() } else { format!(". {share_text}") };
    format!("{figure}: {word}{end}.")
}
