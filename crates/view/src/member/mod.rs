//! How members are shown: which of their inputs speak, and their pictures.

mod picture;

use framing::member::MemberKind;
use framing::quick::reply::QuickReply;
use framing::reading::Reading;

use crate::model::{Field, Group};
use crate::quick::{QuickScreen, Shown};
use crate::scene::Scene;

/// Everything that the screen of a member shows.
pub type MemberScreen = QuickScreen<MemberKind>;

impl Shown for MemberKind {
    const CHAPTER: &'static str = "member";

    fn speaks(self, id: &str, reading: &Reading) -> bool {
        let word = |id: &str| reading.word(id).map(str::to_owned);
        match id {
            "ceiling_dead" | "attic_live" if self == Self::Joist => word("joist_of").as_deref() == Some("ceiling"),
            "floor_dead" | "floor_live" if self == Self::Joist => word("joist_of").as_deref() != Some("ceiling"),
            "ceiling_dead" => word("ceiling_on_rafters").as_deref() == Some("yes"),
            "ridge_spans" if self == Self::Rafter => word("ties").as_deref() == Some("ridge"),
            "tie_height" => word("ties").as_deref() == Some("raised"),
            "cut_to_edge" => word("cut_kind").as_deref() == Some("hole") && word("notch_of").as_deref() != Some("stud"),
            "cut_length" | "cut_edge" => {
                word("cut_kind").as_deref() == Some("notch") && word("notch_of").as_deref() != Some("stud")
            }
            "cut_at" | "joist_span" | "joist_spacing" | "floor_dead" | "floor_live" if self == Self::Notch => {
                word("notch_of").as_deref() != Some("stud")
            }
            "flush_joists" | "joists_proud" | "joists_now" | "joists_later" | "strap" => {
                word("set").as_deref() == Some("flush")
            }
            "roof_dead" | "roof_live" | "ground_snow" | "thermal" | "roof_snow" if self == Self::Beam => {
                reading.number("roof_strip").is_some()
            }
            "wind_speed" | "exposure" | "enclosure" | "near_corner" | "mean_roof_height" | "wall_finish"
                if self == Self::Stud =>
            {
                word("stud_wall").as_deref() != Some("inner")
            }
            _ => true,
        }
    }

    /// What the place gives stands under the place; what is of the roof's shape with the shape.
    fn in_its_place(self, field: Field) -> Field {
        let group = match field.id {
            "roof_pitch" | "eave_overhang" | "roof_kind" | "house_width" if self != Self::Stud => Group::Shape,
            "floor_dead" | "floor_live" | "ceiling_dead" | "attic_live" | "roof_dead" | "roof_live" => Group::Carries,
            "ground_snow" | "roof_snow" | "thermal" | "wind_speed" | "exposure" | "enclosure" | "near_corner"
            | "mean_roof_height" => Group::Place,
            "plies_share_load" => Group::Wood,
            _ => field.group,
        };
        Field { group, ..field }
    }

    fn picture(self, reply: &QuickReply) -> Scene {
        picture::picture(self, reply)
    }

    fn path_down(self, reply: &QuickReply) -> Option<Scene> {
        picture::path_down(self, reply)
    }
}
