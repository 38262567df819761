//! What a record must hold.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use inspection::mark::{MarkRequirements, NailingRequired, Point};
use inspection::record::{
    ChainError, Closing, CodeSections, Event, Evidence, Heading, Item, ItemLack, Lack, Observer, Open, Paper, Record,
    Remeasured, SignError, SignOff, Stage, View,
};
use inspection::{Check, Finding, Origin, Remedy, Required, Seen, Subject, Verdict, Who};
use measure::Length;

fn heading() -> Heading {
    Heading {
        project: "House on lot 7".into(),
        address: "Lot 7".into(),
        permit: "B-12".into(),
        date: "3 May".into(),
        start: "8:10".into(),
        end: "9:45".into(),
        weather: "dry, 60 °F".into(),
        observer: Observer { name: "A. Reader".into(), title: "engineer".into(), licence: Some("12345".into()) },
        papers: vec![Paper { sheet: "S2.1".into(), revision: Some("2".into()), approved: Some(true) }],
        codes: vec![CodeSections { edition: "IRC 2021".into(), sections: vec!["R602.10".into()] }],
        components: vec!["shear walls".into()],
        not_visible: Some(Vec::new()),
    }
}

fn embedment(found: f64) -> Finding {
    let (found, limit) = (Length::from_inches(found), Length::from_inches(7.0));
    let check = Check::at_least(Subject::Embedment, found, limit, Origin::Typed);
    Finding { checks: vec![check], ..Finding::default() }
}

fn look(value: Seen<Finding>) -> Remeasured<Seen<Finding>> {
    Remeasured { value, by: "A. Reader".into(), when: "3 May".into(), why: "visit".into() }
}

fn photo() -> Evidence {
    Evidence { name: "p-001".into(), view: View::Outside, scale_in_view: true }
}

fn sign_off() -> SignOff {
    SignOff { name: "A. Reader".into(), date: "4 May".into(), sealed: true, closing: Closing::IsInConformance }
}

fn record() -> Record {
    let mut record = Record::default();
    record.set_heading(heading()).unwrap();
    let item = record.add_item(Item::new("level 1, wall B, bolt 3", "embedment 7 in", Origin::Typed)).unwrap();
    assert_eq!(item, 0);
    record
}

/// Source: field case FC-59: project, address, permit; date, start and end, weather; observer; plans with revision and
/// approval; code and sections; components; what was not visible.
#[test]
fn the_head_lacks_what_nobody_wrote() {
    assert_eq!(heading().lacks(), []);
    let empty = Heading::default().lacks();
    for lack in [Lack::Address, Lack::Permit, Lack::Times, Lack::Weather, Lack::Observer, Lack::Papers, Lack::Codes] {
        assert!(empty.contains(&lack), "{lack:?}");
    }
    assert!(Heading { not_visible: None, ..heading() }.lacks() == [Lack::NotVisible]);
    let unknown = Paper { approved: None, ..heading().papers[0].clone() };
    assert_eq!(Heading { papers: vec![unknown], ..heading() }.lacks(), [Lack::PaperState]);
    let no_sections = CodeSections { edition: "IRC 2021".into(), sections: Vec::new() };
    assert_eq!(Heading { codes: vec![no_sections], ..heading() }.lacks(), [Lack::Codes]);
}

/// Source: field case FC-59: each item is observed, not observed or could not be seen; no automatic approval.
#[test]
fn nothing_is_signed_by_assumption() {
    let mut record = record();
    assert_eq!(record.open(), [Open::Item(0, ItemLack::NotObserved)]);
    assert!(matches!(record.sign(sign_off()), Err(SignError::Lacks(_))));
    record.look(0, look(Seen::Observed(embedment(7.5))), []).unwrap();
    assert_eq!(record.open(), [Open::Item(0, ItemLack::PhotoWithScale)]);
    record.look(0, look(Seen::CouldNotBeSeen), []).unwrap();
    assert_eq!(record.items()[0].verdict(), Verdict::NotSeen);
    assert_eq!(record.signed(), None);
    record.sign(sign_off()).unwrap();
    assert_eq!(record.signed().unwrap().closing, Closing::IsInConformance);
    assert_eq!(record.sign(sign_off()), Err(SignError::AlreadySigned));
    assert_eq!(record.look(0, look(Seen::NotObserved), []), Err(SignError::AlreadySigned));
}

/// Source: field case FC-23: nails need a photo from inside and one from outside.
#[test]
fn nails_are_photographed_from_both_faces() {
    let mut record = Record::default();
    record.set_heading(heading()).unwrap();
    record.add_item(Item::new("wall B, panel 2", "6 in at edges", Origin::Typed).from_both_faces()).unwrap();
    record.look(0, look(Seen::Observed(embedment(8.0))), [photo()]).unwrap();
    assert_eq!(record.open(), [Open::Item(0, ItemLack::PhotoOfBothFaces)]);
    let inside = Evidence { name: "p-002".into(), view: View::Inside, scale_in_view: false };
    record.look(0, look(Seen::Observed(embedment(8.0))), [inside]).unwrap();
    assert_eq!(record.open(), []);
}

