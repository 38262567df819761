//! Nails of a sheathed wall or of a joint: the nail itself, its spacing, those that missed, those driven too deep.

use fastening::{NailReading, NailedWork, WoodPanel, read_nail};
use inspection::nailing::{
    Driven, Line, NailSize, OverdrivenAnswer, Panel, PanelNailing, judge_edge_distance, judge_line, judge_nail_size,
    judge_overdriven, nails_in_panel,
};
use inspection::{Check, Origin, Question, Required, Seen, Subject, Verdict};
use measure::{Denominator, Length, Rounding};

use super::answer::Answer;
use super::asked::asked_by;
use super::reading::{Field, Inputs, could_not_be_seen, typed};
use super::reply::Foremost;
use super::{Text, Walked, walk_case, words};

mod spacings;
mod swap;

use spacings::{EDGE, Spacings};

walk_case! {
    /// The inputs of a look at nails. Each is a text with its unit, or a list of such texts.
    NailingCase
    texts {
        /// The nail that is asked for, by diameter and length or by penny and kind: `8d common`.
        required_nail,
        /// The nail that was found, as the box says it: `2-3/8 x .113`.
        found_nail,
        /// What the nails hold: `engineers_drawing`, `code_panels`, `code_framing`, `truss`, `metal_connector`,
        /// `no_load`.
        work,
        /// The sheet of the drawing that asks for it: `S2.1`.
        drawing,
        /// Its revision.
        drawing_revision,
        /// What is under the head: `osb`, `plywood`, `plywood_structural_1`, or `lumber` of the framing's species.
        side,
        /// Its thickness: `7/16`.
        side_thickness,
        /// Species of the framing: `SPF`.
        species,
        /// Spacing that is asked for along panel edges: `6"`.
        edge_spacing,
        /// Spacing that is asked for on the studs between: `12"`.
        field_spacing,
        /// Spacing that is asked for along the boundary of the wall or the floor: `3"`.
        boundary_spacing,
        /// Spacing that was found, where it was measured.
        found_spacing,
        /// Which line was counted: `edge`, `field` or `boundary`.
        line,
        /// Length of the line that was looked at: `8'`.
        line_length,
        /// Nails driven in it.
        driven,
        /// Of these, nails that missed the framing; `could not be seen` where nobody was inside.
        missed,
        /// The widest gap between two neighbours that hold.
        widest_gap,
        /// The nail that is nearest to the panel's edge.
        to_panel_edge,
        /// Width of the panel, across the studs.
        panel_width,
        /// Height of the panel, along the studs.
        panel_height,
        /// Spacing of the studs behind it.
        stud_spacing,
        /// Edge nails deeper than 1/16 in and not over 1/8 in.
        overdriven,
        /// Edge nails deeper than 1/8 in.
        too_deep,
        /// Whether the panel was dry when it was nailed: `yes` or `no`.
        panel_dry,
    }
    lists {
        /// Depths of the nails under the panel's face, where they were measured one by one.
        depths,
    }
}

const FOUND: Field = Field::new("found_spacing", "Spacing found", 0.25, 48.0);
const LINE: Field = Field::new("line_length", "Length of the line", 1.0, 1200.0);
const DRIVEN: Field = Field::new("driven", "Nails driven", 0.0, 5000.0);
const MISSED: Field = Field::new("missed", "Nails that missed", 0.0, 5000.0);
const GAP: Field = Field::new("widest_gap", "Widest gap", 0.25, 1200.0);
const TO_EDGE: Field = Field::new("to_panel_edge", "Nail to panel edge", 0.0, 24.0);
const WIDTH: Field = Field::new("panel_width", "Panel width", 4.0, 144.0);
const HEIGHT: Field = Field::new("panel_height", "Panel height", 4.0, 192.0);
const STUDS: Field = Field::new("stud_spacing", "Stud spacing", 4.0, 48.0);
const OVERDRIVEN: Field = Field::new("overdriven", "Overdriven nails", 0.0, 5000.0);
const TOO_DEEP: Field = Field::new("too_deep", "Nails over 1/8\" deep", 0.0, 5000.0);
const DEPTH: Field = Field::new("depths", "Depth", 0.0, 2.0);

/// Reads and answers a case. What nothing was said about is not judged.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &NailingCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    let by = asked_by(&case.drawing, &case.drawing_revision);
    let spacings = Spacings::read(&mut inputs, case);
    nail(&mut inputs, &mut answer, case, &spacings, &by);
    spacing(&mut inputs, &mut answer, case, &spacings, &by);
    line(&mut inputs, &mut answer, case, &spacings, &by);
    to_edge(&mut inputs, &mut answer, case);
    overdriven(&mut inputs, &mut answer, case, &spacings);
    inputs.only_refuse(|aside| swap::joint(aside, case));
    if answer.reply.checks.is_empty() && answer.reply.says.is_empty() {
        answer.ask("What nail is asked for, and what does the box say?", "found_nail");
        answer.ask("How many nails were driven along the line, and how many missed the framing?", "driven");
    }
    answer.finish(inputs)
}

