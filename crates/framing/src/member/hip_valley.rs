//! A hip or a valley, read and answered.

use lumber::candidates::beam_candidates;
use measure::{Force, Length, Slope};
use members::carrying_beam::{CarryingBeam, check_beam};
use members::flexure::{Edges, Held, LoadedFrom, Piece};
use members::roof_beam::{Corner, DepthRule, HipValley};
use members::working::{Basis, Part, figure};
use standards::irc_2021::r802_4::DEPTH_OF_RIDGE_HIP_VALLEY;

use super::read::{LABEL_FIELDS, chosen, labelled, limits, sawn, wood};
use super::roof::{Roof, roof};
use super::say::{cautions, fact, force_fact, held_down, length_fact, of_flexure, rule, support, unworked, up};
use crate::quick::reply::{Drawn, DrawnCorner, QuickReply, RuleReply};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "hip_run",
    "corner",
    "roof_pitch",
    "other_pitch",
    "jack_size",
    "mid_post",
    "beam_bearing",
    "ceiling_on_rafters",
    "roof_dead",
    "ceiling_dead",
    "roof_live",
    "ground_snow",
    "roof_snow",
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
    "plies_share_load",
    "drawn_size",
    LABEL_FIELDS[0],
    LABEL_FIELDS[1],
    LABEL_FIELDS[2],
    LABEL_FIELDS[3],
    LABEL_FIELDS[4],
    LABEL_FIELDS[5],
    LABEL_FIELDS[6],
    LABEL_FIELDS[7],
    "sag_limit",
    "total_sag_limit",
    "found_size",
    "found_grade",
    "found_bearing",
];

