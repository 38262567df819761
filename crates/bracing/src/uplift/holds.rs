//! What one connection holds wherever it stands, and why one may not count where it does.

use standards::asce7_16::chapter_2::Combination;
use standards::irc_2021::r802_11::{TOE_NAIL_LIMIT, TOE_NAILS, UPLIFT_PATH};
use standards::{OutsideTable, Source};

use super::link::{Held, Link};
use super::refusal;
use super::tie::Tie;
use crate::segmented::OF_DEAD;

/// What holds wherever it stands; of what needs a wall around it why it may not count.
pub(super) fn by_itself(link: Link, tie: &Tie) -> (Held, Option<Source>) {
    match tie {
        Tie::Unknown => (Held::Unknown, None),
        Tie::Nothing => (Held::Nothing, None),
        Tie::Metal { allowable, .. } => (Held::Carries(*allowable), None),
        Tie::Nails { count, each } => {
            let all = *each * f64::from(*count);
            if link.is_at_roof() && all > TOE_NAIL_LIMIT {
                return (Held::Carries(TOE_NAIL_LIMIT), Some(TOE_NAILS));
            }
            (Held::Carries(all), None)
        }
        Tie::Weight(weight) if link == Link::FootingToGround => {
            (Held::Carries(*weight * OF_DEAD), Some(Combination::SOURCE))
        }
        Tie::Refused(why) => (Held::Refused(why.clone()), Some(why.source)),
        Tie::Weight(_) | Tie::Bolts(_) | Tie::Panels(_) | Tie::ScheduleNailing => (Held::Refused(not_here(link)), None),
    }
}

fn not_here(link: Link) -> OutsideTable {
    let (given, covers, next) = if link.is_at_opening() {
        ("wall panels or bolts beside an opening", "the wall between openings", "Strap header and jambs.")
    } else {
        (
            "wall panels, bolts or weight at a link that they do not reach",
            "plates, studs, sills and footings",
            "Use a tie or a strap.",
        )
    };
    refusal(UPLIFT_PATH, given.to_owned(), covers, next)
}
