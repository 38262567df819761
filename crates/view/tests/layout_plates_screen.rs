//! What the screen of Layout shows of walls and floors: pictures on their paper, and figures that do not lie on each other.

use std::collections::BTreeMap;

use framing::layout::LayoutKind;
use framing::quick::QuickKind as _;
use view::layout::LayoutScreen;
use view::model::State;
use view::quick::{screen, write};
use view::scene::{Ink, Mark, Scene};

type Fields = BTreeMap<String, String>;
type Typed = &'static [(&'static str, &'static str)];

fn shown(kind: LayoutKind, of: Typed) -> LayoutScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    screen(kind, &fields, None)
}

const OPENINGS: &str =
    "door 3' 2\" x 6' 10\" at 4'\nwindow 5' x 4' at 9', sill 2' 10\", jacks 2\nwindow 2' x 2' at 20', sill 4'";

const CASES: [(LayoutKind, Typed); 11] = [
    (LayoutKind::FloorLayout, &[]),
    (
        LayoutKind::FloorLayout,
        &[
            ("joists_long", "28'"),
            ("joists_openings", "3' 6\" x 8' at 12', in 3'"),
            ("joists_walls", "20' spread 4\""),
            ("joists_loads", "2 at 8' x 2 in"),
            ("joists_near", "hangers"),
            ("joists_hook", "right"),
            ("joists_beyond", "4"),
        ],
    ),
    (LayoutKind::FloorLayout, &[("joists_long", "200'"), ("joists_every", "12"), ("joists_rows", "2")]),
    (LayoutKind::FloorLayout, &[("joists_long", "3'"), ("joists_deep", "40'"), ("joists_panels", "no")]),
    (LayoutKind::WallLayout, &[]),
    (LayoutKind::WallLayout, &[("plate_long", "2'"), ("plate_pull", "far")]),
    (LayoutKind::WallLayout, &[("plate_long", "36'"), ("plate_openings", OPENINGS), ("plate_laps", "over")]),
    (
        LayoutKind::WallLayout,
        &[
            ("plate_long", "28'"),
            ("plate_openings", OPENINGS),
            ("plate_hook", "right"),
            ("plate_panels", "lying"),
            ("plate_below", "10"),
        ],
    ),
    (LayoutKind::WallLayout, &[("plate_long", "200'"), ("plate_every", "12")]),
    (LayoutKind::WallLayout, &[("plate_stud", "20'"), ("plate_long", "4'"), ("plate_panels", "none")]),
    (
        LayoutKind::WallLayout,
        &[("plate_posts", "3 at 6'"), ("plate_inner", "9'"), ("plate_braced", "0 to 4'"), ("plate_left", "flat")],
    ),
];

fn numbers(mark: &Mark) -> Vec<f64> {
    match mark {
        Mark::Line { from, to, .. }
        | Mark::Dimension { from, to, .. }
        | Mark::Arrow { from, to, .. }
        | Mark::Pick { from, to, .. } => vec![from.0, from.1, to.0, to.1],
        Mark::Shape { points, .. } => points.iter().flat_map(|point| [point.0, point.1]).collect(),
        Mark::Label { at, .. } | Mark::Words { from: at, .. } => vec![at.0, at.1],
    }
}

fn labels(scene: &Scene) -> Vec<((f64, f64), &str, bool)> {
    scene
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Label { at, text, upright } => Some((*at, text.as_str(), *upright)),
            _ => None,
        })
        .collect()
}

/// A wall has its plate as a second picture; a floor is one plan.
fn pictures(shown: &LayoutScreen) -> Vec<&Scene> {
    core::iter::once(&shown.picture).chain(shown.path_down.as_ref()).collect()
}

