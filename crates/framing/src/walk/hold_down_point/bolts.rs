//! Anchor bolts of one piece of sill plate.

use inspection::anchor::{AnchorBolt, Nut, PlateWasher, Sill, SillRequired, Washer, judge_sill, thread_needed};
use inspection::{Check, Finding, Remedy, Required, Seen, Subject, Verdict};
use lumber::SawnSize;
use measure::{Denominator, Length, Rounding};
use standards::asme_b18::HEX_NUTS;
use standards::irc_2021::r403_1_6::{ANCHOR_BOLTS, MIDDLE_THIRD, SPACING, nearest_to_end};
use standards::irc_2021::r602_11;

use super::{DIAMETER, EMBEDMENT, HoldDownPointCase, each, input_of, lengths};
use crate::walk::answer::Answer;
use crate::walk::asked::asked_by;
use crate::walk::reading::{Field, Inputs, short, typed};
use crate::walk::words::{self, length};

const AT: Field = Field::new("bolts", "Place of the bolt", 0.0, 1200.0);
const PROJECTION: Field = Field::new("projections", "Bolt above the foundation", 0.0, 48.0);
const FROM_FACE: Field = Field::new("from_faces", "Bolt from the plate's face", 0.0, 24.0);
const PLATES: Field = Field::new("plates", "Plate thickness", 0.5, 12.0);
const PLATE_WIDTH: Field = Field::new("plate_width", "Plate width", 1.5, 24.0);
const PLATE_LENGTH: Field = Field::new("plate_length", "Length of the plate piece", 1.0, 1200.0);
const ASKED: Field = Field::new("required_spacing", "Required spacing", 1.0, 144.0);
const ASKED_DIAMETER: Field = Field::new("required_bolt_diameter", "Bolt diameter asked for", 0.25, 2.0);
const WASHER_SIDE: Field = Field::new("washers", "Side of the washer", 0.5, 12.0);
const WASHER_THICKNESS: Field = Field::new("washers", "Thickness of the washer", 0.02, 1.0);

pub(super) const NUTS: [(&str, Nut); 4] =
    [("tight", Nut::Tight), ("loose", Nut::Loose), ("missing", Nut::Missing), ("none", Nut::Missing)];

/// A piece of sill as it was measured.
pub(super) struct Measured {
    sill: Sill,
    plates: Vec<Length>,
    /// Whether its length and the places of its bolts are known.
    whole: bool,
    /// Bolts whose diameter was measured.
    diameters: Vec<bool>,
    /// The diameter that the drawing asks for, where it was typed.
    asked_diameter: Option<Required<Length>>,
}

pub(super) fn read(inputs: &mut Inputs, case: &HoldDownPointCase) -> Measured {
    let width = plate_width(inputs, case);
    let plates = plates(inputs, case);
    let piece = inputs.length(&case.plate_length, &PLATE_LENGTH);
    let places = inputs.lengths(&case.bolts, &AT);
    let (bolts, diameters) = bolts(inputs, case, &places);
    let required = asked(inputs, case);
    let asked_diameter = inputs.length(&case.required_bolt_diameter, &ASKED_DIAMETER);
    let asked_diameter = super::required(asked_diameter, &asked_by(&case.drawing, &case.drawing_revision));
    if let Some(piece) = piece
        && let Some(past) = places.iter().find(|place| **place > piece)
    {
        let (past, piece) = (length(*past), length(piece));
        inputs.refuse(AT.id, format!("{past} was given; the piece is {piece} long. Measure both again."));
    }
    let total = plates.iter().copied().fold(Length::ZERO, |total, plate| total + plate);
    let whole = piece.is_some() && !places.is_empty();
    let sill = Sill { length: piece.unwrap_or(Length::ZERO), width, plates: total, required, bolts };
    Measured { sill, plates, whole, diameters, asked_diameter }
}

pub(super) fn answer(inputs: &mut Inputs, answer: &mut Answer, case: &HoldDownPointCase) {
    let Measured { sill, plates, whole, diameters, asked_diameter } = read(inputs, case);
    let found = judge_sill(&sill);
    let several = sill.bolts.len() > 1;
    for ((index, finding), measured) in found.bolts.iter().enumerate().zip(diameters) {
        let at = several.then(|| format!("bolt {} at {}", index + 1, length(sill.bolts[index].at)));
        let mut finding = if measured { finding.clone() } else { without_diameter(finding) };
        if let Some(asked) = asked_diameter.as_ref().filter(|_| measured) {
            thinner_than_drawn(&mut finding, sill.bolts[index].diameter, asked);
        }
        answer.finding(&finding, at.as_deref(), input_of);
    }
    questions(answer, case, &sill);
    one_plate(answer, &sill, &plates);
    if whole {
        let all = sill.bolts.len();
        answer.say(format!("{} of {all} bolts hold: with a tight nut, a washer, and thread for the nut.", found.hold));
        answer.fact("Bolts that hold", format!("{} of {all}", found.hold), None);
        answer.finding(&found.piece, Some("plate piece"), input_of);
    } else {
        answer.ask("How long is this piece of plate, and where along it do its bolts stand?", PLATE_LENGTH.id);
    }
    facts(answer, &sill, &plates);
}

