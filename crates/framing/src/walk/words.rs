//! The sentences of a walk's answer: subjects, verdicts, questions, remedies and who must say yes to them.

use fastening::Caution;
use inspection::{Amount, Check, Limit, Origin, Question, Subject, Verdict, Who};
use measure::{Denominator, Force, Length, Rounding};
use standards::irc_2021::r403_1_6::middle_third;
use standards::{Source, Status};

use super::reply::{Clause, WalkCheck};

mod remedies;
mod too;

pub use remedies::remedy;
pub use too::too;

/// What stands under every answer.
pub const WHO_DECIDES: &str = "The drawing and the code in force decide, and those who answer for them: the code \
                               official and the licensed engineer. Editions and local changes differ.";

/// A verdict.
#[must_use]
pub const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Within => "within",
        Verdict::AtLimit => "at the limit",
        Verdict::NotSeen => "could not be seen",
        Verdict::NotDecided => "not for this tool to decide",
        Verdict::Out => "out",
    }
}

/// A verdict by its words; none for other words.
#[must_use]
pub fn verdict_of(words: &str) -> Option<Verdict> {
    const ALL: [Verdict; 5] = [Verdict::Within, Verdict::AtLimit, Verdict::NotSeen, Verdict::NotDecided, Verdict::Out];
    ALL.into_iter().find(|one| verdict(*one) == words)
}

/// Who must say yes.
#[must_use]
pub const fn who(who: Who) -> &'static str {
    match who {
        Who::Crew => "crew",
        Who::CodeOfficial => "code official",
        Who::Engineer => "engineer",
        Who::Maker => "maker",
    }
}

/// What is looked at.
#[must_use]
pub const fn subject(subject: Subject) -> &'static str {
    match subject {
        Subject::StudSpacing => "Stud spacing",
        Subject::SheetEdgeBearing => "Wood under the sheet's edge",
        Subject::Plies => "Studs in the pack",
        Subject::Bow => "Bow of the stud",
        Subject::Plumb => "Out of plumb",
        Subject::Flatness => "Out of flat",
        Subject::FaceToFace => "Step between neighbours' faces",
        Subject::NotchDepth => "Notch depth",
        Subject::NotchLength => "Notch length",
        Subject::NotchPlace => "Place of the notch",
        Subject::HoleDiameter => "Hole diameter",
        Subject::HoleToEdge => "Wood between hole and edge",
        Subject::HoleToNext => "Wood between hole and next cut",
        Subject::HoleBesideNotch => "Hole beside a notch",
        Subject::DoubledInARow => "Doubled studs bored in a row",
        Subject::EngineeredMember => "Cut in an engineered member",
        Subject::PlateCut => "Taken of the plate's width",
        Subject::TieThickness => "Thickness of the tie",
        Subject::TieWidth => "Width of the tie",
        Subject::TiePastOpening => "Tie past the opening",
        Subject::TieNails => "Nails of the tie, each side",
        other => subject_of_fasteners(other),
    }
}

const fn subject_of_fasteners(subject: Subject) -> &'static str {
    match subject {
        Subject::NailDiameter => "Nail diameter",
        Subject::NailLength => "Nail length",
        Subject::EdgeNails => "Edge nails that hold",
        Subject::FieldNails => "Field nails that hold",
        Subject::WidestNailGap => "Widest gap between nails that hold",
        Subject::NailToPanelEdge => "Nail to panel edge",
        Subject::BoltDiameter => "Bolt diameter",
        Subject::Embedment => "Embedment in the concrete",
        Subject::ThreadForNut => "Bolt above the foundation",
        Subject::Nut => "Nut",
        Subject::Washer => "Washer",
        Subject::WasherSide => "Side of the plate washer",
        Subject::WasherThickness => "Thickness of the plate washer",
        Subject::BoltAcrossPlate => "Bolt to the nearer face of the plate",
        Subject::BoltNotTooNearEnd => "First bolt to the plate's end",
        Subject::BoltNearEnd => "Nearest good bolt to the plate's end",
        Subject::BoltsInPiece => "Bolts that hold in the plate piece",
        Subject::BoltSpacing => "Spacing of bolts that hold",
        Subject::HoldDownThread => "Rod below the top of the nut",
        Subject::HoldDownOffset => "Rod off the post",
        Subject::HoldDownFasteners => "Fasteners of the hold-down",
        Subject::HoldDownStuds => "Studs the hold-down is fixed to",
        Subject::Uplift => "Uplift on the connection",
        Subject::TieSide => "Side of the tie",
        Subject::ConnectionNails => "Nails of the connection",
        Subject::StrapNails => "Nails of the strap, each side",
        Subject::StrapFlat => "How the strap lies",
        Subject::UpliftAtWallTop => "Uplift at the wall's top",
        Subject::Moisture => "Moisture content",
        _ => "What was looked at",
    }
}

