//! The inputs of the path of uplift, and where each of them counts.

use super::Lifts;
use super::panels::is_panels;
use super::ties::is_load;
use crate::reading::Reading;

pub(in crate::bracing) const FIELDS: &[&str] = &[
    "uplift_of",
    "rafter_every",
    "uplift_given",
    "eave_lift",
    "wall_by_corner",
    "rake_held",
    "outlooker_every",
    "outlooker_back",
    "rake_lift",
    "rake_roof_lift",
    "porch_bays",
    "porch_beam",
    "porch_deep",
    "porch_out",
    "porch_lift",
    "porch_uplift",
    "post_pull",
    "uplift_storeys",
    "deck_nail",
    "deck_shank",
    "deck_ringed",
    "deck_every",
    "deck_panel",
    "deck_thick",
    "deck_zone",
    "deck_suction",
    "outlooker_inner_tie",
    "outlooker_tie",
    "rafter_tie",
    "rafter_tie_side",
    "plate_tie",
    "plate_tie_side",
    "floor_tie",
    "sill_tie",
    "lap_panels",
    "lap_rows",
    "lap_every",
    "lap_shear",
    "uplift_opening",
    "header_tie",
    "jamb_tie",
    "bolt_every",
    "bolt_thick",
    "bolt_washer",
    "bolt_holds",
    "porch_rafter_tie",
    "post_top_tie",
    "post_base_tie",
    "footing_weighs",
    "wall_dead",
    "brace_studs",
    "brace_spacing",
    "species",
    "grade",
    "house_width",
    "roof_kind",
    "roof_pitch",
    "eave_overhang",
    "rake_overhang",
    "roof_dead",
    "ceiling_dead",
    "wind_speed",
    "exposure",
    "enclosure",
    "salt_water",
    "metal_where",
    "metal_tie",
    "metal_nails",
];

const OF_RAFTERS: &[&str] = &["uplift_given", "eave_lift", "wall_by_corner", "rafter_tie", "ceiling_dead"];
const OF_GABLE: &[&str] = &[
    "rake_held",
    "outlooker_every",
    "outlooker_back",
    "rake_lift",
    "rake_roof_lift",
    "outlooker_inner_tie",
    "outlooker_tie",
    "rake_overhang",
];
const OF_PORCH: &[&str] = &[
    "porch_bays",
    "porch_beam",
    "porch_deep",
    "porch_out",
    "porch_lift",
    "porch_uplift",
    "post_pull",
    "porch_rafter_tie",
    "post_top_tie",
    "post_base_tie",
    "footing_weighs",
];
const OF_DECK: &[&str] =
    &["deck_nail", "deck_shank", "deck_ringed", "deck_every", "deck_panel", "deck_thick", "deck_zone", "deck_suction"];

const OF_METAL: &[&str] = &["metal_where", "metal_tie", "metal_nails"];

/// Whether an input of the path of uplift counts, as things are.
#[must_use]
pub fn counts(id: &str, reading: &Reading) -> bool {
    let said = |input: &str| reading.word(input).is_some();
    let lifts = Lifts::of(reading);
    let roof_tie = if lifts == Lifts::Gable { "outlooker_tie" } else { "rafter_tie" };
    let panels = ["plate_tie", "floor_tie", "sill_tie"].iter().any(|tie| is_panels(reading, tie));
    if lifts == Lifts::Gable && reading.word("rake_held") == Some("ladder") {
        return ["uplift_of", "rake_held", "rake_overhang"].contains(&id);
    }
    belongs(id, lifts)
        && match id {
            "floor_tie" => reading.word("uplift_storeys") != Some("1"),
            "header_tie" | "jamb_tie" => said("uplift_opening"),
            "rafter_tie_side" => is_load(reading, roof_tie),
            "plate_tie_side" => is_load(reading, roof_tie) && is_load(reading, "plate_tie"),
            "lap_panels" => panels,
            "lap_rows" | "lap_every" | "lap_shear" => panels && said("lap_panels"),
            "deck_nail" => true,
            "deck_ringed" => said("deck_nail") && reading.word("deck_shank") == Some("ring"),
            "deck_zone" => said("deck_nail") && !said("deck_suction") && lifts != Lifts::Porch,
            _ if OF_DECK.contains(&id) => said("deck_nail"),
            "eave_lift" => said("uplift_given"),
            _ if OF_METAL.contains(&id) => reading.number("salt_water").is_some(),
            "ceiling_dead" => !said("uplift_given"),
            "roof_kind" | "enclosure" => by_site(reading, lifts),
            "porch_bays" | "porch_beam" => !said("post_pull"),
            "porch_deep" | "porch_out" => !said("post_pull") && !said("porch_uplift"),
            _ => true,
        }
}

/// The inputs that count now.
pub(super) fn used(reading: &Reading) -> Vec<&'static str> {
    FIELDS.iter().copied().filter(|id| counts(id, reading)).collect()
}

/// Whether an input is one of what is lifted.
fn belongs(id: &str, lifts: Lifts) -> bool {
    let of_porch = OF_PORCH.contains(&id);
    match lifts {
        Lifts::Wall => !of_porch && !OF_GABLE.contains(&id),
        Lifts::Gable => !of_porch && !OF_RAFTERS.contains(&id) && id != "rafter_every" && id != "eave_overhang",
        Lifts::Porch => {
            let beside = ["uplift_of", "rafter_every", "species", "salt_water"];
            of_porch || OF_DECK.contains(&id) || OF_METAL.contains(&id) || beside.contains(&id)
        }
    }
}

/// Whether something is worked out from the wind at the place.
fn by_site(reading: &Reading, lifts: Lifts) -> bool {
    let said = |input: &str| reading.word(input).is_some();
    let along = match lifts {
        Lifts::Wall => !said("uplift_given"),
        Lifts::Gable => !(said("rake_lift") && said("rake_roof_lift")),
        Lifts::Porch => false,
    };
    along || (said("deck_nail") && !said("deck_suction"))
}
