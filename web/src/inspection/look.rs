//! A look: measured and typed, answered with every key, then logged.

use std::sync::Arc;

use job::walk::{Because, Draft, Follows, Look, RecordBody};
use leptos::prelude::*;
use view::markup::{self, Act};
use view::model::Group;
use view::record::aside;
use view::walk::{InHand, Kind, LookScreen, Typed};

use super::book::Book;
use super::drafts::Drafts;
use super::form::Form;
use super::head::Head;
use super::way::{Spot, Way};
use crate::answer_strip::AnswerStrip;
use crate::block::Block;
use crate::browser;
use crate::fields::{Groups, Hand, Inputs, Pad};
use crate::picture::Picture;

const GROUPS: Groups = &[
    (Group::Found, "Measured", false),
    (Group::Required, "Asked for", true),
    (Group::Around, "The wall", true),
    (Group::Record, "For the record", true),
];

/// What was typed, as it is judged.
pub fn typed(draft: &Draft) -> Typed {
    Typed { texts: draft.texts.clone(), lists: draft.lists.clone() }
}

/// A look at a mark.
#[component]
pub fn NewLook(
    /// The mark's id.
    mark: String,
    /// The kind's name.
    kind: String,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let drafts = expect_context::<Drafts>();
    let Some(kind) = Kind::at(&kind) else { return missing() };
    let required = untrack(move || book.walk()).and_then(|walk| {
        let found = walk.marks.iter().find(|known| known.id == mark)?;
        Some((found.name().to_owned(), found.now().map(|now| now.fields.clone()).unwrap_or_default()))
    });
    let Some((name, required)) = required else { return missing() };
    let begin = |draft| Draft {
        texts: view::walk::required_of(kind, &required),
        lists: view::walk::packs_of(kind, &required),
        ..draft
    };
    let form = Form::open(drafts, &format!("look/{mark}/{}", kind.name()), begin, move |field| kind.is_list(field));
    view! { <LookPage form kind mark name /> }.into_any()
}

/// A look that corrects an earlier one, or checks it again.
#[component]
pub fn Again(
    /// The earlier look.
    look: String,
    /// Whether something was mended meanwhile.
    mended: bool,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let drafts = expect_context::<Drafts>();
    let found = book.look(&look).and_then(|earlier| Some((Kind::at(&earlier.kind)?, earlier)));
    let Some((kind, earlier)) = found else { return missing() };
    let name = untrack(move || book.walk())
        .and_then(|walk| walk.marks.iter().find(|known| known.id == earlier.mark).map(|mark| mark.name().to_owned()));
    let because = if mended { Because::Mended } else { Because::Corrected };
    let follows = Some(Follows { look: look.clone(), because, why: String::new() });
    let before = aside::with_aside(Typed { texts: earlier.texts.clone(), lists: earlier.lists.clone() }, &earlier);
    let begin = |draft| {
        let Typed { texts, lists } = if mended { view::walk::to_measure_again(kind, &before) } else { before };
        Draft { texts, lists, follows, ..draft }
    };
    let form = Form::open(drafts, &format!("again/{look}/{mended}"), begin, move |field| kind.is_list(field));
    view! { <LookPage form kind mark=earlier.mark name=name.unwrap_or_default() /> }.into_any()
}

fn missing() -> AnyView {
    let way = expect_context::<Way>();
    view! {
        <div class="walk">
            <p>"This is not in the walk that is looked at."</p>
            <button type="button" class="key" on:click=move |_| way.go_instead(&Spot::Walk)>"To the walk"</button>
        </div>
    }
    .into_any()
}

/// The input in hand, as the view model takes it.
fn in_hand(draft: &Draft, kind: Kind) -> InHand {
    InHand { field: kind.field(&draft.hand), reading: draft.reading }
}