/// What is plainly wrong, in a sentence without its point.
#[must_use]
pub const fn wrong(subject: Subject) -> &'static str {
    match subject {
        Subject::Nut => "The nut is missing or loose: the bolt is not counted",
        Subject::Washer => "The washer is missing, or is not the one that is asked for",
        Subject::HoldDownOffset => "The rod stands off the post",
        Subject::HoldDownThread => "The rod's end is below the top of the tightened nut: not engaged is not installed",
        Subject::NotchPlace => "No notch is allowed in this place",
        Subject::HoleBesideNotch => "A hole and a notch are in one section: that is not allowed",
        Subject::PlateCut => "Over half of the plate's width is taken and there is no tie across it",
        Subject::TieSide => "The tie is on the side without sheathing",
        Subject::StrapFlat => "The strap does not lie flat and straight",
        other => self::subject(other),
    }
}

/// A question.
#[must_use]
pub const fn question(question: Question) -> &'static str {
    match question {
        Question::HoleToEdge => "How much wood is between the hole and the face?",
        Question::HoleToNext => "How much wood is between the hole and the next hole or notch?",
        Question::NotchBesideHole => "Is there a notch in the same section as the hole?",
        Question::DoubledInARow => "How many doubled studs in a row are bored?",
        Question::PanelDryWhenNailed => "Was the panel dry when it was nailed? Depths in a swollen panel say nothing.",
        Question::NailToPanelEdge => "How far from the panel's edge are the nails?",
        Question::Embedment => "How deep is the bolt in the concrete?",
        Question::Projection => "How far does the bolt stand up over the foundation?",
        Question::BoltAcrossPlate => "How far is the bolt from the plate's face?",
        Question::Nut => "Is the nut on, and tight?",
        Question::NutAndWasherSize => "How thick are nut and washer? This bolt's size is not listed.",
        Question::TieSide => "Is the tie on the sheathed side?",
        Question::UpliftRequired => "What does the drawing or the roof's table ask of the connection?",
        Question::MoreMoistureReadings => "Are there at least three readings of this wall? Some codes ask for three.",
    }
}

/// What a nail's number alone does not say.
#[must_use]
pub const fn nail_caution(caution: Caution) -> &'static str {
    match caution {
        Caution::ShortPenetration => "The nail reaches less than 10 of its diameters: its value is reduced for that.",
        Caution::LayerBetween => "A layer between the two also bends the nail, which is not counted.",
        Caution::PointComesThrough => "The point comes out of the main member.",
        Caution::NoWithdrawalFromEndGrain => "A nail in end grain holds nothing when it is pulled out.",
        Caution::ToeNail => "Toe nails split the end easily and hold little uplift: in a high wind a strap does.",
    }
}

/// A sentence, with its place before it where there are several.
#[must_use]
pub fn at_place(says: &str, at: Option<&str>) -> String {
    let stop = if says.ends_with(['?', '.']) { "" } else { "." };
    at.map_or_else(|| format!("{says}{stop}"), |at| format!("{at}: {says}{stop}"))
}

/// A length: a fraction where a tape has the mark, else inches to the thousandth.
#[must_use]
pub fn length(length: Length) -> String {
    let marks = length.inches() * 64.0;
    if (marks - marks.round()).abs() < 1e-6 {
        length.to_inches_fraction(Denominator::SixtyFourth)
    } else {
        decimals(length)
    }
}

fn decimals(length: Length) -> String {
    let text = format!("{:.3}", length.inches());
    format!("{} in", text.trim_end_matches('0').trim_end_matches('.'))
}

/// A length that is a limit: to the sixteenth on its safe side, and exact behind it.
#[must_use]
pub fn limit_length(limit: Length, safe: Rounding) -> String {
    let exact = length(limit);
    if exact.ends_with('"') {
        return exact;
    }
    let marked = limit.rounded(Denominator::Sixteenth, safe).to_inches_fraction(Denominator::Sixteenth);
    format!("{marked} ({})", decimals(limit))
}

/// Where across a plate a bolt may stand, rounded inward so that a hole drilled by it is right.
#[must_use]
pub fn middle_third_window(plate: Length) -> String {
    let (from, to) = middle_third(plate);
    let mark = |at: Length, safe| at.rounded(Denominator::Sixteenth, safe).to_inches_fraction(Denominator::Sixteenth);
    format!("{} to {} from either face", mark(from, Rounding::Up), mark(to, Rounding::Down))
}

/// An amount with its unit.
#[must_use]
pub fn amount(amount: Amount) -> String {
    match amount {
        Amount::Length(value) => length(value),
        Amount::Count(value) => value.pieces().to_string(),
        Amount::Force(value) => force(value),
        Amount::LineLoad(value) => format!("{:.0} plf", value.plf()),
        Amount::Moisture(value) => percent(value.percent()),
    }
}

