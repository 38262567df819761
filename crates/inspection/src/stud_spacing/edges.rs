//! The sheets' edges and the studs under them.

use measure::Length;

use super::solid::{Solid, solids};
use super::{Rule, Wall};
use crate::subject::Subject;
use crate::verdict::{Check, Verdict};

/// How a sheet's edge lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EdgeState {
    /// On wood, with so much under each of the two sheets.
    OnStud {
        /// Wood on the plate's end side of the edge.
        before: Length,
        /// Wood on the far side.
        after: Length,
    },
    /// In the air, so far from the nearest faces.
    InAir {
        /// To the face of the nearest stud on the plate's end side.
        before: Option<Length>,
        /// To the face of the nearest stud on the far side.
        after: Option<Length>,
    },
    /// In the air over an opening.
    OverOpening,
}

/// An edge where two sheets meet.
#[derive(Clone, Debug, PartialEq)]
pub struct Edge {
    /// Where it is, from the plate's end.
    pub at: Length,
    /// How it lies.
    pub state: EdgeState,
    /// Wood on the side that has less, beside what is wanted: negative by as much as the nearest stud is missed. None
    /// over an opening.
    pub check: Option<Check>,
    /// Centre of a stud that would cure it, clear of the studs that are there: under the edge, or else touching the
    /// nearest one. None where none is needed.
    pub add: Option<Length>,
}

impl Edge {
    /// How it stands; none over an opening, where the sheet is cut out.
    #[must_use]
    pub fn verdict(&self) -> Option<Verdict> {
        self.check.as_ref().map(|check| check.verdict)
    }
}

/// The inner edges of the sheets, up to the last stud. The sheets' outer ends lie on the end studs.
pub(super) fn edges(centres: &[Length], wall: &Wall, rule: &Rule) -> Vec<Edge> {
    let Some(sheets) = wall.sheets else { return Vec::new() };
    let solids = solids(centres, wall.stud);
    let end = solids.last().map_or(Length::ZERO, |last| last.to);
    // A sheet no wider than a stud is none.
    if sheets.width <= wall.stud {
        return Vec::new();
    }
    (1_u32..)
        .map(|sheet| sheets.start + sheets.width * f64::from(sheet))
        .take_while(|at| *at < end)
        .filter(|at| *at > Length::ZERO)
        .map(|at| edge(at, &solids, wall, rule))
        .collect()
}

fn edge(at: Length, solids: &[Solid], wall: &Wall, rule: &Rule) -> Edge {
    let under = solids.iter().find(|solid| solid.from <= at && at <= solid.to);
    let state = match under {
        Some(solid) => EdgeState::OnStud { before: at - solid.from, after: solid.to - at },
        None if wall.openings.iter().any(|opening| opening.between(at, at)) => EdgeState::OverOpening,
        None => EdgeState::InAir {
            before: solids.iter().rev().find(|solid| solid.to < at).map(|solid| at - solid.to),
            after: solids.iter().find(|solid| solid.from > at).map(|solid| solid.from - at),
        },
    };
    let bearing = match state {
        EdgeState::OnStud { before, after } => Some(before.min(after)),
        EdgeState::InAir { before, after } => {
            let nearest = [before, after].into_iter().flatten().reduce(Length::min);
            Some(-nearest.unwrap_or(Length::ZERO))
        }
        EdgeState::OverOpening => None,
    };
    let asked = &rule.edge_bearing;
    let check =
        bearing.map(|bearing| Check::at_least(Subject::SheetEdgeBearing, bearing, asked.value, asked.origin.clone()));
    let wanting =
        matches!(state, EdgeState::InAir { .. }) || check.as_ref().is_some_and(|check| check.verdict == Verdict::Out);
    let add = wanting.then(|| place_for_stud(at, state, wall.stud));
    Edge { at, state, check, add }
}

/// Where a stud goes: centred under the edge, unless a stud that is there takes the room.
fn place_for_stud(at: Length, state: EdgeState, stud: Length) -> Length {
    let half = stud / 2.0;
    match state {
        EdgeState::OnStud { before, after } if before < after => at - before - half,
        EdgeState::OnStud { after, .. } => at + after + half,
        EdgeState::InAir { after: Some(after), .. } if after < half => at + after - half,
        EdgeState::InAir { before: Some(before), .. } if before < half => at - before + half,
        EdgeState::InAir { .. } | EdgeState::OverOpening => at,
    }
}
