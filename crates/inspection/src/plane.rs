//! Plumb and plane: lean, bow, and the faces of neighbours. No code prints a tolerance for framing; the lists of the
//! trade differ, and all of them are here.

use measure::Length;
use standards::{Source, Status};

use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::subject::Subject;
use crate::verdict::Check;

/// A tolerance as the trade writes it: so much in such a length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    /// How much.
    pub amount: Length,
    /// In which length.
    pub over: Length,
    /// Who says so.
    pub source: Source,
}

impl Tolerance {
    const fn new(amount: f64, over: f64, document: &'static str, place: &'static str, status: Status) -> Self {
        Self {
            amount: Length::from_inches(amount),
            over: Length::from_inches(over),
            source: Source::new(document, place, status),
        }
    }

    /// What it allows over another length: in proportion.
    #[must_use]
    pub fn over(&self, length: Length) -> Length {
        self.amount * (length / self.over)
    }
}

/// Plumb: rough framing in common use, 1/4 in per 10 ft. The one to take where none is asked for.
pub const PLUMB_IN_COMMON_USE: Tolerance =
    Tolerance::new(0.25, 120.0, "Trade journal on tolerances", "rough framing in common use", Status::LookedUp);

/// Plumb, by every list at hand.
pub const PLUMB: [Tolerance; 7] = [
    PLUMB_IN_COMMON_USE,
    Tolerance::new(0.25, 120.0, "Construction tolerance handbook", "before gypsum board or plaster", Status::LookedUp),
    Tolerance::new(0.25, 96.0, "Federal guide specification", "studs for board, plaster, tile", Status::LookedUp),
    Tolerance::new(0.125, 96.0, "Federal guide specification", "studs for thin-set tile", Status::LookedUp),
    Tolerance::new(0.25, 32.0, "Residential and light commercial standard", "wall plumb", Status::LookedUp),
    Tolerance::new(0.25, 32.0, "Remodeler standard", "walls", Status::LookedUp),
    Tolerance::new(0.375, 32.0, "Performance guideline", "wall plumb", Status::LookedUp),
];

/// Flatness of a wall's or a floor's surface under a straightedge, by every list at hand.
pub const FLATNESS: [Tolerance; 5] = [
    Tolerance::new(0.25, 32.0, "Remodeler performance standard", "floor ridge or dip", Status::LookedUp),
    Tolerance::new(0.375, 32.0, "Warranty standard in a builder's binder", "subfloor: less than", Status::LookedUp),
    Tolerance::new(0.5, 32.0, "Warranty standard in a builder's binder", "ceiling bow: less than", Status::LookedUp),
    Tolerance::new(0.5, 32.0, "Performance guideline", "wall bow", Status::FromMemory),
    Tolerance::new(0.25, 32.0, "A builder's own standard", "wall bow", Status::LookedUp),
];

/// Faces of neighbouring studs or joists behind gypsum board: 1/8 in.
pub const NEIGHBOURS_FACES: Source = Source::new("Gypsum Association guide", "section II", Status::LookedUp);
const FACE_STEP: Length = Length::from_inches(0.125);

/// A lean, or a hollow under a straightedge, as it was measured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// How much out, with or without its sign.
    pub out: Length,
    /// Over which height or under which straightedge.
    pub over: Length,
}

/// Judges a lean. A tolerance for one height is taken in proportion for another.
#[must_use]
pub fn judge_plumb(found: Seen<Measured>, tolerance: &Tolerance) -> Finding {
    let mut finding = Finding::default();
    let Some(found) = found.observed().filter(|found| found.over > Length::ZERO) else {
        finding.not_seen.push(Subject::Plumb);
        return finding;
    };
    let limit = tolerance.over(found.over);
    finding.checks.push(Check::at_most(Subject::Plumb, found.out.abs(), limit, tolerance.source));
    if finding.is_out(Subject::Plumb) {
        finding.remedy(&[Remedy::PlumbAndBrace]);
    }
    finding
}

/// Judges a hollow or a hump under a straightedge.
///
/// A surface is not hollow in proportion to the straightedge. Over a shorter one than the tolerance names, what is out
/// is out and the rest was not seen; over a longer one, what is within is within and the rest was not seen.
#[must_use]
pub fn judge_flatness(found: Seen<Measured>, tolerance: &Tolerance) -> Finding {
    let mut finding = Finding::default();
    let Some(found) = found.observed() else {
        finding.not_seen.push(Subject::Flatness);
        return finding;
    };
    let check = Check::at_most(Subject::Flatness, found.out.abs(), tolerance.amount, tolerance.source);
    let told = if check.verdict.holds() { found.over >= tolerance.over } else { found.over <= tolerance.over };
    if told {
        finding.checks.push(check);
    } else {
        finding.not_seen.push(Subject::Flatness);
    }
    if finding.is_out(Subject::Flatness) {
        finding.remedy(&[Remedy::PlaneOrPack, Remedy::StraightenOrChange]);
    }
    finding
}

/// One step from a face to its neighbour's.
#[derive(Clone, Debug, PartialEq)]
pub struct FaceStep {
    /// The first of the two, counted from 0.
    pub between: usize,
    /// The step beside its limit.
    pub check: Check,
}

/// Judges faces by their distance from a string or a laser, in their order along the wall: each step from neighbour to
/// neighbour, 1/8 in at most.
#[must_use]
pub fn judge_faces(distances: &[Length]) -> Vec<FaceStep> {
    let step = |(between, pair): (usize, &[Length])| {
        let check = Check::at_most(Subject::FaceToFace, (pair[1] - pair[0]).abs(), FACE_STEP, NEIGHBOURS_FACES);
        FaceStep { between, check }
    };
    distances.windows(2).enumerate().map(step).collect()
}

/// The hollow or hump of the middle of three points from the line between its neighbours: positive towards the string.
/// The distances are from a string; the places are along it.
#[must_use]
pub fn bow_of_three(places: [Length; 3], distances: [Length; 3]) -> Length {
    let [from, at, to] = places;
    let share = if to == from { 0.0 } else { (at - from) / (to - from) };
    distances[0] + (distances[2] - distances[0]) * share - distances[1]
}