fn read(inputs: &mut Inputs, text: &Text, id: &str) -> Option<NailReading> {
    let text = typed(text).filter(|text| !could_not_be_seen(text))?;
    match read_nail(text) {
        Ok(reading) => {
            let left_out = if reading.left_out.is_empty() {
                String::new()
            } else {
                format!("; {} says nothing about the size", reading.left_out.join(", "))
            };
            inputs.understood(id, None, text, format!("{}{left_out}", reading.echo));
            Some(reading)
        }
        Err(problem) => {
            inputs.refuse(id, problem.to_string());
            None
        }
    }
}

fn nail(inputs: &mut Inputs, answer: &mut Answer, case: &NailingCase, spacings: &Spacings, by: &Origin) {
    let required = read(inputs, &case.required_nail, "required_nail");
    let found = read(inputs, &case.found_nail, "found_nail");
    let work = swap::work(inputs, case, required.is_some() && found.is_some());
    let Some(required) = required else {
        if found.is_some() {
            answer.verdict(Verdict::NotSeen);
            answer.ask("Which nail does the drawing or the code ask for here?", "required_nail");
        }
        return;
    };
    let size = |nail: fastening::Nail| NailSize { diameter: nail.diameter(), length: nail.length() };
    let seen = found.as_ref().map_or(Seen::NotObserved, |found| Seen::Observed(size(found.nail)));
    let finding = judge_nail_size(&Required::new(size(required.nail), by.clone()), seen);
    let Some(found) = found else {
        answer.finding(&finding, None, question);
        answer.ask("What does the box of nails say: diameter and length?", "found_nail");
        return;
    };
    for check in &finding.checks {
        answer.check(check, None);
    }
    if found.nail == required.nail {
        return;
    }
    let joint = swap::joint(inputs, case);
    swap::answer(answer, &swap::Swap { found: found.nail, required: required.nail, work, joint }, spacings);
}

fn spacing(inputs: &mut Inputs, answer: &mut Answer, case: &NailingCase, spacings: &Spacings, by: &Origin) {
    let Some(found) = inputs.length(&case.found_spacing, &FOUND) else { return };
    let Required { value, origin } = spacings.asked_or_usual(inputs, answer, by);
    let check = Check::size_at_most(Subject::WidestNailGap, found, value, origin);
    let said = super::reply::WalkCheck { subject: "Nail spacing".to_owned(), ..words::check(&check, None) };
    answer.checked(&check, said);
    if check.verdict == Verdict::Out {
        answer.remedy(&inspection::Remedy::NailAsRequired);
    }
}

fn line(inputs: &mut Inputs, answer: &mut Answer, case: &NailingCase, spacings: &Spacings, by: &Origin) {
    let driven = inputs.count(&case.driven, &DRIVEN);
    let missed = inputs.seen_count(&case.missed, &MISSED);
    let widest_gap = inputs.length(&case.widest_gap, &GAP);
    let length = inputs.length(&case.line_length, &LINE);
    let Some(driven) = driven else {
        if missed.observed().is_some() || widest_gap.is_some() || length.is_some() {
            answer.verdict(Verdict::NotSeen);
            answer.ask("How many nails were driven along the line?", "driven");
        }
        return;
    };
    if missed.observed().is_some_and(|missed| missed > driven) {
        inputs.refuse(MISSED.id, format!("More nails missed than the {driven} that were driven. Count again."));
    }
    let Some(length) = length else {
        answer.verdict(Verdict::NotSeen);
        answer.ask("How long is the line that was looked at?", "line_length");
        return;
    };
    let spacing = spacings.asked_or_usual(inputs, answer, by);
    let line = Line { of: spacings.of(), length, spacing, driven, missed, widest_gap };
    let found = judge_line(&line);
    if missed == Seen::NotObserved {
        answer.ask("Seen from inside: how many of these nails missed the framing?", "missed");
    }
    if let (Some(hold), Some(share)) = (found.hold, found.share) {
        let share = words::percent(share * 100.0);
        answer.say(format!("{hold} of {driven} nails hold, {share}; {} are asked for in this length.", found.asked));
        answer.fact("Share of the nails driven that hold", share, None);
    }
    if let Some(spacing) = found.spacing {
        // Written up: a spacing that looks closer than it is would be a pass too many.
        let spacing = spacing.rounded(Denominator::Sixteenth, Rounding::Up).to_inches_fraction(Denominator::Sixteenth);
        answer.fact("Spacing of the nails that hold, on average", spacing.clone(), None);
        answer.figure(spacings.of(), spacing);
    }
    if found.add > 0 {
        answer.say("Nothing is claimed for this line until it is nailed again. Photograph it from inside and outside.");
        answer.fact("Nails to add in this line", found.add.to_string(), None);
    }
    answer.finding(&found.finding, None, question);
}

fn to_edge(inputs: &mut Inputs, answer: &mut Answer, case: &NailingCase) {
    if typed(&case.to_panel_edge).is_some() {
        let nearest = inputs.seen_length(&case.to_panel_edge, &TO_EDGE);
        answer.finding(&judge_edge_distance(nearest), None, question);
    }
}

