//! Anchor bolts and hold-downs.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use inspection::anchor::{
    AnchorBolt, DrilledAnchor, DrilledAnchorLacks, HoldDown, HoldDownRequired, Nut, PlateWasher, Sill, SillRequired,
    Thread, Washer, judge_hold_down, judge_sill, middle_third_of, thread_needed,
};
use inspection::{Drawing, Finding, Origin, Question, Remedy, Required, Seen, Subject, Verdict, Who};
use measure::Length;
use standards::irc_2021::r602_11;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

const GOOD_BOLT: AnchorBolt = AnchorBolt {
    at: Length::from_inches(6.0),
    diameter: Length::from_inches(0.5),
    embedment: Seen::Observed(Length::from_inches(7.25)),
    projection: Seen::Observed(Length::from_inches(2.5)),
    nut: Seen::Observed(Nut::Tight),
    washer: Seen::Observed(Washer::Cut),
    from_face: Seen::Observed(Length::from_inches(1.75)),
    stud_in_the_way: false,
};

fn at(place: f64) -> AnchorBolt {
    AnchorBolt { at: inches(place), ..GOOD_BOLT }
}

fn sill(length: f64, bolts: Vec<AnchorBolt>) -> Sill {
    Sill { length: inches(length), width: inches(3.5), plates: inches(1.5), required: SillRequired::by_code(), bolts }
}

fn one(bolt: AnchorBolt) -> Finding {
    judge_sill(&sill(96.0, vec![bolt, at(90.0)])).bolts[0].clone()
}

fn margin(finding: &Finding, of: Subject) -> f64 {
    finding.check(of).unwrap().margin.length().unwrap().inches()
}

/// Source: field case FC-33: 8 in bolts, 6 in deep, 2 in up: embedment short by 1 in; engagement short by 0.05 in with
/// one plate, by 1.55 in with two; 2.17 in needed with a plate washer of 0.229 in.
#[test]
fn short_bolts_through_two_sills() {
    let short = AnchorBolt {
        embedment: Seen::Observed(inches(6.0)),
        projection: Seen::Observed(inches(2.0)),
        nut: Seen::Observed(Nut::Missing),
        ..GOOD_BOLT
    };
    let single = one(short);
    assert_eq!(margin(&single, Subject::Embedment), -1.0);
    assert!((margin(&single, Subject::ThreadForNut) + 0.05).abs() <= 0.03);
    assert_eq!(single.check(Subject::ThreadForNut).unwrap().verdict, Verdict::Out);
    let two = Sill { plates: inches(3.0), ..sill(96.0, vec![short, at(90.0)]) };
    assert!((margin(&judge_sill(&two).bolts[0], Subject::ThreadForNut) + 1.55).abs() <= 0.03);
    let plate = Washer::Plate { side: inches(3.0), thickness: inches(0.229) };
    let needed = thread_needed(inches(0.5), inches(1.5), plate).unwrap().inches();
    assert!((needed - 2.17).abs() <= 0.005, "{needed}");
    let who = |remedy: Remedy| single.remedies.iter().find(|one| **one == remedy).unwrap().who();
    assert_eq!(who(Remedy::ApproveAsIs), [Who::Engineer, Who::CodeOfficial]);
    assert_eq!(who(Remedy::CouplerAndRod), [Who::CodeOfficial]);
}

/// Source: field case FC-35: middle third 1-3/16 to 2-5/16 in of a 2x4 and 1-13/16 to 3-11/16 in of a 2x6, printed to the
/// nearest sixteenth, which is half a sixteenth of tolerance.
#[test]
fn the_middle_third() {
    for (width, from, to) in [(3.5, 1.1875, 2.3125), (5.5, 1.8125, 3.6875)] {
        let (exact_from, exact_to) = middle_third_of(inches(width));
        assert!((exact_from.inches() - from).abs() <= 1.0 / 32.0 && (exact_to.inches() - to).abs() <= 1.0 / 32.0);
    }
    let across = |from_face| one(AnchorBolt { from_face: Seen::Observed(inches(from_face)), ..GOOD_BOLT });
    assert_eq!(across(1.1875).verdict(), Verdict::Within);
    assert!(across(1.125).is_out(Subject::BoltAcrossPlate));
    assert_eq!(across(2.3125).verdict(), Verdict::Within);
    assert!(across(2.375).is_out(Subject::BoltAcrossPlate));
}

