//! Both columns as tables and as bars.

use super::compare::{Column, Compared, Drawing, Held};
use super::says::follows;
use crate::quick::drawn_compared::{DrawnPair, DrawnShare};
use crate::quick::reply::TableReply;
use crate::quick::say::pounds;
use crate::words::percent;

const NONE: &str = "—";

/// Two tables, so that each is read across on a phone: the panels in both columns, and what pulls at their ends.
pub(super) fn tables(all: &[Compared<'_>]) -> Vec<TableReply> {
    let panels = table("Drawn and worked", &["wall", "drawn", "worked"], all, panels);
    let ends = table("At their ends", &["wall", "push", "pull", "drawn"], all, ends);
    let notes = vec!["The drawing wins, also where it asks for more or for less.".to_owned()];
    vec![TableReply { notes, ..panels }, ends]
}

fn table(
    heading: &str,
    columns: &[&str],
    all: &[Compared<'_>],
    row: impl Fn(&Compared<'_>) -> Vec<String>,
) -> TableReply {
    TableReply {
        heading: heading.to_owned(),
        columns: columns.iter().map(|column| (*column).to_owned()).collect(),
        rows: all.iter().map(row).collect(),
        notes: Vec::new(),
    }
}

fn panels(one: &Compared<'_>) -> Vec<String> {
    let worked = one.worked.as_ref().map_or_else(|| "none carries".to_owned(), |column| column.nailing.to_string());
    let with_share = |text: String, column: Option<&Column>| match column.and_then(|column| column.used) {
        Some(used) => format!("{text}, {}", percent(used)),
        None => text,
    };
    vec![one.wall.name.clone(), with_share(drawn(one), one.drawn()), with_share(worked, one.worked.as_ref())]
}

fn ends(one: &Compared<'_>) -> Vec<String> {
    let pull = one.tension().map_or_else(|| NONE.to_owned(), pounds);
    let held = match one.hold_down_share() {
        Some(share) => format!("{}, {}", hold_down(one), percent(share)),
        None => hold_down(one),
    };
    vec![one.wall.name.clone(), pounds(one.wall.push), pull, held]
}

fn drawn(one: &Compared<'_>) -> String {
    match &one.drawing {
        Drawing::NotNamed => "not named".to_owned(),
        Drawing::NotInSchedule(mark) => format!("{mark}: not in the schedule"),
        Drawing::NotWorked(panel, _) => {
            let unblocked = if panel.blocked == Some(false) { ", unblocked" } else { "" };
            format!("{}: {}{unblocked}, not worked", panel.mark, panel.nailing)
        }
        Drawing::Worked(panel, _) => format!("{}: {}", panel.mark, panel.nailing),
    }
}

fn hold_down(one: &Compared<'_>) -> String {
    match &one.held {
        Held::By(hold_down, _) => format!("{}: {}", hold_down.mark, pounds(hold_down.load)),
        Held::Missing(named) => format!("{named}: not in the schedule"),
        Held::NotSaid => "none said".to_owned(),
        Held::NotNeeded => "as drawn".to_owned(),
        Held::NotAsked => NONE.to_owned(),
    }
}

pub(super) fn pair(one: &Compared<'_>) -> DrawnPair {
    DrawnPair {
        name: one.wall.name.clone(),
        mark: one.mark().to_owned(),
        drawn: drawn_share(one),
        worked: worked_share(one),
        follows: follows(one).to_owned(),
        asks: one.asks(),
    }
}

/// What of the drawing is used the hardest: its panels or what holds their ends.
fn drawn_share(one: &Compared<'_>) -> DrawnShare {
    let panels = one.drawn().and_then(|column| column.used);
    let (share, what) = match (panels, one.hold_down_share()) {
        (Some(panels), Some(ends)) if ends > panels => (Some(ends), ", ends"),
        (panels, None) if one.ends_ask() => (panels, ", ends?"),
        (panels, _) => (panels, ""),
    };
    let why = match &one.drawing {
        Drawing::NotNamed => "not named",
        Drawing::NotInSchedule(_) => "no such mark",
        Drawing::NotWorked(..) => "not worked",
        Drawing::Worked(..) => "nothing counts",
    };
    DrawnShare { share, says: share.map_or_else(|| why.to_owned(), |share| format!("{}{what}", percent(share))) }
}

fn worked_share(one: &Compared<'_>) -> DrawnShare {
    let share = one.worked.as_ref().and_then(|column| column.used);
    DrawnShare { share, says: share.map_or_else(|| "none carries".to_owned(), percent) }
}
