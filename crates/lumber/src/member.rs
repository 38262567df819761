//! A member: one product in one or more plies.

use measure::{Denominator, Density, Length, LineLoad};
use standards::{
    Source,
    Status::{FromMemory, LookedUp},
    nds_2018::{Cited, chapter_5, chapter_8, supplement::GlulamLayup},
};

use crate::{
    Adjusted, AdjustedStresses, Conditions, DesignBasis, Family, LoadDuration, LumberError, Product, ReferenceValues,
    Section, Species, basis::glulam_wood,
};

/// Most plies of a member.
const MOST_PLIES: u8 = 5;

/// One product in one or more plies, all alike, side by side, on edge.
#[derive(Clone, Debug, PartialEq)]
pub struct Member {
    product: Product,
    plies: u8,
}

impl Member {
    /// Some plies of a product.
    ///
    /// # Errors
    /// When there are not 1 to 5 of them.
    pub fn new(product: Product, plies: u8) -> Result<Self, LumberError> {
        if plies == 0 || plies > MOST_PLIES {
            return Err(LumberError::Plies { given: plies, most: MOST_PLIES });
        }
        Ok(Self { product, plies })
    }

    /// One piece.
    #[must_use]
    pub const fn single(product: Product) -> Self {
        Self { product, plies: 1 }
    }

    /// What it is made of.
    #[must_use]
    pub const fn product(&self) -> &Product {
        &self.product
    }

    /// How many plies it has.
    #[must_use]
    pub const fn plies(&self) -> u8 {
        self.plies
    }

    /// Its name: `2-2x10`, `4x10`, `2-1-3/4x11-7/8 LVL`.
    #[must_use]
    pub fn name(&self) -> String {
        let piece = match &self.product {
            Product::Sawn(sawn) => sawn.size.nominal().to_owned(),
            Product::Lvl(lvl) => format!("{} LVL", size_text(lvl.breadth(), lvl.depth())),
            Product::Glulam(glulam) => format!("{} glulam", size_text(glulam.breadth(), glulam.depth())),
            Product::Labelled(label) => format!("{} {}", size_text(label.breadth(), label.depth()), label.name()),
        };
        if self.plies == 1 { piece } else { format!("{}-{piece}", self.plies) }
    }

    /// Its kind.
    #[must_use]
    pub const fn family(&self) -> Family {
        match &self.product {
            Product::Sawn(sawn) if sawn.size.is_timber() => Family::Sawn6x,
            Product::Sawn(sawn) if sawn.size.nominal_thickness() > 2 => Family::Sawn4x,
            Product::Sawn(_) => Family::BuiltUp2x,
            Product::Lvl(_) => Family::Lvl,
            Product::Glulam(_) => Family::Glulam,
            Product::Labelled(_) => Family::Labelled,
        }
    }

    /// Its section.
    #[must_use]
    pub fn section(&self) -> Section {
        Section::of_plies(self.plies, self.product.breadth(), self.product.depth())
    }

    /// Weight per volume, for dead load: dry wood at 15 % moisture. Green or freshly treated lumber is far heavier.
    #[must_use]
    pub const fn density(&self) -> Cited<Density> {
        match &self.product {
            Product::Sawn(sawn) => species_density(sawn.species),
            Product::Glulam(glulam) => match glulam.layup() {
                GlulamLayup::V4DouglasFir => GLULAM_DENSITY,
                GlulamLayup::V3SouthernPine => species_density(Species::SouthernPine),
            },
            Product::Lvl(_) | Product::Labelled(_) => LVL_DENSITY,
        }
    }

    /// Its own weight along its length.
    #[must_use]
    pub fn self_weight(&self) -> LineLoad {
        self.density().value * self.section().area
    }

    /// Its reference design values, before any factor.
    ///
    /// # Errors
    /// When no published value is held for it.
    pub fn reference_values(&self) -> Result<ReferenceValues, LumberError> {
        ReferenceValues::of(&self.product)
    }

