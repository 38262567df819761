//! The inputs of Bracing: braced walls, what holds their ends down, bolts, floors and roofs as diaphragms, the path of
//! uplift, and nails.

mod lift;
mod lift_beside;
mod lift_nails;
mod metal;
mod nails;
mod sill;

use measure::LengthUnit::{Feet, Inches};

use super::Group::{Bears, Carries, Limits, Shape, Wood};
use super::Unsaid::{Assumed, Nothing};
use super::{FieldSpec, Kind, YES_NO, feet, field, number};

const SPACING: Kind = Kind::Length { bare: Inches, least: 8.0, most: 24.0 };
const SMALL: Kind = Kind::Length { bare: Inches, least: 0.0, most: 24.0 };
const POUNDS: Kind = number("lb", 0.0, 200_000.0);
/// How the straps of several floors are written.
const POUNDS_LIST_HELP: &str =
    "Between storeys: the labels' allowable loads for wind, from the top floor down, commas between. One for all.";
const PLF: Kind = number("plf", 0.0, 20_000.0);

/// Every input that Bracing has beside those of the header and of Site.
pub const BRACING_FIELDS: &[FieldSpec] = &ALL;

const GROUPED: usize = 7;
const GROUPS: [&[FieldSpec]; GROUPED] = [
    WALL_FIELDS,
    lift::LIFT_FIELDS,
    lift_nails::LIFT_NAIL_FIELDS,
    lift_beside::LIFT_BESIDE_FIELDS,
    nails::NAIL_FIELDS,
    sill::SILL_FIELDS,
    metal::METAL_FIELDS,
];
const ALL: [FieldSpec; how_many(GROUPS)] = joined(GROUPS);

const fn how_many(groups: [&[FieldSpec]; GROUPED]) -> usize {
    let (mut group, mut all) = (0, 0);
    while group < groups.len() {
        all += groups[group].len();
        group += 1;
    }
    all
}

/// The groups one after the other.
const fn joined<const N: usize>(groups: [&[FieldSpec]; GROUPED]) -> [FieldSpec; N] {
    let mut all = [groups[0][0]; N];
    let (mut group, mut filled) = (0, 0);
    while group < groups.len() {
        let mut index = 0;
        while index < groups[group].len() {
            all[filled] = groups[group][index];
            index += 1;
            filled += 1;
        }
        group += 1;
    }
    all
}

