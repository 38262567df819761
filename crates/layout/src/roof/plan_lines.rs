//! From the planes over wings to the lines of the roof that they make together.
//!
//! Every line of the roof lies on the line where two planes are level with each other, or on the edge of a wing. Each
//! of those is cut where others cross it, and what lies on both sides of each piece says what it is.

use measure::Length;

use super::plan::{LineEnd, LineKind, PlanPlane, RoofLine};
use super::wing::{Bounds, PlanPoint, WingPlane};

/// Two points closer than this in plan are one: some thousandth of the finest mark of a tape.
const ONE_POINT: f64 = 1e-5;
/// How far to either side of a line the roof is looked at, at the most: nearer than [`ONE_POINT`], so that no other line lies
/// between.
const ASIDE: f64 = 4e-6;
/// The same as a share of a short piece's length, so that no line that crosses at its ends is met.
const ASIDE_OF_A_PIECE: f64 = 1e-3;
/// Heights at one place that are closer than this are one surface, and slopes that differ by less are one slope.
const ONE_HEIGHT: f64 = 1e-6;

type Point = [f64; 2];

/// The roof over all wings.
#[derive(Debug, Default)]
pub(super) struct Surface {
    wings: Vec<Over>,
    house: Vec<Bounds>,
}

#[derive(Debug)]
struct Over {
    bounds: Bounds,
    planes: Vec<WingPlane>,
}

/// A line in plan without ends.
#[derive(Clone, Copy, Debug)]
struct Along {
    through: Point,
    direction: Point,
}

/// A piece of a line, as it is looked at.
struct Piece {
    kind: LineKind,
    planes: [Option<PlanPlane>; 2],
    from: Point,
    to: Point,
    heights: [f64; 2],
}

impl Surface {
    /// A wing: its walls, how far its planes run, and the planes. One that lies in an earlier wing's plane is that
    /// plane.
    pub(super) fn add(&mut self, house: Bounds, bounds: Bounds, planes: Vec<WingPlane>) {
        let known = self.planes();
        let first = |plane: WingPlane| known.iter().copied().find(|known| known.is_same(plane)).unwrap_or(plane);
        let planes = planes.into_iter().map(first).collect();
        self.house.push(house);
        self.wings.push(Over { bounds, planes });
    }

    /// The plane that is the roof at a place; none outside of the house.
    fn plane_at(&self, at: Point) -> Option<WingPlane> {
        if !self.house.iter().any(|house| holds(house, at)) {
            return None;
        }
        let over = self.wings.iter().filter(|wing| holds(&wing.bounds, at));
        let lowest = |wing: &Over| wing.planes.iter().copied().reduce(|low, next| lower(low, next, at));
        over.filter_map(lowest).reduce(|high, next| if next.height(at) > high.height(at) { next } else { high })
    }

    fn planes(&self) -> Vec<WingPlane> {
        self.wings.iter().flat_map(|wing| wing.planes.iter().copied()).collect()
    }

    /// Every line that a line of the roof may lie on, each once.
    fn candidates(&self) -> Vec<Along> {
        let planes = self.planes();
        let pairs = planes
            .iter()
            .enumerate()
            .flat_map(|(index, one)| planes[index + 1..].iter().filter_map(|other| level_with(one, other)));
        let edges = self.house.iter().chain(self.wings.iter().map(|wing| &wing.bounds)).flat_map(edges);
        let mut once: Vec<Along> = Vec::new();
        for line in pairs.chain(edges) {
            if !once.iter().any(|known| known.is_same(line)) {
                once.push(line);
            }
        }
        once
    }
}

/// Every line of the roof, joined where pieces go on straight.
pub(super) fn lines(surface: &Surface) -> Vec<RoofLine> {
    let candidates = surface.candidates();
    let mut found: Vec<RoofLine> = candidates.iter().flat_map(|line| on_line(surface, &candidates, *line)).collect();
    found.sort_by_key(|line| line.kind);
    found
}

fn on_line(surface: &Surface, candidates: &[Along], line: Along) -> Vec<RoofLine> {
    let mut cuts: Vec<f64> = candidates.iter().filter_map(|other| line.crossing(*other)).collect();
    cuts.sort_by(f64::total_cmp);
    cuts.dedup_by(|next, before| *next - *before < ONE_POINT);
    let mut pieces: Vec<Piece> = Vec::new();
    for pair in cuts.windows(2) {
        let Some(piece) = look(surface, line, pair[0], pair[1]) else { continue };
        match pieces.last_mut() {
            Some(last) if last.goes_on(&piece) => {
                (last.to, last.heights[1]) = (piece.to, piece.heights[1]);
            }
            _ => pieces.push(piece),
        }
    }
    pieces.into_iter().map(Piece::line).collect()
}

