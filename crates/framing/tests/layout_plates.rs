//! Walls and floors that are laid out, through their checks: published examples, field cases, and what may be typed.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::field::{FLOOR_LAYOUT_FIELDS, FieldSpec, Kind, WALL_LAYOUT_FIELDS};
use framing::layout::LayoutKind;
use framing::quick::reply::QuickReply;
use framing::quick::{QuickKind as _, derive};
use framing::site::Nothing;
use proptest::prelude::*;

type Case = BTreeMap<String, String>;

fn case(fields: &[(&str, &str)]) -> Case {
    fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect()
}

#[track_caller]
fn answered(kind: LayoutKind, fields: &[(&str, &str)]) -> QuickReply {
    let outcome = derive(kind, &case(fields), &Nothing);
    assert_eq!(outcome.refusals(), [], "{} {fields:?}", kind.id());
    outcome.answered.unwrap()
}

#[track_caller]
fn wall(fields: &[(&str, &str)]) -> QuickReply {
    answered(LayoutKind::WallLayout, fields)
}

#[track_caller]
fn floor(fields: &[(&str, &str)]) -> QuickReply {
    answered(LayoutKind::FloorLayout, fields)
}

/// The one refusal: its input, and the sentence.
#[track_caller]
fn refused(kind: LayoutKind, fields: &[(&str, &str)]) -> (String, String) {
    let outcome = derive(kind, &case(fields), &Nothing);
    assert!(outcome.answered.is_none(), "{fields:?}");
    let refusals = outcome.refusals();
    assert_eq!(refusals.len(), 1, "{fields:?}: {refusals:?}");
    (refusals[0].field.clone(), refusals[0].problem.clone())
}

#[track_caller]
fn near(reply: &QuickReply, name: &str, expected: f64) {
    let found = reply.fact(name).unwrap_or(f64::NAN);
    // What is left is binary noise.
    assert!((found - expected).abs() < 1e-9, "{name}: {found} against {expected}");
}

/// A column of a table, by its heading's beginning.
fn column(reply: &QuickReply, heading: &str, column: usize) -> Vec<String> {
    let table = reply.tables.iter().find(|table| table.heading.starts_with(heading)).unwrap();
    table.rows.iter().map(|row| row[column].clone()).collect()
}

fn count(reply: &QuickReply, piece: &str) -> Vec<(String, String)> {
    let cuts = reply.tables.iter().find(|table| table.heading == "Cut list").unwrap();
    cuts.rows.iter().filter(|row| row[0] == piece).map(|row| (row[1].clone(), row[2].clone())).collect()
}

fn of(length: &str, count: &str) -> Vec<(String, String)> {
    vec![(length.to_owned(), count.to_owned())]
}

/// Source: stairs and layout sheet B1, derived there: 175-1/2 in at 16 in: 12 studs, first near edge 15-1/4 (NAVEDTRA 14044).
#[test]
fn the_sheet_s_plain_wall() {
    let reply = wall(&[("plate_long", "175.5 in"), ("plate_panels", "none")]);
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("12 studs, 92-5/8\"", "from plate to plate"));
    near(&reply, "first_pull_in", 15.25);
    let pulls = column(&reply, "Pulls from the left end", 0);
    assert_eq!(pulls[..3], ["0\"", "15-1/4\"", "31-1/4\""]);
    assert_eq!(pulls.last().unwrap(), "174\"");
    assert!(reply.action[0].contains("15-1/4\", 31-1/4\", 47-1/4\"") && reply.action[0].contains("past each line"));
}

/// Source: a builders' pocketbook, worked example 33: 60 ft at 16 in: 60 - 15 + 1 = 46 studs; an exact layout has as many.
#[test]
fn sixty_feet_of_studs() {
    let reply = wall(&[("plate_long", "60'")]);
    near(&reply, "studs", 46.0);
    near(&reply, "pocketbook_studs", 46.0);
}

/// Source: the sheet's B1: 19.2 is 96/5; centres at 19-3/16, 38-3/8, 57-5/8, 76-13/16, 96, each from its own product.
#[test]
fn the_tape_at_nineteen_point_two() {
    let of = [("plate_long", "16'"), ("plate_every", "19.2"), ("plate_pull", "center")];
    let reply = wall(&of);
    let pulls = column(&reply, "Pulls", 0);
    assert_eq!(pulls[1..6], ["19-3/16\"", "38-3/8\"", "57-5/8\"", "76-13/16\"", "96\""]);
    assert!(column(&reply, "Pulls", 3).iter().all(|side| side == "over"));
}

