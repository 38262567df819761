//! An answer in the making: findings go in one by one, the reply comes out whole.

use core::cmp::Ordering;

use inspection::{Check, Finding, Question, Remedy, Subject, Verdict, Who};

use super::reading::Inputs;
use super::reply::{Clause, Fact, Foremost, LeftTo, WalkCheck, WalkQuestion, WalkRemedy, WalkReply};
use super::{Walked, words};
use crate::reply::Refusal;

/// An answer in the making.
#[derive(Debug, Default)]
pub(super) struct Answer {
    pub(super) reply: WalkReply,
    verdicts: Vec<Verdict>,
    margins: Vec<Margin>,
    /// By how much, where one check says it better than the worst.
    said_best: Option<(String, Foremost)>,
    /// What is plainly wrong, the first of it.
    wrong: Option<Foremost>,
    /// What is named first where nothing is out.
    otherwise: Option<Foremost>,
    /// A figure that says more than a check's own, by the check's subject.
    figures: Vec<(&'static str, String)>,
}

/// How far a check is out of its limit, or has to spare.
#[derive(Debug)]
struct Margin {
    verdict: Verdict,
    share: f64,
    by: String,
    foremost: Foremost,
}

impl Answer {
    /// The inputs that answer a finding's questions.
    pub(super) fn finding(&mut self, finding: &Finding, at: Option<&str>, input_of: fn(Question) -> &'static str) {
        for check in &finding.checks {
            self.check(check, at);
        }
        for subject in &finding.wrong {
            self.verdicts.push(Verdict::Out);
            self.say(words::at_place(words::wrong(*subject), at));
            self.wrong.get_or_insert_with(|| Foremost {
                subject: words::subject(*subject).to_owned(),
                found: String::new(),
                word: words::too(*subject).to_owned(),
                share: None,
            });
        }
        for subject in &finding.not_seen {
            self.not_seen(*subject, at);
        }
        for (subject, who) in &finding.left_to {
            self.leave_to(words::subject(*subject), &[*who]);
        }
        for question in &finding.questions {
            self.ask(words::at_place(words::question(*question), at), input_of(*question));
        }
        for remedy in &finding.remedies {
            self.remedy(remedy);
        }
    }

    /// A value beside its limit.
    pub(super) fn check(&mut self, check: &Check, at: Option<&str>) {
        let said = words::check(check, at);
        self.checked(check, said);
    }

    /// A value beside its limit, in words of its own.
    pub(super) fn checked(&mut self, check: &Check, said: WalkCheck) {
        self.verdicts.push(check.verdict);
        let by = match &said.at {
            Some(at) => format!("{}, {at}: {}", said.subject, said.margin),
            None => format!("{}: {}", said.subject, said.margin),
        };
        let out = check.verdict == Verdict::Out;
        let foremost = Foremost {
            subject: said.subject.clone(),
            found: said.found.clone(),
            word: if out { words::too(check.of) } else { words::verdict(check.verdict) }.to_owned(),
            share: words::share_used(check),
        };
        self.margins.push(Margin { verdict: check.verdict, share: words::share_of_limit(check), by, foremost });
        self.reply.checks.push(said);
    }

    /// By how much, of the check that a framer would name first, and that check.
    pub(super) fn by_how_much(&mut self, by: String, foremost: Foremost) {
        self.said_best = Some((by, foremost));
    }

    /// What is named first where nothing is out, in the words of the verdict.
    pub(super) fn otherwise(&mut self, foremost: Foremost) {
        self.otherwise = Some(foremost);
    }

    /// A figure that says more than the one of the check of that subject.
    pub(super) fn figure(&mut self, subject: Subject, figure: String) {
        self.figures.push((words::subject(subject), figure));
    }

    /// What others decide.
    pub(super) fn leave_to(&mut self, subject: &str, who: &[Who]) {
        self.verdicts.push(Verdict::NotDecided);
        for who in who {
            let left = LeftTo { subject: subject.to_owned(), who: words::who(*who).to_owned() };
            self.reply.left_to.push(left);
        }
    }

