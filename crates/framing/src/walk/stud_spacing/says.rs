//! What a look at stud spacing says.

use inspection::stud_spacing::{Bay, BayKind, Edge, EdgeState, Guess, JudgedWall, Oddity, Rule, Slip};
use inspection::{Subject, Verdict};
use measure::Length;
use standards::irc_2021::r602_3_5::StudRow;

use crate::walk::answer::Answer;
use crate::walk::reply::{Foremost, WalkCheck};
use crate::walk::words::{self, length};

/// A question about a pull.
pub(super) fn doubt(number: usize, typed: &str, oddity: Oddity) -> String {
    let typed = crate::walk::reading::short(typed);
    let odd = match oddity {
        Oddity::NotAPull => "it is no length",
        Oddity::NotLongerThanBefore => "it is no longer than the pull before",
        Oddity::PastThePlate => "it is past the end of the plate",
        Oddity::StudInStud => "it puts a stud into the one before",
        Oddity::WideBay => "it leaves a bay that lacks more than one stud, and no opening is there",
        Oddity::OffTheLayout => "it stands off the layout between two that stand on it",
        Oddity::AllAnInchLong => "every pull is an inch past its mark, as when the tape is held at its first inch",
    };
    format!("Pull {number} reads {typed}: {odd}. Is it right?")
}

/// What may have been meant.
pub(super) fn guess(guess: &Guess) -> String {
    let slip = match guess.slip {
        Slip::SwappedDigits => "two digits changed places",
        Slip::MillimetresAsInches => "it was in millimetres",
        Slip::FeetAsInches => "it was in feet",
        Slip::InchesAsFeet => "it was in inches",
        Slip::OneFoot => "it is a foot off",
        Slip::BurnedInch => "the inch was not taken off",
    };
    format!("{}, if {slip}", length(guess.pull))
}

/// Every bay beside the spacing that is asked for; the tolerance is named, not hidden in the limit.
pub(super) fn bays(answer: &mut Answer, judged: &JudgedWall, rule: &Rule) {
    let asked = rule.spacing.value;
    for bay in &judged.bays {
        let Some(check) = &bay.check else { continue };
        let limit = format!("at most {}, and {} of tolerance", length(asked), length(judged.tolerance.value));
        let over = if bay.over > Length::ZERO {
            format!("{} over", length(bay.over))
        } else {
            format!("{} to spare", length(bay.over.abs()))
        };
        let plain = words::check(check, Some(&format!("{} to {}", length(bay.from), length(bay.to))));
        let margin = if bay.over == Length::ZERO { "nothing to spare".to_owned() } else { over };
        answer.checked(check, WalkCheck { limit, margin, ..plain });
    }
    let out: Vec<&Bay> = judged.bays.iter().filter(|bay| bay.verdict() == Some(Verdict::Out)).collect();
    if let Some(widest) = out.iter().map(|bay| bay.over).reduce(Length::max) {
        let (bays, are) = if out.len() == 1 { ("bay", "is") } else { ("bays", "are") };
        let says = format!(
            "{} {bays} {are} wider than {}: {} at the widest, {} over.",
            out.len(),
            length(asked),
            length(judged.widest),
            length(widest)
        );
        answer.say(says);
        let by = format!("Stud spacing: {} over {}", length(widest), length(asked));
        answer.by_how_much(by, widest_bay(judged, rule, words::too(Subject::StudSpacing)));
    }
    for bay in judged.bays.iter().filter(|bay| bay.kind == BayKind::Missing) {
        answer.say(format!("A stud is missing between {} and {}.", length(bay.from), length(bay.to)));
    }
    answer.otherwise(widest_bay(judged, rule, ""));
    if judged.creeps {
        answer.say("The studs creep by as much at each: pulled from stud to stud, and not from one end.");
    }
}

