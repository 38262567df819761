//! What each input of a check is, what it may be, and what is assumed when it is not said: one place that makes the
//! type, the limits, the message and the default.

use measure::LengthUnit;

/// How an input is written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// A length.
    Length {
        /// What a bare number means.
        bare: LengthUnit,
        /// The least that is taken, inches.
        least: f64,
        /// The most that is taken, inches.
        most: f64,
    },
    /// A number with a unit.
    Number {
        /// The unit; empty for a pure number.
        unit: &'static str,
        /// The least that is taken.
        least: f64,
        /// The most that is taken.
        most: f64,
    },
    /// One of a few: the value as stored, and its words.
    Choice(&'static [(&'static str, &'static str)]),
    /// A name of one's own.
    Name,
    /// The name of a size; read against the sizes that can be had.
    Size,
}

/// Groups of inputs, in the order they are asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The opening itself.
    Opening,
    /// What it carries.
    Carries,
    /// The wall around it.
    Wall,
    /// The wood.
    Wood,
    /// Loads and place, kept with the job.
    Site,
    /// A member typed in from its label.
    Label,
    /// Limits and rarely changed things.
    Limits,
    /// What was found on site.
    AsBuilt,
}

/// What is used when an input is not said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unsaid {
    /// This value, for this reason; every answer says so.
    Assumed(&'static str, &'static str),
    /// Nothing: it is asked, or the part that needs it is left out.
    Nothing,
}

/// One input.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FieldSpec {
    /// Its stable name, the same in the command, the screen and the job file.
    pub id: &'static str,
    /// Its name in words.
    pub label: &'static str,
    /// One line that helps to fill it; may be empty.
    pub help: &'static str,
    /// How it is written and what is taken.
    pub kind: Kind,
    /// Its group.
    pub group: Group,
    /// What is used when it is not said.
    pub unsaid: Unsaid,
}

const fn feet(bare: LengthUnit, least: f64, most: f64) -> Kind {
    Kind::Length { bare, least: least * 12.0, most: most * 12.0 }
}

const fn number(unit: &'static str, least: f64, most: f64) -> Kind {
    Kind::Number { unit, least, most }
}

const fn field(
    id: &'static str,
    label: &'static str,
    help: &'static str,
    kind: Kind,
    group: Group,
    unsaid: Unsaid,
) -> FieldSpec {
    FieldSpec { id, label, help, kind, group, unsaid }
}

use Group::{AsBuilt, Carries, Label, Limits, Opening, Site, Wall, Wood};
use LengthUnit::{Feet, Inches};
use Unsaid::{Assumed, Nothing};

const YES_NO: Kind = Kind::Choice(&[("yes", "yes"), ("no", "no")]);

