//! Rafters: gravity and wind both ways on the slope, the thrust that a roof without a ridge beam gives, ties at the plate or
//! above it, heel joints, the seat cut, and the code's span table beside it.

use lumber::{
    AdjustedStresses, Conditions, Grade, LoadDuration, Member, Product, Species, candidates::joist_candidates,
};
use measure::{Angle, AreaLoad, Force, Length, LineLoad, Ratio, Slope, Stress};
use standards::OutsideTable;
use standards::asce7_16::chapter_2::Combination;
use standards::irc_2021::r802_4::{self, HeelLoad};
use standards::nds_2018::chapter_3::{self, ColumnMaterial, ColumnStage};
use standards::span_row::SpanTable;

use crate::beam::Load;
use crate::check::Check;
use crate::flexure::{
    Acting, Analysis, Bearing, Case, Cut, DeflectionLimits, Edge, Edges, FlexureAnswer, FlexureInput, Held, LoadedFrom,
    Piece, Traced, Tried, at_cut, check_flexure, judge_governing,
};
use crate::joist::{REPETITIVE_SPACING, TableBeside, is_nothing, longest_span};
use crate::limit::Limit;
use crate::span_table::{SpanModel, model_span, printed_row, printed_span};

/// What keeps the rafters' feet together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ties {
    /// Ceiling joists or ties at the plate.
    AtPlate,
    /// Ties so high over the plate.
    Raised(Length),
    /// None: the ridge carries.
    None,
}

/// Loads on a roof. Those of gravity are on the level; wind is square to the roof, at strength level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofLoads {
    /// Roof, and a ceiling where it hangs on the rafters.
    pub dead: AreaLoad,
    /// Snow on the roof, the heaviest that one side has.
    pub snow: AreaLoad,
    /// Snow as it counts for both sides together: the mean of the two.
    pub snow_even: AreaLoad,
    /// Roof live load.
    pub roof_live: AreaLoad,
    /// Wind that presses.
    pub wind_down: AreaLoad,
    /// Wind that lifts.
    pub wind_up: Lift,
    /// Wind that lifts an overhang, both faces together, without a sign.
    pub overhang_up: AreaLoad,
}

/// Wind that lifts a roof, without a sign: harder along the eave and the ridge than between.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Lift {
    /// Within the zone's width of the eave.
    pub eave: AreaLoad,
    /// Between.
    pub between: AreaLoad,
    /// Within the zone's width of the ridge.
    pub ridge: AreaLoad,
    /// Width of the zones, measured level.
    pub zone: Length,
}

impl Lift {
    /// The same all over.
    #[must_use]
    pub const fn even(load: AreaLoad) -> Self {
        Self { eave: load, between: load, ridge: load, zone: Length::ZERO }
    }

    /// The mean over so much of the roof down from the ridge.
    #[must_use]
    pub fn beside_ridge(&self, level: Length) -> AreaLoad {
        if level <= Length::ZERO {
            return AreaLoad::ZERO;
        }
        let share = self.zone.min(level) / level;
        self.ridge * share + self.between * (1.0 - share)
    }

    /// Pieces along a level run from the eave: from, to, and the load.
    fn along(&self, run: Length) -> [(Length, Length, AreaLoad); 3] {
        let eave = self.zone.min(run / 2.0);
        let ridge = (run - self.zone).max(run / 2.0);
        [(Length::ZERO, eave, self.eave), (eave, ridge, self.between), (ridge, run, self.ridge)]
    }
}

/// A rafter, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct RafterInput {
    /// Level run from the outside of the plate to the middle of the ridge.
    pub run: Length,
    /// Pitch.
    pub pitch: Slope,
    /// Spacing, centre to centre.
    pub spacing: Length,
    /// Overhang, measured level.
    pub overhang: Length,
    /// A purlin or a wall under it, measured level from the outside of the plate.
    pub purlin: Option<Length>,
    /// What keeps its feet together.
    pub ties: Ties,
    /// Level length of the seat cut.
    pub seat: Length,
    /// Loads.
    pub loads: RoofLoads,
    /// Ground snow, for the code's tables.
    pub ground_snow: AreaLoad,
    /// Whether a ceiling is fastened to the rafters.
    pub ceiling_on_rafters: bool,
    /// Blocking or a ceiling that holds the bottom edge, at points so far apart; none: at the supports.
    pub bottom_held: Held,
    /// What one 16d common nail carries in this wood, before load duration.
    pub heel_nail: Force,
    /// Species.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// Deflection limits.
    pub limits: DeflectionLimits,
    /// The size to judge; none: the smallest that works.
    pub chosen: Option<Piece>,
}

