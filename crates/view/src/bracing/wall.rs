//! A braced wall from the front: its panels, the nails at their spacing, chalk lines for the studs, and what pushes and
//! holds it.

use framing::quick::reply::{DrawnOpening, DrawnPiece, DrawnWall, QuickReply};
use framing::words;

use crate::markup::Act;
use crate::pen::{Pen, circle, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Between two pieces where nobody said what is there.
const GAP: f64 = 36.0;
/// Panels are so wide.
const PANEL: f64 = 48.0;
/// A plate's thickness.
const PLATE: f64 = 1.5;
/// Pixels of a letter, about: the margins make all of it smaller on a phone, and letters keep their size.
const LETTER: f64 = 12.4;
/// Pixels from one row of figures to the next.
const ROW: f64 = 20.0;
/// The most nails that are drawn along one line: more are a smear.
const NAILS: usize = 40;

pub(super) fn picture(drawn: &DrawnWall, reply: &QuickReply) -> Scene {
    let gaps = drawn.pieces.len().saturating_sub(1);
    let between = |index: usize| drawn.openings.get(index).map_or(GAP, |opening| opening.width.inches());
    let pieces: f64 = drawn.pieces.iter().map(|piece| piece.length.inches()).sum();
    let width = pieces + (0..gaps).map(between).sum::<f64>();
    let height: f64 = drawn.storeys.iter().map(|(height, _)| height.inches()).sum();
    let mut pen = Pen::new((0.0, 0.0), (width, height));
    let second_row = if crowded(&pen, drawn, between) { ROW } else { 0.0 };
    pen.margin(66.0, 34.0, 76.0 + second_row);
    let mut top = 0.0;
    for (level, (tall, push)) in drawn.storeys.iter().enumerate() {
        let bottom = top + tall.inches();
        storey(&mut pen, drawn, (top, bottom), (between, second_row));
        let (tail, head) = (-pen.paper(58.0), -pen.paper(4.0));
        let y = top + PLATE;
        pen.marks.push(Mark::Arrow { from: (tail, y), to: (head, y), figure: String::new(), ink: Ink::Chalk });
        pen.label(((tail + head) / 2.0, y - pen.paper(13.0)), push);
        if let Some(hold) = drawn.holds.get(level).filter(|hold| !hold.is_empty()) {
            let post = drawn.post.inches() / 2.0;
            held(&mut pen, (post, bottom));
            held(&mut pen, (width - post, bottom));
            pen.label((width / 2.0, bottom + pen.paper(26.0)), hold);
        }
        top = bottom;
    }
    pen.line((-pen.paper(20.0), height), (width + pen.paper(20.0), height), Weight::Seen, Ink::Ink);
    let below = height + pen.paper(62.0 + second_row);
    let mut left = 0.0;
    for (index, piece) in drawn.pieces.iter().enumerate() {
        let right = left + piece.length.inches();
        pen.dimension((left, below), (right, below), &words::length(piece.length), Some("wall_pieces"));
        left = right + if index < gaps { between(index) } else { 0.0 };
    }
    let side = width + pen.paper(34.0);
    let first = if drawn.storeys.len() > 1 || drawn.nails.is_none() { "storey_heights" } else { "wall_high" };
    let mut top = 0.0;
    for (tall, _) in &drawn.storeys {
        pen.dimension((side, top + tall.inches()), (side, top), &words::length(*tall), Some(first));
        top += tall.inches();
    }
    let what = if drawn.nails.is_none() { "wall_long" } else { "wall_pieces" };
    pen.pick((0.0, 0.0), (width, height), Act::Bring(what), "Its length".to_owned());
    pen.scene(alt(drawn, reply))
}

fn alt(drawn: &DrawnWall, reply: &QuickReply) -> String {
    let pieces: Vec<String> = drawn.pieces.iter().map(|piece| words::length(piece.length)).collect();
    let pushes: Vec<&str> = drawn.storeys.iter().map(|(_, push)| push.as_str()).collect();
    let joints: Vec<String> = drawn.level_joints.iter().map(|at| words::length(*at)).collect();
    let lie = if drawn.blocked { "on blocking" } else { "on nothing" };
    let joints =
        if joints.is_empty() { String::new() } else { format!(" Level joints {} up lie {lie}.", joints.join(" and ")) };
    format!(
        "A braced wall from the front, pieces of {}. {} pushes along it at the top.{joints} {}",
        pieces.join(" and "),
        pushes.join(" and "),
        reply.action.first().map_or("", String::as_str)
    )
}

/// Whether what holds neighbouring pieces down would be written on each other.
fn crowded(pen: &Pen, drawn: &DrawnWall, between: impl Fn(usize) -> f64) -> bool {
    let mut pairs = drawn.pieces.windows(2).enumerate();
    let close = |(index, pair): (usize, &[DrawnPiece])| {
        let [one, other] = pair else { return false };
        let apart = (one.length.inches() + other.length.inches()) / 2.0 + between(index);
        let letters = one.left.chars().count() + other.left.chars().count();
        apart < pen.paper(LETTER * letters as f64 / 2.0)
    };
    pairs.any(close)
}

fn storey(
    pen: &mut Pen,
    drawn: &DrawnWall,
    (top, bottom): (f64, f64),
    (between, second_row): (impl Fn(usize) -> f64, f64),
) {
    let mut left = 0.0;
    for (index, piece) in drawn.pieces.iter().enumerate() {
        let right = left + piece.length.inches();
        let row = if index % 2 == 1 { second_row } else { 0.0 };
        self::piece(
            pen,
            drawn,
            (piece, second_row <= 0.0 || index + 1 == drawn.pieces.len(), row),
            [left, top, right, bottom],
        );
        left = right;
        if index + 1 < drawn.pieces.len() {
            let right = left + between(index);
            match drawn.openings.get(index) {
                Some(opening) => self::opening(pen, opening, [left, top, right, bottom]),
                None => plates(pen, [left, top, right, bottom]),
            }
            left = right;
        }
    }
}

/// Top plates that run through, and a bottom plate, where nothing else was said.
fn plates(pen: &mut Pen, [left, top, right, bottom]: [f64; 4]) {
    pen.shape(rectangle(left, top, right, top + 2.0 * PLATE), Weight::Fine, Ink::Ink, false);
    pen.line((left, bottom), (right, bottom), Weight::Hidden, Ink::Ink);
}

fn opening(pen: &mut Pen, opening: &DrawnOpening, [left, top, right, bottom]: [f64; 4]) {
    plates(pen, [left, top, right, bottom]);
    let high = opening.height.inches();
    // A low one has its head where doors have theirs.
    let head = (bottom - 81.0).min(bottom - high).max(top + 2.0 * PLATE);
    let sill = (head + high).min(bottom);
    if opening.sheathed {
        pen.shape(rectangle(left, top + 2.0 * PLATE, right, head), Weight::Seen, Ink::Ink, true);
        if sill < bottom - 1.0 {
            pen.shape(rectangle(left, sill, right, bottom), Weight::Seen, Ink::Ink, true);
        }
    }
    pen.shape(rectangle(left, head, right, sill), Weight::Cut, Ink::Ink, false);
    pen.line((left, sill), (right, head), Weight::Fine, Ink::Ink);
}

fn piece(
    pen: &mut Pen,
    drawn: &DrawnWall,
    (piece, has_word, row): (&DrawnPiece, bool, f64),
    [left, top, right, bottom]: [f64; 4],
) {
    let ink = if piece.counts { Ink::Ink } else { Ink::Short };
    pen.shape(rectangle(left, top, right, bottom), Weight::Cut, ink, piece.counts);
    for plate in [top + PLATE, top + 2.0 * PLATE, bottom - PLATE] {
        pen.line((left, plate), (right, plate), Weight::Fine, ink);
    }
    let (head, sill) = (top + 2.0 * PLATE, bottom - PLATE);
    // Chalk lines for the studs, panel by panel.
    let mut stud = left + drawn.studs.inches();
    while stud < right - 2.0 {
        pen.line((stud, head), (stud, sill), Weight::Hidden, Ink::Chalk);
        stud += drawn.studs.inches();
    }
    let post = drawn.post.inches().min((right - left) / 2.0);
    for at in [left + post, right - post] {
        pen.line((at, head), (at, sill), Weight::Seen, ink);
    }
    level_joints(pen, drawn, (piece, has_word), [left, top, right, bottom]);
    if let Some((edge, field)) = drawn.nails.filter(|_| piece.counts) {
        let mut panel = left;
        while panel < right - 1.0 {
            let end = (panel + PANEL).min(right);
            pen.line((panel, top), (panel, bottom), Weight::Seen, ink);
            nails(pen, [panel, top, end, bottom], (edge.inches(), field.inches(), drawn.studs.inches()));
            panel = end;
        }
    }
    let under = bottom + pen.paper(26.0 + row);
    let ends = [(left + post / 2.0, &piece.left), (right - post / 2.0, &piece.right)];
    for (at, pull) in ends.iter().filter(|(_, pull)| !pull.is_empty()) {
        held(pen, (*at, bottom));
        if piece.left != piece.right {
            pen.label((*at, under), pull);
        }
    }
    // The same at both ends is written once between them.
    if piece.left == piece.right && !piece.left.is_empty() {
        pen.label(((left + right) / 2.0, under), &piece.left);
    }
}

/// Level joints of the panels: blocks between the studs where they are blocked, and a word at each.
/// Where there is no room for it at each, the last piece has it for all.
fn level_joints(
    pen: &mut Pen,
    drawn: &DrawnWall,
    (piece, has_word): (&DrawnPiece, bool),
    [left, _, right, bottom]: [f64; 4],
) {
    let word = match (piece.counts, drawn.blocked) {
        (true, true) => "block",
        (true, false) => "open",
        (false, _) => "not required",
    };
    for joint in &drawn.level_joints {
        let at = bottom - joint.inches();
        let weight = if drawn.blocked { Weight::Seen } else { Weight::Hidden };
        pen.line((left, at), (right, at), weight, Ink::Ink);
        if piece.counts && drawn.blocked {
            pen.shape(rectangle(left, at - PLATE, right, at + PLATE), Weight::Fine, Ink::Ink, false);
        }
        if has_word {
            pen.label(((left + right) / 2.0, at - pen.paper(11.0)), word);
        }
    }
}

/// Nails along the edges of a panel, and along the studs in its field.
pub(super) fn nails(pen: &mut Pen, [left, top, right, bottom]: [f64; 4], (edge, field, studs): (f64, f64, f64)) {
    let radius = pen.paper(0.9);
    let inset = pen.paper(2.6).max(0.375);
    let mut along = |from: (f64, f64), to: (f64, f64), apart: f64| {
        let length = (to.0 - from.0).abs().max((to.1 - from.1).abs());
        let spaces = ((length / apart).round().max(1.0) as usize).min(NAILS);
        for index in 0..=spaces {
            let share = index as f64 / spaces as f64;
            let at = (from.0 + (to.0 - from.0) * share, from.1 + (to.1 - from.1) * share);
            pen.shape(circle(at, radius), Weight::Fine, Ink::Ink, false);
        }
    };
    let (l, t, r, b) = (left + inset, top + inset, right - inset, bottom - inset);
    for (from, to) in [((l, t), (r, t)), ((l, b), (r, b)), ((l, t), (l, b)), ((r, t), (r, b))] {
        along(from, to, edge);
    }
    let mut stud = left + studs;
    while stud < right - 2.0 {
        along((stud, t), (stud, b), field);
        stud += studs;
    }
}

/// What holds an end down: an arrow into what is below.
fn held(pen: &mut Pen, (x, bottom): (f64, f64)) {
    let from = (x, bottom - pen.paper(14.0));
    let to = (x, bottom + pen.paper(16.0));
    pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
}
