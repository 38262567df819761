//! Sawn sizes: the name one asks for, and what the tape reads.

use measure::Length;
use standards::{
    Source,
    nds_2018::supplement::{DRESSED_SIZE, DressedSize, dressed_size},
};

use crate::{LumberError, names};

/// A sawn size by its nominal name, with its dressed size, dry.
///
/// Timbers 8 in and wider take the smaller of the two sizes that editions print; a piece that was measured can be
/// typed with its own breadth and depth.
#[derive(Clone, Copy, Debug)]
pub struct SawnSize(&'static DressedSize);

impl PartialEq for SawnSize {
    fn eq(&self, other: &Self) -> bool {
        (self.0.nominal_thickness, self.0.nominal_width) == (other.0.nominal_thickness, other.0.nominal_width)
    }
}

impl Eq for SawnSize {}

impl SawnSize {
    /// The size with this nominal thickness and width: `SawnSize::new(2, 10)` is a 2x10.
    ///
    /// # Errors
    /// When no such size is held.
    pub fn new(nominal_thickness: u8, nominal_width: u8) -> Result<Self, LumberError> {
        let unknown = || LumberError::UnknownSize { given: format!("{nominal_thickness}x{nominal_width}") };
        dressed_size((nominal_thickness, nominal_width)).map(Self).ok_or_else(unknown)
    }

    /// Reads `2x10`, `2 X 10`, `2×10` or `2 by 10`.
    ///
    /// # Errors
    /// When the text is not the name of a size held; the message says which are.
    ///
    /// ```
    /// use lumber::SawnSize;
    /// let size = SawnSize::from_text("2 x 10")?;
    /// assert_eq!(size.depth().inches(), 9.25);
    /// assert!(SawnSize::from_text("2x7").is_err());
    /// # Ok::<(), lumber::LumberError>(())
    /// ```
    pub fn from_text(text: &str) -> Result<Self, LumberError> {
        let unknown = || LumberError::UnknownSize { given: names::repeated(text) };
        let joined = text.to_ascii_lowercase().replace("by", "x").replace(['×', '*'], "x");
        let (thickness, width) = joined.split_once('x').ok_or_else(unknown)?;
        let number = |part: &str| part.trim().trim_end_matches('"').parse::<u8>().map_err(|_| unknown());
        dressed_size((number(thickness)?, number(width)?)).map(Self).ok_or_else(unknown)
    }

    /// Every size held, by thickness and then width.
    pub fn all() -> impl Iterator<Item = Self> {
        DRESSED_SIZE.iter().map(|(_, size)| Self(size))
    }

    /// The name: `2x10`.
    #[must_use]
    pub const fn nominal(self) -> &'static str {
        self.0.nominal
    }

    /// First number of the name, in inches.
    #[must_use]
    pub const fn nominal_thickness(self) -> u8 {
        self.0.nominal_thickness
    }

    /// Second number of the name, in inches.
    #[must_use]
    pub const fn nominal_width(self) -> u8 {
        self.0.nominal_width
    }

    /// Dressed thickness: the breadth of a piece on edge.
    #[must_use]
    pub const fn breadth(self) -> Length {
        self.0.breadth
    }

    /// Dressed width: the depth of a piece on edge.
    #[must_use]
    pub const fn depth(self) -> Length {
        self.0.depth
    }

    /// Where the dressed size stands.
    #[must_use]
    pub const fn source(self) -> Source {
        self.0.source
    }

    /// 5 in and thicker: a timber, with tables of its own.
    #[must_use]
    pub const fn is_timber(self) -> bool {
        self.0.nominal_thickness >= 5
    }

    /// A timber whose width is more than 2 in over its thickness: Beams & Stringers.
    pub(crate) const fn is_beam_or_stringer(self) -> bool {
        self.is_timber() && self.0.nominal_width > self.0.nominal_thickness + 2
    }
}
