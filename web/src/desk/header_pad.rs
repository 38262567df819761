//! The header's inputs as they are given to a place.

use leptos::prelude::*;
use view::model::{FieldId, Group, HeaderScreen};

use crate::fields::{Groups, Pad};

/// The groups in the order of the screen, and whether one opens them only when needed.
pub const HEADER_GROUPS: Groups = &[
    (Group::Opening, "The opening", false),
    (Group::Carries, "What it carries", false),
    (Group::Wall, "The wall", false),
    (Group::Wood, "The wood", true),
    (Group::Site, "Site loads", true),
    (Group::Limits, "Limits", true),
    (Group::Label, "A member from its label", true),
    (Group::AsBuilt, "Found on site", true),
];

/// All inputs of a header's screen, none of them asked for first.
pub fn header_pad(
    screen: Memo<HeaderScreen>,
    hand: RwSignal<FieldId>,
    bring: Callback<FieldId>,
    typed: Callback<FieldId, Option<String>>,
    write: Callback<(FieldId, Option<String>)>,
) -> Pad {
    Pad {
        fields: Signal::derive(move || screen.with(|screen| screen.fields.clone())),
        belongs: |_| true,
        hand: hand.into(),
        typing: RwSignal::new(false),
        bring,
        typed,
        write,
        asked: Signal::stored(Vec::new()),
        way_on: None,
        beside: None,
        pictures: view::header::option_picture,
    }
}
