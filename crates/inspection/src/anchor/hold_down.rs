//! Hold-downs, and anchors that are set in drilled holes in their place.

use measure::Length;
use standards::{Source, Status};

use super::bolt::Nut;
use crate::amount::Count;
use crate::finding::Finding;
use crate::observed::Seen;
use crate::remedy::Remedy;
use crate::required::Required;
use crate::subject::{Question, Subject};
use crate::verdict::Check;

/// A rod holds in full when its end is flush with the top of the tightened nut, or proud of it.
pub const THREAD_IN_NUT: Source =
    Source::new("Trade journals on connectors", "thread flush with the nut", Status::LookedUp);

/// The rod's end and the top of its tightened nut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Thread {
    /// Flush or proud.
    FlushOrProud,
    /// Below the top of the nut by so much.
    BelowTop(Length),
}

/// What the drawing asks of a hold-down. What it does not say is not judged.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct HoldDownRequired {
    /// Diameter of the rod.
    pub rod_diameter: Option<Required<Length>>,
    /// Embedment of the rod.
    pub embedment: Option<Required<Length>>,
    /// Nails, screws or bolts.
    pub fasteners: Option<Required<u16>>,
    /// Studs that it is fixed to.
    pub studs: Option<Required<u8>>,
}

/// A hold-down as it was found.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldDown {
    /// What the drawing asks.
    pub required: HoldDownRequired,
    /// The thread in the nut.
    pub thread: Seen<Thread>,
    /// The nut.
    pub nut: Seen<Nut>,
    /// Whether the rod stands off the post, so that it would have to be brought over.
    pub off_the_post: Seen<bool>,
    /// Diameter of the rod.
    pub rod_diameter: Seen<Length>,
    /// Embedment of the rod.
    pub embedment: Seen<Length>,
    /// Fasteners that were found.
    pub fasteners: Seen<u16>,
    /// Studs that it is fixed to.
    pub studs: Seen<u8>,
}

/// Judges a hold-down. With thread short of the nut's top it is out: not engaged is not installed.
#[must_use]
pub fn judge_hold_down(hold_down: &HoldDown) -> Finding {
    let mut finding = Finding::default();
    thread(&mut finding, hold_down.thread);
    nut(&mut finding, hold_down.nut);
    match hold_down.off_the_post {
        Seen::Observed(true) => {
            finding.wrong.push(Subject::HoldDownOffset);
            finding.remedy(&[Remedy::EngineerDetail, Remedy::AskMaker]);
        }
        Seen::Observed(false) => {}
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::HoldDownOffset),
    }
    let HoldDownRequired { rod_diameter, embedment, fasteners, studs } = &hold_down.required;
    asked(&mut finding, Subject::BoltDiameter, rod_diameter.as_ref(), hold_down.rod_diameter, Check::size_at_least);
    asked(&mut finding, Subject::Embedment, embedment.as_ref(), hold_down.embedment, Check::at_least);
    let count = |required: &Required<u16>| Required::new(Count::of(u32::from(required.value)), required.origin.clone());
    let found = hold_down.fasteners.map(|fasteners| Count::of(u32::from(fasteners)));
    asked(&mut finding, Subject::HoldDownFasteners, fasteners.as_ref().map(count).as_ref(), found, Check::at_least);
    let count = |required: &Required<u8>| Required::new(Count::of(u32::from(required.value)), required.origin.clone());
    let found = hold_down.studs.map(|studs| Count::of(u32::from(studs)));
    asked(&mut finding, Subject::HoldDownStuds, studs.as_ref().map(count).as_ref(), found, Check::at_least);
    remedies(&mut finding);
    finding
}

fn thread(finding: &mut Finding, thread: Seen<Thread>) {
    match thread {
        Seen::Observed(thread) => {
            let below = if let Thread::BelowTop(below) = thread { below } else { Length::ZERO };
            finding.checks.push(Check::size_at_most(Subject::HoldDownThread, below, Length::ZERO, THREAD_IN_NUT));
        }
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(Subject::HoldDownThread),
    }
}

fn nut(finding: &mut Finding, nut: Seen<Nut>) {
    match nut {
        Seen::Observed(Nut::Tight) => {}
        Seen::Observed(Nut::Loose) => {
            finding.wrong.push(Subject::Nut);
            finding.remedy(&[Remedy::TightenNut]);
        }
        Seen::Observed(Nut::Missing) => {
            finding.wrong.push(Subject::Nut);
            finding.remedy(&[Remedy::FitWasherAndNut]);
        }
        Seen::NotObserved => {
            finding.not_seen.push(Subject::Nut);
            finding.questions.push(Question::Nut);
        }
        Seen::CouldNotBeSeen => finding.not_seen.push(Subject::Nut),
    }
}

type Compare<Q> = fn(Subject, Q, Q, crate::required::Origin) -> Check;

fn asked<Q: Copy>(finding: &mut Finding, of: Subject, asked: Option<&Required<Q>>, found: Seen<Q>, by: Compare<Q>) {
    let Some(Required { value, origin }) = asked else { return };
    match found {
        Seen::Observed(found) => finding.checks.push(by(of, found, *value, origin.clone())),
        Seen::NotObserved | Seen::CouldNotBeSeen => finding.not_seen.push(of),
    }
}

fn remedies(finding: &mut Finding) {
    if finding.is_out(Subject::HoldDownThread) {
        finding.remedy(&[Remedy::CouplerAndRod, Remedy::EngineerDetail, Remedy::DrilledAnchor]);
    }
    if finding.is_out(Subject::Embedment) || finding.is_out(Subject::BoltDiameter) {
        finding.remedy(&[Remedy::ApproveAsIs, Remedy::DrilledAnchor, Remedy::EngineerDetail]);
    }
    if finding.is_out(Subject::HoldDownFasteners) {
        finding.remedy(&[Remedy::FillHoldDown]);
    }
    if finding.is_out(Subject::HoldDownStuds) {
        let short = finding.check(Subject::HoldDownStuds).and_then(|check| check.margin.count()).unwrap_or(-1);
        let short = u8::try_from(-short).unwrap_or(u8::MAX);
        finding.remedy(&[Remedy::AddPlies(short)]);
    }
}

/// An anchor set in a drilled hole: what its record must hold, because dust in the hole destroys the bond.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrilledAnchor {
    /// Diameter of the rod.
    pub rod_diameter: Option<Length>,
    /// Embedment.
    pub embedment: Option<Length>,
    /// Lot of the adhesive.
    pub adhesive_lot: Option<String>,
    /// Who watched the cleaning of the hole.
    pub cleaning_watched_by: Option<String>,
}

/// What the record of a drilled anchor lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DrilledAnchorLacks {
    /// The rod's diameter.
    RodDiameter,
    /// The embedment.
    Embedment,
    /// The adhesive's lot.
    AdhesiveLot,
    /// Who watched the cleaning.
    CleaningWatchedBy,
}

impl DrilledAnchor {
    /// What is still to be written down.
    pub fn lacks(&self) -> impl Iterator<Item = DrilledAnchorLacks> {
        let written = |text: &Option<String>| text.as_ref().is_some_and(|text| !text.trim().is_empty());
        [
            (self.rod_diameter.is_some(), DrilledAnchorLacks::RodDiameter),
            (self.embedment.is_some(), DrilledAnchorLacks::Embedment),
            (written(&self.adhesive_lot), DrilledAnchorLacks::AdhesiveLot),
            (written(&self.cleaning_watched_by), DrilledAnchorLacks::CleaningWatchedBy),
        ]
        .into_iter()
        .filter_map(|(held, lack)| (!held).then_some(lack))
    }
}
