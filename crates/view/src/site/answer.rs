//! The answer to what is looked at: what is largest on the screen.

use framing::site::reply::{GravityReply, PressureReply, SnowReply, WindReply};

use super::Topic;
use crate::model::{Answer, State};

fn told(figure: String, word: &str, share_text: String, action: Vec<String>) -> Answer {
    Answer { state: State::Told, figure, word: word.to_owned(), share: None, share_text, action }
}

fn outside(word: &str, why: &[String]) -> Answer {
    Answer {
        state: State::Outside,
        figure: "Not worked".to_owned(),
        word: word.to_owned(),
        share: None,
        share_text: String::new(),
        action: why.to_vec(),
    }
}

/// A pressure, in or out, rounded away from nothing: a load is never made smaller by writing it.
pub(super) fn whole(psf: f64) -> String {
    format!("{:.0}", psf.ceil())
}

/// A force or a load along a wall, rounded up.
pub(super) fn grouped(value: f64) -> String {
    framing::words::figure(value.ceil())
}

/// The one of that part with the greatest suction.
pub(super) fn hardest<'r>(wind: &'r WindReply, part: &str) -> Option<&'r PressureReply> {
    let of_part = wind.pressures.iter().filter(|one| one.part == part);
    of_part.reduce(|most, one| if one.outward_psf > most.outward_psf { one } else { most })
}

/// The answer to a topic.
pub(super) fn answer(topic: Topic, wind: &WindReply, snow: &SnowReply, gravity: &GravityReply) -> Answer {
    match topic {
        Topic::Parts => parts(wind),
        Topic::House => push(wind),
        Topic::Uplift => lift(wind),
        Topic::Snow => of_snow(snow),
        Topic::Weights => weights(gravity),
    }
}

fn parts(wind: &WindReply) -> Answer {
    let Some(opening) = hardest(wind, "opening") else {
        return outside("not for this tool to decide", &wind.about.outside);
    };
    let inward = opening.inward_psf.unwrap_or_default();
    let figure = format!("+{} / −{} psf", whole(inward), whole(opening.outward_psf));
    let area = framing::words::figure(opening.area_sqft);
    let mut action = vec![format!(
        "Ask the supplier for a window or door of {area} sq ft that takes {} psf in and {} psf out, allowable stress.",
        whole(inward),
        whole(opening.outward_psf)
    )];
    if let Some(roof) = hardest(wind, "roof") {
        action.push(format!("The roof is pulled hardest {}: {} psf.", roof.place, whole(roof.outward_psf)));
    }
    action.extend(wind.about.outside.iter().cloned());
    told(figure, "on a window beside a corner", "allowable stress".to_owned(), action)
}

fn push(wind: &WindReply) -> Answer {
    let governs = |direction: &str| wind.push.iter().find(|push| push.governs && push.direction == direction);
    let Some(across) = governs("across the ridge") else {
        return outside("not for this tool to decide", &wind.about.outside);
    };
    let along =
        governs("along the ridge").map(|push| format!("{} lb along it; allowable stress", grouped(push.total_lb)));
    let mut action = vec![format!(
        "The walls along the wind carry {} lb below the roof across the ridge: bracing begins there.",
        across.levels.last().map(|level| grouped(level.shear_below_lb)).unwrap_or_default()
    )];
    action.extend(wind.about.outside.iter().cloned());
    told(format!("{} lb", grouped(across.total_lb)), "pushes across the ridge", along.unwrap_or_default(), action)
}

fn lift(wind: &WindReply) -> Answer {
    let Some(found) = &wind.uplift else { return outside("not for this tool to decide", &wind.about.outside) };
    let between =
        format!("at {}; {} lb between the ends", found.rafters_apart, grouped(found.rafter_interior_lb.max(0.0)));
    if found.rafter_end_lb <= 0.0 {
        let action = vec!["The weight of the roof holds it down. Tie it as the code asks all the same.".to_owned()];
        return told("0 lb".to_owned(), "no net lift", between, action);
    }
    let mut action = vec![format!(
        "Each rafter within {} of a gable end needs a tie for {} lb, and the path goes on down to the footing.",
        wind.end_width,
        grouped(found.rafter_end_lb)
    )];
    if let Some(wing) = wind.wing.as_ref().and_then(|wing| wing.uplift.as_ref()) {
        action.push(format!("On the wing: {} lb.", grouped(wing.rafter_end_lb.max(0.0))));
    }
    action.extend(wind.about.outside.iter().cloned());
    told(format!("{} lb", grouped(found.rafter_end_lb)), "lifts a rafter near the ends", between, action)
}

fn of_snow(snow: &SnowReply) -> Answer {
    let Some(heaviest) = snow.heaviest_psf else { return outside("not for this tool to decide", &snow.about.outside) };
    let figure = format!("{heaviest:.1} psf");
    let share = format!("balanced {:.1}, from {:.0} on the ground", snow.balanced_psf, snow.ground_psf);
    let action = snow.about.outside.clone();
    told(figure, "heaviest on a rafter", share, action)
}

fn weights(gravity: &GravityReply) -> Answer {
    let of = |what: &str| gravity.weights.iter().find(|weight| weight.of == what).map_or(0.0, |weight| weight.psf);
    let figure = format!("{:.1} psf", of("roof") + of("ceiling"));
    let share = format!("floor {:.1}, wall {:.1}", of("floor"), of("wall"));
    told(figure, "roof and ceiling weigh", share, Vec::new())
}
