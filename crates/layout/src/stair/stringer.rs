//! A cut stringer: each level and plumb cut with its place in elevation and along the board.

use measure::{Angle, Length};

use super::error::{StairError, count, size, thickness};
use super::flight::{Floors, slope, slope_length};
use super::marks::to_sixteenth;
use super::point::Point;
use super::stringer_board::{Throat, throat, to_order};

/// Where the top of a stringer is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Top {
    /// Its top tread is one riser below the upper floor, which is the last step.
    RiserBelowFloor,
    /// It has one tread more, level with the upper floor.
    LevelWithFloor,
}

/// A cut stringer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stringer {
    /// Its floors; it stands on the lower one as that is now.
    pub floors: Floors,
    /// Risers, the last one to the upper floor among them.
    pub risers: u16,
    /// Run of a tread, nosing to nosing: the run of each level cut.
    pub tread: Length,
    /// Thickness of the tread boards.
    pub tread_thickness: Length,
    /// How far a tread stands out past its riser.
    pub nosing: Length,
    /// Thickness of the riser boards; nothing where risers are open. Plumb cuts stand so far behind the finished risers.
    pub riser_board: Length,
    /// Depth of the board that it is cut from.
    pub board: Length,
    /// Its top.
    pub top: Top,
}

/// One step of a stringer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Its riser, from 1.
    pub riser: u16,
    /// Exact height of its level cut above what the stringer stands on.
    pub exact: Length,
    /// The same as it is marked: the nearest sixteenth.
    pub at: Length,
    /// The corner that stands out, on the upper edge of the board: plumb and level cut meet there.
    pub corner: Point,
    /// The corner that goes in, where the level cut meets the next plumb cut.
    pub inside: Point,
    /// Along the upper edge of the board, from the corner of the first step. Marked from there, never stepped off.
    pub along: Length,
}

/// A stringer with its cuts. Points have their origin where the first plumb cut meets what the stringer stands on.
#[derive(Clone, Debug, PartialEq)]
pub struct StringerAnswer {
    /// Rise between finished floors.
    pub rise: Length,
    /// One riser, exact: what the square is set to on its tongue; the tread is on its blade.
    pub riser: Length,
    /// Slope above level.
    pub angle: Angle,
    /// Height of the first level cut above what the stringer stands on: `r + fb - tt`.
    pub first_cut: Length,
    /// From the last level cut up to the upper floor as it is now; below zero where the cut is above that floor.
    pub last_below_floor: Length,
    /// From the first plumb cut to the one at the top, level.
    pub run: Length,
    /// Width of a tread board: run and nosing.
    pub tread_board: Length,
    /// From the face of the finished risers back to the plumb cuts.
    pub plumb_cuts_back: Length,
    /// Its steps, from the bottom.
    pub steps: Vec<Step>,
    /// Level cut at the foot: how long it bears on the floor.
    pub foot: Length,
    /// Plumb cut at the top: how high it bears on the header, the ledger or in the hanger.
    pub top_cut: Length,
    /// From the upper floor as it is now down to the lowest point of that cut: what bears it must reach so far.
    pub bearing_depth: Length,
    /// All corners of the stringer, round from the foot of its first plumb cut.
    pub outline: Vec<Point>,
    /// Wood that is left.
    pub throat: Throat,
    /// From the first nosing to the last, along the slope.
    pub line: Length,
    /// The board that it takes.
    pub to_order: Length,
    /// The stock that has it: the next whole 2 ft.
    pub stock: Length,
}

