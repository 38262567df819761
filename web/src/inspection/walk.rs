//! The walk at a glance: how it stands, its marks, what is open.

use leptos::prelude::*;
use view::markup::Act;
use view::model::{Answer, State};
use view::record;

use super::book::Book;
use super::hand_over::Backup;
use super::way::{Spot, Way};
use crate::answer_strip::AnswerStrip;
use crate::block::Block;
use crate::picture::Picture;

/// The part.
#[component]
pub fn WalkPage() -> impl IntoView {
    let book = expect_context::<Book>();
    let begun = Memo::new(move |_| book.walk().is_some());
    move || if begun.get() { view! { <Standing /> }.into_any() } else { view! { <Begin /> }.into_any() }
}

/// Before the first walk.
#[component]
fn Begin() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let scene = Memo::new(|_| view::walk::example());
    view! {
        <div class="walk begin">
            <Picture scene hand=Signal::stored("") act=Callback::new(|_| {}) />
            <h1>"Walk the job"</h1>
            <p>"Measure, log, take photos; then print the record. It is all kept on this phone, with no signal."</p>
            <div class="keys-row">
                <button type="button" class="key save" on:click=move |_| book.begin(move || way.go(&Spot::Drawing(None)))>
                    "Start a walk"
                </button>
            </div>
        </div>
    }
}

/// So many of a list stand on this page; all of them stand with their marks and in the record.
const ROWS: usize = 30;

fn first(rows: &[record::PointRow]) -> &[record::PointRow] {
    rows.get(..ROWS).unwrap_or(rows)
}

/// Opens what a tap on the walk says.
pub fn opening(way: Way) -> Callback<String> {
    Callback::new(move |what: String| match Act::read(&what) {
        Some(Act::Open(mark)) => way.go(&Spot::Mark(mark.to_owned())),
        Some(Act::Look(look)) => way.go(&Spot::Found(look.to_owned())),
        Some(Act::Bring(_)) => way.go(&Spot::Heading),
        _ => {}
    })
}

fn nothing() -> (Answer, bool) {
    let (word, share_text) = (String::new(), String::new());
    (Answer { state: State::NotKnown, figure: String::new(), word, share: None, share_text, action: Vec::new() }, false)
}

#[component]
fn Standing() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let overview = Memo::new(move |_| book.walk().map(|walk| record::overview(&walk)));
    let part = move |write: fn(&record::Overview) -> String| {
        Signal::derive(move || overview.with(|overview| overview.as_ref().map(write).unwrap_or_default()))
    };
    let name = move || book.walk().map(|walk| walk.begun.what.clone()).unwrap_or_default();
    let answer = Memo::new(move |_| {
        overview.with(|overview| overview.as_ref().map(|overview| (overview.answer(), false))).unwrap_or_else(nothing)
    });
    let act = opening(way);
    view! {
        <div class="walk">
            <h1 class="walk-name">{name}</h1>
            <Backup />
            <AnswerStrip answer />
            <Block markup=part(|overview| record::overview_markup(overview).into_string()) act />
            <div class="keys-row">
                <button type="button" class="key" on:click=move |_| way.go(&Spot::Record)>"Record"</button>
                <button type="button" class="key save" on:click=move |_| way.go(&Spot::Drawing(None))>"New mark"</button>
            </div>
            <Block markup=part(|overview| record::to_mend_markup(first(&overview.to_mend)).into_string()) act />
            <Block markup=part(|overview| record::not_seen_markup(first(&overview.not_seen)).into_string()) act />
        </div>
    }
}
