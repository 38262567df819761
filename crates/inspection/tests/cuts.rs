//! Notches and holes.

use inspection::cuts::{
    CutJoist, CutPlate, CutStud, Doubled, Face, JoistCut, JoistKind, Place, PlateIn, StudCut, TieFound,
    judge_cut_joist, judge_cut_plate, judge_cut_stud, stud_limits,
};
use inspection::{Question, Remedy, Seen, Subject, Verdict, Who};
use measure::Length;
use standards::irc_2021::r602_6::StudIn;
use standards::irc_2021::r602_6_1::TIE;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn bored(width: f64, diameter: f64) -> CutStud {
    CutStud {
        width: inches(width),
        stud_in: StudIn::ExteriorOrBearing,
        doubled: Doubled::Single,
        cut: StudCut::Hole {
            diameter: inches(diameter),
            to_face: Seen::Observed(inches((width - diameter) / 2.0)),
            notch_beside: Seen::Observed(false),
        },
    }
}

/// Source: field case FC-39: 3 in hole in a full-size 2x4 of a bearing wall: 75 %; limits 1.6 and 2.4 in of 4, 1.4 and
/// 2.1 in of 3.5; notch 25 % where it bears, 40 % where it does not; 5/8 in to the face.
#[test]
fn three_inch_hole_in_a_bearing_stud() {
    let stud = bored(4.0, 3.0);
    let finding = judge_cut_stud(&stud);
    assert_eq!((stud.share(), finding.verdict()), (0.75, Verdict::Out));
    let hole = finding.check(Subject::HoleDiameter).unwrap();
    assert!((hole.margin.length().unwrap().inches() + 1.4).abs() < 1.0 / 32.0);
    assert!(finding.is_out(Subject::HoleToEdge));
    assert!(!finding.remedies.contains(&Remedy::DoubleStud));
    assert!(finding.remedies.contains(&Remedy::FullHeightStudBeside));
    assert!(finding.remedies.contains(&Remedy::EngineerDetail));
    for (width, hole, doubled, notch) in [(4.0, 1.6, 2.4, 1.0), (3.5, 1.4, 2.1, 0.875)] {
        let limits = stud_limits(inches(width), StudIn::ExteriorOrBearing);
        for (limit, printed) in [(limits.hole, hole), (limits.hole_in_doubled, doubled), (limits.notch, notch)] {
            assert!((limit.inches() - printed).abs() < 1e-9, "{width}: {printed}");
        }
        assert_eq!(limits.hole_to_face.inches(), 0.625);
    }
    let partition = stud_limits(inches(3.5), StudIn::NonbearingPartition);
    assert!((partition.notch.inches() - 1.4).abs() < 1e-9 && (partition.hole.inches() - 2.1).abs() < 1e-9);
}

/// Source: IRC R602.6: to 60 % where doubled, with no more than two in a row.
#[test]
fn a_doubled_stud_takes_a_wider_hole() {
    let single = judge_cut_stud(&bored(3.5, 2.0));
    assert_eq!(single.verdict(), Verdict::Out);
    assert_eq!((single.remedies[0], single.remedies[0].who()), (Remedy::DoubleStud, &[Who::Crew][..]));
    // Doubling does not bring back the wood beside the hole.
    let mut off_centre = bored(3.5, 2.0);
    let to_face = Seen::Observed(inches(0.25));
    off_centre.cut = StudCut::Hole { diameter: inches(2.0), to_face, notch_beside: Seen::Observed(false) };
    assert!(!judge_cut_stud(&off_centre).remedies.contains(&Remedy::DoubleStud));
    let doubled = |row| CutStud { doubled: Doubled::Doubled { bored_in_a_row: row }, ..bored(3.5, 2.0) };
    assert_eq!(judge_cut_stud(&doubled(Seen::Observed(2))).verdict(), Verdict::Within);
    let three = judge_cut_stud(&doubled(Seen::Observed(3)));
    assert!(three.is_out(Subject::DoubledInARow) && !three.remedies.contains(&Remedy::DoubleStud));
    let unknown = judge_cut_stud(&doubled(Seen::NotObserved));
    assert_eq!((unknown.verdict(), &unknown.questions[..]), (Verdict::NotSeen, &[Question::DoubledInARow][..]));
    // A hole that a single stud may have needs no count of doubled ones.
    let small = CutStud { doubled: Doubled::Doubled { bored_in_a_row: Seen::NotObserved }, ..bored(3.5, 1.0) };
    assert_eq!(judge_cut_stud(&small).verdict(), Verdict::Within);
}

