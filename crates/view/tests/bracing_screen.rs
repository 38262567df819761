//! What the screen of Bracing says.

mod common;

use std::collections::BTreeMap;

use common::numbers;
use framing::bracing::BracingKind;
use framing::quick::QuickKind as _;
use view::bracing::BracingScreen;
use view::markup;
use view::model::{Group, State};
use view::quick::{SIZE, own_key, screen, write};
use view::scene::Mark;

type Fields = BTreeMap<String, String>;

fn shown(kind: BracingKind, of: &[(&'static str, &str)]) -> BracingScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    screen(kind, &fields, None)
}

/// What each kind is asked besides nothing, so that every picture and every panel is seen.
const CASES: [(BracingKind, &[(&str, &str)]); 28] = [
    (BracingKind::ShearWall, &[]),
    (BracingKind::ShearWall, &[("wall_pieces", "2', 3', 12'"), ("wall_push", "5000"), ("hold_down_label", "3000")]),
    (BracingKind::ShearWall, &[("wall_pieces", "8'"), ("wall_dead", "600"), ("drawn_size", "15/32 10d 2 both")]),
    (BracingKind::ShearWall, &[("wall_pieces", "6\", 9\"")]),
    (BracingKind::ShearWall, &[("wall_high", "10'"), ("wall_blocking", "unblocked"), ("wall_pieces", "3', 20'")]),
    (
        BracingKind::ShearWall,
        &[("panels_lie", "across"), ("other_face", "gypsum 1/2 5d cooler 7"), ("wall_pieces", "8'")],
    ),
    (BracingKind::PerforatedWall, &[]),
    (
        BracingKind::PerforatedWall,
        &[("wall_pieces", "3', 4', 3'"), ("wall_openings", "3' x 7' open, 5' x 4'"), ("wall_dead", "100")],
    ),
    (BracingKind::HoldDown, &[]),
    (BracingKind::HoldDown, &[("storey_pushes", "800, 1000, 1200"), ("wall_long", "4'"), ("hold_down_label", "9000")]),
    (BracingKind::HoldDown, &[("storey_pushes", "200"), ("storey_deads", "900"), ("wall_long", "20'")]),
    (BracingKind::HoldDown, &[("strap_labels", "500"), ("strap_nails", "8 10d common"), ("salt_water", "0.1")]),
    (BracingKind::AnchorBolts, &[("salt_water", "0.1"), ("metal_tie", "stainless"), ("metal_nails", "hot_dip")]),
    (BracingKind::Uplift, &[]),
    (
        BracingKind::Uplift,
        &[
            ("uplift_storeys", "3"),
            ("rafter_tie", "900 lb"),
            ("plate_tie", "none"),
            ("floor_tie", "3 16d common"),
            ("sill_tie", "panels"),
            ("uplift_opening", "6'"),
            ("header_tie", "1500"),
        ],
    ),
    (BracingKind::Schedule, &[]),
    (
        BracingKind::Schedule,
        &[("schedule_lines", "P1: 7/16 8d 4/12, hold-down HD1\nP2: 15/32 10d 2\nHD1: hold-down 2000 lb")],
    ),
    (BracingKind::ShearWall, &[("schedule_lines", "P1: 7/16 8d 4\nHD1: hold-down 2000 lb"), (SIZE, "P1")]),
    (BracingKind::DrawnAndWorked, &[]),
    (
        BracingKind::DrawnAndWorked,
        &[
            ("schedule_lines", "P1: 7/16 8d 4/12, hold-down HD1\nHD1: hold-down 2000 lb"),
            (
                "braced_walls",
                "Front: P1, walls 3', 4', high 8', push 2,000 lb\nBack: walls 1', high 8', push 900, under Side\nSide: P1, walls 20', high 8', push 500",
            ),
        ],
    ),
    (BracingKind::WallLayers, &[]),
    (BracingKind::WallLayers, &[("wall_layers", "foam 1, osb 7/16, siding 1/2"), ("outer_long", "2")]),
    (
        BracingKind::WallLayers,
        &[("wall_layers", "gypsum 5/8, panel 15/32, wrap, gap 3/8, siding 1/2"), ("panel_nail", "10d")],
    ),
    (BracingKind::Uplift, &[("uplift_given", "80"), ("bolt_washer", "plate"), ("sill_tie", "panels")]),
    (BracingKind::Uplift, &[("rafter_tie", "900 lb"), ("rafter_tie_side", "inside"), ("deck_nail", "8d common")]),
    (BracingKind::Uplift, &[("uplift_of", "gable"), ("outlooker_tie", "none")]),
    (BracingKind::Uplift, &[("uplift_of", "gable"), ("uplift_storeys", "2"), ("deck_nail", "8d common")]),
    (BracingKind::Uplift, &[("uplift_of", "porch"), ("porch_lift", "30"), ("footing_weighs", "900")]),
];

#[test]
fn every_kind_answers_draws_and_says_what_it_draws() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}", kind.id());
        assert!(shown.current, "{what}: {:?}", shown.fields.iter().find_map(|field| field.problem.clone()));
        assert!(!shown.answer.figure.is_empty() && !shown.answer.word.is_empty(), "{what}");
        assert!(shown.picture.alt.len() > 30 && shown.picture.marks.len() > 3, "{what}: {}", shown.picture.alt);
        assert!(shown.picture.marks.iter().flat_map(numbers).all(f64::is_finite), "{what}");
        assert!(shown.cautions.len() >= 2 && (!shown.assumptions.is_empty() || of.len() >= 2), "{what}");
        for step in shown.working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{what}: {step:?}");
        }
        let page = markup::panels(&shown.panels).into_string() + &markup::tables(&shown.tables).into_string();
        assert!(!page.contains("NaN") && !page.contains("inf "), "{what}: {page}");
    }
}

