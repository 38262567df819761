//! A joist of a floor or a ceiling, read and answered.

use lumber::candidates::joist_candidates;
use measure::{AreaLoad, Length, LineLoad};
use members::beam::Load;
use members::flexure::{Acting, Case, Cut, Edge, Piece};
use members::joist::{
    JoistAnswer, JoistInput, JoistOf, SQUASH_BLOCK_OVER, WallAcross, check_joist, needs_bridging, plain_cantilever,
};
use members::working::{Basis, Part, figure};
use standards::irc_2021::r502;
use standards::irc_2021::r502_6;
use standards::irc_2021::r502_8;
use standards::span_row::PrintedSpan;
use standards::wood_floor_frequency::{LEAST_HERTZ, RULE};

use super::read::{chosen, limits, plf, psf, sheet, wood};
use super::say::{cautions, down, drawn_beam, fact, force_fact, held_down, length_fact, of_flexure, rule, unworked};
use crate::quick::reply::{Drawn, QuickReply, RuleReply};
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "joist_span",
    "joist_of",
    "joist_spacing",
    "second_span",
    "cantilever",
    "floor_dead",
    "floor_live",
    "ceiling_dead",
    "attic_live",
    "wall_at",
    "wall_dead",
    "wall_live",
    "wall_roof_live",
    "wall_snow",
    "species",
    "grade",
    "service",
    "incised",
    "drawn_size",
    "bearing_length",
    "sag_limit",
    "total_sag_limit",
    "cut_kind",
    "cut_depth",
    "cut_at",
    "cut_length",
    "cut_edge",
    "cut_to_edge",
    "sheet_name",
    "sheet_depth",
    "sheet_flange",
    "sheet_moment",
    "sheet_shear",
    "sheet_ei",
    "sheet_k",
    "sheet_end_reaction",
    "sheet_interior_reaction",
    "sheet_weight",
    "found_size",
    "found_spacing",
    "found_grade",
    "found_bearing",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let input = input(reading)?;
    let of_floor = input.of == JoistOf::Floor;
    let used: &[&str] = if of_floor {
        &[
            "joist_span",
            "joist_of",
            "joist_spacing",
            "floor_dead",
            "floor_live",
            "species",
            "grade",
            "service",
            "incised",
            "bearing_length",
        ]
    } else {
        &[
            "joist_span",
            "joist_spacing",
            "ceiling_dead",
            "attic_live",
            "species",
            "grade",
            "service",
            "incised",
            "bearing_length",
        ]
    };
    let reading = &*reading;
    let mut about = About::of(reading, used);
    let why = if of_floor { "floors, IRC Table R301.7" } else { "ceilings of board, IRC Table R301.7" };
    let usual = if of_floor { (360.0, 240.0) } else { (240.0, 180.0) };
    let input = JoistInput { limits: limits(reading, &mut about, usual, why), ..input };
    let answer = match check_joist(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    let wood = (input.species, input.grade);
    let mut reply = of_flexure(&answer.flexure, wood);
    facts(&mut reply, &input, &answer);
    reply.by_code = by_code(&input, &answer);
    reply.forbidden = reply.by_code.iter().any(|rule| rule.heading == CUTS && rule.holds == Some(false));
    to_do(&mut reply, &input, &answer);
    says(&mut about, reading, &input, &answer);
    about.part(loads_part(&input));
    answer.flexure.working.iter().cloned().for_each(|part| about.part(part));
    about.part(lively_part(&input, &answer));
    let supports: Vec<Length> = answer.flexure.forces.iter().map(|force| force.at).collect();
    let length = supports.iter().copied().fold(Length::ZERO, Length::max) + input.cantilever.unwrap_or_default();
    let mut drawn = drawn_beam(&answer.flexure, (length, supports), drawn_loads(&input, length));
    drawn.cut = input.cut;
    reply.drawn = Drawn::Beam(drawn);
    reply.about = about.finish();
    Some(reply)
}

