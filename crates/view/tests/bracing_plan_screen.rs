//! What the screen of Bracing shows in plan: wall lines, and floors or roofs.

mod common;

use std::collections::BTreeMap;

use common::numbers;
use framing::bracing::BracingKind;
use framing::quick::QuickKind as _;
use view::bracing::BracingScreen;
use view::model::{Group, State};
use view::quick::{SIZE, own_key, screen, write};
use view::scene::{Mark, Weight};

type Fields = BTreeMap<String, String>;
type Typed = &'static [(&'static str, &'static str)];

fn shown(kind: BracingKind, of: Typed) -> BracingScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    screen(kind, &fields, None)
}

/// What each kind is asked besides nothing, so that every part of its picture is seen.
const CASES: [(BracingKind, Typed); 12] = [
    (BracingKind::WallLines, &[]),
    (
        BracingKind::WallLines,
        &[("push_direction", "along"), ("lines_along", "0, 14', 28'"), ("lines_across", "0, 16', 40'")],
    ),
    (BracingKind::WallLines, &[("lines_across", "0, 4', 8', 20', 36', 40'"), ("storeys", "3")]),
    (BracingKind::WallLines, &[("lines_across", "0"), ("pushes_across", "4000")]),
    (BracingKind::WallLines, &[("lines_along", "6'"), ("push_direction", "along")]),
    (BracingKind::WallLines, &[("building_length", "120'"), ("house_width", "20'")]),
    (BracingKind::Diaphragm, &[]),
    (BracingKind::Diaphragm, &[("end_line", "6', 10' open, 8'"), ("splice_at", "12'"), ("framing_runs", "along")]),
    (BracingKind::Diaphragm, &[("long_sides", "along"), ("joints_staggered", "no"), (SIZE, "15/32 10d 4/6 blocked")]),
    (BracingKind::Diaphragm, &[("floor_push", "900"), ("end_line", "4' open, 20'")]),
    (BracingKind::Diaphragm, &[("floor_span", "150'"), ("floor_deep", "60'")]),
    (BracingKind::Diaphragm, &[("floor_span", "12'"), ("floor_deep", "40'"), (SIZE, "7/16 8d 6")]),
];

fn labels(shown: &BracingScreen) -> Vec<&str> {
    let marks = shown.picture.marks.iter();
    marks.filter_map(|mark| if let Mark::Label { text, .. } = mark { Some(text.as_str()) } else { None }).collect()
}

fn arrows(shown: &BracingScreen) -> usize {
    shown.picture.marks.iter().filter(|mark| matches!(mark, Mark::Arrow { .. })).count()
}

#[test]
fn every_picture_is_on_its_paper_and_said_in_words() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}", kind.id());
        assert!(shown.current, "{what}: {:?}", shown.fields.iter().find_map(|field| field.problem.clone()));
        let picture = &shown.picture;
        assert!(picture.alt.starts_with("Plan of a ") && picture.alt.ends_with('.'), "{what}: {}", picture.alt);
        let (right, bottom) = (picture.left + picture.width, picture.top + picture.height);
        for mark in &picture.marks {
            for pair in numbers(mark).chunks(2) {
                let inside = (picture.left..=right).contains(&pair[0]) && (picture.top..=bottom).contains(&pair[1]);
                assert!(inside, "{what}: {mark:?} off {:?}", (picture.left, picture.top, right, bottom));
            }
        }
        assert!(arrows(&shown) >= 7, "{what}");
        for step in shown.working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{what}: {step:?}");
        }
    }
}

/// Figures of a picture do not lie on each other: their middles are a line of text apart, up or sideways.
#[test]
fn figures_do_not_lie_on_each_other() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let pixel = shown.picture.width.max(shown.picture.height) / 700.0;
        let all = shown.picture.marks.iter().filter_map(|mark| match mark {
            Mark::Label { at, text, .. } => Some((*at, text)),
            _ => None,
        });
        let all: Vec<_> = all.collect();
        for (index, ((x, y), text)) in all.iter().enumerate() {
            for ((other_x, other_y), other) in &all[index + 1..] {
                let apart = (x - other_x).abs() > 20.0 * pixel || (y - other_y).abs() > 10.0 * pixel;
                assert!(apart, "{} {of:?}: {text} on {other}", kind.id());
            }
        }
    }
}

