//! Stairs as they were built: field cases, guards and handrails.

use layout::stair::{
    Aim, Covering, Coverings, Edition, Rails, Spiral, Verdict, after_finish, clear_width, guard, guard_opening,
    handrail, judge, judge_treads, mend, needs_guard, needs_handrail, nosing, open_riser, site_use, spiral,
    triangle_opening,
};
use measure::Length;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn all(sizes: &[f64]) -> Vec<Length> {
    sizes.iter().copied().map(inches).collect()
}

/// Twelve risers: 6 in above a new slab, then 7-3/8; the last is taken as 7-3/8.
fn above_a_slab() -> Vec<Length> {
    let mut risers = vec![inches(7.375); 12];
    risers[0] = inches(6.0);
    risers
}

fn pads_of(mend: &layout::stair::Mend) -> Vec<(usize, f64)> {
    mend.pads.iter().map(|pad| (pad.tread, pad.thickness.inches())).collect()
}

/// Source: a field case: a slab poured around old stairs. Total 87-1/8, spread 1-3/8. The smallest repair pads treads 1, 2, 3 by 1,
/// 5/8 and 1/4 in, which leaves 3/8 exactly; the even one pads all eleven, 1.260, 1.146, 1.031 to 0.115 (half of the last digit).
#[test]
fn a_first_riser_short_after_a_slab() {
    let built = judge(&above_a_slab(), Edition::Of2018).expect("risers");
    assert_eq!(built.total, inches(87.125));
    assert_eq!(built.spread, inches(1.375));
    assert_eq!(built.variation.verdict, Verdict::Out);
    assert_eq!((built.smallest.number, built.largest.number), (1, 2));

    let mends = mend(&above_a_slab(), false, Edition::Of2018).expect("risers");
    assert_eq!(mends.iter().map(|mend| mend.aim).collect::<Vec<_>>(), [Aim::Code, Aim::InUse, Aim::Even]);
    assert_eq!(pads_of(&mends[0]), [(1, 1.0), (2, 0.625), (3, 0.25)]);
    assert_eq!(mends[0].after.spread, inches(0.375));
    assert_eq!(mends[0].after.variation.verdict, Verdict::AtLimit);
    assert_eq!(mends[0].risers[..5], all(&[7.0, 7.0, 7.0, 7.125, 7.375])[..]);

    let even = pads_of(&mends[2]);
    assert_eq!(even.len(), 11);
    for (index, expected) in [(0, 1.260), (1, 1.146), (2, 1.031), (10, 0.115)] {
        assert!((even[index].1 - expected).abs() <= 0.000_5, "{} against {expected}", even[index].1);
    }
}

/// The same where the stairs serve the site: a proposal within 1/4 in comes first. Five pads, worked by hand: 7-1/8 each to tread 5.
#[test]
fn a_mend_while_a_crew_uses_the_stairs() {
    let mends = mend(&above_a_slab(), true, Edition::Of2018).expect("risers");
    assert_eq!(mends[0].aim, Aim::InUse);
    assert_eq!(pads_of(&mends[0]), [(1, 1.125), (2, 0.875), (3, 0.625), (4, 0.375), (5, 0.125)]);
    assert_eq!(mends[0].after.spread, inches(0.25));
    assert_eq!(mends[0].after.variation.verdict, Verdict::Within);
}

/// Source: a field case: the bottom riser 1 in higher than the rest, 5/8 in tile below, carpet and pad 3/8 in on the treads, the upper
/// floor's finish unknown. By the code 3/8 in, at the limit; walked with carpet 3/4 in, for information. The rest are taken as
/// 7-1/4. Pads cannot mend it: it is cut again.
#[test]
fn tile_below_and_carpet_above() {
    let mut risers = vec![inches(6.75); 13];
    risers[0] = inches(7.75);
    let coverings = Coverings {
        bottom: Covering::Hard(inches(0.625)),
        treads: Covering::Carpet(inches(0.375)),
        top: Covering::Unknown,
    };
    let found = after_finish(&risers, &coverings).expect("risers");
    let code = judge(&found.known(), Edition::Of2018).expect("risers");
    assert_eq!(code.spread, inches(0.375));
    assert_eq!(code.variation.verdict, Verdict::AtLimit);
    assert!(!found.all_known());
    assert_eq!(found.by_code[12], None);
    let walked: Vec<Length> = found.with_carpet.iter().flatten().copied().collect();
    assert_eq!(judge(&walked, Edition::Of2018).expect("risers").spread, inches(0.75));

    assert_eq!(judge(&risers, Edition::Of2018).expect("risers").variation.verdict, Verdict::Out);
    assert_eq!(mend(&risers, false, Edition::Of2018), Ok(Vec::new()));

    // Known, the upper floor counts: wood of 3/4 in there makes the last riser too high.
    let known = Coverings { top: Covering::Hard(inches(0.75)), ..coverings };
    let found = after_finish(&risers, &known).expect("risers");
    assert_eq!(found.by_code[12], Some(inches(7.5)));
    // Treads that count lift the first riser and lower the last.
    let wood = Coverings { bottom: Covering::None, treads: Covering::Hard(inches(0.5)), top: Covering::None };
    let found = after_finish(&risers, &wood).expect("risers");
    assert_eq!((found.by_code[0], found.by_code[12]), (Some(inches(8.25)), Some(inches(6.25))));
}

