//! Ties between roof and wall, and straps.

use inspection::strap::{Nails, Strap, judge_strap};
use inspection::uplift_tie::{Held, PathLink, RoofToWall, Side, judge_roof_to_wall};
use inspection::{Origin, Question, Remedy, Required, Seen, Subject, Verdict};
use measure::{Force, Length};

fn connection(held: Held) -> RoofToWall {
    RoofToWall {
        uplift: Some(Required::new(Force::from_pounds(334.0), Origin::Typed)),
        spacing: Length::from_inches(24.0),
        full_walls_above: 0,
        held: Seen::Observed(held),
        nails: Nails { required: None, found: Seen::NotObserved },
    }
}

fn tie(side: Seen<Side>) -> Held {
    Held::Tie { side, listed: Some(Required::new(Force::from_pounds(500.0), Origin::Typed)) }
}

/// Source: field case FC-37: 334 lb at each truss, more than the 200 lb of toe nails.
#[test]
fn toe_nails_alone_do_not_hold() {
    let answer = judge_roof_to_wall(&connection(Held::ToeNails));
    assert_eq!(answer.finding.verdict(), Verdict::Out);
    let check = answer.finding.check(Subject::Uplift).unwrap();
    assert_eq!(check.margin.force(), Some(Force::from_pounds(-134.0)));
    assert!(answer.finding.remedies.contains(&Remedy::AddTie));
    let light = RoofToWall {
        uplift: Some(Required::new(Force::from_pounds(150.0), Origin::Typed)),
        ..connection(Held::ToeNails)
    };
    assert_eq!(judge_roof_to_wall(&light).finding.verdict(), Verdict::Within);
}

/// Source: field case FC-37: the tie goes on the sheathed side; over 100 plf at the wall's top the path goes on.
#[test]
fn a_tie_on_the_inside() {
    let inside = judge_roof_to_wall(&connection(tie(Seen::Observed(Side::Inside))));
    assert!(inside.finding.is_out(Subject::TieSide));
    assert_eq!(inside.finding.remedies[0], Remedy::TieOnSheathedSide);
    assert_eq!(inside.path, PathLink::ALL);
    let right = judge_roof_to_wall(&connection(tie(Seen::Observed(Side::Sheathed))));
    assert_eq!(right.finding.verdict(), Verdict::Within);
    assert_eq!(right.wall_top.unwrap().verdict, Verdict::Out);
    let asked = judge_roof_to_wall(&connection(tie(Seen::NotObserved)));
    assert_eq!((asked.finding.verdict(), asked.finding.questions[0]), (Verdict::NotSeen, Question::TieSide));
}

/// Source: field case FC-37: 60 plf off for each full storey above: 334 lb at 24 in is 167 plf, 107 under one, 47 under
/// two.
#[test]
fn walls_above_hold_down() {
    let net = |full_walls_above| {
        let under = RoofToWall { full_walls_above, ..connection(tie(Seen::Observed(Side::Sheathed))) };
        judge_roof_to_wall(&under)
    };
    let plf = |walls| match net(walls).wall_top.unwrap().found {
        inspection::Amount::LineLoad(load) => load.plf(),
        other => panic!("{other:?}"),
    };
    assert_eq!([plf(0), plf(1), plf(2), plf(3)], [167.0, 107.0, 47.0, 0.0]);
    assert_eq!(net(1).path.len(), 5);
    assert_eq!(net(2).path, []);
}

#[test]
fn an_uplift_that_nobody_knows_is_asked_for() {
    let unknown = RoofToWall { uplift: None, ..connection(Held::ToeNails) };
    let answer = judge_roof_to_wall(&unknown);
    assert_eq!(answer.finding.verdict(), Verdict::NotSeen);
    assert_eq!(answer.finding.questions, [Question::UpliftRequired]);
    assert_eq!((answer.wall_top, answer.path), (None, Vec::new()));
}

