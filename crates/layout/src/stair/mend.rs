//! Pads on treads that bring measured risers within a limit: the fewest that do.

use measure::Length;
use standards::cfr_29_1926::VARIATION;

use super::built::{AsBuilt, judge};
use super::check::{Edition, NOISE};
use super::error::StairError;
use super::marks::between;

/// Lowest risers that are tried: whole sixteenths, besides those that were measured.
const STEP: Length = Length::from_inches(1.0 / 16.0);

/// How even the mended risers are to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Within what the code takes, 3/8 in: the fewest pads, and nothing to spare as a rule.
    Code,
    /// Within what a crew's stairs may have, 1/4 in.
    InUse,
    /// All alike.
    Even,
}

/// One pad.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pad {
    /// The tread that it goes on, from 1 at the bottom.
    pub tread: usize,
    /// How thick it is, exact.
    pub thickness: Length,
}

/// A way to put a stair right.
#[derive(Clone, Debug, PartialEq)]
pub struct Mend {
    /// What it aims at.
    pub aim: Aim,
    /// Its pads, from the bottom.
    pub pads: Vec<Pad>,
    /// The risers after it.
    pub risers: Vec<Length>,
    /// Those against the code.
    pub after: AsBuilt,
}

/// Ways to put a flight right by pads alone, the preferred one first: the fewest pads that meet the code; but where the stairs
/// serve the site meanwhile, the fewest that leave 1/4 in. Empty where it needs no mending, or where pads cannot mend it: a
/// first riser that is too high is made higher by them, and has to be cut again.
///
/// A pad keeps the tread's nosing as thick and as far out as the others. The top riser is measured last.
///
/// Source: arithmetic. For each lowest riser that is tried the pads are the least that can be, on every tread at once; of all
/// the fewest pads win, then the thinnest together.
///
/// # Errors
/// As [`judge`].
pub fn mend(risers: &[Length], serves_site: bool, edition: Edition) -> Result<Vec<Mend>, StairError> {
    let built = judge(risers, edition)?;
    let limits = edition.limits();
    let in_use = built.spread <= VARIATION + NOISE;
    if built.holds() && (in_use || !serves_site) {
        return Ok(Vec::new());
    }
    let stair = Stair::of(risers, limits.riser.value);
    let aims = [(Aim::Code, limits.riser_variation.value), (Aim::InUse, VARIATION), (Aim::Even, Length::ZERO)];
    let mut found = Vec::new();
    for (aim, spread) in aims {
        // A stair that meets an aim as built needs nothing for it.
        if let Some(heights) = stair.fewest(spread).filter(|heights| !stair.pads(heights).is_empty()) {
            found.push(stair.mend(aim, &heights, edition)?);
        }
    }
    if serves_site {
        // Stable: the others keep their order.
        found.sort_by_key(|mend| mend.aim != Aim::InUse);
    }
    Ok(found)
}

struct Stair {
    /// Of each tread as built and of the upper floor.
    heights: Vec<Length>,
    /// The measured risers.
    risers: Vec<Length>,
    highest: Length,
}

impl Stair {
    fn of(risers: &[Length], highest: Length) -> Self {
        let summed = risers.iter().scan(Length::ZERO, |height, &riser| {
            *height += riser;
            Some(*height)
        });
        Self { heights: summed.collect(), risers: risers.to_vec(), highest }
    }

    fn rise(&self) -> Length {
        self.heights.last().copied().unwrap_or(Length::ZERO)
    }

    /// The heights with the fewest pads whose risers spread no more than this.
    fn fewest(&self, spread: Length) -> Option<Vec<Length>> {
        let average = self.rise() / self.risers.len() as f64;
        let tried = self.lowest_tried(average, spread);
        let of = |lowest: Length| self.padded(lowest, (lowest + spread).min(self.highest));
        let weight = |heights: &Vec<Length>| {
            let pads = self.pads(heights);
            (pads.len(), pads.iter().map(|pad| pad.thickness.inches()).sum::<f64>())
        };
        tried.into_iter().filter_map(of).min_by(|a, b| {
            let ((pads_a, thick_a), (pads_b, thick_b)) = (weight(a), weight(b));
            pads_a.cmp(&pads_b).then(thick_a.total_cmp(&thick_b))
        })
    }

    /// No riser can be lower than every other is higher than the average, or the other way.
    fn lowest_tried(&self, average: Length, spread: Length) -> Vec<Length> {
        let sixteenths = (spread / STEP).floor() as u32 + 1;
        let first = (average / STEP).floor();
        let on_marks = (0..=sixteenths).map(|below| STEP * (first - f64::from(below)));
        let measured = self.risers.iter().flat_map(|&riser| [riser, riser - spread]);
        let wanted = |lowest: &Length| {
            *lowest > Length::ZERO && *lowest <= average + NOISE && *lowest + spread >= average - NOISE
        };
        on_marks.chain(measured).chain([average, self.highest - spread]).filter(wanted).collect()
    }

    /// The least heights, no lower than built, whose risers are all from `low` to `high`; none where the floors would move.
    ///
    /// The first pass keeps risers from being too low, from the bottom up; the second keeps them from being too high, from the
    /// top down, and only raises: both hold after it where any heights do.
    fn padded(&self, low: Length, high: Length) -> Option<Vec<Length>> {
        let mut heights = self.heights.clone();
        let mut below = Length::ZERO;
        for height in &mut heights {
            *height = height.max(below + low);
            below = *height;
        }
        let mut above = heights.last().copied()?;
        for height in heights.iter_mut().rev() {
            *height = height.max(above - high);
            above = *height;
        }
        let kept = |riser: &Length| *riser >= low - NOISE && *riser <= high + NOISE;
        let floor_stays = (heights.last().copied()? - self.rise()).abs() <= NOISE;
        (floor_stays && between(heights.iter().copied()).iter().all(kept)).then_some(heights)
    }

    fn pads(&self, heights: &[Length]) -> Vec<Pad> {
        let thickness = heights.iter().zip(&self.heights).map(|(&padded, &built)| padded - built);
        let pads = thickness.enumerate().map(|(index, thickness)| Pad { tread: index + 1, thickness });
        pads.filter(|pad| pad.thickness > NOISE).collect()
    }

    fn mend(&self, aim: Aim, heights: &[Length], edition: Edition) -> Result<Mend, StairError> {
        let risers = between(heights.iter().copied());
        Ok(Mend { aim, pads: self.pads(heights), after: judge(&risers, edition)?, risers })
    }
}
