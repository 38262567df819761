//! What is measured of four corners.

use core::fmt;

use measure::Length;

/// One measurement of four corners, or between the ends of two legs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measurement {
    /// Side A to B.
    Ab,
    /// Side B to C.
    Bc,
    /// Side C to D.
    Cd,
    /// Side D to A.
    Da,
    /// Diagonal A to C.
    Ac,
    /// Diagonal B to D.
    Bd,
    /// Between the ends of two legs.
    Between,
}

impl fmt::Display for Measurement {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Ab => "Side A to B",
            Self::Bc => "Side B to C",
            Self::Cd => "Side C to D",
            Self::Da => "Side D to A",
            Self::Ac => "Diagonal A to C",
            Self::Bd => "Diagonal B to D",
            Self::Between => "The length between the ends",
        })
    }
}

/// Four sides, as one walks round.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sides {
    /// A to B.
    pub ab: Length,
    /// B to C.
    pub bc: Length,
    /// C to D.
    pub cd: Length,
    /// D to A.
    pub da: Length,
}

impl Sides {
    pub(super) const fn named(&self) -> [(Measurement, Length); 4] {
        [(Measurement::Ab, self.ab), (Measurement::Bc, self.bc), (Measurement::Cd, self.cd), (Measurement::Da, self.da)]
    }
}
