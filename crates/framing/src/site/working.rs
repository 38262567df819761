//! The working of a place: ordered steps, each with its clause.

use loads::house::{House, WindDirection};
use loads::site::{LoadStandard, SiteWind};
use loads::snow_on_roof::{SnowInput, SnowOnRoof};
use loads::wind::asd_factor;
use loads::wind::directional::{Directional, Face, directional};
use loads::wind::envelope::envelope;
use members::working::{Basis, Part, figure};
use standards::asce7_16::chapter_26::{
    DIRECTIONALITY, DIRECTIONALITY_FACTOR, GROUND_ELEVATION, INTERNAL_PRESSURE, VELOCITY_PRESSURE,
    VELOCITY_PRESSURE_COEFFICIENT,
};
use standards::asce7_16::chapter_26_8::TOPOGRAPHIC_FACTOR;
use standards::asce7_16::{chapter_2, chapter_7, chapter_7_sloped, chapter_27, chapter_28, chapter_30};
use standards::asce7_22;
use standards::ibc_2018::section_1609_3::{NOMINAL_SPEED, nominal_speed};

use super::about::About;
use super::input;
use super::reply::WindReply;
use crate::reading::Reading;
use crate::words;

/// The working of the wind.
pub(super) fn wind(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House, reply: &WindReply) {
    about.part(velocity_pressure(reading, wind));
    if let Some(Ok(factor)) = input::hill_factor(reading, wind.mean_roof_height) {
        about.part(hill(&factor, wind));
    }
    about.part(cladding(wind, reply));
    for direction in WindDirection::ALL {
        if let Ok(found) = envelope(wind, house, direction) {
            about.part(by_envelope(&found, reply));
        }
        if let Ok(found) = directional(wind, house, direction) {
            about.part(by_direction(&found));
        }
    }
    if let Some(part) = lift(reply) {
        about.part(part);
    }
}

fn velocity_pressure(reading: &Reading, wind: &SiteWind) -> Part {
    let mut part = Part::new("Velocity pressure");
    let mph = wind.speed.mph();
    if reading.word("speed_given_as") == Some("nominal") {
        let nominal = nominal_speed(wind.speed).mph();
        let expression = format!("{} / √0.6", figure(nominal));
        part.step("V", "basic (ultimate) speed", expression, (mph, "mph"), Basis::Published(NOMINAL_SPEED));
    } else {
        part.step("V", "basic (ultimate) speed", figure(mph), (mph, "mph"), Basis::Input("wind_speed"));
    }
    let height = wind.mean_roof_height.feet();
    part.step(
        "h",
        "mean roof height",
        words::length(wind.mean_roof_height),
        (height, "ft"),
        Basis::Input("mean_roof_height"),
    );
    let Ok(k_h) = wind.velocity_pressure_coefficient(wind.mean_roof_height) else { return part };
    let (equation, source) = match wind.standard {
        LoadStandard::Asce7Of16 => ("2.01 (h / z_g)^(2/α)", VELOCITY_PRESSURE_COEFFICIENT),
        LoadStandard::Asce7Of22 => ("2.41 (h / z_g)^(2/α)", asce7_22::VELOCITY_PRESSURE_COEFFICIENT),
    };
    let meaning = format!("velocity pressure coefficient, exposure {}", wind.exposure.letter());
    part.step("K_h", meaning, equation, (k_h, ""), Basis::Published(source));
    let k_zt = wind.topographic_factor;
    part.step("K_zt", "topographic factor", figure(k_zt), (k_zt, ""), Basis::Published(TOPOGRAPHIC_FACTOR));
    part.step("K_d", "directionality", "0.85", (DIRECTIONALITY_FACTOR, ""), Basis::Published(DIRECTIONALITY));
    let k_e = wind.ground_elevation_factor;
    part.step("K_e", "ground elevation", figure(k_e), (k_e, ""), Basis::Published(GROUND_ELEVATION));
    let q_h = 0.002_56 * k_h * k_zt * DIRECTIONALITY_FACTOR * k_e * mph * mph;
    let expression =
        format!("0.00256 × {} × {} × 0.85 × {} × {}²", figure(k_h), figure(k_zt), figure(k_e), figure(mph));
    part.step(
        "q_h",
        "velocity pressure, strength level",
        expression,
        (q_h, "psf"),
        Basis::Published(VELOCITY_PRESSURE),
    );
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    part.step(
        "GC_pi",
        "internal pressure, of either sign",
        figure(gc_pi),
        (gc_pi, ""),
        Basis::Published(INTERNAL_PRESSURE),
    );
    part
}

