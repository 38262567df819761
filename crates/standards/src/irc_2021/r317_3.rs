//! R317.3: what fasteners and connectors in treated wood are made of.

use super::DOCUMENT;
use crate::{Source, Status};

/// R317.3.1: fasteners in preservative-treated wood. Read in quotes of the editions of 2003 to 2009; that 2021 says the
/// same is from memory.
pub const IN_TREATED_WOOD: Source = Source::new(DOCUMENT, "R317.3.1", Status::PartlyLookedUp);
/// R317.3: connectors in treated wood outdoors, where neither the treater nor the maker gives advice.
pub const CONNECTORS: Source = Source::new(DOCUMENT, "R317.3", Status::PartlyLookedUp);
/// Table R507.2.3: fasteners and connectors of decks within 300 ft of salt water are stainless.
pub const DECKS_NEAR_SALT_WATER: Source = Source::new(DOCUMENT, "Table R507.2.3", Status::PartlyLookedUp);

/// What keeps a fastener or a connector from rusting, or that nothing does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Protection {
    /// Plain carbon steel.
    Plain,
    /// Zinc by electroplating: bright and thin.
    Electroplated,
    /// Zinc put on mechanically: ASTM B695, Class 55 or better.
    MechanicallyPlated,
    /// Sheet galvanized as most connectors are: less than G185.
    StandardGalvanized,
    /// Hot-dip galvanized: ASTM A153 on fasteners, A653 G185 on sheet, A123 on thick parts.
    HotDipGalvanized,
    /// Stainless steel, type 304 or 316.
    Stainless,
    /// Silicon bronze.
    SiliconBronze,
    /// Copper.
    Copper,
}

/// Kind of fastener, as the exceptions of R317.3.1 divide them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fastener {
    /// Nail or timber rivet.
    NailOrRivet,
    /// Steel bolt of 1/2 in or more.
    HeavyBolt,
    /// Any other: screws, lag screws, thinner bolts. The IBC counts screws and lag screws with nails.
    Other,
}

/// What wood was treated with, and where it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Treatment {
    /// Borate (SBX, DOT, zinc borate), indoors and dry.
    BorateDry,
    /// Any other preservative or fire-retardant treatment, or outdoors.
    Other,
}

/// Whether a fastener may be used in treated wood; its nut and washer count as it does.
///
/// Hot-dip galvanized steel, stainless steel, silicon bronze and copper may. Steel bolts of 1/2 in or more may be
/// plain. Fasteners other than nails and timber rivets may be mechanically plated. In dry borate wood indoors plain
/// steel may.
#[must_use]
pub const fn fastener_may_be_in(fastener: Fastener, protection: Protection, treatment: Treatment) -> bool {
    match protection {
        Protection::HotDipGalvanized | Protection::Stainless | Protection::SiliconBronze | Protection::Copper => true,
        Protection::MechanicallyPlated if matches!(fastener, Fastener::Other) => true,
        _ => matches!(fastener, Fastener::HeavyBolt) || matches!(treatment, Treatment::BorateDry),
    }
}