fn input(reading: &mut Reading) -> Option<JoistInput> {
    let (species, grade, conditions) = wood(reading)?;
    let of = if reading.word("joist_of")? == "ceiling" { JoistOf::Ceiling } else { JoistOf::Floor };
    let (dead, live) = match of {
        JoistOf::Floor => (psf(reading, "floor_dead")?, psf(reading, "floor_live")?),
        JoistOf::Ceiling => (psf(reading, "ceiling_dead")?, psf(reading, "attic_live")?),
    };
    let span = reading.length("joist_span")?;
    let second_span = reading.length("second_span");
    let cantilever = reading.length("cantilever");
    let sheet = sheet(reading);
    let tried = joist_candidates(species, grade).map(Piece::Lumber).chain(sheet.clone());
    let chosen = chosen(reading, "drawn_size", tried, (species, grade));
    let length = span + second_span.unwrap_or_default() + cantilever.unwrap_or_default();
    let wall = wall(reading, length, cantilever);
    let cut = cut(reading, length)?;
    Some(JoistInput {
        of,
        span,
        second_span,
        cantilever,
        spacing: reading.length("joist_spacing")?,
        bearing: reading.length("bearing_length")?,
        dead,
        live,
        live_acts_alone: of == JoistOf::Ceiling && live <= AreaLoad::from_psf(10.0),
        walls: wall.into_iter().collect(),
        species,
        grade,
        conditions,
        limits: members::check::DeflectionLimits { live: 360.0, total: 240.0 },
        sheet,
        chosen,
        cut,
    })
}

/// A wall across the joists, where any load of one was typed.
fn wall(reading: &mut Reading, length: Length, cantilever: Option<Length>) -> Option<WallAcross> {
    let loads: Vec<(Case, LineLoad)> = [
        (Case::Dead, "wall_dead"),
        (Case::Live, "wall_live"),
        (Case::RoofLive, "wall_roof_live"),
        (Case::Snow, "wall_snow"),
    ]
    .into_iter()
    .map(|(case, id)| (case, plf(reading, id)))
    .filter(|(_, load)| *load > LineLoad::ZERO)
    .collect();
    if loads.is_empty() {
        return None;
    }
    let at = reading.length("wall_at").or_else(|| cantilever.map(|_| length));
    match at {
        Some(at) if at <= length => Some(WallAcross { at, loads }),
        Some(at) => {
            let (at, length) = (words::length(at), words::length(length));
            reading.refuse(
                "wall_at",
                format!("{at} was given; the joist is {length} long. Measure from its first bearing."),
            );
            None
        }
        None => {
            reading
                .refuse("wall_at", "Nothing was typed; say where the wall stands, from the first bearing.".to_owned());
            None
        }
    }
}

/// The cut; the outer none where something is wrong with it.
#[expect(clippy::option_option, reason = "no cut at all is not a cut that cannot be read")]
pub(super) fn cut(reading: &mut Reading, length: Length) -> Option<Option<Cut>> {
    let (Some(kind), Some(size)) = (reading.word("cut_kind").map(str::to_owned), reading.length("cut_depth")) else {
        return Some(None);
    };
    let Some(at) = reading.length("cut_at") else {
        reading.refuse(
            "cut_at",
            "Nothing was typed; say where the cut is, from the bearing's face. At the end: 0.".to_owned(),
        );
        return None;
    };
    if at > length {
        let (given, whole) = (words::length(at), words::length(length));
        reading.refuse("cut_at", format!("{given} was given; the member is {whole} long. Measure from its bearing."));
        return None;
    }
    if kind == "hole" {
        let Some(to_edge) = reading.length("cut_to_edge") else {
            reading.refuse(
                "cut_to_edge",
                "Nothing was typed; say how much wood is between the hole and the nearer edge.".to_owned(),
            );
            return None;
        };
        return Some(Some(Cut::Hole { at, diameter: size, to_edge }));
    }
    let edge = if reading.word("cut_edge")? == "top" { Edge::Top } else { Edge::Bottom };
    let at_end = at <= Length::from_inches(0.0625);
    let cut_length = reading.length("cut_length").unwrap_or_default();
    Some(Some(Cut::Notch { at, length: cut_length.min(length - at), depth: size, edge, at_end }))
}

