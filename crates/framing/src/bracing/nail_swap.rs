//! The nail at hand in place of the one that was drawn, read and answered.

use fastening::{
    Approval, FasteningError, Joint, NailConditions, NailSpec, NailedWork, Pattern, Room, Swap, SwapGoverns, approval,
    lateral_value, swap, swap_across, table_head,
};
use measure::{Length, LengthUnit, read_length};

mod says;

use super::nail_joint::{self, fine};
use super::nail_schedule::{self, Listed};
use super::{ONLY_IF, SPLITS, TOO_SHORT, WILL_DO, WILL_DO_AT_NUMBER, WILL_DO_AT_SPACING};
use crate::quick::drawn_fasteners::{DrawnRow, DrawnSwap};
use crate::quick::reply::{Drawn, QuickReply};
use crate::quick::say::{cautions, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "asked_nail",
    "found_nail_as",
    "nail_pattern",
    "nailed_work",
    "code_element",
    "nail_side",
    "nail_side_thick",
    "nail_gauge",
    "nail_driven",
    "nail_pulled",
    "asked_shank",
    "nail_shank",
    "nail_ringed",
    "nail_head",
    "species",
    "engineer_yes",
];

const USED: &[&str] = &[
    "asked_nail",
    "found_nail_as",
    "nail_pattern",
    "nailed_work",
    "nail_side",
    "nail_gauge",
    "nail_driven",
    "nail_pulled",
    "asked_shank",
    "nail_shank",
    "nail_ringed",
    "species",
    "engineer_yes",
];

/// What is asked.
struct Asked {
    required: NailSpec,
    found: NailSpec,
    pattern: Pattern,
    work: NailedWork,
    shear_panels: bool,
    pulled: bool,
    agreed: bool,
}

impl Asked {
    /// Whether both are the same nail, its shank and its head counted in.
    fn is_same(&self) -> bool {
        let heads = (self.found.head(), self.required.head());
        let head = self.found.head.is_none() || matches!(heads, (Ok(found), Ok(required)) if found >= required);
        self.found.nail == self.required.nail && self.found.shank == self.required.shank && head
    }

    /// Whether the code's schedule may be read with it: framing of the code's own, a common shank and a whole head.
    fn is_of_the_schedule(&self) -> bool {
        let head = table_head(self.found.nail).map(|head| head.value);
        let whole = self.found.head.is_none_or(|found| head.is_none_or(|head| found >= head));
        self.work == NailedWork::CodeFraming && self.found.shank == self.required.shank && whole
    }

    /// Who must agree, by what is nailed.
    fn who(&self) -> Approval {
        match approval(self.work, self.found.nail, self.required.nail) {
            // The same size in another shank, or with a smaller head, is another nail.
            Approval::Crew if !self.is_same() => match self.work {
                NailedWork::CodeFraming | NailedWork::CodePanels => Approval::CodeOfficial,
                NailedWork::Truss => Approval::TrussDesigner,
                NailedWork::MetalConnector => Approval::Maker,
                NailedWork::NoLoad => Approval::Crew,
                NailedWork::EngineersDrawing => Approval::Engineer,
            },
            who => who,
        }
    }
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let required = nail_joint::spec(reading, "asked_nail", "asked_shank");
    let found = nail_joint::spec(reading, "found_nail_as", "nail_shank");
    let pattern = pattern(reading);
    let listed = nail_schedule::read(reading);
    let (required, pattern, listed) = (required?, pattern?, listed?);
    let found = nail_joint::with_head(reading, found?)?;
    nail_joint::check_rings(reading, &found)?;
    nail_joint::check_rings(reading, &required)?;
    let reading = &*reading;
    let (joint, side) = nail_joint::joint(reading, NailConditions::REFERENCE)?;
    let work = reading.word("nailed_work")?;
    let asked = Asked {
        required,
        found,
        pattern,
        work: match work {
            "framing" => NailedWork::CodeFraming,
            "panels" => NailedWork::CodePanels,
            "truss" => NailedWork::Truss,
            "metal" => NailedWork::MetalConnector,
            _ => NailedWork::EngineersDrawing,
        },
        shear_panels: work == "shear",
        pulled: reading.word("nail_pulled")? == "yes",
        agreed: reading.word("engineer_yes")? == "yes",
    };
    let ringed = nail_joint::is_ringed(&asked.found) || nail_joint::is_ringed(&asked.required);
    let mut about = About::of(reading, &nail_joint::used(reading, USED, ringed));
    nail_joint::say_of_side(&mut about, &side);
    about.say("Dry wood, and the same load on both nails: then how long it lasts makes no difference.");
    Some(answered(about, &asked, (&joint, &side), &listed))
}

