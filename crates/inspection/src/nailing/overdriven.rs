//! Nails driven below the face of the panel.

use measure::{Length, Ratio};
use standards::Source;
use standards::technical_topic_tt_012::{
    CLOSE_NAILING, COUNTS_TO, NO_NAILS_ADDED_AT, OVERDRIVEN, SHARE, SHARE_COUNTS_TO, nails_to_add, share_counts,
};

use crate::remedy::Remedy;
use crate::subject::Question;
use crate::verdict::Verdict;

/// The panel's edge nailing, and whether the panel was dry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Panel {
    /// Nails around its edges; [`nails_in_panel`](super::nails_in_panel) counts them.
    pub perimeter_nails: u32,
    /// Their spacing.
    pub edge_spacing: Length,
    /// Whether it was dry when nailed; none when nobody knows, and then dry is taken and asked about. The face of a wet
    /// one swells past the heads: depths from it say nothing.
    pub dry_when_nailed: Option<bool>,
}

/// Perimeter nails by how deep their heads sit. Nails that sit flush or less than 1/16 in deep are in neither.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Driven {
    /// Deeper than 1/16 in, to 1/8 in.
    pub deep: u32,
    /// Deeper than 1/8 in.
    pub too_deep: u32,
}

impl Driven {
    /// Sorts depths that were measured.
    #[must_use]
    pub fn from_depths(depths: &[Length]) -> Self {
        let count = |over: Length| depths.iter().filter(|depth| **depth > over).count() as u32;
        let too_deep = count(SHARE_COUNTS_TO);
        Self { deep: count(COUNTS_TO) - too_deep, too_deep }
    }

    /// All that are deeper than 1/16 in.
    #[must_use]
    pub const fn overdriven(self) -> u32 {
        self.deep.saturating_add(self.too_deep)
    }
}

/// What the depths bring.
#[derive(Clone, Debug, PartialEq)]
pub struct OverdrivenAnswer {
    /// How it stands.
    pub verdict: Verdict,
    /// Share of the perimeter nails that are overdriven.
    pub share: Ratio,
    /// Nails to add; 0 where nothing is to be done, and where an engineer decides.
    pub add: u32,
    /// The rule that decided.
    pub source: Source,
    /// What is to be asked.
    pub questions: Vec<Question>,
    /// What can be done.
    pub remedies: Vec<Remedy>,
}

/// Judges overdriven perimeter nails.
///
/// Nothing is to be done when none is deeper than 1/8 in and no more than one in five is deeper than 1/16 in. Otherwise
/// one nail is added for each two overdriven. At 4 in or closer no nail is added: an engineer decides. Where the panel
/// was wet, or more nails are overdriven than there are, nothing is decided here.
#[must_use]
pub fn judge_overdriven(panel: &Panel, driven: Driven) -> OverdrivenAnswer {
    let over = driven.overdriven();
    let share = f64::from(over) / f64::from(panel.perimeter_nails.max(1));
    let questions =
        if panel.dry_when_nailed.is_none() && over > 0 { vec![Question::PanelDryWhenNailed] } else { vec![] };
    let answer = |verdict, add, source, remedies| OverdrivenAnswer { verdict, share, add, source, questions, remedies };
    if panel.perimeter_nails == 0 {
        return answer(Verdict::NotSeen, 0, OVERDRIVEN, Vec::new());
    }
    if over > panel.perimeter_nails || (panel.dry_when_nailed == Some(false) && over > 0) {
        return answer(Verdict::NotDecided, 0, OVERDRIVEN, vec![Remedy::EngineerDetail]);
    }
    if driven.too_deep == 0 && share_counts(over, panel.perimeter_nails) {
        let verdict = if over > 0 && share == SHARE { Verdict::AtLimit } else { Verdict::Within };
        return answer(verdict, 0, OVERDRIVEN, Vec::new());
    }
    if panel.edge_spacing <= NO_NAILS_ADDED_AT {
        return answer(Verdict::Out, 0, CLOSE_NAILING, vec![Remedy::EngineerDetail, Remedy::SetGunDepth]);
    }
    let add = nails_to_add(over);
    answer(Verdict::Out, add, OVERDRIVEN, vec![Remedy::AddNails(add), Remedy::StaplesInstead, Remedy::SetGunDepth])
}
