//! Ties between roof and wall.

use inspection::uplift_tie::{Held, PathLink, RoofToWall, Side, judge_roof_to_wall};
use inspection::{Origin, Question, Remedy, Required, Seen, Subject, Verdict};
use measure::{Force, Length};

fn connection(held: Held) -> RoofToWall {
    RoofToWall {
        uplift: Some(Required::new(Force::from_pounds(334.0), Origin::Typed)),
        spacing: Length::from_inches(24.0),
        full_walls_above: 0,
        held: Seen::Observed(held),
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
