//! What follows for each wall, in words: what is to be asked first, then what is built as it is drawn.

use measure::Force;

use super::compare::{Compared, Drawing, Held, Panels};
use crate::quick::say::{capital, pounds, up};
use crate::words::percent;

/// The sentences of all walls.
pub(super) fn action(all: &[Compared<'_>]) -> Vec<String> {
    let mut says: Vec<String> = all.iter().filter(|one| one.asks()).map(ask).collect();
    let built = |more: bool| {
        let of = all.iter().filter(|one| !one.asks() && one.asks_more() == more);
        of.map(|one| format!("{} ({})", one.wall.name, one.mark())).collect::<Vec<String>>()
    };
    let (more, alike) = (built(true), built(false));
    if !more.is_empty() {
        says.push(format!("{}: the drawing asks for more than is worked. Build the drawing.", more.join(", ")));
    }
    if !alike.is_empty() {
        says.push(format!("{}: both agree. Build the drawing.", alike.join(", ")));
    }
    says
}

/// The same of one wall in a few words.
pub(super) fn follows(one: &Compared<'_>) -> &'static str {
    match one.panels {
        Panels::NotNamed => "the drawing does not name it: ask",
        Panels::NotInSchedule => "the schedule has no such mark: ask",
        Panels::NothingCarries => "nothing of the tables carries it: ask the engineer",
        _ if one.asks() => "ask the engineer before nailing",
        _ if one.asks_more() => "the drawing asks for more",
        _ => "both agree",
    }
}

fn ask(one: &Compared<'_>) -> String {
    let mut says: Vec<String> = [panels(one), ends(one)].into_iter().flatten().collect();
    for later in says.iter_mut().skip(1) {
        *later = capital(later);
    }
    format!("{}: {} {}", one.wall.name, says.join(" "), whom(one))
}

fn panels(one: &Compared<'_>) -> Option<String> {
    let mark = one.mark();
    match (one.panels, &one.drawing) {
        (Panels::Agree | Panels::AsksMore, _) => None,
        (Panels::Over, _) => {
            let used = one.drawn().and_then(|drawn| drawn.used).map_or_else(String::new, percent);
            Some(format!("{mark} is used {used} by the tables."))
        }
        (Panels::NothingCarries, _) => Some(nothing_carries(one)),
        (_, Drawing::NotWorked(_, why)) => Some(format!("{mark} has no number by the tables. {why}")),
        (_, Drawing::NotInSchedule(mark)) => Some(format!("no line of the schedule gives {mark}.")),
        _ => Some("the drawing does not name this wall.".to_owned()),
    }
}

fn nothing_carries(one: &Compared<'_>) -> String {
    let push = pounds(one.wall.push);
    let missing = one.missing.as_ref().map_or_else(String::new, |(column, missing)| {
        let narrow = if column.used.is_none() { " No piece is long enough to count." } else { "" };
        let (missing, nailing) = (up(*missing), column.nailing);
        format!("{narrow} {missing} more full-height wall is missing, no narrower than half its height, even with {nailing}.")
    });
    format!(
        "nothing of the tables carries {push} on these pieces.{missing} It takes that, or an engineer's portal frame or steel frame."
    )
}

fn ends(one: &Compared<'_>) -> Option<String> {
    if let Err(why) = &one.pull {
        return Some(format!("what pulls at its ends is not worked: {why}."));
    }
    let (mark, pull) = (one.mark(), pounds(one.tension().unwrap_or(Force::ZERO)));
    match &one.held {
        Held::NotSaid => Some(format!("its ends pull {pull}, and {mark} names no hold-down.")),
        Held::Missing(named) => Some(format!("its ends pull {pull}, and no line of the schedule gives {named}.")),
        Held::By(hold_down, share) if *share > 1.0 => {
            Some(format!("its ends pull {pull}, and {} holds {}.", hold_down.mark, pounds(hold_down.load)))
        }
        Held::By(..) | Held::NotAsked | Held::NotNeeded => None,
    }
}

/// Who is to be asked, and what stands until they answer.
fn whom(one: &Compared<'_>) -> &'static str {
    match one.panels {
        Panels::NotNamed => "Ask the engineer how it is nailed and held.",
        Panels::NothingCarries if one.wall.mark.is_none() => "Ask the engineer.",
        Panels::NotInSchedule => "Look on the drawing, or ask the engineer.",
        _ if matches!(one.held, Held::NotSaid | Held::Missing(_)) && one.panels != Panels::Over => {
            "Look on the drawing, or ask the engineer."
        }
        _ => "Ask the engineer before nailing; the drawing stands until they change it.",
    }
}
