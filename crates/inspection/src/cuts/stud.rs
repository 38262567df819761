//! Studs that are notched or bored.

use measure::{Length, Ratio};
use standards::irc_2021::r602_6::{
    BESIDE_A_HOLE, DOUBLED_IN_A_ROW, HOLE_TO_FACE, SHARES, StudIn, hole_limit, notch_limit,
};

use crate::amount::Count;
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// Whether the stud is doubled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubled {
    /// One stud.
    Single,
    /// Two studs nailed together, both bored.
    Doubled {
        /// How many such doubled studs in a row are bored, this one among them.
        bored_in_a_row: Seen<u8>,
    },
}

/// What was cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StudCut {
    /// A notch into a face.
    Notch {
        /// How deep.
        depth: Length,
    },
    /// A hole through the wide side.
    Hole {
        /// Its diameter; across the stud's width where it is bored at an angle.
        diameter: Length,
        /// Wood between the hole and the nearer face.
        to_face: Seen<Length>,
        /// Whether a notch is in the same section.
        notch_beside: Seen<bool>,
    },
}

/// A stud with a cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutStud {
    /// Width of the stud as measured, across the wall: 3-1/2 in for a 2x4, 4 in for an old full-size one.
    pub width: Length,
    /// What it stands in.
    pub stud_in: StudIn,
    /// Whether it is doubled.
    pub doubled: Doubled,
    /// What was cut.
    pub cut: StudCut,
}

impl CutStud {
    /// The share of the width that the cut takes.
    #[must_use]
    pub fn share(&self) -> Ratio {
        match self.cut {
            StudCut::Notch { depth } => depth / self.width,
            StudCut::Hole { diameter, .. } => diameter / self.width,
        }
    }
}

/// The limits of a stud, to show beside a cut and before one is made. Exact: round down before a cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudLimits {
    /// Deepest notch.
    pub notch: Length,
    /// Widest hole in a single stud.
    pub hole: Length,
    /// Widest hole in a doubled stud.
    pub hole_in_doubled: Length,
    /// Least wood between a hole and the face.
    pub hole_to_face: Length,
}

/// The limits of a stud of this width.
#[must_use]
pub fn stud_limits(width: Length, stud_in: StudIn) -> StudLimits {
    StudLimits {
        notch: notch_limit(stud_in, width),
        hole: hole_limit(stud_in, width, false),
        hole_in_doubled: hole_limit(stud_in, width, true),
        hole_to_face: HOLE_TO_FACE,
    }
}

/// Judges a notch or a hole in a stud (R602.6).
#[must_use]
pub fn judge_cut_stud(stud: &CutStud) -> Finding {
    let mut finding = Finding::default();
    match stud.cut {
        StudCut::Notch { depth } => {
            let limit = notch_limit(stud.stud_in, stud.width);
            finding.checks.push(Check::at_most(Subject::NotchDepth, depth, limit, SHARES));
            if finding.is_out(Subject::NotchDepth) {
                finding.remedy(&[Remedy::FullHeightStudBeside, Remedy::ListedRepairPart, Remedy::EngineerDetail]);
            }
        }
        StudCut::Hole { diameter, to_face, notch_beside } => {
            hole(&mut finding, stud, diameter);
            finding.length(Subject::HoleToEdge, to_face, Question::HoleToEdge, |found| {
                Check::at_least(Subject::HoleToEdge, found, HOLE_TO_FACE, BESIDE_A_HOLE)
            });
            beside(&mut finding, notch_beside);
            hole_remedies(&mut finding, stud, diameter);
        }
    }
    finding
}

fn hole(finding: &mut Finding, stud: &CutStud, diameter: Length) {
    let limits = stud_limits(stud.width, stud.stud_in);
    let limit = match stud.doubled {
        Doubled::Single => limits.hole,
        Doubled::Doubled { .. } => limits.hole_in_doubled,
    };
    finding.checks.push(Check::at_most(Subject::HoleDiameter, diameter, limit, SHARES));
    let leans_on_the_double = Check::at_most(Subject::HoleDiameter, diameter, limits.hole, SHARES);
    let Doubled::Doubled { bored_in_a_row } = stud.doubled else { return };
    if leans_on_the_double.verdict.holds() {
        return;
    }
    match bored_in_a_row {
        Seen::Observed(row) => {
            let (row, most) = (Count::of(u32::from(row)), Count::of(u32::from(DOUBLED_IN_A_ROW)));
            finding.checks.push(Check::at_most(Subject::DoubledInARow, row, most, SHARES));
        }
        Seen::NotObserved => {
            finding.not_seen.push(Subject::DoubledInARow);
            finding.questions.push(Question::DoubledInARow);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::DoubledInARow),
    }
}

fn beside(finding: &mut Finding, notch_beside: Seen<bool>) {
    match notch_beside {
        Seen::Observed(true) => finding.wrong.push(Subject::HoleBesideNotch),
        Seen::Observed(false) => {}
        Seen::NotObserved => {
            finding.not_seen.push(Subject::HoleBesideNotch);
            finding.questions.push(Question::NotchBesideHole);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::HoleBesideNotch),
    }
}

/// Doubling is a cure only for a hole that the doubled share allows and that is right in all else.
fn hole_remedies(finding: &mut Finding, stud: &CutStud, diameter: Length) {
    let out = [Subject::HoleDiameter, Subject::HoleToEdge, Subject::HoleBesideNotch, Subject::DoubledInARow];
    let count = out.iter().filter(|of| finding.is_out(**of)).count();
    if count == 0 {
        return;
    }
    let doubled = stud_limits(stud.width, stud.stud_in).hole_in_doubled;
    let would_do = Check::at_most(Subject::HoleDiameter, diameter, doubled, SHARES).verdict.holds();
    let single = stud.doubled == Doubled::Single;
    if single && would_do && count == 1 && finding.is_out(Subject::HoleDiameter) {
        finding.remedy(&[Remedy::DoubleStud]);
    }
    finding.remedy(&[Remedy::FullHeightStudBeside, Remedy::ListedRepairPart, Remedy::EngineerDetail]);
}
