//! What the screens of hand-cut roofs show: their pictures, what they ask, and their verdicts.

use std::collections::BTreeMap;

use framing::layout::LayoutKind;
use framing::quick::QuickKind as _;
use view::layout::LayoutScreen;
use view::model::{Group, State};
use view::quick::{screen, write};
use view::scene::{Mark, Scene, Weight};

type Fields = BTreeMap<String, String>;
type Typed = &'static [(&'static str, &'static str)];

fn shown(kind: LayoutKind, of: Typed) -> LayoutScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    screen(kind, &fields, None)
}

use LayoutKind::{CommonRafter, HipValleyCuts, Jack, RoofSheathing};

/// What each kind is asked besides nothing, so that every part of its pictures is seen.
const CASES: [(LayoutKind, Typed); 30] = [
    (CommonRafter, &[]),
    (CommonRafter, &[("ridge_meets", "beam_top"), ("ridge_thick", "5-1/2\"")]),
    (CommonRafter, &[("ridge_meets", "beam_face"), ("ridge_thick", "5-1/2\""), ("ridge_deep", "16\"")]),
    (CommonRafter, &[("ridge_meets", "rafter"), ("tail_cut", "square")]),
    (CommonRafter, &[("eave_overhang", "0"), ("cut_run", "4'")]),
    (CommonRafter, &[("roof_pitch", "20/12"), ("cut_stick", "2x12"), ("seat_level", "2\"")]),
    (CommonRafter, &[("roof_pitch", "1/12"), ("cut_run", "59' 11-11/16\""), ("eave_overhang", "6'")]),
    (HipValleyCuts, &[]),
    (HipValleyCuts, &[("cut_other_pitch", "9/12"), ("hip_top", "slid"), ("hip_meets", "commons")]),
    (HipValleyCuts, &[("cut_corner", "valley"), ("hip_top", "backed"), ("hip_plies", "2")]),
    (HipValleyCuts, &[("cut_corner", "valley"), ("cut_other_pitch", "15/12"), ("seat_level", "2\"")]),
    (HipValleyCuts, &[("corner_angle", "135")]),
    (HipValleyCuts, &[("corner_angle", "60")]),
    (HipValleyCuts, &[("corner_angle", "170")]),
    (HipValleyCuts, &[("corner_angle", "20"), ("cut_run", "31' 10-13/16\"")]),
    (HipValleyCuts, &[("cut_corner", "valley"), ("corner_angle", "135"), ("cut_other_pitch", "8/12")]),
    (HipValleyCuts, &[("cut_corner", "valley"), ("corner_angle", "60")]),
    (HipValleyCuts, &[("cut_other_pitch", "2/12"), ("roof_pitch", "12/12"), ("seat_level", "2\"")]),
    (Jack, &[]),
    (Jack, &[("jack_side", "b"), ("cut_other_pitch", "9/12"), ("seat_level", "2\"")]),
    (Jack, &[("cut_corner", "valley")]),
    (Jack, &[("cut_corner", "valley"), ("jack_side", "b"), ("cut_other_pitch", "9/12")]),
    (Jack, &[("cut_corner", "valley"), ("jack_side", "b"), ("corner_angle", "120"), ("jack_start", "king")]),
    (Jack, &[("corner_angle", "135"), ("jack_every", "24\"")]),
    (RoofSheathing, &[]),
    (RoofSheathing, &[("left_end", "valley"), ("right_end", "hip"), ("cut_other_pitch", "12/12")]),
    (RoofSheathing, &[("right_end", "hip"), ("sheathed_eave", "12'"), ("cut_run", "20'")]),
    (RoofSheathing, &[("left_end", "valley"), ("right_end", "valley"), ("corner_angle", "135")]),
    (RoofSheathing, &[("left_end", "gable"), ("sheathed_eave", "199' 11-13/16\""), ("cut_run", "3'")]),
    (RoofSheathing, &[("left_end", "gable"), ("sheathed_eave", "5'"), ("roof_pitch", "18/12"), ("cut_run", "30'")]),
];

