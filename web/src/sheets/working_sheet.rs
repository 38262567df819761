//! The working, as written by hand: one step a line, the clause in the margin.

use leptos::prelude::*;
use view::model::{WorkingPart, WorkingStep};

use super::slide_up::SlideUp;
use crate::desk::Desk;
use crate::figure::Figure;
use crate::route::Sheet;

/// The working of the size that the answer is about.
#[component]
pub fn WorkingSheet() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let working = desk.settled.part(|screen| screen.working.clone());
    view! {
        <SlideUp sheet=Sheet::Working heading="Working">
            <div class="working">{move || working.get().into_iter().map(part).collect_view()}</div>
        </SlideUp>
    }
}

fn part(part: WorkingPart) -> impl IntoView {
    view! {
        <section class="working-part">
            <h3>{part.heading}</h3>
            {part.steps.into_iter().map(step).collect_view()}
        </section>
    }
}

/// `f_b` with its index below the line; what follows the index stays on it: `F_b'`.
fn set_symbol(symbol: &str) -> AnyView {
    let Some((letter, index)) = symbol.split_once('_') else {
        return view! { <span class="symbol">{symbol.to_owned()}</span> }.into_any();
    };
    let end = index.find(|letter: char| !letter.is_alphanumeric()).unwrap_or(index.len());
    let (index, rest) = (index[..end].to_owned(), index[end..].to_owned());
    view! { <span class="symbol">{letter.to_owned()}<sub>{index}</sub>{rest}</span> }.into_any()
}

fn step(step: WorkingStep) -> impl IntoView {
    let WorkingStep { symbol, meaning, expression, value, source, assumed } = step;
    view! {
        <div class="working-step" class:assumed=assumed>
            <p class="clause">{source}</p>
            <p class="meaning">{meaning}</p>
            <p class="expression">
                {set_symbol(&symbol)}
                " = "
                <Figure text=expression />
            </p>
            <p class="value">" = " <strong><Figure text=value /></strong></p>
        </div>
    }
}
