//! Small pictures of options: what the wind crosses, and the shape of the ground.

use crate::model::FieldId;
use crate::pen::circle;
use crate::scene::{Ink, Mark, Scene, Weight};

const WIDE: f64 = 60.0;
const HIGH: f64 = 26.0;
const GROUND: f64 = 20.0;

/// The picture of an option, said in its words; none for one that words tell.
pub(crate) fn option(field: FieldId, value: &str, words: &str) -> Option<Scene> {
    let marks = match (field, value) {
        ("exposure", "B") => trees(&[8.0, 18.0, 28.0, 38.0], 11.0),
        ("exposure", "C") => trees(&[8.0, 38.0], 5.0),
        ("exposure", "D") => water(),
        ("hill", "flat") => ground(&[(0.0, GROUND), (WIDE, GROUND)], 50.0, GROUND),
        ("hill", "bluff") => ground(&[(0.0, GROUND), (18.0, GROUND), (28.0, 10.0), (WIDE, 10.0)], 42.0, 10.0),
        ("hill", "ridge" | "hill") => {
            ground(&[(0.0, GROUND), (14.0, GROUND), (30.0, 8.0), (46.0, GROUND), (WIDE, GROUND)], 34.0, 10.5)
        }
        _ => return None,
    };
    Some(Scene { left: 0.0, top: 0.0, width: WIDE, height: HIGH, marks, alt: words.to_owned() })
}

fn line(from: (f64, f64), to: (f64, f64), weight: Weight) -> Mark {
    Mark::Line { from, to, weight, ink: Ink::Ink }
}

fn house(marks: &mut Vec<Mark>, x: f64, ground: f64) {
    let points =
        vec![(x, ground), (x, ground - 5.0), (x + 3.5, ground - 8.0), (x + 7.0, ground - 5.0), (x + 7.0, ground)];
    marks.push(Mark::Shape { points, weight: Weight::Cut, ink: Ink::Ink, washed: false, field: None });
}

fn trees(at: &[f64], high: f64) -> Vec<Mark> {
    let mut marks = vec![line((0.0, GROUND), (WIDE, GROUND), Weight::Seen)];
    for x in at {
        let crown = circle((*x, GROUND - high * 0.65), high * 0.4);
        marks.push(line((*x, GROUND), (*x, GROUND - high * 0.4), Weight::Seen));
        marks.push(Mark::Shape { points: crown, weight: Weight::Seen, ink: Ink::Ink, washed: true, field: None });
    }
    house(&mut marks, 50.0, GROUND);
    marks
}

fn water() -> Vec<Mark> {
    let mut marks = vec![line((44.0, GROUND), (WIDE, GROUND), Weight::Seen)];
    for (row, from) in [(GROUND + 1.0, 0.0), (GROUND + 3.5, 4.0)] {
        let mut x: f64 = from;
        while x < 40.0 {
            marks.push(line((x, row), (x + 3.0, row - 1.2), Weight::Seen));
            marks.push(line((x + 3.0, row - 1.2), (x + 6.0, row), Weight::Seen));
            x += 8.0;
        }
    }
    house(&mut marks, 50.0, GROUND);
    marks
}

fn ground(profile: &[(f64, f64)], house_at: f64, level: f64) -> Vec<Mark> {
    let mut marks: Vec<Mark> = profile.windows(2).map(|pair| line(pair[0], pair[1], Weight::Cut)).collect();
    house(&mut marks, house_at, level);
    marks
}
