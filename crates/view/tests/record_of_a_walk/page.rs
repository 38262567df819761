//! What is put on the page.

use std::time::Instant;

use job::walk::Look;
use view::record::{
    lacks_markup, mark, mark_markup, not_seen_markup, overview, overview_markup, rows_markup, to_mend_markup,
};

use crate::log::{Log, said, whole};

const HOSTILE: &str = "\"><img src=x onerror=alert(1)>";

#[test]
fn a_mark_is_a_card_that_opens_it() {
    let shown = overview_markup(&overview(&whole().walk())).into_string();
    assert!(shown.contains("data-act=\"open m1\"") && shown.contains("class=\"mark-card short\""), "{shown}");
    assert!(shown.contains("3 looked at, 1 to mend, 1 not seen"), "{shown}");
    let none = view::record::Overview { marks: Vec::new(), ..overview(&whole().walk()) };
    assert!(overview_markup(&none).into_string().contains("No mark is typed yet. Type one: W1, garage left."));
}

#[test]
fn a_row_opens_its_look_and_tells_how_it_stands() {
    let view = mark(&whole().walk(), "m1").unwrap();
    let shown = mark_markup(&view, 0, 50).into_string();
    for id in ["a", "c", "e", "f", "g"] {
        assert!(shown.contains(&format!("data-act=\"look {id}\"")), "{id}: {shown}");
    }
    for tag in ["right", "mended", "1 photo", "corrected", "crossed out: wrong wall"] {
        assert!(shown.contains(&format!("<span class=\"tag\">{tag}</span>")), "{tag}: {shown}");
    }
    let empty = mark(&Log::begun().walk(), "m1").unwrap();
    assert!(mark_markup(&empty, 0, 50).into_string().contains("Nothing was looked at here yet."));
}

#[test]
fn what_is_open_is_listed_with_its_name_and_nothing_is_listed_empty() {
    let shown = overview(&whole().walk());
    let to_mend = to_mend_markup(&shown.to_mend).into_string();
    assert!(to_mend.contains("W1, Stud spacing, grid E") && to_mend.contains("<h2>To mend</h2>"), "{to_mend}");
    let not_seen = not_seen_markup(&shown.not_seen).into_string();
    assert!(
        not_seen.contains("W1, Stud spacing, grid F") && not_seen.contains("<h2>Could not be seen</h2>"),
        "{not_seen}"
    );
    let lacks = lacks_markup(&overview(&Log::begun().walk()).lacks).into_string();
    assert!(lacks.contains("data-act=\"bring project\"") && lacks.contains("data-act=\"open m1\""), "{lacks}");
    assert_eq!(to_mend_markup(&[]).into_string() + &not_seen_markup(&[]).into_string(), "");
    assert_eq!(lacks_markup(&[]).into_string(), "");
}

#[test]
fn what_was_typed_cannot_break_out_of_the_page() {
    let mut log = Log::begun();
    log.mark("m2", HOSTILE);
    let look = said("m2", HOSTILE, HOSTILE);
    let hostile = || HOSTILE.to_owned();
    log.look("a", Look { says: hostile(), note: hostile(), severity: hostile(), kind: hostile(), ..look });
    log.strike("a", HOSTILE);
    log.look("b", Look { says: hostile(), ..said("m2", HOSTILE, "out") });
    let shown = overview(&log.walk());
    let view = mark(&log.walk(), "m2").unwrap();
    let pages =
        [overview_markup(&shown), mark_markup(&view, 0, 9), to_mend_markup(&shown.to_mend), lacks_markup(&shown.lacks)];
    for page in pages {
        let page = page.into_string();
        assert!(page.contains("&lt;img") && !page.contains("<img"), "{page}");
    }
}

/// Five thousand looks: the page holds only the rows that were asked for.
#[test]
fn a_long_list_is_shown_a_window_at_a_time() {
    let mut log = Log::begun();
    for number in 0..5000 {
        let verdict = if number % 100 == 0 { "out" } else { "within" };
        log.look(&format!("l{number}"), said("m1", &format!("stud {number}"), verdict));
    }
    let walk = log.walk();
    let began = Instant::now();
    let shown = overview(&walk);
    let view = mark(&walk, "m1").unwrap();
    let window = rows_markup(&view.rows, 2475, 50).into_string();
    let cards = overview_markup(&shown).into_string();
    println!("5,000 looks: overview, mark and 50 rows in {:?}", began.elapsed());
    assert_eq!((view.rows.len(), shown.to_mend.len()), (5000, 50));
    assert_eq!(window.matches("data-act=\"look ").count(), 50);
    assert!(window.contains("look l2475\"") && window.contains("look l2524\"") && !window.contains("look l2525\""));
    assert!(window.len() < 60_000 && cards.len() < 2_000, "{} and {}", window.len(), cards.len());
    assert_eq!(rows_markup(&view.rows, 9999, 50).into_string(), "<ul class=\"looks\"></ul>");
    let last = rows_markup(&view.rows, 4990, 50).into_string();
    assert_eq!(last.matches("data-act=\"look ").count(), 10);
}