impl RafterInput {
    /// The angle of the roof.
    #[must_use]
    pub fn angle(&self) -> Angle {
        self.pitch.angle()
    }

    /// Height from the plate to the ridge along the rafter's line.
    #[must_use]
    pub fn height(&self) -> Length {
        self.run * self.angle().tan()
    }

    /// Height of the ties over the plate as a share of that.
    fn tie_share(&self) -> Ratio {
        match self.ties {
            Ties::Raised(height) => height / self.height(),
            Ties::AtPlate | Ties::None => 0.0,
        }
    }

    /// Load a foot of level run, by case.
    fn on_the_level(&self, case: Case) -> LineLoad {
        let load = match case {
            Case::Dead => self.loads.dead,
            Case::Snow => self.loads.snow,
            Case::RoofLive => self.loads.roof_live,
            _ => AreaLoad::ZERO,
        };
        load * self.spacing
    }

    /// The same as it counts for a pair of rafters.
    fn on_a_pair(&self, case: Case) -> LineLoad {
        if case == Case::Snow { self.loads.snow_even * self.spacing } else { self.on_the_level(case) }
    }
}

/// The thrust of a pair of rafters, per pair, under the way of the loads that asks most of its nails.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thrust {
    /// Pull in each tie.
    pub tie: Force,
    /// The combination.
    pub combination: Combination,
    /// How long it lasts.
    pub duration: LoadDuration,
    /// 16d common nails at each heel, by the thrust.
    pub nails: u32,
    /// Nails by the code's table, with its factor for a raised tie.
    pub table_nails: Option<u32>,
}

/// The seat cut and what it leaves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeatCut {
    /// Depth of the cut, square to the rafter.
    pub depth: Length,
    /// A quarter of the rafter's depth.
    pub allowed: Length,
    /// The longest level seat that keeps it, rounded down to 1/16 in.
    pub longest_seat: Length,
    /// Wood left above it, square to the rafter.
    pub left: Length,
    /// Height of the rafter's top over the plate at its outside.
    pub height_above_plate: Length,
}

/// What a rafter check answers.
#[derive(Clone, Debug, PartialEq)]
pub struct RafterAnswer {
    /// Strength and stiffness.
    pub flexure: FlexureAnswer,
    /// Thrust; none where the ridge carries. A tie that is too high is refused with the reason.
    pub thrust: Option<Result<Thrust, OutsideTable>>,
    /// Seat cut of the judged piece.
    pub seat: SeatCut,
    /// The cut end of the rafter, plumb: the ridge is no less deep.
    pub cut_end: Length,
    /// The longest level run of the judged piece, and what limits it.
    pub longest: Option<(Length, Limit)>,
    /// The code's span table, with what is left of its span where the tie is raised.
    pub table: Result<(TableBeside, Ratio), String>,
    /// Net lift at the plate, square to the level, most of all combinations.
    pub lift: Force,
}

/// Checks a rafter.
///
/// # Errors
/// A sentence, when no such rafter can be worked.
pub fn check_rafter(input: &RafterInput) -> Result<RafterAnswer, String> {
    let flexure_input = flexure(input);
    let pieces = joist_candidates(input.species, input.grade).map(Piece::Lumber);
    let more = |piece: &Piece, analysis: &Analysis| seat_and_thrust(piece, input, &flexure_input, analysis);
    let flexure = check_flexure(&flexure_input, pieces, input.chosen.as_ref(), |_| None, more)?;
    let piece = flexure.about().piece.clone();
    let cosine = input.angle().cos();
    let lift = flexure.forces.first().map_or(Force::ZERO, |force| (-force.least).max(Force::ZERO) / cosine);
    Ok(RafterAnswer {
        thrust: thrust(input),
        seat: seat(input, &piece),
        cut_end: piece.depth() / cosine,
        longest: longest(input, flexure.about()),
        table: table(input, &piece),
        lift,
        flexure,
    })
}

