//! The inputs of Site: what the building department says, the ground, and the house's outline.

use measure::LengthUnit::{Feet, Inches};
use measure::read_pitch;

use super::Group::{Glass, Ground, House, Parts, Place, RoofSnow, Upwind, Weights, Wing};
use super::Unsaid::{Assumed, Nothing};
use super::{FieldSpec, Kind, YES_NO, feet, field, header_field, number};

const ROOF: Kind = Kind::Choice(&[
    ("gable", "gable"),
    ("hip", "hip"),
    ("shed", "one slope"),
    ("gambrel", "gambrel"),
    ("flat", "flat"),
]);
const PITCH: Kind = Kind::Special { read: pitch, written: on_twelve, least: 0.0, most: 24.0 };

fn pitch(text: &str) -> Result<(f64, String), String> {
    let pitch = read_pitch(text).map_err(|problem| problem.to_string())?;
    let rise = pitch.rise_in_twelve();
    Ok((rise, format!("{} = {:.1} degrees", on_twelve(rise), pitch.angle().degrees())))
}

fn on_twelve(rise: f64) -> String {
    format!("{}/12", members::working::figure(rise))
}

/// The inputs of Site that no check has by itself.
pub const SITE_FIELDS: &[FieldSpec] = &[
    field(
        "load_standard",
        "Load standard",
        "Which edition the code takes its wind and snow from.",
        Kind::Choice(&[("asce7_16", "ASCE 7-16"), ("asce7_22", "ASCE 7-22")]),
        Place,
        Assumed("asce7_16", "what the 2018 and 2021 codes take"),
    ),
    field(
        "risk_category",
        "Risk category",
        "A dwelling is II.",
        Kind::Choice(&[
            ("1", "I: barns, sheds"),
            ("2", "II: houses"),
            ("3", "III: many people"),
            ("4", "IV: needed in a storm"),
        ]),
        Place,
        Assumed("2", "a dwelling"),
    ),
    field(
        "seismic_design_category",
        "Seismic design category",
        "From the building department.",
        Kind::Choice(&[("A", "A"), ("B", "B"), ("C", "C"), ("D0", "D0"), ("D1", "D1"), ("D2", "D2"), ("E", "E")]),
        Place,
        Nothing,
    ),
    field(
        "salt_water",
        "To salt water",
        "In miles, as the wind carries the spray.",
        number("miles", 0.0, 3000.0),
        Place,
        Nothing,
    ),
    field(
        "hurricane_coast",
        "Hurricane coast",
        "Atlantic or Gulf coast, or one of the islands that the code names.",
        YES_NO,
        Place,
        Nothing,
    ),
    field(
        "rough_upwind",
        "Houses or woods upwind",
        "How far they reach from the house, against the worst wind.",
        number("ft", 0.0, 100_000.0),
        Upwind,
        Nothing,
    ),
    field(
        "water_upwind",
        "Open water or flats",
        "How far they reach, beyond the houses or woods.",
        number("ft", 0.0, 100_000.0),
        Upwind,
        Nothing,
    ),
    field(
        "hill",
        "Ground shape",
        "What the house stands on.",
        Kind::Choice(&[
            ("flat", "level, or gently rolling"),
            ("bluff", "a bluff"),
            ("ridge", "a long ridge"),
            ("hill", "a hill by itself"),
        ]),
        Ground,
        Assumed("flat", "level ground"),
    ),
    field("hill_height", "Its height", "Over the ground upwind.", number("ft", 1.0, 3000.0), Ground, Nothing),
    field(
        "hill_half_length",
        "Half-way point",
        "Level distance from the crest, upwind, to where the ground is half as high.",
        number("ft", 1.0, 20_000.0),
        Ground,
        Nothing,
    ),
    field("hill_distance", "House to crest", "Level distance.", number("ft", 0.0, 20_000.0), Ground, Nothing),
    field(
        "hill_side",
        "The house stands",
        "Seen with the wind from the steep side.",
        Kind::Choice(&[("downwind", "behind the crest"), ("upwind", "before the crest")]),
        Ground,
        Assumed("downwind", "behind the crest the wind stays fast the longest"),
    ),
    field(
        "hill_alone",
        "Stands out alone",
        "No hill as high upwind within 2 miles, and it stands twice as high as what is there.",
        YES_NO,
        Ground,
        Assumed("yes", "the stronger wind of the two"),
    ),
    field(
        "storeys",
        "Storeys",
        "",
        Kind::Choice(&[("1", "1"), ("2", "2"), ("3", "3")]),
        House,
        Assumed("2", "a common house"),
    ),
    field(
        "building_length",
        "House length",
        "Along the ridge, outside to outside.",
        feet(Feet, 6.0, 200.0),
        House,
        Assumed("40'", "a common house"),
    ),
    field(
        "house_width",
        "House width",
        "At right angles to the ridge.",
        feet(Feet, 6.0, 80.0),
        House,
        Assumed("28'", "a common house"),
    ),
    field(
        "eave_height",
        "Eave height",
        "From the ground to where the roof meets the wall.",
        feet(Feet, 6.0, 60.0),
        House,
        Assumed("19'", "two storeys over a low foundation"),
    ),
    field(
        "roof_kind",
        "Roof",
        "",
        ROOF,
        House,
        Assumed("gable", "the common roof, and harder on the wind side than a hip"),
    ),
    field("roof_pitch", "Pitch", "Rise on twelve.", PITCH, House, Assumed("6/12", "a common pitch")),
    field(
        "eave_overhang",
        "Eave overhang",
        "Measured level.",
        feet(Inches, 0.0, 6.0),
        House,
        Assumed("1'", "a common eave"),
    ),
    field(
        "rake_overhang",
        "Rake overhang",
        "At the gable ends, measured level.",
        feet(Inches, 0.0, 6.0),
        House,
        Assumed("1'", "a common rake"),
    ),
    field(
        "ridge_bearing",
        "Ridge runs",
        "For the picture and the names of the walls.",
        Kind::Choice(&[
            ("east_west", "east to west"),
            ("north_south", "north to south"),
            ("ne_sw", "north-east to south-west"),
            ("nw_se", "north-west to south-east"),
        ]),
        House,
        Assumed("east_west", "to have something to draw"),
    ),
    field("wing_length", "Wing length", "Out from the house. Empty: no wing.", feet(Feet, 3.0, 100.0), Wing, Nothing),
    field("wing_width", "Wing width", "Across it.", feet(Feet, 3.0, 80.0), Wing, Nothing),
    field("wing_eave_height", "Its eave height", "From the ground.", feet(Feet, 6.0, 60.0), Wing, Nothing),
    field("wing_roof_kind", "Its roof", "", ROOF, Wing, Nothing),
    field("wing_roof_pitch", "Its pitch", "", PITCH, Wing, Nothing),
    field(
        "wing_gap",
        "Gap to the house",
        "A lower roof apart from the house, such as a garage.",
        feet(Feet, 0.0, 60.0),
        Wing,
        Assumed("0'", "built against it"),
    ),
    field(
        "glass_protected",
        "Glass protected",
        "Shutters, or glass made for wind-borne debris.",
        YES_NO,
        Glass,
        Nothing,
    ),
    field(
        "opening_wide",
        "Window or door wide",
        "Whose pressure is asked for.",
        feet(Inches, 1.0, 40.0),
        Glass,
        Assumed("3'", "a common window"),
    ),
    field("opening_high", "Window or door high", "", feet(Inches, 1.0, 20.0), Glass, Assumed("5'", "a common window")),
    field(
        "roof_surface",
        "Roof surface",
        "Snow slides off metal, slate or glass where nothing holds it.",
        Kind::Choice(&[("other", "shingles, shakes"), ("slippery", "metal, slate, glass")]),
        RoofSnow,
        Assumed("other", "asphalt shingles"),
    ),
    field(
        "simple_rafters",
        "Rafters",
        "Eave to ridge in one piece, or trusses.",
        Kind::Choice(&[("rafters", "rafters, eave to ridge"), ("trusses", "trusses, or rafters with posts")]),
        RoofSnow,
        Assumed("rafters", "hand-cut roof"),
    ),
    field(
        "winter_wind",
        "Winter wind parameter",
        "W2 of the place, for ASCE 7-22 drifts: 0.25 to 0.65.",
        number("", 0.25, 0.65),
        RoofSnow,
        Nothing,
    ),
    field(
        "wall_dead",
        "Wall weight",
        "Of the wall's face.",
        number("psf", 0.0, 100.0),
        Weights,
        Assumed("9 psf", "a sided 2x6 wall"),
    ),
    field(
        "roof_layers",
        "Roof, layer by layer",
        "Layers with a plus between them; tap them in, or write one with its weight: slate 10 psf.",
        Kind::Name,
        Weights,
        Nothing,
    ),
    field(
        "ceiling_layers",
        "Ceiling, layer by layer",
        "Layers with a plus between them; tap them in, or write one with its weight: slate 10 psf.",
        Kind::Name,
        Weights,
        Nothing,
    ),
    field(
        "floor_layers",
        "Floor, layer by layer",
        "Layers with a plus between them; tap them in, or write one with its weight: slate 10 psf.",
        Kind::Name,
        Weights,
        Nothing,
    ),
    field(
        "wall_layers",
        "Wall, layer by layer",
        "Layers with a plus between them; tap them in, or write one with its weight: slate 10 psf.",
        Kind::Name,
        Weights,
        Nothing,
    ),
    field(
        "stud_height",
        "Stud height",
        "Plate to plate.",
        feet(Inches, 4.0, 30.0),
        Parts,
        Assumed("8'", "a common wall"),
    ),
    field(
        "studs_apart",
        "Studs apart",
        "Centre to centre.",
        Kind::Length { bare: Inches, least: 8.0, most: 24.0 },
        Parts,
        Assumed("16\"", "the common spacing"),
    ),
    field(
        "rafters_apart",
        "Rafters apart",
        "Centre to centre.",
        Kind::Length { bare: Inches, least: 8.0, most: 48.0 },
        Parts,
        Assumed("24\"", "the widest common spacing"),
    ),
];

/// The inputs of a check that the job keeps and Site shows too.
const SHARED: &[&str] = &[
    "wind_speed",
    "speed_given_as",
    "exposure",
    "ground_snow",
    "mean_roof_height",
    "topographic_factor",
    "ground_elevation",
    "enclosure",
    "snow_exposure",
    "thermal",
    "roof_snow",
    "roof_dead",
    "ceiling_dead",
    "attic_live",
    "floor_dead",
    "floor_live",
    "roof_live",
];

/// Every input of Site.
pub fn site_fields() -> impl Iterator<Item = &'static FieldSpec> {
    SHARED.iter().filter_map(|id| header_field(id)).chain(SITE_FIELDS)
}
