//! Grades, as the grade stamp names them.

use crate::{LumberError, Species, names};

/// A visual grade of sawn lumber.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Grade {
    /// Dense Select Structural (Southern Pine).
    DenseSelectStructural,
    /// Select Structural.
    SelectStructural,
    /// Non-Dense Select Structural (Southern Pine).
    NonDenseSelectStructural,
    /// No. 1 & Better (Douglas Fir-Larch, Hem-Fir).
    No1AndBetter,
    /// No. 1 Dense (Southern Pine).
    No1Dense,
    /// No. 1.
    No1,
    /// No. 1 Non-Dense (Southern Pine).
    No1NonDense,
    /// No. 2 Dense (Southern Pine).
    No2Dense,
    /// No. 2. For Spruce-Pine-Fir also what is stamped No. 1/No. 2: one row holds both.
    No2,
    /// No. 2 Non-Dense (Southern Pine).
    No2NonDense,
    /// No. 3.
    No3,
    /// Stud.
    Stud,
    /// Construction, 2 to 4 in wide.
    Construction,
    /// Standard, 2 to 4 in wide.
    Standard,
    /// Utility, 2 to 4 in wide.
    Utility,
}

impl Grade {
    /// Every grade.
    pub const ALL: [Self; 15] = [
        Self::DenseSelectStructural,
        Self::SelectStructural,
        Self::NonDenseSelectStructural,
        Self::No1AndBetter,
        Self::No1Dense,
        Self::No1,
        Self::No1NonDense,
        Self::No2Dense,
        Self::No2,
        Self::No2NonDense,
        Self::No3,
        Self::Stud,
        Self::Construction,
        Self::Standard,
        Self::Utility,
    ];

    /// The name: `No. 2`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::DenseSelectStructural => "Dense Select Structural",
            Self::SelectStructural => "Select Structural",
            Self::NonDenseSelectStructural => "Non-Dense Select Structural",
            Self::No1AndBetter => "No. 1 & Better",
            Self::No1Dense => "No. 1 Dense",
            Self::No1 => "No. 1",
            Self::No1NonDense => "No. 1 Non-Dense",
            Self::No2Dense => "No. 2 Dense",
            Self::No2 => "No. 2",
            Self::No2NonDense => "No. 2 Non-Dense",
            Self::No3 => "No. 3",
            Self::Stud => "Stud",
            Self::Construction => "Construction",
            Self::Standard => "Standard",
            Self::Utility => "Utility",
        }
    }

    /// Reads a grade as it is stamped, written or said: `No. 2`, `#2`, `2`, `No.1/No.2`, `SEL STR`, `STUD`.
    ///
    /// `No. 1/No. 2` and `No. 2 & Better` are read as No. 2, the lesser they promise.
    ///
    /// # Errors
    /// When the text names no grade; the message lists what is accepted.
    ///
    /// ```
    /// use lumber::Grade;
    /// assert_eq!(Grade::from_text("#2")?, Grade::No2);
    /// assert_eq!(Grade::from_text("Sel. Str.")?, Grade::SelectStructural);
    /// assert!(Grade::from_text("clear").is_err());
    /// # Ok::<(), lumber::LumberError>(())
    /// ```
    pub fn from_text(text: &str) -> Result<Self, LumberError> {
        let unknown = || LumberError::UnknownGrade { given: names::repeated(text), accepted: ACCEPTED };
        names::find(&NAMES, text).ok_or_else(unknown)
    }

    /// Construction, Standard and Utility: made 2 to 4 in wide only.
    pub(crate) const fn is_light_framing(self) -> bool {
        matches!(self, Self::Construction | Self::Standard | Self::Utility)
    }
}

/// Reads a species group and a grade written together, in either order: `SPF No. 2`, `#1 Southern Pine`.
///
/// # Errors
/// When no part of the text names a species group, or the rest names no grade; the message lists what is accepted.
///
/// ```
/// use lumber::{Grade, Species, species_and_grade};
/// assert_eq!(species_and_grade("Douglas Fir-Larch, No.1")?, (Species::DouglasFirLarch, Grade::No1));
/// # Ok::<(), lumber::LumberError>(())
/// ```
pub fn species_and_grade(text: &str) -> Result<(Species, Grade), LumberError> {
    let words: Vec<&str> = text.split([' ', ',', '\t']).filter(|word| !word.is_empty()).collect();
    let splits = (1..words.len()).map(|at| (words[..at].join(" "), words[at..].join(" ")));
    let mut problem = None;
    for (first, second) in splits {
        for (species, grade) in [(&first, &second), (&second, &first)] {
            let Ok(species) = Species::from_text(species) else { continue };
            match Grade::from_text(grade) {
                Ok(grade) => return Ok((species, grade)),
                Err(unknown) => problem = problem.or(Some(unknown)),
            }
        }
    }
    let Some(problem) = problem else {
        let species = Species::from_text(text)?;
        return Err(LumberError::UnknownGrade { given: format!("{} alone", species.name()), accepted: ACCEPTED });
    };
    Err(problem)
}

const ACCEPTED: &str = "Select Structural, No. 1 & Better, No. 1, No. 2 (also No. 1/No. 2), No. 3, Stud, Construction, \
                        Standard, Utility; for Southern Pine also Dense and Non-Dense of Select Structural, No. 1, No. 2";

const NAMES: [(Grade, &[&str]); 15] = [
    (Grade::DenseSelectStructural, &["denseselectstructural", "dss", "denseselstr"]),
    (Grade::SelectStructural, &["selectstructural", "ss", "selstr", "selectstr", "sel", "select"]),
    (Grade::NonDenseSelectStructural, &["nondenseselectstructural", "ndss", "nondenseselstr"]),
    (
        Grade::No1AndBetter,
        &["no1better", "no1andbetter", "no1btr", "no1andbtr", "1btr", "1andbtr", "1better", "1andbetter"],
    ),
    (Grade::No1Dense, &["no1dense", "1dense", "n1d", "no1d"]),
    (Grade::No1, &["no1", "1", "number1", "n1"]),
    (Grade::No1NonDense, &["no1nondense", "1nondense", "no1nd"]),
    (Grade::No2Dense, &["no2dense", "2dense", "n2d", "no2d"]),
    (
        Grade::No2,
        &[
            "no2",
            "2",
            "number2",
            "n2",
            "no1no2",
            "no12",
            "12",
            "1no2",
            "no2btr",
            "no2better",
            "no2andbetter",
            "no2andbtr",
            "2btr",
            "2better",
            "2andbetter",
            "2andbtr",
        ],
    ),
    (Grade::No2NonDense, &["no2nondense", "2nondense", "no2nd"]),
    (Grade::No3, &["no3", "3", "number3", "n3"]),
    (Grade::Stud, &["stud", "studgrade"]),
    (Grade::Construction, &["construction", "const", "constr"]),
    (Grade::Standard, &["standard", "stand", "std"]),
    (Grade::Utility, &["utility", "util"]),
];
