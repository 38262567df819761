//! All the inputs of a place, by group, as chips.

use leptos::prelude::*;
use view::model::Group;

use super::chip_group::ChipGroup;
use crate::desk::Pad;

/// The groups in the order of the screen, and whether one opens them only when needed.
const GROUPS: [(Group, &str, bool); 8] = [
    (Group::Opening, "The opening", false),
    (Group::Carries, "What it carries", false),
    (Group::Wall, "The wall", false),
    (Group::Wood, "The wood", true),
    (Group::Site, "Site loads", true),
    (Group::Limits, "Limits", true),
    (Group::Label, "A member from its label", true),
    (Group::AsBuilt, "Found on site", true),
];

/// The inputs under their headings.
#[component]
pub fn Inputs(
    /// The inputs.
    pad: Pad,
    /// Whether every group stands open.
    #[prop(optional)]
    open: bool,
) -> impl IntoView {
    // Which inputs there are does not change while the place is open.
    let has =
        |group: Group| untrack(|| pad.look_at_all(|fields| fields.filter(|field| field.group == group).count() > 0));
    let groups = GROUPS.into_iter().filter(|(group, ..)| has(*group)).map(|(group, heading, folded)| {
        view! { <ChipGroup pad group heading folded=folded && !open /> }
    });
    view! { <div class="inputs">{groups.collect_view()}</div> }
}
