//! The path of uplift against published cases and against statics; vectors of our own are marked so.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use bracing::ShearFastener;
use bracing::uplift::{
    Chain, ChainAnswer, Connections, Held, HeldDown, Link, LinkAnswer, RoofSheathing, Side, SillBolts, Tie,
    UpliftBasis, UpliftCaution, WallOpening, WallStorey, Washer, check_chain,
};
use measure::{AreaLoad, Force, Length, LineLoad, Slope, Speed, Stress};
use proptest::prelude::*;
use standards::Status;
use standards::irc_2021::r301::ExposureCategory;
use standards::irc_2021::r802_11::{Reduction, RoofShape, TiedRoof, wall_uplift};
use standards::sdpws_2015::uplift::{NailRows, UpliftNailing};

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

fn at(spacing: f64, tie: Tie) -> Connections {
    Connections { tie, spacing: inches(spacing) }
}

fn strap(allowable: f64) -> Tie {
    Tie::Metal { allowable: pounds(allowable), side: Some(Side::Sheathed) }
}

fn bolts(washer: Washer) -> Tie {
    let anchorage = Some(pounds(3000.0));
    Tie::Bolts(SillBolts { washer, hole: inches(9.0 / 16.0), fc_perp: Stress::from_psi(425.0), anchorage })
}

const PLATE_WASHER: Washer = Washer::Square { side: Length::from_inches(3.0), thickness: Length::from_inches(0.229) };

fn storey(tie: Tie, weight: HeldDown) -> WallStorey {
    WallStorey { above: at(16.0, tie), studs: inches(16.0), openings: Vec::new(), weight }
}

/// Straps all the way down, of one storey, bolts at 48 in with plate washers.
fn strapped(uplift: f64) -> Chain {
    Chain {
        uplift: plf(uplift),
        basis: UpliftBasis::Computed,
        sheathing: None,
        roof: at(24.0, strap(600.0)),
        storeys: vec![storey(strap(500.0), HeldDown::Nothing)],
        stud_to_sill: at(16.0, strap(400.0)),
        sill: at(48.0, bolts(PLATE_WASHER)),
    }
}

fn work(chain: &Chain) -> ChainAnswer {
    check_chain(chain).expect("the chain is whole")
}

fn link(answer: &ChainAnswer, link: Link) -> &LinkAnswer {
    answer.links.iter().find(|one| one.link == link).expect("the link is there")
}

/// A roof with its trusses at 24 in, at a corner.
fn roof(mph: f64, span: f64, rise: f64) -> TiedRoof {
    TiedRoof {
        exposure: ExposureCategory::B,
        wind_speed: Speed::from_mph(mph),
        span: feet(span),
        pitch: Slope::from_rise_in_twelve(rise),
        shape: RoofShape::Gable,
        overhang: inches(24.0),
        mean_roof_height: feet(33.0),
        dead: AreaLoad::from_psf(15.0),
        from_corner: Length::ZERO,
    }
}

/// Source: a trade journal's report after a tornado, with IRC 2018 Table R802.11 and R602.3.5: trusses at 24 in, 28 ft, under
/// 5 in 12, 130 mph, Exposure B need 334 lb a connection, from 5 in 12 on 306 lb; toe nails may take 200 lb. A tie on the inner
/// edge rolls the plate. Over 100 plf at the wall's top the schedule's nailing is not path enough; a full storey takes off 60.
#[test]
fn the_ties_after_a_tornado() {
    for (rise, needed) in [(4.0, 334.0), (6.0, 306.0)] {
        let top = wall_uplift(&roof(130.0, 28.0, rise)).expect("the table has it");
        let chain = |tie| Chain {
            uplift: top.uplift,
            basis: UpliftBasis::Table(top.reduction),
            roof: at(24.0, tie),
            storeys: vec![storey(Tie::ScheduleNailing, HeldDown::FullWall)],
            stud_to_sill: at(16.0, Tie::ScheduleNailing),
            ..strapped(0.0)
        };
        let toe_nailed = work(&chain(Tie::Nails { count: 3, each: pounds(150.0) }));
        let tie = link(&toe_nailed, Link::RoofToPlate);
        assert!((tie.demand.pounds() - needed).abs() < 1e-9);
        assert_eq!((tie.held.clone(), tie.holds()), (Held::Carries(pounds(200.0)), false));
        assert!((tie.missing.pounds() - (needed - 200.0)).abs() < 1e-9);
        assert_eq!(tie.cautions, [UpliftCaution::ToeNailLimit]);
        assert_eq!(tie.source.map(|source| source.status), Some(Status::FromMemory));

        let inside = Tie::Metal { allowable: pounds(500.0), side: Some(Side::Inside) };
        let tied = work(&chain(inside));
        assert!(link(&tied, Link::RoofToPlate).holds());
        let plate = link(&tied, Link::PlateToStud);
        assert!(plate.cautions.contains(&UpliftCaution::OtherSide));
        assert!(matches!(&plate.held, Held::Refused(why) if why.to_string().contains("100 plf")));
        let foot = link(&tied, Link::SillToFooting);
        assert!((foot.along.plf() - top.below(1).plf()).abs() < 1e-9);
        assert!((foot.along.plf() - (needed / 2.0 - 60.0)).abs() < 1e-9);
    }
}

