//! Two pieces of wood and how a nail goes through them.

use lumber::Species;
use measure::{Length, Stress};
use standards::{
    Source,
    nds_2018::{
        Cited, OutsideLimits,
        chapter_2::{LoadDuration, SustainedTemperature},
        chapter_11::ConnectionMoisture,
        chapter_12::{
            WoodPanel, assigned_specific_gravity, panel_bearing_strength, panel_specific_gravity,
            steel_bearing_strength, tabulated_dowel_bearing_strength,
        },
        supplement::SpeciesGroup,
    },
};

/// What a piece of a joint is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wood {
    /// Sawn lumber of a species group.
    Lumber(Species),
    /// A wood structural panel.
    Panel(WoodPanel),
    /// Anything else, by its specific gravity, or the equivalent one that its maker prints.
    SpecificGravity(f64),
}

impl Wood {
    /// Dowel bearing strength `F_e` under a nail, as the standard's tables print it.
    ///
    /// # Errors
    /// When a specific gravity typed in is under 0.31 or over 0.73.
    pub fn bearing_strength(self) -> Result<Cited<Stress>, OutsideLimits> {
        match self {
            Self::Lumber(species) => tabulated_dowel_bearing_strength(assigned_specific_gravity(group(species)).value),
            Self::Panel(panel) => Ok(panel_bearing_strength(panel)),
            Self::SpecificGravity(gravity) => tabulated_dowel_bearing_strength(gravity),
        }
    }

    /// Specific gravity `G`, a pure number: NDS 2018 Table 12.3.3A (looked up), Table 12.3.3B for panels (from
    /// memory), or what was typed.
    #[must_use]
    pub const fn specific_gravity(self) -> f64 {
        match self {
            Self::Lumber(species) => assigned_specific_gravity(group(species)).value,
            Self::Panel(panel) => panel_specific_gravity(panel).value,
            Self::SpecificGravity(gravity) => gravity,
        }
    }

    /// Where its specific gravity stands; none of one that was typed.
    #[must_use]
    pub const fn gravity_source(self) -> Option<Source> {
        match self {
            Self::Lumber(species) => Some(assigned_specific_gravity(group(species)).source),
            Self::Panel(panel) => Some(panel_specific_gravity(panel).source),
            Self::SpecificGravity(_) => None,
        }
    }
}

const fn group(species: Species) -> SpeciesGroup {
    match species {
        Species::SprucePineFir => SpeciesGroup::SprucePineFir,
        Species::SprucePineFirSouth => SpeciesGroup::SprucePineFirSouth,
        Species::HemFir => SpeciesGroup::HemFir,
        Species::DouglasFirLarch => SpeciesGroup::DouglasFirLarch,
        Species::SouthernPine => SpeciesGroup::SouthernPine,
    }
}

/// What the piece under the head is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SideMaterial {
    /// Wood or a wood panel.
    Wood(Wood),
    /// A steel plate or strap, with its ultimate strength `F_u`. What the plate itself carries is a check of its own.
    Steel {
        /// Ultimate strength: 45,000 psi of common strap, 58,000 psi of plate.
        ultimate: Stress,
    },
}

/// The piece under the head.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SideMember {
    /// What it is made of.
    pub material: SideMaterial,
    /// Its thickness: of a panel with overdriven nails, what is left under the heads.
    pub thickness: Length,
}

impl SideMember {
    /// A piece of wood or of a wood panel.
    #[must_use]
    pub const fn wood(wood: Wood, thickness: Length) -> Self {
        Self { material: SideMaterial::Wood(wood), thickness }
    }

    /// A steel plate of an ultimate strength `F_u`. [`crate::gauge_thickness`] has the thickness of a gauge.
    #[must_use]
    pub const fn steel(ultimate: Stress, thickness: Length) -> Self {
        Self { material: SideMaterial::Steel { ultimate }, thickness }
    }

    /// Whether it is a wood panel.
    #[must_use]
    pub const fn is_panel(&self) -> bool {
        matches!(self.material, SideMaterial::Wood(Wood::Panel(_)))
    }

    /// Dowel bearing strength `F_es`.
    ///
    /// # Errors
    /// When a specific gravity typed in is under 0.31 or over 0.73, or the steel is over 1 in thick or of an ultimate
    /// strength outside 36,000 to 100,000 psi.
    pub fn bearing_strength(&self) -> Result<Cited<Stress>, OutsideLimits> {
        match self.material {
            SideMaterial::Wood(wood) => wood.bearing_strength(),
            SideMaterial::Steel { ultimate } => steel_bearing_strength(self.thickness, ultimate),
        }
    }
}

/// The piece that holds the point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MainMember {
    /// What it is made of.
    pub wood: Wood,
    /// How much of it lies along the nail; none where it is sure to be longer than the nail.
    pub thickness: Option<Length>,
}

/// How a nail is driven into the main member.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Driven {
    /// Straight, into side grain.
    #[default]
    Face,
    /// Straight, into end grain.
    EndGrain,
    /// At a slant of 30°, entered a third of the nail's length from the end.
    Toe,
}

/// How long the load lasts, and how wet and hot the wood is: of a nail, and of a bolt as well.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NailConditions {
    /// The shortest load of the combination.
    pub duration: LoadDuration,
    /// Moisture when driven and in service.
    pub moisture: ConnectionMoisture,
    /// Temperature in service.
    pub temperature: SustainedTemperature,
}

impl NailConditions {
    /// The reference conditions of the tables: ten years, dry, not hot. Every factor is 1.
    pub const REFERENCE: Self = Self {
        duration: LoadDuration::TenYears,
        moisture: ConnectionMoisture {
            at_fabrication: lumber::ServiceMoisture::Dry,
            in_service: lumber::ServiceMoisture::Dry,
        },
        temperature: SustainedTemperature::UpTo100F,
    };
}

/// A joint of one side member and one main member.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Joint {
    /// The piece under the head.
    pub side: SideMember,
    /// The piece that holds the point.
    pub main: MainMember,
    /// Thickness of a layer of wood panel between the two, as a floor between plate and joist. The nail loses its
    /// length there and nothing more; foam and gaps are not such a layer.
    pub layer_between: Length,
    /// How the nail is driven.
    pub driven: Driven,
    /// Load, moisture and heat.
    pub conditions: NailConditions,
}

impl Joint {
    /// A joint nailed straight through `side` into a main member that is longer than the nail, with nothing between,
    /// under reference conditions. Change what differs with `Joint { driven: …, ..joint }`.
    #[must_use]
    pub const fn face_nailed(side: SideMember, main: Wood) -> Self {
        Self {
            side,
            main: MainMember { wood: main, thickness: None },
            layer_between: Length::ZERO,
            driven: Driven::Face,
            conditions: NailConditions::REFERENCE,
        }
    }
}
