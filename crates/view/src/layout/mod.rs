//! How Layout is shown: which of its inputs speak, and its pictures.

mod ceiling;
mod figures;
mod floor;
mod place;
mod plan;
mod plate;
mod rafter;
mod row_side;
mod sheathing;
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
        let is = |input: &str, word: &str| reading.word(input) == Some(word);
        let gables = is("left_end", "gable") && is("right_end", "gable");
        match (self, id) {
            (Self::WallLayout, id) => wall::speaks(id, reading),
            (Self::FloorLayout, id) => floor::speaks(id, reading),
            (Self::Strapping, id) => ceiling::speaks(id, reading),
            (_, "fascia_thick") => reading.number("eave_overhang").is_some_and(|overhang| overhang > 0.0),
            (Self::HipValleyCuts, "ridge_thick") => is("hip_meets", "ridge"),
            (Self::HipValleyCuts, "ridge_meets" | "ridge_deep" | "ridge_seat" | "tail_cut") => false,
            (Self::Jack, "ridge_deep" | "ridge_seat") => false,
            (Self::Jack, "ridge_meets") => is("cut_corner", "valley"),
            (Self::Jack, "ridge_thick") => is("cut_corner", "valley") && !is("ridge_meets", "rafter"),
            (Self::Jack, "seat_level" | "tail_cut") => is("cut_corner", "hip"),
            (Self::RoofSheathing, "cut_other_pitch" | "corner_angle") => !gables,
            (Self::RoofSheathing, "building_length") => reading.length("sheathed_eave").is_none(),
            (_, "ridge_thick" | "ridge_deep") => !is("ridge_meets", "rafter"),
            (_, "ridge_seat") => is("ridge_meets", "beam_top"),
            _ => true,
        }
    }

    /// What the job gives is asked beside the rest: here it is what is built.
    fn in_its_place(self, field: Field) -> Field {
        let group = match field.id {
            "house_width" | "building_length" | "roof_pitch" | "eave_overhang" => Group::Shape,
            _ => field.group,
        };
        Field { group, ..field }
    }

    fn picture(self, reply: &QuickReply) -> Scene {
        match &reply.drawn {
            Drawn::Layout(DrawnLayout::Rafter(drawn)) => stick::picture(&drawn.cut, reply),
            Drawn::Layout(DrawnLayout::Hip(drawn)) => stick::picture(&drawn.cut, reply),
            Drawn::Layout(DrawnLayout::Sheathing(drawn)) => sheathing::picture(drawn),
            Drawn::Layout(DrawnLayout::Plates(drawn)) => wall::picture(drawn),
            Drawn::Layout(DrawnLayout::Joists(drawn)) => floor::picture(drawn),
            Drawn::Layout(DrawnLayout::Strapping(drawn)) => ceiling::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }

    fn path_down(self, reply: &QuickReply) -> Option<Scene> {
        match &reply.drawn {
            Drawn::Layout(DrawnLayout::Rafter(drawn)) => Some(rafter::picture(drawn)),
            Drawn::Layout(DrawnLayout::Hip(drawn)) => Some(plan::picture(&drawn.plan)),
            Drawn::Layout(DrawnLayout::Plates(drawn)) => Some(plate::picture(drawn)),
            Drawn::Layout(DrawnLayout::Strapping(drawn)) => {
                drawn.side.as_ref().map(|side| row_side::picture(side, drawn.room[0], drawn.joist_thick))
            }
            _ => None,
        }
    }
}
