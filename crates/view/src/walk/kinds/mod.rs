//! The inputs of each kind as the screen asks them: one file a kind, as data.

pub(super) mod flatness;
pub(super) mod hold_down_point;
pub(super) mod moisture;
pub(super) mod nailing;
pub(super) mod notch_found;
pub(super) mod stud_spacing;
