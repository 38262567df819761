//! Heights, areas and lines of one part, against published and worked sizes.

use loads::outline::{
    Along, EaveHeight, Overhangs, PartShape, PlanPoint, Roof, RoofExtent, RoofLineKind, Side, Storey, end_zone,
};
use measure::{Angle, Area, Length, Slope};

use crate::common::{ft, gable, part, pitch, same, sheet_house};

/// Not published: worked by hand with the loads sheet's house. Mean roof height 13.5 ft, walls 400 sq ft, gable end 378
/// sq ft of which the gable is 98, roof rise 7 ft over 40 ft, edge strip 3 ft (10 per cent of 28 is 2.8), end strip 6
/// ft.
#[test]
fn the_house_of_the_loads_sheet() {
    let house = sheet_house();
    same(house.mean_roof_height().feet(), 13.5, "mean roof height");
    same(house.ridge_height().feet(), 17.0, "ridge");
    same(house.wall(Side::Front).area.square_feet(), 400.0, "front");
    same(house.wall(Side::Front).above_eave.square_feet(), 0.0, "front above the eave");
    same(house.wall(Side::Left).area.square_feet(), 378.0, "gable end");
    same(house.wall(Side::Left).above_eave.square_feet(), 98.0, "gable");
    same(house.projection(Side::Front).roof.square_feet(), 280.0, "roof upright");
    same(house.projection(Side::Left).roof.square_feet(), 0.0, "no slope falls to the gable");
    same(house.volume().cubic_inches() / 1728.0, 40.0 * (28.0 * 10.0 + 98.0), "room");
    let zone = house.end_zone();
    same(zone.edge_strip.feet(), 3.0, "edge strip");
    same(zone.end_strip.feet(), 6.0, "end strip");
    let faces = house.roof_faces(RoofExtent::Walls);
    assert_eq!(faces.len(), 2);
    for face in faces {
        same(face.area.square_feet(), 40.0 * 245f64.sqrt(), "slope of 14 ft run and 7 ft rise");
    }
    same(house.height_at(PlanPoint::new(ft(5.0), ft(3.0))).unwrap().feet(), 11.5, "3 ft in");
    assert_eq!(house.height_at(PlanPoint::new(ft(5.0), ft(-0.1))), None);
}

/// Source: ASCE Press guide to 7-16, chapter 8: eave 10 ft, 15 degrees, 16 ft to the ridge; mean roof height 12.1 ft,
/// to one place.
#[test]
fn the_mean_roof_height_of_the_guide_house() {
    let roof = Roof::Gable { ridge: Along::Length, pitches: [Slope::of_angle(Angle::from_degrees(15.0)); 2] };
    let height = part(60.0, 32.0, 10.0, roof).shape().unwrap().mean_roof_height();
    assert!((height.feet() - 12.1).abs() <= 0.05, "{}", height.feet());
}

/// Source: ASCE 7-16 26.2, mean roof height: to 10 degrees the eave height. 2 in 12 is 9.46 degrees, 2.25 in 12 10.6.
#[test]
fn a_low_slope_takes_the_eave_height() {
    let height = |rise| part(40.0, 24.0, 9.0, gable(rise)).shape().unwrap().mean_roof_height().feet();
    same(height(2.0), 9.0, "2 in 12");
    same(height(2.25), 9.0 + 12.0 * 2.25 / 12.0 / 2.0, "2.25 in 12");
    let shed = Roof::Shed { low_side: Side::Front, pitch: pitch(1.0) };
    same(part(40.0, 24.0, 9.0, shed).shape().unwrap().mean_roof_height().feet(), 10.0, "shed");
    same(part(40.0, 24.0, 9.0, Roof::Flat).shape().unwrap().mean_roof_height().feet(), 9.0, "flat");
}

/// Source: ASCE 7-16 Figs. 28.3-1 and 30.3-1, notes on `a`, read in a standard that reproduces them; each part of the
/// rule governs once.
#[test]
fn the_edge_strip_by_each_part_of_its_rule() {
    let strip = |least, height| end_zone(ft(least), ft(height)).edge_strip.feet();
    same(strip(28.0, 13.5), 3.0, "3 ft");
    same(strip(40.0, 20.0), 4.0, "10 per cent of the plan");
    same(strip(60.0, 10.0), 4.0, "0.4 of the height");
    same(strip(150.0, 12.0), 6.0, "4 per cent of the plan");
}

