//! Anchor bolts along one piece of a bottom plate on concrete, read and answered.

use bracing::uplift::{SillBolts, Washer};
use bracing::{OneBolt, SillAnswer, SillPiece, bolts_at, check_sill, fewest_bolts};
use fastening::{
    BoltError, BoltJoint, BoltPlace, BoltValue, ConnectionMoisture, LoadDuration, NailConditions, ServiceMoisture,
    Wood, bolt_value,
};
use lumber::{Conditions, Grade, Member, Product, Sawn, SawnSize, Species};
use measure::{Force, Length, LineLoad, Stress, read_number};
use members::check::Verdict;
use standards::{Source, asme_b18};

mod says;

use super::ends::check;
use super::{NOT_ENOUGH, salt};
use crate::quick::drawn_fasteners::DrawnSill;
use crate::quick::read::plf;
use crate::quick::reply::{Drawn, QuickReply};
use crate::quick::say::{cautions, down, pounds, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "sill_long",
    "sill_push",
    "sill_uplift",
    "bolt_thick",
    "bolt_drawn",
    "sill_left_end",
    "sill_right_end",
    "bolt_deep",
    "bolt_washer",
    "bolt_holds",
    "sill_thick",
    "brace_studs",
    "species",
    "grade",
    "service",
    "salt_water",
    "metal_where",
    "metal_tie",
    "metal_nails",
];

const USED: &[&str] = &[
    "sill_long",
    "sill_push",
    "sill_uplift",
    "bolt_thick",
    "sill_left_end",
    "sill_right_end",
    "bolt_deep",
    "bolt_washer",
    "sill_thick",
    "brace_studs",
    "species",
    "grade",
    "service",
];

/// What the combination is called.
const PUSHED: &str = "0.6D + 0.6W";
const PUSH: &str = "the push across the bolts";
const LIFT: &str = "the uplift on the bolts";

/// The plate and its bolts as they were read.
struct Sill {
    piece: SillPiece,
    diameter: Length,
    thickness: Length,
    width: Length,
    embedment: Length,
    bolt: SillBolts,
    fc_perp: (Stress, Source),
    value: BoltValue,
    drawn: Option<Length>,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let length = reading.length("sill_long")?;
    let push = push(reading, length)?;
    let (left, right) = (reading.length("sill_left_end")?, reading.length("sill_right_end")?);
    if left + right > length {
        let problem = format!(
            "The bolts would stand {} from both ends together, and the plate is {} long. Give shorter distances.",
            words::length(left + right),
            words::length(length)
        );
        reading.refuse("sill_right_end", problem);
        return None;
    }
    let reading = &*reading;
    let piece = SillPiece { length, ends: [left, right], push, uplift: plf(reading, "sill_uplift") };
    let about = About::of(reading, USED);
    let value = match bolt_value(&joint(reading, piece.ends)?) {
        Ok(value) => value,
        Err(problem) => return Some(without_value(about, &problem)),
    };
    let (fc_perp, source) = pressed(reading)?;
    let diameter = diameter(reading)?;
    let sill = Sill {
        piece,
        diameter,
        thickness: thickness(reading)?,
        width: width(reading)?,
        embedment: reading.length("bolt_deep")?,
        bolt: SillBolts {
            washer: washer(reading, diameter)?,
            hole: diameter + Length::from_inches(1.0 / 16.0),
            fc_perp,
            anchorage: reading.number("bolt_holds").map(Force::from_pounds),
        },
        fc_perp: (fc_perp, source),
        value,
        drawn: reading.length("bolt_drawn"),
    };
    let one = OneBolt { shear: sill.value.adjusted, uplift: sill.bolt.holds() };
    let fewest = fewest_bolts(&piece, one);
    let judged = match (sill.drawn, &fewest) {
        (Some(spacing), _) => check_sill(&piece, one, bolts_at(&piece, spacing)),
        (None, fewest) => fewest.clone(),
    };
    Some(match judged {
        Ok(judged) => reply(reading, about, &sill, (judged, fewest.ok())),
        Err(problem) => unworked(about, problem.to_string()),
    })
}

