//! Ceiling strapping through the check: field cases and worked cases, what may be typed, and what is left out.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::check::check_line;
use framing::field::{Kind, STRAPPING_FIELDS};
use framing::layout::LayoutKind;
use framing::layout::drawn::DrawnLayout;
use framing::layout::drawn_strapping::DrawnStrapping;
use framing::quick::reply::{Drawn, QuickReply};
use framing::quick::{QuickKind as _, QuickOutcome, derive};
use framing::site::Nothing;
use proptest::prelude::*;

type Case = BTreeMap<String, String>;
type Typed<'t> = [(&'t str, &'t str)];

/// Quotients and sums of a few whole sixteenths.
const EXACT: f64 = 1e-9;

fn asked(fields: &Typed<'_>) -> QuickOutcome {
    let case: Case = fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect();
    derive(LayoutKind::Strapping, &case, &Nothing)
}

fn answered(fields: &Typed<'_>) -> QuickReply {
    let outcome = asked(fields);
    assert_eq!(outcome.refusals(), [], "{fields:?}");
    outcome.answered.unwrap()
}

fn refused(fields: &Typed<'_>) -> (String, String) {
    let outcome = asked(fields);
    assert!(outcome.answered.is_none(), "{fields:?}");
    let refusals = outcome.refusals();
    assert_eq!(refusals.len(), 1, "{fields:?}: {refusals:?}");
    (refusals[0].field.clone(), refusals[0].problem.clone())
}

fn near(reply: &QuickReply, name: &str, expected: f64, off: f64) {
    let found = reply.fact(name).unwrap_or(f64::NAN);
    assert!((found - expected).abs() <= off, "{name}: {found} against {expected}");
}

fn drawn(reply: &QuickReply) -> &DrawnStrapping {
    let Drawn::Layout(DrawnLayout::Strapping(drawn)) = &reply.drawn else { unreachable!("strapping draws strapping") };
    drawn
}

fn rows_of<'r>(reply: &'r QuickReply, heading: &str) -> &'r [Vec<String>] {
    &reply.tables.iter().find(|table| table.heading.starts_with(heading)).unwrap().rows
}

/// Six joists, as the field case reads them.
const UNEVEN: [(&str, &str); 3] =
    [("strap_across", "112\""), ("strap_readings", "1-1/4, 1-5/8, 1-3/8, 2, 1-1/8, 1-1/2"), ("strap_datum_high", "96")];

/// Source: field case FC-71: readings 1-1/4 to 2 in over a laser 96 in above the floor; the lowest joist decides; shims
/// 1/8, 1/2, 1/4, 7/8, 0, 3/8, the 7/8 over the strip's own 3/4; faces at 96-3/8, ceiling at 95-7/8; a strip's centre at 48
/// and 96. All exact.
#[test]
fn an_uneven_ceiling_to_level() {
    let reply = answered(&UNEVEN);
    assert_eq!(reply.size, "Shim 7/8\" at most");
    assert!(reply.verdict.ends_with("the ceiling comes down 2-1/8\" there"), "{}", reply.verdict);
    let first = &rows_of(&reply, "Shims, joists 1 to 6")[0];
    assert_eq!(first[1..], ["1/8", "1/2", "1/4", "7/8", "0", "3/8"]);
    near(&reply, "greatest_shim_in", 0.875, EXACT);
    near(&reply, "shims", 5.0, EXACT);
    near(&reply, "strip_faces_in", 96.375, EXACT);
    near(&reply, "ceiling_in", 95.875, EXACT);
    let says = |text: &str| reply.action.iter().any(|says| says.contains(text));
    assert!(says("row 1, joist 4: 7/8\", made of 3/4\" + 1/8\""), "{:?}", reply.action);
    assert!(says("1 crossing over 3/4\"") && says("Begin at row 1, joist 5"), "{:?}", reply.action);
    let centres: Vec<&str> = rows_of(&reply, "Rows").iter().map(|row| row[1].as_str()).collect();
    assert!(centres.contains(&"48\"") && centres.contains(&"96\""), "{centres:?}");
    // Nine rows were not read, and nothing is made up for them.
    near(&reply, "not_read", 54.0, EXACT);
    assert!(rows_of(&reply, "Shims, joists")[1..].iter().all(|row| row[1..].iter().all(|cell| cell == "-")));
    assert!(says("Still to be read: row 2, joist 1"), "{:?}", reply.action);
}

