//! Posts, solid or built up, and how the plies of a built-up one are nailed.

use lumber::{Conditions, Grade, Member, Species, candidates::post_candidates};
use measure::{Force, Length, Stress};
use standards::asce7_16::chapter_2::Combination;
use standards::nds_2018::chapter_15::{ColumnNailing, column_nailing};
use standards::nds_2018::{Cited, chapter_3};
use standards::{Source, Status};

use super::Tried;
use super::column::{Strengths, Uprights, along, column, column_steps};
use crate::check::{Check, keep_worst};
use crate::choose::{best, smallest_of_each_family};
use crate::flexure::Case;
use crate::limit::Limit;
use crate::working::{Basis, Part, figure};

/// A post, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct PostInput {
    /// How it stands.
    pub stands: Uprights,
    /// Loads down it, by case.
    pub loads: Vec<(Case, Force)>,
    /// What lies under or over its end bears; none: metal or concrete under the whole of it.
    pub plate: Option<Stress>,
    /// Species.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// The nail that joins its plies: length and diameter.
    pub nail: Option<(Length, Length)>,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Member>,
}

/// What a post check answers.
#[derive(Clone, Debug, PartialEq)]
pub struct PostAnswer {
    /// Every size tried.
    pub tried: Vec<Tried>,
    /// Which of them the answer is about.
    pub judged: usize,
    /// The smallest of each family that works.
    pub smallest: Vec<usize>,
    /// How the plies of the judged post are nailed to each other; none for one of one piece.
    pub nailing: Option<Result<Cited<ColumnNailing>, String>>,
    /// The most that it must carry.
    pub most: Force,
    /// The working of the judged post.
    pub working: Vec<Part>,
}

/// Checks a post.
///
/// # Errors
/// A sentence, when no size of this wood has a published value.
pub fn check_post(input: &PostInput) -> Result<PostAnswer, String> {
    let tried: Vec<Tried> = candidates(input).map(|member| judge(member, input)).collect();
    if tried.is_empty() {
        return Err("No size of this wood has a published value. Choose another species or grade.".to_owned());
    }
    let smallest = smallest_of_each_family(&tried);
    let chosen = input.chosen.as_ref().and_then(|chosen| tried.iter().position(|tried| tried.member == *chosen));
    let judged = best(&tried, &smallest, chosen);
    let member = &tried[judged].member;
    let ways = along(&input.loads, false);
    Ok(PostAnswer {
        nailing: (member.plies() > 1).then(|| nailing(member, input)),
        most: ways.iter().map(|(_, _, force)| *force).fold(Force::ZERO, Force::max),
        working: working(&tried[judged], input),
        tried,
        judged,
        smallest,
    })
}

fn candidates(input: &PostInput) -> impl Iterator<Item = Member> + use<> {
    let known = post_candidates(input.species, input.grade);
    let other =
        input.chosen.clone().filter(|chosen| !post_candidates(input.species, input.grade).any(|one| one == *chosen));
    known.chain(other)
}

fn judge(member: Member, input: &PostInput) -> Tried {
    let judged = checks(&member, input);
    Tried::of(member, judged)
}

fn checks(member: &Member, input: &PostInput) -> Result<Vec<Check<Limit>>, String> {
    let strengths = Strengths::of(member, &input.conditions)?;
    let area = member.section().area;
    let mut checks = Vec::new();
    for (combination, duration, force) in along(&input.loads, false) {
        let strength = strengths.at(duration);
        let column = column(member, strength, &input.stands)?;
        let sides = ((force / area).psi(), column.fc_prime.psi(), "psi");
        keep_worst(&mut checks, Check::new(Limit::Compression, sides, combination));
        if let Some(plate) = input.plate {
            keep_worst(
                &mut checks,
                Check::new(Limit::PlateBearing, ((force / area).psi(), plate.psi(), "psi"), combination),
            );
        }
    }
    Ok(checks)
}