const USED: &[&str] = &[
    "corner",
    "roof_pitch",
    "jack_size",
    "beam_bearing",
    "roof_dead",
    "roof_live",
    "ground_snow",
    "wind_speed",
    "exposure",
    "house_width",
    "species",
    "grade",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (species, grade, conditions) = wood(reading)?;
    let labelled = labelled(reading);
    let tried = beam_candidates(species, grade).map(Piece::Lumber).chain(labelled.clone());
    let chosen = chosen(reading, "drawn_size", tried, (species, grade));
    let jack = reading.word("jack_size")?.to_owned();
    let jack_depth = match sawn(&jack, (species, grade)) {
        Ok(member) => member.section().depth,
        Err(problem) => {
            reading.refuse("jack_size", problem);
            return None;
        }
    };
    let house = reading.length("house_width")?;
    let run = reading.length("hip_run").unwrap_or(house / 2.0);
    let (pitch, other_pitch) = pitches(reading)?;
    let corner = if reading.word("corner")? == "valley" { Corner::Valley } else { Corner::Hip };
    let shape = HipValley { corner, pitch, other_pitch, run };
    let (plan, length) = (shape.plan_length(), shape.true_length());
    let post = reading.length("mid_post");
    if post.is_some_and(|post| post >= plan) {
        let plan = words::length(plan);
        reading.refuse(
            "mid_post",
            format!("It is past the upper end: in plan the member is {plan} long. Measure from the lower corner."),
        );
        return None;
    }
    let reading = &*reading;
    let roof = roof(reading, length, shape.widest_strip(), reading.word("ceiling_on_rafters") == Some("yes"))?;
    let mut about = About::of(reading, USED);
    let limits =
        limits(reading, &mut about, (240.0, 180.0), "a roof with a ceiling, IRC Table R301.7 and IBC Table 1604.3");
    let cosine = shape.own_pitch().angle().cos();
    let spans = match post {
        Some(post) => vec![post / cosine, length - post / cosine],
        None => vec![length],
    };
    let input = CarryingBeam {
        spans,
        overhangs: (Length::ZERO, Length::ZERO),
        loads: shape.loads(&roof.loads),
        bearing: reading.length("beam_bearing")?,
        below: None,
        edges: Edges { top: Held::Along, bottom: Held::AtSupports },
        loaded_from: LoadedFrom::Sides,
        own_weight_share: cosine,
        room: None,
        breadth_room: None,
        species,
        grade,
        conditions,
        plies_share_load: reading.word("plies_share_load")? == "yes",
        limits,
        labelled,
        chosen,
    };
    let answer = match check_beam(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    let mut reply = of_flexure(&answer, (species, grade));
    reply.supports = answer.forces.iter().map(|force| support(force, cosine)).collect();
    facts(&mut reply, &shape);
    let depth = DepthRule::of(jack_depth, pitch, answer.about().piece.depth(), shape.own_pitch());
    reply.by_code.push(depth_rule(&depth, &jack, corner));
    if depth.holds() == (false, false) {
        reply.action.push(format!(
            "It is not as deep as the cut end of the {jack} that meets it: take one {} deep or deeper.",
            up(depth.needed)
        ));
    }
    reply.action.extend(held_down(&reply.supports, "it"));
    says(&mut about, reading, corner, &roof);
    if reading.length("hip_run").is_none() {
        about.assume("hip_run", &format!("Run of the commons: {} (half of the house).", words::length(run)));
    }
    about.part(roof.part());
    about.part(shape_part(&shape));
    answer.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Corner(drawn(&shape, &roof, post));
    reply.about = about.finish();
    Some(reply)
}

fn pitches(reading: &mut Reading) -> Option<(Slope, Slope)> {
    let one = reading.number("roof_pitch")?;
    let other = reading.number("other_pitch").unwrap_or(one);
    for (id, rise) in [("roof_pitch", one), ("other_pitch", other)] {
        if rise <= 0.0 {
            reading.refuse(id, "A flat roof was given; a hip or a valley has two pitches over nothing.".to_owned());
            return None;
        }
    }
    Some((Slope::from_rise_in_twelve(one), Slope::from_rise_in_twelve(other)))
}

fn facts(reply: &mut QuickReply, shape: &HipValley) {
    let (one, other) = (shape.plan_angle().degrees(), shape.other_plan_angle().degrees());
    let (plan, length) = shape.lengths_per_run();
    let degrees = |angle: f64| format!("{angle:.2}°");
    let pitch = |slope: Slope| format!("{} in 12", figure(slope.rise_in_twelve()));
    let to_one = format!("in plan, to the commons of the {} roof", pitch(shape.pitch));
    let to_other = format!("in plan, to the commons of the {} roof", pitch(shape.other_pitch));
    let own = shape.own_pitch();
    reply.facts.extend([
        length_fact("true_length_in", "its length, corner to ridge", shape.true_length()),
        length_fact("plan_length_in", "its length in plan", shape.plan_length()),
        fact("plan_angle_degrees", to_one, one, degrees(one)),
        fact("other_plan_angle_degrees", to_other, other, degrees(other)),
        fact(
            "own_slope_degrees",
            format!("its own slope, {:.3} in 12", own.rise_in_twelve()),
            own.angle().degrees(),
            degrees(own.angle().degrees()),
        ),
        fact("plan_per_run", "plan length a foot of the first roof's run", plan, format!("{plan:.4}")),
        fact("length_per_run", "true length a foot of the first roof's run", length, format!("{length:.4}")),
    ]);
    let heavy = if shape.corner == Corner::Hip { "upper" } else { "lower" };
    if let Some(most) = reply.supports.iter().map(|support| support.most_lb).reduce(f64::max) {
        reply.facts.push(force_fact(
            "post_lb",
            format!("heaviest support; its {heavy} end carries more roof"),
            Force::from_pounds(most),
        ));
    }
}

fn depth_rule(depth: &DepthRule, jack: &str, corner: Corner) -> RuleReply {
    let (across, plumb) = depth.holds();
    let holds = match (across, plumb) {
        (true, true) => Some(true),
        (false, false) => Some(false),
        _ => None,
    };
    let name = if corner == Corner::Hip { "hip" } else { "valley" };
    let mut says = vec![format!(
        "The cut end of a {jack} is {}; the {name} is {} across the board and {} plumb.",
        up(depth.needed),
        words::length(depth.across),
        words::length(depth.plumb)
    )];
    if holds.is_none() {
        says.push("Read plumb it is deep enough, read across the board it is not: ask the official which.".to_owned());
    }
    says.push("This is for full contact of the cut ends, not a check of strength.".to_owned());
    says.push(format!("{}.", words::source(DEPTH_OF_RIDGE_HIP_VALLEY)));
    rule("Depth", holds, up(depth.needed), says)
}

fn says(about: &mut About<'_>, reading: &Reading, corner: Corner, roof: &Roof) {
    cautions(about);
    match corner {
        Corner::Hip => about.say("Its load grows from nothing at the corner to the most at the ridge: the upper end carries two thirds. Both ends must be carried down."),
        Corner::Valley => about.say("Its load is the most at the inner corner and nothing at the ridge. Water and sliding snow gather in a valley: drifts there are more than is worked here. An engineer looks at a long one."),
    }
    about.say("Two plies that are bevelled to both roofs are nailed together before they are bevelled, and keep their full depth in the middle.");
    about.say("Each saw bevel of a cheek is the plan angle of its side, taken on the plumb face: the two sides differ where the pitches do.");
    roof.say(about, reading);
}

fn shape_part(shape: &HipValley) -> Part {
    let mut part = Part::new("Its shape");
    let (one, other) = (shape.pitch.rise_in_twelve(), shape.other_pitch.rise_in_twelve());
    let expression = format!("atan({} / {})", figure(one), figure(other));
    part.step(
        "α",
        "in plan, to the commons of the first roof",
        expression,
        (shape.plan_angle().degrees(), "degrees"),
        Basis::Arithmetic,
    );
    let expression = format!("{} × {} / √({}² + {}²)", figure(one), figure(other), figure(one), figure(other));
    part.step("", "its own rise in 12", expression, (shape.own_pitch().rise_in_twelve(), "in"), Basis::Arithmetic);
    part.step("", "in plan", "run / cos α", (shape.plan_length().feet(), "ft"), Basis::Arithmetic);
    part.step("L", "its length", "in plan / cos of its slope", (shape.true_length().feet(), "ft"), Basis::Arithmetic);
    part.step(
        "",
        "roof that it carries at its heavy end, half of each jack",
        "(run sin α + other run cos α) / 2",
        (shape.widest_strip().feet(), "ft"),
        Basis::Arithmetic,
    );
    part
}

fn drawn(shape: &HipValley, roof: &Roof, post: Option<Length>) -> DrawnCorner {
    let most = roof.loads.dead + roof.loads.snow.max(roof.loads.roof_live);
    let other_run = shape.run * (shape.pitch.rise_in_twelve() / shape.other_pitch.rise_in_twelve());
    DrawnCorner {
        is_valley: shape.corner == Corner::Valley,
        runs: (shape.run, other_run),
        angles: (
            format!("{:.1}°", shape.plan_angle().degrees()),
            format!("{:.1}°", shape.other_plan_angle().degrees()),
        ),
        length: words::length(shape.true_length()),
        post,
        heavy: format!("{} plf", figure((most * shape.widest_strip()).plf().ceil())),
    }
}
