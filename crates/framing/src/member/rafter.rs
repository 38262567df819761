//! A rafter, read and answered.

use fastening::{Joint, Nail, NailKind, SideMember, Wood, lateral_value};
use lumber::Species;
use lumber::candidates::joist_candidates;
use measure::{Force, Length};
use members::flexure::{Held, Piece};
use members::rafter::{Blocking, RafterAnswer, RafterInput, Thrust, Ties, blocking_needed, check_rafter};
use members::working::{Basis, Part, figure};
use standards::irc_2021::r502_6;
use standards::irc_2021::r802_4;
use standards::irc_2021::r802_11::{TOE_NAIL_LIMIT, TOE_NAILS};
use standards::{Source, Status};

use super::read::{chosen, limits, psf, wood};
use super::ridge;
use super::roof::{Roof, roof};
use super::say::{
    NOTHING_CARRIES, cautions, down, fact, force_fact, length_fact, of_flexure, pounds, rule, support, unworked, up,
};
use crate::quick::reply::{Drawn, DrawnRafter, QuickReply, RuleReply};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "rafter_run",
    "roof_pitch",
    "rafter_spacing",
    "eave_overhang",
    "ties",
    "tie_height",
    "ridge_spans",
    "seat_cut",
    "purlin_at",
    "blocked_every",
    "ceiling_on_rafters",
    "roof_dead",
    "ceiling_dead",
    "roof_live",
    "ground_snow",
    "roof_snow",
    "roof_kind",
    "house_width",
    "wind_speed",
    "exposure",
    "enclosure",
    "near_corner",
    "mean_roof_height",
    "species",
    "grade",
    "service",
    "incised",
    "drawn_size",
    "ridge_thickness",
    "ridge_depth",
    "sag_limit",
    "total_sag_limit",
    "found_size",
    "found_spacing",
    "found_grade",
    "found_bearing",
];

