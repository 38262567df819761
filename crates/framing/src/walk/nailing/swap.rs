//! One nail in place of another: what it is worth, the spacing that makes up for it, and who must say yes.

use fastening::{
    Approval, EdgeFraming, Joint, Nail, NailedWork, SideMember, Wood, WoodPanel, Worth, approval, edge_framing, worth,
};
use inspection::{Remedy, Verdict, Who};
use measure::Length;

use super::{NailingCase, Side, Spacings, WORK};
use crate::walk::answer::Answer;
use crate::walk::reading::{Field, Inputs};
use crate::walk::words::{self, length};

const SIDE_THICKNESS: Field = Field::new("side_thickness", "Thickness under the head", 0.125, 4.0);

/// What the nails hold; the one who drew it is asked where nothing was said.
pub(super) fn work(inputs: &mut Inputs, case: &NailingCase, matters: bool) -> NailedWork {
    let says = "The nails hold: what an engineer drew (until someone says otherwise, it is the engineer's).";
    if matters {
        inputs.choice_or(&case.work, "work", &WORK, NailedWork::EngineersDrawing, says)
    } else {
        inputs.choice(&case.work, "work", &WORK).unwrap_or(NailedWork::EngineersDrawing)
    }
}

/// The joint in which the two nails are compared.
pub(super) fn joint(inputs: &mut Inputs, case: &NailingCase) -> Joint {
    const SIDES: [(&str, Side); 4] = [
        ("osb", Side::Panel(WoodPanel::Osb)),
        ("plywood", Side::Panel(WoodPanel::PlywoodOther)),
        ("plywood_structural_1", Side::Panel(WoodPanel::PlywoodStructural1)),
        ("lumber", Side::Lumber),
    ];
    let osb = Side::Panel(WoodPanel::Osb);
    let side = inputs.choice_or(&case.side, "side", &SIDES, osb, "Under the head: OSB (the common sheathing).");
    let species = inputs.species(&case.species, "species");
    let (wood, usual) = match side {
        Side::Panel(panel) => (Wood::Panel(panel), 7.0 / 16.0),
        Side::Lumber => (Wood::Lumber(species), 1.5),
    };
    let usual = Length::from_inches(usual);
    let thickness = inputs.length_or(&case.side_thickness, &SIDE_THICKNESS, usual, "the common one");
    Joint::face_nailed(SideMember::wood(wood, thickness), Wood::Lumber(species))
}

/// Two nails, the joint they are in, and what they hold.
pub(super) struct Swap {
    pub(super) found: Nail,
    pub(super) required: Nail,
    pub(super) work: NailedWork,
    pub(super) joint: Joint,
}

pub(super) fn answer(answer: &mut Answer, swap: &Swap, spacings: &Spacings) {
    let who = who(approval(swap.work, swap.found, swap.required));
    answer.say(format!("{} was found where {} is asked for.", swap.found, swap.required));
    match worth(swap.found, swap.required, &swap.joint) {
        Ok(found) => {
            weigh(answer, &found, who.1);
            for caution in &found.found.cautions {
                answer.caution(words::nail_caution(*caution));
            }
            if let Some(asked) = spacings.asked() {
                make_up(answer, &found, asked, who);
                if swap.joint.side.is_panel() {
                    panel_edges(answer, &found, asked);
                }
            } else {
                answer.ask("What spacing is asked for?", spacings.name());
                answer.remedy_by("Have the nails that were used approved.".to_owned(), who.1);
            }
        }
        Err(problem) => {
            answer.verdict(Verdict::NotDecided);
            answer.say(format!("What it is worth is not worked out here. {problem}"));
            answer.remedy(&Remedy::EngineerDetail);
        }
    }
    answer.remedy(&Remedy::NailAsRequired);
    if swap.joint.side.is_panel() {
        answer.caution(PANEL_TABLES);
    }
    answer.caution("A penny size names no diameter: go by diameter and length from the box, or measure one.");
}

/// What one nail is worth of the other.
fn weigh(answer: &mut Answer, found: &Worth, who: &[Who]) {
    let pounds = |value: &fastening::LateralValue| format!("{:.1} lb", value.adjusted.pounds());
    let clause = Some(words::published(found.found.limits.governing().value.source));
    let share = words::percent(found.ratio * 100.0);
    let (one, other) = (found.found.nail, found.required.nail);
    let more_or_less = if found.is_enough() { "at least as much" } else { "less" };
    answer.say(format!("One nail carries {more_or_less} across its shank: {share} of the one that is asked for."));
    answer.fact("Worth of one nail found, of one nail asked for", share, clause.clone());
    answer.fact(format!("{one}, one nail in this joint"), pounds(&found.found), clause.clone());
    answer.fact(format!("{other}, one nail in this joint"), pounds(&found.required), clause);
    if !found.is_enough() {
        answer.verdict(Verdict::Out);
    } else if who != [Who::Crew] {
        // A nail that is not the one asked for is theirs to pass, however strong it is: it can split what the other
        // does not.
        answer.leave_to("A nail that is not the one asked for", who);
    }
}

/// The spacing that makes up for a weaker nail. A drawn spacing is not opened up for a stronger one.
fn make_up(answer: &mut Answer, found: &Worth, asked: Length, (yes, who): (&str, &[Who])) {
    let at = found.equivalent_spacing(asked);
    if found.is_enough() {
        answer.say(format!("The spacing stays at {}; {yes} must say yes to the nail.", length(asked)));
        answer.remedy_by("Have the nails that were used approved at the spacing that is asked for.".to_owned(), who);
        return;
    }
    answer.fact(format!("Spacing that is worth {}, exact", length(asked)), length(at.exact), None);
    let Some(practical) = at.practical else {
        answer.say("No spacing of these nails makes up for it.");
        return;
    };
    answer.fact("Closest practical spacing", length(practical), None);
    answer.say(format!("{} on centre makes up for it in strength; {yes} must say yes first.", length(practical)));
    answer.remedy_by(format!("Have the nails that were used approved at {} on centre.", length(practical)), who);
}

/// What the framing takes where two panels meet.
fn panel_edges(answer: &mut Answer, found: &Worth, asked: Length) {
    let Some(practical) = found.equivalent_spacing(asked).practical else { return };
    match edge_framing(found.found.nail, found.found.reach.penetration, practical) {
        Ok(framing) => {
            let says = match framing.value {
                EdgeFraming::TwoBy => "2x framing where two panels meet",
                EdgeFraming::ThreeByOrTwoStitched => {
                    "3x framing, or two 2x nailed together, where two panels meet; the nails staggered"
                }
            };
            answer.fact(format!("At {} it takes", length(practical)), says, Some(words::published(framing.source)));
        }
        Err(problem) => answer.say(problem.to_string()),
    }
}

const PANEL_TABLES: &str = "The panel tables are for the nail they name. They are not read with another nail, whatever \
                            one of it is worth.";

/// Who must say yes, in a sentence and in the list of remedies.
const fn who(approval: Approval) -> (&'static str, &'static [Who]) {
    match approval {
        Approval::Crew => ("the crew", &[Who::Crew]),
        Approval::CodeOfficial => ("the code official", &[Who::CodeOfficial]),
        Approval::Engineer => ("the engineer", &[Who::Engineer]),
        Approval::TrussDesigner => ("the truss designer, an engineer,", &[Who::Engineer]),
        Approval::Maker => ("the maker of the part", &[Who::Maker]),
    }
}
