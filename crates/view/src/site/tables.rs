//! The results of what is looked at, as tables.

use framing::site::reply::{GravityReply, LevelReply, PressureReply, PushReply, SnowReply, UpliftReply, WindReply};
use framing::site::{LIFT_HEADING, ROOF_LIVE_HEADING, SNOW_HEADING, part_heading, push_heading, weight_heading};
use framing::words::figure;

use super::answer::{grouped, whole};
use super::{Answered, Topic};
use crate::model::{Table, TableRow};

fn row(what: impl Into<String>, values: Vec<String>) -> TableRow {
    TableRow { what: what.into(), values, strong: false }
}

fn columns(of: &[&str]) -> Vec<String> {
    of.iter().map(|column| (*column).to_owned()).collect()
}

/// Finds the part of the working of that heading.
type Find<'f> = &'f dyn Fn(&str) -> Option<usize>;

/// The tables of a topic; `find` gives the part of the working of a heading.
pub(super) fn tables(topic: Topic, (wind, snow, gravity): &Answered, find: Find<'_>) -> Vec<Table> {
    match topic {
        Topic::Parts => parts(wind, find),
        Topic::House => push(wind, find),
        Topic::Uplift => lift(wind, find),
        Topic::Snow => of_snow(snow, find),
        Topic::Weights => weights(gravity, find),
    }
}

/// What stands before the headings of the wing.
const WING: &str = "Wing: ";

fn parts(wind: &WindReply, find: Find<'_>) -> Vec<Table> {
    let mut tables = pressures(&wind.pressures, "", find);
    if let (Some(broken), Some(first)) = (&wind.if_glass_breaks, tables.first_mut()) {
        let mut broken = pressure(broken);
        "if the glass breaks".clone_into(&mut broken.what);
        first.rows.push(broken);
        first
            .notes
            .push("If a large window breaks, the wind pushes from inside too: everything is pulled harder.".to_owned());
    }
    let widths = |of: &str, wide: &str| {
        format!("psf, allowable stress (0.6 of strength level). Zones along edges and corners of {of} are {wide} wide.")
    };
    if let Some(last) = tables.last_mut() {
        last.notes.push(widths("the house", &wind.end_width));
    }
    if let Some(wing) = &wind.wing {
        let mut of_wing = pressures(&wing.pressures, WING, find);
        if let Some(last) = of_wing.last_mut() {
            last.notes.push(widths("the wing", &wing.end_width));
        }
        tables.extend(of_wing);
    }
    tables
}

/// A table for each kind of part.
fn pressures(pressures: &[PressureReply], name: &str, find: Find<'_>) -> Vec<Table> {
    let table = |of: &[PressureReply]| {
        let first = of.first()?;
        let heading = part_heading(name, &first.part);
        let working = find(&heading);
        let most = of.iter().map(|one| one.outward_psf).fold(0.0, f64::max);
        let row = |one: &PressureReply| TableRow { strong: one.outward_psf >= most, ..pressure(one) };
        let both_faces = if first.part == "overhang" { ", both faces" } else { "" };
        Some(Table {
            heading: format!("{heading}{both_faces}, {} sq ft", figure(first.area_sqft)),
            columns: columns(&["zone", "in", "out"]),
            rows: of.iter().map(row).collect(),
            notes: Vec::new(),
            working,
        })
    };
    pressures.chunk_by(|one, next| one.part == next.part).filter_map(table).collect()
}

fn pressure(one: &PressureReply) -> TableRow {
    let inward = one.inward_psf.map_or_else(|| "–".to_owned(), |psf| format!("+{}", whole(psf)));
    row(format!("{} {}", one.zone, one.place), vec![inward, format!("−{}", whole(one.outward_psf))])
}

fn push(wind: &WindReply, find: Find<'_>) -> Vec<Table> {
    let of_wing = wind.wing.iter().flat_map(|wing| wing.push.iter().map(|push| one_push(push, WING, find)));
    wind.push.iter().map(|push| one_push(push, "", find)).chain(of_wing).collect()
}

fn one_push(push: &PushReply, name: &str, find: Find<'_>) -> Table {
    let level =
        |level: &LevelReply| row(level.height.clone(), vec![grouped(level.here_lb), grouped(level.shear_below_lb)]);
    let mut rows: Vec<TableRow> = push.levels.iter().rev().map(level).collect();
    rows.push(row("to the foundation", vec![grouped(push.to_foundation_lb), grouped(push.total_lb)]));
    let mut notes = vec![format!(
        "Turning over about the ground: {} ft-lb. All of it at strength level: {} lb.",
        grouped(push.overturning_ft_lb),
        grouped(push.total_strength_lb)
    )];
    if push.least_governs {
        notes.push("The least load of the clause governs: 16 psf on walls, 8 on roofs.".to_owned());
    }
    if push.governs {
        notes.push("The larger of the two procedures in this direction.".to_owned());
    }
    Table {
        heading: capital(&format!("{name}{}, {} procedure", push.direction, push.procedure)),
        columns: columns(&["level", "comes in, lb", "walls below carry, lb"]),
        rows,
        notes,
        working: find(&push_heading(name, &push.direction, &push.procedure)),
    }
}

fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}

fn lift(wind: &WindReply, find: Find<'_>) -> Vec<Table> {
    let of_wing = wind.wing.as_ref().and_then(|wing| wing.uplift.as_ref()).map(|found| one_lift(found, WING, find));
    wind.uplift.as_ref().map(|found| one_lift(found, "", find)).into_iter().chain(of_wing).flatten().collect()
}

fn one_lift(found: &UpliftReply, name: &str, find: Find<'_>) -> [Table; 2] {
    let working = find(&format!("{name}{LIFT_HEADING}"));
    let net = Table {
        heading: capital(&format!("{name}net lift at the eave walls")),
        columns: columns(&["where", "lb a foot", "lb a rafter"]),
        rows: [
            ("near the ends", found.net_end_plf, found.rafter_end_lb),
            ("between", found.net_interior_plf, found.rafter_interior_lb),
        ]
        .map(|(what, plf, pounds)| row(what, vec![grouped(plf), grouped(pounds)]))
        .to_vec(),
        notes: vec![
            format!(
                "0.6 of the wind less 0.6 of {} lb a foot of roof; rafters at {}.",
                figure(found.dead_plf),
                found.rafters_apart
            ),
            "Below nothing: the weight holds it.".to_owned(),
        ],
        working,
    };
    let cases = Table {
        heading: capital(&format!("{name}lift by load case, strength level")),
        columns: columns(&["case", "windward, plf", "other wall, plf"]),
        rows: found.cases.iter().map(|(of, near, far)| row(of.clone(), vec![grouped(*near), grouped(*far)])).collect(),
        notes: Vec::new(),
        working,
    };
    [net, cases]
}

fn of_snow(snow: &SnowReply, find: Find<'_>) -> Vec<Table> {
    let case = |case: &framing::site::reply::SnowCaseReply| {
        let more = case.more.map_or_else(String::new, |(psf, feet, falls)| {
            let how = if falls { "to nothing over" } else { "over" };
            format!("+{psf:.1} {how} {feet:.1} ft")
        });
        let both = if case.windward_psf == case.leeward_psf {
            format!("{:.1}", case.leeward_psf)
        } else {
            format!("{:.1} / {:.1}", case.windward_psf, case.leeward_psf)
        };
        row(case.name.clone(), vec![both, more])
    };
    vec![Table {
        heading: "Cases of snow".to_owned(),
        columns: columns(&["case", "psf, windward / lee", "more"]),
        rows: snow.cases.iter().map(case).collect(),
        notes: vec![
            format!("Flat roof {:.1} psf; slope factor {}.", snow.flat_psf, figure(snow.slope_factor)),
            "The cases do not act together, but for drift or slide on the lower roof's own snow.".to_owned(),
        ],
        working: find(SNOW_HEADING),
    }]
}

fn weights(gravity: &GravityReply, find: Find<'_>) -> Vec<Table> {
    let mut tables: Vec<Table> = gravity
        .weights
        .iter()
        .map(|weight| {
            let mut rows: Vec<TableRow> =
                weight.layers.iter().map(|(name, psf, _)| row(name.clone(), vec![format!("{psf:.1}")])).collect();
            let level = if weight.of == "roof" && !weight.layers.is_empty() { "on the level" } else { "altogether" };
            rows.push(TableRow { strong: true, ..row(level, vec![format!("{:.1}", weight.psf)]) });
            Table {
                heading: capital(&weight.of),
                columns: columns(&["layer", "psf"]),
                rows,
                notes: Vec::new(),
                working: find(&weight_heading(&weight.of)),
            }
        })
        .collect();
    tables.push(Table {
        heading: "Live loads".to_owned(),
        columns: columns(&["use", "psf"]),
        rows: gravity.live.iter().map(|live| row(live.of.clone(), vec![figure(live.psf)])).collect(),
        notes: vec![format!(
            "Roof live load of a rafter: {} psf by the residential code's table, {} by the load standard's equation.",
            figure(gravity.roof_live_by_table_psf),
            figure(gravity.roof_live_by_equation_psf)
        )],
        working: find(ROOF_LIVE_HEADING),
    });
    tables.push(Table {
        heading: "Combinations, allowable stress".to_owned(),
        columns: columns(&["combination", "duration factor"]),
        rows: gravity.combinations.iter().map(|(name, factor)| row(name.clone(), vec![figure(*factor)])).collect(),
        notes: Vec::new(),
        working: None,
    });
    tables
}
