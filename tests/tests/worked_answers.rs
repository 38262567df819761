//! Worked answers as an engineer reads them, kept so that a change in any step is seen and explained.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;
use std::fmt::Write;

use framing::bracing::BracingKind;
use framing::layout::LayoutKind;
use framing::member::MemberKind;
use framing::quick::{QuickKind, derive};
use framing::reply::WorkingReply;
use framing::{HeaderCase, derive_header, reply};

fn worked(fields: &[(&str, &str)]) -> String {
    let mut case = HeaderCase::default();
    for (field, text) in fields {
        assert!(case.set(field, Some((*text).to_owned())), "no input {field}");
    }
    let reply = reply(&derive_header(&case, &HeaderCase::default())).unwrap();
    let mut text = String::new();
    let ratio = reply.ratio.unwrap_or(f64::NAN);
    writeln!(text, "{} {} {:.4} {}", reply.size, reply.verdict, ratio, reply.governs.unwrap_or_default()).unwrap();
    write_working(&mut text, reply.working);
    text
}

fn write_working(text: &mut String, working: Vec<WorkingReply>) {
    for part in working {
        writeln!(text, "\n{}", part.heading).unwrap();
        for step in part.steps {
            let (symbol, value) = (step.symbol, members::working::figure(step.value));
            writeln!(
                text,
                "  {symbol:6} {} | {} = {value} {} | {}",
                step.meaning, step.expression, step.unit, step.source
            )
            .unwrap();
        }
    }
}

/// A quick check's answer: verdict, limits, what its supports give, and every step.
fn worked_quick<K: QuickKind>(kind: K, fields: &[(&str, &str)]) -> String {
    let case: BTreeMap<String, String> =
        fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect();
    let reply = derive(kind, &case, &BTreeMap::<String, String>::new()).answered.unwrap();
    let mut text = String::new();
    let ratio = reply.ratio.map_or_else(|| "-".to_owned(), |ratio| format!("{ratio:.4}"));
    writeln!(text, "{} {} {ratio} {}", reply.size, reply.verdict, reply.governs.unwrap_or_default()).unwrap();
    for check in reply.checks {
        writeln!(text, "  {} {:.4} {}", check.limit, check.ratio, check.combination).unwrap();
    }
    for support in reply.supports {
        writeln!(text, "  at {} {:.1} to {:.1} lb", support.at, support.least_lb, support.most_lb).unwrap();
    }
    for fact in reply.facts {
        writeln!(text, "  {}: {}", fact.what, fact.written).unwrap();
    }
    for rule in reply.by_code.iter().chain(&reply.needs) {
        writeln!(text, "  {}, {:?}: {}", rule.heading, rule.holds, rule.figure).unwrap();
    }
    for says in reply.action {
        writeln!(text, "  - {says}").unwrap();
    }
    write_working(&mut text, reply.about.working);
    text
}

#[test]
fn a_joist_over_two_spans_with_a_cantilever_and_a_wall_on_it() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Joist,
        &[
            ("joist_span", "13' 6\""),
            ("second_span", "9'"),
            ("cantilever", "18\""),
            ("wall_at", "24'"),
            ("wall_dead", "300 plf"),
            ("wall_snow", "240 plf"),
            ("species", "DF-L"),
            ("drawn_size", "2x12"),
        ],
    ));
}

#[test]
fn a_girder_over_two_spans_with_a_post_on_it() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Beam,
        &[
            ("beam_spans", "9', 11' 6\""),
            ("floor_strip", "12'"),
            ("more_loads", "S 2400 lb at 5'; D 100 to 300 plf from 9' to 15'"),
            ("drawn_size", "3-2x12"),
        ],
    ));
}

#[test]
fn a_rafter_with_a_raised_tie_in_the_wind() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Rafter,
        &[
            ("rafter_run", "13'"),
            ("roof_pitch", "9/12"),
            ("ties", "raised"),
            ("tie_height", "3'"),
            ("ground_snow", "35 psf"),
            ("wind_speed", "140 mph"),
            ("exposure", "C"),
            ("blocked_every", "4'"),
            ("drawn_size", "2x12"),
        ],
    ));
}

#[test]
fn a_ridge_on_three_posts() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Ridge,
        &[("ridge_spans", "11', 9'"), ("ground_snow", "35 psf"), ("wind_speed", "130 mph"), ("exposure", "D")],
    ));
}