fn facts(reply: &mut QuickReply, input: &JoistInput, answer: &JoistAnswer) {
    if let Some((longest, limit)) = answer.longest {
        let what = format!("longest clear span, by {}", limit.words());
        let mut fact = length_fact("longest_span_in", what, longest);
        fact.written = down(longest);
        reply.facts.push(fact);
    }
    let most = answer.flexure.forces.iter().map(|force| force.most).fold(measure::Force::ZERO, measure::Force::max);
    reply.facts.push(force_fact("hanger_lb", "a hanger, or the bearing, carries", most));
    let frequency = answer.frequency;
    if input.of == JoistOf::Floor {
        reply.facts.push(fact(
            "frequency_hz",
            "natural frequency of the bare floor",
            frequency,
            format!("{frequency:.1} a second"),
        ));
    }
    let depth = answer.flexure.about().piece.depth();
    reply.facts.push(length_fact(
        "squash_block_in",
        "squash block beside it, under a post or a bearing wall",
        depth + SQUASH_BLOCK_OVER,
    ));
}

/// The heading of the rule for cuts.
pub(super) const CUTS: &str = "Notches and holes";

fn by_code(input: &JoistInput, answer: &JoistAnswer) -> Vec<RuleReply> {
    let piece = &answer.flexure.about().piece;
    let mut rules = vec![span_rule(input, answer)];
    if let Some(cut) = &input.cut {
        rules.push(cut_rule(piece, cut, input.span));
    }
    let short = input.bearing < r502_6::ON_WOOD;
    let says = format!(
        "{} on wood or metal, {} on masonry or concrete. {}.",
        words::length(r502_6::ON_WOOD),
        words::length(r502_6::ON_MASONRY),
        words::source(r502_6::BEARING)
    );
    rules.push(rule("Bearing", Some(!short), words::length(input.bearing), vec![says]));
    if let Some(cantilever) = input.cantilever {
        rules.push(cantilever_rule(piece, cantilever, input));
    }
    if needs_bridging(piece) {
        let says = vec![
            format!(
                "Deeper than a 2x12: bridging, blocking or a strip across every {}.",
                words::length(r502::BRIDGING_SPACING)
            ),
            format!("{}.", words::source(r502::BRIDGING)),
        ];
        rules.push(rule("Bridging", None, "needed", says));
    }
    let says = vec![
        "Full-depth blocking, a rim, a band or a header at the ends.".to_owned(),
        format!("{}.", words::source(r502::ENDS_HELD)),
    ];
    rules.push(rule("Ends held", None, "against turning", says));
    if piece.member().is_none() {
        let says = vec![
            "Cuts, holes, bearing and blocks under loads follow the maker's papers.".to_owned(),
            format!("{}.", words::source(r502::BY_ITS_MAKER)),
        ];
        rules.push(rule("Engineered joist", None, "by its maker", says));
    }
    rules
}

fn span_rule(input: &JoistInput, answer: &JoistAnswer) -> RuleReply {
    match &answer.table {
        Err(why) => rule("Span table", None, "not covered", vec![why.clone()]),
        Ok(table) => {
            let status = table.row.map_or(standards::Status::Computed, |row| row.status);
            let source = words::source(table.table.source(status));
            let Some(allowed) = table.allows() else {
                return rule(
                    "Span table",
                    Some(input.span <= members::span_table::LONGEST),
                    "over 26'",
                    vec![format!("{source}.")],
                );
            };
            let mut says = vec![format!(
                "{} spans {} by the table; {} is asked.",
                answer.flexure.about().piece.name(),
                words::length(allowed),
                words::length(input.span)
            )];
            if table.printed.is_none() {
                says.push("The cell was not read: it is made anew by the table's own rule, which gives every cell that was read.".to_owned());
            }
            says.push(format!("{source}."));
            let calculation = answer.flexure.about().verdict().holds();
            let passes = input.span <= allowed;
            if passes && !calculation {
                says.push("The calculation says otherwise: it counts the bearing that is needed at each end, shear and total sag. The safer of the two is to be built.".to_owned());
            } else if !passes && calculation {
                says.push("The calculation allows more; the official may hold to the table.".to_owned());
            }
            if matches!(table.printed, Some(PrintedSpan::Of(_))) && input.spacing.inches() < 12.0 {
                says.push("The table's closest spacing is 12\".".to_owned());
            }
            rule("Span table", Some(passes), words::length(allowed), says)
        }
    }
}

