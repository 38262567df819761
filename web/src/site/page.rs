//! What every check of the job starts from: answer up, hands down.

use std::sync::Arc;

use leptos::prelude::*;
use view::jobs::EXAMPLE;
use view::markup::{self, Act};
use view::model::{FieldId, Group};
use view::site::{FIRST_QUESTIONS, SiteScreen, Topic, layers};

use super::book::Book;
use super::jobs::Jobs;
use super::look_choice::LookChoice;
use super::working;
use crate::answer_strip::AnswerStrip;
use crate::block::Block;
use crate::browser;
use crate::fields::{Groups, Hand, Inputs, Pad};
use crate::picture::Picture;

const GROUPS: Groups = &[
    (Group::Place, "From the building department", false),
    (Group::Upwind, "What the wind crosses", true),
    (Group::Ground, "The ground", true),
    (Group::House, "The house", false),
    (Group::Wing, "A wing, or a garage beside it", true),
    (Group::Glass, "Doors and windows", true),
    (Group::RoofSnow, "Snow on the roof", true),
    (Group::Weights, "Weights and live loads", true),
    (Group::Parts, "Studs and rafters", true),
];

/// The inputs of the place.
fn pad_of(book: Book) -> Pad {
    Pad {
        fields: Signal::derive(move || book.screen.with(|screen| Arc::clone(&screen.fields))),
        belongs: |_| true,
        hand: book.hand.into(),
        typing: RwSignal::new(false),
        bring: Callback::new(move |field: FieldId| {
            book.hand.set(field);
            browser::to_top();
        }),
        typed: Callback::new(move |field: FieldId| book.values.fields.with(|fields| fields.get(field).cloned())),
        write: Callback::new(move |(field, text)| book.write(field, text)),
        asked: Signal::derive(move || book.screen.with(|screen| screen.questions.iter().map(|(id, _)| *id).collect())),
        way_on: None,
        beside: None,
        pictures: view::site::option_picture,
    }
}

/// What follows the inputs, in order.
const BELOW: [fn(&SiteScreen) -> String; 4] = [
    |screen| markup::known(&screen.known).into_string(),
    |screen| markup::tables(&screen.tables).into_string(),
    |screen| markup::assumptions(&screen.assumptions).into_string(),
    |screen| markup::cautions(&screen.cautions).into_string(),
];

/// The place: one question after the other the first time, then everything.
#[component]
pub fn SitePage() -> impl IntoView {
    let book = expect_context::<Book>();
    let first = book.values.fields.with_untracked(|fields| view::site::is_first_time(fields));
    let step = RwSignal::new(first.then_some(0_usize));
    let pad = pad_of(book);
    let act = acting(book, pad);
    let picture = Memo::new(move |_| book.screen.with(|screen| screen.picture.clone()));
    let answer = Memo::new(move |_| book.screen.with(|screen| (screen.answer.clone(), !screen.current)));
    let given = Signal::derive(move || {
        let hand = book.hand.get();
        if layers::takes_layers(hand) {
            return markup::layer_keys(&layers::names()).into_string();
        }
        let published = book.screen.with(|screen| screen.published_for(hand));
        let given = book.values.fields.with(|fields| markup::given(&view::site::given(fields, hand)).into_string());
        markup::value_keys(&published).into_string() + &given
    });
    let asks_all = Memo::new(move |_| step.get().is_none());
    browser::after_paint(browser::say_ready);
    view! {
        <div class="members site" class:typing=pad.typing>
            <h1 class="said">"Site"</h1>
            <div class="sheet">
                <Picture scene=picture hand=book.hand.into() act />
                <Show when=move || asks_all.get()>
                    <AnswerStrip answer />
                </Show>
            </div>
            <Show when=move || asks_all.get()>
                <Topics />
            </Show>
            <div class="bench">
                <Show when=move || !asks_all.get()>
                    <p class="note questions">
                        {move || format!("Question {} of {}. What you do not know is assumed, and says so.", step.get().unwrap_or_default() + 1, FIRST_QUESTIONS.len())}
                    </p>
                </Show>
                <Hand pad=Pad { way_on: Some(way_on(book, step)), ..pad } />
                <Block markup=given act />
                <Show when=move || !asks_all.get()>
                    <Questions step />
                    <Jobs />
                </Show>
                <Show when=move || asks_all.get()>
                    <Everything pad act />
                </Show>
            </div>
        </div>
    }
}