/// Source: a field case: risers 7-1/2 to 7-13/16 with temporary treads: spread 5/16 passes the house's 3/8 and fails the crew's 1/4.
/// The highest is over 7-3/4 besides, which the case does not ask for.
#[test]
fn stairs_that_a_crew_uses() {
    let risers = all(&[7.5, 7.5625, 7.625, 7.8125, 7.5]);
    let code = judge(&risers, Edition::Of2018).expect("risers");
    assert_eq!(code.spread, inches(0.3125));
    assert_eq!(code.variation.verdict, Verdict::Within);
    assert_eq!(code.worst.verdict, Verdict::Out);
    let use_now = site_use(&risers, Some(inches(10.0))).expect("risers");
    assert_eq!(use_now.variation.verdict, Verdict::Out);
    assert_eq!(use_now.variation.margin, inches(-0.0625));
    assert!(use_now.rails);
    assert_eq!(use_now.slope.map(|slope| slope.verdict), Some(Verdict::Within));
    assert_eq!(use_now.variation.source.document, "29 CFR 1926");
}

/// Source: 29 CFR 1926.1052: 30 to 50 degrees; rails at four risers or over 30 in.
#[test]
fn slopes_and_rails_of_a_crews_stairs() {
    let of = |risers: &[f64], tread: f64| site_use(&all(risers), Some(inches(tread))).expect("risers");
    let verdict = |riser: f64, tread: f64| of(&[riser, riser], tread).slope.map(|slope| slope.verdict);
    assert_eq!(verdict(5.0, 10.0), Some(Verdict::Out));
    assert_eq!(verdict(10.0, 10.0), Some(Verdict::Within));
    assert_eq!(verdict(12.0, 10.0), Some(Verdict::Out));
    assert!(!of(&[7.5, 7.5, 7.5], 10.0).rails);
    assert!(of(&[7.5, 7.5, 7.5, 7.5], 10.0).rails);
    assert!(of(&[11.0, 11.0, 11.0], 10.0).rails);
}

/// A stair within its limits needs no pads; a spread of 5/16 needs them only for a crew.
#[test]
fn no_pads_where_none_are_needed() {
    assert_eq!(mend(&all(&[7.25; 10]), true, Edition::Of2018), Ok(Vec::new()));
    let uneven = all(&[7.0, 7.3125, 7.3125, 7.3125, 7.3125]);
    assert_eq!(mend(&uneven, false, Edition::Of2018), Ok(Vec::new()));
    let found = mend(&uneven, true, Edition::Of2018).expect("risers");
    assert_eq!((found[0].aim, pads_of(&found[0])), (Aim::InUse, vec![(1, 0.0625)]));
}

/// Source: IRC R311.7.5.2: treads 3/8 in at most from each other, 10 in at least.
#[test]
fn treads_as_built() {
    let found = judge_treads(&all(&[10.0, 10.375, 10.25]), Edition::Of2021).expect("treads");
    assert_eq!((found.worst.verdict, found.variation.verdict), (Verdict::AtLimit, Verdict::AtLimit));
    let found = judge_treads(&all(&[9.9375, 10.375]), Edition::Of2021).expect("treads");
    assert_eq!((found.worst.verdict, found.variation.verdict), (Verdict::Out, Verdict::Out));
}

