//! Members beside the header: from what was typed to what is answered, one file a kind.
//!
//! Where to look: [`MemberKind`] has the kinds and their inputs; `read` turns inputs into quantities and `say` writes what
//! members say alike. A member that was found otherwise than drawn is worked twice, and both stand beside each other
//! (`found`).

mod beam;
mod found;
mod hip_valley;
mod joist;
mod more_loads;
mod notch;
mod post;
mod rafter;
mod read;
mod ridge;
mod roof;
mod say;
mod span_table;
mod stud;

use crate::Texts;
use crate::field::{FieldSpec, MEMBER_FIELDS};
use crate::quick::reply::QuickReply;
use crate::quick::{QuickKind, kinds};
use crate::reading::Reading;

/// A kind of member.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MemberKind {
    /// A joist of a floor or a ceiling.
    Joist,
    /// A rafter.
    Rafter,
    /// A beam, a girder, a trimmer.
    Beam,
    /// A ridge that carries.
    Ridge,
    /// A hip or a valley.
    HipValley,
    /// A stud.
    Stud,
    /// A post.
    Post,
    /// A notch or a hole.
    Notch,
    /// The code's span tables.
    SpanTable,
}

impl QuickKind for MemberKind {
    const ALL: &'static [Self] = &[
        Self::Joist,
        Self::Beam,
        Self::Rafter,
        Self::Ridge,
        Self::HipValley,
        Self::Stud,
        Self::Post,
        Self::Notch,
        Self::SpanTable,
    ];

    const OWN: &'static [&'static [FieldSpec]] = &[MEMBER_FIELDS];

    fn id(self) -> &'static str {
        match self {
            Self::Joist => "joist",
            Self::Rafter => "rafter",
            Self::Beam => "beam",
            Self::Ridge => "ridge",
            Self::HipValley => "hip_valley",
            Self::Stud => "stud",
            Self::Post => "post",
            Self::Notch => "notch",
            Self::SpanTable => "span_table",
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::Joist => "Joist",
            Self::Rafter => "Rafter",
            Self::Beam => "Beam",
            Self::Ridge => "Ridge",
            Self::HipValley => "Hip, valley",
            Self::Stud => "Stud",
            Self::Post => "Post",
            Self::Notch => "Notch, hole",
            Self::SpanTable => "Span table",
        }
    }

    fn fields(self) -> &'static [&'static str] {
        match self {
            Self::Joist => joist::FIELDS,
            Self::Rafter => rafter::FIELDS,
            Self::Beam => beam::FIELDS,
            Self::Ridge => ridge::FIELDS,
            Self::HipValley => hip_valley::FIELDS,
            Self::Stud => stud::FIELDS,
            Self::Post => post::FIELDS,
            Self::Notch => notch::FIELDS,
            Self::SpanTable => span_table::FIELDS,
        }
    }

    fn needs_place(self) -> bool {
        matches!(self, Self::Rafter | Self::Ridge | Self::HipValley | Self::Stud)
    }

    fn answer(self, reading: &mut Reading) -> Option<QuickReply> {
        match self {
            Self::Joist => joist::answer(reading),
            Self::Rafter => rafter::answer(reading),
            Self::Beam => beam::answer(reading),
            Self::Ridge => ridge::answer(reading),
            Self::HipValley => hip_valley::answer(reading),
            Self::Stud => stud::answer(reading),
            Self::Post => post::answer(reading),
            Self::Notch => notch::answer(reading),
            Self::SpanTable => span_table::answer(reading),
        }
    }

    /// A member that was found otherwise than drawn is worked again.
    fn look_again(
        self,
        case: &dyn Texts,
        site: &dyn Texts,
        reading: &mut Reading,
        drawn: QuickReply,
    ) -> Option<QuickReply> {
        found::beside(self, case, site, reading, drawn)
    }
}

kinds!(MemberKind: Joist, Rafter, Beam, Ridge, HipValley, Stud, Post, Notch, SpanTable);
