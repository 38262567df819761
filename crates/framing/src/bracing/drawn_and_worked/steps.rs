//! The working of each wall: what a foot must carry, what it carries as drawn and as worked, and what pulls at its ends.

use bracing::{Nailing, OF_DEAD, Strength, check_segmented};
use measure::{Force, Length};
use members::working::{Basis, Part};
use standards::sdpws_2015::aspect;

use super::super::ends::PUSHED;
use super::super::shear_wall::strength_part;
use super::compare::{By, Column, Compared, Held};
use crate::words::{self, figure};

/// A part for each wall, then one for each kind of panels and nails.
pub(super) fn parts(by: &By<'_>, all: &[Compared<'_>]) -> Vec<Part> {
    let walls = all.iter().map(|one| wall(by, one));
    let mut seen: Vec<(&Nailing, &Strength)> = Vec::new();
    for column in all.iter().flat_map(columns).flatten() {
        if !seen.iter().any(|(nailing, _)| **nailing == column.nailing) {
            seen.push((&column.nailing, &column.strength));
        }
    }
    let strengths = seen.into_iter().map(|(nailing, strength)| {
        let part = strength_part(strength);
        Part { heading: format!("A foot of {nailing}"), ..part }
    });
    walls.chain(strengths).collect()
}

/// Panels and nails that a wall is looked at with.
fn columns<'a>(one: &'a Compared<'_>) -> [Option<&'a Column>; 3] {
    [one.drawn(), one.worked.as_ref(), one.missing.as_ref().map(|(column, _)| column)]
}

fn wall(by: &By<'_>, one: &Compared<'_>) -> Part {
    let mut part = Part::new(one.wall.name.as_str());
    let push = one.wall.push;
    part.step("V", "all the push along it", "", (push.pounds(), "lb"), Basis::Input("braced_walls"));
    if let Some(column) = columns(one).into_iter().flatten().next() {
        counted(&mut part, by, one, column);
    }
    let mark = one.mark();
    if let Some(drawn) = one.drawn() {
        column(&mut part, one, (&format!("{mark} as drawn, {}", drawn.nailing), drawn));
    }
    if let Some(worked) = &one.worked {
        column(&mut part, one, (&format!("the lightest that carries, {}", worked.nailing), worked));
    }
    if let Some((strongest, missing)) = &one.missing {
        let meaning = format!("full-height wall that is missing with {}", strongest.nailing);
        part.step("b", meaning, "", (missing.feet(), "ft"), Basis::Arithmetic);
    }
    pull(&mut part, one);
    part
}

/// What each piece counts for, and the length that counts.
fn counted(part: &mut Part, by: &By<'_>, one: &Compared<'_>, column: &Column) {
    let answer = check_segmented(&one.wall.segmented(by.ends), &column.strength);
    let mut terms = Vec::new();
    let mut length = Length::ZERO;
    for piece in &answer.pieces {
        let name = words::length(piece.length);
        let Ok(ratio) = &piece.ratio else {
            let meaning = format!("{name}: too narrow, counts for nothing");
            part.step("h/b", meaning, "", (one.wall.height / piece.length, ""), Basis::Published(aspect::LIMITS));
            continue;
        };
        if piece.factor < 1.0 {
            let meaning = format!("{name}: counts for less, 2b/h");
            let expression = format!("2 / {}", figure(*ratio));
            part.step("", meaning, expression, (piece.factor, ""), Basis::Published(aspect::SHARING));
        }
        length += piece.length * piece.factor;
        terms.push(if piece.factor < 1.0 {
            format!("{} × {}", figure(piece.length.feet()), figure(piece.factor))
        } else {
            figure(piece.length.feet())
        });
    }
    part.step("b", "full-height wall that counts", terms.join(" + "), (length.feet(), "ft"), Basis::Arithmetic);
}

fn column(part: &mut Part, one: &Compared<'_>, (what, column): (&str, &Column)) {
    let carries = column.strength.allowable.line_load().plf();
    let source = Basis::Published(column.strength.row.source());
    part.step("v", format!("{what}: a foot carries"), "", (carries, "plf"), source);
    if let Some(used) = column.used {
        let (push, capacity) = (one.wall.push.pounds(), column.capacity.pounds());
        let expression = format!("{} / {}", figure(push), figure(capacity));
        part.step("", "share of it that the push uses", expression, (used, ""), Basis::Arithmetic);
    }
}

fn pull(part: &mut Part, one: &Compared<'_>) {
    if let [.., above, _] = one.stack.as_slice() {
        let meaning = format!("of the push along it, from {}", above.name);
        part.step("", meaning, "", (above.push.pounds(), "lb"), Basis::Input("braced_walls"));
    }
    let Ok(Some(found)) = &one.pull else { return };
    let turning = found.turning();
    let term = |(push, height): &(Force, Length)| format!("{} × {}", figure(push.pounds()), figure(height.feet()));
    let terms: Vec<String> = turning.iter().map(term).collect();
    let turned: f64 = turning.iter().map(|(push, height)| (*push * *height).foot_pounds()).sum();
    let arm = found.arm.feet();
    let meaning = format!("its share of the pushes turns the piece of {} the hardest", words::length(found.length));
    part.step("M", meaning, terms.join(" + "), (turned, "ft-lb"), Basis::Arithmetic);
    let expression = format!(
        "({} − {OF_DEAD} × {} × {}² / 2) / {}",
        figure(turned),
        figure(found.dead().plf()),
        figure(found.length.feet()),
        figure(arm)
    );
    let tension = (found.tension.pounds(), "lb");
    part.step("T", format!("pull at its end, {PUSHED}"), expression, tension, Basis::Arithmetic);
    if let Held::By(hold_down, share) = &one.held {
        let (holds, source) = (hold_down.load.pounds(), Basis::Input("schedule_lines"));
        part.step("", format!("{} as drawn holds", hold_down.mark), "", (holds, "lb"), source);
        let expression = format!("{} / {}", figure(found.tension.pounds()), figure(holds));
        part.step("", "share of it that is used", expression, (*share, ""), Basis::Arithmetic);
    }
}
