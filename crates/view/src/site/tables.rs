//! The results of what is looked at, as tables.

use framing::site::reply::{GravityReply, PressureReply, SnowReply, WindReply};
use framing::words::figure;

use super::Topic;
use super::answer::{grouped, whole};
use crate::model::{Table, TableRow};

fn row(what: impl Into<String>, values: Vec<String>) -> TableRow {
    TableRow { what: what.into(), values, strong: false }
}

fn columns(of: &[&str]) -> Vec<String> {
    of.iter().map(|column| (*column).to_owned()).collect()
}

/// The tables of a topic.
pub(super) fn tables(topic: Topic, wind: &WindReply, snow: &SnowReply, gravity: &GravityReply) -> Vec<Table> {
    match topic {
        Topic::Parts => parts(wind),
        Topic::House => push(wind),
        Topic::Uplift => lift(wind),
        Topic::Snow => of_snow(snow),
        Topic::Weights => weights(gravity),
    }
}

fn parts(wind: &WindReply) -> Vec<Table> {
    const KINDS: [(&str, &str); 6] = [
        ("opening", "Windows and doors"),
        ("stud", "Studs"),
        ("wall", "Wall covering, 10 sq ft"),
        ("roof", "Roof covering, 10 sq ft"),
        ("rafter", "Rafters"),
        ("overhang", "Overhangs, both faces"),
    ];
    let mut tables: Vec<Table> =
        KINDS.into_iter().filter_map(|(part, heading)| pressures(wind, part, heading)).collect();
    if let (Some(broken), Some(first)) = (&wind.if_glass_breaks, tables.first_mut()) {
        let mut broken = pressure(broken);
        "if the glass breaks".clone_into(&mut broken.what);
        first.rows.push(broken);
        first
            .notes
            .push("If a large window breaks, the wind pushes from inside too: everything is pulled harder.".to_owned());
    }
    if let Some(last) = tables.last_mut() {
        last.notes.push(format!(
            "psf, allowable stress (0.6 of strength level). Zones along edges and corners are {} wide.",
            wind.end_width
        ));
    }
    tables
}

fn pressures(wind: &WindReply, part: &str, heading: &str) -> Option<Table> {
    let mut rows: Vec<(f64, TableRow)> =
        wind.pressures.iter().filter(|one| one.part == part).map(|one| (one.outward_psf, pressure(one))).collect();
    let most = rows.iter().map(|(outward, _)| *outward).fold(0.0, f64::max);
    for (outward, row) in &mut rows {
        row.strong = *outward >= most;
    }
    (!rows.is_empty()).then(|| Table {
        heading: heading.to_owned(),
        columns: columns(&["zone", "in", "out"]),
        rows: rows.into_iter().map(|(_, row)| row).collect(),
        notes: Vec::new(),
    })
}

fn pressure(one: &PressureReply) -> TableRow {
    let inward = one.inward_psf.map_or_else(|| "–".to_owned(), |psf| format!("+{}", whole(psf)));
    row(format!("{} {}", one.zone, one.place), vec![inward, format!("−{}", whole(one.outward_psf))])
}

fn push(wind: &WindReply) -> Vec<Table> {
    wind.push
        .iter()
        .map(|push| {
            let level = |level: &framing::site::reply::LevelReply| {
                row(format!("level at {}", level.height), vec![grouped(level.here_lb), grouped(level.shear_below_lb)])
            };
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
                heading: format!("{}, {} procedure", capital(&push.direction), push.procedure),
                columns: columns(&["level", "comes in, lb", "walls below carry, lb"]),
                rows,
                notes,
            }
        })
        .collect()
}

fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}

fn lift(wind: &WindReply) -> Vec<Table> {
    let Some(found) = &wind.uplift else { return Vec::new() };
    let net = Table {
        heading: "Net lift at the eave walls".to_owned(),
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
    };
    let cases = Table {
        heading: "Lift by load case, strength level".to_owned(),
        columns: columns(&["case", "windward, plf", "other wall, plf"]),
        rows: found.cases.iter().map(|(of, near, far)| row(of.clone(), vec![grouped(*near), grouped(*far)])).collect(),
        notes: Vec::new(),
    };
    vec![net, cases]
}

fn of_snow(snow: &SnowReply) -> Vec<Table> {
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
    }]
}

fn weights(gravity: &GravityReply) -> Vec<Table> {
    let mut tables: Vec<Table> = gravity
        .weights
        .iter()
        .map(|weight| {
            let mut rows: Vec<TableRow> =
                weight.layers.iter().map(|(name, psf, _)| row(name.clone(), vec![format!("{psf:.1}")])).collect();
            let level = if weight.of == "roof" && !weight.layers.is_empty() { "on the level" } else { "altogether" };
            rows.push(TableRow { strong: true, ..row(level, vec![format!("{:.1}", weight.psf)]) });
            Table { heading: capital(&weight.of), columns: columns(&["layer", "psf"]), rows, notes: Vec::new() }
        })
        .collect();
    tables.push(Table {
        heading: "Live loads".to_owned(),
        columns: columns(&["use", "psf"]),
        rows: gravity.live.iter().map(|(of, psf, _)| row(of.clone(), vec![figure(*psf)])).collect(),
        notes: vec![format!(
            "Roof live load of a rafter: {} psf by the residential code's table, {} by the load standard's equation.",
            figure(gravity.roof_live_by_table_psf),
            figure(gravity.roof_live_by_equation_psf)
        )],
    });
    tables.push(Table {
        heading: "Combinations, allowable stress".to_owned(),
        columns: columns(&["combination", "duration factor"]),
        rows: gravity.combinations.iter().map(|(name, factor)| row(name.clone(), vec![figure(*factor)])).collect(),
        notes: Vec::new(),
    });
    tables
}
