//! How a walk and its marks stand.

use job::walk::{Because, Look, Step};
use view::model::State;
use view::record::{Of, PointRow, SEVERITIES, Stage, mark, overview, severity_words};

use crate::log::{Log, OUT, RIGHT, WHOLE_HEAD, after, said, studs, whole};

/// The only row of a log's only mark.
#[track_caller]
fn only_row(log: &Log) -> PointRow {
    let mut rows = mark(&log.walk(), "m1").unwrap().rows;
    assert_eq!(rows.len(), 1);
    rows.remove(0)
}

#[test]
fn a_walk_without_looks_is_not_known() {
    let shown = overview(&Log::begun().walk());
    assert_eq!((shown.state, shown.figure.as_str()), (State::NotKnown, "Nothing looked at"));
    assert_eq!(shown.word, "type a mark and measure");
    assert_eq!(shown.marks[0].counts(), "nothing looked at yet");
    assert!(shown.lacks.iter().any(|lack| lack.says == "W1: nothing was looked at yet."));
}

/// Each verdict by itself, and the worst of several.
#[test]
fn the_worst_verdict_is_the_walks() {
    let of = |verdicts: &[&str]| {
        let mut log = Log::begun();
        for (number, verdict) in verdicts.iter().enumerate() {
            log.look(&format!("l{number}"), said("m1", "grid A", verdict));
        }
        let shown = overview(&log.walk());
        (shown.state, shown.figure, shown.word, shown.share_text)
    };
    let is =
        |state, figure: &str, word: &str, share: &str| (state, figure.to_owned(), word.to_owned(), share.to_owned());
    let decide = "not for this tool to decide";
    assert_eq!(of(&["within"]), is(State::Carries, "Nothing to mend", "within", "1 looked at"));
    assert_eq!(of(&["within", "at the limit"]), is(State::AtLimit, "Nothing to mend", "at the limit", "2 looked at"));
    let unseen = is(State::NotKnown, "1 not seen", "could not be seen", "1 looked at, 1 not seen");
    assert_eq!(of(&["at the limit", "could not be seen"]), unseen);
    // A verdict that is not known is not passed.
    assert_eq!(of(&["at the limit", "fine"]), unseen);
    let others = is(State::Outside, "1 for others to decide", decide, "1 looked at, 1 not seen");
    assert_eq!(of(&["could not be seen", decide]), others);
    assert_eq!(of(&[decide, "out", "out"]), is(State::Short, "2 to mend", "out", "3 looked at"));
}

#[test]
fn the_counts_of_a_mark_add_up() {
    let mut log = Log::begun();
    for (number, verdict) in
        ["within", "out", "could not be seen", "not for this tool to decide", "out"].iter().enumerate()
    {
        log.look(&format!("l{number}"), said("m1", "grid A", verdict));
    }
    let row = &overview(&log.walk()).marks[0];
    assert_eq!((row.looked_at, row.to_mend, row.not_seen, row.left_to_others, row.open), (4, 2, 1, 1, 4));
    assert_eq!(row.counts(), "4 looked at, 2 to mend, 1 not seen, 1 for others to decide");
}

#[test]
fn the_worst_that_was_said_of_what_is_out_is_named_first() {
    let out = |place: &str, severity: &str| Look { severity: severity.to_owned(), ..said("m1", place, "out") };
    let mut log = Log::begun();
    log.look("a", out("grid A", ""));
    log.look("b", out("grid B", "note"));
    assert_eq!(overview(&log.walk()).word, "out");
    log.look("c", out("grid C", "before_cover"));
    assert_eq!(overview(&log.walk()).word, "must be right before it is covered");
    log.look("d", out("grid D", "stop"));
    let shown = overview(&log.walk());
    assert_eq!(shown.word, "stop work here");
    let order: Vec<&str> = shown.to_mend.iter().map(|row| row.id.as_str()).collect();
    assert_eq!(order, ["d", "c", "b", "a"]);
    assert_eq!(SEVERITIES.map(|(stable, _)| severity_words(stable)), SEVERITIES.map(|(_, words)| words));
}

/// Found, agreed, done, still out, agreed again, right.
#[test]
fn what_was_out_goes_its_way_until_it_is_right() {
    let mut log = Log::begun();
    log.look("a", studs(&OUT));
    assert_eq!(only_row(&log).stage, Some(Stage::Found));
    log.follow_up("a", Step::Agreed, "add a stud");
    assert_eq!(only_row(&log).stage, Some(Stage::Agreed));
    log.follow_up("a", Step::Done, "added");
    assert_eq!(only_row(&log).stage, Some(Stage::Done));
    log.look("b", after(studs(&OUT), "a", Because::Mended, ""));
    assert_eq!((only_row(&log).stage, only_row(&log).mended), (Some(Stage::Found), true));
    log.follow_up("a", Step::Agreed, "add it at 24\"");
    assert_eq!(only_row(&log).stage, Some(Stage::Agreed));
    log.look("c", after(studs(&RIGHT), "b", Because::Mended, ""));
    let row = only_row(&log);
    assert_eq!((row.stage, row.state, row.mended, row.corrected), (Some(Stage::Right), State::Carries, true, false));
    assert_eq!((row.id.as_str(), row.look.as_str()), ("a", "c"));
    assert_eq!(row.stage.unwrap().word(), "right");
    let shown = overview(&log.walk());
    assert_eq!((shown.to_mend.len(), shown.mended), (0, 1));
}

