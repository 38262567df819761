//! The sentences of a header answer: what it says, what to do, what to ask, what was assumed. The command and the
//! screen say the same.

use loads::header::HeaderSupport;
use lumber::Family;
use measure::{Denominator, Length};
use members::header::{
    Above, CutKind, HeaderAnswer, HeaderInput, KingTable, Limit, Misfit, TableAnswer, Tried, Verdict, Wind,
};
use members::working::Basis;
pub use members::working::figure;
use standards::{Source, Status};

use crate::field::{Unsaid, header_field};
use crate::reading::{Origin, Reading};

/// A length as it is written in a sentence.
#[must_use]
pub fn length(length: Length) -> String {
    length.to_feet_inches(Denominator::Sixteenth)
}

/// A spacing, which is called in inches.
#[must_use]
pub fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

/// A share as a percentage. A share over the limit never reads as 100 %, however little it is over.
#[must_use]
pub fn percent(share: f64) -> String {
    if share >= 10.0 {
        return "over 10 times".to_owned();
    }
    let whole = if share > 1.0 { (share * 100.0).ceil() } else { (share * 100.0).round() };
    let whole = if share > 1.0 { whole.max(101.0) } else { whole };
    format!("{} %", figure(whole))
}

/// A verdict in the trade's words.
#[must_use]
pub const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Carries => "carries it",
        Verdict::AtLimit => "at the limit",
        Verdict::TooSmall => "too small",
        Verdict::Outside => "not for this tool to decide",
    }
}

/// The verdict on a size, with its fit: a size that carries but cannot stand in the wall does not fit.
#[must_use]
pub fn verdict_on(tried: &Tried) -> &'static str {
    match (tried.verdict(), tried.misfit) {
        (Verdict::Carries | Verdict::AtLimit, Some(Misfit::TooDeep { .. })) => "too deep for the wall",
        (Verdict::Carries | Verdict::AtLimit, Some(Misfit::TooThick { .. })) => "too thick for the wall",
        (found, _) => verdict(found),
    }
}

/// Why a size does not fit, as a sentence.
#[must_use]
pub fn misfit(misfit: Misfit) -> String {
    match misfit {
        Misfit::TooDeep { room } => format!("Room under the top plates is {}.", length(room)),
        Misfit::TooThick { room } => format!("The wall is {} thick.", length(room)),
    }
}

/// What to do, in sentences, the most important first.
#[must_use]
pub fn action(answer: &HeaderAnswer) -> Vec<String> {
    let judged = &answer.tried[answer.judged];
    let name = judged.member.name();
    let mut says = Vec::new();
    if let Some(outside) = &judged.outside {
        says.push(outside.clone());
        says.push("A licensed engineer decides.".to_owned());
    } else if judged.verdict() == Verdict::TooSmall {
        says.push(too_small(&name, judged));
    }
    if let Some(found) = judged.misfit {
        says.push(misfit(found));
    }
    if !judged.works() {
        says.push(alternatives(answer));
    }
    if let Some(kings) = &answer.kings_outside {
        says.push(kings.clone());
    }
    if judged.jacks.is_none() && judged.outside.is_none() {
        says.push("Five jacks a side are not enough under it: it needs a post, which an engineer designs.".to_owned());
    }
    says
}

fn too_small(name: &str, judged: &Tried) -> String {
    match judged.governing() {
        Some(check) => {
            let over = (check.share - 1.0) * 100.0;
            let over = match over {
                over if over < 1.0 => "under 1 %".to_owned(),
                over if over >= 900.0 => "more than 10 times".to_owned(),
                over => format!("{} %", figure(over.ceil())),
            };
            format!("{name} is too small: {over} over in {}.", check.limit.words())
        }
        None => format!("{name} is too small."),
    }
}

fn alternatives(answer: &HeaderAnswer) -> String {
    let names: Vec<String> = answer.smallest.iter().map(|&index| answer.tried[index].member.name()).collect();
    match names.split_first() {
        None => {
            "No size tried here carries it and fits. Lower the load, narrow the opening, or ask an engineer.".to_owned()
        }
        Some((first, [])) => format!("{first} carries it."),
        Some((first, rest)) => format!("{first} carries it; so does {}.", rest.join(", ")),
    }
}

