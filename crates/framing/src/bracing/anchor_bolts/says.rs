//! What is said of anchor bolts: what to do, their numbers, the code's least, what is taken for granted, and the working.

use bracing::SillAnswer;
use fastening::BoltCaution;
use measure::{Force, LineLoad};
use members::working::{Basis, Part};
use standards::irc_2021::{r403_1_6, r602_11};

use super::{Sill, row};
use crate::bracing::nail_joint::{carried, factored, fine};
use crate::quick::reply::{QuickReply, RuleReply};
use crate::quick::say::{down, fact, force_fact, length_fact, rule};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// What to do.
pub(super) fn action(sill: &Sill, judged: &SillAnswer, fewest: Option<&SillAnswer>) -> Vec<String> {
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

pub(super) fn facts(reply: &mut QuickReply, sill: &Sill, judged: &SillAnswer, fewest: Option<&SillAnswer>) {
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
pub(super) fn of_bolts(sill: &Sill, judged: &SillAnswer) -> RuleReply {
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
pub(super) fn of_washers(reading: &Reading) -> RuleReply {
    let plate = reading.word("bolt_washer") == Some("plate");
    let says = vec![
        if plate { "The washer is large enough." } else { "A round washer is too small there." }.to_owned(),
        "The code asks for it in braced walls in Seismic Design Categories D0 to D2, and of townhouses in C. Against uplift it holds more anywhere.".to_owned(),
        format!("{}.", words::source(r602_11::PLATE_WASHERS)),
    ];
    let figure = format!("{} x {} x {}", fine(r602_11::SIDE), fine(r602_11::SIDE), fine(r602_11::THICKNESS));
    rule("Plate washers", None, figure, says)
}

pub(super) fn taken_for_granted(about: &mut About<'_>, sill: &Sill) {
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

pub(super) fn working(sill: &Sill, judged: &SillAnswer) -> Part {
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
