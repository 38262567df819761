//! The path of uplift of one wall, from its rafters to its footing, read and answered.

use bracing::uplift::{
    Chain, ChainAnswer, Connections, Held, HeldDown, Link, LinkAnswer, SillBolts, Tie, UpliftBasis, UpliftCaution,
    WallOpening, WallStorey, Washer, check_chain, ridge_tension,
};
use fastening::Driven;
use loads::wind::uplift::uplift;
use measure::{AreaLoad, Force, Length, LineLoad, Slope};
use members::working::{Basis, Part};
use standards::asce7_16::chapter_28::COEFFICIENTS;
use standards::asme_b18;
use standards::irc_2021::r802_11::{Reduction, RoofShape, TiedRoof, WallUplift, wall_uplift};

use super::ends::{PUSHED, check};
use super::frame::plate;
use super::salt;
use super::ties::tie;
use crate::quick::read::plf;
use crate::quick::reply::{Drawn, DrawnLink, LinkAt, QuickReply, RuleReply, TableReply};
use crate::quick::say::{capital, cautions, fact, force_fact, pounds, rule, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::site::{input, roof_and_ceiling};
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "rafter_every",
    "uplift_given",
    "wall_by_corner",
    "uplift_storeys",
    "rafter_tie",
    "plate_tie",
    "floor_tie",
    "sill_tie",
    "uplift_opening",
    "header_tie",
    "jamb_tie",
    "bolt_every",
    "bolt_thick",
    "bolt_washer",
    "bolt_holds",
    "wall_dead",
    "brace_studs",
    "brace_spacing",
    "species",
    "grade",
    "house_width",
    "roof_kind",
    "roof_pitch",
    "eave_overhang",
    "roof_dead",
    "ceiling_dead",
    "wind_speed",
    "exposure",
    "enclosure",
    "salt_water",
    "metal_where",
    "metal_tie",
    "metal_nails",
];

/// Farther from a corner than the footnote asks.
const FAR: Length = Length::from_feet(8.5);
/// What the table has counted of the roof's weight.
const ROOF_AND_CEILING: AreaLoad = AreaLoad::from_psf(15.0);

/// What lifts a foot of wall, and where that comes from.
struct Lifted {
    along: LineLoad,
    basis: UpliftBasis,
    says: String,
    source: Basis,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let mut ties = Vec::new();
    for (id, driven) in [
        ("rafter_tie", Driven::Toe),
        ("plate_tie", Driven::Toe),
        ("floor_tie", Driven::Toe),
        ("sill_tie", Driven::Toe),
        ("header_tie", Driven::Toe),
        ("jamb_tie", Driven::Toe),
    ] {
        ties.push(tie(reading, id, driven));
    }
    let ties: Option<Vec<Tie>> = ties.into_iter().collect();
    let [rafter, plate, floor, sill, header, jamb]: [Tie; 6] = ties?.try_into().ok()?;
    let reading = &*reading;
    let about = About::of(reading, FIELDS);
    let lifted = match lifted(reading)? {
        Ok(lifted) => lifted,
        Err(sentence) => return Some(asks_the_engineer(about, sentence)),
    };
    let studs = reading.length("brace_spacing")?;
    let storeys: usize = reading.word("uplift_storeys")?.parse().ok()?;
    let opening = reading.length("uplift_opening").map(|width| WallOpening { width, header, jamb });
    let dead = plf(reading, "wall_dead");
    let weight = if dead > LineLoad::ZERO { HeldDown::Dead(dead) } else { HeldDown::Nothing };
    let storey = |index: usize| WallStorey {
        above: Connections { tie: if index == 0 { plate.clone() } else { floor.clone() }, spacing: studs },
        studs,
        openings: if index == 0 { opening.clone().into_iter().collect() } else { Vec::new() },
        weight,
    };
    let chain = Chain {
        uplift: lifted.along,
        basis: lifted.basis,
        sheathing: None,
        roof: Connections { tie: rafter, spacing: reading.length("rafter_every")? },
        storeys: (0..storeys).map(storey).collect(),
        stud_to_sill: Connections { tie: sill, spacing: studs },
        sill: Connections { tie: Tie::Bolts(bolts(reading)?), spacing: reading.length("bolt_every")? },
    };
    match check_chain(&chain) {
        Ok(answer) => Some(reply(reading, about, &lifted, &answer)),
        Err(outside) => Some(unworked(about, outside.to_string())),
    }
}

