//! The inputs of a place, as a person writes them.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::case::{Texts, texts_case};

texts_case! {
    /// The inputs of a place. Each is a text with its unit; one that is left out is assumed, and the answer says so.
    SiteCase {
        /// Code edition: `2021`, `2018` or `2012`.
        edition,
        /// Basic wind speed (ultimate): `140 mph`.
        wind_speed,
        /// How the wind speed was given: `ultimate` or `nominal`.
        speed_given_as,
        /// Exposure: `B`, `C` or `D`.
        exposure,
        /// Ground snow load: `30 psf`.
        ground_snow,
        /// Mean roof height: `25'`.
        mean_roof_height,
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
        /// Roof snow load, where the drawing gives one.
        roof_snow,
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
        /// Roof live load: `20 psf`.
        roof_live,
        /// Load standard. Which edition the code takes its wind and snow from.
        load_standard,
        /// Risk category. A dwelling is II.
        risk_category,
        /// Dwelling: `detached` or `townhouse`.
        dwelling,
        /// Whether the code's map marks the place as one where the wind needs a design.
        wind_design_required,
        /// Seismic design category. From the building department.
        seismic_design_category,
        /// To salt water. In miles, as the wind carries the spray.
        salt_water,
        /// Hurricane coast: `yes` (Atlantic or Gulf), `hawaii`, `islands` or `no`.
        hurricane_coast,
        /// Houses or woods upwind. How far they reach from the house, against the worst wind.
        rough_upwind,
        /// Open water or flats. How far they reach, beyond the houses or woods.
        water_upwind,
        /// Ground shape. What the house stands on.
        hill,
        /// Its height. Over the ground upwind.
        hill_height,
        /// Half-way point. Level distance from the crest, upwind, to where the ground is half as high.
        hill_half_length,
        /// House to crest. Level distance.
        hill_distance,
        /// The house stands. Seen with the wind from the steep side.
        hill_side,
        /// Stands out alone. No hill as high upwind within 2 miles, and it stands twice as high as what is there.
        hill_alone,
        /// Storeys.
        storeys,
        /// House length. Along the ridge, outside to outside.
        building_length,
        /// House width. At right angles to the ridge.
        house_width,
        /// Eave height. From the ground to where the roof meets the wall.
        eave_height,
        /// Roof.
        roof_kind,
        /// Pitch. Rise on twelve.
        roof_pitch,
        /// Eave overhang. Measured level.
        eave_overhang,
        /// Rake overhang. At the gable ends, measured level.
        rake_overhang,
        /// Ridge runs. For the picture and the names of the walls.
        ridge_bearing,
        /// A side without a wall: `yes` or `no`.
        open_side,
        /// A parapet: `yes` or `no`.
        parapet,
        /// Wing length. Out from the house. Empty: no wing.
        wing_length,
        /// Wing width. Across it.
        wing_width,
        /// Its storeys.
        wing_storeys,
        /// Its eave height. From the ground.
        wing_eave_height,
        /// Its roof.
        wing_roof_kind,
        /// Its pitch.
        wing_roof_pitch,
        /// Gap to the house. A lower roof apart from the house, such as a garage.
        wing_gap,
        /// Glass protected. Shutters, or glass made for wind-borne debris.
        glass_protected,
        /// Glass in one eave wall: windows, and doors without a wind rating.
        glass_front,
        /// Glass in the other eave wall.
        glass_back,
        /// Glass in one end wall.
        glass_left,
        /// Glass in the other end wall.
        glass_right,
        /// Window or door wide. Whose pressure is asked for.
        opening_wide,
        /// Window or door high.
        opening_high,
        /// Roof surface. Snow slides off metal, slate or glass where nothing holds it.
        roof_surface,
        /// Rafters. Eave to ridge in one piece, or trusses.
        simple_rafters,
        /// Winter wind parameter. W2 of the place, for ASCE 7-22 drifts: 0.25 to 0.65.
        winter_wind,
        /// Wall weight. Of the wall's face.
        wall_dead,
        /// Roof, layer by layer.
        roof_layers,
        /// Ceiling, layer by layer.
        ceiling_layers,
        /// Floor, layer by layer.
        floor_layers,
        /// Wall, layer by layer.
        wall_layers,
        /// Stud height. Plate to plate.
        stud_height,
        /// Studs apart. Centre to centre.
        studs_apart,
        /// Rafters apart. Centre to centre.
        rafters_apart,
    }
}
