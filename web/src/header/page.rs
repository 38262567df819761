//! The header check: answer up, hands down.

use leptos::prelude::*;
use view::markup;
use view::model::{FieldId, HeaderScreen};

use super::keys_row::KeysRow;
use crate::answer_strip::AnswerStrip;
use crate::block::{Block, doing};
use crate::browser;
use crate::desk::{Desk, HEADER_GROUPS, field_id, header_pad};
use crate::fields::{Hand, Inputs, Pad};
use crate::laid::Laid;
use crate::picture::Picture;

/// The input that holds the size to judge. It is not typed: its list comes into view.
const SIZE: FieldId = "size";

/// Brings an input to hand and the hand into view.
fn bring_into_view(desk: Desk, field: FieldId) {
    if field == SIZE {
        if let Some(sizes) = browser::document().and_then(|page| page.get_element_by_id("sizes")) {
            sizes.scroll_into_view();
        }
        return;
    }
    desk.bring(field);
    browser::to_top();
}

/// One family of sizes; none where there are fewer.
fn family<const PLACE: usize>(screen: &HeaderScreen) -> String {
    screen.families.get(PLACE).map(|family| markup::family(family).into_string()).unwrap_or_default()
}

/// What follows the inputs, in order.
const BELOW: [fn(&HeaderScreen) -> String; 12] = [
    |screen| markup::bars(&screen.bars).into_string(),
    |screen| markup::panels(&screen.panels).into_string(),
    |screen| markup::other_sizes(&screen.families, screen.asked, markup::OTHER_SIZES).into_string(),
    family::<0>,
    family::<1>,
    family::<2>,
    family::<3>,
    family::<4>,
    family::<5>,
    |screen| markup::cuts(&screen.cuts).into_string(),
    |screen| markup::assumptions(&screen.assumptions).into_string(),
    |screen| markup::cautions(&screen.cautions).into_string(),
];

/// The place.
#[component]
pub fn HeaderPlace() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let bring = Callback::new(move |field| bring_into_view(desk, field));
    let pad = Pad {
        asked: Signal::derive(move || desk.screen.with(|screen| screen.questions.iter().map(|(id, _)| *id).collect())),
        ..header_pad(
            desk.screen,
            desk.hand,
            bring,
            Callback::new(move |field| desk.typed(field)),
            Callback::new(move |(field, text)| desk.write(field, text)),
        )
    };
    let picture = Memo::new(move |_| desk.screen.with(|screen| screen.picture.clone()));
    let answer = Memo::new(move |_| desk.screen.with(|screen| (screen.answer.clone(), !screen.current)));
    let act = doing(
        move |field| {
            if let Some(field) = field_id(field) {
                bring.run(field);
            }
        },
        move |size| desk.write(SIZE, size.map(str::to_owned)),
    );
    let to_do = desk.settled.part(0, |screen| markup::to_do(&screen.questions, &screen.answer.action).into_string());
    let below = BELOW.into_iter().enumerate().map(|(place, write)| {
        let markup = desk.settled.part(place + 1, write);
        view! { <Block markup act /> }
    });
    let laid = Laid::begin(3, move || {
        browser::say_ready();
        desk.settled.begin();
    });
    let stands = desk.settled.stands();
    let hand = desk.hand.into();
    view! {
        <div class="members" class:typing=pad.typing>
            <h1 class="said">"Header over the opening"</h1>
            <div class="sheet">
                {laid.part(1, move || view! { <Picture scene=picture hand act /> }.into_any())}
                {laid.part(2, move || view! { <AnswerStrip answer /> }.into_any())}
            </div>
            <div class="bench">
                {laid.part(3, move || view! { <Hand pad /><KeysRow /> }.into_any())}
                <Block markup=to_do act />
                {move || stands.get().then(|| view! {
                    <a class="key kinds-key" href="member/">"Joists, rafters, studs, posts"</a>
                    <Inputs pad groups=HEADER_GROUPS />
                })}
                {below.collect_view()}
            </div>
        </div>
    }
}
