//! Pulls that look wrong. Each is asked about; none is changed.

use measure::Length;

use super::guess::{Guess, Slip, guesses};
use super::pulls::{Pulls, Reading};
use super::{Opening, Wall};

/// What is odd about a pull.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Oddity {
    /// No longer than nothing.
    NotAPull,
    /// No longer than the pull before.
    NotLongerThanBefore,
    /// Past the end of the plate.
    PastThePlate,
    /// It puts a stud into the one before.
    StudInStud,
    /// It makes a bay that lacks more than one stud, with no opening there.
    WideBay,
    /// It stands off the layout between two that stand on it, and a slip would explain it.
    OffTheLayout,
    /// All pulls are an inch long.
    AllAnInchLong,
}

/// A question about one pull.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubt {
    /// Which pull, counted from 0.
    pub reading: usize,
    /// What it read.
    pub pull: Length,
    /// What is odd about it.
    pub oddity: Oddity,
    /// What may have been meant and would fit; often none.
    pub perhaps: Vec<Guess>,
}

/// A bay wider than this many spacings lacks more than one stud.
const WIDE: f64 = 2.5;
/// A bay is on the layout within this share of the spacing.
const NEAR: f64 = 0.25;
/// Studs of one pack may read closer than they are thick by this much.
const OVERLAP: Length = Length::from_inches(1.0 / 8.0);
/// An inch that was burned leaves the marks true to this.
const TRUE_MARK: f64 = 1.0 / 16.0;
const PULLS_OF_A_BURNED_INCH: usize = 3;

pub(super) fn doubts(wall: &Wall, spacing: Length) -> Vec<Doubt> {
    let tape = Tape { wall, readings: &wall.pulled.readings, centres: wall.pulled.centres(wall.stud), spacing };
    let mut doubts = match wall.pulled.pulls {
        Pulls::CentreToCentre(_) => tape.of_bays(),
        _ => tape.of_running(),
    };
    doubts.sort_by_key(|doubt| doubt.reading);
    doubts
}

struct Tape<'a> {
    wall: &'a Wall,
    readings: &'a [Reading],
    centres: Vec<Length>,
    spacing: Length,
}

