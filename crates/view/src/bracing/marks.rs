//! The schedule's panels side by side, each with its nails.

use framing::quick::reply::{DrawnMark, QuickReply};
use framing::words;

use super::wall::nails;
use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// A panel, inches.
const PANEL: (f64, f64) = (48.0, 96.0);
/// Between two.
const APART: f64 = 16.0;
/// So many are drawn.
const MOST: usize = 4;

pub(super) fn picture(marks: &[DrawnMark], reply: &QuickReply) -> Scene {
    let shown = marks.len().min(MOST);
    let width = (PANEL.0 + APART) * shown.max(2) as f64 - APART;
    let mut pen = Pen::new((0.0, 0.0), (width, PANEL.1));
    pen.margin(16.0, 30.0, 34.0);
    if marks.is_empty() {
        pen.shape(rectangle(0.0, 0.0, width, PANEL.1), Weight::Hidden, Ink::Ink, false);
        pen.label((width / 2.0, PANEL.1 / 2.0), "the drawing's marks");
        pen.pick((0.0, 0.0), (width, PANEL.1), Act::Bring("schedule_lines"), "The schedule".to_owned());
        for x in [width / 3.0, width * 2.0 / 3.0] {
            pen.line((x, 0.0), (x, PANEL.1), Weight::Hidden, Ink::Ink);
        }
    }
    for (index, mark) in marks.iter().take(MOST).enumerate() {
        let left = (PANEL.0 + APART) * index as f64;
        let panel = [left, 0.0, left + PANEL.0, PANEL.1];
        pen.shape(rectangle(left, 0.0, left + PANEL.0, PANEL.1), Weight::Cut, Ink::Ink, true);
        let mut stud = left + mark.studs.inches();
        while stud < left + PANEL.0 - 2.0 {
            pen.line((stud, 0.0), (stud, PANEL.1), Weight::Hidden, Ink::Chalk);
            stud += mark.studs.inches();
        }
        nails(&mut pen, panel, (mark.edge.inches(), mark.field.inches(), mark.studs.inches()));
        let (middle, off) = (left + PANEL.0 / 2.0, pen.paper(14.0));
        pen.label((middle, -off), &mark.mark);
        let spacing = format!("{} / {}", words::inches(mark.edge), words::inches(mark.field));
        pen.label((middle, PANEL.1 + off), &spacing);
        pen.pick((left, 0.0), (left + PANEL.0, PANEL.1), Act::Bring("schedule_lines"), mark.mark.clone());
    }
    let names: Vec<String> = marks
        .iter()
        .map(|mark| format!("{}, edges {}, field {}", mark.mark, words::inches(mark.edge), words::inches(mark.field)))
        .collect();
    let what = if names.is_empty() { "No mark is typed yet.".to_owned() } else { names.join("; ") + "." };
    let first = reply.action.first().map_or("", String::as_str);
    pen.scene(format!("The schedule's panels with their nails: {what} {first}"))
}
