//! How Bracing is shown: which of its inputs speak, and its pictures.

mod floor;
mod lines;
mod path;
mod wall;

use framing::bracing::BracingKind;
use framing::quick::reply::{Drawn, QuickReply};
use framing::reading::Reading;

use crate::model::{Field, Group};
use crate::pen::Pen;
use crate::quick::{QuickScreen, SIZE, Shown};
use crate::scene::Scene;

/// How panels and nails of a floor or a roof are typed.
const FLOOR_SIZE: &str = "Such as 7/16 8d 6, or 15/32 10d 4/6 blocked. Write Structural I, or 3x, where it is so.";

/// Everything that the screen of Bracing shows.
pub type BracingScreen = QuickScreen<BracingKind>;

impl Shown for BracingKind {
    const CHAPTER: &'static str = "bracing";

    const OTHERS: (&'static str, &'static str) = ("Other panels and nails", "Find the lightest instead");

    fn speaks(self, id: &str, reading: &Reading) -> bool {
        match id {
            "roof_kind" | "roof_pitch" | "eave_height" | "wind_speed" | "exposure" if self == Self::WallLines => {
                reading.word("pushes_across").is_none() || reading.word("pushes_along").is_none()
            }
            "floor_tie" => reading.word("uplift_storeys") != Some("1"),
            "header_tie" | "jamb_tie" => reading.length("uplift_opening").is_some(),
            "roof_kind" | "ceiling_dead" | "enclosure" => reading.number("uplift_given").is_none(),
            "panel_least" => reading.word(SIZE).is_none(),
            "wall_high" if self == Self::Diaphragm => reading.word("end_line").is_some(),
            _ => true,
        }
    }

    /// What the job gives stands under the place.
    fn in_its_place(self, field: Field) -> Field {
        let group = match field.id {
            "house_width" | "roof_kind" | "roof_pitch" | "eave_overhang" | "roof_dead" | "ceiling_dead"
            | "wind_speed" | "exposure" | "enclosure" | "building_length" | "storeys" | "eave_height" => Group::Place,
            _ => field.group,
        };
        let help = if self == Self::Diaphragm && field.id == SIZE { FLOOR_SIZE } else { field.help };
        Field { group, help, ..field }
    }

    fn picture(self, reply: &QuickReply) -> Scene {
        match &reply.drawn {
            Drawn::Wall(drawn) => wall::picture(drawn, reply),
            Drawn::Path(links) => path::picture(links, reply),
            Drawn::Lines(drawn) => lines::picture(drawn, reply),
            Drawn::Floor(drawn) => floor::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }
}
