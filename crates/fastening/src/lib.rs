//! Nails: what was driven against what was asked for.
//!
//! A [`Nail`] is a diameter and a length; [`read_nail`] reads what people write, and refuses a penny size alone. A
//! [`Joint`] is two pieces of wood and how the nail goes through them; [`lateral_value`] gives what one nail carries in
//! it, with every number behind the answer. [`worth`] compares two nails in one joint, and turns the ratio into a
//! spacing or a number of nails. [`edge_framing`] says where such nails would split the framing, [`approval`] who must
//! agree, and [`listed`] whether the code's own schedule has the nail.
//!
//! *Invariant*: a nail that reaches less than 6 diameters, and a spacing no table reaches, have no number here. What an
//! engineer drew is never changed: an answer is a question to who must approve it.
//!
//! *Absent on purpose*: the strength of panels and walls (a table of tests gives it, not the single nail), bolts,
//! screws, staples, hardened nails, double shear and steel side plates.

mod approval;
mod error;
mod joint;
mod lateral;
mod nail;
mod read;
mod schedule;
mod splitting;
mod worth;

pub use approval::{Approval, NailedWork, approval};
pub use error::{FasteningError, NailError, SpacingError};
pub use joint::{Driven, Joint, MainMember, NailConditions, SideMember, Wood};
pub use lateral::{Caution, Factor, LateralValue, Reach, ShortPenetration, lateral_value};
pub use nail::Nail;
pub use read::{NailReading, read_nail};
pub use schedule::listed;
pub use splitting::{EdgeFraming, edge_framing, least_edge_spacing, least_spacing_along_grain, nails_may_be_added};
pub use standards::nds_2018::{
    appendix_l::{NailKind, NailSize},
    chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature},
    chapter_11::ConnectionMoisture,
    chapter_12::{WoodPanel, YieldMode},
};
pub use worth::{EquivalentSpacing, Worth, worth};