/// Blocking that holds the bottom edges, and what then carries.
#[derive(Clone, Debug, PartialEq)]
pub struct Blocking {
    /// How far apart along the slope.
    pub apart: Length,
    /// The chosen size where that carries with it; else the smallest that does.
    pub piece: Piece,
}

/// Blocking that lets a rafter carry that does not as its bottom edge is held, since a lifting wind rolls it: every half,
/// third or quarter of the slope. The chosen size is tried first, where one is chosen.
///
/// None where it carries as it is, where it fails in something else, or where a quarter is not enough.
#[must_use]
pub fn blocking_needed(input: &RafterInput) -> Option<Blocking> {
    if input.bottom_held == Held::Along {
        return None;
    }
    let unblocked = flexure(input);
    // What holds the edges is no part of the statics.
    let analysis = Analysis::of(&unblocked).ok()?;
    let carrying = |bottom: Held, sizes: &[Piece]| {
        let edges = Edges { bottom, ..unblocked.edges };
        carrying_size(input, &FlexureInput { edges, ..unblocked.clone() }, &analysis, sizes)
    };
    let slope = input.run / input.angle().cos();
    let blocked = |sizes: &[Piece]| {
        [2.0, 3.0, 4.0].into_iter().map(|parts| slope / parts).find_map(|apart| {
            let piece = carrying(Held::Every(apart), sizes)?;
            Some(Blocking { apart, piece })
        })
    };
    let all: Vec<Piece> = joist_candidates(input.species, input.grade).map(Piece::Lumber).collect();
    let tries = input.chosen.as_ref().map(core::slice::from_ref).into_iter().chain([all.as_slice()]);
    for sizes in tries {
        if carrying(input.bottom_held, sizes).is_some() {
            return None;
        }
        if let Some(blocking) = blocked(sizes) {
            return Some(blocking);
        }
    }
    None
}

/// The first of the sizes that carries.
fn carrying_size(
    input: &RafterInput,
    flexure_input: &FlexureInput,
    analysis: &Analysis,
    sizes: &[Piece],
) -> Option<Piece> {
    let more = |piece: &Piece, analysis: &Analysis| seat_and_thrust(piece, input, flexure_input, analysis);
    let carries = |piece: &&Piece| judge_governing((*piece).clone(), flexure_input, analysis, more).verdict().holds();
    sizes.iter().find(carries).cloned()
}

/// Cases that press down on a roof by its weight or by what lies on it.
const GRAVITY: [Case; 3] = [Case::Dead, Case::RoofLive, Case::Snow];

/// The rafter as a member that bends, along its slope: loads square to it.
///
/// A load on the level gives the square of the cosine of itself, square to each foot of slope; a raised tie presses on the
/// rafter where it holds it, by the sine of its pull.
fn flexure(input: &RafterInput) -> FlexureInput {
    let angle = input.angle();
    let (cosine, sine) = (angle.cos(), angle.sin());
    let tail = input.overhang / cosine;
    let ridge = tail + input.run / cosine;
    let seat = input.seat * cosine;
    let mut loads = Vec::new();
    for case in GRAVITY {
        let across = input.on_the_level(case) * (cosine * cosine);
        loads.push(Acting { case, load: Load::uniform(Length::ZERO, ridge, across) });
        if let Ties::Raised(height) = input.ties {
            let pull = pull(input, input.on_a_pair(case), height);
            let place = tail + height / angle.tan() / cosine;
            loads.push(Acting { case, load: Load::point(place.min(ridge), pull * sine) });
        }
    }
    let wind = |case, from, to, load: AreaLoad| Acting { case, load: Load::uniform(from, to, load * input.spacing) };
    loads.push(wind(Case::WindDown, Length::ZERO, ridge, input.loads.wind_down));
    for (from, to, load) in input.loads.wind_up.along(input.run) {
        if to > from {
            loads.push(wind(Case::WindUp, tail + from / cosine, tail + to / cosine, -load));
        }
    }
    if tail > Length::ZERO {
        loads.push(wind(Case::WindUp, Length::ZERO, tail, -input.loads.overhang_up));
    }
    loads.retain(|one| !is_nothing(&one.load));
    let purlin = input.purlin.map(|purlin| tail + purlin / cosine).filter(|at| *at > tail && *at < ridge);
    let places = core::iter::once(tail).chain(purlin).chain([ridge]);
    FlexureInput {
        length: ridge,
        bearings: places.map(|at| Bearing { at, length: seat.max(LEAST_SEAT), below: None }).collect(),
        loads,
        own_weight_share: 0.0,
        edges: Edges { top: Held::Along, bottom: input.bottom_held },
        loaded_from: LoadedFrom::Top,
        conditions: Conditions { repetitive: input.spacing <= REPETITIVE_SPACING, ..input.conditions },
        plies_share_load: false,
        limits: input.limits,
    }
}

