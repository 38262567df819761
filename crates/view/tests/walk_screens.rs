//! What the screens of a walk say and draw.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use view::scene::{Mark, Scene};
use view::walk::{InHand, Kind, LookScreen, Typed, look};

// The answer of each kind, by field cases.
#[path = "walk_screens/answers.rs"]
mod answers;

// Inputs, readings and questions.
#[path = "walk_screens/inputs.rs"]
mod inputs;

// What is drawn.
#[path = "walk_screens/pictures.rs"]
mod pictures;

// What is put on the page.
#[path = "walk_screens/page.rs"]
mod page;

type Texts<'a> = &'a [(&'a str, &'a str)];
type Lists<'a> = &'a [(&'a str, &'a [&'a str])];

fn typed(texts: Texts<'_>, lists: Lists<'_>) -> Typed {
    let list = |list: &[&str]| list.iter().map(|text| (*text).to_owned()).collect();
    Typed {
        texts: texts.iter().map(|(id, text)| ((*id).to_owned(), (*text).to_owned())).collect(),
        lists: lists.iter().map(|(id, texts)| ((*id).to_owned(), list(texts))).collect(),
    }
}

/// The screen of a look with its first input in hand.
fn shown(kind: Kind, texts: Texts<'_>, lists: Lists<'_>) -> LookScreen {
    look(kind, &typed(texts, lists), InHand { field: "", reading: 0 }, None)
}

/// Source: field case FC-41: studs at 17 in where 16 are asked for.
const FC_41: &[&str] = &["16", "33", "50", "67", "84", "101"];

fn seventeen() -> LookScreen {
    shown(Kind::StudSpacing, &[("required_spacing", "16"), ("studs", "2x6")], &[("pulls", FC_41)])
}

/// Every sentence on a screen.
fn sentences(screen: &LookScreen) -> Vec<String> {
    let mut all = screen.answer.action.clone();
    all.extend(screen.questions.iter().map(|(_, _, question)| question.clone()));
    all.extend(screen.assumptions.iter().map(|(_, says)| says.clone()));
    all.extend([&screen.says, &screen.cautions, &screen.not_seen].into_iter().flatten().cloned());
    all.extend(screen.remedies.iter().map(|(what, _)| what.clone()));
    all.extend(screen.fields.iter().filter_map(|field| field.problem.clone()));
    all.extend(screen.readings.iter().flat_map(|list| &list.readings).filter_map(|one| one.question.clone()));
    all.extend([screen.summary.clone(), screen.picture.alt.clone()]);
    all
}

/// Every figure and word of a picture.
fn figures(scene: &Scene) -> Vec<&str> {
    let mut figures = Vec::new();
    for mark in &scene.marks {
        match mark {
            Mark::Dimension { figure, .. } => figures.push(figure.as_str()),
            Mark::Label { text, .. } => figures.push(text.as_str()),
            _ => {}
        }
    }
    figures
}

/// Every point of a picture.
fn corners(scene: &Scene) -> Vec<(f64, f64)> {
    let of = |mark: &Mark| match mark {
        Mark::Line { from, to, .. }
        | Mark::Dimension { from, to, .. }
        | Mark::Arrow { from, to, .. }
        | Mark::Pick { from, to, .. } => vec![*from, *to],
        Mark::Shape { points, .. } => points.clone(),
        Mark::Label { at, .. } | Mark::Words { from: at, .. } => vec![*at],
    };
    scene.marks.iter().flat_map(of).collect()
}

/// Whether a picture stays inside of its sheet.
fn is_inside(scene: &Scene) -> Result<(), String> {
    const SLACK: f64 = 1e-6;
    let Scene { left, top, width, height, .. } = *scene;
    for (x, y) in corners(scene) {
        let across = x >= left - SLACK && x <= left + width + SLACK;
        let down = y >= top - SLACK && y <= top + height + SLACK;
        if !(across && down) {
            return Err(format!("({x}, {y}) is outside of {left}, {top}, {width} by {height}: {scene:?}"));
        }
    }
    Ok(())
}