/// Source: the sheet's B2: header = opening and 3 in for each jack a side; jack = head - 1-1/2; cripple above = stud - jack -
/// header; cripple below = sill - 1-1/2 - sill plate. Our vector: 92-5/8 studs, a head at 82-1/2, a header of 7-1/4, a sill at 36.
#[test]
fn what_frames_a_window_and_a_door() {
    let lines = "window 5' x 46-1/2 in at 3', sill 3', header 7-1/4\ndoor 3' x 6' 10-1/2\" at 10', jacks 2";
    let reply = wall(&[("plate_long", "16'"), ("plate_openings", lines)]);
    assert_eq!(count(&reply, "header"), [of("63\"", "2"), of("42\"", "2")].concat());
    assert_eq!(count(&reply, "jack stud"), of("81\"", "6"));
    assert_eq!(count(&reply, "cripple below")[0].0, "33\"");
    let above: Vec<String> = count(&reply, "cripple above").into_iter().map(|cut| cut.0).collect();
    assert_eq!(above, ["4-3/8\"", "2-3/8\""]);
    // The first pull after the door: its far jack, then the king.
    let (pulls, what) = (column(&reply, "Pulls", 0), column(&reply, "Pulls", 2));
    let after = pulls.iter().position(|pull| pull == "156\"").unwrap();
    assert_eq!(what[after..after + 3], ["J jack stud, bottom plate", "J jack stud, bottom plate", "K king stud"]);
    assert!(reply.action.iter().any(|says| says.starts_with("Under each post and stack of jacks, at")));
    assert!(reply.about.cautions.iter().any(|says| says.contains("sized in Members, and the drawing wins")));
}

/// Field case 41: pulls crept by an inch a stud. 17 in is no layout and is refused with those that are; each pull is from one
/// end.
#[test]
fn seventeen_inches_is_no_layout() {
    let (field, problem) = refused(LayoutKind::WallLayout, &[("plate_every", "17")]);
    assert_eq!(field, "plate_every");
    assert!(problem.contains("12, 16, 19.2, 24"), "{problem}");
    let long = column(&wall(&[("plate_long", "200'")]), "Pulls", 0);
    assert_eq!(long[149], "2383-1/4\"", "16 × 149 - 3/4");
}

/// Field case 43, every figure: gap 5/8 in, with strapping -1/8, stud 93-1/4; plates of 1-9/16: 13/16, 1/16, 93-1/16.
#[test]
fn precut_studs_and_a_strapped_ceiling() {
    near(&wall(&[]), "board_gap_in", 0.625);
    let strapped = wall(&[("plate_strap", "3/4")]);
    near(&strapped, "board_gap_in", -0.125);
    assert!(strapped.action.iter().any(|says| says.contains("Studs of 93-1/4\" leave 1/2\"")), "{:?}", strapped.action);
    near(&wall(&[("plate_thick", "1-9/16")]), "board_gap_in", 0.8125);
    near(&wall(&[("plate_thick", "1-9/16"), ("plate_strap", "3/4")]), "board_gap_in", 0.0625);
    // The ceiling that two sheets and 1/2 in make, without a finish floor: 96-1/2.
    let by = |thick| {
        let of = [("plate_height_by", "ceiling"), ("plate_ceiling", "96.5 in"), ("plate_floor", "0")];
        wall(&[&of[..], &[("plate_strap", "3/4"), ("plate_thick", thick)]].concat())
    };
    near(&by("1-1/2"), "stud_in", 93.25);
    near(&by("1-9/16"), "stud_in", 93.0625);
}

/// Field case 61: returns of 6 and 9 in beside a garage door are framed with the studs that fit, and count for nothing here.
#[test]
fn narrow_returns_beside_a_garage_door() {
    let of = [("plate_long", "16' 3\""), ("plate_openings", "door 15' x 7' at 6\", header 7-1/4, jacks 2")];
    let reply = wall(&of);
    assert!(reply.about.cautions.iter().any(|says| says.contains("counts for nothing here")));
    let closer = [of[0], ("plate_openings", "door 15' x 7' at 3\", header 7-1/4, jacks 2")];
    let (field, problem) = refused(LayoutKind::WallLayout, &closer);
    assert_eq!(field, "plate_openings");
    assert!(problem.starts_with("Line 1: ") && problem.contains("nearest"), "{problem}");
}

