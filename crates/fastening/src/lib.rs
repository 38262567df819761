//! Nails: what was driven against what was asked for.
//!
//! A [`Nail`] is a diameter and a length; [`read_nail`] reads what people write, and refuses a penny size alone. A
//! [`Joint`] is a side member of wood or steel, a main member, and how the nail goes through them. Of one nail in it,
//! [`lateral_value`] gives what it carries across its shank, [`withdrawal_value`] along it, [`uplift_value`] along it
//! with its head counted in, and [`check_combined`] says whether it carries both at once; every number behind the answer
//! is in it. [`bolt_value`] does the same for a bolt.
//!
//! [`worth`] compares two nails across the shank, and turns the ratio into a spacing or a number of nails; [`swap`] does
//! so for a whole joint, the pull counted in, with what splits and what is not like for like, and [`swap_across`] where
//! nothing pulls. [`edge_framing`] says where such nails would split the framing, [`approval`] who must agree, and
//! [`listed`] whether the code's own schedule has the nail.
//!
//! *Invariant*: a nail that reaches less than 6 diameters, and a spacing no table reaches, have no number here. What an
//! engineer drew is never changed: an answer is a question to who must approve it.
//!
//! *Absent on purpose*: the strength of panels and walls (a table of tests gives it, not the single nail), screws,
//! staples, hardened nails, double shear, rows of many bolts, what a steel plate carries itself, and what concrete
//! around a bolt holds.

mod approval;
mod bolt;
mod bolt_error;
mod bolt_place;
mod combined;
mod error;
mod factor;
mod joint;
mod lateral;
mod nail;
mod reach;
mod read;
mod schedule;
mod splitting;
mod swap;
mod uplift;
mod withdrawal;
mod worth;

pub use approval::{Approval, NailedWork, approval};
pub use bolt::{BoltCaution, BoltJoint, BoltMain, BoltValue, BoltedWood, bolt_value};
pub use bolt_error::BoltError;
pub use bolt_place::{BoltPlace, needed_distances};
pub use combined::{CombinedCheck, check_combined, value_at_angle};
pub use error::{FasteningError, HoldsNoPull, NailError, SpacingError};
pub use factor::Factor;
pub use joint::{Driven, Joint, MainMember, NailConditions, SideMaterial, SideMember, Wood};
pub use lateral::{Caution, LateralValue, ShortPenetration, lateral_value};
pub use nail::Nail;
pub use reach::Reach;
pub use read::{NailReading, read_nail};
pub use schedule::listed;
pub use splitting::{EdgeFraming, edge_framing, least_edge_spacing, least_spacing_along_grain, nails_may_be_added};
pub use standards::nds_2018::{
    appendix_l::{NailKind, NailSize},
    chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature},
    chapter_11::ConnectionMoisture,
    chapter_12::{PLATE_ULTIMATE, SHEET_ULTIMATE, WoodPanel, YieldMode, gauge_thickness},
};
pub use swap::{Difference, Pattern, Room, Swap, SwapGoverns, UpliftPair, swap, swap_across};
pub use uplift::{NailSpec, PullThroughValue, UpliftLimit, UpliftValue, pull_through_value, table_head, uplift_value};
pub use withdrawal::{Shank, WithdrawalValue, withdrawal_value};
pub use worth::{EquivalentSpacing, Worth, worth};
