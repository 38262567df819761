//! Studs: compression from above, wind from the side, cuts, the plate under them, and the code's stud table beside it.

use lumber::{Conditions, Grade, LoadDuration, Member, Product, Species, candidates::stud_candidates};
use measure::{Area, AreaLoad, Force, Length, LineLoad, Ratio, SectionModulus, Stress};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::irc_2021::r602_3_5::{StudSpacing, StudSupporting, bearing_stud, nonbearing_stud};
use standards::nds_2018::chapter_3::{self, StrongAxis};
use standards::{Source, Status};

use super::Tried;
use super::column::{Strengths, Uprights, along, column, column_steps, load_steps};
use super::post::plate_strength;
use crate::beam::simple_span_uniform;
use crate::check::{Check, keep_worst, wind_for_deflection};
use crate::choose::{best, smallest_of_each_family};
use crate::flexure::Case;
use crate::limit::Limit;
use crate::working::{Basis, Part, adjusted_step, figure};

/// Wind on a wall at strength level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudWind {
    /// On the stud by itself, as cladding: with no load on it.
    pub alone: AreaLoad,
    /// On the main frame: together with loads from above.
    pub with_loads: AreaLoad,
}

/// A cut in a stud.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StudCut {
    /// A notch this deep.
    Notch(Length),
    /// A hole of this diameter through its wide face.
    Hole(Length),
}

/// A stud, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct StudInput {
    /// How it stands: its length, and what holds it.
    pub stands: Uprights,
    /// Spacing, centre to centre.
    pub spacing: Length,
    /// Width of the opening beside it, where it is a king.
    pub opening: Option<Length>,
    /// Loads along the wall, by case.
    pub loads: Vec<(Case, LineLoad)>,
    /// Wind; none on an inner wall.
    pub wind: Option<StudWind>,
    /// Height over the bow that is allowed.
    pub bow_limit: Ratio,
    /// A cut.
    pub cut: Option<StudCut>,
    /// Strength across the grain of the plates.
    pub plate: Stress,
    /// What the wall carries, for the code's table; none for a wall that bears nothing.
    pub supporting: Option<StudSupporting>,
    /// Species.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Member>,
}

impl StudInput {
    /// Width of wall whose wind it takes.
    #[must_use]
    pub fn wind_strip(&self) -> Length {
        self.opening.map_or(self.spacing, |opening| (opening + self.spacing) / 2.0)
    }

    /// One of many alike, close together, with sheathing between; a king is not.
    fn conditions(&self) -> Conditions {
        Conditions { repetitive: self.opening.is_none() && self.spacing.inches() <= 24.0, ..self.conditions }
    }

    fn on_each(&self) -> Vec<(Case, Force)> {
        self.loads.iter().map(|(case, load)| (*case, *load * self.spacing)).collect()
    }
}

/// What a stud check answers.
#[derive(Clone, Debug, PartialEq)]
pub struct StudAnswer {
    /// Every size tried.
    pub tried: Vec<Tried>,
    /// Which of them the answer is about.
    pub judged: usize,
    /// The smallest of each family that works.
    pub smallest: Vec<usize>,
    /// The tallest that the judged stud may be, and what limits it.
    pub tallest: Option<(Length, Limit)>,
    /// The code's stud table: the spacing and the height that it allows.
    pub table: Result<StudSpacing, String>,
    /// The most that comes down on each.
    pub most: Force,
    /// The working of the judged stud.
    pub working: Vec<Part>,
}

/// Checks a stud.
///
/// # Errors
/// A sentence, when no size of this wood has a published value.
pub fn check_stud(input: &StudInput) -> Result<StudAnswer, String> {
    let other =
        input.chosen.clone().filter(|chosen| !stud_candidates(input.species, input.grade).any(|one| one == *chosen));
    let members = stud_candidates(input.species, input.grade).chain(other);
    let tried: Vec<Tried> = members.map(|member| judge(member, input)).collect();
    if tried.is_empty() {
        return Err("No stud of this wood has a published value. Choose another species or grade.".to_owned());
    }
    let smallest = smallest_of_each_family(&tried);
    let chosen = input.chosen.as_ref().and_then(|chosen| tried.iter().position(|tried| tried.member == *chosen));
    let judged = best(&tried, &smallest, chosen);
    let member = tried[judged].member.clone();
    let most = along(&input.on_each(), false).iter().map(|(_, _, force)| *force).fold(Force::ZERO, Force::max);
    Ok(StudAnswer {
        tallest: tallest(&tried[judged], input),
        table: table(&member, input),
        most,
        working: working(&tried[judged], input),
        tried,
        judged,
        smallest,
    })
}

fn judge(member: Member, input: &StudInput) -> Tried {
    let judged = checks(&member, input);
    Tried::of(member, judged)
}

