//! What is said of a swap: what to do, its numbers, what splits, and its working.

use fastening::{Difference, Pattern, Room, Swap};
use members::working::{Basis, Part};

use super::{Asked, in_words};
use crate::bracing::nail_joint::{carried, fine};
use crate::quick::reply::{QuickReply, RuleReply};
use crate::quick::say::{fact, rule};
use crate::words::{self, figure, percent};

/// What to do.
pub(super) fn action(
    asked: &Asked,
    found: &Swap,
    (pattern, changed): (&str, bool),
    (may, whom): (bool, &str),
) -> Vec<String> {
    let mut says = Vec::new();
    if asked.is_same() {
        return vec![format!("It is the nail as drawn: {pattern}, as drawn.")];
    }
    let worth = percent(found.ratio.min(1.0));
    says.push(if changed {
        format!(
            "One is worth {worth} of the nail as drawn. In strength, {pattern} does the work of {}.",
            in_words(asked.pattern)
        )
    } else {
        format!("One carries as much as the nail as drawn. It stays at {pattern}.")
    });
    if !may {
        says.push(format!("Ask {whom} first, and keep the answer. Or use the nail as drawn."));
    }
    if asked.shear_panels && !found.differences.is_empty() {
        let unlike: Vec<&str> = found.differences.iter().map(|one| difference(*one)).collect();
        says.push(format!("Panels of a shear wall take like for like. This nail is not: {}.", unlike.join(", ")));
    }
    match found.room {
        Some(Room::ThickerFraming(_)) => says.push(
            "Where two panels meet they need 3x framing, or two 2x nailed to each other, and staggered nails. Else the framing splits.".to_owned(),
        ),
        Some(Room::KeepDistances(least)) => says.push(format!(
            "See that they fit: {} apart along the grain, {} to a loaded end, {} to an edge.",
            fine(least.value.along_grain),
            fine(least.value.end_loaded),
            fine(least.value.edge)
        )),
        _ => {}
    }
    says
}

const fn difference(of: Difference) -> &'static str {
    match of {
        Difference::Diameter => "it is thinner or thicker",
        Difference::Length => "it is shorter",
        Difference::Shank => "its shank is another",
        Difference::Head => "its head is smaller, or not measured",
    }
}

/// Its numbers.
pub(super) fn facts(reply: &mut QuickReply, found: &Swap, asked: &Asked) {
    let facts = &mut reply.facts;
    facts.push(fact("worth", "one nail at hand is worth, of one as drawn", found.ratio, percent(found.ratio)));
    let lateral = &found.lateral;
    let mut strength = |name: &str, what: &str, force: measure::Force| {
        facts.push(fact(name, what, force.pounds(), carried(force)));
    };
    strength("found_lb", "one nail at hand carries across", lateral.found.adjusted);
    strength("asked_lb", "one nail as drawn carries across", lateral.required.adjusted);
    if let Some(pair) = &found.uplift {
        strength("found_pull_lb", "one nail at hand holds against a pull", pair.found.adjusted);
        strength("asked_pull_lb", "one nail as drawn holds against a pull", pair.required.adjusted);
    }
    match (found.pattern, asked.pattern) {
        (Some(Pattern::Count(count)), _) => {
            facts.push(fact("nails", "nails that make up for it", f64::from(count), in_words(Pattern::Count(count))));
        }
        (Some(Pattern::OnCenter(apart)), Pattern::OnCenter(drawn)) => {
            let exact = drawn * found.ratio.min(1.0);
            facts.push(fact("exact_in", "the spacing that is worth it, exact", exact.inches(), fine(exact)));
            facts.push(fact("spacing_in", "the same to a half inch", apart.inches(), fine(apart)));
        }
        _ => {}
    }
    let reach = &lateral.found.reach;
    facts.push(fact(
        "penetration_in",
        "it goes into the main piece",
        reach.penetration.inches(),
        fine(reach.penetration),
    ));
    facts.push(fact(
        "full_in",
        "nothing is taken off from, 10 diameters",
        reach.full.value.inches(),
        fine(reach.full.value),
    ));
}

/// What keeps the wood from splitting.
pub(super) fn splitting(found: &Swap) -> Option<RuleReply> {
    let (holds, short, says, source) = match found.room? {
        Room::Enough => return None,
        Room::ThickerFraming(framing) => {
            (None, "3x framing", "Where two panels meet: one 3x, or two 2x nailed to each other for the shear of the joint; nails staggered.".to_owned(), framing.source)
        }
        Room::TooClose(least) => (Some(false), "too close", format!("{} is the closest.", fine(least.value)), least.source),
        Room::KeepDistances(least) => (
            None,
            "keep these",
            format!(
                "Along the grain {}; to a loaded end {}, to another {}; to an edge {}; rows {} apart, staggered {}.",
                fine(least.value.along_grain),
                fine(least.value.end_loaded),
                fine(least.value.end_unloaded),
                fine(least.value.edge),
                fine(least.value.rows_in_line),
                fine(least.value.rows_staggered)
            ),
            least.source,
        ),
    };
    Some(rule("What splits", holds, short, vec![says, format!("{}.", words::source(source))]))
}

pub(super) fn working(asked: &Asked, found: &Swap) -> Part {
    let mut part = Part::new("One nail for the other");
    let lateral = &found.lateral;
    let source = |value: &fastening::LateralValue| Basis::Published(value.limits.governing().value.source);
    let mode = |value: &fastening::LateralValue| format!("mode {}", value.mode.name());
    for (value, says) in [(&lateral.found, "nail at hand, across"), (&lateral.required, "nail as drawn, across")] {
        part.step("Z′", says, mode(value), (value.adjusted.pounds(), "lb"), source(value));
    }
    let ratio = |one: f64, other: f64| format!("{} / {}", figure(one), figure(other));
    let of = ratio(lateral.found.adjusted.pounds(), lateral.required.adjusted.pounds());
    part.step("", "worth across", of, (lateral.ratio, ""), Basis::Arithmetic);
    if let Some(pair) = &found.uplift {
        for (value, says) in [(&pair.found, "nail at hand, pulled"), (&pair.required, "nail as drawn, pulled")] {
            let source = match (&value.pull_through, value.governs) {
                (Some(head), fastening::UpliftLimit::PullThrough) => head.reference.source,
                _ => value.withdrawal.per_length.source,
            };
            let first =
                if value.governs == fastening::UpliftLimit::PullThrough { "the head first" } else { "the shank first" };
            part.step("W′", says, first, (value.adjusted.pounds(), "lb"), Basis::Published(source));
        }
        let of = ratio(pair.found.adjusted.pounds(), pair.required.adjusted.pounds());
        part.step("", "worth pulled", of, (pair.ratio, ""), Basis::Arithmetic);
    }
    let least = figure(found.ratio.min(1.0));
    match (asked.pattern, found.pattern) {
        (Pattern::Count(drawn), Some(Pattern::Count(count))) => {
            part.step(
                "n",
                "nails, rounded up",
                format!("{drawn} / {least}"),
                (f64::from(count), ""),
                Basis::Arithmetic,
            );
        }
        (Pattern::OnCenter(drawn), Some(Pattern::OnCenter(apart))) => {
            let expression = format!("{} × {least}", figure(drawn.inches()));
            part.step("s", "spacing, down to a half inch", expression, (apart.inches(), "in"), Basis::Arithmetic);
        }
        _ => {}
    }
    part
}
