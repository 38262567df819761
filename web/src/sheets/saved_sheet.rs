//! The saved checks.

use job::SavedHeader;
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::markup::{self, Act, SavedRow};

use super::slide_up::SlideUp;
use crate::block::Block;
use crate::desk::Desk;
use crate::local_time;
use crate::place::Place;
use crate::route::{Route, Sheet};
use crate::storage::whether_lasting;

/// The list, latest first, and a key for a new check.
#[component]
pub fn SavedSheet() -> impl IntoView {
    let route = expect_context::<Route>();
    view! { <SlideUp shown=route.shows(Sheet::Saved) close=route.closing() heading="Saved checks"><List /></SlideUp> }
}

fn row(header: &SavedHeader) -> SavedRow {
    SavedRow {
        id: header.id.clone(),
        name: header.name.clone(),
        answer: header.answer.clone(),
        when: local_time::short(&header.saved_at),
    }
}

fn open(desk: Desk, route: Route, header: SavedHeader) {
    let words = format!("{} is open.", header.name);
    desk.open(header);
    desk.notices.offer(words, "Undo", move || desk.undo());
    route.go(Place::Members);
}

fn remove(desk: Desk, header: SavedHeader) {
    spawn_local(async move {
        match desk.keeper.remove(&header).await {
            Ok(true) => desk.forget_saved(&header),
            Ok(false) => desk.notices.say(format!("{} was changed in another window and stays.", header.name)),
            Err(problem) => desk.notices.say(problem.sentence()),
        }
    });
}

#[component]
fn List() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let lasting = RwSignal::new("");
    let to_remove = RwSignal::new(None::<String>);
    spawn_local(async move {
        let _ = lasting.try_set(whether_lasting().await.sentence());
    });
    let markup = Signal::derive(move || {
        let rows: Vec<SavedRow> = desk.keeper.job.with(|job| job.headers.iter().rev().map(row).collect());
        to_remove.with(|id| markup::saved(&rows, id.as_deref())).into_string()
    });
    let act = Callback::new(move |what: String| {
        let of = |id: &str| desk.keeper.job.with_untracked(|job| job.headers.iter().find(|one| one.id == id).cloned());
        match Act::read(&what) {
            Some(Act::Open(id)) => of(id).into_iter().for_each(|header| open(desk, route, header)),
            Some(Act::Remove(id)) => to_remove.set(Some(id.to_owned())),
            Some(Act::RemoveForGood(id)) => of(id).into_iter().for_each(|header| remove(desk, header)),
            Some(Act::Leave(_)) => to_remove.set(None),
            _ => {}
        }
    });
    let start_new = move |_| {
        desk.start_new();
        route.slide_down();
    };
    view! {
        <button type="button" class="key" on:click=start_new>"New check"</button>
        <Block markup act />
        <p class="note">{lasting}</p>
    }
}
