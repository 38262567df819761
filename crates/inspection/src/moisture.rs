//! Whether the frame is dry enough to close in: every reading counts, visit by visit.

use standards::{Source, Status};

use crate::amount::MoistureContent;
use crate::finding::Finding;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::{Question, Subject};
use crate::verdict::{Check, Verdict};

/// 18 % before the wall board: a national laboratory's building guide.
pub const BEFORE_BOARD: Source =
    Source::new("National laboratory's building guide", "before wall board, 18 %", Status::LookedUp);
/// 19 %: what a dry grade mark says, and the danger line of the trade.
pub const DRY_GRADE: Source = Source::new("PS 20", "S-DRY, 19 %", Status::LookedUp);
/// Some codes ask for three readings at least.
const LEAST_READINGS: usize = 3;

/// The limit that is judged by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CloseInLimit {
    /// 18 %, which is taken unless someone says otherwise.
    #[default]
    Eighteen,
    /// 19 %.
    Nineteen,
}

impl CloseInLimit {
    /// The limit with its source.
    #[must_use]
    pub fn required(self) -> Required<MoistureContent> {
        match self {
            Self::Eighteen => Required::new(MoistureContent::from_percent(18.0), BEFORE_BOARD),
            Self::Nineteen => Required::new(MoistureContent::from_percent(19.0), DRY_GRADE),
        }
    }
}

/// A place where the meter was set: the same place has the same number on every visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Spot(pub u32);

/// A day, counted by whoever knows the calendar. Only its order counts here.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(pub i32);

/// One reading of the meter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Where.
    pub spot: Spot,
    /// What it showed.
    pub moisture: MoistureContent,
}

/// One visit with the meter. Meter and species setting are the record's.
#[derive(Clone, Debug, PartialEq)]
pub struct Visit {
    /// When.
    pub day: Day,
    /// Every reading.
    pub readings: Vec<Reading>,
}

/// Judges one visit: each reading by itself, never their average.
#[must_use]
pub fn judge_visit(visit: &Visit, limit: &Required<MoistureContent>) -> Finding {
    let mut finding = Finding::default();
    let check =
        |reading: &Reading| Check::at_most(Subject::Moisture, reading.moisture, limit.value, limit.origin.clone());
    finding.checks.extend(visit.readings.iter().map(check));
    if visit.readings.is_empty() {
        finding.not_seen.push(Subject::Moisture);
    }
    if visit.readings.len() < LEAST_READINGS {
        finding.questions.push(Question::MoreMoistureReadings);
    }
    if finding.verdict() == Verdict::Out {
        finding.remedy(&[Remedy::DryAndReadAgain]);
    }
    finding
}

/// All visits, in the order of their days.
#[derive(Clone, Debug, PartialEq)]
pub struct MoistureAnswer {
    /// Each visit's day and finding.
    pub visits: Vec<(Day, Finding)>,
    /// Spots of an earlier visit that the last one left out, whose last reading was too wet: still open.
    pub still_wet: Vec<Spot>,
    /// How the frame stands: by the last visit, and out while a spot is still wet.
    pub verdict: Verdict,
}

/// Judges a series of visits. A wet spot is closed only by a dry reading in that spot.
#[must_use]
pub fn judge_visits(visits: &[Visit], limit: &Required<MoistureContent>) -> MoistureAnswer {
    let mut ordered: Vec<&Visit> = visits.iter().collect();
    ordered.sort_by_key(|visit| visit.day);
    let still_wet = still_wet(&ordered, limit);
    let visits: Vec<(Day, Finding)> = ordered.iter().map(|visit| (visit.day, judge_visit(visit, limit))).collect();
    // Two visits of one day count together: which came later is not known.
    let last = visits.last().map(|(day, _)| *day);
    let of_last = visits.iter().filter(|(day, _)| Some(*day) == last).map(|(_, finding)| finding.verdict());
    let open = (!still_wet.is_empty()).then_some(Verdict::Out);
    let verdict = Verdict::worst(of_last.chain(open)).unwrap_or(Verdict::NotSeen);
    MoistureAnswer { visits, still_wet, verdict }
}

fn still_wet(ordered: &[&Visit], limit: &Required<MoistureContent>) -> Vec<Spot> {
    let Some(last) = ordered.last().map(|visit| visit.day) else { return Vec::new() };
    let mut spots: Vec<Spot> = ordered.iter().flat_map(|visit| &visit.readings).map(|reading| reading.spot).collect();
    spots.sort_unstable();
    spots.dedup();
    let wet = |spot: &Spot| {
        let series = drying(ordered.iter().copied(), *spot);
        let Some((day, _)) = series.last().copied() else { return false };
        let of_day = series.iter().filter(|(of, _)| *of == day);
        let worst = of_day.map(|(_, moisture)| *moisture).max_by(|a, b| a.percent().total_cmp(&b.percent()));
        let check =
            worst.map(|worst| Check::at_most(Subject::Moisture, worst, limit.value, limit.origin.clone()).verdict);
        day < last && check == Some(Verdict::Out)
    };
    spots.into_iter().filter(wet).collect()
}

/// The readings of one spot, in the order of the visits given: how it dries.
#[must_use]
pub fn drying<'a>(visits: impl IntoIterator<Item = &'a Visit>, spot: Spot) -> Vec<(Day, MoistureContent)> {
    let of_visit = |visit: &'a Visit| {
        let readings = visit.readings.iter().filter(move |reading| reading.spot == spot);
        readings.map(|reading| (visit.day, reading.moisture))
    };
    visits.into_iter().flat_map(of_visit).collect()
}
