//! What the tape said, and the studs' centres that follow from it.

use measure::Length;

use super::Wall;

/// One pull of the tape, as read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// What it read.
    pub pull: Length,
    /// Whether it was asked about and said to be right: then it is not asked about again.
    pub confirmed: bool,
}

impl Reading {
    /// A pull that nobody was asked about.
    #[must_use]
    pub const fn of(pull: Length) -> Self {
        Self { pull, confirmed: false }
    }
}

/// What a running pull is taken to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pulls {
    /// From the plate's end to the near edge of each stud.
    RunningToNearEdge,
    /// From the plate's end to the centre of each stud.
    RunningToCentre,
    /// From the plate's end to the far edge of each stud.
    RunningToFarEdge,
    /// From one stud's centre to the next stud's, the first from here.
    CentreToCentre(FirstPull),
}

/// Where the first of centre-to-centre pulls starts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FirstPull {
    /// The plate's end.
    FromPlateEnd,
    /// The centre of the end stud.
    FromEndStud,
}

/// The pulls of a wall in their order, from its starting end. The stud at that end need not be pulled: it stands with
/// its outer edge at the plate's end.
#[derive(Clone, Debug, PartialEq)]
pub struct Pulled {
    /// How they were taken.
    pub pulls: Pulls,
    /// What they read.
    pub readings: Vec<Reading>,
}

impl Pulled {
    /// Pulls that nobody was asked about.
    #[must_use]
    pub fn new(pulls: Pulls, readings: impl IntoIterator<Item = Length>) -> Self {
        Self { pulls, readings: readings.into_iter().map(Reading::of).collect() }
    }

    /// Whether each running pull is longer than the one before, and each other pull longer than nothing.
    #[must_use]
    pub fn in_order(&self) -> bool {
        let pull = |reading: &Reading| reading.pull;
        match self.pulls {
            Pulls::CentreToCentre(_) => self.readings.iter().map(pull).all(|pull| pull > Length::ZERO),
            _ => {
                self.readings.iter().map(pull).all(|pull| pull >= Length::ZERO)
                    && self.readings.windows(2).all(|pair| pair[0].pull < pair[1].pull)
            }
        }
    }

    /// Centres of the pulled studs from the plate's end, as read, of studs so thick along the wall.
    #[must_use]
    pub fn centres(&self, stud: Length) -> Vec<Length> {
        let half = stud / 2.0;
        let running = |to_centre: Length| self.readings.iter().map(|reading| reading.pull + to_centre).collect();
        match self.pulls {
            Pulls::RunningToNearEdge => running(half),
            Pulls::RunningToCentre => running(Length::ZERO),
            Pulls::RunningToFarEdge => running(-half),
            Pulls::CentreToCentre(from) => {
                let start = if from == FirstPull::FromEndStud { half } else { Length::ZERO };
                let next = |at: &mut Length, reading: &Reading| {
                    *at += reading.pull;
                    Some(*at)
                };
                self.readings.iter().scan(start, next).collect()
            }
        }
    }
}

/// An opening in the wall, from the plate's end: from king stud to king stud, inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// Where it begins.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
}

impl Opening {
    /// Whether it lies, in part, between two points of the wall.
    #[must_use]
    pub(super) fn between(&self, before: Length, after: Length) -> bool {
        self.from < after && self.to > before
    }
}

impl Wall {
    /// Centres of all studs: the end stud, which stands at the plate's end, the pulled ones, and the stud at the far
    /// end where the plate was measured. A pull that lands on an end stud is that stud.
    pub(super) fn centres(&self) -> Vec<Length> {
        let first = self.stud / 2.0;
        let mut centres = self.pulled.centres(self.stud);
        if centres.first().is_none_or(|centre| *centre > first + first) {
            centres.insert(0, first);
        }
        if let Some(length) = self.length {
            let last = length - first;
            let covered = centres.last().is_some_and(|centre| *centre >= last - first);
            if !covered {
                centres.push(last);
            }
        }
        centres
    }
}
