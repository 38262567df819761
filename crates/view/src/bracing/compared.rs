//! Walls as drawn and as worked: two bars a wall, one under the other, and a line where all of what carries is used.

use framing::quick::drawn_compared::{DrawnPair, DrawnShare};
use framing::quick::reply::QuickReply;

use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// Height that a wall takes, in pixels of a phone, which this drawing is in; nothing here is to scale but the bars.
const WALL: f64 = 60.0;
/// Where the bars of a wall begin under its name, how thick each is, and from one to the next.
const BARS: f64 = 21.0;
const THICK: f64 = 13.0;
const NEXT: f64 = 19.0;
/// Length of a bar where all is used.
const ALL: f64 = 98.0;
/// No bar is longer than so many times that: it is broken off.
const MOST: f64 = 1.4;
/// Where the shares begin.
const SHARES: f64 = 150.0;
const WIDTH: f64 = 290.0;
/// So many walls are drawn, those to ask about first.
const SHOWN: usize = 4;
/// The longest name and mark that there is room for.
const NAME: usize = 32;

pub(super) fn picture(pairs: &[DrawnPair], reply: &QuickReply) -> Scene {
    let shown = shown(pairs);
    let height = WALL * shown.len().max(2) as f64;
    let mut pen = Pen::new((0.0, 0.0), (WIDTH, height));
    pen.margin(6.0, 26.0, 8.0);
    legend(&mut pen);
    if shown.is_empty() {
        nothing_yet(&mut pen, height);
    }
    for (index, pair) in shown.iter().enumerate() {
        wall(&mut pen, pair, WALL * index as f64);
    }
    pen.scene(alt(pairs, reply))
}

/// Those to ask about, then the others, as many as are drawn.
fn shown(pairs: &[DrawnPair]) -> Vec<&DrawnPair> {
    let (ask, others): (Vec<_>, Vec<_>) = pairs.iter().partition(|pair| pair.asks);
    ask.into_iter().chain(others).take(SHOWN).collect()
}

/// Which bar is which, and what the line is.
fn legend(pen: &mut Pen) {
    let (top, bottom) = (-22.0, -12.0);
    pen.shape(rectangle(0.0, top, 18.0, bottom), Weight::Cut, Ink::Ink, true);
    pen.label_from((24.0, -17.0), "drawn");
    pen.label_from((ALL - 12.0, -17.0), "100 %");
    pen.shape(rectangle(SHARES, top, SHARES + 18.0, bottom), Weight::Hidden, Ink::Ink, false);
    pen.label_from((SHARES + 24.0, -17.0), "worked");
}

fn nothing_yet(pen: &mut Pen, height: f64) {
    for top in [BARS, WALL + BARS] {
        bar(pen, (top, ALL * 0.8), (Weight::Hidden, Ink::Chalk, false));
        all_used(pen, top - BARS);
    }
    pen.label_from((0.0, 9.0), "the walls and their marks");
    pen.pick((0.0, 0.0), (WIDTH, height), Act::Bring("braced_walls"), "The walls and their marks".to_owned());
}

fn wall(pen: &mut Pen, pair: &DrawnPair, top: f64) {
    pen.label_from((0.0, top + 9.0), &name(pair));
    let ink = if pair.drawn.share.is_some_and(|share| share > 1.0) { Ink::Short } else { Ink::Carries };
    share(pen, (&pair.drawn, top + BARS), (Weight::Cut, ink, true));
    share(pen, (&pair.worked, top + BARS + NEXT), (Weight::Hidden, Ink::Ink, false));
    all_used(pen, top);
    pen.pick((0.0, top), (WIDTH, top + WALL), Act::Bring("braced_walls"), name(pair));
}

/// The line where all is used, beside both bars.
fn all_used(pen: &mut Pen, top: f64) {
    pen.line((ALL, top + BARS - 4.0), (ALL, top + BARS + NEXT + THICK + 4.0), Weight::Seen, Ink::Ink);
}

/// Its name and its mark, cut where there is no room.
fn name(pair: &DrawnPair) -> String {
    let whole = if pair.mark.is_empty() { pair.name.clone() } else { format!("{}: {}", pair.name, pair.mark) };
    if whole.chars().count() <= NAME {
        return whole;
    }
    whole.chars().take(NAME - 1).chain(['…']).collect()
}

/// A bar with its share in words, or why there is none.
fn share(pen: &mut Pen, (share, top): (&DrawnShare, f64), how: (Weight, Ink, bool)) {
    if let Some(of) = share.share {
        let long = ALL * of.min(MOST);
        bar(pen, (top, long), how);
        if of > MOST {
            broken(pen, (top, long), how.1);
        }
    }
    pen.label_from((SHARES, top + THICK / 2.0), &share.says);
}

fn bar(pen: &mut Pen, (top, long): (f64, f64), (weight, ink, washed): (Weight, Ink, bool)) {
    pen.shape(rectangle(0.0, top, long, top + THICK), weight, ink, washed);
}

/// Two strokes through the end of a bar that goes on.
fn broken(pen: &mut Pen, (top, long): (f64, f64), ink: Ink) {
    for at in [long - 9.0, long - 4.0] {
        pen.line((at - 3.0, top + THICK + 2.0), (at + 3.0, top - 2.0), Weight::Seen, ink);
    }
}

fn alt(pairs: &[DrawnPair], reply: &QuickReply) -> String {
    if pairs.is_empty() {
        return "Walls as drawn and as worked, side by side: no wall is typed yet.".to_owned();
    }
    let each = |pair: &DrawnPair| {
        let mark = if pair.mark.is_empty() { String::new() } else { format!(", mark {}", pair.mark) };
        format!("{}{mark}, drawn {}, worked {}: {}", pair.name, pair.drawn.says, pair.worked.says, pair.follows)
    };
    let all: Vec<String> = pairs.iter().map(each).collect();
    format!(
        "Walls with a bar for what is used as drawn, and one under it as worked, beside a line at 100 %. {}. {} {}.",
        all.join("; "),
        reply.size,
        reply.verdict
    )
}
