//! The statics of a member, worked once for all sizes that it may have.

use core::cell::OnceCell;

use lumber::LoadDuration;
use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment, Ratio};
use standards::asce7_16::chapter_2::Combination;

use super::demand::{Way, ways};
use super::input::{Acting, Case, FlexureInput};
use super::result::{SupportForce, Tried};
use super::strength::Piece;
use crate::beam::{Beam, Extreme, Extremes, Load, Section, Solution, Stretch, Turns};

/// A stiffness of one: sags come out times `E I`, and are divided by it when the piece is known.
pub(super) const UNIT: FlexuralRigidity = FlexuralRigidity::from_pound_square_inches(1.0);

/// A case on a stretch, or a case on all of them.
struct Group {
    case: Case,
    stretch: Option<usize>,
    solution: Solution,
}

/// What is looked at: all of the loads, or what the sag without dead load is judged by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Share {
    Total,
    Transient,
}

/// One way of the loads, but for the member's own weight.
pub(super) struct Demand {
    pub(super) way: Way,
    total: Mix,
    transient: Mix,
}

/// So much of each group of loads.
struct Mix {
    parts: Vec<(Ratio, usize)>,
    /// What they come to on each stretch.
    over: Vec<Over>,
}

/// What a way comes to on a stretch.
struct Over {
    /// No less than that.
    bounds: Bounds,
    /// That itself: worked when first asked for, since most ways never govern.
    moments: OnceCell<Option<Turns<Moment>>>,
    sags: OnceCell<Option<Turns<Length>>>,
}

/// No less than what a way does to a stretch: the sum of what each of its loads does somewhere in it.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Bounds {
    pub(super) sagging: Moment,
    pub(super) hogging: Moment,
    /// Up or down, times the stiffness.
    pub(super) sag: Length,
}

/// What one load does to a stretch, each of four, so that they can be added.
#[derive(Clone, Copy, Default)]
struct Reach {
    sagging: Moment,
    hogging: Moment,
    down: Length,
    up: Length,
}

impl Reach {
    fn of(extremes: &Extremes) -> Self {
        Self {
            sagging: extremes.maximum_moment.value,
            hogging: -extremes.minimum_moment.value,
            down: extremes.most_down.value,
            up: -extremes.most_up.value,
        }
    }

    fn plus(self, times: Ratio, other: Self) -> Self {
        Self {
            sagging: self.sagging + other.sagging * times,
            hogging: self.hogging + other.hogging * times,
            down: self.down + other.down * times,
            up: self.up + other.up * times,
        }
    }

    fn bounds(self) -> Bounds {
        Bounds { sagging: self.sagging, hogging: self.hogging, sag: self.down.max(self.up) }
    }
}

/// The statics of a member.
pub struct Analysis {
    groups: Vec<Group>,
    /// A pound a foot all along.
    weight: Solution,
    pub(super) demands: Vec<Demand>,
    /// Which durations the ways have, in the order of [`LoadDuration::ALL`].
    pub(super) durations: [bool; LoadDuration::ALL.len()],
}

