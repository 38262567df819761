//! The shims where the joists were read: how thick, and what to do.

use layout::strapping::{
    Aim, Ceiling, Crossing, Doubt, Planing, Shim, ShimPlan, ShimSizes, ShimWish, Strapping, ceiling, shims,
};
use measure::Length;

use super::given::{Given, inches};
use super::planed;
use super::reads::{self, Reads};
use super::refused::taken;
use super::shim_tables::stacked;
use crate::quick::reply::FactReply;
use crate::quick::say::{fact, length_fact};
use crate::reading::Reading;
use crate::words;

/// Readings that are asked for again by name; more are counted.
const NAMED: usize = 4;

/// The shims, and what they were worked from.
pub(super) struct Shimmed {
    pub reads: Reads,
    pub plan: ShimPlan,
    pub wish: ShimWish,
    /// Whether a low joist is better planed; none where it was not looked at.
    pub planing: Option<Planing>,
    pub planing_asked: planed::Asked,
}

impl Shimmed {
    /// The strip's row of a crossing, counted from 0; none where no strip lies.
    pub(super) fn strip(&self, at: Crossing) -> Option<usize> {
        self.reads.strips.get(at.row).copied().flatten()
    }

    /// Shims of these that a strip lies on.
    pub(super) fn under_strips<'a>(&'a self, plan: &'a ShimPlan) -> impl Iterator<Item = &'a Shim> {
        plan.shims.iter().filter(|shim| self.strip(shim.at).is_some())
    }

    /// The thickest, the first of those that are as thick.
    pub(super) fn worst(&self) -> Option<&Shim> {
        let thicker = |best: Option<&'_ Shim>, shim: &Shim| best.is_none_or(|best| shim.thickness > best.thickness);
        self.under_strips(&self.plan).fold(None, |best, shim| if thicker(best, shim) { Some(shim) } else { best })
    }

    /// What a crossing is called.
    pub(super) fn name(&self, at: Crossing) -> String {
        match self.strip(at) {
            Some(row) => format!("row {}, joist {}", row + 1, at.joist + 1),
            None => {
                let place = self.reads.readings.rows().get(at.row).copied().unwrap_or(Length::ZERO);
                format!("joist {} at {}", at.joist + 1, words::length(place))
            }
        }
    }
}

/// The shims; what is wrong with the inputs is said.
pub(super) fn work(reading: &mut Reading, given: &Given, strapping: &Strapping) -> Option<Shimmed> {
    let reads = reads::read(reading, given, &strapping.rows)?;
    let sizes = if reading.word("strap_shims").is_some() {
        let sizes = inches(reading, "strap_shims")?;
        taken(reading, ShimSizes::new(&sizes))?
    } else {
        ShimSizes::common()
    };
    let aim = match reading.word("strap_aim")? {
        "least_total" => Aim::LeastTotal,
        "least_greatest" => Aim::LeastGreatest,
        "best_fit" => Aim::BestFit,
        _ => Aim::Level,
    };
    let wish = ShimWish { aim, steepest: None, sizes, thickest: reading.length("strap_shim_most")? };
    let plan = taken(reading, shims(&reads.readings, &wish))?;
    let planing_asked = planed::asked(reading, given, &reads);
    let planing = match &planing_asked {
        planed::Asked::Look(asked) => Some(taken(reading, layout::strapping::planing(&reads.readings, &wish, asked))?),
        _ => None,
    };
    Some(Shimmed { reads, plan, wish, planing, planing_asked })
}

/// Height of a level laser or string over the subfloor; one that is not level has no one height.
pub(super) fn level_datum(reading: &Reading) -> Option<Length> {
    reading.length("strap_datum_high").filter(|_| reading.word("strap_level") == Some("yes"))
}

/// What hangs under the joists.
pub(super) fn under(reading: &Reading, given: &Given) -> Ceiling {
    Ceiling { strip: given.room.strip.thickness, board: reading.length("strap_board").unwrap_or(Length::ZERO) }
}

pub(super) fn headline(reading: &Reading, given: &Given, shimmed: &Shimmed) -> (String, String) {
    let under = under(reading, given).thickness();
    let so_far = if still_open(shimmed).next().is_some() { "so far; " } else { "" };
    match shimmed.worst().filter(|shim| shim.thickness > Length::ZERO) {
        Some(worst) => (
            format!("Shim {} at most", words::inches(worst.thickness)),
            format!("{so_far}the ceiling comes down {} there", words::inches(worst.thickness + under)),
        ),
        None => ("No shim".to_owned(), format!("{so_far}the ceiling comes down {}", words::inches(under))),
    }
}

pub(super) fn action(shimmed: &Shimmed) -> Vec<String> {
    let mut says = again(shimmed);
    says.extend(unread(shimmed));
    says.extend(planed::action(shimmed));
    says.extend(worst(shimmed));
    if let Some(first) = shimmed.plan.touches.iter().find(|at| shimmed.strip(**at).is_some()) {
        says.push(format!("Begin at {}: no shim there, it holds the others down.", shimmed.name(*first)));
    }
    says
}