/// A string that is not level has no one height, and only a flat ceiling is worked from it.
#[test]
fn a_string_that_is_not_level() {
    let of = [("strap_level", "no"), ("strap_aim", "least_total")];
    let reply = answered(&[&UNEVEN[..], &of[..]].concat());
    assert!(reply.fact("ceiling_in").is_none() && reply.fact("greatest_shim_in").is_some());
    assert!(reply.about.says.iter().any(|says| says.contains("no one height")), "{:?}", reply.about.says);
    // The lowest two of a row hold a line that no joist pokes below.
    assert!(reply.fact("total_read_in").unwrap() < answered(&UNEVEN).fact("total_read_in").unwrap());
}

/// The same ceiling written in sixteenths, and from above (8 in less each): the same shims.
#[test]
fn other_ways_to_read_the_same() {
    let shims = |fields: &Typed<'_>| rows_of(&answered(fields), "Shims, joists")[0].clone();
    let expected = shims(&UNEVEN);
    let sixteenths =
        [("strap_across", "112\""), ("strap_read_in", "sixteenths"), ("strap_readings", "20; 26; 22; 32; 18; 24")];
    let eighths =
        [("strap_across", "112\""), ("strap_read_in", "eighths"), ("strap_readings", "10\t13\t11\t16\t1-1/8\"\t12")];
    let above = [
        ("strap_across", "112\""),
        ("strap_datum", "above"),
        ("strap_readings", "6-3/4, 6-3/8, 6-5/8, 6, 6-7/8, 6-1/2"),
    ];
    for fields in [sixteenths, eighths, above] {
        assert_eq!(shims(&fields), expected, "{fields:?}");
    }
}

/// The grid of 9 joists and 4 rows of the strapping notes, in sixteenths.
const GRID: &str = "6,5,8,3,6,2,5,7,6\n5,4,7,1,4,0,4,6,7\n6,3,6,2,3,1,5,7,8\n7,5,8,4,5,3,6,8,9";

fn grid<'t>(more: &[(&'t str, &'t str)]) -> QuickReply {
    let of = [
        ("strap_across", "128\""),
        ("strap_joists_at", "0, 16, 32, 48, 64, 80, 96, 112, 128"),
        ("strap_along", "144\""),
        ("strap_read_in", "sixteenths"),
        ("strap_read_at", "0, 48, 96, 144"),
        ("strap_readings", GRID),
    ];
    answered(&[&of[..], more].concat())
}

/// Source: strapping notes, worked case (own, to the digits printed): level 11.375 in of shim in all, 0.5625 the greatest;
/// flat with the least in all 9.125 and 0.5625 on 0.09375 − 0.001953125 x + 0.0013020833 y; with the least greatest
/// 0.508333. Slopes are told in inches a foot.
#[test]
fn the_worked_grid() {
    let level = grid(&[]);
    near(&level, "total_read_in", 11.375, EXACT);
    near(&level, "greatest_read_in", 0.5625, EXACT);
    let total = grid(&[("strap_aim", "least_total")]);
    near(&total, "total_read_in", 9.125, EXACT);
    near(&total, "greatest_read_in", 0.5625, EXACT);
    let step = |symbol: &str| {
        let mut steps = total.about.working.iter().flat_map(|part| &part.steps);
        steps.find(|step| step.symbol == symbol).unwrap().value
    };
    assert!((step("p_0") - 0.09375).abs() < EXACT);
    assert!((step("p_x") + 12.0 * 0.001_953_125).abs() < EXACT);
    assert!((step("p_y") - 12.0 * 0.001_302_083_3).abs() < 12.0 * 5e-11);
    let greatest = grid(&[("strap_aim", "least_greatest")]);
    near(&greatest, "greatest_read_in", 0.508_333, 5e-7);
    // Strips lie between the rows that were read: their shims are marked.
    let between = &rows_of(&level, "Shims, joists 1 to 6")[1];
    assert!(between[1..].iter().all(|cell| cell.ends_with('?')), "{between:?}");
    // The strip at 48 in lies on a row that was read.
    assert_eq!(rows_of(&level, "Shims, joists 1 to 6")[3][1..], ["5/16", "1/4", "7/16", "1/16", "1/4", "0"]);
}