/// What follows the inputs, in order.
const BELOW: [fn(&LookScreen) -> String; 6] = [
    |screen| markup::walk_remedies(&screen.remedies).into_string(),
    |screen| markup::walk_checks(&screen.checks).into_string(),
    |screen| markup::walk_findings(screen).into_string(),
    |screen| markup::walk_facts(&screen.facts).into_string(),
    |screen| markup::assumptions(&screen.assumptions).into_string(),
    |screen| markup::cautions(&screen.cautions).into_string(),
];

/// The parts of an answer that are read, not filled in.
pub fn below(screen: Memo<LookScreen>, act: Callback<String>) -> impl IntoView {
    BELOW
        .into_iter()
        .map(|write| {
            let markup = Signal::derive(move || screen.with(write));
            view! { <Block markup act /> }
        })
        .collect_view()
}

#[component]
fn LookPage(form: Form, kind: Kind, mark: String, name: String) -> impl IntoView {
    let screen = Memo::new(move |before: Option<&LookScreen>| {
        form.draft.with(|draft| view::walk::look(kind, &typed(draft), in_hand(draft, kind), before))
    });
    let fields = Signal::derive(move || {
        let aside = form.draft.with(|draft| aside::aside_fields(&draft.texts));
        Arc::new(screen.with(|screen| screen.fields.iter().cloned().chain(aside).collect()))
    });
    let asked = Signal::derive(move || screen.with(|screen| screen.questions.iter().map(|(id, ..)| *id).collect()));
    let pad = Pad {
        way_on: Some(next_reading(form, screen)),
        beside: Some(Callback::new(move |said| view! { <Offer form kind screen said /> }.into_any())),
        ..form.pad(fields, asked)
    };
    let act = acting(form, pad, screen);
    let picture = Memo::new(move |_| screen.with(|screen| screen.picture.clone()));
    let answer = Memo::new(move |_| screen.with(|screen| (screen.answer.clone(), !screen.current)));
    let readings = Signal::derive(move || {
        screen.with(|screen| screen.readings.iter().map(|list| markup::walk_readings(list).into_string()).collect())
    });
    let ready = Signal::derive(move || screen.with(|screen| markup::walk_ready(&screen.ready).into_string()));
    let to_do = Signal::derive(move || screen.with(|screen| markup::walk_questions(&screen.questions).into_string()));
    let again = form.draft.with_untracked(|draft| draft.follows.clone());
    let back = again.map_or_else(|| Spot::Mark(mark.clone()), |follows| Spot::Found(follows.look));
    view! {
        <div class="members look" class:typing=pad.typing>
            <Head words=kind.word() back back_words=name />
            <div class="sheet">
                <Picture scene=picture hand=pad.hand act />
                <AnswerStrip answer />
            </div>
            <div class="bench">
                <Hand pad />
                {form.goes_on.then(|| view! { <StartOver form /> })}
                <Block markup=ready act />
                <Block markup=readings act />
                <Block markup=to_do act />
                <Inputs pad groups=GROUPS />
                {below(screen, act)}
                <LogKeys form kind screen mark />
            </div>
        </div>
    }
}

/// A look that was begun before goes on; one tap starts it over.
#[component]
fn StartOver(form: Form) -> impl IntoView {
    let gone = RwSignal::new(false);
    let over = move |_| {
        form.start_over();
        gone.set(true);
    };
    view! {
        <Show when=move || !gone.get()>
            <div class="begun-before">
                <span class="note">"Begun before and not logged."</span>
                <button type="button" class="plain" on:click=over>"Start over"</button>
            </div>
        </Show>
    }
}

/// The key that leads on from a reading: to the next one of its list.
fn next_reading(form: Form, screen: Memo<LookScreen>) -> (Signal<Option<String>>, Callback<()>) {
    let held = move || form.draft.with(|draft| form.is_list(&draft.hand).then(|| (draft.hand.clone(), draft.reading)));
    let words = Signal::derive(move || {
        let (field, reading) = held()?;
        let typed = form.typed(&field).is_some();
        let label = screen.with(|screen| screen.fields.iter().find(|known| known.id == field).map(|known| known.label));
        typed.then(|| format!("{} {}", label.unwrap_or_default(), reading + 2))
    });
    let go = Callback::new(move |()| {
        if let Some((field, reading)) = untrack(held) {
            form.bring_reading(&field, reading + 1);
        }
    });
    (words, go)
}

