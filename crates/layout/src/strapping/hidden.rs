//! What the strips hide and what stands proud of them: hanger flanges, saddles, beams deeper than the joists.

use measure::Length;

/// What stands below the undersides of the joists, one on top of the other at one place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Below {
    /// A beam among the joists; see [`beam_below`].
    pub beam: Length,
    /// The bottom flange of a hanger under a joist, with its nail heads.
    pub hanger: Length,
    /// The plate of a steel saddle or of a hanger under the beam.
    pub saddle: Length,
}

impl Below {
    /// How far it stands below the joists. A joist's hanger is beside the beam: the two do not add up, the lower one counts.
    /// A saddle is under the beam.
    #[must_use]
    pub fn lowest(&self) -> Length {
        self.hanger.max(self.beam + self.saddle).max(Length::ZERO)
    }
}

/// Whether the ceiling board clears what stands below the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hides {
    /// Hidden: so much is left between it and the back of the board; nothing where it just touches.
    By(Length),
    /// It stands proud of the strips by so much.
    ProudBy {
        /// How much.
        proud: Length,
        /// The packer between joist and strip that just hides it, in place of the shim that is there.
        pack: Length,
        /// Or the strip that just hides it with the shim that is there.
        strip: Length,
    },
}

/// How far a beam among joists stands below them: the joists' tops stand `proud` of the beam's.
///
/// Source: geometry. A joist in a hanger sits on its seat; it is never held up over it for the sake of a flush top.
#[must_use]
pub fn beam_below(beam: Length, joist: Length, proud: Length) -> Length {
    beam - joist + proud
}

/// Tells whether strips of this thickness, over a shim at that place, hide what stands below the joists.
///
/// ```
/// use layout::strapping::{Below, Hides, beam_below, hides};
/// use measure::Length;
///
/// let inches = Length::from_inches;
/// let beam = beam_below(inches(11.875), inches(11.25), Length::ZERO);
/// let found = hides(&Below { beam, ..Below::default() }, inches(0.75), Length::ZERO);
/// assert_eq!(found, Hides::By(inches(0.125)));
/// ```
#[must_use]
pub fn hides(below: &Below, strip: Length, shim: Length) -> Hides {
    let left = strip + shim - below.lowest();
    if left >= Length::ZERO {
        return Hides::By(left);
    }
    Hides::ProudBy { proud: -left, pack: shim - left, strip: strip - left }
}
