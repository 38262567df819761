//! One saved check.

use job::SavedHeader;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::desk::Desk;
use crate::local_time;
use crate::place::Place;
use crate::route::Route;

/// Its name, its answer and when it was saved; opened by a tap, removed by two.
#[component]
pub fn SavedRow(
    /// The check.
    header: SavedHeader,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let sure = RwSignal::new(false);
    let (to_open, to_remove) = (header.clone(), StoredValue::new(header.clone()));
    let name = header.name.clone();
    let open = move |_| {
        desk.open(to_open.clone());
        desk.notices.offer(format!("{} is open.", to_open.name), "Undo", move || desk.undo());
        route.go(Place::Members);
    };
    let remove = move |_| {
        spawn_local(async move {
            let header = to_remove.get_value();
            match desk.keeper.remove(&header).await {
                Ok(true) => desk.forget_saved(&header),
                Ok(false) => desk.notices.say(format!("{} was changed in another window and stays.", header.name)),
                Err(problem) => desk.notices.say(problem.sentence()),
            }
        });
    };
    view! {
        <li class="saved-row">
            <button type="button" class="open" on:click=open>
                <strong>{header.name.clone()}</strong>
                <span>{header.answer.clone()}</span>
                <span class="note">{local_time::short(&header.saved_at)}</span>
            </button>
            <Show
                when=move || sure.get()
                fallback={
                    let name = name.clone();
                    move || {
                        let said = format!("Remove {name}");
                        view! { <button type="button" class="plain" aria-label=said on:click=move |_| sure.set(true)>"Remove"</button> }
                    }
                }
            >
                <button type="button" class="plain danger" on:click=remove>"Remove for good"</button>
                <button type="button" class="plain" on:click=move |_| sure.set(false)>"Leave it"</button>
            </Show>
        </li>
    }
}