    pub(super) fn not_seen(&mut self, subject: Subject, at: Option<&str>) {
        self.verdicts.push(Verdict::NotSeen);
        let says = words::at_place(words::subject(subject), at);
        if !self.reply.not_seen.contains(&says) {
            self.reply.not_seen.push(says);
        }
    }

    /// A verdict that no check carries.
    pub(super) fn verdict(&mut self, verdict: Verdict) {
        self.verdicts.push(verdict);
    }

    pub(super) fn say(&mut self, says: impl Into<String>) {
        self.reply.says.push(says.into());
    }

    /// A question, and the input that answers it. The same one is asked once.
    pub(super) fn ask(&mut self, asks: impl Into<String>, input: &str) {
        let (asks, input) = (asks.into(), Some(input.to_owned()));
        if !self.reply.questions.iter().any(|question| question.asks == asks) {
            self.reply.questions.push(WalkQuestion { asks, input, which: None, typed: None, perhaps: Vec::new() });
        }
    }

    pub(super) fn remedy(&mut self, remedy: &Remedy) {
        self.remedy_by(words::remedy(remedy), remedy.who());
    }

    /// A remedy for which others must say yes.
    pub(super) fn remedy_by(&mut self, what: String, who: &[Who]) {
        let who_says_yes = who.iter().map(|who| words::who(*who).to_owned()).collect();
        let remedy = WalkRemedy { what, who_says_yes };
        if !self.reply.remedies.contains(&remedy) {
            self.reply.remedies.push(remedy);
        }
    }

    pub(super) fn fact(&mut self, what: impl Into<String>, value: impl Into<String>, clause: Option<Clause>) {
        self.reply.facts.push(Fact { what: what.into(), value: value.into(), clause });
    }

    pub(super) fn caution(&mut self, says: &str) {
        self.reply.cautions.push(says.to_owned());
    }

    /// The reply, unless an input was refused.
    pub(super) fn finish(mut self, inputs: Inputs) -> Walked {
        if !inputs.refused.is_empty() {
            let mut refused: Vec<Refusal> = Vec::new();
            for refusal in inputs.refused {
                if !refused.contains(&refusal) {
                    refused.push(refusal);
                }
            }
            return Err(refused);
        }
        let verdict = Verdict::worst(self.verdicts.iter().copied()).unwrap_or(Verdict::NotSeen);
        self.name_first(verdict);
        words::verdict(verdict).clone_into(&mut self.reply.verdict);
        self.reply.cautions.push(words::WHO_DECIDES.to_owned());
        self.reply.read = inputs.read;
        self.reply.assumed = inputs.assumed;
        Ok(self.reply)
    }
    /// By how much, and the finding that is named first.
    fn name_first(&mut self, verdict: Verdict) {
        let worse = |one: &&Margin, other: &&Margin| other.share.partial_cmp(&one.share).unwrap_or(Ordering::Equal);
        let worst = self.margins.iter().filter(|margin| margin.verdict == verdict).max_by(worse);
        let worst = worst.map(|margin| (margin.by.clone(), margin.foremost.clone()));
        let (by, foremost) = self.said_best.take().or(worst).unzip();
        let out = verdict == Verdict::Out;
        let in_its_words = |foremost| Foremost { word: words::verdict(verdict).to_owned(), ..foremost };
        let otherwise = self.otherwise.take().filter(|_| !out).map(in_its_words);
        let mut foremost = otherwise.or(foremost).or(self.wrong.take().filter(|_| out));
        if let Some(foremost) = &mut foremost
            && let Some((_, figure)) = self.figures.iter().find(|(subject, _)| *subject == foremost.subject)
        {
            foremost.found.clone_from(figure);
        }
        self.reply.by_how_much = by;
        self.reply.foremost = foremost;
    }
}
