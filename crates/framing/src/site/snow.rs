//! The snow on a roof, answered.

use loads::site::LoadStandard;
use loads::snow_on_roof::{SnowOnRoof, snow_on_roof};
use measure::AreaLoad;

use super::about::About;
use super::input;
use super::reply::{SnowCaseReply, SnowReply};
use super::working;
use crate::reading::{Origin, Reading};
use crate::words;

/// Answers the snow; none where an input is wrong.
#[must_use]
pub fn snow(reading: &Reading) -> Option<SnowReply> {
    let house = input::house(reading)?;
    let input = input::snow(reading, &house)?;
    let mut about = About::of(reading, super::OF_SNOW);
    let found = snow_on_roof(&input, &house);
    says(&mut about, reading, &input, &found);
    working::snow(&mut about, &input, &found);
    Some(SnowReply {
        ground_psf: input.ground.psf(),
        flat_psf: found.flat.psf(),
        slope_factor: found.slope_factor,
        balanced_psf: found.balanced.psf(),
        heaviest_psf: found.heaviest().map(AreaLoad::psf),
        cases: cases(&found),
        about: about.finish(),
    })
}

fn case(name: &str, windward: AreaLoad, leeward: AreaLoad, acts: &str) -> SnowCaseReply {
    SnowCaseReply {
        name: name.to_owned(),
        windward_psf: windward.psf(),
        leeward_psf: leeward.psf(),
        more: None,
        acts: acts.to_owned(),
    }
}

fn cases(found: &SnowOnRoof) -> Vec<SnowCaseReply> {
    let mut cases = vec![case("balanced", found.balanced, found.balanced, "by itself")];
    if let Some(least) = found.minimum {
        cases.push(case("least, low slope", least, least, "by itself"));
    }
    if let Some((unbalanced, _)) = found.unbalanced {
        let more = unbalanced.surcharge.map(|more| (more.peak.psf(), more.width.feet(), false));
        cases.push(SnowCaseReply { more, ..case("unbalanced", unbalanced.windward, unbalanced.leeward, "by itself") });
    }
    if let Some(rain) = found.rain {
        let all = found.balanced + rain;
        cases.push(case("rain on snow", all, all, "by itself"));
    }
    if let Some(ice) = found.ice_dam {
        cases.push(case("ice at a warm eave", ice, ice, "on the overhang, with dead load alone"));
    }
    if let Some(drift) = found.drift {
        let more = Some((drift.surcharge.peak.psf(), drift.surcharge.width.feet(), true));
        let on = "on the lower roof's balanced snow";
        cases.push(SnowCaseReply { more, ..case("drift on the lower roof", found.flat, found.flat, on) });
    }
    if let Some(sliding) = found.sliding {
        let more = Some((sliding.peak.psf(), sliding.width.feet(), false));
        let on = "on the lower roof's balanced snow, not with the drift";
        cases.push(SnowCaseReply { more, ..case("sliding onto the lower roof", found.flat, found.flat, on) });
    }
    cases
}

fn says(about: &mut About<'_>, reading: &Reading, input: &loads::snow_on_roof::SnowInput, found: &SnowOnRoof) {
    if reading.get("ground_snow").is_some_and(|value| value.origin == Origin::Assumed) {
        about.ask("ground_snow", "What is the ground snow load of the place? Ask the building department.");
    }
    if reading.word("snow_exposure").is_none() {
        about.assume("snow_exposure", "Roof in the wind: partly sheltered, exposure factor 1.");
    }
    if let Some(given) = reading.number("roof_snow") {
        about.say(format!(
            "The drawing gives {given} psf of roof snow: checks of this job take that. Here is what the clauses give."
        ));
    }
    if input.standard == LoadStandard::Asce7Of22 {
        about.say("ASCE 7-22: the ground snow is at strength level, and 0.7 of it enters the combinations.");
        about.outside(
            "Drifts of ASCE 7-22, unbalanced snow on trusses and wide roofs, and rain on nearly flat ones follow from maps and \
             rules that are not here. An engineer works them out."
                .to_owned(),
        );
    }
    if input.slippery && input.warm {
        about.say(
            "A warm roof counts as slippery only over R-30, or R-20 where vented. That is not asked here, and nothing is \
             taken off for it.",
        );
    }
    let earlier = input.standard == LoadStandard::Asce7Of16;
    if earlier && reading.number("wing_eave_height").is_some() && found.drift.is_none() && found.sliding.is_none() {
        about.say("No drift and no slide onto the wing: there is no step, too little snow, or too wide a gap.");
    }
    if let Some(drift) = found.drift {
        about.say(format!(
            "Snow drifts against the higher wall: {} psf more there, none after {}.",
            members::working::figure(drift.surcharge.peak.psf()),
            words::length(measure::Length::from_feet(drift.surcharge.width.feet().round()))
        ));
    }
    about.caution("The ground snow is the building department's; it is not the roof's.");
    about.caution("Valleys, dormers, chimneys and solar panels gather more snow than is worked here.");
}
