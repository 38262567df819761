//! The wind speed: ultimate or nominal, and how to see that one was taken for the other.

use measure::Speed;
use standards::asce7_16::chapter_26::{BASIC_WIND_SPEED, FASTEST, SLOWEST, basic_wind_speed_is_mapped};
use standards::ibc_2018::section_1609_3::{nominal_speed, ultimate_speed};
use standards::{OutsideTable, Source, Status};

use super::CodeEdition;

/// From which speeds a wind speed looks nominal: no published limit, only what the maps show along the coasts and
/// inland.
pub const LOOKS_NOMINAL: Source = Source::new("common practice", "wind speed maps", Status::CommonPractice);
/// The kind of speed on the residential code's own map, by edition.
pub const KIND_BY_EDITION: Source = Source::new("IRC", "Figure R301.2(4)A, 2012 and 2015", Status::FromMemory);

const LOW_ON_A_COAST: Speed = Speed::from_mph(115.0);
const LOW_ANYWHERE: Speed = Speed::from_mph(95.0);

/// The two kinds of wind speed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SpeedKind {
    /// Ultimate: `V`, `V_ult`, the basic wind speed of ASCE 7 from 2010 on.
    Ultimate,
    /// Nominal, for allowable-stress tables: `V_asd`.
    Nominal,
}

/// A wind speed as it was given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GivenSpeed {
    /// The number.
    pub speed: Speed,
    /// Which kind it was said to be.
    pub kind: SpeedKind,
}

/// A wind speed as both kinds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindSpeed {
    /// Ultimate.
    pub ultimate: Speed,
    /// Nominal.
    pub nominal: Speed,
    /// Which of the two was given; the other is computed.
    pub given: SpeedKind,
}

impl GivenSpeed {
    /// The speed as both kinds: `V_asd = V sqrt(0.6)`. A printed nominal speed is a whole number, so the ultimate speed
    /// from it may be off by 0.65 mph.
    ///
    /// # Errors
    /// When the ultimate speed is under 85 or over 200 mph, which no map shows.
    pub fn both_kinds(self) -> Result<WindSpeed, OutsideTable> {
        let Self { speed, kind } = self;
        let (ultimate, nominal) = match kind {
            SpeedKind::Ultimate => (speed, nominal_speed(speed)),
            SpeedKind::Nominal => (ultimate_speed(speed), speed),
        };
        match kind {
            SpeedKind::Ultimate => basic_wind_speed_is_mapped(ultimate)?,
            SpeedKind::Nominal if (SLOWEST..=FASTEST).contains(&ultimate) => {}
            SpeedKind::Nominal => {
                return Err(OutsideTable {
                    source: BASIC_WIND_SPEED,
                    given: format!(
                        "nominal wind speed {} mph, which is {:.1} mph ultimate",
                        speed.mph(),
                        ultimate.mph()
                    ),
                    covers: "ultimate wind speeds from 85 to 200 mph, which are 65.8 to 154.9 mph nominal",
                    next_step: "Ask which kind of speed it is, and use the ultimate one; the code official decides which \
                                speed the site has.",
                });
            }
        }
        Ok(WindSpeed { ultimate, nominal, given: kind })
    }

    /// Whether a speed that was given as ultimate looks like a nominal one, so that it is to be asked about: under 115
    /// mph on a coast, under 95 mph anywhere. It is never changed for that.
    #[must_use]
    pub fn looks_nominal(self, on_a_coast: bool) -> bool {
        let low = if on_a_coast { LOW_ON_A_COAST } else { LOW_ANYWHERE };
        self.kind == SpeedKind::Ultimate && self.speed < low
    }
}

impl CodeEdition {
    /// The kind of speed on the map of this edition: nominal in 2012, ultimate from 2015 on.
    #[must_use]
    pub const fn speed_kind(self) -> SpeedKind {
        match self {
            Self::Irc2012 => SpeedKind::Nominal,
            Self::Irc2015 | Self::Irc2018 | Self::Irc2021 | Self::Irc2024 => SpeedKind::Ultimate,
        }
    }
}