/// Hooked on the right end, the same openings stand where they stood, and every pull is seen from there.
#[test]
fn the_tape_from_the_other_end() {
    let of = [("plate_long", "16'"), ("plate_openings", "door 3' x 6' 8\" at 2'"), ("plate_hook", "right")];
    let reply = wall(&of);
    let pulls = column(&reply, "Pulls from the right end", 0);
    assert_eq!(pulls[1], "15-1/4\"");
    // 16' less 5' is 132", where its nearer jack ends.
    assert!(reply.action.iter().any(|says| says.starts_with("Door from 132\" to 168\"")), "{:?}", reply.action);
    let problem = refused(LayoutKind::WallLayout, &[of[0], of[2], ("plate_openings", "door 3' x 6' 8\" at 14'")]).1;
    assert!(problem.contains("168\""), "as it was typed: {problem}");
}

/// Ends, inner walls, posts and braced pieces stand where they were typed.
#[test]
fn what_else_stands_in_a_wall() {
    let of = [
        ("plate_long", "20'"),
        ("plate_left", "three"),
        ("plate_right", "clips"),
        ("plate_inner", "7' 6\", 12'"),
        ("plate_posts", "3 at 10'"),
        ("plate_braced", "16' to 20' posts 2"),
        ("plate_laps", "over"),
    ];
    let reply = wall(&of);
    for (piece, many) in [("corner stud", "1"), ("post stud", "3"), ("partition stud", "4")] {
        assert_eq!(count(&reply, piece), [("92-5/8\"".to_owned(), many.to_owned())], "{piece}");
    }
    assert!(reply.about.says.iter().any(|says| says.contains("hangs on clips")));
    assert!(reply.action.iter().any(|says| says.contains("strip of 1\"")), "{:?}", reply.action);
    // Laps of 5-1/2" at both ends.
    let very_top: f64 = 20.0 * 12.0 + 11.0;
    near(&reply, "plates_in", 2.0 * 240.0 + very_top);
}

/// What the core refuses is refused at the input that it is about, with what is taken.
#[test]
fn what_cannot_be_framed_is_refused_where_it_was_typed() {
    for (of, field) in [
        (("plate_openings", "door 3' x 6' 8\" at 11'"), "plate_openings"),
        (("plate_openings", "door 3' x 6' 8\" at 4'\n\nwindow 3' x 4' at 5', sill 2' 6\""), "plate_openings"),
        (("plate_openings", "door 3' x 8' at 4'"), "plate_openings"),
        (("plate_openings", "window 3' x 4' at 4', sill 1 in"), "plate_openings"),
        (("plate_inner", "13'"), "plate_inner"),
        (("plate_posts", "3 at 12'"), "plate_posts"),
        (("plate_braced", "8' to 14'"), "plate_braced"),
        (("plate_beyond", "20"), "plate_beyond"),
    ] {
        let (found, problem) = refused(LayoutKind::WallLayout, &[of]);
        assert_eq!(found, field, "{of:?}: {problem}");
        assert!(problem.ends_with('.') && problem.len() > 40, "{of:?}: {problem}");
    }
    let (_, problem) = refused(
        LayoutKind::WallLayout,
        &[("plate_openings", "door 3' x 6' 8\" at 4'\n\nwindow 3' x 4' at 5', sill 2' 6\"")],
    );
    assert!(problem.starts_with("Line 3: "), "{problem}");
    let of = [("plate_long", "7\""), ("plate_left", "three"), ("plate_meets", "12")];
    assert_eq!(refused(LayoutKind::WallLayout, &of).0, "plate_meets");
    let low = [
        ("plate_height_by", "ceiling"),
        ("plate_ceiling", "2'"),
        ("plate_thick", "3-1/2"),
        ("plate_floor", "0"),
        ("plate_board", "0"),
    ];
    assert_eq!(refused(LayoutKind::WallLayout, &low).0, "plate_ceiling");
}

