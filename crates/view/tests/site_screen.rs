//! What the screen of Site says.

use std::collections::BTreeMap;

use view::model::State;
use view::site::{FIRST, FIRST_QUESTIONS, SiteScreen, Topic, is_first_time, option_picture, screen};

fn fields(of: &[(&str, &str)]) -> BTreeMap<String, String> {
    of.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect()
}

fn shown(of: &[(&str, &str)], topic: Topic) -> SiteScreen {
    screen(&fields(of), topic, None)
}

const HOUSE: [(&str, &str); 9] = [
    ("wind_speed", "140"),
    ("exposure", "D"),
    ("building_length", "40'"),
    ("house_width", "28'"),
    ("eave_height", "10'"),
    ("storeys", "1"),
    ("roof_pitch", "6/12"),
    ("eave_overhang", "0"),
    ("stud_height", "9'"),
];

/// Source: vectors worked by hand from the clauses: 546 lb of net lift a rafter, 13,047 lb of push across the ridge by
/// the envelope procedure; the directional one gives more, and governs. Loads are written rounded up.
#[test]
fn each_topic_answers_with_its_load() {
    let lift = shown(&HOUSE, Topic::Uplift).answer;
    assert_eq!((lift.state, lift.figure.as_str()), (State::Told, "547 lb"));
    let push = shown(&HOUSE, Topic::House);
    let envelope = push.tables.iter().find(|table| table.heading == "Across the ridge, envelope procedure").unwrap();
    assert_eq!(envelope.rows.last().unwrap().values[1], "13,047");
    let parts = shown(&HOUSE, Topic::Parts);
    let studs = parts.tables.iter().find(|table| table.heading == "Studs, 27 sq ft").unwrap();
    // 62.73 psf of suction at strength level, 48.50 of push.
    assert_eq!(studs.rows[0].values, ["+30", "−38"]);
    assert!(studs.rows[0].strong && !studs.rows[1].strong);
    let snow = shown(&[("ground_snow", "40"), ("thermal", "heated"), ("roof_pitch", "6/12")], Topic::Snow);
    assert_eq!(snow.answer.figure, "40.0 psf");
    assert_eq!(shown(&[], Topic::Weights).answer.figure, "15.0 psf");
}

#[test]
fn a_wrong_input_keeps_the_last_good_answer_and_says_so() {
    let good = shown(&HOUSE, Topic::Parts);
    let wrong = screen(&fields(&[("wind_speed", "fast")]), Topic::Parts, Some(&good));
    assert!(!wrong.current && wrong.answer == good.answer);
    let field = wrong.fields.iter().find(|field| field.id == "wind_speed").unwrap();
    assert!(field.problem.is_some());
}

#[test]
fn what_is_outside_is_told_and_nothing_is_made_up() {
    let shed = shown(&[("roof_kind", "shed")], Topic::Uplift);
    assert_eq!(shed.answer.state, State::Outside);
    assert!(shed.answer.action.iter().any(|says| says.contains("engineer")));
    assert!(shed.tables.is_empty());
}

/// A case that cannot be worked leaves no number that looks whole.
#[test]
fn snow_that_is_open_has_no_heaviest() {
    let open =
        shown(&[("load_standard", "asce7_22"), ("simple_rafters", "trusses"), ("ground_snow", "63")], Topic::Snow);
    assert_eq!((open.answer.state, open.answer.figure.as_str()), (State::Outside, "Not worked"));
    assert!(open.answer.action.iter().any(|says| says.contains("engineer")));
}

#[test]
fn pictures_say_what_they_draw() {
    for topic in Topic::ALL {
        for roof in ["gable", "hip", "flat", "shed", "gambrel"] {
            let shown = shown(&[("roof_kind", roof), ("ground_snow", "40")], topic);
            assert!(shown.picture.alt.len() > 30, "{topic:?} {roof}: {}", shown.picture.alt);
            assert!(!shown.picture.marks.is_empty(), "{topic:?} {roof}");
        }
    }
    let zones = shown(&HOUSE, Topic::Parts).picture.alt;
    assert!(zones.contains("zone 3r") && zones.contains("zone 5"), "{zones}");
    assert!(option_picture("exposure", "D", "open water").is_some() && option_picture("storeys", "1", "1").is_none());
}

/// Every input stands in a group that the page shows.
#[test]
fn no_input_is_left_without_a_group() {
    use view::model::Group::{Glass, Ground, House, Parts, Place, RoofSnow, Upwind, Weights, Wing};
    let groups = [Place, Upwind, Ground, House, Wing, Glass, RoofSnow, Weights, Parts];
    for field in shown(&[], Topic::Parts).fields.iter() {
        assert!(groups.contains(&field.group), "{}: {:?}", field.id, field.group);
    }
}

#[test]
fn the_first_questions_are_inputs_and_asked_until_one_is_answered() {
    let inputs = shown(&[], Topic::Parts).fields;
    for id in FIRST_QUESTIONS.into_iter().chain(Topic::ALL.map(Topic::first)).chain([FIRST]) {
        assert!(inputs.iter().any(|field| field.id == id), "{id}");
    }
    assert!(is_first_time(&fields(&[("floor_dead", "12")])));
    assert!(!is_first_time(&fields(&[("ground_snow", "30")])));
}

/// Every number of the answer has its steps, each with where it comes from.
#[test]
fn the_working_names_its_clauses() {
    for topic in Topic::ALL {
        let working = shown(&HOUSE, topic).working;
        assert!(!working.is_empty(), "{topic:?}");
        for step in working.iter().flat_map(|part| &part.steps) {
            assert!(!step.source.is_empty() && !step.meaning.is_empty(), "{step:?}");
        }
    }
    let wind = shown(&HOUSE, Topic::Parts).working;
    let sources: Vec<&str> = wind.iter().flat_map(|part| &part.steps).map(|step| step.source.as_str()).collect();
    for clause in ["Eq. 26.10-1", "Fig. 28.3-1", "Fig. 27.3-1", "Fig. 30.3-1", "30.3-2A"] {
        assert!(sources.iter().any(|source| source.contains(clause)), "{clause}");
    }
}
