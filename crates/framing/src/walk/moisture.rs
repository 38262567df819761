//! Whether the frame is dry enough to close in: every reading, visit by visit.

use inspection::moisture::{CloseInLimit, Day, MoistureAnswer, Reading, Spot, Visit, judge_visits};
use inspection::{Finding, MoistureContent, Question, Remedy, Verdict};

use super::answer::Answer;
use super::reading::{Field, Inputs, could_not_be_seen, short, typed};
use super::{Walked, walk_case, words};

walk_case! {
    /// The inputs of a look at moisture. Each is a text with its unit, or a list of such texts.
    MoistureCase
    texts {
        /// The limit that is judged by, per cent: `18` or `19`.
        limit,
        /// The meter.
        meter,
        /// The species it is set to.
        species_setting,
    }
    lists {
        /// The places where the meter was set, in their order: `plate`, `stud 3, low`.
        places,
        /// The visits, one after the other: a name or a date, and each place's reading in its order, a dash for one
        /// that was not read: `3 May: 22, 19, -`.
        visits,
    }
}

const READING: Field = Field::new("visits", "Moisture content", 0.0, 100.0);

/// A visit by its name.
struct Named {
    name: String,
    visit: Visit,
}

/// Reads and answers a case.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &MoistureCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    let limits = [("18", CloseInLimit::Eighteen), ("19", CloseInLimit::Nineteen)];
    let without_unit = typed(&case.limit).map(|text| text.trim_end_matches('%').trim_end().to_owned());
    let says = "Limit: 18 % (asked for before wall board; 19 % is the danger line of the trade).";
    let limit = inputs.choice_or(&without_unit, "limit", &limits, CloseInLimit::default(), says);
    let places = inputs.list(&case.places, "places");
    let visits = visits(&mut inputs, case, places.len());
    ask(&mut answer, case, &visits);
    let readings: Vec<Visit> = visits.iter().map(|named| named.visit.clone()).collect();
    let found = judge_visits(&readings, &limit.required());
    let last = visits.len();
    for (number, (named, (_, finding))) in (1..).zip(visits.iter().zip(&found.visits)) {
        visit(&mut answer, named, finding, places, number == last);
    }
    as_it_stands(&mut answer, &found, places);
    answer.caution("Dry enough to close in says nothing of rot, of wet insulation or of what was covered before.");
    answer.finish(inputs)
}

fn ask(answer: &mut Answer, case: &MoistureCase, visits: &[Named]) {
    if visits.is_empty() {
        answer.ask("What did the meter show, place by place?", "visits");
    }
    if typed(&case.meter).is_none() {
        answer.ask("Which meter was used?", "meter");
    }
    if typed(&case.species_setting).is_none() {
        answer.ask("Which species was it set to? A wrong setting shifts every reading.", "species_setting");
    }
    let kept = [("Meter", &case.meter), ("Species setting", &case.species_setting)];
    for (what, text) in kept {
        if let Some(text) = typed(text) {
            answer.fact(what, text, None);
        }
    }
}

fn visits(inputs: &mut Inputs, case: &MoistureCase, places: usize) -> Vec<Named> {
    let mut visits = Vec::new();
    if case.visits.as_ref().is_some_and(|visits| visits.len() > 1) {
        inputs.assume(READING.id, "Visits: in the order they are written.");
    }
    for (index, text) in inputs.list(&case.visits, READING.id).iter().enumerate() {
        let (name, numbers) = match text.rsplit_once(':') {
            Some((name, numbers)) if !name.trim().is_empty() => (short(name), numbers),
            Some((_, numbers)) => (format!("visit {}", index + 1), numbers),
            None => (format!("visit {}", index + 1), text.as_str()),
        };
        let readings = readings(inputs, numbers, index);
        let count = numbers.split(',').count();
        if places > 0 && count > places {
            let problem = format!("{count} readings were given for {places} places; one for each is taken, in order.");
            inputs.refuse_one(READING.id, Some(index + 1), &problem);
        }
        visits.push(Named { name, visit: Visit { day: Day(index as i32), readings } });
    }
    visits
}

fn readings(inputs: &mut Inputs, numbers: &str, visit: usize) -> Vec<Reading> {
    let mut readings = Vec::new();
    for (spot, text) in numbers.split(',').enumerate() {
        let text = text.trim();
        if text == "-" || could_not_be_seen(text) {
            continue;
        }
        if let Some(percent) = inputs.number_one(text, &READING, &["%"], Some(visit + 1)) {
            readings.push(Reading { spot: Spot(spot as u32), moisture: MoistureContent::from_percent(percent) });
        }
    }
    readings
}

fn place(places: &[String], spot: Spot) -> String {
    let named = places.get(spot.0 as usize).map(|place| short(place)).filter(|place| !place.is_empty());
    named.unwrap_or_else(|| format!("place {}", spot.0 + 1))
}

/// The frame stands by its last visit; what an earlier one found is kept beside it.
fn visit(answer: &mut Answer, named: &Named, finding: &Finding, places: &[String], last: bool) {
    for (reading, check) in named.visit.readings.iter().zip(&finding.checks) {
        let at = format!("{}, {}", named.name, place(places, reading.spot));
        if last {
            answer.check(check, Some(&at));
        } else {
            answer.reply.checks.push(words::check(check, Some(&at)));
        }
    }
    answer.fact(named.name.as_str(), words::verdict(finding.verdict()), None);
    if !last {
        return;
    }
    for question in &finding.questions {
        answer.ask(words::at_place(words::question(*question), Some(&named.name)), input_of(*question));
    }
    for subject in &finding.not_seen {
        answer.not_seen(*subject, Some(&named.name));
    }
}

const fn input_of(_: Question) -> &'static str {
    "visits"
}

fn as_it_stands(answer: &mut Answer, found: &MoistureAnswer, places: &[String]) {
    answer.verdict(found.verdict);
    if found.verdict == Verdict::Out {
        answer.remedy(&Remedy::DryAndReadAgain);
    }
    for spot in &found.still_wet {
        let place = place(places, *spot);
        answer.say(format!("{place}: still open. Its last reading was too wet, and the last visit left it out."));
    }
    let says = match found.verdict {
        Verdict::Within | Verdict::AtLimit => "By the last visit every reading is dry enough to close in.",
        Verdict::Out => "Do not close it in yet: a reading is too wet. Every reading counts, not their average.",
        _ => "Nothing was read: nothing is said of it.",
    };
    answer.say(says);
}
