//! Shims from readings: how thick at each crossing, of which pieces, and what is not known.

use measure::{Length, Ratio};
use standards::{Source, Status};

use super::doubt::{Doubt, doubts};
use super::error::StrappingError;
use super::plane::{Aim, Plane, plane};
use super::readings::{Crossing, PARTS_IN_A_SIXTEENTH, Readings, length_of, parts};
use super::stack::ShimSizes;

/// Faces of neighbours behind gypsum board stay within 1/8 in of one plane.
pub const NEIGHBOURS: Source = Source::new("Gypsum Association guide", "section II", Status::LookedUp);
const SIXTEENTH: Length = Length::from_inches(1.0 / 16.0);

/// What is wanted, and what is at hand.
#[derive(Clone, Debug, PartialEq)]
pub struct ShimWish {
    /// Level, or flat in which sense.
    pub aim: Aim,
    /// The most that a flat ceiling may rise in an inch of run, across and along; none where any slope will do.
    pub steepest: Option<Ratio>,
    /// The shims at hand.
    pub sizes: ShimSizes,
    /// The thickest build-up that is wanted of shims: the strip's own 3/4 in, common practice. What is thicker is said.
    pub thickest: Length,
}

/// How the joist's height is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Known {
    /// It was read.
    Read,
    /// It was not: it is taken on the straight line between two readings along the joist.
    Interpolated,
}

/// What goes between joist and strip at a crossing.
#[derive(Clone, Debug, PartialEq)]
pub struct Shim {
    /// Where.
    pub at: Crossing,
    /// How its height is known.
    pub known: Known,
    /// The gap, exact; below zero where the joist is to be planed.
    pub exact: Length,
    /// The shim: to the nearest sixteenth, or to the next thickness within 1/16 in that the shims at hand make.
    pub thickness: Length,
    /// Its pieces, the fewest; none where those at hand make no thickness within 1/16 in.
    pub stack: Option<Vec<Length>>,
    /// Whether it is thicker than was wanted: a solid packer and a longer fastener, or a sister beside the joist.
    pub too_thick: bool,
}

/// The shims of a ceiling.
#[derive(Clone, Debug, PartialEq)]
pub struct ShimPlan {
    /// The plane of the strips' backs.
    pub plane: Plane,
    /// Where a joist touches it without a shim: at least one crossing.
    pub touches: Vec<Crossing>,
    /// A shim for every crossing that is known, row by row; of thickness nothing where none is needed.
    pub shims: Vec<Shim>,
    /// Crossings that were not read and do not lie between two readings of their joist: read them.
    pub open: Vec<Crossing>,
    /// Readings to be read again; they count as they stand.
    pub doubts: Vec<Doubt>,
    /// Sum of the exact gaps that were read.
    pub total: Length,
    /// The greatest exact gap that was read.
    pub greatest: Length,
    /// The most that a strip departs from the plane by rounding.
    pub off_plane: Length,
}

impl ShimPlan {
    /// How many crossings take a shim.
    #[must_use]
    pub fn to_set(&self) -> usize {
        self.shims.iter().filter(|shim| shim.thickness > Length::ZERO).count()
    }
}

/// Works out the shims that bring all strips into one plane which no joist pokes below.
///
/// Source: geometry; the planes are those of a linear programme (see the module's notes) or of least squares. Rounded to
/// sixteenths, each strip is within 1/32 in of the plane and its neighbours within 1/16 in of each other, inside the 1/8 in
/// of [`NEIGHBOURS`].
///
/// # Errors
/// Where level is wanted of a string that is not level, or flat of readings in one slanting line.
pub fn shims(readings: &Readings, wish: &ShimWish) -> Result<ShimPlan, StrappingError> {
    without(readings, wish, &[])
}

/// The shims when these joists do not decide: they may poke below the plane, and are planed there.
pub(super) fn without(readings: &Readings, wish: &ShimWish, planed: &[usize]) -> Result<ShimPlan, StrappingError> {
    let (plane, touches) = plane(readings, wish.aim, wish.steepest, planed)?;
    let (gaps, open) = gaps(readings, &plane);
    let shims: Vec<Shim> = gaps.iter().map(|gap| shim(wish, gap)).collect();
    let read = || shims.iter().filter(|shim| shim.known == Known::Read).map(|shim| shim.exact.max(Length::ZERO));
    let off = |shim: &Shim| if shim.exact > Length::ZERO { (shim.thickness - shim.exact).abs() } else { Length::ZERO };
    Ok(ShimPlan {
        total: read().sum(),
        greatest: read().fold(Length::ZERO, Length::max),
        off_plane: shims.iter().map(off).fold(Length::ZERO, Length::max),
        doubts: doubts(readings),
        plane,
        touches,
        shims,
        open,
    })
}

/// What is left between a joist and the plane at a crossing.
pub(super) struct Gap {
    pub at: Crossing,
    pub known: Known,
    pub exact: Length,
    /// To the nearest sixteenth; half of one goes up. Below zero where the joist pokes below.
    pub sixteenths: i128,
}

/// The gaps at all crossings whose height is known, and the crossings where it is not.
pub(super) fn gaps(readings: &Readings, plane: &Plane) -> (Vec<Gap>, Vec<Crossing>) {
    let (mut gaps, mut open) = (Vec::new(), Vec::new());
    for at in readings.crossings() {
        let read = readings.height(at).map(|height| (Known::Read, height));
        let Some((known, height)) = read.or_else(|| Some((Known::Interpolated, readings.between(at)?))) else {
            open.push(at);
            continue;
        };
        let (top, bottom) = plane.under(parts(height), readings.place(at));
        let sixteenth = PARTS_IN_A_SIXTEENTH * bottom;
        let sixteenths = (2 * top + sixteenth).div_euclid(2 * sixteenth);
        gaps.push(Gap { at, known, exact: length_of(top, bottom), sixteenths });
    }
    (gaps, open)
}

fn shim(wish: &ShimWish, gap: &Gap) -> Shim {
    let (thickness, stack) = made_up(&wish.sizes, gap.exact, sixteenths(gap.sixteenths.max(0)));
    let too_thick = thickness > wish.thickest;
    Shim { at: gap.at, known: gap.known, exact: gap.exact, thickness, stack, too_thick }
}

pub(super) fn sixteenths(count: i128) -> Length {
    SIXTEENTH * count as f64
}

/// The nearest sixteenth where the shims at hand make it, else the one beside it that they make and that is within 1/16 in
/// of the gap: the thicker one where both are.
fn made_up(sizes: &ShimSizes, exact: Length, nearest: Length) -> (Length, Option<Vec<Length>>) {
    let close = |thickness: &Length| *thickness == nearest || (*thickness - exact).abs() <= SIXTEENTH;
    let made = |thickness: Length| Some((thickness, Some(sizes.stack(thickness)?)));
    let tried = [nearest, nearest + SIXTEENTH, nearest - SIXTEENTH];
    tried.into_iter().filter(close).find_map(made).unwrap_or((nearest, None))
}
