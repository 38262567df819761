//! The verdict of a path of uplift, and what to do: its weakest link decides.

use bracing::uplift::{ChainAnswer, Held, Link, LinkAnswer, footing_weight};
use measure::Force;

use super::Lifts;
use super::links::told;
use crate::bracing::ends::PUSHED;
use crate::bracing::{NOT_ENOUGH, TIES_ON_THE_WRONG_SIDE};
use crate::quick::reply::QuickReply;
use crate::quick::say::{capital, pounds};
use crate::words;

/// What is done where the plate would roll.
const OTHER_SIDE: &str = "Set the ties of the roof and those below them on one side of the plate, best where the panels are: from the other side they roll it, and the panels are left out.";

/// The answer is about the weakest link; while nothing is known, about the first that is lifted.
pub(super) fn judge(reply: &mut QuickReply, answer: &ChainAnswer, lifts: Lifts, rolls: bool) {
    let unknown = answer.unknown().any(|link| link.demand > Force::ZERO);
    let about = answer.weakest_link().filter(|weakest| !weakest.holds() || !unknown);
    let about = about.or_else(|| answer.unknown().find(|link| link.demand > Force::ZERO)).or(answer.weakest_link());
    let Some(about) = about else {
        reply.size = "No uplift".to_owned();
        reply.verdict = words::verdict(members::check::Verdict::Carries).to_owned();
        return;
    };
    let name = told(about.link, lifts).name;
    reply.size = pounds(about.demand);
    reply.ratio = about.used.filter(|used| used.is_finite());
    reply.combination = Some(PUSHED.to_owned());
    reply.verdict = match about.used {
        Some(used) if used > 1.0 => NOT_ENOUGH.to_owned(),
        _ if rolls => TIES_ON_THE_WRONG_SIDE.to_owned(),
        None => format!("{}?", capital(&name)),
        Some(used) => words::verdict(members::check::Verdict::of(used)).to_owned(),
    };
    reply.governs = Some(name);
    if about.used.is_some_and(f64::is_infinite) {
        reply.reason = Some("Nothing that may count holds it.".to_owned());
    } else if rolls && reply.verdict == TIES_ON_THE_WRONG_SIDE {
        reply.reason = Some("The plate rolls between ties on its two sides.".to_owned());
    }
}

/// What to do about the links that do not hold; where all do, how to set them.
pub(super) fn action(answer: &ChainAnswer, lifts: Lifts, rolls: bool) -> Vec<String> {
    let short = answer.links.iter().filter(|link| link.used.is_some_and(|used| used > 1.0));
    let mut says: Vec<String> = short.map(|link| remedy(link, lifts)).collect();
    if rolls {
        says.push(OTHER_SIDE.to_owned());
    }
    if says.is_empty() && answer.holds() {
        says.push(if lifts == Lifts::Porch {
            "Every link holds, from the rafters of the porch to the weight of its footings.".to_owned()
        } else {
            "Every link holds. Set each tie on the same side of the wall, one over the other, every hole nailed."
                .to_owned()
        });
    }
    says
}

fn remedy(link: &LinkAnswer, lifts: Lifts) -> String {
    let name = capital(&told(link.link, lifts).name);
    let demand = pounds(link.demand);
    match (&link.held, link.link) {
        (_, Link::FootingToGround) => format!(
            "{name}: {} of concrete and earth must lie under each such post, of which 0.6 counts.",
            pounds(footing_weight(link.demand))
        ),
        (Held::Carries(_), Link::SheathingToRafter) => {
            format!(
                "{name}: {} is missing at each nail. Set them closer, or take ring shank nails.",
                pounds(link.missing)
            )
        }
        (Held::Carries(_), Link::BeamToPost | Link::PostToFooting) => {
            format!("{name}: {} is missing. Take one that holds {demand}.", pounds(link.missing))
        }
        (Held::Carries(_), _) => format!(
            "{name}: {} is missing at each. Take one that holds {demand}, or set them closer.",
            pounds(link.missing)
        ),
        _ => format!("{name}: nothing holds {demand}. Take a tie or a strap that does, at each."),
    }
}
