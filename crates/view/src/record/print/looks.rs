//! One thing that was looked at: every look with its checks, the first one kept, and what became of what was found.

use framing::walk::reply::WalkCheck;
use job::walk::{Entry, Look, LookEntry, Point, Step};
use maud::{Markup, html};

use super::super::judged::{Judged, Judgements, as_typed, changes, origin, published};
use super::super::point::{look_words, step_words};
use super::super::words::{kind_words, sentence, severity_words, state_of, when_and_who};
use super::cover::changed_lines;
use super::{crossed, struck_why};
use crate::markup::{beam, state_class};

pub(super) fn point(judgements: &Judgements<'_>, point: &Point) -> Markup {
    html! {
        @for (number, look) in point.looks.iter().enumerate() {
            @if let Some(again) = judgements.look(look) {
                (one_look(look, again, before(&point.looks[..number], look), point.now() == Some(look)))
            }
        }
        @if !point.follow_ups.is_empty() {
            tbody.follow-ups { tr { td colspan="7" {
                @for entry in &point.follow_ups { (follow_up(entry)) }
            } } }
        }
    }
}

/// The look that this one comes after.
fn before<'a>(earlier: &'a [LookEntry], look: &LookEntry) -> Option<&'a Look> {
    let follows = look.what.follows.as_ref()?;
    earlier.iter().find(|entry| entry.id == follows.look).map(|entry| entry.what.as_ref())
}

fn one_look(entry: &LookEntry, again: &Judged, before: Option<&Look>, counts: bool) -> Markup {
    let struck = entry.struck.is_some();
    html! {
        tbody class={ "look" @if struck { " struck" } } {
            (head(entry, counts))
            @for check in &again.reply.checks { (row(check, &entry.what, struck)) }
            tr.look-notes { td colspan="7" { (notes(entry, again, before, counts)) } }
        }
    }
}

fn head(entry: &LookEntry, counts: bool) -> Markup {
    let look = &entry.what;
    let name = [kind_words(&look.kind), look.place.trim()];
    let name = name.into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ");
    html! {
        tr class={ "look-head " (state_class(state_of(&look.verdict))) } {
            th scope="rowgroup" colspan="7" {
                (beam(state_of(&look.verdict)))
                (crossed(entry.struck.is_some(), &format!("{name}: {}", look.verdict)))
                " "
                span.note { (look_words(look)) ", " (when_and_who(&entry.at, &entry.by)) }
                @if !counts && entry.struck.is_none() { span.note { "; a later look counts" } }
            }
        }
    }
}

fn row(check: &WalkCheck, look: &Look, struck: bool) -> Markup {
    let place = check.at.as_deref().unwrap_or_else(|| look.place.trim());
    html! {
        tr class={ "check " (state_class(state_of(&check.verdict))) } {
            td { (crossed(struck, &check.subject)) }
            td { (crossed(struck, place)) }
            td { (crossed(struck, &check.limit)) br; span.note { (origin(&check.clause)) } }
            td { (crossed(struck, &check.found)) }
            td { (crossed(struck, &check.verdict)) }
            td { (crossed(struck, &check.margin)) }
            td { (published(&check.clause)) }
        }
    }
}

/// What stands below a look's checks, in the order in which it is read. What can be done stands with the look that
/// counts.
fn notes(entry: &LookEntry, again: &Judged, before: Option<&Look>, counts: bool) -> Markup {
    let (look, struck) = (&entry.what, entry.struck.is_some());
    let why = look.follows.as_ref().map_or("", |follows| follows.why.trim());
    html! {
        (struck_why(entry.struck.as_ref()))
        @if !look.says.trim().is_empty() { p.says { (crossed(struck, &sentence(&look.says))) } }
        @if !look.severity.is_empty() {
            p { "Severity: " (crossed(struck, &sentence(severity_words(&look.severity)))) }
        }
        @if let Some(differs) = &again.differs { p.differs { (differs) } }
        @if let Some(before) = before { (changed_lines(&differences(before, look), struck)) }
        @if !why.is_empty() { p { "Why: " (sentence(why)) } }
        @if !look.note.trim().is_empty() { p { "Note: " (sentence(&look.note)) } }
        @for left in &again.reply.left_to { p { (left.subject) ": the " (left.who) " decides." } }
        @for unseen in &again.reply.not_seen { p { "Not seen: " (sentence(unseen)) } }
        @for remedy in again.reply.remedies.iter().filter(|_| counts) {
            p.remedy {
                "Can be done: " (sentence(&remedy.what))
                @if !remedy.who_says_yes.is_empty() { " Who must say yes: " (remedy.who_says_yes.join(", ")) "." }
            }
        }
        (typed(look))
    }
}

/// Every reading as it was typed.
fn typed(look: &Look) -> Markup {
    let inputs = as_typed(look);
    html! {
        @if !inputs.is_empty() {
            p.as-typed {
                "As typed: "
                @for (number, (name, text)) in inputs.iter().enumerate() {
                    @if number > 0 { ", " }
                    (name) " “" (text) "”"
                }
                "."
            }
        }
    }
}

/// What is not the same in two looks, their answers among it.
fn differences(before: &Look, look: &Look) -> Vec<(String, String, String)> {
    let all = |look: &Look| {
        let own = [("verdict", &look.verdict), ("place", &look.place), ("note", &look.note)];
        let own = own.into_iter().map(|(name, text)| (name.to_owned(), text.trim().to_owned()));
        own.chain(as_typed(look)).collect::<Vec<(String, String)>>()
    };
    changes(&all(before), &all(look))
}

fn follow_up(entry: &Entry<(Step, String)>) -> Markup {
    let (step, says) = &entry.what;
    let says = format!("{}, {}: {}", step_words(*step), when_and_who(&entry.at, &entry.by), sentence(says));
    html! {
        p.follow-up { (crossed(entry.struck.is_some(), &says)) }
        (struck_why(entry.struck.as_ref()))
    }
}