/// `2,400 lb`, or `350 plf` of the plate's length.
fn push(reading: &mut Reading, length: Length) -> Option<Force> {
    const MOST: f64 = 200_000.0;
    let text = reading.word("sill_push")?.to_lowercase();
    let along = ["plf", "lb/ft"].iter().any(|unit| text.trim_end().ends_with(unit));
    let read = read_number(text.trim(), if along { &["plf", "lb/ft"] } else { &["lb", "lbs", "pounds"] });
    let problem = match read {
        Ok(number) if (0.0..=MOST).contains(&number) => {
            return Some(if along { LineLoad::from_plf(number) * length } else { Force::from_pounds(number) });
        }
        Ok(number) => format!("{} was given; from 0 to 200,000 is taken, in lb or in plf.", figure(number)),
        Err(problem) => format!("{problem} A push such as 2,400 lb, or 350 plf, is taken."),
    };
    reading.refuse("sill_push", problem);
    None
}

fn diameter(reading: &Reading) -> Option<Length> {
    Some(Length::from_inches(match reading.word("bolt_thick")? {
        "5/8" => 0.625,
        "3/4" => 0.75,
        _ => 0.5,
    }))
}

fn thickness(reading: &Reading) -> Option<Length> {
    Some(Length::from_inches(if reading.word("sill_thick")? == "3x" { 2.5 } else { 1.5 }))
}

fn size(reading: &Reading) -> Option<SawnSize> {
    SawnSize::from_text(reading.word("brace_studs")?).ok()
}

/// Width of the plate, dressed.
fn width(reading: &Reading) -> Option<Length> {
    let (species, grade) = (species(reading)?, Grade::from_text(reading.word("grade")?).ok()?);
    Some(Member::single(Product::Sawn(Sawn { species, grade, size: size(reading)? })).section().depth)
}

fn species(reading: &Reading) -> Option<Species> {
    Species::from_text(reading.word("species")?).ok()
}

fn service(reading: &Reading) -> Option<ServiceMoisture> {
    Some(if reading.word("service")? == "wet" { ServiceMoisture::Wet } else { ServiceMoisture::Dry })
}

/// One bolt in the middle of the plate, pushed along it both ways; at the closer end.
fn joint(reading: &Reading, [left, right]: [Length; 2]) -> Option<BoltJoint> {
    let half = width(reading)? / 2.0;
    let place =
        BoltPlace { end: left.min(right), toward_end: true, loaded_edge: half, unloaded_edge: half, in_row: None };
    let in_service = service(reading)?;
    let moisture = ConnectionMoisture { at_fabrication: in_service, in_service };
    let sill = BoltJoint::sill(
        diameter(reading)?,
        Wood::Lumber(species(reading)?),
        thickness(reading)?,
        reading.length("bolt_deep")?,
    );
    Some(BoltJoint {
        side: fastening::BoltedWood { place: Some(place), ..sill.side },
        conditions: NailConditions { duration: LoadDuration::TenMinutes, moisture, ..NailConditions::REFERENCE },
        ..sill
    })
}

/// Strength of the plate across its grain under the washer, and where that stands.
fn pressed(reading: &Reading) -> Option<(Stress, Source)> {
    let grade = Grade::from_text(reading.word("grade")?).ok()?;
    let member = Member::single(Product::Sawn(Sawn { species: species(reading)?, grade, size: size(reading)? }));
    let conditions = Conditions { service: service(reading)?, ..Conditions::default() };
    let pressed = member.adjusted(&conditions, lumber::LoadDuration::TenYears).ok()?.fc_perp;
    Some((pressed.value, pressed.source))
}

fn washer(reading: &Reading, diameter: Length) -> Option<Washer> {
    Some(if reading.word("bolt_washer")? == "plate" {
        Washer::Square { side: Length::from_inches(3.0), thickness: Length::from_inches(0.25) }
    } else {
        Washer::Round { diameter: asme_b18::nut_and_washer(diameter)?.across }
    })
}

