//! The answer of a path of uplift: its checks, its numbers, its questions, its working and its picture.

use bracing::uplift::{ChainAnswer, Held, LinkAnswer, UpliftCaution};
use measure::{Force, Length};
use members::working::{Basis, Part};

use super::Lifts;
use super::judged::{action, judge};
use super::links::{caution, held, told};
use super::panels::is_panels;
use crate::bracing::ends::{PUSHED, check};
use crate::bracing::salt;
use crate::quick::reply::{Drawn, DrawnLink, FactReply, QuickReply, TableReply};
use crate::quick::say::{capital, cautions, force_fact, pounds};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

/// What a path came to.
pub(super) struct Found {
    pub(super) lifts: Lifts,
    pub(super) answer: ChainAnswer,
    /// Whether ties at the plate roll it.
    pub(super) rolls: bool,
    /// What lifts, before the links.
    pub(super) facts: Vec<FactReply>,
    /// The first step of the working.
    pub(super) part: Part,
}

/// The answer, but for what is said last.
pub(super) fn reply(reading: &Reading, about: &mut About<'_>, found: Found) -> QuickReply {
    let Found { lifts, answer, rolls, facts, part } = found;
    let mut reply = QuickReply { facts, ..QuickReply::default() };
    judge(&mut reply, &answer, lifts, rolls);
    checks(&mut reply, about, &answer, lifts);
    questions(reading, about, &answer, lifts);
    reply.action = action(&answer, lifts, rolls);
    for link in &answer.links {
        let name = told(link.link, lifts).name;
        reply.facts.push(force_fact(&format!("{}_lb", name.replace(' ', "_")), format!("{name}, each"), link.demand));
    }
    let mut said: Vec<UpliftCaution> = Vec::new();
    for of in answer.links.iter().flat_map(|link| &link.cautions) {
        if !said.contains(of) {
            said.push(*of);
            about.say(caution(*of));
        }
    }
    about.part(working(part, &answer, lifts));
    reply.tables.push(table(&answer, lifts));
    reply.drawn = Drawn::Path(drawn(&answer, lifts));
    salt::say(reading, &mut reply, about);
    reply
}

/// The same with what is said last.
pub(super) fn finished(mut about: About<'_>, mut reply: QuickReply) -> QuickReply {
    cautions(&mut about);
    about.caution("Fill every hole that the label of a tie names, with the nail that it names.");
    reply.about = about.finish();
    reply
}

fn checks(reply: &mut QuickReply, about: &mut About<'_>, answer: &ChainAnswer, lifts: Lifts) {
    for link in &answer.links {
        let name = told(link.link, lifts).name;
        match &link.held {
            Held::Carries(force) if *force > Force::ZERO && link.demand > Force::ZERO => {
                reply.checks.push(check(&name, (link.demand.pounds(), force.pounds(), "lb"), PUSHED));
            }
            Held::Refused(outside) => about.say(format!("{}: {outside}", capital(&name))),
            _ => {}
        }
    }
}

/// What is not known of links that are lifted.
fn questions(reading: &Reading, about: &mut About<'_>, answer: &ChainAnswer, lifts: Lifts) {
    let mut of_panels = false;
    for link in answer.unknown().filter(|link| link.demand > Force::ZERO) {
        let told = told(link.link, lifts);
        if is_panels(reading, told.input) {
            of_panels = true;
        } else {
            about.ask(told.input, format!("{}: what holds {}?", capital(&told.name), pounds(link.demand)));
        }
    }
    if of_panels {
        about.ask(
            "lap_shear",
            "What shear must these panels carry in the same wind? What it leaves of their nails holds the wall down.",
        );
    }
}

fn working(mut part: Part, answer: &ChainAnswer, lifts: Lifts) -> Part {
    for link in &answer.links {
        let name = told(link.link, lifts).name;
        let expression = if link.takes > Length::ZERO {
            format!("{} plf × {}", figure(link.along.plf()), words::inches(link.takes))
        } else {
            String::new()
        };
        let basis = link.source.map_or(Basis::Arithmetic, Basis::Published);
        part.step("T", name.as_str(), expression, (link.demand.pounds(), "lb"), Basis::Arithmetic);
        if let Held::Carries(force) = link.held {
            part.step("", format!("{name}: holds"), "", (force.pounds(), "lb"), basis);
        }
    }
    part
}

fn table(answer: &ChainAnswer, lifts: Lifts) -> TableReply {
    let row = |link: &LinkAnswer| {
        let missing =
            if link.used.is_some() && link.missing > Force::ZERO { pounds(link.missing) } else { "—".to_owned() };
        vec![capital(&told(link.link, lifts).name), pounds(link.demand), held(link), missing]
    };
    TableReply {
        heading: "Link by link".to_owned(),
        columns: ["link", "each must hold", "holds", "missing"].map(str::to_owned).to_vec(),
        rows: answer.links.iter().map(row).collect(),
        notes: vec!["How much each takes stands in the working.".to_owned()],
    }
}

fn drawn(answer: &ChainAnswer, lifts: Lifts) -> Vec<DrawnLink> {
    let link = |(index, link): (usize, &LinkAnswer)| {
        let told = told(link.link, lifts);
        Some(DrawnLink {
            at: told.at?,
            // How far apart bolts are is said sooner than what one holds in its concrete.
            input: if told.input == "bolt_holds" { "bolt_every" } else { told.input },
            name: told.name,
            demand: pounds(link.demand),
            held: held(link),
            holds: link.used.map(|used| used <= 1.0),
            weakest: answer.weakest == Some(index),
        })
    };
    answer.links.iter().enumerate().filter_map(link).collect()
}
