//! The statics of a member, worked once for all sizes that it may have.

use lumber::LoadDuration;
use measure::{FlexuralRigidity, Force, Length, LineLoad, Ratio};
use standards::asce7_16::chapter_2::Combination;

use super::demand::{Way, ways};
use super::input::{Acting, Case, FlexureInput};
use super::result::{SupportForce, Tried};
use super::strength::Piece;
use crate::beam::{Beam, Load, Section, Solution};

/// A stiffness of one: sags come out times `E I`, and are divided by it when the piece is known.
pub(super) const UNIT: FlexuralRigidity = FlexuralRigidity::from_pound_square_inches(1.0);

/// A case on a stretch, or a case on all of them.
struct Group {
    case: Case,
    stretch: Option<usize>,
    solution: Solution,
}

/// One way of the loads, solved but for the member's own weight.
pub(super) struct Demand {
    pub(super) way: Way,
    /// All of it.
    pub(super) total: Solution,
    /// What the sag without dead load is judged by; none where there is nothing.
    pub(super) transient: Option<Solution>,
}

/// The statics of a member.
pub struct Analysis {
    groups: Vec<Group>,
    /// A pound a foot all along.
    weight: Solution,
    pub(super) demands: Vec<Demand>,
}

impl Analysis {
    /// Solves every way of the loads.
    ///
    /// # Errors
    /// A sentence, when its supports or loads are impossible.
    pub fn of(input: &FlexureInput) -> Result<Self, String> {
        let places: Vec<Length> = input.bearings.iter().map(|bearing| bearing.at).collect();
        let beam = Beam::new(&places, input.length, UNIT).map_err(|problem| problem.to_string())?;
        let stretches = stretches(&places, input.length);
        let mut keys = Vec::new();
        let mut loads = vec![vec![beam.uniform(LineLoad::from_plf(1.0))]];
        for case in Case::ALL {
            let of_case: Vec<Load> = input.loads.iter().filter(|one| one.case == case).map(|one| one.load).collect();
            if of_case.is_empty() {
                continue;
            }
            if case.left_by_a_pattern().is_none() || stretches.len() < 2 {
                keys.push((case, None));
                loads.push(of_case);
                continue;
            }
            for (index, stretch) in stretches.iter().enumerate() {
                let last = index + 1 == stretches.len();
                let part: Vec<Load> = of_case.iter().filter_map(|load| on_stretch(load, *stretch, last)).collect();
                if !part.is_empty() {
                    keys.push((case, Some(index)));
                    loads.push(part);
                }
            }
        }
        let mut solutions = beam.solve_apart(&loads).map_err(|problem| problem.to_string())?.into_iter();
        let Some(weight) = solutions.next() else { return Err("The beam could not be worked.".to_owned()) };
        let groups: Vec<Group> = keys
            .into_iter()
            .zip(solutions)
            .map(|((case, stretch), solution)| Group { case, stretch, solution })
            .collect();
        let present = |case| case == Case::Dead || groups.iter().any(|group| group.case == case);
        let demands = ways(present, stretches.len()).into_iter().map(|way| demand(way, &groups, &weight)).collect();
        Ok(Self { groups, weight, demands })
    }

    /// One way with the piece's own weight.
    pub(super) fn with_weight(&self, demand: &Demand, weight: LineLoad) -> Option<Solution> {
        Solution::sum([(1.0, &demand.total), (demand.way.of_dead() * weight.plf(), &self.weight)])
    }

    /// Every way of the loads on a piece: its number, its combination, how long it lasts, how much of each case is in it,
    /// and the statics.
    pub(crate) fn each_way(
        &self,
        weight: LineLoad,
        mut see: impl FnMut(usize, Combination, LoadDuration, &[Ratio; Case::ALL.len()], &Solution),
    ) {
        for (index, demand) in self.demands.iter().enumerate() {
            if let Some(solution) = self.with_weight(demand, weight) {
                see(index, demand.way.combination, demand.way.duration, &demand.way.factors, &solution);
            }
        }
    }

