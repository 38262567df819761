//! A whole wall line: how much wall there is, how much is missing, and what would mend it.

use measure::{Force, Length, Ratio};
use standards::sdpws_2015::framing;
use standards::sdpws_2015::table_4_3::ShearFastener;
use standards::{OutsideTable, Source};

use crate::segmented::{SegmentedAnswer, SegmentedWall, check_segmented};
use crate::strength::{Framing, Nailing, strength};

/// What would make a line carry that is too short as it is. Nothing is taken twice: each is what is there, with one thing
/// changed.
#[derive(Clone, Debug, PartialEq)]
pub enum Remedy {
    /// Nails closer together along all edges.
    TighterNailing {
        /// How it is nailed then.
        nailing: Nailing,
        /// Share that is used then.
        used: Ratio,
    },
    /// A thicker panel, with the heavier nail that goes with it or the same.
    ThickerPanel {
        /// How it is nailed then.
        nailing: Nailing,
        /// Share that is used then.
        used: Ratio,
    },
    /// The same on both faces.
    BothFaces {
        /// Share that is used then.
        used: Ratio,
        /// Where the joints of both faces would meet under nails closer than 6 in: they are offset, or lie on framing 3 in
        /// nominal.
        joints: Option<Source>,
    },
    /// More full-height wall, no narrower than 2:1.
    MoreWall(Length),
    /// A portal frame by an engineer.
    PortalFrame,
    /// A steel frame by an engineer.
    SteelFrame,
}

/// What a wall line answers.
#[derive(Clone, Debug, PartialEq)]
pub struct LineAnswer {
    /// Its pieces.
    pub pieces: SegmentedAnswer,
    /// Full-height length that counts: narrow pieces for less, those past the limit for nothing.
    pub there: Length,
    /// Length that the push needs, sheathed so.
    pub needed: Length,
    /// What is missing of it; none where enough is there.
    pub missing: Option<Length>,
    /// What would make it carry, the least work first; empty where it carries.
    pub remedies: Vec<Remedy>,
}

const EDGES: [f64; 4] = [6.0, 4.0, 3.0, 2.0];

/// Panels and nails as they are bought, the lighter first, in 32nds of an inch.
const THICKER: [(f64, ShearFastener); 3] =
    [(15.0, ShearFastener::Common8d), (15.0, ShearFastener::Common10d), (19.0, ShearFastener::Common10d)];

/// Works out a line of pieces in wind, and what it lacks.
///
/// A wall that an engineer drew is nailed as it is drawn: what would mend it is for them to say.
///
/// # Errors
/// As [`strength`].
pub fn check_line(wall: &SegmentedWall, nailing: &Nailing, frame: &Framing) -> Result<LineAnswer, OutsideTable> {
    let own = strength(nailing, frame)?.of_pieces(wall.height, &wall.pieces);
    own.is_not_too_high(wall.height)?;
    let pieces = check_segmented(wall, &own);
    let of_a_foot = own.allowable.line_load() * Length::from_feet(1.0);
    let length = |force: Force| Length::from_feet(force / of_a_foot);
    let remedies = if pieces.missing.is_some() { remedies(wall, nailing, frame, &pieces) } else { Vec::new() };
    Ok(LineAnswer {
        there: length(pieces.capacity),
        needed: length(wall.shear),
        missing: pieces.missing,
        pieces,
        remedies,
    })
}

fn remedies(wall: &SegmentedWall, nailing: &Nailing, frame: &Framing, as_it_is: &SegmentedAnswer) -> Vec<Remedy> {
    let carries = |nailing: &Nailing| {
        let used = check_segmented(wall, &strength(nailing, frame).ok()?).used;
        (used <= 1.0).then_some(used)
    };
    let tighter = EDGES.into_iter().map(Length::from_inches).filter(|edge| *edge < nailing.edge).find_map(|edge| {
        let nailing = Nailing { edge, ..*nailing };
        Some(Remedy::TighterNailing { nailing, used: carries(&nailing)? })
    });
    let thicker = THICKER.into_iter().find_map(|(thickness, fastener)| {
        let other = Nailing { thickness: Length::from_inches(thickness / 32.0), fastener, ..*nailing };
        let heavier = other != *nailing && other.thickness >= nailing.thickness && fastener >= nailing.fastener;
        let used = carries(&other).filter(|_| heavier)?;
        Some(Remedy::ThickerPanel { nailing: other, used })
    });
    let both = Nailing { both_faces: true, ..*nailing };
    let close = nailing.edge.inches() < 6.0;
    let faces = carries(&both).filter(|_| !nailing.both_faces);
    let faces = faces.map(|used| Remedy::BothFaces { used, joints: close.then_some(framing::BOTH_FACES) });
    let more = as_it_is.missing.map(Remedy::MoreWall);
    let of_wood = [tighter, thicker, faces, more].into_iter().flatten();
    of_wood.chain([Remedy::PortalFrame, Remedy::SteelFrame]).collect()
}
