//! Full-height pieces of a wall line, each held down at its own ends, read and answered.

use bracing::{
    Framing, LineAnswer, Nailing, Remedy, Segment, SegmentedAnswer, SegmentedWall, Strength, check_line,
    check_segmented, nail_words, nailings, strength,
};
use measure::{Denominator, Force, Length, LineLoad};
use members::check::Verdict;
use members::working::{Basis, Part};
use standards::sdpws_2015::aspect;

use super::ends::{self, Demand, PUSHED, check};
use super::{faces, frame, lean, level_joints, lists};
use crate::quick::read::{plf, pounds as force};
use crate::quick::reply::{Drawn, DrawnPiece, DrawnWall, QuickReply, TableReply, TriedReply};
use crate::quick::say::{fact, force_fact, pounds, unworked};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words::{self, figure, percent};

pub(super) const FIELDS: &[&str] = &[
    "wall_pieces",
    "wall_high",
    "wall_push",
    "wall_dead",
    "drawn_size",
    "schedule_lines",
    "end_post",
    "rod_in",
    "held_on",
    "hold_down_label",
    "hold_down_gives",
    "brace_studs",
    "brace_spacing",
    "panels_lie",
    "sheet_long",
    "wall_blocking",
    "field_nails",
    "other_face",
    "nailed_wet",
    "species",
    "grade",
    "provisions",
    "seismic_design_category",
];

/// One nailing that was tried on the wall.
pub(super) struct Tried {
    pub(super) nailing: Nailing,
    pub(super) strength: Result<Strength, String>,
}

impl Tried {
    /// On a wall so high, of these pieces.
    fn of(nailing: Nailing, framing: &Framing, (height, pieces): (Length, &[Length])) -> Self {
        let strength = strength(&nailing, framing).map(|strength| strength.of_pieces(height, pieces));
        Self { nailing, strength: strength.map_err(|outside| outside.to_string()) }
    }
}

/// Every nailing that is offered, and the one that was drawn.
pub(super) fn tried(
    reading: &Reading,
    drawn: Option<Nailing>,
    framing: &Framing,
    wall: (Length, &[Length]),
) -> Vec<Tried> {
    let offered = nailings().map(|nailing| frame::lying(nailing, reading));
    let mut all: Vec<Nailing> = offered.collect();
    if let Some(drawn) = drawn.filter(|drawn| !all.contains(drawn)) {
        all.insert(0, drawn);
    }
    all.into_iter().map(|nailing| Tried::of(nailing, framing, wall)).collect()
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let pieces = lists::lengths(reading, "wall_pieces", (0.5, 100.0))?;
    let drawn = frame::drawn(reading);
    frame::other_face(reading);
    if reading.problems().next().is_some() {
        return None;
    }
    let reading = &*reading;
    let framing = frame::framing(reading)?;
    let (_, ends) = frame::ends(reading)?;
    let wall = SegmentedWall {
        height: reading.length("wall_high")?,
        pieces,
        shear: force(reading, "wall_push"),
        dead: plf(reading, "wall_dead"),
        ends,
    };
    let about = About::of(reading, FIELDS);
    if let Some(sentence) = frame::earthquakes(reading) {
        return Some(unworked(about, sentence));
    }
    let all = tried(reading, drawn, &framing, (wall.height, &wall.pieces));
    let used = |one: &Tried| one.strength.as_ref().ok().map(|strength| check_segmented(&wall, strength).used);
    let smallest = all.iter().position(|one| used(one).is_some_and(|used| used <= 1.0));
    let judged = match drawn {
        Some(drawn) => all.iter().position(|one| one.nailing == drawn)?,
        // Where nothing carries it, what comes nearest.
        None => smallest.unwrap_or_else(|| strongest(&all)),
    };
    let about_it = &all[judged];
    let strength = match &about_it.strength {
        Ok(strength) => strength,
        Err(sentence) => return Some(unworked(about, sentence.clone())),
    };
    let line = match check_line(&wall, &about_it.nailing, &framing) {
        Ok(line) => line,
        Err(outside) => return Some(unworked(about, outside.to_string())),
    };
    let mut reply = reply(reading, about, (&wall, &line), (about_it.nailing, strength));
    reply.sizes = all.iter().map(|one| tried_reply(one, used(one))).collect();
    reply.smallest = smallest.map(|index| all[index].nailing.to_string()).into_iter().collect();
    Some(reply)
}

