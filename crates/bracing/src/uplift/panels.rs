//! Panels that lap the plates and hold a wall down beside their shear.

use measure::{Length, LineLoad};
use standards::OutsideTable;
use standards::sdpws_2015::uplift::{NailRows, SHEAR_AND_UPLIFT, UpliftNailing};

use super::refusal;
use super::tie::Tie;
use crate::strength::{Framing, Nailing, strength};

/// Panels of a wall as a tie: `nailing` is that of their shear, `rows` and `spacing` their nails into the plates, `shear` what
/// the wall must carry in the same wind, allowable stress design. One face counts.
///
/// Without shear the nails of the plates are there for uplift alone. Where the nails of the shear do not carry it, or no table
/// has them, the panels may not count.
///
/// Source: SDPWS 2015 4.4 (from memory) and Table 4.3A for the shear.
#[must_use]
pub fn lapping(nailing: &Nailing, framing: &Framing, (rows, spacing): (NailRows, Length), shear: LineLoad) -> Tie {
    match shear_edge(nailing, framing, shear) {
        Ok(shear_edge) => Tie::Panels(UpliftNailing {
            thickness: nailing.thickness,
            fastener: nailing.fastener,
            shear_edge,
            rows,
            spacing,
            specific_gravity: framing.specific_gravity,
        }),
        Err(why) => Tie::Refused(why),
    }
}

/// Spacing of the nails that the shear needs; none where there is none.
fn shear_edge(nailing: &Nailing, framing: &Framing, shear: LineLoad) -> Result<Option<Length>, OutsideTable> {
    let next = "Nail the panels for their shear first; carry the uplift by straps.";
    if shear < LineLoad::ZERO {
        let given = format!("a shear of {} plf", shear.plf());
        return Err(refusal(SHEAR_AND_UPLIFT, given, "shears from zero", "Give it without a sign."));
    }
    if shear == LineLoad::ZERO {
        return Ok(None);
    }
    let one_face = Nailing { both_faces: false, ..*nailing };
    let carries = strength(&one_face, framing)?.allowable.line_load().plf();
    if shear.plf() > carries {
        let given =
            format!("a shear of {:.0} plf where the nails of the shear carry {:.0} plf", shear.plf(), carries.floor());
        return Err(refusal(SHEAR_AND_UPLIFT, given, "nails beyond those that the shear needs", next));
    }
    Ok(Some(nailing.edge))
}
