//! What is read rather than filled in, as markup: put on the page in one go, and printed as it stands.
//!
//! Everything that was typed is escaped on its way in. A part that can be tapped carries what the tap does in
//! `data-act`; see [`Act`].

mod act;
mod assumptions;
mod bars;
mod beam;
mod cautions;
mod chips;
mod cuts;
mod echo;
mod families;
mod figure;
mod given;
mod panels;
mod saved;
mod share;
mod tables;
mod texts;
mod to_do;
mod walk_checks;
mod walk_findings;
mod walk_readings;
mod working;

pub use act::Act;
pub use assumptions::assumptions;
pub use bars::bars;
pub use beam::beam;
pub use cautions::cautions;
pub use chips::chips;
pub use cuts::cuts;
pub use echo::echo;
pub use families::{OTHER_SIZES, family, other_sizes};
pub use figure::{figure, figure_said};
pub use given::{given, layer_keys, value_keys};
pub use panels::panels;
pub use saved::{SavedRow, saved};
pub use share::share;
pub use tables::tables;
pub use texts::texts;
pub use to_do::{known, to_do};
pub use walk_checks::walk_checks;
pub use walk_findings::{walk_facts, walk_findings, walk_questions, walk_remedies};
pub use walk_readings::{walk_readings, walk_ready};
pub use working::working;

use crate::model::State;

/// The state's name in the style sheet.
#[must_use]
pub const fn state_class(state: State) -> &'static str {
    match state {
        State::Carries => "carries",
        State::AtLimit => "at-limit",
        State::Short => "short",
        State::Outside => "outside",
        State::NotKnown => "not-known",
        State::Told => "told",
    }
}
