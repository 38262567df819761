//! All the inputs of a place, by group, as chips.

use leptos::prelude::*;
use view::model::Group;

use super::chip_group::ChipGroup;
use super::pad::Pad;

/// Groups in the order of a screen, with their headings, and whether one opens them only when needed.
pub type Groups = &'static [(Group, &'static str, bool)];

/// The inputs under their headings.
#[component]
pub fn Inputs(
    /// The inputs.
    pad: Pad,
    /// The groups.
    groups: Groups,
    /// Whether every group stands open.
    #[prop(optional)]
    open: bool,
) -> impl IntoView {
    // Which inputs there are does not change while the place is open.
    let has =
        |group: Group| untrack(|| pad.look_at_all(|fields| fields.filter(|field| field.group == group).count() > 0));
    let groups = groups.iter().copied().filter(|(group, ..)| has(*group)).map(|(group, heading, folded)| {
        view! { <ChipGroup pad group heading folded=folded && !open /> }
    });
    view! { <div class="inputs">{groups.collect_view()}</div> }
}
