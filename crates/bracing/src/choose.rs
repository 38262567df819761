//! Which nailing a unit shear needs.

use measure::{Length, LineLoad};
use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};

use crate::strength::{Framing, Nailing, Strength, strength};

/// A nailing that carries, with what it carries.
#[derive(Clone, Debug, PartialEq)]
pub struct Chosen {
    /// The nailing.
    pub nailing: Nailing,
    /// Its strength.
    pub strength: Strength,
}

/// Panels and nails as they are bought, the lighter first, in 32nds of an inch.
const PANELS: [(f64, ShearFastener); 3] =
    [(14.0, ShearFastener::Common8d), (15.0, ShearFastener::Common8d), (15.0, ShearFastener::Common10d)];

const EDGES: [f64; 4] = [6.0, 4.0, 3.0, 2.0];

/// Every nailing that is offered, in the order in which it is chosen: one face before two, the wider spacing before the
/// closer, the lighter panel before the heavier.
pub fn nailings() -> impl Iterator<Item = Nailing> {
    [false, true].into_iter().flat_map(|both_faces| {
        EDGES.into_iter().flat_map(move |edge| {
            PANELS.into_iter().map(move |(thickness, fastener)| Nailing {
                sheathing: Sheathing::Sheathing,
                thickness: Length::from_inches(thickness / 32.0),
                fastener,
                edge: Length::from_inches(edge),
                across_studs: false,
                both_faces,
            })
        })
    })
}

/// The first that carries; none where no nailing of sheathing-grade panels carries so much.
#[must_use]
pub fn lightest_that_carries(needed: LineLoad, frame: &Framing) -> Option<Chosen> {
    let tried = nailings().filter_map(|nailing| Some(Chosen { nailing, strength: strength(&nailing, frame).ok()? }));
    tried.into_iter().find(|chosen| chosen.strength.allowable.line_load() >= needed)
}
