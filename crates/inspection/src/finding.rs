//! What a look at one thing brings: its checks, what was not seen, what to ask, and what can be done.

use core::cmp::Ordering;

use measure::Length;

use crate::observed::Seen;
use crate::remedy::{Remedy, Who};
use crate::subject::{Question, Subject};
use crate::verdict::{Check, Verdict};

/// The judgement of one thing that was looked at.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Finding {
    /// What was compared with a limit.
    pub checks: Vec<Check>,
    /// What is not as required and has no measure: a nut that is missing.
    pub wrong: Vec<Subject>,
    /// What could not be seen or was not looked at.
    pub not_seen: Vec<Subject>,
    /// What is not for this tool to decide, and who decides.
    pub left_to: Vec<(Subject, Who)>,
    /// What is to be asked.
    pub questions: Vec<Question>,
    /// What can be done, where something is to be done.
    pub remedies: Vec<Remedy>,
}

impl Finding {
    /// The worst of it. A thing about which nothing was compared was not seen.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        let wrong = self.wrong.iter().map(|_| Verdict::Out);
        let not_seen = self.not_seen.iter().map(|_| Verdict::NotSeen);
        let left = self.left_to.iter().map(|_| Verdict::NotDecided);
        let all = self.checks.iter().map(|check| check.verdict).chain(wrong).chain(not_seen).chain(left);
        Verdict::worst(all).unwrap_or(Verdict::NotSeen)
    }

    /// The check of a subject: where there are several, the one that is worst and by the most.
    #[must_use]
    pub fn check(&self, of: Subject) -> Option<&Check> {
        let worse = |one: &&Check, other: &&Check| {
            let by_margin = other.margin.partial_cmp(&one.margin).unwrap_or(Ordering::Equal);
            one.verdict.cmp(&other.verdict).then(by_margin)
        };
        self.checks.iter().filter(|check| check.of == of).max_by(worse)
    }

    /// Whether a subject was compared and is outside its limit, or is plainly wrong.
    #[must_use]
    pub fn is_out(&self, of: Subject) -> bool {
        self.wrong.contains(&of) || self.check(of).is_some_and(|check| check.verdict == Verdict::Out)
    }

    /// Judges a length that was to be seen; what was not is listed, with the question that would tell it.
    pub(crate) fn length(
        &mut self,
        of: Subject,
        seen: Seen<Length>,
        question: Question,
        judge: impl FnOnce(Length) -> Check,
    ) {
        match seen {
            Seen::Observed(found) => self.checks.push(judge(found)),
            Seen::NotObserved => {
                self.not_seen.push(of);
                self.questions.push(question);
            }
            Seen::CouldNotBeSeen => self.not_seen.push(of),
        }
    }

    /// Adds remedies that are not listed yet.
    pub(crate) fn remedy(&mut self, remedies: &[Remedy]) {
        for remedy in remedies {
            if !self.remedies.contains(remedy) {
                self.remedies.push(*remedy);
            }
        }
    }
}