fn acting(book: Book, pad: Pad) -> Callback<String> {
    Callback::new(move |what: String| match Act::read(&what) {
        Some(Act::Bring(field)) => pad.bring_named(field),
        Some(Act::Write(value)) => book.write(book.hand.get_untracked(), Some(value.to_owned())),
        Some(Act::Working(part)) => working::open_at(part),
        Some(Act::Ready(index)) => {
            let hand = book.hand.get_untracked();
            if layers::takes_layers(hand) {
                let written = book.values.fields.with_untracked(|fields| fields.get(hand).cloned());
                book.write(hand, layers::with_layer(written.as_deref(), index));
            } else if let Some(by) = view::site::GIVERS.get(index) {
                book.give(hand, by);
            }
        }
        _ => {}
    })
}

/// On to the next of the first questions, while they are asked.
fn way_on(book: Book, step: RwSignal<Option<usize>>) -> (Signal<Option<String>>, Callback<()>) {
    let words = Signal::derive(move || {
        let next = step.get()? + 1;
        let Some(id) = FIRST_QUESTIONS.get(next) else { return Some("all of it".to_owned()) };
        book.screen
            .with(|screen| screen.fields.iter().find(|field| field.id == *id).map(|field| field.label.to_owned()))
    });
    (words, Callback::new(move |()| go_to(book, step, step.get_untracked().map_or(0, |now| now + 1))))
}

fn go_to(book: Book, step: RwSignal<Option<usize>>, question: usize) {
    match FIRST_QUESTIONS.get(question) {
        Some(id) => {
            book.hand.set(*id);
            step.set(Some(question));
        }
        None => {
            book.hand.set(FIRST_QUESTIONS[0]);
            step.set(None);
        }
    }
    browser::to_top();
}

/// The ways back, and past all of the first questions.
#[component]
fn Questions(step: RwSignal<Option<usize>>) -> impl IntoView {
    let book = expect_context::<Book>();
    let now = move || step.get().unwrap_or_default();
    view! {
        <div class="keys-row">
            <button type="button" class="key" disabled=move || now() == 0 on:click=move |_| go_to(book, step, now().saturating_sub(1))>"Back"</button>
            <button type="button" class="key" on:click=move |_| go_to(book, step, usize::MAX)>"Show all"</button>
        </div>
    }
}

/// Everything else of the place.
#[component]
fn Everything(pad: Pad, act: Callback<String>) -> impl IntoView {
    let book = expect_context::<Book>();
    let part = move |write: fn(&SiteScreen) -> String| Signal::derive(move || book.screen.with(write));
    let to_do = part(|screen| markup::to_do(&screen.questions, &screen.answer.action).into_string());
    view! {
        <div class="keys-row">
            <button type="button" class="key" disabled=move || !book.values.can_undo() on:click=move |_| book.undo()>"Undo"</button>
            <button type="button" class="key" aria-haspopup="dialog" on:click=|_| working::open()>"Working"</button>
        </div>
        <Block markup=to_do act />
        {BELOW.into_iter().take(2).map(|write| view! { <Block markup=part(write) act /> }).collect_view()}
        <Inputs pad groups=GROUPS />
        {BELOW.into_iter().skip(2).map(|write| view! { <Block markup=part(write) act /> }).collect_view()}
        <JobName />
        <Jobs />
        <LookChoice />
    }
}

/// What is looked at: one tap each.
#[component]
fn Topics() -> impl IntoView {
    let book = expect_context::<Book>();
    let card = move |topic: Topic| {
        let here = move || book.topic.get() == topic;
        view! {
            <button type="button" class="topic" class:here=here aria-pressed=move || here().to_string() on:click=move |_| {
                book.topic.set(topic);
                book.hand.set(topic.first());
            }>
                {topic.word()}
            </button>
        }
    };
    view! { <div class="topics" role="group" aria-label="Looked at">{Topic::ALL.map(card).into_iter().collect_view()}</div> }
}

/// The job's name. The example keeps its own: every page says by it what it is.
#[component]
fn JobName() -> impl IntoView {
    let book = expect_context::<Book>();
    if book.values.job.with_untracked(|job| job.id == EXAMPLE) {
        return ().into_any();
    }
    view! {
        <section class="group">
            <label class="name" for="job-name">"Job"</label>
            <input
                id="job-name"
                type="text"
                autocomplete="off"
                enterkeyhint="done"
                prop:value=move || book.values.job.with(|job| job.name.clone())
                on:change:target=move |event| book.values.rename_job(event.target().value())
            />
        </section>
    }
    .into_any()
}
