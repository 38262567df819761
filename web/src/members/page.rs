//! The header check: answer up, hands down.

use leptos::prelude::*;
use view::markup;
use view::model::{FieldId, HeaderScreen};

use super::answer_strip::AnswerStrip;
use super::keys_row::KeysRow;
use crate::block::{Block, doing};
use crate::browser;
use crate::desk::{Desk, Pad, field_id};
use crate::fields::{Hand, Inputs};
use crate::laid::Laid;
use crate::picture::Picture;

/// The input that holds the size to judge. It is not typed: its list comes into view.
const SIZE: FieldId = "size";

/// Brings an input to hand and the hand into view.
fn bring_into_view(desk: Desk, field: FieldId) {
    let page = |id| browser::document().and_then(|page| page.get_element_by_id(id));
    if field == SIZE {
        if let Some(sizes) = page("sizes") {
            sizes.scroll_into_view();
        }
        return;
    }
    desk.bring(field);
    // Now it would lay the page out once more than needed.
    browser::after(0, move || {
        if let Some(page) = page("page") {
            page.set_scroll_top(0);
        }
    });
}

/// One family of sizes; none where there are fewer.
fn family<const PLACE: usize>(screen: &HeaderScreen) -> String {
    screen.families.get(PLACE).map(|family| markup::family(family).into_string()).unwrap_or_default()
}

/// What follows the inputs, in order.
const BELOW: [fn(&HeaderScreen) -> String; 12] = [
    |screen| markup::bars(&screen.bars).into_string(),
    |screen| markup::panels(&screen.panels).into_string(),
    |screen| markup::other_sizes(&screen.families, screen.asked).into_string(),
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
pub fn Members() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let bring = Callback::new(move |field| bring_into_view(desk, field));
    let pad = Pad {
        screen: desk.screen,
        belongs: |_| true,
        hand: desk.hand.into(),
        typing: RwSignal::new(false),
        bring,
        typed: Callback::new(move |field| desk.typed(field)),
        write: Callback::new(move |(field, text)| desk.write(field, text)),
        asks: true,
    };
    let picture = Memo::new(move |_| desk.screen.with(|screen| screen.picture.clone()));
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
                {laid.part(2, || view! { <AnswerStrip /> }.into_any())}
            </div>
            <div class="bench">
                {laid.part(3, move || view! { <Hand pad /><KeysRow /> }.into_any())}
                <Block markup=to_do act />
                {move || stands.get().then(|| view! { <Inputs pad /> })}
                {below.collect_view()}
            </div>
        </div>
    }
}
