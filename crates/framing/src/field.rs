//! What each input of a check is, what it may be, and what is assumed when it is not said: one place that makes the
//! type, the limits, the message and the default.

use measure::LengthUnit;

mod bracing;
mod bracing_plan;
mod header;
mod layout;
mod member;
mod site;

pub use bracing::BRACING_FIELDS;
pub use bracing_plan::BRACING_PLAN_FIELDS;
pub use header::HEADER_FIELDS;
pub use layout::{FLOOR_LAYOUT_FIELDS, ROOF_LAYOUT_FIELDS, STRAPPING_FIELDS, WALL_LAYOUT_FIELDS};
pub use member::MEMBER_FIELDS;
pub use site::{SITE_FIELDS, site_fields};

/// How an input is written.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// A length.
    Length {
        /// What a bare number means.
        bare: LengthUnit,
        /// The least that is taken, inches.
        least: f64,
        /// The most that is taken, inches.
        most: f64,
    },
    /// A number with a unit.
    Number {
        /// The unit; empty for a pure number.
        unit: &'static str,
        /// The least that is taken.
        least: f64,
        /// The most that is taken.
        most: f64,
    },
    /// A number that is written in a way of its own, such as a roof's pitch. How it is read stands here, not in the
    /// reader, so that a check without such an input does not carry it along.
    Special {
        /// Reads a text: the number, and what was understood; or a sentence.
        read: fn(&str) -> Result<(f64, String), String>,
        /// Writes the number.
        written: fn(f64) -> String,
        /// The least that is taken.
        least: f64,
        /// The most that is taken.
        most: f64,
    },
    /// One of a few: the value as stored, and its words.
    Choice(&'static [(&'static str, &'static str)]),
    /// A name of one's own.
    Name,
    /// Several lines of text, as they are pasted from a table.
    Lines,
    /// The name of a size; read against the sizes that can be had.
    Size,
}

/// Groups of inputs, in the order they are asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The opening itself.
    Opening,
    /// What it carries.
    Carries,
    /// The wall around it.
    Wall,
    /// The wood.
    Wood,
    /// Loads and place, kept with the job.
    Site,
    /// A member typed in from its label.
    Label,
    /// Limits and rarely changed things.
    Limits,
    /// What was found on site.
    AsBuilt,
    /// What the building department says of the place.
    Place,
    /// What the wind crosses before it comes to the house.
    Upwind,
    /// The ground that the house stands on.
    Ground,
    /// The house's outline.
    House,
    /// A wing of it.
    Wing,
    /// Its doors and windows.
    Glass,
    /// Snow on its roof.
    RoofSnow,
    /// Its weights and live loads, built up.
    Weights,
    /// The parts that the wind is worked out for.
    Parts,
    /// The shape of a member: its spans, its pitch, its spacing.
    Shape,
    /// What holds it up and sideways.
    Bears,
    /// How it lies among its neighbours.
    Lies,
    /// A notch or a hole in it.
    Cut,
    /// A joist from its maker's sheet.
    Sheet,
}

/// What is used when an input is not said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unsaid {
    /// This value, for this reason; every answer says so.
    Assumed(&'static str, &'static str),
    /// Nothing: it is asked, or the part that needs it is left out.
    Nothing,
}

/// One input.
#[derive(Clone, Copy, Debug)]
pub struct FieldSpec {
    /// Its stable name, the same in the command, the screen and the job file.
    pub id: &'static str,
    /// Its name in words.
    pub label: &'static str,
    /// One line that helps to fill it; may be empty.
    pub help: &'static str,
    /// How it is written and what is taken.
    pub kind: Kind,
    /// Its group.
    pub group: Group,
    /// What is used when it is not said.
    pub unsaid: Unsaid,
}

/// An input is told by its name.
impl PartialEq for FieldSpec {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
    }
}

pub(crate) const fn feet(bare: LengthUnit, least: f64, most: f64) -> Kind {
    Kind::Length { bare, least: least * 12.0, most: most * 12.0 }
}

pub(crate) const fn number(unit: &'static str, least: f64, most: f64) -> Kind {
    Kind::Number { unit, least, most }
}

pub(crate) const fn field(
    id: &'static str,
    label: &'static str,
    help: &'static str,
    kind: Kind,
    group: Group,
    unsaid: Unsaid,
) -> FieldSpec {
    FieldSpec { id, label, help, kind, group, unsaid }
}

pub(crate) const YES_NO: Kind = Kind::Choice(&[("yes", "yes"), ("no", "no")]);

/// The input of that name.
#[must_use]
pub fn header_field(id: &str) -> Option<&'static FieldSpec> {
    HEADER_FIELDS.iter().find(|spec| spec.id == id)
}

/// Whether an input is kept with the job and pre-filled in the next check.
#[must_use]
pub const fn kept_with_job(spec: &FieldSpec) -> bool {
    !matches!(
        spec.group,
        Group::Opening
            | Group::Carries
            | Group::Wall
            | Group::Label
            | Group::AsBuilt
            | Group::Shape
            | Group::Bears
            | Group::Lies
            | Group::Cut
            | Group::Sheet
    )
}