    /// What each support gives, case by case, and the most and the least of it.
    pub(super) fn forces(&self, piece: &Piece, input: &FlexureInput) -> Vec<SupportForce> {
        let weight = piece.self_weight() * input.own_weight_share;
        let solutions: Vec<Solution> =
            self.demands.iter().filter_map(|demand| self.with_weight(demand, weight)).collect();
        let of_case = |support: usize, case: Case| -> Force {
            let own =
                if case == Case::Dead { self.weight.reactions()[support].force * weight.plf() } else { Force::ZERO };
            let groups = self.groups.iter().filter(|group| group.case == case);
            groups.map(|group| group.solution.reactions()[support].force).fold(own, |sum, one| sum + one)
        };
        let of = |(index, bearing): (usize, &super::Bearing)| {
            let all = solutions.iter().map(|solution| solution.reactions()[index].force);
            SupportForce {
                at: bearing.at,
                by_case: Case::ALL.map(|case| (case, of_case(index, case))).to_vec(),
                most: all.clone().fold(Force::ZERO, Force::max),
                least: all.fold(Force::from_pounds(f64::MAX), Force::min),
            }
        };
        input.bearings.iter().enumerate().map(of).collect()
    }

    /// Shear, moment and sag under the way that bends the judged piece most, for a picture. Sags are in inches.
    pub(super) fn diagram(&self, tried: &Tried, input: &FlexureInput) -> Vec<Section> {
        let weight = tried.piece.self_weight() * input.own_weight_share;
        let Some(demand) = self.demands.get(tried.picture) else { return Vec::new() };
        let Some(solution) = self.with_weight(demand, weight) else { return Vec::new() };
        let rigidity = tried.rigidity.pound_square_inches();
        let sag = |section: Section| Section {
            slope: section.slope / rigidity,
            deflection: section.deflection / rigidity,
            ..section
        };
        solution.diagram(POINTS).into_iter().map(sag).collect()
    }
}

/// Points of a picture between two places where anything changes.
const POINTS: u16 = 12;

/// The spans and overhangs, each from and to.
fn stretches(places: &[Length], length: Length) -> Vec<(Length, Length)> {
    let ends = core::iter::once(Length::ZERO).chain(places.iter().copied()).chain([length]);
    let ends: Vec<Length> = ends.collect();
    ends.windows(2).map(|pair| (pair[0], pair[1])).filter(|(from, to)| to > from).collect()
}

/// The part of a load on a stretch. A load right on a support counts with the stretch to its right.
fn on_stretch(load: &Load, (from, to): (Length, Length), last: bool) -> Option<Load> {
    match *load {
        Load::Point { at, .. } | Load::Couple { at, .. } => {
            (at >= from && (at < to || (last && at <= to))).then_some(*load)
        }
        Load::Distributed { from: first, to: end, start, end: finish } => {
            let (left, right) = (first.max(from), end.min(to));
            let intensity = |at: Length| start + (finish - start) * ((at - first) / (end - first));
            (right > left).then(|| Load::linear(left, right, intensity(left), intensity(right)))
        }
    }
}

fn demand(way: Way, groups: &[Group], weight: &Solution) -> Demand {
    let sum = |factor: &dyn Fn(Case, Option<usize>) -> Ratio| {
        let parts = groups.iter().map(|group| (factor(group.case, group.stretch), &group.solution));
        let parts: Vec<(Ratio, &Solution)> = parts.filter(|(times, _)| *times != 0.0).collect();
        let some = !parts.is_empty();
        // Nothing of the weight: the beam at rest.
        (Solution::sum(core::iter::once((0.0, weight)).chain(parts)), some)
    };
    let (total, _) = sum(&|case, stretch| way.factor(case, stretch));
    let (transient, some) = sum(&|case, stretch| way.sag_factor(case, stretch));
    Demand { total: total.unwrap_or_else(|| weight.clone()), transient: transient.filter(|_| some), way }
}

/// The loads that act within a stretch of a member and nowhere else.
pub(super) fn points_between(loads: &[Acting], from: Length, to: Length) -> bool {
    loads.iter().any(|one| matches!(one.load, Load::Point { at, .. } if at >= from && at <= to))
}
