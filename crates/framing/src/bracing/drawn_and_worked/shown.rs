//! Both columns as a table and as bars.

use super::compare::{Column, Compared, Drawing, Held};
use super::says::follows;
use crate::quick::drawn_compared::{DrawnPair, DrawnShare};
use crate::quick::reply::TableReply;
use crate::quick::say::pounds;
use crate::words::percent;

const NONE: &str = "—";

pub(super) fn table(all: &[Compared<'_>]) -> TableReply {
    let row = |one: &Compared<'_>| {
        let worked = one.worked.as_ref().map_or_else(|| "none carries".to_owned(), |column| column.nailing.to_string());
        vec![
            one.wall.name.clone(),
            pounds(one.wall.push),
            drawn(one),
            used(one.drawn()),
            worked,
            used(one.worked.as_ref()),
            pull_and_hold_down(one),
        ]
    };
    TableReply {
        heading: "Wall by wall".to_owned(),
        columns: ["wall", "push", "drawn", "used", "worked", "used", "pull, drawn hold-down"]
            .map(str::to_owned)
            .to_vec(),
        rows: all.iter().map(row).collect(),
        notes: vec!["The drawing wins, also where it asks for more or for less.".to_owned()],
    }
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

fn used(column: Option<&Column>) -> String {
    column.and_then(|column| column.used).map_or_else(|| NONE.to_owned(), percent)
}

fn pull_and_hold_down(one: &Compared<'_>) -> String {
    let pull = one.tension().map_or_else(|| NONE.to_owned(), pounds);
    let held = match &one.held {
        Held::By(hold_down, share) => format!("{} {}, {}", hold_down.mark, pounds(hold_down.load), percent(*share)),
        Held::Missing(named) => format!("{named}: not in the schedule"),
        Held::NotSaid => "none said".to_owned(),
        Held::NotNeeded => "as drawn".to_owned(),
        Held::NotAsked => NONE.to_owned(),
    };
    format!("{pull}; {held}")
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