/// Texts that are wrong in each input that is read by a grammar of its own.
fn wrong(id: &str) -> &'static [&'static str] {
    match id {
        "plate_openings" => &[
            "hatch 3' x 4' at 2'",
            "door 3' at 4'",
            "door 3' x 6' 8\"",
            "door 3' x 6' 8\" at 4' at 5'",
            "door 3' x 6' 8\" at 4' center 5'",
            "door 3' x 6' 8\" at 4' sill 2'",
            "window 3' x 4' at 4'",
            "window 3' x 4' at 4' sill 3' head 8'",
            "window 3' x 4' at 4' sill 3' jacks two",
            "window 3' x 4' at 4' sill 3' jacks 7",
            "window 3' x 4' at 4' sill 3' header deep",
            "window 3' x 4' at 4' sill 3' header 9-1/4 x 9",
            "door 3' x 80' at 4'",
            "door NaN x 7' at 4'",
        ],
        "plate_inner" => &["far", ",", "-4'", "900'", "1,1,1,1,1,1,1,1,1,1,1,1,1"],
        "plate_posts" => &["10'", "three at 4'", "0 at 4'", "9 at 4'", "2 at", "2 at far", ","],
        "joists_openings" => &[
            "3' x 10'",
            "3' at 4' in 2'",
            "wide x 10' at 4' in 2'",
            "3' x 10' at 4' in 2' plies 5",
            "3' x 10' at 4' at 5' in 2'",
            "3' x 2 in at 4' in 2'",
            "3' x 10' at 23' in 2'",
            "3' x 10' at 4' in 6'",
        ],
        "joists_walls" => &["far", ",", "30'", "12' spread wide", "12' spread 20"],
        "joists_loads" => &["12'", "2 at 12'", "none at 12' x 0'", "13 at 12' x 0'", "2 at 30' x 0'", ","],
        "plate_braced" => &["4'", "0 to", "0 to 4' posts none", "0 to 4' posts 9", "4' to 2'", ","],
        _ => &[],
    }
}

/// Bad texts at every input alone are refused where they were typed, with what is taken.
#[test]
fn nonsense_is_refused_with_what_is_taken() {
    let of = |kind: LayoutKind, specs: &'static [FieldSpec]| specs.iter().map(move |spec| (kind, spec));
    let all = of(LayoutKind::WallLayout, WALL_LAYOUT_FIELDS).chain(of(LayoutKind::FloorLayout, FLOOR_LAYOUT_FIELDS));
    for (kind, spec) in all {
        let texts = match spec.kind {
            Kind::Name | Kind::Lines => wrong(spec.id),
            Kind::Length { .. } => &["-6'", "4000'", "wide", "6 psf", "NaN"],
            Kind::Choice(_) => &["neither", "-"],
            Kind::Number { .. } | Kind::Special { .. } | Kind::Size => &[],
        };
        assert!(!texts.is_empty(), "{} has no bad text here", spec.id);
        for text in texts {
            let (field, problem) = refused(kind, &[(spec.id, text)]);
            assert_eq!(field, spec.id, "{text:?}");
            let told = ["taken", "Write", "write", "must lie on", "it may lie from", "The nearest place with room is"];
            assert!(problem.ends_with('.') && told.iter().any(|words| problem.contains(words)), "{text:?}: {problem}");
        }
    }
}

/// Source: the sheet's part C: joists = (length - 1.5) / spacing, rounded up, and one: 40 ft at 16 in has 31; the first near
/// edge at 15-1/4. 28 x 40 ft: 35 sheets by area, 7 rows of 5 are 35.
#[test]
fn joists_and_sheets_of_the_sheet_s_floor() {
    let reply = floor(&[("joists_long", "40'"), ("joists_deep", "28'")]);
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("31 joists, 27' 9\"", "from end to end"));
    near(&reply, "joists", 31.0);
    near(&reply, "first_pull_in", 15.25);
    near(&reply, "rows", 7.0);
    near(&reply, "panels", 35.0);
    // Source: the same: a tube of 28 fl oz gives 85.8 ft of a 1/4 in bead.
    let tubes = (reply.fact("adhesive_in").unwrap() / 12.0 / 85.8).ceil();
    near(&reply, "tubes", tubes);
}

/// Source: the sheet's part C: flush with a beam, a joist is the clear length less 1/16 to 1/8 in for each hanger.
#[test]
fn joists_in_hangers() {
    let of =
        [("joists_deep", "12'"), ("joists_near", "hangers"), ("joists_far", "hangers"), ("joists_hanger_gap", "1/8")];
    let reply = floor(&of);
    near(&reply, "joist_in", 144.0 - 0.25);
    near(&reply, "hangers", 2.0 * reply.fact("joists").unwrap());
}

