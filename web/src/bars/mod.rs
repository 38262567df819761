//! What stands around every place: the title block, the places, and what is to be told.

mod notice_bar;
mod notices;
mod place_bar;
mod place_drawing;
mod title_block;
mod title_frame;
mod update_bar;

pub use notice_bar::NoticeBar;
pub use notices::Notices;
pub use place_bar::PlaceBar;
pub use title_block::TitleBlock;
pub use title_frame::TitleFrame;
pub use update_bar::UpdateBar;
