//! A strapped ceiling in plan, to scale: joists, strips with their joints, and the shim at each crossing.

use framing::layout::drawn_strapping::{DrawnCrossing, DrawnStrapping};
use framing::quick::reply::QuickReply;
use framing::words;
use measure::Length;

use crate::pen::{Pen, circle, dot, outline, rectangle, several};
use crate::scene::{Ink, Weight};

/// Pixels that a figure of a shim needs for itself: across, along.
const ROOM: (f64, f64) = (24.0, 22.0);
/// Figures that are written where there is no room for all: those of the thickest shims.
const WORST: usize = 3;
/// More crossings than this are drawn as dots only where a shim is.
const MANY: usize = 400;

/// Draws it with the sixteenths of each shim, or with dots by thickness where figures would not be read.
pub(super) fn picture(drawn: &DrawnStrapping, reply: &QuickReply) -> crate::scene::Scene {
    let [across, along] = drawn.room.map(Length::inches);
    let mut pen = Pen::new((0.0, 0.0), (across, along));
    pen.margin(44.0, 30.0, 30.0);
    outline(&mut pen, &rectangle(0.0, 0.0, across, along), Weight::Seen, Ink::Ink);
    joists(&mut pen, drawn);
    strips(&mut pen, drawn);
    let figures = readable(&pen, drawn);
    for crossing in &drawn.crossings {
        mark(&mut pen, crossing, figures, drawn.crossings.len() <= MANY);
    }
    if !figures {
        worst(&mut pen, drawn);
    }
    pen.dimension(
        (0.0, -pen.paper(12.0)),
        (across, -pen.paper(12.0)),
        &words::length(drawn.room[0]),
        Some("strap_across"),
    );
    let x = -pen.paper(14.0);
    pen.dimension((x, along), (x, 0.0), &words::length(drawn.room[1]), Some("strap_along"));
    let below = along + pen.paper(22.0);
    if let Some(says) = legend(drawn, figures) {
        pen.label((across / 2.0, below), says);
    }
    pen.scene(alt(drawn, reply, figures))
}

fn legend(drawn: &DrawnStrapping, figures: bool) -> Option<&'static str> {
    let shims = drawn.crossings.iter().any(|crossing| crossing.shim.is_some());
    shims.then_some(if figures { "shims in sixteenths" } else { "the larger, the thicker" })
}

fn joists(pen: &mut Pen, drawn: &DrawnStrapping) {
    let (along, half) = (drawn.room[1].inches(), drawn.joist_thick.inches() / 2.0);
    let across = drawn.room[0].inches();
    // Two lines where they are told apart, else one.
    let faces = if 2.0 * half >= pen.paper(4.0) { vec![-half, half] } else { vec![0.0] };
    for joist in &drawn.joists {
        for face in &faces {
            let x = (joist.inches() + face).clamp(0.0, across);
            pen.line((x, 0.0), (x, along), Weight::Fine, Ink::Ink);
        }
    }
}

fn strips(pen: &mut Pen, drawn: &DrawnStrapping) {
    for row in &drawn.rows {
        let (top, bottom) = ((row.centre - row.wide / 2.0).inches(), (row.centre + row.wide / 2.0).inches());
        for [from, to] in &row.pieces {
            pen.shape(rectangle(from.inches(), top, to.inches(), bottom), Weight::Cut, Ink::Ink, false);
        }
    }
    let wide = drawn.strip_wide.inches().min(drawn.room[0].inches() / 4.0);
    for (pieces, left) in drawn.short.iter().zip([0.0, drawn.room[0].inches() - wide]) {
        for [from, to] in pieces {
            pen.shape(rectangle(left, from.inches(), left + wide, to.inches()), Weight::Seen, Ink::Ink, false);
        }
    }
}

/// Whether every crossing has room for its figure.
fn readable(pen: &Pen, drawn: &DrawnStrapping) -> bool {
    let near = |places: Vec<f64>| places.windows(2).map(|pair| pair[1] - pair[0]).fold(f64::INFINITY, f64::min);
    let joists = near(drawn.joists.iter().map(|joist| joist.inches()).collect());
    let rows = near(drawn.rows.iter().map(|row| row.centre.inches()).collect());
    joists >= pen.paper(ROOM.0) && rows >= pen.paper(ROOM.1)
}

fn place(crossing: &DrawnCrossing) -> (f64, f64) {
    (crossing.at[0].inches(), crossing.at[1].inches())
}

