//! What runs along the long edges of a floor or a roof: its chords and their splices; and how far it bows.

use fastening::{Joint, LoadDuration, MainMember, Nail, NailConditions, NailKind, SideMember, Wood, lateral_value};
use lumber::{Member, Product, Sawn, SawnSize};
use measure::{Area, Force, Length, Stress};
use members::working::{Basis, Part};
use standards::Source;
use standards::sdpws_2015::diaphragm::THREE_TERMS;

use super::diaphragm::Told;
use super::diaphragm_collector::{collector, stretches};
use super::frame;
use crate::quick::reply::{DrawnFloor, QuickReply};
use crate::quick::say::{fact, force_fact, pounds};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// Thickness of a plate.
const PLATE: Length = Length::from_inches(1.5);

/// The nail of the splices.
#[derive(Clone, Copy)]
pub(super) struct SpliceNail {
    pub(super) name: &'static str,
    /// What one carries through two plates in wind.
    pub(super) each: Force,
    source: Source,
}

/// What was asked besides the panels.
pub(super) struct Asked {
    /// Walls of the end line with the gaps between; none where nobody said.
    pub(super) line: Option<Vec<(Length, bool)>>,
    /// Where the plate is spliced; none in the middle.
    pub(super) splice: Option<Length>,
}

/// Where the plate is spliced, from the nearer wall line; what is wrong with it is said.
pub(super) fn splice(reading: &mut Reading, span: Length) -> Option<Length> {
    let at = reading.length("splice_at")?;
    if at > span / 2.0 {
        let (given, half) = (words::length(at), words::length(span / 2.0));
        let problem = format!("{given} was given; from 0 to half the span, {half}, is taken.");
        reading.refuse("splice_at", problem);
        return None;
    }
    Some(at)
}

/// Tells of chords, splices, collector and bow; what is drawn of them.
pub(super) fn tell(reply: &mut QuickReply, about: &mut About<'_>, told: &Told<'_>, asked: Asked) -> DrawnFloor {
    let Told { reading, floor, answer, .. } = told;
    let middle = floor.length / 2.0;
    let at = asked.splice.unwrap_or(middle);
    if asked.splice.is_none() {
        about.assume("splice_at", "Splice of the plate: in the middle (where the pull is most).");
    }
    let nail = splice_nail(reading);
    let at_splice = floor.chord_at(at);
    let mut part = Part::new("Chords");
    let (load, span, deep) = (floor.load.plf(), floor.length.feet(), floor.width.feet());
    let expression = format!("{} × {}² / (8 × {})", figure(load), figure(span), figure(deep));
    part.step(
        "T",
        "pull and push in the chords, in the middle",
        expression,
        (answer.chord.pounds(), "lb"),
        Basis::Arithmetic,
    );
    reply.facts.push(force_fact(
        "chord_lb",
        "the plates along both long edges are pulled and pressed by",
        answer.chord,
    ));
    if at < middle {
        let left = figure(span - at.feet());
        let expression = format!("{} × {} × {left} / (2 × {})", figure(load), figure(at.feet()), figure(deep));
        part.step("T", "at the splice", expression, (at_splice.pounds(), "lb"), Basis::Arithmetic);
        reply.facts.push(force_fact("chord_at_splice_lb", "at the splice", at_splice));
    }
    if let Some(SpliceNail { name, each, source }) = nail {
        part.step(
            "Z'",
            format!("a {name} through one 2x plate into the other, C_D 1.6"),
            "",
            (each.pounds(), "lb"),
            Basis::Published(source),
        );
        let count = nails(at_splice, each);
        part.step(
            "n",
            "nails on each side of the splice",
            format!("{} / {}", figure(at_splice.pounds()), figure(each.pounds())),
            (count, ""),
            Basis::Arithmetic,
        );
        reply.facts.push(fact(
            "splice_nails",
            format!("nails ({name}) on each side of every splice"),
            count,
            figure(count),
        ));
        reply.action.push(format!(
            "Lap the plates and nail each side of the splice with {} nails ({name}), for {}.",
            figure(count),
            pounds(at_splice)
        ));
        about.say("The other plate runs through at a splice. The plate itself was not checked in tension, nor how close so many nails may stand before it splits: where they do not fit, take a strap.");
    } else {
        about.outside(
            "The nails of the splice were not worked: no nail of this kind holds in this wood by the equations."
                .to_owned(),
        );
    }
    about.part(part);
    let collector = collector(reply, about, told, asked.line.as_deref(), nail);
    bow(reply, about, told);
    DrawnFloor {
        span: floor.length,
        deep: floor.width,
        layout: told.layout,
        push: String::new(),
        reaction: String::new(),
        chord: pounds(answer.chord),
        splice: at,
        walls: asked.line.map(|line| stretches(&line)).unwrap_or_default(),
        collector,
    }
}

