//! What goes with an answer of a place: sentences, questions, what was assumed, the working.

use members::working::Part;

use super::reply::AboutReply;
use crate::field::Unsaid;
use crate::reading::{Origin, Reading};
use crate::reply::{AssumedReply, StepReply, WorkingReply};
use crate::words;

/// In the making.
pub struct About<'r> {
    reading: &'r Reading,
    reply: AboutReply,
    parts: Vec<Part>,
}

impl<'r> About<'r> {
    /// Of an answer that rests on these inputs: those among them that were assumed are said.
    pub fn of(reading: &'r Reading, inputs: &[&str]) -> Self {
        let assumed = |id: &&str| {
            let value = reading.get(id).filter(|value| value.origin == Origin::Assumed)?;
            let Unsaid::Assumed(_, why) = value.spec.unsaid else { return None };
            let says = format!("{}: {} ({why}).", value.spec.label, value.shown);
            Some(AssumedReply { input: Some((*id).to_owned()), says })
        };
        let reply = AboutReply { assumed: inputs.iter().filter_map(assumed).collect(), ..AboutReply::default() };
        Self { reading, reply, parts: Vec::new() }
    }

    /// Something to know.
    pub fn say(&mut self, says: impl Into<String>) {
        self.reply.says.push(says.into());
    }

    /// Something that was taken for granted; it stands instead of what is usually assumed of that input.
    pub fn assume(&mut self, input: &str, says: &str) {
        self.reply.assumed.retain(|one| one.input.as_deref() != Some(input));
        self.reply.assumed.push(AssumedReply { input: Some(input.to_owned()), says: says.to_owned() });
    }

    /// A question, with the input that answers it.
    pub fn ask(&mut self, input: &str, question: impl Into<String>) {
        self.reply.questions.push((input.to_owned(), question.into()));
    }

    /// What is not for this tool to decide; said once.
    pub fn outside(&mut self, says: String) {
        if !self.reply.outside.contains(&says) {
            self.reply.outside.push(says);
        }
    }

    /// A caution.
    pub fn caution(&mut self, says: &str) {
        self.reply.cautions.push(says.to_owned());
    }

    /// A part of the working.
    pub fn part(&mut self, part: Part) {
        self.parts.push(part);
    }

    /// The whole.
    pub fn finish(mut self) -> AboutReply {
        let reading = self.reading;
        let step = |step: members::working::Step| StepReply {
            symbol: step.symbol.to_owned(),
            meaning: step.meaning,
            expression: step.expression,
            value: step.value,
            unit: step.unit.to_owned(),
            source: words::basis(step.basis, reading),
        };
        let part =
            |part: Part| WorkingReply { heading: part.heading, steps: part.steps.into_iter().map(step).collect() };
        self.reply.working = self.parts.into_iter().map(part).collect();
        self.reply
    }
}
