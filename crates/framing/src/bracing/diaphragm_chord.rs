//! What runs along the edges of a floor or a roof: its chords and their splices, the collector of its end line, and how far
//! it bows.

use bracing::diaphragm::{CollectorPoint, WallPiece, collect};
use bracing::{Ends, Framing, SegmentedWall, check_segmented, nailings, strength};
use fastening::{Joint, LoadDuration, MainMember, Nail, NailConditions, NailKind, SideMember, Wood, lateral_value};
use lumber::{Member, Product, Sawn, SawnSize};
use measure::{Area, Force, Length, LineLoad, Stress};
use members::working::{Basis, Part};
use standards::sdpws_2015::diaphragm::THREE_TERMS;
use standards::{Source, Status};

use super::diaphragm::{Told, size};
use super::{frame, lists};
use crate::quick::reply::{DrawnFloor, QuickReply, TableReply};
use crate::quick::say::{fact, force_fact, pounds};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// Thickness of a plate.
const PLATE: Length = Length::from_inches(1.5);
/// So little along a plate is nothing.
const NOTHING: Force = Force::from_pounds(0.5);
/// The yield equations of a nail.
const NAIL: Source = Source::new("NDS 2018", "12.3.1", Status::LookedUp);

/// What was asked besides the panels.
pub(super) struct Asked {
    /// Walls of the end line with the gaps between; none where nobody said.
    pub(super) line: Option<Vec<(Length, bool)>>,
    /// Where the plate is spliced; none in the middle.
    pub(super) splice: Option<Length>,
}

/// The walls of the end line; what is wrong with them is said.
pub(super) fn end_line(reading: &mut Reading, deep: Length) -> Option<Vec<(Length, bool)>> {
    reading.word("end_line")?;
    let line = lists::walls_and_gaps(reading, "end_line")?;
    let sum: Length = line.iter().map(|(long, _)| *long).sum();
    if sum > deep + Length::from_inches(0.1) {
        let problem = format!(
            "{} of walls and gaps was given; the line is as long as the floor is deep, {}.",
            words::length(sum),
            words::length(deep)
        );
        reading.refuse("end_line", problem);
        return None;
    }
    Some(line)
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
    if let Some((name, each)) = nail {
        part.step(
            "Z'",
            format!("a {name} through one 2x plate into the other, C_D 1.6"),
            "",
            (each.pounds(), "lb"),
            Basis::Published(NAIL),
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
    let collector = collector(reply, about, told, (asked.line.as_deref(), nail));
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
fn splice_nail(reading: &Reading) -> Option<(&'static str, Force)> {
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
    let value = lateral_value(Nail::of_size(kind, 16)?, &joint).ok()?.adjusted;
    (value > Force::ZERO).then_some((name, value))
}

/// How many nails carry a force.
fn nails(force: Force, each: Force) -> f64 {
    (force / each - 1e-9).ceil().max(0.0)
}

/// Walls of the line by where they begin and end.
fn stretches(line: &[(Length, bool)]) -> Vec<(Length, Length)> {
    let mut from = Length::ZERO;
    let mut walls = Vec::new();
    for (long, is_wall) in line {
        if *is_wall {
            walls.push((from, from + *long));
        }
        from += *long;
    }
    walls
}

/// The walls of the line with their shares of what the floor brings; a sentence where none counts.
fn shares(told: &Told<'_>, walls: &[(Length, Length)]) -> Option<Result<Vec<WallPiece>, String>> {
    let reading = told.reading;
    let wall = SegmentedWall {
        height: reading.length("wall_high")?,
        pieces: walls.iter().map(|(from, to)| *to - *from).collect(),
        shear: told.answer.reaction,
        dead: LineLoad::ZERO,
        ends: Ends { post: Length::ZERO, hold_down: Length::ZERO },
    };
    let framing = Framing {
        specific_gravity: frame::wood(reading)?.0.specific_gravity().value,
        studs: Length::from_inches(16.0),
        wet: false,
        hold_downs_inside: true,
        edition: frame::edition(reading)?,
    };
    // How walls share does not hang on their nailing while all are nailed alike.
    let any = strength(&nailings().next()?, &framing).ok()?;
    let shared = check_segmented(&wall, &any);
    if shared.capacity <= Force::ZERO {
        return Some(Err(
            "No wall of the end line is long enough to count: nothing takes what the floor brings.".to_owned()
        ));
    }
    let piece = |((from, to), piece): (&(Length, Length), &bracing::Segment)| WallPiece {
        from: *from,
        to: *to,
        share: piece.share,
    };
    Some(Ok(walls.iter().zip(&shared.pieces).map(piece).collect()))
}

/// The force along the end line, and its most: where, and in words.
fn collector(
    reply: &mut QuickReply,
    about: &mut About<'_>,
    told: &Told<'_>,
    (line, nail): (Option<&[(Length, bool)]>, Option<(&'static str, Force)>),
) -> Option<(Length, String)> {
    let Some(line) = line else {
        about.ask("end_line", "What walls stand in the line at its end, and where is there none? The plate over a gap must carry the push on to a wall.");
        return None;
    };
    let found = shares(told, &stretches(line))?
        .and_then(|walls| collect(told.floor.width, &walls).map_err(|outside| outside.to_string()));
    let points = match found {
        Ok(points) => points,
        Err(sentence) => {
            about.outside(sentence);
            return None;
        }
    };
    let hardest = points.iter().max_by(|a, b| size(a.force).pounds().total_cmp(&size(b.force).pounds()))?;
    let most = size(hardest.force);
    let at = words::length(hardest.at);
    reply.facts.push(force_fact(
        "collector_lb",
        format!("the plate of the end line, {at} from the corner, carries"),
        most,
    ));
    reply.tables.push(collector_table(&points));
    let mut part = Part::new("Along the end line");
    let brought = (told.answer.reaction / told.floor.width).plf();
    for point in &points {
        let meaning = format!("{} from the corner: brought less what walls took", words::length(point.at));
        let expression = format!("{} × {} − ΣV", figure(brought), figure(point.at.feet()));
        part.step("F", meaning, expression, (point.force.pounds(), "lb"), Basis::Arithmetic);
    }
    about.part(part);
    if most > NOTHING {
        let by = match nail {
            Some((name, each)) => {
                format!(", or is spliced with {} nails ({name}) each side", figure(nails(most, each)))
            }
            None => String::new(),
        };
        reply.action.push(format!("The plate over the gaps of the end line runs through for {}{by}.", pounds(most)));
    }
    about.say("Walls of the end line are nailed alike and share the push by their strength; one that is narrower than 2:1 takes less, one past 3.5:1 none.");
    Some((hardest.at, pounds(most)))
}

fn collector_table(points: &[CollectorPoint]) -> TableReply {
    let row = |point: &CollectorPoint| {
        let force = size(point.force);
        let carried = if force > NOTHING { force } else { Force::ZERO };
        vec![words::length(point.at), pounds(carried)]
    };
    TableReply {
        heading: "Along the end line".to_owned(),
        columns: ["from the corner", "in the plate"].map(str::to_owned).to_vec(),
        rows: points.iter().map(row).collect(),
        notes: vec!["Straight between these places. Each pulls or presses, as the wind blows.".to_owned()],
    }
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
