//! The layers of a wall from the studs out, read and answered.

use bracing::{
    Braces, Layer, LayerKind, MakeUp, MakeUpAnswer, Misplaced, Reach, ShearFastener, check_make_up, nail_length,
};
use measure::{AreaLoad, Denominator, Length, LengthUnit, read_length};
use members::working::{Basis, Part};
use standards::irc_2021::r703_15::{
    DIRECTLY_TO_FRAMING, FURRING_OVER_FOAM, FurringFastener, INTO_FRAMING, WATER_BARRIER,
};

use super::{BRACES, BRACES_NOTHING, FASTENER_TOO_SHORT};
use crate::quick::reply::{Drawn, DrawnLayers, QuickReply, RuleReply};
use crate::quick::say::{capital, cautions, length_fact, rule};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "wall_layers",
    "panel_nail",
    "panel_nail_long",
    "outer_long",
    "furring_nail",
    "furring_nail_every",
    "cladding_weighs",
    "brace_spacing",
];

const NAMES: [(LayerKind, &[&str]); 9] = [
    (LayerKind::InsulatedPanel, &["insulated panel", "insulated"]),
    (LayerKind::InsulatingBoard, &["insulating board", "fiberboard", "fibreboard"]),
    (LayerKind::Panel, &["panel", "osb", "plywood", "strand board"]),
    (LayerKind::Gypsum, &["gypsum", "drywall"]),
    (LayerKind::Foam, &["foam"]),
    (LayerKind::Barrier, &["barrier", "wrap", "housewrap", "paper", "felt"]),
    (LayerKind::Furring, &["furring", "strapping"]),
    (LayerKind::Gap, &["gap", "air", "drainage mat"]),
    (LayerKind::Cladding, &["cladding", "siding", "shingles", "clapboard"]),
];

/// Its first name in the list is what it is called.
fn name(kind: LayerKind) -> &'static str {
    NAMES.iter().find(|(of, _)| *of == kind).map_or("layer", |(_, names)| names[0])
}

/// The most layers that are read.
const MOST: usize = 10;

fn layers(text: &str) -> Result<Vec<Layer>, String> {
    let parts: Vec<&str> = text.split([',', ';']).map(str::trim).filter(|part| !part.is_empty()).collect();
    if parts.is_empty() || parts.len() > MOST {
        return Err(format!("{} layers were given; one to {MOST} are taken, with a comma between them.", parts.len()));
    }
    parts.into_iter().map(layer).collect()
}

fn layer(part: &str) -> Result<Layer, String> {
    let plain = part.to_lowercase();
    let words = plain.trim_end_matches(|letter: char| letter.is_ascii_digit() || " -./\"".contains(letter)).trim();
    let thick = plain.get(words.len()..).unwrap_or_default().trim();
    let found = NAMES.iter().find(|(_, names)| names.contains(&words));
    let Some((kind, _)) = found else {
        let known: Vec<&str> = NAMES.iter().map(|(_, names)| names[0]).collect();
        return Err(format!("“{part}” was given; one of these with its thickness is taken: {}.", known.join(", ")));
    };
    if *kind == LayerKind::Barrier && thick.is_empty() {
        return Ok(Layer { kind: *kind, thickness: Length::ZERO });
    }
    let thickness = read_length(thick, LengthUnit::Inches).map_err(|problem| format!("{part}: {problem}"))?.length;
    if (0.0..=12.0).contains(&thickness.inches()) && thickness > Length::ZERO {
        return Ok(Layer { kind: *kind, thickness });
    }
    Err(format!("{part}: {} was given; a thickness to 12\" is taken.", words::inches(thickness)))
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let text = reading.word("wall_layers")?.to_owned();
    let layers = match layers(&text) {
        Ok(layers) => layers,
        Err(problem) => {
            reading.refuse("wall_layers", problem);
            return None;
        }
    };
    let reading = &*reading;
    let panel_nail = match reading.word("panel_nail")? {
        "6d" => ShearFastener::Common6d,
        "10d" => ShearFastener::Common10d,
        _ => ShearFastener::Common8d,
    };
    let fastener = match reading.word("furring_nail")? {
        "0.162" => FurringFastener::Nail162,
        "screw" => FurringFastener::Screw10,
        "lag" => FurringFastener::Lag,
        _ => FurringFastener::Nail131,
    };
    let wall = MakeUp {
        layers,
        panel_nail,
        panel_nail_length: reading.length("panel_nail_long").or_else(|| nail_length(panel_nail))?,
        outer_fastener: reading.length("outer_long"),
        furring_fastener: (fastener, reading.length("furring_nail_every")?),
        furring_spacing: reading.length("brace_spacing")?,
        cladding: AreaLoad::from_psf(reading.number("cladding_weighs")?),
    };
    let used: Vec<&str> = FIELDS
        .iter()
        .copied()
        .filter(|id| wall.layers.iter().any(|layer| layer.kind == LayerKind::Furring) || !OF_FURRING.contains(id))
        .collect();
    Some(reply(About::of(reading, &used), &wall, &check_make_up(&wall)))
}

