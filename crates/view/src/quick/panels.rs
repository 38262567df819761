//! What the code's own rules say, what was drawn where it was found otherwise, and the sizes that were tried.

use framing::quick::reply::{AsFoundReply, QuickReply, RuleReply};
use framing::words::percent;

use super::answer::{note, state_of};
use crate::model::{Candidate, Family, Panel, State};

pub(super) fn panels(reply: &QuickReply) -> Vec<Panel> {
    let needs = reply.needs.iter().map(|needed| told(needed, needed.heading.clone()));
    reply.as_found.iter().map(as_found).chain(needs).chain(reply.by_code.iter().map(rule)).collect()
}

fn rule(rule: &RuleReply) -> Panel {
    told(rule, format!("By the code: {}", uncapital(&rule.heading)))
}

fn told(rule: &RuleReply, heading: String) -> Panel {
    Panel {
        heading,
        state: match rule.holds {
            Some(true) => State::Carries,
            Some(false) => State::Short,
            None => State::Told,
        },
        figure: rule.figure.clone(),
        lines: rule.says.clone(),
    }
}

fn uncapital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_lowercase();
    }
    text
}

fn as_found(found: &AsFoundReply) -> Panel {
    let share = found.ratio.map_or_else(String::new, |ratio| format!(", {}", percent(ratio)));
    let mut lines =
        vec![format!("The answer above is for what was found. As drawn, {} {}{share}.", found.drawn, found.verdict)];
    lines.extend(found.says.iter().cloned());
    Panel { heading: "As drawn".to_owned(), state: state_of(&found.verdict), figure: found.drawn.clone(), lines }
}

/// The sizes that were tried, by family, in the order in which they were tried.
pub(super) fn families(reply: &QuickReply) -> Vec<Family> {
    let mut families: Vec<Family> = Vec::new();
    for tried in &reply.sizes {
        let candidate = Candidate {
            value: tried.size.clone(),
            name: tried.size.clone(),
            state: state_of(&tried.verdict),
            note: note(tried),
            share: tried.ratio,
            chosen: tried.size == reply.size,
            smallest: reply.smallest.contains(&tried.size),
        };
        match families.iter_mut().find(|family| family.name == tried.family) {
            Some(family) => family.sizes.push(candidate),
            None => families.push(Family { name: tried.family.clone(), sizes: vec![candidate] }),
        }
    }
    families
}
