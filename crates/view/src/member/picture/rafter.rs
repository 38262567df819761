//! A rafter between plate and ridge, with its ties, its seat and what acts on it.

use framing::quick::reply::{DrawnRafter, QuickReply};
use framing::words;
use measure::{Length, math};

use crate::markup::Act;
use crate::pen::{Pen, crossed, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

pub(super) fn picture(drawn: &DrawnRafter, reply: &QuickReply) -> Scene {
    let run = drawn.run.inches();
    let slope = drawn.rise_in_twelve / 12.0;
    let angle = math::atan2(slope, 1.0);
    let (sine, cosine) = (math::sin(angle), math::cos(angle));
    let depth = drawn.depth.inches();
    let overhang = drawn.overhang.inches();
    let above = depth / cosine - drawn.seat.inches() * slope;
    let rise = run * slope;
    let half_ridge = drawn.ridge.1.inches() / 2.0;
    // y grows downward; the plate's top is at nothing.
    let top = |x: f64| -(x * slope + above);
    let bottom = |x: f64| top(x) + depth / cosine;
    let left = -overhang;
    let right = run - half_ridge;
    let mut pen = Pen::new((left, top(run)), (run - left + half_ridge, rise + above + depth * 1.5 + 10.0));
    pen.margin(30.0, 26.0, 34.0);
    let seat = drawn.seat.inches();
    // From the tail's end along the bottom, over the seat, to the ridge, and back along the top.
    let outline = vec![
        (left, bottom(left).min(depth / cosine)),
        (0.0, bottom(0.0)),
        (0.0, 0.0),
        (seat, 0.0),
        (right, bottom(right)),
        (right, top(right)),
        (left, top(left)),
    ];
    pen.shape(outline, Weight::Cut, Ink::Ink, true);
    wall(&mut pen, seat.max(3.5), depth);
    let ridge = drawn.ridge.0.inches();
    let ridge_top = top(right);
    pen.shape(
        rectangle(run - half_ridge, ridge_top, run + half_ridge, ridge_top + ridge),
        Weight::Cut,
        Ink::Ink,
        false,
    );
    crossed(&mut pen, run - half_ridge, ridge_top, run + half_ridge, ridge_top + ridge, Ink::Ink);
    if drawn.ridge_carries {
        let foot = ridge_top + ridge;
        pen.shape(rectangle(run - 1.75, foot, run + 1.75, foot + pen.paper(26.0)), Weight::Seen, Ink::Ink, false);
    }
    tie(&mut pen, drawn, slope, run);
    if let Some(purlin) = drawn.purlin {
        let x = purlin.inches();
        crossed(&mut pen, x - 1.75, bottom(x), x + 1.75, bottom(x) + 7.25, Ink::Ink);
    }
    arrows(&mut pen, drawn, (run, top(run * 0.55), sine, cosine));
    let y = pen.paper(30.0) + 6.0;
    pen.dimension((0.0, y), (run, y), &words::length(drawn.run), Some("rafter_run"));
    if overhang > 0.0 {
        pen.dimension((left, y), (0.0, y), &words::length(drawn.overhang), Some("eave_overhang"));
    }
    let x = run + half_ridge + pen.paper(16.0);
    pen.dimension((x, 0.0), (x, -rise), &words::length(Length::from_inches(rise)), Some("roof_pitch"));
    // Below the rafter as far as half of the words rises along it.
    let (x, y) = (run * 0.66, bottom(run * 0.66) + pen.paper(14.0 + 32.0 * slope));
    pen.label((x, y), &format!("{} in 12", words::figure(drawn.rise_in_twelve)));
    pen.pick((left, top(run)), (run, depth), Act::Bring("rafter_run"), "The rafter's run".to_owned());
    pen.scene(alt(drawn, reply))
}

fn wall(pen: &mut Pen, width: f64, depth: f64) {
    crossed(pen, 0.0, 0.0, width, 1.5, Ink::Ink);
    crossed(pen, 0.0, 1.5, width, 3.0, Ink::Ink);
    let foot = 3.0 + depth;
    pen.line((0.0, 3.0), (0.0, foot), Weight::Seen, Ink::Ink);
    pen.line((width, 3.0), (width, foot), Weight::Seen, Ink::Ink);
}

fn tie(pen: &mut Pen, drawn: &DrawnRafter, slope: f64, run: f64) {
    let Some(height) = drawn.tie else { return };
    let height = height.inches();
    let from = height / slope;
    let deep = 3.5_f64.min(run * 0.05);
    pen.shape(rectangle(from, -height - deep, run, -height), Weight::Seen, Ink::Ink, false);
    let middle = (from + run) / 2.0;
    let y = -height + pen.paper(12.0);
    if !drawn.tie_pull.is_empty() {
        pen.label((middle, y), &format!("tie, {} pull", drawn.tie_pull));
    }
}

fn arrows(pen: &mut Pen, drawn: &DrawnRafter, (run, over, sine, cosine): (f64, f64, f64, f64)) {
    let long = pen.paper(28.0);
    let x = run * 0.40;
    let foot = over + run * 0.15 * (sine / cosine);
    let down = Mark::Arrow {
        from: (x, foot - long),
        to: (x, foot - pen.paper(2.0)),
        figure: drawn.down.clone(),
        ink: Ink::Ink,
    };
    pen.marks.push(down);
    if !drawn.up.is_empty() {
        let x = run * 0.80;
        let y = over - run * 0.25 * (sine / cosine) - pen.paper(2.0);
        let to = (x - long * sine, y - long * cosine);
        pen.marks.push(Mark::Arrow { from: (x, y), to, figure: String::new(), ink: Ink::Chalk });
        let (left, above) = (pen.paper(8.0), pen.paper(12.0));
        pen.label((to.0 - left, to.1 - above), &drawn.up);
    }
}

fn alt(drawn: &DrawnRafter, reply: &QuickReply) -> String {
    let ties = match (drawn.tie, drawn.ridge_carries) {
        (_, true) => "No ties: the ridge carries.".to_owned(),
        (Some(height), _) if height > Length::ZERO => {
            format!("Ties {} over the plate, {} in each.", words::length(height), drawn.tie_pull)
        }
        _ => format!("Ties at the plate, {} in each.", drawn.tie_pull),
    };
    let wind = if drawn.up.is_empty() { String::new() } else { format!(" Wind {}.", drawn.up) };
    format!(
        "A {} rafter, run {}, {} in 12, on a plate and a ridge. {ties} Presses: {}.{wind}",
        reply.size,
        words::length(drawn.run),
        words::figure(drawn.rise_in_twelve),
        drawn.down
    )
}
