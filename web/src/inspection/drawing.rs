//! What the drawing asks of a mark: typed once, copied to the next.

use std::sync::Arc;

use framing::bracing::BracingKind;
use framing::walk::{Scheduled, scheduled};
use job::Fields;
use job::walk::{Draft, MarkVersion, RecordBody, Walk};
use leptos::prelude::*;
use view::model::Group;
use view::quick::own_key;
use view::walk::mark_fields;

use super::book::Book;
use super::drafts::Drafts;
use super::form::Form;
use super::head::Head;
use super::line::Line;
use super::way::{Spot, Way};
use crate::browser;
use crate::fields::{Groups, Hand, Inputs};

/// The input that holds the mark's name, beside those that the drawing asks for.
const NAME: &str = "mark_name";

const GROUPS: Groups = &[(Group::Required, "From the drawing", false), (Group::Around, "The wall", true)];

/// The form as it begins: the mark as it stands; for a new one, the last mark with the next name.
fn begin(draft: Draft, walk: Option<&Walk>, mark: Option<&str>) -> Draft {
    let marks = walk.map(|walk| walk.marks.as_slice()).unwrap_or_default();
    let (fields, name) = match mark {
        Some(id) => {
            let found = marks.iter().find(|known| known.id == id);
            (
                found.and_then(|found| found.now()).map(|now| now.fields.clone()),
                found.map(|found| found.name().to_owned()),
            )
        }
        None => (marks.last().and_then(|last| last.now()).map(|now| now.fields.clone()), Some(next_name(marks.len()))),
    };
    let mut texts = fields.unwrap_or_default();
    texts.extend(name.map(|name| (NAME.to_owned(), name)));
    Draft { texts, ..draft }
}

fn next_name(marks: usize) -> String {
    format!("W{}", marks + 1)
}

/// The part.
#[component]
pub fn Drawing(
    /// The mark; none for a new one.
    mark: Option<String>,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let drafts = expect_context::<Drafts>();
    let walk = untrack(move || book.walk());
    let walk_id = walk.as_ref().map(|walk| walk.id.clone()).unwrap_or_default();
    let form = Form::open(
        drafts,
        &format!("drawing/{walk_id}/{}", mark.as_deref().unwrap_or_default()),
        |draft| begin(draft, walk.as_deref(), mark.as_deref()),
        |_| false,
    );
    let fields = Signal::derive(move || form.draft.with(|draft| Arc::new(mark_fields(&draft.texts))));
    let pad = form.pad(fields, Signal::stored(Vec::new()));
    let name = move || form.draft.with(|draft| draft.texts.get(NAME).cloned().unwrap_or_default());
    let back = mark.clone().map_or(Spot::Walk, Spot::Mark);
    let back_words = if mark.is_some() { "Mark" } else { "Walk" };
    let keep = move |_| {
        let id = mark.clone().unwrap_or_else(browser::new_id);
        let texts = form.draft.with_untracked(|draft| draft.texts.clone());
        let version = version(id.clone(), texts);
        book.add(RecordBody::Mark(version), move |_| {
            form.is_logged();
            way.go_instead(&Spot::Mark(id));
        });
    };
    let scheduled = untrack(move || {
        book.job
            .with(|job| job.site.get(&own_key(BracingKind::Schedule, "schedule_lines")).map(|lines| scheduled(lines)))
    });
    let scheduled = scheduled.unwrap_or_default();
    let fill = move |of: Scheduled| {
        let Scheduled { mark, asks } = of;
        let tap = move |_| form.change(true, |draft| draft.texts.extend(asks.clone()));
        view! { <button type="button" class="key" on:click=tap>{mark}</button> }
    };
    view! {
        <div class="walk form" class:typing=pad.typing>
            <Head words="The drawing asks" back back_words />
            <Line
                id="mark-name"
                label="Mark"
                words=Signal::derive(name)
                write=Callback::new(move |typed| form.write(NAME, Some(typed)))
            />
            {(!scheduled.is_empty())
                .then(|| {
                    view! {
                        <section class="scheduled">
                            <h2>"As the schedule has it"</h2>
                            <div class="keys-row">{scheduled.into_iter().map(fill).collect_view()}</div>
                        </section>
                    }
                })}
            <Hand pad />
            <div class="keys-row">
                <button type="button" class="key" disabled=move || !form.can_undo() on:click=move |_| form.undo()>"Undo"</button>
                <button type="button" class="key save" disabled=move || name().trim().is_empty() on:click=keep>
                    {move || format!("Keep {}", name().trim())}
                </button>
            </div>
            <Inputs pad groups=GROUPS open=true />
        </div>
    }
}

fn version(mark: String, mut texts: Fields) -> MarkVersion {
    let name = texts.remove(NAME).unwrap_or_default().trim().to_owned();
    MarkVersion { mark, name, fields: texts }
}
