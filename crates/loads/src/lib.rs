//! From a site and a house to loads on its members.
//!
//! What is here: the site's loads and what is assumed of them ([`site`]), combinations with the load duration that goes
//! with each ([`combination`]), snow on a roof ([`snow`]), wind on a wall ([`wall_wind`]), and what comes down on a
//! header ([`header`]).
//!
//! *Invariant*: no member is named by size and none is judged here; no assumption is hidden: what was not given is in
//! [`site::ASSUMED`], with its reason.

pub mod combination;
pub mod header;
pub mod house;
pub mod site;
pub mod snow;
pub mod wall_wind;
pub mod wind;