#[test]
fn a_tie_that_is_listed_for_less() {
    let weak = Held::Tie {
        side: Seen::Observed(Side::Sheathed),
        listed: Some(Required::new(Force::from_pounds(300.0), Origin::Typed)),
    };
    assert!(judge_roof_to_wall(&connection(weak)).finding.is_out(Subject::Uplift));
    let unlisted = Held::Tie { side: Seen::Observed(Side::Sheathed), listed: None };
    assert_eq!(judge_roof_to_wall(&connection(unlisted)).finding.verdict(), Verdict::NotSeen);
}

/// Source: the drawing's count; a tie's empty holes are filled, and toe nails are driven beside the others.
#[test]
fn nails_of_a_connection_are_counted_where_they_are_asked_for() {
    let with = |found, held| RoofToWall { nails: nails(10, found), ..connection(held) };
    let sheathed = || tie(Seen::Observed(Side::Sheathed));
    let full = judge_roof_to_wall(&with(Seen::Observed(10), sheathed())).finding;
    assert_eq!(full.verdict(), Verdict::Within);
    let short = judge_roof_to_wall(&with(Seen::Observed(7), sheathed())).finding;
    assert_eq!(short.check(Subject::ConnectionNails).unwrap().margin.count(), Some(-3));
    assert_eq!(short.remedies[0], Remedy::FillConnector(3));
    let toed = judge_roof_to_wall(&with(Seen::Observed(9), Held::ToeNails)).finding;
    assert!(toed.remedies.contains(&Remedy::AddNails(1)), "{:?}", toed.remedies);
    let hidden = judge_roof_to_wall(&with(Seen::CouldNotBeSeen, sheathed())).finding;
    assert_eq!((hidden.verdict(), hidden.not_seen), (Verdict::NotSeen, vec![Subject::ConnectionNails]));
}

fn nails(required: u16, found: Seen<u16>) -> Nails {
    Nails { required: Some(Required::new(required, Origin::Typed)), found }
}

fn strap(found: Seen<u16>) -> Strap {
    Strap { nails: nails(14, found), lies_flat: Seen::Observed(true), uplift: None, listed: None }
}

/// Source: common practice: the side with fewer nails is counted; a bowed strap is its maker's or the engineer's.
#[test]
fn a_strap_by_its_nails() {
    assert_eq!(judge_strap(&strap(Seen::Observed(14))).verdict(), Verdict::Within);
    let short = judge_strap(&strap(Seen::Observed(12)));
    assert_eq!(short.check(Subject::StrapNails).unwrap().margin.count(), Some(-2));
    assert_eq!((short.verdict(), short.remedies), (Verdict::Out, vec![Remedy::FillConnector(2)]));
    let bowed = judge_strap(&Strap { lies_flat: Seen::Observed(false), ..strap(Seen::Observed(14)) });
    assert!(bowed.is_out(Subject::StrapFlat));
    assert_eq!(bowed.remedies, [Remedy::AskMaker, Remedy::EngineerDetail]);
    let unseen = judge_strap(&Strap { lies_flat: Seen::CouldNotBeSeen, ..strap(Seen::Observed(14)) });
    assert_eq!(unseen.verdict(), Verdict::NotSeen);
    let not_asked = Nails { required: None, found: Seen::Observed(14) };
    let not_asked = judge_strap(&Strap { nails: not_asked, ..strap(Seen::NotObserved) });
    assert_eq!(not_asked.not_seen, [Subject::StrapNails]);
}

#[test]
fn a_strap_and_its_uplift() {
    let force = |pounds: Option<f64>| pounds.map(|pounds| Required::new(Force::from_pounds(pounds), Origin::Typed));
    let holding = |uplift, listed| {
        judge_strap(&Strap { uplift: force(uplift), listed: force(listed), ..strap(Seen::Observed(14)) })
    };
    assert_eq!(holding(Some(900.0), Some(1200.0)).verdict(), Verdict::Within);
    let weak = holding(Some(1250.0), Some(1200.0));
    assert_eq!(weak.check(Subject::Uplift).unwrap().margin.force(), Some(Force::from_pounds(-50.0)));
    assert_eq!(weak.remedies, [Remedy::EngineerDetail]);
    for half in [holding(Some(900.0), None), holding(None, Some(1200.0))] {
        assert_eq!((half.verdict(), half.not_seen), (Verdict::NotSeen, vec![Subject::Uplift]));
    }
}
