//! One size judged: how many jacks it needs, and the share of each limit that it uses.

use lumber::{AdjustedStresses, Conditions, Family, Member, Section};
use measure::{Force, Length, LineLoad, Ratio, Stress};
use standards::asce7_16::chapter_2::Combination;
use standards::nds_2018::chapter_2::LoadDuration;
use standards::nds_2018::chapter_3::{self, BendingCase};

use super::demand::{Demand, JACK_THICKNESS, demands, design_span};
use super::input::{Above, HeaderInput};
use super::jacks::Jacks;
use super::result::{Check, Limit, Misfit, Tried};
use super::room;
use super::wind::HeaderWind;
use crate::beam::simple_span_uniform;
use crate::check::keep_worst;

/// The most jacks one side is given; more than that is a post, and its own design.
pub(super) const MOST_JACKS: u8 = 5;

/// What every size is judged against, worked out once for a check.
pub(super) struct Case<'a> {
    pub(super) input: &'a HeaderInput,
    pub(super) loads: &'a loads::header::CaseLoads,
    pub(super) jacks: &'a Jacks,
    pub(super) wind: Option<HeaderWind>,
}

/// Judges one size. A rule that was left on the way gives *outside*, with its sentence.
pub(super) fn judge(member: Member, case: &Case<'_>) -> Tried {
    let family = member.family();
    let misfit = misfit(&member, case.input);
    match limits(&member, family, case) {
        Ok((jacks, checks)) => Tried { member, family, jacks, checks, outside: None, misfit },
        Err(sentence) => Tried { member, family, jacks: None, checks: Vec::new(), outside: Some(sentence), misfit },
    }
}

fn misfit(member: &Member, input: &HeaderInput) -> Option<Misfit> {
    let section = member.section();
    let room = room(input);
    if section.depth > room {
        Some(Misfit::TooDeep { room })
    } else if section.breadth > input.wall.stud.depth() {
        Some(Misfit::TooThick { room: input.wall.stud.depth() })
    } else {
        None
    }
}

/// Moisture and treatment for one size: three or more sawn plies that share their load are repetitive members.
pub(super) fn conditions(member: &Member, family: Family, input: &HeaderInput) -> Conditions {
    let repetitive = family == Family::BuiltUp2x && member.plies() >= 3 && input.plies_share_load;
    Conditions { repetitive, ..input.conditions }
}

fn limits(member: &Member, family: Family, case: &Case<'_>) -> Result<(Option<u8>, Vec<Check>), String> {
    let conditions = conditions(member, family, case.input);
    let strengths = Strengths::of(member, &conditions)?;
    let demands = demands(case.loads, member.self_weight(), case.wind.is_some());
    let mut checks = Vec::with_capacity(Limit::ALL.len());
    let (jacks, enough) = choose_jacks(member, &strengths, &demands, case, &mut checks);
    let span = design_span(case.input.opening, jacks);
    if let Some(check) = too_slender(member, span, case.input.above) {
        checks.push(check);
        return Ok((enough.then_some(jacks), checks));
    }
    let volume = member.volume_factor(span).map_or(1.0, |factor| factor.value);
    let critical = critical_stress(member, span, strengths.at(LoadDuration::Permanent), case.input.above)
        .map_err(|outside| outside.to_string())?;
    let edge_reference = member.reference_values().map_err(|problem| problem.to_string())?.fb;
    let trial =
        Trial { section: member.section(), strengths: &strengths, span, volume, edge_reference, critical, case };
    for demand in &demands {
        if demand.wind == 0.0 {
            trial.gravity(demand, &mut checks)?;
        } else if demand.combination != Combination::LeastDeadWind {
            trial.wind(demand, &mut checks)?;
        }
    }
    Ok((enough.then_some(jacks), checks))
}

/// The fewest jacks that hold the header's end; the checks of that number are added.
fn choose_jacks(
    member: &Member,
    strengths: &Strengths,
    demands: &[Demand],
    case: &Case<'_>,
    checks: &mut Vec<Check>,
) -> (u8, bool) {
    for jacks in 1..=MOST_JACKS {
        let mut found = Vec::with_capacity(Limit::ALL.len());
        let span = design_span(case.input.opening, jacks);
        for demand in demands.iter().filter(|demand| demand.wind == 0.0) {
            end_bearing(member, strengths, demand, span, jacks, case, &mut found);
        }
        let enough = found.iter().all(|check| check.share <= 1.0);
        if enough || jacks == MOST_JACKS {
            checks.append(&mut found);
            return (jacks, enough);
        }
    }
    (MOST_JACKS, false)
}

