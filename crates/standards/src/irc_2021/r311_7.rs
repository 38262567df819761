//! R311.7 and R312.1: stairs, their handrails, and guards.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::{Source, Status};

/// One size that a clause limits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StairLimit {
    /// The size.
    pub value: Length,
    /// The clause, and how the size came here.
    pub source: Source,
}

/// Sizes that an edition limits. Depths are measured level, heights plumb, from nosing to nosing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StairLimits {
    /// Highest riser.
    pub riser: StairLimit,
    /// Largest less smallest riser of a flight. Read in two pages of practice; that the clause says it is from memory.
    pub riser_variation: StairLimit,
    /// Shallowest tread.
    pub tread: StairLimit,
    /// Largest less smallest tread of a flight. As for risers.
    pub tread_variation: StairLimit,
    /// Least headroom, plumb above the line of the nosings.
    pub headroom: StairLimit,
    /// Least clear width above the handrail.
    pub width: StairLimit,
    /// Least clear width at and below one handrail.
    pub width_one_rail: StairLimit,
    /// Least clear width at and below handrails on both sides.
    pub width_two_rails: StairLimit,
    /// Greatest height of a flight between floors or landings. Checklists of several hands repeat it; a summary on the web
    /// gives [`FLIGHT_RISE_BEFORE_2018`].
    pub flight_rise: StairLimit,
    /// Least projection of a nosing, with solid risers and treads under [`Self::tread_without_nosing`].
    pub nosing_least: StairLimit,
    /// Greatest projection of a nosing.
    pub nosing_most: StairLimit,
    /// A tread this deep needs no nosing.
    pub tread_without_nosing: StairLimit,
    /// Largest less smallest projection of the nosings of a stair.
    pub nosing_variation: StairLimit,
    /// Least depth of a landing in the direction of travel; it is as wide as the stair.
    pub landing: StairLimit,
    /// Shallowest winder at the walk line.
    pub winder_at_walk_line: StairLimit,
    /// Where the walk line is: from the clear edge of the narrow side.
    pub walk_line: StairLimit,
    /// Shallowest winder at any point within the clear width.
    pub winder_anywhere: StairLimit,
    /// Largest less smallest winder of a flight at the walk line; they may differ from its straight treads.
    pub winder_variation: StairLimit,
    /// A ball of this size does not pass an open riser that is over [`Self::open_riser_from`].
    pub open_riser_ball: StairLimit,
    /// Open risers are limited where the tread is higher than this above the floor below.
    pub open_riser_from: StairLimit,
    /// Lowest handrail, above the line of the nosings. Read in an older edition and in a town's list.
    pub handrail_lowest: StairLimit,
    /// Highest handrail.
    pub handrail_highest: StairLimit,
    /// A floor higher than this above what is below it has a guard.
    pub guard_from: StairLimit,
    /// Lowest guard.
    pub guard: StairLimit,
    /// Lowest guard on the open side of a stair, above the line of the nosings.
    pub guard_on_stair: StairLimit,
    /// A ball of this size does not pass a guard.
    pub guard_ball: StairLimit,
    /// The same on the open side of a stair.
    pub guard_on_stair_ball: StairLimit,
    /// The same in the triangle of riser, tread and bottom rail.
    pub guard_triangle_ball: StairLimit,
    /// Spiral stairs: highest riser.
    pub spiral_riser: StairLimit,
    /// Spiral stairs: shallowest tread at the walk line.
    pub spiral_tread: StairLimit,
    /// Spiral stairs: least headroom.
    pub spiral_headroom: StairLimit,
    /// Spiral stairs: least clear width at and below the handrail.
    pub spiral_width: StairLimit,
}

/// R311.7.3 of the editions before 2018, still found in summaries.
pub const FLIGHT_RISE_BEFORE_2018: Length = Length::from_inches(147.0);
/// R311.7.7: steepest slope of a tread or a landing: 1 in 48.
pub const STEEPEST_TREAD: Ratio = 1.0 / 48.0;
/// R311.7.8: a flight of this many risers has a handrail.
pub const HANDRAIL_FROM_RISERS: u16 = 4;
/// R311.7.8: handrails. Read in an older edition.
pub const HANDRAIL: Source = Source::new(DOCUMENT, "R311.7.8", Status::PartlyLookedUp);
/// R311.7.5: sizes are taken without carpets, rugs and runners. Read in a page on 2018.
pub const WITHOUT_CARPET: Source = Source::new(DOCUMENT, "R311.7.5", Status::PartlyLookedUp);

/// The limits of 2021. What was read was read of 2018; that 2021 says the same is from memory.
pub const STAIRS: StairLimits = limits(DOCUMENT, Status::PartlyLookedUp);

