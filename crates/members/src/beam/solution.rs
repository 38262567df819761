//! What is known of a beam once it is solved.

use measure::{FlexuralRigidity, Force, Length, Moment, Ratio};

use super::load::on_beam;
use super::segment::{Bent, Segment};
use super::solve::{extremes, is_held_as_a_number};
use super::{Beam, BeamError, Extreme, Extremes, Turns};

/// What a support gives to the beam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reaction {
    /// Where the support is, from the beam's left end.
    pub at: Length,
    /// Its force on the beam, positive upward. Below zero the beam lifts there and must be held down.
    pub force: Force,
    /// Its fixing moment on the beam, positive clockwise; zero at a simple support.
    pub moment: Moment,
}

/// Whether a stretch of the beam has a support at both ends or at one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StretchKind {
    /// What sticks out to the left of the first support.
    LeftOverhang,
    /// Between two neighbouring supports.
    Span,
    /// What sticks out to the right of the last support.
    RightOverhang,
}

/// A span or an overhang, and its extremes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Span or overhang.
    pub kind: StretchKind,
    /// Where it starts, from the beam's left end.
    pub from: Length,
    /// Where it ends, from the beam's left end.
    pub to: Length,
    /// The extremes over it, both ends counted, each seen from inside the stretch.
    pub extremes: Extremes,
}

/// Shear, moment, slope and deflection at one place. Signs are those of [`beam`](super).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Where, from the beam's left end.
    pub at: Length,
    /// Shear.
    pub shear: Force,
    /// Bending moment, positive sagging.
    pub moment: Moment,
    /// Slope, inch per inch, positive where the beam falls towards the right.
    pub slope: Ratio,
    /// Deflection, positive downward.
    pub deflection: Length,
}

/// A solved beam: reactions, and the shear, moment, slope and deflection at any place.
#[derive(Clone, Debug, PartialEq)]
pub struct Solution {
    beam: Beam,
    reactions: Vec<Reaction>,
    segments: Vec<Segment>,
    stretches: Vec<Stretch>,
    extremes: Extremes,
}

impl Section {
    /// The section at a distance `t` from the start of a segment.
    pub(super) fn new(segment: &Segment, t: f64, ei: FlexuralRigidity) -> Self {
        let (state, stiffness) = (segment.state(t), ei.pound_square_inches());
        let at = if t < segment.length() { segment.start + t } else { segment.end };
        Self {
            at: Length::from_inches(at),
            shear: Force::from_pounds(state.shear),
            moment: Moment::from_inch_pounds(state.moment),
            slope: state.slope / stiffness,
            deflection: Length::from_inches(state.deflection / stiffness),
        }
    }
}

impl Solution {
    /// There must be one segment and one stretch at least, each from left to right without a gap.
    pub(super) fn new(beam: Beam, reactions: Vec<Reaction>, segments: Vec<Segment>, stretches: Vec<Stretch>) -> Self {
        let extremes = merged(&stretches);
        Self { beam, reactions, segments, stretches, extremes }
    }