/// A bearing shorter than this is not worked; whether it is long enough by the code is said apart.
const LEAST_SEAT: Length = Length::from_inches(0.5);

/// Pull in a tie so high over the plate, under a load a foot of level run on both rafters: moments about the ridge,
/// `w L² / (8 (h − h_t))`. The overhang would lessen it, and is left out.
fn pull(input: &RafterInput, load: LineLoad, tie_height: Length) -> Force {
    let arm = input.height() - tie_height;
    load * input.run * (input.run / arm) / 2.0
}

/// The thrust; none where the ridge carries.
fn thrust(input: &RafterInput) -> Option<Result<Thrust, OutsideTable>> {
    let tie_height = match input.ties {
        Ties::None => return None,
        Ties::AtPlate => Length::ZERO,
        Ties::Raised(height) => height,
    };
    let times = match r802_4::nails_times(input.tie_share()) {
        Ok(times) => times,
        Err(outside) => return Some(Err(outside)),
    };
    let of = |combination: Combination| {
        let load = GRAVITY
            .into_iter()
            .map(|case| input.on_a_pair(case) * combination.factor(case.of_combination()))
            .fold(LineLoad::ZERO, |sum, one| sum + one);
        let duration = loads::combination::load_duration(combination.shortest_case());
        (combination, duration, pull(input, load, tie_height))
    };
    let felt = [Combination::Dead, Combination::DeadRoofLive, Combination::DeadSnow].map(of);
    let nails = |pull: Force, duration: LoadDuration| pull / (input.heel_nail * duration.factor().value);
    let most = felt.into_iter().reduce(|a, b| if nails(b.2, b.1) > nails(a.2, a.1) { b } else { a });
    most.map(|(combination, duration, tie)| {
        let by_table = |load| r802_4::heel_nails(input.pitch.rise_in_twelve(), input.spacing, input.run * 2.0, load);
        let table = match (by_table(HeelLoad::Snow(input.ground_snow)), by_table(HeelLoad::RoofLive)) {
            (Ok(snow), Ok(live)) => Some(whole(f64::from(snow.max(live)) * times)),
            _ => None,
        };
        Ok(Thrust {
            tie,
            combination,
            duration,
            nails: whole(nails(tie, duration)).max(r802_4::FEWEST_HEEL_NAILS),
            table_nails: table,
        })
    })
}

/// The next whole number; a count worked to a whole one is not raised by rounding.
fn whole(count: Ratio) -> u32 {
    let count = count - 1e-9;
    (0..=10_000).find(|&number| f64::from(number) >= count).unwrap_or(u32::MAX)
}

/// What a rafter is judged by besides bending, shear, bearing and sag.
fn seat_and_thrust(
    piece: &Piece,
    input: &RafterInput,
    flexure_input: &FlexureInput,
    analysis: &Analysis,
) -> Result<Vec<Traced>, String> {
    let mut found = seat_checks(piece, input, flexure_input, analysis)?;
    found.extend(thrust_check(piece, input, analysis)?);
    Ok(found)
}

/// The seat cut as a notch in the bottom edge at a bearing.
fn seat_checks(
    piece: &Piece,
    input: &RafterInput,
    flexure_input: &FlexureInput,
    analysis: &Analysis,
) -> Result<Vec<Traced>, String> {
    let depth = input.seat * input.angle().sin();
    if depth <= Length::ZERO {
        return Ok(Vec::new());
    }
    let tail = input.overhang / input.angle().cos();
    let cut = Cut::Notch { at: tail, length: Length::ZERO, depth, edge: Edge::Bottom, at_end: true };
    at_cut(piece, flexure_input, analysis, &cut)
}

