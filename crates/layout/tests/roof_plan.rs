//! Roof plans worked by hand, and random ones that must close.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::roof::{
    Corner, Falls, LineKind, Meeting, PlanPoint, RidgeRuns, RoofError, RoofLine, Side, Sides, Wing, WingEnd, roof_plan,
};
use measure::{Angle, Length, Slope};
use proptest::prelude::*;

/// Lines are found to a billionth of an inch; sums of a few dozen of them are far within this, in feet.
const CLOSE: f64 = 1e-6;

fn pitch(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

fn point(x: f64, y: f64) -> PlanPoint {
    PlanPoint { x: Length::from_feet(x), y: Length::from_feet(y) }
}

fn hips(rise: f64) -> [WingEnd; 2] {
    [WingEnd::Hip(pitch(rise)); 2]
}

fn wing(from: [f64; 2], to: [f64; 2], ridge: RidgeRuns, rise: f64, ends: [WingEnd; 2]) -> Wing {
    Wing { from: point(from[0], from[1]), to: point(to[0], to[1]), ridge, pitch: pitch(rise), ends }
}

fn plan(wings: &[Wing]) -> Vec<RoofLine> {
    roof_plan(wings).expect("a plan")
}

fn of(lines: &[RoofLine], kind: LineKind) -> Vec<&RoofLine> {
    lines.iter().filter(|line| line.kind == kind).collect()
}

/// Level lengths of one kind in feet, shortest first.
fn runs(lines: &[RoofLine], kind: LineKind) -> Vec<f64> {
    let mut runs: Vec<f64> = of(lines, kind).iter().map(|line| line.run().feet()).collect();
    runs.sort_by(f64::total_cmp);
    runs
}

#[track_caller]
fn same(found: &[f64], expected: &[f64]) {
    let close = found.len() == expected.len() && found.iter().zip(expected).all(|(a, b)| (a - b).abs() < CLOSE);
    assert!(close, "{found:?} against {expected:?}");
}

/// By hand: 40 x 24 ft at 6 in 12, hips all round: ridge 16 ft long and 6 ft up, hips 12 root 2 level.
#[test]
fn a_hip_roof() {
    let lines = plan(&[wing([0.0, 0.0], [40.0, 24.0], RidgeRuns::Across, 6.0, hips(6.0))]);
    same(&runs(&lines, LineKind::Ridge), &[16.0]);
    same(&runs(&lines, LineKind::Hip), &[12.0 * 2.0_f64.sqrt(); 4]);
    same(&runs(&lines, LineKind::Eave), &[24.0, 24.0, 40.0, 40.0]);
    assert_eq!(lines.len(), 9);
    let ridge = of(&lines, LineKind::Ridge)[0];
    same(&ridge.ends.map(|end| end.height.feet()), &[6.0, 6.0]);
    let mut falls = ridge.planes.map(|plane| plane.expect("a plane").falls);
    falls.sort();
    assert_eq!(falls, [Falls::Down, Falls::Up]);
    // A hip's length is that of the two planes over its corner.
    let pitches = Sides { a: pitch(6.0), b: pitch(6.0) };
    let corner = Corner::new(Meeting::Hip, pitches, Angle::from_degrees(90.0)).expect("a corner");
    let length = corner.line_length(Side::A, Length::from_feet(12.0)).feet();
    for hip in of(&lines, LineKind::Hip) {
        same(&[hip.length().feet(), hip.ends[0].height.feet()], &[length, 0.0]);
    }
}

/// By hand: a gable roof, and one with unequal hips: 6 in 12 sides and 12 in 12 ends bring the ridge to 28 ft.
#[test]
fn gables_and_steep_ends() {
    let gable = plan(&[wing([0.0, 0.0], [24.0, 40.0], RidgeRuns::UpAndDown, 6.0, [WingEnd::Gable; 2])]);
    same(&runs(&gable, LineKind::Ridge), &[40.0]);
    same(&runs(&gable, LineKind::Rake), &[12.0; 4]);
    same(&runs(&gable, LineKind::Eave), &[40.0, 40.0]);
    assert_eq!(gable.len(), 7);
    let steep = plan(&[wing([0.0, 0.0], [40.0, 24.0], RidgeRuns::Across, 6.0, hips(12.0))]);
    same(&runs(&steep, LineKind::Ridge), &[28.0]);
    same(&runs(&steep, LineKind::Hip), &[180.0_f64.sqrt(); 4]);
}

/// By hand: an L of two wings 24 ft wide: five outside corners, one inside.
#[test]
fn an_l() {
    let across = wing([0.0, 0.0], [60.0, 24.0], RidgeRuns::Across, 6.0, hips(6.0));
    let up = wing([0.0, 0.0], [24.0, 50.0], RidgeRuns::UpAndDown, 6.0, hips(6.0));
    let lines = plan(&[across, up]);
    let diagonal = 12.0 * 2.0_f64.sqrt();
    same(&runs(&lines, LineKind::Hip), &[diagonal; 5]);
    same(&runs(&lines, LineKind::Valley), &[diagonal]);
    same(&runs(&lines, LineKind::Ridge), &[26.0, 36.0]);
    same(&runs(&lines, LineKind::Eave), &[24.0, 24.0, 26.0, 36.0, 50.0, 60.0]);
}

/// By hand: a gabled wing 12 ft wide and 10 ft long on a gabled main roof 24 ft wide, both 6 in 12: its ridge runs 6 ft
/// in, where two valleys meet.
#[test]
fn a_t() {
    let main = wing([0.0, 0.0], [40.0, 24.0], RidgeRuns::Across, 6.0, [WingEnd::Gable; 2]);
    let small = wing([14.0, -10.0], [26.0, 0.0], RidgeRuns::UpAndDown, 6.0, [WingEnd::Gable, WingEnd::Into]);
    let lines = plan(&[main, small]);
    same(&runs(&lines, LineKind::Valley), &[6.0 * 2.0_f64.sqrt(); 2]);
    same(&runs(&lines, LineKind::Ridge), &[16.0, 40.0]);
    same(&runs(&lines, LineKind::Eave), &[10.0, 10.0, 14.0, 14.0, 40.0]);
    same(&runs(&lines, LineKind::Rake), &[6.0, 6.0, 12.0, 12.0, 12.0, 12.0]);
    assert_eq!(of(&lines, LineKind::Step).len(), 0);
    // Steeper, its valleys are those of an overlay of the same pitches.
    let steep = Wing { pitch: pitch(12.0), ..small };
    let lines = plan(&[main, steep]);
    let pitches = Sides { a: pitch(12.0), b: pitch(6.0) };
    let corner = Corner::new(Meeting::Valley, pitches, Angle::from_degrees(90.0)).expect("a corner");
    let length = corner.line_length(Side::A, Length::from_feet(6.0)).feet();
    for valley in of(&lines, LineKind::Valley) {
        same(&[valley.length().feet(), valley.ends[1].height.feet()], &[length, 6.0]);
    }
    // Steeper still, it comes through the main ridge and ends in a step there.
    let through = plan(&[main, Wing { pitch: pitch(15.0), ..small }]);
    same(&runs(&through, LineKind::Ridge).iter().rev().take(1).copied().collect::<Vec<_>>(), &[22.0]);
    assert!(!of(&through, LineKind::Step).is_empty());
}

/// A line that two planes would make, were they wider, passes two thousandths of an inch beside a corner of this L. Looked at too
/// far to the side, its edges there were lost.
#[test]
fn an_l_with_a_line_close_to_its_corner() {
    let (long, other, out) = (79.939_550_084_818_58, 21.569_006_718_139_576, 58.370_676_522_686_075);
    let across = wing([0.0, 0.0], [long, 12.0], RidgeRuns::Across, 2.0, hips(2.0));
    let up = wing([0.0, 0.0], [other, out], RidgeRuns::UpAndDown, 2.0, hips(2.0));
    let lines = plan(&[across, up]);
    same(&runs(&lines, LineKind::Eave), &[12.0, other, out - 12.0, long - other, out, long]);
    assert_eq!(of(&lines, LineKind::Rake).len(), 0);
}

#[test]
fn plans_that_cannot_be_are_refused_in_sentences() {
    let main = wing([0.0, 0.0], [40.0, 24.0], RidgeRuns::Across, 6.0, [WingEnd::Gable; 2]);
    let refused = [
        roof_plan(&[]),
        roof_plan(&[main; 13]),
        roof_plan(&[Wing { to: point(0.0, 24.0), ..main }]),
        roof_plan(&[Wing { pitch: pitch(0.0), ..main }]),
        roof_plan(&[Wing { ends: [WingEnd::Gable, WingEnd::Into], ..main }]),
        roof_plan(&[Wing { ends: hips(80.0), ..main }]),
    ];
    for refused in refused {
        let text = refused.expect_err("refused").to_string();
        assert!(text.ends_with('.') && text.contains("ive "), "{text}");
    }
    let alone = roof_plan(&[main, Wing { ends: [WingEnd::Into; 2], ..main }]);
    assert!(matches!(alone, Err(RoofError::IntoNothing { wing: 2 })));
}

fn perimeter(lines: &[RoofLine]) -> f64 {
    let edges = lines.iter().filter(|line| matches!(line.kind, LineKind::Eave | LineKind::Rake));
    edges.map(|line| line.run().feet()).sum()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    /// Over any L the edges of the roof are the edges of the house, hips and valleys of one pitch run at 45 degrees,
    /// and a plan that is mirrored has the same lines.
    #[test]
    fn any_l_closes(
        long in 30.0_f64..80.0, width in 12.0_f64..28.0, other in 12.0_f64..28.0, out in 30.0_f64..60.0, rise in 2.0_f64..18.0,
    ) {
        let across = wing([0.0, 0.0], [long, width], RidgeRuns::Across, rise, hips(rise));
        let up = wing([0.0, 0.0], [other, out], RidgeRuns::UpAndDown, rise, hips(rise));
        let lines = plan(&[across, up]);
        prop_assert!((perimeter(&lines) - 2.0 * (long + out)).abs() < CLOSE);
        for line in lines.iter().filter(|line| matches!(line.kind, LineKind::Hip | LineKind::Valley)) {
            let [from, to] = line.ends.map(|end| end.at);
            prop_assert!(((to.x - from.x).abs() - (to.y - from.y).abs()).inches().abs() < CLOSE);
        }
        prop_assert!(of(&lines, LineKind::Hip).len() >= 5);
        prop_assert!(of(&lines, LineKind::Step).is_empty() && of(&lines, LineKind::Rake).is_empty());
        let ridge = lines.iter().flat_map(|line| line.ends).map(|end| end.height.feet()).fold(0.0, f64::max);
        prop_assert!((ridge - width.max(other) / 2.0 * rise / 12.0).abs() < CLOSE);
        let mirror = |wing: Wing| Wing {
            from: PlanPoint { x: -wing.to.x, ..wing.from },
            to: PlanPoint { x: -wing.from.x, ..wing.to },
            ..wing
        };
        let mirrored = plan(&[mirror(across), mirror(up)]);
        for kind in [LineKind::Ridge, LineKind::Hip, LineKind::Valley, LineKind::Eave] {
            let (here, there) = (runs(&lines, kind), runs(&mirrored, kind));
            prop_assert_eq!(here.len(), there.len());
            prop_assert!(here.iter().zip(&there).all(|(a, b)| (a - b).abs() < CLOSE));
        }
    }
}
