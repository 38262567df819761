//! The path of uplift from the roof sheathing to the footing, link by link.
//!
//! A [`Chain`] says what lifts a foot of wall and what is there at each link; [`check_chain`] gives the demand on one
//! connection of each, what it holds, what is missing, and the weakest. What comes in beside the wall's own studs:
//! [`eave_uplift`] and [`rake_ties`] where the roof stands out, [`ridge_tension`] where the rafters meet,
//! [`post_uplifts`] under a porch, of which [`check_singles`] judges one connection after the other. [`lapping`] has panels
//! that hold a wall down beside their shear.
//!
//! *Invariant*: a link of which nothing is known has no number for what it holds, and is never the one that holds. Dead
//! load is counted once, at 0.6, below the storey that it stands on; that of the roof is already in the uplift that is given.
//!
//! *Absent on purpose*: the bending of plates and sills between connections, the anchor in the concrete, what the wall's
//! shear brings to its ends (hold-downs add to this path), and any value of a product: labels are typed.

mod chain;
mod holds;
mod link;
mod overhang;
mod panels;
mod porch;
mod ridge;
mod single;
mod tie;
mod wall;

pub use chain::{ChainAnswer, check_chain};
pub use link::{Held, Link, LinkAnswer, UpliftCaution};
pub use overhang::{Rake, RakeTies, eave_uplift, rake_ties};
pub use panels::lapping;
pub use porch::{footing_weight, porch_beam_uplift, post_uplifts, through_uplifts};
pub use ridge::{RidgeTension, ridge_tension};
pub use single::{Single, check_singles};
pub use tie::{Connections, Side, SillBolts, Tie, Washer};
pub use wall::{Chain, HeldDown, RoofSheathing, UpliftBasis, WallOpening, WallStorey};

use standards::{OutsideTable, Source, Status};

/// Equilibrium of what is described, and nothing else.
const STATICS: Source = Source::new("Statics", "equilibrium", Status::Computed);

const fn refusal(source: Source, given: String, covers: &'static str, next_step: &'static str) -> OutsideTable {
    OutsideTable { source, given, covers, next_step }
}