/// A shim in sixteenths: whole ones alone, as they are rounded.
fn sixteenths(shim: Length) -> f64 {
    (shim.inches() * 16.0).round()
}

fn figure(crossing: &DrawnCrossing) -> String {
    let known = crossing.shim.map(|shim| format!("{:.0}", sixteenths(shim)));
    match known {
        Some(figure) if crossing.read => figure,
        Some(figure) => format!("{figure}?"),
        None => "-".to_owned(),
    }
}

fn mark(pen: &mut Pen, crossing: &DrawnCrossing, figures: bool, all: bool) {
    let (x, y) = place(crossing);
    if figures {
        pen.label((x, y + pen.paper(11.0)), &figure(crossing));
    } else {
        spot(pen, crossing, all);
    }
    if crossing.doubtful {
        let ring = circle((x, y), pen.paper(9.0));
        outline(pen, &ring, Weight::Cut, Ink::AtLimit);
    }
    if crossing.planed {
        let arm = pen.paper(6.0);
        pen.line((x - arm, y - arm), (x + arm, y + arm), Weight::Cut, Ink::Short);
        pen.line((x - arm, y + arm), (x + arm, y - arm), Weight::Cut, Ink::Short);
    }
}

/// A dot as large as the shim is thick: hollow to 1/4 in, filled over it; a dash where it is not known.
fn spot(pen: &mut Pen, crossing: &DrawnCrossing, all: bool) {
    let at = place(crossing);
    match crossing.shim {
        Some(shim) if shim > Length::ZERO => {
            let radius = pen.paper((1.5 + sixteenths(shim) * 0.35).min(7.0));
            dot(pen, at, radius, Ink::Ink, sixteenths(shim) > 4.0);
        }
        None if all => {
            let half = pen.paper(3.0);
            pen.line((at.0 - half, at.1), (at.0 + half, at.1), Weight::Fine, Ink::Ink);
        }
        _ => {}
    }
}

/// The thickest, each so far from the others that both are read.
fn worst(pen: &mut Pen, drawn: &DrawnStrapping) {
    let mut found: Vec<&DrawnCrossing> =
        drawn.crossings.iter().filter(|crossing| crossing.shim.is_some_and(|shim| shim > Length::ZERO)).collect();
    found.sort_by(|one, other| {
        other.shim.map(Length::inches).unwrap_or_default().total_cmp(&one.shim.map(Length::inches).unwrap_or_default())
    });
    let mut written: Vec<(f64, f64)> = Vec::new();
    let apart = (pen.paper(40.0), pen.paper(22.0));
    for crossing in found {
        let (x, y) = place(crossing);
        let beside = (x, y + pen.paper(13.0));
        if written.iter().any(|(x, y)| (beside.0 - x).abs() < apart.0 && (beside.1 - y).abs() < apart.1) {
            continue;
        }
        let words = crossing.shim.map_or_else(String::new, words::inches);
        pen.label(beside, &words);
        written.push(beside);
        if written.len() == WORST {
            return;
        }
    }
}

fn alt(drawn: &DrawnStrapping, reply: &QuickReply, figures: bool) -> String {
    let joints: usize = drawn.rows.iter().map(|row| row.pieces.len().saturating_sub(1)).sum();
    let told = |wanted: fn(&DrawnCrossing) -> bool, what: &str| {
        let found: Vec<String> = drawn
            .crossings
            .iter()
            .filter(|crossing| wanted(crossing))
            .take(6)
            .map(|crossing| format!("row {}, joist {}", crossing.name[0], crossing.name[1]))
            .collect();
        if found.is_empty() { String::new() } else { format!(" {what}: {}.", found.join("; ")) }
    };
    let shims = match (drawn.crossings.is_empty(), figures) {
        (true, _) => "",
        (false, true) => " At each crossing stands its shim in sixteenths.",
        (false, false) => " At each crossing a dot is as large as its shim is thick, filled over 1/4\".",
    };
    format!(
        "The ceiling in plan, {} across {} and {} along them: {} of strips, {} on joists. {} {}.{shims}{}{}",
        words::length(drawn.room[0]),
        several(drawn.joists.len(), "joist"),
        words::length(drawn.room[1]),
        several(drawn.rows.len(), "row"),
        several(joints, "joint"),
        reply.size,
        reply.verdict,
        told(|crossing| crossing.doubtful, "Ringed, to be read again"),
        told(|crossing| crossing.planed, "Crossed, to be planed")
    )
}
