//! Floors, roofs and wall lines against published examples; vectors of our own are marked so.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use bracing::diaphragm::{
    Blocking, Diaphragm, DiaphragmFraming, DiaphragmNailing, DiaphragmStrength, Held, Layout, Outline, WallPiece,
    check_diaphragm, collect, diaphragm_nailings, diaphragm_strength, lightest_diaphragm, read_diaphragm,
};
use bracing::{Edition, ShearFastener, Sheathing};
use measure::{Area, Force, Length, LineLoad, Stress};
use proptest::prelude::*;
use standards::Status;
use standards::sdpws_2015::table_4_2::{DiaphragmPanel, LayoutCase};

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn pounds(pounds: f64) -> Force {
    Force::from_pounds(pounds)
}

fn plf(plf: f64) -> LineLoad {
    LineLoad::from_plf(plf)
}

fn near(found: Force, expected: f64, off: f64) {
    assert!((found.pounds() - expected).abs() <= off, "{} against {expected}", found.pounds());
}

fn floor(length: f64, width: f64, load: f64) -> Diaphragm {
    Diaphragm {
        length: feet(length),
        width: feet(width),
        load: plf(load),
        held: Held::AtBothEnds,
        outline: Outline::Rectangle,
    }
}

fn frame(specific_gravity: f64, case: LayoutCase) -> DiaphragmFraming {
    DiaphragmFraming { specific_gravity, case, wet: false, edition: Edition::Of2021 }
}

const SIX: Blocking = Blocking::Blocked { boundary: Length::from_inches(6.0), edge: Length::from_inches(6.0) };

/// Sheathing with 8d common on framing 2 in nominal, in 32nds of an inch.
fn nailed(thickness: f64, blocking: Blocking) -> DiaphragmNailing {
    let panel = DiaphragmPanel {
        grade: Sheathing::Sheathing,
        thickness: inches(thickness / 32.0),
        fastener: ShearFastener::Common8d,
        framing: 2,
    };
    DiaphragmNailing { panel, blocking }
}

fn carries(thickness: f64, blocking: Blocking) -> DiaphragmStrength {
    diaphragm_strength(&nailed(thickness, blocking), &frame(0.5, LayoutCase::One)).expect("the table has it")
}

/// Source: a practice question for architects: a roof of 100 ft by 30 ft under 110 plf, chords of 4,583 lb.
#[test]
fn the_chord_of_a_published_roof() {
    let found = check_diaphragm(&floor(100.0, 30.0, 110.0), &carries(14.0, SIX)).expect("it is 3.3:1, blocked");
    near(found.chord, 4583.33, 0.01);
    near(found.reaction, 5500.0, 1e-9);
    assert!((found.unit_shear.plf() - 183.3).abs() < 0.05);
    let plain = check_diaphragm(&floor(100.0, 30.0, 110.0), &carries(14.0, Blocking::Unblocked));
    assert!(plain.is_err(), "3.3:1 is too slender where it is not blocked");
}

/// Source: a university's course, the inputs: a floor with 8d common under 350 plf of wind, allowable. The answer was not
/// read. By the building code's table times 1.4: 3/8 in blocked at 6 in carries 336 and is not enough, 7/16 in carries 357,
/// unblocked in case 1 only 322. Ours are halves of values to the nearest 5: within 1.5.
#[test]
fn the_floor_of_a_course() {
    let found = |thickness, blocking| carries(thickness, blocking).allowable.line_load().plf();
    for (found, expected) in
        [(found(12.0, SIX), 336.0), (found(14.0, SIX), 357.0), (found(14.0, Blocking::Unblocked), 322.0)]
    {
        assert!((found - expected).abs() <= 1.5, "{found} against {expected}");
        assert_eq!(found >= 350.0, expected >= 350.0);
    }
    let chosen = lightest_diaphragm(plf(350.0), inches(7.0 / 16.0), &frame(0.5, LayoutCase::One)).expect("one carries");
    assert!(chosen.strength.allowable.line_load() >= plf(350.0));
    // In the other cases nothing unblocked does, and 7/16 in with 8d blocked at 6 in is the first.
    let chosen =
        lightest_diaphragm(plf(350.0), inches(7.0 / 16.0), &frame(0.5, LayoutCase::Three)).expect("one carries");
    assert_eq!(chosen.nailing, nailed(14.0, SIX));
}

/// Source: open design notes of one house, which divide twice and so give 167.5 and 190 plf for 15/32 in with 8d at 6 in,
/// unblocked and blocked. Once is 335 and 377.5 to 380.
#[test]
fn a_nominal_shear_is_divided_once() {
    let plain = carries(15.0, Blocking::Unblocked);
    assert_eq!(plain.allowable.line_load().plf(), 335.0);
    let blocked = carries(15.0, SIX).allowable.line_load().plf();
    assert!((377.5..=380.0).contains(&blocked), "{blocked}");
}