impl Tape<'_> {
    fn of_bays(&self) -> Vec<Doubt> {
        let odd = |index: usize| {
            if self.readings[index].pull <= Length::ZERO {
                return Some(Oddity::NotAPull);
            }
            // Past the plate all later ones follow: the first is asked about.
            let past = self.past(index) && !index.checked_sub(1).is_some_and(|before| self.past(before));
            let odd = self.wide(index).then_some(Oddity::WideBay);
            let odd = odd.or(self.in_the_stud_before(index).then_some(Oddity::StudInStud));
            odd.or(past.then_some(Oddity::PastThePlate)).filter(|_| self.open(index))
        };
        let fitting = |index: usize| self.perhaps(index, |guess| self.near(guess.pull));
        let doubt = |index| odd(index).map(|oddity| self.doubt(index, oddity, fitting(index)));
        (0..self.readings.len()).filter_map(doubt).collect()
    }

    fn of_running(&self) -> Vec<Doubt> {
        let mut doubts: Vec<Doubt> = Vec::new();
        for index in 0..self.readings.len() {
            if let Some(doubt) = self.contradiction(index) {
                doubts.retain(|earlier| earlier.reading != doubt.reading);
                doubts.push(doubt);
            }
        }
        for index in (0..self.readings.len()).filter(|index| self.open(*index)) {
            let doubted = |index: usize, doubts: &[Doubt]| doubts.iter().any(|doubt| doubt.reading == index);
            if doubted(index, &doubts) {
                continue;
            }
            let beside_doubt = index > 0 && doubted(index - 1, &doubts);
            doubts.extend(self.oddity(index, beside_doubt));
        }
        doubts.extend(self.burned_inch().filter(|_| doubts.is_empty()));
        doubts
    }

    /// A pull that is no longer than the one before: one of the two is wrong, and a slip that fits says which.
    fn contradiction(&self, index: usize) -> Option<Doubt> {
        if self.readings[index].pull < Length::ZERO {
            return Some(self.doubt(index, Oddity::NotAPull, Vec::new()));
        }
        let before = index.checked_sub(1)?;
        if self.centres[index] > self.centres[before] {
            return None;
        }
        let (this, other) = (self.fitting(index), self.fitting(before));
        let (odd, perhaps) = if this.is_empty() && !other.is_empty() { (before, other) } else { (index, this) };
        Some(self.doubt(odd, Oddity::NotLongerThanBefore, perhaps))
    }

    fn oddity(&self, index: usize, beside_doubt: bool) -> Option<Doubt> {
        let perhaps = self.fitting(index);
        let oddity = if self.past(index) {
            Oddity::PastThePlate
        } else if self.wide(index) {
            Oddity::WideBay
        } else if self.in_the_stud_before(index) {
            Oddity::StudInStud
        } else if self.off_the_layout(index) && !perhaps.is_empty() {
            Oddity::OffTheLayout
        } else {
            return None;
        };
        // A wide bay next to a pull in doubt is the doubt's, unless both were read in another unit.
        let explained = !beside_doubt || perhaps.iter().any(|guess| guess.slip.is_of_unit());
        explained.then(|| self.doubt(index, oddity, perhaps))
    }

    fn doubt(&self, reading: usize, oddity: Oddity, perhaps: Vec<Guess>) -> Doubt {
        Doubt { reading, pull: self.readings[reading].pull, oddity, perhaps }
    }

    fn open(&self, index: usize) -> bool {
        !self.readings[index].confirmed
    }

    fn before(&self, index: usize) -> Length {
        index.checked_sub(1).map_or(Length::ZERO, |before| self.centres[before])
    }

    fn wide(&self, index: usize) -> bool {
        let (before, here) = (self.before(index), self.centres[index]);
        let opening = |opening: &Opening| opening.between(before, here);
        here - before > self.spacing * WIDE && !self.wall.openings.iter().any(opening)
    }

    /// Two studs in one place. A pull that lands on the end stud is the end stud.
    fn in_the_stud_before(&self, index: usize) -> bool {
        let end_stud = self.wall.stud / 2.0;
        let before = index.checked_sub(1).map_or(end_stud, |before| self.centres[before]);
        let bay = self.centres[index] - before;
        bay < self.wall.stud - OVERLAP && !(index == 0 && bay <= OVERLAP)
    }

    fn past(&self, index: usize) -> bool {
        self.wall.length.is_some_and(|length| self.centres[index] > length)
    }

    /// Neither of its bays is one of the layout, but the two together are.
    fn off_the_layout(&self, index: usize) -> bool {
        let Some(after) = self.centres.get(index + 1) else { return false };
        let (before, here) = (self.before(index), self.centres[index]);
        let together = *after - before - self.spacing * 2.0;
        here > before && !self.near(here - before) && !self.near(*after - here) && together.abs() <= self.spacing * NEAR
    }

    /// One spacing or two, more or less.
    fn near(&self, bay: Length) -> bool {
        [1.0, 2.0].into_iter().any(|spacings| (bay - self.spacing * spacings).abs() <= self.spacing * NEAR)
    }

    fn perhaps(&self, index: usize, fits: impl Fn(&Guess) -> bool) -> Vec<Guess> {
        guesses(self.readings[index].pull).into_iter().filter(fits).collect()
    }

    /// Guesses at a running pull that stand on the layout between its neighbours, as these were read or as they would
    /// be after the same slip.
    fn fitting(&self, index: usize) -> Vec<Guess> {
        let to_centre = self.centres[index] - self.readings[index].pull;
        self.perhaps(index, |guess| {
            let here = guess.pull + to_centre;
            let from = |neighbour: usize| {
                let pull = self.readings[neighbour].pull;
                let slipped = guesses(pull).into_iter().filter(|other| other.slip == guess.slip);
                slipped.map(|other| other.pull + to_centre).chain([self.centres[neighbour]]).collect::<Vec<_>>()
            };
            let before = index.checked_sub(1).map_or(vec![Length::ZERO], from);
            let after = (index + 1 < self.readings.len()).then(|| from(index + 1));
            let follows = before.iter().any(|before| self.near(here - *before));
            follows && after.is_none_or(|after| after.iter().any(|after| self.near(*after - here)))
        })
    }

    /// Every pull an inch past its mark, and none on it.
    fn burned_inch(&self) -> Option<Doubt> {
        let first = self.readings.first().filter(|first| !first.confirmed)?;
        let inch = Length::from_inches(1.0);
        let on_mark = |centre: &Length| {
            let marks = (*centre - inch) / self.spacing;
            marks.round() >= 1.0 && (self.spacing * (marks - marks.round())).inches().abs() <= TRUE_MARK
        };
        let burned = self.readings.len() >= PULLS_OF_A_BURNED_INCH && self.centres.iter().all(on_mark);
        let meant = Guess { slip: Slip::BurnedInch, pull: first.pull - inch };
        burned.then(|| self.doubt(0, Oddity::AllAnInchLong, vec![meant]))
    }
}
