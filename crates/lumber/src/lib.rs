//! Dimension lumber, timbers and engineered members one can pick up: what is stamped on them, how big they are dressed,
//! what they weigh, and what stress they may carry where they are used.
//!
//! Start at [`Member`]: one [`Product`] in one or more plies. It gives its [`Section`], its weight and its design
//! values under [`Conditions`]: [`Member::adjusted`] with every factor and source for a working,
//! [`Member::design_basis`] for a search through many sizes, which allocates nothing.
//!
//! *Absent on purpose*: loads, spans and verdicts. A value that no published table holds is an error with a next step,
//! never a guess from its neighbours.

mod adjusted;
mod basis;
pub mod candidates;
mod conditions;
mod error;
mod family;
mod grade;
mod label;
mod member;
mod names;
mod product;
mod reference;
mod section;
mod sheet;
mod size;
mod species;

pub use adjusted::{Adjusted, AdjustedSet, AdjustedStresses, AdjustedValue, Factor};
pub use basis::DesignBasis;
pub use conditions::Conditions;
pub use error::LumberError;
pub use family::Family;
pub use grade::{Grade, species_and_grade};
pub use label::{EngineeredLabel, LabelInput};
pub use member::Member;
pub use product::{Glulam, Lvl, Product, Sawn};
pub use reference::ReferenceValues;
pub use section::Section;
pub use sheet::{SheetInput, SheetJoist};
pub use size::SawnSize;
pub use species::Species;
pub use standards::nds_2018::{
    chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature},
    supplement::{GlulamLayup, LvlGrade},
};
