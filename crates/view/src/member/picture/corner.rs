//! A hip or a valley in plan: its commons on both sides, its angles, where its load is.

use framing::quick::reply::{DrawnCorner, QuickReply};
use framing::words;

use crate::markup::Act;
use crate::pen::{Pen, dot};
use crate::scene::{Ink, Scene, Weight};

pub(super) fn picture(drawn: &DrawnCorner, reply: &QuickReply) -> Scene {
    // The corner at the lower left; the first roof's commons run up, the other's to the right.
    let (up, across) = (drawn.runs.0.inches(), drawn.runs.1.inches());
    let mut pen = Pen::new((0.0, -up), (across, up));
    pen.margin(40.0, 24.0, 34.0);
    if drawn.is_valley {
        // Two eaves that meet inside; jacks run from the valley to the ridges.
        pen.line((0.0, 0.0), (-across * 0.12, 0.0), Weight::Cut, Ink::Ink);
        pen.line((0.0, 0.0), (0.0, up * 0.12), Weight::Cut, Ink::Ink);
        pen.line((0.0, -up), (across, -up), Weight::Seen, Ink::Ink);
        pen.line((across, 0.0), (across, -up), Weight::Seen, Ink::Ink);
    } else {
        pen.line((0.0, 0.0), (across, 0.0), Weight::Cut, Ink::Ink);
        pen.line((0.0, 0.0), (0.0, -up), Weight::Cut, Ink::Ink);
        pen.line((across, -up), (across * 1.12, -up), Weight::Seen, Ink::Ink);
    }
    pen.line((0.0, 0.0), (across, -up), Weight::Cut, Ink::Chalk);
    let jacks = 6;
    for index in 1..jacks {
        let share = f64::from(index) / f64::from(jacks);
        let (x, y) = (across * share, -up * share);
        let (ends, sides) = if drawn.is_valley { ((x, -up), (across, y)) } else { ((x, 0.0), (0.0, y)) };
        pen.line((x, y), ends, Weight::Fine, Ink::Ink);
        pen.line((x, y), sides, Weight::Fine, Ink::Ink);
    }
    if let Some(post) = drawn.post {
        let plan = (across * across + up * up).sqrt();
        let share = post.inches() / plan;
        let radius = pen.paper(5.0);
        dot(&mut pen, (across * share, -up * share), radius, Ink::Ink, true);
    }
    let heavy = if drawn.is_valley { (0.0, 0.0) } else { (across, -up) };
    let label = format!("{}, to nothing", drawn.heavy);
    let y = if drawn.is_valley { heavy.1 + pen.paper(20.0) } else { heavy.1 - pen.paper(12.0) };
    let x = (across / 2.0).min(heavy.0.max(across * 0.45));
    pen.label((x, y), &label);
    let (one, other) = (pen.paper(22.0), pen.paper(30.0));
    pen.label((across * 0.10 + one * 0.2, -up * 0.34), &drawn.angles.0);
    pen.label((across * 0.42, -up * 0.12 - other * 0.1), &drawn.angles.1);
    let (x, y) = (-pen.paper(22.0), pen.paper(22.0));
    pen.dimension((x, 0.0), (x, -up), &words::length(drawn.runs.0), Some("hip_run"));
    if !drawn.is_valley {
        pen.dimension((0.0, y), (across, y), &words::length(drawn.runs.1), Some("other_pitch"));
    }
    let right = pen.paper(8.0);
    pen.label((across * 0.66 + right, -up * 0.56), &drawn.length);
    pen.pick((0.0, 0.0), (across, -up), Act::Bring("hip_run"), "Run of the commons".to_owned());
    let name = if drawn.is_valley { "valley" } else { "hip" };
    pen.scene(format!(
        "The {name} in plan, {} long, a {}. In plan it makes {} with the first roof's commons and {} with the other's. Its load is {} at its {} end, and nothing at the other.",
        drawn.length,
        reply.size,
        drawn.angles.0,
        drawn.angles.1,
        drawn.heavy,
        if drawn.is_valley { "lower" } else { "upper" }
    ))
}