/// Where no rule reaches, the drawing's number is what is asked for.
fn asks_the_engineer(mut about: About<'_>, sentence: String) -> QuickReply {
    about.ask("uplift_given", "What does the drawing say lifts a foot of this wall?");
    unworked(about, sentence)
}

/// What lifts the wall: as given, else by the wind standard, else by the code's table; a sentence where neither reaches.
fn lifted(reading: &Reading) -> Option<Result<Lifted, String>> {
    if let Some(given) = reading.number("uplift_given") {
        return Some(Ok(Lifted {
            along: LineLoad::from_plf(given),
            basis: UpliftBasis::Computed,
            says: "net uplift of a foot of wall, as given".to_owned(),
            source: Basis::Input("uplift_given"),
        }));
    }
    let house = input::house(reading)?;
    let (roof, ceiling) = roof_and_ceiling(reading, &house)?;
    let worked = uplift(&input::wind(reading, &house)?, &house, roof, ceiling);
    if let Ok(worked) = worked {
        let end = reading.word("wall_by_corner")? == "yes";
        let along = if end { worked.net_asd_end } else { worked.net_asd_interior };
        return Some(Ok(Lifted {
            along: along.max(LineLoad::ZERO),
            basis: UpliftBasis::Computed,
            says: format!(
                "net uplift of a foot of wall, {}",
                if end { "in the end strip" } else { "between the end strips" }
            ),
            source: Basis::Published(COEFFICIENTS),
        }));
    }
    Some(by_table(reading)?.map(|wall| Lifted {
        along: wall.uplift,
        basis: UpliftBasis::Table(wall.reduction),
        says: format!("net uplift of a foot of wall, {}", reduced(wall.reduction)),
        source: Basis::Published(wall.source),
    }))
}

/// What the code's table asks of a foot of wall.
fn by_table(reading: &Reading) -> Option<Result<WallUplift, String>> {
    let house = input::house(reading)?;
    if let Some(outside) = input::past_the_code(reading) {
        return Some(Err(outside));
    }
    let roof = TiedRoof {
        exposure: input::exposure_category(reading)?,
        wind_speed: input::basic_speed(reading)?,
        span: house.width,
        pitch: house.pitch,
        shape: if reading.word("roof_kind")? == "hip" { RoofShape::Hip } else { RoofShape::Gable },
        overhang: house.eave_overhang,
        mean_roof_height: input::mean_roof_height(reading, &house),
        dead: ROOF_AND_CEILING,
        from_corner: if reading.word("wall_by_corner")? == "no" { FAR } else { Length::ZERO },
    };
    Some(wall_uplift(&roof).map_err(|outside| outside.to_string()))
}

/// The code's own table, beside what was worked.
fn code_rule(reading: &Reading) -> Option<RuleReply> {
    let spacing = reading.length("rafter_every")?;
    Some(match by_table(reading)? {
        Ok(wall) => {
            let along = format!("{} plf of wall, {}.", figure(wall.uplift.plf().ceil()), reduced(wall.reduction));
            let says = vec![
                along,
                "It counts 15 psf of roof and ceiling: a lighter roof is an engineer's. Porches and gable ends are not in it.".to_owned(),
                format!("{}.", words::source(wall.source)),
            ];
            rule("Table of ties", None, format!("{} each", pounds(wall.uplift * spacing)), says)
        }
        Err(outside) => rule("Table of ties", None, "not covered", vec![outside]),
    })
}

const fn reduced(by: Reduction) -> &'static str {
    match by {
        Reduction::None => "nothing taken off",
        Reduction::AwayFromCorners => "0.75 of it away from the corners",
        Reduction::HipRoof => "0.70 of it under a hip roof",
    }
}

fn bolts(reading: &Reading) -> Option<SillBolts> {
    let diameter = Length::from_inches(match reading.word("bolt_thick")? {
        "5/8" => 0.625,
        "3/4" => 0.75,
        _ => 0.5,
    });
    let washer = if reading.word("bolt_washer")? == "plate" {
        Washer::Square { side: Length::from_inches(3.0), thickness: Length::from_inches(0.25) }
    } else {
        Washer::Round { diameter: asme_b18::nut_and_washer(diameter)?.across }
    };
    Some(SillBolts {
        washer,
        hole: diameter + Length::from_inches(1.0 / 16.0),
        fc_perp: plate(reading)?,
        anchorage: reading.number("bolt_holds").map(Force::from_pounds),
    })
}