#[test]
fn a_hole_at_its_limit_and_one_past_it() {
    assert_eq!(judge_cut_stud(&bored(3.5, 1.375)).verdict(), Verdict::Within);
    assert_eq!(judge_cut_stud(&bored(3.5, 1.4)).verdict(), Verdict::AtLimit);
    assert_eq!(judge_cut_stud(&bored(3.5, 1.4375)).verdict(), Verdict::Out);
}

#[test]
fn what_was_not_said_is_asked() {
    let mut stud = bored(3.5, 1.0);
    stud.cut = StudCut::Hole { diameter: inches(1.0), to_face: Seen::NotObserved, notch_beside: Seen::NotObserved };
    let finding = judge_cut_stud(&stud);
    assert_eq!(finding.verdict(), Verdict::NotSeen);
    assert_eq!(finding.questions, [Question::HoleToEdge, Question::NotchBesideHole]);
    stud.cut = StudCut::Hole {
        diameter: inches(1.0),
        to_face: Seen::Observed(inches(1.0)),
        notch_beside: Seen::Observed(true),
    };
    assert!(judge_cut_stud(&stud).is_out(Subject::HoleBesideNotch));
}

#[test]
fn notches_by_the_wall_they_are_in() {
    let notch = |stud_in, depth| {
        let cut = StudCut::Notch { depth: inches(depth) };
        judge_cut_stud(&CutStud { width: inches(3.5), stud_in, doubled: Doubled::Single, cut }).verdict()
    };
    assert_eq!(notch(StudIn::ExteriorOrBearing, 0.875), Verdict::AtLimit);
    assert_eq!(notch(StudIn::ExteriorOrBearing, 1.0), Verdict::Out);
    assert_eq!(notch(StudIn::NonbearingPartition, 1.0), Verdict::Within);
}

fn two_by_ten(cut: JoistCut, place: Place) -> CutJoist {
    CutJoist { kind: JoistKind::SawnJoist, depth: inches(9.25), nominal_thickness: inches(2.0), place, cut }
}

/// Source: field case FC-09: 2-3/4 in hole, 3/4 in from the top of a 2x10: diameter to 3.08 passes; edge 2 in fails by
/// 1-1/4 in; as a notch 3.50 against 1.54 in.
#[test]
fn a_drain_hole_too_high_in_a_joist() {
    let cut =
        JoistCut::Hole { diameter: inches(2.75), to_edge: Seen::Observed(inches(0.75)), to_next: Seen::Observed(None) };
    let finding = judge_cut_joist(&two_by_ten(cut, Place::OuterThird));
    assert_eq!(finding.check(Subject::HoleDiameter).unwrap().verdict, Verdict::Within);
    assert_eq!(finding.check(Subject::HoleToEdge).unwrap().margin.length(), Some(inches(-1.25)));
    let as_notch = finding.check(Subject::NotchDepth).unwrap();
    assert_eq!(as_notch.found.length(), Some(inches(3.5)));
    assert!((as_notch.limit.value().length().unwrap().inches() - 1.54).abs() <= 0.005);
    assert_eq!(finding.remedies, [Remedy::HeaderOff, Remedy::SisterFullLength, Remedy::EngineerDetail]);
    let at_bearing = judge_cut_joist(&two_by_ten(cut, Place::End));
    let limit = at_bearing.check(Subject::NotchDepth).unwrap().limit.value().length().unwrap();
    assert!((limit.inches() - 2.31).abs() <= 0.005);
}

/// Source: IRC R502.8.1: d/6 deep, d/3 long, none in the middle third, d/4 at the ends.
#[test]
fn notches_in_a_joist() {
    let notch = |depth, length, place| {
        let cut =
            JoistCut::Notch { depth: inches(depth), length: Seen::Observed(inches(length)), face: Face::Compression };
        judge_cut_joist(&two_by_ten(cut, place))
    };
    assert_eq!(notch(1.5, 3.0, Place::OuterThird).verdict(), Verdict::Within);
    assert!(notch(1.5, 3.25, Place::OuterThird).is_out(Subject::NotchLength));
    assert!(notch(1.625, 3.0, Place::OuterThird).is_out(Subject::NotchDepth));
    assert!(notch(0.5, 1.0, Place::MiddleThird).is_out(Subject::NotchPlace));
    assert_eq!(notch(2.25, 12.0, Place::End).verdict(), Verdict::Within);
    assert_eq!(notch(2.375, 1.0, Place::End).verdict(), Verdict::Out);
    let bottom = JoistCut::Notch { depth: inches(1.0), length: Seen::Observed(inches(2.0)), face: Face::Tension };
    let thick = CutJoist { nominal_thickness: inches(4.0), ..two_by_ten(bottom, Place::OuterThird) };
    assert!(judge_cut_joist(&thick).is_out(Subject::NotchPlace));
    assert_eq!(judge_cut_joist(&two_by_ten(bottom, Place::OuterThird)).verdict(), Verdict::Within);
}