/// `4"`, `4 in`, `10 nails`. A bare number could be either and is asked about.
fn pattern(reading: &mut Reading) -> Option<Pattern> {
    let text = reading.word("nail_pattern")?.to_lowercase();
    let text = text.trim();
    match read_pattern(text) {
        Ok(pattern) => {
            if let Some(value) = reading.values.iter_mut().find(|value| value.spec.id == "nail_pattern") {
                value.shown = in_words(pattern);
                value.echo = in_words(pattern);
            }
            Some(pattern)
        }
        Err(problem) => {
            reading.refuse("nail_pattern", problem);
            None
        }
    }
}

fn read_pattern(text: &str) -> Result<Pattern, String> {
    const TAKEN: &str = "a spacing such as 4\", or a number such as 10 nails, is taken.";
    if let Some(count) = text.strip_suffix("nails").or_else(|| text.strip_suffix("nail")) {
        return match count.trim().parse() {
            Ok(count @ 1..=1000) => Ok(Pattern::Count(count)),
            _ => Err(format!("“{text}” was given; from 1 to 1,000 nails are taken.")),
        };
    }
    if text.parse::<f64>().is_ok() {
        return Err(format!(
            "{text} was given: write {text} nails for a number in the joint, or {text}\" for a spacing."
        ));
    }
    let plain = ["on center", "on centre", "o.c.", "oc"].iter().find_map(|end| text.strip_suffix(end)).unwrap_or(text);
    let length =
        read_length(plain.trim(), LengthUnit::Inches).map_err(|_| format!("“{text}” was given; {TAKEN}"))?.length;
    if (1.0..=48.0).contains(&length.inches()) {
        Ok(Pattern::OnCenter(length))
    } else {
        Err(format!("{} was given; nails from 1\" to 48\" apart are taken.", words::inches(length)))
    }
}

/// A pattern in words: `4" on center`, `10 nails`.
fn in_words(pattern: Pattern) -> String {
    match pattern {
        Pattern::OnCenter(apart) => format!("{} on center", fine(apart)),
        Pattern::Count(1) => "1 nail".to_owned(),
        Pattern::Count(count) => format!("{} nails", figure(f64::from(count))),
    }
}

fn answered(
    about: About<'_>,
    asked: &Asked,
    (joint, side): (&Joint, &nail_joint::Side),
    listed: &[Listed],
) -> QuickReply {
    let drawn = |found: Option<&Swap>| Drawn::Swap(drawn(asked, side, found));
    // A nail too short has a verdict of its own; one that was drawn too short is a question to who drew it.
    if let Err(problem) = lateral_value(asked.required.nail, joint) {
        return QuickReply { drawn: drawn(None), ..unworked(about, format!("The nail as drawn: {problem}")) };
    }
    let swapped = lateral_value(asked.found.nail, joint).and_then(|_| {
        let of = if asked.pulled { swap } else { swap_across };
        of(&asked.found, &asked.required, asked.pattern, joint)
    });
    match swapped {
        Ok(found) => reply(about, asked, &found, (joint, listed), drawn(Some(&found))),
        Err(problem) => without_value(about, asked, &problem, drawn(None)),
    }
}

fn without_value(mut about: About<'_>, asked: &Asked, problem: &FasteningError, drawn: Drawn) -> QuickReply {
    if let FasteningError::HeadNotKnown { nail } = problem {
        if *nail == asked.found.nail && asked.found.head.is_none() {
            about.ask("nail_head", "How wide is the head of the nail at hand? Measure one across.");
        } else {
            about.ask("asked_nail", "The table has no head for the nail as drawn. Which nail of the table is it?");
        }
        let reason = format!("{problem} It is pulled as well, so its head counts.");
        return QuickReply { drawn, verdict: super::STILL_TO_SAY.to_owned(), ..unworked(about, reason) };
    }
    let Some(short) = nail_joint::too_short(problem) else {
        return QuickReply { drawn, ..unworked(about, problem.to_string()) };
    };
    cautions(&mut about);
    QuickReply {
        verdict: TOO_SHORT.to_owned(),
        size: asked.found.nail.to_string(),
        governs: Some("how deep it goes".to_owned()),
        reason: Some(short.clone()),
        action: vec![short, "No number of these stands for the nail as drawn.".to_owned()],
        drawn,
        about: about.finish(),
        ..QuickReply::default()
    }
}

/// Who must say yes, in words and as a verdict.
const fn who(approval: Approval) -> (&'static str, &'static str) {
    match approval {
        Approval::Crew => ("the crew", WILL_DO),
        Approval::Engineer => ("the engineer", ONLY_IF[0]),
        Approval::CodeOfficial => ("the building official", ONLY_IF[1]),
        Approval::TrussDesigner => ("the truss designer", ONLY_IF[2]),
        Approval::Maker => ("the maker of the part", ONLY_IF[3]),
    }
}

