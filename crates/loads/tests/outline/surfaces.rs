//! What holds for every shape: closed surfaces, shadows, room.

use loads::outline::{Along, Overhangs, Part, PartShape, PlanPoint, Point, Roof, RoofExtent, Side};
use measure::Length;

use crate::common::{ft, part, pitch, same};

/// Shapes of many sizes and of every kind of roof.
fn shapes() -> Vec<PartShape> {
    let mut shapes = Vec::new();
    for (length, width) in [(40.0, 28.0), (20.0, 50.5), (24.0, 24.0), (31.3, 17.7)] {
        for (first, second) in [(6.0, 6.0), (3.0, 9.5), (12.0, 4.25), (1.0, 24.0)] {
            let pitches = [pitch(first), pitch(second)];
            let [lower, upper] = if first > second { pitches } else { [pitch(second), pitch(first * 0.9)] };
            for ridge in [Along::Length, Along::Width] {
                shapes.push(part(length, width, 10.0, Roof::Gable { ridge, pitches }));
                shapes.push(part(length, width, 18.5, Roof::Gambrel { ridge, lower, upper, lower_run: ft(3.7) }));
            }
            for low_side in Side::ALL {
                shapes.push(part(length, width, 9.25, Roof::Shed { low_side, pitch: pitch(first) }));
            }
            let [front_and_back, left_and_right] = pitches;
            shapes.push(part(length, width, 9.0, Roof::Hip { front_and_back, left_and_right }));
        }
        shapes.push(part(length, width, 12.0, Roof::Flat));
    }
    let moved = |mut part: Part| {
        part.at = PlanPoint::new(ft(-13.7), ft(101.3));
        part.overhangs = Overhangs { eave: ft(1.5), rake: ft(0.75) };
        part.shape().unwrap()
    };
    shapes.into_iter().map(moved).collect()
}

/// The directed area of a polygon by its corners, square feet: half the sum of the products of its edges.
fn directed_area(corners: &[Point]) -> [f64; 3] {
    let feet = |point: &Point| [point.x.feet(), point.y.feet(), point.z.feet()];
    let mut sum = [0.0; 3];
    for (index, here) in corners.iter().enumerate() {
        let (a, b) = (feet(here), feet(&corners[(index + 1) % corners.len()]));
        for (axis, sum) in sum.iter_mut().enumerate() {
            let (next, last) = ((axis + 1) % 3, (axis + 2) % 3);
            *sum += 0.5 * (a[next] * b[last] - a[last] * b[next]);
        }
    }
    sum
}

/// A body is closed when the directed areas of its faces add up to nothing.
#[test]
fn walls_roof_and_ground_close_the_body() {
    for shape in shapes() {
        let ground: Vec<_> = shape.plan_corners().iter().rev().map(|at| at.at_height(ft(0.0))).collect();
        let mut faces = vec![ground];
        faces.extend(Side::ALL.map(|side| shape.wall(side).corners));
        faces.extend(shape.roof_faces(RoofExtent::Walls).into_iter().map(|face| face.corners));
        for axis in 0..3 {
            let sum: f64 = faces.iter().map(|corners| directed_area(corners)[axis]).sum();
            assert!(sum.abs() < 1e-7, "axis {axis}: {sum} of {:?}", shape.part());
        }
    }
}

/// What is reported of each face is what its corners give, and its corners are seen counter-clockwise from outside.
#[test]
fn areas_are_those_of_the_corners() {
    for shape in shapes() {
        for face in shape.roof_faces(RoofExtent::Overhangs) {
            let [x, y, z] = directed_area(&face.corners);
            same(z, face.plan_area.square_feet(), "plan");
            same((x * x + y * y + z * z).sqrt(), face.area.square_feet(), "slope");
            let outward = match face.falls_to {
                Side::Front => -y,
                Side::Right => x,
                Side::Back => y,
                Side::Left => -x,
            };
            assert!((outward - face.upright_area.square_feet()).abs() < 1e-7, "upright");
        }
        for side in Side::ALL {
            let wall = shape.wall(side);
            let [x, y, z] = directed_area(&wall.corners);
            let outward = [-y, x, y, -x][side as usize];
            assert!((outward - wall.area.square_feet()).abs() < 1e-7 && z.abs() < 1e-7);
        }
    }
}

/// What wind sees from one side it sees from the other, and it is the area inside the upper edge.
#[test]
fn a_body_casts_the_same_shadow_both_ways() {
    for shape in shapes() {
        for side in Side::ALL {
            let seen = |side| shape.projection(side).wall + shape.projection(side).roof;
            let edge = shape.seen_from(side).area_above(ft(0.0));
            same(seen(side).square_feet(), seen(side.opposite()).square_feet(), "both ways");
            same(edge.square_feet(), seen(side).square_feet(), "inside the edge");
        }
    }
}

/// The room under the roof is what the heights on a grid give. A cell is exact but where a line of the roof crosses it:
/// fewer than one cell in ten, each off by less than half a cell's rise.
#[test]
fn the_room_is_what_the_heights_give() {
    const CELLS: i32 = 60;
    for shape in shapes() {
        let Part { at, length, width, .. } = *shape.part();
        let mut mean = 0.0;
        for (i, j) in (0..CELLS).flat_map(|i| (0..CELLS).map(move |j| (i, j))) {
            let share = |cell: i32| (f64::from(cell) + 0.5) / f64::from(CELLS);
            let point = PlanPoint::new(at.x + length * share(i), at.y + width * share(j));
            mean += shape.height_at(point).unwrap().feet() / f64::from(CELLS * CELLS);
        }
        let found = shape.volume().cubic_inches() / 1728.0 / shape.plan_area().square_feet();
        let step = shape.steepest_pitch().rise_in_twelve() / 12.0 * length.max(width).feet() / f64::from(CELLS);
        assert!((found - mean).abs() <= 0.5 * step * 0.1 + 1e-9, "{found} against {mean}: {:?}", shape.part());
    }
}

#[test]
fn the_mean_roof_height_lies_between_eave_and_ridge() {
    for shape in shapes() {
        let height = shape.mean_roof_height();
        assert!(shape.eave_height() <= height && height <= shape.ridge_height(), "{:?}", shape.part());
        let zone = shape.end_zone();
        assert!(zone.edge_strip >= ft(3.0) && zone.edge_strip * 2.0 <= shape.least_plan_dimension());
    }
}

/// Every line of the roof lies on its surface.
#[test]
fn lines_lie_on_the_roof() {
    for shape in shapes() {
        for line in shape.roof_lines(RoofExtent::Walls) {
            for end in [line.from, line.to] {
                // A corner may stand outside by the last bit; it is moved in by a thousandth of an inch.
                let Part { at, length, width, .. } = *shape.part();
                let bit = Length::from_inches(1e-3);
                let inside = PlanPoint::new(
                    end.x.max(at.x + bit).min(at.x + length - bit),
                    end.y.max(at.y + bit).min(at.y + width - bit),
                );
                let height = shape.height_at(inside).unwrap();
                assert!((height - end.z).abs() < Length::from_inches(1e-2), "{line:?}");
            }
        }
    }
}
