//! The head of the record: where, who, and what the work was compared with.

use std::sync::Arc;

use job::walk::{Draft, RecordBody, Walk};
use leptos::prelude::*;
use view::model::Group;
use view::record::heading_fields;

use super::book::Book;
use super::drafts::Drafts;
use super::form::Form;
use super::head::Head;
use super::way::{Spot, Way};
use crate::fields::{Groups, Hand, Inputs};

const GROUPS: Groups = &[(Group::Record, "The head of the record", false)];

/// The form as it begins: the head as it stands; at first the day and hour at which the phone says the walk began.
fn begin(draft: Draft, walk: Option<&Walk>) -> Draft {
    let mut texts = walk.map(Walk::heading).unwrap_or_default();
    if let Some((date, time)) = walk.and_then(|walk| walk.begun.at.split_once('T')).filter(|_| texts.is_empty()) {
        texts.insert("date".to_owned(), date.to_owned());
        texts.insert("start".to_owned(), time.chars().take(5).collect());
    }
    Draft { texts, ..draft }
}

/// The part.
#[component]
pub fn Heading() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let drafts = expect_context::<Drafts>();
    let walk = untrack(move || book.walk());
    let name = format!("heading/{}", walk.as_ref().map(|walk| walk.id.as_str()).unwrap_or_default());
    let form = Form::open(drafts, &name, |draft| begin(draft, walk.as_deref()), |_| false);
    let fields = Signal::derive(move || form.draft.with(|draft| Arc::new(heading_fields(&draft.texts))));
    let pad = form.pad(fields, Signal::stored(Vec::new()));
    let keep = move |_| {
        let fields = form.draft.with_untracked(|draft| draft.texts.clone());
        book.add(RecordBody::Heading { fields }, move |_| {
            form.is_logged();
            way.go_instead(&Spot::Record);
        });
    };
    view! {
        <div class="walk form" class:typing=pad.typing>
            <Head words="The head" back=Spot::Record back_words="Record" />
            <Hand pad />
            <div class="keys-row">
                <button type="button" class="key" disabled=move || !form.can_undo() on:click=move |_| form.undo()>"Undo"</button>
                <button type="button" class="key save" on:click=keep>"Keep the head"</button>
            </div>
            <Inputs pad groups=GROUPS open=true />
        </div>
    }
}