/// Source: field case FC-35: a bolt without its nut does not count; at least two a piece, one within 12 in of each end
/// and none nearer than 3-1/2 in.
#[test]
fn only_bolts_with_nuts_count() {
    let no_nut = AnchorBolt { nut: Seen::Observed(Nut::Missing), stud_in_the_way: true, ..at(48.0) };
    let answer = judge_sill(&sill(96.0, vec![at(6.0), no_nut, at(90.0)]));
    assert_eq!((answer.hold, answer.untold), (2, 0));
    assert!(answer.piece.is_out(Subject::BoltSpacing), "84 in without the one in the middle");
    assert!(answer.piece.remedies.contains(&Remedy::AddBoltAt(inches(48.0))));
    let middle = &answer.bolts[1];
    assert!(middle.is_out(Subject::Nut));
    assert_eq!(middle.remedies[..3], [Remedy::MoveStud, Remedy::SlottedPlateWasher, Remedy::AnchorBeside]);
    let all = judge_sill(&sill(96.0, vec![at(6.0), at(48.0), at(90.0)]));
    assert_eq!(all.verdict(), Verdict::Within);
    let loose = AnchorBolt { nut: Seen::Observed(Nut::Loose), ..at(48.0) };
    let answer = judge_sill(&sill(96.0, vec![at(6.0), loose, at(90.0)]));
    assert_eq!((answer.hold, answer.bolts[1].remedies.as_slice()), (2, &[Remedy::TightenNut][..]));
    let bare = AnchorBolt { washer: Seen::Observed(Washer::None), ..at(48.0) };
    assert_eq!(judge_sill(&sill(96.0, vec![at(6.0), bare, at(90.0)])).hold, 2);
}

#[test]
fn a_nut_that_was_not_seen_is_not_counted_and_not_missed() {
    let hidden = AnchorBolt { nut: Seen::CouldNotBeSeen, ..at(48.0) };
    let answer = judge_sill(&sill(96.0, vec![at(6.0), hidden, at(90.0)]));
    assert_eq!((answer.hold, answer.untold), (2, 1));
    assert!(answer.piece.not_seen.contains(&Subject::BoltSpacing));
    assert_eq!((answer.verdict(), answer.piece.remedies.as_slice()), (Verdict::NotSeen, &[][..]));
    // One bolt, unseen and too near the end: out either way.
    let near = AnchorBolt { nut: Seen::CouldNotBeSeen, ..at(0.0) };
    assert_eq!(judge_sill(&sill(12.0625, vec![near])).piece.verdict(), Verdict::Out);
    let asked = judge_sill(&sill(96.0, vec![at(6.0), AnchorBolt { nut: Seen::NotObserved, ..at(48.0) }, at(90.0)]));
    assert!(asked.bolts[1].questions.contains(&Question::Nut));
}

#[test]
fn ends_of_a_piece() {
    let ends = |first, last| judge_sill(&sill(72.0, vec![at(first), at(last)])).piece;
    assert_eq!(ends(12.0, 60.0).verdict(), Verdict::AtLimit);
    assert_eq!(ends(6.0, 66.0).verdict(), Verdict::Within);
    let far = ends(13.0, 66.0);
    assert!(far.is_out(Subject::BoltNearEnd));
    assert_eq!(far.remedies, [Remedy::AddBoltAt(inches(7.75))]);
    let near = ends(3.0, 66.0);
    assert!(near.is_out(Subject::BoltNotTooNearEnd));
    let other = ends(6.0, 59.0);
    assert_eq!(other.remedies, [Remedy::AddBoltAt(inches(64.25))]);
    // A bolt too near the end does no harm where the next is near enough.
    let spare = judge_sill(&sill(72.0, vec![at(2.0), at(8.0), at(66.0)])).piece;
    assert_eq!(spare.verdict(), Verdict::Within);
}

/// Source: IRC R403.1.6 exceptions, from memory: one bolt to 24 in, none to 12 in.
#[test]
fn short_pieces() {
    assert_eq!(judge_sill(&sill(24.0, vec![at(12.0)])).piece.verdict(), Verdict::Within);
    assert!(judge_sill(&sill(24.0, vec![])).piece.is_out(Subject::BoltsInPiece));
    assert_eq!(judge_sill(&sill(12.0, vec![])).piece.verdict(), Verdict::Within);
    // A bolt that is not needed may stand anywhere.
    assert_eq!(judge_sill(&sill(6.25, vec![at(0.0)])).piece.verdict(), Verdict::Within);
    assert!(judge_sill(&sill(30.0, vec![at(15.0)])).piece.is_out(Subject::BoltsInPiece));
}

