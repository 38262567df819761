//! The header check: what to put over an opening, on how many jacks, between how many kings.
//!
//! Every size that can be had is judged in bending, shear, bearing, sag, lateral stability and wind; the smallest that
//! works in each family is found; and the code's own table stands beside the calculation, by edition.
//!
//! *Absent on purpose*: uplift and its path to the footing; point loads; headers that slope or run over two openings;
//! how the plies are nailed.

mod cuts;
mod demand;
mod gap;
mod input;
mod jacks;
mod judge;
mod kings;
mod result;
mod table;
mod wind;
mod working;

pub use crate::check::Verdict;
pub use input::{Above, Closure, CodeEdition, DeflectionLimits, Gap, HeaderInput, Wall, Wind};
pub use result::{
    Check, CutKind, CutPiece, GapAnswer, HeaderAnswer, KingTable, Kings, Limit, Misfit, TableAnswer, Tried,
};

use loads::header::{HeaderLoads, line_loads};
use lumber::{Family, Member, candidates::header_candidates};
use measure::{Force, Length, LineLoad, Ratio};

use demand::{demands, design_span};
use jacks::Jacks;
use judge::{Case, ROLLED_OVER, judge};
use wind::HeaderWind;

use crate::choose::{Candidate, best, smallest_of_each_family};

/// Two top plates.
pub(crate) const TOP_PLATES: Length = Length::from_inches(3.0);

/// Room for a header between a head height and the top plates of a wall, all from under the bottom plate.
#[must_use]
pub fn room_between(wall_height: Length, head_height: Length) -> Length {
    wall_height - head_height - TOP_PLATES
}

fn room(input: &HeaderInput) -> Length {
    room_between(input.wall.height, input.wall.head_height)
}

/// Checks a header.
///
/// Judges every size, in families; answers about the size that was chosen or else the smallest that carries and fits:
/// built-up 2x first, then engineered lumber, then solid sizes. Where a rule gives no answer for a size, that size is
/// *outside*, with the reason; where it gives none for the whole case (wind outside the tables' limits), every size is.
#[must_use]
pub fn check_header(input: &HeaderInput) -> HeaderAnswer {
    let loads = line_loads(&input.tributary, &input.site);
    let tried = try_all(input, &loads);
    let smallest = smallest_of_each_family(&tried);
    let chosen = input.chosen.as_ref().and_then(|chosen| tried.iter().position(|tried| tried.member == *chosen));
    let judged = best(&tried, &smallest, chosen);
    answer(input, loads, tried, smallest, judged)
}

fn try_all(input: &HeaderInput, loads: &HeaderLoads) -> Vec<Tried> {
    let members = header_candidates(input.species, input.grade).chain(input.labelled.clone());
    match (Jacks::of(input), HeaderWind::of(input)) {
        (Ok(jacks), Ok(wind)) => {
            let case = Case { input, loads: &loads.cases, jacks: &jacks, wind };
            members.map(|member| judge(member, &case)).collect()
        }
        (Err(sentence), _) | (_, Err(sentence)) => members.map(|member| outside(member, &sentence)).collect(),
    }
}

fn outside(member: Member, sentence: &str) -> Tried {
    let family = member.family();
    Tried { member, family, jacks: None, checks: Vec::new(), outside: Some(sentence.to_owned()), misfit: None }
}

/// Judges one size alone, as [`check_header`] judges it among the rest.
#[must_use]
pub fn judge_size(input: &HeaderInput, member: Member) -> Tried {
    let loads = line_loads(&input.tributary, &input.site);
    match (Jacks::of(input), HeaderWind::of(input)) {
        (Ok(jacks), Ok(wind)) => judge(member, &Case { input, loads: &loads.cases, jacks: &jacks, wind }),
        (Err(sentence), _) | (_, Err(sentence)) => outside(member, &sentence),
    }
}

/// How a size bears on a single jack, whether or not one is enough; none where a rule gives no answer.
#[must_use]
pub fn one_jack_bearing(input: &HeaderInput, member: &Member) -> Option<Check> {
    let loads = line_loads(&input.tributary, &input.site);
    let jacks = Jacks::of(input).ok()?;
    judge::bearing_on(member, 1, &Case { input, loads: &loads.cases, jacks: &jacks, wind: None })
}

impl Candidate for Tried {
    fn family(&self) -> Family {
        self.family
    }

    fn area(&self) -> f64 {
        self.member.section().area.square_inches()
    }

    fn works(&self) -> bool {
        Self::works(self)
    }

    fn fits(&self) -> bool {
        self.misfit.is_none()
    }

    /// A share that says no more than "rolled over" does not tell.
    fn telling_share(&self) -> Ratio {
        let shares = self.checks.iter().map(|check| check.share).filter(|share| *share < ROLLED_OVER);
        shares.reduce(f64::max).unwrap_or(f64::INFINITY)
    }
}

fn answer(
    input: &HeaderInput,
    loads: HeaderLoads,
    tried: Vec<Tried>,
    smallest: Vec<usize>,
    judged: usize,
) -> HeaderAnswer {
    let (kings, kings_outside, kings_working) = match kings::kings(input) {
        Ok(Some((kings, part))) => (Some(kings), None, Some(part)),
        Ok(None) => (None, None, None),
        Err(sentence) => (None, Some(sentence), None),
    };
    let about = &tried[judged];
    let (line_load, reaction) = greatest(input, &loads, about);
    let table = table::answer(&about.member, &about.checks, input);
    let king_table = table::kings(input);
    let jacks_to_set = about.jacks.unwrap_or(judge::MOST_JACKS).max(table::jacks_asked(&table));
    let kings_to_set = kings.map_or(1, |kings| kings.each_side()).max(table::kings_asked(king_table.as_ref()));
    let mut working = working_of(input, &loads, about);
    working.extend(kings_working);
    HeaderAnswer {
        line_load,
        reaction,
        jacks_to_set,
        kings_to_set,
        kings,
        kings_outside,
        king_table,
        table,
        room: room(input),
        cuts: cuts::cuts(&about.member, jacks_to_set, kings_to_set, input),
        gap: input.gap.map(|found| gap::answer(&about.member, found)),
        working,
        loads: loads.cases,
        roof_snow: loads.roof_snow,
        parts: loads.parts,
        tried,
        judged,
        smallest,
    }
}

fn greatest(input: &HeaderInput, loads: &HeaderLoads, tried: &Tried) -> (LineLoad, Force) {
    let jacks = tried.jacks.unwrap_or(judge::MOST_JACKS);
    let line_load = demands(&loads.cases, tried.member.self_weight(), false)
        .iter()
        .map(|demand| demand.total)
        .fold(LineLoad::ZERO, LineLoad::max);
    (line_load, line_load * design_span(input.opening, jacks) / 2.0)
}

fn working_of(input: &HeaderInput, loads: &HeaderLoads, tried: &Tried) -> Vec<crate::working::Part> {
    match (Jacks::of(input), HeaderWind::of(input)) {
        (Ok(jacks), Ok(wind)) => {
            working::working(tried, &loads.parts, &Case { input, loads: &loads.cases, jacks: &jacks, wind })
        }
        _ => Vec::new(),
    }
}
