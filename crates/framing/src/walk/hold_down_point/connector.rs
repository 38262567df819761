//! What ties and straps have in common: their nails by count, the uplift asked for, and what their maker lists.

use inspection::strap::Nails;
use inspection::{Finding, Origin, Required, Subject, Verdict};
use measure::Force;

use super::{ASKED_NAILS, FASTENERS, HoldDownPointCase, required};
use crate::walk::Text;
use crate::walk::answer::Answer;
use crate::walk::asked::asked_by;
use crate::walk::reading::{Field, Inputs, typed};
use crate::walk::words::amount;

pub(super) const UPLIFT: Field = Field::new("required_uplift", "Uplift asked for", 1.0, 50_000.0);
pub(super) const LISTED: Field = Field::new("listed_uplift", "Listed uplift", 1.0, 50_000.0);
const POUNDS: [&str; 3] = ["lb", "lbs", "pounds"];

/// Nails asked for and found.
pub(super) fn nails(inputs: &mut Inputs, case: &HoldDownPointCase) -> Nails {
    let asked = inputs.count(&case.required_nails, &ASKED_NAILS).map(|count| count as u16);
    let by = asked_by(&case.drawing, &case.drawing_revision);
    let found = inputs.seen_count(&case.fasteners, &FASTENERS).map(|count| count as u16);
    Nails { required: required(asked, &by), found }
}

/// Uplift that is asked for, and what the maker lists.
pub(super) fn uplift(inputs: &mut Inputs, case: &HoldDownPointCase) -> [Option<Required<Force>>; 2] {
    let by = asked_by(&case.drawing, &case.drawing_revision);
    let asked = force(inputs, &case.required_uplift, &UPLIFT);
    // What a maker lists is read from the maker's list, whatever the drawing says.
    let listed = force(inputs, &case.listed_uplift, &LISTED);
    [required(asked, &by), required(listed, &Origin::Typed)]
}

fn force(inputs: &mut Inputs, text: &Text, field: &Field) -> Option<Force> {
    typed(text).and_then(|text| inputs.number_one(text, field, &POUNDS, None)).map(Force::from_pounds)
}

/// What it holds beside what is asked, where that is too little.
pub(super) fn too_weak(answer: &mut Answer, finding: &Finding) {
    let weak = finding.check(Subject::Uplift).filter(|check| check.verdict == Verdict::Out);
    if let Some(weak) = weak {
        let holds = amount(weak.limit.value());
        answer.figure(Subject::Uplift, format!("{} of {}", holds.trim_end_matches(" lb"), amount(weak.found)));
    }
}

/// What a maker lists is listed for a connector with all of its nails.
pub(super) fn listed_with_every_nail(answer: &mut Answer, listed: bool) {
    if listed {
        answer.caution("What a maker lists counts for this wood, with every nail in, of the kind that is listed.");
    }
}