fn cantilever_rule(piece: &Piece, cantilever: Length, input: &JoistInput) -> RuleReply {
    let source = words::source(r502::CANTILEVER);
    let back = input.second_span.unwrap_or(input.span);
    if !input.walls.is_empty() {
        let enough = back >= cantilever * r502::BACK_SPAN_TIMES;
        let says = vec![
            "With a wall and a roof on it the code has a table of its own, which is not held here; the calculation stands.".to_owned(),
            format!("A back span of three times the cantilever: {}; full-depth rim and blocking over the bearing.", words::length(cantilever * r502::BACK_SPAN_TIMES)),
            format!("{source}."),
        ];
        return rule("Cantilever", (!enough).then_some(false), words::length(cantilever), says);
    }
    let Some(allowed) = plain_cantilever(piece) else {
        return rule(
            "Cantilever",
            None,
            words::length(cantilever),
            vec!["An engineered joist's cantilever follows its maker's papers.".to_owned()],
        );
    };
    let says = vec![
        format!("Plain joists go out as far as they are deep by name: {}.", words::length(allowed)),
        format!("{source}."),
    ];
    rule("Cantilever", Some(cantilever <= allowed), words::length(allowed), says)
}

/// What the code says of a notch or a hole in a joist or a rafter.
pub(super) fn cut_rule(piece: &Piece, cut: &Cut, span: Length) -> RuleReply {
    use inspection::Seen;
    use inspection::cuts::{CutJoist, Face, JoistCut, JoistKind, Place, judge_cut_joist};
    let depth = piece.depth();
    let (kind, thickness) = match piece.member().map(lumber::Member::product) {
        Some(lumber::Product::Sawn(sawn)) => (JoistKind::SawnJoist, f64::from(sawn.size.nominal_thickness())),
        _ => (JoistKind::Engineered, 2.0),
    };
    let place = |at: Length, end: bool| {
        let share = at / span;
        if end {
            Place::End
        } else if (1.0 / 3.0..=2.0 / 3.0).contains(&share) {
            Place::MiddleThird
        } else {
            Place::OuterThird
        }
    };
    let (place, cut_of) = match *cut {
        Cut::Notch { at, length, depth, edge, at_end } => {
            let middle = at + length / 2.0;
            let face = if edge == Edge::Top { Face::Compression } else { Face::Tension };
            (place(middle, at_end), JoistCut::Notch { depth, length: Seen::Observed(length), face })
        }
        Cut::Hole { at, diameter, to_edge } => (
            place(at, false),
            JoistCut::Hole { diameter, to_edge: Seen::Observed(to_edge), to_next: Seen::Observed(None) },
        ),
    };
    let joist = CutJoist { kind, depth, nominal_thickness: Length::from_inches(thickness), place, cut: cut_of };
    let finding = judge_cut_joist(&joist);
    let holds = finding.verdict().holds();
    let mut says: Vec<String> = finding.checks.iter().map(found_beside_limit).collect();
    says.extend(
        finding.wrong.iter().map(|subject| format!("{}: not allowed here.", crate::walk::words::subject(*subject))),
    );
    if let Cut::Hole { diameter, to_edge, .. } = *cut
        && to_edge < r502_8::BESIDE_A_HOLE
    {
        let as_notch = to_edge + diameter;
        says.push(format!(
            "Counted as a notch it is {}; the deepest away from the ends is {}.",
            words::length(as_notch),
            down(r502_8::notch_depth_limit(depth))
        ));
    }
    if place == Place::End {
        says.push(format!("The deepest notch at an end is {}.", down(r502_8::end_notch_limit(depth))));
    }
    if !holds {
        says.push("Head it off, sister it over its full length with a bearing at each end, or build what the engineer draws. A short piece on its side is no cure.".to_owned());
    }
    says.push(format!("{}.", words::source(r502_8::SAWN_JOISTS)));
    rule(CUTS, Some(holds), if holds { "allowed" } else { "not allowed" }, says)
}

