//! Nails at hand for nails drawn, in whole joints.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use fastening::{
    Difference, Driven, FasteningError, Joint, NailSpec, Pattern, Room, Shank, SideMember, Swap, SwapGoverns, Wood,
    WoodPanel, read_nail, swap,
};
use lumber::Species;
use measure::Length;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn smooth(text: &str) -> NailSpec {
    NailSpec::smooth(read_nail(text).unwrap().nail)
}

fn headed(text: &str, head: f64) -> NailSpec {
    NailSpec { head: Some(inches(head)), ..smooth(text) }
}

fn framing() -> Joint {
    let spf = Wood::Lumber(Species::SprucePineFir);
    Joint::face_nailed(SideMember::wood(spf, inches(1.5)), spf)
}

fn wall() -> Joint {
    let osb = SideMember::wood(Wood::Panel(WoodPanel::Osb), inches(7.0 / 16.0));
    Joint::face_nailed(osb, Wood::Lumber(Species::SprucePineFir))
}

fn of(found: &NailSpec, required: &NailSpec, pattern: Pattern, joint: &Joint) -> Swap {
    swap(found, required, pattern, joint).unwrap()
}

/// Source: field case FC-27: ten 16d common, 12 nails of 0.148 for them across the shank. Along it a 3-1/4 in nail has
/// 1-3/4 in for 2 in and 23.3 lb an inch for 25.6: 40.8 for 51.1 lb, by hand, so 13.
#[test]
fn a_truss_repair() {
    let found = of(&smooth("12d common"), &smooth("16d common"), Pattern::Count(10), &framing());
    assert_eq!(found.lateral.replacements(10), 12);
    assert_eq!((found.governs, found.pattern), (SwapGoverns::Uplift, Some(Pattern::Count(13))));
    let pair = found.uplift.as_ref().unwrap();
    assert!((pair.ratio - 40.8 / 51.1).abs() < 0.002, "{}", pair.ratio);
    let Some(Room::KeepDistances(distances)) = found.room else { panic!("no distances") };
    assert!((distances.value.along_grain.inches() - 15.0 * 0.148).abs() < 1e-12);
    assert!(found.differences.is_empty() && found.may_stand(false));
}

/// Source: field case FC-25: 0.113 x 2-3/8 for 8d common at 4 in in a wall of 7/16 OSB on SPF: 3 in across the shank,
/// which a 2x takes; an engineer must say yes. By hand along it: 17.8 x 1.9375 = 34.6 for 42.6 lb, ratio 0.81, so the
/// shank across governs.
#[test]
fn thinner_nails_in_a_shear_wall() {
    let found = of(&headed("2-3/8 x .113", 0.281), &smooth("8d common"), Pattern::OnCenter(inches(4.0)), &wall());
    assert_eq!((found.governs, found.pattern), (SwapGoverns::Lateral, Some(Pattern::OnCenter(inches(3.0)))));
    assert!((found.uplift.as_ref().unwrap().ratio - 34.6 / 42.6).abs() < 0.003);
    assert_eq!(found.room, Some(Room::Enough));
    assert_eq!(found.differences, [Difference::Diameter, Difference::Length]);
    assert!(!found.may_stand(false) && found.may_stand(true));
}

/// Where one strength is met and the other is not, the other decides: a narrow head through thin plywood.
#[test]
fn a_narrow_head() {
    let plywood = SideMember::wood(Wood::Panel(WoodPanel::PlywoodOther), inches(0.375));
    let roof = Joint::face_nailed(plywood, Wood::Lumber(Species::SouthernPine));
    let found = of(&headed("8d common", 0.2), &smooth("8d common"), Pattern::OnCenter(inches(6.0)), &roof);
    assert!(found.lateral.is_enough());
    // 0.2 / 0.281 of 6 in are 4.27 in.
    assert_eq!((found.governs, found.pattern), (SwapGoverns::Uplift, Some(Pattern::OnCenter(inches(4.0)))));
    assert_eq!(found.differences, [Difference::Head]);
}