/// Worked by hand: 40 by 24 ft, equal pitch of 6 in 12: ridge 16 ft, 6 ft over the eave; hip 12 ft by 12 ft by 6 ft.
#[test]
fn a_hip_roof_of_equal_pitch() {
    let roof = Roof::Hip { front_and_back: pitch(6.0), left_and_right: pitch(6.0) };
    let shape = part(40.0, 24.0, 10.0, roof).shape().unwrap();
    same(shape.ridge_height().feet(), 16.0, "ridge height");
    assert_eq!(shape.ridge_along(), Some(Along::Length));
    let lines = shape.roof_lines(RoofExtent::Walls);
    let of = |kind| lines.iter().filter(|line| line.kind == kind).collect::<Vec<_>>();
    let ridge = of(RoofLineKind::Ridge);
    assert_eq!((ridge.len(), of(RoofLineKind::Hip).len(), of(RoofLineKind::Eave).len()), (1, 4, 4));
    same(ridge[0].length().feet(), 16.0, "ridge");
    for hip in of(RoofLineKind::Hip) {
        same(hip.length().feet(), 18.0, "hip: 12, 12 and 6 ft");
    }
    for side in Side::ALL {
        same(shape.wall(side).above_eave.square_feet(), 0.0, "no gable");
    }
    same(shape.projection(Side::Front).roof.square_feet(), 0.5 * (40.0 + 16.0) * 6.0, "long slope");
    same(shape.projection(Side::Left).roof.square_feet(), 0.5 * 24.0 * 6.0, "hip end");
    // Whatever its pitch, a roof of one pitch covers its plan times sqrt(1 + (6/12)^2).
    let area: Area = shape.roof_faces(RoofExtent::Walls).iter().map(|face| face.area).sum();
    same(area.square_feet(), 960.0 * 1.25f64.sqrt(), "roof");
}

/// Worked by hand: steep hip ends move the ridge's ends out; a plan that is wide in front turns the ridge; a square one
/// has a point.
#[test]
fn hip_roofs_of_two_pitches_and_of_square_plans() {
    let hip = |length, width, front, left| {
        let roof = Roof::Hip { front_and_back: pitch(front), left_and_right: pitch(left) };
        part(length, width, 10.0, roof).shape().unwrap()
    };
    let ridge = |shape: &PartShape| {
        let lines = shape.roof_lines(RoofExtent::Walls);
        lines.into_iter().filter(|line| line.kind == RoofLineKind::Ridge).map(|line| line.length().feet()).sum::<f64>()
    };
    // The ridge is 4 ft up; the ends of 12 in 12 reach that in 4 ft.
    same(ridge(&hip(40.0, 24.0, 4.0, 12.0)), 32.0, "steep ends");
    let turned = hip(20.0, 30.0, 6.0, 6.0);
    same(ridge(&turned), 10.0, "turned");
    assert_eq!(turned.ridge_along(), Some(Along::Width));
    let point = hip(24.0, 24.0, 5.0, 5.0);
    same(ridge(&point), 0.0, "a point");
    assert_eq!((point.ridge_along(), point.roof_faces(RoofExtent::Walls).len()), (None, 4));
    same(point.ridge_height().feet(), 15.0, "peak");
}

