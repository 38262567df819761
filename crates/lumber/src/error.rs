//! What can be wrong with a piece of lumber; every message is a sentence with a next step.

use standards::nds_2018::OutsideLimits;

/// Why a piece, or a value of it, cannot be given.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LumberError {
    /// The species was not recognised.
    #[error("{given:?} is not a species group held here. Write one of: {accepted}. It stands on the grade stamp.")]
    UnknownSpecies {
        /// What was given.
        given: String,
        /// The names that are read.
        accepted: &'static str,
    },
    /// The grade was not recognised.
    #[error("{given:?} is not a grade held here. Write one of: {accepted}. It stands on the grade stamp.")]
    UnknownGrade {
        /// What was given.
        given: String,
        /// The names that are read.
        accepted: &'static str,
    },
    /// The size was not recognised.
    #[error(
        "{given:?} is not a sawn size held here. Write the nominal size: 2x2 to 2x14, 3x3 to 3x16, 4x4 to 4x16, 6x6 \
         to 6x12."
    )]
    UnknownSize {
        /// What was given.
        given: String,
    },
    /// No published value is held for this piece.
    #[error(
        "No published design value is held for {species} {grade} {size}. Choose a grade that is printed for this size, \
         or ask the engineer."
    )]
    NoPublishedValue {
        /// Species group.
        species: &'static str,
        /// Grade.
        grade: &'static str,
        /// Nominal size.
        size: &'static str,
    },
    /// A number of plies that is not built.
    #[error("{given} plies were given; a member here has 1 to {most}. Change the number of plies.")]
    Plies {
        /// What was given.
        given: u8,
        /// The most that is accepted.
        most: u8,
    },
    /// A size or a value of an engineered piece that no such piece has.
    #[error(
        "{what} {given}{unit} was given; {low} to {high}{unit} is accepted. Read it again on the label or sheet.",
        unit = after_number(unit)
    )]
    OutsideRange {
        /// What was given, in words.
        what: &'static str,
        /// The number given.
        given: f64,
        /// Least accepted.
        low: f64,
        /// Most accepted.
        high: f64,
        /// Unit of the three numbers.
        unit: &'static str,
    },
    /// An engineered piece with no name, or a very long one.
    #[error("The name of an engineered piece has 1 to {most} characters. Write what its label says.")]
    LabelName {
        /// Most characters accepted.
        most: usize,
    },
    /// A product whose values hold for dry service only.
    #[error("{product} has design values for dry service only. Keep it dry, or ask its maker for wet values.")]
    DryServiceOnly {
        /// The product.
        product: &'static str,
    },
    /// A product that has no incising factor.
    #[error("{product} has no incising factor. Ask its maker or its treater for values as treated.")]
    NotIncised {
        /// The product.
        product: &'static str,
    },
    /// A rule of the standard was asked outside its limits.
    #[error(transparent)]
    OutsideLimits(#[from] OutsideLimits),
}

/// The unit as it follows a number: nothing for a pure number.
fn after_number(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" {unit}") }
}
