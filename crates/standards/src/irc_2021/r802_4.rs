//! R802.3 to R802.7: ridges, hips and valleys, ties of rafters, heel joints, seat cuts and tails.

use measure::{AreaLoad, Length, Ratio};

use super::DOCUMENT;
use crate::{OutsideTable, Source, Status};

/// R802.3 and R802.4.3: a ridge, a hip or a valley is at least 2 in nominal thick and no less deep than the cut end of
/// the rafter. Read as building officials quote it.
pub const DEPTH_OF_RIDGE_HIP_VALLEY: Source = Source::new(DOCUMENT, "R802.3, R802.4.3", Status::LookedUp);
/// R802.3: under this pitch the ridge is a beam that carries, not a board (rise on twelve; from memory).
pub const RIDGE_BEAM_UNDER: Ratio = 3.0;
/// R802.4.4 (R802.3 before): where a ridge beam is asked for.
pub const RIDGE_BEAM: Source = Source::new(DOCUMENT, "R802.4.4", Status::FromMemory);

/// R802.5.2: ceiling joists or ties across the rafters, and where they may be. The lower third was read; the rest is from
/// memory.
pub const RAFTER_TIES: Source = Source::new(DOCUMENT, "R802.5.2", Status::PartlyLookedUp);
/// The highest that a tie may be over the plate, as a share of the height from plate to ridge.
pub const HIGHEST_TIE: Ratio = 1.0 / 3.0;
/// Ties are no farther apart than this; read in later texts, 4 ft in older ones.
pub const TIE_SPACING: Length = Length::from_feet(2.0);
/// R802.5.2.1 and R802.3.1: collar ties or ridge straps in the upper third, against the ridge pulling apart.
pub const COLLAR_TIES: Source = Source::new(DOCUMENT, "R802.3.1", Status::FromMemory);
/// They are no farther apart than this.
pub const COLLAR_TIE_SPACING: Length = Length::from_feet(4.0);

/// Table R802.4.1, note: what is left of a rafter's printed span when its tie sits over the plate, by the tie's height as
/// a share of the height from plate to ridge.
pub const SPAN_LEFT: Source = Source::new(DOCUMENT, "Table R802.4.1 note", Status::FromMemory);

const SPANS_LEFT: [(Ratio, Ratio); 5] =
    [(1.0 / 3.0, 0.67), (1.0 / 4.0, 0.76), (1.0 / 5.0, 0.83), (1.0 / 6.0, 0.90), (1.0 / 7.5, 1.00)];

/// What is left of a rafter's printed span with its tie so high. Between two rows the lesser is taken.
///
/// # Errors
/// A tie above the lower third.
pub fn span_left(height_share: Ratio) -> Result<Ratio, OutsideTable> {
    check_tie(height_share)?;
    let row = SPANS_LEFT.iter().rev().find(|(share, _)| height_share <= share + ROUNDING);
    Ok(row.map_or(SPANS_LEFT[0].1, |(_, left)| *left))
}

/// Table R802.5.2, note: how many more nails a heel joint takes when the tie sits over the plate.
pub const MORE_NAILS: Source = Source::new(DOCUMENT, "Table R802.5.2 note", Status::LookedUp);

const NAILS_TIMES: [(Ratio, Ratio); 5] =
    [(1.0 / 3.0, 1.5), (1.0 / 4.0, 1.33), (1.0 / 5.0, 1.25), (1.0 / 6.0, 1.2), (1.0 / 10.0, 1.11)];

/// How many times as many nails a heel joint takes with its tie so high. Between two rows the greater is taken.
///
/// # Errors
/// A tie above the lower third.
pub fn nails_times(height_share: Ratio) -> Result<Ratio, OutsideTable> {
    check_tie(height_share)?;
    if height_share <= ROUNDING {
        return Ok(1.0);
    }
    let row = NAILS_TIMES.iter().rev().find(|(share, _)| height_share <= share + ROUNDING);
    Ok(row.map_or(NAILS_TIMES[0].1, |(_, times)| *times))
}

/// A share that was worked out from two lengths is its row's own to this.
const ROUNDING: Ratio = 1e-9;

fn check_tie(height_share: Ratio) -> Result<(), OutsideTable> {
    if height_share <= HIGHEST_TIE + ROUNDING {
        return Ok(());
    }
    Err(OutsideTable {
        source: RAFTER_TIES,
        given: format!("a tie at {:.2} of the height from plate to ridge", height_share),
        covers: "ties in the lower third",
        next_step: "Lower the ties, or carry the ridge on a beam; above the third an engineer designs the roof.",
    })
}

/// Table R802.5.2: nails of a heel joint. Made anew by the rule that gives all 288 of its cells as they are remembered.
pub const HEEL_JOINT: Source = Source::new(DOCUMENT, "Table R802.5.2", Status::FromMemory);
/// What one 16d common nail of the table carries, pounds, before load duration.
pub const HEEL_NAIL_POUNDS: f64 = 120.0;
/// The fewest nails of a heel joint.
pub const FEWEST_HEEL_NAILS: u32 = 3;
/// Roof and ceiling that the table counts as always there.
pub const HEEL_DEAD: AreaLoad = AreaLoad::from_psf(10.0);
/// Share of the ground's snow that the table counts on the roof.
pub const HEEL_SNOW_SHARE: Ratio = 0.77;

