//! Wind brought to wall lines, and what a line lacks. The vectors are our own where no source is named.

use bracing::diaphragm::{WallPiece, collect};
use bracing::wall_lines::{
    BracedStorey, Direction, House, StoreyLines, StoreyWind, WallLine, Winds, floors_between, stacked, wind_to_lines,
};
use bracing::{
    Edition, Ends, Framing, Nailing, Remedy, SegmentedWall, ShearFastener, Sheathing, check_line, check_segmented,
    overturning, strength,
};
use measure::{AreaLoad, Force, Length, LineLoad};
use proptest::prelude::*;
use standards::irc_2021::r301_2::SeismicDesignCategory;

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn near(found: Force, expected: f64) {
    assert!(
        (found.pounds() - expected).abs() <= 1e-6 * expected.abs().max(1.0),
        "{} against {expected}",
        found.pounds()
    );
}

fn lines(lengthwise: &[f64], crosswise: &[f64]) -> Vec<WallLine> {
    let of =
        |runs, places: &[f64]| -> Vec<WallLine> { places.iter().map(|at| WallLine { runs, at: feet(*at) }).collect() };
    [of(Direction::Lengthwise, lengthwise), of(Direction::Crosswise, crosswise)].concat()
}

fn storey(lengthwise: f64, crosswise: f64, lines: Vec<WallLine>) -> BracedStorey {
    let force = |pounds| StoreyWind::Force(Force::from_pounds(pounds));
    BracedStorey {
        height: feet(9.0),
        winds: Winds { lengthwise: force(lengthwise), crosswise: force(crosswise) },
        lines,
    }
}

/// 40 ft by 28 ft.
fn house(storeys: Vec<BracedStorey>) -> House {
    House { length: feet(40.0), width: feet(28.0), storeys, seismic: SeismicDesignCategory::B, regular: true }
}

fn all_near(found: &[f64], expected: &[f64]) {
    assert_eq!(found.len(), expected.len());
    found.iter().zip(expected).for_each(|(found, expected)| near(Force::from_pounds(*found), *expected));
}

fn totals(storey: &StoreyLines) -> Vec<f64> {
    storey.lines.iter().map(|line| line.total().pounds()).collect()
}

/// Two lines each way take half each; a third takes what is between, by tributary width: 40 ft with lines at 0, 16 and
/// 40 ft is 8, 20 and 12 ft.
#[test]
fn lines_take_their_tributary_width() {
    let found = wind_to_lines(&house(vec![storey(2800.0, 7200.0, lines(&[0.0, 28.0], &[40.0, 0.0, 16.0]))]));
    let found = found.expect("it is within the limits");
    let along = found.lengthwise.expect("it is closed");
    all_near(&totals(&along[0]), &[1400.0, 1400.0]);
    let across = found.crosswise.expect("it is closed");
    for (line, (tributary, force)) in across[0].lines.iter().zip([(8.0, 1440.0), (20.0, 3600.0), (12.0, 2160.0)]) {
        assert!((line.tributary.feet() - tributary).abs() < 1e-9);
        near(line.total(), force);
    }
    assert!(found.open_sides.is_empty());
}

/// As a pressure: 12 psf over 9 ft of height on 40 ft is 4,320 lb; so 180 plf over 10 ft of height at 18 psf is the floor of
/// our own vector, 3,600 lb to each line.
#[test]
fn a_pressure_is_a_force_on_its_face() {
    let wind = |psf, height| StoreyWind::Pressure { pressure: AreaLoad::from_psf(psf), height: feet(height) };
    near(wind(12.0, 9.0).force(feet(40.0)), 4320.0);
    let mut one = storey(0.0, 0.0, lines(&[0.0, 28.0], &[0.0, 40.0]));
    one.winds = Winds { lengthwise: wind(18.0, 10.0), crosswise: wind(18.0, 10.0) };
    let house = house(vec![one]);
    let across = wind_to_lines(&house).expect("it is within the limits").crosswise.expect("it is closed");
    all_near(&totals(&across[0]), &[3600.0, 3600.0]);
    let floors = floors_between(&house, &house.storeys[0], Direction::Crosswise).expect("it is closed");
    assert_eq!(floors.len(), 1);
    near(floors[0].reaction(), 3600.0);
    assert!((floors[0].unit_shear_at(Length::ZERO).plf() - 128.57).abs() < 0.01);
}