#[test]
fn a_valley_between_two_pitches() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::HipValley,
        &[
            ("corner", "valley"),
            ("hip_run", "11'"),
            ("roof_pitch", "7/12"),
            ("other_pitch", "9/12"),
            ("ground_snow", "30 psf"),
            ("wind_speed", "120 mph"),
        ],
    ));
}

#[test]
fn a_tall_stud_beside_an_opening() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Stud,
        &[
            ("stud_length", "13' 6\""),
            ("king_opening", "6'"),
            ("wind_speed", "140 mph"),
            ("exposure", "C"),
            ("species", "SP"),
            ("drawn_size", "2-2x6"),
        ],
    ));
}

#[test]
fn a_nailed_post_of_three_plies() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Post,
        &[("post_height", "9'"), ("post_dead", "3000 lb"), ("post_snow", "5200 lb"), ("drawn_size", "3-2x6")],
    ));
}

#[test]
fn a_joist_bored_near_its_bearing() {
    insta::assert_snapshot!(worked_quick(
        MemberKind::Notch,
        &[
            ("joist_span", "13'"),
            ("cut_kind", "hole"),
            ("cut_depth", "3\""),
            ("cut_at", "2' 6\""),
            ("cut_to_edge", "3\""),
        ],
    ));
}

#[test]
fn two_floors_with_framing_on_it() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "5'"),
        ("carries", "two_floors_center_bearing"),
        ("above", "framing_bears"),
        ("building_width", "28'"),
        ("ground_snow", "40 psf"),
        ("wind_speed", "130 mph"),
        ("exposure", "C"),
        ("near_corner", "no"),
        ("species", "DF-L"),
    ]));
}

#[test]
fn unbraced_engineered_header_over_an_overhead_door() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "16' 3\""),
        ("closure", "overhead_door"),
        ("above", "cripple_studs"),
        ("wall_height", "10' 1-1/8\""),
        ("head_height", "7'"),
        ("ground_snow", "25 psf"),
    ]));
}

#[test]
fn wet_southern_pine_in_a_gable() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "6'"),
        ("carries", "gable_end"),
        ("species", "SP"),
        ("service", "wet"),
        ("above", "cripple_studs"),
        ("size", "2-2x10"),
    ]));
}

#[test]
fn a_wall_in_two_pieces_beside_a_wide_door() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::ShearWall,
        &[
            ("wall_pieces", "2' 6\", 3' 6\""),
            ("wall_high", "9' 1-1/8\""),
            ("wall_push", "3,100 lb"),
            ("wall_dead", "240 plf"),
            ("drawn_size", "15/32 10d 3"),
            ("hold_down_label", "5,000 lb"),
            ("end_post", "3"),
            ("species", "DF-L"),
        ]
    ));
}

#[test]
fn a_stair_gallery_with_windows() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::PerforatedWall,
        &[
            ("wall_pieces", "3', 3' 4\", 4'"),
            ("wall_openings", "4' x 5', 3' x 6' 8\" open"),
            ("wall_push", "2,250 lb"),
            ("wall_dead", "120 plf"),
            ("provisions", "2015"),
        ]
    ));
}

#[test]
fn hold_downs_of_three_storeys() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::HoldDown,
        &[
            ("storey_pushes", "900, 1,100, 1,300"),
            ("storey_heights", "8' 10\", 9' 4\", 10' 2\""),
            ("storey_deads", "180, 240, 240"),
            ("wall_long", "8'"),
            ("end_post", "4"),
        ]
    ));
}

#[test]
fn uplift_of_a_wall_on_a_headland() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::Uplift,
        &[
            ("wind_speed", "150"),
            ("exposure", "D"),
            ("uplift_storeys", "2"),
            ("rafter_tie", "800 lb"),
            ("plate_tie", "600 lb"),
            ("floor_tie", "600 lb"),
            ("sill_tie", "none"),
            ("uplift_opening", "6'"),
            ("bolt_washer", "plate"),
            ("bolt_every", "32\""),
        ]
    ));
}

