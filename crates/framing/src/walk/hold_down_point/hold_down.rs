//! A hold-down: its rod, its nut and what fixes it to the post.

use inspection::anchor::{DrilledAnchor, DrilledAnchorLacks, HoldDown, HoldDownRequired, Nut, Thread, judge_hold_down};
use inspection::{Finding, Remedy, Seen, Subject};

use super::bolts::NUTS;
use super::{ASKED_FASTENERS, DIAMETER, EMBEDMENT, FASTENERS, HoldDownPointCase, each, input_of, lengths, required};
use crate::walk::answer::Answer;
use crate::walk::asked::asked_by;
use crate::walk::reading::{Field, Inputs, could_not_be_seen, typed};

const BELOW: Field = Field::new("thread", "Rod below the top of the nut", 0.0, 24.0);
const ASKED_DIAMETER: Field = Field::new("required_diameter", "Diameter asked for", 0.25, 2.0);
const ASKED_EMBEDMENT: Field = Field::new("required_embedment", "Embedment asked for", 0.5, 120.0);
const ASKED_STUDS: Field = Field::new("required_studs", "Studs asked for", 1.0, 12.0);
const STUDS: Field = Field::new("studs", "Studs", 0.0, 12.0);

/// What is a hold-down's alone.
pub(super) fn read(inputs: &mut Inputs, case: &HoldDownPointCase) -> HoldDown {
    HoldDown {
        required: asked(inputs, case),
        thread: thread(inputs, case),
        nut: Seen::NotObserved,
        off_the_post: inputs.seen_yes(&case.off_the_post, "off_the_post"),
        rod_diameter: Seen::NotObserved,
        embedment: Seen::NotObserved,
        fasteners: inputs.seen_count(&case.fasteners, &FASTENERS).map(|count| count as u16),
        studs: inputs.seen_count(&case.studs, &STUDS).map(|count| count as u8),
    }
}

pub(super) fn answer(inputs: &mut Inputs, answer: &mut Answer, case: &HoldDownPointCase) {
    let mut hold_down = read(inputs, case);
    hold_down.nut = nut(inputs, case);
    hold_down.rod_diameter = lengths(inputs, &case.diameters, &DIAMETER, 1)[0];
    hold_down.embedment = lengths(inputs, &case.embedments, &EMBEDMENT, 1)[0];
    let mut finding = judge_hold_down(&hold_down);
    if typed(&case.thread).is_some_and(is_no) {
        below(&mut finding);
        answer.ask("How far is the rod's end below the top of the nut? Photograph it.", BELOW.id);
    } else if hold_down.thread == Seen::NotObserved {
        answer
            .ask("Is the rod's end flush with the top of the tightened nut, or proud of it? Photograph it.", BELOW.id);
    }
    if hold_down.off_the_post == Seen::NotObserved {
        answer.ask("Does the rod stand off the post?", "off_the_post");
    }
    if finding.check(Subject::HoldDownThread).is_some() && finding.is_out(Subject::HoldDownThread) {
        answer.say("The nut is not fully on its thread: not engaged is not installed.");
    }
    if finding.is_out(Subject::HoldDownOffset) {
        answer.caution("A rod is brought over only by a detail that the engineer or the part's listing gives.");
    }
    answer.finding(&finding, None, input_of);
    drilled(answer, case, &hold_down);
}

fn nut(inputs: &mut Inputs, case: &HoldDownPointCase) -> Seen<Nut> {
    each(inputs, (&case.nuts, "nuts"), 1, |inputs, text, which| inputs.choice_one(text, "nuts", &NUTS, which))[0]
}

fn thread(inputs: &mut Inputs, case: &HoldDownPointCase) -> Seen<Thread> {
    const FLUSH: [&str; 5] = ["yes", "flush", "proud", "flush or proud", "flush_or_proud"];
    match typed(&case.thread) {
        None => Seen::NotObserved,
        Some(text) if could_not_be_seen(text) => Seen::CouldNotBeSeen,
        Some(text) if FLUSH.contains(&text.to_ascii_lowercase().as_str()) => Seen::Observed(Thread::FlushOrProud),
        // How far it is below was not measured; that it is below was seen.
        Some(text) if is_no(text) => Seen::NotObserved,
        Some(text) => inputs
            .read_one(text, &BELOW, None)
            .map_or(Seen::NotObserved, |below| Seen::Observed(Thread::BelowTop(below))),
    }
}

fn is_no(text: &str) -> bool {
    text.eq_ignore_ascii_case("no")
}

/// The rod's end was seen to be below the top of the nut, and nobody measured by how much.
fn below(finding: &mut Finding) {
    finding.not_seen.retain(|of| *of != Subject::HoldDownThread);
    finding.wrong.push(Subject::HoldDownThread);
    finding.remedies.extend([Remedy::CouplerAndRod, Remedy::EngineerDetail, Remedy::DrilledAnchor]);
}

fn asked(inputs: &mut Inputs, case: &HoldDownPointCase) -> HoldDownRequired {
    let by = asked_by(&case.drawing, &case.drawing_revision);
    let fasteners = inputs.count(&case.required_fasteners, &ASKED_FASTENERS).map(|count| count as u16);
    let studs = inputs.count(&case.required_studs, &ASKED_STUDS).map(|count| count as u8);
    HoldDownRequired {
        rod_diameter: required(inputs.length(&case.required_diameter, &ASKED_DIAMETER), &by),
        embedment: required(inputs.length(&case.required_embedment, &ASKED_EMBEDMENT), &by),
        fasteners: required(fasteners, &by),
        studs: required(studs, &by),
    }
}

/// What the record of an anchor in a drilled hole still lacks, once it was begun.
fn drilled(answer: &mut Answer, case: &HoldDownPointCase, hold_down: &HoldDown) {
    let text = |text| typed(text).map(str::to_owned);
    let (adhesive_lot, cleaning_watched_by) = (text(&case.adhesive_lot), text(&case.cleaning_watched_by));
    if adhesive_lot.is_none() && cleaning_watched_by.is_none() {
        return;
    }
    for (what, kept) in [("Lot of the adhesive", &adhesive_lot), ("Cleaning watched by", &cleaning_watched_by)] {
        if let Some(kept) = kept {
            answer.fact(what, kept.as_str(), None);
        }
    }
    let rod_diameter = hold_down.rod_diameter.observed();
    let embedment = hold_down.embedment.observed();
    for lack in (DrilledAnchor { rod_diameter, embedment, adhesive_lot, cleaning_watched_by }).lacks() {
        let (asks, input) = match lack {
            DrilledAnchorLacks::RodDiameter => ("What is the rod's diameter?", DIAMETER.id),
            DrilledAnchorLacks::Embedment => ("How deep is the rod in the hole?", EMBEDMENT.id),
            DrilledAnchorLacks::AdhesiveLot => ("What is the lot of the adhesive?", "adhesive_lot"),
            DrilledAnchorLacks::CleaningWatchedBy => {
                ("Who watched the hole being cleaned? Dust destroys the bond.", "cleaning_watched_by")
            }
        };
        answer.ask(asks, input);
    }
}