/// Bending together with the thrust that runs up the rafter.
fn thrust_check(piece: &Piece, input: &RafterInput, analysis: &Analysis) -> Result<Vec<Traced>, String> {
    let tie_height = match input.ties {
        Ties::None => return Ok(Vec::new()),
        Ties::AtPlate => Length::ZERO,
        Ties::Raised(height) => height,
    };
    let Some(member) = piece.member() else { return Ok(Vec::new()) };
    let conditions = Conditions { repetitive: input.spacing <= REPETITIVE_SPACING, ..input.conditions };
    let section = member.section();
    let angle = input.angle();
    let supported = input.purlin.map_or(input.run, |purlin| purlin.max(input.run - purlin)) / angle.cos();
    let slenderness = chapter_3::column_slenderness_ratio(supported, section.depth, ColumnStage::InService)
        .map_err(|outside| outside.to_string())?
        .value;
    let basis = member.design_basis(&conditions).map_err(|problem| problem.to_string())?;
    // Of the durations that the loads have; what makes a column impossible is the same for all of them.
    let lasts = |duration: LoadDuration| analysis.ways().any(|way| way.duration() == duration);
    let column = |duration: LoadDuration| {
        lasts(duration).then(|| Column::of(&basis.stresses(duration), slenderness)).transpose()
    };
    let columns: Vec<Option<Column>> = LoadDuration::ALL.into_iter().map(column).collect::<Result<_, _>>()?;
    let mut worst: Option<Traced> = None;
    for way in analysis.ways() {
        let load = GRAVITY
            .into_iter()
            .map(|case| input.on_a_pair(case) * way.factors()[case as usize])
            .fold(LineLoad::ZERO, |sum, one| sum + one);
        // Half-way up, where it bends most: the pull of the tie, and what has not come off at the plate yet.
        let along = pull(input, load, tie_height) * angle.cos() + load * (input.run / 2.0) * angle.sin();
        let Some(column) = &columns[way.duration() as usize] else { continue };
        let share = |moment| column.interaction(along / section.area, moment / section.section_modulus_strong);
        // More bending never uses less, so what cannot use more is not worked.
        if worst.is_some_and(|held| share(way.moment_bound()) < held.check.share) {
            continue;
        }
        let moment = way
            .largest_moment()
            .ok_or("The results are too large to compute. Check the units of lengths and loads.")?;
        let check = Check::of_share(Limit::Thrust, share(moment.value), way.combination());
        if worst.is_none_or(|held| check.share > held.check.share) {
            worst = Some(Traced { check, at: moment.at, way: way.index });
        }
    }
    Ok(worst.into_iter().collect())
}

/// A rafter as a column held along its weak axis, for loads of one duration.
struct Column {
    fb_star: Stress,
    /// Compression that it carries without bending.
    fc: Stress,
    /// Compression at which it buckles.
    critical: Stress,
}

impl Column {
    fn of(strength: &AdjustedStresses, slenderness: Ratio) -> Result<Self, String> {
        let Some(fc_star) = strength.fc_star else {
            return Err("No published strength along the grain is held for this size.".to_owned());
        };
        let critical =
            chapter_3::column_critical_stress(strength.e_min, slenderness).map_err(|out| out.to_string())?.value;
        let stability = chapter_3::column_stability_factor(critical, fc_star, ColumnMaterial::Sawn)
            .map_err(|out| out.to_string())?
            .value;
        Ok(Self { fb_star: strength.fb_star, fc: fc_star * stability, critical })
    }

    /// The share used by compression and bending together, NDS 2018 3.9.2.
    fn interaction(&self, fc: Stress, fb: Stress) -> Ratio {
        if fc >= self.critical {
            return BUCKLES;
        }
        let axial = fc / self.fc;
        axial * axial + fb / self.fb_star / (1.0 - fc / self.critical)
    }
}

/// Share given to a member that buckles: past the critical stress the equation has no meaning.
const BUCKLES: Ratio = 99.0;

