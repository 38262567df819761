//! Joists of floors and ceilings: one or two spans, a cantilever with or without a wall on it, cuts, how lively the floor
//! is, and the code's span table beside it.

use lumber::{Conditions, Grade, Member, Product, Sawn, SawnSize, Species, candidates::joist_candidates};
use measure::math::{ln, pow};
use measure::{AreaLoad, Force, Length, LineLoad, Ratio};
use standards::irc_2021::r502;
use standards::span_row::{PrintedSpan, SpanRow, SpanTable};
use standards::wood_floor_frequency::{BARE_FLOOR_PSF, natural_frequency};

use crate::beam::Load;
use crate::flexure::Analysis;
use crate::flexure::{
    Acting, Bearing, Case, Cut, DeflectionLimits, Edges, FlexureAnswer, FlexureInput, Held, LoadedFrom, Piece, Traced,
    Tried as Judged, at_cut, check_flexure, judge_governing,
};
use crate::limit::Limit;
use crate::span_table::{ModelSpan, SpanModel, model_span, printed_row, printed_span};

/// What a joist carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoistOf {
    /// A floor: its top edge is held by the panel.
    Floor,
    /// A ceiling under an attic: its bottom edge is held by the board, its top at its ends.
    Ceiling,
}

/// Loads along a wall that stands across the joists, by case.
#[derive(Clone, Debug, PartialEq)]
pub struct WallAcross {
    /// Where it stands, from the first bearing; on a cantilever, at its tip.
    pub at: Length,
    /// Its load along itself, by case.
    pub loads: Vec<(Case, LineLoad)>,
}

/// A joist, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct JoistInput {
    /// What it carries.
    pub of: JoistOf,
    /// Clear span, or that of the first of two.
    pub span: Length,
    /// Clear span of a second one, over which it runs on.
    pub second_span: Option<Length>,
    /// What sticks out past the last bearing.
    pub cantilever: Option<Length>,
    /// Spacing, centre to centre.
    pub spacing: Length,
    /// Length of each bearing.
    pub bearing: Length,
    /// Dead load, the joists among it.
    pub dead: AreaLoad,
    /// Live load.
    pub live: AreaLoad,
    /// Whether it acts with dead load alone, as in an attic without storage.
    pub live_acts_alone: bool,
    /// Walls across it.
    pub walls: Vec<WallAcross>,
    /// Species.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// Deflection limits.
    pub limits: DeflectionLimits,
    /// A joist by its maker's sheet, tried beside the rest.
    pub sheet: Option<Piece>,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Piece>,
    /// A notch or a hole.
    pub cut: Option<Cut>,
}

/// What the code's span table says.
#[derive(Clone, Debug, PartialEq)]
pub struct TableBeside {
    /// The table.
    pub table: SpanTable,
    /// Its row, where it was read.
    pub row: Option<&'static SpanRow>,
    /// Its span, where it was read.
    pub printed: Option<PrintedSpan>,
    /// What its model gives.
    pub model: ModelSpan,
}

impl TableBeside {
    /// The span that the table allows: as printed, else as its model prints it; none over 26 ft.
    #[must_use]
    pub fn allows(&self) -> Option<Length> {
        match self.printed {
            Some(PrintedSpan::Of(span)) => Some(span),
            Some(PrintedSpan::Over26Feet) => None,
            None => self.model.printed(),
        }
    }
}

/// What a joist check answers.
#[derive(Clone, Debug, PartialEq)]
pub struct JoistAnswer {
    /// Strength and stiffness.
    pub flexure: FlexureAnswer,
    /// The longest clear span of the judged piece, alone on two bearings, and what limits it.
    pub longest: Option<(Length, Limit)>,
    /// Its natural frequency on the longest of its spans, cycles a second.
    pub frequency: Ratio,
    /// The code's span table; none where no table fits, with the reason.
    pub table: Result<TableBeside, String>,
    /// Spans that were worked, with half of the bearing that each end needs.
    pub design_span: Length,
}

