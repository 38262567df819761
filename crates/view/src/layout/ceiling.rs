//! A strapped ceiling in plan, to scale: joists, strips with their joints, and the shim at each crossing.

use framing::layout::drawn_strapping::{DrawnCrossing, DrawnStrapping};
use framing::quick::reply::QuickReply;
use framing::reading::Reading;
use framing::words;
use measure::Length;

use crate::pen::{Pen, circle, dot, outline, rectangle, several};
use crate::scene::{Ink, Weight};

/// Pixels that a figure of a shim needs for itself: across, along.
const ROOM: (f64, f64) = (22.0, 20.0);
/// Pixels that a piece is drawn short of a joint, so that the joint is seen.
const JOINT: f64 = 1.2;
/// Strips of fewer pixels are drawn as one line.
const NARROW: f64 = 2.5;
/// Pixels of the largest dot, and the shim that it stands for, in sixteenths.
const LARGEST: f64 = 7.0;
const SIXTEENTHS_OF_LARGEST: f64 = 16.0;
/// Lines nearer to each other than so many pixels hide the dots.
const CROWDED: f64 = 8.0;
/// Dots of fewer pixels have no mark in them.
const SMALL: f64 = 3.0;
/// Figures that are written where there is no room for all: those of the thickest shims.
const WORST: usize = 3;
/// More crossings than this are drawn as dots only where a shim is.
const MANY: usize = 400;

/// Whether an input of strapping has something to say.
pub(super) fn speaks(id: &str, reading: &Reading) -> bool {
    let said = |id: &str| reading.get(id).is_some_and(|value| !value.text.is_empty());
    match id {
        "strap_joist_every" | "strap_joist_first" => !said("strap_joists_at"),
        "strap_read_in" | "strap_read_at" | "strap_datum" | "strap_level" | "strap_datum_high" | "strap_aim"
        | "strap_shims" | "strap_shim_most" => said("strap_readings"),
        "strap_joists_are" | "strap_joist_deep" => said("strap_readings") || said("strap_beam_deep"),
        "strap_beam_proud" => said("strap_beam_deep"),
        "strap_plates" => said("strap_stud"),
        "strap_wall_boards" | "strap_floor_gap" | "strap_floor_thick" => said("strap_stud") || said("strap_wall_high"),
        _ => true,
    }
}

/// Draws it with the sixteenths of each shim, or with dots by thickness where figures would not be read.
pub(super) fn picture(drawn: &DrawnStrapping, reply: &QuickReply) -> crate::scene::Scene {
    let [across, along] = drawn.room.map(Length::inches);
    let mut pen = Pen::new((0.0, 0.0), (across, along));
    pen.margin(44.0, 30.0, 44.0);
    outline(&mut pen, &rectangle(0.0, 0.0, across, along), Weight::Seen, Ink::Ink);
    let (every_joist, every_row) = spacing(&pen, drawn);
    let figures = every_joist >= ROOM.0 && every_row >= ROOM.1;
    let near = every_joist.min(every_row);
    // Where lines would hide the dots, the dots alone tell where they cross.
    let crowded = !drawn.crossings.is_empty() && near < CROWDED;
    if !crowded {
        joists(&mut pen, drawn);
        strips(&mut pen, drawn);
    }
    for crossing in &drawn.crossings {
        if figures {
            pen.label(beside(&pen, crossing), &figure(crossing));
        } else {
            spot(&mut pen, crossing, (near * 0.45).min(LARGEST), drawn.crossings.len() <= MANY);
        }
        asked(&mut pen, crossing, figures);
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
    let below = along + pen.paper(34.0);
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
    let (part, narrow) = (pen.paper(JOINT), drawn.strip_wide.inches() < pen.paper(NARROW));
    for row in &drawn.rows {
        let (top, bottom) = ((row.centre - row.wide / 2.0).inches(), (row.centre + row.wide / 2.0).inches());
        let last = row.pieces.len().saturating_sub(1);
        for (index, [from, to]) in row.pieces.iter().enumerate() {
            let left = from.inches() + if index > 0 { part } else { 0.0 };
            let right = to.inches() - if index < last { part } else { 0.0 };
            if narrow {
                let middle = row.centre.inches();
                pen.line((left, middle), (right, middle), Weight::Seen, Ink::Ink);
            } else {
                pen.shape(rectangle(left, top, right, bottom), Weight::Cut, Ink::Ink, false);
            }
        }
    }
    let wide = drawn.strip_wide.inches().min(drawn.room[0].inches() / 4.0);
    for (pieces, left) in drawn.short.iter().zip([0.0, drawn.room[0].inches() - wide]) {
        for [from, to] in pieces {
            pen.shape(rectangle(left, from.inches(), left + wide, to.inches()), Weight::Seen, Ink::Ink, false);
        }
    }
}

/// The least pixels from joist to joist and from row to row.
fn spacing(pen: &Pen, drawn: &DrawnStrapping) -> (f64, f64) {
    let near = |places: Vec<f64>| places.windows(2).map(|pair| pair[1] - pair[0]).fold(f64::INFINITY, f64::min);
    let joists = near(drawn.joists.iter().map(|joist| joist.inches()).collect());
    let rows = near(drawn.rows.iter().map(|row| row.centre.inches()).collect());
    let pixel = pen.paper(1.0);
    (joists / pixel, rows / pixel)
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

/// Where the figure of a crossing stands: beside its strip.
fn beside(pen: &Pen, crossing: &DrawnCrossing) -> (f64, f64) {
    let (x, y) = place(crossing);
    (x, y + pen.paper(11.0))
}

/// A ring around what is to be read again, a cross where the joist is to be planed.
fn asked(pen: &mut Pen, crossing: &DrawnCrossing, figures: bool) {
    let (x, y) = place(crossing);
    if crossing.doubtful {
        let (middle, radius) = if figures { (beside(pen, crossing), 13.0) } else { ((x, y), 9.0) };
        outline(pen, &circle(middle, pen.paper(radius)), Weight::Cut, Ink::AtLimit);
    }
    if crossing.planed {
        let arm = pen.paper(6.0);
        pen.line((x - arm, y - arm), (x + arm, y + arm), Weight::Cut, Ink::Short);
        pen.line((x - arm, y + arm), (x + arm, y - arm), Weight::Cut, Ink::Short);
    }
}

/// A dot as large as the shim is thick, with a mark in it over 1/4 in; a dash where it is not known.
fn spot(pen: &mut Pen, crossing: &DrawnCrossing, most: f64, all: bool) {
    let at = place(crossing);
    match crossing.shim {
        Some(shim) if shim > Length::ZERO => {
            let share = (sixteenths(shim) / SIXTEENTHS_OF_LARGEST).min(1.0);
            let radius = pen.paper(most * (0.25 + 0.75 * share));
            if most < SMALL {
                pen.shape(circle(at, radius), Weight::Seen, Ink::Ink, false);
            } else {
                dot(pen, at, radius, Ink::Ink, sixteenths(shim) > 4.0);
            }
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
        let beside = beside(pen, crossing);
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
        (false, false) => " At each crossing a dot is as large as its shim is thick.",
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
