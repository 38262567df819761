//! Naming a check and saving it.

use job::SavedHeader;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::slide_up::SlideUp;
use crate::desk::Desk;
use crate::route::{Route, Sheet};
use crate::storage::{Saved, StoreError, ask_to_last};

/// What is told once a check is kept.
fn told(saved: &Saved, first: bool, lasting: &str) -> String {
    let words = match saved {
        Saved::Kept(header) => format!("{} is kept on this phone.", header.name),
        Saved::AsCopy(header) => format!(
            "Another window had changed this check. Both are kept; this one is named \u{201c}{}\u{201d}.",
            header.name
        ),
    };
    if first { format!("{words} {lasting}") } else { words }
}

/// Saves, tells how it went, and closes the sheet when it went well.
fn save(desk: Desk, route: Route, header: SavedHeader, trouble: RwSignal<Option<StoreError>>) {
    let first = desk.keeper.job.with_untracked(|job| job.headers.is_empty());
    spawn_local(async move {
        match desk.keeper.save(header).await {
            Ok(saved) => {
                let lasting = if first { ask_to_last().await.sentence() } else { "" };
                desk.saved(saved.header().clone());
                desk.notices.say(told(&saved, first, lasting));
                route.slide_down();
            }
            Err(problem) => trouble.set(Some(problem)),
        }
    });
}

/// The sheet: a name, a key to save it anew, and a key to change the one it came from.
#[component]
pub fn SaveSheet() -> impl IntoView {
    let route = expect_context::<Route>();
    view! { <SlideUp shown=route.shows(Sheet::Save) close=route.closing() heading="Save this check"><NameAndSave /></SlideUp> }
}

#[component]
fn NameAndSave() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let trouble = RwSignal::new(None::<StoreError>);
    let name = RwSignal::new(desk.keeper.job.with_untracked(|job| job.next_header_name()));
    let before = desk.comes_from();
    let anew =
        move |_| save(desk, route, desk.as_saved(String::new(), name.get_untracked().trim().to_owned()), trouble);
    let change = before.map(|before| {
        let words = format!("Change {} instead", before.name);
        let again = move |_| save(desk, route, desk.as_saved(before.id.clone(), before.name.clone()), trouble);
        view! { <button type="button" class="key" on:click=again>{words}</button> }
    });
    view! {
        <label class="name" for="check-name">"Name"</label>
        <input
            id="check-name"
            type="text"
            autocomplete="off"
            enterkeyhint="done"
            prop:value=move || name.get()
            on:input:target=move |event| name.set(event.target().value())
        />
        <p class="as-saved">{move || desk.as_saved(String::new(), String::new()).answer}</p>
        {move || trouble.with(|trouble| trouble.as_ref().map(|trouble| view! { <p class="problem" role="alert">{trouble.sentence()}</p> }))}
        <button type="button" class="key save" disabled=move || name.with(|name| name.trim().is_empty()) on:click=anew>
            {move || format!("Save {}", name.get().trim())}
        </button>
        {change}
    }
}
