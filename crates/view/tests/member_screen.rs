//! What the screen of a member says.

mod common;

use std::collections::BTreeMap;

use common::numbers;
use framing::member::MemberKind;
use framing::quick::QuickKind as _;
use view::markup;
use view::member::MemberScreen;
use view::model::{Group, State};
use view::quick::{SIZE, kind, kind_key, own_key, screen, write};

type Fields = BTreeMap<String, String>;

fn typed(kind: MemberKind, of: &[(&'static str, &str)]) -> Fields {
    let mut fields = Fields::new();
    for (field, text) in of {
        write(&mut fields, kind, field, Some((*text).to_owned()), "9:00");
    }
    fields
}

fn shown(kind: MemberKind, of: &[(&'static str, &str)]) -> MemberScreen {
    screen(kind, &typed(kind, of), None)
}

/// What each kind is asked besides nothing, so that every picture and every panel is seen.
const CASES: [(MemberKind, &[(&str, &str)]); 22] = [
    (MemberKind::Joist, &[]),
    (MemberKind::Joist, &[("second_span", "10'"), ("cantilever", "2'"), ("wall_dead", "300"), ("wall_snow", "250")]),
    (
        MemberKind::Joist,
        &[("joist_of", "ceiling"), ("cut_kind", "hole"), ("cut_depth", "2"), ("cut_at", "4'"), ("cut_to_edge", "3")],
    ),
    (MemberKind::Joist, &[("found_spacing", "17"), ("joist_span", "15'")]),
    (MemberKind::Beam, &[]),
    (
        MemberKind::Beam,
        &[("beam_spans", "12', 10', 8'"), ("left_overhang", "2'"), ("more_loads", "L 2000 lb at 6'; S 0 to 300 plf")],
    ),
    (MemberKind::Beam, &[("set", "flush"), ("roof_strip", "10'"), ("beam_spans", "9'")]),
    (MemberKind::Rafter, &[]),
    (MemberKind::Rafter, &[("ties", "raised"), ("tie_height", "2'"), ("roof_pitch", "8/12"), ("blocked_every", "4'")]),
    (MemberKind::Rafter, &[("ties", "ridge"), ("purlin_at", "7'"), ("eave_overhang", "0")]),
    (MemberKind::Ridge, &[]),
    (MemberKind::Ridge, &[("ridge_spans", "12', 14'"), ("right_run", "8'")]),
    (MemberKind::HipValley, &[]),
    (MemberKind::HipValley, &[("corner", "valley"), ("other_pitch", "9/12"), ("mid_post", "6'")]),
    (MemberKind::Stud, &[]),
    (
        MemberKind::Stud,
        &[("king_opening", "6'"), ("cut_kind", "notch"), ("cut_depth", "3/4"), ("under_gable", "platform")],
    ),
    (MemberKind::Stud, &[("stud_wall", "inner"), ("stud_carries", "nothing")]),
    (MemberKind::Post, &[]),
    (MemberKind::Post, &[("drawn_size", "6x6"), ("post_ends", "metal")]),
    (MemberKind::Notch, &[]),
    (MemberKind::Notch, &[("notch_of", "stud"), ("cut_kind", "hole"), ("cut_depth", "1"), ("cut_size", "2x6")]),
    (MemberKind::SpanTable, &[("span_table", "rafter_50"), ("grade", "No. 3")]),
];

#[test]
fn every_kind_answers_draws_and_says_what_it_draws() {
    for (kind, of) in CASES {
        let shown = shown(kind, of);
        let what = format!("{} {of:?}", kind.id());
        assert!(
            shown.current,
            "{what}: {:?}",
            shown.fields.iter().filter_map(|field| field.problem.clone()).collect::<Vec<_>>()
        );
        assert!(!shown.answer.figure.is_empty() && !shown.answer.word.is_empty(), "{what}");
        assert!(shown.picture.alt.len() > 30 && shown.picture.marks.len() > 3, "{what}: {}", shown.picture.alt);
        assert!(shown.picture.marks.iter().flat_map(numbers).all(f64::is_finite), "{what}");
        assert!(shown.cautions.len() >= 2 && (!shown.assumptions.is_empty() || of.len() >= 4), "{what}");
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
    use Group::{AsBuilt, Bears, Carries, Cut, Label, Lies, Limits, Place, Shape, Sheet, Wood};
    let groups = [Shape, Carries, Bears, Lies, Wood, Place, Cut, AsBuilt, Limits, Label, Sheet];
    for (kind, of) in CASES {
        for field in shown(kind, of).fields.iter() {
            assert!(groups.contains(&field.group), "{} {}: {:?}", kind.id(), field.id, field.group);
        }
    }
}

#[test]
fn a_wrong_input_keeps_the_last_good_answer_and_says_so() {
    let good = shown(MemberKind::Joist, &[("joist_span", "12'")]);
    let wrong = screen(MemberKind::Joist, &typed(MemberKind::Joist, &[("joist_span", "400'")]), Some(&good));
    assert!(!wrong.current && wrong.answer == good.answer);
    assert!(wrong.fields.iter().any(|field| field.id == "joist_span" && field.problem.is_some()));
    // Another kind's answer is no answer to this one.
    let other = screen(MemberKind::Beam, &typed(MemberKind::Beam, &[("beam_spans", "far")]), Some(&good));
    assert_eq!((other.current, other.answer.state), (false, State::NotKnown));
}

#[test]
fn each_kind_keeps_its_own_and_the_job_what_is_the_job_s() {
    let mut fields = typed(MemberKind::Joist, &[("bearing_length", "3"), ("species", "SP")]);
    assert_eq!(own_key(MemberKind::Joist, "bearing_length"), "member/joist/bearing_length");
    assert_eq!(own_key(MemberKind::Joist, "species"), "species");
    assert!(fields.contains_key("member/joist/bearing_length") && fields.contains_key("species"));
    let beam = screen(MemberKind::Beam, &fields, None);
    assert!(beam.fields.iter().any(|field| field.id == "species" && field.text == "SP"));
    write(&mut fields, MemberKind::Joist, "bearing_length", None, "9:01");
    assert!(!fields.contains_key("member/joist/bearing_length"));
    fields.insert(kind_key::<MemberKind>(), "rafter".to_owned());
    assert_eq!(kind::<MemberKind>(&fields), MemberKind::Rafter);
    fields.insert(kind_key::<MemberKind>(), "nothing known".to_owned());
    assert_eq!(kind::<MemberKind>(&fields), MemberKind::Joist);
}

/// A size that is asked for is judged; the list says which is the smallest.
#[test]
fn a_size_is_judged_and_the_smallest_is_marked() {
    let asked = shown(MemberKind::Joist, &[("joist_span", "15'"), (SIZE, "2x12")]);
    assert!(asked.asked && asked.answer.figure == "2x12" && asked.answer.state == State::Carries);
    let sizes: Vec<_> = asked.families.iter().flat_map(|family| &family.sizes).collect();
    assert_eq!(sizes.iter().filter(|size| size.chosen).count(), 1);
    assert!(sizes.iter().any(|size| size.smallest && size.name == "2x10"));
    assert!(sizes.iter().any(|size| size.state == State::Short));
}

/// What the code does not allow is not shown as carrying, whatever the wood carries.
#[test]
fn what_the_code_forbids_is_told_as_such() {
    let deep =
        [("cut_kind", "notch"), ("cut_depth", "2"), ("cut_at", "4'"), ("cut_length", "2"), ("joist_span", "10'")];
    let cut = shown(MemberKind::Notch, &deep);
    assert_eq!((cut.answer.state, cut.answer.word.as_str()), (State::Short, "not allowed by the code"));
    assert!(cut.panels.iter().any(|panel| panel.state == State::Short));
}