/// Pixels of a plate that are drawn on, below the answer and at the top of the page.
const ROOM: (f64, f64) = (304.0, 206.0);
/// The free edge around them.
const EDGE: f64 = 12.0;
/// Pixels of a letter, about, and of its line.
const LETTER: (f64, f64) = (9.4, 14.0);

fn pictures(shown: &LayoutScreen) -> Vec<&Scene> {
    core::iter::once(&shown.picture).chain(shown.path_down.as_ref()).collect()
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

fn scale(picture: &Scene) -> f64 {
    (ROOM.0 / picture.width).min(ROOM.1 / picture.height)
}

/// The words of a mark and the rectangle that they take on the screen, in pixels from the picture's corner: left, right,
/// top, bottom.
fn written(picture: &Scene, mark: &Mark) -> Option<(String, [f64; 4])> {
    let scale = scale(picture);
    let place = |at: (f64, f64)| ((at.0 - picture.left) * scale, (at.1 - picture.top) * scale);
    let around = |(x, y): (f64, f64), text: &str, upright: bool| {
        let (long, high) = (LETTER.0 * text.chars().count() as f64 / 2.0, LETTER.1 / 2.0);
        let (wide, tall) = if upright { (high, long) } else { (long, high) };
        [x - wide, x + wide, y - tall, y + tall]
    };
    match mark {
        Mark::Label { at, text, upright } => Some((text.clone(), around(place(*at), text, *upright))),
        Mark::Words { from, text } => {
            let (x, y) = place(*from);
            let half = LETTER.0 * text.chars().count() as f64 / 2.0;
            Some((text.clone(), around((x + half, y), text, false)))
        }
        Mark::Dimension { from, to, figure, .. } => {
            let (from, to) = (place(*from), place(*to));
            let runs_up = (to.1 - from.1).abs() > (to.0 - from.0).abs();
            let (x, y) = ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0);
            Some((figure.clone(), around(if runs_up { (x, y) } else { (x, y - 11.0) }, figure, runs_up)))
        }
        _ => None,
    }
}

#[test]
fn every_picture_is_on_its_paper_and_said_in_words() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}", kind.id());
        assert!(shown.current, "{what}: {:?}", shown.fields.iter().find_map(|field| field.problem.clone()));
        let pictures = pictures(&shown);
        assert_eq!(pictures.len(), if kind == RoofSheathing { 1 } else { 2 }, "{what}");
        for picture in pictures {
            assert!(picture.alt.ends_with('.') && picture.alt.len() > 60, "{what}: {}", picture.alt);
            let (right, bottom) = (picture.left + picture.width, picture.top + picture.height);
            for mark in &picture.marks {
                for pair in numbers(mark).chunks(2) {
                    let inside = (picture.left..=right).contains(&pair[0]) && (picture.top..=bottom).contains(&pair[1]);
                    assert!(inside, "{what}: {mark:?} off {:?}", (picture.left, picture.top, right, bottom));
                }
            }
        }
        for step in shown.working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{what}: {step:?}");
        }
    }
}

/// On a phone 360 px wide a picture is 328 px: no word runs out of it.
#[test]
fn words_stay_on_the_paper() {
    let mut off = Vec::new();
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        for picture in pictures(&shown) {
            let room = (picture.width * scale(picture), picture.height * scale(picture));
            // What the picture does not need of its room is free on both sides.
            let free = ((ROOM.0 - room.0) / 2.0 + EDGE, (ROOM.1 - room.1) / 2.0 + EDGE);
            for (text, [left, right, top, bottom]) in picture.marks.iter().filter_map(|mark| written(picture, mark)) {
                if left < -free.0 || right > room.0 + free.0 || top < -free.1 || bottom > room.1 + free.1 {
                    off.push(format!(
                        "{} {of:?}: {text} at {left:.0} to {right:.0}, {top:.0} to {bottom:.0} of {room:.0?}",
                        kind.id()
                    ));
                }
            }
        }
    }
    assert!(off.is_empty(), "{}", off.join("\n"));
}

