//! Which outlines are possible.

use measure::{Denominator, Length, Slope};

use super::{
    EaveHeight, HouseOutline, OutlineError, Part, Roof, Walls,
    part_shape::PartShape,
    point::{Along, Rectangle, TOUCHING},
};

/// Sizes that a wood house of up to three storeys has. None is a limit of a code; beyond them a wrong unit or a slipped
/// point is likelier than a house.
const SIDE: [f64; 2] = [6.0, 200.0];
const OVERALL: [f64; 2] = [6.0, 300.0];
const WALL: [f64; 2] = [2.0, 20.0];
const FLOOR: [f64; 2] = [0.0, 4.0];
const FOUNDATION: [f64; 2] = [0.0, 20.0];
const HEEL: [f64; 2] = [0.0, 4.0];
const EAVE: [f64; 2] = [4.0, 60.0];
const OVERHANG: [f64; 2] = [0.0, 6.0];
const PLACE: [f64; 2] = [-1000.0, 1000.0];
const MOST_STOREYS: usize = 3;
const PITCH: [f64; 2] = [0.25, 24.0];

/// Whether a house is possible.
pub(super) fn house(outline: &HouseOutline) -> Result<(), OutlineError> {
    if outline.walls == Walls::OpenSided {
        return Err(OutlineError::NotCovered {
            what: "an open side",
            reason: "Wind under the roof of an open building lifts it by rules that are not worked here. An engineer \
                     designs a carport or an open porch.",
        });
    }
    if outline.parapet.is_some() {
        return Err(OutlineError::NotCovered {
            what: "a parapet",
            reason: "It takes wind of its own and holds back snow and water, which is not worked here. An engineer \
                     designs it.",
        });
    }
    if outline.parts.is_empty() {
        return Err(OutlineError::NoParts);
    }
    outline.parts.iter().enumerate().try_for_each(|(index, one)| part(index, one))?;
    let walls: Vec<_> = outline.parts.iter().map(|part| PartShape::new(part.clone()).walls()).collect();
    overlap(&walls)?;
    together(&walls)?;
    let whole = walls.iter().copied().reduce(|a, b| a.around(&b));
    whole.iter().try_for_each(|around| {
        between(None, "length over all parts", around.size(Along::Length), OVERALL)?;
        between(None, "width over all parts", around.size(Along::Width), OVERALL)
    })
}

fn overlap(walls: &[Rectangle]) -> Result<(), OutlineError> {
    for (first, one) in walls.iter().enumerate() {
        for (second, other) in walls.iter().enumerate().skip(first + 1) {
            if one.shared(other, Along::Length).min(one.shared(other, Along::Width)) > TOUCHING {
                return Err(OutlineError::Overlap { first, second });
            }
        }
    }
    Ok(())
}

/// Whether every part touches another along a wall, and so on to the first.
fn together(walls: &[Rectangle]) -> Result<(), OutlineError> {
    let mut reached = vec![0];
    let mut next = 0;
    while let Some(&from) = reached.get(next) {
        let touched = (0..walls.len()).filter(|&part| walls[from].touches(&walls[part]));
        let new: Vec<_> = touched.filter(|part| !reached.contains(part)).collect();
        reached.extend(new);
        next += 1;
    }
    match (0..walls.len()).find(|part| !reached.contains(part)) {
        Some(part) => Err(OutlineError::Apart { part }),
        None => Ok(()),
    }
}

/// Whether a part is possible.
pub(super) fn part(index: usize, part: &Part) -> Result<(), OutlineError> {
    let size = |what, given, range| between(Some(index), what, given, range);
    size("place from left to right", part.at.x, PLACE)?;
    size("place from front to back", part.at.y, PLACE)?;
    size("length", part.length, SIDE)?;
    size("width", part.width, SIDE)?;
    if part.storeys.is_empty() || part.storeys.len() > MOST_STOREYS {
        return Err(OutlineError::Size {
            part: Some(index),
            what: "storeys",
            given: part.storeys.len().to_string(),
            taken: format!("1 to {MOST_STOREYS}"),
        });
    }
    for storey in &part.storeys {
        size("wall height of a storey", storey.wall_height, WALL)?;
        size("depth of a floor", storey.floor_depth, FLOOR)?;
    }
    size("eave overhang", part.overhangs.eave, OVERHANG)?;
    size("rake overhang", part.overhangs.rake, OVERHANG)?;
    eave(index, part)?;
    roof(index, part)
}

fn eave(index: usize, part: &Part) -> Result<(), OutlineError> {
    match part.eave {
        EaveHeight::FromStoreys { foundation, heel } => {
            between(Some(index), "foundation height", foundation, FOUNDATION)?;
            between(Some(index), "heel", heel, HEEL)?;
        }
        EaveHeight::Measured(height) if height < part.storeys_height() => {
            return Err(OutlineError::Size {
                part: Some(index),
                what: "eave height",
                given: text(height),
                taken: format!("no less than its floors and walls together, {}", text(part.storeys_height())),
            });
        }
        EaveHeight::Measured(_) => {}
    }
    between(Some(index), "eave height", part.eave_height(), EAVE)
}

fn roof(index: usize, part: &Part) -> Result<(), OutlineError> {
    for pitch in part.roof.pitches() {
        let given = pitch.rise_in_twelve();
        if !(PITCH[0]..=PITCH[1]).contains(&given) {
            return Err(OutlineError::Size {
                part: Some(index),
                what: "roof pitch",
                given: format!("{given} in 12"),
                taken: format!("{} in 12 to {} in 12, or a flat roof", PITCH[0], PITCH[1]),
            });
        }
    }
    match part.roof {
        Roof::Gambrel { ridge, lower, upper, lower_run } => gambrel(index, part, ridge, [lower, upper], lower_run),
        _ => Ok(()),
    }
}

fn gambrel(
    index: usize,
    part: &Part,
    ridge: Along,
    [lower, upper]: [Slope; 2],
    lower_run: Length,
) -> Result<(), OutlineError> {
    if lower <= upper {
        return Err(OutlineError::Size {
            part: Some(index),
            what: "lower pitch of a gambrel roof",
            given: format!("{} in 12 below {} in 12", lower.rise_in_twelve(), upper.rise_in_twelve()),
            taken: "lower slopes that are steeper than the upper ones".to_owned(),
        });
    }
    let half = match ridge {
        Along::Length => part.width,
        Along::Width => part.length,
    } * 0.5;
    if lower_run <= Length::ZERO || lower_run >= half {
        return Err(OutlineError::Size {
            part: Some(index),
            what: "run of the lower slope",
            given: text(lower_run),
            taken: format!("more than nothing and less than half the span, {}", text(half)),
        });
    }
    Ok(())
}

fn between(part: Option<usize>, what: &'static str, given: Length, [low, high]: [f64; 2]) -> Result<(), OutlineError> {
    let (low, high) = (Length::from_feet(low), Length::from_feet(high));
    if (low..=high).contains(&given) {
        return Ok(());
    }
    Err(OutlineError::Size { part, what, given: text(given), taken: format!("{} to {}", text(low), text(high)) })
}

fn text(length: Length) -> String {
    length.to_feet_inches(Denominator::Sixteenth)
}