fn found_beside_limit(check: &inspection::Check) -> String {
    let shown = crate::walk::words::check(check, None);
    format!("{}: {} found, {}; {}.", shown.subject, shown.found, shown.limit, shown.verdict)
}

fn to_do(reply: &mut QuickReply, input: &JoistInput, answer: &JoistAnswer) {
    if reply.forbidden {
        reply.action.insert(
            0,
            "The code does not allow this cut. What is left of the wood is worked below; an engineer must agree to it."
                .to_owned(),
        );
    }
    reply.action.extend(held_down(&reply.supports, "it"));
    if input.of == JoistOf::Floor && answer.frequency < LEAST_HERTZ && answer.flexure.about().verdict().holds() {
        reply.action.push(format!(
            "It is strong enough, but lively: {:.1} a second, and people notice under {:.0}. A deeper joist, a closer spacing or a shorter span stiffens it.",
            answer.frequency, LEAST_HERTZ
        ));
    }
    if !answer.flexure.about().verdict().holds()
        && let Some((longest, _)) = answer.longest
        && input.second_span.is_none()
        && input.cantilever.is_none()
    {
        reply.action.push(format!("At this spacing {} spans {}.", reply.size, down(longest)));
    }
}

fn says(about: &mut About<'_>, reading: &Reading, input: &JoistInput, answer: &JoistAnswer) {
    cautions(about);
    about.say("Each joist carries its own strip. Doubling every second or third joist does not help the single ones: the panel does not share the load between them. An average spacing is the engineer's to allow.");
    about.say("Under every post, every stack of jacks and every bearing wall: blocks on end through the floor, down to bearing, seen before the ceiling goes on.");
    if input.of == JoistOf::Ceiling {
        about.say("Its top edge is held at its ends alone, unless a board or strips run across it.");
    }
    if input.of == JoistOf::Floor && answer.frequency < LEAST_HERTZ {
        about.say(format!("How lively a floor is, no code limits: {}.", words::source(RULE)));
    }
    let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Assumed);
    if assumed("joist_span") {
        about.ask("joist_span", "What is the clear span, face to face?");
    }
    if assumed("species") {
        about.ask("species", "What does the grade stamp say?");
    }
    if input.cut.is_some() {
        about.say("Away from its ends the standard gives no strength for a cut section: the figures are those of the wood that is left.");
    }
    about.caution("Bring no more than the drawing allows onto a floor that is not finished: a stack of board or block weighs as much as a crowd.");
}

fn loads_part(input: &JoistInput) -> Part {
    let mut part = Part::new("Load on each joist");
    let spacing = figure(input.spacing.inches());
    let (dead, live) = match input.of {
        JoistOf::Floor => ("floor_dead", "floor_live"),
        JoistOf::Ceiling => ("ceiling_dead", "attic_live"),
    };
    for (symbol, meaning, load, id) in
        [("D", "dead, the joists among it", input.dead, dead), ("L", "live", input.live, live)]
    {
        let expression = format!("{} psf × {spacing} in / 12", figure(load.psf()));
        part.step(symbol, meaning, expression, ((load * input.spacing).plf(), "plf"), Basis::Input(id));
    }
    part
}

fn lively_part(input: &JoistInput, answer: &JoistAnswer) -> Part {
    let mut part = Part::new("How lively it is");
    if input.of == JoistOf::Floor {
        let basis = Basis::Published(RULE);
        let meaning = format!("natural frequency of the bare floor; {} or more", figure(LEAST_HERTZ));
        part.step("f", meaning, "1.57 √(386 E I / (W L³)), 7 psf", (answer.frequency, "a second"), basis);
    }
    part
}

fn drawn_loads(input: &JoistInput, length: Length) -> Vec<Acting> {
    let along = |case, load: AreaLoad| Acting { case, load: Load::uniform(Length::ZERO, length, load * input.spacing) };
    let mut loads = vec![along(Case::Dead, input.dead), along(Case::Live, input.live)];
    for wall in &input.walls {
        loads.extend(
            wall.loads.iter().map(|(case, load)| Acting {
                case: *case,
                load: Load::point(wall.at.min(length), *load * input.spacing),
            }),
        );
    }
    loads
}
