//! What comes down on a header under each combination, and what the wind does across it.

use loads::combination::load_duration;
use loads::header::CaseLoads;
use measure::{Length, LineLoad, Ratio};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::nds_2018::chapter_2::LoadDuration;

/// The load along a header under one combination.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Demand {
    pub(super) combination: Combination,
    pub(super) duration: LoadDuration,
    /// Downward, all of it.
    pub(super) total: LineLoad,
    /// Downward, without what is always there.
    pub(super) transient: LineLoad,
    /// Share of the strength-level wind across the header.
    pub(super) wind: Ratio,
}

/// The combinations that a header can feel, with its own weight counted as dead load.
///
/// An attic that is not for storage need not act with another live load (IRC Table R301.5, note b): its live load has
/// an entry of its own.
pub(super) fn demands(loads: &CaseLoads, self_weight: LineLoad, windy: bool) -> Vec<Demand> {
    let mut demands: Vec<Demand> = Combination::ALL
        .into_iter()
        .filter(|combination| felt(*combination, loads, windy))
        .map(|combination| demand(combination, loads, self_weight, loads.live))
        .collect();
    if loads.attic_alone > LineLoad::ZERO {
        demands.push(demand(Combination::DeadLive, loads, self_weight, loads.attic_alone));
    }
    demands
}

/// Leaves out what another entry repeats: a combination all of whose transient loads are absent.
fn felt(combination: Combination, loads: &CaseLoads, windy: bool) -> bool {
    let present = |case| match case {
        LoadCase::Dead => true,
        LoadCase::Live => loads.live > LineLoad::ZERO,
        LoadCase::RoofLive => loads.roof_live > LineLoad::ZERO,
        LoadCase::Snow => loads.snow > LineLoad::ZERO,
        LoadCase::Wind => windy,
    };
    present(combination.shortest_case())
}

fn demand(combination: Combination, loads: &CaseLoads, self_weight: LineLoad, live: LineLoad) -> Demand {
    let factor = |case| combination.factor(case);
    let transient = live * factor(LoadCase::Live)
        + loads.roof_live * factor(LoadCase::RoofLive)
        + loads.snow * factor(LoadCase::Snow);
    Demand {
        combination,
        duration: load_duration(combination.shortest_case()),
        total: (loads.dead + self_weight) * factor(LoadCase::Dead) + transient,
        transient,
        wind: factor(LoadCase::Wind),
    }
}

/// Half of what a header's end sits on, and never less than 1-1/2 in: the code's least bearing.
const LEAST_SPAN_END: Length = Length::from_inches(1.5);
/// Thickness of one jack, and so the bearing that it gives.
pub(super) const JACK_THICKNESS: Length = Length::from_inches(1.5);

/// The span that a header is worked for: to the middle of its bearings, and at least 1-1/2 in into each.
///
/// NDS 2018 3.2.1 asks for half of the required bearing at each end; taking 1-1/2 in where one jack would do is the
/// safe side of it.
pub(super) fn design_span(opening: Length, jacks: u8) -> Length {
    let half_bearing = JACK_THICKNESS * (f64::from(jacks) / 2.0);
    opening + half_bearing.max(LEAST_SPAN_END) * 2.0
}