/// Source: field case FC-43: studs of 92-5/8 in under a 1/2 in ceiling and two 48 in boards: 5/8 in without strips, −1/8 with
/// them, studs of 93-1/4 in leave 1/2; with plates of 1-9/16 in +13/16, +1/16 and 93-1/16. Exact.
#[test]
fn precut_studs_and_a_strapped_ceiling() {
    for (plates, bare, strapped, stud) in [("4-1/2", 0.625, -0.125, 93.25), ("4-11/16", 0.8125, 0.0625, 93.0625)] {
        let reply = answered(&[("strap_stud", "92-5/8"), ("strap_plates", plates)]);
        near(&reply, "gap_bare_in", bare, EXACT);
        near(&reply, "gap_in", strapped, EXACT);
        near(&reply, "stud_in", stud, EXACT);
        assert_eq!(reply.needs[0].holds, Some(strapped >= 0.0));
    }
    let tight = answered(&[("strap_stud", "92-5/8")]);
    assert!(
        tight.action[0].contains("do not fit by 1/8\"") && tight.action[0].contains("93-1/4\""),
        "{:?}",
        tight.action
    );
    near(&tight, "clear_height_in", 97.125 - 1.25, EXACT);
    // As a whole wall, and over a floor.
    let wall = answered(&[("strap_wall_high", "97-1/8"), ("strap_floor_thick", "3/4")]);
    near(&wall, "gap_in", -0.125, EXACT);
    near(&wall, "clear_height_in", 97.125 - 2.0, EXACT);
}

/// Source: field case FC-45: a beam of 11-7/8 in among joists of 11-1/4: a step of 5/8 in with tops flush, cleared by 1/8;
/// 1-1/8 in with the joists 1/2 in proud, 3/8 in short. How far drying lowers the joists is the shrinkage check's.
#[test]
fn a_beam_deeper_than_the_joists() {
    let beam = [("strap_beam_deep", "11-7/8"), ("strap_joists_are", "2x12")];
    let flush = answered(&beam);
    near(&flush, "below_in", 0.625, EXACT);
    near(&flush, "hidden_by_in", 0.125, EXACT);
    assert_eq!(flush.needs[0].holds, Some(true));
    assert!(flush.needs[0].says.iter().any(|says| says.contains("Do not leave a gap under it")));
    let proud = answered(&[&beam[..], &[("strap_beam_proud", "1/2")]].concat());
    near(&proud, "below_in", 1.125, EXACT);
    near(&proud, "proud_by_in", 0.375, EXACT);
    near(&proud, "pack_in", 0.375, EXACT);
    near(&proud, "strip_needed_in", 1.125, EXACT);
    assert!(proud.action[0].contains("3/8\" proud"), "{:?}", proud.action);
    // What was measured counts before what the depths say.
    near(&answered(&[&beam[..], &[("strap_below", "3/4")]].concat()), "hidden_by_in", 0.0, EXACT);
    let (field, problem) = refused(&beam[..1]);
    assert!(field == "strap_beam_deep" && problem.contains("taken"), "{problem}");
}

/// Source: strapping notes: rows = ceil((b − w) / 16) + 1: 10, 11, 11 and 11; short pieces 2 × (rows − 1), of 13-1/2 in; from
/// joist to joist 16 ft strips are 12 spaces at 16 in and 8 at 24; two fasteners a crossing and two a joint.
#[test]
fn the_notes_on_counting() {
    for (along, rows) in [("144\"", 10), ("150\"", 11), ("156\"", 11), ("160\"", 11)] {
        let reply = answered(&[("strap_along", along)]);
        assert_eq!(reply.size, format!("{rows} rows"), "{along}");
        near(&reply, "short_pieces", 2.0 * f64::from(rows - 1), EXACT);
    }
    let plain = answered(&[]);
    assert_eq!(plain.verdict, "at 16\", each in one piece");
    assert!(plain.about.questions.iter().any(|(field, _)| field == "strap_readings"));
    let long = answered(&[("strap_across", "50'"), ("strap_short", "none")]);
    assert_eq!(long.verdict, "at 16\", with joints on joists");
    let first = &rows_of(&long, "Rows")[0];
    assert_eq!(
        (first[2].as_str(), first[3].as_str()),
        ("15' 11-3/4\" + 16' 0\" + 16' 0\" + 1' 11-3/4\"", "12, 24, 36")
    );
    let fasteners = 2.0 * (long.fact("crossings").unwrap() + long.fact("joints").unwrap());
    near(&long, "fasteners", fasteners, EXACT);
    near(&long, "crossings", long.fact("rows").unwrap() * long.fact("joists").unwrap(), EXACT);
    let pieces = &drawn(&long).rows[0].pieces;
    assert_eq!(pieces.len(), 4);
    assert!(pieces.windows(2).all(|pair| pair[0][1] == pair[1][0]));
    let wide = answered(&[("strap_across", "52'"), ("strap_joist_every", "24")]);
    assert_eq!(rows_of(&wide, "Rows")[0][3], "8, 16, 24");
}

