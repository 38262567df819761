//! What may be typed in each input, and what is said of the rest.

use std::collections::BTreeMap;

use framing::field::{HEADER_FIELDS, Kind, Unsaid, header_field, site_fields};
use framing::reading::{Origin, Reading};
use framing::site::derive_site;
use framing::{HeaderCase, derive_header};

fn typed(field: &str, text: &str) -> HeaderCase {
    let mut case = HeaderCase::default();
    assert!(case.set(field, Some(text.to_owned())), "no input {field}");
    case
}

fn read(case: &HeaderCase) -> Reading {
    derive_header(case, &HeaderCase::default()).reading
}

#[test]
fn the_inputs_and_their_descriptions_are_the_same() {
    let described: Vec<&str> = HEADER_FIELDS.iter().map(|spec| spec.id).collect();
    for field in HeaderCase::FIELDS {
        assert!(described.contains(field), "{field} has no description");
    }
    assert_eq!(described.len(), HeaderCase::FIELDS.len());
}

/// Every assumed value is one that would be taken if it were typed, and reads the same.
#[test]
fn what_is_assumed_may_be_typed() {
    for spec in HEADER_FIELDS {
        if let Unsaid::Assumed(text, why) = spec.unsaid {
            let reading = read(&typed(spec.id, text));
            let value = reading.get(spec.id).unwrap();
            assert_eq!((value.origin, &value.problem), (Origin::Typed, &None), "{}", spec.id);
            assert!(!why.is_empty());
            assert_eq!(value.number, read(&HeaderCase::default()).get(spec.id).unwrap().number);
        }
    }
}

/// Nothing typed anywhere, and every answer is there.
#[test]
fn the_shortest_path_answers() {
    assert!(derive_header(&HeaderCase::default(), &HeaderCase::default()).answered.is_some());
}

/// Texts that no input of a kind takes.
fn nonsense(kind: Kind) -> &'static [&'static str] {
    match kind {
        Kind::Length { .. } => &["-6'", "4000'", "wide", "6 psf", "6' 14\"", "NaN", "1e3", "1/0", "5/6"],
        Kind::Number { unit: "ft", .. } => &["-1", "1000000000", "far", "6 in", "NaN", "40 kg"],
        Kind::Number { .. } => &["-1", "1000000000", "heavy", "6'", "NaN", "1e3", "40 kg", "--4"],
        Kind::Special { .. } => &["-4", "steep", "6/10", "90/12"],
        Kind::Choice(_) => &["neither", "0"],
        Kind::Size => &["9-2x40", "two by ten"],
        Kind::Name | Kind::Lines => &[],
    }
}

fn assert_is_a_sentence(field: &str, text: &str, problem: Option<&str>) {
    assert!(problem.is_some(), "{field}: {text} was taken");
    let problem = problem.unwrap_or_default();
    assert!(problem.ends_with('.') && problem.contains(' '), "{field}: {problem}");
}

/// Empty, negative, absurd, not a number, the wrong unit: each is a sentence at its own field, and none an answer.
#[test]
fn nonsense_is_refused_at_its_field_with_a_sentence() {
    for spec in HEADER_FIELDS {
        for text in nonsense(spec.kind) {
            let outcome = derive_header(&typed(spec.id, text), &HeaderCase::default());
            assert_is_a_sentence(spec.id, text, outcome.reading.get(spec.id).unwrap().problem.as_deref());
            assert!(outcome.answered.is_none(), "{}: {text}", spec.id);
        }
        // Nothing typed is never wrong by itself.
        assert!(read(&typed(spec.id, "   ")).get(spec.id).unwrap().problem.is_none(), "{}", spec.id);
    }
}

/// The same of a place. A length of nothing is refused where a house must have some, or answered without panic.
#[test]
fn nonsense_is_refused_on_site_too() {
    let of = |id: &str, text: &str| BTreeMap::from([(id.to_owned(), text.to_owned())]);
    for spec in site_fields() {
        for text in nonsense(spec.kind) {
            let outcome = derive_site(&of(spec.id, text));
            assert_is_a_sentence(spec.id, text, outcome.reading.get(spec.id).unwrap().problem.as_deref());
            assert!(outcome.answered.is_none(), "{}: {text}", spec.id);
        }
        let outcome = derive_site(&of(spec.id, "   "));
        assert!(outcome.answered.is_some(), "{}", spec.id);
        let nothing = derive_site(&of(spec.id, "0"));
        assert_eq!(nothing.answered.is_some(), nothing.refusals().is_empty(), "{}: 0", spec.id);
    }
    for layers in ["roof_layers", "ceiling_layers", "floor_layers", "wall_layers"] {
        for text in ["moss", "slate -3 psf", "slate 1e9 psf", "slate 10 kPa"] {
            let outcome = derive_site(&of(layers, text));
            assert_is_a_sentence(layers, text, outcome.reading.get(layers).unwrap().problem.as_deref());
        }
    }
}

