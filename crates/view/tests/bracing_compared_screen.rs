//! What the screen of Drawn and worked shows: both columns, the bars, and what follows.

use std::collections::BTreeMap;

use framing::bracing::BracingKind;
use framing::quick::QuickKind as _;
use view::bracing::BracingScreen;
use view::model::State;
use view::quick::{own_key, screen, write};
use view::scene::{Ink, Mark, Weight};
use view::{markup, svg};

const KIND: BracingKind = BracingKind::DrawnAndWorked;

const SCHEDULE: &str = "sheet S2.1 rev B\nW1: 7/16 8d 6/12, hold-down HD1\nW2: 15/32 10d 3, hold-down HD2\n\
    W3: 7/16 8d 4, unblocked\nHD1: hold-down 2,000 lb\nHD2: hold-down 9,000 lb";

const WALLS: &str = "Front above: W1, walls 5', 5', high 8', push 1,600 lb\n\
    Front below: W2, walls 5', 5', high 9', push 5,400 lb, dead 180 plf, under Front above\n\
    Back: W1, walls 3', high 8', push 2,000 lb\n\
    Side: walls 12', high 8', push 1,200 lb\n\
    Door: W3, walls 1', high 8', push 900 lb";

fn shown(of: &[(&'static str, &str)]) -> BracingScreen {
    let mut fields = BTreeMap::new();
    for (field, text) in of {
        write(&mut fields, KIND, field, Some((*text).to_owned()), "9:00");
    }
    screen(KIND, &fields, None)
}

fn of_walls(walls: &str) -> BracingScreen {
    shown(&[("schedule_lines", SCHEDULE), ("braced_walls", walls), ("species", "DF-L")])
}

fn words(shown: &BracingScreen) -> Vec<(f64, f64, &str)> {
    let marks = shown.picture.marks.iter();
    marks
        .filter_map(
            |mark| if let Mark::Words { from, text } = mark { Some((from.0, from.1, text.as_str())) } else { None },
        )
        .collect()
}

/// Length of the bars with that outline, without the one of the legend.
fn bars(shown: &BracingScreen, wanted: Weight) -> Vec<f64> {
    let long = |mark: &Mark| match mark {
        Mark::Shape { points, weight, .. } if *weight == wanted && points[0].1 > 0.0 => Some(points[1].0 - points[0].0),
        _ => None,
    };
    shown.picture.marks.iter().filter_map(long).collect()
}

#[test]
fn the_verdict_has_its_state_and_the_schedule_is_the_drawings() {
    let none = shown(&[]);
    assert_eq!((none.answer.state, none.answer.figure.as_str()), (State::NotKnown, "No wall yet"));
    assert_eq!(none.questions.len(), 2);
    assert!(none.picture.alt.contains("no wall is typed yet") && none.picture.marks.len() > 5);
    let carried = of_walls("Front: W1, walls 4', 4', high 8', push 1,500");
    assert_eq!((carried.answer.state, carried.answer.word.as_str()), (State::Carries, "carried as drawn"));
    let ask = of_walls(WALLS);
    assert_eq!((ask.answer.state, ask.answer.figure.as_str()), (State::Short, "3 of 5 walls"));
    assert_eq!(ask.answer.word, "to ask the engineer about");
    // The schedule is one of the whole drawing, typed here or there.
    assert_eq!(own_key(KIND, "schedule_lines"), own_key(BracingKind::Schedule, "schedule_lines"));
    assert_eq!(own_key(KIND, "braced_walls"), "bracing/drawn_and_worked/braced_walls");
    let ids = |shown: &BracingScreen| shown.fields.iter().map(|field| field.id).collect::<Vec<_>>();
    assert_eq!(ids(&carried)[..2], ["braced_walls", "schedule_lines"]);
    // The floor is asked about where a wall stands on another.
    assert!(!ids(&carried).contains(&"floor_between") && ids(&ask).contains(&"floor_between"));
    let at = BracingKind::ALL.iter().position(|kind| *kind == KIND);
    assert_eq!(at.and_then(|at| BracingKind::ALL.get(at - 1)), Some(&BracingKind::Schedule));
}

/// Both bars of a wall are as long as their shares, on one scale with the line at 100 %: 160 plf of 365 for both. A wall
/// that is used 320 % has its bar broken off.
#[test]
fn bars_are_as_long_as_their_shares() {
    let alike = of_walls("Front: W1, walls 5', 5', high 8', push 1,600");
    let line = alike.picture.marks.iter().find_map(|mark| match mark {
        Mark::Line { from, to, weight: Weight::Seen, ink: Ink::Ink } if from.0 == to.0 => Some(from.0),
        _ => None,
    });
    let all = line.unwrap_or_default();
    let (drawn, worked) = (bars(&alike, Weight::Cut), bars(&alike, Weight::Hidden));
    // The ends are used harder than the panels: 800 × 8 / 4.5 of 2,000 lb.
    assert!(drawn.len() == 1 && (drawn[0] / all - 800.0 * 8.0 / 4.5 / 2000.0).abs() < 1e-9, "{drawn:?} of {all}");
    assert!(worked.len() == 1 && (worked[0] / all - 160.0 / 365.0).abs() < 1e-9, "{worked:?} of {all}");
    let over = of_walls("Back: W1, walls 3', high 8', push 2,000 lb");
    assert!((bars(&over, Weight::Cut)[0] / all - 1.4).abs() < 1e-9);
    assert!(words(&over).iter().any(|(_, _, text)| *text == "320 %, ends"), "{:?}", words(&over));
    let short = over.picture.marks.iter().filter(|mark| matches!(mark, Mark::Line { ink: Ink::Short, .. }));
    assert_eq!(short.count(), 2, "it is broken off");
}

/// Four walls are drawn, those to ask about first; the text alternative has them all with what follows.
#[test]
fn those_to_ask_about_are_drawn_first_and_all_are_said() {
    let shown = of_walls(WALLS);
    let names: Vec<&str> =
        words(&shown).into_iter().filter(|(x, y, _)| *x == 0.0 && *y > 0.0).map(|(_, _, text)| text).collect();
    assert_eq!(names, ["Back: W1", "Side", "Door: W3", "Front above: W1"]);
    let alt = &shown.picture.alt;
    for says in [
        "Front above, mark W1, drawn 71 %, ends, worked 44 %: both agree",
        "Front below, mark W2, drawn 80 %, ends, worked 91 %: the drawing asks for more",
        "Back, mark W1, drawn 320 %, ends, worked 99 %: ask the engineer before nailing",
        "Side, drawn not named, worked 27 %: the drawing does not name it: ask",
        "Door, mark W3, drawn not worked, worked none carries: nothing of the tables carries it: ask the engineer",
        "3 of 5 walls to ask the engineer about.",
    ] {
        assert!(alt.contains(says), "{says}: {alt}");
    }
}

/// At 360 px the words stand beside each other and within the sheet, and nothing leaves the paper.
#[test]
fn it_is_read_on_a_small_phone() {
    const TEXT: f64 = 16.0;
    let long = "A wall with a long name!: W1, walls 3', high 8', push 20,000\nOther: W1, walls 4', high 8', push 900";
    for walls in [WALLS, long, ""] {
        let shown = of_walls(walls);
        let picture = &shown.picture;
        // The room on a phone of 360 px, 290 px high, with an edge of 12 px.
        let scale = ((360.0 - 24.0) / picture.width).min((290.0 - 24.0) / picture.height);
        let margin = (360.0 - picture.width * scale) / 2.0;
        let on_paper = |x: f64, y: f64| (margin + (x - picture.left) * scale, (y - picture.top) * scale);
        // Half an em is a letter's breadth, at the widest on average.
        let words: Vec<_> = words(&shown)
            .into_iter()
            .map(|(x, y, text)| (on_paper(x, y), text.chars().count() as f64 * TEXT * 0.52, text))
            .collect();
        for (index, ((x, y), wide, text)) in words.iter().enumerate() {
            assert!(*x >= 0.0 && x + wide <= 360.0, "{text}: {x} to {}", x + wide);
            for ((other_x, other_y), other_wide, other) in &words[index + 1..] {
                let apart = (y - other_y).abs() >= TEXT || x + wide <= *other_x || other_x + other_wide <= *x;
                assert!(apart, "{text} on {other}");
            }
        }
        let (right, bottom) = (picture.left + picture.width, picture.top + picture.height);
        for mark in &picture.marks {
            let Mark::Shape { points, .. } = mark else { continue };
            let inside = |(x, y): &(f64, f64)| (picture.left..=right).contains(x) && (picture.top..=bottom).contains(y);
            assert!(points.iter().all(inside), "{mark:?}");
        }
        assert!(!svg::picture(picture, (360.0, 290.0), "").into_string().contains("NaN"));
    }
}

/// A worked answer, as it is read: what to do, both columns, the working.
#[test]
fn a_worked_answer() {
    let shown = of_walls(WALLS);
    let mut said: Vec<String> =
        vec![format!("{} {}, {}", shown.answer.figure, shown.answer.word, shown.answer.share_text)];
    said.extend(shown.answer.action.iter().map(|says| format!("- {says}")));
    for table in &shown.tables {
        said.push(format!("{}: {}", table.heading, table.columns.join(" | ")));
        said.extend(table.rows.iter().map(|row| format!("  {} | {}", row.what, row.values.join(" | "))));
    }
    said.extend(shown.bars.iter().map(|bar| format!("bar {} {} ({})", bar.label, bar.percent, bar.detail)));
    for part in &shown.working {
        said.push(part.heading.clone());
        for step in &part.steps {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{step:?}");
            said.push(format!(
                "  {} {}: {} = {} [{}]",
                step.symbol, step.meaning, step.expression, step.value, step.source
            ));
        }
    }
    said.extend(shown.known.iter().cloned());
    let page = markup::tables(&shown.tables).into_string();
    assert!(page.contains("Front below") && !page.contains("NaN"));
    insta::assert_snapshot!("worked", said.join("\n"));
}