#[test]
fn holes_need_wood_between_them() {
    let hole = |to_next| {
        let cut = JoistCut::Hole { diameter: inches(2.0), to_edge: Seen::Observed(inches(3.0)), to_next };
        judge_cut_joist(&two_by_ten(cut, Place::MiddleThird))
    };
    assert_eq!(hole(Seen::Observed(Some(inches(3.0)))).verdict(), Verdict::Within);
    assert!(hole(Seen::Observed(Some(inches(1.5)))).is_out(Subject::HoleToNext));
    assert_eq!(hole(Seen::NotObserved).questions, [Question::HoleToNext]);
}

/// Source: IRC R502.8.2: an engineered member is its maker's or designer's.
#[test]
fn an_engineered_joist_is_its_maker_s() {
    let cut = JoistCut::Notch { depth: inches(0.25), length: Seen::NotObserved, face: Face::Compression };
    let joist = CutJoist { kind: JoistKind::Engineered, ..two_by_ten(cut, Place::End) };
    let finding = judge_cut_joist(&joist);
    assert_eq!((finding.verdict(), finding.left_to[0].1), (Verdict::NotDecided, Who::Maker));
}

fn plate(width: f64, taken: f64, tie: Seen<Option<TieFound>>) -> CutPlate {
    CutPlate {
        plate_in: PlateIn::ExteriorOrBearing,
        width: inches(width),
        taken: inches(taken),
        opening: inches(3.5),
        tie,
    }
}

const GOOD_TIE: TieFound = TieFound {
    thickness: Seen::Observed(Length::from_inches(0.054)),
    width: Length::from_inches(1.5),
    past_opening: Length::from_inches(6.5),
    nails_each_side: 8,
    nail: Seen::Observed((Length::from_inches(0.148), Length::from_inches(1.5))),
};

/// Source: field case FC-65: over 50 % cut, 1.75 in of a 2x4 and 2.75 in of a 2x6, needs a tie of opening + 12 in with
/// 8 + 8 nails.
#[test]
fn a_top_plate_cut_for_a_pipe() {
    let cut = judge_cut_plate(&plate(3.5, 3.5, Seen::Observed(None)));
    assert_eq!((cut.limit.inches(), cut.finding.verdict()), (1.75, Verdict::Out));
    let needed = cut.needed.unwrap();
    assert_eq!((needed.length.inches(), needed.tie.nails_each_side), (15.5, 8));
    assert_eq!(cut.finding.remedies[0], Remedy::TieAcrossPlate { tie: TIE, length: inches(15.5) });
    assert_eq!(judge_cut_plate(&plate(5.5, 3.0, Seen::Observed(None))).limit.inches(), 2.75);
    let half = judge_cut_plate(&plate(3.5, 1.75, Seen::NotObserved));
    assert_eq!((half.needed, half.finding.verdict()), (None, Verdict::AtLimit));
    assert!(judge_cut_plate(&plate(3.5, 1.8125, Seen::NotObserved)).needed.is_some());
}

#[test]
fn a_tie_is_judged_part_by_part() {
    let tied = |tie| judge_cut_plate(&plate(3.5, 3.5, Seen::Observed(Some(tie)))).finding;
    assert_eq!(tied(GOOD_TIE).verdict(), Verdict::Within);
    assert!(tied(TieFound { nails_each_side: 6, ..GOOD_TIE }).is_out(Subject::TieNails));
    assert!(tied(TieFound { past_opening: inches(5.0), ..GOOD_TIE }).is_out(Subject::TiePastOpening));
    assert!(tied(TieFound { thickness: Seen::Observed(inches(0.036)), ..GOOD_TIE }).is_out(Subject::TieThickness));
    assert_eq!(tied(TieFound { nail: Seen::CouldNotBeSeen, ..GOOD_TIE }).verdict(), Verdict::NotSeen);
    assert_eq!(judge_cut_plate(&plate(3.5, 3.5, Seen::CouldNotBeSeen)).finding.verdict(), Verdict::NotSeen);
    let partition = CutPlate { plate_in: PlateIn::Nonbearing, ..plate(3.5, 3.5, Seen::Observed(None)) };
    assert_eq!(judge_cut_plate(&partition).finding.verdict(), Verdict::NotDecided);
}