/// Our own vector of two storeys, 1,800 lb at the roof and 1,500 lb at the floor to one line: 2,700 lb at 6 ft on top and
/// 7,650 lb below, before dead load.
#[test]
fn forces_come_down_and_turn_the_line() {
    let both = lines(&[0.0, 28.0], &[0.0, 40.0]);
    let house = house(vec![storey(3600.0, 1000.0, both.clone()), storey(3000.0, 1000.0, both)]);
    let found = wind_to_lines(&house).expect("it is within the limits").lengthwise.expect("it is closed");
    all_near(&totals(&found[0]), &[1800.0, 1800.0]);
    all_near(&totals(&found[1]), &[3300.0, 3300.0]);
    near(found[1].shear, 6600.0);
    let tensions = overturning(&stacked(&house, &found, Length::ZERO), feet(6.0), feet(6.0));
    near(tensions[0], 2700.0);
    near(tensions[1], 7650.0);
    assert!(stacked(&house, &found, feet(14.0)).is_empty());
}

/// A garage front without a wall: no number in that direction, and the turning of the rest is said: 4,000 lb at half of
/// 40 ft on lines 28 ft apart.
#[test]
fn a_side_without_a_line_is_told() {
    let found = wind_to_lines(&house(vec![storey(2800.0, 4000.0, lines(&[0.0, 28.0], &[0.0]))]));
    let found = found.expect("it is within the limits");
    assert!(found.lengthwise.is_ok());
    let says = found.crosswise.expect_err("it is open").to_string();
    assert!(says.contains("4.2.5.2") && says.contains("engineer"), "{says}");
    assert_eq!(found.open_sides.len(), 1);
    let open = found.open_sides[0];
    assert_eq!((open.storey, open.wind), (0, Direction::Crosswise));
    assert_eq!(open.reach, Some(feet(40.0)));
    assert!((open.turning.expect("one line stands alone").foot_pounds() - 80_000.0).abs() < 1e-6);
    near(open.couple.expect("two lines cross it"), 80_000.0 / 28.0);
    // A line a foot in stands at the side; farther in it does not.
    let of = |at| wind_to_lines(&house(vec![storey(1.0, 1.0, lines(&[0.0, 28.0], &[0.0, at]))])).expect("limits");
    assert!(of(39.0).crosswise.is_ok() && of(38.9).crosswise.is_err());
    // No line at all.
    let none = wind_to_lines(&house(vec![storey(1.0, 1.0, lines(&[0.0, 28.0], &[]))])).expect("limits");
    assert!(none.crosswise.is_err() && none.open_sides.iter().all(|side| side.reach.is_none()));
}

#[test]
fn what_is_not_worked_is_refused() {
    let one = || storey(1000.0, 1000.0, lines(&[0.0, 28.0], &[0.0, 40.0]));
    let whole = house(vec![one()]);
    assert!(wind_to_lines(&whole).is_ok());
    assert!(wind_to_lines(&House { seismic: SeismicDesignCategory::D0, ..whole.clone() }).is_err());
    assert!(wind_to_lines(&House { seismic: SeismicDesignCategory::C, ..whole.clone() }).is_ok());
    assert!(wind_to_lines(&House { regular: false, ..whole.clone() }).is_err());
    assert!(wind_to_lines(&House { length: Length::ZERO, ..whole }).is_err());
    assert!(wind_to_lines(&house(vec![one(), one(), one()])).is_ok());
    assert!(wind_to_lines(&house(vec![one(), one(), one(), one()])).is_err());
    assert!(wind_to_lines(&house(Vec::new())).is_err());
    // A line that stands on none.
    let offset = storey(1000.0, 1000.0, lines(&[0.0, 28.0], &[0.0, 20.0, 40.0]));
    let found = wind_to_lines(&house(vec![offset, one()])).expect("limits");
    let says = found.crosswise.expect_err("it stands on none").to_string();
    assert!(says.contains("20 ft") && says.contains("none below"), "{says}");
    assert!(found.lengthwise.is_ok());
}