/// What presses on the roof in the heel joint's table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HeelLoad {
    /// Ground snow.
    Snow(AreaLoad),
    /// 20 psf of roof live load.
    RoofLive,
}

/// Nails of a heel joint by the table: pitch as rise on twelve, spacing of the rafters, span of the roof.
///
/// # Errors
/// What the table does not cover: pitches under 3 and over 12, spans over 36 ft, spacing over 24 in, ground snow over 70
/// psf.
pub fn heel_nails(rise: Ratio, spacing: Length, span: Length, load: HeelLoad) -> Result<u32, OutsideTable> {
    let outside = |given: String| OutsideTable {
        source: HEEL_JOINT,
        given,
        covers: "pitches of 3 to 12 in 12, rafters to 24 in apart, roofs to 36 ft wide and ground snow to 70 psf",
        next_step: "The joint is worked by its thrust, or an engineer designs it.",
    };
    if !(3.0..=12.0).contains(&rise) {
        return Err(outside(format!("a pitch of {rise} in 12")));
    }
    if spacing > Length::from_feet(2.0) || span > Length::from_feet(36.0) {
        return Err(outside(format!("rafters {} in apart on a roof {} ft wide", spacing.inches(), span.feet())));
    }
    let (live, duration) = match load {
        HeelLoad::Snow(ground) if ground.psf() > 70.0 => {
            return Err(outside(format!("ground snow of {} psf", ground.psf())));
        }
        HeelLoad::Snow(ground) => (ground * HEEL_SNOW_SHARE, 1.15),
        HeelLoad::RoofLive => (AreaLoad::from_psf(20.0), 1.25),
    };
    let half = ((live + HEEL_DEAD) * spacing * (span / 2.0)).pounds();
    let thrust = half / (2.0 * rise / 12.0);
    let nails = (thrust / (HEEL_NAIL_POUNDS * duration)).ceil();
    Ok(whole(nails).max(FEWEST_HEEL_NAILS))
}

/// A count that is known to be small.
fn whole(count: f64) -> u32 {
    (0..=10_000).find(|&number| f64::from(number) >= count).unwrap_or(u32::MAX)
}

/// R802.6: least bearing of a rafter on wood.
pub const RAFTER_BEARING: Source = Source::new(DOCUMENT, "R802.6", Status::FromMemory);
/// R802.7.1: a notch at the end of a rafter, the seat cut among them, is at most a quarter of its depth.
pub const SEAT_CUT: Source = Source::new(DOCUMENT, "R802.7.1", Status::LookedUp);
/// R802.7.1.1: what must be left of a tail past its seat, with an overhang to 24 in.
pub const TAIL: Source = Source::new(DOCUMENT, "R802.7.1.1", Status::LookedUp);
/// Wood left over the seat in later texts.
pub const TAIL_LEFT_LATER: Length = Length::from_inches(3.5);
/// Wood left over the seat as earlier texts print it: 4 in nominal, 102 mm.
pub const TAIL_LEFT_EARLIER: Length = Length::from_inches(4.0);
/// The longest tail of that rule.
pub const TAIL_OVERHANG: Length = Length::from_inches(24.0);

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: a value sheet of the code's table of heel joints: 3 in 12, 24 in apart, 70 psf, 36 ft: 34 nails; 12 in 12,
    /// 16 in apart, 30 psf, 24 ft: 3.
    #[test]
    fn heel_joints_as_remembered() {
        let nails = |rise, spacing, span, ground| {
            let load = HeelLoad::Snow(AreaLoad::from_psf(ground));
            heel_nails(rise, Length::from_inches(spacing), Length::from_feet(span), load).unwrap()
        };
        assert_eq!(nails(3.0, 24.0, 36.0, 70.0), 34);
        assert_eq!(nails(12.0, 16.0, 24.0, 30.0), 3);
        assert!(heel_nails(2.0, Length::from_feet(2.0), Length::from_feet(20.0), HeelLoad::RoofLive).is_err());
    }

    /// Source: the multipliers of a raised tie as they are read or remembered, and the tie above the third refused.
    #[test]
    fn raised_ties() {
        for (share, span, nails) in
            [(1.0 / 3.0, 0.67, 1.5), (0.25, 0.76, 1.33), (0.2, 0.83, 1.25), (1.0 / 6.0, 0.90, 1.2)]
        {
            assert_eq!((span_left(share).unwrap(), nails_times(share).unwrap()), (span, nails), "{share}");
        }
        assert_eq!((span_left(0.3).unwrap(), nails_times(0.3).unwrap()), (0.67, 1.5), "the harsher row counts between");
        assert_eq!((span_left(0.0).unwrap(), nails_times(0.0).unwrap()), (1.0, 1.0));
        assert!(span_left(0.34).unwrap_err().to_string().contains("lower third"));
    }
}
