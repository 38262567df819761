//! Which of the sizes that were tried the answer is about.

use lumber::Family;
use measure::Ratio;

/// A size that was tried.
pub(crate) trait Candidate {
    /// Its kind.
    fn family(&self) -> Family;
    /// Area of its section, square inches: what smaller means.
    fn area(&self) -> f64;
    /// Whether it carries and fits.
    fn works(&self) -> bool;
    /// Whether it fits, whatever it carries.
    fn fits(&self) -> bool;
    /// How near it comes to carrying, where that is known.
    fn telling_share(&self) -> Ratio;
}

/// Families in the order in which the answer prefers them.
const PREFERENCE: [Family; 6] =
    [Family::BuiltUp2x, Family::Labelled, Family::Lvl, Family::Sawn4x, Family::Sawn6x, Family::Glulam];

/// The smallest of each family that carries and fits, in the order of preference.
pub(crate) fn smallest_of_each_family<C: Candidate>(tried: &[C]) -> Vec<usize> {
    let smallest_of = |family| {
        (0..tried.len())
            .filter(|&index| tried[index].family() == family && tried[index].works())
            .min_by(|&a, &b| tried[a].area().total_cmp(&tried[b].area()))
    };
    PREFERENCE.into_iter().filter_map(smallest_of).collect()
}

/// The chosen size; else the preferred one that works; else the one that comes nearest to it.
pub(crate) fn best<C: Candidate>(tried: &[C], smallest: &[usize], chosen: Option<usize>) -> usize {
    let nearest = || {
        (0..tried.len()).min_by(|&a, &b| {
            let (a, b) = (&tried[a], &tried[b]);
            b.fits().cmp(&a.fits()).then(a.telling_share().total_cmp(&b.telling_share()))
        })
    };
    chosen.or_else(|| smallest.first().copied()).or_else(nearest).unwrap_or_default()
}
