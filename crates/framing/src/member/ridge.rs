//! A ridge that carries, read and answered.

use lumber::candidates::beam_candidates;
use measure::{Force, Length};
use members::carrying_beam::{CarryingBeam, check_beam};
use members::check::DeflectionLimits;
use members::flexure::{Edges, Held, LoadedFrom, Piece};
use members::roof_beam::ridge_loads;

use super::read::{LABEL_FIELDS, chosen, labelled, limits, spans, wood};
use super::roof::roof;
use super::say::{cautions, drawn_beam, force_fact, held_down, of_flexure, pounds, rule, unworked};
use crate::quick::reply::{Drawn, QuickReply};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "ridge_spans",
    "left_run",
    "right_run",
    "roof_pitch",
    "loaded_from",
    "beam_bearing",
    "rests_on",
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
    "room_deep",
    "room_thick",
    "sag_limit",
    "total_sag_limit",
    "found_size",
    "found_grade",
    "found_bearing",
];

const USED: &[&str] = &[
    "ridge_spans",
    "roof_pitch",
    "loaded_from",
    "beam_bearing",
    "roof_dead",
    "roof_live",
    "ground_snow",
    "wind_speed",
    "exposure",
    "house_width",
    "species",
    "grade",
    "plies_share_load",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (species, grade, conditions) = wood(reading)?;
    let spans = spans(reading, "ridge_spans")?;
    let labelled = labelled(reading);
    let tried = beam_candidates(species, grade).map(Piece::Lumber).chain(labelled.clone());
    let chosen = chosen(reading, "drawn_size", tried, (species, grade));
    let reading = &*reading;
    let house = reading.length("house_width")?;
    let one = reading.length("left_run").unwrap_or(house / 2.0);
    let other = reading.length("right_run").unwrap_or(one);
    let longest = spans.iter().copied().fold(Length::ZERO, Length::max);
    let roof = roof(reading, longest, (one + other) / 2.0, reading.word("ceiling_on_rafters") == Some("yes"))?;
    let length = spans.iter().copied().fold(Length::ZERO, |sum, span| sum + span);
    let loads = ridge_loads(&roof.loads, roof.unbalanced, (one, other), length);
    let mut about = About::of(reading, USED);
    let limits =
        limits(reading, &mut about, (240.0, 180.0), "a roof with a ceiling, IRC Table R301.7 and IBC Table 1604.3");
    let input = CarryingBeam {
        spans,
        overhangs: (Length::ZERO, Length::ZERO),
        loads,
        bearing: reading.length("beam_bearing")?,
        below: None,
        edges: Edges { top: Held::Along, bottom: Held::AtSupports },
        loaded_from: if reading.word("loaded_from")? == "top" { LoadedFrom::Top } else { LoadedFrom::Sides },
        own_weight_share: 1.0,
        room: reading.length("room_deep"),
        breadth_room: reading.length("room_thick"),
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
    let most = answer.forces.iter().map(|force| force.most).fold(Force::ZERO, Force::max);
    reply.facts.push(force_fact("post_lb", "heaviest post", most));
    reply.needs.push(path_down(most));
    reply.action.extend(held_down(&reply.supports, "the ridge"));
    for (id, run, what) in [("left_run", one, "Run on one side"), ("right_run", other, "Run on the other")] {
        if reading.length(id).is_none() {
            about.assume(id, &format!("{what}: {} (half of the house, both sides alike).", words::length(run)));
        }
    }
    cautions(&mut about);
    about.say("Rafters that hang on a ridge which carries push nothing outward: no ties are needed for that, but the walls still want their tops held.");
    about.say("The rafters brace its top edge. Under a lifting wind its bottom edge is held at the posts alone.");
    roof.say(&mut about, reading);
    about.part(roof.part());
    answer.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Beam(drawn_beam(&answer, (input.length(), input.places()), input.loads.clone()));
    reply.about = about.finish();
    Some(reply)
}

/// The ridge that rafters without ties hang on, sized with them: both sides alike, on posts so far apart.
pub(super) fn under_rafters(
    reading: &mut Reading,
    run: Length,
    ceiling: bool,
) -> Option<crate::quick::reply::RuleReply> {
    let (species, grade, conditions) = wood(reading)?;
    let spans = spans(reading, "ridge_spans")?;
    let longest = spans.iter().copied().fold(Length::ZERO, Length::max);
    let roof = roof(reading, longest, run, ceiling)?;
    let length = spans.iter().copied().fold(Length::ZERO, |sum, span| sum + span);
    let input = CarryingBeam {
        spans,
        overhangs: (Length::ZERO, Length::ZERO),
        loads: ridge_loads(&roof.loads, roof.unbalanced, (run, run), length),
        bearing: POST,
        below: None,
        edges: Edges { top: Held::Along, bottom: Held::AtSupports },
        loaded_from: LoadedFrom::Sides,
        own_weight_share: 1.0,
        room: None,
        breadth_room: None,
        species,
        grade,
        conditions,
        plies_share_load: true,
        limits: DeflectionLimits { live: 240.0, total: 180.0 },
        labelled: None,
        chosen: None,
    };
    let answer = check_beam(&input).ok()?;
    let about = answer.about();
    let apart = words::length(longest);
    let governs = about.governing()?;
    let (size, first) = if about.verdict().holds() {
        let (size, share) = (about.piece.name(), words::percent(governs.share));
        let says =
            format!("On posts up to {apart} apart {size} carries both sides: {share}, {}.", governs.limit.words());
        (size, says)
    } else {
        let says = format!(
            "No size tried here carries both sides on posts {apart} apart: set them closer, or ask an engineer."
        );
        ("an engineer's beam".to_owned(), says)
    };
    let most = answer.forces.iter().map(|force| force.most).fold(Force::ZERO, Force::max);
    let least = answer.forces.iter().map(|force| force.least).fold(Force::ZERO, Force::min);
    let mut says = vec![first, format!("Its heaviest post carries {}, down to a footing.", pounds(most))];
    if least < Force::ZERO {
        says.push(format!("The wind lifts it there by up to {}: hold it down.", pounds(-least)));
    }
    says.push("The same rafters on both sides are counted. Its own page is Ridge.".to_owned());
    Some(rule("The ridge that carries", Some(about.verdict().holds()), size, says))
}

/// A post of 4x4 or of two plies and more below a ridge.
const POST: Length = Length::from_inches(3.5);

/// The path down from the ridge: nothing a table gives, and what is forgotten most.
fn path_down(most: Force) -> crate::quick::reply::RuleReply {
    let says = vec![
        format!(
            "Each post carries up to {} in one place: solid through plates and floors, with blocks on end between the joists, to a footing of its own.",
            pounds(most)
        ),
        "A ridge over an opening below lands on that header: add the post's load to it at its place, under Beam."
            .to_owned(),
        "Common practice.".to_owned(),
    ];
    rule("Path down", None, pounds(most), says)
}