/// Its name, where it is drawn, and the input that says what is there; openings are not drawn.
fn told(link: Link) -> (String, Option<LinkAt>, &'static str) {
    match link {
        Link::SheathingToRafter => ("sheathing to rafter".to_owned(), None, "rafter_tie"),
        Link::RoofToPlate => ("rafter to plate".to_owned(), Some(LinkAt::Plate), "rafter_tie"),
        Link::PlateToStud => ("plate to stud".to_owned(), Some(LinkAt::Studs), "plate_tie"),
        Link::FloorToFloor { storey } => (format!("over floor {storey}"), Some(LinkAt::Floor), "floor_tie"),
        Link::HeaderToJamb { .. } => ("header to stud".to_owned(), None, "header_tie"),
        Link::JambToBelow { .. } => ("studs beside the opening".to_owned(), None, "jamb_tie"),
        Link::StudToSill => ("stud to sill".to_owned(), Some(LinkAt::Sill), "sill_tie"),
        Link::SillToFooting => ("sill to footing".to_owned(), Some(LinkAt::Footing), "bolt_holds"),
    }
}

fn held(link: &LinkAnswer) -> String {
    match &link.held {
        Held::Unknown => "what?".to_owned(),
        Held::Nothing => "nothing".to_owned(),
        Held::Carries(force) => format!("{} lb", figure(force.pounds().floor())),
        Held::Refused(_) => "may not count".to_owned(),
    }
}

const fn caution(of: UpliftCaution) -> &'static str {
    match of {
        UpliftCaution::OtherSide => {
            "Ties above and below are on different sides of the wall: the plate between them rolls."
        }
        UpliftCaution::SideNotKnown => {
            "A tie belongs on the same side of the wall as the one above it, or the plate rolls."
        }
        UpliftCaution::ToeNailLimit => {
            "At the roof the code lets toe nails hold no more than 200 lb, whatever their number."
        }
        UpliftCaution::PlateBetween => {
            "Ties stand at other spacings than those above: set them at the same studs where you can. The plate between is not worked here."
        }
        UpliftCaution::PanelsInOnePiece => {
            "Panels that hold it down run in one piece from plate to plate, or are spliced over blocking."
        }
        UpliftCaution::StudsBelow => "Studs below an opening's sides take what comes down beside it.",
        UpliftCaution::SillBending => {
            "How the sill bends between studs and bolts is not worked here: bolts near the studs are better."
        }
        UpliftCaution::AnchorageNotCounted => {
            "What the bolt holds in the concrete is not counted: the washer on the sill is."
        }
        UpliftCaution::BoltsFarApart => "The bolts are farther apart than the 6' that the code lets them be.",
    }
}

fn reply(reading: &Reading, mut about: About<'_>, lifted: &Lifted, answer: &ChainAnswer) -> QuickReply {
    let mut reply = QuickReply::default();
    judge(&mut reply, answer);
    for link in &answer.links {
        if let Held::Carries(force) = link.held
            && force > Force::ZERO
            && link.demand > Force::ZERO
        {
            let sides = (link.demand.pounds(), force.pounds(), "lb");
            reply.checks.push(check(&told(link.link).0, sides, PUSHED));
        }
        if let Held::Refused(outside) = &link.held {
            about.say(format!("{}: {outside}", capital(&told(link.link).0)));
        }
    }
    for link in answer.unknown().filter(|link| link.demand > Force::ZERO) {
        let (name, _, input) = told(link.link);
        about.ask(input, format!("{}: what holds {}?", capital(&name), pounds(link.demand)));
    }
    reply.action = action(answer);
    let along = format!("{} plf", figure(lifted.along.plf().ceil()));
    reply.facts.push(fact("uplift_plf", "a foot of wall is lifted by", lifted.along.plf(), along));
    for link in &answer.links {
        let name = format!("{}_lb", told(link.link).0.replace(' ', "_"));
        reply.facts.push(force_fact(&name, format!("{}, each", told(link.link).0), link.demand));
    }
    ridge(reading, &mut about, &mut reply, lifted);
    let mut said: Vec<UpliftCaution> = Vec::new();
    for of in answer.links.iter().flat_map(|link| &link.cautions) {
        if !said.contains(of) {
            said.push(*of);
            about.say(caution(*of));
        }
    }
    reply.by_code.extend(code_rule(reading));
    about.say("No weight counts twice: what holds a shear wall's end down is not counted here again.");
    salt::say(reading, &mut reply, &mut about);
    cautions(&mut about);
    about.caution("Fill every hole that the label of a tie names, with the nail that it names.");
    about.part(working(lifted, answer));
    reply.tables.push(table(answer));
    reply.drawn = Drawn::Path(drawn(answer));
    reply.about = about.finish();
    reply
}

