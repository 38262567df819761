//! The working of the judged piece, step by step, with the numbers put in.

use measure::{Denominator, Length};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::nds_2018::chapter_3;
use standards::{Source, Status};

use super::analysis::Analysis;
use super::input::{Case, FlexureInput, LoadedFrom};
use super::result::{Traced, Tried};
use super::strength::{MOST_SLENDER, Piece, Rolling, Strength, conditions, stability};
use crate::beam::{Load, Section, Solution, Stretch, StretchKind};
use crate::limit::Limit;
use crate::working::{Basis, Part, adjusted_step, figure};

/// A length in a working.
pub(crate) fn feet(length: Length) -> String {
    length.to_feet_inches(Denominator::Sixteenth)
}

pub(super) fn working(tried: &Tried, input: &FlexureInput, analysis: &Analysis) -> Vec<Part> {
    let Ok(strength) = Strength::of(&tried.piece, input) else { return Vec::new() };
    let mut ways: Vec<usize> = tried.found.iter().map(|found| found.way).collect();
    ways.sort_unstable();
    ways.dedup();
    let weight = tried.piece.self_weight() * input.own_weight_share;
    let solved = |way: usize| Some((way, analysis.with_weight(analysis.demands.get(way)?, weight)?));
    let solutions = ways.into_iter().filter_map(solved).collect();
    let sheet = Sheet { tried, input, analysis, strength, solutions };
    let mut parts = vec![sheet.spans(), sheet.loads()];
    parts.extend(tried.found.iter().map(|found| sheet.part(found)));
    parts.retain(|part| !part.steps.is_empty());
    parts
}

struct Sheet<'a> {
    tried: &'a Tried,
    input: &'a FlexureInput,
    analysis: &'a Analysis,
    strength: Strength<'a>,
    /// Each way of the loads that governs something, solved.
    solutions: Vec<(usize, Solution)>,
}

