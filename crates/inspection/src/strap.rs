//! Straps: floor to floor, header to stud, across a cut. And the nails of any connector, by their count.

use measure::Force;
use standards::{Source, Status};

use crate::amount::Count;
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::Subject;
use crate::verdict::Check;

/// A strap with a bow in it takes load only when it has been pulled straight.
pub const FLAT_AND_STRAIGHT: Source =
    Source::new("Common practice", "a strap lies flat and straight", Status::CommonPractice);

/// A strap holds no more than its weaker end.
pub const WEAKER_END: Source =
    Source::new("Common practice", "the side of a strap with fewer nails counts", Status::CommonPractice);

/// Nails, screws or bolts of a connector, by their count.
#[derive(Clone, Debug, PartialEq)]
pub struct Nails {
    /// Those that the drawing or the maker asks for.
    pub required: Option<Required<u16>>,
    /// Those that were found.
    pub found: Seen<u16>,
}

impl Nails {
    /// Puts their check into a finding, and what fills up the count where some are missing. Without a number asked for
    /// nothing is judged.
    pub(crate) fn judge(&self, finding: &mut Finding, of: Subject, fill: fn(u32) -> Remedy) {
        let Some(Required { value, origin }) = &self.required else { return };
        let Seen::Observed(found) = self.found else {
            finding.not_seen.push(of);
            return;
        };
        let (found, required) = (u32::from(found), u32::from(*value));
        finding.checks.push(Check::at_least(of, Count::of(found), Count::of(required), origin.clone()));
        if found < required {
            finding.remedy(&[fill(required - found)]);
        }
    }
}

/// A strap as it was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Strap {
    /// Its nails on one side of the joint; those found on the side that has fewer.
    pub nails: Nails,
    /// Whether it lies flat and straight.
    pub lies_flat: Seen<bool>,
    /// Uplift that the drawing asks it to hold, at allowable-stress level.
    pub uplift: Option<Required<Force>>,
    /// What its maker lists for it in this wood.
    pub listed: Option<Required<Force>>,
}

/// Judges a strap. Its nails count always; the uplift only where someone asks for one or looked up what is listed.
#[must_use]
pub fn judge_strap(strap: &Strap) -> Finding {
    let mut finding = Finding::default();
    if strap.nails.required.is_none() {
        finding.not_seen.push(Subject::StrapNails);
    }
    strap.nails.judge(&mut finding, Subject::StrapNails, Remedy::FillConnector);
    lies_flat(&mut finding, strap.lies_flat);
    match (&strap.uplift, &strap.listed) {
        (Some(uplift), Some(listed)) => listed_for(&mut finding, uplift, listed),
        (None, None) => {}
        _ => finding.not_seen.push(Subject::Uplift),
    }
    finding
}

fn lies_flat(finding: &mut Finding, lies_flat: Seen<bool>) {
    match lies_flat {
        Seen::Observed(true) => {}
        Seen::Observed(false) => {
            finding.wrong.push(Subject::StrapFlat);
            finding.remedy(&[Remedy::AskMaker, Remedy::EngineerDetail]);
        }
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::StrapFlat),
    }
}

fn listed_for(finding: &mut Finding, uplift: &Required<Force>, listed: &Required<Force>) {
    finding.checks.push(Check::at_most(Subject::Uplift, uplift.value, listed.value, listed.origin.clone()));
    if finding.is_out(Subject::Uplift) {
        finding.remedy(&[Remedy::EngineerDetail]);
    }
}
