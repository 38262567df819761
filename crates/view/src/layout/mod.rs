//! How Layout is shown: which of its inputs speak, and its pictures.

mod ceiling;
mod plan;
mod rafter;
mod row_side;
mod stick;

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
        let said = |id: &str| reading.get(id).is_some_and(|value| !value.text.is_empty());
        match id {
            "strap_joist_every" | "strap_joist_first" => !said("strap_joists_at"),
            "strap_read_in" | "strap_read_at" | "strap_datum" | "strap_level" | "strap_datum_high" | "strap_aim"
            | "strap_shims" | "strap_shim_most" => said("strap_readings"),
            "strap_joists_are" | "strap_joist_deep" => said("strap_readings") || said("strap_beam_deep"),
            "strap_beam_proud" => said("strap_beam_deep"),
            "strap_plates" => said("strap_stud"),
            "strap_wall_boards" | "strap_floor_gap" | "strap_floor_thick" => {
                said("strap_stud") || said("strap_wall_high")
            }

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
            Drawn::Layout(DrawnLayout::Strapping(drawn)) => ceiling::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }

    fn path_down(self, reply: &QuickReply) -> Option<Scene> {
        match &reply.drawn {
            Drawn::Layout(DrawnLayout::Rafter(drawn)) => Some(rafter::picture(drawn)),
            Drawn::Layout(DrawnLayout::Hip(drawn)) => Some(plan::picture(&drawn.plan)),
            Drawn::Layout(DrawnLayout::Strapping(drawn)) => {
                drawn.side.as_ref().map(|side| row_side::picture(side, drawn.room[0], drawn.joist_thick))
            }
            _ => None,
        }
    }
}
