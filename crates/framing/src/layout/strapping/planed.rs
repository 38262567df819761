//! A low joist that would be less work planed: whether the code lets it, and what it saves.

use layout::strapping::{Cut, JoistWood, Planed, PlaningWish};
use lumber::SawnSize;
use measure::Length;
use standards::irc_2021::r502_8;

use super::given::Given;
use super::reads::Reads;
use super::shimmed::Shimmed;
use crate::quick::reply::RuleReply;
use crate::quick::say::{down, rule};
use crate::reading::Reading;
use crate::words;

/// To how many shims the work of one cut comes: our own choice.
const SHIMS_A_CUT: usize = 3;
/// A joist so thick is counted as one of 4 in by its name.
const THICK: Length = Length::from_inches(3.5);

/// Whether planing is looked at.
pub(super) enum Asked {
    /// Not asked for.
    No,
    /// The readings do not stand at the strips, where the cuts would be.
    NotAtStrips,
    /// With these joists.
    Look(PlaningWish),
}

pub(super) fn asked(reading: &Reading, given: &Given, reads: &Reads) -> Asked {
    let Some(wood) = wood(reading, given) else { return Asked::No };
    if reading.word("strap_read_at").is_some() || reads.strips.iter().any(Option::is_none) {
        return Asked::NotAtStrips;
    }
    Asked::Look(PlaningWish { wood, strip_width: given.room.strip.width, shims_a_cut: SHIMS_A_CUT })
}

/// The joists; none where they are not said or are to stay whole.
fn wood(reading: &Reading, given: &Given) -> Option<JoistWood> {
    match reading.word("strap_joists_are")? {
        "whole" => None,
        "engineered" => Some(JoistWood::Engineered),
        size => Some(JoistWood::Sawn {
            nominal_thickness: if given.room.joist_thickness >= THICK { 4 } else { 2 },
            depth: reading.length("strap_joist_deep").or_else(|| Some(SawnSize::from_text(size).ok()?.depth()))?,
            bearings: [Length::ZERO, given.room.along],
        }),
    }
}

fn joists(planed: &Planed) -> String {
    let names: Vec<String> = planed.joists.iter().map(|joist| format!("joist {}", joist + 1)).collect();
    names.join(" and ")
}

fn most(cuts: &[Cut]) -> Length {
    cuts.iter().map(|cut| cut.off).fold(Length::ZERO, Length::max)
}

fn cut(shimmed: &Shimmed, cuts: &[Cut]) -> String {
    let cuts = cuts.iter().map(|cut| format!("{} at {}", words::inches(cut.off), shimmed.name(cut.at)));
    cuts.collect::<Vec<_>>().join("; ")
}

pub(super) fn action(shimmed: &Shimmed) -> Vec<String> {
    let Some(planing) = &shimmed.planing else { return Vec::new() };
    let mut says = Vec::new();
    for refused in &planing.refused {
        says.push(format!(
            "Joist {} is low: do not plane it. {} {} covers {}. {}",
            refused.joist + 1,
            refused.why.source.document,
            refused.why.source.place,
            refused.why.covers,
            refused.why.next_step
        ));
    }
    if let Some(better) = &planing.better {
        says.push(format!(
            "Less work: plane {}, {}. Then {} shims are to set, not {}; the table of it stands below. What follows is without planing.",
            joists(better),
            cut(shimmed, &better.cuts),
            better.plan.to_set(),
            planing.work_without
        ));
    }
    says
}

pub(super) fn rules(shimmed: &Shimmed) -> Vec<RuleReply> {
    let mut rules = Vec::new();
    if matches!(shimmed.planing_asked, Asked::NotAtStrips) {
        let says = vec![
            "Cuts would be at the strips, and the readings stand elsewhere: read at the strips to have it looked at."
                .to_owned(),
        ];
        rules.push(rule("Planing", None, "not looked at", says));
    }
    let Some(planing) = &shimmed.planing else { return rules };
    for refused in &planing.refused {
        let says = vec![
            format!("It would take {} off: {}.", words::inches(most(&refused.cuts)), cut(shimmed, &refused.cuts)),
            refused.why.to_string(),
            format!("{}.", words::source(refused.why.source)),
        ];
        rules.push(rule("Planing", Some(false), format!("joist {}: leave it whole", refused.joist + 1), says));
    }
    if let Some(better) = &planing.better {
        rules.push(rule("Planing", Some(true), joists(better), allowed(shimmed, better)));
    } else if planing.refused.is_empty() {
        let says = vec!["Shims alone are no more work than planing: the joists stay whole.".to_owned()];
        rules.push(rule("Planing", None, "no joist", says));
    }
    rules
}

fn allowed(shimmed: &Shimmed, better: &Planed) -> Vec<String> {
    let mut says = vec![format!(
        "{}. Each cut is as long as the strip is wide, across the joist's lower edge; one cut is counted as the work of {SHIMS_A_CUT} shims.",
        cut(shimmed, &better.cuts)
    )];
    if let Asked::Look(PlaningWish { wood: JoistWood::Sawn { depth, .. }, .. }) = &shimmed.planing_asked {
        says.push(format!(
            "A cut is allowed to a sixth of the depth, {}, and to a third of it in length, {}, outside the middle third of the span.",
            down(r502_8::notch_depth_limit(*depth)),
            down(r502_8::notch_length_limit(*depth))
        ));
    }
    says.push("The joists are taken to bear at the near and the far wall alone: where one bears elsewhere, or is cut or bored already, ask.".to_owned());
    says.push(format!("{}.", words::source(r502_8::SAWN_JOISTS)));
    says
}
