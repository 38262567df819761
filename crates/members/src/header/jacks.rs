//! The jacks: what one of them carries as a column, and what its bottom plate bears.

use lumber::{Member, Product, Sawn};
use measure::{Force, Length, Ratio, Stress};
use standards::nds_2018::chapter_2::LoadDuration;
use standards::nds_2018::chapter_3::{self, ColumnMaterial, ColumnStage};

use super::input::HeaderInput;

/// Thickness of the bottom plate that a jack stands on.
pub(super) const PLATE_THICKNESS: Length = Length::from_inches(1.5);

/// What one jack carries at each load duration.
///
/// The king and the sheathing hold it across its thin way (common practice), so it can only bow through the wall's
/// depth. It takes no wind: it stops at the header, and the kings take the wind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Jacks {
    capacities: [Force; LoadDuration::ALL.len()],
    plate: Stress,
    /// Length of a jack.
    pub(super) length: Length,
    /// Column slenderness through the wall's depth.
    pub(super) slenderness: Ratio,
}

impl Jacks {
    /// Works out the jacks of an opening.
    pub(super) fn of(input: &HeaderInput) -> Result<Self, String> {
        let stud = stud(input)?;
        let length = input.wall.head_height - PLATE_THICKNESS;
        let slenderness = chapter_3::column_slenderness_ratio(length, input.wall.stud.depth(), ColumnStage::InService)
            .map_err(|outside| outside.to_string())?
            .value;
        let mut capacities = [Force::ZERO; LoadDuration::ALL.len()];
        for (capacity, duration) in capacities.iter_mut().zip(LoadDuration::ALL) {
            *capacity = column_capacity(&stud, input, duration, slenderness)?;
        }
        let plate = stud
            .adjusted_stresses(&input.conditions, LoadDuration::TenYears)
            .map_err(|problem| problem.to_string())?
            .fc_perp;
        Ok(Self { capacities, plate, length, slenderness })
    }

    /// What one jack carries.
    pub(super) const fn capacity(&self, duration: LoadDuration) -> Force {
        self.capacities[duration as usize]
    }

    /// What the bottom plate bears; load duration does not change it (NDS 2018 Table 4.3.1).
    pub(super) const fn plate_strength(&self) -> Stress {
        self.plate
    }
}

/// One stud of the wall, in the header's species and grade.
pub(super) fn stud(input: &HeaderInput) -> Result<Member, String> {
    let product = Product::Sawn(Sawn { species: input.species, grade: input.grade, size: input.wall.stud });
    Ok(Member::single(product))
}

fn column_capacity(
    stud: &Member,
    input: &HeaderInput,
    duration: LoadDuration,
    slenderness: Ratio,
) -> Result<Force, String> {
    let strength = stud.adjusted_stresses(&input.conditions, duration).map_err(|problem| problem.to_string())?;
    let Some(fc_star) = strength.fc_star else {
        return Err("No published strength along the grain is held for these studs.".to_owned());
    };
    let outside = |limit: standards::nds_2018::OutsideLimits| limit.to_string();
    let critical = chapter_3::column_critical_stress(strength.e_min, slenderness).map_err(outside)?.value;
    let factor = chapter_3::column_stability_factor(critical, fc_star, ColumnMaterial::Sawn).map_err(outside)?.value;
    Ok(fc_star * factor * stud.section().area)
}