/// Source: a value sheet of IRC R311.7 and R312.1, row by row: at the limit, and 1/16 in past it.
#[test]
fn limits_row_by_row() {
    let edition = Edition::Of2018;
    let both = |verdicts: [Verdict; 2]| assert_eq!(verdicts, [Verdict::AtLimit, Verdict::Out]);
    let past = 0.0625;
    both([34.0, 34.0 - past].map(|height| handrail(inches(height), edition).expect("a rail")[0].verdict));
    both([38.0, 38.0 + past].map(|height| handrail(inches(height), edition).expect("a rail")[1].verdict));
    both([36.0, 36.0 - past].map(|height| guard(inches(height), false, edition).expect("a guard").verdict));
    both([34.0, 34.0 - past].map(|height| guard(inches(height), true, edition).expect("a guard").verdict));
    both([4.0, 4.0 + past].map(|gap| guard_opening(inches(gap), false, edition).expect("a guard").verdict));
    both([4.375, 4.375 + past].map(|gap| guard_opening(inches(gap), true, edition).expect("a guard").verdict));
    both([6.0, 6.0 + past].map(|gap| triangle_opening(inches(gap), edition).expect("a guard").verdict));
    let width = |above: f64, at: f64, rails| clear_width(inches(above), inches(at), rails, edition).expect("a width");
    both([36.0, 36.0 - past].map(|above| width(above, 40.0, Rails::One)[0].verdict));
    both([31.5, 31.5 - past].map(|at| width(36.0, at, Rails::One)[1].verdict));
    both([27.0, 27.0 - past].map(|at| width(36.0, at, Rails::Two)[1].verdict));
    assert_eq!([30.0, 30.0625].map(|drop| needs_guard(inches(drop), edition)), [false, true]);
    assert_eq!([3, 4].map(needs_handrail), [false, true]);
}

/// Source: IRC R311.7.5.3, from memory: 3/4 to 1-1/4 in under treads of 11 in with solid risers.
#[test]
fn nosings() {
    let of =
        |out: f64, tread: f64, solid| nosing(inches(out), inches(tread), solid, Edition::Of2021).expect("a nosing");
    assert_eq!(of(0.75, 10.0, true).least.map(|check| check.verdict), Some(Verdict::AtLimit));
    assert_eq!(of(0.0, 10.0, true).least.map(|check| check.verdict), Some(Verdict::Out));
    assert_eq!(of(1.3125, 10.0, true).most.map(|check| check.verdict), Some(Verdict::Out));
    assert!(!of(0.0, 11.0, true).required);
    assert!(!of(0.0, 10.0, false).required);
}

/// Source: IRC R311.7.5.1, from memory: a 4 in ball, over 30 in above the floor. 7-1/2 less 1-1/2 is 6 in: 2 in are filled.
#[test]
fn open_risers() {
    let of = |above| open_riser(inches(7.5), inches(1.5), inches(above), Edition::Of2021).expect("a riser");
    assert_eq!(of(30.0), None);
    let found = of(37.5).expect("over 30 in");
    assert_eq!((found.gap.verdict, found.filler), (Verdict::Out, Some(inches(2.0))));
}

/// Source: a value sheet of IRC R311.7.10.1, from memory: 9-1/2, 6-3/4, 78 and 26 in.
#[test]
fn spirals() {
    let at = Spiral { riser: inches(9.5), tread: inches(6.75), headroom: inches(78.0), width: inches(26.0) };
    let verdicts = |given| spiral(&given, Edition::Of2018).expect("a spiral").map(|check| check.verdict);
    assert_eq!(verdicts(at), [Verdict::AtLimit; 4]);
    let past = inches(0.0625);
    let out =
        Spiral { riser: at.riser + past, tread: at.tread - past, headroom: at.headroom - past, width: at.width - past };
    assert_eq!(verdicts(out), [Verdict::Out; 4]);
}

/// What cannot be measured is refused.
#[test]
fn refusals() {
    assert!(judge(&[], Edition::Of2018).is_err());
    assert!(judge(&all(&[7.0, 0.0]), Edition::Of2018).is_err());
    assert!(judge(&all(&[7.0; 301]), Edition::Of2018).is_err());
    let below = Coverings { bottom: Covering::Hard(inches(-1.0)), treads: Covering::None, top: Covering::None };
    assert!(after_finish(&all(&[7.0, 7.0]), &below).is_err());
}