/// Worked by hand: 24 ft span, 24 in 12 for 4 ft, then 6 in 12 for 8 ft: 8 ft and 4 ft up.
#[test]
fn a_gambrel_roof() {
    let roof = Roof::Gambrel { ridge: Along::Width, lower: pitch(24.0), upper: pitch(6.0), lower_run: ft(4.0) };
    let shape = part(24.0, 36.0, 9.0, roof).shape().unwrap();
    same(shape.ridge_height().feet(), 21.0, "ridge");
    same(shape.mean_roof_height().feet(), 15.0, "mean roof height");
    same(shape.wall(Side::Front).above_eave.square_feet(), 2.0 * (4.0 * 4.0 + 8.0 * 10.0), "gable");
    same(shape.projection(Side::Left).roof.square_feet(), 36.0 * 12.0, "both slopes upright");
    let breaks = shape.roof_lines(RoofExtent::Walls);
    assert_eq!(breaks.iter().filter(|line| line.kind == RoofLineKind::PitchBreak).count(), 2);
    assert_eq!(breaks.iter().filter(|line| line.kind == RoofLineKind::Ridge).count(), 1);
    assert_eq!(breaks.iter().filter(|line| line.kind == RoofLineKind::Rake).count(), 8);
}

/// Worked by hand: 3 in 12 over 24 ft rises 6 ft.
#[test]
fn a_shed_roof() {
    let roof = Roof::Shed { low_side: Side::Back, pitch: pitch(3.0) };
    let shape = part(30.0, 24.0, 9.0, roof).shape().unwrap();
    same(shape.wall(Side::Front).area.square_feet(), 30.0 * 15.0, "high wall");
    same(shape.wall(Side::Back).area.square_feet(), 30.0 * 9.0, "low wall");
    same(shape.wall(Side::Left).above_eave.square_feet(), 0.5 * 24.0 * 6.0, "wedge");
    same(shape.mean_roof_height().feet(), 12.0, "mean roof height");
    let kinds: Vec<_> = shape.roof_lines(RoofExtent::Walls).iter().map(|line| line.kind).collect();
    assert_eq!(kinds.iter().filter(|&&kind| kind == RoofLineKind::Ridge).count(), 1);
    assert_eq!(kinds.iter().filter(|&&kind| kind == RoofLineKind::Rake).count(), 2);
}

/// Worked by hand: an 18 in eave overhang of 6 in 12 hangs 9 in below the eave height; a 12 in rake lengthens the slope
/// by 2 ft.
#[test]
fn overhangs_lengthen_the_slopes_and_not_the_body() {
    let mut with = part(40.0, 28.0, 10.0, gable(6.0));
    with.overhangs = Overhangs { eave: ft(1.5), rake: ft(1.0) };
    let with = with.shape().unwrap();
    let face = &with.roof_faces(RoofExtent::Overhangs)[0];
    same(face.plan_area.square_feet(), 42.0 * 15.5, "plan");
    same(face.upright_area.square_feet(), 42.0 * 7.75, "upright");
    let lowest = face.corners.iter().map(|corner| corner.z).reduce(Length::min).unwrap();
    same(lowest.feet(), 9.25, "eave edge");
    assert_eq!(with.roof_faces(RoofExtent::Walls), sheet_house().roof_faces(RoofExtent::Walls));
    let hip = Roof::Hip { front_and_back: pitch(6.0), left_and_right: pitch(6.0) };
    let mut hip = part(40.0, 24.0, 10.0, hip);
    hip.overhangs = Overhangs { eave: ft(2.0), rake: ft(0.0) };
    let area: Area = hip.shape().unwrap().roof_faces(RoofExtent::Overhangs).iter().map(|face| face.plan_area).sum();
    same(area.square_feet(), 44.0 * 28.0, "all four eaves");
}

#[test]
fn the_eave_height_adds_up_from_the_storeys() {
    let mut two = part(40.0, 28.0, 20.0, gable(6.0));
    two.storeys = vec![
        Storey { floor_depth: ft(1.0), wall_height: Length::from_inches(109.125) },
        Storey { floor_depth: ft(1.0), wall_height: Length::from_inches(97.125) },
    ];
    two.eave = EaveHeight::FromStoreys { foundation: ft(2.0), heel: Length::from_inches(6.0) };
    let expected = 24.0 + 12.0 + 109.125 + 12.0 + 97.125 + 6.0;
    same(two.shape().unwrap().eave_height().inches(), expected, "eave height");
    two.eave = EaveHeight::Measured(ft(9.0));
    let message = two.shape().unwrap_err().to_string();
    assert!(message.contains("Given: 9'") && message.contains("no less than its floors and walls"), "{message}");
}