impl Sheet<'_> {
    fn spans(&self) -> Part {
        let mut part = Part::new("Spans");
        let source = Basis::Published(Source::new("NDS 2018", "§3.2.1", Status::LookedUp));
        let mut from = Length::ZERO;
        for (index, bearing) in self.input.bearings.iter().enumerate() {
            let piece = bearing.at - from;
            if piece > Length::ZERO {
                let meaning = if index == 0 { "overhang" } else { "span, between the middles of the bearings" };
                part.step("L", meaning, feet(piece), (piece.inches(), "in"), source);
            }
            from = bearing.at;
        }
        let overhang = self.input.length - from;
        if overhang > Length::ZERO {
            part.step("L", "overhang", feet(overhang), (overhang.inches(), "in"), source);
        }
        part
    }

    fn loads(&self) -> Part {
        let mut part = Part::new("Loads along it");
        for one in &self.input.loads {
            let symbol = one.case.of_combination().symbol();
            let (meaning, value) = match one.load {
                Load::Point { at, force } => (format!("at {}", feet(at)), (force.pounds(), "lb")),
                Load::Couple { at, moment } => (format!("couple at {}", feet(at)), (moment.foot_pounds(), "ft-lb")),
                Load::Distributed { from, to, start, end } if start == end => {
                    (format!("from {} to {}", feet(from), feet(to)), (start.plf(), "plf"))
                }
                Load::Distributed { from, to, start, end } => {
                    let meaning = format!("from {} plf at {} to {}", figure(start.plf()), feet(from), feet(to));
                    (meaning, (end.plf(), "plf"))
                }
            };
            part.step(symbol, format!("{}, {meaning}", one.case.words()), "", value, Basis::Arithmetic);
        }
        // Of a joist or a rafter the weight is among the dead load of its strip.
        if self.input.own_weight_share == 0.0 {
            return part;
        }
        let weight = self.tried.piece.self_weight() * self.input.own_weight_share;
        let basis = self
            .tried
            .piece
            .member()
            .map_or(Basis::Input("sheet_weight"), |member| Basis::Published(member.density().source));
        part.step("D", format!("{} itself", self.tried.piece.name()), "", (weight.plf(), "plf"), basis);
        part
    }

    fn part(&self, found: &Traced) -> Part {
        match found.check.limit {
            Limit::Bending | Limit::BendingTopInTension => self.bending(found),
            Limit::Shear => self.shear(found),
            Limit::Bearing => self.bearing(found),
            Limit::LiveSag | Limit::TotalSag => self.sag(found),
            Limit::Slenderness => self.slenderness(found),
            _ => Part::new(heading(found.check.limit)),
        }
    }

    fn solution(&self, found: &Traced) -> Option<&Solution> {
        self.solutions.iter().find(|(way, _)| *way == found.way).map(|(_, solution)| solution)
    }

    /// The combination, with the pattern of spans.
    fn combination(&self, part: &mut Part, found: &Traced) {
        let Some(demand) = self.analysis.demands.get(found.way) else { return };
        let way = &demand.way;
        let pattern = way.pattern.as_ref().map_or_else(String::new, |loaded| {
            let on = loaded.iter().enumerate().filter(|(_, on)| **on).map(|(index, _)| (index + 1).to_string());
            format!(", loaded on {} of {}", on.collect::<Vec<_>>().join(" and "), loaded.len())
        });
        let wind = if way.factors[Case::WindUp as usize] > 0.0 { ", wind lifting" } else { "" };
        let duration = way.duration.factor();
        let meaning = format!("load duration factor for {}{wind}{pattern}", way.combination.name());
        part.step("C_D", meaning, way.duration.name(), (duration.value, ""), Basis::Published(duration.source));
        if way.combination.factor(LoadCase::Wind) > 0.0 {
            part.step(
                "",
                "combination of loads",
                way.combination.name(),
                (1.0, ""),
                Basis::Published(Combination::SOURCE),
            );
        }
    }

    fn stretch(&self, solution: &Solution, at: Length) -> Option<Stretch> {
        solution.stretches().iter().copied().find(|stretch| stretch.from <= at && at <= stretch.to)
    }

    fn bending(&self, found: &Traced) -> Part {
        let mut part = Part::new(heading(found.check.limit));
        let (Some(solution), Some(demand)) = (self.solution(found), self.analysis.demands.get(found.way)) else {
            return part;
        };
        self.combination(&mut part, found);
        let top = found.check.limit == Limit::Bending;
        let section = solution.just_right_of(found.at);
        let moment = section.map_or(0.0, |section: Section| section.moment.foot_pounds().abs());
        part.step("M", format!("moment at {}", feet(found.at)), "", (moment, "ft-lb"), Basis::Arithmetic);
        match &self.strength {
            Strength::Sheet(joist) => {
                let expression = format!(
                    "{} × {}",
                    figure(joist.moment().foot_pounds()),
                    figure(demand.way.duration.factor().value)
                );
                part.step(
                    "M_r",
                    "moment it carries",
                    expression,
                    (found.check.capacity, "ft-lb"),
                    Basis::Input("sheet_moment"),
                );
            }
            Strength::Lumber { member, .. } => {
                let modulus = member.section().section_modulus_strong.cubic_inches();
                let expression = format!("{} × 12 / {}", figure(moment), figure(modulus));
                part.step("f_b", "bending stress", expression, (found.check.demand, "psi"), Basis::Arithmetic);
                if let Ok(adjusted) = member.adjusted(&conditions(&self.tried.piece, self.input), demand.way.duration) {
                    adjusted_step(&mut part, &adjusted.fb_star, "bending strength but for rolling over");
                    let stretch = self.stretch(solution, found.at);
                    let held = if top { self.input.edges.top } else { self.input.edges.bottom };
                    if let Some(stretch) = stretch {
                        let span = stretch.to - stretch.from;
                        let rolling = self.strength.rolling(held, stretch.kind, span);
                        self.rolling(&mut part, rolling, adjusted.fb_star.value);
                        if let Some(volume) = member.volume_factor(span) {
                            part.step(
                                "C_V",
                                "volume factor; the less of it and C_L counts",
                                "",
                                (volume.value, ""),
                                Basis::Published(volume.source),
                            );
                        }
                    }
                    part.step("F_b'", "bending strength", "", (found.check.capacity, "psi"), Basis::Arithmetic);
                }
            }
        }
        share(&mut part, found);
        part
    }

    fn rolling(&self, part: &mut Part, rolling: Rolling, fb_star: measure::Stress) {
        match rolling {
            Rolling::Held => {
                let source = Source::new("NDS 2018", "§3.3.3.3", Status::FromMemory);
                part.step("C_L", "the edge in compression is held all along", "", (1.0, ""), Basis::Published(source));
            }
            Rolling::TooSlender(_) => {}
            Rolling::At(critical) => {
                let source = Source::new("NDS 2018", "§3.3.3.8", Status::LookedUp);
                part.step(
                    "F_bE",
                    "stress at which it rolls over",
                    "1.20 E_min' / R_B²",
                    (critical.psi(), "psi"),
                    Basis::Published(source),
                );
                let expression = format!("F_bE / F_b* = {}", figure(critical / fb_star));
                let source = Source::new("NDS 2018", "Eq. 3.3-6", Status::LookedUp);
                part.step(
                    "C_L",
                    "beam stability factor",
                    expression,
                    (stability(rolling, fb_star), ""),
                    Basis::Published(source),
                );
            }
        }
    }

    fn slenderness(&self, found: &Traced) -> Part {
        let mut part = Part::new(heading(Limit::Slenderness));
        let source = Source::new("NDS 2018", "§3.3.3.7", Status::LookedUp);
        let meaning = format!("slenderness; at most {}", figure(MOST_SLENDER));
        part.step("R_B", meaning, "√(ℓ_e d / b²)", (found.check.demand, ""), Basis::Published(source));
        share(&mut part, found);
        part
    }

    fn shear(&self, found: &Traced) -> Part {
        let mut part = Part::new(heading(Limit::Shear));
        let (Some(solution), Some(demand)) = (self.solution(found), self.analysis.demands.get(found.way)) else {
            return part;
        };
        self.combination(&mut part, found);
        let side = solution.just_right_of(found.at).map_or(0.0, |section| section.shear.pounds().abs());
        let other = solution.just_left_of(found.at).map_or(0.0, |section| section.shear.pounds().abs());
        let at = if self.input.loaded_from == LoadedFrom::Top {
            "a depth from the support, or at its face"
        } else {
            "at the face of the support"
        };
        let source = Source::new("NDS 2018", "§3.4.3.1", Status::PartlyLookedUp);
        part.step(
            "V",
            format!("shear at {}, {at}", feet(found.at)),
            "",
            (side.max(other), "lb"),
            Basis::Published(source),
        );
        if let Strength::Lumber { member, .. } = &self.strength {
            let section = member.section();
            let stress = chapter_3::rectangular_shear_stress(
                measure::Force::from_pounds(side.max(other)),
                section.breadth,
                section.depth,
            );
            let expression = format!(
                "1.5 × {} / ({} × {})",
                figure(side.max(other)),
                figure(section.breadth.inches()),
                figure(section.depth.inches())
            );
            part.step("f_v", "shear stress", expression, (found.check.demand, "psi"), Basis::Published(stress.source));
            if let Ok(adjusted) = member.adjusted(&conditions(&self.tried.piece, self.input), demand.way.duration) {
                adjusted_step(&mut part, &adjusted.fv, "shear strength");
            }
        } else {
            part.step("V_r", "shear it carries", "", (found.check.capacity, "lb"), Basis::Input("sheet_shear"));
        }
        share(&mut part, found);
        part
    }

    fn bearing(&self, found: &Traced) -> Part {
        let mut part = Part::new(heading(Limit::Bearing));
        let Some(solution) = self.solution(found) else { return part };
        self.combination(&mut part, found);
        let support = self.input.bearings.iter().position(|bearing| bearing.at == found.at);
        let Some((bearing, reaction)) = support.map(|index| (self.input.bearings[index], solution.reactions()[index]))
        else {
            return part;
        };
        part.step(
            "R",
            format!("reaction at {}", feet(found.at)),
            "",
            (reaction.force.pounds(), "lb"),
            Basis::Arithmetic,
        );
        if let Piece::Lumber(member) = &self.tried.piece {
            let breadth = member.section().breadth;
            let expression = format!(
                "{} / ({} × {})",
                figure(reaction.force.pounds()),
                figure(breadth.inches()),
                figure(bearing.length.inches())
            );
            let source = Source::new("NDS 2018", "§3.10.2", Status::LookedUp);
            part.step(
                "f_c⊥",
                "crushing across the grain",
                expression,
                (found.check.demand, "psi"),
                Basis::Published(source),
            );
            let source = Source::new("NDS 2018", "Eq. 3.10-2", Status::LookedUp);
            let meaning = "strength across the grain, with C_b away from an end; or what lies below, if that is less";
            part.step("F_c⊥'", meaning, "", (found.check.capacity, "psi"), Basis::Published(source));
        } else {
            part.step("R_r", "reaction it takes", "", (found.check.capacity, "lb"), Basis::Input("sheet_end_reaction"));
        }
        share(&mut part, found);
        part
    }

    fn sag(&self, found: &Traced) -> Part {
        let mut part = Part::new(heading(found.check.limit));
        self.combination(&mut part, found);
        let rigidity = self.strength.rigidity().pound_square_inches();
        match &self.strength {
            Strength::Lumber { member, at } => {
                let section = member.section();
                let expression = format!(
                    "{} × {}",
                    figure(at.lasting().e.psi()),
                    figure(section.second_moment_strong.inches_fourth())
                );
                part.step("E'I", "stiffness", expression, (rigidity / 1e6, "million lb-in²"), Basis::Arithmetic);
            }
            Strength::Sheet(_) => {
                part.step("EI", "stiffness", "", (rigidity / 1e6, "million lb-in²"), Basis::Input("sheet_ei"));
            }
        }
        part.step("Δ", format!("at {}", feet(found.at)), "", (found.check.demand, "in"), Basis::Arithmetic);
        let live = found.check.limit == Limit::LiveSag;
        let over = if live { self.input.limits.live } else { self.input.limits.total };
        let basis = Basis::Input(if live { "live_limit" } else { "total_limit" });
        part.step(
            "",
            "allowed",
            format!("length / {}, of an overhang twice its length", figure(over)),
            (found.check.capacity, "in"),
            basis,
        );
        if self.has_overhang() {
            let source = Source::new("IBC 2018", "Table 1604.3 note i", Status::FromMemory);
            part.step("", "length of an overhang counts", "", (2.0, ""), Basis::Published(source));
        }
        share(&mut part, found);
        part
    }

    fn has_overhang(&self) -> bool {
        self.analysis.stretches().iter().any(|stretch| stretch.kind != StretchKind::Span)
    }
}

/// A limit as a heading.
pub(crate) fn heading(limit: Limit) -> String {
    let mut words = limit.words().to_owned();
    if let Some(first) = words.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    words
}

fn share(part: &mut Part, found: &Traced) {
    let meaning = format!("share of capacity, {}", found.check.combination.name());
    let expression = format!("{} / {}", figure(found.check.demand), figure(found.check.capacity));
    part.step("", meaning, expression, (found.check.share, ""), Basis::Arithmetic);
}