/// Checks a joist.
///
/// # Errors
/// A sentence, when no such joist can be worked.
pub fn check_joist(input: &JoistInput) -> Result<JoistAnswer, String> {
    let flexure_input = flexure(input);
    let cut = input.cut;
    let more = |piece: &Piece, analysis: &Analysis| -> Result<Vec<Traced>, String> {
        cut.map_or(Ok(Vec::new()), |cut| at_cut(piece, &flexure_input, analysis, &cut))
    };
    let pieces = joist_candidates(input.species, input.grade).map(Piece::Lumber).chain(input.sheet.clone());
    let flexure = check_flexure(&flexure_input, pieces, input.chosen.as_ref(), |_| None, more)?;
    let about = flexure.about();
    let piece = about.piece.clone();
    let span = input.span.max(input.second_span.unwrap_or_default());
    let weight = (AreaLoad::from_psf(BARE_FLOOR_PSF) * input.spacing) * span;
    Ok(JoistAnswer {
        longest: longest(input, about),
        frequency: natural_frequency(about.rigidity, weight, span),
        table: table(input, &piece),
        design_span: design_span(input, input.span),
        flexure,
    })
}

/// Half of the bearing that an end needs is added to the clear span (NDS 2018 3.2.1). All the pieces tried are 1-1/2 in
/// broad, so that it is the same for all.
fn design_span(input: &JoistInput, clear: Length) -> Length {
    const BREADTH: Length = Length::from_inches(1.5);
    let reaction = (input.dead + input.live) * input.spacing * (clear / 2.0);
    let strength = SawnSize::new(2, 8).ok().and_then(|size| {
        let sawn = Sawn { species: input.species, grade: input.grade, size };
        Member::single(Product::Sawn(sawn)).adjusted_stresses(&input.conditions, lumber::LoadDuration::TenYears).ok()
    });
    let needed = strength.map_or(Length::ZERO, |strength| reaction / strength.fc_perp / BREADTH);
    clear + needed.min(input.bearing)
}

/// The joist as a member that bends. The dead load has the joists in it.
fn flexure(input: &JoistInput) -> FlexureInput {
    let first = design_span(input, input.span);
    let mut places = vec![Length::ZERO, first];
    if let Some(second) = input.second_span {
        places.push(first + design_span(input, second));
    }
    let last = places.iter().copied().fold(Length::ZERO, Length::max);
    let length = last + input.cantilever.unwrap_or_default();
    let along = |case, load: AreaLoad| Acting { case, load: Load::uniform(Length::ZERO, length, load * input.spacing) };
    let live = if input.live_acts_alone { Case::LiveAlone } else { Case::Live };
    let mut loads = vec![along(Case::Dead, input.dead), along(live, input.live)];
    for wall in &input.walls {
        let point = |(case, load): &(Case, LineLoad)| {
            let force: Force = *load * input.spacing;
            Acting { case: *case, load: Load::point(wall.at.min(length), force) }
        };
        loads.extend(wall.loads.iter().map(point));
    }
    loads.retain(|one| !is_nothing(&one.load));
    let edges = match input.of {
        JoistOf::Floor => Edges { top: Held::Along, bottom: Held::AtSupports },
        JoistOf::Ceiling => Edges { top: Held::AtSupports, bottom: Held::Along },
    };
    FlexureInput {
        length,
        bearings: places.into_iter().map(|at| Bearing { at, length: input.bearing, below: None }).collect(),
        loads,
        own_weight_share: 0.0,
        edges,
        loaded_from: LoadedFrom::Top,
        conditions: Conditions { repetitive: input.spacing <= REPETITIVE_SPACING, ..input.conditions },
        plies_share_load: false,
        limits: input.limits,
    }
}

/// Alike pieces farther apart than this do not help each other (NDS 2018 4.3.9).
pub(crate) const REPETITIVE_SPACING: Length = Length::from_inches(24.0);

pub(crate) fn is_nothing(load: &Load) -> bool {
    match *load {
        Load::Point { force, .. } => force == Force::ZERO,
        Load::Couple { moment, .. } => moment.inch_pounds() == 0.0,
        Load::Distributed { start, end, .. } => start == LineLoad::ZERO && end == LineLoad::ZERO,
    }
}