/// Vector of our own: half of the readings are missing. A joist with nothing read stays open in every row, one read at both
/// ends is on its line between, and no reading of another joist is taken.
#[test]
fn half_missing_readings() {
    let reply = answered(&[
        ("strap_across", "6'"),
        ("strap_along", "64\""),
        ("strap_readings", "1, -, 1-1/4, \n-\n1, , 1-1/2,-\n\u{2013}\n1-1/4, -, -, 1"),
    ]);
    let shims = rows_of(&reply, "Shims, joists 1 to 4");
    assert_eq!(shims[0], ["row 1", "0", "-", "1/4", "-"]);
    assert_eq!(shims[1], ["row 2", "0?", "-", "3/8?", "-"]);
    assert_eq!(shims[2], ["row 3", "0", "-", "1/2", "-"]);
    assert_eq!(shims[4], ["row 5", "1/4", "-", "-", "0"]);
    assert_eq!(reply.fact("not_read"), Some(11.0));
    assert!(reply.verdict.starts_with("so far; "), "{}", reply.verdict);
    let crossings = &drawn(&reply).crossings;
    assert_eq!(crossings.iter().filter(|crossing| crossing.shim.is_none()).count(), 11);
    assert!(crossings.iter().all(|crossing| crossing.shim.is_some() || !crossing.read));
}

/// Vector of our own: a tape held at its 1 in mark is asked for again, first of all, and ringed; it counts as it stands.
#[test]
fn a_burned_inch_is_asked_for_again() {
    let reply = answered(&[
        ("strap_across", "48\""),
        ("strap_along", "64\""),
        ("strap_readings", "2,2\n2,2-1/16\n2-1/16,3-1/16\n2,2\n2-1/8,2-1/16"),
    ]);
    assert!(reply.action[0].starts_with("Read row 3, joist 2 again"), "{:?}", reply.action);
    assert!(reply.action[0].contains("1\" mark"), "{:?}", reply.action);
    near(&reply, "greatest_shim_in", 1.0625, EXACT);
    let ringed: Vec<_> = drawn(&reply).crossings.iter().filter(|crossing| crossing.doubtful).collect();
    assert_eq!(ringed.iter().map(|crossing| crossing.name).collect::<Vec<_>>(), [[3, 2]]);
}

/// Eleven joists, ten rows; joist 6 is low in the first row, or in the fifth.
fn one_low(row: usize, low: &str, joists: &str) -> QuickReply {
    let line =
        |index: usize| (1..=11).map(|joist| if joist == 6 && index == row { low } else { "1" }).collect::<Vec<_>>();
    let lines: Vec<String> = (1..=10).map(|index| line(index).join(",")).collect();
    answered(&[("strap_readings", &lines.join("\n")), ("strap_joists_are", joists)])
}

/// Source: IRC R502.8.1: a notch to a sixth of the depth, none in the middle third; R502.8.2: none in an engineered joist.
#[test]
fn planing_is_named_or_refused_with_its_clause() {
    let better = one_low(1, "3/4", "2x10");
    assert!(better.action[0].contains("plane joist 6, 1/4\" at row 1, joist 6"), "{:?}", better.action);
    assert_eq!(better.by_code[0].holds, Some(true));
    assert!(better.by_code[0].says.iter().any(|says| says.contains("R502.8.1")), "{:?}", better.by_code);
    assert_eq!(rows_of(&better, "Shims, with planing, joists 1 to 6")[0][6], "plane 1/4");
    assert_eq!(drawn(&better).crossings.iter().filter(|crossing| crossing.planed).count(), 1);
    for (row, low, joists, clause) in
        [(5, "3/4", "2x10", "R502.8.1"), (1, "3/4", "2x6", "R502.8.1"), (1, "3/4", "engineered", "R502.8.2")]
    {
        let reply = one_low(row, low, joists);
        assert_eq!(reply.by_code[0].holds, Some(false), "{joists} {row}");
        assert!(reply.by_code[0].says.iter().any(|says| says.contains(clause)), "{:?}", reply.by_code);
        assert!(
            reply.action[0].contains("do not plane it") && reply.action[0].contains("ask the"),
            "{:?}",
            reply.action
        );
        assert!(drawn(&reply).crossings.iter().all(|crossing| !crossing.planed));
    }
    assert!(one_low(1, "3/4", "whole").by_code.is_empty());
    assert_eq!(grid(&[("strap_joists_are", "2x10")]).by_code[0].figure, "not looked at");
}

