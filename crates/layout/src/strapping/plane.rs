//! The plane on which the backs of the strips lie: level, or the flat one that asks for the least shim.

use measure::{Length, Ratio};

use super::error::StrappingError;
use super::programme::{Constraint, UNKNOWNS, greatest};
use super::readings::{Crossing, Readings, length_of, parts};

/// What the ceiling is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Level: the lowest joist decides.
    Level,
    /// Flat, lowered least on the whole: the plane that no joist pokes below with the least shim in all.
    LeastTotal,
    /// Flat, lowered least anywhere: the plane that no joist pokes below whose greatest shim is least.
    LeastGreatest,
    /// Flat, along the best fit of all readings (least squares), lowered until no joist pokes below.
    BestFit,
}

/// The plane of the strips' backs, held in whole numbers: height = (`top` · (1, across, along)) / `bottom`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plane {
    top: [i128; 3],
    bottom: i128,
}

impl Plane {
    /// Its height over the string or the laser at a place across and along.
    #[must_use]
    pub fn height_at(&self, across: Length, along: Length) -> Length {
        length_of(self.scaled([parts(across), parts(along)]), self.bottom)
    }

    /// How much it rises in an inch across and in an inch along.
    #[must_use]
    pub fn slopes(&self) -> [Ratio; 2] {
        [self.top[1] as f64 / self.bottom as f64, self.top[2] as f64 / self.bottom as f64]
    }

    /// How far a height, in whole parts, stands over it at a place: in parts, as a quotient.
    pub(super) fn under(&self, height: i128, place: [i128; 2]) -> (i128, i128) {
        (height * self.bottom - self.scaled(place), self.bottom)
    }

    fn scaled(&self, [across, along]: [i128; 2]) -> i128 {
        self.top[0] + self.top[1] * across + self.top[2] * along
    }
}

/// Slopes are limited in whole parts of this many to one.
const SLOPE_PARTS: i128 = 1 << 20;
/// Steeper than any plane through readings that are taken would need to be; only a guard.
const STEEPEST: Ratio = 16.0;
/// Slopes of a best fit are held in parts of this many to one: finer than 1/4096 in over a mile.
const FIT_PARTS: i128 = 1 << 32;

/// A reading with its place, all in whole parts.
#[derive(Clone, Copy)]
struct Point {
    at: Crossing,
    place: [i128; 2],
    height: i128,
}

/// The plane for an aim over the readings of every joist that is not left out, and the crossings at which it touches.
///
/// Raising every reading raises the plane alike: heights are worked over the lowest one.
///
/// Readings that all stand on one joist or in one row tell of a slope along it alone; square to it the plane is level with
/// the string.
pub(super) fn plane(
    readings: &Readings,
    aim: Aim,
    steepest: Option<Ratio>,
    left_out: &[usize],
) -> Result<(Plane, Vec<Crossing>), StrappingError> {
    if aim == Aim::Level && !readings.level() {
        return Err(StrappingError::NotLevel);
    }
    let read = |at: Crossing| Some(Point { at, place: readings.place(at), height: parts(readings.height(at)?) });
    let kept = readings.crossings().filter(|at| !left_out.contains(&at.joist));
    let mut points: Vec<Point> = kept.filter_map(read).collect();
    let lowest = points.iter().map(|point| point.height).min().ok_or(StrappingError::NoReadings)?;
    points.iter_mut().for_each(|point| point.height -= lowest);
    let steepest = steepest.map_or(STEEPEST, |most| most.clamp(0.0, STEEPEST));
    let most = (steepest * SLOPE_PARTS as f64).floor() as i128;
    let mut plane = match aim {
        Aim::Level => Plane { top: [0; 3], bottom: 1 },
        Aim::LeastTotal => least_total(&points, slope_limits(&points, most)?)?,
        Aim::LeastGreatest => least_greatest(&points, slope_limits(&points, most)?)?,
        Aim::BestFit => best_fit(&points, slope_limits(&points, most)?),
    };
    let touches = points.iter().filter(|point| plane.under(point.height, point.place).0 == 0);
    let touches = touches.map(|point| point.at).collect();
    plane.top[0] += lowest * plane.bottom;
    Ok((plane, touches))
}

/// Limits of the two slopes, in slope parts: none across where all readings stand on one joist, none along where all
/// stand in one row.
fn slope_limits(points: &[Point], most: i128) -> Result<[i128; 2], StrappingError> {
    let Some(first) = points.first() else { return Err(StrappingError::NoReadings) };
    let differs = |axis: usize| points.iter().any(|point| point.place[axis] != first.place[axis]);
    let (across, along) = (differs(0), differs(1));
    let far = points.iter().find(|point| point.place != first.place);
    if let (true, true, Some(far)) = (across, along, far) {
        let [dx, dy] = [far.place[0] - first.place[0], far.place[1] - first.place[1]];
        let beside = |point: &Point| dx * (point.place[1] - first.place[1]) != dy * (point.place[0] - first.place[0]);
        if !points.iter().any(beside) {
            return Err(StrappingError::InOneLine);
        }
    }
    Ok([if across { most } else { 0 }, if along { most } else { 0 }])
}