/// The longest clear span that a piece carries alone on two bearings.
fn longest(input: &JoistInput, judged: &Judged) -> Option<(Length, Limit)> {
    let alone =
        |span| JoistInput { span, second_span: None, cantilever: None, walls: Vec::new(), cut: None, ..input.clone() };
    let stands_alone =
        input.second_span.is_none() && input.cantilever.is_none() && input.walls.is_empty() && input.cut.is_none();
    let as_judged = if stands_alone { judged.governing() } else { None };
    longest_span(input.span, as_judged.map(|check| (check.share, check.limit)), |span| {
        let flexure_input = flexure(&alone(span));
        let analysis = Analysis::of(&flexure_input).ok()?;
        let tried = judge_governing(judged.piece.clone(), &flexure_input, &analysis, |_, _| Ok(Vec::new()));
        tried.governing().map(|governing| (governing.share, governing.limit))
    })
}

/// The longest span in whole sixteenths of an inch at which a check uses no more than all there is, and what limits it just
/// beyond; none where it is shorter than 6 in or longer than 60 ft.
///
/// A share grows with the span much as a power of it, so each guess is put where such a power through the two spans around
/// the answer, or through the one that is known, comes to a share of one.
///
/// `known` is what the check gives at the guess, where it was asked before.
pub(crate) fn longest_span(
    guess: Length,
    known: Option<(Ratio, Limit)>,
    check: impl Fn(Length) -> Option<(Ratio, Limit)>,
) -> Option<(Length, Limit)> {
    let span = |sixteenths: f64| Length::from_inches(sixteenths / 16.0);
    let unknown = |span| Tried { span, share: None, power: USUAL_POWER };
    let (mut holds, mut fails) = (unknown(SHORTEST), unknown(LONGEST));
    let mut limit = None;
    let mut next = (guess.inches() * 16.0).round().clamp(SHORTEST, LONGEST);
    for step in 1..=MOST_STEPS {
        let known = known.filter(|_| span(next) == guess);
        let (share, of) = known.or_else(|| check(span(next)))?;
        let tried = Tried { span: next, share: Some(share), power: power(of) };
        // A share that is no number does not hold.
        if share <= 1.0 {
            holds = tried;
        } else {
            (fails, limit) = (tried, Some(of));
        }
        if (holds.share.is_none() && fails.span == SHORTEST) || (fails.share.is_none() && holds.span == LONGEST) {
            return None;
        }
        if fails.span - holds.span <= 1.0 && holds.share.is_some() {
            return limit.map(|limit| (span(holds.span), limit));
        }
        next = next_guess(holds, fails, step);
    }
    None
}

/// The shortest and the longest span that is looked for, in sixteenths of an inch.
const SHORTEST: f64 = 6.0 * 16.0;
const LONGEST: f64 = 60.0 * 12.0 * 16.0;
/// Enough for the halvings alone, of which every sixth step is one.
const MOST_STEPS: u32 = 6 * 16;
/// Between bending, which goes with the square of a span, and sag, with its cube.
const USUAL_POWER: f64 = 2.5;

/// The power of the span with which a limit's share goes, or nearly.
const fn power(limit: Limit) -> f64 {
    match limit {
        Limit::Bending | Limit::BendingTopInTension | Limit::Wind => 2.0,
        Limit::LiveSag | Limit::TotalSag => 3.0,
        Limit::Shear | Limit::Bearing => 1.0,
        _ => USUAL_POWER,
    }
}

/// A span in sixteenths of an inch, the share that it uses where that was worked, and the power with which it grows.
#[derive(Clone, Copy)]
struct Tried {
    span: f64,
    share: Option<Ratio>,
    power: f64,
}

