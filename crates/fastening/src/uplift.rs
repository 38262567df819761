//! What one nail holds against a pull: its shank in the main member, or its head through the side member, whichever
//! gives first.

use measure::{Force, Length};
use standards::nds_2018::{Cited, chapter_11, chapter_12::head_pull_through};

use crate::{
    ConnectionMoisture, Driven, FasteningError, Joint, Nail, Shank, SideMaterial, WithdrawalValue,
    factor::{Factor, adjusted},
    reach::check_joint,
    withdrawal_value,
};

/// Heads that are taken are no wider.
const WIDEST_HEAD: Length = Length::from_inches(0.75);

/// A nail as it comes out of the box.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NailSpec {
    /// Diameter and length.
    pub nail: Nail,
    /// Its shank.
    pub shank: Shank,
    /// Diameter of its round head, where it was measured; none to take that of the table of sizes. A clipped or notched
    /// head is not round: give the diameter of the round head that would fit inside it.
    pub head: Option<Length>,
}

impl NailSpec {
    /// A smooth nail of bright or galvanized steel with the head of the table of sizes.
    #[must_use]
    pub const fn smooth(nail: Nail) -> Self {
        Self { nail, shank: Shank::Smooth, head: None }
    }

    /// Diameter of the head: what was measured, else the narrowest of the table for this diameter and length.
    ///
    /// # Errors
    /// When none was measured and the table has none, or the one measured is no wider than the shank or over 3/4 in.
    pub fn head(&self) -> Result<Length, FasteningError> {
        let Self { nail, head, .. } = *self;
        match head {
            Some(given) if given > nail.diameter() && given <= WIDEST_HEAD => Ok(given),
            Some(given) => Err(FasteningError::Head { nail, given }),
            None => table_head(nail).map(|head| head.value).ok_or(FasteningError::HeadNotKnown { nail }),
        }
    }
}

/// Diameter of the head that the table of sizes has for a nail: the narrowest, where more than one kind is this nail;
/// none where none is.
///
/// Source: NDS 2018 Appendix L, Table L4; the status of the head is its own.
#[must_use]
pub fn table_head(nail: Nail) -> Option<Cited<Length>> {
    let narrowest = nail.sizes().min_by(|a, b| a.head.inches().total_cmp(&b.head.inches()))?;
    Some(Cited::new(narrowest.head, narrowest.head_source()))
}

/// What the head of one nail holds against being pulled through the side member.
#[derive(Clone, Debug, PartialEq)]
pub struct PullThroughValue {
    /// Diameter of the head.
    pub head: Length,
    /// Reference value `W_H`, no factor in it.
    pub reference: Cited<Force>,
    /// Adjusted value: `reference` times every factor.
    pub adjusted: Force,
    /// Every factor between the two, those of 1 as well.
    pub factors: Vec<Factor>,
}

/// The pull-through design value of one round head; none where the rule has nothing to say: of a toe-nail, whose head
/// bears at a slant, and of a steel side plate.
///
/// Source: NDS 2018 §12.2.5 (from memory; agrees with one printed value).
///
/// # Errors
/// When the head is not known ([`NailSpec::head`]), the wood is wet when nailed or in service, a thickness is nothing or
/// over 12 in, or a specific gravity is under 0.31 or over 0.73.
pub fn pull_through_value(nail: &NailSpec, joint: &Joint) -> Result<Option<PullThroughValue>, FasteningError> {
    check_joint(joint)?;
    let SideMaterial::Wood(wood) = joint.side.material else { return Ok(None) };
    if joint.driven == Driven::Toe {
        return Ok(None);
    }
    let conditions = joint.conditions;
    if conditions.moisture != ConnectionMoisture::default() {
        return Err(FasteningError::WetUnderHead);
    }
    let head = nail.head()?;
    let reference = head_pull_through(head, joint.side.thickness, wood.specific_gravity())?;
    let in_service = conditions.moisture.in_service;
    let factors = vec![
        Factor { symbol: "C_D", factor: chapter_11::load_duration_factor(conditions.duration) },
        Factor { symbol: "C_t", factor: chapter_11::temperature_factor(conditions.temperature, in_service) },
    ];
    Ok(Some(PullThroughValue { head, reference, adjusted: adjusted(reference.value, &factors), factors }))
}

/// What gives first under a pull.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum UpliftLimit {
    /// The shank comes out of the main member.
    Withdrawal,
    /// The head comes through the side member.
    PullThrough,
}

/// What one nail holds against a pull.
#[derive(Clone, Debug, PartialEq)]
pub struct UpliftValue {
    /// Its shank.
    pub withdrawal: WithdrawalValue,
    /// Its head, where the rule has a value.
    pub pull_through: Option<PullThroughValue>,
    /// The smaller of the two.
    pub adjusted: Force,
    /// Which of the two it is.
    pub governs: UpliftLimit,
}

/// The smaller of the withdrawal and the pull-through value of one nail: what it holds against uplift or suction.
///
/// Source: NDS 2018 §12.2.3 and §12.2.5; each number carries its own.
///
/// # Errors
/// As [`withdrawal_value`] and [`pull_through_value`].
///
/// ```
/// use fastening::{Joint, NailSpec, SideMember, UpliftLimit, Wood, WoodPanel, read_nail, uplift_value};
/// use lumber::Species;
/// use measure::Length;
///
/// let plywood = SideMember::wood(Wood::Panel(WoodPanel::PlywoodOther), Length::from_inches(0.375));
/// let roof = Joint::face_nailed(plywood, Wood::Lumber(Species::SouthernPine));
/// let found = uplift_value(&NailSpec::smooth(read_nail("8d common")?.nail), &roof)?;
/// assert_eq!(found.governs, UpliftLimit::PullThrough);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn uplift_value(nail: &NailSpec, joint: &Joint) -> Result<UpliftValue, FasteningError> {
    let withdrawal = withdrawal_value(nail.nail, nail.shank, joint)?;
    let pull_through = pull_through_value(nail, joint)?;
    let (adjusted, governs) = match &pull_through {
        Some(head) if head.adjusted < withdrawal.adjusted => (head.adjusted, UpliftLimit::PullThrough),
        _ => (withdrawal.adjusted, UpliftLimit::Withdrawal),
    };
    Ok(UpliftValue { withdrawal, pull_through, adjusted, governs })
}
