//! What holds of shims for any readings, and the planes against a search through every corner.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::strapping::{Aim, Datum, Known, Readings, ShimPlan, ShimSizes, ShimWish, Side, shims};
use measure::Length;
use proptest::prelude::*;

const FLAT: [Aim; 3] = [Aim::LeastTotal, Aim::LeastGreatest, Aim::BestFit];
const ALL: [Aim; 4] = [Aim::Level, Aim::LeastTotal, Aim::LeastGreatest, Aim::BestFit];
/// Heights are to 1/4096 in and everything after is exact until it is turned into an `f64`.
const EXACT: f64 = 1e-9;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn wish(aim: Aim) -> ShimWish {
    ShimWish { aim, steepest: None, sizes: ShimSizes::common(), thickest: inches(0.75) }
}

/// Readings in sixteenths on a grid of joists at 16 in and rows at 20 in; none where none was read.
#[derive(Clone, Debug)]
struct Grid {
    joists: usize,
    sixteenths: Vec<Option<i32>>,
}

impl Grid {
    fn rows(&self) -> usize {
        self.sixteenths.len() / self.joists
    }

    fn readings(&self, raised: i32) -> Readings {
        let place = |step: f64, count: usize| (0..count).map(|index| inches(step * index as f64)).collect::<Vec<_>>();
        let height = |reading: &Option<i32>| reading.map(|reading| inches(f64::from(reading + raised) / 16.0));
        let by_row: Vec<Vec<_>> =
            self.sixteenths.chunks(self.joists).map(|row| row.iter().map(height).collect()).collect();
        let datum = Datum { side: Side::Below, level: true };
        Readings::new(datum, &place(16.0, self.joists), &place(20.0, self.rows()), &by_row).expect("a grid")
    }

    /// Across, along and height of what was read, in inches.
    fn points(&self) -> Vec<[f64; 3]> {
        let point = |(index, reading): (usize, &Option<i32>)| {
            let (row, joist) = (index / self.joists, index % self.joists);
            Some([16.0 * joist as f64, 20.0 * row as f64, f64::from((*reading)?) / 16.0])
        };
        self.sixteenths.iter().enumerate().filter_map(point).collect()
    }
}

fn grid(most: usize, reading: impl Strategy<Value = Option<i32>> + Clone + 'static) -> impl Strategy<Value = Grid> {
    (2..=most, 2..=most).prop_flat_map(move |(joists, rows)| {
        prop::collection::vec(reading.clone(), joists * rows).prop_map(move |sixteenths| Grid { joists, sixteenths })
    })
}

/// Every crossing read.
fn full(most: usize) -> impl Strategy<Value = Grid> {
    grid(most, (0..40).prop_map(Some))
}

/// Some not read, the corner always.
fn with_gaps(most: usize) -> impl Strategy<Value = Grid> {
    grid(most, prop::option::weighted(0.8, 0..40)).prop_map(|mut grid| {
        let joists = grid.joists;
        for (at, reading) in [(0, 3), (1, 5), (joists, 9)] {
            grid.sixteenths[at] = grid.sixteenths[at].or(Some(reading));
        }
        grid
    })
}

fn plan(grid: &Grid, aim: Aim) -> ShimPlan {
    shims(&grid.readings(0), &wish(aim)).expect("it has a plane")
}

/// The greatest sum of heights of a plane that no reading pokes below: through some three readings.
fn least_total_by_search(points: &[[f64; 3]]) -> f64 {
    let sum: f64 = points.iter().map(|point| point[2]).sum();
    let total = |slopes: [f64; 2]| {
        let over = |point: &[f64; 3]| point[2] - slopes[0] * point[0] - slopes[1] * point[1];
        let lowest = points.iter().map(over).fold(f64::INFINITY, f64::min);
        let plane: f64 = points.iter().map(|point| lowest + slopes[0] * point[0] + slopes[1] * point[1]).sum();
        sum - plane
    };
    corners(points).into_iter().map(total).fold(f64::INFINITY, f64::min)
}