#[test]
fn every_picture_is_on_its_paper_and_said_in_words() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}", kind.id());
        assert!(shown.current, "{what}: {:?}", shown.fields.iter().find_map(|field| field.problem.clone()));
        for picture in pictures(&shown) {
            assert!(picture.alt.starts_with("The ") && picture.alt.ends_with('.'), "{what}: {}", picture.alt);
            let (right, bottom) = (picture.left + picture.width, picture.top + picture.height);
            assert!(picture.marks.len() > 5, "{what}");
            for mark in &picture.marks {
                for pair in numbers(mark).chunks(2) {
                    let inside = (picture.left..=right).contains(&pair[0]) && (picture.top..=bottom).contains(&pair[1]);
                    assert!(inside, "{what}: {mark:?} off {:?}", (picture.left, picture.top, right, bottom));
                }
            }
        }
        assert_eq!(shown.answer.state, State::Told, "{what}");
        for step in shown.working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{what}: {step:?}");
        }
    }
}

/// Figures that run up stand a line apart, and are short enough for the paper below: 74 pixels of a picture 300 wide.
#[test]
fn figures_do_not_lie_on_each_other() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        for picture in pictures(&shown) {
            // At the most 324 pixels of paper are as wide as the picture, so that a pixel is no less than this.
            let pixel = picture.width.max(picture.height * 1.2) / 330.0;
            let all = labels(picture);
            assert!(all.iter().all(|(_, text, _)| text.chars().count() <= 20), "{all:?}");
            for (index, ((x, y), text, upright)) in all.iter().enumerate() {
                for ((other_x, other_y), other, _) in all[index + 1..].iter().filter(|(_, _, turned)| turned == upright)
                {
                    let (beside, below) = if *upright { (12.0, 40.0) } else { (24.0, 12.0) };
                    let apart = (x - other_x).abs() > beside * pixel || (y - other_y).abs() > below * pixel;
                    assert!(apart, "{} {of:?}: {text} on {other}", kind.id());
                }
            }
        }
    }
}

/// Ends and edges of openings are pulled below the wall; the strip has the layout.
#[test]
fn the_main_pulls_are_written() {
    let of: Typed = &[("plate_long", "16'"), ("plate_openings", "door 3' x 6' 8\" at 6'")];
    let shown = shown(LayoutKind::WallLayout, of);
    let (wall, strip) = (&shown.picture, shown.path_down.as_ref().unwrap());
    for (picture, wanted) in
        [(wall, ["0\"", "72\"", "108\"", "192\""]), (strip, ["15-1/4\"", "31-1/4\"", "72\"", "108\""])]
    {
        let texts: Vec<&str> = labels(picture).into_iter().map(|(_, text, _)| text).collect();
        for text in wanted {
            assert!(texts.contains(&text), "{text}: {texts:?}");
        }
    }
    assert!(labels(wall).iter().any(|(_, text, upright)| text.contains("6' 8\"") && !upright || text.contains(" x ")));
}

/// A floor has its openings, what carries is told from what does not, and the main pulls stand below.
#[test]
fn a_floor_in_plan() {
    let of: Typed = &[("joists_long", "20'"), ("joists_openings", "6' x 5' at 8', in 4'"), ("joists_walls", "17'")];
    let shown = shown(LayoutKind::FloorLayout, of);
    let carries = shown.picture.marks.iter().filter(|mark| matches!(mark, Mark::Shape { ink: Ink::Carries, .. }));
    assert_eq!(carries.count(), 2 * 2 + 2, "trimmers and the joists under the wall");
    let texts: Vec<&str> = labels(&shown.picture).into_iter().map(|(_, text, _)| text).collect();
    for text in ["0\"", "96\"", "168\"", "240\"", "6' 0\"", "5' 0\""] {
        assert!(texts.contains(&text), "{text}: {texts:?}");
    }
}

/// What says nothing is not asked.
#[test]
fn inputs_that_say_nothing_are_left_out() {
    let asks = |of, id: &str| shown(LayoutKind::WallLayout, of).fields.iter().any(|field| field.id == id);
    assert!(asks(&[], "plate_stud") && !asks(&[], "plate_ceiling") && !asks(&[], "plate_meets"));
    assert!(asks(&[("plate_height_by", "ceiling")], "plate_ceiling"));
    assert!(asks(&[("plate_right", "three")], "plate_meets"));
    assert!(!asks(&[("plate_panels", "none")], "plate_gap") && asks(&[("plate_inner", "4'")], "plate_backing"));
}
