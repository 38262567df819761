//! The section of a member with its notch or hole, and the limit dashed; a top plate from above.

use framing::walk::words;
use measure::Length;

use super::pen::{Pen, circle, rectangle};
use super::values::{Values, inches, limit, written};
use crate::model::FieldId;
use crate::model::State;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::answer::state_of;
use crate::walk::fact;

const NOTCH: FieldId = "notch_depth";
const HOLE: FieldId = "hole_diameter";

/// Breadth and depth of the member: the depth is measured in the direction of the cut.
struct Member {
    breadth: f64,
    depth: f64,
}

/// The section of what was cut; nothing before a cut was measured.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let (notch, hole) = (values.length(NOTCH), values.length(HOLE));
    if notch.is_none() && hole.is_none() {
        return super::empty();
    }
    let name = values.typed.text("member");
    let usual = if matches!(name, "joist" | "rafter" | "engineered") { (1.5, 7.25) } else { (1.5, 3.5) };
    let (breadth, depth) = values.size("size").unwrap_or(usual);
    let member = Member { breadth, depth: values.length("member_width").unwrap_or(depth) };
    if name == "top_plate" { plate(values, &member, notch, hole) } else { section(values, name, &member, notch, hole) }
}

fn section(values: Values<'_>, name: &str, member: &Member, notch: Option<f64>, hole: Option<f64>) -> Scene {
    let Member { breadth, depth } = *member;
    let mut pen = Pen::new((0.0, 0.0), (breadth, depth));
    pen.margin(70.0, 12.0, 34.0);
    // A bottom edge is drawn below; a stud has no top.
    let from_below = matches!(name, "joist" | "rafter") && values.text("notch_edge") != "top";
    let notch = notch.map(|notch| notch.min(depth));
    outline(&mut pen, member, notch, from_below);
    if let Some(hole) = hole {
        let to_edge = inches(values.typed.text("to_edge")).unwrap_or((depth - hole) / 2.0).clamp(0.0, depth - hole);
        for y in [to_edge, to_edge + hole] {
            pen.line((0.0, y), (breadth, y), Weight::Hidden, ink(values, "Hole diameter"));
        }
        let x = breadth + pen.paper(46.0);
        pen.dimension((x, to_edge + hole), (x, to_edge), &figure(hole), Some(HOLE));
        if values.typed.has("to_edge") {
            pen.dimension((x, to_edge), (x, 0.0), &figure(to_edge), Some("to_edge"));
        }
    }
    if let Some(notch) = notch {
        let (top, bottom) = if from_below { (depth - notch, depth) } else { (0.0, notch) };
        let x = breadth + pen.paper(20.0);
        pen.dimension((x, bottom), (x, top), &figure(notch), Some(NOTCH));
    }
    limits(&mut pen, values, member, from_below);
    let x = -pen.paper(46.0);
    pen.dimension((x, depth), (x, 0.0), &figure(depth), Some("size"));
    let y = depth + pen.paper(24.0);
    pen.dimension((0.0, y), (breadth, y), &figure(breadth), None);
    pen.scene(alt(values, name, member, notch, hole))
}

/// The section as it is cut, crossed where it is whole.
fn outline(pen: &mut Pen, member: &Member, notch: Option<f64>, from_below: bool) {
    let Member { breadth, depth } = *member;
    let taken = notch.unwrap_or(0.0);
    let (top, bottom) = if from_below { (0.0, depth - taken) } else { (taken, depth) };
    if top < bottom {
        super::pen::crossed(pen, 0.0, top, breadth, bottom, Ink::Ink);
    }
    if taken > 0.0 {
        let (top, bottom) = if from_below { (depth - taken, depth) } else { (0.0, taken) };
        pen.shape(rectangle(0.0, top, breadth, bottom), Weight::Hidden, Ink::Ink, false);
    }
}

