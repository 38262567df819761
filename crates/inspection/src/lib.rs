//! The inspection walk: what was measured beside what is required.
//!
//! What is here: requirements and where they come from ([`required`]), the judgement of one value against its limit
//! ([`verdict`]), and the things one walks past with a tape: studs ([`stud_spacing`]), notches and holes ([`cuts`]),
//! nails ([`nailing`]), bolts and hold-downs ([`anchor`]), ties ([`uplift_tie`]), straps ([`strap`]), plumb and plane
//! ([`plane`]), moisture ([`moisture`]). And what a record of it must hold ([`record`]).
//!
//! A limit is never rounded into a pass. What was not seen is never taken for seen. A pull that looks wrong is asked
//! about and never corrected. Each remedy names who must say yes.
//!
//! *Absent on purpose*: storage, the bytes of photos, a clock, the strings of a form, wording for a screen. Also the
//! working of a member as it was built: where a miss is worked again, that belongs in a module `rework` here, which
//! takes these findings and asks the crates that judge members and bracing. Until then a miss is left to the remedies.

pub mod amount;
pub mod anchor;
pub mod cuts;
pub mod finding;
pub mod mark;
pub mod moisture;
pub mod nailing;
pub mod observed;
pub mod plane;
pub mod record;
pub mod remedy;
pub mod required;
pub mod strap;
pub mod stud_spacing;
pub mod subject;
pub mod uplift_tie;
pub mod verdict;

pub use amount::{Amount, Count, MoistureContent};
pub use finding::Finding;
pub use observed::Seen;
pub use remedy::{Remedy, Who};
pub use required::{Drawing, Origin, Required};
pub use subject::{Question, Subject};
pub use verdict::{Check, Limit, Verdict};
