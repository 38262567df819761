//! The bays between neighbouring studs.

use measure::Length;

use super::{Rule, Wall};
use crate::subject::Subject;
use crate::verdict::{Check, Verdict};

/// What stands between two neighbours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BayKind {
    /// Two studs of one pack: no bay at all.
    Pack,
    /// A bay.
    Bay,
    /// A bay so wide that one or more studs are missing.
    Missing,
    /// An opening.
    Opening,
}

/// Two neighbouring studs.
#[derive(Clone, Debug, PartialEq)]
pub struct Bay {
    /// Centre of the stud nearer to the plate's end.
    pub from: Length,
    /// Centre of the next.
    pub to: Length,
    /// Distance between the centres.
    pub spacing: Length,
    /// What it is over the spacing that is asked for; negative where it is under.
    pub over: Length,
    /// What it is.
    pub kind: BayKind,
    /// The spacing beside its limit, which is the spacing that is asked for and the tolerance; none for an opening.
    pub check: Option<Check>,
    /// Where studs are missing, evenly between the two.
    pub missing: Vec<Length>,
}

impl Bay {
    /// How it stands; none for an opening.
    #[must_use]
    pub fn verdict(&self) -> Option<Verdict> {
        self.check.as_ref().map(|check| check.verdict)
    }
}

/// A bay of more than this many spacings lacks a stud.
const A_STUD_IS_MISSING: f64 = 1.5;

pub(super) fn bays(centres: &[Length], wall: &Wall, rule: &Rule) -> Vec<Bay> {
    centres.windows(2).map(|pair| bay(pair[0], pair[1], wall, rule)).collect()
}

fn bay(from: Length, to: Length, wall: &Wall, rule: &Rule) -> Bay {
    let spacing = to - from;
    let asked = rule.spacing.value;
    let kind = if wall.openings.iter().any(|opening| opening.between(from, to)) {
        BayKind::Opening
    } else if spacing > asked * A_STUD_IS_MISSING {
        BayKind::Missing
    } else if spacing <= wall.stud {
        BayKind::Pack
    } else {
        BayKind::Bay
    };
    let limit = asked + rule.tolerance.value;
    let check = (kind != BayKind::Opening)
        .then(|| Check::at_most(Subject::StudSpacing, spacing, limit, rule.spacing.origin.clone()));
    let missing = if kind == BayKind::Missing { between(from, spacing, asked) } else { Vec::new() };
    Bay { from, to, spacing, over: spacing - asked, kind, check, missing }
}

/// Even places for the studs that a wide bay lacks: as many as the nearest number of spacings asks for.
fn between(from: Length, wide: Length, asked: Length) -> Vec<Length> {
    let parts = (wide / asked).round().max(2.0) as u32;
    (1..parts).map(|part| from + wide * (f64::from(part) / f64::from(parts))).collect()
}