/// Source: IRC 2021 R502.10 (from memory): over 4 ft of header trimmers and headers are doubled, over 6 ft the header hangs.
#[test]
fn openings_by_the_length_of_their_header() {
    let narrow = floor(&[("joists_openings", "4' x 6' at 10', in 4'")]);
    let wide = floor(&[("joists_openings", "7' x 6' at 10', in 4'")]);
    let of = |reply: &QuickReply, piece: &str| count(reply, piece).into_iter().map(|cut| cut.1).collect::<Vec<_>>();
    assert_eq!((of(&narrow, "trimmer"), of(&narrow, "header")), (vec!["2".to_owned()], vec!["2".to_owned()]));
    assert_eq!((of(&wide, "trimmer"), of(&wide, "header")), (vec!["4".to_owned()], vec!["4".to_owned()]));
    assert!(column(&wide, "Hangers", 0).iter().any(|what| what.starts_with("header over 6'")));
    let drawn = floor(&[("joists_openings", "4' x 6' at 10', in 4', plies 2")]);
    assert_eq!(of(&drawn, "trimmer"), ["4"]);
}

/// Field case 69: 14 in joists at 19.2 in under a loaded wall: blocks of 14-1/16 in, and wood down to the bearing.
#[test]
fn squash_blocks_under_a_loaded_wall() {
    let of = [
        ("joists_every", "19.2"),
        ("joists_stick", "made"),
        ("joists_made_deep", "14"),
        ("joists_loads", "2 at 8' x 7', 2 at 9' 8\" x 7'"),
    ];
    let reply = floor(&of);
    near(&reply, "squash_block_in", 14.0625);
    assert_eq!(count(&reply, "squash block"), [("1' 2-1/16\"".to_owned(), "4".to_owned())]);
    let says = reply.action.iter().find(|says| says.starts_with("Squash blocks of 14-1/16\"")).unwrap();
    assert!(says.contains("down to the bearing") && says.contains("before the ceiling closes"), "{says}");
}

/// Hooked on the right end, openings stand where they stood; a line that is refused is named.
#[test]
fn a_floor_from_the_other_end() {
    let of = [("joists_openings", "3' x 6' at 4', in 4'"), ("joists_hook", "right")];
    let reply = floor(&of);
    assert!(reply.action.iter().any(|says| says.starts_with("Opening from 204\" to 240\"")), "{:?}", reply.action);
    let two = [("joists_openings", "3' x 6' at 4', in 4'\n\n3' x 6' at 5', in 4'")];
    let (field, problem) = refused(LayoutKind::FloorLayout, &two);
    assert_eq!(field, "joists_openings");
    assert!(problem.starts_with("Line 3: "), "{problem}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Any text in any input is answered, or refused with a sentence; every number of an answer is finite.
    #[test]
    fn any_text_is_answered_or_refused(
        field in 0..WALL_LAYOUT_FIELDS.len() + FLOOR_LAYOUT_FIELDS.len(),
        text in "(door|window|opening|[0-9]|at|to|in|sill|x|'|\"| |,|\n|-|/|posts|spread|\\PC){0,24}",
    ) {
        let walls = WALL_LAYOUT_FIELDS.iter().map(|spec| (LayoutKind::WallLayout, spec.id));
        let floors = FLOOR_LAYOUT_FIELDS.iter().map(|spec| (LayoutKind::FloorLayout, spec.id));
        let (kind, id) = walls.chain(floors).nth(field).unwrap();
        let outcome = derive(kind, &case(&[(id, text.as_str())]), &Nothing);
        for refusal in outcome.refusals() {
            prop_assert!(refusal.problem.ends_with('.'), "{}", refusal.problem);
        }
        if let Some(reply) = outcome.answered {
            prop_assert!(reply.facts.iter().all(|fact| fact.value.is_finite()));
        }
    }

    /// Pulls rise, stay on the plate, and the cut list has as many jacks as the openings ask.
    #[test]
    fn pulls_rise_from_one_end(length in 8.0..60.0_f64, at in 1.0..5.0_f64, jacks in 1_u8..3, right in any::<bool>()) {
        let (long, line) = (format!("{length:.3}'"), format!("door 2' 6\" x 6' 8\" at {at:.2}', jacks {jacks}"));
        let hook = if right { "right" } else { "left" };
        let outcome = derive(
            LayoutKind::WallLayout,
            &case(&[("plate_long", &long), ("plate_openings", &line), ("plate_hook", hook), ("plate_panels", "none")]),
            &Nothing,
        );
        let reply = outcome.answered.unwrap();
        prop_assert_eq!(count(&reply, "jack stud")[0].1.clone(), (2 * jacks).to_string());
        let pulls: Vec<f64> = reply.tables[0].rows.iter()
            .map(|row| measure::read_length(&row[0], measure::LengthUnit::Inches).unwrap().length.inches())
            .collect();
        prop_assert!(pulls.windows(2).all(|pair| pair[0] <= pair[1]), "{pulls:?}");
        prop_assert!(*pulls.last().unwrap() <= length * 12.0);
    }
}
