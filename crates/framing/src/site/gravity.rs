//! Weights and live loads of a place, answered.

use loads::combination::AsdCombination;
use loads::house::House;
use loads::site::LoadStandard;
use loads::weights::{Weighed, on_the_level, sum};
use measure::{Area, AreaLoad};
use members::working::{Basis, Part, figure};
use standards::asce7_16::chapter_4;
use standards::irc_2021::r301::{LIVE_LOADS, Occupancy};
use standards::irc_2021::r301_6;
use standards::{Source, Status};

use super::about::About;
use super::input;
use super::reply::{GravityReply, LiveReply, WeightReply};
use crate::reading::{Origin, Reading};
use crate::words;

/// Of what, the input of its weight, and the input of its layers.
const OF: [(&str, &str, &str); 4] = [
    ("roof", "roof_dead", "roof_layers"),
    ("ceiling", "ceiling_dead", "ceiling_layers"),
    ("floor", "floor_dead", "floor_layers"),
    ("wall", "wall_dead", "wall_layers"),
];

/// Weight of a roof, a ceiling, a floor or a wall, on the level for a roof: as typed, else from its layers, where
/// they were written, else as assumed; none where an input is wrong.
#[must_use]
pub fn weight(reading: &Reading, house: &House, id: &str, layers: &[Weighed]) -> Option<AreaLoad> {
    let typed = reading.get(id).is_some_and(|value| value.origin != Origin::Assumed);
    if typed || layers.is_empty() {
        return reading.number(id).map(AreaLoad::from_psf);
    }
    let own = sum(layers);
    Some(if id == "roof_dead" { on_the_level(own, house.angle()) } else { own })
}

/// What holds the roof down, on the level: the roof, and the ceiling hung from it.
#[must_use]
pub fn roof_and_ceiling(reading: &Reading, house: &House) -> Option<(AreaLoad, AreaLoad)> {
    let of = |id, layers| weight(reading, house, id, &input::layers(reading, layers).ok()?);
    Some((of("roof_dead", "roof_layers")?, of("ceiling_dead", "ceiling_layers")?))
}

/// Answers weights and live loads; none where an input is wrong.
#[must_use]
pub fn gravity(reading: &Reading) -> Option<GravityReply> {
    let house = input::house(reading)?;
    let mut about = About::of(reading, super::OF_GRAVITY);
    let mut weights = Vec::new();
    for (of, id, layers) in OF {
        let layers = input::layers(reading, layers).ok()?;
        let psf = weight(reading, &house, id, &layers)?.psf();
        if !layers.is_empty() && reading.get(id).is_some_and(|value| value.origin != Origin::Assumed) {
            let own = figure(sum(&layers).psf());
            about.say(format!("{} psf is typed for the {of}, and stands; its layers weigh {own}.", figure(psf)));
        }
        about.part(working(of, id, &layers, psf, &house));
        weights.push(WeightReply { of: of.to_owned(), layers: layers.iter().map(layer).collect(), psf });
    }
    let apart = reading.length("rafters_apart")?;
    let rafter: Area = (house.width / 2.0 + house.eave_overhang) * apart;
    let by_table = r301_6::roof_live_load(house.pitch, rafter);
    let by_equation = chapter_4::roof_live_load(rafter, house.pitch);
    about.part(roof_live(&house, rafter, by_table, by_equation));
    let later = reading.word("load_standard") == Some("asce7_22");
    about.caution("Only weight that is surely there may hold a roof down: none of what may be taken off later.");
    Some(GravityReply {
        weights,
        live: live(),
        roof_live_by_table_psf: by_table.psf(),
        roof_live_by_equation_psf: by_equation.psf(),
        combinations: combinations(if later { LoadStandard::Asce7Of22 } else { LoadStandard::Asce7Of16 }),
        about: about.finish(),
    })
}

fn layer(layer: &Weighed) -> (String, f64, String) {
    let source = layer.source.map_or_else(|| "typed by you".to_owned(), words::source);
    (layer.name.clone(), layer.weight.psf(), source)
}