/// Source: Florida Existing Building Code Table 708.8.1: 130 mph, span 28 ft, in the corner zone 493.72 plf, so that a truss
/// at 24 in needs 987 lb, to the pound.
#[test]
fn a_truss_by_the_retrofit_table() {
    let answer = work(&strapped(493.72));
    assert!((link(&answer, Link::RoofToPlate).demand.pounds() - 987.0).abs() < 0.5);
}

/// *Own* vector: 30 ft, 120 mph, Exposure B, under 5 in 12: 127.5 plf; beside 6 ft, studs at 16 in, 467.5 lb go down, of which
/// the header brings 382.5 lb.
#[test]
fn beside_an_opening() {
    let top = wall_uplift(&roof(120.0, 30.0, 4.0)).expect("the table has it");
    let mut chain = strapped(top.uplift.plf());
    chain.storeys[0].openings.push(WallOpening { width: feet(6.0), header: strap(300.0), jamb: strap(935.0) });
    let answer = work(&chain);
    let header = link(&answer, Link::HeaderToJamb { storey: 0, opening: 0 });
    let jamb = link(&answer, Link::JambToBelow { storey: 0, opening: 0 });
    assert!((header.demand.pounds() - 382.5).abs() < 0.05 && (header.missing.pounds() - 82.5).abs() < 0.05);
    assert!((jamb.demand.pounds() - 467.5).abs() < 0.05 && (jamb.used.expect("known") - 0.5).abs() < 1e-9);
    assert_eq!(answer.weakest_link().map(|link| link.link), Some(header.link));
    chain.storeys[0].openings[0].jamb = Tie::ScheduleNailing;
    assert!(work(&chain).bare().any(|link| link.link == jamb.link));
}

/// *Own*: two storeys, 200 plf, upper wall 90 plf, lower wall with its floor 150 plf: 146 plf between the floors, 56 plf at
/// the sill, 224 lb on a bolt at 48 in.
#[test]
fn two_storeys_with_their_weight() {
    let mut chain = strapped(200.0);
    chain.storeys =
        vec![storey(strap(500.0), HeldDown::Dead(plf(90.0))), storey(strap(500.0), HeldDown::Dead(plf(150.0)))];
    let answer = work(&chain);
    let links: Vec<Link> = answer.links.iter().map(|link| link.link).collect();
    let floor = Link::FloorToFloor { storey: 1 };
    assert_eq!(links, [Link::RoofToPlate, Link::PlateToStud, floor, Link::StudToSill, Link::SillToFooting]);
    let along: Vec<f64> = answer.links.iter().map(|link| link.along.plf()).collect();
    for (found, own) in along.into_iter().zip([200.0, 200.0, 146.0, 56.0, 56.0]) {
        assert!((found - own).abs() < 1e-9, "{found} against {own}");
    }
    assert!((link(&answer, Link::SillToFooting).demand.pounds() - 224.0).abs() < 1e-9);
    assert!(answer.holds());
}

