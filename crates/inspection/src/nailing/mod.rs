//! Nails of a sheathed wall: how many hold, how far apart, how deep, how near the edge.
//!
//! A nail that missed the framing counts as absent. Nothing here gives a nail a strength.

mod overdriven;
mod panel;
mod sample;

pub use overdriven::{Driven, OverdrivenAnswer, Panel, judge_overdriven};
pub use panel::{NailCount, PanelNailing, nails_in_panel};
pub use sample::{Line, LineAnswer, NAIL_TO_PANEL_EDGE, NailSize, judge_edge_distance, judge_line, judge_nail_size};
