//! The answer: the figure, the verdict as a beam and as a word, the share used.

use leptos::prelude::*;
use view::markup;
use view::model::{Answer, State};

use crate::figure::Figure;

/// Longer figures are set one size smaller.
const LONG: usize = 8;
/// So are longer words.
const LONG_WORD: usize = 14;

fn long(text: &str, most: usize) -> &'static str {
    if text.chars().count() > most { "long" } else { "" }
}

/// The verdict as a beam; in its place, when an input is wrong, that the answer is not of now.
fn beam(answer: &Answer, stale: bool) -> String {
    if stale {
        return "<em class=\"not-updated\">not updated</em>".to_owned();
    }
    markup::beam(answer.state).into_string()
}

/// The share used, where there is a number.
fn share(answer: &Answer) -> String {
    let share = answer.share.filter(|_| answer.state != State::NotKnown);
    share.map(|share| markup::share(share, answer.state).into_string()).unwrap_or_default()
}

/// What stays in view while an input changes.
#[component]
pub fn AnswerStrip(
    /// The answer, and whether it is not of now.
    answer: Memo<(Answer, bool)>,
) -> impl IntoView {
    let part = move |part: fn(&Answer, bool) -> String| {
        Signal::derive(move || answer.with(|(answer, stale)| part(answer, *stale)))
    };
    let class = part(|answer, stale| {
        let stale = if stale { " stale" } else { "" };
        format!("answer {}{stale}", markup::state_class(answer.state))
    });
    let figure_class = part(|answer, _| format!("answer-figure {}", long(&answer.figure, LONG)));
    let word_class = part(|answer, _| long(&answer.word, LONG_WORD).to_owned());
    view! {
        <section class=class aria-label="Answer">
            <p class=figure_class>
                <Figure text=part(|answer, _| answer.figure.clone()) />
            </p>
            <div class="block" inner_html=part(beam)></div>
            <p class="verdict" role="status">
                <strong class=word_class>{part(|answer, _| answer.word.clone())}</strong>
                <span>{part(|answer, _| answer.share_text.clone())}</span>
            </p>
            <div class="block" inner_html=part(|answer, _| share(answer))></div>
        </section>
    }
}