/// Readings that look wrong.
fn again(shimmed: &Shimmed) -> Vec<String> {
    let doubts = &shimmed.plan.doubts;
    let ask = |doubt: &Doubt| {
        let slip = if doubt.by_an_inch { " That is an inch: was the tape held at its 1\" mark?" } else { "" };
        format!(
            "Read {} again: it stands {} {} its neighbours.{slip} It counts as it stands.",
            shimmed.name(doubt.at),
            words::inches((doubt.height - doubt.expected).abs()),
            if doubt.height > doubt.expected { "higher than" } else { "lower than" }
        )
    };
    let mut says: Vec<String> = doubts.iter().take(NAMED).map(ask).collect();
    if doubts.len() > NAMED {
        says.push(format!("Read {} more again: they have a ring on the plan.", doubts.len() - NAMED));
    }
    says
}

/// Crossings of strips that nothing is known of.
fn still_open(shimmed: &Shimmed) -> impl Iterator<Item = Crossing> + '_ {
    shimmed.plan.open.iter().copied().filter(|at| shimmed.strip(*at).is_some())
}

/// The same by name.
fn unread(shimmed: &Shimmed) -> Option<String> {
    let open: Vec<Crossing> = still_open(shimmed).collect();
    let names: Vec<String> = open.iter().take(NAMED).map(|at| shimmed.name(*at)).collect();
    if names.is_empty() {
        return None;
    }
    let more = if open.len() > NAMED { format!(" and {} more", open.len() - NAMED) } else { String::new() };
    Some(format!("Still to be read: {}{more}. A low one there would bring the whole ceiling down.", names.join("; ")))
}

/// The thickest shim, and what the shims at hand do not make.
fn worst(shimmed: &Shimmed) -> Vec<String> {
    let mut says = Vec::new();
    if let Some(worst) = shimmed.worst().filter(|shim| shim.thickness > Length::ZERO) {
        let made = worst.stack.as_deref().map_or_else(String::new, |stack| format!(", made of {}", stacked(stack)));
        says.push(format!("The thickest is at {}: {}{made}.", shimmed.name(worst.at), words::inches(worst.thickness)));
    }
    let count = |wanted: fn(&Shim) -> bool| shimmed.under_strips(&shimmed.plan).filter(|shim| wanted(shim)).count();
    let thick = count(|shim| shim.too_thick);
    if thick > 0 {
        says.push(format!(
            "{} over {}: a solid packer and a longer fastener there, or a sister beside the joist. No stacked tapers.",
            crossings(thick),
            words::inches(shimmed.wish.thickest)
        ));
    }
    let unmade = count(|shim| shim.stack.is_none());
    if unmade > 0 {
        says.push(format!("At {} the shims at hand make nothing within 1/16\": get thinner ones.", crossings(unmade)));
    }
    says
}

fn crossings(count: usize) -> String {
    if count == 1 { "1 crossing".to_owned() } else { format!("{count} crossings") }
}

pub(super) fn facts(reading: &Reading, given: &Given, shimmed: &Shimmed) -> Vec<FactReply> {
    let plan = &shimmed.plan;
    let worst = shimmed.worst().map_or(Length::ZERO, |shim| shim.thickness);
    let to_set = shimmed.under_strips(plan).filter(|shim| shim.thickness > Length::ZERO).count();
    let counted = |name: &str, what: &str, count: usize| fact(name, what, count as f64, count.to_string());
    let mut facts = vec![
        length_fact("greatest_shim_in", "thickest shim under a strip", worst),
        counted("shims", "shims to set", to_set),
        length_fact("greatest_read_in", "greatest gap that was read, before rounding", plan.greatest),
        length_fact("total_read_in", "all gaps that were read, together", plan.total),
        length_fact("off_plane_in", "off the plane by rounding, at most", plan.off_plane),
        counted("not_read", "crossings of strips that are not known", still_open(shimmed).count()),
    ];
    if let Some(datum) = level_datum(reading) {
        let under = under(reading, given);
        let (low, high) = heights(given, shimmed, datum, under);
        facts.push(length_fact("strip_faces_in", "faces of the strips over the subfloor, lowest", low + under.board));
        facts.push(length_fact("ceiling_in", "finished ceiling over the subfloor, lowest", low));
        if high - low > Length::from_inches(1.0 / 32.0) {
            facts.push(length_fact("ceiling_high_in", "finished ceiling over the subfloor, highest", high));
        }
    }
    facts
}

/// The lowest and the highest corner of the finished ceiling.
fn heights(given: &Given, shimmed: &Shimmed, datum: Length, under: Ceiling) -> (Length, Length) {
    let (across, along) = (given.room.across, given.room.along);
    let corners = [[Length::ZERO, Length::ZERO], [across, Length::ZERO], [Length::ZERO, along], [across, along]];
    let heights = corners.map(|corner| ceiling(&shimmed.plan.plane, corner, datum, under));
    let [first, rest @ ..] = heights;
    rest.into_iter().fold((first, first), |(low, high), one| (low.min(one), high.max(one)))
}