/// What lies on both sides of a piece of a line; none where the roof runs through it.
fn look(surface: &Surface, line: Along, from: f64, to: f64) -> Option<Piece> {
    let middle = line.at((from + to) / 2.0);
    let [dx, dy] = line.direction;
    let aside = |by: f64| surface.plane_at([middle[0] - dy * by, middle[1] + dx * by]);
    let by = ASIDE.min((to - from) * ASIDE_OF_A_PIECE);
    let sides = [aside(by), aside(-by)];
    let kind = kind(sides, line, middle)?;
    let ends = [line.at(from), line.at(to)];
    let higher = |at: Point| sides.iter().flatten().map(|plane| plane.height(at)).fold(f64::NEG_INFINITY, f64::max);
    let planes = sides.map(|plane| plane.map(|plane| PlanPlane { wing: plane.wing, falls: plane.falls }));
    Some(Piece { kind, planes, from: ends[0], to: ends[1], heights: ends.map(higher) })
}

fn kind(sides: [Option<WingPlane>; 2], line: Along, at: Point) -> Option<LineKind> {
    let climb = |plane: &WingPlane| plane.rises[0] * line.direction[0] + plane.rises[1] * line.direction[1];
    let is_level = |plane: &WingPlane| climb(plane).abs() < ONE_HEIGHT;
    match sides {
        [None, None] => None,
        [Some(only), None] | [None, Some(only)] => {
            let at_the_wall = is_level(&only) && only.height(at).abs() < ONE_HEIGHT;
            Some(if at_the_wall { LineKind::Eave } else { LineKind::Rake })
        }
        [Some(one), Some(other)] => {
            if (one.height(at) - other.height(at)).abs() > ONE_HEIGHT {
                return Some(LineKind::Step);
            }
            // Climbing toward the line from both sides: the bend is outward.
            let toward = |plane: &WingPlane, sign: f64| {
                sign * (plane.rises[0] * line.direction[1] - plane.rises[1] * line.direction[0])
            };
            let bend = toward(&one, 1.0) + toward(&other, -1.0);
            if bend.abs() < ONE_HEIGHT {
                return None;
            }
            Some(match (bend > 0.0, is_level(&one)) {
                (true, true) => LineKind::Ridge,
                (true, false) => LineKind::Hip,
                (false, _) => LineKind::Valley,
            })
        }
    }
}

impl Piece {
    fn goes_on(&self, next: &Self) -> bool {
        let met = (self.to[0] - next.from[0]).abs() + (self.to[1] - next.from[1]).abs() < 2.0 * ONE_POINT;
        let risen = (self.heights[1] - next.heights[0]).abs() < 2.0 * ONE_POINT;
        met && risen && self.kind == next.kind && self.planes == next.planes
    }

    fn line(self) -> RoofLine {
        let end = |at: Point, height: f64| LineEnd {
            at: PlanPoint { x: on_sheet(at[0]), y: on_sheet(at[1]) },
            height: on_sheet(height),
        };
        let mut ends = [end(self.from, self.heights[0]), end(self.to, self.heights[1])];
        if ends[0].height > ends[1].height {
            ends.reverse();
        }
        RoofLine { kind: self.kind, ends, planes: self.planes }
    }
}

/// What arithmetic leaves in the last digits is taken off, so that level lines are level.
fn on_sheet(value: f64) -> Length {
    const STEPS: f64 = 1e9;
    Length::from_inches((value * STEPS).round() / STEPS + 0.0)
}

impl Along {
    fn at(self, along: f64) -> Point {
        [self.through[0] + self.direction[0] * along, self.through[1] + self.direction[1] * along]
    }

    fn turned(self, other: Self) -> f64 {
        self.direction[0] * other.direction[1] - self.direction[1] * other.direction[0]
    }

    /// How far another line's point lies off this one.
    fn off(self, point: Point) -> f64 {
        let [dx, dy] = [point[0] - self.through[0], point[1] - self.through[1]];
        self.direction[0] * dy - self.direction[1] * dx
    }

    fn crossing(self, other: Self) -> Option<f64> {
        let turned = self.turned(other);
        (turned.abs() > 1e-9).then(|| other.off(self.through) / turned)
    }

    fn is_same(self, other: Self) -> bool {
        self.turned(other).abs() < 1e-9 && self.off(other.through).abs() < ONE_POINT
    }
}

/// Where two planes are as high as each other; none of parallel ones.
fn level_with(one: &WingPlane, other: &WingPlane) -> Option<Along> {
    let [x, y] = [one.rises[0] - other.rises[0], one.rises[1] - other.rises[1]];
    let square = x * x + y * y;
    if square < 1e-12 {
        return None;
    }
    let away = (other.at_corner - one.at_corner) / square;
    let long = square.sqrt();
    Some(Along { through: [x * away, y * away], direction: [-y / long, x / long] })
}

fn edges(bounds: &Bounds) -> [Along; 4] {
    let [[left, right], [low, high]] = *bounds;
    let across = |y| Along { through: [left, y], direction: [1.0, 0.0] };
    let up = |x| Along { through: [x, low], direction: [0.0, 1.0] };
    [across(low), across(high), up(left), up(right)]
}

fn holds(bounds: &Bounds, at: Point) -> bool {
    (0..2).all(|axis| bounds[axis][0] < at[axis] && at[axis] < bounds[axis][1])
}

fn lower(low: WingPlane, next: WingPlane, at: Point) -> WingPlane {
    if next.height(at) < low.height(at) { next } else { low }
}
