//! Joists and rafters that are notched or bored.

use measure::Length;
use standards::Source;
use standards::irc_2021::r502_8::{
    BESIDE_A_HOLE, SAWN_JOISTS, SAWN_RAFTERS, THICK, end_notch_limit, hole_limit, notch_depth_limit, notch_length_limit,
};

use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::{Remedy, Who};
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// What was cut into.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoistKind {
    /// A sawn joist or beam of a floor.
    SawnJoist,
    /// A sawn rafter or ceiling joist.
    SawnRafter,
    /// A wood I-joist, a truss, glued or composite lumber.
    Engineered,
}

/// Where along the member the cut is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// At a bearing.
    End,
    /// In an outer third, away from the bearing.
    OuterThird,
    /// In the middle third.
    MiddleThird,
}

/// Which edge a notch is cut into.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// The edge that is pressed together: the top, between two bearings.
    Compression,
    /// The edge that is drawn: the bottom, between two bearings.
    Tension,
}

/// What was cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum JoistCut {
    /// A notch.
    Notch {
        /// How deep, square to the edge.
        depth: Length,
        /// How long along the member. A notch at the end has no length to judge.
        length: Seen<Length>,
        /// Into which edge.
        face: Face,
    },
    /// A hole.
    Hole {
        /// Its diameter.
        diameter: Length,
        /// Wood between the hole and the nearer edge.
        to_edge: Seen<Length>,
        /// Wood between the hole and the next hole or notch; none where there is none.
        to_next: Seen<Option<Length>>,
    },
}

/// A joist or rafter with a cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutJoist {
    /// What it is.
    pub kind: JoistKind,
    /// Its depth as measured.
    pub depth: Length,
    /// Its nominal thickness: 2 in for a 2x10.
    pub nominal_thickness: Length,
    /// Where the cut is.
    pub place: Place,
    /// What was cut.
    pub cut: JoistCut,
}

const AFTER_A_MISS: [Remedy; 3] = [Remedy::HeaderOff, Remedy::SisterFullLength, Remedy::EngineerDetail];

/// Judges a notch or a hole in a joist or a rafter (R502.8.1, R802.7.1). An engineered member is its maker's to judge.
#[must_use]
pub fn judge_cut_joist(joist: &CutJoist) -> Finding {
    let mut finding = Finding::default();
    let source = match joist.kind {
        JoistKind::SawnJoist => SAWN_JOISTS,
        JoistKind::SawnRafter => SAWN_RAFTERS,
        JoistKind::Engineered => {
            finding.left_to.push((Subject::EngineeredMember, Who::Maker));
            finding.remedy(&[Remedy::AskMaker, Remedy::EngineerDetail]);
            return finding;
        }
    };
    match joist.cut {
        JoistCut::Notch { depth, length, face } => notch(&mut finding, joist, (depth, length, face), source),
        JoistCut::Hole { diameter, to_edge, to_next } => {
            hole(&mut finding, joist, (diameter, to_edge, to_next), source);
        }
    }
    let out = finding.checks.iter().any(|check| !check.verdict.holds()) || !finding.wrong.is_empty();
    if out {
        finding.remedy(&AFTER_A_MISS);
    }
    finding
}

fn depth_limit(joist: &CutJoist) -> Length {
    match joist.place {
        Place::End => end_notch_limit(joist.depth),
        Place::OuterThird | Place::MiddleThird => notch_depth_limit(joist.depth),
    }
}

fn notch(finding: &mut Finding, joist: &CutJoist, cut: (Length, Seen<Length>, Face), source: Source) {
    let (depth, length, face) = cut;
    let thick = joist.nominal_thickness >= THICK && face == Face::Tension && joist.place != Place::End;
    if joist.place == Place::MiddleThird || thick {
        finding.wrong.push(Subject::NotchPlace);
    }
    finding.checks.push(Check::at_most(Subject::NotchDepth, depth, depth_limit(joist), source));
    if joist.place == Place::End {
        return;
    }
    match length {
        Seen::Observed(found) => {
            let limit = notch_length_limit(joist.depth);
            finding.checks.push(Check::at_most(Subject::NotchLength, found, limit, source));
        }
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::NotchLength),
    }
}

fn hole(
    finding: &mut Finding,
    joist: &CutJoist,
    (diameter, to_edge, to_next): (Length, Seen<Length>, Seen<Option<Length>>),
    source: Source,
) {
    finding.checks.push(Check::at_most(Subject::HoleDiameter, diameter, hole_limit(joist.depth), source));
    finding.length(Subject::HoleToEdge, to_edge, Question::HoleToEdge, |found| {
        Check::at_least(Subject::HoleToEdge, found, BESIDE_A_HOLE, source)
    });
    match to_next {
        Seen::Observed(Some(found)) => {
            finding.checks.push(Check::at_least(Subject::HoleToNext, found, BESIDE_A_HOLE, source));
        }
        Seen::Observed(None) => {}
        Seen::NotObserved => {
            finding.not_seen.push(Subject::HoleToNext);
            finding.questions.push(Question::HoleToNext);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::HoleToNext),
    }
    // A hole too near to the edge works as a notch down to its far side: shown beside it, and never a way to pass.
    if let (true, Seen::Observed(found)) = (finding.is_out(Subject::HoleToEdge), to_edge) {
        let as_notch = Check::at_most(Subject::NotchDepth, found + diameter, depth_limit(joist), source);
        finding.checks.push(as_notch);
        if joist.place == Place::MiddleThird {
            finding.wrong.push(Subject::NotchPlace);
        }
    }
}
