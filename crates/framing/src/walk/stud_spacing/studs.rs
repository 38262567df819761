//! Single studs of the row: packs that lack a stud, and studs that are bowed or notched.

use inspection::cuts::{CutStud, Doubled, StudCut};
use inspection::plane::FLATNESS;
use inspection::stud_spacing::{StudAsked, judge_stud};
use inspection::{Origin, Question, Required, Seen};
use lumber::SawnSize;
use measure::Length;
use standards::irc_2021::r602_3_5::StudRow;
use standards::irc_2021::r602_6::StudIn;

use super::StudSpacingCase;
use crate::walk::answer::Answer;
use crate::walk::asked::asked_by;
use crate::walk::reading::{Field, Inputs, could_not_be_seen, short, typed};
use crate::walk::words;

const DOUBLE_COUNT: Field = Field::new("doubles", "Studs in the pack", 1.0, 12.0);
const DOUBLE: Field = Field::new("doubles", "Place of the double", 0.0, 2400.0);
const FOUND: Field = Field::new("studs_found", "Place of the stud", 0.0, 2400.0);
const OUT_BY: Field = Field::new("studs_found", "Bow or notch", 0.0, 12.0);
const BOW_LIMIT: Field = Field::new("bow_limit", "Most that a stud may be bowed", 1.0 / 64.0, 6.0);

/// A place where several studs are asked for.
pub(super) struct Pack {
    /// Its number among the readings, from 0.
    index: usize,
    /// Where it stands, from the plate's end.
    pub(super) at: Length,
    /// Studs found.
    pub(super) found: Seen<u8>,
    /// Studs asked for.
    pub(super) asked: u8,
}

/// `64: 1 of 2`: found and asked. What cannot be read is refused.
pub(super) fn packs(inputs: &mut Inputs, case: &StudSpacingCase) -> Vec<Pack> {
    let mut packs = Vec::new();
    for (index, text) in inputs.list(&case.doubles, DOUBLE.id).iter().enumerate() {
        let which = Some(index + 1);
        let parts = text.rsplit_once(':').and_then(|(at, count)| Some((at, count.split_once(" of ")?)));
        let Some((at, (found, asked))) = parts else {
            let begun = text.trim_end().ends_with(": of");
            let problem = "a double is written by its place, found and asked, like 64: 1 of 2.";
            inputs.refuse_one(DOUBLE.id, which, if begun { "how many were found, of how many?" } else { problem });
            continue;
        };
        let at = inputs.read_one(at, &DOUBLE, which);
        let found = if could_not_be_seen(found) {
            Some(Seen::CouldNotBeSeen)
        } else {
            inputs.count_one(found, &DOUBLE_COUNT, which).map(|found| Seen::Observed(found as u8))
        };
        let asked = inputs.count_one(asked, &DOUBLE_COUNT, which).map(|count| count as u8);
        if let (Some(at), Some(found), Some(asked)) = (at, found, asked) {
            packs.push(Pack { index, at, found, asked });
        }
    }
    packs
}

/// The packs of a drawing, `64: 2, 96: 3`, as readings that nobody has looked at yet: `64: not seen of 2`.
///
/// # Errors
/// A sentence, when the text cannot be read.
pub fn packs_to_look_at(drawn: &str) -> Result<Vec<String>, String> {
    let mut inputs = Inputs::default();
    let pack = |text: &str| {
        let (at, asked) = text.rsplit_once(':')?;
        inputs.read_one(at, &DOUBLE, None)?;
        let asked = inputs.count_one(asked.trim(), &DOUBLE_COUNT, None)?;
        Some(format!("{}: not seen of {asked}", at.trim()))
    };
    let packs: Option<Vec<String>> =
        drawn.split(',').map(str::trim).filter(|text| !text.is_empty()).map(pack).collect();
    packs.ok_or_else(|| {
        let problem = inputs.refused.pop().map(|refusal| format!(" {}", refusal.problem)).unwrap_or_default();
        format!("Packs are written by their places and how many studs, like 64: 2, 96: 3.{problem}")
    })
}

/// Packs beside what is asked of them.
pub(super) fn doubles(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase) {
    let by = asked_by(&case.drawing, &case.drawing_revision);
    for Pack { index, at, found, asked } in packs(inputs, case) {
        let asked = StudAsked::Plies { required: Required::new(asked, by.clone()), found };
        let at = format!("at {}", words::length(at));
        answer.finding(&judge_stud(index, &asked).finding, Some(&at), no_question);
    }
}