/// Which of them carries the most.
pub(super) fn strongest(all: &[Tried]) -> usize {
    let carries = |one: &Tried| one.strength.as_ref().map_or(0.0, |strength| strength.allowable.line_load().plf());
    let most = all.iter().enumerate().max_by(|(_, a), (_, b)| carries(a).total_cmp(&carries(b)));
    most.map_or(0, |(index, _)| index)
}

pub(super) fn tried_reply(one: &Tried, used: Option<f64>) -> TriedReply {
    let verdict = match used.map(Verdict::of) {
        Some(Verdict::TooSmall) => super::NOT_ENOUGH,
        Some(other) => words::verdict(other),
        None => words::verdict(Verdict::Outside),
    };
    TriedReply {
        size: one.nailing.to_string(),
        family: if one.nailing.both_faces { "Panels on both faces" } else { "Panels on one face" }.to_owned(),
        verdict: verdict.to_owned(),
        ratio: used.filter(|used| used.is_finite()),
        governs: used.map(|_| "shear in the panels".to_owned()),
        reason: one.strength.as_ref().err().cloned(),
    }
}

fn reply(
    reading: &Reading,
    mut about: About<'_>,
    (wall, line): (&SegmentedWall, &LineAnswer),
    (nailing, strength): (Nailing, &Strength),
) -> QuickReply {
    let answer = &line.pieces;
    let mut reply = QuickReply { size: nailing.to_string(), ..QuickReply::default() };
    let demand = hardest(reading, wall, answer);
    let unit = answer.pieces.iter().map(|piece| piece.unit_shear).fold(LineLoad::ZERO, LineLoad::max);
    let mut checks = Vec::new();
    if answer.capacity > Force::ZERO {
        checks.push(check("shear in the panels", (wall.shear.pounds(), answer.capacity.pounds(), "lb"), PUSHED));
        checks.extend(ends::checks(reading, &mut about, demand));
    }
    ends::judge(&mut reply, checks);
    let nothing_counts = answer.capacity <= Force::ZERO;
    if nothing_counts {
        reply.verdict = super::NOT_ENOUGH.to_owned();
        reply.reason = Some("No piece is long enough to count.".to_owned());
    }
    reply.facts.push(force_fact("tension_lb", "each end is held down for", demand.tension.max(Force::ZERO)));
    reply.facts.push(force_fact("compression_lb", "the post at the other end is pressed by", demand.compression));
    let carries = strength.allowable.line_load();
    reply.facts.push(fact("unit_shear_plf", "a foot of the hardest piece is given", unit.plf(), plf_text(unit)));
    reply.facts.push(fact("allowable_plf", "a foot of such wall carries", carries.plf(), plf_text(carries)));
    reply.facts.push(force_fact("capacity_lb", "all pieces carry", answer.capacity));
    reply.action = action(reading, (wall, line), (nailing, strength), (demand, &reply.checks));
    about.part(strength_part(strength));
    about.part(pieces_part(wall, answer));
    let counted = answer.pieces.iter().filter(|piece| piece.factor > 0.0);
    if let Some(shortest) = counted.min_by(|a, b| a.length.inches().total_cmp(&b.length.inches()))
        && let Some(lean) = lean::lean(
            reading,
            &nailing,
            (strength, shortest.unit_shear),
            (wall.height, shortest.length),
            demand.tension,
        )
    {
        about.say("The lean is that of the shortest piece that counts. No limit is printed for wind: see that doors, glass and board beside it can follow.");
        lean::say(&mut reply, &mut about, lean, wall.height);
    }
    faces::say(reading, &mut reply, &mut about, strength);
    if let Some(missing) = answer.missing {
        reply
            .facts
            .insert(0, fact("missing_in", "full-height wall is missing", missing.inches(), words::length(missing)));
    }
    ends::joints(&mut reply, strength, &nailing);
    reply.tables.push(pieces_table(answer));
    ends::cautions(reading, &mut about);
    about.say(if strength.blocked {
        "Pieces share the push by their strength; one that is narrower than 2:1 counts for less, one past 3.5:1 for nothing."
    } else {
        "Pieces share the push by their strength; one that is narrower than 2:1 counts for nothing where level joints are not blocked."
    });
    about.say(
        "Something must bring the push to every piece: a top plate that runs through, or a strap where it is cut.",
    );
    reply.drawn = Drawn::Wall(drawn(reading, (wall, answer), (nailing, strength.blocked)));
    reply.about = about.finish();
    reply
}

