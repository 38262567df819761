//! Anchor bolts along one piece of a bottom plate on concrete, read and answered.

use bracing::uplift::{SillBolts, Washer};
use bracing::{OneBolt, SillAnswer, SillPiece, bolts_at, check_sill, fewest_bolts};
use fastening::{
    BoltCaution, BoltError, BoltJoint, BoltPlace, BoltValue, ConnectionMoisture, LoadDuration, NailConditions,
    ServiceMoisture, Wood, bolt_value,
};
use lumber::{Conditions, Grade, Member, Product, Sawn, SawnSize, Species};
use measure::{Force, Length, LineLoad, Stress, read_number};
use members::check::Verdict;
use members::working::{Basis, Part};
use standards::irc_2021::{r403_1_6, r602_11};
use standards::{Source, asme_b18};

use super::NOT_ENOUGH;
use super::ends::check;
use super::nail_joint::{carried, factored, fine};
use crate::quick::drawn_fasteners::DrawnSill;
use crate::quick::read::plf;
use crate::quick::reply::{Drawn, QuickReply, RuleReply};
use crate::quick::say::{cautions, down, fact, force_fact, length_fact, pounds, rule, unworked};
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
    reply.action = action(sill, &judged, fewest.as_ref());
    facts(&mut reply, sill, &judged, fewest.as_ref());
    let by_code = of_bolts(sill, &judged);
    reply.forbidden = by_code.holds == Some(false);
    if reply.forbidden {
        reply.action.splice(0..0, by_code.says.first().cloned());
    }
    reply.by_code.push(by_code);
    reply.by_code.push(of_washers(reading));
    about.part(working(sill, &judged));
    says(&mut about, sill);
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

fn action(sill: &Sill, judged: &SillAnswer, fewest: Option<&SillAnswer>) -> Vec<String> {
    let mut says = Vec::new();
    let [left, right] = sill.piece.ends;
    let ends = format!("the first {} from the left end, the last {} from the right", fine(left), fine(right));
    match fewest {
        Some(fewest) if judged.bolts < fewest.bolts => {
            let are = if judged.bolts == 1 { "is" } else { "are" };
            says.push(format!("{} {are} too few in this piece: it takes {}; {ends}.", bolts(judged.bolts), row(fewest)));
        }
        Some(_) if judged.bolts == 1 => says.push("Set one bolt in this piece.".to_owned()),
        Some(_) => says.push(format!("Set {} in this piece, {ends}.", bolts(judged.bolts))),
        None => says.push("No number of these bolts carries it. Take thicker bolts, larger washers or shorter ends, or ask the engineer.".to_owned()),
    }
    let (from, to) = r403_1_6::middle_third(sill.width);
    says.push(format!(
        "Each stands in the middle third of the plate: {} to {} from its face, nut and washer tight.",
        words::inches(from),
        words::inches(to)
    ));
    says
}

fn bolts(count: u32) -> String {
    if count == 1 { "1 bolt".to_owned() } else { format!("{count} bolts") }
}

fn facts(reply: &mut QuickReply, sill: &Sill, judged: &SillAnswer, fewest: Option<&SillAnswer>) {
    let facts = &mut reply.facts;
    let one = sill.value.adjusted;
    facts.push(fact("bolts", "bolts in this piece", f64::from(judged.bolts), bolts(judged.bolts)));
    if let Some(spacing) = judged.spacing {
        facts.push(fact("spacing_in", "from one to the next", spacing.inches(), down(spacing)));
    }
    if let Some(fewest) = fewest {
        facts.push(fact("fewest", "the fewest that will do", f64::from(fewest.bolts), row(fewest)));
    }
    facts.push(fact("bolt_lb", "one bolt carries along the plate", one.pounds(), carried(one)));
    facts.push(force_fact("push_each_lb", "each takes of the push", judged.shear));
    let holds = sill.bolt.holds();
    facts.push(fact("holds_lb", "one bolt holds against uplift", holds.pounds(), carried(holds)));
    facts.push(force_fact("uplift_each_lb", "the hardest takes of the uplift", judged.uplift));
    facts.push(length_fact("length_in", "length of the plate", sill.piece.length));
}

/// The code's least: size, depth, spacing, ends.
fn of_bolts(sill: &Sill, judged: &SillAnswer) -> RuleReply {
    let (needed, source) = r403_1_6::bolts_needed(sill.piece.length);
    let nearest = r403_1_6::nearest_to_end(sill.diameter);
    let mut broken = Vec::new();
    if judged.bolts < u32::from(needed) {
        broken.push(format!("A piece so long has {} or more.", bolts(u32::from(needed))));
    }
    if judged.spacing.is_some_and(|spacing| spacing.inches() > r403_1_6::SPACING.inches() + 1e-6) {
        broken.push(format!("{} is the farthest apart.", words::length(r403_1_6::SPACING)));
    }
    if sill.embedment < r403_1_6::EMBEDMENT {
        broken.push(format!(
            "{} in the concrete is the least; these go {}.",
            fine(r403_1_6::EMBEDMENT),
            fine(sill.embedment)
        ));
    }
    let ends = match (judged.spacing, sill.piece.ends) {
        (None, [left, _]) => [left, sill.piece.length - left],
        (Some(_), ends) => ends,
    };
    for (end, name) in ends.iter().zip(["left", "right"]) {
        if *end < nearest || *end > r403_1_6::FARTHEST_FROM_END {
            broken.push(format!(
                "The {name} bolt stands {} from its end; from {} to {} is asked.",
                fine(*end),
                fine(nearest),
                fine(r403_1_6::FARTHEST_FROM_END)
            ));
        }
    }
    let holds = broken.is_empty();
    let mut says = broken;
    says.push(format!(
        "1/2\" or thicker, {} deep, {} apart at the most, one within {} of each end and not nearer than 7 diameters.",
        fine(r403_1_6::EMBEDMENT),
        words::length(r403_1_6::SPACING),
        fine(r403_1_6::FARTHEST_FROM_END)
    ));
    says.push(format!("{}.", words::source(source)));
    let least =
        if needed == 0 { "tied to its neighbours".to_owned() } else { format!("{} or more", bolts(u32::from(needed))) };
    rule("Anchor bolts", Some(holds), least, says)
}

