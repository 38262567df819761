//! FEMA NFIP Technical Bulletin 8, Corrosion Protection for Metal Connectors in Coastal Areas (2019).
//!
//! Its abstract was read: materials by distance from the ocean and by exposure within the building, in coastal areas
//! whatever the flood zone. The distances and classes themselves are from memory.

use measure::Length;

use crate::{Source, Status};

/// The bulletin: distances, exposure classes and what it recommends.
pub const RECOMMENDATION: Source =
    Source::new("NFIP Technical Bulletin 8", "materials by distance and exposure", Status::FromMemory);
/// The same for metal inside and dry within 300 ft. One summary asks for stainless at that distance without exception;
/// a case from the field found such metal clean. The safer is used.
pub const DRY_AT_THE_SHORE: Source =
    Source::new("NFIP Technical Bulletin 8", "materials by distance and exposure", Status::Disputed);

/// To this distance from salt water the bulletin asks most.
pub const SHORE: Length = Length::from_feet(300.0);
/// To this distance from salt water the bulletin asks for more than standard galvanizing.
pub const COASTAL: Length = Length::from_feet(3000.0);

/// Where metal sits in or on a building.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MetalExposure {
    /// Outdoors where rain washes salt off.
    BoldlyExposed,
    /// Outdoors under cover: salt stays on it. The worst.
    PartlySheltered,
    /// In a closed space with vents to the outside: a vented attic or crawl space.
    VentedSpace,
    /// Inside and dry.
    DryInside,
}

impl MetalExposure {
    /// Every exposure.
    pub const ALL: [Self; 4] = [Self::BoldlyExposed, Self::PartlySheltered, Self::VentedSpace, Self::DryInside];
}

/// What fasteners and connectors should be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CorrosionClass {
    /// Nothing beyond what the wood asks.
    Standard,
    /// Hot-dip galvanized (G185, ASTM A153, A123) or stainless.
    HotDipOrStainless,
    /// Stainless.
    Stainless,
}

/// What fasteners and connectors should be at a distance from salt water.
///
/// Within 300 ft: stainless. Within 3,000 ft: stainless under cover outdoors, hot-dip galvanized or stainless elsewhere
/// but inside and dry. Farther: nothing beyond what the wood asks.
#[must_use]
pub fn corrosion_class(to_salt_water: Length, exposure: MetalExposure) -> CorrosionClass {
    match exposure {
        _ if to_salt_water <= SHORE => CorrosionClass::Stainless,
        _ if to_salt_water > COASTAL => CorrosionClass::Standard,
        MetalExposure::PartlySheltered => CorrosionClass::Stainless,
        MetalExposure::BoldlyExposed | MetalExposure::VentedSpace => CorrosionClass::HotDipOrStainless,
        MetalExposure::DryInside => CorrosionClass::Standard,
    }
}