/// What it rests on.
const USED: &[&str] = &[
    "roof_pitch",
    "rafter_spacing",
    "eave_overhang",
    "seat_cut",
    "ceiling_on_rafters",
    "roof_dead",
    "roof_live",
    "ground_snow",
    "wind_speed",
    "exposure",
    "near_corner",
    "house_width",
    "species",
    "grade",
    "ridge_thickness",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (input, roof) = input(reading)?;
    let ridge = match input.ties {
        Ties::None => Some(ridge::under_rafters(reading, input.run, input.ceiling_on_rafters)?),
        _ => None,
    };
    let reading = &*reading;
    let mut about = About::of(reading, USED);
    let (usual, why) = if input.ceiling_on_rafters {
        ((240.0, 180.0), "a ceiling of board on the rafters, IRC Table R301.7 and IBC Table 1604.3")
    } else {
        ((180.0, 120.0), "no ceiling on the rafters, IRC Table R301.7 and IBC Table 1604.3")
    };
    let input = RafterInput { limits: limits(reading, &mut about, usual, why), ..input };
    if reading.number("rafter_run").is_none() {
        about.assume("rafter_run", &format!("Run: {} (half of the house).", words::length(input.run)));
    }
    if reading.word("ties").is_none() {
        about.assume("ties", "Feet kept together by: ties at the plate (hand-cut roof).");
        about.ask("ties", "What keeps the rafters' feet together: joists or ties at the plate, ties above it, or a ridge that carries?");
    }
    let blocking = blocking_needed(&input);
    let input = match blocking {
        Some(ref blocking) if is_ours_to_block(&input, reading) => {
            RafterInput { bottom_held: Held::Every(blocking.apart), ..input }
        }
        _ => input,
    };
    let answer = match check_rafter(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    let mut reply = of_flexure(&answer.flexure, (input.species, input.grade));
    let cosine = input.angle().cos();
    reply.supports = answer.flexure.forces.iter().map(|force| support(force, cosine)).collect();
    facts(&mut reply, reading, &input, &answer);
    reply.by_code = by_code(&input, &answer);
    reply.forbidden =
        reply.by_code.iter().any(|rule| matches!(rule.heading.as_str(), SEAT | TIES) && rule.holds == Some(false));
    reply.needs.extend(ridge);
    to_do(&mut reply, &input, &answer);
    if let Some(blocking) = blocking {
        say_blocking(&mut reply, &mut about, &blocking, is_ours_to_block(&input, reading));
    }
    roof.say(&mut about, reading);
    says(&mut about, &input);
    about.part(roof.part());
    if let Some(Ok(thrust)) = &answer.thrust {
        about.part(thrust_part(&input, thrust));
    }
    answer.flexure.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Rafter(drawn(reading, &input, &answer, &roof));
    reply.about = about.finish();
    Some(reply)
}

fn input(reading: &mut Reading) -> Option<(RafterInput, Roof)> {
    let (species, grade, conditions) = wood(reading)?;
    let tried = joist_candidates(species, grade).map(Piece::Lumber);
    let chosen = chosen(reading, "drawn_size", tried, (species, grade));
    let house = reading.length("house_width")?;
    let run = reading.length("rafter_run").unwrap_or(house / 2.0);
    let spacing = reading.length("rafter_spacing")?;
    let ceiling = reading.word("ceiling_on_rafters")? == "yes";
    let roof = roof(reading, run, spacing, ceiling)?;
    if roof.pitch.rise_in_twelve() <= 0.0 {
        reading.refuse("roof_pitch", "A flat roof was given; a rafter has a pitch. Work it as a joist.".to_owned());
        return None;
    }
    let ties = ties(reading, run * roof.pitch.angle().tan())?;
    let purlin = reading.length("purlin_at");
    if purlin.is_some_and(|purlin| purlin >= run) {
        let run = words::length(run);
        reading.refuse(
            "purlin_at",
            format!("It is past the ridge: the run is {run}. Measure level, from the outside of the plate."),
        );
        return None;
    }
    let blocked = match reading.length("blocked_every") {
        None => Held::AtSupports,
        Some(apart) if apart <= Length::ZERO => Held::Along,
        Some(apart) => Held::Every(apart),
    };
    let input = RafterInput {
        run,
        pitch: roof.pitch,
        spacing,
        overhang: reading.length("eave_overhang")?,
        purlin,
        ties,
        seat: reading.length("seat_cut")?,
        loads: roof.loads,
        ground_snow: psf(reading, "ground_snow")?,
        ceiling_on_rafters: ceiling,
        bottom_held: if ceiling { Held::Along } else { blocked },
        heel_nail: heel_nail(species),
        species,
        grade,
        conditions,
        limits: members::check::DeflectionLimits { live: 180.0, total: 120.0 },
        chosen,
    };
    Some((input, roof))
}

fn ties(reading: &mut Reading, height: Length) -> Option<Ties> {
    match reading.word("ties") {
        Some("ridge") => Some(Ties::None),
        Some("raised") => {
            let Some(tie) = reading.length("tie_height") else {
                reading.refuse("tie_height", "Nothing was typed; say how high over the plate the ties are.".to_owned());
                return None;
            };
            if tie >= height {
                let height = words::length(height);
                reading.refuse(
                    "tie_height",
                    format!("It is above the ridge, which is {height} over the plate. Measure from the plate."),
                );
                return None;
            }
            Some(if tie > Length::ZERO { Ties::Raised(tie) } else { Ties::AtPlate })
        }
        _ => Some(Ties::AtPlate),
    }
}

/// A 16d common nail through a 2x into this wood, before load duration.
fn heel_nail(species: Species) -> Force {
    let wood = Wood::Lumber(species);
    let joint = Joint::face_nailed(SideMember::wood(wood, Length::from_inches(1.5)), wood);
    let nail = Nail::of_size(NailKind::Common, 16);
    let value = nail.and_then(|nail| lateral_value(nail, &joint).ok()).map(|value| value.adjusted);
    // The table's own nail, where none can be worked.
    value.unwrap_or(Force::from_pounds(r802_4::HEEL_NAIL_POUNDS))
}

fn facts(reply: &mut QuickReply, reading: &Reading, input: &RafterInput, answer: &RafterAnswer) {
    if let Some((longest, limit)) = answer.longest {
        let mut fact = length_fact("longest_run_in", format!("longest level run, by {}", limit.words()), longest);
        fact.written = down(longest);
        reply.facts.push(fact);
    }
    if let Some(Ok(thrust)) = &answer.thrust {
        reply.facts.push(force_fact("tie_lb", format!("pull in each tie, {}", thrust.combination.name()), thrust.tie));
        let nails = f64::from(thrust.nails);
        reply.facts.push(fact("heel_nails", "16d commons at each heel", nails, figure(nails)));
    }
    if answer.lift > Force::ZERO {
        reply.facts.push(force_fact("lift_lb", "the tie at the plate holds down", answer.lift));
    }
    let cosine = input.angle().cos();
    let thickness = reading.length("ridge_thickness").unwrap_or_default();
    let shortened = thickness / 2.0 / cosine;
    let line = input.run / cosine;
    reply.facts.push(length_fact("line_length_in", "line length, plate to middle of the ridge", line));
    reply.facts.push(length_fact("plumb_cut_length_in", "plate to the plumb cut at the ridge", line - shortened));
    reply.facts.push(length_fact("rise_in", "rise of its line", input.height()));
    let seat = &answer.seat;
    reply.facts.push(length_fact("seat_depth_in", "depth of the seat cut, square to the rafter", seat.depth));
    let mut longest_seat = length_fact("longest_seat_in", "longest level seat", seat.longest_seat);
    longest_seat.written = down(seat.longest_seat);
    reply.facts.push(longest_seat);
    reply.facts.push(length_fact("height_above_plate_in", "height above plate", seat.height_above_plate));
    let ridge_top = (input.run - thickness / 2.0) * input.angle().tan() + seat.height_above_plate;
    reply.facts.push(length_fact("ridge_top_in", "top of the ridge over the plate", ridge_top));
    let depth = reading.length("ridge_depth").unwrap_or(answer.cut_end);
    reply.facts.push(length_fact("ridge_post_in", "post under the ridge, from the plate", ridge_top - depth));
    reply.facts.push(length_fact("cut_end_in", "cut end of the rafter: the ridge is no less deep", answer.cut_end));
}

const SEAT: &str = "Seat cut";
const TIES: &str = "Ties";

fn by_code(input: &RafterInput, answer: &RafterAnswer) -> Vec<RuleReply> {
    let mut rules = vec![span_rule(input, answer), seat_rule(input, answer)];
    rules.extend(tail_rule(input, answer));
    rules.push(tie_rule(input, answer));
    let says = vec![
        format!("At least 2 in nominal, and as deep as the cut end of the rafter: {}.", up(answer.cut_end)),
        format!("{}.", words::source(r802_4::DEPTH_OF_RIDGE_HIP_VALLEY)),
        "Read across the board and plumb it is the same for a level ridge. This is no check of strength.".to_owned(),
    ];
    rules.push(rule("Depth of the ridge", None, up(answer.cut_end), says));
    if answer.lift > Force::ZERO {
        let toe = answer.lift <= TOE_NAIL_LIMIT;
        let says = vec![
            format!(
                "Toe nails may hold {} at the most; this rafter lifts {}.",
                pounds(TOE_NAIL_LIMIT),
                pounds(answer.lift)
            ),
            format!("{}.", words::source(TOE_NAILS)),
        ];
        rules.push(rule("Held to the plate", Some(toe), pounds(answer.lift), says));
    }
    rules
}

fn span_rule(input: &RafterInput, answer: &RafterAnswer) -> RuleReply {
    match &answer.table {
        Err(why) => rule("Span table", None, "not covered", vec![why.clone()]),
        Ok((table, left)) => {
            let status = table.row.map_or(Status::Computed, |row| row.status);
            let source = words::source(table.table.source(status));
            let Some(allowed) = table.allows() else {
                return rule(
                    "Span table",
                    Some(input.run <= members::span_table::LONGEST),
                    "over 26'",
                    vec![format!("{source}.")],
                );
            };
            let allowed = allowed * *left;
            let mut says = vec![format!(
                "{} goes {} level by the table; the run is {}.",
                answer.flexure.about().piece.name(),
                down(allowed),
                words::length(input.run)
            )];
            if *left < 1.0 {
                says.push(format!(
                    "That is {left:.2} of its span, for ties above the plate. {}.",
                    words::source(r802_4::SPAN_LEFT)
                ));
            }
            if table.printed.is_none() {
                says.push("The cell was not read: it is made anew by the table's own rule.".to_owned());
            }
            says.push(format!("{source}. It puts the ground's snow on the roof, and works the sag on the level: the same rafter sags a little more along its slope."));
            rule("Span table", Some(input.run <= allowed), down(allowed), says)
        }
    }
}

fn seat_rule(input: &RafterInput, answer: &RafterAnswer) -> RuleReply {
    let seat = &answer.seat;
    let (deep, short) = (seat.depth > seat.allowed, input.seat < r502_6::ON_WOOD);
    let mut says = vec![
        format!(
            "{} deep, square to the rafter; a quarter of its depth is {}.",
            words::length(seat.depth),
            down(seat.allowed)
        ),
        format!("The longest level seat is {}.", down(seat.longest_seat)),
        format!("{}; “a third”, or “leave two thirds”, is not the rule.", words::source(r802_4::SEAT_CUT)),
    ];
    if short {
        says.push(format!(
            "It bears less than {} on the plate. {}.",
            words::length(r502_6::ON_WOOD),
            words::source(r802_4::RAFTER_BEARING)
        ));
    }
    rule(SEAT, Some(!deep && !short), words::length(seat.depth), says)
}

/// The rule for tails, where a seat is too deep by the other or the overhang is long.
fn tail_rule(input: &RafterInput, answer: &RafterAnswer) -> Option<RuleReply> {
    if input.overhang <= Length::ZERO {
        return None;
    }
    let left = answer.seat.left;
    let (later, earlier) = (left >= r802_4::TAIL_LEFT_LATER, left >= r802_4::TAIL_LEFT_EARLIER);
    let short = input.overhang <= r802_4::TAIL_OVERHANG;
    let holds = match (short, later, earlier) {
        (true, true, true) => Some(true),
        (true, true, false) => None,
        _ => Some(false),
    };
    let mut says = vec![format!(
        "{} of wood is left over the seat, and the overhang is {}; a tail to {} keeps 3-1/2\" in later texts, 4\" in earlier ones.",
        words::length(left),
        words::length(input.overhang),
        words::length(r802_4::TAIL_OVERHANG)
    )];
    if holds.is_none() {
        says.push("It depends on the edition: ask the official.".to_owned());
    }
    says.push(format!("{}.", words::source(r802_4::TAIL)));
    Some(rule("Tail", holds, words::length(left), says))
}

fn tie_rule(input: &RafterInput, answer: &RafterAnswer) -> RuleReply {
    match &answer.thrust {
        None => {
            let source = words::source(r802_4::RIDGE_BEAM);
            let says = vec!["Nothing keeps the walls from spreading: the ridge must be a beam on posts that carry down to the footing.".to_owned(), format!("{source}.")];
            rule(TIES, None, "none: the ridge carries", says)
        }
        Some(Err(outside)) => rule(TIES, Some(false), "too high", vec![outside.to_string()]),
        Some(Ok(thrust)) => {
            let mut says =
                vec![format!("{} 16d commons at each heel by the pull of {}.", thrust.nails, pounds(thrust.tie))];
            match thrust.table_nails {
                Some(nails) => {
                    says.push(format!("{nails} by the code's table. {}.", words::source(r802_4::HEEL_JOINT)))
                }
                None => says.push("The code's table of heel joints does not cover this roof.".to_owned()),
            }
            says.push(format!(
                "Ties no more than {} apart, in the lower third. {}.",
                words::length(r802_4::TIE_SPACING),
                words::source(r802_4::RAFTER_TIES)
            ));
            if input.spacing > r802_4::TIE_SPACING {
                says.push("The rafters are farther apart than ties may be.".to_owned());
            }
            says.push(format!(
                "Collar ties, or straps over the ridge, every {} against wind. {}.",
                words::length(r802_4::COLLAR_TIE_SPACING),
                words::source(r802_4::COLLAR_TIES)
            ));
            rule(TIES, None, format!("{} nails a heel", thrust.nails.max(thrust.table_nails.unwrap_or(0))), says)
        }
    }
}

fn to_do(reply: &mut QuickReply, input: &RafterInput, answer: &RafterAnswer) {
    if let Some(Err(outside)) = &answer.thrust {
        reply.action.insert(0, outside.next_step.to_owned());
    }
    if answer.seat.depth > answer.seat.allowed {
        reply.action.insert(
            0,
            format!(
                "The seat is too deep: make it {} long at the most, or take a deeper rafter.",
                down(answer.seat.longest_seat)
            ),
        );
    }
    if answer.lift > Force::ZERO {
        reply.action.push(format!(
            "Tie each rafter to the wall for {}, and carry it on down to the footing.",
            pounds(answer.lift)
        ));
    }
    if let Some(ridge) = reply.needs.first() {
        reply
            .action
            .push(format!("Without ties the ridge is a beam: {} on its posts, down to footings.", ridge.figure));
    }
    if input.pitch.rise_in_twelve() < r802_4::RIDGE_BEAM_UNDER && !matches!(input.ties, Ties::None) {
        reply.action.push(format!(
            "Under 3 in 12 the code asks for a ridge that carries. {}.",
            words::source(r802_4::RIDGE_BEAM)
        ));
    }
}

/// Whether blocking may be taken for granted: nothing was said of it, and no size is drawn that would have to do without.
fn is_ours_to_block(input: &RafterInput, reading: &Reading) -> bool {
    input.chosen.is_none() && reading.length("blocked_every").is_none()
}

fn say_blocking(reply: &mut QuickReply, about: &mut About<'_>, blocking: &Blocking, is_assumed: bool) {
    let apart = down(blocking.apart);
    if is_assumed {
        about.assume("blocked_every", &format!("Bottom edges held every {apart}: by blocking."));
        reply.action.insert(
            0,
            format!(
                "Block between the rafters every {apart} along the slope: lifted by the wind, their bottom edges roll, \
                 and held at the ends alone no size here carries it."
            ),
        );
    } else {
        let size = blocking.piece.name();
        let says = format!(
            "Blocked every {apart} along the slope, {size} carries it: lifted by the wind, its bottom edge rolls."
        );
        reply.action.retain(|says| !says.starts_with(NOTHING_CARRIES));
        reply.action.push(says);
    }
}

fn says(about: &mut About<'_>, input: &RafterInput) {
    cautions(about);
    about.say("The span is level, never along the slope. Gravity is worked along the rafter's own slope: it sags a little more than a table on the level says.");
    if !matches!(input.ties, Ties::None) {
        about.say("The rafters come in pairs: the pull in the ties is worked for both sides loaded alike. Collar ties high up do not take it.");
        about.say("A ridge that is set at the plain rise is too low: the rafter's top stands over its line by the height above plate.");
    }
    about.caution("Brace the first pairs before the next go up: a roof half framed goes over in a gust.");
}

fn thrust_part(input: &RafterInput, thrust: &Thrust) -> Part {
    let mut part = Part::new("Pull in the ties");
    let height = input.height();
    part.step("h", "plate to ridge", "run × pitch", (height.feet(), "ft"), Basis::Arithmetic);
    let tie = match input.ties {
        Ties::Raised(tie) => tie,
        _ => Length::ZERO,
    };
    if tie > Length::ZERO {
        part.step("h_t", "ties over the plate", words::length(tie), (tie.feet(), "ft"), Basis::Input("tie_height"));
    }
    let span = input.run * 2.0;
    let load = thrust.tie * 8.0 * ((height - tie) / span) / span;
    let expression =
        format!("{} × {}² / (8 × {})", figure(load.plf()), figure(span.feet()), figure((height - tie).feet()));
    part.step(
        "T",
        format!("moments about the ridge, {}", thrust.combination.name()),
        expression,
        (thrust.tie.pounds(), "lb"),
        Basis::Arithmetic,
    );
    let source = Source::new("NDS 2018", "§12.3.1", Status::LookedUp);
    part.step(
        "Z",
        "one 16d common nail in this wood, before load duration",
        "0.162 × 3-1/2 in, side 1-1/2 in",
        (input.heel_nail.pounds(), "lb"),
        Basis::Published(source),
    );
    let duration = thrust.duration.factor();
    let expression = format!(
        "{} / ({} × {})",
        figure(thrust.tie.pounds()),
        figure(input.heel_nail.pounds()),
        figure(duration.value)
    );
    part.step(
        "n",
        "nails at each heel, three at the least",
        expression,
        (f64::from(thrust.nails), ""),
        Basis::Published(duration.source),
    );
    part
}

fn drawn(reading: &Reading, input: &RafterInput, answer: &RafterAnswer, roof: &Roof) -> DrawnRafter {
    let thickness = reading.length("ridge_thickness").unwrap_or_default();
    let (down, up) = roof.arrows();
    DrawnRafter {
        run: input.run,
        rise_in_twelve: input.pitch.rise_in_twelve(),
        overhang: input.overhang,
        depth: answer.flexure.about().piece.depth(),
        seat: input.seat,
        tie: match input.ties {
            Ties::AtPlate => Some(Length::ZERO),
            Ties::Raised(height) => Some(height),
            Ties::None => None,
        },
        tie_pull: match &answer.thrust {
            Some(Ok(thrust)) => pounds(thrust.tie),
            _ => String::new(),
        },
        purlin: input.purlin,
        ridge: (reading.length("ridge_depth").unwrap_or(answer.cut_end), thickness),
        ridge_carries: matches!(input.ties, Ties::None),
        down,
        up,
    }
}
