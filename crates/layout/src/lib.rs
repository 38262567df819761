//! Where to cut and where to mark: hand-cut roofs, walls, floors, ceiling strapping, stairs, and what is square.
//!
//! Where to look: [`mod@roof`] has planes that meet along lines and the sticks that follow them; [`mod@wall`] the plates and
//! studs of a wall; [`mod@floor`] joists and their sheets; [`mod@strapping`] strips under joists and the shims that bring
//! them into one plane; [`mod@stair`] flights and their stringers; [`mod@square`] diagonals.
//!
//! *Invariant*: no loads and no strength. A length is exact until it is written; a mark on a stick is measured from one end,
//! never added up from rounded steps. A limit of the code is never rounded into a pass.

pub mod floor;
pub mod roof;
pub mod square;
pub mod stair;
pub mod strapping;
pub mod wall;