/// What is still to be said, each with the input that says it.
#[must_use]
pub fn questions(reading: &Reading, input: &HeaderInput, answer: &HeaderAnswer) -> Vec<(&'static str, String)> {
    let mut questions = Vec::new();
    if input.above.is_none() {
        questions.push((
            "above",
            "What sits on the header: joists or rafters, or cripple studs? Until you say, cripples are taken, and the \
             code's table is not read."
                .to_owned(),
        ));
    }
    let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Assumed);
    if assumed("carries") {
        questions.push(("carries", "What comes down on it? Roof and ceiling only is assumed.".to_owned()));
    }
    if assumed("ground_snow") && input.site.given_roof_snow.is_none() {
        questions.push((
            "ground_snow",
            "What is the ground snow load of the place? Ask the building department.".to_owned(),
        ));
    }
    if assumed("wind_speed") && matches!(input.wind, Wind::Site(_)) {
        questions
            .push(("wind_speed", "What is the basic wind speed of the place? Ask the building department.".to_owned()));
    }
    let wide = input.opening >= Length::from_feet(8.0);
    if assumed("closure") && wide && answer.kings.is_some() {
        questions.push((
            "closure",
            "Is it an overhead door? Its tracks take the wind to the jambs, not to the header.".to_owned(),
        ));
    }
    questions
}