/// Lays out a cut stringer. Its foot is cut so that every finished riser is the same once treads and finish floors are in.
///
/// Source: geometry; `r + fb - tt` at the foot and `r - ft + tt` at the top.
///
/// # Errors
/// Sizes of nothing or over 100 ft, finishes that leave no rise, fewer than two risers, treads thicker than the first riser,
/// a board that its steps cut through.
pub fn stringer(given: &Stringer) -> Result<StringerAnswer, StairError> {
    let cuts = Cuts::of(given)?;
    let Cuts { rise, riser, first_cut } = cuts;
    let tread = given.tread;
    let steps: Vec<Step> = (1..=level_cuts(given)).map(|number| cuts.step(given, number)).collect();
    let run = tread * f64::from(level_cuts(given));
    let last = steps.last().map_or(first_cut, |step| step.exact);
    let edges = Edges::of(given, riser, first_cut, run);
    let [to_order, stock] = to_order(given.risers, riser, tread, given.board);
    Ok(StringerAnswer {
        rise,
        riser,
        angle: slope(riser, tread),
        first_cut,
        last_below_floor: given.floors.measured - last,
        run,
        tread_board: tread + given.nosing,
        plumb_cuts_back: given.riser_board,
        foot: edges.foot,
        top_cut: last - edges.top,
        bearing_depth: given.floors.measured - edges.top,
        outline: outline(&steps, run, &edges),
        throat: throat(given.board, riser, tread),
        line: slope_length(riser, tread) * f64::from(given.risers - 1),
        to_order,
        stock,
        steps,
    })
}

/// Treads that a stringer has.
fn level_cuts(given: &Stringer) -> u16 {
    match given.top {
        Top::RiserBelowFloor => given.risers - 1,
        Top::LevelWithFloor => given.risers,
    }
}

struct Cuts {
    rise: Length,
    riser: Length,
    first_cut: Length,
}

impl Cuts {
    fn of(given: &Stringer) -> Result<Self, StairError> {
        let rise = given.floors.rise()?;
        let risers = count(given.risers.into(), 2)?;
        size("run of a tread", given.tread)?;
        size("depth of the board", given.board)?;
        thickness("thickness of the treads", given.tread_thickness)?;
        thickness("nosing", given.nosing)?;
        thickness("thickness of the riser boards", given.riser_board)?;
        let riser = rise / f64::from(risers);
        let standing = riser + given.floors.bottom.to_come();
        let first_cut = standing - given.tread_thickness;
        if first_cut <= Length::ZERO {
            return Err(StairError::NoFirstCut { tread: given.tread_thickness, riser: standing });
        }
        // The foot's first corner and the steps both have to lie in the board.
        let taken = riser.max(first_cut) * (given.tread / slope_length(riser, given.tread));
        if given.board <= taken {
            return Err(StairError::BoardTooShallow { given: given.board, taken });
        }
        Ok(Self { rise, riser, first_cut })
    }

    fn step(&self, given: &Stringer, number: u16) -> Step {
        let below = f64::from(number - 1);
        // From the whole rise, so that no quotient is added up.
        let exact = self.first_cut + self.rise * below / f64::from(given.risers);
        let run = given.tread * below;
        Step {
            riser: number,
            exact,
            at: to_sixteenth(exact),
            corner: Point::new(run, exact),
            inside: Point::new(run + given.tread, exact),
            along: slope_length(self.riser, given.tread) * below,
        }
    }
}

/// Where the lower edge of the board meets the floor and the plumb cut at the top.
struct Edges {
    foot: Length,
    top: Length,
}

impl Edges {
    fn of(given: &Stringer, riser: Length, first_cut: Length, run: Length) -> Self {
        let plumb_depth = given.board * (slope_length(riser, given.tread) / given.tread);
        let foot = (plumb_depth - first_cut) * (given.tread / riser);
        let top = first_cut + run * (riser / given.tread) - plumb_depth;
        // A short stringer in a deep board stands on the floor all the way to its top.
        Self { foot: foot.min(run), top: top.max(Length::ZERO) }
    }
}

fn outline(steps: &[Step], run: Length, edges: &Edges) -> Vec<Point> {
    let mut points = vec![Point::default()];
    points.extend(steps.iter().flat_map(|step| [step.corner, step.inside]));
    points.push(Point::new(run, edges.top));
    points.push(Point::new(edges.foot, Length::ZERO));
    points
}
