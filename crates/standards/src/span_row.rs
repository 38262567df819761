//! Printed spans of joists and rafters: what the tables of both codes have in common.

use measure::{AreaLoad, Length, Ratio};

use crate::{Source, Status};

/// A table of spans, with what it was made for. A span is the smaller of what bending under live and dead load and
/// deflection under live load alone allow of a simple span, to the nearest inch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpanTable {
    /// IRC Table R502.3.1(2): floor joists of rooms other than sleeping rooms, 40 psf.
    FloorJoists40,
    /// IRC Table R802.5.1(2): ceiling joists under an attic with limited storage, 20 psf.
    CeilingJoists20,
    /// IRC Table R802.4.1(5): rafters under 50 psf of ground snow, no ceiling on them.
    Rafters50,
    /// IRC Table R802.4.1(7): rafters under 70 psf of ground snow, no ceiling on them.
    Rafters70,
    /// IBC Table 2308.7.2(2): rafters under 20 psf of roof live load, a ceiling on them.
    RaftersRoofLiveCeiling,
}

impl SpanTable {
    /// The table, with how a row of it came here.
    #[must_use]
    pub const fn source(self, status: Status) -> Source {
        match self {
            Self::FloorJoists40 => Source::new("IRC 2021", "Table R502.3.1(2)", status),
            Self::CeilingJoists20 => Source::new("IRC 2021", "Table R802.5.1(2)", status),
            Self::Rafters50 => Source::new("IRC 2021", "Table R802.4.1(5)", status),
            Self::Rafters70 => Source::new("IRC 2021", "Table R802.4.1(7)", status),
            Self::RaftersRoofLiveCeiling => Source::new("IBC 2018", "Table 2308.7.2(2)", status),
        }
    }

    /// Live load, roof live load or snow.
    #[must_use]
    pub const fn live(self) -> AreaLoad {
        AreaLoad::from_psf(match self {
            Self::FloorJoists40 => 40.0,
            Self::CeilingJoists20 | Self::RaftersRoofLiveCeiling => 20.0,
            Self::Rafters50 => 50.0,
            Self::Rafters70 => 70.0,
        })
    }

    /// The span over the deflection that is allowed under live load: 360 for L/360.
    #[must_use]
    pub const fn deflection_limit(self) -> Ratio {
        match self {
            Self::FloorJoists40 => 360.0,
            Self::CeilingJoists20 | Self::RaftersRoofLiveCeiling => 240.0,
            Self::Rafters50 | Self::Rafters70 => 180.0,
        }
    }

    /// Load duration factor `C_D`: 1.0 for live load, 1.15 for snow, 1.25 for roof live load.
    #[must_use]
    pub const fn load_duration_factor(self) -> Ratio {
        match self {
            Self::FloorJoists40 | Self::CeilingJoists20 => 1.0,
            Self::Rafters50 | Self::Rafters70 => 1.15,
            Self::RaftersRoofLiveCeiling => 1.25,
        }
    }
}

/// A species as the tables name it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpanSpecies {
    /// Douglas Fir-Larch.
    DouglasFirLarch,
    /// Hem-Fir.
    HemFir,
    /// Southern Pine.
    SouthernPine,
    /// Spruce-Pine-Fir.
    SprucePineFir,
}

/// A grade as the tables name it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpanGrade {
    /// Select Structural.
    SelectStructural,
    /// No. 1.
    No1,
    /// No. 2.
    No2,
    /// No. 3.
    No3,
}

/// A span as it is printed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PrintedSpan {
    /// Feet and inches.
    Of(Length),
    /// More than 26 ft: the table goes no farther.
    Over26Feet,
}

/// Sizes of the columns, in their order.
pub const SPAN_SIZES: [&str; 5] = ["2x4", "2x6", "2x8", "2x10", "2x12"];

/// One row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpanRow {
    /// Its table.
    pub table: SpanTable,
    /// Dead load.
    pub dead: AreaLoad,
    /// Species.
    pub species: SpanSpecies,
    /// Grade.
    pub grade: SpanGrade,
    /// Spacing, on center.
    pub spacing: Length,
    /// Spans in the order of [`SPAN_SIZES`]; none where the table has none, or it was not read.
    pub spans: [Option<PrintedSpan>; 5],
    /// How the row came here.
    pub status: Status,
}
