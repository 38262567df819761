//! A column of one piece or of plies, held or free along each of its two ways.

use lumber::{AdjustedStresses, Conditions, LoadDuration, Member, Product};
use measure::{Force, Length, LineLoad, Ratio, Stress};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::nds_2018::chapter_3::{self, ColumnMaterial, ColumnStage};
use standards::nds_2018::chapter_15::{BowDirection, PlyFastening, built_up_column_factor};
use standards::{Source, Status};

use crate::flexure::Case;
use crate::working::{Basis, Part, adjusted_step, figure};

/// How a column is held along one of its ways, between its ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// All along, by sheathing or board on its face.
    Along,
    /// At points so far apart.
    Every(Length),
    /// At its ends alone.
    AtEnds,
}

impl Held {
    fn unbraced(self, height: Length) -> Option<Length> {
        match self {
            Self::Along => None,
            Self::Every(apart) => Some(apart.min(height)),
            Self::AtEnds => Some(height),
        }
    }
}

/// A column as it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Uprights {
    /// Its length.
    pub height: Length,
    /// How it is held against bowing along the faces of its plies: through the depth of one.
    pub along_depth: Held,
    /// How it is held against bowing across its plies: through their breadth together.
    pub across_breadth: Held,
    /// How its plies are joined; none: each stands by itself.
    pub joined: Option<PlyFastening>,
}

/// What a column carries along it at one load duration, with what it is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Column {
    /// `F_c*`.
    pub(super) fc_star: Stress,
    /// Slenderness and critical stress through the depth: the way it bends in the wind.
    pub(super) through_depth: Option<Way>,
    /// The same across the plies.
    pub(super) across: Option<Way>,
    /// `F_c'`: with the lesser stability factor.
    pub(super) fc_prime: Stress,
}

/// One way in which a column may bow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Way {
    pub(super) slenderness: Ratio,
    pub(super) critical: Stress,
    /// `C_P`, with `K_f` in it.
    pub(super) stability: Ratio,
    pub(super) plies_factor: Ratio,
}

/// Works a column out.
pub(super) fn column(member: &Member, strength: &AdjustedStresses, stands: &Uprights) -> Result<Column, String> {
    let Some(fc_star) = strength.fc_star else {
        return Err("No published strength along the grain is held for this piece.".to_owned());
    };
    let section = member.section();
    let plies = member.plies();
    let ply = section.breadth / f64::from(plies);
    let material = match member.product() {
        Product::Sawn(_) => ColumnMaterial::Sawn,
        _ => ColumnMaterial::GluedOrComposite,
    };
    // Plies that are not joined by the rules stand each by itself: through the breadth of one.
    let thickness = if plies > 1 && stands.joined.is_none() { ply } else { section.breadth };
    let factor = |direction| match stands.joined.filter(|_| plies > 1) {
        Some(joined) => built_up_column_factor(plies, ply, joined, direction)
            .map(|factor| factor.value)
            .map_err(|outside| outside.to_string()),
        None => Ok(1.0),
    };
    let way = |held: Held, thickness: Length, e_min: Stress, direction: BowDirection| -> Result<Option<Way>, String> {
        let Some(unbraced) = held.unbraced(stands.height) else { return Ok(None) };
        let out = |outside: standards::nds_2018::OutsideLimits| outside.to_string();
        let slenderness =
            chapter_3::column_slenderness_ratio(unbraced, thickness, ColumnStage::InService).map_err(out)?.value;
        let critical = chapter_3::column_critical_stress(e_min, slenderness).map_err(out)?.value;
        let plies_factor = factor(direction)?;
        let stability =
            chapter_3::column_stability_factor(critical, fc_star, material).map_err(out)?.value * plies_factor;
        Ok(Some(Way { slenderness, critical, stability, plies_factor }))
    };
    let through_depth = way(stands.along_depth, section.depth, strength.e_min, BowDirection::AlongPlies)?;
    let across = way(stands.across_breadth, thickness, strength.e_min_weak, BowDirection::AcrossPlies)?;
    let least = [through_depth, across].into_iter().flatten().map(|way| way.stability).fold(1.0, f64::min);
    Ok(Column { fc_star, through_depth, across, fc_prime: fc_star * least })
}

/// Strengths of a member at each load duration.
pub(super) struct Strengths([AdjustedStresses; LoadDuration::ALL.len()]);