/// A flat ceiling takes no shim.
#[test]
fn no_shim() {
    let lines = ["1,1,1,1,1,1,1,1,1,1,1"; 10].join("\n");
    let reply = answered(&[("strap_readings", &lines)]);
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("No shim", "the ceiling comes down 1-1/4\""));
}

/// Bad texts at every input are refused where they were typed, with what is taken.
#[test]
fn nonsense_is_refused_with_what_is_taken() {
    let of_name = |id: &str| -> &'static [&'static str] {
        match id {
            "strap_joists_at" => &["32, 16", "16, far", ",", "16, 16-1/2", "-4", "300"],
            "strap_read_at" => &["16, far", ",", "48, 16, 32", "16, 16-1/2, 48", "0, 48, 300", "16"],
            "strap_shims" => &["thin", ",", "1/32", "4", "0"],
            _ => &[],
        }
    };
    let readings = [
        "high,1,1,1,1,1,1,1,1,1,1",
        "1,2,3",
        "-",
        "-\n-,-,-,-,-,-,-,-,-,-,-",
        "1,1,1,1,1,1,1,1,1,1,1\n\n1,1,1,1,1,1,1,1,1,1,1",
        "1,1,1,1,1,1,1,1,1,1,1,",
        "1,1,1,1,1,1,1,1,1,1,-1/4",
        "1,1,1,1,1,1,1,1,1,1,21'",
        "-\n-\n-\n-\n-\n-\n-\n-\n-\n-\n1,1,1,1,1,1,1,1,1,1,1",
    ];
    let three = "1,1,1,1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,1,1,1,1\n1,1,1,1,1,1,1,1,1,1,1";
    for spec in STRAPPING_FIELDS {
        let texts: &[&str] = match spec.kind {
            Kind::Name => of_name(spec.id),
            Kind::Lines => &readings,
            Kind::Length { .. } => &["-6'", "4000'", "wide", "6 psf", "NaN"],
            Kind::Number { .. } => &["-1", "1000000000", "heavy", "6'", "NaN", "2.5"],
            Kind::Choice(_) => &["neither", "-"],
            Kind::Special { .. } | Kind::Size => &[],
        };
        assert!(!texts.is_empty(), "{} has no bad text here", spec.id);
        for text in texts {
            let mut fields = vec![("strap_readings", three)];
            if spec.id == "strap_readings" {
                fields.clear();
            }
            fields.push((spec.id, text));
            let (field, problem) = refused(&fields);
            assert_eq!(field, spec.id, "{text:?}: {problem}");
            assert!(problem.ends_with(['.', ')']), "{text:?}: {problem}");
            let told = ["aken", "Write", "Give", "Read"].iter().any(|word| problem.contains(word));
            assert!(told, "{text:?}: {problem}");
        }
    }
}

/// Where a reading is wrong, its row and joist are named.
#[test]
fn a_wrong_reading_is_named() {
    let (_, problem) = refused(&[("strap_across", "48\""), ("strap_readings", "1, 1\n1, wet")]);
    assert!(problem.starts_with("Row 2, joist 2: "), "{problem}");
    let (_, problem) = refused(&[("strap_across", "48\""), ("strap_readings", "1, 1\n1")]);
    assert!(problem.starts_with("Row 2: 1 reading was given for 2 joists."), "{problem}");
}

