//! What the header screen says and draws.

use framing::HeaderCase;
use view::header::screen;
use view::model::{Entry, HeaderScreen, Origin, State};
use view::scene::{Mark, Scene};

fn shown(fields: &[(&str, &str)]) -> HeaderScreen {
    screen(&case(fields), &HeaderCase::default(), None)
}

fn case(fields: &[(&str, &str)]) -> HeaderCase {
    let mut case = HeaderCase::default();
    for (field, text) in fields {
        assert!(case.set(field, Some((*text).to_owned())), "no input {field}");
    }
    case
}

/// Every sentence on a screen.
fn sentences(screen: &HeaderScreen) -> Vec<String> {
    let mut all = screen.answer.action.clone();
    all.extend(screen.questions.iter().map(|(_, question)| question.clone()));
    all.extend(screen.panels.iter().flat_map(|panel| panel.lines.clone()));
    all.extend(screen.assumptions.iter().map(|(_, says)| says.clone()));
    all.extend(screen.cautions.clone());
    all.extend(screen.fields.iter().filter_map(|field| field.problem.clone()));
    all
}

#[test]
fn nothing_typed_is_answered_and_says_what_is_assumed() {
    let screen = shown(&[]);
    assert!(screen.current);
    assert_eq!(screen.answer.state, State::Carries);
    assert!(!screen.answer.figure.is_empty() && screen.answer.share.unwrap() <= 1.0);
    let assumed = screen.fields.iter().filter(|field| field.origin == Origin::Assumed).count();
    assert!(assumed > 10);
    for id in ["wind_speed", "ground_snow", "species", "above"] {
        assert!(screen.assumptions.iter().any(|(field, _)| *field == Some(id)), "{id}");
    }
}

#[test]
fn a_size_too_small_says_by_how_much_and_what_carries_it() {
    let screen = shown(&[("opening_width", "9'"), ("size", "2-2x6")]);
    assert_eq!(screen.answer.state, State::Short);
    assert_eq!(screen.answer.word, "too small");
    let action = screen.answer.action.join(" ");
    assert!(action.contains("2-2x6 is too small") && action.contains("carries it"), "{action}");
}

#[test]
fn a_wrong_input_keeps_the_last_answer_and_marks_it() {
    let good = shown(&[("opening_width", "7'")]);
    let wrong = screen(&case(&[("opening_width", "400'")]), &HeaderCase::default(), Some(&good));
    assert!(!wrong.current);
    assert_eq!(wrong.answer, good.answer);
    let width = wrong.fields.iter().find(|field| field.id == "opening_width").unwrap();
    assert_eq!(width.text, "400'");
    assert!(width.problem.as_deref().unwrap().contains("from 1' 0\" to 24' 0\" is taken"));
    let never_good = screen(&case(&[("opening_width", "hay")]), &HeaderCase::default(), None);
    assert_eq!((never_good.answer.state, never_good.current), (State::NotKnown, false));
}

#[test]
fn sentences_are_plain() {
    for fields in [
        &[][..],
        &[("opening_width", "16'"), ("closure", "overhead_door"), ("above", "framing_bears")],
        &[("carries", "gable_end")],
        &[("carries", "interior_two_floors"), ("above", "cripple_studs")],
        &[("carries", "floor_only"), ("above", "framing_bears"), ("species", "SPF-S")],
        &[("wind_speed", "199 mph"), ("opening_width", "24'"), ("wall_height", "20'"), ("wall_studs", "2x4")],
        &[("gap_at_jack", "3/16"), ("opening_width", "nothing")],
    ] {
        for sentence in sentences(&shown(fields)) {
            assert!(!sentence.contains('!') && !sentence.to_lowercase().contains("please"), "{sentence}");
            assert!(sentence.ends_with('.') || sentence.ends_with('?'), "{sentence}");
            assert!(!sentence.contains("  "), "{sentence}");
        }
    }
}

#[test]
fn the_picture_stays_inside_its_sheet_and_says_the_same() {
    for fields in [
        &[("opening_width", "3'")][..],
        &[("opening_width", "24'"), ("wall_height", "12'"), ("head_height", "8'")],
        &[("opening_width", "6'"), ("wall_height", "20'"), ("wall_studs", "2x4")],
    ] {
        let screen = shown(fields);
        let picture = &screen.picture;
        for (x, y) in corners(picture) {
            assert!(x >= picture.left - 1e-9 && x <= picture.left + picture.width + 1e-9, "{x}");
            assert!(y >= picture.top - 1e-9 && y <= picture.top + picture.height + 1e-9, "{y}");
        }
        assert!(picture.alt.contains(&screen.answer.figure), "{}", picture.alt);
        assert!(picture.alt.contains("wide, head at"));
    }
}

fn corners(scene: &Scene) -> Vec<(f64, f64)> {
    scene
        .marks
        .iter()
        .flat_map(|mark| match mark {
            Mark::Line { from, to, .. }
            | Mark::Dimension { from, to, .. }
            | Mark::Arrow { from, to, .. }
            | Mark::Pick { from, to, .. } => {
                vec![*from, *to]
            }
            Mark::Shape { points, .. } => points.clone(),
            Mark::Label { at, .. } | Mark::Words { from: at, .. } => vec![*at],
        })
        .collect()
}

#[test]
fn every_support_has_its_picture() {
    let screen = shown(&[]);
    let carries = screen.fields.iter().find(|field| field.id == "carries").unwrap();
    let Entry::Choice(options) = &carries.entry else { unreachable!() };
    assert_eq!(options.len(), 9);
    for (value, words) in *options {
        let picture = view::header::option_picture("carries", value, words).unwrap();
        for (x, y) in corners(&picture) {
            assert!(x >= picture.left && x <= picture.left + picture.width, "{value}: {x}");
            assert!(y >= picture.top && y <= picture.top + picture.height, "{value}: {y}");
        }
    }
}

#[test]
fn bars_come_worst_first_and_one_governs() {
    let screen = shown(&[("opening_width", "8'")]);
    assert!(screen.bars.windows(2).all(|pair| pair[0].share >= pair[1].share));
    assert_eq!(screen.bars.iter().filter(|bar| bar.governs).count(), 1);
    assert!(screen.bars[0].governs);
}

#[test]
fn one_size_is_chosen_and_the_smallest_are_marked() {
    let screen = shown(&[]);
    let sizes: Vec<_> = screen.families.iter().flat_map(|family| &family.sizes).collect();
    assert_eq!(sizes.iter().filter(|size| size.chosen).count(), 1);
    for family in &screen.families {
        assert!(family.sizes.iter().filter(|size| size.smallest).count() <= 1, "{}", family.name);
    }
}

/// A share just over the limit never reads as the limit.
#[test]
fn a_limit_is_never_rounded_into_a_pass() {
    assert_eq!(framing::words::percent(1.0), "100 %");
    assert_eq!(framing::words::percent(1.000_1), "101 %");
    assert_eq!(framing::words::percent(0.996), "100 %");
    assert_eq!(framing::words::percent(0.82), "82 %");
    assert_eq!(framing::words::percent(99.0), "over 10 times");
}

#[test]
fn where_nothing_carries_it_the_nearest_that_fits_is_shown() {
    let screen = shown(&[("opening_width", "18' 3\""), ("carries", "two_floors_clear_span")]);
    assert_eq!(screen.answer.state, State::Short);
    // Deeper LVL does not fit under the plates, more plies do not fit in the wall.
    assert_eq!(screen.answer.figure, "3-1-3/4x11-1/4 LVL");
}