/// Does what a tapped part of a look says.
fn acting(form: Form, pad: Pad, screen: Memo<LookScreen>) -> Callback<String> {
    Callback::new(move |what: String| match Act::read(&what) {
        Some(Act::Bring(field)) => pad.bring_named(field),
        Some(Act::Reading(field, reading)) => {
            let offered =
                screen.with_untracked(|screen| screen.offered.clone()).filter(|_| form.is_new(field, reading));
            match (offered, pad.named(field)) {
                // Tapped where the next one stands: it is logged there.
                (Some(offered), Some(field)) => form.add_reading(field, offered),
                _ => form.bring_reading(field, reading),
            }
            browser::to_top();
        }
        Some(Act::Ready(index)) => {
            let key = screen.with_untracked(|screen| screen.ready.keys.get(index).cloned());
            if let Some(key) = key {
                form.write_reading(key.field, key.reading, key.text);
                browser::to_top();
            }
        }
        Some(Act::Confirm(reading)) => {
            form.change(true, |draft| view::walk::confirm_pull(&mut draft.lists, reading));
        }
        _ => {}
    })
}

/// The reading that stands on its mark, which one tap takes, while nothing is typed in the line.
#[component]
fn Offer(form: Form, kind: Kind, screen: Memo<LookScreen>, said: Memo<bool>) -> impl IntoView {
    let field = move || kind.field(&form.draft.with(|draft| draft.hand.clone()));
    let offered = Memo::new(move |_| {
        let is_asked = !said.get() && form.is_list(field());
        screen.with(|screen| screen.offered.clone()).filter(|_| is_asked)
    });
    move || {
        offered.get().map(|reading| {
            let face = markup::figure(&reading).into_string();
            let take = move |_| form.add_reading(untrack(field), reading.clone());
            view! {
                <button type="button" class="offer" on:pointerdown=|event| event.prevent_default() on:click=take>
                    <span class="note">"on its mark"</span>
                    <span inner_html=face></span>
                </button>
            }
        })
    }
}

/// One step back, not seen, log it.
#[component]
fn LogKeys(form: Form, kind: Kind, screen: Memo<LookScreen>, mark: String) -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let mark = StoredValue::new(mark);
    let log = move |seen: bool| {
        let draft = form.draft.get_untracked();
        let (verdict, says) = screen.with_untracked(|screen| {
            if seen { (screen.verdict.clone(), screen.summary.clone()) } else { view::walk::not_seen() }
        });
        let (typed, aside) = aside::without_aside(typed(&draft));
        let look = Look {
            mark: mark.get_value(),
            place: aside.place,
            kind: kind.name().to_owned(),
            texts: typed.texts,
            lists: typed.lists,
            verdict,
            says,
            severity: aside.severity,
            note: aside.note,
            follows: draft.follows.clone(),
        };
        let first = draft.follows.map(|follows| follows.look);
        let is_first = !book.has_looks();
        book.add(RecordBody::Look(Arc::new(look)), move |id| {
            form.is_logged();
            if is_first {
                book.ask_to_last();
            }
            way.go_instead(&Spot::Found(first.unwrap_or_else(|| id.to_owned())));
        });
    };
    let judged = move || screen.with(|screen| screen.current && screen.is_judged());
    view! {
        <div class="keys-row log-keys">
            <button type="button" class="key" disabled=move || !form.can_undo() on:click=move |_| form.undo()>"Undo"</button>
            <button type="button" class="key" disabled=judged on:click=move |_| log(false)>"Not seen"</button>
            <button type="button" class="key save" disabled=move || !judged() on:click=move |_| log(true)>
                "Log it"
            </button>
        </div>
    }
}
