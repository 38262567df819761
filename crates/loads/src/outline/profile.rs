//! Heights along a line: the top of a wall, or of a house seen from one side.

use measure::{Area, Length};

/// Heights along a line, straight between the places that are given. Outside them it is nothing.
#[derive(Clone, Debug, PartialEq)]
pub struct Profile(Vec<(Length, Length)>);

/// A line over a stretch: its heights at both ends.
type Stretch = (Length, Length);

impl Profile {
    /// From places and heights; where several are at one place, the highest.
    pub(super) fn new(mut heights: Vec<(Length, Length)>) -> Self {
        heights.sort_by(|a, b| a.0.inches().total_cmp(&b.0.inches()));
        heights.dedup_by(|later, kept| {
            kept.1 = if same_place(later.0, kept.0) { kept.1.max(later.1) } else { kept.1 };
            same_place(later.0, kept.0)
        });
        Self(heights)
    }

    /// The upper edge of the convex shape around points.
    pub(super) fn over(points: Vec<(Length, Length)>) -> Self {
        let mut upper: Vec<(Length, Length)> = Vec::new();
        for point in Self::new(points).0 {
            while upper.len() >= 2 && !turns_right(upper[upper.len() - 2], upper[upper.len() - 1], point) {
                upper.pop();
            }
            upper.push(point);
        }
        Self(upper)
    }

    /// The places and heights.
    #[must_use]
    pub fn heights(&self) -> &[(Length, Length)] {
        &self.0
    }

    /// Area between it and a height; what lies under that height counts against it.
    #[must_use]
    pub fn area_above(&self, height: Length) -> Area {
        let above = |pair: &[(Length, Length)]| ((pair[0].1 - height) + (pair[1].1 - height)) * 0.5;
        self.0.windows(2).map(|pair| (pair[1].0 - pair[0].0) * above(pair)).sum()
    }

    /// Its heights at both ends of a stretch that has no bend inside; none where it is not.
    fn across(&self, from: Length, to: Length) -> Option<Stretch> {
        let middle = (from + to) * 0.5;
        let pair = self.0.windows(2).find(|pair| pair[0].0 <= middle && middle <= pair[1].0)?;
        let ((u0, z0), (u1, z1)) = (pair[0], pair[1]);
        let at = |u: Length| z0 + (z1 - z0) * ((u - u0) / (u1 - u0));
        Some((at(from), at(to)))
    }
}

fn same_place(one: Length, other: Length) -> bool {
    (one - other).abs() < Length::from_inches(1e-6)
}

fn turns_right(a: (Length, Length), b: (Length, Length), c: (Length, Length)) -> bool {
    (b.0 - a.0) * (c.1 - a.1) < (b.1 - a.1) * (c.0 - a.0)
}

/// Area under the highest of several profiles.
pub(super) fn area_under_highest(profiles: &[Profile]) -> Area {
    over_stretches(profiles, |lines| lines.iter().copied().reduce(|a, b| if middle(a) >= middle(b) { a } else { b }))
}

/// Area under the lower of two profiles, where both are.
pub(super) fn area_under_both(one: &Profile, other: &Profile) -> Area {
    over_stretches(&[one.clone(), other.clone()], |lines| match lines {
        &[a, b] => Some(if middle(a) <= middle(b) { a } else { b }),
        _ => None,
    })
}

fn middle((a, b): Stretch) -> Length {
    (a + b) * 0.5
}

/// Area under the line that `pick` takes over each stretch in which none of the profiles bends or crosses another.
fn over_stretches(profiles: &[Profile], pick: impl Fn(&[Stretch]) -> Option<Stretch>) -> Area {
    let mut places: Vec<Length> = profiles.iter().flat_map(|profile| profile.0.iter().map(|&(u, _)| u)).collect();
    sort(&mut places);
    let crossings: Vec<_> = places.windows(2).flat_map(|pair| crossings(profiles, pair[0], pair[1])).collect();
    places.extend(crossings);
    sort(&mut places);
    let under = |pair: &[Length]| {
        let lines: Vec<_> = profiles.iter().filter_map(|profile| profile.across(pair[0], pair[1])).collect();
        pick(&lines).map_or(Area::ZERO, |line| (pair[1] - pair[0]) * middle(line))
    };
    places.windows(2).filter(|pair| pair[1] > pair[0]).map(under).sum()
}

fn sort(places: &mut [Length]) {
    places.sort_by(|a, b| a.inches().total_cmp(&b.inches()));
}

/// Where lines cross between two neighbouring places.
fn crossings(profiles: &[Profile], from: Length, to: Length) -> Vec<Length> {
    let lines: Vec<_> = profiles.iter().filter_map(|profile| profile.across(from, to)).collect();
    let mut found = Vec::new();
    for (index, a) in lines.iter().enumerate() {
        for b in &lines[index + 1..] {
            let (start, end) = (a.0 - b.0, a.1 - b.1);
            if start.min(end) < Length::ZERO && start.max(end) > Length::ZERO {
                found.push(from + (to - from) * (start / (start - end)));
            }
        }
    }
    found
}
