//! The walls of a house: typed, written out and read back, and what pulls at their ends.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use bracing::braced_walls::{BracedWalls, EndsError, pulls, read_braced_walls};
use bracing::{Edition, Ends, Framing, LevelJoints, OtherFace, Strength, check_segmented, read_nailing, strength};
use measure::Length;
use proptest::prelude::*;

const TYPED: &str = "Front above: W1, walls 3' 0\", 3' 0\", 4' 0\", high 8' 0\", push 2,000 lb
Front below: W3, walls 3' 0\", 3' 0\", 4' 0\", high 9' 0\", push 5,400 lb, dead 180 plf, under Front above

Side: walls 12, high 8' 1-1/8\", push 1200";

/// An end of no thickness: the arm is the whole length.
const BARE: Ends = Ends { post: Length::ZERO, hold_down: Length::ZERO };

fn any_strength() -> Strength {
    let frame = Framing {
        specific_gravity: 0.5,
        studs: Length::from_inches(16.0),
        wet: false,
        hold_downs_inside: true,
        edition: Edition::Of2021,
        joints: LevelJoints::Blocked,
        other_face: OtherFace::Bare,
    };
    strength(&read_nailing("7/16 8d 4").unwrap(), &frame).unwrap()
}

#[test]
fn walls_are_typed_line_by_line() {
    let read = read_braced_walls(TYPED).unwrap();
    let [above, below, side] = read.as_slice() else { panic!("{read}") };
    assert_eq!((above.name.as_str(), above.mark.as_deref(), above.under.as_deref()), ("Front above", Some("W1"), None));
    let feet: Vec<f64> = below.pieces.iter().map(|piece| piece.feet()).collect();
    assert_eq!(feet, [3.0, 3.0, 4.0]);
    assert_eq!((below.height.feet(), below.push.pounds(), below.dead.plf()), (9.0, 5400.0, 180.0));
    assert_eq!((side.mark.as_deref(), side.pieces.len(), side.height.inches()), (None, 1, 97.125));
    let stack: Vec<&str> = read.stack(below).iter().map(|wall| wall.name.as_str()).collect();
    assert_eq!(stack, ["Front above", "Front below"]);
    assert_eq!(read.stack(side).len(), 1);
}

#[test]
fn written_out_they_read_back() {
    for text in
        [TYPED, "", "a: high 8', push 1, walls 4', 6', 2' 11-63/64\"; b: p 1, walls 3, high 9, push 1.5 lb, under A"]
    {
        let read = read_braced_walls(text).unwrap();
        assert_eq!(read_braced_walls(&read.to_string()).unwrap(), read, "{read}");
        assert_eq!(BracedWalls::new(read.as_slice().to_vec()).unwrap(), read);
    }
}

/// Every line that is wrong is said, by its number, with what is taken.
#[test]
fn what_is_not_understood_is_said_line_by_line() {
    let rest = "high 8', push 1000";
    let wrong = [
        "walls 4', high 8', push 1000".to_owned(),
        format!(": walls 4', {rest}"),
        format!("A name that is far too long: walls 4', {rest}"),
        format!("Front, below: walls 4', {rest}"),
        format!("A: {rest}"),
        "A: walls 4', push 1000".to_owned(),
        "A: walls 4', high 8'".to_owned(),
        format!("A: walls, {rest}"),
        format!("A: walls 4', far, {rest}"),
        format!("A: walls 4', {rest}, 6'"),
        format!("A: walls 4', walls 6', {rest}"),
        format!("A: walls 4', {rest}, glue"),
        format!("A: walls 400', {rest}"),
        format!("A: walls 4', {rest}, under"),
        format!("A: walls 4', {rest}, dead heavy"),
        "A: walls 4', high 30', push 1000".to_owned(),
        "A: walls 4', high 8', push 0".to_owned(),
        format!("A: walls 1,1,1,1,1,1,1,1,1,1,1,1,1, {rest}"),
        format!("A: a mark that is long, walls 4', {rest}"),
    ];
    let problems = read_braced_walls(&wrong.join("\n")).unwrap_err();
    let lines: Vec<usize> = problems.iter().map(|problem| problem.line).collect();
    assert_eq!(lines, (1..=wrong.len()).collect::<Vec<_>>(), "{problems:#?}");
    assert!(problems.iter().all(|problem| problem.problem.ends_with('.')), "{problems:#?}");
    assert!(problems[4].to_string().starts_with("Line 5: A: its full-height pieces are not given"), "{problems:#?}");
}

/// Names and stacks that are not in order.
#[test]
fn walls_stand_on_one_wall_each_and_on_no_ring() {
    let of = |lines: &[(&str, u32, &str)]| {
        let line = |(name, push, under): &(&str, u32, &str)| {
            let under = if under.is_empty() { String::new() } else { format!(", under {under}") };
            format!("{name}: walls 4', high 8', push {push}{under}")
        };
        read_braced_walls(&lines.iter().map(line).collect::<Vec<_>>().join("\n"))
    };
    let refused = |lines: &[(&str, u32, &str)], (line, says): (usize, &str)| {
        let problems = of(lines).unwrap_err();
        let found = problems.iter().find(|problem| problem.line == line);
        assert!(found.is_some_and(|found| found.problem.contains(says)), "{says}: {problems:#?}");
        assert!(problems.iter().all(|problem| problem.problem.ends_with('.')), "{problems:#?}");
    };
    refused(&[("A", 1, ""), ("a", 1, "")], (2, "stands in two lines"));
    refused(&[("A", 1, "B")], (1, "no wall is called B"));
    refused(&[("A", 1, "a")], (1, "under itself"));
    refused(&[("A", 1, "B"), ("B", 1, "A")], (1, "by way of others"));
    refused(&[("A", 1, "B"), ("B", 1, "C"), ("C", 1, "D"), ("D", 1, "A")], (1, "by way of others"));
    refused(&[("A", 1, ""), ("B", 1, "A"), ("C", 1, "A")], (3, "stands on B as well"));
    refused(&[("A", 2, ""), ("B", 1, "A")], (2, "less than that on A"));
    refused(&[("A", 1, ""), ("B", 1, "A"), ("C", 1, "B"), ("D", 1, "C")], (4, "more than 3"));
    assert!(of(&[("A", 1, ""), ("B", 1, "A"), ("C", 1, "B")]).is_ok());
    let many: String = (0..30).map(|index| format!("W{index}: walls 4', high 8', push 1000\n")).collect();
    let problems = read_braced_walls(&many).unwrap_err();
    assert_eq!((problems.len(), problems[0].to_string().as_str()), (1, "Line 25: to 24 walls are taken."));
}