/// Errors of the ceiling stand on the input that they are about.
#[test]
fn errors_stand_on_their_input() {
    let most = vec!["1"; 74].join(",");
    let cases: [(&Typed<'_>, &str); 8] = [
        (&[("strap_joist_thick", "1-1/4\"")], "strap_joist_thick"),
        (&[("strap_across", "20'"), ("strap_joists_at", "8, 220")], "strap_stock"),
        (&[("strap_across", "30\""), ("strap_joist_every", "48")], "strap_joist_every"),
        (&[("strap_across", "48\""), ("strap_readings", "1, 1"), ("strap_level", "no")], "strap_level"),
        (
            &[
                ("strap_across", "5'"),
                ("strap_readings", "1,-,-\n-,2,-\n-,-,1"),
                ("strap_aim", "best_fit"),
                ("strap_along", "48\""),
                ("strap_read_at", "16, 32, 48"),
            ],
            "strap_readings",
        ),
        (&[("strap_stud", "92-5/8"), ("strap_wall_high", "8'")], "strap_wall_high"),
        (
            &[("strap_along", "100'"), ("strap_every", "12"), ("strap_readings", "-\n1,1,1,1,1,1,1,1,1,1,1")],
            "strap_along",
        ),
        (&[("strap_across", "100'"), ("strap_readings", &most)], "strap_across"),
    ];
    for (fields, expected) in cases {
        let (field, problem) = refused(fields);
        assert_eq!(field, expected, "{problem}");
    }
}

/// The command answers the same line, and refuses an input that is none.
#[test]
fn the_command_answers() {
    let line = check_line("{\"check\":\"strapping\",\"strap_along\":\"12'\"}");
    assert!(line.contains("\"check\":\"strapping\"") && line.contains("10 rows"), "{line}");
    let line = check_line("{\"check\":\"strapping\",\"strap_colour\":\"red\"}");
    assert!(line.contains("strap_colour") && line.contains("strap_along"), "{line}");
    assert!(LayoutKind::Strapping.fields().iter().all(|id| STRAPPING_FIELDS.iter().any(|spec| spec.id == *id)));
    assert_eq!(LayoutKind::Strapping.fields().len(), STRAPPING_FIELDS.len());
}

/// Any text, and texts that look like what is taken.
fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[-0-9/'\" ,;.\n]{0,40}",
        "([0-9]{1,3}(-[1-7]/8)?|-|)(,([0-9]{1,2}|-)){0,11}(\n([0-9]{1,2}|-)(,([0-9]|-)){0,11}){0,3}",
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Any text at any inputs is answered or refused with a sentence, and never panics.
    #[test]
    fn any_text_is_answered_or_refused(
        one in 0..STRAPPING_FIELDS.len(),
        other in 0..STRAPPING_FIELDS.len(),
        texts in (text(), text(), text()),
    ) {
        let fields = [
            ("strap_across", "5'"),
            ("strap_readings", texts.0.as_str()),
            (STRAPPING_FIELDS[one].id, texts.1.as_str()),
            (STRAPPING_FIELDS[other].id, texts.2.as_str()),
        ];
        let outcome = asked(&fields);
        prop_assert!(outcome.answered.is_some() != outcome.refusals().iter().any(|one| !one.problem.is_empty()));
        for refusal in outcome.refusals() {
            prop_assert!(refusal.problem.len() > 10, "{refusal:?}");
        }
        if let Some(reply) = outcome.answered {
            prop_assert!(!reply.size.is_empty() && !reply.verdict.is_empty());
            prop_assert!(reply.facts.iter().all(|fact| fact.value.is_finite()));
        }
    }

    /// Every joist stands over the plane by its shim, to half a sixteenth: the backs of the strips are level.
    #[test]
    fn strips_lie_level(heights in prop::collection::vec(0_u32..40, 50)) {
        let lines: Vec<String> = heights.chunks(5).map(|row| row.iter().map(u32::to_string).collect::<Vec<_>>().join(",")).collect();
        let lines = lines.join("\n");
        let reply = answered(&[("strap_across", "96\""), ("strap_read_in", "sixteenths"), ("strap_readings", &lines)]);
        let low = heights.iter().min().copied().unwrap();
        let shims = drawn(&reply).crossings.iter().map(|crossing| crossing.shim.unwrap().inches() * 16.0);
        for (shim, height) in shims.zip(&heights) {
            prop_assert!((shim - f64::from(height - low)).abs() < EXACT, "{shim} at {height}");
        }
        prop_assert!((reply.fact("greatest_shim_in").unwrap() * 16.0 - f64::from(heights.iter().max().unwrap() - low)).abs() < EXACT);
    }
}
