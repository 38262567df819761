//! Stairs: risers and treads between two floors, and the stringers that carry them.
//!
//! [`choices`] lists every number of risers that the code takes; [`marks`] are their heights on a story pole; [`stringer`]
//! has the cuts of one number, [`temporary`] the same stairs while a crew walks on bare cuts; [`well`] and [`headroom`] the
//! opening above; [`landing`] and [`winders`] the turns; [`judge`] what was built, [`after_finish`] what finish floors make
//! of it and [`mend`] the pads that would put it right.
//!
//! Elevation: *run* is level, up the stairs; *height* is plumb. Risers are counted from 1 at the lower floor; the last one
//! ends at the upper floor. All heights are of finished floors and treads, where not said otherwise.
//!
//! *Invariant*: a rounded riser is never added up: each mark is rounded from its own exact height.
//!
//! *Absent on purpose*: what a stringer or a tread carries; grip sizes of handrails; alternating treads and ladders.

mod built;
mod check;
mod error;
mod finish;
mod flight;
mod guard;
mod headroom;
mod landing;
mod landing_plan;
mod marks;
mod mend;
mod nosing;
mod point;
mod site;
mod spiral;
mod stringer;
mod stringer_board;
mod stringer_count;
mod temporary;
mod width;
mod winders;

pub use built::{AsBuilt, Extreme, judge, judge_treads};
pub use check::{Check, Edition, Limit, Subject, Verdict};
pub use error::StairError;
pub use finish::{Covering, Coverings, Finished, after_finish};
pub use flight::{Choice, Choices, Comfort, Finish, Flight, Floors, Run, choices, first_guess, with_risers};
pub use guard::{OpenRiser, guard, guard_opening, handrail, needs_guard, needs_handrail, open_riser, triangle_opening};
pub use headroom::{Headroom, Well, WellAnswer, headroom, well};
pub use landing::{Landing, LandingAnswer, Part, Turn, landing, nearest_landing};
pub use landing_plan::Rectangle;
pub use marks::{Mark, marks, risers_of};
pub use mend::{Aim, Mend, Pad, mend};
pub use nosing::{Nosing, nosing};
pub use point::Point;
pub use site::{SiteUse, SlopeCheck, site_use};
pub use spiral::{Spiral, spiral};
pub use stringer::{Step, Stringer, StringerAnswer, Top, stringer};
pub use stringer_board::{DECK_GUIDE_THROAT, PRACTICE_THROAT, Throat};
pub use stringer_count::{StringerCount, TREAD_BOARDS, TreadBoard, stringer_count};
pub use temporary::{Temporary, temporary};
pub use width::{Rails, clear_width};
pub use winders::{WinderLine, Winders, WindersAnswer, winders};
