//! One piece judged: the share of each limit that it uses, over every way of the loads.

use measure::{FlexuralRigidity, Force, Length};

use super::analysis::{Analysis, Demand, points_between};
use super::input::{FlexureInput, LoadedFrom};
use super::result::{Traced, Tried};
use super::strength::{MOST_SLENDER, Piece, Rolling, Strength};
use crate::beam::{Solution, Stretch, StretchKind};
use crate::check::Check;
use crate::limit::Limit;

/// Judges one piece; `more` adds what its kind is judged by besides.
pub fn judge(
    piece: Piece,
    input: &FlexureInput,
    analysis: &Analysis,
    more: impl Fn(&Piece, &Analysis) -> Result<Vec<Traced>, String>,
) -> Tried {
    let judged = Strength::of(&piece, input).and_then(|strength| {
        let mut trial = Trial { piece: &piece, input, analysis, strength, found: Vec::new(), most_bent: (0.0, 0) };
        trial.run()?;
        more(&piece, analysis)?.into_iter().for_each(|one| keep(&mut trial.found, one));
        Ok((trial.strength.rigidity(), trial.found, trial.most_bent.1))
    });
    let (rigidity, found, picture, outside) = match judged {
        Ok((rigidity, found, picture)) => (rigidity, found, picture, None),
        Err(sentence) => (FlexuralRigidity::from_pound_square_inches(1.0), Vec::new(), 0, Some(sentence)),
    };
    Tried { piece, found, outside, misfit: None, rigidity, picture }
}

/// Keeps one of each limit, in the order of the limits.
fn keep(found: &mut Vec<Traced>, one: Traced) {
    match found.binary_search_by_key(&one.check.limit, |kept| kept.check.limit) {
        Ok(place) if one.check.share > found[place].check.share => found[place] = one,
        Ok(_) => {}
        Err(place) => found.insert(place, one),
    }
}

struct Trial<'a> {
    piece: &'a Piece,
    input: &'a FlexureInput,
    analysis: &'a Analysis,
    strength: Strength,
    found: Vec<Traced>,
    /// The greatest share of bending, and the way that gives it.
    most_bent: (f64, usize),
}

impl Trial<'_> {
    fn run(&mut self) -> Result<(), String> {
        let weight = self.piece.self_weight() * self.input.own_weight_share;
        let analysis = self.analysis;
        for (way, demand) in analysis.demands.iter().enumerate() {
            let Some(solution) = analysis.with_weight(demand, weight) else {
                return Err("The results are too large to compute. Check the units of lengths and loads.".to_owned());
            };
            for stretch in solution.stretches() {
                self.bending(way, demand, stretch);
                self.shear(way, demand, &solution, stretch);
                // The limits of total sag are for dead load with live load or snow; of wind its own share is judged.
                if !demand.way.is_windy() {
                    self.sag(way, demand, Limit::TotalSag, stretch);
                }
            }
            for stretch in demand.transient.iter().flat_map(Solution::stretches) {
                self.sag(way, demand, Limit::LiveSag, stretch);
            }
            self.bearings(way, demand, &solution);
        }
        Ok(())
    }

    fn keep(&mut self, (limit, at, way): (Limit, Length, usize), demand: &Demand, sides: (f64, f64, &'static str)) {
        let check = Check::new(limit, sides, demand.way.combination);
        keep(&mut self.found, Traced { check, at, way });
    }

    fn bending(&mut self, way: usize, demand: &Demand, stretch: &Stretch) {
        let span = stretch.to - stretch.from;
        let (sagging, hogging) = (stretch.extremes.maximum_moment, stretch.extremes.minimum_moment);
        for (limit, moment, at, held) in [
            (Limit::Bending, sagging.value, sagging.at, self.input.edges.top),
            (Limit::BendingTopInTension, -hogging.value, hogging.at, self.input.edges.bottom),
        ] {
            if moment.inch_pounds() <= 0.0 {
                continue;
            }
            let rolling = self.strength.rolling(held, stretch.kind, span);
            if let Rolling::TooSlender(ratio) = rolling {
                let sides = (ratio * MOST_SLENDER, MOST_SLENDER, "");
                self.keep((Limit::Slenderness, at, way), demand, sides);
            }
            let sides = self.strength.bending(moment, demand.way.duration, rolling, span);
            self.keep((limit, at, way), demand, sides);
            if sides.0 / sides.1 > self.most_bent.0 {
                self.most_bent = (sides.0 / sides.1, way);
            }
        }
    }

    fn shear(&mut self, way: usize, demand: &Demand, solution: &Solution, stretch: &Stretch) {
        let ends = [
            (stretch.from, 1.0, stretch.kind != StretchKind::LeftOverhang),
            (stretch.to, -1.0, stretch.kind != StretchKind::RightOverhang),
        ];
        for (support, side, is_support) in ends {
            if !is_support {
                continue;
            }
            let at = self.critical_section(stretch, support, side);
            let seen = if side > 0.0 { solution.just_right_of(at) } else { solution.just_left_of(at) };
            let Ok(section) = seen else { continue };
            let sides = self.strength.shear(section.shear.abs(), demand.way.duration);
            self.keep((Limit::Shear, at, way), demand, sides);
        }
    }

    /// Where the shear beside a support is taken: at its face, or a depth from it where the loads lie on top and none
    /// is a point load between (NDS 2018 3.4.3.1; a point load there is counted whole, on the safe side of the clause).
    fn critical_section(&self, stretch: &Stretch, support: Length, side: f64) -> Length {
        let bearing = self.input.bearings.iter().find(|bearing| bearing.at == support);
        let half = bearing.map_or(Length::ZERO, |bearing| bearing.length / 2.0);
        let room = (stretch.to - stretch.from) / 2.0;
        let face = half.min(room);
        let away = (half + self.piece.depth()).min(room);
        let (face_at, away_at) = (support + face * side, support + away * side);
        let (left, right) = if side > 0.0 { (face_at, away_at) } else { (away_at, face_at) };
        let from_top = self.input.loaded_from == LoadedFrom::Top;
        if from_top && !points_between(&self.input.loads, left, right) { away_at } else { face_at }
    }

    fn sag(&mut self, way: usize, demand: &Demand, limit: Limit, stretch: &Stretch) {
        let rigidity = self.strength.rigidity().pound_square_inches();
        let largest = stretch.extremes.largest_deflection();
        let by_shear = self.strength.shear_sag(stretch.extremes.largest_moment().value);
        let sag = largest.value / rigidity + by_shear;
        let limits = self.input.limits;
        let over = if limit == Limit::LiveSag { limits.live } else { limits.total };
        // The length of an overhang counts twice (IBC Table 1604.3, note i; IRC Table R301.7, from memory).
        let times = if stretch.kind == StretchKind::Span { 1.0 } else { 2.0 };
        let allowed = (stretch.to - stretch.from) * times / over;
        self.keep((limit, largest.at, way), demand, (sag.inches(), allowed.inches(), "in"));
    }

    fn bearings(&mut self, way: usize, demand: &Demand, solution: &Solution) {
        for (index, (bearing, reaction)) in self.input.bearings.iter().zip(solution.reactions()).enumerate() {
            if reaction.force <= Force::ZERO {
                continue;
            }
            let to_end = (bearing.at.min(self.input.length - bearing.at) - bearing.length / 2.0).max(Length::ZERO);
            let place = (self.input.is_interior(index), to_end);
            let sides = self.strength.bearing(reaction.force, bearing.length, bearing.below, place);
            self.keep((Limit::Bearing, bearing.at, way), demand, sides);
        }
    }
}