/// Words of a picture do not lie on each other.
#[test]
fn words_do_not_lie_on_each_other() {
    let mut on = Vec::new();
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        for picture in pictures(&shown) {
            let all: Vec<_> = picture.marks.iter().filter_map(|mark| written(picture, mark)).collect();
            for (index, (text, a)) in all.iter().enumerate() {
                for (other, b) in &all[index + 1..] {
                    // Letters are counted at their widest: a tenth of the shorter word may seem to touch.
                    let slack = LETTER.0 * 0.1 * text.chars().count().min(other.chars().count()) as f64;
                    let across = a[1].min(b[1]) - a[0].max(b[0]);
                    let down = a[3].min(b[3]) - a[2].max(b[2]);
                    if across > slack && down > 3.0 {
                        on.push(format!("{} {of:?}: {text} on {other} by {across:.0}, {down:.0}", kind.id()));
                    }
                }
            }
        }
    }
    assert!(on.is_empty(), "{}", on.join("\n"));
}

fn lines(picture: &Scene, wanted: Weight) -> Vec<((f64, f64), (f64, f64))> {
    let of = |mark: &Mark| match mark {
        Mark::Line { from, to, weight, .. } if *weight == wanted => Some((*from, *to)),
        _ => None,
    };
    picture.marks.iter().filter_map(of).collect()
}

fn long((x, y): (f64, f64)) -> f64 {
    (x * x + y * y).sqrt()
}

fn angle_between(a: (f64, f64), b: (f64, f64)) -> f64 {
    measure::math::atan2((a.0 * b.1 - a.1 * b.0).abs(), a.0 * b.0 + a.1 * b.1).to_degrees()
}

/// In plan the walls make the corner's angle, and each jack is square to its wall and ends on the line: of both roofs, at
/// hips and valleys, at any angle.
#[test]
fn corners_are_drawn_as_they_stand() {
    for (corner, side, angle, other) in [
        ("hip", "a", "90", "6/12"),
        ("hip", "b", "90", "9/12"),
        ("hip", "a", "135", "6/12"),
        ("hip", "b", "60", "6/12"),
        ("valley", "a", "90", "6/12"),
        ("valley", "b", "90", "9/12"),
        ("valley", "a", "135", "5/12"),
        ("valley", "b", "110", "7/12"),
        ("valley", "b", "70", "9/12"),
    ] {
        let mut fields = Fields::new();
        for (field, text) in [
            ("cut_corner", corner),
            ("jack_side", side),
            ("corner_angle", angle),
            ("cut_other_pitch", other),
            ("seat_level", "2\""),
            ("jack_every", "8\""),
        ] {
            write(&mut fields, Jack, field, Some(text.to_owned()), "9:00");
        }
        let shown = screen(Jack, &fields, None);
        let what = format!("{corner} {side} {angle} {other}");
        assert!(shown.current, "{what}");
        let plan = shown.path_down.as_ref().unwrap_or(&shown.picture);
        let heavy = lines(plan, Weight::Cut);
        let (wall_a, wall_b) = (heavy[0].1, heavy[1].1);
        let degrees: f64 = angle.parse().unwrap_or(f64::NAN);
        assert!((angle_between(wall_a, wall_b) - degrees).abs() < 1e-6, "{what}");
        let peak = if corner == "hip" { heavy[2].1 } else { lines(plan, Weight::Hidden)[0].1 };
        // The line lies inside the walls at a hip, and away from what is outdoors at a valley.
        let (to_a, to_b) = (angle_between(wall_a, peak), angle_between(wall_b, peak));
        if corner == "hip" {
            assert!((to_a + to_b - degrees).abs() < 1e-6, "{what}: {to_a} {to_b}");
        } else {
            assert!((to_a + to_b - (360.0 - degrees)).abs() < 1e-6, "{what}: {to_a} {to_b}");
        }
        let wall = if side == "a" { wall_a } else { wall_b };
        let jacks = lines(plan, Weight::Fine);
        assert!(jacks.len() > 3, "{what}");
        for (from, to) in jacks {
            assert!((angle_between((to.0 - from.0, to.1 - from.1), wall) - 90.0).abs() < 1e-6, "{what}");
            assert!((to.0 * peak.1 - to.1 * peak.0).abs() < 1e-6 * long(peak) * long(peak), "{what}: off the line");
            let foot = (from.0 * wall.0 + from.1 * wall.1) / long(wall);
            // A hip jack stands on its wall; a valley jack hangs from a ridge, past the corner of the walls.
            let off_wall = (from.0 * wall.1 - from.1 * wall.0).abs() / long(wall);
            let run = (peak.0 * wall.1 - peak.1 * wall.0).abs() / long(wall);
            if corner == "hip" {
                assert!(off_wall < 1e-6 && foot > 0.0, "{what}: {from:?}");
            } else {
                assert!((off_wall - run).abs() < 1e-6 && foot < 0.0, "{what}: {from:?}");
            }
        }
    }
}

