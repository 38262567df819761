//! Pictures as data: what is drawn, in inches of the real thing, and what the drawing says to those who cannot see it.
//!
//! A scene is drawn to scale by whoever shows it (a screen, a printer). x runs right, y runs **down**.

/// A drawing to scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// Left edge of what must be seen, inches.
    pub left: f64,
    /// Top edge, inches.
    pub top: f64,
    /// Width, inches.
    pub width: f64,
    /// Height, inches.
    pub height: f64,
    /// The strokes, in the order they are laid down.
    pub marks: Vec<Mark>,
    /// The same in words.
    pub alt: String,
}

/// Line weights of a drafting sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// Outline of what is cut through.
    Cut,
    /// Outline of what is seen.
    Seen,
    /// Dimension lines and hatching.
    Fine,
    /// Hidden: dashed.
    Hidden,
}

/// What a stroke stands for; the sheet decides its ink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Ordinary drawing ink.
    Ink,
    /// Chalk: the input in hand, or what can be tapped.
    Chalk,
    /// It carries.
    Carries,
    /// At the limit.
    AtLimit,
    /// Too small.
    Short,
    /// Outside the tool.
    Outside,
}

/// One stroke of a drawing.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A straight line.
    Line {
        /// Start, inches.
        from: (f64, f64),
        /// End, inches.
        to: (f64, f64),
        /// Line weight.
        weight: Weight,
        /// Ink.
        ink: Ink,
    },
    /// A closed polygon.
    Shape {
        /// Corners, inches.
        points: Vec<(f64, f64)>,
        /// Line weight.
        weight: Weight,
        /// Ink.
        ink: Ink,
        /// Filled with a light wash.
        washed: bool,
        /// The field that this part stands for: tapping it brings the field to hand.
        field: Option<FieldId>,
    },
    /// A dimension: slashes at its ends, the figure above its line.
    Dimension {
        /// Start, inches.
        from: (f64, f64),
        /// End, inches.
        to: (f64, f64),
        /// The figure.
        figure: String,
        /// The field that it shows.
        field: Option<FieldId>,
    },
    /// An arrow: a load or the wind, with its number.
    Arrow {
        /// Tail, inches.
        from: (f64, f64),
        /// Head, inches.
        to: (f64, f64),
        /// The figure at its tail; may be empty.
        figure: String,
        /// Ink.
        ink: Ink,
    },
    /// A word on the drawing.
    Label {
        /// Middle of the text, inches.
        at: (f64, f64),
        /// The word.
        text: String,
        /// Turned a quarter to the left, to run up a stud.
        upright: bool,
    },
    /// Words that begin at a place.
    Words {
        /// Left end of the text, at its middle height, inches.
        from: (f64, f64),
        /// The words.
        text: String,
    },
    /// An unseen place that a tap finds.
    Pick {
        /// One corner, inches.
        from: (f64, f64),
        /// The opposite corner, inches.
        to: (f64, f64),
        /// What the tap does, as an act is written.
        act: String,
        /// The same in words, for those who cannot see the drawing.
        label: String,
    },
}

pub use crate::model::FieldId;