/// What was typed wrongly was never out; the first look is still told.
#[test]
fn a_correction_is_no_mend() {
    let mut log = Log::begun();
    log.look("a", studs(&OUT));
    log.look("b", after(studs(&RIGHT), "a", Because::Corrected, "read 33-1/2 for 32"));
    let row = only_row(&log);
    assert_eq!((row.stage, row.mended, row.corrected), (None, false, true));
    assert_eq!(row.history.len(), 2);
    assert_eq!(row.history[0], "First look, 2026-05-04 08:03, A. Framer: out. Stud spacing: 1-1/2\" over 16\".");
    assert!(row.history[1].starts_with("Corrected, 2026-05-04 08:04, A. Framer: within."), "{}", row.history[1]);
    assert!(row.history[1].ends_with("Why: read 33-1/2 for 32."), "{}", row.history[1]);
}

/// A correction of the look after mending leaves the mend standing.
#[test]
fn a_corrected_look_after_mending_is_still_one_after_mending() {
    let mut log = Log::begun();
    log.look("a", studs(&OUT));
    log.look("b", after(studs(&OUT), "a", Because::Mended, ""));
    log.look("c", after(studs(&RIGHT), "b", Because::Corrected, ""));
    let row = only_row(&log);
    assert_eq!((row.stage, row.mended, row.corrected), (Some(Stage::Right), true, true));
}

#[test]
fn a_look_that_is_crossed_out_does_not_count() {
    let mut log = Log::begun();
    log.look("a", studs(&RIGHT));
    log.look("b", studs(&OUT));
    log.strike("b", "wrong wall");
    let shown = overview(&log.walk());
    assert_eq!((shown.figure.as_str(), shown.marks[0].looked_at), ("Nothing to mend", 1));
    let rows = mark(&log.walk(), "m1").unwrap().rows;
    assert_eq!(rows[1].struck.as_deref(), Some("wrong wall"));
    assert!(rows[1].history[0].ends_with("Crossed out: wrong wall."), "{}", rows[1].history[0]);
    assert!(!rows[1].is_to_mend());
    // The look after mending crossed out: the first one counts again.
    let mut log = Log::begun();
    log.look("a", studs(&OUT));
    log.look("b", after(studs(&RIGHT), "a", Because::Mended, ""));
    log.strike("b", "not looked at myself");
    assert!(only_row(&log).is_to_mend());
    assert_eq!(only_row(&log).struck, None);
}

#[test]
fn a_mark_that_is_crossed_out_is_left_out_of_the_counts() {
    let mut log = Log::begun();
    log.mark("m2", "W2");
    let version = log.records.last().unwrap().id.clone();
    log.look("a", Look { mark: "m2".to_owned(), ..studs(&OUT) });
    log.strike(&version, "typed twice");
    let shown = overview(&log.walk());
    assert_eq!((shown.marks.len(), shown.to_mend.len()), (1, 0));
    assert_eq!(mark(&log.walk(), "m2").unwrap().rows.len(), 1);
    assert!(mark(&log.walk(), "m3").is_none());
}

/// What the record lacks: the head, then each mark, counted.
#[test]
fn what_is_lacking_is_counted_by_mark() {
    let mut log = Log::begun();
    log.heading(&WHOLE_HEAD);
    log.look("a", studs(&RIGHT));
    log.look("b", Look { place: " ".to_owned(), ..studs(&RIGHT) });
    log.look("c", Look { kind: "nailing".to_owned(), ..said("m1", "grid A", "within") });
    log.photo("p1", "a", "", Vec::new());
    log.photo("p2", "c", "", Vec::new());
    log.strike("r-p2", "blurred");
    let lacks = overview(&log.walk()).lacks;
    assert!(lacks.iter().all(|lack| lack.of == Of::Mark("m1".to_owned())));
    let says: Vec<&str> = lacks.iter().map(|lack| lack.says.as_str()).collect();
    assert_eq!(
        says,
        [
            "W1: 1 look without a place on the mark.",
            "W1: 2 looks without a photo with a tape or a rule in view.",
            "W1: 1 look at nails without photos from inside and outside.",
        ]
    );
}

#[test]
fn a_row_tells_photos_follow_ups_and_its_name() {
    let row = mark(&whole().walk(), "m1").unwrap().rows.remove(0);
    assert_eq!((row.photos, row.name().as_str()), (1, "W1, Stud spacing, grid B"));
    assert_eq!(
        row.follow_ups,
        [
            "Agreed, 2026-05-04 08:07, A. Framer: Add a stud at 24\"; B. Engineer said yes.",
            "Done, 2026-05-04 08:08, A. Framer: Added.",
        ]
    );
}
