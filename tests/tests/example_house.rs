//! The example house: all of it opens and answers, and it names only what there is, so that nothing renamed leaves it
//! behind.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::HeaderCase;
use framing::bracing::{BracingKind, NOT_ENOUGH};
use framing::field::{header_field, site_fields};
use framing::member::MemberKind;
use framing::quick::reply::QuickReply;
use framing::quick::{QuickKind, derive};
use framing::walk::scheduled;
use job::file::{JobFile, read_contents};
use job::walk::{Record, Walk};
use job::{Fields, Job};
use view::model::Origin;
use view::quick::{Shown, own_key};
use view::walk::{InHand, Kind, Typed};

/// What stands under this name is read here by its text.
const BY_ITS_TEXT: &str = "drawn_and_worked";
const BRACED_WALLS: &str = "bracing/drawn_and_worked/braced_walls";

fn house() -> JobFile {
    read_contents(include_bytes!("../../web/example/boatbuilders_house.json")).unwrap()
}

fn job() -> Job {
    let file = house();
    Job::from_parts(&file.job, &file.parts)
}

fn walk() -> Walk {
    let mut walks = Walk::read(&house().log);
    assert_eq!(walks.len(), 1);
    walks.remove(0)
}

/// The schedule as the drawing gives it.
fn schedule(fields: &Fields) -> &String {
    &fields[&own_key(BracingKind::Schedule, "schedule_lines")]
}

/// A braced wall of both storeys, as its line says it.
struct Braced {
    name: String,
    mark: String,
    pieces: String,
    high: String,
    push: String,
    dead: String,
    under: Option<String>,
}

impl Braced {
    /// `Front below: W3, walls 3' 0", 4' 0", high 9' 0", push 5,400 lb, dead 180 plf, under Front above`.
    fn read(line: &str) -> Self {
        let (name, rest) = line.split_once(": ").unwrap();
        let (mark, rest) = rest.split_once(", walls ").unwrap();
        let (pieces, rest) = rest.split_once(", high ").unwrap();
        let (high, rest) = rest.split_once(", push ").unwrap();
        let (push, rest) = rest.split_once(", dead ").unwrap();
        let (dead, under) = rest.split_once(", under ").map_or((rest, None), |(dead, under)| (dead, Some(under)));
        let [name, mark, pieces, high, push, dead] = [name, mark, pieces, high, push, dead].map(str::to_owned);
        Self { name, mark, pieces, high, push, dead, under: under.map(str::to_owned) }
    }

    /// The wall as a shear wall: with panels as its mark says, or the lightest that carry.
    fn as_shear_wall(&self, as_drawn: bool) -> QuickReply {
        let mut case = BTreeMap::from([
            ("wall_pieces", self.pieces.as_str()),
            ("wall_high", &self.high),
            ("wall_push", &self.push),
            ("wall_dead", &self.dead),
        ]);
        let job = job();
        case.insert("schedule_lines", schedule(&job.site));
        if as_drawn {
            case.insert("drawn_size", &self.mark);
        }
        let case: Fields = case.into_iter().map(|(id, text)| (id.to_owned(), text.to_owned())).collect();
        derive(BracingKind::ShearWall, &case, &Fields::new()).answered.unwrap()
    }
}

fn braced_walls() -> Vec<Braced> {
    job().site[BRACED_WALLS].lines().map(Braced::read).collect()
}

#[test]
fn it_is_a_job_of_its_own_that_says_what_it_is() {
    let file = house();
    assert_eq!(file.job, view::jobs::EXAMPLE);
    let job = job();
    assert_eq!(job.name, "Boatbuilder's house, Orlick Head (example)");
    assert_eq!((file.parts.len(), job.headers.len()), (4, 2), "a head, the values, two checks");
    assert!(file.parts.iter().all(|part| part.revision == 1), "a phone's own changes come after it");
}

/// Each kind of a chapter that has values of its own answers, and no input of it is refused.
fn answers<K: Shown>(fields: &Fields) -> Vec<&'static str> {
    let typed = |kind: K, id: &str| K::is_own(id) && fields.contains_key(&own_key(kind, id));
    let mut found = Vec::new();
    for kind in K::ALL.iter().filter(|kind| kind.fields().iter().any(|id| typed(**kind, id))) {
        let screen = view::quick::screen(*kind, fields, None);
        let refused: Vec<_> =
            screen.fields.iter().filter_map(|field| Some((field.id, field.problem.clone()?))).collect();
        assert!(refused.is_empty() && screen.current, "{}: {refused:?}", kind.id());
        assert!(
            screen.answer.figure.chars().any(|letter| letter.is_ascii_digit()),
            "{}: {:?}",
            kind.id(),
            screen.answer
        );
        found.push(kind.id());
    }
    found
}

#[test]
fn every_kind_with_values_answers() {
    let fields = job().site;
    let (members, bracing) = (answers::<MemberKind>(&fields), answers::<BracingKind>(&fields));
    for kind in ["joist", "beam", "rafter", "stud"] {
        assert!(members.contains(&kind), "{kind} is not among {members:?}");
    }
    for kind in [
        "shear_wall",
        "perforated_wall",
        "hold_down",
        "anchor_bolts",
        "uplift",
        "schedule",
        "wall_lines",
        "diaphragm",
        "wall_layers",
        "nail_swap",
    ] {
        assert!(bracing.contains(&kind), "{kind} is not among {bracing:?}");
    }
}

