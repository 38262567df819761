//! Handing the record over: the findings as a table, the job as a file; and bringing a job file in.

use job::file::{CameIn, as_copy, read_job_file, write_job_file};
use leptos::html::Input;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::HtmlAnchorElement;

use super::book::Book;
use super::camera::{address_of, bytes_of};
use crate::browser;
use crate::storage::{self, Trouble, settings};

/// Hands a file to the phone.
fn give(name: &str, bytes: &[u8], kind: &str) -> Option<()> {
    let address = address_of(bytes, kind)?;
    let link: HtmlAnchorElement = browser::document()?.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    link.click();
    browser::after(60_000, move || {
        let _ = web_sys::Url::revoke_object_url(&address);
    });
    Some(())
}

/// A name that every phone takes for a file.
fn file_name(words: &str, ending: &str) -> String {
    let plain: String = words.chars().map(|letter| if letter.is_ascii_alphanumeric() { letter } else { '-' }).collect();
    let plain = plain.trim_matches('-');
    format!("{}.{ending}", if plain.is_empty() { "job" } else { plain })
}

const NOT_GIVEN: &str = "This phone did not take the file. Try again, or use another browser.";

/// Writes the job with its photos to a file, and remembers how much of it is out of danger.
pub fn give_job_file(book: Book) {
    spawn_local(async move {
        let job = book.job.get_untracked();
        let file = match storage::gather(&job.id).await {
            Ok(file) => file,
            Err(problem) => return book.notices.say(problem.sentence()),
        };
        let records = file.log.len();
        match write_job_file(&file) {
            Ok(bytes) if give(&file_name(&job.name, "zip"), &bytes, "application/zip").is_some() => {
                settings::keep_backed_up(&job.id, records);
                book.notices.say("The job file holds everything of this job. Keep it off this phone.".to_owned());
            }
            Ok(_) => book.notices.say(NOT_GIVEN.to_owned()),
            Err(problem) => book.notices.say(problem.to_string()),
        }
    });
}

/// The keys that give the files.
#[component]
pub fn HandOver() -> impl IntoView {
    let book = expect_context::<Book>();
    let table = move |_| {
        let Some(walk) = untrack(move || book.walk()) else { return };
        let name = book.job.with_untracked(|job| job.name.clone());
        let table = view::record::findings_csv(&walk, &name);
        let file = file_name(&format!("{name} {} findings", walk.begun.what), "csv");
        if give(&file, table.as_bytes(), "text/csv").is_none() {
            book.notices.say(NOT_GIVEN.to_owned());
        }
    };
    view! {
        <div class="keys-row">
            <button type="button" class="key" on:click=table>"Findings as CSV"</button>
            <button type="button" class="key" on:click=move |_| give_job_file(book)>"Job file"</button>
        </div>
    }
}

fn came_in(came: CameIn, name: &str) -> String {
    let CameIn { records, photos, new_parts, later_parts, copies } = came;
    let mut words = format!("Brought into {name}: {records} entries and {photos} photos that were not here.");
    if new_parts + later_parts > 0 {
        words.push_str(&format!(" {} other parts are new or later.", new_parts + later_parts));
    }
    if copies > 0 {
        words.push_str(&format!(" {copies} checks were changed on both sides: both are kept."));
    }
    words
}

async fn bring(book: Book, bytes: &[u8], copied: bool) -> Result<String, String> {
    let read = read_job_file(bytes).map_err(|problem| problem.to_string())?;
    let file = if copied { as_copy(read, &mut browser::new_id) } else { read };
    let job = file.job.clone();
    let same = book.job.with_untracked(|here| here.id == job);
    let came = storage::bring_in(file).await.map_err(|trouble| match trouble {
        Trouble::File(problem) => problem.to_string(),
        Trouble::Store(problem) => problem.sentence(),
    })?;
    if same {
        book.read_again();
        return Ok(came_in(came, &book.job.with_untracked(|job| job.name.clone())));
    }
    settings::keep_last_job(&job);
    let what = if copied { "The file came in as a job of its own." } else { "The file is of another job." };
    Ok(format!("{what} It is kept beside the one here."))
}

/// Takes a job file.
#[component]
pub fn BringIn() -> impl IntoView {
    let book = expect_context::<Book>();
    let line = NodeRef::<Input>::new();
    let copied = RwSignal::new(false);
    let chosen = move |event: leptos::ev::Event| {
        let input = event_target::<web_sys::HtmlInputElement>(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        spawn_local(async move {
            let bytes = bytes_of(&file).await.unwrap_or_default();
            input.set_value("");
            let job = book.job.with_untracked(|job| job.id.clone());
            match bring(book, &bytes, copied.get_untracked()).await {
                Ok(words) if settings::last_job().is_none_or(|chosen| chosen == job) => book.notices.say(words),
                Ok(words) => book.notices.offer(words, "Open it", browser::reload),
                Err(words) => book.notices.say(words),
            }
        });
    };
    let open = move |as_a_copy: bool| {
        copied.set(as_a_copy);
        if let Some(line) = line.get_untracked() {
            line.click();
        }
    };
    view! {
        <input class="said" node_ref=line type="file" accept=".zip,application/zip" tabindex="-1" aria-hidden="true" on:change=chosen />
        <button type="button" class="key wide" on:click=move |_| open(false)>"Bring in a job file"</button>
        <p class="note">"What is here is never written over: the two copies are brought together."</p>
        <button type="button" class="plain" on:click=move |_| open(true)>"Bring it in as a copy"</button>
        <p class="note">"As a job of its own, that later files of the first one do not touch."</p>
    }
}

/// So many entries since the last job file are offered to be kept elsewhere.
const AT_STAKE: usize = 25;

/// Offers a job file when much would be lost with the phone.
#[component]
pub fn Backup() -> impl IntoView {
    let book = expect_context::<Book>();
    let at_stake = Memo::new(move |_| {
        book.walks();
        book.log_length().saturating_sub(book.job.with(|job| settings::backed_up(&job.id)))
    });
    let is_much = Memo::new(move |_| at_stake.get() >= AT_STAKE);
    view! {
        <Show when=move || is_much.get()>
            <div class="notice">
                <p>{move || format!("{} entries are on this phone only.", at_stake.get())}</p>
                <button type="button" class="plain" on:click=move |_| give_job_file(book)>"Job file"</button>
            </div>
        </Show>
    }
}