/// Plate washers: compulsory in earthquake country, and better in wind.
fn of_washers(reading: &Reading) -> RuleReply {
    let plate = reading.word("bolt_washer") == Some("plate");
    let says = vec![
        if plate { "The washer is large enough." } else { "A round washer is too small there." }.to_owned(),
        "The code asks for it in braced walls in Seismic Design Categories D0 to D2, and of townhouses in C. Against uplift it holds more anywhere.".to_owned(),
        format!("{}.", words::source(r602_11::PLATE_WASHERS)),
    ];
    let figure = format!("{} x {} x {}", fine(r602_11::SIDE), fine(r602_11::SIDE), fine(r602_11::THICKNESS));
    rule("Plate washers", None, figure, says)
}

fn says(about: &mut About<'_>, sill: &Sill) {
    let lifted = sill.piece.uplift > LineLoad::ZERO;
    if lifted && sill.bolt.anchorage.is_none() {
        about.ask("bolt_holds", "What does one bolt hold in the concrete, pulled? Until the drawing or the engineer says, only the washer on the plate is counted.");
    }
    if lifted && sill.piece.push > Force::ZERO {
        about.say("Push and uplift are each looked at alone. What bolt and concrete hold of both at once is not worked here: the engineer's.");
    }
    for caution in &sill.value.cautions {
        about.say(match caution {
            BoltCaution::Concrete => "The concrete and its edge, and the pull on the bolt in it, are a check of their own: the engineer's, or the maker's report.",
            BoltCaution::DistancesNotGiven => "Ends and edges are taken as wide enough.",
            BoltCaution::Close => "A bolt stands nearer to the end than 7 diameters: every bolt is counted weaker for it.",
        });
    }
    about.say("Concrete of 2,500 psi or more. The bolts share the push alike.");
    about.say("Hold-downs at the ends of a shear wall take its overturning: that is not these bolts' to hold.");
    about.say("How the plate bends between studs and bolts is not worked here: bolts near the studs are better.");
}

fn working(sill: &Sill, judged: &SillAnswer) -> Part {
    let mut part = Part::new("The bolts");
    let value = &sill.value;
    let governing = value.limits.governing();
    let published = |source| Basis::Published(source);
    part.step("D", "bolt", "", (sill.diameter.inches(), "in"), Basis::Input("bolt_thick"));
    part.step("ℓ_s", "plate", "", (sill.thickness.inches(), "in"), Basis::Input("sill_thick"));
    part.step(
        "F_es",
        "bearing strength of the plate along its grain",
        "",
        (value.side_strength.value.psi(), "psi"),
        published(value.side_strength.source),
    );
    part.step(
        "F_em",
        "bearing strength of the concrete",
        "",
        (value.main_strength.value.psi(), "psi"),
        published(value.main_strength.source),
    );
    part.step(
        "Z",
        "one bolt along the plate, the least of six ways",
        format!("mode {}", governing.mode.name()),
        (value.reference.pounds(), "lb"),
        published(governing.value.source),
    );
    factored(&mut part, ("Z′", "one bolt carries"), (value.reference, &value.factors), value.adjusted);
    let count = f64::from(judged.bolts);
    let expression = format!("{} / {}", figure(sill.piece.push.pounds()), figure(count));
    part.step("V", "each takes of the push", expression, (judged.shear.pounds(), "lb"), Basis::Arithmetic);
    if judged.uplift > Force::ZERO {
        let (fc_perp, source) = sill.fc_perp;
        part.step("F_c⊥", "plate across its grain, no gain from wind", "", (fc_perp.psi(), "psi"), published(source));
        let least = if sill.bolt.anchorage.is_some() { "or what was given of the concrete" } else { "" };
        part.step("P", "the washer less its hole holds", least, (sill.bolt.holds().pounds(), "lb"), Basis::Arithmetic);
        let takes = judged.uplift.pounds() / sill.piece.uplift.plf();
        let expression = format!("{} plf × {} ft", figure(sill.piece.uplift.plf()), figure(takes));
        part.step(
            "T",
            "the hardest takes of the uplift",
            expression,
            (judged.uplift.pounds(), "lb"),
            Basis::Arithmetic,
        );
    }
    if let Some(spacing) = judged.spacing {
        let between = sill.piece.length - sill.piece.ends[0] - sill.piece.ends[1];
        let expression = format!("{} / {}", figure(between.inches()), figure(count - 1.0));
        part.step("s", "from one to the next", expression, (spacing.inches(), "in"), Basis::Arithmetic);
    }
    part
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
