//! A notch or a hole in a member that bends: what the section that is left still carries.
//!
//! Whether the code allows the cut is asked elsewhere. Away from its ends the standard gives no rule for the strength of a
//! cut section: the figures here are those of the wood that is left, and an engineer must agree to them.

use measure::{Force, Length, LineLoad, Moment, SectionModulus};
use standards::nds_2018::chapter_3;

use super::analysis::Analysis;
use super::input::FlexureInput;
use super::result::Traced;
use super::strength::{Piece, Rolling, Strength, stability};
use crate::beam::Solution;
use crate::check::Check;
use crate::limit::Limit;

/// Which edge is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edge {
    /// The top.
    Top,
    /// The bottom.
    Bottom,
}

/// A cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cut {
    /// A notch.
    Notch {
        /// Where it starts, from the member's left end.
        at: Length,
        /// How long along the member.
        length: Length,
        /// How deep.
        depth: Length,
        /// Into which edge.
        edge: Edge,
        /// Whether it is at a bearing at the member's end.
        at_end: bool,
    },
    /// A hole.
    Hole {
        /// Its middle, from the member's left end.
        at: Length,
        /// Its diameter.
        diameter: Length,
        /// Wood between it and the nearer edge.
        to_edge: Length,
    },
}

impl Cut {
    const fn places(&self) -> (Length, Length) {
        match *self {
            Self::Notch { at, length, .. } => (at, length),
            Self::Hole { at, .. } => (at, Length::ZERO),
        }
    }
}

/// How the section that is left fares under every way of the loads.
///
/// # Errors
/// A sentence: nothing is left, or the piece is its maker's to judge.
pub fn at_cut(piece: &Piece, input: &FlexureInput, analysis: &Analysis, cut: &Cut) -> Result<Vec<Traced>, String> {
    let Piece::Lumber(member) = piece else {
        return Err(
            "An engineered joist takes no cut that its maker has not allowed; its sheet says where holes may be."
                .to_owned(),
        );
    };
    let strength = Strength::of(piece, input)?;
    let left = Left::of(cut, member.section().breadth, member.section().depth)?;
    let Strength::Lumber { at, .. } = &strength else { return Ok(Vec::new()) };
    let weight = piece.self_weight() * input.own_weight_share;
    let mut found: Vec<Traced> = Vec::new();
    let beside = Beside::of(analysis, input, cut, weight);
    for (way, demand) in analysis.demands.iter().enumerate() {
        let stresses = at.at(demand.way.duration);
        let Some((place, moment, shear)) = beside.worst(way, || analysis.with_weight(demand, weight)) else { continue };
        let rolling = analysis.stretches().iter().find(|stretch| stretch.from <= place && place <= stretch.to).map_or(
            Rolling::Held,
            |stretch| {
                let held = if moment.inch_pounds() >= 0.0 { input.edges.top } else { input.edges.bottom };
                strength.rolling(held, stretch.kind, stretch.to - stretch.from)
            },
        );
        let allowed = stresses.fb_star * stability(rolling, stresses.fb_star);
        let bending = (moment.abs() / left.modulus).psi();
        let tension = match cut {
            Cut::Notch { edge: Edge::Bottom, .. } => moment.inch_pounds() >= 0.0,
            Cut::Notch { edge: Edge::Top, .. } => moment.inch_pounds() < 0.0,
            Cut::Hole { .. } => true,
        };
        let carries = left.shear(cut, stresses.fv, tension, (member.section().breadth, member.section().depth))?;
        for (limit, sides) in [
            (Limit::BendingAtCut, (bending, allowed.psi(), "psi")),
            (Limit::ShearAtCut, (shear.pounds(), carries.pounds(), "lb")),
        ] {
            let one = Traced { check: Check::new(limit, sides, demand.way.combination), at: place, way };
            match found.iter_mut().find(|kept| kept.check.limit == limit) {
                Some(kept) if one.check.share > kept.check.share => *kept = one,
                Some(_) => {}
                None => found.push(one),
            }
        }
    }
    Ok(found)
}

/// Moment and shear just inside both ends of a cut, in every way of the loads.
struct Beside {
    from: Length,
    to: Length,
    moments: [Vec<Moment>; 2],
    shears: [Vec<Force>; 2],
}

impl Beside {
    fn of(analysis: &Analysis, input: &FlexureInput, cut: &Cut, weight: LineLoad) -> Self {
        let (from, length) = cut.places();
        let to = (from + length).min(input.length);
        let ends = [(from, true), (to, false)];
        Self {
            from,
            to,
            moments: ends.map(|(at, right)| analysis.moments_at(at, right, weight).collect()),
            shears: ends.map(|(at, right)| analysis.shears_at(at, right, weight).collect()),
        }
    }

