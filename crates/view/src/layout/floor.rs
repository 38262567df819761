//! A floor in plan, to scale, its near side below: joists, what is doubled, headers, blocks, panels and hangers.

use framing::layout::drawn_joists::DrawnJoists;
use framing::reading::Reading;
use framing::words;
use layout::floor::{FloorOpening, FloorPart, FloorPiece};
use measure::Length;

use super::figures::{EDGE, PULL_AT, PULLS, ROOM, Row, size};
use crate::pen::{Pen, crossed, dot, outline, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Whether an input has something to say of this floor.
pub(super) fn speaks(id: &str, reading: &Reading) -> bool {
    let is = |input: &str, word: &str| reading.word(input) == Some(word);
    match id {
        "joists_made_deep" | "joists_flange" => is("joists_stick", "made"),
        "joists_rim" | "joists_stock" => !is("joists_near", "hangers") || !is("joists_far", "hangers"),
        "joists_hanger_gap" => is("joists_near", "hangers") || is("joists_far", "hangers"),
        "joists_gap" | "joists_sized" => !is("joists_panels", "no"),
        _ => true,
    }
}

/// The plan with where its places are drawn.
struct Plan<'d>(&'d DrawnJoists);

impl Plan<'_> {
    fn x(&self, across: Length) -> f64 {
        let drawn = self.0;
        if drawn.from_right { (drawn.floor.length - across).inches() } else { across.inches() }
    }

    /// A rectangle from left to right and from top to bottom.
    fn corners(&self, across: (Length, Length), along: (Length, Length)) -> (f64, f64, f64, f64) {
        let (a, b) = (self.x(across.0), self.x(across.1));
        (a.min(b), -along.1.inches(), a.max(b), -along.0.inches())
    }

    fn piece(&self, pen: &mut Pen, piece: &FloorPiece) {
        let across = (piece.across.from, piece.across.to);
        let (left, top, right, bottom) = self.corners(across, (piece.along.from, piece.along.to));
        let corners = rectangle(left, top, right, bottom);
        match piece.part {
            FloorPart::WallJoist | FloorPart::Trimmer => pen.shape(corners, Weight::Cut, Ink::Carries, true),
            FloorPart::Header => pen.shape(corners, Weight::Cut, Ink::Ink, true),
            FloorPart::Rim | FloorPart::EndJoist => pen.shape(corners, Weight::Cut, Ink::Ink, false),
            _ => pen.shape(corners, Weight::Seen, Ink::Ink, false),
        }
    }

    /// Panels, thin; where two meet, two lines stand side by side.
    fn panels(&self, pen: &mut Pen) {
        let apart = pen.paper(0.8);
        for sheet in self.0.laid.subfloor.iter().flat_map(|subfloor| &subfloor.sheets) {
            let across = (sheet.across.from, sheet.across.to);
            let (left, top, right, bottom) = self.corners(across, (sheet.along.from, sheet.along.to));
            if right - left > 2.0 * apart && bottom - top > 2.0 * apart {
                let corners = rectangle(left + apart, top + apart, right - apart, bottom - apart);
                outline(pen, &corners, Weight::Fine, Ink::Chalk);
            }
        }
    }

    /// Hangers as dots, squash blocks crossed.
    fn small(&self, pen: &mut Pen) {
        let (radius, half) = (pen.paper(1.8), pen.paper(3.5));
        for hanger in &self.0.laid.hangers {
            dot(pen, (self.x(hanger.across), -hanger.along.inches()), radius, Ink::Ink, false);
        }
        for block in &self.0.laid.squash_blocks {
            let (x, y) = (self.x(block.across), -block.along.inches());
            crossed(pen, x - half, y - half, x + half, y + half, Ink::Carries);
        }
    }

    /// The clear size of an opening, in it, where there is room.
    fn size(&self, pen: &mut Pen, opening: &FloorOpening) {
        let across = (opening.across.from, opening.across.to);
        let (left, top, right, bottom) = self.corners(across, (opening.along.from, opening.along.to));
        let measures = [opening.across.width(), opening.along.width()].map(words::length);
        size(pen, (left, top, right, bottom), measures);
    }

    /// Ends and edges of openings first, then as many joists as find room.
    fn pulls(&self, pen: &mut Pen) {
        let floor = &self.0.floor;
        let edges = floor.openings.iter().flat_map(|opening| [opening.across.from, opening.across.to]);
        let joists = self.0.laid.marks.iter().filter(|mark| mark.layout.is_some()).map(|mark| mark.pull);
        let mut row = Row::new(pen);
        for at in [Length::ZERO, floor.length].into_iter().chain(edges).chain(joists) {
            row.take(self.x(at), &words::inches(at));
        }
        let (from, to) = (pen.paper(3.0), pen.paper(10.0));
        for (x, text) in row.taken() {
            pen.line((x, from), (x, to), Weight::Fine, Ink::Ink);
            let at = (x, pen.paper(PULL_AT));
            pen.marks.push(Mark::Label { at, text, upright: true });
        }
    }
}

pub(super) fn picture(drawn: &DrawnJoists) -> Scene {
    let (length, width) = (drawn.floor.length.inches(), drawn.floor.width.inches());
    // Panels may begin before the end.
    let before = -drawn.floor.layout.start.inches().min(0.0);
    let left = if drawn.from_right { 0.0 } else { -before };
    let mut pen = Pen::within((left, -width), (length + before, width), ROOM);
    pen.margin(EDGE, EDGE, PULLS);
    let plan = Plan(drawn);
    drawn.laid.pieces.iter().for_each(|piece| plan.piece(&mut pen, piece));
    plan.panels(&mut pen);
    plan.small(&mut pen);
    drawn.floor.openings.iter().for_each(|opening| plan.size(&mut pen, opening));
    plan.pulls(&mut pen);
    pen.scene(alt(drawn))
}

fn alt(drawn: &DrawnJoists) -> String {
    let floor = &drawn.floor;
    let opening = |opening: &FloorOpening| {
        let (from, to) = (words::inches(opening.across.from), words::inches(opening.across.to));
        format!(" An opening from {from} to {to}, its trimmers and headers around it.")
    };
    let openings: String = floor.openings.iter().map(opening).collect();
    let panels = drawn.laid.subfloor.as_ref().map_or_else(String::new, |subfloor| {
        format!(" Panels lie across the joists in {} rows, staggered.", subfloor.rows)
    });
    format!(
        "The floor in plan, {} along the plates and {} along the joists, the tape hooked on its {} end.{openings}{panels}",
        words::length(floor.length),
        words::length(floor.width),
        if drawn.from_right { "right" } else { "left" }
    )
}