/// The end that must take the most.
fn hardest(reading: &Reading, wall: &SegmentedWall, answer: &SegmentedAnswer) -> Demand {
    let most = |of: fn(&Segment) -> Force| answer.pieces.iter().map(of).fold(Force::from_pounds(f64::MIN), Force::max);
    Demand {
        tension: most(|piece| piece.tension),
        compression: most(|piece| piece.compression),
        dead: ends::dead_on_post(reading, wall.dead),
        height: wall.height,
    }
}

fn plf_text(load: LineLoad) -> String {
    format!("{} plf", figure(load.plf().round()))
}

/// What to nail, in words a framer reads.
pub(super) fn nail_it(reading: &Reading, nailing: &Nailing, blocked: bool) -> String {
    let studs = reading.length("brace_spacing").unwrap_or(Length::from_inches(16.0));
    let field = words::inches(level_joints::field_spacing(reading, nailing, studs));
    let every = if blocked { "Block every edge." } else { "Block every edge that is upright." };
    let faces = if nailing.both_faces { "both faces" } else { "one face" };
    format!(
        "Nail the panels on {faces} with {}, {} along every edge and {field} in the field. {every}",
        nail_words(nailing.fastener),
        words::inches(nailing.edge)
    )
}

fn action(
    reading: &Reading,
    (wall, line): (&SegmentedWall, &LineAnswer),
    (nailing, strength): (Nailing, &Strength),
    (demand, checks): (Demand, &[CheckReply]),
) -> Vec<String> {
    let mut says = Vec::new();
    let answer = &line.pieces;
    match line.missing {
        Some(_) => says.extend(remedies(line)),
        None => says.push(nail_it(reading, &nailing, strength.blocked)),
    }
    says.extend(level_joints::action(reading, wall.height, strength.blocked));
    for piece in answer.pieces.iter().filter(|piece| piece.factor <= 0.0) {
        let least = wall.height / aspect::most(strength.row.sheathing, strength.blocked);
        says.push(format!(
            "The piece of {} is too narrow to count: {} is the least in a wall this high.",
            words::length(piece.length),
            words::length(least)
        ));
    }
    if answer.capacity > Force::ZERO {
        says.extend(ends::action(demand, checks));
    }
    says
}

/// What could be done where there is too little wall, least work first.
fn remedies(line: &LineAnswer) -> Vec<String> {
    let or = |remedy: &Remedy| match remedy {
        Remedy::TighterNailing { nailing, used } => {
            format!("Or nail the edges at {}: {} is then used.", words::inches(nailing.edge), percent(*used))
        }
        Remedy::ThickerPanel { nailing, used } => format!("Or take {nailing}: {} is then used.", percent(*used)),
        Remedy::BothFaces { used, joints: None } => {
            format!("Or put panels on both faces: {} is then used.", percent(*used))
        }
        Remedy::BothFaces { used, joints: Some(_) } => {
            format!("Or put panels on both faces, their joints on different studs: {} is then used.", percent(*used))
        }
        Remedy::MoreWall(missing) => format!(
            "{} more full-height wall is needed so nailed, no narrower than half its height.",
            words::length(*missing)
        ),
        Remedy::PortalFrame => "Or have an engineer design a portal frame there.".to_owned(),
        Remedy::SteelFrame => "Or have an engineer design a steel frame there.".to_owned(),
    };
    let (more, others): (Vec<_>, Vec<_>) =
        line.remedies.iter().partition(|remedy| matches!(remedy, Remedy::MoreWall(_)));
    more.into_iter().chain(others).map(or).collect()
}

