//! How Bracing is shown: which of its inputs speak, and its pictures.

mod compared;
mod floor;
mod joint;
mod layers;
mod lines;
mod marks;
mod path;
mod sill;
mod swap;
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
        let of = |input: &str| reading.word(input).unwrap_or_default();
        let ringed = |input: &str| of(input).ends_with("ring");
        match (self, id) {
            (Self::Nail | Self::NailSwap, "nail_gauge") => of("nail_side") == "steel",
            (Self::Nail | Self::NailSwap, "nail_side_thick") => of("nail_side") != "steel",
            (Self::Nail | Self::NailSwap, "nail_ringed") => ringed("nail_shank") || ringed("asked_shank"),
            (Self::NailSwap, "code_element") => of("nailed_work") == "framing",
            (Self::WallLines, "roof_kind" | "roof_pitch" | "eave_height" | "wind_speed" | "exposure") => {
                reading.word("pushes_across").is_none() || reading.word("pushes_along").is_none()
            }
            (Self::Diaphragm, "wall_high") => reading.word("end_line").is_some(),
            (_, "panel_least") => reading.word(SIZE).is_none(),
            (_, "schedule_lines") => matches!(self, Self::Schedule | Self::DrawnAndWorked),
            (_, "floor_between") => of("braced_walls").to_lowercase().contains("under "),
            (_, "floor_tie") => of("uplift_storeys") != "1",
            (_, "furring_nail" | "furring_nail_every" | "cladding_weighs") => of("wall_layers").contains("furring"),
            (_, "header_tie" | "jamb_tie") => reading.length("uplift_opening").is_some(),
            (_, "roof_kind" | "ceiling_dead" | "enclosure") => reading.number("uplift_given").is_none(),
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
            Drawn::Layers(drawn) => layers::picture(drawn, reply),
            Drawn::Marks(marks) => marks::picture(marks, reply),
            Drawn::Compared(pairs) => compared::picture(pairs, reply),
            Drawn::Joint(drawn) => joint::picture(drawn, reply),
            Drawn::Swap(drawn) => swap::picture(drawn, reply),
            Drawn::Sill(drawn) => sill::picture(drawn, reply),
            Drawn::Lines(drawn) => lines::picture(drawn, reply),
            Drawn::Floor(drawn) => floor::picture(drawn, reply),
            _ => Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned()),
        }
    }
}
