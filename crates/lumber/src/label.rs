//! An engineered piece typed in from its own label or its supplier's sheet.

use std::sync::Arc;

use measure::{Length, Stress};

use crate::{LumberError, product::within};

/// Most characters of a label's name.
const MOST_NAME: usize = 60;

/// What a label or a supplier's sheet says, before it is checked.
#[derive(Clone, Debug, PartialEq)]
pub struct LabelInput {
    /// What the piece is called there.
    pub name: String,
    /// Breadth of one piece.
    pub breadth: Length,
    /// Depth of one piece.
    pub depth: Length,
    /// Bending strength on edge `F_b`, for 12 in deep, normal load duration, dry.
    pub fb: Stress,
    /// Shear strength on edge `F_v`.
    pub fv: Stress,
    /// Compression across the grain on edge `F_c⊥`.
    pub fc_perp: Stress,
    /// Modulus of elasticity `E`.
    pub e: Stress,
    /// Exponent `k` of the depth factor `(12/d)^k`; 0 when the sheet has none.
    pub depth_exponent: f64,
}

/// An engineered piece with values of its own, checked for being possible.
#[derive(Clone, Debug, PartialEq)]
pub struct EngineeredLabel {
    name: Arc<str>,
    breadth: Length,
    depth: Length,
    pub(crate) fb: Stress,
    pub(crate) fv: Stress,
    pub(crate) fc_perp: Stress,
    pub(crate) e: Stress,
    pub(crate) depth_exponent: f64,
    pub(crate) fb_flat: Option<Stress>,
    pub(crate) fc: Option<Stress>,
}

impl EngineeredLabel {
    /// Takes what was typed when every value is one that such a piece can have.
    ///
    /// Accepted: 1-1/4 to 10-3/4 in broad, 3-1/2 to 48 in deep, `F_b` 1,000 to 4,000 psi, `F_v` 100 to 600 psi,
    /// `F_c⊥` 250 to 1,500 psi, `E` 800,000 to 2,600,000 psi, exponent 0 to 0.2. The ranges
    /// catch slips of a digit or a unit; they are common practice, not a standard's.
    ///
    /// # Errors
    /// When the name is empty or over 60 characters, or a value is outside its range.
    pub fn new(input: LabelInput) -> Result<Self, LumberError> {
        let name = input.name.trim();
        if name.is_empty() || name.chars().count() > MOST_NAME {
            return Err(LumberError::LabelName { most: MOST_NAME });
        }
        if !(0.0..=0.2).contains(&input.depth_exponent) {
            let (given, low, high) = (input.depth_exponent, 0.0, 0.2);
            return Err(LumberError::OutsideRange { what: "Depth exponent", given, low, high, unit: "" });
        }
        Ok(Self {
            name: Arc::from(name),
            breadth: within("Breadth", input.breadth, 1.25, 10.75)?,
            depth: within("Depth", input.depth, 3.5, 48.0)?,
            fb: strength("Bending strength F_b", input.fb, 1_000.0, 4_000.0)?,
            fv: strength("Shear strength F_v", input.fv, 100.0, 600.0)?,
            fc_perp: strength("Bearing strength F_c⊥", input.fc_perp, 250.0, 1_500.0)?,
            e: strength("Modulus of elasticity E", input.e, 800_000.0, 2_600_000.0)?,
            depth_exponent: input.depth_exponent,
            fb_flat: None,
            fc: None,
        })
    }

    /// With the bending strength laid flat, where the sheet prints one: 1,000 to 4,000 psi.
    ///
    /// # Errors
    /// When it is outside that.
    pub fn with_fb_flat(self, fb_flat: Stress) -> Result<Self, LumberError> {
        let fb_flat = Some(strength("Bending strength laid flat", fb_flat, 1_000.0, 4_000.0)?);
        Ok(Self { fb_flat, ..self })
    }

    /// With the compression strength along the grain, where the sheet prints one: 500 to 4,000 psi.
    ///
    /// # Errors
    /// When it is outside that.
    pub fn with_fc(self, fc: Stress) -> Result<Self, LumberError> {
        let fc = Some(strength("Compression strength F_c", fc, 500.0, 4_000.0)?);
        Ok(Self { fc, ..self })
    }

    /// What the piece is called.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Breadth of one piece.
    #[must_use]
    pub const fn breadth(&self) -> Length {
        self.breadth
    }

    /// Depth of one piece.
    #[must_use]
    pub const fn depth(&self) -> Length {
        self.depth
    }
}

fn strength(what: &'static str, value: Stress, low: f64, high: f64) -> Result<Stress, LumberError> {
    let given = value.psi();
    if (low..=high).contains(&given) {
        return Ok(value);
    }
    Err(LumberError::OutsideRange { what, given, low, high, unit: "psi" })
}
