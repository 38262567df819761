//! The answer: the figure, the verdict as a beam and as a word, the share used.

use leptos::prelude::*;
use view::model::{Answer, State};

use super::share_bar::ShareBar;
use super::state_class;
use super::verdict_beam::VerdictBeam;
use crate::desk::Desk;
use crate::figure::Figure;

/// Longer figures are set one size smaller.
const LONG: usize = 8;
/// So are longer words.
const LONG_WORD: usize = 14;

/// What stays in view while an input changes.
#[component]
pub fn AnswerStrip() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let answer = Memo::new(move |_| desk.screen.with(|screen| screen.answer.clone()));
    let stale = Memo::new(move |_| desk.screen.with(|screen| !screen.current));
    let state = Memo::new(move |_| answer.with(|answer| answer.state));
    let figure = Memo::new(move |_| answer.with(|answer| answer.figure.clone()));
    let part = move |pick: fn(&Answer) -> &String| move || answer.with(|answer| pick(answer).clone());
    view! {
        <section
            class=move || format!("answer {}", state_class(state.get()))
            class:stale=move || stale.get()
            aria-label="Answer"
        >
            <p class="answer-figure" class:long=move || figure.with(|figure| figure.chars().count() > LONG)>
                <Figure text=figure />
            </p>
            <Show when=move || stale.get() fallback=move || view! { <VerdictBeam state /> }>
                <em class="not-updated">"not updated"</em>
            </Show>
            <p class="verdict" role="status">
                <strong class:long=move || answer.with(|answer| answer.word.chars().count() > LONG_WORD)>
                    {part(|answer| &answer.word)}
                </strong>
                <span>{part(|answer| &answer.share_text)}</span>
            </p>
            {move || {
                let (share, state) = answer.with(|answer| (answer.share, answer.state));
                share.filter(|_| state != State::NotKnown).map(|share| view! { <ShareBar share state /> })
            }}
        </section>
    }
}