#[test]
fn what_was_understood_is_echoed() {
    let reading = read(&typed("opening_width", "98 3/4"));
    assert_eq!(reading.get("opening_width").unwrap().echo, "98 3/4 in = 8' 2-3/4\"");
    let reading = read(&typed("building_width", "28"));
    assert_eq!(reading.get("building_width").unwrap().shown, "28' 0\"");
    assert_eq!(reading.get("stud_spacing").unwrap().shown, "16\"");
}

#[test]
fn site_values_fill_what_was_not_typed() {
    let site = typed("ground_snow", "50 psf");
    let from_site = Reading::of(HEADER_FIELDS, &HeaderCase::default(), &site);
    let value = from_site.get("ground_snow").unwrap();
    assert_eq!((value.origin, value.number), (Origin::Site, Some(50.0)));
    let typed_over = Reading::of(HEADER_FIELDS, &typed("ground_snow", "70 psf"), &site);
    assert_eq!(typed_over.get("ground_snow").unwrap().number, Some(70.0));
    // The opening is not the site's.
    let not_kept = Reading::of(HEADER_FIELDS, &HeaderCase::default(), &typed("opening_width", "9'"));
    assert_eq!(not_kept.get("opening_width").unwrap().origin, Origin::Assumed);
}

#[test]
fn a_head_too_high_for_its_wall_is_refused_with_the_most_that_fits() {
    let mut case = typed("wall_height", "8'");
    case.set("head_height", Some("7' 9\"".to_owned()));
    let reading = read(&case);
    let problem = reading.get("head_height").unwrap().problem.as_deref().unwrap();
    // 8' less two plates and a 3-1/2 in deep header.
    assert!(problem.contains("at most 7' 5-1/2\" is taken"), "{problem}");
}

#[test]
fn a_label_half_typed_says_what_is_missing_where_it_is_missing() {
    let reading = read(&typed("label_fb", "2600 psi"));
    let missing: Vec<&str> = reading.problems().map(|(field, _)| field).collect();
    assert!(missing.contains(&"label_depth") && missing.contains(&"label_e") && !missing.contains(&"label_fb"));
}

#[test]
fn a_label_typed_whole_is_tried_and_may_be_chosen() {
    let mut case = HeaderCase::default();
    for (field, text) in [
        ("label_name", "beam A"),
        ("label_breadth", "3-1/2"),
        ("label_depth", "11-1/4"),
        ("label_fb", "2900"),
        ("label_fv", "285"),
        ("label_e", "2000000"),
        ("label_fc_perp", "750"),
        ("label_depth_exponent", "0.111"),
        ("size", "3-1/2x11-1/4 beam A"),
    ] {
        assert!(case.set(field, Some(text.to_owned())));
    }
    let (_, answer) = derive_header(&case, &HeaderCase::default()).answered.unwrap();
    assert_eq!(answer.tried[answer.judged].member.name(), "3-1/2x11-1/4 beam A");
    assert!(answer.tried[answer.judged].works());
}

#[test]
fn labels_are_told_apart() {
    let mut labels: Vec<&str> = HEADER_FIELDS.iter().map(|spec| spec.label).collect();
    labels.sort_unstable();
    let all = labels.len();
    labels.dedup();
    assert_eq!(labels.len(), all);
    assert!(header_field("opening_width").is_some() && header_field("nothing").is_none());
}

/// A step of a number's key writes it with its unit, so the unit is one that is read.
#[test]
fn every_number_is_read_with_its_own_unit() {
    let mut units = Vec::new();
    for spec in site_fields().chain(HEADER_FIELDS) {
        if let Kind::Number { unit, least, .. } = spec.kind {
            let text = format!("{least} {unit}").trim_end().to_owned();
            let fields = BTreeMap::from([(spec.id.to_owned(), text)]);
            let reading = Reading::of([spec], &fields, &framing::site::Nothing);
            assert_eq!(reading.problems().collect::<Vec<_>>(), [], "{}", spec.id);
            units.push(unit);
        }
    }
    assert!(units.len() > 20 && units.contains(&"sq ft"));
}
