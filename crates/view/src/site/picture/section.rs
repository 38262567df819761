//! The house cut across the ridge: what lifts the roof, the snow on it, what things weigh.

use framing::site::DrawnHouse;
use framing::site::reply::{GravityReply, SnowReply, WindReply};

use super::Feet;
use crate::pen::Pen;
use crate::scene::{Ink, Mark, Scene, Weight};
use crate::site::answer::grouped;

/// x across the house from the windward wall, y up; both feet, y turned down for the sheet.
fn pen(house: &Feet) -> Pen {
    let out = house.overhang;
    Pen::new((-out, -house.ridge), (house.width + 2.0 * out, house.ridge))
}

/// Walls, floor line, rafters and ceiling.
fn frame(pen: &mut Pen, house: &Feet) {
    let Feet { width, eave, ridge, overhang, .. } = *house;
    for x in [0.0, width] {
        pen.line((x, 0.0), (x, -eave), Weight::Cut, Ink::Ink);
    }
    pen.line((-overhang, 0.0), (width + overhang, 0.0), Weight::Seen, Ink::Ink);
    pen.line((0.0, -eave), (width, -eave), Weight::Seen, Ink::Ink);
    let drop = if width > 0.0 { (ridge - eave) / (width / 2.0) * overhang } else { 0.0 };
    pen.line((-overhang, -eave + drop), (width / 2.0, -ridge), Weight::Cut, Ink::Ink);
    pen.line((width + overhang, -eave + drop), (width / 2.0, -ridge), Weight::Cut, Ink::Ink);
}

fn arrow(pen: &mut Pen, from: (f64, f64), to: (f64, f64), figure: &str) {
    pen.marks.push(Mark::Arrow { from, to, figure: figure.to_owned(), ink: Ink::Chalk });
}

/// Net lift at both walls, near the ends of the house.
pub(super) fn lift(house: &DrawnHouse, wind: &WindReply) -> Scene {
    let feet = Feet::of(house);
    let mut pen = pen(&feet);
    pen.margin(70.0, 12.0, 12.0);
    frame(&mut pen, &feet);
    let Some(found) = &wind.uplift else {
        return pen.scene("The house cut across. Its lift is not worked.".to_owned());
    };
    let pounds = format!("{} lb", grouped(found.rafter_end_lb));
    let reach = pen.paper(46.0);
    for x in [0.0, feet.width] {
        let (from, to) = ((x, -feet.eave), (x, -feet.eave - reach));
        if found.rafter_end_lb > 0.0 {
            arrow(&mut pen, from, to, "");
        }
    }
    let (side, top) = (pen.paper(44.0), -feet.eave - reach * 0.7);
    pen.label((-side, top), &pounds);
    pen.label((feet.width + side, top), &pounds);
    let weight = format!("{} lb a foot", grouped(found.dead_plf));
    let middle = feet.width / 2.0;
    let below = pen.paper(18.0);
    pen.label((middle, -feet.eave + below), &format!("roof on each wall {weight}"));
    pen.scene(format!(
        "The house cut across the ridge. Near the ends each rafter is lifted with {pounds} at its wall, {} lb between. The \
         roof holds with {weight}.",
        grouped(found.rafter_interior_lb)
    ))
}

/// The heaviest case of snow on the two slopes, drawn as deep as it is heavy.
pub(super) fn snow(house: &DrawnHouse, snow: &SnowReply) -> Scene {
    let feet = Feet::of(house);
    let mut pen = pen(&feet);
    pen.margin(40.0, 44.0, 12.0);
    frame(&mut pen, &feet);
    let heaviest = snow.cases.iter().filter(|case| case.acts == "by itself");
    let total = |case: &&framing::site::reply::SnowCaseReply| case.leeward_psf + case.more.map_or(0.0, |(psf, ..)| psf);
    let Some(case) = heaviest.reduce(|most, case| if total(&case) > total(&most) { case } else { most }) else {
        return pen.scene("The house cut across. There is no snow.".to_owned());
    };
    let deep = pen.paper(40.0) / total(&case).max(1.0);
    let (width, eave, ridge) = (feet.width, feet.eave, feet.ridge);
    let half = width / 2.0;
    for (from, to, psf) in [(0.0, half, case.windward_psf), (width, half, case.leeward_psf)] {
        layer(&mut pen, ((from, -eave), (to, -ridge)), 0.0, psf * deep);
    }
    if let Some((psf, reach, _)) = case.more {
        let share = (reach / half).min(1.0);
        let end = (half + half * share, -ridge + (ridge - eave) * share);
        layer(&mut pen, (end, (half, -ridge)), case.leeward_psf * deep, psf * deep);
    }
    let over = pen.paper(50.0);
    let label = |psf: f64| format!("{psf:.1} psf");
    let mid = -(eave + ridge) / 2.0;
    let out = pen.paper(12.0);
    pen.label((-out, mid - over), &label(case.windward_psf));
    pen.label((width + out, mid - over), &label(total(&case)));
    pen.scene(format!(
        "The house cut across, with the heaviest snow that is worked: {}. {:.1} psf on one slope, {:.1} on the other.",
        case.name,
        case.windward_psf,
        total(&case)
    ))
}

/// A layer of snow over a line of roof, so much above it and so deep.
fn layer(pen: &mut Pen, (from, to): ((f64, f64), (f64, f64)), above: f64, deep: f64) {
    if deep > 0.0 {
        let up = |(x, y): (f64, f64), by: f64| (x, y - by);
        let shape = vec![up(from, above), up(to, above), up(to, above + deep), up(from, above + deep)];
        pen.shape(shape, Weight::Seen, Ink::Ink, true);
    }
}

/// What roof, floor and wall weigh.
pub(super) fn weights(house: &DrawnHouse, gravity: &GravityReply) -> Scene {
    let feet = Feet::of(house);
    let mut pen = pen(&feet);
    pen.margin(70.0, 30.0, 14.0);
    frame(&mut pen, &feet);
    let of = |what: &str| gravity.weights.iter().find(|one| one.of == what).map_or(0.0, |one| one.psf);
    let reach = pen.paper(34.0);
    let half = feet.width / 2.0;
    let on_roof = -(feet.eave + feet.ridge) / 2.0;
    arrow(&mut pen, (half * 0.5, on_roof - reach), (half * 0.5, on_roof), &format!("roof {:.1}", of("roof")));
    let gap = pen.paper(16.0);
    pen.label((half, -feet.eave + gap), &format!("ceiling {:.1} psf", of("ceiling")));
    pen.label((half, -gap * 0.5), &format!("floor {:.1} psf", of("floor")));
    let side = pen.paper(40.0);
    pen.label((feet.width + side, -feet.eave / 2.0), &format!("wall {:.1}", of("wall")));
    pen.scene(format!(
        "The house cut across. The roof weighs {:.1} psf on the level, the ceiling {:.1}, the floor {:.1}, the wall {:.1} of \
         its face.",
        of("roof"),
        of("ceiling"),
        of("floor"),
        of("wall")
    ))
}
