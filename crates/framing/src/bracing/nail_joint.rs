//! From inputs to a joint of nails: the nail with its shank and head, what is under the head, and how it is driven.

use fastening::{
    ConnectionMoisture, Driven, FasteningError, Joint, LoadDuration, NailConditions, NailSpec, SHEET_ULTIMATE,
    ServiceMoisture, Shank, SideMember, Wood, WoodPanel, gauge_thickness, read_nail, table_head,
};
use lumber::Species;
use measure::{Force, Length};
use members::working::Part;

use crate::quick::drawn_fasteners::{DrawnDriven, DrawnNail};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::figure;

/// A nail of an input with its shank; what is wrong with it is said.
pub(super) fn spec(reading: &mut Reading, nail: &'static str, shank: &str) -> Option<NailSpec> {
    let text = reading.word(nail)?.to_owned();
    let read = match read_nail(&text) {
        Ok(read) => read,
        Err(problem) => {
            reading.refuse(nail, problem.to_string());
            return None;
        }
    };
    if let Some(value) = reading.values.iter_mut().find(|value| value.spec.id == nail) {
        value.shown.clone_from(&read.echo);
        value.echo = read.echo;
    }
    let ringed = reading.length("nail_ringed")?;
    let shank = match reading.word(shank)? {
        "stainless" => Shank::SmoothStainless,
        "roof_ring" => Shank::RoofSheathingRing { ringed },
        "post_ring" => Shank::PostFrameRing { ringed },
        _ => Shank::Smooth,
    };
    Some(NailSpec { nail: read.nail, shank, head: None })
}

/// The head that was measured, for a nail of an input; refused where the nail cannot have it.
pub(super) fn with_head(reading: &mut Reading, nail: NailSpec) -> Option<NailSpec> {
    let spec = NailSpec { head: reading.length("nail_head"), ..nail };
    if let Err(problem @ FasteningError::Head { .. }) = spec.head() {
        reading.refuse("nail_head", problem.to_string());
        return None;
    }
    Some(spec)
}

/// Whether a ring shank is among them.
pub(super) const fn is_ringed(nail: &NailSpec) -> bool {
    matches!(nail.shank, Shank::RoofSheathingRing { .. } | Shank::PostFrameRing { .. })
}

/// Refuses rings that the nail cannot have.
pub(super) fn check_rings(reading: &mut Reading, nail: &NailSpec) -> Option<()> {
    let (Shank::RoofSheathingRing { ringed } | Shank::PostFrameRing { ringed }) = nail.shank else { return Some(()) };
    if ringed > nail.nail.length() {
        reading.refuse("nail_ringed", FasteningError::Rings { nail: nail.nail, given: ringed }.to_string());
        return None;
    }
    Some(())
}

/// What is under the head, in words: `7/16" OSB`.
pub(super) struct Side {
    pub(super) member: SideMember,
    pub(super) words: String,
    /// The thickness that was taken, where none was said.
    usual: Option<&'static str>,
}

/// What is under the head; its common thickness where none was said.
fn side(reading: &Reading, species: Species) -> Option<Side> {
    let (wood, name, usual) = match reading.word("nail_side")? {
        "steel" => return steel(reading),
        "lumber" => (Wood::Lumber(species), "lumber", (1.5, "Its thickness: 1-1/2\" (2x lumber).")),
        "plywood" => (Wood::Panel(WoodPanel::PlywoodOther), "plywood", (15.0 / 32.0, PANEL_USUAL)),
        "plywood_1" => {
            (Wood::Panel(WoodPanel::PlywoodStructural1), "plywood, Structural I", (15.0 / 32.0, PANEL_USUAL))
        }
        _ => (Wood::Panel(WoodPanel::Osb), "OSB", (7.0 / 16.0, "Its thickness: 7/16\" (the common sheathing).")),
    };
    let given = reading.length("nail_side_thick");
    let thickness = given.unwrap_or(Length::from_inches(usual.0));
    let words = format!("{} {name}", fine(thickness));
    Some(Side { member: SideMember::wood(wood, thickness), words, usual: given.is_none().then_some(usual.1) })
}

const PANEL_USUAL: &str = "Its thickness: 15/32\" (the common plywood).";

fn steel(reading: &Reading) -> Option<Side> {
    let gauge: u8 = reading.word("nail_gauge")?.parse().ok()?;
    let thickness = gauge_thickness(gauge)?.value;
    let words = format!("{gauge} gauge steel");
    Some(Side { member: SideMember::steel(SHEET_ULTIMATE, thickness), words, usual: None })
}

