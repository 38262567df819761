//! R802.11 and R602.3.5: how far uplift may go without a connector. The table of uplift itself is not here yet.

use measure::{Force, LineLoad};

use super::DOCUMENT;
use crate::{Source, Status};

/// R802.11.1: the uplift to which the toe nails of the fastening schedule are enough.
pub const TOE_NAILS: Source = Source::new(DOCUMENT, "R802.11.1", Status::FromMemory);
/// The most uplift at one roof-to-wall connection that toe nails alone may hold.
pub const TOE_NAIL_LIMIT: Force = Force::from_pounds(200.0);

/// R602.3.5: where uplift at the top of a braced wall needs a path of its own. Read in the print of 2018.
pub const UPLIFT_PATH: Source = Source::new(DOCUMENT, "R602.3.5", Status::LookedUp);
/// Net uplift at the top of a wall to which the nailing of its panels is path enough.
pub const WALL_TOP_LIMIT: LineLoad = LineLoad::from_plf(100.0);
/// What each full wall above takes off.
pub const EACH_WALL_ABOVE: LineLoad = LineLoad::from_plf(60.0);