fn without_value(mut about: About<'_>, problem: &BoltError) -> QuickReply {
    if matches!(problem, BoltError::Embedment { .. }) {
        about.ask("bolt_deep", "How deep is the bolt in the concrete? The code asks for 7\".");
    }
    unworked(about, problem.to_string())
}

fn reply(reading: &Reading, mut about: About<'_>, sill: &Sill, found: (SillAnswer, Option<SillAnswer>)) -> QuickReply {
    let (judged, fewest) = found;
    let mut reply = QuickReply { size: row(&judged), combination: Some(PUSHED.to_owned()), ..QuickReply::default() };
    judge(&mut reply, sill, &judged);
    reply.action = says::action(sill, &judged, fewest.as_ref());
    says::facts(&mut reply, sill, &judged, fewest.as_ref());
    let by_code = says::of_bolts(sill, &judged);
    reply.forbidden = by_code.holds == Some(false);
    if reply.forbidden {
        reply.action.splice(0..0, by_code.says.first().cloned());
    }
    reply.by_code.push(by_code);
    reply.by_code.push(says::of_washers(reading));
    about.part(says::working(sill, &judged));
    says::taken_for_granted(&mut about, sill);
    salt::say(reading, &mut reply, &mut about);
    cautions(&mut about);
    about.caution("Only a bolt with its nut and washer tight counts. Its nut is not left off where a stud is in the way: the stud moves.");
    about.caution("Treated plates want fasteners that their treatment does not eat: galvanized or stainless.");
    reply.drawn = Drawn::Sill(drawn(sill, &judged));
    reply.about = about.finish();
    reply
}

/// `4 bolts, at most 2' 5" apart`.
fn row(answer: &SillAnswer) -> String {
    match answer.spacing {
        Some(spacing) => format!("{} bolts, at most {} apart", answer.bolts, down(spacing)),
        None => "1 bolt".to_owned(),
    }
}

fn judge(reply: &mut QuickReply, sill: &Sill, judged: &SillAnswer) {
    let holds = sill.bolt.holds();
    if judged.shear > Force::ZERO {
        let sides = (judged.shear.pounds(), sill.value.adjusted.pounds(), "lb");
        reply.checks.push(check(PUSH, sides, "0.6W"));
    }
    if judged.uplift > Force::ZERO {
        reply.checks.push(check(LIFT, (judged.uplift.pounds(), holds.pounds(), "lb"), PUSHED));
    }
    let governing = reply.checks.iter().max_by(|a, b| a.ratio.total_cmp(&b.ratio));
    reply.ratio = governing.map(|check| check.ratio);
    reply.governs = governing.map(|check| check.limit.clone());
    reply.combination = governing.map(|check| check.combination.clone());
    // Nothing asked of them but the code's least: they carry it.
    reply.verdict = match Verdict::of(judged.used()) {
        Verdict::TooSmall => NOT_ENOUGH,
        verdict => words::verdict(verdict),
    }
    .to_owned();
}

fn drawn(sill: &Sill, judged: &SillAnswer) -> DrawnSill {
    let left = sill.piece.ends[0];
    let at = |index: u32| judged.spacing.map_or(left, |spacing| left + spacing * f64::from(index));
    let washer = match sill.bolt.washer {
        Washer::Square { side, .. } => (side, true),
        Washer::Round { diameter } => (diameter, false),
    };
    let lifted = sill.piece.uplift > LineLoad::ZERO;
    DrawnSill {
        length: sill.piece.length,
        across: (sill.width, sill.thickness),
        bolts: (0..judged.bolts).map(at).collect(),
        diameter: sill.diameter,
        washer,
        embedment: sill.embedment,
        push: pounds(sill.piece.push),
        uplift: if lifted { format!("{} plf", figure(sill.piece.uplift.plf().ceil())) } else { String::new() },
        holds: judged.used() <= 1.0 + 1e-9,
    }
}