/// How a size bears on so many jacks.
pub(super) fn bearing_on(member: &Member, jacks: u8, case: &Case<'_>) -> Option<Check> {
    let strengths = Strengths::of(member, &conditions(member, member.family(), case.input)).ok()?;
    let span = design_span(case.input.opening, jacks);
    let mut found = Vec::new();
    for demand in &demands(case.loads, member.self_weight(), false) {
        end_bearing(member, &strengths, demand, span, jacks, case, &mut found);
    }
    found.into_iter().find(|check| check.limit == Limit::Bearing)
}

fn end_bearing(
    member: &Member,
    strengths: &Strengths,
    demand: &Demand,
    span: Length,
    jacks: u8,
    case: &Case<'_>,
    checks: &mut Vec<Check>,
) {
    let reaction = demand.total * span / 2.0;
    let stud_depth = case.input.wall.stud.depth();
    let bearing_length = JACK_THICKNESS * f64::from(jacks);
    let breadth = member.section().breadth.min(stud_depth);
    let crushing = chapter_3::bearing_stress(reaction, breadth, bearing_length).value;
    keep_worst(checks, stress(Limit::Bearing, crushing, strengths.at(demand.duration).fc_perp, demand.combination));
    let column = case.jacks.capacity(demand.duration) * f64::from(jacks);
    keep_worst(checks, force(Limit::JackColumn, reaction, column, demand.combination));
    let foot = chapter_3::bearing_stress(reaction, stud_depth, bearing_length).value;
    keep_worst(checks, stress(Limit::PlateBearing, foot, case.jacks.plate_strength(), demand.combination));
}

/// A size over a span.
struct Trial<'a> {
    section: Section,
    strengths: &'a Strengths,
    span: Length,
    /// `C_V` where it is set against `C_L`; 1 where there is none.
    volume: Ratio,
    /// Bending strength on edge before any factor, for pieces of which no flat value is printed.
    edge_reference: Stress,
    /// `F_bE`, which load duration does not change; none where the header cannot roll.
    critical: Option<Stress>,
    case: &'a Case<'a>,
}

impl Trial<'_> {
    fn gravity(&self, demand: &Demand, checks: &mut Vec<Check>) -> Result<(), String> {
        let section = self.section;
        let strength = self.strengths.at(demand.duration);
        let input = self.case.input;
        let bending = demand.total * self.span * self.span / 8.0 / section.section_modulus_strong;
        let allowed = strength.fb_star * self.bending_factor(strength)?;
        keep_worst(checks, stress(Limit::Bending, bending, allowed, demand.combination));
        let shear = demand.total * (input.opening / 2.0 - section.depth).max(Length::ZERO);
        let shear = chapter_3::rectangular_shear_stress(shear, section.breadth, section.depth).value;
        keep_worst(checks, stress(Limit::Shear, shear, strength.fv, demand.combination));
        let sag =
            |load: LineLoad| simple_span_uniform(load, self.span, strength.e * section.second_moment_strong).deflection;
        let (live, total) = (sag(demand.transient), sag(demand.total));
        keep_worst(checks, length(Limit::LiveDeflection, live, self.span / input.limits.live, demand.combination));
        keep_worst(checks, length(Limit::TotalDeflection, total, self.span / input.limits.total, demand.combination));
        Ok(())
    }

    fn wind(&self, demand: &Demand, checks: &mut Vec<Check>) -> Result<(), String> {
        let Some(wind) = &self.case.wind else { return Ok(()) };
        let section = self.section;
        let strength = self.strengths.at(demand.duration);
        let down = demand.total * self.span * self.span / 8.0 / section.section_modulus_strong;
        let across = wind.line_load(demand.wind) * self.span * self.span / 8.0 / section.section_modulus_weak;
        let strong = strength.fb_star * self.bending_factor(strength)?;
        let down = chapter_3::BendingStress { actual: down, allowed: strong };
        let across = chapter_3::BendingStress {
            actual: across,
            allowed: flat_strength(strength, self.edge_reference, demand.duration),
        };
        let share = chapter_3::two_way_bending(down, across, self.critical)
            .map_or(ROLLED_OVER, |share| share.value.min(ROLLED_OVER));
        keep_worst(checks, Check::of_share(Limit::Wind, share, demand.combination));
        Ok(())
    }

    /// `C_L`, or `C_V` where that is less (NDS 2018 5.3.6, 8.3.6).
    fn bending_factor(&self, strength: &AdjustedStresses) -> Result<Ratio, String> {
        let stability = match self.critical {
            None => 1.0,
            Some(critical) => {
                let factor = chapter_3::beam_stability_factor(critical, strength.fb_star);
                factor.map_err(|outside| outside.to_string())?.value
            }
        };
        Ok(stability.min(self.volume))
    }
}

