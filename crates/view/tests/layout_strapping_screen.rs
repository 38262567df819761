//! What the screen of Layout shows of a strapped ceiling: its plan, its worst row from the side, and its inputs.

use std::collections::BTreeMap;

use framing::layout::LayoutKind;
use view::layout::LayoutScreen;
use view::model::{Group, State};
use view::quick::{screen, write};
use view::scene::{Ink, Mark, Scene, Weight};

type Fields = BTreeMap<String, String>;
type Typed<'t> = &'t [(&'static str, &'t str)];

fn shown(of: Typed<'_>) -> LayoutScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, LayoutKind::Strapping, field, Some((*text).to_owned()), "9:00");
    }
    screen(LayoutKind::Strapping, &fields, None)
}

/// Readings of so many joists and rows, in sixteenths, that no two neighbours share.
fn uneven(joists: usize, rows: usize) -> String {
    let line = |row: usize| (0..joists).map(|joist| ((joist * 5 + row * 3) % 17).to_string()).collect::<Vec<_>>();
    (0..rows).map(|row| line(row).join(",")).collect::<Vec<_>>().join("\n")
}

const LOW: &str = "1,1,1,1,3/4,1,1,1,1\n1,1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,1,1\n1,1,2,1,1,1,1,1,1";

/// Every part of the pictures is seen in one of these.
fn cases() -> Vec<Vec<(&'static str, String)>> {
    let of =
        |fields: &[(&'static str, &str)]| fields.iter().map(|(id, text)| (*id, (*text).to_owned())).collect::<Vec<_>>();
    let sixteenths = |fields: &[(&'static str, &str)], joists, rows| {
        let mut all = of(fields);
        all.extend([("strap_read_in", "sixteenths".to_owned()), ("strap_readings", uneven(joists, rows))]);
        all
    };
    vec![
        of(&[]),
        of(&[("strap_across", "40'"), ("strap_along", "9'"), ("strap_stock", "8"), ("strap_short", "left")]),
        of(&[("strap_across", "2'"), ("strap_along", "100'")]),
        of(&[("strap_across", "100'"), ("strap_along", "2'"), ("strap_short", "none")]),
        of(&[("strap_across", "112\""), ("strap_readings", "1-1/4, 1-5/8, 1-3/8, 2, 1-1/8, 1-1/2")]),
        sixteenths(&[("strap_across", "12'"), ("strap_along", "10'")], 8, 8),
        sixteenths(&[("strap_across", "12'"), ("strap_along", "10'"), ("strap_aim", "least_total")], 8, 8),
        sixteenths(&[("strap_across", "60'"), ("strap_along", "70'")], 44, 50),
        sixteenths(&[("strap_across", "24\""), ("strap_along", "24\"")], 1, 2),
        of(&[
            ("strap_across", "160\""),
            ("strap_along", "80\""),
            ("strap_joists_are", "2x10"),
            ("strap_readings", LOW),
        ]),
        of(&[("strap_across", "160\""), ("strap_along", "24\""), ("strap_readings", "1,-,0,-,200,-,1,-,1")]),
    ]
}

fn all() -> Vec<(String, LayoutScreen)> {
    let show = |of: Vec<(&'static str, String)>| {
        let typed: Vec<(&'static str, &str)> = of.iter().map(|(id, text)| (*id, text.as_str())).collect();
        (format!("{typed:.80?}"), shown(&typed))
    };
    cases().into_iter().map(show).collect()
}

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

fn labels(scene: &Scene) -> Vec<((f64, f64), &str)> {
    let marks = scene.marks.iter();
    marks
        .filter_map(|mark| if let Mark::Label { at, text, .. } = mark { Some((*at, text.as_str())) } else { None })
        .collect()
}

/// Inches of a drawing to a pixel of a phone 300 wide, as the pen has it before its margins; a little less than what is shown.
fn pixel(scene: &Scene) -> f64 {
    scene.width.max(scene.height * 1.5) / 388.0
}

#[test]
fn every_picture_is_on_its_paper_and_said_in_words() {
    for (what, shown) in all() {
        assert!(shown.current, "{what}: {:?}", shown.fields.iter().find_map(|field| field.problem.clone()));
        assert!(shown.picture.alt.starts_with("The ceiling in plan"), "{what}: {}", shown.picture.alt);
        for scene in [Some(&shown.picture), shown.path_down.as_ref()].into_iter().flatten() {
            assert!(scene.alt.ends_with('.') && scene.width > 0.0 && scene.height > 0.0, "{what}: {}", scene.alt);
            let (right, bottom) = (scene.left + scene.width, scene.top + scene.height);
            for mark in &scene.marks {
                for pair in numbers(mark).chunks(2) {
                    assert!(pair.iter().all(|number| number.is_finite()), "{what}: {mark:?}");
                    let inside = (scene.left..=right).contains(&pair[0]) && (scene.top..=bottom).contains(&pair[1]);
                    assert!(inside, "{what}: {mark:?} off {:?}", (scene.left, scene.top, right, bottom));
                }
            }
        }
    }
}

/// Labels are short, and their middles are a line of text apart, up or sideways.
#[test]
fn labels_are_read() {
    for (what, shown) in all() {
        for scene in [Some(&shown.picture), shown.path_down.as_ref()].into_iter().flatten() {
            let (labels, pixel) = (labels(scene), pixel(scene));
            for (index, ((x, y), text)) in labels.iter().enumerate() {
                assert!(text.chars().count() <= 26, "{what}: {text}");
                for ((other_x, other_y), other) in &labels[index + 1..] {
                    let apart = (x - other_x).abs() > 20.0 * pixel || (y - other_y).abs() > 12.0 * pixel;
                    assert!(apart, "{what}: {text} on {other}");
                }
            }
        }
    }
}

/// Eight joists and eight rows have all their figures; a larger ceiling has dots and its three thickest shims.
#[test]
fn figures_where_there_is_room() {
    let figures = |joists: usize, rows: usize, across: &str, along: &str| {
        let readings = uneven(joists, rows);
        let shown = shown(&[
            ("strap_across", across),
            ("strap_along", along),
            ("strap_read_in", "sixteenths"),
            ("strap_readings", &readings),
        ]);
        let dots =
            shown.picture.marks.iter().filter(|mark| matches!(mark, Mark::Shape { points, .. } if points.len() == 16));
        (labels(&shown.picture).len(), dots.count())
    };
    assert_eq!(figures(8, 8, "12'", "112\""), (8 * 8 + 1, 0));
    let (labels, dots) = figures(44, 50, "60'", "66'");
    assert_eq!(labels, 3 + 1);
    // One in seventeen is nothing, and has no dot.
    assert_eq!(
        dots,
        (0..50).flat_map(|row| (0..44).map(move |joist| (joist * 5 + row * 3) % 17)).filter(|shim| *shim > 0).count()
    );
}

/// The shims stand as they are answered; what was not read has a dash, what lies between a question mark.
#[test]
fn each_crossing_has_its_shim() {
    let shown = shown(&[
        ("strap_across", "64\""),
        ("strap_along", "48\""),
        ("strap_readings", "1, 1-1/4, -\n-,-,-\n1, 1-1/2, -\n1,1,1-1/8"),
    ]);
    let mut found: Vec<&str> = labels(&shown.picture).into_iter().map(|(_, text)| text).collect();
    found.sort_unstable();
    assert_eq!(found, ["-", "-", "-", "0", "0", "0", "0", "0?", "2", "4", "6?", "8", "shims in sixteenths"]);
}

/// A reading to be read again is ringed; a joist to plane is crossed; both are said in words.
#[test]
fn rings_and_crosses() {
    let shown = shown(&[
        ("strap_across", "160\""),
        ("strap_along", "80\""),
        ("strap_joists_are", "2x10"),
        ("strap_readings", LOW),
    ]);
    let picture = &shown.picture;
    let ringed = picture.marks.iter().any(|mark| matches!(mark, Mark::Line { ink: Ink::AtLimit, .. }));
    let crossed = picture.marks.iter().filter(|mark| matches!(mark, Mark::Line { ink: Ink::Short, .. })).count();
    assert!(ringed && crossed == 2, "{ringed} {crossed}");
    assert!(picture.alt.contains("to be read again: row 6, joist 3."), "{}", picture.alt);
    assert!(picture.alt.contains("to be planed: row 1, joist 5."), "{}", picture.alt);
}

/// From the side the strip is one straight line, and a shim fills what is left over it; how much larger heights are is said.
#[test]
fn the_side_is_exaggerated_and_says_so() {
    let shown = shown(&[("strap_across", "112\""), ("strap_readings", "1-1/4, 1-5/8, 1-3/8, 2, 1-1/8, 1-1/2")]);
    let side = shown.path_down.as_ref();
    let marks = side.map_or(&[][..], |side| &side.marks);
    let shims = marks.iter().filter(|mark| matches!(mark, Mark::Shape { ink: Ink::Chalk, .. })).count();
    let strips =
        marks.iter().filter(|mark| matches!(mark, Mark::Shape { ink: Ink::Ink, weight: Weight::Cut, .. })).count();
    assert_eq!((shims, strips), (5, 1));
    let words: Vec<&str> = side.map(labels).unwrap_or_default().into_iter().map(|(_, text)| text).collect();
    assert!(words.contains(&"7/8\""), "{words:?}");
    assert!(words.iter().any(|text| text.starts_with("row 1, heights × ")), "{words:?}");
    assert!(self::shown(&[]).path_down.is_none());
}

/// Every input stands in a group that the page shows; what says nothing is not asked.
#[test]
fn inputs_have_their_groups() {
    let groups = [Group::Shape, Group::Wood, Group::Bears, Group::Place, Group::Limits];
    for (what, shown) in all() {
        for field in shown.fields.iter() {
            assert!(groups.contains(&field.group), "{what} {}: {:?}", field.id, field.group);
        }
    }
    let asks = |of: Typed<'_>, id: &str| shown(of).fields.iter().any(|field| field.id == id);
    assert!(asks(&[], "strap_readings") && !asks(&[], "strap_datum") && !asks(&[], "strap_plates"));
    assert!(asks(&[("strap_readings", "-")], "strap_datum"));
    assert!(asks(&[("strap_stud", "92-5/8")], "strap_plates") && !asks(&[("strap_wall_high", "8'")], "strap_plates"));
    assert!(!asks(&[("strap_joists_at", "16, 32")], "strap_joist_every"));
}

/// The answer is told; while a reading is wrong the last good one stays, and is not current.
#[test]
fn the_answer_is_told() {
    let good = shown(&[("strap_across", "112\""), ("strap_readings", "1-1/4, 1-5/8, 1-3/8, 2, 1-1/8, 1-1/2")]);
    assert_eq!((good.answer.state, good.answer.figure.as_str()), (State::Told, "Shim 7/8\" at most"));
    assert!(shown(&[]).questions.iter().any(|(field, _)| *field == "strap_readings"));
    let wrong = shown(&[("strap_across", "112\""), ("strap_readings", "1-1/4, wet")]);
    assert!(!wrong.current);
    let problem =
        wrong.fields.iter().find(|field| field.id == "strap_readings").and_then(|field| field.problem.clone());
    assert!(problem.is_some_and(|problem| problem.starts_with("Row 1, joist 2: ")));
}