/// The least thickness between two parallel planes with all readings between them: along three readings, or along two pairs.
fn least_greatest_by_search(points: &[[f64; 3]]) -> f64 {
    let thickness = |slopes: [f64; 2]| {
        let over = |point: &[f64; 3]| point[2] - slopes[0] * point[0] - slopes[1] * point[1];
        let (low, high) = points
            .iter()
            .map(over)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), over| (low.min(over), high.max(over)));
        high - low
    };
    corners(points).into_iter().map(thickness).fold(f64::INFINITY, f64::min)
}

/// Slopes of every plane that holds the directions of two pairs of readings; a pair that shares a reading with the other
/// makes the plane through three.
fn corners(points: &[[f64; 3]]) -> Vec<[f64; 2]> {
    let pairs: Vec<[f64; 3]> = (0..points.len())
        .flat_map(|one| (0..one).map(move |other| (one, other)))
        .map(|(one, other)| core::array::from_fn(|axis| points[one][axis] - points[other][axis]))
        .collect();
    let mut slopes = Vec::new();
    for (index, one) in pairs.iter().enumerate() {
        for other in &pairs[..index] {
            let turn = one[0] * other[1] - one[1] * other[0];
            if turn != 0.0 {
                let across = (one[2] * other[1] - one[1] * other[2]) / turn;
                slopes.push([across, (one[0] * other[2] - one[2] * other[0]) / turn]);
            }
        }
    }
    slopes
}

