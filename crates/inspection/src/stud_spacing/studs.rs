//! What was seen of single studs: doubles that are single, bowed and cut ones.

use measure::Length;

use crate::amount::Count;
use crate::cuts::{CutStud, judge_cut_stud};
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::Subject;
use crate::verdict::{Check, Verdict};

/// What is asked of one stud and what was found.
#[derive(Clone, Debug, PartialEq)]
pub enum StudAsked {
    /// So many studs nailed together.
    Plies {
        /// How many are asked for.
        required: Required<u8>,
        /// How many were found.
        found: Seen<u8>,
    },
    /// Straight to within a limit.
    Straight {
        /// The most that it may be out of a line between its ends.
        limit: Required<Length>,
        /// How much it is.
        found: Seen<Length>,
    },
    /// A notch or a hole.
    Cut(CutStud),
}

/// One stud's finding.
#[derive(Clone, Debug, PartialEq)]
pub struct StudFinding {
    /// Which stud, counted from the end stud as 0.
    pub stud: usize,
    /// How it stands.
    pub finding: Finding,
}

/// Judges one stud.
#[must_use]
pub fn judge_stud(stud: usize, asked: &StudAsked) -> StudFinding {
    let finding = match asked {
        StudAsked::Plies { required, found } => plies(required, *found),
        StudAsked::Straight { limit, found } => straight(limit, *found),
        StudAsked::Cut(cut) => judge_cut_stud(cut),
    };
    StudFinding { stud, finding }
}

fn plies(required: &Required<u8>, found: Seen<u8>) -> Finding {
    let mut finding = Finding::default();
    let Some(found) = found.observed() else {
        finding.not_seen.push(Subject::Plies);
        return finding;
    };
    let (asked, there) = (Count::of(u32::from(required.value)), Count::of(u32::from(found)));
    finding.checks.push(Check::at_least(Subject::Plies, there, asked, required.origin.clone()));
    if found < required.value {
        finding.remedy(&[Remedy::AddPlies(required.value - found)]);
    }
    finding
}

fn straight(limit: &Required<Length>, found: Seen<Length>) -> Finding {
    let mut finding = Finding::default();
    let Some(found) = found.observed() else {
        finding.not_seen.push(Subject::Bow);
        return finding;
    };
    finding.checks.push(Check::at_most(Subject::Bow, found.abs(), limit.value, limit.origin.clone()));
    if finding.verdict() == Verdict::Out {
        finding.remedy(&[Remedy::StraightenOrChange]);
    }
    finding
}
