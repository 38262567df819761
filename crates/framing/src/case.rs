//! A check's inputs, as a person writes them: the same types for the command, the screen and the tests.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Inputs by their stable names, each as it was typed.
pub trait Texts {
    /// What was typed for an input; none when nothing was, or when there is no such input.
    fn text(&self, field: &str) -> Option<&str>;
}

impl Texts for BTreeMap<String, String> {
    fn text(&self, field: &str) -> Option<&str> {
        self.get(field).map(String::as_str)
    }
}

/// Makes the inputs of a check: a struct of texts, and their names.
macro_rules! texts_case {
    ($(#[doc = $about:literal])+ $case:ident { $($(#[doc = $doc:literal])+ $name:ident,)+ }) => {
        $(#[doc = $about])+
        #[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $case {
            $(
                $(#[doc = $doc])+
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $name: Option<String>,
            )+
        }

        impl $case {
            /// The stable names of the inputs, in order.
            pub const FIELDS: &[&str] = &[$(stringify!($name)),+];

            /// What was typed for an input; none when nothing was, or when there is no such input.
            #[must_use]
            pub fn get(&self, field: &str) -> Option<&str> {
                match field {
                    $(stringify!($name) => self.$name.as_deref(),)+
                    _ => None,
                }
            }

            /// Sets or clears an input. A name that is not an input changes nothing and gives `false`.
            pub fn set(&mut self, field: &str, text: Option<String>) -> bool {
                match field {
                    $(stringify!($name) => self.$name = text,)+
                    _ => return false,
                }
                true
            }
        }

        impl Texts for $case {
            fn text(&self, field: &str) -> Option<&str> {
                self.get(field)
            }
        }
    };
}
pub(crate) use texts_case;

texts_case! {
    /// The inputs of a header check. Each is a text with its unit; one that is left out is assumed, and the answer says
    /// so.
    HeaderCase {
        /// Width of the rough opening: `6' 0"`.
        opening_width,
        /// What it carries: `roof_ceiling`, `one_floor_center_bearing`, `one_floor_clear_span`,
        /// `two_floors_center_bearing`, `two_floors_clear_span`, `floor_only`, `interior_one_floor`,
        /// `interior_two_floors`, `gable_end`.
        carries,
        /// What stands on the header: `framing_bears` (joists or rafters) or `cripple_studs`.
        above,
        /// What closes the opening: `framed_unit` (a window or door fixed all round) or `overhead_door`.
        closure,
        /// Width of the building at right angles to the ridge: `28'`.
        building_width,
        /// Roof overhang, measured level: `2'`.
        overhang,
        /// Strip of roof that the header carries, where it is not half the building and the overhang.
        roof_tributary,
        /// Strip of each floor that the header carries, where it does not follow from the building's width.
        floor_tributary,
        /// Height of the wall from under the bottom plate to the top of the top plates: `8' 1-1/8"`.
        wall_height,
        /// Height of the header's underside above the bottom plate's underside: `6' 10-1/2"`.
        head_height,
        /// The wall's studs: `2x4` or `2x6`.
        wall_studs,
        /// Stud spacing, centre to centre: `16"`.
        stud_spacing,
        /// Species of the header, jacks and kings: `SPF`, `SPF-S`, `HF`, `DF-L`, `SP`.
        species,
        /// Grade of the header, jacks and kings: `No. 2`.
        grade,
        /// Moisture in service: `dry` or `wet`.
        service,
        /// Pressure treated through incisions: `no` or `yes`.
        incised,
        /// The size to judge: `2-2x10`; left out, the smallest that works is found.
        size,
        /// Name of a member that is typed in from its label.
        label_name,
        /// Its breadth.
        label_breadth,
        /// Its depth.
        label_depth,
        /// Its bending strength, psi.
        label_fb,
        /// Its shear strength, psi.
        label_fv,
        /// Its modulus of elasticity, psi.
        label_e,
        /// Its strength in bearing across the grain, psi.
        label_fc_perp,
        /// The exponent of its depth factor `(12/d)^k`.
        label_depth_exponent,
        /// Roof dead load on the level: `10 psf`.
        roof_dead,
        /// Ceiling dead load: `5 psf`.
        ceiling_dead,
        /// Attic live load: `10 psf`.
        attic_live,
        /// Floor dead load: `10 psf`.
        floor_dead,
        /// Floor live load: `40 psf`.
        floor_live,
        /// Weight of the wall standing over the header: `80 plf`.
        wall_above,
        /// Roof live load: `20 psf`.
        roof_live,
        /// Ground snow load: `30 psf`.
        ground_snow,
        /// Roof snow load, where the drawing gives one.
        roof_snow,
        /// Basic wind speed (ultimate): `140 mph`.
        wind_speed,
        /// Exposure: `B`, `C` or `D`.
        exposure,
        /// Mean roof height: `25'`.
        mean_roof_height,
        /// How the wind speed was given: `ultimate` or `nominal`.
        speed_given_as,
        /// Topographic factor: 1 on level ground, more on a hill, a ridge or a bluff.
        topographic_factor,
        /// Ground above the sea: `120'`.
        ground_elevation,
        /// How shut the house stays: `enclosed`, `partially_open` or `partially_enclosed`.
        enclosure,
        /// What shelters the roof: `fully` in the wind, `partially` or `sheltered`.
        snow_exposure,
        /// What is under the roof: `ventilated`, `heated`, `unheated` or `freezing`.
        thermal,
        /// Whether the opening is near a corner of the house, where the wind pulls hardest: `yes` or `no`.
        near_corner,
        /// Wind pressure on the wall at allowable-stress level, where the drawing gives one: `17.8 psf`.
        wind_pressure,
        /// Live-load deflection limit: `360` for L/360.
        live_limit,
        /// Total-load deflection limit: `240` for L/240.
        total_limit,
        /// Whether three or more plies are nailed so that they share the load: `yes` or `no`.
        plies_share_load,
        /// Edition of the code's header table: `2021`, `2018` or `2012`.
        edition,
        /// Gap found between header and jack.
        gap_at_jack,
        /// Moisture content of the header when it was set, per cent.
        moisture_now,
        /// Moisture content it will dry to, per cent.
        moisture_in_service,
    }
}