const BARE: Ends = Ends { post: Length::ZERO, hold_down: Length::ZERO };

fn nailing() -> Nailing {
    Nailing {
        sheathing: Sheathing::Sheathing,
        thickness: Length::from_inches(7.0 / 16.0),
        fastener: ShearFastener::Common8d,
        edge: Length::from_inches(6.0),
        across_studs: false,
        both_faces: false,
    }
}

fn spruce() -> Framing {
    let studs = Length::from_inches(24.0);
    Framing {
        specific_gravity: 0.42,
        studs,
        wet: false,
        hold_downs_inside: false,
        edition: Edition::Of2021,
        joints: bracing::LevelJoints::Blocked,
        other_face: bracing::OtherFace::Bare,
    }
}

fn wall(push: f64) -> SegmentedWall {
    SegmentedWall {
        height: feet(9.0),
        pieces: [4.0, 6.0, 8.0].map(feet).to_vec(),
        shear: Force::from_pounds(push),
        dead: LineLoad::ZERO,
        ends: BARE,
    }
}

/// The line of our own vector, 5,410.6 lb at 308.2 plf: 17.556 ft count. Half as much again needs 21.90 ft at 6 in; nails at
/// 4 in carry 450.8 plf, and are enough.
#[test]
fn a_short_line_is_told_what_it_lacks() {
    let enough = check_line(&wall(4500.0), &nailing(), &spruce()).expect("the table has it");
    assert!((enough.there.feet() - 17.556).abs() < 0.001 && enough.missing.is_none() && enough.remedies.is_empty());
    let short = check_line(&wall(6750.0), &nailing(), &spruce()).expect("the table has it");
    assert!((short.needed.feet() - 6750.0 / 308.2).abs() < 0.001);
    let missing = short.missing.expect("it is too short");
    assert!((missing - (short.needed - short.there)).inches().abs() < 1e-9);
    let Some(Remedy::TighterNailing { nailing: tighter, used }) = short.remedies.first() else {
        unreachable!("nails at 4 in are enough: {:?}", short.remedies)
    };
    assert_eq!(tighter.edge, Length::from_inches(4.0));
    assert!((used - 6750.0 / (450.8 * 17.556)).abs() < 1e-4);
    assert!(short.remedies.contains(&Remedy::MoreWall(missing)));
    assert!(matches!(short.remedies[short.remedies.len() - 2..], [Remedy::PortalFrame, Remedy::SteelFrame]));
}

/// Past what two inches and two faces carry only more wall is left, and frames by an engineer.
#[test]
fn far_too_short_is_left_to_more_wall_and_frames() {
    let short = check_line(&wall(60_000.0), &nailing(), &spruce()).expect("the table has it");
    assert!(matches!(short.remedies[..], [Remedy::MoreWall(_), Remedy::PortalFrame, Remedy::SteelFrame]));
    let narrow = SegmentedWall { pieces: vec![feet(2.0)], ..wall(1000.0) };
    let none = check_line(&narrow, &nailing(), &spruce()).expect("the table has it");
    assert_eq!(none.there, Length::ZERO);
    assert_eq!(none.missing, Some(none.needed));
}