    /// So many times each solution, added: the same as solving the beam under all those loads together.
    ///
    /// They must come from one call of [`Beam::solve_apart`]; none gives none, and so does a sum too large to compute.
    ///
    /// ```
    /// use measure::{FlexuralRigidity, Length, LineLoad};
    /// use members::beam::{Beam, Solution};
    ///
    /// let beam = Beam::simple_span(Length::from_feet(10.0), FlexuralRigidity::from_pound_square_inches(1.0e8))?;
    /// let groups = [10.0, 40.0].map(|plf| vec![beam.uniform(LineLoad::from_plf(plf))]);
    /// let apart = beam.solve_apart(&groups)?;
    /// let both = Solution::sum([(1.0, &apart[0]), (0.75, &apart[1])]).expect("two were given");
    /// assert!((both.reactions()[0].force.pounds() - 200.0).abs() < 1e-9);
    /// # Ok::<(), members::beam::BeamError>(())
    /// ```
    #[must_use]
    pub fn sum<'s>(parts: impl IntoIterator<Item = (Ratio, &'s Self)>) -> Option<Self> {
        let mut parts = parts.into_iter();
        let (times, first) = parts.next()?;
        let mut sum = first.clone();
        sum.add(times - 1.0, first);
        parts.for_each(|(times, part)| sum.add(times, part));
        for index in 0..sum.stretches.len() {
            let over = sum.segments_of(&sum.stretches[index]);
            sum.stretches[index].extremes = extremes(&sum.beam, &sum.segments[over]).ok()??;
        }
        sum.extremes = merged(&sum.stretches);
        Some(sum)
    }

    /// The most sagging and the most hogging of such a sum over one stretch, counted from the left; nothing else of it is
    /// worked.
    ///
    /// None when nothing was given, when the beam has no such stretch, or when the sum is too large to compute.
    #[must_use]
    pub fn moments_of_sum<'s>(
        parts: impl Iterator<Item = (Ratio, &'s Self)> + Clone,
        stretch: usize,
    ) -> Option<Turns<Moment>> {
        turns_of_sum(parts, stretch, Bent::Moment).map(|turns| turns.map(Moment::from_inch_pounds))
    }

    /// The deflections furthest down and furthest up of such a sum over one stretch.
    ///
    /// None as [`Solution::moments_of_sum`].
    #[must_use]
    pub fn deflections_of_sum<'s>(
        parts: impl Iterator<Item = (Ratio, &'s Self)> + Clone,
        stretch: usize,
    ) -> Option<Turns<Length>> {
        let stiffness = parts.clone().next()?.1.beam.ei().pound_square_inches();
        let turns = turns_of_sum(parts, stretch, Bent::Deflection);
        turns.map(|turns| turns.map(|deflection| Length::from_inches(deflection / stiffness)))
    }

    fn segments_of(&self, stretch: &Stretch) -> core::ops::Range<usize> {
        let up_to = |place: Length| self.segments.partition_point(|segment| segment.end <= place.inches());
        up_to(stretch.from)..up_to(stretch.to)
    }

    fn add(&mut self, times: Ratio, other: &Self) {
        for (into, reaction) in self.reactions.iter_mut().zip(&other.reactions) {
            into.force += reaction.force * times;
            into.moment += reaction.moment * times;
        }
        for (into, segment) in self.segments.iter_mut().zip(&other.segments) {
            into.add(times, segment);
        }
    }

    /// The beam that was solved.
    #[must_use]
    pub const fn beam(&self) -> &Beam {
        &self.beam
    }

    /// What each support gives, from left to right.
    #[must_use]
    pub fn reactions(&self) -> &[Reaction] {
        &self.reactions
    }

    /// The overhangs and spans from left to right, each with its extremes.
    #[must_use]
    pub fn stretches(&self) -> &[Stretch] {
        &self.stretches
    }

    /// The extremes over the whole beam.
    #[must_use]
    pub const fn extremes(&self) -> &Extremes {
        &self.extremes
    }

    /// The section just left of a place. It differs from [`Solution::just_right_of`] where a force, a moment or a
    /// support acts. At the beam's left end both look at the beam.
    ///
    /// # Errors
    /// [`BeamError::PlaceOffBeam`] when the place is not on the beam.
    pub fn just_left_of(&self, at: Length) -> Result<Section, BeamError> {
        self.section(at, |segment, place| segment.start < place)
    }

    /// The section just right of a place. At the beam's right end it looks at the beam.
    ///
    /// # Errors
    /// [`BeamError::PlaceOffBeam`] when the place is not on the beam.
    pub fn just_right_of(&self, at: Length) -> Result<Section, BeamError> {
        self.section(at, |segment, place| segment.start <= place)
    }

    /// The points of a picture of the shear, the moment and the deflection, from left to right.
    ///
    /// Every place where a load or a support starts, ends or acts is there twice, as it is just left and just right of
    /// it, so that a line through the points has its true steps. Every extreme is there too, and between two such
    /// places `between` more points at equal distances.
    #[must_use]
    pub fn diagram(&self, between: u16) -> Vec<Section> {
        let points = |segment| {
            let mut places: Vec<f64> = Segment::turning_points(segment).collect();
            let step = segment.length() / (f64::from(between) + 1.0);
            places.extend((1..=between).map(|index| step * f64::from(index)));
            places.sort_by(f64::total_cmp);
            places.dedup();
            places.into_iter().map(|t| Section::new(segment, t, self.beam.ei())).collect::<Vec<_>>()
        };
        self.segments.iter().flat_map(points).collect()
    }

    /// In the last segment for which `reaches` says that it starts before the place.
    fn section(&self, at: Length, reaches: impl Fn(&Segment, f64) -> bool) -> Result<Section, BeamError> {
        let length = self.beam.length();
        let place = on_beam(at, length).ok_or(BeamError::PlaceOffBeam { at, length })?;
        let index = self.segments.partition_point(|segment| reaches(segment, place)).saturating_sub(1);
        let segment = &self.segments[index];
        Ok(Section::new(segment, place - segment.start, self.beam.ei()))
    }
}

fn turns_of_sum<'s>(
    parts: impl Iterator<Item = (Ratio, &'s Solution)> + Clone,
    stretch: usize,
    of: Bent,
) -> Option<Turns<f64>> {
    let (_, first) = parts.clone().next()?;
    let mut held: Option<Turns<f64>> = None;
    for index in first.segments_of(first.stretches.get(stretch)?) {
        let start = first.segments[index].start;
        let segments = parts.clone().map(|(times, part)| (times, &part.segments[index]));
        for (t, value) in Segment::values_of_sum(segments, of) {
            if !is_held_as_a_number(value) {
                return None;
            }
            let here = Extreme { value, at: Length::from_inches(start + t) };
            held = Some(held.map_or(Turns { most: here, least: here }, |held| held.with(here)));
        }
    }
    held
}

fn merged(stretches: &[Stretch]) -> Extremes {
    stretches.iter().fold(stretches[0].extremes, |all, next| all.merged(next.extremes))
}