#[test]
fn uplift_of_a_gable_end_with_its_roof_sheathing() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::Uplift,
        &[
            ("uplift_of", "gable"),
            ("wind_speed", "130"),
            ("exposure", "C"),
            ("deck_nail", "8d common"),
            ("deck_shank", "ring"),
            ("deck_every", "4\""),
            ("outlooker_tie", "500 lb"),
            ("outlooker_inner_tie", "3 10d common"),
            ("rafter_tie_side", "sheathed"),
            ("plate_tie", "panels"),
            ("sill_tie", "panels"),
            ("lap_panels", "7/16 8d 6"),
            ("lap_rows", "2"),
            ("lap_shear", "150"),
            ("bolt_every", "16\""),
            ("bolt_washer", "plate"),
        ]
    ));
}

#[test]
fn uplift_of_a_porch() {
    insta::assert_snapshot!(worked_quick(
        BracingKind::Uplift,
        &[
            ("uplift_of", "porch"),
            ("porch_lift", "25"),
            ("porch_bays", "8', 10'"),
            ("porch_rafter_tie", "300 lb"),
            ("post_top_tie", "1,200 lb"),
            ("footing_weighs", "1,800 lb"),
        ]
    ));
}

#[test]
fn a_rafter_of_a_steep_addition() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::CommonRafter,
        &[
            ("cut_run", "11' 7-1/2\""),
            ("roof_pitch", "9.5/12"),
            ("eave_overhang", "17-1/4\""),
            ("cut_stick", "2x10"),
            ("ridge_meets", "beam_face"),
            ("ridge_thick", "3-1/2\""),
            ("ridge_deep", "11-7/8\""),
            ("seat_level", "2-3/4\""),
            ("tail_cut", "square"),
        ]
    ));
}

#[test]
fn a_backed_valley_between_two_pitches_at_an_odd_corner() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::HipValleyCuts,
        &[
            ("cut_corner", "valley"),
            ("cut_run", "10' 4\""),
            ("roof_pitch", "6/12"),
            ("cut_other_pitch", "7.5/12"),
            ("corner_angle", "112.5"),
            ("hip_plies", "2"),
            ("hip_top", "backed"),
            ("cut_stick", "2x8"),
        ]
    ));
}

#[test]
fn sheets_of_a_plane_from_a_valley_to_a_hip() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::RoofSheathing,
        &[
            ("sheathed_eave", "37' 5\""),
            ("left_end", "valley"),
            ("right_end", "hip"),
            ("roof_pitch", "8/12"),
            ("cut_other_pitch", "10/12"),
            ("cut_run", "13' 2\""),
            ("eave_overhang", "18\""),
        ]
    ));
}

#[test]
fn a_wall_with_a_door_and_a_window() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::WallLayout,
        &[
            ("plate_long", "22' 6\""),
            ("plate_openings", "door 3' 2\" x 6' 10\" at 4'\nwindow 5' x 4' at 12' 6\", sill 2' 10\", jacks 2"),
            ("plate_height_by", "ceiling"),
            ("plate_strap", "3/4"),
            ("plate_left", "three"),
            ("plate_posts", "3 at 20'"),
            ("plate_braced", "8' to 12' posts 2"),
            ("plate_panel_long", "9"),
        ]
    ));
}

#[test]
fn a_floor_with_a_stair_and_a_wall_on_it() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::FloorLayout,
        &[
            ("joists_long", "28'"),
            ("joists_deep", "15' 6\""),
            ("joists_openings", "3' 6\" x 10' at 12', in 2'"),
            ("joists_stick", "made"),
            ("joists_near", "hangers"),
            ("joists_walls", "20' spread 4\""),
            ("joists_loads", "2 at 6' x 15' 5\""),
            ("joists_rows", "1"),
        ]
    ));
}

#[test]
fn an_uneven_ceiling_with_a_low_joist() {
    insta::assert_snapshot!(worked_quick(
        LayoutKind::Strapping,
        &[
            ("strap_across", "112\""),
            ("strap_along", "64\""),
            (
                "strap_readings",
                "1-1/4, 1-5/8, 1-3/8, 2, 1-1/8, 1-1/2\n1-3/8, 1-1/2, -, 1-7/8, 1-1/4, 1-1/2\n1-1/2, 1-1/2, 1-3/8, 1-3/4, 1-1/4, 1-3/8\n1-1/2, 1-3/8, 1-3/8, 1-5/8, 1-3/8, 1-3/8\n1-5/8, 1-3/8, 1-1/4, 1-1/2, 1-3/8, -",
            ),
            ("strap_datum_high", "96"),
            ("strap_joists_are", "2x12"),
            ("strap_beam_deep", "11-7/8"),
            ("strap_stud", "92-5/8"),
        ]
    ));
}
