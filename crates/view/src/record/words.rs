//! Stable names in words.

use crate::model::State;
use crate::walk::Kind;

/// How bad it is in the eyes of whoever looked: the stable name, and its words.
pub const SEVERITIES: [(&str, &str); 3] =
    [("stop", "stop work here"), ("before_cover", "must be right before it is covered"), ("note", "noted only")];

/// Closing words that a signer may choose: the stable name, and its words. None is chosen beforehand.
pub const CLOSINGS: [(&str, &str); 3] = [
    ("in_general_conformance", "in general conformance"),
    ("is_in_conformance", "is in conformance"),
    ("observations_only", "what was seen and what was not, and no more"),
];

fn words<'a>(names: &[(&'static str, &'static str)], name: &'a str) -> &'a str {
    names.iter().find(|(stable, _)| *stable == name).map_or(name, |(_, words)| words)
}

/// What was looked at in words, by its stable name; a name that is not known stands as it is.
#[must_use]
pub fn kind_words(kind: &str) -> &str {
    Kind::at(kind).map_or(kind, |kind| kind.word())
}

/// How bad it is in words, by its stable name; empty where nothing was said.
#[must_use]
pub fn severity_words(severity: &str) -> &str {
    words(&SEVERITIES, severity)
}

/// Closing words by their stable name; a name that is not known stands as it is.
#[must_use]
pub fn closing_words(closing: &str) -> &str {
    words(&CLOSINGS, closing)
}

/// The severities' order, the worst first; what was not said comes last.
pub(super) fn severity_rank(severity: &str) -> usize {
    SEVERITIES.iter().position(|(stable, _)| *stable == severity).unwrap_or(SEVERITIES.len())
}

/// The state of a verdict, which is kept in words: `out`. A verdict that is not known is not passed.
#[must_use]
pub fn state_of(verdict: &str) -> State {
    match verdict {
        "within" => State::Carries,
        "at the limit" => State::AtLimit,
        "out" => State::Short,
        "not for this tool to decide" => State::Outside,
        _ => State::NotKnown,
    }
}

/// The worse of two states, as the core orders its verdicts.
pub(super) fn worse(one: State, other: State) -> State {
    const ORDER: [State; 5] = [State::Carries, State::AtLimit, State::NotKnown, State::Outside, State::Short];
    let rank = |state: State| ORDER.iter().position(|at| *at == state).unwrap_or(0);
    if rank(other) > rank(one) { other } else { one }
}

/// A phone's own time as it is shown: `2026-05-04 10:42`. A text in another form stands as it is.
#[must_use]
pub fn when(at: &str) -> String {
    match (at.get(..10), at.get(10..11), at.get(11..16)) {
        (Some(date), Some("T"), Some(time)) => format!("{date} {time}"),
        _ => at.to_owned(),
    }
}

/// When and who, as far as it is known: `2026-05-04 10:42, A. Framer`.
pub(super) fn when_and_who(at: &str, by: &str) -> String {
    let by = by.trim();
    let parts = [when(at), by.to_owned()];
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<String>>().join(", ")
}

/// A count of a thing: `1 look`, `2 looks`.
pub(super) fn counted(count: usize, one: &str, several: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { several })
}

/// A text as a sentence: with its stop.
pub(super) fn sentence(text: &str) -> String {
    let text = text.trim();
    if text.is_empty() || text.ends_with(['.', '?', '!', ':']) { text.to_owned() } else { format!("{text}.") }
}

#[cfg(test)]
mod tests {
    use super::{State, kind_words, state_of, when, worse};

    #[test]
    fn a_time_is_shortened_and_another_text_stands() {
        assert_eq!(when("2026-05-04T10:42:00-05:00"), "2026-05-04 10:42");
        for other in ["", "this morning", "é026-05-0éT10:42", "2026-05-04"] {
            assert_eq!(when(other), other);
        }
    }

    #[test]
    fn a_verdict_that_is_not_known_is_not_passed() {
        assert_eq!(state_of("fine"), State::NotKnown);
        assert_eq!(worse(State::Carries, state_of("")), State::NotKnown);
        assert_eq!(worse(State::Short, State::Outside), State::Short);
        assert_eq!(kind_words("roof"), "roof");
    }
}
