//! Chapter 12: dowel-type fasteners. What is here is what a nail in wood needs, under wood, a wood panel or a steel
//! plate, and a bolt in single shear through wood into wood or concrete.
//!
//! *Absent on purpose*: lag screws and wood screws, double shear, and what the concrete around a bolt holds.

mod bearing;
mod bolt_spacing;
mod bolts;
mod driving;
mod penetration;
mod spacing;
mod steel;
mod withdrawal;
mod yielding;

pub use bearing::{
    WoodPanel, assigned_specific_gravity, dowel_bearing_strength, panel_bearing_strength, panel_specific_gravity,
    tabulated_dowel_bearing_strength,
};
pub use bolt_spacing::{BoltDistances, BoltLoad, Distance, bolt_distances, geometry_factor};
pub use bolts::{
    BoltYieldLimits, bolt_bearing_strength, bolt_bending_yield_strength, bolt_reduction_term, bolt_yield_limits,
    concrete_bearing_strength,
};
pub use driving::{
    ToeNailGeometry, diaphragm_factor, end_grain_factor_lateral, toe_nail_factor_lateral, toe_nail_factor_withdrawal,
    toe_nail_geometry, toe_nail_wet_service_factor_withdrawal,
};
pub use penetration::{bearing_length_in_main_member, full_penetration, least_penetration, penetration_factor};
pub use spacing::{Boring, NailSpacings, nail_spacings};
pub use steel::{PLATE_ULTIMATE, SHEET_ULTIMATE, gauge_thickness, steel_bearing_strength};
pub use withdrawal::{NailShank, combined_lateral_and_withdrawal, head_pull_through, withdrawal_per_length};
pub use yielding::{DowelBearing, SingleShear, YieldLimits, YieldMode, YieldValue, reduction_term, yield_limits};

use measure::Length;

use super::{
    OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::Status::{FromMemory, LookedUp};

/// Specific gravities of Table 12.3.3.
const SPECIFIC_GRAVITY: Limit = Limit {
    what: "specific gravity",
    unit: "",
    accepted: Accepted::Between(0.31, 0.73),
    covers: "specific gravities from 0.31 to 0.73",
    source: nds("Table 12.3.3", FromMemory),
    next_step: "Check the species, or ask the maker of the piece for its equivalent specific gravity.",
};

/// Diameter of a dowel whose bearing does not depend on the grain.
const NAIL_DIAMETER: Limit = Limit {
    what: "nail diameter",
    unit: "in",
    accepted: Accepted::MoreThan(0.0),
    covers: "nails over 0 and under 1/4 in thick",
    source: nds("Table 12.3.1B", LookedUp),
    next_step: "Use a thinner nail, or have an engineer design the joint as a bolt is.",
};

/// Gives the inches of a diameter that this chapter takes here.
fn nail_diameter(diameter: Length) -> Result<f64, OutsideLimits> {
    let inches = NAIL_DIAMETER.check(diameter.inches())?;
    Limit { accepted: Accepted::LessThan(0.25), ..NAIL_DIAMETER }.check(inches)
}