fn checks(member: &Member, input: &StudInput) -> Result<Vec<Check<Limit>>, String> {
    let conditions = input.conditions();
    let strengths = Strengths::of(member, &conditions)?;
    let section = member.section();
    let left = Left::of(member, input.cut)?;
    let plate = plate_strength(input.plate, section.breadth);
    let mut checks = Vec::new();
    for (combination, duration, force) in along(&input.on_each(), input.wind.is_some()) {
        let strength = strengths.at(duration);
        let column = column(member, strength, &input.stands)?;
        let fc = force / section.area;
        keep_worst(&mut checks, Check::new(Limit::PlateBearing, (fc.psi(), plate.psi(), "psi"), combination));
        let wind = input.wind.map_or(LineLoad::ZERO, |wind| wind.with_loads * input.wind_strip());
        let across = wind * combination.factor(LoadCase::Wind);
        let moment = across * input.stands.height * input.stands.height / 8.0;
        if across > LineLoad::ZERO {
            let fb = moment / section.section_modulus_strong;
            let share =
                with_bending(fc, column.fc_prime, fb, strength.fb_star, column.through_depth.map(|way| way.critical));
            keep_worst(&mut checks, Check::of_share(Limit::CompressionAndWind, share, combination));
        } else {
            let sides = (fc.psi(), column.fc_prime.psi(), "psi");
            keep_worst(&mut checks, Check::new(Limit::Compression, sides, combination));
        }
        if input.cut.is_some() {
            let share = left.share(force, moment, strength.fb_star, column.fc_star);
            keep_worst(&mut checks, Check::of_share(Limit::BendingAtCut, share, combination));
        }
    }
    if let Some(wind) = input.wind {
        let strength = strengths.at(LoadDuration::TenMinutes);
        let across = wind.alone * input.wind_strip() * Combination::DeadWind.factor(LoadCase::Wind);
        let stiffness = strength.e * section.second_moment_strong;
        let bent = simple_span_uniform(across, input.stands.height, stiffness);
        let fb = bent.moment / section.section_modulus_strong;
        let wind_alone = Combination::DeadWind;
        keep_worst(&mut checks, Check::new(Limit::Wind, (fb.psi(), strength.fb_star.psi(), "psi"), wind_alone));
        let bow = bent.deflection * wind_for_deflection();
        let allowed = input.stands.height / input.bow_limit;
        keep_worst(&mut checks, Check::new(Limit::Bow, (bow.inches(), allowed.inches(), "in"), wind_alone));
        if input.cut.is_some() {
            let share = left.share(Force::ZERO, bent.moment, strength.fb_star, strength.fb_star);
            keep_worst(&mut checks, Check::of_share(Limit::BendingAtCut, share, wind_alone));
        }
    }
    Ok(checks)
}

/// NDS 2018 Eq. 3.9-3 for a stud that bends one way.
fn with_bending(fc: Stress, fc_prime: Stress, fb: Stress, fb_prime: Stress, critical: Option<Stress>) -> Ratio {
    // Held all along through its depth it would not bend at all; then nothing of the bow is added to.
    let column_critical = critical.unwrap_or(Stress::from_psi(1e12));
    let strong = StrongAxis { fb, fb_prime, column_critical };
    chapter_3::combined_bending_compression(fc, fc_prime, strong, None).map_or(BUCKLES, |found| found.interaction.value)
}

/// Share given to a stud that bows out: past the critical stress the equation has no meaning.
const BUCKLES: Ratio = 99.0;

/// What a cut leaves of a stud.
struct Left {
    area: Area,
    modulus: SectionModulus,
    /// How far the load is from the middle of what is left.
    off_middle: Length,
}

impl Left {
    fn of(member: &Member, cut: Option<StudCut>) -> Result<Self, String> {
        let section = member.section();
        let none = "The cut leaves nothing of the stud. Measure both again.";
        match cut {
            None => Ok(Self { area: section.area, modulus: section.section_modulus_strong, off_middle: Length::ZERO }),
            Some(StudCut::Notch(depth)) => {
                let left = section.depth - depth;
                if left <= Length::ZERO {
                    return Err(none.to_owned());
                }
                Ok(Self {
                    area: section.breadth * left,
                    modulus: section.breadth * left * left / 6.0,
                    off_middle: depth / 2.0,
                })
            }
            Some(StudCut::Hole(diameter)) => {
                let left = section.depth - diameter;
                if left <= Length::ZERO {
                    return Err(none.to_owned());
                }
                // A hole in the middle: the strips beside it.
                let cube = |length: Length| length.inches() * length.inches() * length.inches();
                let second = section.breadth.inches() * (cube(section.depth) - cube(diameter)) / 12.0;
                let modulus = SectionModulus::from_cubic_inches(second * 2.0 / section.depth.inches());
                Ok(Self { area: section.breadth * left, modulus, off_middle: Length::ZERO })
            }
        }
    }