/// What is asked of furring alone.
const OF_FURRING: [&str; 4] = ["furring_nail", "furring_nail_every", "cladding_weighs", "brace_spacing"];

fn thirty_seconds(length: Length) -> String {
    length.to_inches_fraction(Denominator::ThirtySecond)
}

fn reply(mut about: About<'_>, wall: &MakeUp, answer: &MakeUpAnswer) -> QuickReply {
    let counts = matches!(answer.braces, Braces::Yes | Braces::OverGypsum);
    let short = |reach: &Option<Reach>| reach.is_some_and(|reach| reach.reaches() == Some(false));
    let verdict = if !counts {
        BRACES_NOTHING
    } else if short(&answer.panel_nails) || short(&answer.outer) {
        FASTENER_TOO_SHORT
    } else {
        BRACES
    };
    let panel = wall.layers.iter().find(|layer| layer.kind == LayerKind::Panel);
    let size =
        panel.map_or_else(|| "No panel".to_owned(), |panel| format!("Panel {}", thirty_seconds(panel.thickness)));
    let mut reply = QuickReply { size, verdict: verdict.to_owned(), ..QuickReply::default() };
    reply.reason = why(answer.braces);
    reply.action = action(wall, answer);
    if let Some(reach) = answer.panel_nails {
        reply.facts.push(length_fact("panel_nail_least_in", "the panel's nail, at the least", reach.least));
    }
    if let Some(reach) = answer.outer {
        let what = "the furring's or cladding's fastener, at the least";
        reply.facts.push(length_fact("outer_fastener_least_in", what, reach.least));
        if reach.is.is_none() {
            let asks = format!("How long is what holds it on? {} is the least.", thirty_seconds(reach.least));
            about.ask("outer_long", asks);
        }
    }
    reply.by_code.extend(foam_rule(answer));
    about.part(working(wall, answer));
    match answer.braces {
        Braces::OverGypsum => about.say("Over gypsum board a table of its own holds, with larger nails: the drawing says which."),
        Braces::Kept(_) => about.say("A nail that bends across a gap of an inch keeps about a third of its strength, and leans much farther: worked out with the yield equations and a gap. No table has such a wall; a maker's own evaluation may, and an engineer says."),
        _ => {}
    }
    about.say("The wind's pull on cladding and its fasteners is a check of its own.");
    about.say("Housewrap is no gap. A drainage mat, shims and channels are.");
    cautions(&mut about);
    reply.drawn = Drawn::Layers(drawn(wall, answer));
    reply.about = about.finish();
    reply
}

fn why(braces: Braces) -> Option<String> {
    match braces {
        Braces::Yes | Braces::OverGypsum => None,
        Braces::NoPanel => Some("No panel that braces is in it.".to_owned()),
        Braces::Kept(kind) => Some(format!("{} lies between the panel and its studs.", capital(name(kind)))),
    }
}

