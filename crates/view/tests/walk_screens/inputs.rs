//! The inputs, readings and questions of a look's screen.

use proptest::prelude::*;
use view::model::{Field, Origin, State};
use view::walk::{InHand, Kind, LookScreen, Typed, look};

use crate::{Lists, Texts, shown, typed};

fn field<'a>(screen: &'a LookScreen, id: &str) -> &'a Field {
    screen.fields.iter().find(|field| field.id == id).unwrap()
}

fn has(screen: &LookScreen, id: &str) -> bool {
    screen.fields.iter().any(|field| field.id == id)
}

fn in_hand(texts: Texts<'_>, lists: Lists<'_>, reading: usize, before: Option<&LookScreen>) -> LookScreen {
    look(Kind::StudSpacing, &typed(texts, lists), InHand { field: "pulls", reading }, before)
}

#[test]
fn what_is_assumed_is_shown_as_assumed() {
    let screen = shown(Kind::StudSpacing, &[], &[]);
    for (id, shown, number) in [("required_spacing", "16\"", Some(16.0)), ("studs", "2x4", None)] {
        let field = field(&screen, id);
        assert_eq!((field.origin, field.shown.as_str(), field.number), (Origin::Assumed, shown, number), "{id}");
        assert_eq!((field.text.as_str(), field.echo.as_str()), ("", ""));
        assert!(screen.assumptions.iter().any(|(of, _)| *of == Some(id)), "{id}");
    }
    assert_eq!(field(&screen, "plate_length").origin, Origin::Unknown);
}

#[test]
fn only_inputs_that_matter_are_asked() {
    let running = shown(Kind::StudSpacing, &[], &[]);
    assert!(has(&running, "pulled_to") && !has(&running, "first_pull"));
    let between = shown(Kind::StudSpacing, &[("pulled", "centre_to_centre"), ("sheathed", "no")], &[]);
    assert!(!has(&between, "pulled_to") && has(&between, "first_pull") && !has(&between, "sheet_length"));
    let bolts = shown(Kind::HoldDownPoint, &[], &[]);
    assert!(has(&bolts, "bolts") && !has(&bolts, "thread"));
    let hold_down = shown(Kind::HoldDownPoint, &[("looking_at", "hold_down")], &[]);
    assert!(!has(&hold_down, "bolts") && has(&hold_down, "thread") && has(&hold_down, "nuts"));
    let tie = shown(Kind::HoldDownPoint, &[("looking_at", "roof_tie")], &[]);
    assert!(has(&tie, "tie_side") && has(&tie, "required_uplift") && has(&tie, "fasteners"));
    assert!(!has(&tie, "nuts") && !has(&tie, "lies_flat") && !has(&tie, "studs"));
    let toed = shown(Kind::HoldDownPoint, &[("looking_at", "roof_tie"), ("held_by", "toe_nails")], &[]);
    assert!(!has(&toed, "tie_side") && !has(&toed, "listed_uplift") && has(&toed, "required_uplift"));
    let strap = shown(Kind::HoldDownPoint, &[("looking_at", "strap")], &[]);
    assert!(has(&strap, "lies_flat") && has(&strap, "listed_uplift") && !has(&strap, "tie_spacing"));
    let stud = shown(Kind::NotchFound, &[], &[]);
    assert!(!has(&stud, "tie") && !has(&stud, "bored_in_a_row"));
    let plate = shown(Kind::NotchFound, &[("member", "top_plate"), ("tie", "yes")], &[]);
    assert!(has(&plate, "tie_width") && !has(&plate, "doubled"));
    // What was typed never goes out of sight.
    let kept = shown(Kind::HoldDownPoint, &[("looking_at", "hold_down")], &[("bolts", &["6"])]);
    assert_eq!(field(&kept, "bolts").text, "6");
}