/// How deep a notch and how wide a hole may be: dashed in chalk across the section, by the core's own limit.
fn limits(pen: &mut Pen, values: Values<'_>, member: &Member, from_below: bool) {
    let Member { breadth, depth } = *member;
    let over = pen.paper(12.0);
    if let Some(most) = values.check("Notch depth").and_then(limit).filter(|most| *most <= depth) {
        let y = if from_below { depth - most } else { most };
        pen.line((-over, y), (breadth + over, y), Weight::Hidden, Ink::Chalk);
    }
    if let Some(most) = values.check("Hole diameter").and_then(limit).filter(|most| *most <= depth) {
        for y in [(depth - most) / 2.0, (depth + most) / 2.0] {
            pen.line((-over, y), (breadth + over, y), Weight::Hidden, Ink::Chalk);
        }
    }
}

fn ink(values: Values<'_>, subject: &str) -> Ink {
    let state = values.check(subject).map(|check| state_of(&check.verdict));
    if state == Some(State::Short) { Ink::Short } else { Ink::Ink }
}

/// The top plate from above, with what is taken of it and the tie across.
fn plate(values: Values<'_>, member: &Member, notch: Option<f64>, hole: Option<f64>) -> Scene {
    const BESIDE: f64 = 6.0;
    let depth = member.depth;
    let taken = (notch.unwrap_or(0.0) + hole.unwrap_or(0.0)).min(depth);
    let opening = values.length("opening").or(values.length("notch_length")).or(hole).unwrap_or(taken);
    let past = values.length("tie_past_opening");
    let beside = past.unwrap_or(0.0).max(BESIDE);
    let mut pen = Pen::new((-beside, 0.0), (opening + 2.0 * beside, depth));
    pen.margin(26.0, 40.0, 40.0);
    for y in [0.0, depth] {
        pen.line((-beside, y), (opening + beside, y), Weight::Cut, Ink::Ink);
    }
    if notch.is_none()
        && let Some(hole) = hole
    {
        pen.shape(circle((opening / 2.0, depth / 2.0), hole.min(depth) / 2.0), Weight::Cut, Ink::Short, true);
    } else {
        pen.shape(rectangle(0.0, 0.0, opening, taken), Weight::Cut, Ink::Short, true);
    }
    let most = fact(values.reply, "The most that may be taken without a tie").and_then(written);
    if let Some(most) = most.filter(|most| *most <= depth) {
        pen.line((-beside, most), (opening + beside, most), Weight::Hidden, Ink::Chalk);
    }
    if let Some((past, width)) = past.zip(values.length("tie_width")).filter(|_| values.typed.text("tie") == "yes") {
        let (top, bottom) = ((depth - width).max(0.0) / 2.0, (depth + width).min(2.0 * depth) / 2.0);
        super::pen::outline(&mut pen, &rectangle(-past, top, opening + past, bottom), Weight::Hidden, Ink::Ink);
    }
    let (over, below) = (-pen.paper(12.0), depth + pen.paper(24.0));
    pen.dimension((0.0, over), (opening, over), &figure(opening), Some("opening"));
    pen.dimension((opening, below), (opening + beside, below), &figure(beside), past.map(|_| "tie_past_opening"));
    pen.scene(plate_alt(values, depth, taken, opening))
}

fn plate_alt(values: Values<'_>, depth: f64, taken: f64, opening: f64) -> String {
    let tie = match values.typed.text("tie") {
        "yes" => " A tie lies across it.",
        "none" | "no" => " No tie lies across it.",
        _ => "",
    };
    format!(
        "A top plate {} wide from above. {} of it is taken, over {} along the wall. The dashed line is what may be \
         taken without a tie.{tie}",
        figure(depth),
        figure(taken),
        figure(opening)
    )
}

fn figure(inches: f64) -> String {
    words::length(Length::from_inches(inches))
}

fn alt(values: Values<'_>, name: &str, member: &Member, notch: Option<f64>, hole: Option<f64>) -> String {
    let name = match name {
        "joist" | "rafter" => name,
        "engineered" => "member",
        _ => "stud",
    };
    let mut alt = format!("Section of the {name}, {} by {}.", figure(member.breadth), figure(member.depth));
    for (what, found, subject) in [("notch", notch, "Notch depth"), ("hole", hole, "Hole diameter")] {
        let Some(found) = found else { continue };
        alt.push_str(&format!(" The {what}: {}", figure(found)));
        match values.check(subject) {
            Some(check) => alt.push_str(&format!(", {}.", check.limit)),
            None => alt.push('.'),
        }
    }
    alt
}
