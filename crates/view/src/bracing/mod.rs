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

use framing::bracing::{BracingKind, counts_in_uplift};
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
            (_, "field_nails") => of("wall_blocking") == "unblocked",
            (_, "sheet_long") => of("panels_lie") != "across",
            (Self::HoldDown | Self::AnchorBolts, "metal_where" | "metal_tie" | "metal_nails") => {
                reading.number("salt_water").is_some()
            }
            (_, "strap_gauge") => reading.word("strap_nails").is_some(),
            (_, "floor_between") => of("braced_walls").to_lowercase().contains("under "),
            (_, "furring_nail" | "furring_nail_every" | "cladding_weighs") => of("wall_layers").contains("furring"),
            (Self::Uplift, id) => counts_in_uplift(id, reading),
            _ => true,
        }
    }

    /// What the job gives stands under the place.
    fn in_its_place(self, field: Field) -> Field {
        let group = match field.id {
            "house_width" | "roof_kind" | "roof_pitch" | "eave_overhang" | "rake_overhang" | "roof_dead"
            | "ceiling_dead" | "wind_speed" | "exposure" | "enclosure" | "building_length" | "storeys"
            | "eave_height" | "salt_water" => Group::Place,
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