/// The nail of the splices by its name, and what one carries through two plates in wind.
fn splice_nail(reading: &Reading) -> Option<SpliceNail> {
    let (kind, name) = match reading.word("splice_nail")? {
        "sinker" => (NailKind::Sinker, "16d sinker"),
        "box" => (NailKind::Box, "16d box"),
        _ => (NailKind::Common, "16d common"),
    };
    let wood = Wood::Lumber(frame::wood(reading)?.0);
    let joint = Joint {
        main: MainMember { wood, thickness: Some(PLATE) },
        conditions: NailConditions { duration: LoadDuration::TenMinutes, ..NailConditions::REFERENCE },
        ..Joint::face_nailed(SideMember::wood(wood, PLATE), wood)
    };
    let value = lateral_value(Nail::of_size(kind, 16)?, &joint).ok()?;
    let nail = SpliceNail { name, each: value.adjusted, source: value.limits.governing().value.source };
    (nail.each > Force::ZERO).then_some(nail)
}

/// How many nails carry a force.
pub(super) fn nails(force: Force, each: Force) -> f64 {
    (force / each - 1e-9).ceil().max(0.0)
}

/// Area and stiffness of the chord.
fn chord(reading: &Reading) -> Option<(Area, Stress)> {
    let (species, grade, conditions) = frame::wood(reading)?;
    let size = SawnSize::from_text(reading.word("brace_studs")?).ok()?;
    let plates: u8 = reading.word("chord_plates")?.parse().ok()?;
    let member = Member::new(Product::Sawn(Sawn { species, grade, size }), plates).ok()?;
    let modulus = member.adjusted_stresses(&conditions, lumber::LoadDuration::TenMinutes).ok()?.e;
    Some((member.section().area, modulus))
}

/// How far the middle of it bows, where the table has a stiffness.
fn bow(reply: &mut QuickReply, about: &mut About<'_>, told: &Told<'_>) {
    let Told { floor, strength, answer, .. } = told;
    let Some((chord, bow, stiffness)) =
        chord(told.reading).and_then(|chord| Some((chord, floor.bow(chord, &[], strength)?, strength.stiffness?)))
    else {
        about.outside("How far it bows was not worked: no stiffness of this nailing or this wood is held.".to_owned());
        return;
    };
    let (area, modulus) = chord;
    let (v, span, deep) = (answer.unit_shear.plf(), floor.length.feet(), floor.width.feet());
    let source = Basis::Published(THREE_TERMS);
    let mut part = Part::new("How far it bows");
    let bent = format!(
        "5 × {} × {}³ / (8 × {} × {} × {})",
        figure(v),
        figure(span),
        figure(modulus.psi()),
        figure(area.square_inches()),
        figure(deep)
    );
    part.step("δ_b", "chords stretched and pressed, 5vL³/(8EAW)", bent, (bow.bending.inches(), "in"), source);
    let sheared =
        format!("0.25 × {} × {} / (1,000 × {})", figure(v), figure(span), figure(stiffness.pounds_per_inch() / 1000.0));
    part.step("δ_v", "panels and their nails, 0.25vL/(1000 G_a)", sheared, (bow.shear.inches(), "in"), source);
    part.step("δ", "in all", "", (bow.total().inches(), "in"), Basis::Arithmetic);
    about.part(part);
    let written = words::inches(bow.total());
    reply.facts.push(fact("bow_in", "its middle bows in this push", bow.total().inches(), written));
    about.say("The bow is of strand board, without what the splices give. No limit is printed for wind: see that the walls under it can follow.");
}
