//! A thousand random roofs: assembled in space, every stick ends in the planes that it must.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::roof::{
    Common, Corner, Edge, Face, Hip, HipAnswer, HipHead, HipSeat, Jacks, Meeting, Ridge, RoofError, Side, Sides, Spot,
    Start, Stick, Tail, TopEdge, common, hip, jacks,
};
use measure::{Angle, Length, Slope};
use proptest::prelude::*;

/// Lengths to 600 in carry some ten digits after the point; what is left after a dozen products is far below this.
const CLOSE: f64 = 1e-7;

type Point = [f64; 3];

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// A roof over a corner, as it is drawn.
#[derive(Clone, Copy, Debug)]
struct Roof {
    meeting: Meeting,
    a: f64,
    b: f64,
    degrees: f64,
    run: f64,
    overhang: f64,
    thickness: f64,
    spacing: f64,
}

fn any_roof() -> impl Strategy<Value = Roof> {
    let meetings = prop_oneof![Just(Meeting::Hip), Just(Meeting::Valley)];
    let sizes = (60.0_f64..300.0, 0.0_f64..30.0, 1.0_f64..5.0, 10.0_f64..30.0);
    (meetings, 2.0_f64..20.0, 2.0_f64..20.0, 45.0_f64..150.0, sizes).prop_map(|(meeting, a, b, degrees, sizes)| {
        let (run, overhang, thickness, spacing) = sizes;
        Roof { meeting, a, b, degrees, run, overhang, thickness, spacing }
    })
}

impl Roof {
    fn corner(&self) -> Option<Corner> {
        let pitches = Sides { a: Slope::from_rise_in_twelve(self.a), b: Slope::from_rise_in_twelve(self.b) };
        Corner::new(self.meeting, pitches, Angle::from_degrees(self.degrees)).ok()
    }

    fn common(&self, side: Side) -> Common {
        let rise = if side == Side::A { self.a } else { self.b };
        let run = if side == Side::A { self.run } else { self.run * self.a / self.b };
        Common {
            pitch: Slope::from_rise_in_twelve(rise),
            run: inches(run),
            overhang: inches(self.overhang),
            thickness: inches(1.5),
            depth: inches(9.25),
            seat: inches(2.0),
            ridge: Ridge::Board { thickness: inches(1.5), depth: inches(11.25) },
            tail: Tail::Plumb,
        }
    }

    /// Plan direction of an eave, and square to it under the roof; written out from the angle alone.
    fn eave(&self, side: Side) -> ([f64; 2], [f64; 2]) {
        let angle = Angle::from_degrees(self.degrees);
        match side {
            Side::A => ([1.0, 0.0], [0.0, 1.0]),
            Side::B => ([angle.cos(), angle.sin()], [angle.sin(), -angle.cos()]),
        }
    }

    fn slope(&self, side: Side) -> f64 {
        if side == Side::A { self.a / 12.0 } else { self.b / 12.0 }
    }
}

/// Where a stick lies: the point of a mark, from where the middle of its top edge is at that mark's distance.
struct Laid<'a> {
    stick: &'a Stick,
    /// Middle of the top edge at the heel or at another known mark, and that mark's distance from the upper end.
    known: (Point, Length),
    /// Direction in plan and rise for one of level run, upward.
    plan: [f64; 2],
    rise: f64,
}

impl Laid<'_> {
    fn point(&self, spot: Spot, edge: Edge, face: Face) -> Point {
        let at = self.stick.at(spot, edge, face).expect("a mark");
        let stretch = (1.0 + self.rise * self.rise).sqrt();
        let up = (self.known.1 - at).inches() / stretch;
        // A depth square to the edge goes down and forward on an upward stick.
        let depth = if edge == Edge::Bottom { self.stick.depth.inches() / stretch } else { 0.0 };
        let half = self.stick.thickness.inches() / 2.0;
        let right = match face {
            Face::Left => -half,
            Face::Middle => 0.0,
            Face::Right => half,
        };
        let level = up + depth * self.rise;
        [
            self.known.0[0] + self.plan[0] * level + self.plan[1] * right,
            self.known.0[1] + self.plan[1] * level - self.plan[0] * right,
            self.known.0[2] + self.rise * up - depth,
        ]
    }

    fn every(&self, spot: Spot) -> Vec<(Face, Point)> {
        let faces = Face::ALL.into_iter().flat_map(|face| Edge::BOTH.map(|edge| (face, edge)));
        faces.map(|(face, edge)| (face, self.point(spot, edge, face))).collect()
    }
}

