//! Houses with wings, the compass, and what is refused.

use loads::outline::{Along, EaveHeight, HouseOutline, HouseShape, OutlineError, Part, PlanPoint, Roof, Side, Walls};
use measure::Angle;

use crate::common::{ft, gable, house, part, pitch, same, storey};

/// A main part of 40 by 28 ft and a wing of 16 by 20 ft in front of its left end, with the ridge to the front.
fn with_wing() -> HouseShape {
    let mut wing = part(16.0, 20.0, 9.0, Roof::Gable { ridge: Along::Width, pitches: [pitch(6.0); 2] });
    wing.at = PlanPoint::new(ft(4.0), ft(-20.0));
    house(vec![part(40.0, 28.0, 10.0, gable(6.0)), wing]).shape().unwrap()
}

/// Worked by hand: the wing covers 16 ft by 9 ft and its gable of 4 ft, cut off where it passes the main wall's 10 ft.
#[test]
fn a_house_with_a_wing() {
    let shape = with_wing();
    let from_front = shape.plan_dimensions(Side::Front);
    assert_eq!((from_front.along_wind, from_front.across_wind), (ft(48.0), ft(40.0)));
    let from_left = shape.plan_dimensions(Side::Left);
    assert_eq!((from_left.along_wind, from_left.across_wind), (ft(40.0), ft(48.0)));
    same(shape.mean_roof_height().feet(), 13.5, "of the main part");
    same(shape.least_plan_dimension().feet(), 40.0, "around all");
    same(shape.end_zone().edge_strip.feet(), 4.0, "edge strip");
    // Shared: to 10 ft, less the corners of 2 ft by 1 ft beside the wing's gable.
    let shared = 16.0 * 10.0 - 2.0 * 0.5 * 2.0 * 1.0;
    same(shape.wall_outdoors(0, Side::Front).unwrap().square_feet(), 400.0 - shared, "main part's front");
    same(shape.wall_outdoors(1, Side::Back).unwrap().square_feet(), 16.0 * 9.0 + 32.0 - shared, "wing's back");
    same(shape.wall_outdoors(1, Side::Front).unwrap().square_feet(), 16.0 * 9.0 + 32.0, "wing's front");
    same(shape.wall_outdoors(0, Side::Back).unwrap().square_feet(), 400.0, "main part's back");
    assert_eq!(shape.wall_outdoors(2, Side::Back), None);
    // From the front the wing hides behind nothing: 13 ft against the main roof's 17.
    same(shape.silhouette(Side::Front).square_feet(), 40.0 * 17.0, "from the front");
    same(shape.silhouette(Side::Left).square_feet(), 378.0 + 20.0 * 13.0, "from the left");
    assert_eq!(shape.height_at(PlanPoint::new(ft(12.0), ft(-5.0))), Some(ft(13.0)));
    assert_eq!(shape.height_at(PlanPoint::new(ft(30.0), ft(-5.0))), None);
    same(shape.volume().cubic_inches() / 1728.0, 40.0 * 378.0 + 20.0 * 176.0, "room");
}

/// Whatever the house, wind from opposite sides sees the same, and no less than it sees of any part.
#[test]
fn a_house_casts_the_same_shadow_both_ways() {
    let shape = with_wing();
    for side in Side::ALL {
        same(shape.silhouette(side).square_feet(), shape.silhouette(side.opposite()).square_feet(), "both ways");
        for part in shape.parts() {
            assert!(
                shape.silhouette(side).square_feet() + 1e-9 >= part.seen_from(side).area_above(ft(0.0)).square_feet()
            );
        }
    }
}

/// The front faces south: so the back faces north, and from outside before the front the plan's right is east.
#[test]
fn sides_and_ridges_by_the_compass() {
    let shape = with_wing();
    let degrees = Side::ALL.map(|side| shape.azimuth(side).degrees());
    assert_eq!(degrees, [180.0, 90.0, 0.0, 270.0]);
    assert_eq!(shape.ridge_azimuth(0), Some(Angle::from_degrees(90.0)));
    assert_eq!(shape.ridge_azimuth(1), Some(Angle::from_degrees(0.0)));
    let flat = house(vec![part(40.0, 28.0, 10.0, Roof::Flat)]).shape().unwrap();
    assert_eq!((flat.ridge_azimuth(0), flat.ridge_azimuth(1)), (None, None));
}

