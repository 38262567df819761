//! The posts of a porch: from its rafters over the beam to the post's head, its base and the weight of the footing.

use bracing::uplift::{
    Link, Single, Tie, check_singles, footing_weight, porch_beam_uplift, post_uplifts, through_uplifts,
};
use fastening::Driven;
use measure::{AreaLoad, Force, Length, LineLoad};
use members::working::{Basis, Part};

use super::deck::{Deck, deck, nailed};
use super::says::{Found, finished, reply};
use super::wall::about_deck;
use super::{Asks, Lifts, asked, asks_the_engineer};
use crate::bracing::lists;
use crate::bracing::ties::tie;
use crate::quick::reply::{QuickReply, TableReply};
use crate::quick::say::{fact, force_fact, pounds, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::figure;

const OF_THE_BEAM: Asks = ("porch_lift", "What does the drawing say lifts this porch's roof?");
const NO_PRESSURE: &str = "Under an open porch wind pushes up as well as it pulls from above. No pressure for it is here, and the code's table of ties does not cover porches: an engineer gives it.";
const OF_THE_POST: Asks = ("post_pull", "What does the drawing say lifts this post?");

/// What is there at the links.
struct Ties {
    rafter: Tie,
    top: Tie,
    base: Tie,
    footing: Tie,
}

/// What lifts the beam of the porch.
struct OnBeam {
    along: LineLoad,
    says: &'static str,
    expression: String,
    source: Basis,
    /// What lifts a foot of the house's wall, where it was worked.
    at_house: Option<LineLoad>,
}

/// What lifts the posts.
struct Lifted {
    on_beam: Option<OnBeam>,
    posts: Vec<Force>,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (ties, nailed) = (ties(reading), nailed(reading));
    let bays = lists::lengths(reading, "porch_bays", (2.0, 20.0));
    let (ties, nailed, bays) = (ties?, nailed?, bays?);
    let reading = &*reading;
    let mut about = About::of(reading, &asked::used(reading));
    let lifted = match lifted(reading, &bays)? {
        Ok(lifted) => lifted,
        Err((asks, sentence)) => return Some(asks_the_engineer(about, asks, sentence)),
    };
    let deck = deck(reading, &mut about, nailed);
    let singles = singles(reading, ties, &lifted, deck.as_ref())?;
    let answer = match check_singles(&singles) {
        Ok(answer) => answer,
        Err(outside) => return Some(unworked(about, outside.to_string())),
    };
    let facts = facts(&lifted);
    let part = working(&lifted);
    let mut reply = reply(reading, &mut about, Found { lifts: Lifts::Porch, answer, rolls: false, facts, part });
    if lifted.on_beam.is_none() {
        about.ask("porch_lift", "What lifts the porch's roof? Without it the ties of its rafters are not looked at.");
    }
    if lifted.posts.len() > 1 {
        reply.tables.push(posts(&lifted.posts));
    }
    about_deck(&mut about, deck.as_ref());
    about.say("The weights of the beam and the post do not help here. That of the footing counts with 0.6; friction of the earth on it does not.");
    about.say("Porches are not in the code's table of ties. How the rafters are tied to the house is another path.");
    about.say("A base holds what its label says, or what its anchor holds in the concrete, whichever is less.");
    Some(finished(about, reply))
}

fn ties(reading: &mut Reading) -> Option<Ties> {
    let rafter = tie(reading, "porch_rafter_tie", Driven::Toe);
    let top = tie(reading, "post_top_tie", Driven::Toe);
    let base = tie(reading, "post_base_tie", Driven::Toe);
    let weighs = reading.number("footing_weighs").map(Force::from_pounds);
    let footing = weighs.map_or(Tie::Unknown, Tie::Weight);
    Some(Ties { rafter: rafter?, top: top?, base: base?, footing })
}

/// What lifts the posts; else what is asked, and why.
fn lifted(reading: &Reading, bays: &[Length]) -> Option<Result<Lifted, (Asks, String)>> {
    let on_beam = match on_beam(reading)? {
        Ok(on_beam) => on_beam,
        Err(sentence) => return Some(Err((OF_THE_BEAM, sentence))),
    };
    if let Some(pull) = reading.number("post_pull").map(Force::from_pounds) {
        return Some(Ok(Lifted { on_beam, posts: vec![pull] }));
    }
    let Some(on_beam) = on_beam else { return Some(Err((OF_THE_BEAM, NO_PRESSURE.to_owned()))) };
    let over = if reading.word("porch_beam")? == "cut" { post_uplifts } else { through_uplifts };
    Some(match over(on_beam.along, bays) {
        Ok(posts) => Ok(Lifted { on_beam: Some(on_beam), posts }),
        Err(outside) => Err((OF_THE_POST, outside.to_string())),
    })
}

/// What lifts a foot of the beam, as given, or from the lift on the roof; none where neither was said.
fn on_beam(reading: &Reading) -> Option<Result<Option<OnBeam>, String>> {
    if let Some(given) = reading.number("porch_uplift") {
        let (along, source) = (LineLoad::from_plf(given), Basis::Input("porch_uplift"));
        let says = "net uplift of a foot of the beam, as given";
        return Some(Ok(Some(OnBeam { along, says, expression: String::new(), source, at_house: None })));
    }
    let Some(lift) = reading.number("porch_lift").map(AreaLoad::from_psf) else { return Some(Ok(None)) };
    let (deep, out) = (reading.length("porch_deep")?, reading.length("porch_out")?);
    Some(match porch_beam_uplift(lift, deep, out) {
        Ok((along, at_house)) => {
            let (p, l, o) = (figure(lift.psf()), figure(deep.feet()), figure(out.feet()));
            let expression = format!("{p} × ({l} + {o})² / (2 × {l})");
            let says = "net uplift of a foot of the beam, of rafters from the house over it";
            Ok(Some(OnBeam { along, says, expression, source: Basis::Arithmetic, at_house: Some(at_house) }))
        }
        Err(outside) => Err(outside.to_string()),
    })
}

/// From the roof down, under the hardest post.
fn singles(reading: &Reading, ties: Ties, lifted: &Lifted, deck: Option<&Deck>) -> Option<Vec<Single>> {
    let rafters = reading.length("rafter_every")?;
    let Ties { rafter, top, base, footing } = ties;
    let single = |link, pull, tie| Single { link, pull, tie };
    let mut singles = Vec::new();
    singles.extend(deck.map(|deck| single(Link::SheathingToRafter, deck.on_one(rafters), deck.tie())));
    singles.extend(lifted.on_beam.as_ref().map(|on| single(Link::RafterToBeam, on.along * rafters, rafter)));
    let hardest = hardest(&lifted.posts);
    singles.push(single(Link::BeamToPost, hardest, top));
    singles.push(single(Link::PostToFooting, hardest, base));
    singles.push(single(Link::FootingToGround, hardest, footing));
    Some(singles)
}

fn hardest(posts: &[Force]) -> Force {
    posts.iter().copied().fold(Force::ZERO, Force::max)
}

fn facts(lifted: &Lifted) -> Vec<crate::quick::reply::FactReply> {
    let plf = |name: &str, what: &str, along: LineLoad| {
        fact(name, what, along.plf(), format!("{} plf", figure(along.plf().ceil())))
    };
    let hardest = hardest(&lifted.posts);
    let mut facts = Vec::new();
    if let Some(on) = &lifted.on_beam {
        facts.push(plf("uplift_plf", "a foot of the beam is lifted by", on.along));
        facts.extend(on.at_house.map(|at_house| plf("at_house_plf", "a foot of the house's wall by", at_house)));
    }
    facts.push(force_fact("post_lb", "the hardest post is lifted by", hardest));
    facts.push(force_fact("footing_needs_lb", "its footing must weigh", footing_weight(hardest)));
    facts
}

fn posts(posts: &[Force]) -> TableReply {
    let row = |(index, pull): (usize, &Force)| {
        vec![format!("Post {}", index + 1), pounds(*pull), pounds(footing_weight(*pull))]
    };
    TableReply {
        heading: "Post by post".to_owned(),
        columns: ["post", "lifted by", "footing weighs"].map(str::to_owned).to_vec(),
        rows: posts.iter().enumerate().map(row).collect(),
        notes: Vec::new(),
    }
}

fn working(lifted: &Lifted) -> Part {
    let mut part = Part::new("Link by link");
    if let Some(on) = &lifted.on_beam {
        part.step("u", on.says, on.expression.as_str(), (on.along.plf(), "plf"), on.source);
    }
    for (index, pull) in lifted.posts.iter().enumerate() {
        let says = format!("post {}, of the bays beside it", index + 1);
        let (says, source) = match lifted.posts.len() {
            1 => ("the post, as given".to_owned(), Basis::Input("post_pull")),
            _ => (says, Basis::Arithmetic),
        };
        part.step("P", says, "", (pull.pounds(), "lb"), source);
    }
    part
}
