//! Plumb, flat, and the faces of neighbours: what was measured beside every list of tolerances at hand.

use inspection::plane::{
    FLATNESS, Measured, PLUMB, PLUMB_IN_COMMON_USE, Tolerance, judge_faces, judge_flatness, judge_plumb,
};
use inspection::{Finding, Origin, Question, Remedy, Seen, Subject, Verdict};
use measure::Length;

use super::answer::Answer;
use super::reading::{Field, Inputs, typed};
use super::{Walked, walk_case, words};

walk_case! {
    /// The inputs of a look at plumb and plane. Each is a text with its unit, or a list of such texts.
    FlatnessCase
    texts {
        /// What was looked at: `plumb`, `wall`, `floor`, `ceiling`, or `faces` of neighbours.
        looking_at,
        /// How much it is out: `3/8"`.
        out,
        /// Over which height, or under which straightedge: `8'`.
        over,
        /// A limit of the job's own: so much,
        limit,
        /// in such a length.
        limit_over,
    }
    lists {
        /// Distances of neighbouring faces from a string, in their order.
        distances,
    }
}

const OUT: Field = Field::new("out", "Out by", 0.0, 24.0);
const OVER: Field = Field::new("over", "Measured over", 1.0, 480.0);
const LIMIT: Field = Field::new("limit", "Limit", 0.0, 6.0);
const LIMIT_OVER: Field = Field::new("limit_over", "Length of the limit", 1.0, 480.0);
const DISTANCE: Field = Field::new("distances", "Distance", 0.0, 120.0);

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum LookingAt {
    Plumb,
    Wall,
    Floor,
    Ceiling,
    Faces,
}

const LOOKING_AT: [(&str, LookingAt); 5] = [
    ("plumb", LookingAt::Plumb),
    ("wall", LookingAt::Wall),
    ("floor", LookingAt::Floor),
    ("ceiling", LookingAt::Ceiling),
    ("faces", LookingAt::Faces),
];

impl LookingAt {
    /// The tolerances for it, the strictest first.
    fn tolerances(self) -> Vec<Tolerance> {
        let mut tolerances: Vec<Tolerance> = match self {
            Self::Plumb => PLUMB.to_vec(),
            Self::Faces => Vec::new(),
            Self::Wall => flatness_of(&["wall"]),
            Self::Floor => flatness_of(&["floor"]),
            Self::Ceiling => flatness_of(&["ceiling"]),
        };
        let share = |tolerance: &Tolerance| tolerance.amount / tolerance.over;
        tolerances.sort_by(|a, b| share(a).total_cmp(&share(b)));
        tolerances
    }

    /// The one that is judged by where no limit was typed.
    fn usual(self, tolerances: &[Tolerance]) -> Option<Tolerance> {
        if self == Self::Plumb { Some(PLUMB_IN_COMMON_USE) } else { tolerances.first().copied() }
    }

    const fn subject(self) -> Subject {
        match self {
            Self::Plumb => Subject::Plumb,
            Self::Faces => Subject::FaceToFace,
            Self::Wall | Self::Floor | Self::Ceiling => Subject::Flatness,
        }
    }
}

/// The lists name the surface in their own words.
fn flatness_of(words: &[&str]) -> Vec<Tolerance> {
    let names = |tolerance: &&Tolerance| words.iter().any(|word| tolerance.source.place.contains(word));
    FLATNESS.iter().filter(names).copied().collect()
}

/// Reads and answers a case.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &FlatnessCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    let looking_at = looking_at(&mut inputs, &mut answer, case);
    let out = inputs.seen_length(&case.out, &OUT);
    let over = inputs.length(&case.over, &OVER);
    let own = own_limit(&mut inputs, case);
    let distances = inputs.lengths(&case.distances, &DISTANCE);
    if looking_at == LookingAt::Faces || !distances.is_empty() {
        faces(&mut answer, &distances);
    }
    if looking_at != LookingAt::Faces {
        surface(&mut inputs, &mut answer, looking_at, (out, over), own);
    }
    answer.caution("No code prints a tolerance for framing. Where the contract names one, that one counts.");
    answer.finish(inputs)
}