/// Source: IRC R602.11.1: 3 x 3 x 0.229 in.
#[test]
fn plate_washers_where_they_are_asked_for() {
    let washer = PlateWasher { side: r602_11::SIDE, thickness: r602_11::THICKNESS };
    let required =
        SillRequired { plate_washer: Some(Required::new(washer, r602_11::PLATE_WASHERS)), ..SillRequired::by_code() };
    let with = |washer| {
        let bolt = AnchorBolt { washer: Seen::Observed(washer), ..GOOD_BOLT };
        let sill = Sill { required: required.clone(), ..sill(96.0, vec![bolt, at(90.0)]) };
        judge_sill(&sill).bolts[0].clone()
    };
    assert_eq!(with(Washer::Cut).remedies, [Remedy::FitPlateWasher]);
    assert_eq!(with(Washer::Plate { side: inches(3.0), thickness: inches(0.229) }).verdict(), Verdict::Within);
    assert!(with(Washer::Plate { side: inches(2.0), thickness: inches(0.229) }).is_out(Subject::WasherSide));
}

#[test]
fn a_nut_of_no_listed_size_is_asked_for() {
    let odd = one(AnchorBolt { diameter: inches(0.5625), ..GOOD_BOLT });
    assert_eq!((odd.verdict(), odd.questions.as_slice()), (Verdict::NotSeen, &[Question::NutAndWasherSize][..]));
}

fn hold_down() -> HoldDown {
    let drawn = || Origin::Drawing(Drawing { sheet: "S2.1".into(), revision: Some("2".into()) });
    HoldDown {
        required: HoldDownRequired {
            rod_diameter: Some(Required::new(inches(0.625), drawn())),
            embedment: Some(Required::new(inches(12.0), drawn())),
            fasteners: Some(Required::new(20, drawn())),
            studs: Some(Required::new(2, drawn())),
        },
        thread: Seen::Observed(Thread::FlushOrProud),
        nut: Seen::Observed(Nut::Tight),
        off_the_post: Seen::Observed(false),
        rod_diameter: Seen::Observed(inches(0.625)),
        embedment: Seen::Observed(inches(13.0)),
        fasteners: Seen::Observed(20),
        studs: Seen::Observed(2),
    }
}

/// Source: field case FC-31: the rod's end flush with the top of the nut or proud; else out, with coupler, engineer's
/// detail or a drilled anchor.
#[test]
fn a_hold_down_whose_bolt_sank() {
    assert_eq!(judge_hold_down(&hold_down()).verdict(), Verdict::Within);
    let sunk = HoldDown { thread: Seen::Observed(Thread::BelowTop(inches(0.125))), ..hold_down() };
    let finding = judge_hold_down(&sunk);
    assert_eq!((finding.verdict(), margin(&finding, Subject::HoldDownThread)), (Verdict::Out, -0.125));
    assert_eq!(finding.remedies, [Remedy::CouplerAndRod, Remedy::EngineerDetail, Remedy::DrilledAnchor]);
    let sideways = HoldDown { off_the_post: Seen::Observed(true), ..hold_down() };
    assert_eq!(judge_hold_down(&sideways).remedies, [Remedy::EngineerDetail, Remedy::AskMaker]);
    let hidden = HoldDown { thread: Seen::CouldNotBeSeen, ..hold_down() };
    assert_eq!(judge_hold_down(&hidden).verdict(), Verdict::NotSeen);
}

#[test]
fn what_the_drawing_asks_of_a_hold_down() {
    let loose = judge_hold_down(&HoldDown { nut: Seen::Observed(Nut::Loose), ..hold_down() });
    assert_eq!((loose.verdict(), loose.remedies.as_slice()), (Verdict::Out, &[Remedy::TightenNut][..]));
    let few = judge_hold_down(&HoldDown { fasteners: Seen::Observed(18), ..hold_down() });
    assert_eq!(few.check(Subject::HoldDownFasteners).unwrap().margin.count(), Some(-2));
    assert_eq!(few.remedies, [Remedy::FillHoldDown]);
    let single = judge_hold_down(&HoldDown { studs: Seen::Observed(1), ..hold_down() });
    assert_eq!(single.remedies, [Remedy::AddPlies(1)]);
    let thin = judge_hold_down(&HoldDown { rod_diameter: Seen::Observed(inches(0.5)), ..hold_down() });
    assert!(thin.is_out(Subject::BoltDiameter));
    let nothing_asked = HoldDown { required: HoldDownRequired::default(), ..hold_down() };
    assert_eq!(judge_hold_down(&nothing_asked).checks.len(), 1);
}

/// Source: field case FC-31: rod diameter, embedment, adhesive lot and who watched are kept.
#[test]
fn the_record_of_a_drilled_anchor() {
    let empty: Vec<_> = DrilledAnchor::default().lacks().collect();
    assert_eq!(empty.len(), 4);
    let nearly = DrilledAnchor {
        rod_diameter: Some(inches(0.625)),
        embedment: Some(inches(8.0)),
        adhesive_lot: Some("L 4711".into()),
        cleaning_watched_by: Some("  ".into()),
    };
    assert_eq!(nearly.lacks().collect::<Vec<_>>(), [DrilledAnchorLacks::CleaningWatchedBy]);
}
