//! Spans of joists and rafters as the code's tables make them: a simple span, bending under all loads, sag under live load
//! alone, to the nearest inch.

use lumber::{Conditions, Grade, LoadDuration, LumberError, Member, Species};
use measure::{AreaLoad, Length, Ratio, math};
use standards::ibc_2018::table_2308_7_2::TABLE_2308_7_2_2;
use standards::irc_2021::spans::SPANS;
use standards::span_row::{PrintedSpan, SPAN_SIZES, SpanGrade, SpanRow, SpanSpecies, SpanTable};

/// What a table is made for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpanModel {
    /// Live load, roof live load or ground snow, which the tables put on the roof as it is.
    pub live: AreaLoad,
    /// Dead load.
    pub dead: AreaLoad,
    /// How long the live load lasts.
    pub duration: LoadDuration,
    /// The span over the sag that is allowed under live load.
    pub sag_over: Ratio,
}

impl SpanModel {
    /// The model of a table with this dead load.
    #[must_use]
    pub const fn of(table: SpanTable, dead: AreaLoad) -> Self {
        let duration = match table {
            SpanTable::FloorJoists40 | SpanTable::CeilingJoists20 => LoadDuration::TenYears,
            SpanTable::Rafters50 | SpanTable::Rafters70 => LoadDuration::TwoMonths,
            SpanTable::RaftersRoofLiveCeiling => LoadDuration::SevenDays,
        };
        Self { live: table.live(), dead, duration, sag_over: table.deflection_limit() }
    }
}

/// What a table's model allows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ModelSpan {
    /// By bending under live and dead load.
    pub bending: Length,
    /// By sag under live load.
    pub sag: Length,
}

/// The tables end here.
pub const LONGEST: Length = Length::from_feet(26.0);

impl ModelSpan {
    /// The lesser of the two, not rounded.
    #[must_use]
    pub const fn span(self) -> Length {
        self.bending.min(self.sag)
    }

    /// As a table prints it: to the nearest inch; none over 26 ft.
    #[must_use]
    pub fn printed(self) -> Option<Length> {
        let inches = (self.span().inches()).round();
        let span = Length::from_inches(inches);
        (span <= LONGEST).then_some(span)
    }
}

/// What the model allows of a piece at a spacing, one of many alike.
///
/// # Errors
/// When no published value is held for the piece.
pub fn model_span(
    model: &SpanModel,
    member: &Member,
    conditions: Conditions,
    spacing: Length,
) -> Result<ModelSpan, LumberError> {
    let strength = member.adjusted_stresses(&Conditions { repetitive: true, ..conditions }, model.duration)?;
    let section = member.section();
    let per_inch = |load: AreaLoad| (load * spacing).pounds_per_inch();
    let moment = (strength.fb_star * section.section_modulus_strong).inch_pounds();
    let bending = (8.0 * moment / per_inch(model.live + model.dead)).sqrt();
    let stiffness = (strength.e * section.second_moment_strong).pound_square_inches();
    let cube = 384.0 * stiffness / (5.0 * per_inch(model.live) * model.sag_over);
    Ok(ModelSpan { bending: Length::from_inches(bending), sag: Length::from_inches(math::pow(cube, 1.0 / 3.0)) })
}

/// The row of a table as it was read; none where it was not.
#[must_use]
pub fn printed_row(
    table: SpanTable,
    dead: AreaLoad,
    (species, grade): (Species, Grade),
    spacing: Length,
) -> Option<&'static SpanRow> {
    let (species, grade) = (named_species(species)?, named_grade(grade)?);
    SPANS.iter().chain(TABLE_2308_7_2_2).find(|row| {
        row.table == table
            && row.dead == dead
            && row.species == species
            && row.grade == grade
            && (row.spacing - spacing).abs() < Length::from_inches(0.01)
    })
}

/// The printed span of a size in a row.
#[must_use]
pub fn printed_span(row: &SpanRow, size: &str) -> Option<PrintedSpan> {
    let column = SPAN_SIZES.iter().position(|name| *name == size)?;
    row.spans[column]
}

const fn named_species(species: Species) -> Option<SpanSpecies> {
    match species {
        Species::DouglasFirLarch => Some(SpanSpecies::DouglasFirLarch),
        Species::HemFir => Some(SpanSpecies::HemFir),
        Species::SouthernPine => Some(SpanSpecies::SouthernPine),
        Species::SprucePineFir => Some(SpanSpecies::SprucePineFir),
        Species::SprucePineFirSouth => None,
    }
}

const fn named_grade(grade: Grade) -> Option<SpanGrade> {
    match grade {
        Grade::SelectStructural => Some(SpanGrade::SelectStructural),
        Grade::No1 => Some(SpanGrade::No1),
        Grade::No2 => Some(SpanGrade::No2),
        Grade::No3 => Some(SpanGrade::No3),
        _ => None,
    }
}
