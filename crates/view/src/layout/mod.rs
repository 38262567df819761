//! How Layout is shown: which of its inputs speak, and its pictures.

mod figures;
mod floor;
mod plan;
mod plate;
mod rafter;
mod stick;
mod wall;

use framing::layout::LayoutKind;
use framing::layout::drawn::DrawnLayout;
use framing::quick::reply::{Drawn, QuickReply};
use framing::reading::Reading;

use crate::model::{Field, Group};
use crate::pen::Pen;
use crate::quick::{QuickScreen, Shown};
use crate::scene::Scene;

/// Everything that the screen of Layout shows.
pub type LayoutScreen = QuickScreen<LayoutKind>;

impl Shown for LayoutKind {
    const CHAPTER: &'static str = "layout";

    fn speaks(self, id: &str, reading: &Reading) -> bool {
        let meets = reading.word("ridge_meets").unwrap_or_default();
        match self {
            Self::WallLayout => return wall::speaks(id, reading),
            Self::FloorLayout => return floor::speaks(id, reading),
            _ => {}
        }
        match id {
            "ridge_thick" | "ridge_deep" => meets != "rafter",
            "ridge_seat" => meets == "beam_top",
            "fascia_thick" => reading.number("eave_overhang").is_some_and(|overhang| overhang > 0.0),
            _ => true,
        }
    }

    /// What the job gives is asked beside the rest: here it is what is built.
    fn in_its_place(self, field: Field) -> Field {
        let group = match field.id {
            "house_width" | "roof_pitch" | "eave_overhang" => Group::Shape,
            _ => field.group,
        };
        Field { group, ..field }
    }

    fn picture(self, reply: &QuickReply) -> Scene {
        match &reply.drawn {
            Drawn::Layout(DrawnLayout::Rafter(drawn)) => stick::picture(&drawn.cut, reply),
            Drawn::Layout(DrawnLayout::Hip(drawn)) => stick::picture(&drawn.cut, reply),
            Drawn::Layout(DrawnLayout::Plates(drawn)) => wall::picture(drawn),
            Drawn::Layout(DrawnLayout::Joists(drawn)) => floor::picture(drawn),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }

    fn path_down(self, reply: &QuickReply) -> Option<Scene> {
        match &reply.drawn {
            Drawn::Layout(DrawnLayout::Rafter(drawn)) => Some(rafter::picture(drawn)),
            Drawn::Layout(DrawnLayout::Hip(drawn)) => Some(plan::picture(&drawn.plan)),
            Drawn::Layout(DrawnLayout::Plates(drawn)) => Some(plate::picture(drawn)),
            _ => None,
        }
    }
}
