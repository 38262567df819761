//! Combinations of loads with the time that each lasts.

use measure::{LineLoad, Ratio};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::nds_2018::chapter_2::LoadDuration;

use crate::header::CaseLoads;

/// How long a kind of load lasts on wood, by the usual reading of NDS Table 2.3.2.
#[must_use]
pub const fn load_duration(case: LoadCase) -> LoadDuration {
    match case {
        LoadCase::Dead => LoadDuration::Permanent,
        LoadCase::Live => LoadDuration::TenYears,
        LoadCase::Snow => LoadDuration::TwoMonths,
        LoadCase::RoofLive => LoadDuration::SevenDays,
        LoadCase::Wind => LoadDuration::TenMinutes,
    }
}

/// A combination of loads with the duration that wood is judged by: that of the shortest load in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AsdCombination {
    /// The combination of ASCE 7.
    pub combination: Combination,
    /// Duration of its shortest load.
    pub duration: LoadDuration,
}

impl AsdCombination {
    /// A combination with its duration.
    #[must_use]
    pub const fn of(combination: Combination) -> Self {
        Self { combination, duration: load_duration(combination.shortest_case()) }
    }

    /// Every combination, in the order of the clause.
    #[must_use]
    pub fn all() -> [Self; 10] {
        Combination::ALL.map(Self::of)
    }

    /// Those whose shortest load is there at all, in the order of the clause. `wind` says whether wind acts on the
    /// member. A combination left out asks less than one that is kept: the same loads, or fewer, at a longer duration.
    #[must_use]
    pub fn that_act(loads: &CaseLoads, wind: bool) -> Vec<Self> {
        let acts = |case| match case {
            LoadCase::Dead => true,
            LoadCase::Live => loads.live.max(loads.attic_alone) > LineLoad::ZERO,
            LoadCase::RoofLive | LoadCase::Snow => loads.of(case) > LineLoad::ZERO,
            LoadCase::Wind => wind,
        };
        Self::all().into_iter().filter(|one| acts(one.combination.shortest_case())).collect()
    }

    /// What acts at once, of every load that presses down.
    #[must_use]
    pub fn total(self, loads: &CaseLoads) -> LineLoad {
        loads.dead * self.combination.factor(LoadCase::Dead) + self.transient(loads)
    }

    /// What acts at once, without dead load.
    ///
    /// The live load of an attic without storage stands in for the other live load in `D + L` where it is the larger,
    /// and is in no other combination: it need not act together with another live load.
    #[must_use]
    pub fn transient(self, loads: &CaseLoads) -> LineLoad {
        let live = match self.combination {
            Combination::DeadLive => loads.live.max(loads.attic_alone),
            _ => loads.live,
        };
        let factor = |case| self.combination.factor(case);
        live * factor(LoadCase::Live)
            + loads.roof_live * factor(LoadCase::RoofLive)
            + loads.snow * factor(LoadCase::Snow)
    }
}

/// The combination that uses the largest share of a capacity, with that share; the first of equals. None of none.
#[must_use]
pub fn governing(
    combinations: impl IntoIterator<Item = AsdCombination>,
    share: impl Fn(AsdCombination) -> Ratio,
) -> Option<(AsdCombination, Ratio)> {
    combinations
        .into_iter()
        .map(|combination| (combination, share(combination)))
        .reduce(|most, next| if next.1 > most.1 { next } else { most })
}

#[cfg(test)]
mod tests {
    use super::*;

    const LOADS: CaseLoads = CaseLoads {
        dead: LineLoad::from_plf(340.0),
        live: LineLoad::from_plf(400.0),
        roof_live: LineLoad::from_plf(220.0),
        snow: LineLoad::from_plf(423.5),
        attic_alone: LineLoad::ZERO,
    };

    fn share_of_strength(one: AsdCombination, loads: &CaseLoads) -> f64 {
        one.total(loads).plf() / one.duration.factor().value
    }

    /// Source: field case of an enlarged door opening: D 340, L 400, S 423.5 plf give 957.6 plf under
    /// D + 0.75L + 0.75S.
    #[test]
    fn three_quarters_of_floor_and_snow_at_once() {
        let total = AsdCombination::of(Combination::DeadLiveSnow).total(&LOADS).plf();
        assert!((total - 957.6).abs() <= 0.05, "{total}");
    }

    /// Source: NDS 2018 Table 2.3.2 beside ASCE 7-16 2.4.1.
    #[test]
    fn the_shortest_load_sets_the_duration() {
        let factors = AsdCombination::all().map(|one| one.duration.factor().value);
        assert_eq!(factors, [0.9, 1.0, 1.25, 1.15, 1.25, 1.15, 1.6, 1.6, 1.6, 1.6]);
    }

    /// The doc of [`AsdCombination::that_act`]: leaving a combination out never lowers what governs.
    #[test]
    fn a_combination_left_out_never_governs() {
        let some = [0.0, 10.0, 150.0, 400.0].map(LineLoad::from_plf);
        for [live, roof_live, snow, attic_alone] in
            (0..256).map(|n| [n & 3, n >> 2 & 3, n >> 4 & 3, n >> 6].map(|index: usize| some[index]))
        {
            let loads = CaseLoads { dead: LineLoad::from_plf(200.0), live, roof_live, snow, attic_alone };
            let share = |one| share_of_strength(one, &loads);
            let (_, of_all) = governing(AsdCombination::all(), share).unwrap();
            let (_, of_acting) = governing(AsdCombination::that_act(&loads, false), share).unwrap();
            assert!((of_all - of_acting).abs() < 1e-12, "{loads:?}");
        }
    }

    #[test]
    fn an_empty_attic_acts_with_dead_load_alone() {
        let loads = CaseLoads { live: LineLoad::ZERO, attic_alone: LineLoad::from_plf(100.0), ..LOADS };
        let transient = |combination| AsdCombination::of(combination).transient(&loads).plf();
        assert!((transient(Combination::DeadLive) - 100.0).abs() < 1e-9);
        assert!((transient(Combination::DeadLiveSnow) - 0.75 * 423.5).abs() < 1e-9);
        assert!((transient(Combination::DeadLiveRoofLive) - 0.75 * 220.0).abs() < 1e-9);
    }

    #[test]
    fn the_first_of_equals_governs() {
        let (first, _) = governing(AsdCombination::all(), |_| 1.0).unwrap();
        assert_eq!(first.combination, Combination::Dead);
        assert!(governing([], |_| 1.0).is_none());
    }
}