/// *Own*: a 3 in plate washer on 425 psi with a 9/16 in hole presses 3,719 lb into the sill, a 1-3/8 in cut washer 525 lb.
#[test]
fn a_washer_on_the_sill() {
    let holds = |washer, anchorage| {
        SillBolts { washer, hole: inches(9.0 / 16.0), fc_perp: Stress::from_psi(425.0), anchorage }.holds().pounds()
    };
    assert!((holds(PLATE_WASHER, None) - 3719.4).abs() < 0.05);
    assert!((holds(Washer::Round { diameter: inches(1.375) }, None) - 525.5).abs() < 0.05);
    assert_eq!(holds(PLATE_WASHER, Some(pounds(2000.0))), 2000.0);
    let mut chain = strapped(100.0);
    let unanchored =
        SillBolts { washer: PLATE_WASHER, hole: inches(9.0 / 16.0), fc_perp: Stress::from_psi(425.0), anchorage: None };
    chain.sill = at(84.0, Tie::Bolts(unanchored));
    let answer = work(&chain);
    let said = [UpliftCaution::SillBending, UpliftCaution::AnchorageNotCounted, UpliftCaution::BoltsFarApart];
    assert_eq!(link(&answer, Link::SillToFooting).cautions, said);
}

fn panels() -> Tie {
    Tie::Panels(UpliftNailing {
        thickness: inches(7.0 / 16.0),
        fastener: ShearFastener::Common8d,
        shear_edge: Some(inches(6.0)),
        rows: NailRows::Single,
        spacing: inches(3.0),
        specific_gravity: 0.42,
    })
}

/// Source: SDPWS 2015 Table 4.4.1 (from memory): 8d at 6 in, one row at 3 in: 432 plf nominal, so 216 plf; bolts at 16 in with
/// 3 in plate washers.
#[test]
fn panels_that_lap_the_plates() {
    let mut chain = strapped(150.0);
    chain.storeys[0].above = at(16.0, panels());
    chain.stud_to_sill = at(16.0, panels());
    let held = |chain: &Chain| link(&work(chain), Link::PlateToStud).held.clone();
    assert!(matches!(held(&chain), Held::Refused(why) if why.to_string().contains("16 in")));
    chain.sill = at(16.0, bolts(Washer::Round { diameter: inches(1.375) }));
    assert!(matches!(held(&chain), Held::Refused(_)));
    chain.sill = at(16.0, Tie::Unknown);
    assert_eq!(held(&chain), Held::Unknown);
    chain.sill = at(16.0, bolts(PLATE_WASHER));
    let answer = work(&chain);
    let plate = link(&answer, Link::PlateToStud);
    assert_eq!((plate.held.clone(), plate.demand), (Held::Carries(pounds(216.0)), pounds(150.0)));
    assert_eq!(plate.source.map(|source| source.status), Some(Status::FromMemory));
    assert!(answer.holds());
}

/// Source: IRC R602.3.5: to 100 plf at the top of the wall the nailing of braced wall panels is path enough.
#[test]
fn the_schedule_is_path_enough_to_100_plf() {
    let with = |uplift| {
        let mut chain = strapped(uplift);
        chain.storeys = vec![storey(Tie::ScheduleNailing, HeldDown::Dead(plf(100.0)))];
        chain.stud_to_sill = at(16.0, Tie::ScheduleNailing);
        work(&chain)
    };
    assert!(with(100.0).holds());
    // The limit is at the top: what the wall's weight leaves at its foot does not count.
    let over = with(101.0);
    assert!(link(&over, Link::StudToSill).along < plf(100.0));
    assert_eq!(over.bare().count(), 2);
    // Each storey has a top of its own: 130 plf at the roof, 70 plf below a strapped storey of 100 plf.
    let mut two = strapped(130.0);
    two.storeys =
        vec![storey(strap(500.0), HeldDown::Dead(plf(100.0))), storey(Tie::ScheduleNailing, HeldDown::Nothing)];
    two.stud_to_sill = at(16.0, Tie::ScheduleNailing);
    assert!(work(&two).holds());
}

