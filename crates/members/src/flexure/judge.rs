//! One piece judged: the share of each limit that it uses, over every way of the loads.

use lumber::LoadDuration;
use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment, Ratio};

use super::analysis::{Analysis, Demand, Share, points_between};
use super::input::{FlexureInput, LoadedFrom};
use super::result::{Traced, Tried};
use super::strength::{MOST_SLENDER, Piece, Rolling, Strength};
use crate::beam::{Stretch, StretchKind};
use crate::check::Check;
use crate::limit::Limit;

/// Judges one piece; `more` adds what its kind is judged by besides.
pub fn judge(
    piece: Piece,
    input: &FlexureInput,
    analysis: &Analysis,
    more: impl Fn(&Piece, &Analysis) -> Result<Vec<Traced>, String>,
) -> Tried {
    judge_for(Asked::EachLimit, piece, input, analysis, more)
}

/// Judges one piece where only what governs is asked for: what cannot use more than that is not worked, and may be left out
/// of what was found.
pub fn judge_governing(
    piece: Piece,
    input: &FlexureInput,
    analysis: &Analysis,
    more: impl Fn(&Piece, &Analysis) -> Result<Vec<Traced>, String>,
) -> Tried {
    judge_for(Asked::Governing, piece, input, analysis, more)
}

fn judge_for(
    asked: Asked,
    piece: Piece,
    input: &FlexureInput,
    analysis: &Analysis,
    more: impl Fn(&Piece, &Analysis) -> Result<Vec<Traced>, String>,
) -> Tried {
    let judged = Strength::of(&piece, input).and_then(|strength| {
        let weight = piece.self_weight() * input.own_weight_share;
        let (found, could) = (Vec::with_capacity(MOST_LIMITS), Vec::with_capacity(analysis.demands.len()));
        let mut trial = Trial { piece: &piece, input, analysis, asked, strength, weight, found, could };
        trial.run()?;
        let picture = most_bent(&trial.found);
        more(&piece, analysis)?.into_iter().for_each(|one| keep(&mut trial.found, one));
        Ok((trial.strength.rigidity(), trial.found, picture))
    });
    let (rigidity, found, picture, outside) = match judged {
        Ok((rigidity, found, picture)) => (rigidity, found, picture, None),
        Err(sentence) => (FlexuralRigidity::from_pound_square_inches(1.0), Vec::new(), 0, Some(sentence)),
    };
    Tried { piece, found, outside, misfit: None, rigidity, picture }
}

/// The way of the loads that bends it most.
fn most_bent(found: &[Traced]) -> usize {
    let bending = found.iter().filter(|one| matches!(one.check.limit, Limit::Bending | Limit::BendingTopInTension));
    bending.reduce(|a, b| if b.check.share > a.check.share { b } else { a }).map_or(0, |most| most.way)
}

/// Keeps one of each limit, in the order of the limits; of equals the earlier way of the loads.
fn keep(found: &mut Vec<Traced>, one: Traced) {
    match found.binary_search_by_key(&one.check.limit, |kept| kept.check.limit) {
        Ok(place) => {
            let kept = &found[place];
            let more = one.check.share > kept.check.share;
            if more || (one.check.share == kept.check.share && one.way < kept.way) {
                found[place] = one;
            }
        }
        Err(place) => found.insert(place, one),
    }
}

/// What rounding may take from a bound.
const ROUNDING: Ratio = 1.0 + 1e-9;

const TOO_LARGE: &str = "The results are too large to compute. Check the units of lengths and loads.";

/// A way of the loads, by its number, and a share that it cannot use more than.
type Could = (Ratio, usize);

/// As many limits as most pieces have.
const MOST_LIMITS: usize = 8;

/// What is asked of a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Asked {
    /// The share of each limit.
    EachLimit,
    /// The greatest of them alone.
    Governing,
}

struct Trial<'a> {
    piece: &'a Piece,
    input: &'a FlexureInput,
    analysis: &'a Analysis,
    asked: Asked,
    strength: Strength<'a>,
    weight: LineLoad,
    found: Vec<Traced>,
    /// Room for the ways that could use most of a limit.
    could: Vec<Could>,
}