/// The heading of the working of a weight.
#[must_use]
pub fn weight_heading(of: &str) -> String {
    format!("Weight of the {of}")
}

fn working(of: &str, id: &'static str, layers: &[Weighed], psf: f64, house: &House) -> Part {
    let mut part = Part::new(weight_heading(of));
    for layer in layers {
        let basis = layer.source.map_or(Basis::Input(id), Basis::Published);
        part.step("w", layer.name.clone(), "", (layer.weight.psf(), "psf"), basis);
    }
    let on_slope = id == "roof_dead" && !layers.is_empty();
    let expression = if on_slope {
        format!("{} / cos {}°", figure(sum(layers).psf()), figure(house.angle().degrees()))
    } else {
        figure(psf)
    };
    let basis = if layers.is_empty() { Basis::Input(id) } else { Basis::Arithmetic };
    part.step("D", if id == "roof_dead" { "on the level" } else { "altogether" }, expression, (psf, "psf"), basis);
    part
}

/// The heading of the working of the roof live load.
pub const ROOF_LIVE_HEADING: &str = "Roof live load";

fn roof_live(house: &House, rafter: Area, by_table: AreaLoad, by_equation: AreaLoad) -> Part {
    let mut part = Part::new(ROOF_LIVE_HEADING);
    let area = rafter.square_feet();
    part.step("A_t", "roof on one rafter, on the level", figure(area), (area, "sq ft"), Basis::Arithmetic);
    part.step("L_r", "by the residential code", "", (by_table.psf(), "psf"), Basis::Published(r301_6::ROOF_LIVE));
    let basis = Basis::Published(chapter_4::ROOF_LIVE);
    let (r_1, r_2) = (chapter_4::area_reduction(rafter), chapter_4::slope_reduction(house.pitch));
    part.step("R_1", "for the area", "", (r_1, ""), basis);
    part.step("R_2", "for the pitch", "", (r_2, ""), basis);
    let expression = format!("20 × {} × {}, 12 at least", figure(r_1), figure(r_2));
    part.step("L_r", "by the load standard", expression, (by_equation.psf(), "psf"), basis);
    part
}

/// Table R301.5, and what other texts ask of decks.
fn live() -> Vec<LiveReply> {
    let one = |of: &str, psf: f64, input: &str, source| LiveReply {
        of: of.to_owned(),
        psf,
        input: input.to_owned(),
        source: words::source(source),
    };
    let of = |name, occupancy: Occupancy, input| one(name, occupancy.live_load().psf(), input, LIVE_LOADS);
    let also = |name, psf, status| one(name, psf, "floor_live", Source::new("IRC 2021", "Table R301.5", status));
    vec![
        of("attic without storage", Occupancy::AtticWithoutStorage, "attic_live"),
        of("attic with limited storage", Occupancy::AtticWithLimitedStorage, "attic_live"),
        of("attic lived in, or with fixed stairs", Occupancy::HabitableAttic, "attic_live"),
        of("sleeping rooms", Occupancy::SleepingRooms, "floor_live"),
        of("other rooms", Occupancy::OtherRooms, "floor_live"),
        also("decks and balconies; some places ask 60", 40.0, Status::Disputed),
        also("stairs, or 300 lb on 4 sq in", 40.0, Status::LookedUp),
        also("garage, or 2,000 lb on 20 sq in", 50.0, Status::LookedUp),
    ]
}

fn combinations(standard: LoadStandard) -> Vec<(String, f64)> {
    let written = |name: &str| match standard {
        LoadStandard::Asce7Of16 => name.to_owned(),
        LoadStandard::Asce7Of22 => name.replace("0.75S", "0.75(0.7S)").replace("+ S", "+ 0.7S"),
    };
    AsdCombination::all().map(|one| (written(one.combination.name()), one.duration.factor().value)).to_vec()
}