/// Sheets of neighbouring courses break their joints, and none runs past the cut ends.
#[test]
fn sheets_break_their_joints() {
    for (kind, of) in CASES.into_iter().filter(|(kind, _)| *kind == RoofSheathing) {
        let shown = shown(kind, of);
        let joints = lines(&shown.picture, Weight::Fine);
        for (index, (from, to)) in joints.iter().enumerate() {
            for (above, end) in &joints[index + 1..] {
                let meet =
                    (from.0 - above.0).abs() < 1.0 && ((to.1 - above.1).abs() < 1e-6 || (from.1 - end.1).abs() < 1e-6);
                assert!(!meet, "{of:?}: a joint runs through at {}", from.0);
            }
        }
    }
    let square = shown(
        RoofSheathing,
        &[("left_end", "gable"), ("sheathed_eave", "40'"), ("cut_run", "10'"), ("eave_overhang", "0")],
    );
    // 40 ft: four joints in the first and third course, five in the second, in three courses.
    assert_eq!(lines(&square.picture, Weight::Fine).len(), 4 + 5 + 4);
    let cut = shown(RoofSheathing, &[]);
    assert!(cut.picture.alt.contains("left end, a hip, the sheets are cut at 48.2°"), "{}", cut.picture.alt);
}

#[test]
fn verdicts_have_their_state() {
    let state = |kind, of| {
        let shown = shown(kind, of);
        (shown.answer.word, shown.answer.state)
    };
    assert_eq!(state(CommonRafter, &[]), ("from ridge cut to heel, along the top edge".to_owned(), State::Told));
    assert_eq!(state(CommonRafter, &[("seat_level", "5\"")]), ("not allowed by the code".to_owned(), State::Short));
    assert_eq!(state(Jack, &[]).1, State::Told);
    assert_eq!(state(RoofSheathing, &[]), ("to buy for this side, without spares".to_owned(), State::Told));
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
    assert!(asks(CommonRafter, &[], "ridge_deep") && !asks(CommonRafter, &[("ridge_meets", "rafter")], "ridge_deep"));
    assert!(!asks(CommonRafter, &[], "ridge_seat") && asks(CommonRafter, &[("ridge_meets", "beam_top")], "ridge_seat"));
    assert!(!asks(HipValleyCuts, &[], "ridge_deep") && asks(HipValleyCuts, &[], "ridge_thick"));
    assert!(!asks(HipValleyCuts, &[("hip_meets", "lines")], "ridge_thick"));
    assert!(!asks(Jack, &[], "ridge_thick") && asks(Jack, &[("cut_corner", "valley")], "ridge_thick"));
    let gables: Typed = &[("left_end", "gable")];
    assert!(asks(RoofSheathing, &[], "corner_angle") && !asks(RoofSheathing, gables, "corner_angle"));
}

/// What is wrong stands at its input, and the last answer is no longer current.
#[test]
fn what_is_wrong_stands_at_its_input() {
    let shown = shown(HipValleyCuts, &[("roof_pitch", "12/12"), ("cut_other_pitch", "4/12"), ("corner_angle", "135")]);
    let problem =
        shown.fields.iter().find(|field| field.id == "cut_other_pitch").and_then(|field| field.problem.clone());
    assert!(!shown.current && problem.is_some_and(|problem| problem.contains("in 12")));
}