fn widest_bay(judged: &JudgedWall, rule: &Rule, word: &str) -> Foremost {
    Foremost {
        subject: words::subject(Subject::StudSpacing).to_owned(),
        found: length(judged.widest),
        word: word.to_owned(),
        share: Some(judged.widest / (rule.spacing.value + judged.tolerance.value)),
    }
}

/// Every sheet edge.
pub(super) fn edges(answer: &mut Answer, judged: &JudgedWall) {
    for edge in &judged.edges {
        let at = format!("at {}", length(edge.at));
        if let Some(check) = &edge.check {
            answer.check(check, Some(&at));
        }
        if let Some(says) = edge_in_words(edge) {
            answer.say(format!("Sheet edge {at}: {says}."));
        }
    }
}

fn edge_in_words(edge: &Edge) -> Option<String> {
    match edge.state {
        EdgeState::OnStud { before, after } if edge.verdict() == Some(Verdict::Out) => {
            Some(format!("{} of wood under one sheet and {} under the other", length(before), length(after)))
        }
        EdgeState::OnStud { .. } => None,
        EdgeState::InAir { before, after } => {
            let stud = |distance: Option<Length>, side| {
                distance.map(|distance| format!("{} from the stud {side} it", length(distance)))
            };
            let studs: Vec<String> = [stud(before, "before"), stud(after, "after")].into_iter().flatten().collect();
            Some(format!("in the air, {}", studs.join(" and ")))
        }
        EdgeState::OverOpening => Some("over an opening".to_owned()),
    }
}

/// What follows from the pulls.
pub(super) fn facts(answer: &mut Answer, judged: &JudgedWall, rule: &Rule) {
    let centres: Vec<String> = judged.centres.iter().map(|centre| length(*centre)).collect();
    answer.fact("Centres of the studs from the plate's end", centres.join(", "), None);
    answer.fact("Widest bay", length(judged.widest), None);
    let ratio = format!("{:.4}", judged.spacing_ratio);
    let ratio = ratio.trim_end_matches('0').trim_end_matches('.').to_owned();
    answer.fact("Load on a stud there, as a share of what the required spacing gives it", ratio, None);
    let row = judged.table_row.map_or_else(|| "none: wider than the table goes".to_owned(), length);
    answer.fact("Spacing row of the stud table that the widest bay falls into", row, None);
    let add: Vec<String> = judged.studs_to_add().map(length).collect();
    if !add.is_empty() {
        answer.fact("Studs to add, centred at", add.join(", "), None);
    }
    let drift = judged.drift.iter().flatten().copied().reduce(|a, b| if b.abs() > a.abs() { b } else { a });
    if let Some(drift) = drift.filter(|drift| *drift != Length::ZERO) {
        answer.fact("Farthest from its layout mark", length(drift), None);
    }
    let tolerance = words::clause(&judged.tolerance.origin);
    answer.fact("Tolerance on a bay", length(judged.tolerance.value), Some(tolerance));
    answer.fact(
        "Wood wanted under a sheet's edge",
        length(rule.edge_bearing.value),
        Some(words::clause(&rule.edge_bearing.origin)),
    );
    answer.caution("No code prints a tolerance for stud spacing. A wall that bears, or braces, is not let off by one.");
}

/// The rows of the code's stud table for this stud.
pub(super) fn table(answer: &mut Answer, row: &StudRow) {
    const CARRIES: [&str; 4] = ["roof and ceiling", "one floor and roof", "two floors and roof", "one floor only"];
    let clause = words::published(row.source());
    let spacing = |spacing: Option<Length>| spacing.map_or_else(|| "not allowed".to_owned(), length);
    for (carries, allowed) in CARRIES.into_iter().zip(row.spacings) {
        let what = format!("Widest spacing of a {} that carries {carries}", row.size);
        answer.fact(what, spacing(allowed), Some(clause.clone()));
    }
    let what = format!("Widest spacing of a {} that bears nothing", row.size);
    answer.fact(what, length(row.nonbearing_spacing), Some(clause));
}