/// A bolt thinner than the drawn one is out, whatever the code asks.
fn thinner_than_drawn(finding: &mut Finding, diameter: Length, asked: &Required<Length>) {
    let check = Check::size_at_least(Subject::BoltDiameter, diameter, asked.value, asked.origin.clone());
    if check.verdict == Verdict::Out {
        finding.remedies.extend([Remedy::DrilledAnchor, Remedy::EngineerDetail, Remedy::ApproveAsIs]);
    }
    finding.checks.push(check);
}

/// A diameter that nobody measured is not within.
fn without_diameter(finding: &Finding) -> Finding {
    let mut finding = finding.clone();
    finding.checks.retain(|check| check.of != Subject::BoltDiameter);
    finding.not_seen.push(Subject::BoltDiameter);
    finding
}

fn questions(answer: &mut Answer, case: &HoldDownPointCase, sill: &Sill) {
    if typed(&case.plate).is_none() && typed(&case.plate_width).is_none() {
        answer.ask("How wide is the plate?", "plate");
    }
    let unfit = |bolt: &AnchorBolt| {
        matches!(bolt.nut, Seen::Observed(Nut::Missing)) || bolt.washer == Seen::Observed(Washer::None)
    };
    if typed(&case.stud_in_the_way).is_none() && sill.bolts.iter().any(unfit) {
        answer.ask("Is a stud in the way of the nut or the washer?", "stud_in_the_way");
    }
    if answer.reply.not_seen.iter().any(|says| says.contains(words::subject(Subject::BoltDiameter))) {
        answer.ask("What is the diameter of the bolt?", DIAMETER.id);
    }
    if sill.bolts.iter().any(|bolt| bolt.washer == Seen::NotObserved) {
        answer.ask("Which washer is under the nut: none, cut, or a plate, and of what size?", "washers");
    }
}

fn plate_width(inputs: &mut Inputs, case: &HoldDownPointCase) -> Length {
    const TWO_BY_FOUR: Length = Length::from_inches(3.5);
    let measured = inputs.length(&case.plate_width, &PLATE_WIDTH);
    let plate = typed(&case.plate).and_then(|text| match SawnSize::from_text(text) {
        Ok(size) => Some(size.depth()),
        Err(problem) => {
            inputs.refuse("plate", problem.to_string());
            None
        }
    });
    measured.or(plate).unwrap_or_else(|| {
        if typed(&case.plate).is_none() {
            inputs.assume("plate", "Plate: 2x4 (the narrowest in common use).");
        }
        TWO_BY_FOUR
    })
}

/// The plates under the nut, from the foundation up.
fn plates(inputs: &mut Inputs, case: &HoldDownPointCase) -> Vec<Length> {
    let plates = inputs.lengths(&case.plates, &PLATES);
    if plates.is_empty() {
        if case.plates.as_ref().is_none_or(Vec::is_empty) {
            inputs.assume(PLATES.id, "Plates under the nut: one, 1-1/2\" (a single sill).");
        }
        return vec![Length::from_inches(1.5)];
    }
    plates
}

/// The bolts, one, somewhere, where no places were given; and whether each diameter was measured.
fn bolts(inputs: &mut Inputs, case: &HoldDownPointCase, places: &[Length]) -> (Vec<AnchorBolt>, Vec<bool>) {
    let count = places.len().max(1);
    let diameters = lengths(inputs, &case.diameters, &DIAMETER, count);
    let embedments = lengths(inputs, &case.embedments, &EMBEDMENT, count);
    let projections = lengths(inputs, &case.projections, &PROJECTION, count);
    let from_faces = lengths(inputs, &case.from_faces, &FROM_FACE, count);
    let nuts =
        each(inputs, (&case.nuts, "nuts"), count, |inputs, text, which| inputs.choice_one(text, "nuts", &NUTS, which));
    let washers = each(inputs, (&case.washers, "washers"), count, washer);
    let stud_in_the_way = inputs.yes(&case.stud_in_the_way, "stud_in_the_way").unwrap_or(false);
    let measured: Vec<bool> = diameters.iter().map(|diameter| diameter.observed().is_some()).collect();
    if measured.contains(&false) {
        inputs.assume(DIAMETER.id, "Bolt diameter: 1/2\" (the least that the code takes) where none was measured.");
    }
    let bolt = |index: usize| AnchorBolt {
        at: places.get(index).copied().unwrap_or(Length::ZERO),
        diameter: diameters[index].observed().unwrap_or(Length::from_inches(0.5)),
        embedment: embedments[index],
        projection: projections[index],
        nut: nuts[index],
        washer: washers[index],
        from_face: from_faces[index],
        stud_in_the_way,
    };
    ((0..count).map(bolt).collect(), measured)
}

