//! What the screens of nails and anchor bolts show.

mod common;

use std::collections::BTreeMap;

use common::numbers;
use framing::bracing::{
    BracingKind, NOT_ENOUGH, ONE_NAIL, ONLY_IF, SPLITS, STILL_TO_SAY, TOO_SHORT, WILL_DO, WILL_DO_AT_NUMBER,
    WILL_DO_AT_SPACING,
};
use framing::quick::{NOT_ALLOWED, QuickKind as _};
use view::bracing::BracingScreen;
use view::markup;
use view::model::State;
use view::quick::{screen, write};
use view::scene::{Ink, Mark};

type Fields = BTreeMap<String, String>;

fn shown(kind: BracingKind, of: &[(&'static str, &str)]) -> BracingScreen {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    screen(kind, &fields, None)
}

/// A kind, what is typed, the verdict and its state.
type Seen = (BracingKind, &'static [(&'static str, &'static str)], &'static str, State);

/// Enough of each kind that every verdict and every picture is seen.
const CASES: [Seen; 24] = {
    use BracingKind::{AnchorBolts, Nail, NailSwap};
    const OUTSIDE: &str = "not for this tool to decide";
    [
        (Nail, &[], ONE_NAIL, State::Told),
        (Nail, &[("nail_across", "60"), ("nail_pull", "10")], "carries it", State::Carries),
        (Nail, &[("nail_across", "200")], NOT_ENOUGH, State::Short),
        (Nail, &[("nail_pull", "20")], "carries it", State::Carries),
        (Nail, &[("nail_as", "0.131 x 3"), ("nail_pull", "20")], STILL_TO_SAY, State::NotKnown),
        (Nail, &[("nailed_wet", "yes"), ("nail_pull", "5")], OUTSIDE, State::Outside),
        (
            Nail,
            &[("nail_as", "8d box"), ("nail_side", "lumber"), ("nail_side_thick", "2-1/2")],
            TOO_SHORT,
            State::Short,
        ),
        (Nail, &[("nail_side", "lumber"), ("nail_as", "16d common"), ("nail_driven", "toe")], ONE_NAIL, State::Told),
        (Nail, &[("nail_side", "lumber"), ("nail_as", "16d common"), ("nail_driven", "end")], ONE_NAIL, State::Told),
        (Nail, &[("nail_side", "steel"), ("nail_gauge", "16")], ONE_NAIL, State::Told),
        (NailSwap, &[], ONLY_IF[0], State::Outside),
        (NailSwap, &[("nailed_work", "panels")], ONLY_IF[1], State::Outside),
        (NailSwap, &[("nailed_work", "truss"), ("nail_pattern", "10 nails")], ONLY_IF[2], State::Outside),
        (NailSwap, &[("nailed_work", "metal")], ONLY_IF[3], State::Outside),
        (NailSwap, &[("found_nail_as", "8d common")], WILL_DO, State::Carries),
        (NailSwap, &[("engineer_yes", "yes")], WILL_DO_AT_SPACING, State::Carries),
        (NailSwap, &[("engineer_yes", "yes"), ("nail_pattern", "10 nails")], WILL_DO_AT_NUMBER, State::Carries),
        (NailSwap, &[("nail_pattern", "2\"")], SPLITS, State::Short),
        (
            NailSwap,
            &[("nail_side", "lumber"), ("asked_nail", "16d common"), ("found_nail_as", "0.131 x 2")],
            TOO_SHORT,
            State::Short,
        ),
        (AnchorBolts, &[], "carries it", State::Carries),
        (AnchorBolts, &[("bolt_drawn", "6'"), ("sill_uplift", "150")], NOT_ENOUGH, State::Short),
        (
            AnchorBolts,
            &[("sill_long", "40'"), ("sill_push", "400 plf"), ("sill_uplift", "300"), ("bolt_washer", "plate")],
            "carries it",
            State::Carries,
        ),
        (AnchorBolts, &[("bolt_deep", "6\"")], NOT_ALLOWED, State::Short),
        (AnchorBolts, &[("bolt_deep", "5\"")], OUTSIDE, State::Outside),
    ]
};

#[test]
fn every_verdict_has_its_state() {
    for (kind, of, verdict, state) in CASES {
        let shown = shown(kind, of);
        assert!(shown.current, "{} {of:?}", kind.id());
        assert_eq!((shown.answer.word.as_str(), shown.answer.state), (verdict, state), "{} {of:?}", kind.id());
    }
}

/// A bolt that no table reaches is not drawn.
#[test]
fn every_picture_has_its_marks_and_says_what_it_draws() {
    for (kind, of, verdict, _) in CASES.into_iter().filter(|(_, of, ..)| *of != [("bolt_deep", "5\"")]) {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}: {verdict}", kind.id());
        assert!(shown.picture.alt.len() > 60 && shown.picture.marks.len() > 8, "{what}: {}", shown.picture.alt);
        assert!(shown.picture.marks.iter().flat_map(numbers).all(f64::is_finite), "{what}");
        let page = markup::panels(&shown.panels).into_string() + &markup::tables(&shown.tables).into_string();
        assert!(!page.contains("NaN") && !page.contains("inf "), "{what}: {page}");
        for step in shown.working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{what}: {step:?}");
        }
    }
}

