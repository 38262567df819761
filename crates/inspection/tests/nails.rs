//! Nails of a sheathed wall.

use inspection::nailing::{
    Driven, Line, NailSize, Panel, PanelNailing, judge_edge_distance, judge_line, judge_nail_size, judge_overdriven,
    nails_in_panel,
};
use inspection::{Origin, Question, Remedy, Required, Seen, Subject, Verdict, Who};
use measure::Length;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn sheet(stud_spacing: f64, edge: f64) -> PanelNailing {
    PanelNailing {
        width: inches(48.0),
        height: inches(96.0),
        stud_spacing: inches(stud_spacing),
        edge_spacing: inches(edge),
        field_spacing: inches(12.0),
    }
}

/// Source: table of nails in one 48 x 96 sheet, field 12 in: 48 + 14, 72 + 14, 96 + 14 at studs of 16 in; 48 + 7 at 24 in.
#[test]
fn nails_in_a_sheet() {
    for (studs, edge, perimeter, field, total) in
        [(16.0, 6.0, 48, 14, 62), (16.0, 4.0, 72, 14, 86), (16.0, 3.0, 96, 14, 110), (24.0, 6.0, 48, 7, 55)]
    {
        let count = nails_in_panel(&sheet(studs, edge));
        assert_eq!((count.perimeter, count.field, count.total()), (perimeter, field, total), "{studs} {edge}");
    }
}

fn panel(edge: f64) -> Panel {
    let perimeter_nails = nails_in_panel(&sheet(16.0, edge)).perimeter;
    Panel { perimeter_nails, edge_spacing: inches(edge), dry_when_nailed: Some(true) }
}

fn depths(count: usize, depth: f64) -> Driven {
    Driven::from_depths(&vec![inches(depth); count])
}

/// Source: field case FC-21 by Technical Topic TT-012: 4x8 panel, 48 perimeter nails at 6 in and 96 at 3 in; (a) 9 at 3/32
/// nothing, 18.75 %; (b) 14 at 3/32 add 7, 29.2 %; (c) 1 at 3/16 add 1; (d) 14 of 96 nothing, 14.6 %.
#[test]
fn overdriven_nails_of_the_field_case() {
    for (name, edge, count, depth, share, add, verdict) in [
        ("a", 6.0, 9, 3.0 / 32.0, 18.75, 0, Verdict::Within),
        ("b", 6.0, 14, 3.0 / 32.0, 29.2, 7, Verdict::Out),
        ("c", 6.0, 1, 3.0 / 16.0, 2.1, 1, Verdict::Out),
        ("d", 3.0, 14, 3.0 / 32.0, 14.6, 0, Verdict::Within),
    ] {
        let answer = judge_overdriven(&panel(edge), depths(count, depth));
        assert_eq!((answer.add, answer.verdict), (add, verdict), "{name}");
        assert!((answer.share * 100.0 - share).abs() <= 0.05, "{name}: {}", answer.share);
    }
}

/// Source: field case FC-21: over 20 % at 4 in or closer, no nails are added and the engineer decides.
#[test]
fn close_nailing_is_the_engineer_s() {
    for edge in [3.0, 4.0] {
        let answer = judge_overdriven(&panel(edge), depths(30, 3.0 / 32.0));
        assert_eq!((answer.verdict, answer.add), (Verdict::Out, 0));
        assert_eq!(answer.remedies[0], Remedy::EngineerDetail);
        assert!(!answer.remedies.iter().any(|remedy| matches!(remedy, Remedy::AddNails(_))));
        assert_eq!(answer.remedies[0].who(), [Who::Engineer]);
    }
    let one_too_deep = judge_overdriven(&panel(4.0), depths(1, 3.0 / 16.0));
    assert_eq!((one_too_deep.verdict, one_too_deep.add), (Verdict::Out, 0));
}

/// Source: Technical Topic TT-012: to 1/16 in counts; over 1/8 in does not; 20 % is still accepted.
#[test]
fn the_edges_of_the_rule() {
    assert_eq!(depths(3, 1.0 / 16.0), Driven::default());
    assert_eq!(depths(3, 1.0 / 8.0), Driven { deep: 3, too_deep: 0 });
    let sixty = Panel { perimeter_nails: 60, edge_spacing: inches(6.0), dry_when_nailed: Some(true) };
    let at_limit = judge_overdriven(&sixty, Driven { deep: 12, too_deep: 0 });
    assert_eq!((at_limit.verdict, at_limit.add), (Verdict::AtLimit, 0));
    assert_eq!(judge_overdriven(&sixty, Driven { deep: 13, too_deep: 0 }).add, 7);
    assert_eq!(judge_overdriven(&sixty, Driven::default()).verdict, Verdict::Within);
}