fn across(direction: [f64; 2], point: Point) -> f64 {
    direction[0] * point[0] + direction[1] * point[1]
}

fn jacks_of(roof: &Roof, corner: Corner, side: Side) -> Jacks {
    Jacks {
        corner,
        side,
        common: roof.common(side),
        line_thickness: inches(roof.thickness),
        spacing: inches(roof.spacing),
        start: Start::Corner,
    }
}

/// None where a steep plane and a wide overhang bring the line so far off the corner that it meets the ridge before the
/// wall: some roofs in a thousand.
fn hip_of(roof: &Roof, corner: Corner, head: HipHead, top: TopEdge) -> Option<HipAnswer> {
    let overhang = inches(roof.overhang);
    let above = inches(7.0);
    let given = Hip {
        corner,
        run_a: inches(roof.run),
        overhangs: Sides { a: overhang, b: overhang },
        above_plate: Sides { a: above, b: above },
        thickness: inches(roof.thickness),
        depth: inches(11.25),
        head,
        top,
    };
    match hip(&given) {
        Err(RoofError::NothingLeft { .. }) => None,
        found => Some(found.expect("a hip")),
    }
}

/// Plan direction of the hip or valley, from the heights of the planes alone: along it both rise alike.
fn line(roof: &Roof) -> ([f64; 2], f64) {
    let (_, a) = roof.eave(Side::A);
    let (_, b) = roof.eave(Side::B);
    let (ma, mb) = (roof.slope(Side::A), roof.slope(Side::B));
    let same = [ma * a[0] - mb * b[0], ma * a[1] - mb * b[1]];
    let length = (same[0] * same[0] + same[1] * same[1]).sqrt();
    let mut plan = [same[1] / length, -same[0] / length];
    if plan[0] * a[0] + plan[1] * a[1] < 0.0 {
        plan = [-plan[0], -plan[1]];
    }
    (plan, ma * (plan[0] * a[0] + plan[1] * a[1]))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    /// Every jack: head, heel, seat and tail lie in the face of the hip or valley, the wall, the plate, the fascia or
    /// the ridge.
    #[test]
    fn jacks_end_in_their_planes(roof in any_roof()) {
        let Some(corner) = roof.corner() else { return Ok(()) };
        let (plan, _) = line(&roof);
        for side in Side::BOTH {
            prop_assume!(corner.plan_angle(side).degrees() < 85.0);
            let found = jacks(&jacks_of(&roof, corner, side)).expect("jacks");
            let above = found.common.birdsmouth.height_above_plate.inches();
            let ((eave, inward), slope) = (roof.eave(side), roof.slope(side));
            let square = [-plan[1], plan[0]];
            for jack in &found.jacks {
                let along = jack.along_eave.inches();
                let start = [eave[0] * along, eave[1] * along, above];
                let hip = roof.meeting == Meeting::Hip;
                let known = if hip {
                    (start, jack.stick.at(Spot::Heel, Edge::Top, Face::Middle).expect("a heel"))
                } else {
                    let run = roof.common(side).run.inches() - 0.75;
                    let head = [start[0] + inward[0] * run, start[1] + inward[1] * run, above + slope * run];
                    (head, jack.stick.at(Spot::Head, Edge::Top, Face::Middle).expect("a head"))
                };
                let laid = Laid { stick: &jack.stick, known, plan: inward, rise: slope };
                let (at_line, at_ridge) = if hip { (Spot::Head, None) } else { (Spot::Tail, Some(Spot::Head)) };
                for (_, point) in laid.every(at_line) {
                    prop_assert!((across(square, point).abs() - roof.thickness / 2.0).abs() < CLOSE, "{:?}", point);
                }
                if let Some(ridge) = at_ridge {
                    for (_, point) in laid.every(ridge) {
                        prop_assert!((across(inward, point) - roof.common(side).run.inches() + 0.75).abs() < CLOSE);
                    }
                    continue;
                }
                for (_, point) in laid.every(Spot::Heel) {
                    prop_assert!(across(inward, point).abs() < CLOSE);
                }
                for (_, point) in laid.every(Spot::Tail) {
                    prop_assert!((across(inward, point) + roof.overhang).abs() < CLOSE);
                }
                for face in Face::ALL {
                    prop_assert!(laid.point(Spot::Seat, Edge::Bottom, face)[2].abs() < CLOSE);
                }
            }
            // Neighbours differ by the common difference, whichever point is measured.
            for pair in found.jacks.windows(2) {
                for step in [pair[1].centre - pair[0].centre, pair[1].long_point - pair[0].long_point] {
                    prop_assert!((step.abs() - found.common_difference).inches().abs() < CLOSE * 100.0);
                }
            }
        }
    }

    /// Every hip and valley: its head lies on the ridge or between the commons, its tail on the fascia, its seat on the
    /// plate, and its top corners in or under the planes.
    #[test]
    fn hips_end_in_their_planes(roof in any_roof(), side_a: bool, slid: bool) {
        let Some(corner) = roof.corner() else { return Ok(()) };
        let side = if side_a { Side::A } else { Side::B };
        prop_assume!(Side::BOTH.iter().all(|side| corner.plan_angle(*side).degrees() > 5.0));
        let head = HipHead::Ridge { along: side, thickness: inches(1.75) };
        let top = if slid { TopEdge::SquareAndSlid } else { TopEdge::Square };
        let Some(found) = hip_of(&roof, corner, head, top) else { return Ok(()) };
        let (plan, rise) = line(&roof);
        let heel = found.tail_run.inches();
        let off = found.toward_b.inches();
        let start = [plan[0] * heel - plan[1] * off, plan[1] * heel + plan[0] * off, rise * heel - found.drop.inches()];
        let known = (start, found.stick.at(Spot::Heel, Edge::Top, Face::Middle).expect("a heel"));
        let laid = Laid { stick: &found.stick, known, plan, rise };
        let whole = (found.run + found.tail_run).inches();
        let (_, inward) = roof.eave(side);
        let ridge = whole * (plan[0] * inward[0] + plan[1] * inward[1]) - 0.875;
        for (_, point) in laid.every(Spot::Head) {
            prop_assert!((across(inward, point) - ridge).abs() < CLOSE);
        }
        // On each face the tail ends on one of the two fascias; a hip stands past neither, a valley not past both.
        for (_, point) in laid.every(Spot::Tail) {
            let past = Side::BOTH.map(|side| across(roof.eave(side).1, point));
            let edge = if roof.meeting == Meeting::Hip { past[0].min(past[1]) } else { past[0].max(past[1]) };
            prop_assert!(edge.abs() < CLOSE, "{past:?}");
        }
        // Of the two cheeks of the tail, that of a plane is on the face of that plane.
        for cheek in found.stick.cuts.iter().filter(|cut| matches!(cut.spot, Spot::Tail | Spot::SecondTail)) {
            let of = if (cheek.face == Face::Right) == (roof.meeting == Meeting::Hip) { Side::A } else { Side::B };
            prop_assert!((cheek.cut.tilt - corner.cheek(of).tilt).degrees().abs() < CLOSE, "{cheek:?}");
        }
        if let HipSeat::Cut { seat, .. } = found.seat {
            let heel = laid.point(Spot::Heel, Edge::Bottom, Face::Middle);
            let inner = laid.point(Spot::Seat, Edge::Bottom, Face::Middle);
            let level = ((inner[0] - heel[0]) * plan[0] + (inner[1] - heel[1]) * plan[1]).abs();
            prop_assert!((level - seat.inches()).abs() < CLOSE * 10.0, "{level} {}", seat.inches());
            prop_assert!((inner[2] - (start[2] - found.above_plate.inches())).abs() < CLOSE);
        }
        // What bears on the wall: the plane of that side is 7 in above its plate there.
        prop_assert!((found.above_plate.inches() + found.drop.inches() - 7.0).abs() < CLOSE);
        let corners = [Face::Left, Face::Right].map(|face| laid.point(Spot::Head, Edge::Top, face));
        let low = corners.map(|point| {
            let heights = Side::BOTH.map(|side| roof.slope(side) * across(roof.eave(side).1, point));
            let rules = if roof.meeting == Meeting::Hip { f64::min } else { f64::max };
            let roof_top = rules(heights[0], heights[1]);
            roof_top - point[2]
        });
        prop_assert!(low.iter().all(|low| *low > -CLOSE), "nothing stands out of the roof: {low:?}");
        if roof.meeting == Meeting::Hip {
            prop_assert!(low.iter().any(|low| low.abs() < CLOSE), "a corner touches: {low:?}");
            prop_assert!(!slid || low.iter().all(|low| low.abs() < CLOSE), "slid, both touch: {low:?}");
        }
    }

    /// Between two commons both cheeks are flush with a common's face or clear of it.
    #[test]
    fn hips_fit_between_commons(roof in any_roof(), commons in 1.0_f64..4.0) {
        let Some(corner) = roof.corner() else { return Ok(()) };
        prop_assume!(Side::BOTH.iter().all(|side| (5.0..85.0).contains(&corner.plan_angle(*side).degrees())));
        let head = HipHead::BetweenCommons { thickness: inches(commons) };
        let Some(found) = hip_of(&roof, corner, head, TopEdge::Backed) else { return Ok(()) };
        let (plan, rise) = line(&roof);
        let heel = found.tail_run.inches();
        let start = [plan[0] * heel, plan[1] * heel, rise * heel - found.drop.inches()];
        let known = (start, found.stick.at(Spot::Heel, Edge::Top, Face::Middle).expect("a heel"));
        let laid = Laid { stick: &found.stick, known, plan, rise };
        let whole = (found.run + found.tail_run).inches();
        for (_, point) in laid.every(Spot::Head) {
            let left = Side::BOTH.map(|side| {
                let eave = roof.eave(side).0;
                whole * (plan[0] * eave[0] + plan[1] * eave[1]) - commons / 2.0 - across(eave, point)
            });
            prop_assert!(left[0].min(left[1]).abs() < CLOSE, "{left:?}");
        }
        // The common of a plane stands on the face of that plane, and the cheek against it is tilted by the jack's own angle.
        for cheek in found.stick.cuts.iter().filter(|cut| matches!(cut.spot, Spot::Head | Spot::SecondHead)) {
            let of = if (cheek.face == Face::Right) == (roof.meeting == Meeting::Hip) { Side::A } else { Side::B };
            let tilt = corner.plan_angle(if roof.meeting == Meeting::Hip { of } else { of.other() });
            prop_assert!((cheek.cut.tilt - tilt).degrees().abs() < CLOSE, "{cheek:?}");
        }
    }

    /// Commons: the head on the ridge, the heel on the wall, the seat on the plate, the tail on the fascia.
    #[test]
    fn commons_end_in_their_planes(roof in any_roof()) {
        let given = roof.common(Side::A);
        let found = common(&given).expect("a rafter");
        let above = found.birdsmouth.height_above_plate.inches();
        let known = ([0.0, 0.0, above], found.stick.at(Spot::Heel, Edge::Top, Face::Middle).expect("a heel"));
        let laid = Laid { stick: &found.stick, known, plan: [0.0, 1.0], rise: roof.a / 12.0 };
        for (spot, run) in [(Spot::Head, roof.run - 0.75), (Spot::Heel, 0.0), (Spot::Tail, -roof.overhang)] {
            for (_, point) in laid.every(spot) {
                prop_assert!((point[1] - run).abs() < CLOSE);
            }
        }
        let seat = laid.point(Spot::Seat, Edge::Bottom, Face::Right);
        prop_assert!(seat[2].abs() < CLOSE && (seat[1] - 2.0).abs() < CLOSE);
        let top = laid.point(Spot::Head, Edge::Top, Face::Left)[2];
        prop_assert!((top - found.ridge.top.expect("a ridge").inches()).abs() < CLOSE);
    }

    /// A and B in each other's place mirror every angle; the plan angles add to the corner; drop times the cosine of
    /// the slope is the depth of backing; the square of the hip is that of its run and of its rise.
    #[test]
    fn corners_hold_together(roof in any_roof()) {
        let Some(corner) = roof.corner() else { return Ok(()) };
        let mirrored = corner.swapped().expect("a corner");
        let thick = inches(roof.thickness);
        let (here, there) = (corner.drop_and_slide(thick), mirrored.drop_and_slide(thick));
        prop_assert!((here.drop - there.drop).inches().abs() < CLOSE);
        prop_assert!((here.toward_b + there.toward_b).inches().abs() < CLOSE);
        let sum = corner.plan_angle(Side::A) + corner.plan_angle(Side::B);
        prop_assert!((sum.degrees() - roof.degrees).abs() < CLOSE);
        for side in Side::BOTH {
            for (one, other) in [
                (corner.plan_angle(side), mirrored.plan_angle(side.other())),
                (corner.backing(side), mirrored.backing(side.other())),
                (corner.jack(side).tilt, mirrored.jack(side.other()).tilt),
                (corner.cheek_on_top(side).from_square, mirrored.cheek_on_top(side.other()).from_square),
                (corner.purlin(side).from_square, mirrored.purlin(side.other()).from_square),
            ] {
                prop_assert!((one - other).degrees().abs() < CLOSE);
            }
            let flat = corner.drop(thick).of(side) * corner.slope().cos();
            prop_assert!((flat - corner.backing_depth(thick).of(side)).inches().abs() < CLOSE);
        }
        let run = corner.run(Side::A, inches(roof.run)).inches();
        let (rise, length) = (roof.run * roof.a / 12.0, corner.line_length(Side::A, inches(roof.run)).inches());
        prop_assert!((length - (run * run + rise * rise).sqrt()).abs() < CLOSE);
        let both = corner.sheathing_mitre() * 2.0 + corner.between_planes();
        prop_assert!((both.degrees() - 180.0).abs() < CLOSE);
    }

    /// As two pitches meet, an unequal corner becomes the equal one, whose line halves the corner; and lengths scale.
    #[test]
    fn unequal_becomes_equal(rise in 2.0_f64..20.0, degrees in 45.0_f64..150.0, by in 1.0_f64..10.0) {
        let roof = |b| Roof {
            meeting: Meeting::Hip, a: rise, b, degrees, run: 144.0, overhang: 12.0, thickness: 1.5, spacing: 16.0,
        };
        let equal = roof(rise).corner().expect("a corner");
        prop_assert!((equal.plan_angle(Side::A).degrees() - degrees / 2.0).abs() < CLOSE);
        let mut before = f64::INFINITY;
        for apart in [1e-1, 1e-3, 1e-5] {
            let Some(near) = roof(rise + apart).corner() else { continue };
            let off = (near.plan_angle(Side::A) - equal.plan_angle(Side::A)).degrees().abs();
            prop_assert!(off < before && off < 60.0 * apart, "{off} at {apart}");
            before = off;
        }
        let length = |factor: f64| equal.line_length(Side::B, inches(144.0 * factor)).inches();
        prop_assert!((length(by) - by * length(1.0)).abs() < CLOSE * by);
    }
}
