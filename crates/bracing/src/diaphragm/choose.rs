//! Which nailing of a floor or a roof a unit shear needs.

use measure::{Length, LineLoad};
use standards::sdpws_2015::table_4_2::DiaphragmPanel;
use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};

use super::strength::{Blocking, DiaphragmFraming, DiaphragmNailing, DiaphragmStrength, diaphragm_strength};

/// A nailing that carries, with what it carries.
#[derive(Clone, Debug, PartialEq)]
pub struct ChosenDiaphragm {
    /// The nailing.
    pub nailing: DiaphragmNailing,
    /// Its strength.
    pub strength: DiaphragmStrength,
}

/// Panels and nails as they are bought, the lighter first, in 32nds of an inch.
const PANELS: [(f64, ShearFastener); 4] = [
    (14.0, ShearFastener::Common8d),
    (15.0, ShearFastener::Common8d),
    (15.0, ShearFastener::Common10d),
    (19.0, ShearFastener::Common10d),
];

/// Spacings of boundaries and of other edges, the wider first. Closer ones need framing 3 in nominal at the joints, and
/// several lines of nails special inspection: an engineer asks for those.
const SPACINGS: [(f64, f64); 2] = [(6.0, 6.0), (4.0, 6.0)];

/// Every nailing that is offered, in the order in which it is chosen: unblocked before blocked, the wider spacing before the
/// closer, the lighter panel before the heavier, none lighter than `thinnest`, on framing 2 in nominal.
pub fn diaphragm_nailings(thinnest: Length) -> impl Iterator<Item = DiaphragmNailing> {
    let blocked = SPACINGS.map(|(boundary, edge)| Blocking::Blocked {
        boundary: Length::from_inches(boundary),
        edge: Length::from_inches(edge),
    });
    let all = core::iter::once(Blocking::Unblocked).chain(blocked).flat_map(|blocking| {
        PANELS.into_iter().map(move |(thickness, fastener)| {
            let thickness = Length::from_inches(thickness / 32.0);
            let panel = DiaphragmPanel { grade: Sheathing::Sheathing, thickness, fastener, framing: 2 };
            DiaphragmNailing { panel, blocking }
        })
    });
    all.filter(move |nailing| nailing.panel.thickness >= thinnest)
}

/// The first of [`diaphragm_nailings`] that carries. None where none carries so much: an engineer designs the floor.
#[must_use]
pub fn lightest_diaphragm(needed: LineLoad, thinnest: Length, frame: &DiaphragmFraming) -> Option<ChosenDiaphragm> {
    let tried = diaphragm_nailings(thinnest)
        .filter_map(|nailing| Some(ChosenDiaphragm { nailing, strength: diaphragm_strength(&nailing, frame).ok()? }));
    tried.into_iter().find(|chosen| chosen.strength.allowable.line_load() >= needed)
}
