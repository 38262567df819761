//! Moisture, plumb and plane.

use inspection::moisture::{CloseInLimit, Day, MoistureAnswer, Reading, Spot, Visit, drying, judge_visits};
use inspection::plane::{
    FLATNESS, Measured, PLUMB, PLUMB_IN_COMMON_USE, bow_of_three, judge_faces, judge_flatness, judge_plumb,
};
use inspection::{MoistureContent, Question, Remedy, Seen, Verdict};
use measure::Length;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn visit(day: i32, readings: &[f64]) -> Visit {
    let reading = |(spot, percent): (usize, &f64)| Reading {
        spot: Spot(spot as u32),
        moisture: MoistureContent::from_percent(*percent),
    };
    Visit { day: Day(day), readings: readings.iter().enumerate().map(reading).collect() }
}

fn judged(visits: &[Visit], limit: CloseInLimit) -> MoistureAnswer {
    judge_visits(visits, &limit.required())
}

/// Plate, stud low, stud high.
fn field_case() -> [Visit; 3] {
    [visit(1, &[22.0, 19.0, 17.0]), visit(5, &[19.0, 17.0, 15.0]), visit(9, &[17.5, 16.0, 14.0])]
}

/// Source: field case FC-57: plate 22, 19, 17.5; visit 1 and 2 fail, visit 3 passes by 18 and by 19.
#[test]
fn when_to_close_the_walls() {
    let answer = judged(&field_case(), CloseInLimit::default());
    let verdicts: Vec<_> = answer.visits.iter().map(|(_, finding)| finding.verdict()).collect();
    assert_eq!(verdicts, [Verdict::Out, Verdict::Out, Verdict::Within]);
    assert_eq!((answer.verdict, answer.still_wet), (Verdict::Within, Vec::new()));
    assert_eq!(answer.visits[0].1.remedies, [Remedy::DryAndReadAgain]);
    let worst = answer.visits[0].1.check(inspection::Subject::Moisture).unwrap();
    assert_eq!(worst.margin.moisture().unwrap().percent(), -4.0);
    let nineteen = judged(&field_case(), CloseInLimit::Nineteen);
    let verdicts: Vec<_> = nineteen.visits.iter().map(|(_, finding)| finding.verdict()).collect();
    assert_eq!(verdicts, [Verdict::Out, Verdict::AtLimit, Verdict::Within]);
}

/// Source: field case FC-57: every reading counts, not the average: 22, 14 and 14 are 16.7 on average.
#[test]
fn the_average_passes_nothing() {
    assert_eq!(judged(&[visit(1, &[22.0, 14.0, 14.0])], CloseInLimit::default()).verdict, Verdict::Out);
}

#[test]
fn a_wet_spot_is_closed_only_by_itself() {
    let left_out = Visit { readings: visit(9, &[17.5, 16.0, 14.0]).readings[1..].to_vec(), ..visit(9, &[]) };
    let answer = judged(&[visit(1, &[22.0, 19.0, 17.0]), left_out], CloseInLimit::default());
    assert_eq!((answer.verdict, answer.still_wet), (Verdict::Out, vec![Spot(0)]));
    assert_eq!(answer.visits[1].1.questions, [Question::MoreMoistureReadings]);
}

#[test]
fn how_a_spot_dries() {
    let series = drying(&field_case(), Spot(0));
    let percents: Vec<_> = series.iter().map(|(day, moisture)| (day.0, moisture.percent())).collect();
    assert_eq!(percents, [(1, 22.0), (5, 19.0), (9, 17.5)]);
}

#[test]
fn nothing_read_is_not_dry() {
    assert_eq!(judged(&[], CloseInLimit::default()).verdict, Verdict::NotSeen);
    assert_eq!(judged(&[visit(1, &[])], CloseInLimit::default()).verdict, Verdict::NotSeen);
}

/// Source: list of field tolerances: 1/4 in per 10 ft in common use; 1/4 in per 32 in allows 3/4 in over 8 ft.
#[test]
fn plumb_by_the_list() {
    let lean = |out, over| Seen::Observed(Measured { out: inches(out), over: inches(over) });
    let common = |out, over| judge_plumb(lean(out, over), &PLUMB_IN_COMMON_USE).verdict();
    assert_eq!(common(0.25, 120.0), Verdict::AtLimit);
    assert_eq!(common(-0.1875, 96.0), Verdict::AtLimit);
    assert_eq!(common(0.25, 96.0), Verdict::Out);
    let generous = PLUMB.iter().find(|list| list.source.document == "Remodeler standard").unwrap();
    assert_eq!(generous.over(inches(96.0)).inches(), 0.75);
    let verdicts: Vec<_> = PLUMB.iter().map(|list| judge_plumb(lean(0.5, 96.0), list).verdict()).collect();
    assert!(verdicts.contains(&Verdict::Out) && verdicts.contains(&Verdict::Within), "the lists disagree");
    assert_eq!(judge_plumb(Seen::CouldNotBeSeen, &PLUMB_IN_COMMON_USE).verdict(), Verdict::NotSeen);
}

/// Source: list of field tolerances: 1/4 in under 32 in.
#[test]
fn flatness_needs_its_straightedge() {
    let hollow = |out, over| {
        judge_flatness(Seen::Observed(Measured { out: inches(out), over: inches(over) }), &FLATNESS[0]).verdict()
    };
    assert_eq!([hollow(0.125, 32.0), hollow(0.25, 32.0)], [Verdict::Within, Verdict::AtLimit]);
    assert_eq!(hollow(0.375, 32.0), Verdict::Out);
    assert_eq!([hollow(0.125, 24.0), hollow(0.375, 24.0)], [Verdict::NotSeen, Verdict::Out]);
    assert_eq!([hollow(0.125, 48.0), hollow(0.375, 48.0)], [Verdict::Within, Verdict::NotSeen]);
}

/// Source: Gypsum Association guide, section II: faces within 1/8 in of their neighbours.
#[test]
fn faces_in_one_plane() {
    let steps = judge_faces(&[inches(0.0), inches(0.0625), inches(0.25), inches(0.125)]);
    let verdicts: Vec<_> = steps.iter().map(|step| step.check.verdict).collect();
    assert_eq!(verdicts, [Verdict::Within, Verdict::Out, Verdict::AtLimit]);
    assert_eq!(steps[1].between, 1);
}

#[test]
fn the_bow_of_three_points() {
    let places = [inches(0.0), inches(48.0), inches(96.0)];
    assert_eq!(bow_of_three(places, [inches(1.0), inches(0.75), inches(1.0)]).inches(), 0.25);
    assert_eq!(bow_of_three(places, [inches(1.0), inches(1.25), inches(1.5)]).inches(), 0.0);
}