#[test]
fn a_wet_panel_is_not_judged_by_its_face() {
    let wet = Panel { dry_when_nailed: Some(false), ..panel(6.0) };
    assert_eq!(judge_overdriven(&wet, depths(2, 3.0 / 32.0)).verdict, Verdict::NotDecided);
    let unknown = Panel { dry_when_nailed: None, ..panel(6.0) };
    assert_eq!(judge_overdriven(&unknown, depths(2, 3.0 / 32.0)).questions, [Question::PanelDryWhenNailed]);
    assert_eq!(judge_overdriven(&unknown, Driven::default()).questions, []);
    let impossible = judge_overdriven(&panel(6.0), Driven { deep: 49, too_deep: 0 });
    assert_eq!(impossible.verdict, Verdict::NotDecided);
}

fn edge(driven: u32, missed: Seen<u32>) -> Line {
    Line {
        of: Subject::EdgeNails,
        length: inches(96.0),
        spacing: Required::new(inches(6.0), Origin::Typed),
        driven,
        missed,
        widest_gap: None,
    }
}

/// Source: field case FC-23: 8 ft edge at 6 in, 17 nails, 12 missed: 5 of 17, 29 %, 12 to add.
#[test]
fn shiners_of_the_field_case() {
    let answer = judge_line(&edge(17, Seen::Observed(12)));
    assert_eq!((answer.asked, answer.hold, answer.add), (17, Some(5), 12));
    assert!((answer.share.unwrap() * 100.0 - 29.0).abs() <= 1.0);
    assert_eq!(answer.finding.verdict(), Verdict::Out);
    assert_eq!(answer.finding.remedies, [Remedy::ReplaceMissedNails(12)]);
    assert_eq!(answer.spacing.unwrap().inches(), 24.0);
}

#[test]
fn a_line_as_asked() {
    let answer = judge_line(&edge(17, Seen::Observed(0)));
    assert_eq!((answer.add, answer.finding.verdict()), (0, Verdict::Within));
    assert_eq!(answer.spacing.unwrap().inches(), 6.0);
    let short = judge_line(&edge(15, Seen::Observed(1)));
    assert_eq!((short.hold, short.add), (Some(14), 3));
    assert_eq!(short.finding.remedies, [Remedy::ReplaceMissedNails(1), Remedy::AddNails(2)]);
}

/// Source: a panel maker's advice in field case FC-23: missed nails are replaced one for one, also where enough hold.
#[test]
fn every_shiner_is_replaced() {
    let answer = judge_line(&edge(20, Seen::Observed(2)));
    assert_eq!((answer.hold, answer.add, answer.finding.verdict()), (Some(18), 2, Verdict::Within));
    assert_eq!(answer.finding.remedies, [Remedy::ReplaceMissedNails(2)]);
}

#[test]
fn a_line_not_seen_from_inside_is_not_passed() {
    let answer = judge_line(&edge(17, Seen::CouldNotBeSeen));
    assert_eq!((answer.hold, answer.finding.verdict()), (None, Verdict::NotSeen));
    assert_eq!(judge_line(&edge(12, Seen::CouldNotBeSeen)).finding.verdict(), Verdict::Out);
}

#[test]
fn a_gap_is_out_though_the_count_is_met() {
    let gap = Line { widest_gap: Some(inches(9.0)), ..edge(17, Seen::Observed(0)) };
    let answer = judge_line(&gap);
    assert_eq!(answer.finding.verdict(), Verdict::Out);
    assert_eq!(answer.finding.remedies, [Remedy::NailAsRequired]);
    let met = Line { widest_gap: Some(inches(6.0)), ..edge(17, Seen::Observed(0)) };
    assert_eq!(judge_line(&met).finding.verdict(), Verdict::Within);
}

/// Source: field case FC-25: 0.113 in found where 0.131 in is asked for.
#[test]
fn a_thinner_nail_is_out() {
    let nail = |diameter, length| NailSize { diameter: inches(diameter), length: inches(length) };
    let asked = Required::new(nail(0.131, 2.5), Origin::Typed);
    let thin = judge_nail_size(&asked, Seen::Observed(nail(0.113, 2.375)));
    assert!(thin.is_out(Subject::NailDiameter) && thin.is_out(Subject::NailLength));
    assert_eq!(thin.remedies, [Remedy::NailAsRequired, Remedy::ApproveNailsUsed]);
    assert_eq!(judge_nail_size(&asked, Seen::Observed(nail(0.131, 2.5))).verdict(), Verdict::Within);
    assert_eq!(judge_nail_size(&asked, Seen::NotObserved).verdict(), Verdict::NotSeen);
}

/// Source: notes of adopted plans: 3/8 in from the panel's edge.
#[test]
fn nails_too_near_the_edge() {
    let at = |found| judge_edge_distance(Seen::Observed(inches(found))).verdict();
    assert_eq!([at(0.375), at(0.5), at(0.25)], [Verdict::Within, Verdict::Within, Verdict::Out]);
    assert_eq!(judge_edge_distance(Seen::NotObserved).questions, [Question::NailToPanelEdge]);
}