/// Source: field case FC-59 and the needs of a record: entries are added, not erased.
#[test]
fn the_first_measurement_is_kept() {
    let mut record = record();
    record.look(0, look(Seen::Observed(embedment(6.0))), [photo()]).unwrap();
    record.look(0, look(Seen::Observed(embedment(7.25))), [photo()]).unwrap();
    let item = &record.items()[0];
    assert_eq!(item.verdict(), Verdict::Within);
    assert_eq!(item.first_found(), Some(&embedment(6.0)));
    assert_eq!(item.looks().later().len(), 2);
    assert_eq!(item.evidence().len(), 2);
    // It was out once: what became of that is still to be said.
    assert_eq!(record.open(), [Open::Deficiency(0)]);
}

fn action(agreed: Vec<(Who, String)>) -> Event {
    Event::Action { remedy: Remedy::DrilledAnchor, agreed, recheck_on: "10 May".into() }
}

fn recheck(verdict: Verdict, evidence: Vec<Evidence>) -> Event {
    Event::Rechecked { verdict, evidence, by: "A. Reader".into(), when: "10 May".into() }
}

fn done() -> Event {
    Event::Done { by: "crew".into(), when: "9 May".into() }
}

/// Source: field case FC-59: deficiency, action, re-check, sign-off.
#[test]
fn a_deficiency_runs_its_chain() {
    let mut record = record();
    record.look(0, look(Seen::Observed(embedment(6.0))), [photo()]).unwrap();
    let both = vec![(Who::Engineer, "A. Reader".to_owned()), (Who::CodeOfficial, "B. Clerk".to_owned())];
    let alone = action(vec![(Who::Engineer, "A. Reader".to_owned())]);
    assert_eq!(record.follow_up(0, done()), Err(ChainError::NotYet { stage: Stage::Found }));
    assert_eq!(record.follow_up(0, alone), Err(ChainError::NotAgreedBy(Who::CodeOfficial)));
    record.follow_up(0, action(both.clone())).unwrap();
    record.follow_up(0, done()).unwrap();
    assert_eq!(record.follow_up(0, recheck(Verdict::Within, Vec::new())), Err(ChainError::NoEvidence));
    record.follow_up(0, recheck(Verdict::Out, vec![photo()])).unwrap();
    assert_eq!(record.deficiencies()[0].stage(), Stage::Found);
    record.follow_up(0, action(both)).unwrap();
    record.follow_up(0, done()).unwrap();
    let signed = || Event::Signed { by: "A. Reader".into(), when: "12 May".into() };
    assert_eq!(record.follow_up(0, signed()), Err(ChainError::NotYet { stage: Stage::Done }));
    record.follow_up(0, recheck(Verdict::Within, vec![photo()])).unwrap();
    record.follow_up(0, signed()).unwrap();
    assert_eq!((record.open(), record.deficiencies()[0].events().len()), (Vec::new(), 7));
}

/// What could not be seen again does not close a deficiency.
#[test]
fn a_hidden_repair_is_not_right() {
    let mut record = record();
    record.look(0, look(Seen::Observed(embedment(6.0))), [photo()]).unwrap();
    let both = vec![(Who::Engineer, "A".to_owned()), (Who::CodeOfficial, "B".to_owned())];
    for event in [action(both), done(), recheck(Verdict::NotSeen, vec![photo()])] {
        record.follow_up(0, event).unwrap();
    }
    assert_eq!(record.deficiencies()[0].stage(), Stage::Found);
}

#[test]
fn errors_say_what_to_do_next() {
    let chain =
        [ChainError::NotYet { stage: Stage::Agreed }, ChainError::NotAgreedBy(Who::Engineer), ChainError::NoEvidence];
    for error in chain {
        assert!(error.to_string().ends_with('.') && error.to_string().contains(' '), "{error}");
    }
    assert!(SignError::Lacks(vec![Open::Deficiency(0)]).to_string().contains("1 entries"));
    let mut record = record();
    assert_eq!(record.follow_up(3, done()), Err(ChainError::NoSuchDeficiency(3)));
    assert_eq!(record.look(9, look(Seen::NotObserved), []), Err(SignError::NoSuchItem(9)));
}

#[test]
fn requirements_become_points() {
    let bare = MarkRequirements::default();
    assert_eq!(bare.points(), [Point::CutStuds, Point::CutPlates, Point::Moisture]);
    let six = || Some(Required::new(Length::from_inches(6.0), Origin::Typed));
    let nailed = MarkRequirements {
        stud_spacing: Some(Required::new(Length::from_inches(16.0), Origin::Typed)),
        nailing: NailingRequired {
            edge: six(),
            field: six(),
            blocked: Some(Required::new(false, Origin::Typed)),
            ..NailingRequired::default()
        },
        ..bare
    };
    let points = nailed.points();
    assert!(points.contains(&Point::StudSpacing) && points.contains(&Point::EdgeNails));
    assert!(points.contains(&Point::NailDepth) && !points.contains(&Point::Blocking));
}
