//! Footnotes of Table 4.3A: the wood that the nails enter, and the framing at the joints of panels.

use measure::{Length, Ratio};

use super::DOCUMENT;
use super::table_4_3::ShearFastener;
use crate::{Source, Status};

/// Footnote 3: framing lighter than 0.50. Read in a trade association's table.
pub const SPECIFIC_GRAVITY: Source = Source::new(DOCUMENT, "Table 4.3A footnote 3", Status::LookedUp);
/// Footnote: apparent stiffness where the framing was wetter than 19 per cent when it was put up.
pub const WET_FRAMING: Source = Source::new(DOCUMENT, "Table 4.3A footnote 5", Status::FromMemory);
/// Factor on the apparent stiffness there.
pub const WET_STIFFNESS: Ratio = 0.5;
/// 4.3.7.1: framing at adjoining panel edges. Read as a summary of the 2008 edition gives it; in part from memory.
pub const ADJOINING_EDGES: Source = Source::new(DOCUMENT, "4.3.7.1", Status::PartlyLookedUp);
/// 4.3.7.1: panels on both faces, nailed closer than 6 in.
pub const BOTH_FACES: Source = Source::new(DOCUMENT, "4.3.7.1", Status::PartlyLookedUp);

/// Factor on a unit shear for framing of this assigned specific gravity, `1 − (0.5 − G)`, never over 1.
///
/// ```
/// assert!((standards::sdpws_2015::framing::specific_gravity_factor(0.42) - 0.92).abs() < 1e-12);
/// assert_eq!(standards::sdpws_2015::framing::specific_gravity_factor(0.55), 1.0);
/// ```
#[must_use]
pub const fn specific_gravity_factor(specific_gravity: Ratio) -> Ratio {
    let factor = 1.0 - (0.5 - specific_gravity);
    if factor > 1.0 { 1.0 } else { factor }
}

/// Whether the framing at adjoining panel edges must be 3 in nominal, or two studs nailed together for the shear of the
/// joint, with staggered nails: at 2 in, and where a 10d nail goes in deeper than 1-1/2 in at 3 in or closer. (So also in
/// seismic categories D to F from 700 plf; those are outside what is worked here.)
#[must_use]
pub fn needs_wide_joints(fastener: ShearFastener, edge: Length, penetration: Length) -> bool {
    let close = edge.inches() <= 2.0;
    let heavy = fastener == ShearFastener::Common10d && penetration.inches() > 1.5 && edge.inches() <= 3.0;
    close || heavy
}
