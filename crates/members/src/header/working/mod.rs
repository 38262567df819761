//! The working of the judged size, step by step, with the numbers put in.

mod across;
mod bending;
mod ends;
mod sag;

use loads::header::{LoadOf, LoadPart, MadeOf};
use lumber::Adjusted;
use measure::Length;
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::irc_2021::r502_6;
use standards::nds_2018::chapter_2::LoadDuration;
use standards::{Source, Status};

use super::demand::{Demand, JACK_THICKNESS, demands, design_span};
use super::judge::{Case, conditions};
use super::result::{Check, Limit, Tried};
pub(super) use crate::working::adjusted_step;
use crate::working::{Basis, Part, figure};

/// What the parts of a working share.
struct Sheet<'a> {
    tried: &'a Tried,
    case: &'a Case<'a>,
    jacks: u8,
    span: Length,
    demands: Vec<Demand>,
}

/// The working of one size. Empty parts are left out; a part that a rule stops says so in its last step.
pub(super) fn working(tried: &Tried, parts: &[LoadPart], case: &Case<'_>) -> Vec<Part> {
    let jacks = tried.jacks.unwrap_or(super::judge::MOST_JACKS);
    let sheet = Sheet {
        tried,
        case,
        jacks,
        span: design_span(case.input.opening, jacks),
        demands: demands(case.loads, tried.member.self_weight(), case.wind.is_some()),
    };
    let mut working = vec![loads_part(parts, &sheet), span_part(&sheet), combinations_part(&sheet)];
    for check in &tried.checks {
        let part = match check.limit {
            Limit::Bending => bending::bending_part(check, &sheet),
            Limit::Shear => bending::shear_part(check, &sheet),
            Limit::Bearing => ends::bearing_part(check, &sheet),
            Limit::JackColumn => ends::jack_part(check, &sheet),
            Limit::PlateBearing => ends::plate_part(check, &sheet),
            Limit::LiveDeflection | Limit::TotalDeflection => sag::sag_part(check, &sheet),
            Limit::Wind => across::wind_part(check, &sheet),
            Limit::Slenderness => bending::slenderness_part(check, &sheet),
        };
        working.push(part);
    }
    working.retain(|part| !part.steps.is_empty());
    working
}

fn loads_part(parts: &[LoadPart], sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Load along the header");
    for load in parts {
        let basis = Basis::Input(input_of(load.what));
        part.step(load.case.symbol(), load.what.name(), made_of(load.made_of), (load.load.plf(), "plf"), basis);
    }
    let weight = sheet.tried.member.self_weight();
    let density = sheet.tried.member.density();
    let expression = format!(
        "{} pcf × {} in² / 144",
        figure(density.value.pcf()),
        figure(sheet.tried.member.section().area.square_inches())
    );
    part.step("D", "the header itself", expression, (weight.plf(), "plf"), Basis::Published(density.source));
    part
}

/// The input that a part of the load comes from.
const fn input_of(what: LoadOf) -> &'static str {
    match what {
        LoadOf::RoofDead => "roof_dead",
        LoadOf::CeilingDead => "ceiling_dead",
        LoadOf::FloorDead => "floor_dead",
        LoadOf::Wall => "wall_above",
        LoadOf::FloorLive => "floor_live",
        LoadOf::AtticLive => "attic_live",
        LoadOf::RoofLive => "roof_live",
        LoadOf::RoofSnow => "ground_snow",
    }
}

fn made_of(made_of: MadeOf) -> String {
    match made_of {
        MadeOf::Strip { intensity, width, times } => {
            let times = if times > 1 { format!("{times} × ") } else { String::new() };
            format!("{times}{} psf × {} ft", figure(intensity.psf()), figure(width.feet()))
        }
        MadeOf::Walls { per_storey, storeys } => format!("{storeys} × {} plf a storey", figure(per_storey.plf())),
        MadeOf::Given => "as given".to_owned(),
    }
}

fn span_part(sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Span");
    let opening = sheet.case.input.opening;
    part.step("b", "opening", "as given", (opening.inches(), "in"), Basis::Input("opening_width"));
    let ends = sheet.span - opening;
    part.step(
        "L",
        "span, to the middle of the bearings and at least 1-1/2 in into each",
        format!("{} + {}", figure(opening.inches()), figure(ends.inches())),
        (sheet.span.inches(), "in"),
        Basis::Published(Source::new("NDS 2018", "§3.2.1", Status::LookedUp)),
    );
    part.step(
        "",
        "bearing; the code asks for at least 1-1/2 in",
        format!("{} × 1-1/2 in", jacks_in_words(sheet.jacks)),
        ((JACK_THICKNESS * f64::from(sheet.jacks)).inches(), "in"),
        Basis::Published(r502_6::BEARING),
    );
    part
}

fn combinations_part(sheet: &Sheet<'_>) -> Part {
    let mut part = Part::new("Combinations");
    let loads = sheet.case.loads;
    for demand in &sheet.demands {
        let duration = demand.duration.factor();
        let mut terms = Vec::new();
        let dead = loads.dead + sheet.tried.member.self_weight();
        let live = if demand.combination == Combination::DeadLive { demand.transient } else { loads.live };
        let cases = [
            (LoadCase::Dead, dead),
            (LoadCase::Live, live),
            (LoadCase::RoofLive, loads.roof_live),
            (LoadCase::Snow, loads.snow),
        ];
        for (case, load) in cases {
            let factor = demand.combination.factor(case);
            if factor > 0.0 && load.plf() > 0.0 {
                terms.push(format!("{} × {}", figure(factor), figure(load.plf())));
            }
        }
        let meaning = format!("{}, load duration factor {}", demand.combination.name(), figure(duration.value));
        let basis = Basis::Published(Combination::SOURCE);
        part.step("w", meaning, terms.join(" + "), (demand.total.plf(), "plf"), basis);
    }
    part
}

impl Sheet<'_> {
    fn demand(&self, check: &Check) -> Option<&Demand> {
        self.demands
            .iter()
            .filter(|demand| demand.combination == check.combination)
            .max_by(|a, b| a.total.plf().total_cmp(&b.total.plf()))
    }

    fn strengths(&self, duration: LoadDuration) -> Option<Adjusted> {
        let conditions = conditions(&self.tried.member, self.tried.family, self.case.input);
        self.tried.member.adjusted(&conditions, duration).ok()
    }

    fn share(&self, part: &mut Part, check: &Check, expression: String) {
        part.step(
            "",
            format!("share of capacity, {}", check.combination.name()),
            expression,
            (check.share, ""),
            Basis::Arithmetic,
        );
    }
}

fn jacks_in_words(jacks: u8) -> String {
    format!("{jacks} jack{}", if jacks == 1 { "" } else { "s" })
}

fn quotient(check: &Check) -> String {
    format!("{} / {}", figure(check.demand), figure(check.capacity))
}
