//! Readings that look wrong: they are asked about, and kept.

use measure::Length;

use super::readings::{Crossing, Readings};

/// Fewer readings than this in a line tell nothing of one of them.
const LEAST: usize = 4;
/// A reading nearer to its line than this is not asked about. Our own choice: half of the slip of an inch that tapes make.
const NEAR: Length = Length::from_inches(0.5);
/// How many times as far out as half of the readings of its line. Our own choice: a joist's crown stays within three.
const TIMES: f64 = 5.0;

/// A reading to be read again. It counts as it stands until it is changed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubt {
    /// Where.
    pub at: Crossing,
    /// Its height as read.
    pub height: Length,
    /// The height that the other readings of its line would give.
    pub expected: Length,
    /// Whether it is out by an inch, to an eighth: a tape held at its 1 in mark.
    pub by_an_inch: bool,
}

/// The readings that stand out of their line. The line is their joist where four or more were read along it, which is a
/// straight stick or a smooth bow; else their row.
///
/// A line is the median of the slopes between all pairs of its readings (Theil and Sen), which one wrong reading does not
/// turn. Out is what is 1/2 in or more from it and five times as far as the median.
pub(super) fn doubts(readings: &Readings) -> Vec<Doubt> {
    let (rows, joists) = (readings.rows(), readings.joists());
    let mut found = Vec::new();
    let mut joist_told = vec![false; joists.len()];
    for (joist, told) in joist_told.iter_mut().enumerate() {
        let line = line(readings, (0..rows.len()).map(|row| (Crossing { row, joist }, rows[row])));
        *told = line.len() >= LEAST;
        found.extend(out_of_line(&line));
    }
    let all_told = joist_told.iter().all(|told| *told);
    for row in (0..rows.len()).filter(|_| !all_told) {
        let line = line(readings, (0..joists.len()).map(|joist| (Crossing { row, joist }, joists[joist])));
        found.extend(out_of_line(&line).into_iter().filter(|doubt| !joist_told[doubt.at.joist]));
    }
    found.sort_unstable_by_key(|doubt| doubt.at);
    found
}

type OnLine = (Crossing, f64, f64);

fn line(readings: &Readings, places: impl Iterator<Item = (Crossing, Length)>) -> Vec<OnLine> {
    places.filter_map(|(at, place)| Some((at, place.inches(), readings.height(at)?.inches()))).collect()
}

fn out_of_line(line: &[OnLine]) -> Vec<Doubt> {
    if line.len() < LEAST {
        return Vec::new();
    }
    let pairs = line.iter().enumerate().flat_map(|(index, from)| line[index + 1..].iter().map(move |to| (from, to)));
    let slope = median(pairs.map(|((_, from, low), (_, to, high))| (high - low) / (to - from)).collect());
    let start = median(line.iter().map(|(_, place, height)| height - slope * place).collect());
    let off = |(_, place, height): &OnLine| height - (start + slope * place);
    let usual = median(line.iter().map(|point| off(point).abs()).collect());
    let limit = NEAR.inches().max(TIMES * usual);
    let doubt = |point: &OnLine| Doubt {
        at: point.0,
        height: Length::from_inches(point.2),
        expected: Length::from_inches(point.2 - off(point)),
        by_an_inch: (off(point).abs() - 1.0).abs() <= 0.125,
    };
    line.iter().filter(|point| off(point).abs() >= limit).map(doubt).collect()
}

/// The middle value, of an even number the upper of the two in the middle; zero of none.
fn median(mut values: Vec<f64>) -> f64 {
    if values.is_empty() {
        return 0.0;
    }
    let half = values.len() / 2;
    *values.select_nth_unstable_by(half, f64::total_cmp).1
}
