//! Nails along a line to scale; or around a panel, with those that are too deep.

use super::pen::{Pen, dot, rectangle, several};
use super::values::{Values, inches};
use crate::model::FieldId;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::fact;

/// More nails than this in a line are not drawn one by one.
const MOST_DOTS: u32 = 120;
/// Radius of a nail, pixels.
const DOT: f64 = 3.5;
/// Height of the strip of panel along the line, pixels.
const STRIP: f64 = 44.0;

/// The line that was counted, or else the panel around which deep nails were.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let line = values.length("line_length").zip(values.count("driven"));
    if let Some((length, driven)) = line {
        return strip(values, length, driven);
    }
    if fact(values.reply, "Nails around the panel").is_some() {
        return panel(values);
    }
    super::empty()
}

/// What is asked for above the line, what was driven on it. Where each nail stands was not measured: they are drawn
/// evenly, those that hold first.
fn strip(values: Values<'_>, length: f64, driven: u32) -> Scene {
    let (mut pen, missed) = (Pen::new((0.0, 0.0), (length, 0.0)), values.count("missed"));
    pen.margin(16.0, 34.0, STRIP + 44.0);
    let (height, radius) = (pen.paper(STRIP), pen.paper(DOT));
    pen.shape(rectangle(0.0, 0.0, length, height), Weight::Seen, Ink::Ink, false);
    let (id, asked) = asked(values);
    if let Some(asked) = asked.filter(|asked| *asked > 0.0) {
        let ticks = (length / asked).ceil().min(f64::from(MOST_DOTS)) as u32;
        let y = pen.paper(12.0);
        for tick in 0..=ticks {
            let x = (f64::from(tick) * asked).min(length);
            pen.line((x, 0.0), (x, y), Weight::Fine, Ink::Chalk);
        }
        let y = -pen.paper(8.0);
        pen.dimension((0.0, y), (asked.min(length), y), &figure(values.text(id)), Some(id));
    }
    let y = height * 0.62;
    let shown = driven.min(MOST_DOTS);
    let hold = driven.saturating_sub(missed.unwrap_or(0));
    for nail in 0..shown {
        let x = length * f64::from(nail) / f64::from(shown.saturating_sub(1).max(1));
        let holds = nail < hold;
        let ink = if holds { Ink::Ink } else { Ink::Short };
        dot(&mut pen, (x, y), radius, ink, holds);
    }
    let below = height + pen.paper(26.0);
    pen.dimension((0.0, below), (length, below), &figure(values.text("line_length")), Some("line_length"));
    pen.scene(strip_alt(values, driven, missed, asked.map(|_| values.text(id))))
}

/// The spacing that is asked for in the line, and its input.
fn asked(values: Values<'_>) -> (FieldId, Option<f64>) {
    let id = match values.typed.text("line") {
        "field" => "field_spacing",
        "boundary" => "boundary_spacing",
        _ => "edge_spacing",
    };
    (id, values.length(id))
}

fn figure(text: &str) -> String {
    inches(text).map_or_else(String::new, |inches| framing::walk::words::length(measure::Length::from_inches(inches)))
}

fn strip_alt(values: Values<'_>, driven: u32, missed: Option<u32>, asked: Option<&str>) -> String {
    let long = figure(values.text("line_length"));
    let mut alt = format!("A line of nails, {long} long: {} driven", several(driven as usize, "nail"));
    if let Some(missed) = missed {
        alt.push_str(&format!(", {missed} missed the framing and are drawn hollow"));
    }
    alt.push_str(". Drawn evenly: where each one stands was not measured.");
    if let Some(asked) = asked {
        alt.push_str(&format!(" The marks above stand at {}.", figure(asked)));
    }
    if let Some(spacing) = fact(values.reply, "Spacing of the nails that hold, on average") {
        alt.push_str(&format!(" Those that hold stand at {spacing} on average."));
    }
    alt
}

/// The panel with its edge nails; so many of them as are too deep are filled, wherever they stand.
fn panel(values: Values<'_>) -> Scene {
    let width = values.length("panel_width").unwrap_or(48.0);
    let height = values.length("panel_height").unwrap_or(96.0);
    let spacing = values.length("edge_spacing").filter(|spacing| *spacing >= 1.0).unwrap_or(6.0);
    let mut pen = Pen::new((0.0, 0.0), (width, height));
    pen.margin(40.0, 12.0, 40.0);
    pen.shape(rectangle(0.0, 0.0, width, height), Weight::Cut, Ink::Ink, false);
    let (radius, inside) = (pen.paper(DOT), pen.paper(7.0).min(width / 4.0).min(height / 4.0));
    let (right, bottom) = (width - inside, height - inside);
    let counts = (spaces(width, spacing), spaces(height, spacing));
    let along = |from: f64, to: f64, index: u32, count: u32| from + (to - from) * f64::from(index) / f64::from(count);
    let mut places = Vec::new();
    for index in 0..counts.0 {
        let x = along(inside, right, index, counts.0);
        places.extend([(x, inside), (width - x, bottom)]);
    }
    for index in 0..counts.1 {
        let y = along(inside, bottom, index, counts.1);
        places.extend([(right, y), (inside, height - y)]);
    }
    let deep = deep(values);
    for (index, at) in places.into_iter().enumerate() {
        let is_deep = index < deep;
        dot(&mut pen, at, radius, if is_deep { Ink::Short } else { Ink::Ink }, is_deep);
    }
    let (below, beside) = (height + pen.paper(24.0), -pen.paper(16.0));
    pen.dimension((0.0, below), (width, below), &figure(values.text("panel_width")), Some("panel_width"));
    pen.dimension((beside, height), (beside, 0.0), &figure(values.text("panel_height")), Some("panel_height"));
    let all = fact(values.reply, "Nails around the panel").unwrap_or_default();
    let (wide, high) = (figure(values.text("panel_width")), figure(values.text("panel_height")));
    pen.scene(format!(
        "A panel {wide} wide and {high} high with {all} nails around it. {deep} deeper than 1/16\" are drawn filled, \
         wherever they stand."
    ))
}

fn spaces(length: f64, spacing: f64) -> u32 {
    (length / spacing).ceil().clamp(1.0, f64::from(MOST_DOTS)) as u32
}

/// Nails that the core counts as too deep: `14 of 48, 29.2 %`.
fn deep(values: Values<'_>) -> usize {
    let check = values.check("Edge nails deeper than 1/16\"");
    let count = check.and_then(|check| check.found.split(' ').next()?.parse().ok());
    count.unwrap_or(0)
}