/// What lies on the paper of a picture stays on it.
#[test]
fn pictures_stay_on_their_paper() {
    for (kind, of) in CASES {
        let picture = shown(kind, of).picture;
        let (right, bottom) = (picture.left + picture.width, picture.top + picture.height);
        let slack = picture.width.max(picture.height) * 0.02;
        for mark in &picture.marks {
            for pair in numbers(mark).chunks(2) {
                let inside = (picture.left - slack..=right + slack).contains(&pair[0])
                    && (picture.top - slack..=bottom + slack).contains(&pair[1]);
                assert!(inside, "{} {of:?}: {mark:?} off {:?}", kind.id(), (picture.left, picture.top, right, bottom));
            }
        }
    }
}

/// Every input stands in a group that the page shows.
#[test]
fn no_input_is_left_without_a_group() {
    let groups = [Group::Shape, Group::Carries, Group::Bears, Group::Wood, Group::Place, Group::Limits];
    for (kind, of) in CASES {
        for field in shown(kind, of).fields.iter() {
            assert!(groups.contains(&field.group), "{} {}: {:?}", kind.id(), field.id, field.group);
        }
    }
}

/// The verdict's words are a state that the eye sees.
#[test]
fn verdicts_have_their_state() {
    let state = |kind, of: &[(&'static str, &str)]| {
        let shown = shown(kind, of);
        (shown.answer.word, shown.answer.state)
    };
    let short = |word: &str| (word.to_owned(), State::Short);
    assert_eq!(state(BracingKind::ShearWall, &[]), ("carries it".to_owned(), State::Carries));
    assert_eq!(state(BracingKind::ShearWall, &[("wall_pieces", "6\"")]), short("not enough"));
    let weak = [("hold_down_label", "500"), ("drawn_size", "7/16 8d 4")];
    assert_eq!(state(BracingKind::ShearWall, &weak), short("the hold-down is too weak"));
    let heavy = [("storey_pushes", "4000, 4000"), ("hold_down_label", "90000")];
    assert_eq!(state(BracingKind::HoldDown, &heavy), short("the post is too small"));
    assert_eq!(state(BracingKind::HoldDown, &[]).1, State::Told);
    let mixed = [("salt_water", "0.1"), ("metal_tie", "stainless"), ("metal_nails", "hot_dip")];
    assert_eq!(state(BracingKind::AnchorBolts, &mixed), short("wrong metal for this place"));
    assert_eq!(state(BracingKind::WallLayers, &[]), ("braces the wall".to_owned(), State::Carries));
    assert_eq!(state(BracingKind::WallLayers, &[("wall_layers", "foam 1, panel 1/2")]), short("braces nothing"));
    assert_eq!(state(BracingKind::WallLayers, &[("outer_long", "2")]), short("too short a fastener"));
    let none = [("rafter_tie", "none"), ("uplift_given", "300")];
    assert_eq!(state(BracingKind::Uplift, &none), short("not enough"));
}

/// A ring that is open is told apart without colour, and the weakest is named.
#[test]
fn the_weakest_link_is_named_on_the_picture() {
    let shown =
        shown(BracingKind::Uplift, &[("rafter_tie", "100 lb"), ("plate_tie", "5000 lb"), ("sill_tie", "5000 lb")]);
    let labels: Vec<&str> = shown
        .picture
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Label { text, .. } | Mark::Words { text, .. } => Some(text.as_str()),
            _ => None,
        })
        .collect();
    assert!(labels.contains(&"Weakest: rafter to plate"), "{labels:?}");
    assert!(shown.answer.share_text.contains("rafter to plate"), "{}", shown.answer.share_text);
}