proptest! {
    #[test]
    fn lines_come_to_the_shear_and_mirror(
        inner in prop::collection::vec(2.0_f64..38.0, 0..4),
        winds in prop::collection::vec((100.0_f64..9000.0, 100.0_f64..9000.0), 1..4),
    ) {
        let across = |mirrored: bool| -> Vec<f64> {
            let all = [0.0, 40.0].into_iter().chain(inner.iter().copied());
            all.map(|at| if mirrored { 40.0 - at } else { at }).collect()
        };
        let of = |mirrored: bool| {
            let lines = || lines(&[0.0, 14.0, 28.0], &across(mirrored));
            house(winds.iter().map(|(along, across)| storey(*along, *across, lines())).collect())
        };
        let found = wind_to_lines(&of(false)).expect("it is within the limits");
        let mirrored = wind_to_lines(&of(true)).expect("it is within the limits");
        let mut sums = (0.0, 0.0);
        let (along, crossing) = (found.lengthwise.expect("closed"), found.crosswise.expect("closed"));
        for (index, (lengthwise, crosswise)) in winds.iter().enumerate() {
            sums = (sums.0 + lengthwise, sums.1 + crosswise);
            for (lines, sum) in [(&along[index], sums.0), (&crossing[index], sums.1)] {
                prop_assert!((lines.shear.pounds() - sum).abs() < 1e-9 * sum);
                prop_assert!((totals(lines).iter().sum::<f64>() - sum).abs() < 1e-9 * sum);
            }
        }
        let behind = mirrored.crosswise.expect("closed");
        for (one, other) in crossing.iter().zip(&behind) {
            for (line, reversed) in totals(one).iter().zip(totals(other).iter().rev()) {
                prop_assert!((line - reversed).abs() < 1e-6 * sums.1);
            }
        }
        // Each bay as a beam on its lines brings them the same.
        let house = of(false);
        let floors = floors_between(&house, &house.storeys[0], Direction::Crosswise).expect("closed");
        let first = floors[0].reaction().pounds();
        prop_assert!((first - crossing[0].lines[0].own.pounds()).abs() < 1e-6 * winds[0].1);
    }

    /// The push of a line, shared out over its pieces, closes along the plate.
    #[test]
    fn shares_of_a_line_close_along_its_plate(pieces in prop::collection::vec(4.5_f64..12.0, 1..5), gap in 0.5_f64..6.0, push in 100.0_f64..9000.0) {
        let strength = strength(&nailing(), &spruce()).expect("the table has it");
        let wall = SegmentedWall { pieces: pieces.iter().copied().map(feet).collect(), ..wall(push) };
        let shared = check_segmented(&wall, &strength);
        let mut at = Length::ZERO;
        let mut walls = Vec::new();
        for piece in &shared.pieces {
            walls.push(WallPiece { from: at, to: at + piece.length, share: piece.share });
            at += piece.length + feet(gap);
        }
        let points = collect(at, &walls).expect("they stand in order");
        prop_assert!(points[points.len() - 1].force.pounds().abs() < 1e-6 * push);
        prop_assert!(points.iter().all(|point| point.force.pounds().abs() <= push));
    }

    /// Whatever is said to mend a line does.
    #[test]
    fn each_remedy_mends(push in 5500.0_f64..16_000.0) {
        let found = check_line(&wall(push), &nailing(), &spruce()).expect("the table has it");
        for remedy in &found.remedies {
            let (mended, longer) = match remedy {
                Remedy::TighterNailing { nailing, .. } | Remedy::ThickerPanel { nailing, .. } => (*nailing, wall(push)),
                Remedy::BothFaces { .. } => (Nailing { both_faces: true, ..nailing() }, wall(push)),
                Remedy::MoreWall(missing) => {
                    let mut longer = wall(push);
                    longer.pieces[2] += *missing;
                    (nailing(), longer)
                }
                Remedy::PortalFrame | Remedy::SteelFrame => continue,
            };
            let again = check_line(&longer, &mended, &spruce()).expect("the table has it");
            prop_assert!(again.pieces.used <= 1.0 + 1e-9, "{remedy:?}: {}", again.pieces.used);
        }
    }
}
