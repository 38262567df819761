//! The calculation against the code's own header table, cell by cell.
//!
//! Source: IRC 2018 and 2021, Table R602.7(1). Seventy-two of its cells here were looked up, the rest are from memory
//! (the data says which, and so does the print-out below).
//!
//! The two are not the same check, so the spans differ; what is tested is that the difference is *explained*: wherever
//! bending governs here, the ratio of the spans is what follows from the table's own basis (one load a column worked
//! back from its spans, bending alone, `w L² / 8` over the clear opening, snow duration, the weakest of four species,
//! 1.11 for two plies and 1.15 for more) and from ours (our loads with the header's own weight, the span to the middle
//! of the bearings, the species' own strength, 1.15 from three plies on).

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::{HeaderCase, derive_header};
use lumber::{Conditions, Family, LoadDuration, Member, Product, Sawn, SawnSize, Species, candidates};
use measure::{AreaLoad, Length};
use members::header::{HeaderInput, Limit, judge_size};
use standards::Status;
use standards::irc_2021::r602_7::Supporting;
use standards::irc_2021::{HeaderCell, r602_7};

/// As many as the check gives a side.
const MOST_JACKS: u8 = 5;

const SPECIES: [Species; 4] =
    [Species::SprucePineFir, Species::DouglasFirLarch, Species::HemFir, Species::SouthernPine];

fn carries(supporting: Supporting) -> &'static str {
    match supporting {
        Supporting::RoofCeiling => "roof_ceiling",
        Supporting::OneFloorCenterBearing => "one_floor_center_bearing",
        Supporting::OneFloorClearSpan => "one_floor_clear_span",
        Supporting::TwoFloorsCenterBearing => "two_floors_center_bearing",
        Supporting::TwoFloorsClearSpan => "two_floors_clear_span",
    }
}

/// A cell's case: its building and snow, joists or rafters on the header, no wind, everything else as assumed.
fn input(cell: &HeaderCell<Supporting>, species: Species) -> HeaderInput {
    let text = |text: &str| Some(text.to_owned());
    let case = HeaderCase {
        carries: text(carries(cell.supporting)),
        above: text("framing_bears"),
        building_width: Some(format!("{}'", cell.width.feet())),
        ground_snow: cell.ground_snow.map(|snow| format!("{} psf", snow.psf())),
        species: text(species.short_name()),
        wind_pressure: text("0 psf"),
        // Room for the deepest header.
        wall_height: text("10'"),
        ..HeaderCase::default()
    };
    derive_header(&case, &HeaderCase::default()).answered.unwrap().0
}

fn member(cell: &HeaderCell<Supporting>, input: &HeaderInput) -> Member {
    let size = SawnSize::new(2, cell.size.depth.nominal_inches()).unwrap();
    let product = Product::Sawn(Sawn { species: input.species, grade: input.grade, size });
    Member::new(product, cell.size.plies).unwrap()
}

/// The longest opening that the size carries here, to 1/64 in; how many jacks it has there and just beyond; and what
/// governs just beyond.
fn longest(cell: &HeaderCell<Supporting>, species: Species) -> (Length, [u8; 2], Limit) {
    let mut input = input(cell, species);
    let member = member(cell, &input);
    let (mut good, mut bad) = (1.0_f64, 480.0_f64);
    let (mut jacks, mut governs) = ([1, 1], Limit::Bending);
    while bad - good > 1.0 / 64.0 {
        let opening = (good + bad) / 2.0;
        input.opening = Length::from_inches(opening);
        let tried = judge_size(&input, member.clone());
        if tried.verdict().holds() {
            good = opening;
            jacks[0] = tried.jacks.unwrap();
        } else {
            governs = tried.governing().unwrap().limit;
            jacks[1] = tried.jacks.unwrap_or(MOST_JACKS);
            bad = opening;
        }
    }
    (Length::from_inches(good), jacks, governs)
}

/// Bending strength times section modulus: the table's, then ours, under snow.
fn moments(cell: &HeaderCell<Supporting>, input: &HeaderInput) -> (f64, f64) {
    let one = member(cell, input);
    let repetitive = cell.size.plies >= 3;
    let strength = |species, repetitive| {
        let product = Product::Sawn(Sawn {
            species,
            grade: input.grade,
            size: SawnSize::new(2, cell.size.depth.nominal_inches()).unwrap(),
        });
        let conditions = Conditions { repetitive, ..Conditions::default() };
        let member = Member::new(product, cell.size.plies).unwrap();
        member.adjusted_stresses(&conditions, LoadDuration::TwoMonths).unwrap().fb_star
    };
    let weakest = SPECIES.into_iter().map(|species| strength(species, false).psi()).fold(f64::INFINITY, f64::min);
    let plies = match cell.size.plies {
        1 => 1.0,
        2 => 1.11,
        _ => 1.15,
    };
    let modulus = one.section().section_modulus_strong.cubic_inches();
    (weakest * plies * modulus, strength(input.species, repetitive).psi() * modulus)
}