/// The answer is about the weakest link; while nothing is known, about the first that is lifted.
fn judge(reply: &mut QuickReply, answer: &ChainAnswer) {
    let unknown = answer.unknown().any(|link| link.demand > Force::ZERO);
    let about = answer.weakest_link().filter(|weakest| !weakest.holds() || !unknown);
    let about = about.or_else(|| answer.unknown().find(|link| link.demand > Force::ZERO)).or(answer.weakest_link());
    let Some(about) = about else {
        reply.size = "No uplift".to_owned();
        reply.verdict = words::verdict(members::check::Verdict::Carries).to_owned();
        return;
    };
    let (name, _, _) = told(about.link);
    reply.size = pounds(about.demand);
    reply.governs = Some(name);
    reply.ratio = about.used.filter(|used| used.is_finite());
    reply.combination = Some(PUSHED.to_owned());
    reply.verdict = match about.used {
        None => format!("{}?", capital(&told(about.link).0)),
        Some(used) if used > 1.0 => super::NOT_ENOUGH.to_owned(),
        Some(used) => words::verdict(members::check::Verdict::of(used)).to_owned(),
    };
    if about.used.is_some_and(f64::is_infinite) {
        reply.reason = Some("Nothing that may count holds it.".to_owned());
    }
}

fn action(answer: &ChainAnswer) -> Vec<String> {
    let mut says = Vec::new();
    for link in answer.links.iter().filter(|link| link.used.is_some_and(|used| used > 1.0)) {
        let name = capital(&told(link.link).0);
        let demand = pounds(link.demand);
        says.push(match link.held {
            Held::Carries(_) => format!(
                "{name}: {} is missing at each. Take one that holds {demand}, or set them closer.",
                pounds(link.missing)
            ),
            _ => format!("{name}: nothing holds {demand}. Take a tie or a strap that does, at each."),
        });
    }
    if says.is_empty() && answer.holds() {
        says.push(
            "Every link holds. Set each tie on the same side of the wall, one over the other, every hole nailed."
                .to_owned(),
        );
    }
    says
}

/// What pulls the ridge apart where the rafters lean on each other.
fn ridge(reading: &Reading, about: &mut About<'_>, reply: &mut QuickReply, lifted: &Lifted) {
    let pitch = reading.number("roof_pitch").map(Slope::from_rise_in_twelve);
    let (Some(pitch), Some(spacing)) = (pitch, reading.length("rafter_every")) else { return };
    match ridge_tension(lifted.along, pitch, spacing) {
        Ok(tension) => {
            reply.facts.push(force_fact("ridge_lb", "a strap over the ridge, at each pair of rafters", tension.demand));
        }
        Err(outside) => about.say(format!("The ridge: {outside}")),
    }
}

fn working(lifted: &Lifted, answer: &ChainAnswer) -> Part {
    let mut part = Part::new("Link by link");
    part.step("u", lifted.says.as_str(), "", (lifted.along.plf(), "plf"), lifted.source);
    for link in &answer.links {
        let expression = format!("{} plf × {}", figure(link.along.plf()), words::inches(link.takes));
        let basis = link.source.map_or(Basis::Arithmetic, Basis::Published);
        part.step("T", told(link.link).0, expression, (link.demand.pounds(), "lb"), Basis::Arithmetic);
        if let Held::Carries(force) = link.held {
            part.step("", format!("{}: holds", told(link.link).0), "", (force.pounds(), "lb"), basis);
        }
    }
    part
}

fn table(answer: &ChainAnswer) -> TableReply {
    let row = |link: &LinkAnswer| {
        let missing =
            if link.used.is_some() && link.missing > Force::ZERO { pounds(link.missing) } else { "—".to_owned() };
        vec![capital(&told(link.link).0), pounds(link.demand), held(link), missing]
    };
    TableReply {
        heading: "Link by link".to_owned(),
        columns: ["link", "each must hold", "holds", "missing"].map(str::to_owned).to_vec(),
        rows: answer.links.iter().map(row).collect(),
        notes: vec!["How much wall each takes stands in the working.".to_owned()],
    }
}

fn drawn(answer: &ChainAnswer) -> Vec<DrawnLink> {
    let link = |(index, link): (usize, &LinkAnswer)| {
        let (name, at, _) = told(link.link);
        Some(DrawnLink {
            at: at?,
            name,
            demand: pounds(link.demand),
            held: held(link),
            holds: link.used.map(|used| used <= 1.0),
            weakest: answer.weakest == Some(index),
        })
    };
    answer.links.iter().enumerate().filter_map(link).collect()
}
