//! What was found: the answer as it stands, its photos, what became of it.

use job::walk::{Look, LookEntry, Mark, Point, RecordBody, Step};
use leptos::prelude::*;
use view::markup::Act;
use view::record;
use view::walk::{InHand, Kind, LookScreen, Typed};

use super::book::Book;
use super::camera::Camera;
use super::head::Head;
use super::line::{self, Line};
use super::look::below;
use super::photo::Photos;
use super::way::{Spot, Way};
use crate::answer_strip::AnswerStrip;
use crate::block::Block;
use crate::picture::Picture;

/// A thing that was looked at, with its mark; of the mark's other things there are none here.
#[derive(Clone, PartialEq)]
struct At {
    mark: Mark,
    point: Point,
}

impl At {
    /// What counts now; of a thing that is crossed out, the last look.
    fn now(&self) -> Option<&LookEntry> {
        self.point.now().or_else(|| self.point.looks.last())
    }

    /// The id of its first look, and its mark's id and name.
    fn names(&self) -> (String, String, String) {
        let look = self.point.first().map(|first| first.id.clone()).unwrap_or_default();
        (look, self.mark.id.clone(), self.mark.name().to_owned())
    }
}

/// The point that a look belongs to.
fn find(book: Book, look: &str) -> Option<At> {
    let walk = book.walk()?;
    let mut points = walk.points();
    let (mark, point) = points.find(|(_, point)| point.looks.iter().any(|known| known.id == look))?;
    let mark = Mark { id: mark.id.clone(), versions: mark.versions.clone(), points: Vec::new(), photos: Vec::new() };
    Some(At { mark, point: point.clone() })
}

fn judged(look: &Look) -> Option<LookScreen> {
    let kind = Kind::at(&look.kind)?;
    let typed = Typed { texts: look.texts.clone(), lists: look.lists.clone() };
    Some(view::walk::look(kind, &typed, InHand { field: kind.field(""), reading: usize::MAX }, None))
}

/// The part.
#[component]
pub fn FoundPoint(
    /// The id of one of its looks.
    look: String,
) -> impl IntoView {
    let book = expect_context::<Book>();
    let id = StoredValue::new(look);
    let at = Memo::new(move |_| id.with_value(|id| find(book, id)));
    let there = Memo::new(move |_| at.with(Option::is_some));
    move || {
        if there.get() {
            view! { <Standing at /> }.into_any()
        } else {
            view! { <p class="walk">"This is not in the walk that is looked at."</p> }.into_any()
        }
    }
}

#[component]
fn Standing(at: Memo<Option<At>>) -> impl IntoView {
    let now = Memo::new(move |_| at.with(|at| at.as_ref().and_then(|at| at.now().cloned())));
    let screen = Memo::new(move |_| {
        now.with(|now| now.as_ref().and_then(|now| judged(&now.what)))
            .unwrap_or_else(|| view::walk::nothing_yet(Kind::StudSpacing))
    });
    let answer = Memo::new(move |_| screen.with(|screen| (screen.answer.clone(), false)));
    let picture = Memo::new(move |_| screen.with(|screen| screen.picture.clone()));
    let heading = Signal::derive(move || {
        now.with(|now| now.as_ref().map(|now| record::kind_words(&now.what.kind).to_owned())).unwrap_or_default()
    });
    let history = Signal::derive(move || {
        at.with(|at| at.as_ref().map(|at| record::point_markup(&at.mark, &at.point).into_string())).unwrap_or_default()
    });
    let photos = Signal::derive(move || {
        let photos = |at: &At| at.point.photos.iter().map(|(photo, _)| photo.clone()).collect();
        at.with(|at| at.as_ref().map(photos)).unwrap_or_default()
    });
    let first = at.with_untracked(|at| at.as_ref().map(At::names)).unwrap_or_default();
    let (look, mark, name) = first;
    let way = expect_context::<Way>();
    // What was assumed is said in a look that corrects this one.
    let act = Callback::new(move |what: String| {
        if let (Some(Act::Bring(_)), Some(now)) = (Act::read(&what), now.get_untracked()) {
            way.go(&Spot::Again(now.id, false));
        }
    });
    view! {
        <div class="members look point-page">
            <Head words=heading back=Spot::Mark(mark) back_words=name />
            <div class="sheet">
                <Picture scene=picture hand=Signal::stored("") act />
                <AnswerStrip answer />
            </div>
            <div class="bench">
                <div class="keys-row">
                    <Camera of=look />
                    <AgainKeys now />
                </div>
                <Block markup=history act />
                <Photos of=photos />
                {below(screen, act)}
                <FollowUps at now />
            </div>
        </div>
    }
}

/// Correct it; measure again.
#[component]
fn AgainKeys(now: Memo<Option<LookEntry>>) -> impl IntoView {
    let way = expect_context::<Way>();
    let go = move |mended: bool| {
        if let Some(now) = now.get_untracked() {
            way.go(&Spot::Again(now.id, mended));
        }
    };
    view! {
        <button type="button" class="key" on:click=move |_| go(false)>"Correct"</button>
        <button type="button" class="key save" on:click=move |_| go(true)>"Check again"</button>
    }
}

/// What was agreed and done; and crossing the look out, with a reason.
#[component]
fn FollowUps(at: Memo<Option<At>>, now: Memo<Option<LookEntry>>) -> impl IntoView {
    let book = expect_context::<Book>();
    let words = RwSignal::new(String::new());
    let said = move || words.with(|words| !words.trim().is_empty());
    let step = Memo::new(move |_| at.with(|at| at.as_ref().and_then(|at| record::next_step(&at.mark, &at.point))));
    let add = move |body: fn(String, String, Step) -> RecordBody| {
        let Some(now) = now.get_untracked() else { return };
        let text = words.get_untracked().trim().to_owned();
        let step = step.get_untracked().unwrap_or(Step::Agreed);
        book.add(body(now.id, text, step), move |_| words.set(String::new()));
    };
    let follow = move |_| add(|look, says, step| RecordBody::FollowUp { look, step, says });
    let strike = move |_| add(|record, why, _| RecordBody::Struck { record, why });
    view! {
        <section class="follow-ups">
            <h2>{move || step.get().map_or("Cross it out", record::step_asks)}</h2>
            <Line id="follow-words" label="In words" words write=line::into(words) />
            <div class="keys-row">
                <button type="button" class="key" disabled=move || !said() on:click=strike>"Cross out"</button>
                <Show when=move || step.get().is_some()>
                    <button type="button" class="key save" disabled=move || !said() on:click=follow>
                        {move || step.get().map_or("", record::step_key)}
                    </button>
                </Show>
            </div>
            <p class="note">"What is crossed out stays in the record, with the reason."</p>
        </section>
    }
}