proptest! {
    /// The planes are as good as the best of every corner there is. The search is in `f64`: to a millionth of an inch.
    #[test]
    fn no_corner_is_better(grid in full(4)) {
        let points = grid.points();
        let total = plan(&grid, Aim::LeastTotal).total.inches();
        prop_assert!((total - least_total_by_search(&points)).abs() < 1e-6);
        let greatest = plan(&grid, Aim::LeastGreatest).greatest.inches();
        prop_assert!((greatest - least_greatest_by_search(&points)).abs() < 1e-6);
    }

    /// The same where some crossings were not read.
    #[test]
    fn no_corner_is_better_with_gaps(grid in with_gaps(4)) {
        let points = grid.points();
        let total = plan(&grid, Aim::LeastTotal).total.inches();
        prop_assert!((total - least_total_by_search(&points)).abs() < 1e-6);
        let greatest = plan(&grid, Aim::LeastGreatest).greatest.inches();
        prop_assert!((greatest - least_greatest_by_search(&points)).abs() < 1e-6);
    }

    /// After shimming every strip is within 1/16 in of one plane (within 1/32, with shims of every sixteenth), neighbours
    /// depart from it by 1/16 at most between them, no shim is negative and no joist pokes below.
    #[test]
    fn strips_lie_in_one_plane(grid in with_gaps(8)) {
        let readings = grid.readings(0);
        for aim in ALL {
            let plan = shims(&readings, &wish(aim)).expect("it has a plane");
            let mut off = std::collections::BTreeMap::new();
            for shim in &plan.shims {
                let height = readings.height(shim.at).or_else(|| readings.between(shim.at)).expect("it is known");
                let back = height - shim.thickness;
                let there = plan.plane.height_at(readings.joists()[shim.at.joist], readings.rows()[shim.at.row]);
                // An interpolated height may be no whole 4096th.
                let finest = inches(1.0 / 4096.0);
                prop_assert!((back - there).abs() <= inches(1.0 / 32.0) + finest);
                prop_assert!(shim.thickness >= Length::ZERO && shim.exact >= -finest);
                prop_assert_eq!(shim.stack.iter().flatten().copied().sum::<Length>(), shim.thickness);
                off.insert(shim.at, back - there);
            }
            for (at, own) in &off {
                let mut beside = *at;
                beside.joist += 1;
                let close = off.get(&beside).is_none_or(|other| (*own - *other).abs() <= inches(1.0 / 16.0 + 1e-3));
                prop_assert!(close);
            }
            prop_assert!(!plan.touches.is_empty());
        }
    }

    /// The least shim in all is least of all aims, so the plane lies highest on the whole; the least greatest likewise.
    #[test]
    fn each_aim_is_best_at_its_own(grid in with_gaps(7)) {
        let plans = ALL.map(|aim| plan(&grid, aim));
        let [_, total, greatest, _] = &plans;
        for other in &plans {
            prop_assert!(total.total.inches() <= other.total.inches() + EXACT);
            prop_assert!(greatest.greatest.inches() <= other.greatest.inches() + EXACT);
        }
    }

    /// Raising every reading alike changes no shim.
    #[test]
    fn raised_alike(grid in with_gaps(7), raised in -500..500) {
        for aim in ALL {
            let (low, high) = (plan(&grid, aim), shims(&grid.readings(raised), &wish(aim)).expect("it has a plane"));
            prop_assert_eq!(&low.shims, &high.shims);
        }
    }

    /// A ceiling that is plane already takes no shim when flat is enough, and only touches.
    #[test]
    fn a_plane_ceiling(joists in 2_usize..9, rows in 2_usize..9, across in -8..8, along in -8..8) {
        let height = |row: usize, joist: usize| Some(300 + across * joist as i32 + along * row as i32);
        let sixteenths = (0..rows).flat_map(|row| (0..joists).map(move |joist| height(row, joist))).collect();
        let grid = Grid { joists, sixteenths };
        for aim in FLAT {
            prop_assert_eq!(plan(&grid, aim).to_set(), 0);
        }
        prop_assert_eq!(plan(&grid, Aim::LeastTotal).touches.len(), joists * rows);
    }

    /// A crossing is read, or lies between two readings of its joist and is marked so, or is open.
    #[test]
    fn nothing_is_made_up(grid in with_gaps(8)) {
        let readings = grid.readings(0);
        let plan = plan(&grid, Aim::Level);
        prop_assert_eq!(plan.shims.len() + plan.open.len(), grid.sixteenths.len());
        for shim in &plan.shims {
            prop_assert_eq!(shim.known == Known::Read, readings.height(shim.at).is_some());
        }
        for at in &plan.open {
            let read = |row: usize| grid.sixteenths[row * grid.joists + at.joist].is_some();
            prop_assert!(!(0..at.row).any(read) || !(at.row + 1..grid.rows()).any(read));
        }
    }

    /// A stack of the fewest pieces: no fewer do, by a search through all of up to four.
    #[test]
    fn the_fewest_pieces(sizes in prop::collection::btree_set(1_u32..13, 1..5), thickness in 1_u32..40) {
        let sixteenths = |count: u32| inches(f64::from(count) / 16.0);
        let all: Vec<Length> = sizes.iter().copied().map(sixteenths).collect();
        let found = ShimSizes::new(&all).expect("sizes").stack(sixteenths(thickness));
        let mut made = std::collections::BTreeSet::from([0]);
        let fewest = (1..=4).find(|_| {
            made = made.iter().flat_map(|sum| sizes.iter().map(move |size| sum + size)).collect();
            made.contains(&thickness)
        });
        match fewest {
            Some(fewest) => prop_assert_eq!(found.map(|stack| stack.len()), Some(fewest)),
            None => prop_assert!(found.is_none_or(|stack| stack.len() > 4)),
        }
    }
}

/// The largest grid that is taken, by a fixed rule of numbers, over 2 in and over the whole reach of 20 ft up and down, where
/// whole numbers grow most: every aim ends, no joist pokes below, and each aim is best at its own.
#[test]
fn sixty_by_sixty() {
    for reach in [32, 7680] {
        let mut seed = 12345_u32;
        let mut next = || {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            Some((seed >> 16) as i32 % reach - reach / 2)
        };
        let grid = Grid { joists: 60, sixteenths: (0..3600).map(|_| next()).collect() };
        let plans = ALL.map(|aim| plan(&grid, aim));
        for plan in &plans {
            assert!(plan.shims.len() == 3600 && plan.shims.iter().all(|shim| shim.exact >= Length::ZERO));
            assert!(plans[1].total.inches() <= plan.total.inches() + EXACT);
            assert!(plans[2].greatest.inches() <= plan.greatest.inches() + EXACT);
        }
    }
}
