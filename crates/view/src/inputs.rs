//! The inputs of a check or of Site as the screen shows them.

use framing::field::{Group as SpecGroup, Kind};
use framing::reading::{Origin as ReadOrigin, Reading, Value};

use crate::model::{Entry, Field, Group, Origin};

/// Every input, in the order they are asked. The size is chosen from the list of sizes, not typed.
pub(crate) fn fields(reading: &Reading) -> Vec<Field> {
    reading.values.iter().filter(|value| !matches!(value.spec.kind, Kind::Size)).map(field).collect()
}

fn field(value: &Value) -> Field {
    let typed = value.origin == ReadOrigin::Typed;
    Field {
        id: value.spec.id,
        label: value.spec.label,
        help: value.spec.help,
        entry: entry(value),
        text: if typed || value.origin == ReadOrigin::Site { value.text.clone() } else { String::new() },
        shown: value.shown.clone(),
        echo: if typed { value.echo.clone() } else { String::new() },
        number: value.number,
        origin: match value.origin {
            ReadOrigin::Typed => Origin::Typed,
            ReadOrigin::Site => Origin::Site,
            ReadOrigin::Assumed => Origin::Assumed,
            ReadOrigin::Unsaid => Origin::Unknown,
        },
        problem: value.problem.clone(),
        group: group(value.spec.group),
    }
}

fn entry(value: &Value) -> Entry {
    match value.spec.kind {
        Kind::Length { least, most, .. } => Entry::Length { least, most },
        Kind::Number { unit, .. } => Entry::Number { unit },
        Kind::Choice(options) => Entry::Choice(options),
        Kind::Lines => Entry::Lines,
        Kind::Special { .. } | Kind::Name | Kind::Size => Entry::Text,
    }
}

const fn group(group: SpecGroup) -> Group {
    match group {
        SpecGroup::Opening => Group::Opening,
        SpecGroup::Carries => Group::Carries,
        SpecGroup::Wall => Group::Wall,
        SpecGroup::Wood => Group::Wood,
        SpecGroup::Site => Group::Site,
        SpecGroup::Label => Group::Label,
        SpecGroup::Limits => Group::Limits,
        SpecGroup::AsBuilt => Group::AsBuilt,
        SpecGroup::Place => Group::Place,
        SpecGroup::Upwind => Group::Upwind,
        SpecGroup::Ground => Group::Ground,
        SpecGroup::House => Group::House,
        SpecGroup::Wing => Group::Wing,
        SpecGroup::Glass => Group::Glass,
        SpecGroup::RoofSnow => Group::RoofSnow,
        SpecGroup::Weights => Group::Weights,
        SpecGroup::Parts => Group::Parts,
        SpecGroup::Shape => Group::Shape,
        SpecGroup::Bears => Group::Bears,
        SpecGroup::Lies => Group::Lies,
        SpecGroup::Cut => Group::Cut,
        SpecGroup::Sheet => Group::Sheet,
    }
}
