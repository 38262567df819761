//! Planing a low joist instead of shimming all others: when it is less work, and when nobody on site may decide it.

use measure::{Denominator, Length};
use standards::OutsideTable;
use standards::irc_2021::r502_8;

use super::error::StrappingError;
use super::plane::plane;
use super::readings::{Crossing, Readings};
use super::shims::{Gap, Known, ShimPlan, ShimWish, gaps, shims, sixteenths, without};

/// What the joists are made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum JoistWood {
    /// Sawn lumber.
    Sawn {
        /// First number of its name: 2 for a 2x10.
        nominal_thickness: u8,
        /// Its depth.
        depth: Length,
        /// Where along the joists its two bearings stand, the nearer first; readings past them are taken as beyond its span.
        bearings: [Length; 2],
    },
    /// An I-joist, a truss, laminated wood.
    Engineered,
}

/// What planing would mean here.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlaningWish {
    /// The joists.
    pub wood: JoistWood,
    /// Width of the strip that is let in: so long is the cut along the joist.
    pub strip_width: Length,
    /// To how many shims the work of one cut comes. Three, unless the crew knows better: our own choice, no published one.
    pub shims_a_cut: usize,
}

/// A joist planed at a crossing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cut {
    /// Where.
    pub at: Crossing,
    /// How its height is known.
    pub known: Known,
    /// How much is taken off, to the nearest sixteenth.
    pub off: Length,
}

/// Joists that are planed, and the shims that are left.
#[derive(Clone, Debug, PartialEq)]
pub struct Planed {
    /// Which joists, counted from 0.
    pub joists: Vec<usize>,
    /// What is taken off, and where.
    pub cuts: Vec<Cut>,
    /// The shims then.
    pub plan: ShimPlan,
    /// The work of both, counted in shims.
    pub work: usize,
}

/// A joist that would be less work planed, and may not be.
#[derive(Clone, Debug, PartialEq)]
pub struct Refused {
    /// Which joist, counted from 0.
    pub joist: usize,
    /// What would be taken off it, and where.
    pub cuts: Vec<Cut>,
    /// Why not, and who decides.
    pub why: OutsideTable,
}

/// What planing answers.
#[derive(Clone, Debug, PartialEq)]
pub struct Planing {
    /// The work without planing, in shims.
    pub work_without: usize,
    /// Joists to plane; none where shims alone are less work.
    pub better: Option<Planed>,
    /// Joists that would be less work planed, and may not be.
    pub refused: Vec<Refused>,
}

/// The most joists that are planed: a ceiling with more low ones is the engineer's or the joist maker's.
const MOST_PLANED: usize = 3;
/// Of joists that all touch the plane, so many are looked at. Where more do, three that are planed do not raise it much.
const LOOKED_AT: usize = 4;

/// Looks whether planing up to three joists is less work than shimming all others down to them.
///
/// Joists are taken one after the other, of those that hold the plane down the one whose planing leaves least work; the
/// best of one, two and three is the answer. A cut is as long as the strip is wide, and is a notch in the joist's tension
/// face. A joist that may not be cut so is named with its reason, and left whole.
///
/// Source: IRC 2021 R502.8.1 for its depth (a sixth of the joist's), its length (a third) and its place (not in the middle
/// third of the span, and only at the ends of members 4 in thick and more); R502.8.2 for engineered joists. All joists are
/// counted as floor joists; those of a ceiling have the same limits (R802.7.1).
///
/// # Errors
/// As [`shims`].
pub fn planing(readings: &Readings, wish: &ShimWish, planing: &PlaningWish) -> Result<Planing, StrappingError> {
    let plan = shims(readings, wish)?;
    let mut answer = Planing { work_without: plan.to_set(), better: None, refused: Vec::new() };
    loop {
        let whole: Vec<usize> = answer.refused.iter().map(|refused| refused.joist).collect();
        let Some(planed) = least_work(readings, wish, planing, (&plan, &whole)) else { break };
        let refused: Vec<Refused> =
            planed.joists.iter().filter_map(|joist| refused(readings, planing, &planed, *joist)).collect();
        if refused.is_empty() {
            answer.better = Some(planed);
            break;
        }
        answer.refused.extend(refused);
    }
    answer.refused.sort_by_key(|refused| refused.joist);
    Ok(answer)
}