/// Each line that is worked is heavy and has its figure; the wind has its own.
#[test]
fn lines_are_heavy_and_told() {
    let shown = shown(BracingKind::WallLines, &[("lines_across", "0, 16', 40'"), ("pushes_across", "7200")]);
    let heavy = shown.picture.marks.iter().filter(|mark| matches!(mark, Mark::Shape { weight: Weight::Cut, .. }));
    assert_eq!(heavy.count(), 3);
    let labels = labels(&shown);
    for figure in ["1,440 lb", "3,600 lb", "2,160 lb", "wind, 7,200 lb"] {
        assert!(labels.contains(&figure), "{figure}: {labels:?}");
    }
    assert!(shown.picture.alt.contains("16' 0\" from the left end is given 3,600 lb"), "{}", shown.picture.alt);
    // A side without a line says so, and no line has a figure.
    let open = self::shown(BracingKind::WallLines, &[("lines_across", "0"), ("pushes_across", "7200")]);
    let labels = self::labels(&open);
    assert!(labels.contains(&"open") && !labels.contains(&"7,200 lb"), "{labels:?}");
}

/// Push, reactions, chords and the collector stand at the floor.
#[test]
fn a_floor_has_its_forces() {
    let shown = shown(BracingKind::Diaphragm, &[("end_line", "10', 18' open"), ("floor_push", "180")]);
    let labels = labels(&shown);
    for figure in ["180 plf", "3,600 lb", "pressed 1,286 lb", "pulled 1,286 lb", "2,315 lb"] {
        assert!(labels.contains(&figure), "{figure}: {labels:?}");
    }
    assert!(shown.picture.alt.contains("carries 2,315 lb at 10' 0\""), "{}", shown.picture.alt);
}

/// The verdict's words are a state that the eye sees.
#[test]
fn verdicts_have_their_state() {
    let state = |kind, of| {
        let shown = shown(kind, of);
        (shown.answer.word, shown.answer.state)
    };
    let said = |word: &str, state| (word.to_owned(), state);
    let outside = said("not for this tool to decide", State::Outside);
    assert_eq!(state(BracingKind::WallLines, &[]), said("on the hardest line", State::Told));
    assert_eq!(state(BracingKind::WallLines, &[("lines_across", "0")]), outside);
    assert_eq!(state(BracingKind::WallLines, &[("lines_along", "0")]), outside);
    assert_eq!(state(BracingKind::Diaphragm, &[]), said("carries it", State::Carries));
    assert_eq!(state(BracingKind::Diaphragm, &[("floor_push", "900")]), said("not enough", State::Short));
    assert_eq!(state(BracingKind::Diaphragm, &[("floor_span", "112'")]), said("at the limit", State::AtLimit));
    assert_eq!(state(BracingKind::Diaphragm, &[("floor_held", "one")]), outside);
}

/// Every input stands in a group that the page shows; what says nothing is not asked.
#[test]
fn inputs_have_their_groups() {
    let groups = [Group::Shape, Group::Carries, Group::Bears, Group::Wood, Group::Place, Group::Limits];
    for (kind, of) in CASES {
        for field in shown(kind, of).fields.iter() {
            assert!(groups.contains(&field.group), "{} {}: {:?}", kind.id(), field.id, field.group);
        }
    }
    let asks = |kind, of, id: &str| shown(kind, of).fields.iter().any(|field| field.id == id);
    assert!(asks(BracingKind::WallLines, &[], "wind_speed"));
    assert!(!asks(BracingKind::WallLines, &[("pushes_across", "900"), ("pushes_along", "800")], "wind_speed"));
    assert!(!asks(BracingKind::Diaphragm, &[], "wall_high"));
    assert!(asks(BracingKind::Diaphragm, &[("end_line", "10'")], "wall_high"));
}

/// Panels and nails are judged by a tap on the list, as the list writes them.
#[test]
fn a_tap_judges_a_nailing() {
    let all = shown(BracingKind::Diaphragm, &[]);
    let sizes: Vec<_> = all.families.iter().flat_map(|family| &family.sizes).collect();
    assert_eq!((all.families.len(), sizes.len()), (2, 12));
    for size in sizes {
        let mut fields = Fields::new();
        fields.insert(own_key(BracingKind::Diaphragm, SIZE), size.value.clone());
        let shown = screen(BracingKind::Diaphragm, &fields, None);
        assert!(shown.asked && shown.current, "{}", size.value);
        assert_eq!(shown.answer.figure, size.value);
    }
}
