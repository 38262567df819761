//! Combinations of loads and patterns of spans: every way in which the loads come together.

use lumber::LoadDuration;
use measure::Ratio;
use standards::asce7_16::chapter_2::{Combination, LoadCase};

use super::input::Case;
use crate::check::wind_for_deflection;

/// One way in which the loads come together.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Way {
    pub(super) combination: Combination,
    pub(super) duration: LoadDuration,
    /// How much of each case, in the order of [`Case::ALL`].
    pub(super) factors: [Ratio; Case::ALL.len()],
    /// Which stretches are loaded; none where all are.
    pub(super) pattern: Option<Vec<bool>>,
}

impl Way {
    /// How much of a case lies on a stretch.
    pub(super) fn factor(&self, case: Case, stretch: Option<usize>) -> Ratio {
        let factor = self.factors[case as usize];
        match (&self.pattern, stretch, case.left_by_a_pattern()) {
            (Some(loaded), Some(stretch), Some(left)) if !loaded[stretch] => factor * left,
            _ => factor,
        }
    }

    /// The share of a case that its sag is judged by without dead load: of wind, less than of strength.
    pub(super) fn sag_factor(&self, case: Case, stretch: Option<usize>) -> Ratio {
        match case {
            Case::Dead => 0.0,
            Case::WindDown | Case::WindUp => self.factor(case, stretch) * wind_for_deflection(),
            _ => self.factor(case, stretch),
        }
    }

    /// Whether wind is in it.
    pub(super) const fn is_windy(&self) -> bool {
        self.factors[Case::WindDown as usize] > 0.0 || self.factors[Case::WindUp as usize] > 0.0
    }

    /// How much of the dead load, and so of the member's own weight.
    pub(super) const fn of_dead(&self) -> Ratio {
        self.factors[Case::Dead as usize]
    }
}

/// Every way in which loads of these cases come together over so many stretches. A combination that a longer-lasting one
/// repeats, since what would shorten it is absent, is left out.
pub(super) fn ways(present: impl Fn(Case) -> bool, stretches: usize) -> Vec<Way> {
    let mut ways = Vec::new();
    let patterns = patterns(stretches);
    for combination in Combination::ALL {
        for factors in variants(combination, &present) {
            let duration = loads::combination::load_duration(combination.shortest_case());
            let whole = Way { combination, duration, factors, pattern: None };
            let can_skip = Case::ALL
                .into_iter()
                .any(|case| factors[case as usize] > 0.0 && case.left_by_a_pattern().is_some() && present(case));
            if can_skip {
                ways.extend(patterns.iter().map(|loaded| Way { pattern: Some(loaded.clone()), ..whole.clone() }));
            }
            ways.push(whole);
        }
    }
    ways
}

/// The factors of a combination: once for each of the two live loads and the two winds that it may stand for.
fn variants(combination: Combination, present: &impl Fn(Case) -> bool) -> Vec<[Ratio; Case::ALL.len()]> {
    let shortest = combination.shortest_case();
    let lives = [Case::Live, Case::LiveAlone].into_iter();
    let winds = [Case::WindDown, Case::WindUp].into_iter();
    let with = |live: Option<Case>, wind: Option<Case>| {
        Case::ALL.map(|case| {
            let counts = match case {
                Case::Live | Case::LiveAlone => Some(case) == live,
                Case::WindDown | Case::WindUp => Some(case) == wind,
                _ => true,
            };
            if counts { combination.factor(case.of_combination()) } else { 0.0 }
        })
    };
    let live = present(Case::Live).then_some(Case::Live);
    match shortest {
        LoadCase::Dead => vec![with(None, None)],
        LoadCase::Live => lives.filter(|case| present(*case)).map(|case| with(Some(case), None)).collect(),
        LoadCase::RoofLive if !present(Case::RoofLive) => Vec::new(),
        LoadCase::Snow if !present(Case::Snow) => Vec::new(),
        LoadCase::RoofLive | LoadCase::Snow => vec![with(live, None)],
        LoadCase::Wind => winds
            .filter(|case| present(*case) && (*case == Case::WindUp || combination != Combination::LeastDeadWind))
            .map(|case| with(live, Some(case)))
            .collect(),
    }
}

/// Which stretches are loaded: each alone of the odd and of the even ones, and the two beside each support with every
/// second one beyond; each also the other way round. None over one stretch.
///
/// These give the most sagging in every span, the most hogging and the greatest reaction at every support, and the least
/// of each: influence lines of a continuous beam change sign from span to span.
fn patterns(stretches: usize) -> Vec<Vec<bool>> {
    if stretches < 2 {
        return Vec::new();
    }
    let every_second: Vec<bool> = (0..stretches).map(|stretch| stretch % 2 == 0).collect();
    let beside = |support: usize| -> Vec<bool> {
        let loaded = |stretch: usize| {
            if stretch < support {
                (support - 1 - stretch).is_multiple_of(2)
            } else {
                (stretch - support).is_multiple_of(2)
            }
        };
        (0..stretches).map(loaded).collect()
    };
    let other_way = |loaded: &Vec<bool>| loaded.iter().map(|one| !one).collect::<Vec<_>>();
    let mut patterns: Vec<Vec<bool>> = Vec::new();
    for loaded in core::iter::once(every_second).chain((1..stretches).map(beside)) {
        for pattern in [other_way(&loaded), loaded] {
            let mixed = pattern.iter().any(|one| *one) && pattern.iter().any(|one| !one);
            if mixed && !patterns.contains(&pattern) {
                patterns.push(pattern);
            }
        }
    }
    patterns
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_spans_are_loaded_singly_and_three_in_pairs_too() {
        assert_eq!(patterns(1), Vec::<Vec<bool>>::new());
        assert_eq!(patterns(2), [[false, true], [true, false]]);
        let three = patterns(3);
        assert!(three.contains(&vec![true, true, false]) && three.contains(&vec![false, true, true]), "{three:?}");
        assert!(three.contains(&vec![true, false, true]) && three.contains(&vec![false, true, false]), "{three:?}");
        assert_eq!(three.len(), 6);
    }

    #[test]
    fn a_combination_of_an_absent_load_is_left_out() {
        let floor = ways(|case| matches!(case, Case::Dead | Case::Live), 1);
        let names: Vec<&str> = floor.iter().map(|way| way.combination.name()).collect();
        assert_eq!(names, ["D", "D + L"]);
        let lifted = ways(|case| matches!(case, Case::Dead | Case::WindUp), 1);
        assert!(lifted.iter().any(|way| way.combination == Combination::LeastDeadWind));
    }
}