/// The numbers of two storeys in `walls.rs`, *own*: 1,800 and 1,500 lb on 6 ft, 120 and 150 plf, 9 ft each; 2,484 and
/// 7,164 lb. All of 3,300 lb is on the lower wall. A foot of floor between them is 3,300 ft-lb more, 550 lb at 6 ft.
#[test]
fn pulls_add_up_through_the_storeys() {
    let typed = "A: walls 6, high 9, push 1800, dead 120; B: walls 6, high 9, push 3300, dead 150, under A";
    let walls = read_braced_walls(typed).unwrap();
    let pull = |index: usize, floor: f64| {
        let stack = walls.stack(&walls.as_slice()[index]);
        pulls(&stack, &any_strength(), BARE, Length::from_feet(floor)).unwrap()[0].tension.pounds()
    };
    assert!((pull(0, 1.0) - 2484.0).abs() < 0.01, "nothing is above it");
    assert!((pull(1, 0.0) - 7164.0).abs() < 0.01);
    assert!((pull(1, 1.0) - 7714.0).abs() < 0.01);
}

/// What cannot be added up has no pull.
#[test]
fn pulls_that_cannot_be_given_are_refused() {
    let of = |text: &str, ends: Ends| {
        let walls = read_braced_walls(text).unwrap();
        let wall = walls.as_slice().last().unwrap();
        pulls(&walls.stack(wall), &any_strength(), ends, Length::ZERO)
    };
    let one_more = "A: walls 6, 4, high 9, push 1800; B: walls 6, high 9, push 3300, under A";
    assert_eq!(of(one_more, BARE), Err(EndsError::PiecesDiffer));
    let longer = "A: walls 7, high 9, push 1800; B: walls 6, high 9, push 3300, under A";
    assert_eq!(of(longer, BARE), Err(EndsError::PiecesDiffer));
    let deep = Ends { post: Length::from_inches(6.0), hold_down: Length::from_inches(24.0) };
    assert_eq!(of("A: walls 2, high 7, push 100", deep), Err(EndsError::TooShort));
    // A piece past 3.5:1 counts for nothing, whatever is at its ends.
    assert_eq!(of("A: walls 2, high 8, push 100", deep), Ok(Vec::new()));
}

proptest! {
    /// Whatever is pasted is read or refused; what is read is written, and what is written reads back alike.
    #[test]
    fn anything_may_be_pasted(text in prop_oneof![any::<String>(), "[A-Za-z0-9:,;/ '\"\n.-]{0,200}"]) {
        if let Ok(walls) = read_braced_walls(&text) {
            let written = walls.to_string();
            prop_assert_eq!(read_braced_walls(&written).map(|walls| walls.to_string()), Ok(written));
        }
    }

    /// Nearly right lines, too: those whose lengths are on the tape read back as they were.
    #[test]
    fn nearly_right_lines(lines in prop::collection::vec(
        "[AB][0-9]{1,2}: (W[1-3], )?walls [3-9]' [0-9](-[1-7]/8)?\"(, [0-9]{1,2}'?){0,3}(, (high [4-9]|push [0-9]{1,2},?[0-9]{3}( lb)?|dead [0-9]{1,3}( plf)?|under [AB][0-9]|glue)){0,5}", 0..6)) {
        if let Ok(walls) = read_braced_walls(&lines.join("\n")) {
            prop_assert_eq!(read_braced_walls(&walls.to_string()), Ok(walls));
        }
    }

    /// A wall that stands alone is pulled as a line of pieces is.
    #[test]
    fn a_wall_alone_is_a_line_of_pieces(long in 3..20_u32, other in 3..20_u32, push in 100..9000_u32, dead in 0..400_u32) {
        let text = format!("A: walls {long}, {other}, high 8, push {push}, dead {dead}");
        let walls = read_braced_walls(&text).unwrap();
        let wall = &walls.as_slice()[0];
        let ends = Ends { post: Length::from_inches(3.0), hold_down: Length::from_inches(4.5) };
        let line = check_segmented(&wall.segmented(ends), &any_strength());
        let found = pulls(&[wall], &any_strength(), ends, Length::from_feet(1.0)).unwrap();
        prop_assert_eq!(found.len(), 2);
        for (found, piece) in found.iter().zip(&line.pieces) {
            let held = 0.6 * found.dead().plf() * found.length.feet() * found.length.feet() / 2.0;
            let turned: f64 = found.turning().iter().map(|(push, height)| push.pounds() * height.feet()).sum();
            prop_assert!(((turned - held) / found.arm.feet() - found.tension.pounds()).abs() < 1e-6);
            prop_assert!((found.tension - piece.tension).pounds().abs() < 1e-6);
        }
    }
}