/// The seat cut of a piece.
fn seat(input: &RafterInput, piece: &Piece) -> SeatCut {
    let angle = input.angle();
    let depth = input.seat * angle.sin();
    let allowed = piece.depth() / 4.0;
    let longest = if angle.sin() > 0.0 { allowed / angle.sin() } else { Length::from_feet(8.0) };
    SeatCut {
        depth,
        allowed,
        longest_seat: longest.rounded(measure::Denominator::Sixteenth, measure::Rounding::Down),
        left: piece.depth() - depth,
        height_above_plate: piece.depth() / angle.cos() - input.seat * angle.tan(),
    }
}

/// The longest level run that a piece carries with the same ties in share of the height, no purlin and this overhang.
fn longest(input: &RafterInput, judged: &Tried) -> Option<(Length, Limit)> {
    let (share, piece) = (input.tie_share(), &judged.piece);
    let as_judged = if input.purlin.is_none() { judged.governing() } else { None };
    longest_span(input.run, as_judged.map(|check| (check.share, check.limit)), |run| {
        let mut one = RafterInput { run, purlin: None, ..input.clone() };
        if matches!(input.ties, Ties::Raised(_)) {
            one.ties = Ties::Raised(one.height() * share);
        }
        let flexure_input = flexure(&one);
        let analysis = Analysis::of(&flexure_input).ok()?;
        let more = |piece: &Piece, analysis: &Analysis| -> Result<Vec<Traced>, String> {
            let mut found = seat_checks(piece, &one, &flexure_input, analysis)?;
            // A run too long to be a column at all is too long.
            found.extend(thrust_check(piece, &one, analysis).unwrap_or_else(|_| vec![too_long()]));
            Ok(found)
        };
        let tried = judge_governing(piece.clone(), &flexure_input, &analysis, more);
        tried.governing().map(|governing| (governing.share, governing.limit))
    })
}

const fn too_long() -> Traced {
    Traced { check: Check::of_share(Limit::Slenderness, BUCKLES, Combination::Dead), at: Length::ZERO, way: 0 }
}

/// The code's span table, and what is left of its span where the tie is raised.
fn table(input: &RafterInput, piece: &Piece) -> Result<(TableBeside, Ratio), String> {
    let Some(Product::Sawn(sawn)) = piece.member().map(Member::product) else {
        return Err("The code's tables are for single sawn rafters.".to_owned());
    };
    if input.purlin.is_some() {
        return Err("The tables are read for each span between purlin and wall, by hand.".to_owned());
    }
    let table = match (input.ground_snow.psf(), input.ceiling_on_rafters) {
        (ground, false) if ground > 30.0 && ground <= 50.0 => SpanTable::Rafters50,
        (ground, false) if ground > 50.0 && ground <= 70.0 => SpanTable::Rafters70,
        (0.0, true) => SpanTable::RaftersRoofLiveCeiling,
        (ground, _) if ground > 70.0 => {
            return Err(
                "The code's rafter tables end at 70 psf of ground snow. An engineer designs the rafters.".to_owned()
            );
        }
        _ => {
            return Err(
                "The table of this snow and ceiling is not held here: those for 50 and 70 psf without a ceiling on the \
                 rafters are, and the one for roof live load with a ceiling."
                    .to_owned(),
            );
        }
    };
    let dead = if input.loads.dead.psf() <= 10.0 { AreaLoad::from_psf(10.0) } else { AreaLoad::from_psf(20.0) };
    if input.loads.dead.psf() > 20.0 {
        return Err("The tables are for 10 and 20 psf of dead load.".to_owned());
    }
    if ![12.0, 16.0, 19.2, 24.0].iter().any(|spacing| (input.spacing.inches() - spacing).abs() < 0.01) {
        return Err(
            "The tables are for 12, 16, 19.2 and 24 in. A spacing between two takes the wider one's span.".to_owned()
        );
    }
    let left = r802_4::span_left(input.tie_share()).map_err(|outside| outside.to_string())?;
    let Some(member) = piece.member() else { return Err(String::new()) };
    let row = printed_row(table, dead, (input.species, input.grade), input.spacing);
    let printed = row.and_then(|row| printed_span(row, sawn.size.nominal()));
    let model = model_span(&SpanModel::of(table, dead), member, input.conditions, input.spacing)
        .map_err(|problem| problem.to_string())?;
    Ok((TableBeside { table, row, printed, model }, left))
}