#[test]
fn buildings_that_are_not_worked_are_named() {
    let plain = || house(vec![part(40.0, 28.0, 10.0, gable(6.0))]);
    let open = HouseOutline { walls: Walls::OpenSided, ..plain() }.shape().unwrap_err().to_string();
    assert!(open.contains("open side") && open.contains("engineer"), "{open}");
    let parapet = HouseOutline { parapet: Some(ft(2.0)), ..plain() }.shape().unwrap_err().to_string();
    assert!(parapet.contains("parapet") && parapet.contains("engineer"), "{parapet}");
    assert_eq!(house(vec![]).shape(), Err(OutlineError::NoParts));
    let mut other = part(20.0, 20.0, 10.0, gable(6.0));
    other.at = PlanPoint::new(ft(39.0), ft(10.0));
    let mut both = plain();
    both.parts.push(other);
    assert_eq!(both.shape(), Err(OutlineError::Overlap { first: 0, second: 1 }));
    both.parts[1].at.x = ft(41.0);
    assert_eq!(both.shape(), Err(OutlineError::Apart { part: 1 }));
    // Touching at a corner only is apart.
    both.parts[1].at = PlanPoint::new(ft(40.0), ft(28.0));
    assert_eq!(both.shape(), Err(OutlineError::Apart { part: 1 }));
    both.parts[1].at = PlanPoint::new(ft(40.0), ft(10.0));
    assert!(both.shape().is_ok());
}

#[test]
fn impossible_sizes_are_refused_with_a_sentence() {
    type Change = fn(&mut Part);
    let cases: [(Change, &str); 12] = [
        (|part| part.length = ft(5.0), "length. Given: 5'"),
        (|part| part.width = ft(201.0), "width. Given: 201'"),
        (|part| part.storeys = vec![], "storeys. Given: 0. Taken: 1 to 3"),
        (|part| part.storeys = vec![storey(8.0); 4], "storeys. Given: 4"),
        (|part| part.storeys = vec![storey(1.0)], "wall height of a storey"),
        (|part| part.storeys[0].floor_depth = ft(-1.0), "depth of a floor"),
        (|part| part.eave = EaveHeight::Measured(ft(61.0)), "eave height"),
        (|part| part.overhangs.eave = ft(7.0), "eave overhang"),
        (|part| part.overhangs.rake = ft(-1.0), "rake overhang"),
        (|part| part.roof = gable(0.0), "roof pitch. Given: 0 in 12"),
        (|part| part.roof = gable(25.0), "roof pitch. Given: 25 in 12"),
        (|part| part.eave = EaveHeight::FromStoreys { foundation: ft(30.0), heel: ft(0.0) }, "foundation height"),
    ];
    for (change, expected) in cases {
        let mut one = part(40.0, 28.0, 10.0, gable(6.0));
        change(&mut one);
        let message = house(vec![one]).shape().unwrap_err().to_string();
        assert!(message.starts_with("Part 1, ") && message.contains(expected), "{message}");
        assert!(message.contains("Taken: "), "{message}");
    }
    let gambrel = |lower, upper, run| {
        let roof = Roof::Gambrel { ridge: Along::Length, lower: pitch(lower), upper: pitch(upper), lower_run: ft(run) };
        part(40.0, 28.0, 10.0, roof).shape()
    };
    assert!(gambrel(18.0, 5.0, 5.0).is_ok());
    assert!(gambrel(5.0, 18.0, 5.0).unwrap_err().to_string().contains("steeper"));
    assert!(gambrel(18.0, 5.0, 14.0).unwrap_err().to_string().contains("half the span"));
}

#[test]
fn a_house_too_long_over_all_is_refused() {
    let mut second = part(200.0, 28.0, 10.0, gable(6.0));
    second.at.x = ft(200.0);
    let message = house(vec![part(200.0, 28.0, 10.0, gable(6.0)), second]).shape().unwrap_err().to_string();
    assert!(message.starts_with("The house, length over all parts. Given: 400'"), "{message}");
}