/// Share given to a header that gravity alone rolls over: past the critical stress the equation has no meaning, and
/// just before it the share grows without end.
pub(super) const ROLLED_OVER: Ratio = 99.0;

/// A header without its top held whose slenderness the standard does not allow (NDS 2018 3.3.3.7).
fn too_slender(member: &Member, span: Length, above: Option<Above>) -> Option<Check> {
    let section = member.section();
    if above == Some(Above::FramingBears) || section.depth <= section.breadth {
        return None;
    }
    let effective = chapter_3::effective_length(BendingCase::SimpleUniform, span, section.depth).value;
    let outside = chapter_3::slenderness_ratio(effective, section.depth, section.breadth).err()?;
    Some(Check::new(Limit::Slenderness, (outside.given, MOST_SLENDER, ""), Combination::Dead))
}

/// The most that the slenderness ratio `R_B` may be (NDS 2018 3.3.3.7).
const MOST_SLENDER: Ratio = 50.0;

/// The critical buckling stress of a header over a span; none where it cannot roll.
pub(super) fn critical_stress(
    member: &Member,
    span: Length,
    strength: &AdjustedStresses,
    above: Option<Above>,
) -> Result<Option<Stress>, standards::nds_2018::OutsideLimits> {
    let section = member.section();
    if above == Some(Above::FramingBears) || section.depth <= section.breadth {
        return Ok(None);
    }
    let effective = chapter_3::effective_length(BendingCase::SimpleUniform, span, section.depth).value;
    let slenderness = chapter_3::slenderness_ratio(effective, section.depth, section.breadth)?.value;
    chapter_3::critical_buckling_stress(strength.e_min_weak, slenderness).map(|critical| Some(critical.value))
}

/// Strength across the wide faces. Where a sheet prints none, the edge value is used for its load duration and without
/// any gain from a small depth: common practice, and the working says so.
pub(super) fn flat_strength(strength: &AdjustedStresses, edge_reference: Stress, duration: LoadDuration) -> Stress {
    strength.fb_weak.unwrap_or(edge_reference * duration.factor().value)
}

/// The strengths of one size at each load duration.
pub(super) struct Strengths([AdjustedStresses; LoadDuration::ALL.len()]);

impl Strengths {
    fn of(member: &Member, conditions: &Conditions) -> Result<Self, String> {
        let basis = member.design_basis(conditions).map_err(|problem| problem.to_string())?;
        Ok(Self(LoadDuration::ALL.map(|duration| basis.stresses(duration))))
    }

    const fn at(&self, duration: LoadDuration) -> &AdjustedStresses {
        &self.0[duration as usize]
    }
}

fn stress(limit: Limit, demand: Stress, capacity: Stress, combination: Combination) -> Check {
    Check::new(limit, (demand.psi(), capacity.psi(), "psi"), combination)
}

fn force(limit: Limit, demand: Force, capacity: Force, combination: Combination) -> Check {
    Check::new(limit, (demand.pounds(), capacity.pounds(), "lb"), combination)
}

fn length(limit: Limit, demand: Length, capacity: Length, combination: Combination) -> Check {
    Check::new(limit, (demand.inches(), capacity.inches(), "in"), combination)
}