#[test]
fn what_is_missing_is_named_and_what_is_unknown_has_no_number() {
    let mut chain = strapped(150.0);
    chain.sheathing = Some(RoofSheathing {
        suction: AreaLoad::from_psf(40.0),
        nails: at(6.0, Tie::Nails { count: 1, each: pounds(41.0) }),
    });
    chain.stud_to_sill = at(16.0, Tie::Nothing);
    chain.sill = at(48.0, Tie::Unknown);
    let answer = work(&chain);
    // 40 psf on 2 ft by 6 in.
    assert_eq!(link(&answer, Link::SheathingToRafter).demand, pounds(40.0));
    assert_eq!(answer.bare().map(|link| link.link).collect::<Vec<_>>(), [Link::StudToSill]);
    assert_eq!(answer.unknown().map(|link| link.link).collect::<Vec<_>>(), [Link::SillToFooting]);
    assert_eq!(answer.weakest_link().map(|link| (link.link, link.missing)), Some((Link::StudToSill, pounds(200.0))));
    assert!(!answer.holds());
    // Nothing is needed where the roof presses down.
    let calm = Chain { uplift: plf(-20.0), sheathing: None, ..chain };
    let answer = work(&calm);
    assert!(answer.holds() && answer.weakest.is_none() && answer.bare().next().is_none());
}

#[test]
fn a_chain_that_cannot_be_is_refused() {
    let good = strapped(150.0);
    let refused = |chain: Chain| check_chain(&chain).expect_err("it cannot be").to_string();
    let with = |weight, basis| Chain { storeys: vec![storey(strap(500.0), weight)], basis, ..good.clone() };
    for (chain, named) in [
        (Chain { storeys: Vec::new(), ..good.clone() }, "one to three storeys"),
        (Chain { roof: at(0.0, strap(500.0)), ..good.clone() }, "over zero"),
        (Chain { sill: at(16.0, strap(-1.0)), ..good.clone() }, "from zero"),
        (with(HeldDown::Dead(plf(-1.0)), UpliftBasis::Computed), "dead loads from zero"),
        (with(HeldDown::FullWall, UpliftBasis::Computed), "Table R802.11 without"),
        (with(HeldDown::FullWall, UpliftBasis::Table(Reduction::HipRoof)), "Table R802.11 without"),
    ] {
        let message = refused(chain);
        assert!(message.contains(named), "{message}");
    }
    assert!(check_chain(&with(HeldDown::FullWall, UpliftBasis::Table(Reduction::AwayFromCorners))).is_ok());
    let bolted_roof = work(&Chain { roof: at(24.0, bolts(PLATE_WASHER)), ..good });
    assert!(matches!(link(&bolted_roof, Link::RoofToPlate).held, Held::Refused(_)));
}

fn any_chain() -> impl Strategy<Value = Chain> {
    let weights = prop::collection::vec((100.0..900.0_f64, 0.0..200.0_f64), 1..=3);
    let straps = [200.0..900.0_f64, 200.0..900.0_f64];
    (50.0..600.0_f64, weights, straps, 12.0..72.0_f64).prop_map(|(uplift, storeys, [roof, foot], bolts_at)| Chain {
        roof: at(24.0, strap(roof)),
        storeys: storeys.into_iter().map(|(holds, dead)| storey(strap(holds), HeldDown::Dead(plf(dead)))).collect(),
        stud_to_sill: at(16.0, strap(foot)),
        sill: at(bolts_at, bolts(PLATE_WASHER)),
        ..strapped(uplift)
    })
}

/// Source: SDPWS 2015 Tables 4.4.1 and 4.4.2 (from memory): 432 and 416 plf nominal. The shear by Table 4.3A: 7/16 in taken as
/// 15/32 in on studs at 16 in, 8d at 6 in, 730 plf nominal for wind, 365 plf allowable, in wood of 0.50.
#[test]
fn panels_hold_down_with_what_their_shear_leaves() {
    use bracing::uplift::lapping;
    use bracing::{Edition, Framing, LevelJoints, OtherFace, read_nailing};
    let framing = Framing {
        specific_gravity: 0.5,
        studs: inches(16.0),
        wet: false,
        hold_downs_inside: false,
        edition: Edition::Of2015,
        joints: LevelJoints::Blocked,
        other_face: OtherFace::Bare,
    };
    let nailing = read_nailing("7/16 8d 6, both faces").expect("read");
    let tie = |shear: f64| lapping(&nailing, &framing, (NailRows::Single, inches(3.0)), plf(shear));
    let held = |shear: f64| {
        let chain = Chain {
            storeys: vec![storey(tie(shear), HeldDown::Nothing)],
            sill: at(16.0, bolts(PLATE_WASHER)),
            ..strapped(150.0)
        };
        link(&work(&chain), Link::PlateToStud).held.clone()
    };
    assert_eq!(held(365.0), Held::Carries(pounds(216.0)));
    assert_eq!(held(0.0), Held::Carries(pounds(416.0)));
    for (shear, why) in [(366.0, "366 plf where the nails of the shear carry 365 plf"), (-1.0, "without a sign")] {
        assert!(matches!(held(shear), Held::Refused(outside) if outside.to_string().contains(why)), "{shear}");
    }
}

