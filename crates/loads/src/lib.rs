//! From a site and a house to loads on its members.
//!
//! What is here: what the building department gives for a place ([`criteria`]) and what the house looks like from
//! outside, rectangle by rectangle ([`house`]); the site's loads and what is assumed of them ([`site`]),
//! combinations with the load duration that goes with each ([`combination`]), snow on a roof ([`snow`], and every case of
//! it in [`snow_on_roof`]), wind on a wall ([`wall_wind`]) and on the whole house ([`wind`]), what things weigh
//! ([`weights`]), and what comes down on a header ([`header`]).
//!
//! *Invariant*: no member is named by size and none is judged here; no assumption is hidden: what was not given is in
//! [`site::ASSUMED`], with its reason.

pub mod combination;
pub mod criteria;
pub mod header;
pub mod house;
pub mod site;
pub mod snow;
pub mod snow_on_roof;
pub mod wall_wind;
pub mod weights;
pub mod wind;