/// Everything that was assumed: inputs first, then what the check itself takes for granted.
#[must_use]
pub fn assumptions(reading: &Reading, input: &HeaderInput) -> Vec<(Option<&'static str>, String)> {
    let mut assumed: Vec<(Option<&'static str>, String)> = reading
        .values
        .iter()
        .filter(|value| value.origin == Origin::Assumed && counts(value.spec.id, input))
        .map(|value| {
            let why = match value.spec.unsaid {
                Unsaid::Assumed(_, why) => why,
                Unsaid::Nothing => "",
            };
            (Some(value.spec.id), format!("{}: {} ({why}).", value.spec.label, value.shown))
        })
        .collect();
    if reading.get("wall_above").is_some_and(|value| value.origin == Origin::Unsaid) && input.tributary.walls_above > 0
    {
        assumed.push((Some("wall_above"), "Wall above: 80 plf a storey (a sided 2x6 wall).".to_owned()));
    }
    let snow_counts = input.tributary.roof > Length::ZERO && input.site.given_roof_snow.is_none();
    if snow_counts && reading.word("snow_exposure").is_none() {
        let says = "Roof in the wind: partly sheltered, exposure factor 1 (the most in open country; all round sheltered \
                    is more).";
        assumed.push((Some("snow_exposure"), says.to_owned()));
    }
    if input.above.is_none() {
        assumed.push((Some("above"), "On top of it: cripple studs, the worse of the two.".to_owned()));
    }
    assumed.extend(taken_for_granted(input).into_iter().map(|says| (None, says)));
    assumed
}

/// Whether an assumed input has a part in this answer.
fn counts(id: &str, input: &HeaderInput) -> bool {
    let roof = input.tributary.roof > Length::ZERO;
    let floor = input.tributary.floor > Length::ZERO;
    let worked_wind = matches!(input.wind, Wind::Site(_));
    match id {
        "overhang" | "roof_dead" | "ceiling_dead" | "attic_live" | "roof_live" => roof,
        "ground_snow" | "thermal" => roof && input.site.given_roof_snow.is_none(),
        "floor_dead" | "floor_live" => floor,
        "building_width" => roof || floor,
        "wind_speed" | "speed_given_as" | "exposure" | "mean_roof_height" | "topographic_factor"
        | "ground_elevation" | "enclosure" | "near_corner" => worked_wind,
        "closure" => input.wind != Wind::None,
        "moisture_now" | "moisture_in_service" => input.gap.is_some(),
        _ => true,
    }
}

fn taken_for_granted(input: &HeaderInput) -> Vec<String> {
    let mut says = vec![
        "The load is even along the header: no beam, girder truss, valley or post comes down on it in one place.".to_owned(),
        "Plies are nailed together as the drawing or the code's schedule says, so that they bend and roll as one; across \
         the wall, each bends by itself."
            .to_owned(),
        "Kings and sheathing hold the jacks across their thin way; plates and jacks are of the header's wood.".to_owned(),
        "Sag is what shows at first; under lasting load wood goes on sagging for years.".to_owned(),
    ];
    if input.tributary.roof > Length::ZERO {
        says.push(
            "Snow lies even on a flat roof: no drift, no sliding, no unbalanced load. A higher roof beside it changes that."
                .to_owned(),
        );
    }
    if input.wind != Wind::None {
        says.push("Uplift on the header is not looked at.".to_owned());
    }
    says
}

/// The usual cautions.
#[must_use]
pub fn cautions(input: &HeaderInput, answer: &HeaderAnswer) -> Vec<String> {
    let mut says = vec![
        "The engineer's drawing wins. Where it differs from this, follow it and ask.".to_owned(),
        "Local code and the building official decide. This is a check, not an approval.".to_owned(),
    ];
    let judged = &answer.tried[answer.judged];
    if judged.family == Family::BuiltUp2x && judged.member.plies() == 1 {
        says.push(
            "A header of one ply takes a flat 2x plate along its top and its bottom: see that both fit.".to_owned(),
        );
    }
    if input.support == HeaderSupport::GableEnd {
        says.push("A tall gable wall can hinge at the ceiling: brace it as drawn.".to_owned());
    }
    says
}

/// What the code's table says, in sentences; the first is the answer.
#[must_use]
pub fn table(answer: &HeaderAnswer, input: &HeaderInput) -> Vec<String> {
    let name = answer.tried[answer.judged].member.name();
    match &answer.table {
        TableAnswer::AskAbove => {
            vec!["Say what sits on the header, joists or rafters or cripple studs, before the table is read.".to_owned()]
        }
        TableAnswer::Nonbearing { flat_two_by_four: true } => vec![
            "A wall that bears nothing: the code lets a flat 2x4 head an opening up to 8' (from memory). It says nothing of the wind across it.".to_owned(),
        ],
        TableAnswer::Nonbearing { flat_two_by_four: false } => vec![
            "A wall that bears nothing, but the opening is over 8' or the framing above is more than 24\" away: the code's flat 2x4 does not reach (from memory).".to_owned(),
        ],
        TableAnswer::Outside(sentence) => vec![sentence.clone()],
        TableAnswer::Span { allowed, printed, unbraced_top_factor, jacks, cells, source: from, differences } => {
            let mut says = vec![format!(
                "{name} spans {} by the table, on {jacks} jack{} a side.",
                length(*allowed),
                if *jacks == 1 { "" } else { "s" },
            )];
            if *unbraced_top_factor < 1.0 {
                says.push(format!("That is {} × {unbraced_top_factor:.2}: cripple studs leave its top unbraced.", length(*printed)));
            } else if input.above == Some(Above::FramingBears) {
                says.push("Only while joists or rafters brace its top.".to_owned());
            }
            says.push(format!("Read at: {cells}. Ground snow is not roof snow."));
            says.push(format!("{}.", source(*from)));
            says.extend(differences.iter().cloned());
            says
        }
    }
}

/// What the kings' table says.
#[must_use]
pub fn king_table(answer: &HeaderAnswer) -> Option<String> {
    answer.king_table.as_ref().map(|table| match table {
        KingTable::Outside(sentence) => sentence.clone(),
        KingTable::Kings { each_side, source: from } => {
            format!("By the code's table: {each_side} a side. {}.", source(*from))
        }
    })
}

/// A source in words: `NDS 2018 Eq. 3.3-6, looked up`.
#[must_use]
pub fn source(from: Source) -> String {
    if from.status == Status::CommonPractice {
        return format!("{} {}", from.document, from.place).trim_end().to_owned();
    }
    let gap = if from.place.is_empty() { "" } else { " " };
    [from.document, gap, from.place, ", ", from.status.words()].concat()
}

/// Where a step of a working comes from, in words.
#[must_use]
pub fn basis(basis: Basis, reading: &Reading) -> String {
    match basis {
        Basis::Published(from) => source(from),
        Basis::Arithmetic => "statics".to_owned(),
        Basis::Input(id) => match reading.get(id).map(|value| value.origin) {
            Some(Origin::Typed) => "typed by you".to_owned(),
            Some(Origin::Site) => "from the job".to_owned(),
            _ => "assumed".to_owned(),
        },
    }
}

/// What to do about a gap at the jack.
#[must_use]
pub fn gap_action() -> Vec<String> {
    vec![
        "Bearing is not complete: fix it before it is covered, so that the header sits on its jacks and not on nails."
            .to_owned(),
        "Two practices: steel shims or washers, since wood shims crush; or cedar shims driven in. The engineer of record \
         decides."
            .to_owned(),
        "Photograph it after shimming.".to_owned(),
    ]
}

/// A limit's name with a capital, for a heading.
#[must_use]
pub fn limit_heading(limit: Limit) -> String {
    let mut words = limit.words().to_owned();
    if let Some(first) = words.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    words
}

/// The name of an input, for a sentence.
#[must_use]
pub fn label(id: &str) -> &'static str {
    header_field(id).map_or("", |spec| spec.label)
}

/// How a length of the cut list comes about.
#[must_use]
pub const fn cut_note(piece: CutKind) -> &'static str {
    match piece {
        CutKind::Header => "opening and 1-1/2\" for each jack; as many plies",
        CutKind::Jack => "head height less the bottom plate",
        CutKind::King => "wall height less three plates",
        CutKind::CrippleAbove => "what is left under the top plates; count by your layout",
    }
}
