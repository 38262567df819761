//! The code's own table of ties, and where it lets toe nails hold a roof, beside what was worked.

use bracing::uplift::Tie;
use measure::{AreaLoad, Force, Length, LineLoad};
use standards::irc_2021::r802_11::{
    Reduction, RoofShape, TOE_NAILS, TiedRoof, ToeNailRule, WallUplift, toe_nails_accepted, wall_uplift,
};

use crate::quick::reply::RuleReply;
use crate::quick::say::{pounds, rule};
use crate::reading::Reading;
use crate::site::input;
use crate::words::{self, figure};

/// Farther from a corner than the footnote asks.
const FAR: Length = Length::from_feet(8.5);
/// What the table has counted of the roof's weight.
const ROOF_AND_CEILING: AreaLoad = AreaLoad::from_psf(15.0);

/// The roof as the table knows it.
fn roof(reading: &Reading) -> Option<TiedRoof> {
    let house = input::house(reading)?;
    Some(TiedRoof {
        exposure: input::exposure_category(reading)?,
        wind_speed: input::basic_speed(reading)?,
        span: house.width,
        pitch: house.pitch,
        shape: if reading.word("roof_kind")? == "hip" { RoofShape::Hip } else { RoofShape::Gable },
        overhang: house.eave_overhang,
        mean_roof_height: input::mean_roof_height(reading, &house),
        dead: ROOF_AND_CEILING,
        from_corner: if reading.word("wall_by_corner")? == "no" { FAR } else { Length::ZERO },
    })
}

/// What the code's table asks of a foot of wall.
pub(super) fn by_table(reading: &Reading) -> Option<Result<WallUplift, String>> {
    let roof = roof(reading)?;
    if let Some(outside) = input::past_the_code(reading) {
        return Some(Err(outside));
    }
    Some(wall_uplift(&roof).map_err(|outside| outside.to_string()))
}

/// The code's own table, beside what was worked.
pub(super) fn table_of_ties(reading: &Reading) -> Option<RuleReply> {
    let spacing = reading.length("rafter_every")?;
    Some(match by_table(reading)? {
        Ok(wall) => {
            let along = format!("{} plf of wall, {}.", figure(wall.uplift.plf().ceil()), reduced(wall.reduction));
            let says = vec![
                along,
                "It counts 15 psf of roof and ceiling: a lighter roof is an engineer's. Porches and gable ends are not in it.".to_owned(),
                format!("{}.", words::source(wall.source)),
            ];
            rule("Table of ties", None, format!("{} each", pounds(wall.uplift * spacing)), says)
        }
        Err(outside) => rule("Table of ties", None, "not covered", vec![outside]),
    })
}

/// Whether the code lets toe nails hold the roof; none where no toe nails do. The drawing's uplift goes before the table's.
pub(super) fn toe_nails(reading: &Reading, tie: &Tie) -> Option<RuleReply> {
    let Tie::Nails { .. } = tie else { return None };
    let spacing = reading.length("rafter_every")?;
    let given = reading.number("uplift_given").map(LineLoad::from_plf);
    let along = given.map_or_else(|| by_table(reading)?.ok().map(|wall| wall.uplift), Some)?;
    let each = (along * spacing).max(Force::ZERO);
    let accepted = toe_nails_accepted(&roof(reading)?, spacing, each);
    let says = match accepted {
        Some(ToeNailRule::SmallUplift) => format!("{} is no more than the 200 lb that they may take.", pounds(each)),
        Some(ToeNailRule::ShelteredRoof) => {
            "To 115 mph in Exposure B, from 5 in 12 and to a span of 32 ft the schedule's toe nails are let be."
                .to_owned()
        }
        None => {
            format!(
                "{} is more than the 200 lb that toe nails may take, whatever their number: set a tie.",
                pounds(each)
            )
        }
    };
    let figure = if accepted.is_some() { "may hold it" } else { "may not hold it" };
    Some(rule(
        "Toe nails at the roof",
        Some(accepted.is_some()),
        figure,
        vec![says, format!("{}.", words::source(TOE_NAILS))],
    ))
}

pub(super) const fn reduced(by: Reduction) -> &'static str {
    match by {
        Reduction::None => "nothing taken off",
        Reduction::AwayFromCorners => "0.75 of it away from the corners",
        Reduction::HipRoof => "0.70 of it under a hip roof",
    }
}