/// What lies on the paper of a picture stays on it.
#[test]
fn pictures_stay_on_their_paper() {
    for (kind, of, ..) in CASES {
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

fn figures(screen: &BracingScreen) -> Vec<&str> {
    let mut figures = Vec::new();
    for mark in &screen.picture.marks {
        if let Mark::Dimension { figure, .. } = mark {
            figures.push(figure.as_str());
        }
    }
    figures
}

fn labels(screen: &BracingScreen) -> Vec<&str> {
    let mut labels = Vec::new();
    for mark in &screen.picture.marks {
        if let Mark::Label { text, .. } = mark {
            labels.push(text.as_str());
        }
    }
    labels
}

#[test]
fn a_nail_shows_how_deep_it_goes_and_what_counts() {
    let screen = shown(BracingKind::Nail, &[]);
    assert_eq!(figures(&screen), ["7/16\"", "2-1/16\""]);
    assert!(labels(&screen).contains(&"6 D") && labels(&screen).contains(&"10 D"), "{:?}", labels(&screen));
    assert!(screen.picture.alt.contains("2-1/16\" into the framing"), "{}", screen.picture.alt);
    let short = shown(BracingKind::Nail, &[("nail_across", "200")]);
    assert!(short.picture.marks.iter().any(|mark| matches!(mark, Mark::Arrow { ink: Ink::Short, .. })));
}

#[test]
fn a_swap_shows_both_nails_and_both_patterns() {
    let screen = shown(BracingKind::NailSwap, &[]);
    for label in ["as drawn", "at hand", "0.131 x 2-1/2", "0.113 x 2-3/8", "4\" on center", "3\" on center"] {
        assert!(labels(&screen).contains(&label), "{label}: {:?}", labels(&screen));
    }
    let short = shown(
        BracingKind::NailSwap,
        &[("nail_side", "lumber"), ("asked_nail", "16d common"), ("found_nail_as", "0.131 x 2")],
    );
    assert!(labels(&short).contains(&"no pattern stands for it"));
}

#[test]
fn a_plate_shows_every_bolt_at_its_place() {
    let screen = shown(BracingKind::AnchorBolts, &[]);
    // From each end to its bolt, one space, the whole, and how deep they are.
    assert_eq!(figures(&screen), ["12\"", "3' 0\"", "12\"", "8' 0\"", "7\""]);
    let washers = |screen: &BracingScreen, ink: Ink| {
        let of = |mark: &&Mark| matches!(mark, Mark::Shape { ink: found, washed: true, .. } if *found == ink);
        screen.picture.marks.iter().filter(of).count()
    };
    assert_eq!(washers(&screen, Ink::Carries), 3);
    let few = shown(BracingKind::AnchorBolts, &[("bolt_drawn", "6'")]);
    assert_eq!(washers(&few, Ink::Short), 2);
    assert!(few.picture.alt.contains("2 bolts"), "{}", few.picture.alt);
}

#[test]
fn inputs_speak_only_where_they_count() {
    let asks = |kind, of: &[(&'static str, &str)], id: &str| shown(kind, of).fields.iter().any(|field| field.id == id);
    assert!(!asks(BracingKind::Nail, &[], "nail_gauge"));
    assert!(asks(BracingKind::Nail, &[("nail_side", "steel")], "nail_gauge"));
    assert!(!asks(BracingKind::Nail, &[], "nail_ringed"));
    assert!(asks(BracingKind::NailSwap, &[("asked_shank", "roof_ring")], "nail_ringed"));
    assert!(asks(BracingKind::NailSwap, &[("nailed_work", "framing")], "code_element"));
    assert!(!asks(BracingKind::NailSwap, &[], "code_element"));
}