/// A force, to the pound.
#[must_use]
pub fn force(force: Force) -> String {
    format!("{:.0} lb", force.pounds())
}

/// Per cent, to the tenth.
#[must_use]
pub fn percent(value: f64) -> String {
    let tenths = (value * 10.0).round() / 10.0;
    format!("{} %", format!("{tenths:.1}").trim_end_matches('0').trim_end_matches('.'))
}

fn limit(limit: Limit) -> String {
    match limit {
        Limit::AtMost(Amount::Length(value)) => format!("at most {}", limit_length(value, Rounding::Down)),
        Limit::AtLeast(Amount::Length(value)) => format!("at least {}", limit_length(value, Rounding::Up)),
        other => exact_limit(other),
    }
}

/// Whether it is made to a thousandth of an inch: no tape is held to it.
const fn is_gauge(of: Subject) -> bool {
    matches!(of, Subject::NailDiameter | Subject::TieThickness | Subject::WasherThickness)
}

fn exact_limit(limit: Limit) -> String {
    match limit {
        Limit::AtMost(value) => format!("at most {}", amount(value)),
        Limit::AtLeast(value) => format!("at least {}", amount(value)),
    }
}

const fn number(amount: Amount) -> f64 {
    match amount {
        Amount::Length(value) => value.inches(),
        Amount::Count(value) => value.pieces() as f64,
        Amount::Force(value) => value.pounds(),
        Amount::LineLoad(value) => value.plf(),
        Amount::Moisture(value) => value.percent(),
    }
}

/// What is to spare as a share of the limit; negative where it is missing.
#[must_use]
pub fn share_of_limit(check: &Check) -> f64 {
    const NOTHING: f64 = 1e-9;
    number(check.margin) / number(check.limit.value()).abs().max(NOTHING)
}

/// Share of the limit that is used, 1 at the limit; none where one of the two is nothing.
#[must_use]
pub fn share_used(check: &Check) -> Option<f64> {
    let (found, limit) = (number(check.found), number(check.limit.value()));
    let used = if matches!(check.limit, Limit::AtMost(_)) { found / limit } else { limit / found };
    (found > 0.0 && limit > 0.0).then_some(used)
}

/// What is to spare, or missing.
#[must_use]
pub fn margin(check: &Check) -> String {
    let size = number(check.margin);
    if size == 0.0 {
        return "nothing to spare".to_owned();
    }
    let text = match check.margin {
        Amount::Length(value) if size.abs() < 0.001 => format!("under 0.001 in, exactly {} in", value.abs().inches()),
        Amount::Length(value) => length(value.abs()),
        Amount::Force(_) if size.abs() < 0.5 => "under 1 lb".to_owned(),
        Amount::Moisture(_) => match percent(size.abs()).trim_end_matches(" %") {
            "1" => "1 point".to_owned(),
            points => format!("{points} points"),
        },
        other => amount(other).trim_start_matches('-').to_owned(),
    };
    match (size < 0.0, check.limit) {
        (false, _) => format!("{text} to spare"),
        (true, Limit::AtMost(_)) => format!("{text} over"),
        (true, Limit::AtLeast(_)) => format!("{text} short"),
    }
}

/// A value beside its limit.
#[must_use]
pub fn check(check: &Check, at: Option<&str>) -> WalkCheck {
    let found = match (check.of, check.found) {
        (Subject::SheetEdgeBearing, Amount::Length(found)) if found < Length::ZERO => {
            format!("none: the nearest stud is {} away", length(found.abs()))
        }
        (_, found) => amount(found),
    };
    WalkCheck {
        subject: subject(check.of).to_owned(),
        at: at.map(str::to_owned),
        found,
        limit: if is_gauge(check.of) { exact_limit(check.limit) } else { limit(check.limit) },
        margin: margin(check),
        verdict: verdict(check.verdict).to_owned(),
        clause: clause(&check.by),
    }
}

/// Who asks for a limit.
#[must_use]
pub fn clause(by: &Origin) -> Clause {
    let plain = |source: String| Clause { source, status: String::new() };
    match by {
        Origin::Published(from) => published(*from),
        Origin::Drawing(drawing) => match &drawing.revision {
            Some(revision) => plain(format!("drawing {}, revision {revision}", drawing.sheet)),
            None => plain(format!("drawing {}", drawing.sheet)),
        },
        Origin::Typed => plain("typed by you".to_owned()),
        Origin::Computed => plain("worked out here".to_owned()),
    }
}

/// A published source, and how it came here.
#[must_use]
pub fn published(from: Source) -> Clause {
    let practice = from.status == Status::CommonPractice;
    let source = if practice { from.place.to_owned() } else { format!("{} {}", from.document, from.place) };
    Clause { source: source.trim_end().to_owned(), status: from.status.words().to_owned() }
}