fn action(wall: &MakeUp, answer: &MakeUpAnswer) -> Vec<String> {
    let mut says = Vec::new();
    match answer.braces {
        Braces::Kept(kind) => says.push(format!(
            "Nail the panel to the studs themselves, and put the {} outside of it. Else an engineer, or the maker's own evaluation, must say what it carries.",
            name(kind)
        )),
        Braces::NoPanel if wall.layers.iter().any(|layer| matches!(layer.kind, LayerKind::InsulatedPanel | LayerKind::InsulatingBoard | LayerKind::Foam)) => says.push(
            "What insulates does not brace: where this wall is drawn braced, strand board or plywood goes on the studs first.".to_owned(),
        ),
        Braces::NoPanel => says.push("Where this wall is drawn braced, strand board or plywood goes on the studs.".to_owned()),
        Braces::Yes | Braces::OverGypsum => {}
    }
    for (what, reach) in [("The panel's nail", answer.panel_nails), ("What holds furring or cladding", answer.outer)] {
        if let Some(reach) = reach.filter(|reach| reach.reaches() == Some(false)) {
            says.push(format!("{what} is too short: {} is the least.", thirty_seconds(reach.least)));
        }
    }
    says.extend(answer.misplaced.iter().map(|fault| misplaced(*fault).to_owned()));
    if let Some(Err(_)) = &answer.foam {
        says.push("The furring's fasteners do not hold this cladding over foam by the code's table: set them closer, or take stronger ones.".to_owned());
    }
    if let Some(Ok(thickest)) = &answer.foam
        && answer.foam_outside > *thickest
    {
        says.push(format!(
            "The foam is too thick for these fasteners: {} is the most. Set them closer, or take stronger ones.",
            thirty_seconds(*thickest)
        ));
    }
    if says.is_empty() {
        says.push(
            "Nail the panel to the studs, the barrier over it, and what holds the outer layers right into the studs."
                .to_owned(),
        );
    }
    says
}

const fn misplaced(fault: Misplaced) -> &'static str {
    match fault {
        Misplaced::NoBarrier => "There is no water barrier in it: one goes behind the cladding.",
        Misplaced::BarrierInside => {
            "The water barrier is behind the panel: it goes outside of it, lapped like shingles."
        }
        Misplaced::BarrierOutside => {
            "The water barrier is outside of the furring or the cladding: it goes behind them."
        }
        Misplaced::FurringInside => {
            "The furring is behind the foam: it goes outside of it, where the cladding is nailed."
        }
    }
}

fn foam_rule(answer: &MakeUpAnswer) -> Option<RuleReply> {
    let source = format!("{}.", words::source(FURRING_OVER_FOAM));
    Some(match answer.foam.as_ref()? {
        Ok(thickest) => {
            let says = vec![format!("{} of foam is in it.", thirty_seconds(answer.foam_outside)), source];
            rule("Foam under furring", Some(answer.foam_outside <= *thickest), thirty_seconds(*thickest), says)
        }
        Err(outside) => rule("Foam under furring", None, "not covered", vec![outside.to_string()]),
    })
}

fn working(wall: &MakeUp, answer: &MakeUpAnswer) -> Part {
    let mut part = Part::new("Layer by layer");
    for layer in &wall.layers {
        part.step("t", name(layer.kind), "", (layer.thickness.inches(), "in"), Basis::Input("wall_layers"));
    }
    if let Some(reach) = answer.panel_nails {
        let source = Basis::Published(DIRECTLY_TO_FRAMING);
        part.step("l", "panel's nail: through to the studs and into them", "", (reach.least.inches(), "in"), source);
    }
    if let Some(reach) = answer.outer {
        let source = Basis::Published(INTO_FRAMING);
        part.step(
            "l",
            "outer fastener: through all of it and into the studs",
            "",
            (reach.least.inches(), "in"),
            source,
        );
    }
    let barriers = wall.layers.iter().filter(|layer| layer.kind == LayerKind::Barrier).count();
    part.step("", "water barriers", "", (barriers as f64, ""), Basis::Published(WATER_BARRIER));
    part
}

fn drawn(wall: &MakeUp, answer: &MakeUpAnswer) -> DrawnLayers {
    let at = |kind: LayerKind| wall.layers.iter().position(|layer| layer.kind == kind);
    let outermost = at(LayerKind::Furring).or_else(|| at(LayerKind::Cladding));
    DrawnLayers {
        layers: wall.layers.iter().map(|layer| (name(layer.kind).to_owned(), layer.thickness)).collect(),
        panel: at(LayerKind::Panel),
        panel_nail: wall.panel_nail_length,
        panel_nail_reaches: answer.panel_nails.and_then(|reach| reach.reaches()),
        outer: answer.outer.zip(outermost).map(|(reach, at)| (at, reach.least, reach.is)),
        braces: matches!(answer.braces, Braces::Yes | Braces::OverGypsum),
    }
}