impl Strengths {
    pub(super) fn of(member: &Member, conditions: &Conditions) -> Result<Self, String> {
        let basis = member.design_basis(conditions).map_err(|problem| problem.to_string())?;
        Ok(Self(LoadDuration::ALL.map(|duration| basis.stresses(duration))))
    }

    pub(super) const fn at(&self, duration: LoadDuration) -> &AdjustedStresses {
        &self.0[duration as usize]
    }
}

/// Loads along a column by case, and how they come together.
pub(super) fn along(by_case: &[(Case, Force)], windy: bool) -> Vec<(Combination, LoadDuration, Force)> {
    let of = |case: Case| by_case.iter().filter(|(of, _)| *of == case).map(|(_, force)| *force).sum::<Force>();
    let mut all = Vec::new();
    for combination in Combination::ALL {
        let felt = match combination.shortest_case() {
            LoadCase::Dead => true,
            LoadCase::Live => of(Case::Live) > Force::ZERO,
            LoadCase::RoofLive => of(Case::RoofLive) > Force::ZERO,
            LoadCase::Snow => of(Case::Snow) > Force::ZERO,
            LoadCase::Wind => windy,
        };
        if felt {
            let total = [Case::Dead, Case::Live, Case::RoofLive, Case::Snow]
                .into_iter()
                .map(|case| of(case) * combination.factor(case.of_combination()))
                .fold(Force::ZERO, |sum, one| sum + one);
            all.push((combination, loads::combination::load_duration(combination.shortest_case()), total));
        }
    }
    if of(Case::LiveAlone) > Force::ZERO {
        let total = of(Case::Dead) + of(Case::LiveAlone);
        all.push((Combination::DeadLive, LoadDuration::TenYears, total));
    }
    all
}

/// The loads by case as steps of a working.
pub(super) fn load_steps(part: &mut Part, by_case: &[(Case, LineLoad)], strip: Length) {
    for (case, load) in by_case.iter().filter(|(_, load)| *load > LineLoad::ZERO) {
        let expression = format!("{} plf × {} in / 12", figure(load.plf()), figure(strip.inches()));
        let force: Force = *load * strip;
        let meaning = format!("{}, on each", case.words());
        part.step(case.of_combination().symbol(), meaning, expression, (force.pounds(), "lb"), Basis::Arithmetic);
    }
}

/// The column's own steps.
pub(super) fn column_steps(
    part: &mut Part,
    member: &Member,
    conditions: &Conditions,
    duration: LoadDuration,
    column: &Column,
) {
    let nds = |place, status| Basis::Published(Source::new("NDS 2018", place, status));
    if let Ok(adjusted) = member.adjusted(conditions, duration)
        && let Some(fc_star) = &adjusted.fc_star
    {
        adjusted_step(part, fc_star, "strength along the grain but for bowing");
    }
    for (way, name) in [(column.through_depth, "through its depth"), (column.across, "across its breadth")] {
        let Some(way) = way else {
            let meaning = format!("held all along {name}: it cannot bow");
            part.step("C_P", meaning, "", (1.0, ""), nds("§3.7.1.1", Status::LookedUp));
            continue;
        };
        part.step(
            "ℓ_e/d",
            format!("slenderness {name}; at most 50"),
            "",
            (way.slenderness, ""),
            nds("§3.7.1.3", Status::LookedUp),
        );
        part.step(
            "F_cE",
            "stress at which it bows",
            "0.822 E_min' / (ℓ_e/d)²",
            (way.critical.psi(), "psi"),
            nds("§3.7.1.5", Status::LookedUp),
        );
        if way.plies_factor < 1.0 {
            part.step(
                "K_f",
                "plies that slip on each other",
                "",
                (way.plies_factor, ""),
                nds("§15.3.2", Status::LookedUp),
            );
        }
        let expression = format!("F_cE / F_c* = {}", figure(way.critical / column.fc_star));
        part.step(
            "C_P",
            format!("column stability factor {name}"),
            expression,
            (way.stability, ""),
            nds("Eq. 3.7-1", Status::LookedUp),
        );
    }
    part.step(
        "F_c'",
        "strength along the grain, with the lesser C_P",
        "",
        (column.fc_prime.psi(), "psi"),
        Basis::Arithmetic,
    );
}