    /// Bending and compression at the cut, as if it were at mid-height, where the wind bends most: the load off the middle
    /// bends it too.
    fn share(&self, force: Force, moment: measure::Moment, fb_star: Stress, fc_star: Stress) -> Ratio {
        let axial = (force / self.area) / fc_star;
        let bending = ((moment + force * self.off_middle) / self.modulus) / fb_star;
        axial * axial + bending
    }
}

/// The tallest that a stud may be with all else as it is, to 1/16 in below it.
fn tallest(as_judged: &Tried, input: &StudInput) -> Option<(Length, Limit)> {
    // Too slender for the standard to give a number: too tall.
    let governing = |tried: &Tried| {
        tried.governing().map_or((f64::INFINITY, Limit::Slenderness), |check| (check.share, check.limit))
    };
    crate::joist::longest_span(input.stands.height, Some(governing(as_judged)), |height| {
        let stands = Uprights { height, ..input.stands };
        Some(governing(&judge(as_judged.member.clone(), &StudInput { stands, ..input.clone() })))
    })
}

/// The code's stud table, for a stud of one piece.
fn table(member: &Member, input: &StudInput) -> Result<StudSpacing, String> {
    let Product::Sawn(sawn) = member.product() else { return Err("The table is for sawn studs.".to_owned()) };
    if input.opening.is_some() {
        return Err("Studs beside an opening have a table of their own; see the header over it.".to_owned());
    }
    if member.plies() > 1 {
        return Err("The table is for single studs.".to_owned());
    }
    let size = sawn.size.nominal();
    let found = match input.supporting {
        Some(supporting) => bearing_stud(size, input.stands.height, supporting),
        None => nonbearing_stud(size, input.stands.height),
    };
    found.map_err(|outside| outside.to_string())
}

fn working(tried: &Tried, input: &StudInput) -> Vec<Part> {
    let conditions = input.conditions();
    let mut parts = Vec::new();
    let mut loads = Part::new("Loads on each stud");
    load_steps(&mut loads, &input.loads, input.spacing);
    if let Some(wind) = input.wind {
        let strip = input.wind_strip();
        for (meaning, pressure) in
            [("wind on it by itself", wind.alone), ("wind together with loads from above", wind.with_loads)]
        {
            let expression = format!("0.6 × {} psf × {} in / 12", figure(pressure.psf()), figure(strip.inches()));
            let load = (pressure * strip).plf() * Combination::DeadWind.factor(LoadCase::Wind);
            loads.step("w", meaning, expression, (load, "plf"), Basis::Published(Combination::SOURCE));
        }
    }
    parts.push(loads);
    let Ok(strengths) = Strengths::of(&tried.member, &conditions) else { return parts };
    for check in &tried.checks {
        let mut part = Part::new(crate::flexure::working::heading(check.limit));
        let duration = loads::combination::load_duration(check.combination.shortest_case());
        let nds = |place| Basis::Published(Source::new("NDS 2018", place, Status::LookedUp));
        if matches!(check.limit, Limit::Compression | Limit::CompressionAndWind)
            && let Ok(column) = column(&tried.member, strengths.at(duration), &input.stands)
        {
            column_steps(&mut part, &tried.member, &conditions, duration, &column);
        }
        if matches!(check.limit, Limit::Wind | Limit::CompressionAndWind)
            && let Ok(adjusted) = tried.member.adjusted(&conditions, duration)
        {
            adjusted_step(&mut part, &adjusted.fb_star, "bending strength");
        }
        match check.limit {
            Limit::CompressionAndWind => {
                part.step(
                    "",
                    "compression and bending together",
                    "(f_c/F_c')² + f_b / (F_b' (1 − f_c/F_cE))",
                    (check.share, ""),
                    nds("Eq. 3.9-3"),
                );
            }
            Limit::BendingAtCut => {
                let meaning =
                    "what is left at the cut, as if at mid-height; the standard gives no rule, an engineer must agree";
                part.step("", meaning, "(f_c/F_c*)² + f_b / F_b*", (check.share, ""), Basis::Arithmetic);
            }
            Limit::Bow => {
                part.step(
                    "Δ",
                    "bow under 0.7 of the wind",
                    "",
                    (check.demand, "in"),
                    Basis::Published(standards::irc_2021::r301::WIND_FOR_DEFLECTION_SOURCE),
                );
                let expression = format!("height / {}", figure(input.bow_limit));
                part.step("", "allowed", expression, (check.capacity, "in"), Basis::Input("bow_limit"));
            }
            _ => {
                part.step("f", "stress", "", (check.demand, check.unit), Basis::Arithmetic);
                part.step("F'", "strength", "", (check.capacity, check.unit), Basis::Arithmetic);
            }
        }
        let meaning = format!("share of capacity, {}", check.combination.name());
        part.step(
            "",
            meaning,
            format!("{} / {}", figure(check.demand), figure(check.capacity)),
            (check.share, ""),
            Basis::Arithmetic,
        );
        parts.push(part);
    }
    parts
}