/// The least work of one, two and three joists planed, none of those that stay whole; none where shims alone are no more.
/// Every turn of the caller adds to those that stay whole, so that it ends.
fn least_work(
    readings: &Readings,
    wish: &ShimWish,
    planing: &PlaningWish,
    (plan, whole): (&ShimPlan, &[usize]),
) -> Option<Planed> {
    let (mut taken, mut touches): (Vec<usize>, _) = (Vec::new(), plan.touches.clone());
    let mut best: Option<Trial> = None;
    for _ in 0..MOST_PLANED {
        let mut joists: Vec<usize> = touches.iter().map(|at| at.joist).collect();
        joists.sort_unstable();
        joists.dedup();
        joists.retain(|joist| !taken.contains(joist) && !whole.contains(joist));
        let with = |joist: &usize| trial(readings, wish, planing, [&taken[..], &[*joist]].concat());
        let Some(next) = joists.iter().take(LOOKED_AT).filter_map(with).min_by_key(|trial| trial.work) else { break };
        (taken, touches) = (next.joists.clone(), next.touches.clone());
        if best.as_ref().is_none_or(|best| next.work < best.work) {
            best = Some(next);
        }
    }
    let planed = planed(readings, wish, planing, &best?.joists)?;
    (planed.work < plan.to_set()).then_some(planed)
}

/// The work when these joists do not hold the plane down.
struct Trial {
    joists: Vec<usize>,
    touches: Vec<Crossing>,
    work: usize,
}

/// None where what is left tells of no plane.
fn trial(readings: &Readings, wish: &ShimWish, planing: &PlaningWish, joists: Vec<usize>) -> Option<Trial> {
    let (plane, touches) = plane(readings, wish.aim, wish.steepest, &joists).ok()?;
    let (gaps, _) = gaps(readings, &plane);
    let count = |wanted: fn(&Gap) -> bool| gaps.iter().filter(|gap| wanted(gap)).count();
    let work = count(|gap| gap.sixteenths > 0) + planing.shims_a_cut * count(|gap| gap.sixteenths < 0);
    Some(Trial { joists, touches, work })
}

/// The plan with these joists planed, and those of them that need no cut left out.
fn planed(readings: &Readings, wish: &ShimWish, planing: &PlaningWish, joists: &[usize]) -> Option<Planed> {
    let plan = without(readings, wish, joists).ok()?;
    let (gaps, _) = gaps(readings, &plan.plane);
    let low = gaps.iter().filter(|gap| gap.sixteenths < 0);
    let cuts: Vec<Cut> =
        low.map(|gap| Cut { at: gap.at, known: gap.known, off: sixteenths(-gap.sixteenths) }).collect();
    let mut joists: Vec<usize> = cuts.iter().map(|cut| cut.at.joist).collect();
    joists.sort_unstable();
    joists.dedup();
    let work = plan.to_set() + planing.shims_a_cut * cuts.len();
    Some(Planed { joists, cuts, plan, work })
}

fn refused(readings: &Readings, planing: &PlaningWish, planed: &Planed, joist: usize) -> Option<Refused> {
    let cuts: Vec<Cut> = planed.cuts.iter().copied().filter(|cut| cut.at.joist == joist).collect();
    let why = cuts.iter().find_map(|cut| not_allowed(readings, planing, cut))?;
    Some(Refused { joist, cuts, why })
}

/// Why the joist may not be cut so, and who decides.
fn not_allowed(readings: &Readings, planing: &PlaningWish, cut: &Cut) -> Option<OutsideTable> {
    const ASK: &str = "Leave the joist whole and shim the others, or ask the engineer.";
    let inches = |length: Length| length.to_inches_fraction(Denominator::Sixteenth);
    let refused =
        |given: String, covers| Some(OutsideTable { source: r502_8::SAWN_JOISTS, given, covers, next_step: ASK });
    let JoistWood::Sawn { nominal_thickness, depth, bearings } = planing.wood else {
        return Some(OutsideTable {
            source: r502_8::ENGINEERED,
            given: format!("{} off the bottom of an engineered joist", inches(cut.off)),
            covers: "no cut that the joist's maker or designer has not allowed",
            next_step: "Leave it whole and shim the others, or ask the joist's maker.",
        });
    };
    if Length::from_inches(nominal_thickness.into()) >= r502_8::THICK {
        return refused(
            format!("a cut in the bottom of a joist {nominal_thickness} in thick"),
            "cuts in the tension face of members less than 4 in thick, away from their ends",
        );
    }
    if cut.off > r502_8::notch_depth_limit(depth) {
        let given = format!("{} off a joist {} deep", inches(cut.off), inches(depth));
        return refused(given, "cuts to a sixth of the joist's depth");
    }
    if planing.strip_width > r502_8::notch_length_limit(depth) {
        let given = format!("a cut {} long in a joist {} deep", inches(planing.strip_width), inches(depth));
        return refused(given, "cuts to a third of the joist's depth in length");
    }
    let (half, span) = (planing.strip_width / 2.0, bearings[1] - bearings[0]);
    let place = readings.rows().get(cut.at.row).copied().unwrap_or(Length::ZERO) - bearings[0];
    let in_middle = place + half > span / 3.0 && place - half < span * (2.0 / 3.0);
    if in_middle {
        let given = format!("{} off a joist {} from its bearing", inches(cut.off), inches(place));
        return refused(given, "cuts outside the middle third of the span");
    }
    None
}
