//! Members that bend, lean or bear: is it big enough, and what is the next size that is.
//!
//! What is here: [`header`], the check of a header over an opening with its jacks and kings; [`joist`], [`rafter`],
//! [`roof_beam`] and [`carrying_beam`], each of which says what such a member is and hands it to [`flexure`], which judges
//! whatever bends; [`upright`], studs and posts; [`span_table`], the code's tables beside them; [`mod@beam`], the exact
//! analysis of straight beams; [`working`], the ordered steps that an engineer can audit. [`check`] and [`limit`] are what
//! all of them answer with.
//!
//! *Invariant*: a check takes quantities and gives quantities. It knows no field of a form, no default, no edition
//! beyond the one it is handed; and it never answers outside the limits of the clauses it uses.

pub mod beam;
pub mod carrying_beam;
pub mod check;
mod choose;
pub mod flexure;
pub mod header;
pub mod joist;
pub mod limit;
pub mod rafter;
pub mod roof_beam;
pub mod span_table;
pub mod upright;
pub mod working;