/// The inputs of the header check, in the order they are asked.
pub const HEADER_FIELDS: &[FieldSpec] = &[
    field(
        "opening_width",
        "Opening width",
        "Rough opening, jack to jack.",
        Kind::Length { bare: Inches, least: 12.0, most: 288.0 },
        Opening,
        Assumed("6' 0\"", "to have something to look at"),
    ),
    field(
        "carries",
        "It carries",
        "What comes down on this header.",
        Kind::Choice(&[
            ("roof_ceiling", "roof and ceiling only"),
            ("one_floor_center_bearing", "roof and 1 floor, bearing wall at the centre"),
            ("one_floor_clear_span", "roof and 1 floor, clear span"),
            ("two_floors_center_bearing", "roof and 2 floors, bearing wall at the centre"),
            ("two_floors_clear_span", "roof and 2 floors, clear span"),
            ("floor_only", "1 floor only"),
            ("interior_one_floor", "inner bearing wall, 1 floor"),
            ("interior_two_floors", "inner bearing wall, 2 floors"),
            ("gable_end", "gable end: no roof or floor, wind only"),
        ]),
        Carries,
        Assumed("roof_ceiling", "the least that an outer bearing wall carries"),
    ),
    field(
        "above",
        "On top of it",
        "What stands on the header decides whether it can roll.",
        Kind::Choice(&[
            ("framing_bears", "joists or rafters bear on it"),
            ("cripple_studs", "cripple studs stand on it"),
        ]),
        Carries,
        Nothing,
    ),
    field(
        "closure",
        "In the opening",
        "Where the wind on the opening goes.",
        Kind::Choice(&[
            ("framed_unit", "window or door, fixed all round"),
            ("overhead_door", "overhead door, tracks on the jambs"),
        ]),
        Opening,
        Assumed("framed_unit", "half of its wind goes up to the header: the worse of the two"),
    ),
    field(
        "building_width",
        "Building width",
        "At right angles to the ridge, outside to outside.",
        feet(Feet, 6.0, 80.0),
        Carries,
        Assumed("28'", "a common house"),
    ),
    field(
        "overhang",
        "Roof overhang",
        "Measured level.",
        feet(Inches, 0.0, 6.0),
        Carries,
        Assumed("2'", "a deep eave"),
    ),
    field(
        "roof_tributary",
        "Strip of roof",
        "Only where it is not half the building and the overhang.",
        feet(Feet, 0.0, 60.0),
        Carries,
        Nothing,
    ),
    field(
        "floor_tributary",
        "Strip of each floor",
        "Only where it does not follow from the building's width.",
        feet(Feet, 0.0, 40.0),
        Carries,
        Nothing,
    ),
    field(
        "wall_height",
        "Wall height",
        "Under the bottom plate to the top of the top plates.",
        feet(Inches, 6.0, 20.0),
        Wall,
        Assumed("8' 1-1/8\"", "92-5/8 in studs and three plates"),
    ),
    field(
        "head_height",
        "Head height",
        "Under the bottom plate to the underside of the header.",
        feet(Inches, 2.0, 18.0),
        Wall,
        Assumed("6' 10-1/2\"", "a 6-8 door over a finished floor"),
    ),
    field(
        "wall_studs",
        "Wall studs",
        "",
        Kind::Choice(&[("2x4", "2x4"), ("2x6", "2x6")]),
        Wall,
        Assumed("2x6", "an outer wall on an exposed coast"),
    ),
    field(
        "stud_spacing",
        "Stud spacing",
        "Centre to centre.",
        Kind::Length { bare: Inches, least: 8.0, most: 24.0 },
        Wall,
        Assumed("16\"", "the common spacing"),
    ),
    field(
        "species",
        "Species",
        "From the grade stamp.",
        Kind::Choice(&[
            ("SPF", "Spruce-Pine-Fir"),
            ("SPF-S", "Spruce-Pine-Fir (South)"),
            ("HF", "Hem-Fir"),
            ("DF-L", "Douglas Fir-Larch"),
            ("SP", "Southern Pine"),
        ]),
        Wood,
        Assumed("SPF", "the weakest of the common four in bending where snow governs; read the stamp"),
    ),
    field(
        "grade",
        "Grade",
        "From the grade stamp.",
        Kind::Choice(&[
            ("Select Structural", "Select Structural"),
            ("No. 1", "No. 1"),
            ("No. 2", "No. 2"),
            ("No. 3", "No. 3"),
        ]),
        Wood,
        Assumed("No. 2", "the grade framing lumber is sold as"),
    ),
    field(
        "service",
        "In service",
        "Wet: over 19 % moisture once built.",
        Kind::Choice(&[("dry", "dry"), ("wet", "wet")]),
        Wood,
        Assumed("dry", "inside a closed wall"),
    ),
    field("incised", "Incised", "Treated through slits in the wood.", YES_NO, Wood, Assumed("no", "not treated")),
    field("size", "Size to judge", "Left empty: the smallest that works.", Kind::Size, Opening, Nothing),
    field(
        "roof_dead",
        "Roof dead load",
        "On the level.",
        number("psf", 0.0, 100.0),
        Site,
        Assumed("10 psf", "shingles, deck and rafters"),
    ),
    field(
        "ceiling_dead",
        "Ceiling dead load",
        "",
        number("psf", 0.0, 50.0),
        Site,
        Assumed("5 psf", "gypsum board, joists, insulation"),
    ),
    field(
        "attic_live",
        "Attic live load",
        "10 without storage, 20 with.",
        number("psf", 0.0, 50.0),
        Site,
        Assumed("10 psf", "an attic without storage, IRC Table R301.5"),
    ),
    field(
        "floor_dead",
        "Floor dead load",
        "",
        number("psf", 0.0, 100.0),
        Site,
        Assumed("10 psf", "a wood floor with ceiling below"),
    ),
    field(
        "floor_live",
        "Floor live load",
        "",
        number("psf", 0.0, 150.0),
        Site,
        Assumed("40 psf", "rooms other than sleeping, IRC Table R301.5"),
    ),
    field(
        "wall_above",
        "Wall above",
        "All the wall that stands over the header.",
        number("plf", 0.0, 1000.0),
        Site,
        Nothing,
    ),
    field(
        "roof_live",
        "Roof live load",
        "",
        number("psf", 0.0, 60.0),
        Site,
        Assumed("20 psf", "not reduced, IRC Table R301.6"),
    ),
    field(
        "ground_snow",
        "Ground snow",
        "From the building department; not the same number as roof snow.",
        number("psf", 0.0, 300.0),
        Site,
        Assumed("30 psf", "the table's first column; ask the building department"),
    ),
    field("roof_snow", "Roof snow", "Only where the drawing gives it.", number("psf", 0.0, 300.0), Site, Nothing),
    field(
        "wind_speed",
        "Wind speed",
        "Basic, ultimate: from the building department.",
        number("mph", 85.0, 200.0),
        Site,
        Assumed("140 mph", "an exposed coast; ask the building department"),
    ),
    field(
        "exposure",
        "Exposure",
        "What the wind crosses before it reaches the wall.",
        Kind::Choice(&[("B", "B: houses, woods"), ("C", "C: open fields"), ("D", "D: open water, flats")]),
        Site,
        Assumed("D", "open water upwind: the worst of the three"),
    ),
    field(
        "mean_roof_height",
        "Mean roof height",
        "Half-way between eave and ridge.",
        feet(Feet, 6.0, 60.0),
        Site,
        Assumed("25'", "two storeys"),
    ),
    field(
        "near_corner",
        "Near a corner",
        "Within a tenth of the house's width of a corner, and at least 3 ft.",
        YES_NO,
        Wall,
        Assumed("yes", "the wind pulls hardest there"),
    ),
    field(
        "wind_pressure",
        "Wind pressure",
        "Only where the drawing gives it: wall, allowable-stress level.",
        number("psf", 0.0, 150.0),
        Site,
        Nothing,
    ),
    field("label_name", "Member from its label", "What is printed on it.", Kind::Name, Label, Nothing),
    field(
        "label_breadth",
        "Its breadth",
        "All plies together.",
        Kind::Length { bare: Inches, least: 1.25, most: 10.75 },
        Label,
        Nothing,
    ),
    field("label_depth", "Its depth", "", Kind::Length { bare: Inches, least: 3.5, most: 48.0 }, Label, Nothing),
    field(
        "label_fb",
        "Its Fb",
        "Bending strength on edge, for 12 in depth.",
        number("psi", 1000.0, 4000.0),
        Label,
        Nothing,
    ),
    field("label_fv", "Its Fv", "Shear strength on edge.", number("psi", 100.0, 600.0), Label, Nothing),
    field("label_e", "Its E", "Modulus of elasticity.", number("psi", 800_000.0, 2_600_000.0), Label, Nothing),
    field("label_fc_perp", "Its Fc⊥", "Across the grain, on edge.", number("psi", 250.0, 1500.0), Label, Nothing),
    field(
        "label_depth_exponent",
        "Its depth exponent",
        "k of (12/d)^k on the supplier's sheet; 0 where it gives none.",
        number("", 0.0, 0.2),
        Label,
        Nothing,
    ),
    field(
        "live_limit",
        "Live-load sag limit",
        "360 means span over 360.",
        number("", 120.0, 1000.0),
        Limits,
        Assumed("360", "floors, IRC Table R301.7"),
    ),
    field(
        "total_limit",
        "Total sag limit",
        "240 means span over 240.",
        number("", 120.0, 1000.0),
        Limits,
        Assumed("240", "all other members, IRC Table R301.7"),
    ),
    field(
        "plies_share_load",
        "Three plies share",
        "Three or more plies nailed so that a weak one is helped.",
        YES_NO,
        Limits,
        Assumed("yes", "three or more in contact, NDS 4.3.9"),
    ),
    field(
        "edition",
        "Code edition",
        "Of the header table beside the answer.",
        Kind::Choice(&[("2021", "IRC 2021"), ("2018", "IRC 2018"), ("2012", "IRC 2012 and before")]),
        Limits,
        Assumed("2021", "ask which edition is adopted"),
    ),
    field(
        "gap_at_jack",
        "Gap at the jack",
        "Found between header and jack.",
        Kind::Length { bare: Inches, least: 0.0, most: 3.0 },
        AsBuilt,
        Nothing,
    ),
    field(
        "moisture_now",
        "Moisture when set",
        "",
        number("%", 4.0, 40.0),
        AsBuilt,
        Assumed("19 %", "the most that surfaced-dry lumber is sold at"),
    ),
    field(
        "moisture_in_service",
        "Moisture it dries to",
        "",
        number("%", 4.0, 40.0),
        AsBuilt,
        Assumed("10 %", "a heated house"),
    ),
];

/// The input of that name.
#[must_use]
pub fn header_field(id: &str) -> Option<&'static FieldSpec> {
    HEADER_FIELDS.iter().find(|spec| spec.id == id)
}

/// Whether an input is kept with the job and pre-filled in the next check.
#[must_use]
pub const fn kept_with_job(spec: &FieldSpec) -> bool {
    matches!(spec.group, Site | Wood | Limits)
}