fn looking_at(inputs: &mut Inputs, answer: &mut Answer, case: &FlatnessCase) -> LookingAt {
    if typed(&case.looking_at).is_none() && case.distances.is_some() {
        inputs.assume("looking_at", "Looked at: the faces of neighbours (distances were given).");
        return LookingAt::Faces;
    }
    if typed(&case.looking_at).is_none() {
        answer.ask("What was looked at: plumb, a wall, a floor, a ceiling or the faces of neighbours?", "looking_at");
    }
    let says = "Looked at: the flatness of a wall (most often asked).";
    inputs.choice_or(&case.looking_at, "looking_at", &LOOKING_AT, LookingAt::Wall, says)
}

fn own_limit(inputs: &mut Inputs, case: &FlatnessCase) -> Option<(Length, Length)> {
    let limit = inputs.length(&case.limit, &LIMIT);
    let over = inputs.length(&case.limit_over, &LIMIT_OVER);
    if limit.is_some() && typed(&case.limit_over).is_none() {
        inputs.refuse(
            LIMIT_OVER.id,
            "A limit was given without its length. Say in how much: 8', for 1/4\" in 8'.".to_owned(),
        );
    }
    if over.is_some() && typed(&case.limit).is_none() {
        inputs
            .refuse(LIMIT.id, "A length was given without its limit. Say how much: 1/4\", for 1/4\" in 8'.".to_owned());
    }
    limit.zip(over)
}

fn faces(answer: &mut Answer, distances: &[Length]) {
    let steps = judge_faces(distances);
    if steps.is_empty() {
        answer.not_seen(Subject::FaceToFace, None);
        answer.ask("How far is each face from the string, one after the other?", "distances");
    }
    for step in &steps {
        let at = format!("{} to {}", step.between + 1, step.between + 2);
        answer.check(&step.check, Some(&at));
        if step.check.verdict == Verdict::Out {
            answer.say(format!("Faces {at}: a step of {}.", words::amount(step.check.found)));
            answer.remedy(&Remedy::PlaneOrPack);
            answer.remedy(&Remedy::StraightenOrChange);
        }
    }
}

fn surface(
    inputs: &mut Inputs,
    answer: &mut Answer,
    looking_at: LookingAt,
    (out, over): (Seen<Length>, Option<Length>),
    own: Option<(Length, Length)>,
) {
    let tolerances = looking_at.tolerances();
    let Some(usual) = looking_at.usual(&tolerances) else { return };
    let judged_by = own.map_or(usual, |(amount, over)| Tolerance { amount, over, ..usual });
    if out == Seen::NotObserved || over.is_none() {
        answer.ask("How much is it out, and over which length?", OUT.id);
    }
    let measured = match (out, over) {
        (Seen::Observed(_), None) => Seen::NotObserved,
        (out, over) => out.map(|out| Measured { out, over: over.unwrap_or(Length::ZERO) }),
    };
    let mut finding = judge(looking_at, measured, &judged_by);
    if own.is_some() {
        finding.checks.iter_mut().for_each(|check| check.by = Origin::Typed);
    } else {
        let clause = words::published(usual.source);
        let says = format!("Limit: {} ({}).", in_length(&usual), clause.source);
        inputs.assume(LIMIT.id, says);
    }
    answer.finding(&finding, None, question);
    if let Some(Measured { over, .. }) = measured.observed()
        && finding.checks.is_empty()
    {
        let (over, limit) = (words::length(over), words::length(judged_by.over));
        answer.say(format!("Over {over} this says nothing of a limit for {limit}. Measure over {limit}."));
    }
    for tolerance in &tolerances {
        let stands = judge(looking_at, measured, tolerance).verdict();
        let value = format!("{}: {}", in_length(tolerance), words::verdict(stands));
        answer.fact(words::subject(looking_at.subject()), value, Some(words::published(tolerance.source)));
    }
}

fn judge(looking_at: LookingAt, measured: Seen<Measured>, tolerance: &Tolerance) -> Finding {
    if looking_at == LookingAt::Plumb { judge_plumb(measured, tolerance) } else { judge_flatness(measured, tolerance) }
}

fn in_length(tolerance: &Tolerance) -> String {
    format!("{} in {}", words::length(tolerance.amount), words::length(tolerance.over))
}

const fn question(_: Question) -> &'static str {
    "out"
}
