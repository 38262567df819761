//! The inputs of Layout: hand-cut roofs, walls, floors, strapping, stairs, squaring.

mod roof;
mod strapping;

pub use roof::ROOF_LAYOUT_FIELDS;
pub use strapping::STRAPPING_FIELDS;