impl Analysis {
    /// Solves each load for itself; every way of them is a sum.
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
        let demand = |way: Way| Demand {
            total: Mix::of(&groups, weight.stretches().len(), |case, stretch| way.factor(case, stretch)),
            transient: Mix::of(&groups, weight.stretches().len(), |case, stretch| way.sag_factor(case, stretch)),
            way,
        };
        let demands: Vec<Demand> = ways(present, stretches.len()).into_iter().map(demand).collect();
        let durations = LoadDuration::ALL.map(|one| demands.iter().any(|demand| demand.way.duration == one));
        Ok(Self { groups, weight, demands, durations })
    }

    /// The overhangs and spans.
    pub(super) fn stretches(&self) -> &[Stretch] {
        self.weight.stretches()
    }

    /// One way with the piece's own weight.
    pub(super) fn with_weight(&self, demand: &Demand, weight: LineLoad) -> Option<Solution> {
        Solution::sum(self.parts(demand, Share::Total, weight))
    }

    /// No less than what one way with the piece's own weight does to a stretch: closer once it was worked without that.
    pub(super) fn bounds(&self, demand: &Demand, share: Share, weight: LineLoad, stretch: usize) -> Bounds {
        let own = Reach::of(&self.weight.stretches()[stretch].extremes);
        let bounds = demand.mix(share).closest(stretch);
        let times = demand.own(share, weight);
        Bounds {
            sagging: bounds.sagging + own.sagging * times,
            hogging: bounds.hogging + own.hogging * times,
            sag: bounds.sag + own.bounds().sag * times,
        }
    }

    /// The moments of one way with the piece's own weight on a stretch; none where they are too much to be numbers.
    pub(super) fn moments(
        &self,
        demand: &Demand,
        share: Share,
        weight: LineLoad,
        stretch: usize,
    ) -> Option<Turns<Moment>> {
        let work = || Solution::moments_of_sum(self.parts(demand, share, weight), stretch);
        let worked = &demand.mix(share).over[stretch].moments;
        if demand.own(share, weight) == 0.0 { *worked.get_or_init(work) } else { work() }
    }

    /// The sags, times the stiffness; none as above.
    pub(super) fn sags(
        &self,
        demand: &Demand,
        share: Share,
        weight: LineLoad,
        stretch: usize,
    ) -> Option<Turns<Length>> {
        let work = || Solution::deflections_of_sum(self.parts(demand, share, weight), stretch);
        let worked = &demand.mix(share).over[stretch].sags;
        if demand.own(share, weight) == 0.0 { *worked.get_or_init(work) } else { work() }
    }

    fn parts<'s>(
        &'s self,
        demand: &'s Demand,
        share: Share,
        weight: LineLoad,
    ) -> impl Iterator<Item = (Ratio, &'s Solution)> + Clone {
        let own = core::iter::once((demand.own(share, weight), &self.weight));
        own.chain(demand.mix(share).parts.iter().map(|(times, group)| (*times, &self.groups[*group].solution)))
    }

    /// The shear just beside a place, on its right or its left, in every way of the loads.
    pub(super) fn shears_at(&self, at: Length, right: bool, weight: LineLoad) -> impl Iterator<Item = Force> {
        self.sums(weight, move |solution| beside(solution, at, right).map_or(Force::ZERO, |section| section.shear))
    }

    /// The moment there in every way of the loads.
    pub(super) fn moments_at(&self, at: Length, right: bool, weight: LineLoad) -> impl Iterator<Item = Moment> {
        self.sums(weight, move |solution| beside(solution, at, right).map_or(Moment::ZERO, |section| section.moment))
    }

    /// What a support gives in every way of the loads.
    pub(super) fn reactions(&self, support: usize, weight: LineLoad) -> impl Iterator<Item = Force> {
        self.sums(weight, move |solution| solution.reactions()[support].force)
    }

    /// Something that adds up load by load, in every way of them.
    fn sums<Q>(&self, weight: LineLoad, of: impl Fn(&Solution) -> Q) -> impl Iterator<Item = Q>
    where
        Q: Copy + core::ops::Add<Output = Q> + core::ops::Mul<Ratio, Output = Q>,
    {
        let own = of(&self.weight);
        let groups: Vec<Q> = self.groups.iter().map(|group| of(&group.solution)).collect();
        self.demands.iter().map(move |demand| {
            let start = own * demand.own(Share::Total, weight);
            demand.total.parts.iter().fold(start, |sum, (times, group)| sum + groups[*group] * *times)
        })
    }

    /// Every way of the loads, without the piece's own weight.
    pub(crate) fn ways(&self) -> impl Iterator<Item = WayOfLoads<'_>> {
        self.demands.iter().enumerate().map(|(index, demand)| WayOfLoads { analysis: self, demand, index })
    }

    /// What each support gives, case by case, and the most and the least of it.
    pub(super) fn forces(&self, piece: &Piece, input: &FlexureInput) -> Vec<SupportForce> {
        let weight = piece.self_weight() * input.own_weight_share;
        let of_case = |support: usize, case: Case| -> Force {
            let own =
                if case == Case::Dead { self.weight.reactions()[support].force * weight.plf() } else { Force::ZERO };
            let groups = self.groups.iter().filter(|group| group.case == case);
            groups.map(|group| group.solution.reactions()[support].force).fold(own, |sum, one| sum + one)
        };
        let of = |(index, bearing): (usize, &super::Bearing)| SupportForce {
            at: bearing.at,
            by_case: Case::ALL.map(|case| (case, of_case(index, case))).to_vec(),
            most: self.reactions(index, weight).fold(Force::ZERO, Force::max),
            least: self.reactions(index, weight).fold(Force::from_pounds(f64::MAX), Force::min),
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

impl Mix {
    /// The groups that `factor` counts. Factors are never below zero: a wind that lifts is a load below zero.
    fn of(groups: &[Group], stretches: usize, factor: impl Fn(Case, Option<usize>) -> Ratio) -> Self {
        let parts = groups.iter().enumerate().map(|(index, group)| (factor(group.case, group.stretch), index));
        let mut counted = Vec::with_capacity(groups.len());
        counted.extend(parts.filter(|(times, _)| *times != 0.0));
        let parts: Vec<(Ratio, usize)> = counted;
        let bounds = |stretch: usize| {
            let of_group = |group: usize| Reach::of(&groups[group].solution.stretches()[stretch].extremes);
            parts.iter().fold(Reach::default(), |sum, (times, group)| sum.plus(*times, of_group(*group))).bounds()
        };
        let over = |stretch| Over { bounds: bounds(stretch), moments: OnceCell::new(), sags: OnceCell::new() };
        let over = (0..stretches).map(over).collect();
        Self { parts, over }
    }

    /// The closest bounds that are known of a stretch.
    fn closest(&self, stretch: usize) -> Bounds {
        let over = &self.over[stretch];
        let mut bounds = over.bounds;
        if let Some(moments) = over.moments.get().copied().flatten() {
            (bounds.sagging, bounds.hogging) = (moments.most.value, -moments.least.value);
        }
        if let Some(sags) = over.sags.get().copied().flatten() {
            bounds.sag = sags.largest().value;
        }
        bounds
    }
}

impl Demand {
    fn mix(&self, share: Share) -> &Mix {
        match share {
            Share::Total => &self.total,
            Share::Transient => &self.transient,
        }
    }

    /// How often the weight of a pound a foot is in it, for a piece of this weight.
    fn own(&self, share: Share, weight: LineLoad) -> Ratio {
        match share {
            Share::Total => self.way.of_dead() * weight.plf(),
            Share::Transient => 0.0,
        }
    }

    /// Whether anything is in it but the member's own weight.
    pub(super) fn is_loaded(&self, share: Share) -> bool {
        !self.mix(share).parts.is_empty()
    }
}

/// One way of the loads as others see it.
pub(crate) struct WayOfLoads<'a> {
    analysis: &'a Analysis,
    demand: &'a Demand,
    /// Its number.
    pub(crate) index: usize,
}

impl WayOfLoads<'_> {
    pub(crate) const fn combination(&self) -> Combination {
        self.demand.way.combination
    }

    pub(crate) const fn duration(&self) -> LoadDuration {
        self.demand.way.duration
    }

    /// How much of each case is in it, in the order of [`Case::ALL`].
    pub(crate) const fn factors(&self) -> &[Ratio; Case::ALL.len()] {
        &self.demand.way.factors
    }

    /// No less than its largest moment.
    pub(crate) fn moment_bound(&self) -> Moment {
        let of = |stretch| {
            let bounds = self.analysis.bounds(self.demand, Share::Total, LineLoad::ZERO, stretch);
            bounds.sagging.max(bounds.hogging)
        };
        (0..self.analysis.stretches().len()).map(of).fold(Moment::ZERO, Moment::max)
    }

    /// Its largest moment, without its sign, and where; none where it is too large to be a number.
    pub(crate) fn largest_moment(&self) -> Option<Extreme<Moment>> {
        let of = |stretch| self.analysis.moments(self.demand, Share::Total, LineLoad::ZERO, stretch);
        let largest = (0..self.analysis.stretches().len()).map(|stretch| Some(of(stretch)?.largest()));
        largest.reduce(|held, one| match (held?, one?) {
            (held, one) if one.value > held.value => Some(one),
            (held, _) => Some(held),
        })?
    }
}

/// Points of a picture between two places where anything changes.
const POINTS: u16 = 12;

fn beside(solution: &Solution, at: Length, right: bool) -> Option<Section> {
    if right { solution.just_right_of(at) } else { solution.just_left_of(at) }.ok()
}

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

/// The loads that act within a stretch of a member and nowhere else.
pub(super) fn points_between(loads: &[Acting], from: Length, to: Length) -> bool {
    loads.iter().any(|one| matches!(one.load, Load::Point { at, .. } if at >= from && at <= to))
}