/// *Own* vector: 180 plf on 40 ft by 28 ft.
#[test]
fn a_floor_and_its_bow() {
    let floor = floor(40.0, 28.0, 180.0);
    let mut strength = carries(14.0, SIX);
    let found = check_diaphragm(&floor, &strength).expect("it is within the limits");
    near(found.reaction, 3600.0, 1e-9);
    near(found.chord, 1285.7, 0.05);
    assert!((found.unit_shear.plf() - 128.6).abs() < 0.05 && (found.used - 128.57 / 357.5).abs() < 1e-4);
    assert!((floor.moment_at(feet(20.0)).foot_pounds() - 36_000.0).abs() < 1e-6);
    let stiffness = standards::sdpws_2015::ApparentShearStiffness::from_kips_per_inch(8.5);
    strength.stiffness = Some(stiffness);
    let chord = (Area::from_square_inches(10.5), Stress::from_psi(1.4e6));
    let bow = floor.bow(chord, &[], &strength).expect("its stiffness is held");
    assert!((bow.bending.inches() - 0.0125).abs() < 0.00005 && (bow.shear.inches() - 0.1513).abs() < 0.00005);
    assert!((bow.total().inches() - 0.1638).abs() < 0.00005);
}

/// *Own* vector: a line of 28 ft with one wall of 10 ft at its end, 3,600 lb: 2,314 lb at the wall's end, and it closes.
#[test]
fn a_collector_closes() {
    let wall = WallPiece { from: feet(18.0), to: feet(28.0), share: pounds(3600.0) };
    let points = collect(feet(28.0), &[wall]).expect("it stands within its line");
    assert_eq!(points.len(), 3);
    near(points[1].force, 2314.3, 0.05);
    near(points[1].force, (360.0 - 3600.0 / 28.0) * 10.0, 1e-9);
    near(points[2].force, 0.0, 1e-9);
}

#[test]
fn walls_over_each_other_or_past_the_end_are_refused() {
    let wall = |from, to| WallPiece { from: feet(from), to: feet(to), share: pounds(500.0) };
    assert!(collect(feet(20.0), &[]).is_err());
    assert!(collect(feet(20.0), &[wall(0.0, 6.0), wall(5.0, 9.0)]).is_err());
    assert!(collect(feet(20.0), &[wall(14.0, 20.5)]).is_err());
    assert!(collect(feet(20.0), &[wall(-1.0, 4.0)]).is_err());
    assert!(collect(feet(20.0), &[wall(0.0, 6.0), wall(6.0, 9.0)]).is_ok());
}

#[test]
fn open_and_irregular_floors_are_refused() {
    let strength = carries(14.0, SIX);
    let open = Diaphragm { held: Held::AtOneEnd, ..floor(20.0, 28.0, 100.0) };
    let says = check_diaphragm(&open, &strength).expect_err("its front is open").to_string();
    assert!(says.contains("4.2.5.2") && says.contains("engineer"), "{says}");
    let bent = Diaphragm { outline: Outline::Irregular, ..floor(20.0, 28.0, 100.0) };
    assert!(check_diaphragm(&bent, &strength).is_err());
    assert!(check_diaphragm(&floor(112.1, 28.0, 100.0), &strength).is_err(), "over 4:1");
}

/// Lighter wood and wet framing: the factor of walls, half the stiffness; in cases 5 and 6 the boundary's spacing goes
/// everywhere. What is from memory says so.
#[test]
fn factors_of_a_floor() {
    let close = Blocking::Blocked { boundary: inches(4.0), edge: inches(6.0) };
    let of = |frame: &DiaphragmFraming| diaphragm_strength(&nailed(14.0, close), frame).expect("the table has it");
    let (dense, spruce) = (of(&frame(0.55, LayoutCase::One)), of(&frame(0.42, LayoutCase::Five)));
    assert!((spruce.nominal.plf() - 0.92 * dense.nominal.plf()).abs() < 1e-9 && dense.factors.is_empty());
    assert_eq!((dense.edges, spruce.edges), (inches(6.0), inches(4.0)));
    let wet = of(&DiaphragmFraming { wet: true, ..frame(0.55, LayoutCase::One) });
    assert_eq!(wet.stiffness, dense.stiffness.map(|stiffness| stiffness.times(0.5)));
    assert_eq!(dense.row.source().status, Status::FromMemory);
}