/// What our span should be where bending governs it, from `w L² / 8 = M` written out anew: every combination of gravity
/// loads with its duration, and the bearings' halves taken off.
fn bending_span(cell: &HeaderCell<Supporting>, species: Species, jacks: u8) -> f64 {
    let input = input(cell, species);
    let loads = loads::header::line_loads(&input.tributary, &input.site).cases;
    let (_, under_snow) = moments(cell, &input);
    let dead = loads.dead.plf() + member(cell, &input).self_weight().plf();
    let (live, attic, snow, roof) =
        (loads.live.plf(), loads.attic_alone.plf(), loads.snow.plf(), loads.roof_live.plf());
    let combinations = [
        (0.9, dead),
        (1.0, dead + live),
        (1.0, dead + attic),
        (1.15, dead + snow),
        (1.15, dead + 0.75 * (live + snow)),
        (1.25, dead + roof),
        (1.25, dead + 0.75 * (live + roof)),
    ];
    let ends = (1.5 * f64::from(jacks)).max(3.0);
    let span = |(duration, load): (f64, f64)| (8.0 * under_snow * duration / 1.15 / (load / 12.0)).sqrt() - ends;
    combinations.into_iter().map(span).fold(f64::INFINITY, f64::min)
}

/// Computed over table spans of a group of cells, with the two reasons they differ.
#[derive(Default)]
struct Group {
    ratios: Vec<f64>,
    by_strength: f64,
    by_load: f64,
}

#[test]
fn every_cell_worked_and_compared() {
    let mut groups: BTreeMap<String, Group> = BTreeMap::new();
    let mut governing: BTreeMap<&str, usize> = BTreeMap::new();
    let mut unexplained = Vec::new();
    let listed: Vec<_> = r602_7::TABLE_R602_7_1.iter().filter(|cell| cell.size.depth.nominal_inches() >= 6).collect();
    for (cell, species) in listed.iter().flat_map(|cell| SPECIES.map(|species| (cell, species))) {
        let (span, jacks, governs) = longest(cell, species);
        *governing.entry(governs.words()).or_default() += 1;
        // Where one more jack is needed the span jumps by its thickness, and the opening can stop short of either.
        let [expected, beyond] = jacks.map(|jacks| bending_span(cell, species, jacks));
        // The search stops within 1/64 in.
        let explained = (beyond - 1.0 / 32.0..=expected + 1.0 / 32.0).contains(&span.inches());
        if governs == Limit::Bending && !explained {
            unexplained.push(format!("{} {cell:?}: {} against {expected}", species.name(), span.inches()));
        }
        let group = groups.entry(format!("{} {}", species.short_name(), carries(cell.supporting))).or_default();
        let input = input(cell, species);
        let (table, ours) = moments(cell, &input);
        let loads = loads::header::line_loads(&input.tributary, &input.site).cases;
        let load = loads.dead.plf() + loads.snow.plf().max(0.75 * (loads.live.plf() + loads.snow.plf()));
        group.ratios.push(span / cell.span);
        group.by_strength += (ours / table).sqrt();
        group.by_load += (cell.line_load.unwrap().plf() / load).sqrt();
    }
    let looked_up = listed.iter().filter(|cell| cell.status == Status::LookedUp).count();
    println!("{} cells, {looked_up} looked up, the rest from memory; computed / table span:", listed.len());
    groups.iter_mut().for_each(|(name, group)| print_group(name, group));
    println!("what governs just beyond the longest span: {governing:?}");
    assert!(unexplained.is_empty(), "{} unexplained, such as {}", unexplained.len(), unexplained[0]);
}

fn print_group(name: &str, group: &mut Group) {
    group.ratios.sort_by(f64::total_cmp);
    let last = group.ratios.len() - 1;
    let [least, quarter, middle, three, most] = [0, last / 4, last / 2, last * 3 / 4, last].map(|at| group.ratios[at]);
    let count = group.ratios.len() as f64;
    println!(
        "{name:32} least {least:.2} quarter {quarter:.2} middle {middle:.2} three quarters {three:.2} most {most:.2}; \
         by strength {:.2}, by load {:.2}, the rest by our span and the header's weight",
        group.by_strength / count,
        group.by_load / count,
    );
}

/// A wider building or more snow never lets a header span farther, here as in the table.
#[test]
fn more_load_never_spans_farther() {
    let cells = r602_7::TABLE_R602_7_1;
    for cell in cells.iter().filter(|cell| cell.size.depth.nominal_inches() == 10 && cell.size.plies == 2) {
        let (span, ..) = longest(cell, Species::SprucePineFir);
        let heavier = cells.iter().filter(|other| {
            other.supporting == cell.supporting
                && other.size == cell.size
                && other.width >= cell.width
                && other.ground_snow.unwrap_or(AreaLoad::ZERO) >= cell.ground_snow.unwrap_or(AreaLoad::ZERO)
        });
        for other in heavier {
            assert!(longest(other, Species::SprucePineFir).0 <= span, "{cell:?} against {other:?}");
        }
    }
}

/// Every size of the table is among those a header is chosen from, but the 2x4.
#[test]
fn the_tables_sizes_are_candidates() {
    let names: Vec<String> = candidates::header_candidates(Species::SprucePineFir, lumber::Grade::No2)
        .filter(|member| member.family() == Family::BuiltUp2x)
        .map(|member| member.name())
        .collect();
    for cell in r602_7::TABLE_R602_7_1.iter().filter(|cell| cell.size.depth.nominal_inches() > 4) {
        let name = if cell.size.plies == 1 { cell.size.name()[2..].to_owned() } else { cell.size.name() };
        assert!(names.contains(&name), "{name}");
    }
}