/// Braced walls, what holds their ends down, and anchor bolts.
const WALL_FIELDS: &[FieldSpec] = &[
    field(
        "schedule_lines",
        "The drawing's schedule",
        "A mark a line, such as P1: 15/32 10d 3/12, boundary 3, studs 2x6, blocked, sill 16d at 6, hold-down HD2, or HD2: hold-down 5,000 lb; sheet S2.1 rev B. Or paste a table with its heading.",
        Kind::Lines,
        Shape,
        Nothing,
    ),
    field(
        "braced_walls",
        "Walls and their marks",
        "A wall a line, with its mark where the drawing gives one, such as Front below: W3, walls 3', 4', high 9', push 5,400 lb, dead 180 plf, under Front above. The push is all that is along it, from above as well.",
        Kind::Lines,
        Shape,
        Nothing,
    ),
    field(
        "floor_between",
        "Floor between storeys",
        "From the top plates of a wall to the bottom plate of the wall on it.",
        Kind::Length { bare: Inches, least: 1.0, most: 36.0 },
        Shape,
        Assumed("12-7/8\"", "the common storey's floor"),
    ),
    field(
        "wall_pieces",
        "Full-height pieces",
        "From the left, commas between. Only wall that is sheathed from plate to plate.",
        Kind::Name,
        Shape,
        Assumed("4', 6'", "to have something to look at"),
    ),
    field(
        "wall_openings",
        "Openings between them",
        "Width x height, commas between. Write open after one that has no panel above and below it.",
        Kind::Name,
        Shape,
        Assumed("6' x 4'", "to have something to look at"),
    ),
    field(
        "wall_high",
        "Wall height",
        "Under the bottom plate to the top of the top plates.",
        feet(Feet, 4.0, 24.0),
        Shape,
        Assumed("8' 1-1/8\"", "the common wall"),
    ),
    field(
        "wall_push",
        "Push along it",
        "At its top, for allowable stress design: 0.6 of the wind. The drawing gives it.",
        POUNDS,
        Carries,
        Assumed("2,400 lb", "to have something to look at"),
    ),
    field(
        "wall_dead",
        "Dead load on it",
        "What surely stands on it, and no live load. It helps to hold the ends down.",
        PLF,
        Carries,
        Assumed("0 plf", "nothing helps: the careful side"),
    ),
    field(
        "storey_pushes",
        "Push at each storey",
        "From the top storey down, commas between; for allowable stress design.",
        Kind::Name,
        Carries,
        Assumed("1,000, 1,200", "to have something to look at"),
    ),
    field(
        "storey_heights",
        "Storey heights",
        "From the top storey down, floor to floor, commas between. One number for all.",
        Kind::Name,
        Shape,
        Assumed("9' 2\"", "the common storey with its floor"),
    ),
    field(
        "storey_deads",
        "Dead load at each storey",
        "From the top storey down, plf, commas between. One number for all.",
        Kind::Name,
        Carries,
        Assumed("0", "nothing helps: the careful side"),
    ),
    field(
        "wall_long",
        "Length of the wall",
        "The piece that is held down at both its ends, the same in every storey.",
        feet(Feet, 1.0, 100.0),
        Shape,
        Assumed("6'", "to have something to look at"),
    ),
    field(
        "drawn_size",
        "Panels and nails as drawn",
        "Such as 7/16 8d 4, with both faces or Structural I where it is so; or a mark of the schedule.",
        Kind::Name,
        Shape,
        Nothing,
    ),
    field(
        "brace_studs",
        "Studs",
        "",
        Kind::Choice(&[("2x4", "2x4"), ("2x6", "2x6"), ("2x8", "2x8")]),
        Wood,
        Assumed("2x6", "the common outer wall"),
    ),
    field("brace_spacing", "Stud spacing", "Centre to centre.", SPACING, Wood, Assumed("16\"", "the common spacing")),
    field(
        "panels_lie",
        "Panels lie",
        "Which way their long side runs.",
        Kind::Choice(&[("along", "along the studs"), ("across", "across the studs")]),
        Wood,
        Assumed("along", "the careful side"),
    ),
    field(
        "sheet_long",
        "Sheets are long",
        "Their long side. It says where level joints fall.",
        feet(Feet, 4.0, 24.0),
        Wood,
        Assumed("8'", "the common sheet"),
    ),
    field(
        "wall_blocking",
        "Level joints of panels",
        "",
        Kind::Choice(&[("blocked", "on framing or blocking"), ("unblocked", "on nothing between the studs")]),
        Wood,
        Assumed("blocked", "what the tables of nailed walls ask; look behind the panels"),
    ),
    field(
        "field_nails",
        "Nails in the field",
        "Where level joints lie on nothing.",
        Kind::Choice(&[("6", "6\""), ("12", "12\"")]),
        Wood,
        Assumed("12", "the careful side"),
    ),
    field(
        "other_face",
        "Other face",
        "Such as gypsum 1/2 5d cooler 7, or gypsum 5/8 screws 8/12 blocked; or panels, 7/16 8d 6. Empty: nothing is counted.",
        Kind::Name,
        Wood,
        Nothing,
    ),
    field("nailed_wet", "Wet when nailed", "Over 19 % moisture on the day.", YES_NO, Wood, Assumed("no", "dry lumber")),
    field(
        "end_post",
        "Post at each end",
        "How many studs are nailed together there.",
        Kind::Choice(&[("2", "2 studs"), ("3", "3 studs"), ("4", "4 studs")]),
        Bears,
        Assumed("2", "the common post"),
    ),
    field(
        "rod_in",
        "Rod from the end",
        "From the wall's end to the middle of the hold-down's rod or strap.",
        SMALL,
        Bears,
        Assumed("4-1/2\"", "beside a post of two studs"),
    ),
    field(
        "held_on",
        "Hold-down stands",
        "",
        Kind::Choice(&[
            ("inside", "on the inner face of the post"),
            ("strap", "as a strap or rods with the post in their middle"),
        ]),
        Bears,
        Assumed("inside", "the common hold-down"),
    ),
    field(
        "hold_down_label",
        "Hold-down carries",
        "Its allowable load for wind, from its label or the drawing.",
        POUNDS,
        Bears,
        Nothing,
    ),
    field(
        "hold_down_gives",
        "Hold-down gives",
        "How far it gives at that load, from its label.",
        Kind::Length { bare: Inches, least: 0.0, most: 1.0 },
        Bears,
        Assumed("1/8\"", "between what labels print"),
    ),
    field(
        "wall_layers",
        "Layers from the studs out",
        "Commas between, each with its thickness: panel, gypsum, foam, insulated panel, insulating board, barrier, furring, gap, cladding.",
        Kind::Name,
        Shape,
        Assumed("panel 7/16, barrier, foam 1, furring 3/4, cladding 1/2", "to have something to look at"),
    ),
    field(
        "panel_nail",
        "Panel nail",
        "",
        Kind::Choice(&[("6d", "6d common"), ("8d", "8d common"), ("10d", "10d common")]),
        Wood,
        Assumed("8d", "the common one"),
    ),
    field(
        "panel_nail_long",
        "Its length",
        "As it stands on the box. Empty: a common nail's.",
        Kind::Length { bare: Inches, least: 0.75, most: 8.0 },
        Wood,
        Nothing,
    ),
    field(
        "outer_long",
        "Furring or cladding fastener",
        "Its length: what goes through to the studs.",
        Kind::Length { bare: Inches, least: 0.75, most: 16.0 },
        Bears,
        Nothing,
    ),
    field(
        "furring_nail",
        "Furring is held by",
        "",
        Kind::Choice(&[
            ("0.131", "nails of 0.131\""),
            ("0.162", "nails of 0.162\""),
            ("screw", "No. 10 wood screws"),
            ("lag", "lag screws of 1/4\""),
        ]),
        Bears,
        Assumed("0.131", "the common gun nail"),
    ),
    field(
        "furring_nail_every",
        "Along the furring, every",
        "",
        Kind::Length { bare: Inches, least: 2.0, most: 24.0 },
        Bears,
        Assumed("12\"", "between the table's rows"),
    ),
    field(
        "cladding_weighs",
        "Cladding weighs",
        "",
        number("psf", 0.5, 60.0),
        Carries,
        Assumed("3 psf", "light siding"),
    ),
    field(
        "bolt_every",
        "Anchor bolts",
        "Centre to centre.",
        Kind::Length { bare: Inches, least: 6.0, most: 96.0 },
        Bears,
        Assumed("6'", "the most that the code lets them be, IRC R403.1.6"),
    ),
    field(
        "bolt_thick",
        "Bolt diameter",
        "",
        Kind::Choice(&[("1/2", "1/2\""), ("5/8", "5/8\""), ("3/4", "3/4\"")]),
        Bears,
        Assumed("1/2", "the least that the code takes, IRC R403.1.6"),
    ),
    field(
        "bolt_washer",
        "Washer",
        "Under the nut.",
        Kind::Choice(&[("plate", "plate, 3 x 3 x 1/4\""), ("cut", "round, cut")]),
        Bears,
        Assumed("cut", "the weaker one"),
    ),
    field(
        "bolt_holds",
        "One bolt holds in the concrete",
        "Pulled, as the drawing or an engineer gives it.",
        POUNDS,
        Bears,
        Nothing,
    ),
    field(
        "provisions",
        "Shear wall provisions",
        "",
        Kind::Choice(&[("2021", "SDPWS 2021"), ("2015", "SDPWS 2015")]),
        Limits,
        Assumed("2021", "the newer edition"),
    ),
];