fn overdriven(inputs: &mut Inputs, answer: &mut Answer, case: &NailingCase, spacings: &Spacings) {
    let depths = inputs.lengths(&case.depths, &DEPTH);
    let counted = (inputs.count(&case.overdriven, &OVERDRIVEN), inputs.count(&case.too_deep, &TOO_DEEP));
    let dry = inputs.yes(&case.panel_dry, "panel_dry");
    let width = inputs.length(&case.panel_width, &WIDTH);
    let height = inputs.length(&case.panel_height, &HEIGHT);
    let studs = inputs.length(&case.stud_spacing, &STUDS);
    let driven = match counted {
        (None, None) if case.depths.is_none() => return,
        (None, None) => Driven::from_depths(&depths),
        (deep, too_deep) => Driven { deep: deep.unwrap_or(0), too_deep: too_deep.unwrap_or(0) },
    };
    let mut usual = |id: &str, says: &str, found: Option<Length>, usual: f64| {
        found.unwrap_or_else(|| {
            inputs.assume(id, says);
            Length::from_inches(usual)
        })
    };
    let width = usual(WIDTH.id, "Panel width: 48\" (the common sheet).", width, 48.0);
    let height = usual(HEIGHT.id, "Panel height: 96\" (the common sheet).", height, 96.0);
    let stud_spacing = usual(STUDS.id, "Stud spacing: 16\" (the common one).", studs, 16.0);
    let edge_spacing = usual(EDGE.id, "Edge nail spacing: 6\" (the common one).", spacings.edge, 6.0);
    let field_spacing = spacings.field.unwrap_or(Length::from_inches(12.0));
    let nails = nails_in_panel(&PanelNailing { width, height, stud_spacing, edge_spacing, field_spacing });
    let panel = Panel { perimeter_nails: nails.perimeter, edge_spacing, dry_when_nailed: dry };
    says_overdriven(answer, &panel, driven);
}

fn says_overdriven(answer: &mut Answer, panel: &Panel, driven: Driven) {
    let found = judge_overdriven(panel, driven);
    let clause = Some(words::published(found.source));
    let (over, all) = (driven.overdriven(), panel.perimeter_nails);
    let share = words::percent(found.share * 100.0);
    answer.fact("Nails around the panel", all.to_string(), None);
    answer.fact("Share of them that is deeper than 1/16\"", share.clone(), clause.clone());
    answer.fact("Nails to add for the deep ones", found.add.to_string(), clause);
    answer.say(overdriven_in_words(panel, driven, &found, &share));
    answer.verdict(found.verdict);
    if found.verdict == Verdict::Out {
        let foremost = Foremost {
            subject: "Edge nails deeper than 1/16\"".to_owned(),
            found: format!("{over} of {all}"),
            word: "too deep".to_owned(),
            share: None,
        };
        answer.by_how_much(format!("Edge nails too deep: {over} of {all}, {share}"), foremost);
    }
    answer.reply.checks.push(super::reply::WalkCheck {
        subject: "Edge nails deeper than 1/16\"".to_owned(),
        at: None,
        found: format!("{over} of {all}, {share}; {} deeper than 1/8\"", driven.too_deep),
        limit: "at most 20 %, and none deeper than 1/8\"".to_owned(),
        margin: format!("{} to add", found.add),
        verdict: words::verdict(found.verdict).to_owned(),
        clause: words::published(found.source),
    });
    for asked in found.questions {
        answer.ask(words::question(asked), question(asked));
    }
    for remedy in &found.remedies {
        answer.remedy(remedy);
    }
}

fn overdriven_in_words(panel: &Panel, driven: Driven, found: &OverdrivenAnswer, share: &str) -> String {
    let (over, all) = (driven.overdriven(), panel.perimeter_nails);
    let deep =
        format!("{over} of {all} edge nails are deeper than 1/16\", {share}; {} deeper than 1/8\"", driven.too_deep);
    match found.verdict {
        _ if over > all => "More nails are too deep than the panel has. Count again.".to_owned(),
        Verdict::Within | Verdict::AtLimit => format!("{deep}: nothing is to be added."),
        Verdict::Out if found.add > 0 => format!("{deep}: one nail is added for each two that are too deep."),
        Verdict::Out => format!(
            "{deep}: at {} no nails are added, since more of them split the framing. The engineer decides.",
            words::length(panel.edge_spacing)
        ),
        _ => format!("{deep}. The panel was wet when it was nailed: depths from its face say nothing."),
    }
}

/// The input that answers a question.
const fn question(question: Question) -> &'static str {
    match question {
        Question::PanelDryWhenNailed => "panel_dry",
        _ => "to_panel_edge",
    }
}

/// What is under the head.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Side {
    Panel(WoodPanel),
    Lumber,
}

/// What the nails hold, as it is typed.
const WORK: [(&str, NailedWork); 6] = [
    ("engineers_drawing", NailedWork::EngineersDrawing),
    ("code_panels", NailedWork::CodePanels),
    ("code_framing", NailedWork::CodeFraming),
    ("truss", NailedWork::Truss),
    ("metal_connector", NailedWork::MetalConnector),
    ("no_load", NailedWork::NoLoad),
];