const fn no_question(_: Question) -> &'static str {
    "doubles"
}

/// What is wrong with one stud.
pub(super) struct Wrong {
    index: usize,
    /// Where it stands, from the plate's end.
    pub(super) at: Length,
    /// Bowed, or else notched.
    pub(super) bowed: bool,
    /// By how much.
    pub(super) by: Seen<Length>,
}

/// `33: bowed 3/8`, `33: notched 1`. What cannot be read is refused.
pub(super) fn wrongs(inputs: &mut Inputs, case: &StudSpacingCase) -> Vec<Wrong> {
    let mut wrongs = Vec::new();
    for (index, text) in inputs.list(&case.studs_found, FOUND.id).iter().enumerate() {
        let which = Some(index + 1);
        let Some((at, bowed, by)) = parts(text) else {
            let begun = text.trim_end().ends_with(": bowed") || text.trim_end().ends_with(": notched");
            let taken = "a stud is written by its place and what is wrong, like 33: bowed 3/8 or 33: notched 1.";
            let refused = format!("“{}” was given; {taken}", short(text));
            inputs.refuse_one(FOUND.id, which, if begun { "by how much?" } else { &refused });
            continue;
        };
        let at = inputs.read_one(at, &FOUND, which);
        let by = if could_not_be_seen(by) {
            Some(Seen::CouldNotBeSeen)
        } else {
            inputs.read_one(by, &OUT_BY, which).map(Seen::Observed)
        };
        if let (Some(at), Some(by)) = (at, by) {
            wrongs.push(Wrong { index, at, bowed, by });
        }
    }
    wrongs
}

/// Single studs beside how straight and how whole they must be.
pub(super) fn single(inputs: &mut Inputs, answer: &mut Answer, case: &StudSpacingCase, row: &StudRow) {
    let limit = inputs.length(&case.bow_limit, &BOW_LIMIT);
    for Wrong { index, at, bowed, by } in wrongs(inputs, case) {
        let at = format!("at {}", words::length(at));
        let asked = if bowed { straight(inputs, case, limit, by) } else { notched(inputs, row, by) };
        match asked {
            Some(asked) => answer.finding(&judge_stud(index, &asked).finding, Some(&at), no_question),
            None => answer.not_seen(inspection::Subject::NotchDepth, Some(&at)),
        }
    }
}

fn parts(text: &str) -> Option<(&str, bool, &str)> {
    let (at, rest) = text.rsplit_once(':')?;
    let (what, out_by) = rest.trim().split_once(' ')?;
    match what {
        "bowed" => Some((at, true, out_by.trim())),
        "notched" => Some((at, false, out_by.trim())),
        _ => None,
    }
}

/// No code prints how straight a stud must be. Where nothing was typed, the strictest list for a wall stands in.
fn straight(
    inputs: &mut Inputs,
    case: &StudSpacingCase,
    limit: Option<Length>,
    found: Seen<Length>,
) -> Option<StudAsked> {
    let of_a_wall = FLATNESS.iter().filter(|list| list.source.place.contains("wall"));
    let strictest = of_a_wall.reduce(|one, other| if other.amount < one.amount { other } else { one })?;
    if typed(&case.bow_limit).is_none() && !inputs.assumed.iter().any(|one| one.input.as_deref() == Some(BOW_LIMIT.id))
    {
        let says = format!(
            "{}: {} (the strictest list for a wall; no code prints one).",
            BOW_LIMIT.label,
            words::length(strictest.amount)
        );
        inputs.assume(BOW_LIMIT.id, says);
    }
    let limit = match limit {
        Some(limit) => Required::new(limit, Origin::Typed),
        None => Required::new(strictest.amount, strictest.source),
    };
    Some(StudAsked::Straight { limit, found })
}

/// In an exterior or bearing wall: the stricter of the two. None where it could not be measured.
fn notched(inputs: &mut Inputs, row: &StudRow, depth: Seen<Length>) -> Option<StudAsked> {
    const SAYS: &str = "Notched studs: judged as in an exterior or bearing wall (the stricter of the two).";
    if !inputs.assumed.iter().any(|one| one.says == SAYS) {
        inputs.assume(FOUND.id, SAYS);
    }
    let width = SawnSize::from_text(row.size).map(SawnSize::depth).ok()?;
    let cut = StudCut::Notch { depth: depth.observed()? };
    let stud_in = StudIn::ExteriorOrBearing;
    Some(StudAsked::Cut(CutStud { width, stud_in, doubled: Doubled::Single, cut }))
}
