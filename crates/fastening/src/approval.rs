//! Who must agree before one nail stands for another.

use crate::Nail;

/// What the nails hold together, as far as it decides who answers for them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NailedWork {
    /// Framing by the code's fastening schedule.
    CodeFraming,
    /// Panels of the code's own braced walls, floors and roofs.
    CodePanels,
    /// Shear walls, diaphragms and joints on an engineer's drawing.
    EngineersDrawing,
    /// A truss, or a repair of one.
    Truss,
    /// A hanger, strap, tie or other listed metal part.
    MetalConnector,
    /// What carries nothing: ceiling strapping, backing, temporary braces of the crew's own.
    NoLoad,
}

impl NailedWork {
    /// Every kind.
    pub const ALL: [Self; 6] =
        [Self::CodeFraming, Self::CodePanels, Self::EngineersDrawing, Self::Truss, Self::MetalConnector, Self::NoLoad];
}

/// Who must say yes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Approval {
    /// Nobody but the crew.
    Crew,
    /// The code official.
    CodeOfficial,
    /// The engineer whose drawing it is.
    Engineer,
    /// The truss designer.
    TrussDesigner,
    /// The maker of the part: its listing names the nail.
    Maker,
}

/// Who must agree before `found` stands for `required` in a piece of work.
///
/// The same nail needs nobody. A stronger nail needs the same yes as a weaker one: it can split what the other does
/// not. Where the code's schedule lists the nail ([`crate::listed`]), code framing needs nobody either.
#[must_use]
pub fn approval(work: NailedWork, found: Nail, required: Nail) -> Approval {
    match work {
        _ if found == required => Approval::Crew,
        NailedWork::CodeFraming | NailedWork::CodePanels => Approval::CodeOfficial,
        NailedWork::EngineersDrawing => Approval::Engineer,
        NailedWork::Truss => Approval::TrussDesigner,
        NailedWork::MetalConnector => Approval::Maker,
        NailedWork::NoLoad => Approval::Crew,
    }
}