    /// The place of the largest moment along the cut, that moment, and the largest shear along it.
    fn worst(&self, way: usize, solved: impl Fn() -> Option<Solution>) -> Option<(Length, Moment, Force)> {
        let end = |side: usize, at: Length| (at, self.moments[side][way], self.shears[side][way].abs());
        let mut seen = vec![end(0, self.from), end(1, self.to)];
        if self.to > self.from {
            let solution = solved()?;
            let turns = solution
                .stretches()
                .iter()
                .flat_map(|stretch| [stretch.extremes.maximum_moment.at, stretch.extremes.minimum_moment.at]);
            let inside = turns.filter(|place| *place > self.from && *place < self.to);
            let sections = inside.filter_map(|place| solution.just_right_of(place).ok());
            seen.extend(sections.map(|section| (section.at, section.moment, section.shear.abs())));
        }
        let most = seen.iter().max_by(|a, b| a.1.abs().inch_pounds().total_cmp(&b.1.abs().inch_pounds()))?;
        let shear = seen.iter().map(|(_, _, shear)| *shear).fold(Force::ZERO, Force::max);
        Some((most.0, most.1, shear))
    }
}

/// What a cut leaves of a section.
struct Left {
    /// Depth left at a notch; wood above and below a hole together.
    depth: Length,
    modulus: SectionModulus,
}

impl Left {
    fn of(cut: &Cut, breadth: Length, depth: Length) -> Result<Self, String> {
        let none =
            || format!("The cut leaves nothing of a depth of {}. Measure both again.", super::working::feet(depth));
        match *cut {
            Cut::Notch { depth: notch, .. } => {
                let left = depth - notch;
                if left <= Length::ZERO {
                    return Err(none());
                }
                Ok(Self { depth: left, modulus: breadth * left * left / 6.0 })
            }
            Cut::Hole { diameter, to_edge, .. } => {
                let other = depth - diameter - to_edge;
                if to_edge < Length::ZERO || other < Length::ZERO || to_edge + other <= Length::ZERO {
                    return Err(none());
                }
                Ok(Self { depth: to_edge + other, modulus: two_strips(breadth, depth, to_edge, other) })
            }
        }
    }

    /// The shear that it carries: by the standard's equations at an end; elsewhere the square of what is left, as for a
    /// notch in the tension side, since its corner splits in the same way.
    fn shear(
        &self,
        cut: &Cut,
        fv: measure::Stress,
        tension: bool,
        (breadth, depth): (Length, Length),
    ) -> Result<Force, String> {
        let of_notch = match *cut {
            Cut::Notch { length, at_end: true, .. } if !tension => {
                chapter_3::compression_notch_shear(fv, breadth, depth, self.depth, length)
            }
            Cut::Notch { .. } => chapter_3::tension_notch_shear(fv, breadth, depth, self.depth),
            Cut::Hole { .. } => return Ok(fv * (breadth * self.depth) * (2.0 / 3.0)),
        };
        of_notch.map(|cited| cited.value).map_err(|outside| outside.to_string())
    }
}

/// The lesser section modulus of two strips of wood, above and below a hole, that bend as one.
fn two_strips(breadth: Length, depth: Length, near: Length, far: Length) -> SectionModulus {
    let (b, d, near, far) = (breadth.inches(), depth.inches(), near.inches(), far.inches());
    // Middles of the strips, from the nearer edge.
    let (of_near, of_far) = (near / 2.0, d - far / 2.0);
    let middle = (near * of_near + far * of_far) / (near + far);
    let moment = |strip: f64, at: f64| b * strip * strip * strip / 12.0 + b * strip * (at - middle) * (at - middle);
    let second = moment(near, of_near) + moment(far, of_far);
    SectionModulus::from_cubic_inches(second / middle.max(d - middle))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Not published: a 3 in hole in the middle of a 9-1/4 in joist takes 1.5 × 3³ / 12 from its second moment.
    #[test]
    fn a_hole_in_the_middle_takes_its_own_second_moment() {
        let inches = Length::from_inches;
        let found = two_strips(inches(1.5), inches(9.25), inches(3.125), inches(3.125)).cubic_inches();
        let second = 1.5 * (9.25_f64 * 9.25 * 9.25 - 27.0) / 12.0;
        assert!((found - second / 4.625).abs() < 1e-9, "{found}");
    }
}
