//! The nail spacings that are asked for, and the line that was counted.

use inspection::{Origin, Required, Subject};
use measure::Length;
use standards::{Source, Status};

use super::NailingCase;
use crate::walk::answer::Answer;
use crate::walk::reading::{Field, Inputs};

pub(super) const EDGE: Field = Field::new("edge_spacing", "Edge nail spacing", 1.0, 16.0);
pub(super) const FIELD: Field = Field::new("field_spacing", "Field nail spacing", 1.0, 24.0);
pub(super) const BOUNDARY: Field = Field::new("boundary_spacing", "Boundary nail spacing", 1.0, 16.0);

/// Taken where no drawing and no table was at hand.
const USUAL_SPACING: Source =
    Source::new("Common practice", "6 in along panel edges, 12 in between", Status::CommonPractice);

/// A line that is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Counted {
    Edge,
    Field,
    Boundary,
}

const LINES: [(&str, Counted); 3] =
    [("edge", Counted::Edge), ("field", Counted::Field), ("boundary", Counted::Boundary)];

/// The spacings that are asked for, as they were typed.
pub(super) struct Spacings {
    pub(super) edge: Option<Length>,
    pub(super) field: Option<Length>,
    boundary: Option<Length>,
    /// The line that was looked at.
    counted: Counted,
}

impl Spacings {
    pub(super) fn read(inputs: &mut Inputs, case: &NailingCase) -> Self {
        Self {
            counted: inputs.choice(&case.line, "line", &LINES).unwrap_or(Counted::Edge),
            edge: inputs.length(&case.edge_spacing, &EDGE),
            field: inputs.length(&case.field_spacing, &FIELD),
            boundary: inputs.length(&case.boundary_spacing, &BOUNDARY),
        }
    }

    /// The line's subject. A boundary is counted as an edge is: it is one, with a spacing of its own.
    pub(super) const fn of(&self) -> Subject {
        match self.counted {
            Counted::Field => Subject::FieldNails,
            Counted::Edge | Counted::Boundary => Subject::EdgeNails,
        }
    }

    const fn input(&self) -> &'static Field {
        match self.counted {
            Counted::Edge => &EDGE,
            Counted::Field => &FIELD,
            Counted::Boundary => &BOUNDARY,
        }
    }

    pub(super) const fn asked(&self) -> Option<Length> {
        match self.counted {
            Counted::Edge => self.edge,
            Counted::Field => self.field,
            Counted::Boundary => self.boundary,
        }
    }

    pub(super) const fn name(&self) -> &'static str {
        self.input().id
    }

    /// The spacing of the line; the usual one where nothing was said.
    pub(super) fn asked_or_usual(&self, inputs: &mut Inputs, answer: &mut Answer, by: &Origin) -> Required<Length> {
        let asked = self.asked().map(|asked| Required::new(asked, by.clone()));
        asked.unwrap_or_else(|| {
            let usual = if self.counted == Counted::Field { 12.0 } else { 6.0 };
            inputs.assume(self.name(), format!("{}: {usual}\" (the common one).", self.input().label));
            answer.ask("What nail spacing is asked for here?", self.name());
            Required::new(Length::from_inches(usual), USUAL_SPACING)
        })
    }
}
