//! Ridges, overhangs and porch posts against statics and published forces; vectors of our own are marked so.

use bracing::uplift::{
    Held, Link, Rake, Single, Tie, check_singles, eave_uplift, footing_weight, porch_beam_uplift, post_uplifts,
    rake_ties, ridge_tension, through_uplifts,
};
use measure::{AreaLoad, Force, Length, LineLoad, Slope};
use proptest::prelude::*;

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn plf(plf: f64) -> LineLoad {
    LineLoad::from_plf(plf)
}

fn psf(psf: f64) -> AreaLoad {
    AreaLoad::from_psf(psf)
}

fn pitch(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

/// Source: a published example of the thrust of rafters: span 24 ft, 1,440 lb at 4 in 12 and 480 lb at 12 in 12; the load
/// of 80 plf of plan follows from them. Lifted by as much, the same pair pulls at its ridge by as much: each wall takes 960 lb.
#[test]
fn a_ridge_pulls_as_rafters_push() {
    for (rise, published) in [(4.0, 1440.0), (12.0, 480.0)] {
        let found = ridge_tension(plf(960.0), pitch(rise), feet(1.0)).expect("within limits");
        assert!((found.demand.pounds() - published).abs() < 1e-9, "{rise} in 12: {found:?}");
    }
    // At 3 in 12 twice the uplift of the wall; straps at 4 ft take four feet of it.
    let found = ridge_tension(plf(100.0), pitch(3.0), feet(4.0)).expect("within limits");
    assert!((found.along.plf() - 200.0).abs() < 1e-9 && (found.demand.pounds() - 800.0).abs() < 1e-9);
    assert_eq!(ridge_tension(plf(-5.0), pitch(6.0), feet(2.0)).map(|found| found.demand), Ok(Force::ZERO));
}

/// Source: IRC R802.4.4: under 3 in 12 the ridge is a beam (from memory).
#[test]
fn a_ridge_outside_the_limits() {
    for (rise, spacing, named) in [(2.9, 2.0, "ridge beam"), (12.1, 2.0, "engineer"), (6.0, 0.0, "over zero")] {
        let message = ridge_tension(plf(100.0), pitch(rise), feet(spacing)).expect_err("outside").to_string();
        assert!(message.contains(named), "{message}");
    }
}

/// *Own*: 50 psf on 2 ft and 2 ft, outlookers at 24 in back to a truss 4 ft inside, 30 psf there: at the wall 250 + 120 lb, at
/// the truss 120 − 50 lb.
#[test]
fn an_outlooker_over_the_gable_wall() {
    let rake = Rake {
        overhang: feet(2.0),
        backspan: feet(4.0),
        spacing: feet(2.0),
        on_overhang: psf(50.0),
        on_roof: psf(30.0),
    };
    let found = rake_ties(&rake).expect("within limits");
    assert!((found.at_wall.pounds() - 370.0).abs() < 1e-9 && (found.at_truss.pounds() - 70.0).abs() < 1e-9);
    for wrong in [
        Rake { overhang: inches(24.1), ..rake },
        Rake { backspan: inches(23.9), ..rake },
        Rake { spacing: Length::ZERO, ..rake },
    ] {
        assert!(rake_ties(&wrong).is_err(), "{wrong:?}");
    }
}

/// *Own*: 40 psf on 18 in beyond a 30 ft roof adds 61.5 plf.
#[test]
fn an_eave_that_stands_out() {
    let found = eave_uplift(psf(40.0), inches(18.0), feet(30.0)).expect("within limits");
    assert!((found.plf() - 61.5).abs() < 1e-9);
    assert!(eave_uplift(psf(40.0), inches(24.1), feet(30.0)).is_err());
    assert!(eave_uplift(psf(40.0), inches(18.0), Length::ZERO).is_err());
}

/// *Own*: bays of 8 and 10 ft under 150 plf: 600, 1,350 and 750 lb; the middle footing weighs 2,250 lb.
#[test]
fn posts_of_a_porch() {
    let found = post_uplifts(plf(150.0), &[feet(8.0), feet(10.0)]).expect("within limits");
    let found: Vec<f64> = found.into_iter().map(Force::pounds).collect();
    assert_eq!(found, [600.0, 1350.0, 750.0]);
    assert_eq!(footing_weight(Force::from_pounds(1350.0)), Force::from_pounds(2250.0));
    assert_eq!(footing_weight(Force::from_pounds(-10.0)), Force::ZERO);
    for wrong in [vec![], vec![Length::ZERO], vec![feet(20.1)]] {
        assert!(post_uplifts(plf(150.0), &wrong).is_err());
    }
}

/// Source: beams over like spans in any book of statics: the middle post of two takes 1.25 w l, the hardest of three 1.1 w l, of
/// four 1.143 w l: none more than the 1.25 that is taken. *Own*: two spans of 8 and 10 ft by the equation of three moments,
/// M = 150 (8³ + 10³) / (8 × 18) = 1,575 ft-lb, so that the middle has 1,350 + 1,575 / 8 + 1,575 / 10 = 1,704.375 lb.
#[test]
fn posts_under_a_beam_that_runs_through() {
    let of = |bays: &[f64]| {
        let bays: Vec<Length> = bays.iter().copied().map(feet).collect();
        through_uplifts(plf(150.0), &bays)
    };
    let pounds = |bays: &[f64]| of(bays).expect("within limits").into_iter().map(Force::pounds).collect::<Vec<_>>();
    assert_eq!(pounds(&[8.0]), [600.0, 600.0]);
    assert_eq!(pounds(&[8.0, 8.0]), [600.0, 1.25 * 1200.0, 600.0]);
    assert_eq!(pounds(&[8.0, 8.0, 8.0]), [600.0, 1500.0, 1500.0, 600.0]);
    assert!((pounds(&[8.0, 10.0])[1] - 1704.375).abs() < 1e-9);
    for wrong in [&[8.0, 10.0, 8.0][..], &[], &[8.0, 20.1]] {
        assert!(of(wrong).is_err(), "{wrong:?}");
    }
}

/// *Own*: 25 psf on a porch 8 ft deep that stands out 1 ft: 225 plf in all, by moments about the house 25 × 81 / 16 at the beam.
#[test]
fn a_porch_roof_on_its_beam() {
    let (beam, house) = porch_beam_uplift(psf(25.0), feet(8.0), feet(1.0)).expect("within limits");
    assert!((beam.plf() - 126.5625).abs() < 1e-9 && (beam.plf() + house.plf() - 225.0).abs() < 1e-9);
    for (deep, out) in [(0.0, 0.0), (20.1, 1.0), (8.0, 4.1), (8.0, -0.1)] {
        assert!(porch_beam_uplift(psf(25.0), feet(deep), feet(out)).is_err(), "{deep} {out}");
    }
}

/// Source: 0.6D + 0.6W of ASCE 7-16 2.4.1 for the weight; IRC R802.11.1 for toe nails (from memory), 200 lb.
#[test]
fn connections_by_themselves() {
    let lb = Force::from_pounds;
    let single = |link, pull, tie| Single { link, pull: lb(pull), tie };
    let nails = Tie::Nails { count: 8, each: lb(50.0) };
    let answer = check_singles(&[
        single(Link::RafterToBeam, 150.0, nails.clone()),
        single(Link::BeamToPost, 300.0, nails),
        single(Link::FootingToGround, 300.0, Tie::Weight(lb(600.0))),
        single(Link::PostToFooting, 300.0, Tie::Weight(lb(600.0))),
        single(Link::OutlookerToTruss, -40.0, Tie::Nothing),
        single(Link::PostToFooting, 300.0, Tie::Unknown),
    ])
    .expect("whole");
    let used: Vec<_> = answer.links.iter().map(|link| link.used).collect();
    assert_eq!(used, [Some(0.75), Some(0.75), Some(300.0 / 360.0), Some(f64::INFINITY), Some(0.0), None]);
    assert_eq!(answer.weakest, Some(3));
    assert!(matches!(answer.links[3].held, Held::Refused(_)) && !answer.holds());
    assert!(check_singles(&[single(Link::FootingToGround, 1.0, Tie::Weight(lb(-1.0)))]).is_err());
}

proptest! {
    /// Both ends of an outlooker take all that lifts it, and turn it about neither.
    #[test]
    fn an_outlooker_is_in_equilibrium(out in 0.1..2.0_f64, back in 2.0..8.0_f64, lift in 0.0..80.0_f64, roof in 0.0..60.0_f64) {
        let rake = Rake {
            overhang: feet(out),
            backspan: feet(back),
            spacing: feet(2.0),
            on_overhang: psf(lift),
            on_roof: psf(roof),
        };
        let found = rake_ties(&rake).expect("within limits");
        let (wall, truss) = (found.at_wall.pounds(), found.at_truss.pounds());
        let (beyond, behind) = (lift * out * 2.0, roof * back * 2.0);
        prop_assert!((wall + truss - beyond - behind).abs() < 1e-6);
        prop_assert!((truss * back + beyond * out / 2.0 - behind * back / 2.0).abs() < 1e-6);
    }

    /// All posts take the whole beam's uplift; a steeper ridge pulls less.
    #[test]
    fn posts_take_the_whole_and_steepness_helps(
        bays in prop::collection::vec(3.0..20.0_f64, 1..6),
        uplift in 0.0..500.0_f64,
        rise in 3.0..11.0_f64,
    ) {
        let lengths: Vec<Length> = bays.iter().copied().map(feet).collect();
        let posts: Force = post_uplifts(plf(uplift), &lengths).expect("within limits").into_iter().sum();
        prop_assert!((posts.pounds() - uplift * bays.iter().sum::<f64>()).abs() < 1e-6);
        let pull = |rise| ridge_tension(plf(uplift), pitch(rise), feet(2.0)).expect("within limits").demand;
        prop_assert!(pull(rise + 1.0) <= pull(rise));
    }
}
