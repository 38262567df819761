//! Puts the solved stretches together.

use measure::{Force, Length, Moment};

use super::frame::Frame;
use super::load::PlacedLoad;
use super::segment::{Segment, State, carry};
use super::strips::{Strip, places, strips};
use super::{Beam, BeamError, Extremes, Reaction, Restraint, Section, Solution, Stretch, StretchKind};

/// Far above any beam and far below what a number can hold, so that no sum or quotient of results overflows.
const LARGEST: f64 = 1e100;

pub(super) fn solve(beam: &Beam, loads: &[PlacedLoad]) -> Result<Solution, BeamError> {
    let places = places(beam.length().inches(), supports(beam), loads);
    solve_cut(beam, &places, loads)
}

/// One solution for each group of loads, all cut at the same places, so that they can be added.
pub(super) fn solve_apart(beam: &Beam, groups: &[Vec<PlacedLoad>]) -> Result<Vec<Solution>, BeamError> {
    let places = places(beam.length().inches(), supports(beam), groups.iter().flatten());
    groups.iter().map(|loads| solve_cut(beam, &places, loads)).collect()
}

fn supports(beam: &Beam) -> impl Iterator<Item = f64> {
    beam.supports().iter().map(|support| support.at.inches())
}

fn solve_cut(beam: &Beam, places: &[f64], loads: &[PlacedLoad]) -> Result<Solution, BeamError> {
    let strips = strips(places, loads);
    let frame = Frame::new(beam.supports(), &strips);
    let legs = frame.legs();
    let (mut segments, mut stretches, mut ends) = (Vec::new(), Vec::new(), Vec::new());
    for (index, leg) in legs.iter().enumerate() {
        let (mut pieces, end) = carry(leg.strips, leg.start);
        if let Some(last) = pieces.last_mut() {
            last.close(leg.end_moment, leg.end_deflection);
        }
        if let Some(extremes) = extremes(beam, &pieces)? {
            let kind = match index {
                0 => StretchKind::LeftOverhang,
                _ if index + 1 == legs.len() => StretchKind::RightOverhang,
                _ => StretchKind::Span,
            };
            let (from, to) = (pieces[0].start, pieces[pieces.len() - 1].end);
            stretches.push(Stretch { kind, from: Length::from_inches(from), to: Length::from_inches(to), extremes });
        }
        segments.extend(pieces);
        ends.push(end);
    }
    let starts: Vec<State> = legs.iter().map(|leg| leg.start).collect();
    let reactions = reactions(beam, frame.joints(), &starts[1..], &ends);
    Ok(Solution::new(beam.clone(), reactions, segments, stretches))
}

/// The extremes over neighbouring segments, or `None` if there are none.
pub(super) fn extremes(beam: &Beam, segments: &[Segment]) -> Result<Option<Extremes>, BeamError> {
    let mut held: Option<Extremes> = None;
    for segment in segments {
        for t in segment.turning_points() {
            if !is_held_as_a_number(segment.state(t).largest_part(beam.ei().pound_square_inches())) {
                return Err(BeamError::TooLarge);
            }
            let here = Extremes::at(&Section::new(segment, t, beam.ei()));
            held = Some(held.map_or(here, |all| all.merged(here)));
        }
    }
    Ok(held)
}

/// Whether a result can be added and divided without being lost.
pub(super) fn is_held_as_a_number(result: f64) -> bool {
    result.abs() <= LARGEST
}

/// Each support gives what the beam on its two sides and the load right on it leave open. `rights` and `lefts` are the
/// states just right and just left of each support.
fn reactions(beam: &Beam, joints: &[&Strip], rights: &[State], lefts: &[State]) -> Vec<Reaction> {
    let mut reactions = Vec::with_capacity(joints.len());
    for (index, support) in beam.supports().iter().enumerate() {
        let (left, right, joint) = (lefts[index], rights[index], joints[index]);
        let moment = match support.restraint {
            Restraint::Simple => 0.0,
            Restraint::Fixed => right.moment - left.moment - joint.couple,
        };
        reactions.push(Reaction {
            at: support.at,
            force: Force::from_pounds(right.shear - left.shear + joint.force),
            moment: Moment::from_inch_pounds(moment),
        });
    }
    reactions
}