fn nailing(member: &Member, input: &PostInput) -> Result<Cited<ColumnNailing>, String> {
    let section = member.section();
    let ply = section.breadth / f64::from(member.plies());
    let diameter = input.nail.map_or(Length::from_inches(0.162), |(_, diameter)| diameter);
    column_nailing(member.plies(), ply, section.depth, diameter).map_err(|outside| outside.to_string())
}

fn working(tried: &Tried, input: &PostInput) -> Vec<Part> {
    let mut parts = Vec::new();
    let mut loads = Part::new("Loads down it");
    for (case, force) in input.loads.iter().filter(|(_, force)| *force > Force::ZERO) {
        loads.step(case.of_combination().symbol(), case.words(), "", (force.pounds(), "lb"), Basis::Arithmetic);
    }
    for (combination, duration, force) in along(&input.loads, false) {
        let meaning = format!("{}, load duration factor {}", combination.name(), figure(duration.factor().value));
        loads.step("P", meaning, "", (force.pounds(), "lb"), Basis::Published(Combination::SOURCE));
    }
    parts.push(loads);
    let Ok(strengths) = Strengths::of(&tried.member, &input.conditions) else { return parts };
    for check in &tried.checks {
        let mut part = Part::new(crate::flexure::working::heading(check.limit));
        let duration = loads::combination::load_duration(check.combination.shortest_case());
        if check.limit == Limit::Compression
            && let Ok(column) = column(&tried.member, strengths.at(duration), &input.stands)
        {
            column_steps(&mut part, &tried.member, &input.conditions, duration, &column);
        }
        let area = tried.member.section().area.square_inches();
        let pounds = check.demand * area;
        let expression = format!("{} / {}", figure(pounds), figure(area));
        let source = if check.limit == Limit::PlateBearing {
            Source::new("NDS 2018", "§3.10.2", Status::LookedUp)
        } else {
            Source::new("NDS 2018", "§3.6.3", Status::FromMemory)
        };
        part.step("f_c", "stress from the load", expression, (check.demand, "psi"), Basis::Published(source));
        let expression = format!("{} / {}", figure(check.demand), figure(check.capacity));
        part.step(
            "",
            format!("share of capacity, {}", check.combination.name()),
            expression,
            (check.share, ""),
            Basis::Arithmetic,
        );
        parts.push(part);
    }
    parts
}

/// What a post carries along it at a load duration, whatever is asked of it; for its own table.
///
/// # Errors
/// A sentence, where a rule was left.
pub fn capacity(member: &Member, input: &PostInput, duration: lumber::LoadDuration) -> Result<Force, String> {
    let strengths = Strengths::of(member, &input.conditions)?;
    Ok(column(member, strengths.at(duration), &input.stands)?.fc_prime * member.section().area)
}

/// End grain over this share of its strength wants a metal plate (NDS 2018 3.10.1).
pub const METAL_PLATE_OVER: f64 = 0.75;

/// Whether the end of a judged post bears so hard on end grain that a metal plate is put between.
#[must_use]
pub fn wants_metal_plate(tried: &Tried, input: &PostInput) -> bool {
    let Ok(strengths) = Strengths::of(&tried.member, &input.conditions) else { return false };
    let over = |(_, duration, force): (Combination, lumber::LoadDuration, Force)| {
        let stress = force / tried.member.section().area;
        strengths.at(duration).fc_star.is_some_and(|fc_star| stress > fc_star * METAL_PLATE_OVER)
    };
    along(&input.loads, false).into_iter().any(over)
}

/// A bearing stress that a plate of this wood takes under a post away from the plate's end.
#[must_use]
pub fn plate_strength(fc_perp: Stress, bearing_length: Length) -> Stress {
    let away = Length::from_inches(12.0);
    fc_perp * chapter_3::bearing_area_factor(bearing_length, away).map_or(1.0, |factor| factor.value)
}
