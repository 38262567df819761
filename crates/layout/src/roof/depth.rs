//! How deep a hip or valley must be, so that the whole cut end of its jacks bears on it.

use lumber::SawnSize;
use measure::Length;
use standards::Source;
use standards::irc_2021::r802_4;

use super::corner::Corner;
use super::error::{RoofError, positive};
use super::plane::Sides;

/// The depth of a hip or valley against the cut end of its jacks, read in both of the ways that officials read the
/// code. This is not a strength check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HipDepth {
    /// Depth of the jacks' plumb cut; the deeper of both sides.
    pub needed: Length,
    /// Depth of the hip square to its edge.
    pub across: Length,
    /// Depth of the hip on a plumb line.
    pub plumb: Length,
    /// Whether it covers the cut, measured square to its edge: the stricter reading.
    pub covers_across: bool,
    /// Whether it covers the cut, measured plumb, as it stands.
    pub covers_plumb: bool,
    /// The shallowest 2 in size that covers by the stricter reading; none where no sawn size does.
    pub next_across: Option<SawnSize>,
    /// The shallowest 2 in size that covers when measured plumb.
    pub next_plumb: Option<SawnSize>,
}

impl HipDepth {
    /// Where the rule stands.
    pub const SOURCE: Source = r802_4::DEPTH_OF_RIDGE_HIP_VALLEY;

    /// Whether both readings say the same of this hip. Where they do not, the official decides.
    #[must_use]
    pub const fn readings_agree(&self) -> bool {
        self.covers_across == self.covers_plumb
    }
}

/// Holds a hip or valley of a depth against the jacks of both sides.
///
/// Source: IRC R802.4.3, no less deep than the cut end of the rafter; geometry.
///
/// # Errors
/// Depths of nothing.
///
/// ```
/// use layout::roof::{Corner, Meeting, Sides, hip_depth};
/// use measure::{Angle, Length, Slope};
///
/// let pitch = Slope::from_rise_in_twelve(6.0);
/// let corner = Corner::new(Meeting::Hip, Sides { a: pitch, b: pitch }, Angle::from_degrees(90.0))?;
/// let two_by_eight = Length::from_inches(7.25);
/// let found = hip_depth(&corner, Sides { a: two_by_eight, b: two_by_eight }, two_by_eight)?;
/// assert!(!found.covers_plumb && !found.covers_across);
/// assert_eq!(found.next_across.map(|size| size.nominal()), Some("2x10"));
/// # Ok::<(), layout::roof::RoofError>(())
/// ```
pub fn hip_depth(corner: &Corner, jacks: Sides<Length>, hip: Length) -> Result<HipDepth, RoofError> {
    positive("depth of the jacks", jacks.a)?;
    positive("depth of the jacks", jacks.b)?;
    positive("depth of the hip or valley", hip)?;
    let cut = Sides::each(|side| jacks.of(side) / corner.pitch(side).angle().cos());
    let needed = cut.a.max(cut.b);
    let lean = corner.slope().cos();
    Ok(HipDepth {
        needed,
        across: hip,
        plumb: hip / lean,
        covers_across: hip >= needed,
        covers_plumb: hip / lean >= needed,
        next_across: shallowest(needed),
        next_plumb: shallowest(needed * lean),
    })
}

fn shallowest(depth: Length) -> Option<SawnSize> {
    let thick_enough = SawnSize::all().filter(|size| size.nominal_thickness() == 2 && size.depth() >= depth);
    thick_enough.reduce(|least, size| if size.depth() < least.depth() { size } else { least })
}
