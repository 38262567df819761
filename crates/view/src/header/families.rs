//! All sizes that were tried, by family.

use framing::words;
use lumber::Family;
use members::header::{HeaderAnswer, HeaderInput, Tried};

use super::answer::{in_order, state};
use crate::model::{Candidate, Family as ShownFamily};

const ORDER: [Family; 6] =
    [Family::BuiltUp2x, Family::Labelled, Family::Lvl, Family::Sawn4x, Family::Sawn6x, Family::Glulam];

/// Families in the order of the answer's preference, sizes smallest first; empty families are left out.
pub(super) fn families(input: &HeaderInput, found: &HeaderAnswer) -> Vec<ShownFamily> {
    ORDER.into_iter().map(|family| shown(family, input, found)).filter(|family| !family.sizes.is_empty()).collect()
}

fn shown(family: Family, input: &HeaderInput, found: &HeaderAnswer) -> ShownFamily {
    let of_family = found.tried.iter().enumerate().filter(|(_, tried)| tried.family == family);
    let sizes: Vec<(usize, &Tried)> = in_order(of_family, |(_, tried)| tried.member.section().area.square_inches());
    let sizes = sizes.into_iter().map(|(index, tried)| candidate(index, tried, found)).collect();
    ShownFamily { name: name(family, input), sizes }
}

fn name(family: Family, input: &HeaderInput) -> String {
    let wood = format!("{} {}", input.species.short_name(), input.grade.name());
    match family {
        Family::BuiltUp2x => format!("Built-up 2x, {wood}"),
        Family::Sawn4x => format!("4x in one piece, {wood}"),
        Family::Sawn6x => format!("6x in one piece, {wood}"),
        Family::Lvl => "LVL, 1-3/4\" plies, a common grade".to_owned(),
        Family::Glulam => "Glued laminated".to_owned(),
        Family::Labelled => "From its label".to_owned(),
    }
}

fn candidate(index: usize, tried: &Tried, found: &HeaderAnswer) -> Candidate {
    let governing = tried.governing();
    let note = match (&tried.outside, tried.misfit, governing) {
        (Some(outside), ..) => outside.clone(),
        (None, Some(misfit), _) => words::misfit(misfit),
        (None, None, Some(check)) => format!("{}, {}", words::percent(check.share), check.limit.words()),
        (None, None, None) => String::new(),
    };
    Candidate {
        value: tried.member.name(),
        name: tried.member.name(),
        state: state(tried),
        note,
        share: governing.map(|check| check.share),
        chosen: index == found.judged,
        smallest: found.smallest.contains(&index),
    }
}