proptest! {
    /// What passes never grows on the way down, and with more weight no demand is more.
    #[test]
    fn weight_never_adds(chain in any_chain(), more in 1.0..100.0_f64) {
        let before = work(&chain);
        prop_assert!(before.links.windows(2).all(|pair| pair[1].along <= pair[0].along));
        let mut heavier = chain;
        for storey in &mut heavier.storeys {
            storey.weight = match storey.weight {
                HeldDown::Dead(dead) => HeldDown::Dead(dead + plf(more)),
                other => other,
            };
        }
        for (light, heavy) in before.links.iter().zip(&work(&heavier).links) {
            prop_assert!(heavy.demand <= light.demand && heavy.missing <= light.missing);
        }
        // Each dead load counts once: at the footing all of them at 0.6, and no more.
        let dead = heavier.storeys.iter().map(|storey| storey.weight.counted()).sum::<LineLoad>();
        let foot = work(&heavier).links.last().map_or(0.0, |link| link.along.plf());
        prop_assert!((heavier.uplift.plf() - dead.plf() - foot).abs() < 1e-9);
    }

    /// Wider spacing asks more of each connection, in proportion.
    #[test]
    fn wider_spacing_asks_more(chain in any_chain(), times in 1.01..1.2_f64) {
        let mut wider = chain.clone();
        wider.sill.spacing = chain.sill.spacing * times;
        wider.roof.spacing = chain.roof.spacing * times;
        for of in [Link::RoofToPlate, Link::SillToFooting] {
            let (before, after) = (work(&chain), work(&wider));
            let (before, after) = (link(&before, of).demand.pounds(), link(&after, of).demand.pounds());
            prop_assert!((after - before * times).abs() < 1e-6);
        }
    }

    /// The weakest link is the one with the least strength for its demand.
    #[test]
    fn the_weakest_is_the_weakest(chain in any_chain()) {
        let answer = work(&chain);
        let weakest = answer.weakest_link().expect("something lifts");
        for link in answer.links.iter().filter(|link| link.demand > Force::ZERO) {
            let Held::Carries(holds) = link.held else { unreachable!("all are tied") };
            let Held::Carries(least) = weakest.held else { unreachable!("all are tied") };
            prop_assert!(holds / link.demand >= least / weakest.demand - 1e-12);
        }
        prop_assert_eq!(answer.holds(), answer.links.iter().all(|link| link.missing == Force::ZERO));
    }

    /// Pieces of whole bays with an opening between each two: what all studs and jambs take down is the uplift of the whole
    /// length, and what all rafters take is as well.
    #[test]
    fn all_connections_together_take_the_whole(
        uplift in 50.0..600.0_f64,
        bays in prop::collection::vec(1..8_u8, 2..5),
        width in 2.0..10.0_f64,
    ) {
        let mut chain = strapped(uplift);
        let openings = bays.len() - 1;
        let opening = WallOpening { width: feet(width), header: strap(900.0), jamb: strap(900.0) };
        chain.storeys[0].openings = vec![opening; openings];
        let answer = work(&chain);
        let stud = link(&answer, Link::StudToSill).demand.pounds();
        // Studs inside each piece take a bay; of the two at its ends one at an opening takes what the answer says, one at the
        // end of the wall half a bay.
        let inner: f64 = bays.iter().map(|bays| f64::from(bays - 1) * stud).sum();
        let jambs: f64 = (0..openings)
            .map(|opening| 2.0 * link(&answer, Link::JambToBelow { storey: 0, opening }).demand.pounds())
            .sum();
        let studs: f64 = bays.iter().map(|bays| f64::from(*bays) * 16.0 / 12.0).sum();
        let length = studs + f64::from(u8::try_from(openings).expect("few")) * width;
        prop_assert!((inner + jambs + stud - uplift * length).abs() < 1e-6);
        let rafter = link(&answer, Link::RoofToPlate).demand.pounds();
        prop_assert!((rafter * length / 2.0 - uplift * length).abs() < 1e-6);
    }
}
