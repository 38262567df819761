//! Plumb, flat, and the faces of neighbours.

use crate::model::Entry::Choice;
use crate::model::Group::{Found, Required};
use crate::walk::spec::{Condition, Spec, inches};

/// Unless someone says otherwise it is a surface, not the faces of neighbours.
const SURFACE: &[Condition] = &[("looking_at", &["", "plumb", "wall", "floor", "ceiling"])];
const FACES: &[Condition] = &[("looking_at", &["faces"])];

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new(
        "looking_at",
        "Looking at",
        "What the level, straightedge or string was set to.",
        Choice(&[
            ("plumb", "plumb"),
            ("wall", "a wall's flatness"),
            ("floor", "a floor's flatness"),
            ("ceiling", "a ceiling's flatness"),
            ("faces", "faces of neighbours"),
        ]),
        Found,
    ),
    Spec::new("out", "Out by", "The widest gap, or the offset from plumb.", inches(0.0, 6.0), Found)
        .only(SURFACE)
        .hidden(),
    Spec::new("over", "Measured over", "The height, or the length of the straightedge.", inches(1.0, 240.0), Found)
        .only(SURFACE),
    Spec::new("distances", "From the string", "Each face in its order.", inches(0.0, 24.0), Found).list().only(FACES),
    Spec::new("limit", "Limit", "The job's own: so much.", inches(0.0, 6.0), Required).only(SURFACE),
    Spec::new("limit_over", "In a length of", "The length that the limit is for.", inches(1.0, 240.0), Required)
        .only(SURFACE),
];