fn reply(
    mut about: About<'_>,
    asked: &Asked,
    found: &Swap,
    (joint, listed): (&Joint, &[Listed]),
    drawn: Drawn,
) -> QuickReply {
    let by_schedule = nail_schedule::stands(listed, asked.found.nail).filter(|_| asked.is_of_the_schedule());
    let mut reply = QuickReply { drawn, ..QuickReply::default() };
    let who = if by_schedule.is_some() { Approval::Crew } else { asked.who() };
    judge(&mut reply, asked, found, who);
    if let Some(row) = by_schedule.filter(|_| who == Approval::Crew && !asked.is_same()) {
        reply.size = nail_schedule::pattern(row);
        if let Drawn::Swap(drawn) = &mut reply.drawn {
            let count = row.count.filter(|_| row.spacing.is_none()).map(u32::from);
            drawn.found.1 = Some(DrawnRow { pattern: reply.size.clone(), spacing: row.spacing, count });
        }
        WILL_DO_AT_NUMBER.clone_into(&mut reply.verdict);
        reply.governs = Some("the code's schedule".to_owned());
        reply.action = vec![format!(
            "The code's schedule lists this nail here: {}. At that number nobody need be asked.",
            reply.size
        )];
    }
    says::facts(&mut reply, found, asked);
    reply.by_code.extend(listed.iter().map(|listed| nail_schedule::rule_of(listed, asked.found.nail)));
    reply.by_code.extend(says::splitting(found));
    about.part(says::working(asked, found));
    for caution in &found.lateral.found.cautions {
        about.say(crate::walk::words::nail_caution(*caution));
    }
    if joint.side.is_panel() {
        about.caution("The tables of panels are tests with the nail that they name. They are not read with another nail, whatever one of it is worth.");
    }
    if asked.work == NailedWork::CodeFraming && listed.is_empty() {
        about.ask("code_element", "Which joint is it in the code's schedule? The nail at hand may be listed there.");
    }
    about.say("A spacing as drawn is never opened up for a stronger nail, and no nail of a number left out.");
    cautions(&mut about);
    about.caution("Go by diameter and length from the box. A penny size names no diameter.");
    reply.about = about.finish();
    reply
}

fn judge(reply: &mut QuickReply, asked: &Asked, found: &Swap, approval: Approval) {
    let (whom, only_if) = who(approval);
    let pattern = found.pattern.map(in_words);
    reply.governs = Some(match found.governs {
        SwapGoverns::Lateral => "across the nail".to_owned(),
        SwapGoverns::Uplift => "the pull".to_owned(),
    });
    let (Some(pattern), Some(room)) = (pattern, found.room) else {
        reply.size = "No spacing".to_owned();
        SPLITS.clone_into(&mut reply.verdict);
        reply.action = vec!["They would stand under 1/2\" apart. Use the nail as drawn.".to_owned()];
        return;
    };
    reply.size.clone_from(&pattern);
    if let Room::TooClose(least) = room {
        SPLITS.clone_into(&mut reply.verdict);
        reply.action = vec![format!(
            "{pattern} is what it would take, and closer than {} the wood splits. Use the nail as drawn, or ask {}.",
            fine(least.value),
            if approval == Approval::Crew { "the engineer" } else { whom }
        )];
        return;
    }
    let changed = found.pattern != Some(asked.pattern);
    let stands = match asked.pattern {
        _ if !changed => WILL_DO,
        Pattern::Count(_) => WILL_DO_AT_NUMBER,
        Pattern::OnCenter(_) => WILL_DO_AT_SPACING,
    };
    let needs_a_yes = approval != Approval::Crew || !found.may_stand(false);
    let may = asked.is_same() || !needs_a_yes || (asked.agreed && found.may_stand(true));
    reply.verdict = if may {
        stands
    } else if approval == Approval::Crew {
        ONLY_IF[0]
    } else {
        only_if
    }
    .to_owned();
    reply.action = says::action(asked, found, (&pattern, changed), (may, whom));
}

fn drawn(asked: &Asked, side: &nail_joint::Side, found: Option<&Swap>) -> DrawnSwap {
    let reach = |value: &fastening::LateralValue| value.reach.penetration;
    let required = found.map(|found| reach(&found.lateral.required));
    let at_hand: Option<Length> = found.map(|found| reach(&found.lateral.found));
    let row = |pattern: Pattern| match pattern {
        Pattern::OnCenter(apart) => DrawnRow { pattern: in_words(pattern), spacing: Some(apart), count: None },
        Pattern::Count(count) => DrawnRow { pattern: in_words(pattern), spacing: None, count: Some(count) },
    };
    DrawnSwap {
        side: side.member.thickness,
        side_is: side.words.clone(),
        required: (nail_joint::drawn_nail(&asked.required, required), row(asked.pattern)),
        found: (nail_joint::drawn_nail(&asked.found, at_hand), found.and_then(|found| found.pattern).map(row)),
    }
}
