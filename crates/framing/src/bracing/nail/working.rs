//! The numbers of one nail and its working: across it by every way it could give way, pulled, and both at once.

use fastening::{CombinedCheck, LateralValue, ShortPenetration, UpliftLimit, UpliftValue, WithdrawalValue, YieldMode};
use measure::{Force, Length};
use members::working::{Basis, Part};

use super::Worked;
use crate::bracing::nail_joint::{self, carried, fine};
use crate::quick::reply::{QuickReply, TableReply};
use crate::quick::say::fact;
use crate::words::figure;

/// Its numbers.
pub(super) fn facts(reply: &mut QuickReply, worked: &Worked, both: Option<&CombinedCheck>) {
    let strength = |name: &str, what: &str, force: Force| fact(name, what, force.pounds(), carried(force));
    let facts = &mut reply.facts;
    let Worked { lateral, .. } = worked;
    match &worked.withdrawal {
        Ok(withdrawal) => {
            let each_inch = withdrawal.per_length.value.pounds_per_inch();
            facts.push(strength("withdrawal_lb", "the shank holds against a pull", withdrawal.adjusted));
            facts.push(fact(
                "withdrawal_per_inch_lb",
                "the shank holds in each inch, no factor in it",
                each_inch,
                format!("{} lb", figure(each_inch)),
            ));
        }
        Err(_) => facts.push(fact("withdrawal_lb", "the shank holds against a pull", 0.0, "nothing that counts")),
    }
    if let Some(head) = worked.uplift.as_ref().ok().and_then(|uplift| uplift.pull_through.as_ref()) {
        facts.push(strength("pull_through_lb", "the head holds against being pulled through", head.adjusted));
    }
    if let Ok(uplift) = &worked.uplift {
        let first = if uplift.governs == UpliftLimit::Withdrawal { "shank" } else { "head" };
        facts.push(strength("pull_lb", &format!("one nail holds against a pull, its {first} first"), uplift.adjusted));
    }
    facts.push(strength("lateral_lb", "one nail carries across", lateral.adjusted));
    if let Some(both) = both {
        let what = format!("one nail carries of a load {}° from the face", figure(both.angle.degrees().round()));
        facts.push(strength("at_angle_lb", &what, both.value.value));
    }
    let reach = &lateral.reach;
    let inches = |name: &str, what: &str, length: Length| fact(name, what, length.inches(), fine(length));
    facts.push(inches("penetration_in", "it goes into the main piece", reach.penetration));
    facts.push(inches("least_in", "the least that counts, 6 diameters", reach.least.value));
    facts.push(inches("full_in", "nothing is taken off from, 10 diameters", reach.full.value));
}

const fn mode_words(mode: YieldMode) -> &'static str {
    match mode {
        YieldMode::Im => "the main piece is crushed",
        YieldMode::Is => "the side piece is crushed",
        YieldMode::II => "the nail turns, crushing both",
        YieldMode::IIIm => "the nail bends in the side piece",
        YieldMode::IIIs => "the nail bends in the main piece",
        YieldMode::IV => "the nail bends in both",
    }
}

pub(super) fn modes(lateral: &LateralValue) -> TableReply {
    let row = |value: &standards::nds_2018::chapter_12::YieldValue| {
        let governs = if value.mode == lateral.mode { "governs" } else { "" };
        let pounds = format!("{} lb", figure(value.value.value.pounds()));
        vec![format!("{}: {}", value.mode.name(), mode_words(value.mode)), pounds, governs.to_owned()]
    };
    let mut notes = vec!["Across the nail, by the standard's six ways, no factor in it. The least governs.".to_owned()];
    if let ShortPenetration::Share(share) = &lateral.short_penetration {
        notes.push(format!("For its short penetration, {} of the least is taken.", figure(share.value)));
    }
    TableReply {
        heading: "How it would give way".to_owned(),
        columns: ["way", "load", "which"].map(str::to_owned).to_vec(),
        rows: lateral.limits.values.iter().map(row).collect(),
        notes,
    }
}