/// The limits, the same in the editions of 2018 and 2021, where `read` is the status of those that were read in 2018.
pub(crate) const fn limits(document: &'static str, read: Status) -> StairLimits {
    const fn limit(inches: f64, document: &'static str, place: &'static str, status: Status) -> StairLimit {
        StairLimit { value: Length::from_inches(inches), source: Source::new(document, place, status) }
    }
    let partly = Status::PartlyLookedUp;
    let memory = Status::FromMemory;
    StairLimits {
        riser: limit(7.75, document, "R311.7.5.1", read),
        riser_variation: limit(0.375, document, "R311.7.5.1", partly),
        tread: limit(10.0, document, "R311.7.5.2", read),
        tread_variation: limit(0.375, document, "R311.7.5.2", partly),
        headroom: limit(80.0, document, "R311.7.2", read),
        width: limit(36.0, document, "R311.7.1", read),
        width_one_rail: limit(31.5, document, "R311.7.1", read),
        width_two_rails: limit(27.0, document, "R311.7.1", read),
        flight_rise: limit(151.0, document, "R311.7.3", memory),
        nosing_least: limit(0.75, document, "R311.7.5.3", memory),
        nosing_most: limit(1.25, document, "R311.7.5.3", memory),
        tread_without_nosing: limit(11.0, document, "R311.7.5.3", memory),
        nosing_variation: limit(0.375, document, "R311.7.5.3", memory),
        landing: limit(36.0, document, "R311.7.6", memory),
        winder_at_walk_line: limit(10.0, document, "R311.7.5.2.1", memory),
        walk_line: limit(12.0, document, "R311.7.4", memory),
        winder_anywhere: limit(6.0, document, "R311.7.5.2.1", memory),
        winder_variation: limit(0.375, document, "R311.7.5.2.1", read),
        open_riser_ball: limit(4.0, document, "R311.7.5.1", memory),
        open_riser_from: limit(30.0, document, "R311.7.5.1", memory),
        handrail_lowest: limit(34.0, document, "R311.7.8.1", partly),
        handrail_highest: limit(38.0, document, "R311.7.8.1", partly),
        guard_from: limit(30.0, document, "R312.1.1", partly),
        guard: limit(36.0, document, "R312.1.2", memory),
        guard_on_stair: limit(34.0, document, "R312.1.2", memory),
        guard_ball: limit(4.0, document, "R312.1.3", partly),
        guard_on_stair_ball: limit(4.375, document, "R312.1.3", memory),
        guard_triangle_ball: limit(6.0, document, "R312.1.3", memory),
        spiral_riser: limit(9.5, document, "R311.7.10.1", memory),
        spiral_tread: limit(6.75, document, "R311.7.10.1", memory),
        spiral_headroom: limit(78.0, document, "R311.7.10.1", memory),
        spiral_width: limit(26.0, document, "R311.7.10.1", memory),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::irc_2018;

    /// Source: a county's stairways page that quotes the 2018 IRC (riser, tread, headroom, widths); two pages of practice
    /// (variation); the other rows are a value sheet from memory. Sizes are whole sixteenths: exact.
    #[test]
    fn rows_as_the_sheet_has_them() {
        let s = irc_2018::STAIRS;
        let rows = [
            (s.riser, 7.75, Status::LookedUp),
            (s.tread, 10.0, Status::LookedUp),
            (s.headroom, 80.0, Status::LookedUp),
            (s.width, 36.0, Status::LookedUp),
            (s.width_one_rail, 31.5, Status::LookedUp),
            (s.width_two_rails, 27.0, Status::LookedUp),
            (s.riser_variation, 0.375, Status::PartlyLookedUp),
            (s.tread_variation, 0.375, Status::PartlyLookedUp),
            (s.flight_rise, 151.0, Status::FromMemory),
            (s.nosing_least, 0.75, Status::FromMemory),
            (s.nosing_most, 1.25, Status::FromMemory),
            (s.tread_without_nosing, 11.0, Status::FromMemory),
            (s.nosing_variation, 0.375, Status::FromMemory),
            (s.landing, 36.0, Status::FromMemory),
            (s.winder_at_walk_line, 10.0, Status::FromMemory),
            (s.walk_line, 12.0, Status::FromMemory),
            (s.winder_anywhere, 6.0, Status::FromMemory),
            (s.winder_variation, 0.375, Status::LookedUp),
            (s.open_riser_ball, 4.0, Status::FromMemory),
            (s.open_riser_from, 30.0, Status::FromMemory),
            (s.handrail_lowest, 34.0, Status::PartlyLookedUp),
            (s.handrail_highest, 38.0, Status::PartlyLookedUp),
            (s.guard_from, 30.0, Status::PartlyLookedUp),
            (s.guard, 36.0, Status::FromMemory),
            (s.guard_on_stair, 34.0, Status::FromMemory),
            (s.guard_ball, 4.0, Status::PartlyLookedUp),
            (s.guard_on_stair_ball, 4.375, Status::FromMemory),
            (s.guard_triangle_ball, 6.0, Status::FromMemory),
            (s.spiral_riser, 9.5, Status::FromMemory),
            (s.spiral_tread, 6.75, Status::FromMemory),
            (s.spiral_headroom, 78.0, Status::FromMemory),
            (s.spiral_width, 26.0, Status::FromMemory),
        ];
        for (limit, inches, status) in rows {
            assert_eq!(limit.value.inches().to_bits(), f64::to_bits(inches), "{}", limit.source.place);
            assert_eq!(limit.source.status, status, "{} {inches}", limit.source.place);
            assert_eq!(limit.source.document, "IRC 2018");
        }
    }

    /// What 2021 says was not read: none of its limits may be marked as read.
    #[test]
    fn nothing_of_2021_is_marked_as_read() {
        for limit in [STAIRS.riser, STAIRS.tread, STAIRS.headroom, STAIRS.width, STAIRS.winder_variation] {
            assert_eq!(limit.source.status, Status::PartlyLookedUp);
            assert_eq!(limit.source.document, "IRC 2021");
        }
    }
}
