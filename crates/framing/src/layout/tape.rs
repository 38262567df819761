//! What walls and floors say alike of the tape, and their tables.

use layout::wall::{Layout, PullTo, Spacing, XSide};
use measure::Length;

use crate::quick::reply::TableReply;
use crate::reading::Reading;
use crate::words::inches;

/// The most rows of a table.
const LISTED: usize = 240;

/// A layout read from its inputs: the spacing, what is pulled to, and how far before the end the sheets start.
pub(super) fn layout(reading: &Reading, [every, pull, beyond]: [&str; 3]) -> Option<Layout> {
    let spacing = match reading.word(every)? {
        "12" => Spacing::Twelve,
        "19.2" => Spacing::NineteenPointTwo,
        "24" => Spacing::TwentyFour,
        _ => Spacing::Sixteen,
    };
    let pull_to = match reading.word(pull)? {
        "center" => PullTo::Centre,
        "far" => PullTo::FarEdge,
        _ => PullTo::NearEdge,
    };
    Some(Layout { spacing, start: -reading.length(beyond)?, pull_to })
}

/// Where the tape goes, the first marks of the layout, and the side of the X.
pub(super) fn hook(end: &str, on_layout: impl Iterator<Item = Length>, pull_to: PullTo) -> String {
    let first: Vec<String> = on_layout.take(3).map(inches).collect();
    let side = match pull_to {
        PullTo::NearEdge => "The X goes past each line",
        PullTo::Centre => "Each piece stands over its line",
        PullTo::FarEdge => "The X goes short of each line",
    };
    let marks = match first.len() {
        0 => "No piece of the layout stands in it".to_owned(),
        1 | 2 => format!("On the layout: {}", first.join(", ")),
        _ => format!("On the layout: {}, and so on", first.join(", ")),
    };
    format!("Hook the tape on the {end} end of the plate and pull every mark from there. {marks}. {side}.")
}

/// So many things to settle, after what an answer is.
pub(super) fn verdict(what: &str, unsettled: usize) -> String {
    match unsettled {
        0 => what.to_owned(),
        1 => format!("{what}, 1 thing to settle"),
        more => format!("{what}, {more} things to settle"),
    }
}

/// A table of which no more rows are shown than a phone bears.
pub(super) fn table(heading: String, columns: &[&str], rows: Vec<Vec<String>>, mut notes: Vec<String>) -> TableReply {
    if rows.len() > LISTED {
        notes.push(format!("The first {LISTED} of {}.", rows.len()));
    }
    TableReply {
        heading,
        columns: columns.iter().map(|column| (*column).to_owned()).collect(),
        rows: rows.into_iter().take(LISTED).collect(),
        notes,
    }
}

/// On which side of its line a piece stands.
pub(super) const fn side(x: XSide) -> &'static str {
    match x {
        XSide::Past => "past",
        XSide::Over => "over",
        XSide::Short => "short",
    }
}