pub(super) fn lateral(lateral: &LateralValue) -> Part {
    let mut part = Part::new("Across the nail");
    let shear = &lateral.shear;
    let published = |source| Basis::Published(source);
    part.step("D", "diameter", "", (shear.diameter.inches(), "in"), Basis::Input("nail_as"));
    part.step("ℓ_s", "length in the side piece", "", (shear.side.length.inches(), "in"), Basis::Arithmetic);
    part.step("ℓ_m", "length that bears in the main piece", "", (shear.main.length.inches(), "in"), Basis::Arithmetic);
    part.step(
        "F_es",
        "bearing strength of the side piece",
        "",
        (shear.side.strength.psi(), "psi"),
        published(lateral.side_strength.source),
    );
    part.step(
        "F_em",
        "bearing strength of the main piece",
        "",
        (shear.main.strength.psi(), "psi"),
        published(lateral.main_strength.source),
    );
    part.step(
        "F_yb",
        "bending yield strength of the nail",
        "",
        (lateral.bending_yield.value.psi(), "psi"),
        published(lateral.bending_yield.source),
    );
    part.step(
        "R_d",
        "reduction term",
        "",
        (lateral.limits.reduction_term.value, ""),
        published(lateral.limits.reduction_term.source),
    );
    let governing = lateral.limits.governing();
    let meaning = format!("least of the six: {}", mode_words(governing.mode));
    part.step(
        "Z",
        meaning,
        governing.mode.name(),
        (governing.value.value.pounds(), "lb"),
        published(governing.value.source),
    );
    if let ShortPenetration::Share(share) = &lateral.short_penetration {
        let expression = format!("{} × {}", figure(governing.value.value.pounds()), figure(share.value));
        part.step(
            "Z",
            "for the short penetration, p / 10 D",
            expression,
            (lateral.reference.pounds(), "lb"),
            published(share.source),
        );
    }
    nail_joint::factored(
        &mut part,
        ("Z′", "one nail carries across"),
        (lateral.reference, &lateral.factors),
        lateral.adjusted,
    );
    part
}

pub(super) fn pull(withdrawal: &WithdrawalValue, uplift: Option<&UpliftValue>) -> Part {
    let mut part = Part::new("Pulled");
    let (each, deep) = (withdrawal.per_length.value.pounds_per_inch(), withdrawal.penetration.inches());
    let with = format!("G {}, D {}", figure(withdrawal.specific_gravity), figure(withdrawal.nail.diameter().inches()));
    part.step("W", "an inch of the shank holds", with, (each, "lb/in"), Basis::Published(withdrawal.per_length.source));
    part.step("p", "length that counts in the main piece", "", (deep, "in"), Basis::Arithmetic);
    let expression = format!("{} × {}", figure(each), figure(deep));
    part.step("W p", "the whole shank", expression, (withdrawal.reference.pounds(), "lb"), Basis::Arithmetic);
    nail_joint::factored(
        &mut part,
        ("W′ p", "the shank holds"),
        (withdrawal.reference, &withdrawal.factors),
        withdrawal.adjusted,
    );
    if let Some(head) = uplift.and_then(|uplift| uplift.pull_through.as_ref()) {
        let (reference, across) = (head.reference.value, format!("a head {} in across", figure(head.head.inches())));
        part.step(
            "W_H",
            "the head through the side piece",
            across,
            (reference.pounds(), "lb"),
            Basis::Published(head.reference.source),
        );
        nail_joint::factored(&mut part, ("W_H′", "the head holds"), (reference, &head.factors), head.adjusted);
    }
    part
}

pub(super) fn both(both: &CombinedCheck) -> Part {
    let mut part = Part::new("Both at once");
    part.step("α", "angle of the load from the face", "", (both.angle.degrees(), "°"), Basis::Arithmetic);
    part.step("P", "both loads as one", "", (both.load.pounds(), "lb"), Basis::Arithmetic);
    part.step(
        "Z′_α",
        "one nail carries at this angle",
        "",
        (both.value.value.pounds(), "lb"),
        Basis::Published(both.value.source),
    );
    let expression = format!("{} / {}", figure(both.load.pounds()), figure(both.value.value.pounds()));
    part.step("", "share", expression, (both.share, ""), Basis::Arithmetic);
    part
}
