//! A gable end: outlookers that run over its wall to a truss inside, and the wall under them to its footing.

use bracing::uplift::{ChainAnswer, Link, Rake, RakeTies, Single, UpliftBasis, check_chain, check_singles, rake_ties};
use fastening::Driven;
use measure::{AreaLoad, Length, LineLoad, Ratio};
use members::working::{Basis, Part};
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::asce7_16::chapter_30::effective_wind_area;

use super::deck::{deck, nailed};
use super::pressures::{Of, Pull, pull};
use super::says::{Found, finished, reply};
use super::ties::wall_ties;
use super::wall::{about_deck, ask_sides, chain, sides_asked};
use super::{Asks, Lifts, asked, asks_the_engineer, panels};
use crate::bracing::ties::tie;
use crate::quick::reply::QuickReply;
use crate::quick::say::{fact, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::site::{input, roof_and_ceiling};
use crate::words::figure;

const OF_THE_RAKE: Asks = ("rake_lift", "What does the drawing say lifts the overhang of this gable end?");
/// A ladder is for no more than this; the most that one coastal state's code lets it be.
const LADDER: Length = Length::from_inches(12.0);

/// The outlookers with what lifts them.
struct Lifted {
    rake: Rake,
    ties: RakeTies,
    /// On the overhang and behind it, and the weight that was taken off both.
    pulls: [Pull; 2],
    held_down: AreaLoad,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (ties, inner) = (wall_ties(reading, "outlooker_tie"), tie(reading, "outlooker_inner_tie", Driven::Toe));
    let nailed = nailed(reading);
    let (ties, inner, nailed) = (ties?, inner?, nailed?);
    let reading = &*reading;
    let mut about = About::of(reading, &asked::used(reading));
    if reading.word("rake_held")? == "ladder" {
        return Some(ladder(reading, about));
    }
    let lifted = match lifted(reading)? {
        Ok(lifted) => lifted,
        Err(sentence) => return Some(asks_the_engineer(about, OF_THE_RAKE, sentence)),
    };
    let along = (lifted.ties.at_wall / lifted.rake.spacing).max(LineLoad::ZERO);
    let (rolls, sides, lapped) = (ties.rolls_plate(), sides_asked(&ties), ties.has_lapped_panels());
    let mut chain = chain(reading, ties, (along, UpliftBasis::Computed), lifted.rake.spacing)?;
    let deck = deck(reading, &mut about, nailed);
    chain.sheathing = deck.as_ref().map(|deck| deck.sheathing());
    let single = Single { link: Link::OutlookerToTruss, pull: lifted.ties.at_truss, tie: inner };
    let answer = match check_singles(&[single]).and_then(|inner| Ok(joined(inner, check_chain(&chain)?))) {
        Ok(answer) => answer,
        Err(outside) => return Some(unworked(about, outside.to_string())),
    };
    let psf = |name: &str, what: &str, load: AreaLoad| {
        fact(name, what, load.psf(), format!("{} psf", figure(load.psf().ceil())))
    };
    let facts = vec![
        psf("rake_psf", "the overhang is lifted by", lifted.rake.on_overhang),
        fact(
            "uplift_plf",
            "a foot of gable wall is lifted by",
            along.plf(),
            format!("{} plf", figure(along.plf().ceil())),
        ),
    ];
    let part = working(&lifted, along);
    let reply = reply(reading, &mut about, Found { lifts: Lifts::Gable, answer, rolls, facts, part });
    if lifted.ties.at_truss.pounds() <= 0.0 {
        about.say("The inner ends of the outlookers are pressed down in this wind; they are nailed to the truss all the same.");
    }
    ask_sides(&mut about, sides);
    if lapped {
        panels::say(&mut about);
    }
    about_deck(&mut about, deck.as_ref());
    about.say("Gable ends are not in the code's table of ties.");
    about.say("How the gable wall stands against the wind that pushes at it is not worked here, nor the truss that the outlookers pull up.");
    Some(finished(about, reply))
}

/// The roof sheathing first, then the inner end, then the wall from its plate down.
fn joined(inner: ChainAnswer, wall: ChainAnswer) -> ChainAnswer {
    let mut links = wall.links;
    let first = links.iter().position(|link| link.link == Link::RoofToPlate).unwrap_or_default();
    links.splice(first..first, inner.links);
    ChainAnswer::of(links)
}

/// Short blocks have no tie that statics could give a number for.
fn ladder(reading: &Reading, about: About<'_>) -> QuickReply {
    let out = reading.length("rake_overhang").unwrap_or_default();
    let says = if out > LADDER {
        "Given: a ladder of short blocks that stands out over 12\". No more than about 9 to 12\" is for such a ladder. Run outlookers back over the gable wall to a truss inside, or ask the engineer."
    } else {
        "A ladder of short blocks is held by the roof sheathing that is nailed over it and by its nails to the gable, which no rule here has numbers for. The drawing or an engineer says how it is nailed; outlookers over the gable wall can be worked."
    };
    asks_the_engineer(about, ("rake_held", "What does the overhang stand on?"), says.to_owned())
}

/// What lifts the outlookers, and what their ends must hold; a sentence where no rule reaches.
fn lifted(reading: &Reading) -> Option<Result<Lifted, String>> {
    let house = input::house(reading)?;
    let (overhang, backspan) = (house.rake_overhang, reading.length("outlooker_back")?);
    let spacing = reading.length("outlooker_every")?;
    let area = effective_wind_area(overhang + backspan, spacing);
    let mut pulls = Vec::new();
    for (input, of) in [("rake_lift", Of::Rake), ("rake_roof_lift", Of::Roof)] {
        match typed(reading, input).map_or_else(|| pull(reading, of, area), |typed| Some(Ok(typed)))? {
            Ok(pull) => pulls.push(pull),
            Err(outside) => return Some(Err(outside)),
        }
    }
    let pulls: [Pull; 2] = pulls.try_into().ok()?;
    let held_down = weight(reading)?;
    let [on_overhang, on_roof] = pulls.map(|pull| (pull.psf - held_down).max(AreaLoad::ZERO));
    let rake = Rake { overhang, backspan, spacing, on_overhang, on_roof };
    Some(match rake_ties(&rake) {
        Ok(ties) => Ok(Lifted { rake, ties, pulls, held_down }),
        Err(outside) => Err(outside.to_string()),
    })
}

fn typed(reading: &Reading, id: &'static str) -> Option<Pull> {
    Some(Pull { psf: AreaLoad::from_psf(reading.number(id)?), source: Basis::Input(id) })
}

/// What counts of the roof's weight, square to it: a foot of plan is more of the slope, and it leans.
fn weight(reading: &Reading) -> Option<AreaLoad> {
    let house = input::house(reading)?;
    let (roof, _) = roof_and_ceiling(reading, &house)?;
    let leaning: Ratio = house.angle().cos();
    Some(roof * (Combination::LeastDeadWind.factor(LoadCase::Dead) * leaning * leaning))
}

fn working(lifted: &Lifted, along: LineLoad) -> Part {
    let Lifted { rake, ties, pulls, held_down } = lifted;
    let mut part = Part::new("Link by link");
    let weight = "0.6 of the roof's weight, square to the slope";
    part.step("D", weight, "", (held_down.psf(), "psf"), Basis::Published(Combination::SOURCE));
    let net = |pull: &Pull| format!("{} − {}", figure(pull.psf.psf()), figure(held_down.psf()));
    let [out, inside] = pulls;
    part.step("p", "0.6 of the wind on the overhang, both faces", "", (out.psf.psf(), "psf"), out.source);
    part.step("p_o", "net lift on the overhang", net(out), (rake.on_overhang.psf(), "psf"), Basis::Arithmetic);
    part.step("p", "0.6 of the wind on the roof behind", "", (inside.psf.psf(), "psf"), inside.source);
    part.step("p_i", "net lift on the roof behind", net(inside), (rake.on_roof.psf(), "psf"), Basis::Arithmetic);
    let (o, b, s) = (figure(rake.overhang.feet()), figure(rake.backspan.feet()), figure(rake.spacing.feet()));
    let (p_o, p_i) = (figure(rake.on_overhang.psf()), figure(rake.on_roof.psf()));
    let at_wall = format!("{p_o} × {o} × {s} × (1 + {o} / (2 × {b})) + {p_i} × {b} × {s} / 2");
    part.step("R", "an outlooker at the gable wall", at_wall, (ties.at_wall.pounds(), "lb"), Basis::Arithmetic);
    let at_truss = format!("{p_i} × {b} × {s} / 2 − {p_o} × {o} × {s} × {o} / (2 × {b})");
    part.step("R_i", "an outlooker at the truss inside", at_truss, (ties.at_truss.pounds(), "lb"), Basis::Arithmetic);
    let a_foot = format!("{} / {s}", figure(ties.at_wall.pounds()));
    part.step("u", "net uplift of a foot of gable wall", a_foot, (along.plf(), "plf"), Basis::Arithmetic);
    part
}
