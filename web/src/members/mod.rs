//! Members: the header over the opening.

mod answer_strip;
mod assumptions;
mod bars;
mod candidate_row;
mod cautions;
mod cuts;
mod families;
mod keys_row;
mod page;
mod panels;
mod share_bar;
mod to_do;
mod verdict_beam;

pub use page::Members;

use view::model::State;

/// The state's name in the style sheet.
pub const fn state_class(state: State) -> &'static str {
    match state {
        State::Carries => "carries",
        State::AtLimit => "at-limit",
        State::Short => "short",
        State::Outside => "outside",
        State::NotKnown => "not-known",
    }
}
