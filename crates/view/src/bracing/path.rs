//! The path of uplift, from the roof to the footing: a ring at each link with what it must hold and what is there.

use framing::quick::reply::{DrawnLink, LinkAt, QuickReply};

use crate::markup::Act;
use crate::pen::{Pen, circle, rectangle};
use crate::quick::capital;
use crate::scene::{Ink, Mark, Scene, Weight};

/// Height that a link takes, in pixels of a phone, which this drawing is in: nothing here is to scale.
const LINK: f64 = 52.0;
/// Where the wall stands, and how thick its lumber is.
const WALL: f64 = 44.0;
const THICK: f64 = 18.0;
/// Where the words begin.
const WORDS: f64 = 84.0;
const WIDTH: f64 = 300.0;
/// How high the picture is shown on a phone, in pixels.
const SHOWN: f64 = 290.0;

pub(super) fn picture(links: &[DrawnLink], reply: &QuickReply) -> Scene {
    let height = LINK * links.len() as f64;
    let mut pen = Pen::new((0.0, 0.0), (WIDTH, height));
    pen.margin(6.0, 34.0, 30.0);
    let at = |index: usize| LINK * (index as f64 + 0.5);
    if links.first().is_some_and(|link| matches!(link.at, LinkAt::Plate | LinkAt::Beam)) {
        rafter(&mut pen, at(0));
    }
    for (index, link) in links.iter().enumerate() {
        below(&mut pen, link.at, (at(index), links.get(index + 1).map_or(height + 20.0, |_| at(index + 1))));
    }
    // A long chain is drawn smaller, and letters keep their size: its two lines stand farther apart, evenly at the most.
    let half_line = (9.0 * (height + 64.0) / SHOWN).clamp(9.0, LINK / 4.0);
    for (index, link) in links.iter().enumerate() {
        ring(&mut pen, link, (at(index), half_line));
    }
    let up =
        Mark::Arrow { from: (WALL - 34.0, at(0)), to: (WALL - 34.0, -26.0), figure: String::new(), ink: Ink::Chalk };
    pen.marks.push(up);
    pen.scene(alt(links, reply))
}

fn alt(links: &[DrawnLink], reply: &QuickReply) -> String {
    let each = links.iter().map(|link| format!("{} must hold {}, holds {}", link.name, link.demand, link.held));
    let first = reply.action.first().map_or("", String::as_str);
    format!("The path of uplift from the roof down: {}. {first}", each.collect::<Vec<_>>().join("; "))
}

/// The rafter that comes down on a link of the roof, where nothing is drawn over it.
fn rafter(pen: &mut Pen, plate: f64) {
    let points = vec![
        (WALL - 30.0, plate + 2.0),
        (WALL + THICK, plate - 26.0),
        (WALL + THICK, plate - 44.0),
        (WALL - 30.0, plate - 16.0),
    ];
    pen.shape(points, Weight::Cut, Ink::Ink, true);
}

/// What is under a link, down to the next.
fn below(pen: &mut Pen, at: LinkAt, (top, bottom): (f64, f64)) {
    let (left, right) = (WALL - THICK / 2.0, WALL + THICK / 2.0);
    let plate = |pen: &mut Pen, y: f64| {
        pen.shape(rectangle(left - 12.0, y, right + 12.0, y + 9.0), Weight::Cut, Ink::Ink, true)
    };
    match at {
        LinkAt::Deck => {
            rafter(pen, top + 24.0);
            let (from, to) = ((WALL - 30.0, top + 3.0), (WALL + THICK, top - 25.0));
            pen.line(from, to, Weight::Cut, Ink::Ink);
        }
        LinkAt::Truss => {
            pen.shape(rectangle(left - 26.0, top - 6.0, right + 22.0, top + 6.0), Weight::Cut, Ink::Ink, true);
        }
        LinkAt::Beam => {
            pen.shape(rectangle(left - 4.0, top + 4.0, right + 4.0, bottom), Weight::Cut, Ink::Ink, true);
        }
        LinkAt::Post | LinkAt::PostBase => stud(pen, (top, bottom)),
        LinkAt::Ground => {
            pen.shape(rectangle(left - 20.0, top + 2.0, right + 20.0, bottom), Weight::Cut, Ink::Ink, false);
            pen.line((left - 30.0, top + 2.0), (left - 20.0, top + 2.0), Weight::Fine, Ink::Ink);
            pen.line((right + 20.0, top + 2.0), (right + 30.0, top + 2.0), Weight::Fine, Ink::Ink);
        }
        LinkAt::Plate => {
            plate(pen, top + 4.0);
            plate(pen, top + 13.0);
            stud(pen, (top + 22.0, bottom));
        }
        LinkAt::Studs => stud(pen, (top, bottom)),
        LinkAt::Floor => {
            pen.shape(rectangle(left - 12.0, top - 8.0, right + 22.0, top + 8.0), Weight::Cut, Ink::Ink, true);
            stud(pen, (top + 8.0, bottom));
        }
        LinkAt::Sill => {
            plate(pen, bottom - 14.0);
            stud(pen, (top, bottom - 14.0));
        }
        LinkAt::Footing => {
            pen.shape(rectangle(left - 16.0, top + 6.0, right + 16.0, bottom), Weight::Cut, Ink::Ink, false);
            pen.line((left - 30.0, bottom - 4.0), (right + 30.0, bottom - 4.0), Weight::Fine, Ink::Ink);
        }
    }
}

fn stud(pen: &mut Pen, (top, bottom): (f64, f64)) {
    pen.shape(rectangle(WALL - THICK / 2.0, top, WALL + THICK / 2.0, bottom), Weight::Seen, Ink::Ink, false);
}

/// The ring at a link, open where it does not hold, with its words beside it.
fn ring(pen: &mut Pen, link: &DrawnLink, (y, half_line): (f64, f64)) {
    let ink = match link.holds {
        Some(true) => Ink::Carries,
        Some(false) => Ink::Short,
        None => Ink::Outside,
    };
    pen.shape(circle((WALL, y), 8.0), Weight::Cut, ink, false);
    match link.holds {
        Some(true) => {}
        // A ring that does not hold is struck through.
        Some(false) => pen.line((WALL - 11.0, y + 11.0), (WALL + 11.0, y - 11.0), Weight::Cut, ink),
        None => pen.label((WALL, y), "?"),
    }
    pen.line((WALL + 9.0, y), (WORDS - 6.0, y), Weight::Fine, ink);
    let name = if link.weakest { format!("Weakest: {}", link.name) } else { capital(&link.name) };
    pen.label_from((WORDS, y - half_line), &name);
    pen.label_from((WORDS, y + half_line), &format!("{} on {}", link.demand, link.held));
    let half = LINK / 2.0;
    pen.pick((0.0, y - half), (WIDTH, y + half), Act::Bring(link.input), link.name.clone());
}
