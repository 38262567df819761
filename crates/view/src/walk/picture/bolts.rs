//! A piece of sill plate from above, with its bolts.

use framing::walk::hold_down_point::BY_BOLT;
use framing::walk::{could_not_be_seen, words};
use measure::Length;

use super::pen::{Pen, dot, rectangle, several};
use super::values::Values;
use crate::markup::Act;
use crate::model::FieldId;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::typed::InHand;

const BOLTS: FieldId = "bolts";
/// Of a piece whose length was not measured, so much is drawn past its last bolt.
const PAST: f64 = 6.0;
/// A bolt is drawn no smaller than this, pixels.
const LEAST_BOLT: f64 = 4.0;

/// The plate piece; nothing where neither its length nor a bolt is known.
pub(super) fn picture(values: Values<'_>, hand: InHand) -> Scene {
    let bolts: Vec<(usize, f64)> =
        values.lengths(BOLTS).into_iter().enumerate().filter_map(|(index, at)| Some((index, at?))).collect();
    let measured = values.length("plate_length");
    let last = bolts.iter().map(|(_, at)| *at).reduce(f64::max);
    let Some(end) = measured.or(last.map(|last| last + PAST)) else { return super::empty() };
    let depth = values.length("plate_width").or(values.size("plate").map(|(_, depth)| depth)).unwrap_or(3.5);
    let mut pen = Pen::new((0.0, 0.0), (end, depth));
    pen.margin(18.0, 52.0, 48.0);
    plate(&mut pen, (end, depth), measured.is_some());
    for (index, at) in &bolts {
        bolt(&mut pen, values, hand, (*index, *at), (end, depth));
    }
    figures(&mut pen, &bolts, (end, depth), measured);
    pen.scene(alt(values, &bolts, measured))
}

fn plate(pen: &mut Pen, (end, depth): (f64, f64), measured: bool) {
    for y in [0.0, depth] {
        pen.line((0.0, y), (end, y), Weight::Cut, Ink::Ink);
    }
    pen.line((0.0, 0.0), (0.0, depth), Weight::Cut, Ink::Ink);
    pen.line((end, 0.0), (end, depth), if measured { Weight::Cut } else { Weight::Hidden }, Ink::Ink);
}

fn bolt(pen: &mut Pen, values: Values<'_>, hand: InHand, (index, at): (usize, f64), (end, depth): (f64, f64)) {
    let across = super::values::inches(values.of("from_faces", index)).unwrap_or(depth / 2.0).min(depth);
    let diameter = super::values::inches(values.of("diameters", index)).unwrap_or(0.5);
    let radius = (diameter / 2.0).max(pen.paper(LEAST_BOLT)).min(pen.paper(10.0));
    let nut = values.of("nuts", index);
    washer(pen, values.of("washers", index), (at, across), (end, depth));
    let (ink, filled) = match nut {
        "loose" => (Ink::Short, true),
        "missing" | "none" => (Ink::Short, false),
        _ if could_not_be_seen(nut) => (Ink::Outside, false),
        _ => (Ink::Ink, true),
    };
    dot(pen, (at.clamp(0.0, end), across), radius, ink, filled);
    if matches!(ink, Ink::Short | Ink::Outside) {
        let word = if ink == Ink::Outside { "not seen" } else { nut };
        let y = depth + pen.paper(34.0);
        pen.label((at, y), word);
    }
    // A tap brings this bolt's reading of the list in hand.
    let field = BY_BOLT.into_iter().find(|field| *field == hand.field).unwrap_or(BOLTS);
    let reach = pen.paper(20.0);
    let (left, right) = ((at - reach).max(-pen.paper(18.0)), (at + reach).min(end + pen.paper(18.0)));
    let label = format!("Bolt {} at {}", index + 1, words::length(Length::from_inches(at)));
    pen.pick((left, -reach), (right, depth + reach), Act::Reading(field, index), label);
}

/// A plate washer by its size; a cut one is drawn as the nut is.
fn washer(pen: &mut Pen, text: &str, (at, across): (f64, f64), (end, depth): (f64, f64)) {
    let sides: Vec<f64> = text.split(['x', 'X', '×']).filter_map(|side| super::values::inches(side.trim())).collect();
    let [side, other, _] = sides[..] else { return };
    let half = side.min(other) / 2.0;
    // It may stand over the plate, but not out of the picture.
    let over = pen.paper(8.0);
    let (left, right) = ((at - half).max(-over), (at + half).min(end + over));
    let (top, bottom) = ((across - half).max(-over), (across + half).min(depth + over));
    if left < right && top < bottom {
        pen.shape(rectangle(left, top, right, bottom), Weight::Seen, Ink::Ink, false);
    }
}

/// From the ends to the nearest bolts, and from bolt to bolt, in turn at two heights.
fn figures(pen: &mut Pen, bolts: &[(usize, f64)], (end, depth): (f64, f64), measured: Option<f64>) {
    let mut places: Vec<f64> = bolts.iter().map(|(_, at)| *at).collect();
    places.sort_by(f64::total_cmp);
    places.insert(0, 0.0);
    places.extend(measured);
    let clear = pen.paper(40.0);
    let mut high = false;
    for pair in places.windows(2).filter(|pair| pair[1] > pair[0]) {
        // A figure wider than what it stands over would touch its neighbour's.
        high = !high && pair[1] - pair[0] < clear;
        let y = -pen.paper(if high { 34.0 } else { 12.0 });
        pen.dimension((pair[0], y), (pair[1], y), &length(pair[1] - pair[0]), None);
    }
    if let Some(measured) = measured {
        let y = depth + pen.paper(20.0);
        pen.dimension((0.0, y), (end, y), &length(measured), Some("plate_length"));
    }
}

pub(super) fn length(inches: f64) -> String {
    words::length(Length::from_inches(inches))
}

fn alt(values: Values<'_>, bolts: &[(usize, f64)], measured: Option<f64>) -> String {
    let piece = measured.map_or_else(|| "of a length not measured".to_owned(), |long| format!("{} long", length(long)));
    let mut alt = format!("A piece of plate {piece} from above, with {}", several(bolts.len(), "bolt"));
    for (place, (index, at)) in bolts.iter().enumerate() {
        let nut = values.of("nuts", *index);
        let nut = if nut.is_empty() || nut == "-" {
            "nut not looked at".to_owned()
        } else {
            format!("nut {}", nut_words(nut))
        };
        alt.push_str(if place == 0 { ": " } else { "; " });
        alt.push_str(&format!("at {}, {nut}", length(*at)));
    }
    alt.push('.');
    alt
}

pub(super) fn nut_words(nut: &str) -> &str {
    if could_not_be_seen(nut) { "not seen" } else { nut }
}
