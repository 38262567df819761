//! Inspection: the walk through a framed house. It is a page of its own, with a module of its own.
//!
//! Where to look: [`book`] is the log as it is kept and what stands by it; [`drafts`] is what is being typed; [`form`]
//! binds one of them to the inputs; [`way`] is where one is. Then one file a part of the walk.

mod app;
mod book;
mod camera;
mod drafts;
mod drawing;
mod form;
mod found;
mod hand_over;
mod head;
mod heading;
mod ink;
mod line;
mod look;
mod mark;
mod photo;
mod record;
mod start;
mod walk;
mod walks;
mod way;

pub use app::App;
pub use start::at_start;
