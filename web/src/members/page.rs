//! The header check: answer up, hands down.

use leptos::prelude::*;

use super::answer_strip::AnswerStrip;
use super::assumptions::Assumptions;
use super::bars::Bars;
use super::cautions::Cautions;
use super::cuts::Cuts;
use super::families::Families;
use super::keys_row::KeysRow;
use super::panels::Panels;
use super::to_do::ToDo;
use view::model::FieldId;

use crate::browser;
use crate::desk::{Desk, Pad};
use crate::drawing::Picture;
use crate::fields::{Hand, Inputs};

/// Brings an input to hand and the hand into view. The size is not typed: its list comes into view.
fn bring_into_view(desk: Desk) -> Callback<FieldId> {
    Callback::new(move |field| {
        let listed = desk.screen.with_untracked(|screen| screen.fields.iter().all(|known| known.id != field));
        let page = |id| browser::document().and_then(|page| page.get_element_by_id(id));
        if listed {
            if let Some(sizes) = page("sizes") {
                sizes.scroll_into_view();
            }
            return;
        }
        desk.bring(field);
        if let Some(page) = page("page") {
            page.set_scroll_top(0);
        }
    })
}

/// The place.
#[component]
pub fn Members() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let bring = bring_into_view(desk);
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
    view! {
        <div class="members" class:typing=pad.typing>
            <h1 class="said">"Header over the opening"</h1>
            <div class="sheet">
                <Picture scene=picture hand=desk.hand.into() pick=bring />
                <AnswerStrip />
            </div>
            <div class="bench">
                <Hand pad />
                <KeysRow />
                <ToDo bring />
                <Inputs pad />
                <Bars />
                <Panels />
                <Families />
                <Cuts />
                <Assumptions bring />
                <Cautions />
            </div>
        </div>
    }
}