fn hill(factor: &standards::asce7_16::chapter_26_8::TopographicFactor, wind: &SiteWind) -> Part {
    let mut part = Part::new("The ground");
    let basis = Basis::Published(TOPOGRAPHIC_FACTOR);
    part.step("K_1", "of the shape", "c H / L_h", (factor.k_1, ""), basis);
    let half = format!("1 − x / (μ × {} ft)", figure(factor.half_length.feet()));
    part.step("K_2", "of the distance from the crest", half, (factor.k_2, ""), basis);
    let height = format!("e^(−γ × {} / {})", figure(wind.mean_roof_height.feet()), figure(factor.half_length.feet()));
    part.step("K_3", "of the height", height, (factor.k_3, ""), basis);
    let expression = format!("(1 + {} × {} × {})²", figure(factor.k_1), figure(factor.k_2), figure(factor.k_3));
    part.step("K_zt", "topographic factor", expression, (factor.factor, ""), basis);
    part
}

/// Each part by its zone: coefficient back from the pressure, so that the step shows what was put in.
fn cladding(wind: &SiteWind, reply: &WindReply) -> Part {
    let mut part = Part::new("Wind on parts");
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    let q_h = reply.q_h_psf.unwrap_or_default();
    for one in &reply.pressures {
        let meaning = format!("{} zone {}, {}, {} sq ft, away", one.part, one.zone, one.place, figure(one.area_sqft));
        let coefficient = one.outward_strength_psf / q_h - gc_pi;
        let expression = if one.outward_strength_psf <= chapter_30::MINIMUM_PRESSURE.psf() {
            "0.6 × 16, the least".to_owned()
        } else {
            format!("0.6 × {} × (−{} − {})", figure(q_h), figure(coefficient), figure(gc_pi))
        };
        let source = if one.part == "roof" || one.part == "rafter" || one.part == "overhang" {
            chapter_30::roofs::ROOF_COEFFICIENTS
        } else {
            chapter_30::WALL_COEFFICIENTS
        };
        part.step("p", meaning, expression, (-one.outward_psf, "psf"), Basis::Published(source));
    }
    part
}

fn by_envelope(found: &loads::wind::envelope::Envelope, reply: &WindReply) -> Part {
    let direction = match found.direction {
        WindDirection::AcrossRidge => "across the ridge",
        WindDirection::AlongRidge => "along the ridge",
    };
    let mut part = Part::new(format!("Push {direction}, envelope procedure"));
    let basis = Basis::Published(chapter_28::COEFFICIENTS);
    let q = found.q_h.pressure.psf();
    part.step("q_h", "velocity pressure", figure(q), (q, "psf"), Basis::Published(VELOCITY_PRESSURE));
    part.step(
        "a",
        "width of the end zone; its strip is twice as wide",
        reply.end_width.clone(),
        (found.end_width.feet(), "ft"),
        Basis::Published(chapter_28::END_WIDTH),
    );
    for (meaning, pressure) in [
        ("both walls, between the ends", found.walls.0.psf()),
        ("both walls, end strip", found.walls.1.psf()),
        ("roof, upright, between the ends", found.roof.0.psf()),
        ("roof, upright, end strip", found.roof.1.psf()),
    ] {
        part.step("p", meaning, format!("{} × {}", figure(q), figure(pressure / q)), (pressure, "psf"), basis);
    }
    totals(&mut part, &found.push, chapter_28::LEAST);
    part
}

fn by_direction(found: &Directional) -> Part {
    let direction = match found.direction {
        WindDirection::AcrossRidge => "across the ridge",
        WindDirection::AlongRidge => "along the ridge",
    };
    let mut part = Part::new(format!("Push {direction}, directional procedure"));
    let basis = Basis::Published(chapter_27::COEFFICIENTS);
    part.step("h/L", "height over length along the wind", "", (found.height_to_length, ""), Basis::Arithmetic);
    part.step("L/B", "length along the wind over breadth", "", (found.length_to_breadth, ""), Basis::Arithmetic);
    for one in &found.faces {
        let meaning = match one.face {
            Face::WindwardWall(top) => format!("windward wall, to {}", words::length(top)),
            Face::LeewardWall => "leeward wall".to_owned(),
            Face::SideWalls => "side walls".to_owned(),
            Face::WindwardRoofSuction => "windward slope, first case".to_owned(),
            Face::WindwardRoofPush => "windward slope, second case".to_owned(),
            Face::LeewardRoof => "leeward slope".to_owned(),
            Face::RoofStrip(from, Some(to)) => format!("roof from {} to {}", words::length(from), words::length(to)),
            Face::RoofStrip(from, None) => format!("roof beyond {}", words::length(from)),
            Face::RoofLeast => "any strip of roof, second case".to_owned(),
        };
        let expression = format!(
            "{} × 0.85 × {}, inside {} or {}",
            figure(one.q.psf()),
            figure(one.c_p),
            figure(one.inside_pushes.psf()),
            figure(one.inside_sucks.psf())
        );
        let outside = one.q.psf() * 0.85 * one.c_p;
        part.step("p", meaning, expression, (outside, "psf"), basis);
    }
    totals(&mut part, &found.push, chapter_27::LEAST);
    part
}