/// The joint, and what is under the head.
pub(super) fn joint(reading: &Reading, conditions: NailConditions) -> Option<(Joint, Side)> {
    let species = Species::from_text(reading.word("species")?).ok()?;
    let side = side(reading, species)?;
    let driven = match reading.word("nail_driven")? {
        "end" => Driven::EndGrain,
        "toe" => Driven::Toe,
        _ => Driven::Face,
    };
    Some((Joint { driven, conditions, ..Joint::face_nailed(side.member, Wood::Lumber(species)) }, side))
}

/// How long the load lasts and how wet the wood is.
pub(super) fn conditions(reading: &Reading) -> Option<NailConditions> {
    let duration = match reading.word("nail_lasts")? {
        "construction" => LoadDuration::SevenDays,
        "snow" => LoadDuration::TwoMonths,
        "floor" => LoadDuration::TenYears,
        "dead" => LoadDuration::Permanent,
        _ => LoadDuration::TenMinutes,
    };
    let wet = |yes: bool| if yes { ServiceMoisture::Wet } else { ServiceMoisture::Dry };
    let moisture = ConnectionMoisture {
        at_fabrication: wet(reading.word("nailed_wet")? == "yes"),
        in_service: wet(reading.word("service")? == "wet"),
    };
    Some(NailConditions { duration, moisture, ..NailConditions::REFERENCE })
}

/// What is taken of the piece under the head, and of the main piece.
pub(super) fn say_of_side(about: &mut About<'_>, side: &Side) {
    if let Some(usual) = side.usual {
        about.assume("nail_side_thick", usual);
    }
    about.say("The piece that holds the point is thick enough for the whole nail.");
}

/// The inputs that the answer rests on: gauge, rings and thickness only where they count.
pub(super) fn used(reading: &Reading, all: &[&'static str], ringed: bool) -> Vec<&'static str> {
    let steel = reading.word("nail_side") == Some("steel");
    let counts = |id: &&str| match *id {
        "nail_gauge" => steel,
        "nail_ringed" => ringed,
        _ => true,
    };
    all.iter().copied().filter(counts).collect()
}

/// Pounds of strength: rounded down.
pub(super) fn carried(force: Force) -> String {
    format!("{} lb", figure(force.pounds().floor()))
}

/// Inches as a nail is called, `0.131"`, or a fraction where a tape has the mark.
pub(super) fn fine(length: Length) -> String {
    crate::walk::words::length(length)
}

/// `c_1 × c_2`, the factors of a value; those of 1 left out.
pub(super) fn factored(
    part: &mut Part,
    value: (&'static str, &str),
    (reference, factors): (Force, &[fastening::Factor]),
    adjusted: Force,
) {
    for factor in factors.iter().filter(|factor| factor.factor.value != 1.0) {
        let basis = members::working::Basis::Published(factor.factor.source);
        part.step(factor.symbol, of_factor(factor.symbol), "", (factor.factor.value, ""), basis);
    }
    let mut expression = figure(reference.pounds());
    for factor in factors.iter().filter(|factor| factor.factor.value != 1.0) {
        expression.push_str(&format!(" × {}", figure(factor.factor.value)));
    }
    part.step(value.0, value.1, expression, (adjusted.pounds(), "lb"), members::working::Basis::Arithmetic);
}

fn of_factor(symbol: &str) -> &'static str {
    match symbol {
        "C_D" => "load duration",
        "C_M" => "wet wood",
        "C_t" => "heat",
        "C_eg" => "end grain",
        "C_tn" => "toe nail",
        _ => "distances",
    }
}

/// A nail as it is drawn.
pub(super) fn drawn_nail(spec: &NailSpec, penetration: Option<Length>) -> DrawnNail {
    DrawnNail {
        name: spec.nail.to_string(),
        diameter: spec.nail.diameter(),
        length: spec.nail.length(),
        head: spec.head.or_else(|| table_head(spec.nail).map(|head| head.value)),
        penetration,
    }
}

/// How it is driven, as it is drawn.
pub(super) const fn drawn_driven(driven: Driven) -> DrawnDriven {
    match driven {
        Driven::Face => DrawnDriven::Face,
        Driven::EndGrain => DrawnDriven::End,
        Driven::Toe => DrawnDriven::Toe,
    }
}

/// Whether the nail is too short for the joint, and by what; what else is wrong is given back.
pub(super) fn too_short(problem: &FasteningError) -> Option<String> {
    match problem {
        FasteningError::TooShort { .. } | FasteningError::MainMemberTooThin { .. } => Some(problem.to_string()),
        _ => None,
    }
}