/// `y` is (height at the corner, slope across, slope along, greatest shim with its sign turned). The first five
/// constraints are the limits of the slopes and a greatest shim of nothing or more.
fn limits([across, along]: [i128; 2]) -> Vec<Constraint> {
    let slope = |at: usize, sign: i128, most: i128| {
        let mut row = [0; UNKNOWNS];
        row[at] = sign * SLOPE_PARTS;
        Constraint { row, most }
    };
    let shim = Constraint { row: [0, 0, 0, 1], most: 0 };
    vec![slope(1, 1, across), slope(1, -1, across), slope(2, 1, along), slope(2, -1, along), shim]
}
const SHIM_LIMIT: usize = 4;
const LIMITS: usize = 5;

/// The plane stands no higher than the joist here.
fn below(point: &Point) -> Constraint {
    Constraint { row: [1, point.place[0], point.place[1], 0], most: point.height }
}

/// The joist stands no higher over the plane than the greatest shim.
fn near(point: &Point) -> Constraint {
    Constraint { row: [-1, -point.place[0], -point.place[1], 1], most: -point.height }
}

/// The sum of all heights of the plane is made greatest, which makes the sum of the shims least. From one reading alone,
/// and with both slopes at their limits, the search begins.
fn least_total(points: &[Point], slopes: [i128; 2]) -> Result<Plane, StrappingError> {
    let mut constraints = limits(slopes);
    constraints.extend(points.iter().map(below));
    let count = points.len() as i128;
    let sum = |axis: usize| points.iter().map(|point| point.place[axis]).sum::<i128>();
    let toward = [count, sum(0), sum(1), 1];
    let place = points.first().ok_or(StrappingError::NoReadings)?.place;
    let side = |axis: usize| 2 * axis + usize::from(toward[axis + 1] < count * place[axis]);
    solved(toward, &constraints, [LIMITS, side(0), side(1), SHIM_LIMIT])
}

/// The greatest shim is made least. The search begins with one reading on both sides, and both slopes at their limits.
fn least_greatest(points: &[Point], slopes: [i128; 2]) -> Result<Plane, StrappingError> {
    let mut constraints = limits(slopes);
    constraints.extend(points.iter().map(below));
    constraints.extend(points.iter().map(near));
    solved([0, 0, 0, 1], &constraints, [LIMITS, 0, 2, LIMITS + points.len()])
}

fn solved(
    toward: [i128; UNKNOWNS],
    constraints: &[Constraint],
    start: [usize; UNKNOWNS],
) -> Result<Plane, StrappingError> {
    let corner = greatest(toward, constraints, start).ok_or(StrappingError::NoPlane)?;
    let [height, across, along, _] = corner.top;
    Ok(Plane { top: [height, across, along], bottom: corner.bottom })
}

/// Slopes by least squares about the middle of the readings, held to their limits; then as high as no joist pokes below.
fn best_fit(points: &[Point], limits: [i128; 2]) -> Plane {
    let count = points.len() as f64;
    let mean = |value: &dyn Fn(&Point) -> i128| points.iter().map(value).sum::<i128>() as f64 / count;
    let (x, y, h) = (mean(&|point| point.place[0]), mean(&|point| point.place[1]), mean(&|point| point.height));
    let [mut xx, mut xy, mut yy, mut xh, mut yh] = [0.0; 5];
    for point in points {
        let (dx, dy, dh) = (point.place[0] as f64 - x, point.place[1] as f64 - y, point.height as f64 - h);
        xx += dx * dx;
        xy += dx * dy;
        yy += dy * dy;
        xh += dx * dh;
        yh += dy * dh;
    }
    let over = |top: f64, bottom: f64| if bottom > 0.0 { top / bottom } else { 0.0 };
    let both = xx * yy - xy * xy;
    let slopes = if both > 0.0 {
        [over(xh * yy - yh * xy, both), over(yh * xx - xh * xy, both)]
    } else {
        [over(xh, xx), over(yh, yy)]
    };
    let held = |axis: usize| {
        let most = limits[axis] as f64 / SLOPE_PARTS as f64;
        (slopes[axis].clamp(-most, most) * FIT_PARTS as f64).round() as i128
    };
    let (across, along) = (held(0), held(1));
    let room = |point: &Point| point.height * FIT_PARTS - across * point.place[0] - along * point.place[1];
    let height = points.iter().map(room).min().unwrap_or(0);
    Plane { top: [height, across, along], bottom: FIT_PARTS }
}