impl Trial<'_> {
    fn run(&mut self) -> Result<(), String> {
        let analysis = self.analysis;
        for (index, stretch) in analysis.stretches().iter().enumerate() {
            self.bending(index, stretch)?;
            self.shear(stretch);
            self.sag(index, stretch, Limit::TotalSag)?;
            self.sag(index, stretch, Limit::LiveSag)?;
        }
        self.bearings();
        Ok(())
    }

    /// Works the ways that could use most of a limit, from the likeliest on, until none that is left could use more than
    /// one that was worked. `bound` gives the most that a way could use, and is asked again once `close` has worked it
    /// without the piece's own weight, which all pieces have in common.
    fn keep_worst(
        &mut self,
        limit: Limit,
        bound: impl Fn(&Demand) -> Option<Ratio>,
        close: impl Fn(&Demand),
        work: impl Fn(&Self, usize) -> Result<Option<Traced>, String>,
    ) -> Result<(), String> {
        let analysis = self.analysis;
        let mut could = core::mem::take(&mut self.could);
        could.clear();
        could.extend(analysis.demands.iter().enumerate().filter_map(|(way, demand)| Some((bound(demand)?, way))));
        while let Some(next) = (0..could.len()).reduce(|a, b| if could[b].0 > could[a].0 { b } else { a }) {
            let (most, way) = could.swap_remove(next);
            let held = self.held(limit);
            let is_less = |most: Ratio| held.is_some_and(|held| most * ROUNDING < held);
            if is_less(most) {
                break;
            }
            let demand = &analysis.demands[way];
            close(demand);
            if bound(demand).is_none_or(is_less) {
                continue;
            }
            if let Some(one) = work(self, way)? {
                keep(&mut self.found, one);
            }
        }
        self.could = could;
        Ok(())
    }

    /// The share that a way must come up to: of its limit, or of any where only the greatest is asked for.
    fn held(&self, limit: Limit) -> Option<Ratio> {
        let counts = |kept: &&Traced| self.asked == Asked::Governing || kept.check.limit == limit;
        self.found.iter().filter(counts).map(|kept| kept.check.share).reduce(f64::max)
    }

    fn traced(&self, limit: Limit, at: Length, way: usize, sides: (f64, f64, &'static str)) -> Traced {
        Traced { check: Check::new(limit, sides, self.analysis.demands[way].way.combination), at, way }
    }

    fn bending(&mut self, index: usize, stretch: &Stretch) -> Result<(), String> {
        for (limit, held) in
            [(Limit::Bending, self.input.edges.top), (Limit::BendingTopInTension, self.input.edges.bottom)]
        {
            let span = stretch.to - stretch.from;
            let rolling = self.strength.rolling(held, stretch.kind, span);
            let of_one = self.strength.bending_by_one(rolling, span, self.analysis.durations);
            let (analysis, weight) = (self.analysis, self.weight);
            let bound = |demand: &Demand| {
                let bounds = analysis.bounds(demand, Share::Total, weight, index);
                let moment = if limit == Limit::Bending { bounds.sagging } else { bounds.hogging };
                let share = moment.inch_pounds() * of_one[demand.way.duration as usize]?;
                (share > 0.0).then_some(share)
            };
            if let Rolling::TooSlender(ratio) = rolling {
                self.too_slender(index, limit, ratio, &bound)?;
            }
            let close = |demand: &Demand| {
                analysis.moments(demand, Share::Total, LineLoad::ZERO, index);
            };
            self.keep_worst(limit, bound, close, |trial, way| {
                let (moment, at) = trial.moment(index, limit, way)?;
                if moment <= Moment::ZERO {
                    return Ok(None);
                }
                let duration = trial.analysis.demands[way].way.duration;
                let sides = trial.strength.bending(moment, duration, rolling, span);
                Ok(Some(trial.traced(limit, at, way, sides)))
            })?;
        }
        Ok(())
    }

    /// The moment that puts the bottom edge or the top edge in tension, and where.
    fn moment(&self, stretch: usize, limit: Limit, way: usize) -> Result<(Moment, Length), String> {
        let demand = &self.analysis.demands[way];
        let moments = self.analysis.moments(demand, Share::Total, self.weight, stretch).ok_or(TOO_LARGE)?;
        Ok(if limit == Limit::Bending {
            (moments.most.value, moments.most.at)
        } else {
            (-moments.least.value, moments.least.at)
        })
    }

    /// The first way that bends a stretch whose edge the standard gives no number for.
    fn too_slender(
        &mut self,
        stretch: usize,
        limit: Limit,
        ratio: Ratio,
        bound: &impl Fn(&Demand) -> Option<Ratio>,
    ) -> Result<(), String> {
        for (way, _) in self.analysis.demands.iter().enumerate().filter(|(_, demand)| bound(demand).is_some()) {
            let (moment, at) = self.moment(stretch, limit, way)?;
            if moment > Moment::ZERO {
                let sides = (ratio * MOST_SLENDER, MOST_SLENDER, "");
                let one = self.traced(Limit::Slenderness, at, way, sides);
                keep(&mut self.found, one);
                break;
            }
        }
        Ok(())
    }

    fn shear(&mut self, stretch: &Stretch) {
        let ends = [
            (stretch.from, 1.0, stretch.kind != StretchKind::LeftOverhang),
            (stretch.to, -1.0, stretch.kind != StretchKind::RightOverhang),
        ];
        for (support, side, is_support) in ends {
            if !is_support {
                continue;
            }
            let at = self.critical_section(stretch, support, side);
            let durations = self.analysis.durations;
            let of_one = LoadDuration::ALL.map(|duration| {
                let share = || {
                    let (asked, there, _) = self.strength.shear(Force::from_pounds(1.0), duration);
                    asked / there
                };
                if durations[duration as usize] { share() } else { Ratio::NAN }
            });
            let shears = self.analysis.shears_at(at, side > 0.0, self.weight).map(Force::abs).enumerate();
            let share =
                |way: usize, shear: Force| shear.pounds() * of_one[self.analysis.demands[way].way.duration as usize];
            let most = shears.reduce(|a, b| if share(b.0, b.1) > share(a.0, a.1) { b } else { a });
            if let Some((way, shear)) = most {
                let sides = self.strength.shear(shear, self.analysis.demands[way].way.duration);
                let one = self.traced(Limit::Shear, at, way, sides);
                keep(&mut self.found, one);
            }
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

    fn sag(&mut self, index: usize, stretch: &Stretch, limit: Limit) -> Result<(), String> {
        let rigidity = self.strength.rigidity().pound_square_inches();
        let (share, over) = match limit {
            Limit::LiveSag => (Share::Transient, self.input.limits.live),
            _ => (Share::Total, self.input.limits.total),
        };
        // The length of an overhang counts twice (IBC Table 1604.3, note i; IRC Table R301.7, from memory).
        let times = if stretch.kind == StretchKind::Span { 1.0 } else { 2.0 };
        let allowed = (stretch.to - stretch.from) * times / over;
        let (analysis, weight) = (self.analysis, self.weight);
        let by_shear = self.strength.shear_sag(Moment::from_inch_pounds(1.0));
        let bound = |demand: &Demand| {
            // The limits of total sag are for dead load with live load or snow; of wind its own share is judged.
            let judged = if share == Share::Total { !demand.way.is_windy() } else { demand.is_loaded(share) };
            let bounds = analysis.bounds(demand, share, weight, index);
            let sag = bounds.sag / rigidity + by_shear * bounds.sagging.max(bounds.hogging).inch_pounds();
            judged.then_some(sag / allowed)
        };
        let close = |demand: &Demand| {
            analysis.sags(demand, share, LineLoad::ZERO, index);
        };
        self.keep_worst(limit, bound, close, |trial, way| {
            let demand = &analysis.demands[way];
            let largest = analysis.sags(demand, share, weight, index).ok_or(TOO_LARGE)?.largest();
            let moment = if by_shear > Length::ZERO {
                analysis.moments(demand, share, weight, index).ok_or(TOO_LARGE)?.largest().value
            } else {
                Moment::ZERO
            };
            let sag = largest.value / rigidity + trial.strength.shear_sag(moment);
            Ok(Some(trial.traced(limit, largest.at, way, (sag.inches(), allowed.inches(), "in"))))
        })
    }

    fn bearings(&mut self) {
        for (index, bearing) in self.input.bearings.iter().enumerate() {
            let reactions = self.analysis.reactions(index, self.weight).enumerate();
            let Some((way, most)) = reactions.reduce(|a, b| if b.1 > a.1 { b } else { a }) else { continue };
            if most <= Force::ZERO {
                continue;
            }
            let to_end = (bearing.at.min(self.input.length - bearing.at) - bearing.length / 2.0).max(Length::ZERO);
            let place = (self.input.is_interior(index), to_end);
            let sides = self.strength.bearing(most, bearing.length, bearing.below, place);
            let one = self.traced(Limit::Bearing, bearing.at, way, sides);
            keep(&mut self.found, one);
        }
    }
}

#[cfg(test)]
mod tests {
    use lumber::candidates::beam_candidates;
    use lumber::{Conditions, Grade, Species};

    use super::*;
    use crate::beam::Load;
    use crate::flexure::{Acting, Bearing, Case, DeflectionLimits, Edges, Held};

    /// A beam over three unequal spans with an overhang, under all kinds of load, a wind that lifts and a post among them.
    fn beam(edges: Edges) -> FlexureInput {
        let feet = Length::from_feet;
        let load = |case, plf| Acting { case, load: Load::uniform(Length::ZERO, feet(33.0), LineLoad::from_plf(plf)) };
        FlexureInput {
            length: feet(33.0),
            bearings: [0.0, 9.0, 21.0, 30.0]
                .map(|at| Bearing { at: feet(at), length: Length::from_inches(3.5), below: None })
                .to_vec(),
            loads: vec![
                load(Case::Dead, 90.0),
                load(Case::Live, 160.0),
                load(Case::RoofLive, 120.0),
                load(Case::Snow, 150.0),
                load(Case::WindUp, -400.0),
                load(Case::WindDown, 60.0),
                Acting { case: Case::Live, load: Load::point(feet(13.0), Force::from_pounds(900.0)) },
            ],
            own_weight_share: 1.0,
            edges,
            loaded_from: LoadedFrom::Top,
            conditions: Conditions::default(),
            plies_share_load: true,
            limits: DeflectionLimits { live: 360.0, total: 240.0 },
        }
    }

    /// Every way on every stretch, none left out: the most of bending and of sag.
    fn all_worked(piece: &Piece, input: &FlexureInput, analysis: &Analysis, limit: Limit) -> Ratio {
        let strength = Strength::of(piece, input).expect("these pieces have published values");
        let rigidity = strength.rigidity().pound_square_inches();
        let weight = piece.self_weight();
        let mut most = 0.0_f64;
        for demand in &analysis.demands {
            let solution = analysis.with_weight(demand, weight).expect("the loads are small");
            for (index, stretch) in solution.stretches().iter().enumerate() {
                let span = stretch.to - stretch.from;
                let times = if stretch.kind == StretchKind::Span { 1.0 } else { 2.0 };
                let bending = |moment: Moment, held| {
                    let rolling = strength.rolling(held, stretch.kind, span);
                    let (asked, there, _) = strength.bending(moment, demand.way.duration, rolling, span);
                    asked / there
                };
                let share = match limit {
                    Limit::Bending => bending(stretch.extremes.maximum_moment.value, input.edges.top),
                    Limit::BendingTopInTension => bending(-stretch.extremes.minimum_moment.value, input.edges.bottom),
                    Limit::TotalSag if demand.way.is_windy() => 0.0,
                    Limit::TotalSag => {
                        stretch.extremes.largest_deflection().value / rigidity / (span * times / input.limits.total)
                    }
                    _ => {
                        let sag = analysis.sags(demand, Share::Transient, weight, index).expect("the loads are small");
                        sag.largest().value / rigidity / (span * times / input.limits.live)
                    }
                };
                most = most.max(share);
            }
        }
        most
    }

    #[test]
    fn what_governs_is_the_same_whether_the_rest_is_worked_or_not() {
        for edges in [
            Edges { top: Held::Along, bottom: Held::AtSupports },
            Edges { top: Held::AtSupports, bottom: Held::Every(Length::from_feet(2.0)) },
        ] {
            let input = beam(edges);
            let analysis = Analysis::of(&input).expect("the beam stands");
            for piece in beam_candidates(Species::SprucePineFir, Grade::No2).map(Piece::Lumber) {
                let each = judge(piece.clone(), &input, &analysis, |_, _| Ok(Vec::new()));
                // Worked anew: what was worked for one piece brings the bounds of the next one closer.
                let fresh = Analysis::of(&input).expect("the beam stands");
                let most = judge_governing(piece, &input, &fresh, |_, _| Ok(Vec::new()));
                assert_eq!(each.governing(), most.governing());
                assert_eq!(each.verdict(), most.verdict());
            }
        }
    }

    #[test]
    fn what_is_not_worked_could_not_have_governed() {
        for edges in [
            Edges { top: Held::Along, bottom: Held::AtSupports },
            Edges { top: Held::AtSupports, bottom: Held::Every(Length::from_feet(2.0)) },
        ] {
            let input = beam(edges);
            let analysis = Analysis::of(&input).expect("the beam stands");
            for piece in beam_candidates(Species::SprucePineFir, Grade::No2).step_by(7).map(Piece::Lumber) {
                let tried = judge(piece.clone(), &input, &analysis, |_, _| Ok(Vec::new()));
                for limit in [Limit::Bending, Limit::BendingTopInTension, Limit::TotalSag, Limit::LiveSag] {
                    let found = tried.of(limit).expect("each of them is used").check.share;
                    let all = all_worked(&piece, &input, &analysis, limit);
                    assert!((found - all).abs() < 1e-9 * all, "{} {limit:?}: {found} of {all}", piece.name());
                }
            }
        }
    }
}
