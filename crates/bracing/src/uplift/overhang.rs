//! Where the roof stands out over the wall: at the eave, and at the rake of a gable end.

use measure::{AreaLoad, Force, Length, LineLoad};
use standards::OutsideTable;
use standards::irc_2021::r802_11::LARGEST_OVERHANG;

use super::{STATICS, refusal};

/// What an eave overhang adds to the net uplift of a foot of wall, from the net lift on it, both faces together: `p o (1 + o /
/// 2L)`, as if that on the other side did not help.
///
/// Table R802.11 has a 2 ft overhang in it already: not to be added to that. Source: statics.
///
/// # Errors
/// An overhang over 24 in, or a roof span that is not over zero.
pub fn eave_uplift(lift: AreaLoad, overhang: Length, span: Length) -> Result<LineLoad, OutsideTable> {
    within(overhang)?;
    if span <= Length::ZERO {
        let given = format!("a roof span of {} ft", span.feet());
        return Err(refusal(STATICS, given, "roof spans over zero", "Measure it again."));
    }
    Ok(lift * overhang * (1.0 + overhang / (span * 2.0)))
}

/// Outlookers that run over a gable wall to a truss inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rake {
    /// How far they stand out.
    pub overhang: Length,
    /// From the gable wall to the truss that holds their inner end.
    pub backspan: Length,
    /// On center.
    pub spacing: Length,
    /// Net lift on the overhang, both faces together, allowable stress design.
    pub on_overhang: AreaLoad,
    /// Net lift on the roof behind it.
    pub on_roof: AreaLoad,
}

/// What the ends of an outlooker must hold; below zero it is pressed down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RakeTies {
    /// At the gable wall.
    pub at_wall: Force,
    /// At the truss inside.
    pub at_truss: Force,
}

/// Works out the ties of an outlooker, by moments about the truss inside and about the wall.
///
/// Ladders of short blocks that no outlooker holds are not for so much: about 9 to 12 in (from memory; one coastal state's
/// code has 12 in). Source: statics; limits from memory.
///
/// # Errors
/// An overhang over 24 in, a backspan shorter than the overhang, or a spacing that is not over zero.
pub fn rake_ties(rake: &Rake) -> Result<RakeTies, OutsideTable> {
    within(rake.overhang)?;
    if rake.backspan < rake.overhang || rake.spacing <= Length::ZERO || rake.backspan <= Length::ZERO {
        let given = format!("a backspan of {} in at {} in", rake.backspan.inches(), rake.spacing.inches());
        let covers = "outlookers that run back as far as they stand out, or farther";
        return Err(refusal(STATICS, given, covers, "Run them back to a truss that is far enough."));
    }
    let out = rake.on_overhang * rake.overhang * rake.spacing;
    let inside = rake.on_roof * rake.backspan * rake.spacing;
    let lever = rake.overhang / (rake.backspan * 2.0);
    Ok(RakeTies { at_wall: out * (1.0 + lever) + inside / 2.0, at_truss: inside / 2.0 - out * lever })
}

fn within(overhang: Length) -> Result<(), OutsideTable> {
    if (Length::ZERO..=LARGEST_OVERHANG).contains(&overhang) {
        return Ok(());
    }
    let given = format!("an overhang of {} in", overhang.inches());
    Err(refusal(STATICS, given, "overhangs to 24 in", "An engineer designs a wider one."))
}