/// Inputs speak where what they belong to is lifted, and a tap on a link brings the input that says what is there.
#[test]
fn the_path_asks_what_belongs_to_it() {
    let has = |of: &[(&'static str, &str)], id: &str| {
        let shown = shown(BracingKind::Uplift, of);
        shown.fields.iter().any(|field| field.id == id)
    };
    let (gable, porch) = ([("uplift_of", "gable")], [("uplift_of", "porch"), ("porch_lift", "30")]);
    assert!(has(&[], "rafter_tie") && !has(&[], "outlooker_tie") && !has(&[], "post_top_tie"));
    assert!(has(&gable, "outlooker_tie") && !has(&gable, "rafter_tie") && has(&gable, "plate_tie"));
    assert!(has(&porch, "post_top_tie") && !has(&porch, "plate_tie") && !has(&porch, "wind_speed"));
    assert!(!has(&[], "rafter_tie_side") && has(&[("rafter_tie", "500 lb")], "rafter_tie_side"));
    assert!(!has(&[], "deck_every") && has(&[("deck_nail", "8d common")], "deck_every"));
    let wrong = shown(BracingKind::Uplift, &INSIDE);
    assert_eq!((wrong.answer.word.as_str(), wrong.answer.state), ("ties on the wrong side", State::Short));
    for (of, inputs) in [
        (&gable[..], ["outlooker_inner_tie", "outlooker_tie", "plate_tie", "sill_tie", "bolt_every"]),
        (&porch[..], ["porch_rafter_tie", "post_top_tie", "post_base_tie", "footing_weighs", "footing_weighs"]),
    ] {
        let shown = shown(BracingKind::Uplift, of);
        let acts: Vec<&str> = shown
            .picture
            .marks
            .iter()
            .filter_map(|mark| if let Mark::Pick { act, .. } = mark { Some(act.as_str()) } else { None })
            .collect();
        assert!(inputs.iter().all(|input| acts.iter().any(|act| act.ends_with(input))), "{acts:?}");
    }
}

/// Strong ties all the way down, on the inside of the plate.
const INSIDE: [(&str, &str); 6] = [
    ("rafter_tie", "5,000 lb"),
    ("rafter_tie_side", "inside"),
    ("plate_tie", "5,000 lb"),
    ("sill_tie", "5,000 lb"),
    ("bolt_every", "12"),
    ("bolt_washer", "plate"),
];

/// Panels and nails are judged by a tap on the list, and kept under the wall that was looked at.
#[test]
fn a_tap_judges_panels_and_nails() {
    let shown = shown(BracingKind::ShearWall, &[(SIZE, "15/32\" 8d at 3\"")]);
    assert!(shown.asked);
    assert_eq!(shown.answer.figure, "15/32\" 8d at 3\"");
    let shared = own_key(BracingKind::Schedule, "schedule_lines");
    assert_eq!(
        (shared.as_str(), &shared),
        ("bracing/schedule_lines", &own_key(BracingKind::ShearWall, "schedule_lines"))
    );
    let chosen: Vec<bool> = shown
        .families
        .iter()
        .flat_map(|family| &family.sizes)
        .map(|size| size.chosen)
        .filter(|chosen| *chosen)
        .collect();
    assert_eq!(chosen.len(), 1);
    assert_eq!(own_key(BracingKind::ShearWall, SIZE), "bracing/shear_wall/drawn_size");
}

/// Field case FC-29: a wall of 10 ft with sheets of 8 ft has a level joint, and the picture says at each what to do.
#[test]
fn level_joints_are_marked_on_the_picture() {
    let words = |more: &[(&'static str, &str)]| {
        let mut of = vec![("wall_high", "10'"), ("wall_pieces", "2', 20'")];
        of.extend(more);
        let picture = shown(BracingKind::ShearWall, &of).picture;
        let labels = picture.marks.iter().filter_map(|mark| match mark {
            Mark::Label { text, .. } => Some(text.clone()),
            _ => None,
        });
        let labels: Vec<String> = labels.collect();
        let count = |word: &str| labels.iter().filter(|text| *text == word).count();
        (count("block"), count("open"), count("not required"))
    };
    assert_eq!(words(&[]), (1, 0, 1));
    assert_eq!(words(&[("wall_blocking", "unblocked")]), (0, 1, 1));
    assert_eq!(words(&[("sheet_long", "10'")]), (0, 0, 0));
    assert_eq!(words(&[("panels_lie", "across")]), (2, 0, 2));
}

/// What is to be copied stands on the page as it was written, escaped.
#[test]
fn a_schedule_can_be_copied_from_the_page() {
    let shown = shown(BracingKind::Schedule, &[("schedule_lines", "P1: 7/16 8d 4, studs <2x6>")]);
    let page = markup::texts(&shown.texts).into_string();
    assert!(page.contains("studs &lt;2x6&gt;") && page.matches("<pre").count() == 2, "{page}");
}

/// Inputs that say nothing yet are not asked.
#[test]
fn metal_and_field_nails_are_asked_where_they_matter() {
    let asks = |kind, of: &[(&'static str, &str)], id: &str| shown(kind, of).fields.iter().any(|field| field.id == id);
    assert!(!asks(BracingKind::HoldDown, &[], "metal_where"));
    assert!(asks(BracingKind::HoldDown, &[("salt_water", "1")], "metal_where"));
    assert!(!asks(BracingKind::ShearWall, &[], "field_nails"));
    assert!(asks(BracingKind::ShearWall, &[("wall_blocking", "unblocked")], "field_nails"));
    assert!(!asks(BracingKind::HoldDown, &[], "strap_gauge"));
}