/// The next span to try, between one that holds and one that does not: every sixth is halfway, so that the search ends.
fn next_guess(holds: Tried, fails: Tried, step: u32) -> f64 {
    let usable = |share: Option<Ratio>| share.filter(|share| share.is_finite() && *share > 0.0);
    let guess = match (usable(holds.share), usable(fails.share)) {
        _ if step.is_multiple_of(6) && holds.share.is_some() && fails.share.is_some() => {
            f64::midpoint(holds.span, fails.span)
        }
        (Some(low), Some(high)) => {
            let power = ln(high / low) / ln(fails.span / holds.span);
            holds.span * pow(low, -1.0 / power)
        }
        // Past the answer, so that it lies between two from here on.
        (Some(low), None) => holds.span * pow(low, -1.0 / holds.power) * 1.01,
        (None, Some(high)) => fails.span * pow(high, -1.0 / fails.power) * 0.99,
        (None, None) => f64::midpoint(holds.span, fails.span),
    };
    let (least, most) = (
        if holds.share.is_some() { holds.span + 1.0 } else { holds.span },
        if fails.share.is_some() { fails.span - 1.0 } else { fails.span },
    );
    guess.round().clamp(least, most)
}

/// The code's span table for a single clear span.
fn table(input: &JoistInput, piece: &Piece) -> Result<TableBeside, String> {
    let Some(member) = piece.member().filter(|member| member.plies() == 1) else {
        return Err("The code's tables are for single sawn joists.".to_owned());
    };
    let Product::Sawn(sawn) = member.product() else {
        return Err("The code's tables are for single sawn joists.".to_owned());
    };
    if input.second_span.is_some() || input.cantilever.is_some() || !input.walls.is_empty() {
        return Err(
            "The code's span tables are for one even span, without a cantilever or a wall across it.".to_owned()
        );
    }
    let table = match (input.of, input.live.psf()) {
        (JoistOf::Floor, 40.0) => SpanTable::FloorJoists40,
        (JoistOf::Ceiling, 20.0) => SpanTable::CeilingJoists20,
        _ => {
            return Err("No table here has this live load: floors of 40 psf and attics of 20 psf are held.".to_owned());
        }
    };
    if ![10.0, 20.0].contains(&input.dead.psf()) || (input.of == JoistOf::Ceiling && input.dead.psf() != 10.0) {
        return Err("The tables are for 10 or 20 psf of dead load on floors, and 10 psf on ceilings.".to_owned());
    }
    if ![12.0, 16.0, 19.2, 24.0].iter().any(|spacing| (input.spacing.inches() - spacing).abs() < 0.01) {
        return Err(
            "The tables are for 12, 16, 19.2 and 24 in. A spacing between two takes the wider one's span.".to_owned()
        );
    }
    if input.conditions.service != Conditions::default().service || input.conditions.incised {
        return Err("The tables are for dry lumber that is not incised.".to_owned());
    }
    let row = printed_row(table, input.dead, (input.species, input.grade), input.spacing);
    let printed = row.and_then(|row| printed_span(row, sawn.size.nominal()));
    let model = model_span(&SpanModel::of(table, input.dead), member, input.conditions, input.spacing)
        .map_err(|problem| problem.to_string())?;
    Ok(TableBeside { table, row, printed, model })
}

/// The longest cantilever that plain joists may have without a table of its own: their depth by name (R502.3.3).
#[must_use]
pub fn plain_cantilever(piece: &Piece) -> Option<Length> {
    match piece.member()?.product() {
        Product::Sawn(sawn) => Some(Length::from_inches(f64::from(sawn.size.nominal_width()))),
        _ => None,
    }
}

/// Whether a joist this deep takes bridging or blocking between its ends (R502.7.1).
#[must_use]
pub fn needs_bridging(piece: &Piece) -> bool {
    match piece.member().map(Member::product) {
        Some(Product::Sawn(sawn)) => sawn.size.nominal_width() > r502::DEEPEST_WITHOUT_BRIDGING,
        _ => false,
    }
}

/// How much longer than the joist's depth a squash block is cut, so that it takes the load first (a renovation guide).
pub const SQUASH_BLOCK_OVER: Length = Length::from_inches(1.0 / 16.0);
