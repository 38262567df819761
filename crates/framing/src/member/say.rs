//! What members alone say alike.

use lumber::{Family, Grade, Species};
use measure::{Force, Length};
use members::check::{Check, Verdict};
use members::flexure::{FlexureAnswer, SupportForce};
use members::limit::Limit;

use crate::quick::reply::{DrawnBeam, QuickReply, SupportReply, TriedReply};
pub(super) use crate::quick::say::{
    cautions, check_reply, down, fact, force_fact, length_fact, pounds, rule, unworked, up,
};
use crate::words::{self, figure};

/// Said where no size that was tried works.
pub(super) const NOTHING_CARRIES: &str = "No size tried here carries it.";

/// A family in words, with the wood where it is sawn.
pub(super) fn family(family: Family, (species, grade): (Species, Grade)) -> String {
    let wood = format!("{} {}", species.short_name(), grade.name());
    match family {
        Family::BuiltUp2x => format!("2x, {wood}"),
        Family::Sawn4x => format!("4x, {wood}"),
        Family::Sawn6x => format!("Timbers, {wood}"),
        Family::Lvl => "LVL 2.0E-2600Fb".to_owned(),
        Family::Glulam => "Glulam 24F-V4".to_owned(),
        Family::Labelled => "From its label or sheet".to_owned(),
    }
}

/// What all kinds know of a size that was tried.
pub(super) struct Size {
    pub(super) name: String,
    pub(super) family: Family,
    pub(super) verdict: Verdict,
    pub(super) governing: Option<Check<Limit>>,
    pub(super) outside: Option<String>,
    pub(super) misfit: Option<String>,
}

impl Size {
    fn words(&self) -> &'static str {
        match (self.verdict.holds(), &self.misfit) {
            (true, Some(_)) => "does not fit",
            _ => words::verdict(self.verdict),
        }
    }

    fn reply(&self, wood: (Species, Grade)) -> TriedReply {
        TriedReply {
            size: self.name.clone(),
            family: family(self.family, wood),
            verdict: self.words().to_owned(),
            ratio: self.governing.map(|check| check.share),
            governs: self.governing.map(|check| check.limit.words().to_owned()),
            reason: self.outside.clone().or_else(|| self.misfit.clone()),
        }
    }
}

/// The part of a reply that the sizes give.
pub(super) fn of_sizes(sizes: &[Size], judged: usize, smallest: &[usize], wood: (Species, Grade)) -> QuickReply {
    let about = &sizes[judged];
    let smallest: Vec<String> = smallest.iter().map(|&index| sizes[index].name.clone()).collect();
    QuickReply {
        verdict: about.words().to_owned(),
        size: about.name.clone(),
        ratio: about.governing.map(|check| check.share),
        governs: about.governing.map(|check| check.limit.words().to_owned()),
        combination: about.governing.map(|check| check.combination.name().to_owned()),
        reason: about.outside.clone().or_else(|| about.misfit.clone()),
        sizes: sizes.iter().map(|size| size.reply(wood)).collect(),
        action: action(about, &smallest),
        smallest,
        ..QuickReply::default()
    }
}

fn action(about: &Size, smallest: &[String]) -> Vec<String> {
    let mut says = Vec::new();
    if let Some(outside) = &about.outside {
        says.push(outside.clone());
        says.push("A licensed engineer decides.".to_owned());
    } else if about.verdict == Verdict::TooSmall {
        says.push(too_small(about));
    }
    if let Some(misfit) = &about.misfit {
        says.push(misfit.clone());
    }
    if !about.verdict.holds() || about.misfit.is_some() {
        says.push(match smallest.split_first() {
            None => format!("{NOTHING_CARRIES} Lower the load, shorten the span, or ask an engineer."),
            Some((first, [])) => format!("{first} carries it."),
            Some((first, rest)) => format!("{first} carries it; so does {}.", rest.join(", ")),
        });
    }
    says
}

fn too_small(about: &Size) -> String {
    let Some(check) = about.governing else { return format!("{} is too small.", about.name) };
    let over = (check.share - 1.0) * 100.0;
    let over = match over {
        over if over < 1.0 => "under 1 %".to_owned(),
        over if over >= 900.0 => "more than 10 times".to_owned(),
        over => format!("{} %", figure(over.ceil())),
    };
    format!("{} is too small: {over} over in {}.", about.name, check.limit.words())
}

/// The part of a reply that a member that bends gives.
pub(super) fn of_flexure(answer: &FlexureAnswer, wood: (Species, Grade)) -> QuickReply {
    let size = |tried: &members::flexure::Tried| Size {
        name: tried.piece.name(),
        family: tried.piece.family(),
        verdict: tried.verdict(),
        governing: tried.governing(),
        outside: tried.outside.clone(),
        misfit: tried.misfit.clone(),
    };
    let sizes: Vec<Size> = answer.tried.iter().map(size).collect();
    let mut reply = of_sizes(&sizes, answer.judged, &answer.smallest, wood);
    reply.checks = answer.about().checks().iter().map(check_reply).collect();
    reply.supports = answer.forces.iter().map(|force| support(force, 1.0)).collect();
    reply
}

/// What a support gives. On a slope what is square to it is brought upright by the cosine.
pub(super) fn support(force: &SupportForce, cosine: f64) -> SupportReply {
    let upright = |force: Force| force.pounds() / cosine;
    SupportReply {
        at_in: force.at.inches(),
        at: words::length(force.at),
        by_case_lb: force
            .by_case
            .iter()
            .filter(|(_, force)| force.pounds() != 0.0)
            .map(|(case, force)| (case.words().to_owned(), upright(*force)))
            .collect(),
        most_lb: upright(force.most),
        least_lb: upright(force.least),
    }
}

/// So little uplift, in pounds, is not told of.
const NAILS_HOLD: f64 = 20.0;

/// Supports that must be held down, in sentences.
pub(super) fn held_down(supports: &[SupportReply], of: &str) -> Vec<String> {
    // What a pattern of live load lifts by a few pounds is held by the nails of the joint.
    let lifted = supports.iter().filter(|support| support.least_lb < -NAILS_HOLD.max(support.most_lb * 0.01));
    lifted
        .map(|support| {
            let force = pounds(Force::from_pounds(-support.least_lb));
            format!("At {} {of} lifts: hold it down for {force}, and carry that on to the footing.", support.at)
        })
        .collect()
}

/// What is drawn of a member on supports.
pub(super) fn drawn_beam(
    answer: &FlexureAnswer,
    input: (Length, Vec<Length>),
    loads: Vec<members::flexure::Acting>,
) -> DrawnBeam {
    let about = answer.about();
    let bending = about.of(Limit::Bending).or_else(|| about.of(Limit::BendingTopInTension));
    DrawnBeam {
        length: input.0,
        supports: input.1,
        depth: about.piece.depth(),
        loads,
        diagram: answer.diagram.clone(),
        combination: bending.map_or("", |found| found.check.combination.name()).to_owned(),
        cut: None,
        rigidity: about.rigidity,
    }
}