/// `none`, `cut`, or a plate washer by its size.
fn washer(inputs: &mut Inputs, text: &str, which: Option<usize>) -> Option<Washer> {
    match text.to_ascii_lowercase().as_str() {
        "none" | "missing" => return Some(Washer::None),
        "cut" | "round" => return Some(Washer::Cut),
        _ => {}
    }
    let sizes: Vec<&str> = text.split(['x', 'X', '×']).map(str::trim).collect();
    let [one, other, thick] = sizes[..] else {
        let problem = "none, cut or a plate by its size, such as 3 x 3 x 0.229, is taken";
        inputs.refuse_one("washers", which, &format!("“{}” was given; {problem}.", short(text)));
        return None;
    };
    let sides = (inputs.read_one(one, &WASHER_SIDE, which), inputs.read_one(other, &WASHER_SIDE, which));
    let thickness = inputs.read_one(thick, &WASHER_THICKNESS, which)?;
    Some(Washer::Plate { side: sides.0?.min(sides.1?), thickness })
}

fn asked(inputs: &mut Inputs, case: &HoldDownPointCase) -> SillRequired {
    let by = asked_by(&case.drawing, &case.drawing_revision);
    let mut required = SillRequired::by_code();
    if let Some(spacing) = inputs.length(&case.required_spacing, &ASKED) {
        required.spacing = Required::new(spacing, by);
    }
    let says = "Plate washers: not asked for (they are in braced walls in the highest seismic categories).";
    let options = [("yes", true), ("no", false)];
    if inputs.choice_or(&case.plate_washers_required, "plate_washers_required", &options, false, says) {
        let washer = PlateWasher { side: r602_11::SIDE, thickness: r602_11::THICKNESS };
        required.plate_washer = Some(Required::new(washer, r602_11::PLATE_WASHERS));
    }
    required
}

/// Under a stack of plates, whether the bolt would do for the lowest alone.
fn one_plate(answer: &mut Answer, sill: &Sill, plates: &[Length]) {
    let [lowest, _, ..] = plates else { return };
    let alone = judge_sill(&Sill { plates: *lowest, ..sill.clone() });
    for (index, finding) in alone.bolts.iter().enumerate() {
        let thread = finding.check(Subject::ThreadForNut);
        if let Some(check) = thread {
            let at = if sill.bolts.len() > 1 {
                format!("bolt {}, lowest plate alone", index + 1)
            } else {
                "lowest plate alone".to_owned()
            };
            answer.check(check, Some(&at));
        }
    }
    if alone.bolts.iter().any(|finding: &Finding| finding.check(Subject::ThreadForNut).is_some()) {
        answer.caution("Nailing the upper plate to the lower one is a path of its own, which an engineer designs.");
    }
}

fn facts(answer: &mut Answer, sill: &Sill, plates: &[Length]) {
    let third = words::middle_third_window(sill.width);
    let what = format!("Where across a plate of {} a bolt may stand", length(sill.width));
    answer.fact(what, third, Some(words::published(MIDDLE_THIRD)));
    let Some(bolt) = sill.bolts.first() else { return };
    let plate_washer = Washer::Plate { side: r602_11::SIDE, thickness: r602_11::THICKNESS };
    let washers = [("cut washer", Washer::Cut), ("plate washer 0.229 in thick", plate_washer)];
    let mut under = Length::ZERO;
    for (index, plate) in plates.iter().enumerate() {
        under += *plate;
        for (name, washer) in washers {
            if let Some(needed) = thread_needed(bolt.diameter, under, washer) {
                let count = index + 1;
                let of = if plates.len() == 1 {
                    "the plate".to_owned()
                } else {
                    format!("{count} of {} plates", plates.len())
                };
                let what = format!("Bolt needed above the foundation for {of}, {name}");
                let needed = words::limit_length(needed, Rounding::Up);
                answer.fact(what, needed, Some(words::published(HEX_NUTS)));
            }
        }
    }
    let clause = || Some(words::published(ANCHOR_BOLTS));
    let nearest = nearest_to_end(bolt.diameter);
    answer.fact("Nearest that a bolt may stand to the end of a plate piece", length(nearest), clause());
    answer.fact("Widest spacing of bolts by the code", SPACING.to_feet_inches(Denominator::Sixteenth), clause());
    if bolt.nut == Seen::Observed(Nut::Missing) {
        answer.caution("Nut and washer belong on every bolt that is counted, tightened.");
    }
}
