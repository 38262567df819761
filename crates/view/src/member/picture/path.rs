//! The way of a ridge's load to the ground: posts through plates and floors to footings of their own.

use framing::quick::reply::{DrawnBeam, QuickReply};
use framing::words;

use crate::pen::{Pen, crossed, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// Heights below the ridge, in pixels of a phone: it shows what lies on the way, and no height to scale.
const PLATES: f64 = 40.0;
const FLOOR: f64 = 88.0;
const FOOTING: f64 = 136.0;
/// Between two lines of a floor or of plates.
const THICK: f64 = 12.0;
/// Half a post, and half a footing.
const POST: f64 = 4.0;
const PAD: f64 = 15.0;

pub(in crate::member) fn picture(drawn: &DrawnBeam, reply: &QuickReply) -> Scene {
    let length = drawn.length.inches().max(1.0);
    let mut pen = Pen::new((0.0, 0.0), (length, 0.0));
    pen.margin(30.0, 16.0, FOOTING + THICK + 52.0);
    let high = |pixels: f64, pen: &Pen| pen.paper(pixels);
    pen.shape(rectangle(0.0, -high(THICK, &pen), length, 0.0), Weight::Cut, Ink::Ink, true);
    for level in [PLATES, FLOOR] {
        for y in [level, level + THICK] {
            let (y, out) = (high(y, &pen), high(22.0, &pen));
            pen.line((-out, y), (length + out, y), Weight::Fine, Ink::Ink);
        }
    }
    for support in &reply.supports {
        post(&mut pen, support.at_in, support.most_lb, support.least_lb, length);
    }
    if let [first, second, ..] = reply.supports.as_slice() {
        let x = f64::midpoint(first.at_in, second.at_in);
        for (y, word) in [(PLATES, "solid in the plates"), (FLOOR, "blocks on end"), (FOOTING, "footings")] {
            let y = high(y - 9.0, &pen);
            pen.label((x, y), word);
        }
    }
    pen.scene(alt(reply))
}

/// One post with what stands below it, and what comes down and goes up there.
fn post(pen: &mut Pen, x: f64, most: f64, least: f64, length: f64) {
    let px = pen.paper(1.0);
    let (half, pad) = (POST * px, PAD * px);
    let mut top = 0.0;
    for level in [PLATES, FLOOR] {
        pen.shape(rectangle(x - half, top, x + half, level * px), Weight::Cut, Ink::Ink, true);
        crossed(pen, x - half, level * px, x + half, (level + THICK) * px, Ink::Ink);
        top = (level + THICK) * px;
    }
    pen.shape(rectangle(x - half, top, x + half, FOOTING * px), Weight::Cut, Ink::Ink, true);
    pen.shape(rectangle(x - pad, FOOTING * px, x + pad, (FOOTING + THICK) * px), Weight::Cut, Ink::Ink, false);
    let mut lines = vec![format!("{} lb", words::figure(most.ceil()))];
    if least < -0.5 {
        lines.push(format!("{} lb up", words::figure((-least).ceil())));
    }
    for (index, line) in lines.iter().enumerate() {
        let room = (4.4 * line.chars().count() as f64 - 26.0).max(0.0) * px;
        let y = (FOOTING + THICK + 13.0 + 20.0 * index as f64) * px;
        pen.label((x.clamp(room, (length - room).max(room)), y), line);
    }
}

fn alt(reply: &QuickReply) -> String {
    let posts = reply.supports.iter().map(|support| {
        let down = words::figure(support.most_lb.ceil());
        match support.least_lb {
            least if least < -0.5 => {
                format!("at {} {down} lb down and {} lb up", support.at, words::figure((-least).ceil()))
            }
            _ => format!("at {} {down} lb down", support.at),
        }
    });
    let posts: Vec<String> = posts.collect();
    format!(
        "The ridge on its posts, solid through the plates and the floors to a footing each: {}. Not to scale.",
        posts.join("; ")
    )
}
