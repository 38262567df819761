//! The screens of a walk: what was looked at, as typed, becomes what is shown.
//!
//! Where to look: [`look`] is the whole of a look's screen; [`Typed`] is what is stored of it, [`InHand`] the input that
//! is being filled. [`write_reading`] and [`confirm_pull`] change its readings. `kinds` has the inputs of each
//! kind as data, `picture` its drawings. [`mark`] is what is typed once
//! from the drawing and goes with every look at that mark.
//!
//! *Invariant*: nothing is judged here and nothing typed is changed. While a reading is refused the last good answer
//! stays, marked as not current, and what would be stored says that nothing was judged.

mod again;
mod answer;
mod fields;
mod kind;
mod kinds;
pub mod mark;
mod picture;
mod readings;
mod ready;
mod screen;
mod spec;
mod stored;
mod typed;
mod typing;

use framing::reply::Refusal;
use framing::walk::reply::{Clause, WalkCheck, WalkQuestion, WalkReply};
use framing::walk::words;

pub use again::{example, not_seen, to_measure_again};
pub use kind::Kind;
pub use mark::{mark_fields, packs_of, required_of};
pub use ready::{Ready, ReadyKeys};
pub use screen::{ListShown, LookScreen, ReadingShown, WalkCheckShown};
pub use typed::{InHand, Typed};
pub use typing::{confirm_pull, write_reading};

use crate::model::{FieldId, State};
use fields::Said;

/// What the screen of a look shows for what was typed.
///
/// When a reading is refused the answer of the screen before stays, marked as not current; inputs, readings and
/// questions are always those of now.
#[must_use]
pub fn look(kind: Kind, typed: &Typed, hand: InHand, before: Option<&LookScreen>) -> LookScreen {
    match typed.judged(kind) {
        Ok(reply) => inputs(kind, typed, hand, &reply, &[], answered(kind, typed, hand, &reply)),
        Err(refused) => {
            let readable = without_refused(kind, typed, &refused);
            let kept = before.cloned().unwrap_or_else(|| nothing_yet(kind));
            inputs(kind, typed, hand, &readable, &refused, not_judged(kept, &refused))
        }
    }
}

/// The answer to what can be read: what is assumed and asked beside the refused inputs.
fn without_refused(kind: Kind, typed: &Typed, refused: &[Refusal]) -> WalkReply {
    let mut left_out: Vec<&str> = refused.iter().map(|refusal| refusal.field.as_str()).collect();
    // Leaving one out may make another one wrong: a reading for a bolt that has no place.
    for _ in 0..kind.specs().len() {
        match typed.without(&left_out).judged(kind) {
            Ok(reply) => {
                let answers = |input: Option<&str>| input.is_some_and(|input| left_out.contains(&input));
                let questions = reply.questions.into_iter().filter(|question| !answers(question.input.as_deref()));
                let assumed = reply.assumed.into_iter().filter(|assumed| !answers(assumed.input.as_deref()));
                return WalkReply {
                    questions: questions.collect(),
                    assumed: assumed.collect(),
                    ..WalkReply::default()
                };
            }
            Err(more) => {
                let fields = kind.specs().iter().map(|spec| spec.id);
                left_out.extend(fields.filter(|field| more.iter().any(|refusal| refusal.field == *field)));
            }
        }
    }
    WalkReply::default()
}

/// Inputs, readings and questions, which are always those of now.
fn inputs(
    kind: Kind,
    typed: &Typed,
    hand: InHand,
    reply: &WalkReply,
    refused: &[Refusal],
    screen: LookScreen,
) -> LookScreen {
    let said = Said { assumed: &reply.assumed, refused };
    let offered = offered(kind, typed, hand);
    let mut fields = fields::fields(kind.specs(), typed, hand, &said);
    // The tape of a new reading lies where the reading is offered.
    let new =
        fields.iter_mut().find(|field| field.id == hand.field && field.number.is_none() && kind.is_list(field.id));
    if let Some(field) = new {
        field.number = offered.map(|length| length.inches());
    }
    LookScreen {
        fields,
        readings: readings::readings(kind.specs(), typed, hand, &said, &reply.questions),
        offered: offered.map(words::length),
        ready: ready::ready(kind, typed, hand),
        questions: questions(kind, refused, &reply.questions),
        assumptions: reply.assumed.iter().map(|one| (field_id(kind, one.input.as_deref()), one.says.clone())).collect(),
        ..screen
    }
}

