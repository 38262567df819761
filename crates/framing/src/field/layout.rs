//! The inputs of Layout: hand-cut roofs, walls, floors, strapping, stairs, squaring.

mod roof;
mod wall;

pub use roof::ROOF_LAYOUT_FIELDS;
pub use wall::WALL_LAYOUT_FIELDS;