#[test]
fn a_list_shows_the_reading_in_hand() {
    let pulls: &[&str] = &["16", "2' 9\""];
    let screen = in_hand(&[], &[("pulls", pulls)], 1, None);
    let pull = field(&screen, "pulls");
    assert_eq!((pull.text.as_str(), pull.shown.as_str(), pull.number), ("2' 9\"", "33\"", Some(33.0)));
    assert!(pull.echo.contains("2' 9\""), "{}", pull.echo);
    let list = &screen.readings[0];
    assert_eq!(list.readings.iter().map(|one| one.in_hand).collect::<Vec<_>>(), [false, true]);
    assert_eq!(list.readings[1].understood, "33\"");
    let new = in_hand(&[], &[("pulls", pulls)], 2, None);
    let pull = field(&new, "pulls");
    assert_eq!((pull.text.as_str(), pull.origin, pull.problem.as_deref()), ("", Origin::Unknown, None));
    assert_eq!(new.offered.as_deref(), Some("48\""));
}

#[test]
fn a_new_reading_is_offered_where_it_stands_on_its_mark() {
    let wall = typed(&[("required_spacing", "16")], &[("pulls", &["16", "32-1/8"])]);
    let offered = |field, wall: &Typed| look(Kind::StudSpacing, wall, InHand { field, reading: 2 }, None);
    let screen = offered("pulls", &wall);
    assert_eq!(screen.offered.as_deref(), Some("48\""));
    assert_eq!(field(&screen, "pulls").number, Some(48.0), "the tape lies where the reading is offered");
    assert_eq!(offered("pulls", &Typed::default()).offered.as_deref(), Some("16\""));
    // A pull is no reading of another list.
    let other = offered("doubles", &wall);
    assert_eq!((other.offered.as_deref(), field(&other, "doubles").number), (None, None));
}

/// A swapped digit is asked about where it happened, kept as typed, and may be confirmed.
#[test]
fn a_pull_that_looks_wrong_is_asked_about_where_it_happened() {
    let pulls: &[&str] = &["16", "17", "32", "48"];
    let asked = in_hand(&[("required_spacing", "16")], &[("pulls", pulls)], 3, None);
    let reading = &asked.readings[0].readings[1];
    assert_eq!((reading.typed.as_str(), reading.state), ("17", State::NotKnown));
    assert!(reading.question.as_deref().unwrap().starts_with("Pull 2 reads 17"), "{reading:?}");
    assert!(reading.can_be_confirmed && !reading.confirmed);
    assert_eq!(asked.questions.iter().find(|(_, which, _)| which.is_some()).unwrap().1, Some(1));
    let confirmed = in_hand(&[("required_spacing", "16")], &[("pulls", pulls), ("confirmed", &["2: 17"])], 3, None);
    let reading = &confirmed.readings[0].readings[1];
    assert!(reading.question.is_none() && reading.confirmed, "{reading:?}");
    // It was confirmed as it read then.
    let again = in_hand(&[("required_spacing", "16")], &[("pulls", pulls), ("confirmed", &["2: 71"])], 3, None);
    assert!(!again.readings[0].readings[1].confirmed && again.readings[0].readings[1].question.is_some());
    let swapped = in_hand(&[("required_spacing", "16")], &[("pulls", &["16", "32", "84", "64"])], 0, None);
    let reading = &swapped.readings[0].readings[2];
    assert_eq!(reading.perhaps[0], "48\", if two digits changed places");
    assert_eq!(reading.typed, "84");
}

#[test]
fn a_refused_reading_keeps_the_last_good_answer() {
    let texts = [("required_spacing", "16"), ("pulled", "from_the_end")];
    let good = in_hand(&texts, &[("pulls", &["16", "33"])], 1, None);
    let wrong = in_hand(&texts, &[("pulls", &["16", "33", "400'", "66"])], 2, Some(&good));
    assert!(!wrong.current);
    assert_eq!((&wrong.answer, &wrong.picture, &wrong.checks), (&good.answer, &good.picture, &good.checks));
    let pull = field(&wrong, "pulls");
    assert_eq!(pull.text, "400'");
    assert!(pull.problem.as_deref().unwrap().starts_with("Pull"), "{:?}", pull.problem);
    let reading = &wrong.readings[0].readings[2];
    assert_eq!((reading.state, reading.can_be_confirmed), (State::Short, false));
    assert_eq!(wrong.readings[0].readings[1].question, None);
    assert_eq!(wrong.questions[0].1, Some(2));
    // What would be stored says that nothing was judged.
    assert_eq!(wrong.verdict, "could not be seen");
    assert!(wrong.summary.starts_with("Not judged."), "{}", wrong.summary);
    // The other inputs are still read, and what is assumed is still said.
    assert_eq!(field(&wrong, "required_spacing").number, Some(16.0));
    assert_eq!(field(&wrong, "studs").origin, Origin::Assumed);
    assert!(!wrong.questions.iter().skip(1).any(|(input, _, _)| *input == "pulls"), "{:?}", wrong.questions);
    let never = in_hand(&[], &[("pulls", &["hay"])], 0, None);
    assert_eq!((never.answer.state, never.current), (State::NotKnown, false));
}

