//! The inputs of Layout: hand-cut roofs, walls, floors, strapping, stairs, squaring.

mod roof;

pub use roof::ROOF_LAYOUT_FIELDS;
