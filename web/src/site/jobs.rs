//! The jobs on this phone: each opened with a tap, another one begun, the example house looked at.

use job::JobName;
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::jobs::{EXAMPLE, JobCard, PUT_BACK, cards};

use super::book::Book;
use super::example;
use crate::browser;
use crate::storage::{self, Kept, StoreError, settings};
use crate::worker::{Work, once_put_away};

/// The part: a card for each job, and what begins another.
#[component]
pub fn Jobs() -> impl IntoView {
    let book = expect_context::<Book>();
    let work = expect_context::<Work>();
    book.list_jobs();
    let shown = Memo::new(move |_| {
        let open = book.values.job.with(|job| JobName { job: job.id.clone(), name: job.name.clone() });
        book.jobs.with(|jobs| cards(jobs, &open))
    });
    let problem = move || {
        let sentence = book.jobs_problem.with(|problem| problem.as_ref().map(StoreError::sentence));
        sentence.map(|sentence| view! { <p class="problem" role="alert">{sentence}</p> })
    };
    view! {
        <section class="group jobs">
            <h2>"Jobs on this phone"</h2>
            {problem}
            <div class="job-cards">
                {move || shown.get().into_iter().map(|card| one(book, work, card)).collect_view()}
            </div>
            <button type="button" class="key wide" on:click=move |_| begin(book, work)>"Begin another job"</button>
            <Show when=move || book.values.job.with(|job| job.id != EXAMPLE)>
                <button type="button" class="key wide" on:click=move |_| look_at_example(book, work)>
                    "Look at the example house"
                </button>
            </Show>
        </section>
    }
}

/// A job; the one that is open is no key.
fn one(book: Book, work: Work, card: JobCard) -> AnyView {
    let JobCard { job, name, note, open, example } = card;
    let words = view! {
        <strong>{name}</strong>
        {(!note.is_empty()).then(|| view! { <span class="note">{note}</span> })}
    };
    let face = if open {
        view! { <div class="job-card here" aria-current="true">{words}</div> }.into_any()
    } else {
        let go = move |_| {
            let job = job.clone();
            once_kept(book, work, move || go_to(&job));
        };
        view! { <button type="button" class="job-card" on:click=go>{words}</button> }.into_any()
    };
    let back = example.then(|| {
        view! {
            <button type="button" class="plain" on:click=move |_| put_back(book, work)>"Put it back as it was"</button>
        }
    });
    view! { <div class="job-row">{face}{back}</div> }.into_any()
}

/// Goes on when everything that was typed is kept. Where it is not, says why and stays.
fn once_kept(book: Book, work: Work, go_on: impl FnOnce() + 'static) {
    once_put_away(work, move || match book.values.state.get_untracked() {
        Kept::Safe => go_on(),
        Kept::Writing => trouble(book, &StoreError::NoAnswer),
        Kept::Not(problem) => trouble(book, &problem),
    });
}

fn trouble(book: Book, problem: &StoreError) {
    book.values.notices.say(problem.sentence());
}

/// Opens a job: the page is loaded anew with it.
fn go_to(job: &str) {
    settings::keep_last_job(job);
    browser::reload();
}

fn begin(book: Book, work: Work) {
    once_kept(book, work, move || {
        spawn_local(async move {
            match storage::begin_job().await {
                Ok(job) => go_to(&job),
                Err(problem) => trouble(book, &problem),
            }
        });
    });
}

/// Opens the example as it stands; where it is not here yet, it is brought in first.
fn look_at_example(book: Book, work: Work) {
    once_kept(book, work, move || {
        spawn_local(async move {
            match example::bring_in().await {
                Ok(()) => go_to(EXAMPLE),
                Err(words) => book.values.notices.say(words),
            }
        });
    });
}

fn put_back(book: Book, work: Work) {
    once_kept(book, work, move || {
        spawn_local(async move {
            match example::put_back().await {
                Ok(()) if book.values.job.with_untracked(|job| job.id == EXAMPLE) => browser::reload(),
                Ok(()) => {
                    book.values.notices.say(PUT_BACK.to_owned());
                    book.list_jobs();
                }
                Err(words) => book.values.notices.say(words),
            }
        });
    });
}