/// One bolt after another: readings that are not there yet are asked about, and nothing is refused on the way.
#[test]
fn bolts_are_typed_one_after_the_other() {
    let bolts: &[&str] = &["6", "48", "90"];
    let runs = [&["tight"][..], &["tight", "loose"], &["tight", "", "tight"], &["tight", "tight", "tight"], &["", ""]];
    for nuts in runs {
        let screen = shown(Kind::HoldDownPoint, &[("plate_length", "8'")], &[("bolts", bolts), ("nuts", nuts)]);
        assert!(screen.current, "{nuts:?}: {:?}", screen.questions);
        let looked_at = nuts.iter().filter(|nut| !nut.is_empty()).count();
        let asked = screen.questions.iter().any(|(input, _, _)| *input == "nuts");
        assert_eq!(asked, looked_at < bolts.len(), "{nuts:?}");
    }
}

/// Names that a kind does not have are passed over and never lost.
#[test]
fn unknown_names_are_passed_over() {
    let texts: Texts<'_> = &[("required_spacing", "16"), ("of_a_later_version", "9")];
    let screen = shown(Kind::StudSpacing, texts, &[("pulls", &["16"]), ("also_later", &["x"])]);
    assert_eq!(screen, shown(Kind::StudSpacing, &texts[..1], &[("pulls", &["16"])]));
}

fn any_typed() -> impl Strategy<Value = (Kind, Typed)> {
    let text = prop_oneof![
        "[0-9]{1,3}( [0-9]/[0-9]{1,2})?('|\"| mm)?",
        any::<String>(),
        prop::sample::select(vec![
            "yes",
            "could not be seen",
            "hold_down",
            "roof_tie",
            "strap",
            "14",
            "top_plate",
            "faces",
            "2x6",
            "-",
            ""
        ])
        .prop_map(str::to_owned),
    ];
    let kind = prop::sample::select(Kind::ALL.to_vec());
    let names = |kind: Kind| shown(kind, &[], &[]).fields.iter().map(|field| field.id).collect::<Vec<_>>();
    kind.prop_flat_map(move |kind| {
        let of =
            prop::collection::vec((prop::sample::select(names(kind)), prop::collection::vec(text.clone(), 1..5)), 0..6);
        of.prop_map(move |inputs| {
            let mut typed = Typed::default();
            for (id, texts) in inputs {
                match kind.is_list(id) {
                    true => typed.lists.insert(id.to_owned(), texts).map(drop),
                    false => typed.texts.insert(id.to_owned(), texts[0].clone()).map(drop),
                };
            }
            (kind, typed)
        })
    })
}

proptest! {
    /// Whatever was typed: it stands in its field as it was typed, and what is wrong is said there.
    #[test]
    fn any_look_is_shown((kind, typed) in any_typed(), reading in 0_usize..6) {
        let field = if kind.is_list("pulls") { "pulls" } else { "" };
        let screen = look(kind, &typed, InHand { field, reading }, None);
        for (id, text) in &typed.texts {
            let shown = screen.fields.iter().find(|field| field.id == id);
            prop_assert!(text.trim().is_empty() || shown.is_some_and(|field| field.text == text.trim()), "{} {}", id, text);
        }
        if !screen.current {
            prop_assert!(!screen.questions.is_empty());
            prop_assert_eq!(screen.verdict.as_str(), "could not be seen");
        }
        crate::is_inside(&screen.picture).map_err(TestCaseError::fail)?;
    }
}