fn totals(part: &mut Part, push: &loads::wind::Push, least: standards::Source) {
    part.step(
        "V_min",
        "least push, 16 psf on walls and 8 on roofs",
        "",
        (push.least.pounds(), "lb"),
        Basis::Published(least),
    );
    part.step("V", "push at strength level", "", (push.total.pounds(), "lb"), Basis::Arithmetic);
    let asd = push.total.pounds() * asd_factor();
    part.step(
        "0.6V",
        "at allowable-stress level",
        format!("0.6 × {}", figure(push.total.pounds())),
        (asd, "lb"),
        Basis::Published(chapter_2::Combination::SOURCE),
    );
}

fn lift(reply: &WindReply) -> Option<Part> {
    let found = reply.uplift.as_ref()?;
    let mut part = Part::new("What lifts the roof");
    for (of, windward, leeward) in &found.cases {
        let meaning = format!("{of}: windward wall, strength level; the other wall {}", figure(*leeward));
        part.step(
            "w",
            meaning,
            "statics of the two slopes",
            (*windward, "plf"),
            Basis::Published(chapter_28::COEFFICIENTS),
        );
    }
    part.step("D", "roof and ceiling on the wall", "", (found.dead_plf, "plf"), Basis::Input("roof_dead"));
    let net = |psf: f64| format!("0.6 W − 0.6 × {} = {}", figure(found.dead_plf), figure(psf));
    let basis = Basis::Published(chapter_2::Combination::SOURCE);
    part.step("w_net", "net lift, end strip", net(found.net_end_plf), (found.net_end_plf, "plf"), basis);
    part.step("w_net", "net lift, between", net(found.net_interior_plf), (found.net_interior_plf, "plf"), basis);
    Some(part)
}

/// The working of snow.
pub(super) fn snow(about: &mut About<'_>, input: &SnowInput, found: &SnowOnRoof) {
    let mut part = Part::new("Snow on the roof");
    let ground = input.ground.psf();
    part.step("p_g", "ground snow", figure(ground), (ground, "psf"), Basis::Input("ground_snow"));
    let source = match input.standard {
        LoadStandard::Asce7Of16 => chapter_7::FLAT_ROOF,
        LoadStandard::Asce7Of22 => asce7_22::FLAT_ROOF,
    };
    let expression = format!(
        "0.7 × {} × {} × {} × {}",
        figure(input.exposure),
        figure(found.thermal),
        figure(found.importance),
        figure(ground)
    );
    part.step("p_f", "flat roof: 0.7 C_e C_t I_s p_g", expression, (found.flat.psf(), "psf"), Basis::Published(source));
    part.step(
        "C_s",
        "slope factor",
        figure(found.slope_factor),
        (found.slope_factor, ""),
        Basis::Published(chapter_7_sloped::SLOPE_FACTOR),
    );
    let expression = format!("{} × {}", figure(found.slope_factor), figure(found.flat.psf()));
    part.step(
        "p_s",
        "balanced",
        expression,
        (found.balanced.psf(), "psf"),
        Basis::Published(chapter_7_sloped::SLOPE_FACTOR),
    );
    let density = chapter_7_sloped::snow_density(input.ground).pcf();
    part.step(
        "γ",
        "density",
        format!("0.13 × {} + 14", figure(ground)),
        (density, "pcf"),
        Basis::Published(chapter_7_sloped::DENSITY),
    );
    if let Some((case, plain)) = &found.unbalanced {
        let rule =
            if *plain { "all of the ground's snow on the lee side" } else { "balanced, and a drift below the ridge" };
        part.step(
            "p",
            format!("unbalanced, lee slope: {rule}"),
            "",
            (case.leeward.psf(), "psf"),
            Basis::Published(chapter_7_sloped::UNBALANCED),
        );
        if let Some(surcharge) = case.surcharge {
            let expression = format!("h_d γ / √S over {} ft", figure(surcharge.width.feet()));
            part.step(
                "p_d",
                "more, from the ridge down",
                expression,
                (surcharge.peak.psf(), "psf"),
                Basis::Published(chapter_7_sloped::UNBALANCED),
            );
        }
    }
    if let Some(drift) = &found.drift {
        let basis = Basis::Published(chapter_7_sloped::DRIFT);
        part.step("h_b", "depth of the balanced snow", "p_f / γ", (drift.balanced_depth.feet(), "ft"), basis);
        part.step("h_c", "clear height", "", (drift.clear_height.feet(), "ft"), basis);
        part.step(
            "h_d",
            "leeward drift",
            "",
            (drift.leeward.feet(), "ft"),
            Basis::Published(chapter_7_sloped::DRIFT_HEIGHT),
        );
        part.step("h_d", "windward drift, three quarters", "", (drift.windward.feet(), "ft"), basis);
        let over = format!("h_d γ, to nothing over {} ft", figure(drift.surcharge.width.feet()));
        part.step("p_d", "drift at the wall", over, (drift.surcharge.peak.psf(), "psf"), basis);
    }
    about.part(part);
}