/// Where the next stud stands on its mark, while pulls are in hand.
fn offered(kind: Kind, typed: &Typed, hand: InHand) -> Option<measure::Length> {
    if kind != Kind::StudSpacing || hand.field != "pulls" {
        return None;
    }
    let case = framing::walk::stud_spacing::StudSpacingCase::of((&typed.texts, &typed.lists));
    framing::walk::stud_spacing::next_on_layout(&case)
}

/// The stable name of an input, as the screen holds it.
fn field_id(kind: Kind, input: Option<&str>) -> Option<FieldId> {
    kind.specs().iter().map(|spec| spec.id).find(|id| Some(*id) == input)
}

/// What was refused first, then what is asked.
fn questions(kind: Kind, refused: &[Refusal], asked: &[WalkQuestion]) -> Vec<(FieldId, Option<usize>, String)> {
    let refused = refused.iter().filter_map(|refusal| {
        let (which, problem) = framing::walk::which_reading(&refusal.problem);
        Some((field_id(kind, Some(&refusal.field))?, which.map(|number| number - 1), problem.to_owned()))
    });
    let asked = asked.iter().filter_map(|question| {
        let which = question.which.map(|number| number - 1);
        Some((field_id(kind, question.input.as_deref())?, which, question.asks.clone()))
    });
    refused.chain(asked).collect()
}

fn answered(kind: Kind, typed: &Typed, hand: InHand, reply: &WalkReply) -> LookScreen {
    let answer = answer::answer(kind, typed, reply);
    LookScreen {
        summary: answer::summary(&answer),
        answer,
        current: true,
        picture: picture::picture(kind, typed, hand, reply),
        checks: checks(&reply.checks),
        says: reply.says.clone(),
        remedies: reply.remedies.iter().map(|one| (one.what.clone(), one.who_says_yes.clone())).collect(),
        facts: reply
            .facts
            .iter()
            .map(|fact| (fact.what.clone(), fact.value.clone(), fact.clause.as_ref().map_or_else(String::new, clause)))
            .collect(),
        not_seen: reply.not_seen.clone(),
        left_to: reply.left_to.iter().map(|left| (left.subject.clone(), left.who.clone())).collect(),
        cautions: reply.cautions.clone(),
        verdict: reply.verdict.clone(),
        ..nothing_yet(kind)
    }
}

/// The value of a fact by its name.
fn fact<'a>(reply: &'a WalkReply, what: &str) -> Option<&'a str> {
    reply.facts.iter().find(|fact| fact.what == what).map(|fact| fact.value.as_str())
}

/// Those that are out first, each group in its order.
fn checks(checks: &[WalkCheck]) -> Vec<WalkCheckShown> {
    let all: Vec<WalkCheckShown> = checks.iter().map(check).collect();
    let (out, others): (Vec<_>, Vec<_>) = all.into_iter().partition(|check| check.state == State::Short);
    out.into_iter().chain(others).collect()
}

fn check(check: &WalkCheck) -> WalkCheckShown {
    WalkCheckShown {
        subject: check.subject.clone(),
        at: check.at.clone(),
        found: check.found.clone(),
        limit: check.limit.clone(),
        margin: check.margin.clone(),
        state: answer::state_of(&check.verdict),
        word: check.verdict.clone(),
        clause: clause(&check.clause),
    }
}

fn clause(clause: &Clause) -> String {
    if clause.status.is_empty() { clause.source.clone() } else { format!("{}, {}", clause.source, clause.status) }
}

/// The last good answer, while something is refused: it is not stored as the answer to what is typed now.
fn not_judged(kept: LookScreen, refused: &[Refusal]) -> LookScreen {
    let problems: Vec<&str> = refused.iter().map(|refusal| refusal.problem.as_str()).collect();
    LookScreen {
        current: false,
        verdict: words::verdict(framing::walk::Verdict::NotSeen).to_owned(),
        summary: format!("Not judged. {}", problems.join(" ")),
        ..kept
    }
}

/// Before anything could be answered.
#[must_use]
pub fn nothing_yet(kind: Kind) -> LookScreen {
    LookScreen {
        answer: answer::nothing_yet(kind),
        current: false,
        picture: picture::empty(),
        fields: Vec::new(),
        readings: Vec::new(),
        offered: None,
        ready: ReadyKeys::default(),
        questions: Vec::new(),
        checks: Vec::new(),
        says: Vec::new(),
        remedies: Vec::new(),
        facts: Vec::new(),
        not_seen: Vec::new(),
        left_to: Vec::new(),
        assumptions: Vec::new(),
        cautions: Vec::new(),
        verdict: String::new(),
        summary: String::new(),
    }
}