proptest! {
    /// The chord's moment is the area under the shear: summed in strips, exact where the shear is straight.
    #[test]
    fn the_chord_is_the_moment_of_a_beam(length in 10.0_f64..80.0, width in 20.0_f64..60.0, load in 20.0_f64..400.0, share in 0.0_f64..1.0) {
        let floor = floor(length, width, load);
        let place = feet(length * share);
        let strips = 16;
        let step = length * share / f64::from(strips);
        let shear = |strip: i32| floor.unit_shear_at(feet((f64::from(strip) + 0.5) * step)).plf() * width;
        let area: f64 = (0..strips).map(|strip| shear(strip) * step).sum();
        prop_assert!((floor.chord_at(place).pounds() * width - area).abs() < 1e-6 * load * length * length);
        let mirrored = floor.chord_at(feet(length) - place);
        prop_assert!((floor.chord_at(place) - mirrored).pounds().abs() < 1e-6 * load * length);
    }

    #[test]
    fn a_collector_closes_and_mirrors(gaps in prop::collection::vec((0.0_f64..8.0, 3.0_f64..10.0, 50.0_f64..3000.0), 1..5), rest in 0.0_f64..8.0) {
        let mut at = 0.0;
        let mut walls = Vec::new();
        for (gap, wall, share) in gaps {
            walls.push(WallPiece { from: feet(at + gap), to: feet(at + gap + wall), share: pounds(share) });
            at += gap + wall;
        }
        let length = feet(at + rest);
        let points = collect(length, &walls).expect("they stand in order");
        let all: f64 = walls.iter().map(|wall| wall.share.pounds()).sum();
        prop_assert_eq!(points[0].force, Force::ZERO);
        prop_assert!(points[points.len() - 1].force.pounds().abs() < 1e-9 * all);
        let mirrored: Vec<WallPiece> = walls.iter().rev()
            .map(|wall| WallPiece { from: length - wall.to, to: length - wall.from, share: wall.share })
            .collect();
        // The same line seen from behind: what pulled presses.
        let behind = collect(length, &mirrored);
        let behind = behind.or_else(|_| collect(length + inches(1e-6), &mirrored)).expect("they stand in order");
        let most = |points: &[bracing::diaphragm::CollectorPoint]| points.iter().map(|point| point.force.pounds()).fold(0.0, f64::max);
        let least = |points: &[bracing::diaphragm::CollectorPoint]| points.iter().map(|point| point.force.pounds()).fold(0.0, f64::min);
        prop_assert!((most(&points) + least(&behind)).abs() < 1e-5 * all);
    }

    #[test]
    fn the_lightest_floor_carries_and_more_push_never_takes_less(needed in 20.0_f64..700.0, more in 1.0_f64..200.0) {
        let frame = frame(0.42, LayoutCase::Four);
        let carries = |needed: f64| lightest_diaphragm(plf(needed), inches(7.0 / 16.0), &frame).map(|found| found.strength.allowable.line_load().plf());
        match (carries(needed), carries(needed + more)) {
            (Some(first), second) => {
                prop_assert!(first >= needed);
                prop_assert!(second.is_none_or(|second| second >= needed + more));
            }
            (None, second) => prop_assert!(second.is_none()),
        }
    }
}

/// The drawings over the tables, from memory: a turn of the wind by a quarter makes case 3 of case 1, 4 of 2 and 6 of 5; only
/// what is not staggered is 5 or 6.
#[test]
fn a_turn_of_the_wind_changes_the_case() {
    let case =
        |across_framing, staggered, framing_along_load| Layout { across_framing, staggered, framing_along_load }.case();
    let turned = [
        ((true, true), (LayoutCase::One, LayoutCase::Three)),
        ((false, true), (LayoutCase::Four, LayoutCase::Two)),
        ((true, false), (LayoutCase::Six, LayoutCase::Five)),
        ((false, false), (LayoutCase::Five, LayoutCase::Six)),
    ];
    for ((across, staggered), (along, turned)) in turned {
        assert_eq!((case(across, staggered, true), case(across, staggered, false)), (along, turned));
    }
}

/// What is written of a nailing is read again as the same; what no table has in words is refused with what is taken.
#[test]
fn nailings_are_read_as_they_are_written() {
    for nailing in diaphragm_nailings(Length::ZERO) {
        assert_eq!(read_diaphragm(&nailing.to_string()), Ok(nailing), "{nailing}");
    }
    let drawn = read_diaphragm("15/32 Str I 10d @ 2-1/2/4/12 blocked 3x").expect("it is written so on drawings");
    assert_eq!(drawn.to_string(), "15/32\" Structural I 10d at 2-1/2\"/4\", blocked, 3x framing");
    assert_eq!(read_diaphragm("7/16 8d 6/12").map(|read| read.blocking), Ok(Blocking::Unblocked));
    for text in ["", "8d 6", "7/16 6", "7/16 8d", "7/16 8d 4", "7/16 8d 12 unblocked", "7/16 8d 4/6", "40 8d 6"] {
        let problem = read_diaphragm(text).expect_err(text).to_string();
        assert!(problem.contains("Taken is") && problem.ends_with('.'), "{text}: {problem}");
    }
}
