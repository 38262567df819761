//! Beams that carry others: girders, flush and dropped beams, trimmers and headers of floors, ridges, hips and valleys.

use lumber::{Conditions, Grade, Species, candidates::beam_candidates};
use measure::{Length, Ratio, Stress};

use crate::flexure::{
    Acting, Bearing, DeflectionLimits, Edges, FlexureAnswer, FlexureInput, LoadedFrom, Piece, check_flexure,
};
use crate::joist::is_nothing;

/// A beam, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct CarryingBeam {
    /// Spans from support to support, middle to middle; one to five.
    pub spans: Vec<Length>,
    /// What sticks out at the left and at the right.
    pub overhangs: (Length, Length),
    /// Its loads, besides its own weight, from its left end.
    pub loads: Vec<Acting>,
    /// Length of each bearing.
    pub bearing: Length,
    /// What lies below it bears, where that is less than the beam.
    pub below: Option<Stress>,
    /// How its edges are held.
    pub edges: Edges,
    /// How its loads come to it.
    pub loaded_from: LoadedFrom,
    /// Share of its own weight that acts square to it: the cosine of its slope.
    pub own_weight_share: Ratio,
    /// The most room for its depth, where there is a most.
    pub room: Option<Length>,
    /// The most room for its breadth, where there is a most.
    pub breadth_room: Option<Length>,
    /// Species.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// Three or more plies are nailed so that they share the load.
    pub plies_share_load: bool,
    /// Deflection limits.
    pub limits: DeflectionLimits,
    /// A member typed in from its label, tried beside the rest.
    pub labelled: Option<Piece>,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Piece>,
}

impl CarryingBeam {
    /// From end to end.
    #[must_use]
    pub fn length(&self) -> Length {
        self.spans.iter().copied().fold(self.overhangs.0 + self.overhangs.1, |sum, span| sum + span)
    }

    /// Where it rests.
    #[must_use]
    pub fn places(&self) -> Vec<Length> {
        let mut at = self.overhangs.0;
        let mut places = vec![at];
        for span in &self.spans {
            at += *span;
            places.push(at);
        }
        places
    }
}

/// Checks a beam.
///
/// # Errors
/// A sentence, when no such beam can be worked.
pub fn check_beam(input: &CarryingBeam) -> Result<FlexureAnswer, String> {
    let flexure = FlexureInput {
        length: input.length(),
        bearings: input
            .places()
            .into_iter()
            .map(|at| Bearing { at, length: input.bearing, below: input.below })
            .collect(),
        loads: input.loads.iter().copied().filter(|one| !is_nothing(&one.load)).collect(),
        own_weight_share: input.own_weight_share,
        edges: input.edges,
        loaded_from: input.loaded_from,
        conditions: input.conditions,
        plies_share_load: input.plies_share_load,
        limits: input.limits,
    };
    let pieces = beam_candidates(input.species, input.grade).map(Piece::Lumber).chain(input.labelled.clone());
    let misfit = |piece: &Piece| {
        let too_deep = input.room.filter(|room| piece.depth() > *room);
        let too_broad = input.breadth_room.filter(|room| piece.breadth() > *room);
        let written = crate::flexure::working::feet;
        too_deep.map(|room| format!("It is deeper than the {} that there is room for.", written(room))).or_else(|| {
            too_broad.map(|room| format!("It is thicker than the {} that there is room for.", written(room)))
        })
    };
    check_flexure(&flexure, pieces, input.chosen.as_ref(), misfit, |_, _| Ok(Vec::new()))
}

/// A beam with its top set level with the joists that hang on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlushSet {
    /// How far the beam hangs below the joists now: below zero they hang below it.
    pub step: Length,
    /// How much the joists' tops drop when they dry, as is usual.
    pub drop: Length,
    /// The least and the most that is usual.
    pub drop_between: (Length, Length),
    /// The thickness of packing under a strap of this thickness that brings the ceiling below the beam; zero where the
    /// strap alone does.
    pub pack: Length,
}

/// Shrinkage across the grain for each per cent of moisture lost, as a share of the size: common practice, between 0.2 and
/// 0.3 per cent for a mix of tangential and radial grain.
const SHRINKS: (Ratio, Ratio, Ratio) = (0.0020, 0.0025, 0.0030);

/// Sets a beam of this depth among joists of this depth, the joists' tops this much proud of the beam's, with ceiling
/// straps of this thickness below.
#[must_use]
pub fn flush_set(beam: Length, joist: Length, proud: Length, (now, later): (Ratio, Ratio), strap: Length) -> FlushSet {
    let step = beam - joist + proud;
    let lost = (now - later).max(0.0);
    FlushSet {
        step,
        drop: joist * (SHRINKS.1 * lost),
        drop_between: (joist * (SHRINKS.0 * lost), joist * (SHRINKS.2 * lost)),
        pack: (step - strap).max(Length::ZERO),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: a field case of an engineered beam 11-7/8 in deep among joists 11-1/4 in deep that dry from 19 to 9 per cent:
    /// a step of 5/8 in with tops flush, 1-1/8 in with the joists 1/2 in proud; a drop of 0.28 in, 0.23 to 0.34; packing of
    /// nothing and of 3/8 in over a strap of 3/4 in.
    #[test]
    fn an_engineered_beam_among_sawn_joists() {
        let inches = Length::from_inches;
        for (proud, step, pack) in [(0.0, 0.625, 0.0), (0.5, 1.125, 0.375)] {
            let set = flush_set(inches(11.875), inches(11.25), inches(proud), (19.0, 9.0), inches(0.75));
            assert!((set.step.inches() - step).abs() < 1.0 / 16.0 && (set.pack.inches() - pack).abs() < 1e-9);
            assert!((set.drop.inches() - 0.28).abs() < 0.005);
            assert!(
                (set.drop_between.0.inches() - 0.23).abs() < 0.01 && (set.drop_between.1.inches() - 0.34).abs() < 0.01
            );
        }
    }
}
