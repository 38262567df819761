//! What limits a member other than a header.

/// What limits a joist, a rafter, a beam, a stud or a post.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Limit {
    /// Bending with the bottom edge in tension, with lateral stability.
    Bending,
    /// Bending with the top edge in tension: over a support, on an overhang, or lifted by the wind.
    BendingTopInTension,
    /// Shear.
    Shear,
    /// Crushing at a support.
    Bearing,
    /// Bending where it is notched or bored.
    BendingAtCut,
    /// Shear where it is notched or bored.
    ShearAtCut,
    /// Bending together with the thrust along it.
    Thrust,
    /// Sag, or rise, under live load, snow or wind.
    LiveSag,
    /// Sag under total load.
    TotalSag,
    /// Compression along it.
    Compression,
    /// Compression along it together with bending in the wind.
    CompressionAndWind,
    /// Bending in the wind alone.
    Wind,
    /// Bow in the wind.
    Bow,
    /// The plate crushed under it.
    PlateBearing,
    /// Too slender for the standard to give a number.
    Slenderness,
}

impl Limit {
    /// In the trade's words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Bending => "bending",
            Self::BendingTopInTension => "bending, top edge in tension",
            Self::Shear => "shear",
            Self::Bearing => "bearing at a support",
            Self::BendingAtCut => "bending at the cut",
            Self::ShearAtCut => "shear at the cut",
            Self::Thrust => "bending with thrust",
            Self::LiveSag => "sag under live load",
            Self::TotalSag => "total sag",
            Self::Compression => "compression",
            Self::CompressionAndWind => "compression with wind",
            Self::Wind => "bending in the wind",
            Self::Bow => "bow in the wind",
            Self::PlateBearing => "bearing on the plate",
            Self::Slenderness => "slenderness",
        }
    }
}
