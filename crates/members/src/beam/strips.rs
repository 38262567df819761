//! Cuts a loaded beam where anything changes.

use super::load::PlacedLoad;

/// A piece of the beam with one straight-line load on it, and what acts at the point where it starts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Strip {
    pub(super) start: f64,
    pub(super) end: f64,
    /// Load per inch just right of the start, downward.
    pub(super) intensity: f64,
    /// Change of that load per inch.
    pub(super) gradient: f64,
    /// Force at the start, downward.
    pub(super) force: f64,
    /// Moment at the start, clockwise.
    pub(super) couple: f64,
}

/// Every place of a beam where a load or a support starts, ends or acts, from left to right.
pub(super) fn places<'l>(
    length: f64,
    supports: impl Iterator<Item = f64>,
    loads: impl IntoIterator<Item = &'l PlacedLoad>,
) -> Vec<f64> {
    let mut places = vec![0.0, length];
    places.extend(supports);
    for load in loads {
        match *load {
            PlacedLoad::Point { at, .. } | PlacedLoad::Couple { at, .. } => places.push(at),
            PlacedLoad::Distributed { from, to, .. } => places.extend([from, to]),
        }
    }
    places.sort_by(f64::total_cmp);
    places.dedup();
    places
}

/// The strips of a beam between such places. The last has no length: it holds what acts at the beam's right end.
pub(super) fn strips(places: &[f64], loads: &[PlacedLoad]) -> Vec<Strip> {
    let ends = places.iter().skip(1).chain(places.last());
    places.iter().zip(ends).map(|(&start, &end)| strip(start, end, loads)).collect()
}

fn strip(start: f64, end: f64, loads: &[PlacedLoad]) -> Strip {
    let mut strip = Strip { start, end, intensity: 0.0, gradient: 0.0, force: 0.0, couple: 0.0 };
    for load in loads {
        match *load {
            PlacedLoad::Point { at, force } if at == start => strip.force += force,
            PlacedLoad::Couple { at, moment } if at == start => strip.couple += moment,
            PlacedLoad::Distributed { from, to, start: first, end: last } if from <= start && start < to => {
                let gradient = (last - first) / (to - from);
                strip.intensity += first + gradient * (start - from);
                strip.gradient += gradient;
            }
            _ => {}
        }
    }
    strip
}

#[cfg(test)]
mod tests {
    use super::{PlacedLoad, places, strips};

    #[test]
    fn a_beam_is_cut_once_at_each_place_and_loads_add_up() {
        let loads = [
            PlacedLoad::Distributed { from: 10.0, to: 30.0, start: 0.0, end: 40.0 },
            PlacedLoad::Distributed { from: 0.0, to: 20.0, start: 5.0, end: 5.0 },
            PlacedLoad::Point { at: 20.0, force: 7.0 },
            PlacedLoad::Couple { at: 40.0, moment: 3.0 },
        ];
        let strips = strips(&places(40.0, [0.0, 20.0].into_iter(), &loads), &loads);
        let starts: Vec<f64> = strips.iter().map(|strip| strip.start).collect();
        assert_eq!(starts, [0.0, 10.0, 20.0, 30.0, 40.0]);
        let intensities: Vec<f64> = strips.iter().map(|strip| strip.intensity).collect();
        assert_eq!(intensities, [5.0, 5.0, 20.0, 0.0, 0.0]);
        let gradients: Vec<f64> = strips.iter().map(|strip| strip.gradient).collect();
        assert_eq!(gradients, [0.0, 2.0, 2.0, 0.0, 0.0]);
        assert_eq!((strips[2].force, strips[4].couple, strips[4].end), (7.0, 3.0, 40.0));
    }
}