/// In a panel joint everything is like for like, or the engineer is asked; a longer nail and a wider head are.
#[test]
fn like_for_like() {
    let required = smooth("8d common");
    let at = Pattern::OnCenter(inches(6.0));
    let differs = |found: &NailSpec| of(found, &required, at, &wall()).differences;
    assert_eq!(differs(&required), []);
    assert_eq!(differs(&headed("3 x .131", 0.3)), []);
    assert_eq!(differs(&headed("3 x .131", 0.28)), [Difference::Head]);
    assert_eq!(differs(&smooth("10d common")), [Difference::Diameter]);
    let ring = |ringed| NailSpec { shank: Shank::RoofSheathingRing { ringed: inches(ringed) }, ..required };
    assert_eq!(differs(&ring(1.5)), [Difference::Shank]);
    assert_eq!(differs(&NailSpec { shank: Shank::SmoothStainless, ..required }), [Difference::Shank]);
    let rings = |found, asked| of(&ring(found), &ring(asked), at, &wall()).differences;
    assert_eq!((rings(1.5, 1.5), rings(2.0, 1.5), rings(1.0, 1.5)), (vec![], vec![], vec![Difference::Shank]));
    // The same nails stay as drawn, and a stronger nail does not open the spacing up.
    for found in [required, smooth("10d common")] {
        assert_eq!(of(&found, &required, at, &wall()).pattern, Some(at));
    }
}

/// What the wood takes: closer than 3 in on thicker framing, closer than 2 in on none; a row in lumber at 15 diameters.
#[test]
fn what_splits() {
    let at = |spacing, found: &NailSpec| of(found, &smooth("8d common"), Pattern::OnCenter(inches(spacing)), &wall());
    let thin = headed("2-3/8 x .113", 0.281);
    assert!(matches!(at(3.0, &thin).room, Some(Room::ThickerFraming(_))));
    let too_close = at(2.0, &thin);
    assert_eq!(too_close.pattern, Some(Pattern::OnCenter(inches(1.5))));
    assert!(matches!(too_close.room, Some(Room::TooClose(least)) if least.value == inches(2.0)));
    assert!(!too_close.may_stand(true));
    let row = |spacing| of(&smooth("16d box"), &smooth("16d common"), Pattern::OnCenter(inches(spacing)), &framing());
    assert_eq!(row(4.0).room, Some(Room::Enough));
    // 15 x 0.135 = 2.025 in.
    assert!(matches!(row(2.5).room, Some(Room::TooClose(least)) if (least.value.inches() - 2.025).abs() < 1e-12));
    let none = row(0.5);
    assert_eq!((none.pattern, none.room, none.may_stand(true)), (None, None, false));
}

/// In end grain only the shank across counts; nothing holds a pull there.
#[test]
fn end_nails() {
    let joint = Joint { driven: Driven::EndGrain, ..framing() };
    let found = of(&smooth("12d common"), &smooth("16d common"), Pattern::Count(2), &joint);
    assert_eq!((found.uplift, found.governs, found.pattern), (None, SwapGoverns::Lateral, Some(Pattern::Count(3))));
}

#[test]
fn refused() {
    let (a, b) = (smooth("8d common"), smooth("8d common"));
    let text = |pattern, joint: &Joint| swap(&a, &b, pattern, joint).unwrap_err().to_string();
    assert!(text(Pattern::OnCenter(inches(13.0)), &wall()).contains("from 2 to 12 in"));
    assert!(text(Pattern::OnCenter(inches(49.0)), &framing()).contains("49 in on center"));
    assert!(text(Pattern::OnCenter(Length::ZERO), &framing()).contains("Count again"));
    assert!(text(Pattern::Count(0), &framing()).contains("0 nails"));
    assert!(text(Pattern::Count(1001), &framing()).contains("1001 nails"));
    let gun = smooth("3 x .131");
    let unknown = swap(&gun, &a, Pattern::OnCenter(inches(6.0)), &wall());
    assert!(matches!(unknown, Err(FasteningError::HeadNotKnown { .. })));
}
