//! What metal near salt water should be.

use measure::Length;
use standards::Source;
use standards::irc_2021::r317_3::Protection;
use standards::nfip_technical_bulletin_8::{
    CorrosionClass, DRY_AT_THE_SHORE, MetalExposure, RECOMMENDATION, SHORE, corrosion_class,
};
use standards::{OutsideTable, Status};

/// What fasteners and connectors should be at a place in or on a house.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MetalFinding {
    /// The class; a matter of durability, never of strength.
    pub class: CorrosionClass,
    /// Whether the distance was not given and the house taken as standing at the shore.
    pub assumed_at_shore: bool,
    /// What it rests on.
    pub source: Source,
}

/// What fasteners and connectors should be, by the distance to salt water and where the metal sits. The flood zone has
/// no part in it.
///
/// # Errors
/// A negative distance.
pub fn metal_wanted(to_salt_water: Option<Length>, exposure: MetalExposure) -> Result<MetalFinding, OutsideTable> {
    let distance = to_salt_water.unwrap_or(Length::ZERO);
    if distance < Length::ZERO {
        return Err(OutsideTable {
            source: RECOMMENDATION,
            given: format!("{} ft to salt water", distance.feet()),
            covers: "distances from the water's edge inland",
            next_step: "Over the water, ask the engineer what the metal should be.",
        });
    }
    let disputed = exposure == MetalExposure::DryInside && distance <= SHORE;
    Ok(MetalFinding {
        class: corrosion_class(distance, exposure),
        assumed_at_shore: to_salt_water.is_none(),
        source: if disputed { DRY_AT_THE_SHORE } else { RECOMMENDATION },
    })
}

/// Whether a protection is of a class or better. Silicon bronze and copper are not ranked with steel: beyond the
/// standard class they are no answer.
#[must_use]
pub const fn is_of_class(protection: Protection, class: CorrosionClass) -> bool {
    match class {
        CorrosionClass::Standard => true,
        CorrosionClass::HotDipOrStainless => matches!(protection, Protection::HotDipGalvanized | Protection::Stainless),
        CorrosionClass::Stainless => matches!(protection, Protection::Stainless),
    }
}

/// A trade association's rule: a fastener and its connector are of the same metal, never stainless nails in a
/// galvanized strap.
pub const SAME_METAL: Source =
    Source::new("a pine growers' association", "fasteners in treated wood", Status::LookedUp);

#[derive(PartialEq)]
enum Metal {
    Steel,
    Zinc,
    Stainless,
    Bronze,
    Copper,
}

const fn metal(protection: Protection) -> Metal {
    match protection {
        Protection::Plain => Metal::Steel,
        Protection::Electroplated
        | Protection::MechanicallyPlated
        | Protection::StandardGalvanized
        | Protection::HotDipGalvanized => Metal::Zinc,
        Protection::Stainless => Metal::Stainless,
        Protection::SiliconBronze => Metal::Bronze,
        Protection::Copper => Metal::Copper,
    }
}

/// Whether a fastener and a connector have the same metal outside.
#[must_use]
pub fn same_metal(fastener: Protection, connector: Protection) -> bool {
    metal(fastener) == metal(connector)
}