#[test]
fn the_place_answers_and_everything_that_follows_from_it_stands_beside_it() {
    let mut fields = job().site;
    let screen = view::site::screen(&fields, view::site::Topic::default(), None);
    assert!(screen.current && screen.fields.iter().all(|field| field.problem.is_none()));
    assert!(!view::site::is_first_time(&fields));
    let before = fields.clone();
    framing::site::work_out(&mut fields);
    assert_eq!(fields, before, "worked/... as Site works it out");
}

#[track_caller]
fn is_an_input<K: Shown>(rest: &str) {
    let known = match rest.split_once('/') {
        None => K::SHARED.contains(&rest) || rest == "kind",
        Some((name, field)) => match K::of(name) {
            Some(kind) => kind.fields().contains(&field) && K::is_own(field),
            None => name == BY_ITS_TEXT,
        },
    };
    assert!(known, "{}/{rest}", K::CHAPTER);
}

#[test]
fn every_input_that_it_names_exists() {
    let is_of_site = |id: &str| site_fields().any(|spec| spec.id == id);
    let job = job();
    for key in job.site.keys() {
        match key.split_once('/') {
            Some(("bracing", rest)) => is_an_input::<BracingKind>(rest),
            Some(("member", rest)) => is_an_input::<MemberKind>(rest),
            Some(("worked", id)) => assert!(header_field(id).is_some(), "{key}"),
            Some(("given_by", id)) => assert!(is_of_site(id) && job.site.contains_key(id), "{key}"),
            _ => assert!(is_of_site(key), "{key}"),
        }
    }
    let chapters = [view::quick::kind::<BracingKind>(&job.site).id(), view::quick::kind::<MemberKind>(&job.site).id()];
    assert_eq!(chapters.map(str::to_owned), [&job.site["bracing/kind"], &job.site["member/kind"]].map(String::clone));
}

#[test]
fn every_mark_of_the_schedule_is_a_mark_of_the_walk_and_of_a_wall() {
    let fields = job().site;
    let (marks, walk, walls) = (scheduled(schedule(&fields)), walk(), braced_walls());
    assert_eq!(marks.len(), 5);
    for mark in &marks {
        let found = walk.marks.iter().find(|found| found.name() == mark.mark).unwrap();
        assert_eq!(found.now().map(|now| &now.fields), Some(&mark.asks), "{}", mark.mark);
        assert!(walls.iter().any(|wall| wall.mark == mark.mark), "{} is on no wall", mark.mark);
    }
    for wall in &walls {
        assert!(marks.iter().any(|mark| mark.mark == wall.mark), "{} has a mark that is not scheduled", wall.name);
        let stands_there = wall.under.iter().all(|under| walls.iter().any(|above| above.name == *under));
        assert!(stands_there, "{} stands under no wall of the list", wall.name);
    }
}

#[test]
fn each_wall_is_pushed_as_its_line_is() {
    let fields = job().site;
    let mut pushes = Vec::new();
    for direction in ["across", "along"] {
        let mut fields = fields.clone();
        fields.insert(own_key(BracingKind::WallLines, "push_direction"), direction.to_owned());
        let screen = view::quick::screen(BracingKind::WallLines, &fields, None);
        pushes.extend(screen.tables.iter().flat_map(|table| &table.rows).filter_map(|row| row.values.last().cloned()));
    }
    for wall in braced_walls() {
        assert!(pushes.contains(&wall.push), "{}: {} is not among {pushes:?}", wall.name, wall.push);
    }
}

#[test]
fn the_drawing_is_met_but_at_the_workshop_front_and_asks_for_more_in_the_gallery() {
    for wall in braced_walls() {
        let (drawn, lightest) = (wall.as_shear_wall(true), wall.as_shear_wall(false));
        assert_eq!(drawn.verdict == NOT_ENOUGH, wall.name == "Front below", "{}: {}", wall.name, drawn.verdict);
        let agree = drawn.size == lightest.size;
        assert_eq!(agree, !["Front below", "Gallery above"].contains(&wall.name.as_str()), "{}", wall.name);
    }
}

#[test]
fn the_saved_headers_say_what_they_would_say_now() {
    for header in job().headers {
        let mut case = HeaderCase::default();
        for (field, text) in &header.fields {
            assert!(case.set(field, Some(text.clone())), "{}: no input {field}", header.name);
        }
        let screen = view::header::screen(&case, &HeaderCase::default(), None);
        assert!(screen.current, "{}", header.name);
        let answer = &screen.answer;
        assert_eq!(header.answer, format!("{} {}: {}", answer.figure, answer.word, answer.share_text));
        assert!(screen.fields.iter().any(|field| field.id == "wind_speed" && field.origin == Origin::Typed));
    }
}

#[test]
fn each_look_says_what_it_would_say_now_and_one_of_them_is_a_miss() {
    let walk = walk();
    let looks: Vec<_> = walk.points().flat_map(|(_, point)| &point.looks).map(|entry| entry.what.clone()).collect();
    assert_eq!(looks.len(), 6);
    for look in &looks {
        let kind = Kind::at(&look.kind).unwrap();
        let typed = Typed { texts: look.texts.clone(), lists: look.lists.clone() };
        let screen = view::walk::look(kind, &typed, InHand { field: "drawing", reading: 0 }, None);
        assert!(screen.current && screen.is_judged(), "{}", look.place);
        assert_eq!((&look.verdict, &look.says), (&screen.verdict, &screen.summary), "{}", look.place);
    }
    assert_eq!(looks.iter().filter(|look| look.verdict == "out").count(), 1);
    let log = house().log;
    assert!(log.iter().map(|record: &Record| record.number).eq(1..=u32::try_from(log.len()).unwrap()));
}
