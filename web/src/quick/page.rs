//! A quick check: answer up, hands down.

use std::sync::Arc;

use leptos::prelude::*;
use view::markup::{self, Act};
use view::model::{FieldId, Group};
use view::quick::QuickScreen;

use super::Chapter;
use super::book::Book;
use super::kinds::Kinds;
use super::working;
use crate::answer_strip::AnswerStrip;
use crate::block::Block;
use crate::browser;
use crate::fields::{Hand, Inputs, Pad};
use crate::picture::Picture;

fn pad_of<K: Chapter>(book: Book<K>) -> Pad {
    Pad {
        fields: Signal::derive(move || book.screen.with(|screen| Arc::clone(&screen.fields))),
        belongs: |_| true,
        hand: book.hand.into(),
        typing: RwSignal::new(false),
        bring: Callback::new(move |field: FieldId| {
            book.hand.set(field);
            browser::to_top();
        }),
        typed: Callback::new(move |field: FieldId| book.typed(field)),
        write: Callback::new(move |(field, text)| book.write(field, text)),
        asked: Signal::derive(move || book.screen.with(|screen| screen.questions.iter().map(|(id, _)| *id).collect())),
        way_on: None,
        beside: None,
        pictures: |_, _, _| None,
    }
}

/// A part of the screen, as it is put on the page.
type Write<K> = fn(&QuickScreen<K>) -> String;

/// What follows the inputs, in order.
fn below<K: Chapter>() -> [Write<K>; 9] {
    [
        |screen| markup::bars(&screen.bars).into_string(),
        |screen| screen.path_down.as_ref().map_or_else(String::new, |scene| view::svg::plate(scene).into_string()),
        |screen| markup::panels(&screen.panels).into_string(),
        |screen| markup::tables(&screen.tables).into_string(),
        |screen| markup::texts(&screen.texts).into_string(),
        |screen| markup::known(&screen.known).into_string(),
        sizes,
        |screen| markup::assumptions(&screen.assumptions).into_string(),
        |screen| markup::cautions(&screen.cautions).into_string(),
    ]
}

fn sizes<K: Chapter>(screen: &QuickScreen<K>) -> String {
    let mut sizes = markup::other_sizes(&screen.families, screen.asked, K::OTHERS).into_string();
    screen.families.iter().for_each(|family| sizes.push_str(&markup::family(family).into_string()));
    sizes
}

/// The place.
#[component]
pub fn QuickPage<K: Chapter>(
    /// The book.
    book: Book<K>,
) -> impl IntoView {
    let pad = pad_of(book);
    let act = Callback::new(move |what: String| match Act::read(&what) {
        Some(Act::Bring(field)) => pad.bring_named(field),
        Some(Act::Judge(size)) => book.judge(Some(size)),
        Some(Act::FindSmallest) => book.judge(None),
        Some(Act::Working(part)) => working::open_at(book, part),
        _ => {}
    });
    let picture = Memo::new(move |_| book.screen.with(|screen| screen.picture.clone()));
    let answer = Memo::new(move |_| book.screen.with(|screen| (screen.answer.clone(), !screen.current)));
    let part = move |write: Write<K>| Signal::derive(move || book.screen.with(write));
    let to_do = part(|screen| markup::to_do(&screen.questions, &screen.answer.action).into_string());
    browser::after_paint(browser::say_ready);
    // The groups are laid out anew when another kind is looked at, or when other groups have inputs: within one the inputs
    // come and go by themselves, and what stands open stays open.
    let which = Memo::new(move |_| {
        let has = |group: Group| book.screen.with(|screen| screen.fields.iter().any(|field| field.group == group));
        (book.kind.get(), K::GROUPS.iter().map(|(group, ..)| has(*group)).collect::<Vec<_>>())
    });
    view! {
        <div class="members quick" class:typing=pad.typing>
            <h1 class="said">{move || book.kind.get().word()}</h1>
            <Kinds book />
            <div class="sheet">
                <Picture scene=picture hand=book.hand.into() act />
                <AnswerStrip answer />
            </div>
            <div class="bench">
                <Hand pad />
                <div class="keys-row">
                    <button type="button" class="key" disabled=move || !book.values.can_undo() on:click=move |_| book.undo()>"Undo"</button>
                    <button type="button" class="key" aria-haspopup="dialog" on:click=move |_| working::open(book)>"Working"</button>
                    <button type="button" class="key" on:click=|_| browser::print()>"Print"</button>
                </div>
                <Block markup=to_do act />
                {move || {
                    which.with(|_| ());
                    view! { <Inputs pad groups=K::GROUPS /> }
                }}
                {below::<K>().into_iter().map(|write| view! { <Block markup=part(write) act /> }).collect_view()}
            </div>
        </div>
    }
}
