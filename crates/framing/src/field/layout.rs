//! The inputs of Layout: hand-cut roofs, walls, floors, strapping, stairs, squaring.

mod floor;
mod roof;
mod strapping;
mod wall;

pub use floor::FLOOR_LAYOUT_FIELDS;
pub use roof::ROOF_LAYOUT_FIELDS;
pub use strapping::STRAPPING_FIELDS;
pub use wall::WALL_LAYOUT_FIELDS;