pub(super) fn strength_part(strength: &Strength) -> Part {
    let mut part = Part::new("What a foot of wall carries");
    let row = strength.row;
    let thick = row.thickness.to_inches_fraction(Denominator::ThirtySecond);
    let meaning = match strength.as_thicker {
        Some(_) => format!("nominal unit shear for wind, taken as {thick} for the studs' spacing or the panels' lay"),
        None => format!("nominal unit shear for wind, {thick}"),
    };
    let source = Basis::Published(row.source());
    part.step("v_w", meaning, "", (row.wind.plf(), "plf"), source);
    for factor in &strength.factors {
        part.step("", factor.what, "", (factor.value, ""), Basis::Published(factor.source));
    }
    let one = strength.one_face.plf();
    if let Some(second) = &strength.second {
        faces::steps(&mut part, strength, second);
    } else if strength.nominal.plf() > one {
        part.step(
            "v_w",
            "both faces",
            format!("2 × {}", figure(one)),
            (strength.nominal.plf(), "plf"),
            Basis::Arithmetic,
        );
    }
    let divided = strength.divided;
    let expression = format!("{} / {}", figure(strength.nominal.plf()), figure(divided.value));
    let value = (strength.allowable.line_load().plf(), "plf");
    part.step("v", divided.what, expression, value, Basis::Published(divided.source));
    part
}

fn pieces_part(wall: &SegmentedWall, answer: &SegmentedAnswer) -> Part {
    let mut part = Part::new("The pieces");
    for piece in &answer.pieces {
        let name = words::length(piece.length);
        let Ok(ratio) = &piece.ratio else {
            let source = Basis::Published(aspect::LIMITS);
            part.step(
                "h/b",
                format!("{name}: too narrow, counts for nothing"),
                "",
                (wall.height / piece.length, ""),
                source,
            );
            continue;
        };
        if piece.factor < 1.0 {
            let meaning = format!("{name}: counts for less, 2b/h");
            part.step(
                "",
                meaning,
                format!("2 / {}", figure(*ratio)),
                (piece.factor, ""),
                Basis::Published(aspect::SHARING),
            );
        }
        part.step("V", format!("{name}: its share of the push"), "", (piece.share.pounds(), "lb"), Basis::Arithmetic);
        let arm = wall.ends.arm(piece.length);
        let dead = wall.dead.plf();
        let (share, h, b) = (piece.share.pounds(), wall.height.feet(), piece.length.feet());
        let expression = format!(
            "({} × {} − 0.6 × {} × {}² / 2) / {}",
            figure(share),
            figure(h),
            figure(dead),
            figure(b),
            figure(arm.feet())
        );
        part.step(
            "T",
            format!("{name}: pull at its end"),
            expression,
            (piece.tension.pounds(), "lb"),
            Basis::Arithmetic,
        );
    }
    part
}

fn pieces_table(answer: &SegmentedAnswer) -> TableReply {
    let row = |piece: &Segment| {
        let counts = piece.factor > 0.0;
        let or_none = |text: String| if counts { text } else { "—".to_owned() };
        vec![
            words::length(piece.length),
            or_none(pounds(piece.share)),
            or_none(plf_text(piece.unit_shear)),
            or_none(pounds(piece.tension.max(Force::ZERO))),
        ]
    };
    TableReply {
        heading: "Piece by piece".to_owned(),
        columns: ["piece", "push", "a foot", "held down for"].map(str::to_owned).to_vec(),
        rows: answer.pieces.iter().map(row).collect(),
        notes: vec!["The wind comes from both sides: both ends of every piece are held down.".to_owned()],
    }
}

fn drawn(
    reading: &Reading,
    (wall, answer): (&SegmentedWall, &SegmentedAnswer),
    (nailing, blocked): (Nailing, bool),
) -> DrawnWall {
    let piece = |piece: &Segment| {
        let counts = piece.factor > 0.0;
        let pull = if counts && piece.tension > Force::ZERO { pounds(piece.tension) } else { String::new() };
        DrawnPiece { length: piece.length, counts, left: pull.clone(), right: pull }
    };
    let studs = reading.length("brace_spacing").unwrap_or(Length::from_inches(16.0));
    DrawnWall {
        storeys: vec![(wall.height, pounds(wall.shear))],
        pieces: answer.pieces.iter().map(piece).collect(),
        openings: Vec::new(),
        studs,
        nails: Some((nailing.edge, level_joints::field_spacing(reading, &nailing, studs))),
        post: wall.ends.post,
        holds: Vec::new(),
        level_joints: level_joints::of(reading, wall.height),
        blocked,
    }
}
