//! The frame's moisture, visit by visit.

use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Found, Required};
use crate::walk::spec::Spec;

pub(in crate::walk) const SPECS: &[Spec] = &[
    Spec::new("visits", "Visit", "A name or date, and each place in order: 3 May: 22, 19, -.", Text, Found).list(),
    Spec::new("places", "Place", "Where the meter was set: plate, stud 3 low.", Text, Found).list(),
    Spec::new("limit", "Limit", "Before the wall is closed.", Choice(&[("18", "18 %"), ("19", "19 %")]), Required),
    Spec::new("meter", "Meter", "Which one was used.", Text, Around),
    Spec::new("species_setting", "Set to", "The species that the meter was set to.", Text, Around),
];
