//! Species groups, as the grade stamp names them.

use standards::nds_2018::{Cited, chapter_12::assigned_specific_gravity, supplement::SpeciesGroup};

use crate::{LumberError, names};

/// A group of species that is graded and sold as one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Species {
    /// Spruce-Pine-Fir: the northern group, stamped `S-P-F`.
    SprucePineFir,
    /// Spruce-Pine-Fir (South): weaker, stamped `SPFS` or `S-P-F(S)`.
    SprucePineFirSouth,
    /// Hem-Fir, stamped `HEM-FIR`.
    HemFir,
    /// Douglas Fir-Larch, stamped `D FIR-L`.
    DouglasFirLarch,
    /// Southern Pine, stamped `SYP` or by its own grading agency's mark.
    SouthernPine,
}

impl Species {
    /// Every group.
    pub const ALL: [Self; 5] =
        [Self::SprucePineFir, Self::SprucePineFirSouth, Self::HemFir, Self::DouglasFirLarch, Self::SouthernPine];

    /// The full name: `Spruce-Pine-Fir`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::SprucePineFir => "Spruce-Pine-Fir",
            Self::SprucePineFirSouth => "Spruce-Pine-Fir (South)",
            Self::HemFir => "Hem-Fir",
            Self::DouglasFirLarch => "Douglas Fir-Larch",
            Self::SouthernPine => "Southern Pine",
        }
    }

    /// The short name: `SPF`.
    #[must_use]
    pub const fn short_name(self) -> &'static str {
        match self {
            Self::SprucePineFir => "SPF",
            Self::SprucePineFirSouth => "SPF-S",
            Self::HemFir => "HF",
            Self::DouglasFirLarch => "DF-L",
            Self::SouthernPine => "SP",
        }
    }

    /// Reads a species group as it is stamped, written or said: case, spaces and dashes do not count.
    ///
    /// # Errors
    /// When the text names none of them; the message lists what is accepted.
    ///
    /// ```
    /// use lumber::Species;
    /// assert_eq!(Species::from_text("s-p-f")?, Species::SprucePineFir);
    /// assert_eq!(Species::from_text("SYP")?, Species::SouthernPine);
    /// assert!(Species::from_text("oak").is_err());
    /// # Ok::<(), lumber::LumberError>(())
    /// ```
    pub fn from_text(text: &str) -> Result<Self, LumberError> {
        let unknown = || LumberError::UnknownSpecies { given: names::repeated(text), accepted: ACCEPTED };
        names::find(&NAMES, text).ok_or_else(unknown)
    }

    /// Assigned specific gravity, by which nails and shear walls are told: NDS 2018 Table 12.3.3A.
    #[must_use]
    pub const fn specific_gravity(self) -> Cited<f64> {
        assigned_specific_gravity(self.group())
    }

    pub(crate) const fn group(self) -> SpeciesGroup {
        match self {
            Self::SprucePineFir => SpeciesGroup::SprucePineFir,
            Self::SprucePineFirSouth => SpeciesGroup::SprucePineFirSouth,
            Self::HemFir => SpeciesGroup::HemFir,
            Self::DouglasFirLarch => SpeciesGroup::DouglasFirLarch,
            Self::SouthernPine => SpeciesGroup::SouthernPine,
        }
    }
}

const ACCEPTED: &str = "SPF (Spruce-Pine-Fir), SPF-S (Spruce-Pine-Fir South), HF (Hem-Fir), DF-L (Douglas Fir-Larch), \
                        SP (Southern Pine)";

const NAMES: [(Species, &[&str]); 5] = [
    (Species::SprucePineFir, &["spf", "sprucepinefir"]),
    (Species::SprucePineFirSouth, &["spfs", "spfsouth", "sprucepinefirs", "sprucepinefirsouth"]),
    (Species::HemFir, &["hf", "hemfir", "hem"]),
    (
        Species::DouglasFirLarch,
        &["df", "dfl", "dfir", "dfirl", "dougfir", "dougfirl", "douglasfir", "douglasfirl", "douglasfirlarch"],
    ),
    (Species::SouthernPine, &["sp", "syp", "southernpine", "southernyellowpine", "yellowpine"]),
];