    /// Its reference values and every factor but load duration, for design values at many load durations.
    ///
    /// # Errors
    /// When no published value is held for it, or it may not be used under these conditions.
    pub fn design_basis(&self, conditions: &Conditions) -> Result<DesignBasis, LumberError> {
        DesignBasis::of(&self.product, conditions)
    }

    /// Its adjusted design values with every factor and source, for a working.
    ///
    /// # Errors
    /// As [`Self::design_basis`].
    ///
    /// ```
    /// use lumber::{Conditions, Grade, LoadDuration, Member, Product, Sawn, SawnSize, Species};
    /// let size = SawnSize::from_text("2x10")?;
    /// let joist = Sawn { species: Species::SprucePineFir, grade: Grade::No2, size };
    /// let conditions = Conditions { repetitive: true, ..Conditions::default() };
    /// let member = Member::single(Product::Sawn(joist));
    /// let adjusted = member.adjusted(&conditions, LoadDuration::TenYears)?;
    /// assert_eq!(adjusted.fb_star.reference.psi(), 875.0);
    /// assert!((adjusted.fb_star.value.psi() - 1106.9).abs() < 0.05);
    /// # Ok::<(), lumber::LumberError>(())
    /// ```
    pub fn adjusted(&self, conditions: &Conditions, duration: LoadDuration) -> Result<Adjusted, LumberError> {
        Ok(self.design_basis(conditions)?.adjusted(duration))
    }

    /// Its adjusted design values as numbers alone, the same numbers as [`Self::adjusted`].
    ///
    /// # Errors
    /// As [`Self::design_basis`].
    pub fn adjusted_stresses(
        &self,
        conditions: &Conditions,
        duration: LoadDuration,
    ) -> Result<AdjustedStresses, LumberError> {
        Ok(self.design_basis(conditions)?.stresses(duration))
    }

    /// The volume factor `C_V` that is not multiplied with `C_L`: the lesser of the two multiplies `F_b*`.
    ///
    /// None when there is none to compare: sawn lumber, and composite lumber whose depth factor is over 1 (it is in
    /// `F_b*` already). Takes the length between points of zero moment: the span of a simple beam.
    #[must_use]
    pub fn volume_factor(&self, length: Length) -> Option<Cited<f64>> {
        let (exponent, depth) = match &self.product {
            Product::Sawn(_) => return None,
            Product::Glulam(glulam) => {
                let wood = glulam_wood(glulam.layup());
                return chapter_5::volume_factor(wood, length, glulam.depth(), glulam.breadth()).ok();
            }
            Product::Lvl(lvl) => (lvl.depth_exponent(), lvl.depth()),
            Product::Labelled(label) => (label.depth_exponent, label.depth()),
        };
        chapter_8::depth_factor(exponent, depth).ok().filter(|factor| factor.value <= 1.0)
    }
}

fn size_text(breadth: Length, depth: Length) -> String {
    let inches = |length: Length| length.to_inches_fraction(Denominator::Sixteenth).trim_end_matches('"').to_owned();
    format!("{}x{}", inches(breadth), inches(depth))
}

const fn species_density(species: Species) -> Cited<Density> {
    let pcf = match species {
        Species::SouthernPine => 36.7,
        Species::DouglasFirLarch => 33.6,
        Species::HemFir => 29.2,
        Species::SprucePineFir => 28.5,
        Species::SprucePineFirSouth => 24.6,
    };
    let source = Source::new("Wood Structural Design Data, 1992 revisions", "weight by species group", LookedUp);
    Cited::new(Density::from_pcf(pcf), source)
}

/// Weight that a published glulam beam table takes off its loads.
const GLULAM_DENSITY: Cited<Density> =
    Cited::new(Density::from_pcf(35.0), Source::new("published glulam load table", "beam weight", LookedUp));

const LVL_DENSITY: Cited<Density> =
    Cited::new(Density::from_pcf(42.0), Source::new("suppliers' sheets", "usual LVL weight", FromMemory));
