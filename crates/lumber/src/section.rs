//! What the shape of a section gives.

use measure::{Area, Length, SecondMoment, SectionModulus};

/// The section of a member on edge. Strong is bending on the narrow face, weak on the wide face.
///
/// Plies bend together on edge. On the flat each ply bends by itself and the plies add up: nails let them slip on
/// each other, so a built-up member gets no help there from being one piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Breadth of all plies.
    pub breadth: Length,
    /// Depth.
    pub depth: Length,
    /// Area.
    pub area: Area,
    /// `S_x`.
    pub section_modulus_strong: SectionModulus,
    /// `I_x`.
    pub second_moment_strong: SecondMoment,
    /// `S_y`.
    pub section_modulus_weak: SectionModulus,
    /// `I_y`.
    pub second_moment_weak: SecondMoment,
}

impl Section {
    /// The section of some plies of this breadth and depth.
    pub(crate) fn of_plies(plies: u8, ply: Length, depth: Length) -> Self {
        let count = f64::from(plies);
        let breadth = ply * count;
        let area = breadth * depth;
        let weak = area * ply;
        Self {
            breadth,
            depth,
            area,
            section_modulus_strong: area * depth / 6.0,
            second_moment_strong: area * depth * depth / 12.0,
            section_modulus_weak: weak / 6.0,
            second_moment_weak: weak * ply / 12.0,
        }
    }
}
