//! What is drawn of a look.

use proptest::prelude::*;
use view::scene::{Ink, Mark, Weight};
use view::walk::{InHand, Kind, LookScreen, look};

use crate::{figures, is_inside, seventeen, shown, typed};

fn shapes(screen: &LookScreen, wanted: impl Fn(&Mark) -> bool) -> usize {
    screen.picture.marks.iter().filter(|mark| wanted(mark)).count()
}

fn in_ink(screen: &LookScreen, wanted: Ink) -> usize {
    shapes(screen, |mark| matches!(mark, Mark::Shape { ink, .. } if *ink == wanted))
}

/// Source: field case FC-41: five bays of 17 in, edges at 48 and 96 in the air.
#[test]
fn a_row_shows_its_wide_bays_and_missed_edges() {
    let screen = seventeen();
    assert_eq!(in_ink(&screen, Ink::Short), 5, "bays");
    assert_eq!(figures(&screen.picture).iter().filter(|figure| **figure == "17\"").count(), 5);
    let edges = |mark: &Mark| matches!(mark, Mark::Line { ink: Ink::Short, weight: Weight::Seen, .. });
    assert_eq!(shapes(&screen, edges), 4, "two double lines");
    let next = |mark: &Mark| matches!(mark, Mark::Shape { ink: Ink::Chalk, weight: Weight::Hidden, .. });
    assert_eq!(shapes(&screen, next), 1);
    let alt = &screen.picture.alt;
    for said in
        ["6 studs pulled", "17\" from 16\" to 33\"", "Sheet edges that miss a stud: at 48\", 96\"", "is at 112\""]
    {
        assert!(alt.contains(said), "{said}: {alt}");
    }
}

/// Each stud and each bay brings its reading to hand, and the place of the next stud a new one.
#[test]
fn studs_and_bays_can_be_tapped() {
    let screen = seventeen();
    let acts: Vec<&str> = screen
        .picture
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Pick { act, .. } => Some(act.as_str()),
            _ => None,
        })
        .collect();
    for reading in 0..6 {
        let act = format!("reading pulls {reading}");
        assert_eq!(acts.iter().filter(|found| **found == act).count(), 2, "{act}: {acts:?}");
    }
    assert_eq!(acts.iter().filter(|found| **found == "reading pulls 6").count(), 1);
}

#[test]
fn a_long_wall_is_drawn_around_the_pull_in_hand() {
    let pulls: Vec<String> = (1..=30).map(|stud| (stud * 16).to_string()).collect();
    let pulls: Vec<&str> = pulls.iter().map(String::as_str).collect();
    let wall = typed(&[("required_spacing", "16")], &[("pulls", &pulls)]);
    let at = |reading| look(Kind::StudSpacing, &wall, InHand { field: "pulls", reading }, None).picture;
    let (start, middle) = (at(0), at(15));
    for picture in [&start, &middle] {
        assert!(picture.width > 100.0 && picture.width < 160.0, "{}", picture.width);
        is_inside(picture).unwrap();
    }
    assert!(start.left < 0.0 && middle.left > 150.0, "{} {}", start.left, middle.left);
    assert!(figures(&middle).contains(&"256\""), "the pull in hand: {:?}", figures(&middle));
    // The whole wall stands below with its own length: the next stud on its mark is the last thing known of it.
    assert!(figures(&middle).contains(&"496-3/4\""), "{:?}", figures(&middle));
}

#[test]
fn nails_that_missed_are_hollow() {
    let screen =
        shown(Kind::Nailing, &[("line_length", "8'"), ("edge_spacing", "6"), ("driven", "17"), ("missed", "12")], &[]);
    let nails = |filled| move |mark: &Mark| matches!(mark, Mark::Shape { points, washed, .. } if points.len() > 4 && *washed == filled);
    assert_eq!((shapes(&screen, nails(true)), shapes(&screen, nails(false))), (5, 12));
    assert!(figures(&screen.picture).contains(&"6\"") && figures(&screen.picture).contains(&"96\""));
    assert!(
        screen.picture.alt.contains("17 nails driven, 12 missed") && screen.picture.alt.contains("24\" on average")
    );
}

/// Source: field case FC-21: 48 nails around a panel at 6 in, 14 of them too deep.
#[test]
fn nails_too_deep_are_filled() {
    let screen = shown(Kind::Nailing, &[("overdriven", "14"), ("edge_spacing", "6")], &[]);
    let nails = |filled| move |mark: &Mark| matches!(mark, Mark::Shape { points, washed, .. } if points.len() > 4 && *washed == filled);
    assert_eq!((shapes(&screen, nails(true)), shapes(&screen, nails(false))), (14, 34), "{}", screen.picture.alt);
}

#[test]
fn bolts_stand_where_they_were_measured() {
    let screen = shown(
        Kind::HoldDownPoint,
        &[("plate_length", "8'"), ("plate", "2x6")],
        &[("bolts", &["6", "48", "90"]), ("nuts", &["tight", "missing", "could not be seen"])],
    );
    let drawn = figures(&screen.picture);
    for figure in ["6\"", "42\"", "96\"", "missing", "not seen"] {
        assert!(drawn.contains(&figure), "{figure}: {drawn:?}");
    }
    assert_eq!((in_ink(&screen, Ink::Short), in_ink(&screen, Ink::Outside)), (1, 1));
    assert!(screen.picture.alt.contains("at 48\", nut missing"), "{}", screen.picture.alt);
    let low = shown(Kind::HoldDownPoint, &[("looking_at", "hold_down"), ("thread", "1/4")], &[]);
    assert!(figures(&low.picture).contains(&"1/4\""), "{}", low.picture.alt);
    for (thread, said) in [
        ("", "the rod's end was not seen"),
        ("could not be seen", "the rod's end was not seen"),
        ("no", "the rod ends below its top"),
        ("flush or proud", "flush with its top"),
        ("1/4", "ends 1/4\" below its top"),
        ("24", "ends 24\" below its top"),
    ] {
        let screen = shown(Kind::HoldDownPoint, &[("looking_at", "hold_down"), ("thread", thread)], &[]);
        assert!(screen.picture.alt.contains(said), "{thread}: {}", screen.picture.alt);
        is_inside(&screen.picture).unwrap();
    }
}

/// Source: field case FC-37: 334 lb; the tie on the sheathed side, or inside.
#[test]
fn a_roof_tie_stands_on_its_side_with_the_uplift() {
    let tie = |more: &[(&str, &str)]| {
        let texts = [&[("looking_at", "roof_tie"), ("required_uplift", "334")], more].concat();
        let screen = shown(Kind::HoldDownPoint, &texts, &[]);
        is_inside(&screen.picture).unwrap();
        screen
    };
    let arrow =
        |mark: &Mark| matches!(mark, Mark::Arrow { from, to, figure, .. } if figure == "334 lb" && to.1 < from.1);
    for (held, said, short) in [
        (&[("held_by", "tie"), ("tie_side", "sheathed")][..], "a tie on the sheathed side", 0),
        (&[("held_by", "tie"), ("tie_side", "inside")], "a tie inside the wall", 1),
        (&[("held_by", "tie"), ("tie_side", "could not be seen")], "whose side could not be seen", 0),
        (&[("held_by", "tie")], "whose side was not looked at", 0),
        (&[("held_by", "toe_nails")], "held by toe nails", 0),
        (&[], "what holds it was not seen", 0),
    ] {
        let screen = tie(held);
        assert!(screen.picture.alt.contains(said), "{}", screen.picture.alt);
        let ink = |mark: &Mark| matches!(mark, Mark::Line { ink: Ink::Short, .. });
        assert_eq!((shapes(&screen, arrow), shapes(&screen, ink)), (1, short), "{said}");
    }
    let unknown = shown(Kind::HoldDownPoint, &[("looking_at", "roof_tie")], &[]);
    assert!(unknown.picture.alt.ends_with("The uplift is not known."), "{}", unknown.picture.alt);
}

#[test]
fn nails_that_a_strap_lacks_are_hollow() {
    let strap = |found, required| {
        let texts = [("looking_at", "strap"), ("fasteners", found), ("required_nails", required)];
        let screen = shown(Kind::HoldDownPoint, &texts, &[]);
        is_inside(&screen.picture).unwrap();
        screen
    };
    let nails = |filled| move |mark: &Mark| matches!(mark, Mark::Shape { points, washed, .. } if points.len() > 6 && *washed == filled);
    let screen = strap("12", "14");
    assert_eq!((shapes(&screen, nails(true)), shapes(&screen, nails(false))), (12, 2));
    assert!(screen.picture.alt.contains("12 of 14 nails"), "{}", screen.picture.alt);
    let many = strap("400", "500");
    assert_eq!(shapes(&many, nails(true)), 0);
    assert!(strap("", "14").picture.alt.contains("not counted"));
}

/// Source: field case FC-39: 25 % of 3-1/2 in is 7/8 in.
#[test]
fn a_notch_is_drawn_with_its_limit() {
    let screen = shown(
        Kind::NotchFound,
        &[("member", "stud"), ("size", "2x4"), ("notch_depth", "1"), ("wall", "exterior_or_bearing")],
        &[],
    );
    let limit = |mark: &Mark| matches!(mark, Mark::Line { from, ink: Ink::Chalk, weight: Weight::Hidden, .. } if from.1 == 0.875);
    assert_eq!(shapes(&screen, limit), 1);
    assert!(figures(&screen.picture).contains(&"1\""), "{:?}", figures(&screen.picture));
    assert!(screen.picture.alt.contains("at most 7/8\""), "{}", screen.picture.alt);
}

#[test]
fn what_is_drawn_larger_says_so() {
    let plumb = shown(Kind::Flatness, &[("looking_at", "plumb"), ("out", "1/4"), ("over", "8'")], &[]);
    assert!(plumb.picture.alt.contains("drawn 38 times as large as measured"), "{}", plumb.picture.alt);
    assert!(figures(&plumb.picture).contains(&"1/4\"") && figures(&plumb.picture).contains(&"96\""));
    let faces = shown(Kind::Flatness, &[], &[("distances", &["1", "1-1/8", "1-3/8"])]);
    assert_eq!(in_ink(&faces, Ink::Short), 1, "{}", faces.picture.alt);
    let steep = shown(Kind::Flatness, &[("looking_at", "plumb"), ("out", "6"), ("over", "12")], &[]);
    assert!(steep.picture.alt.contains("drawn as measured"), "{}", steep.picture.alt);
}

/// Source: field case FC-57.
#[test]
fn moisture_stands_as_bars_beside_its_limit() {
    let screen = shown(Kind::Moisture, &[], &[("places", &["plate", "stud"]), ("visits", &["3 May: 22, 17"])]);
    let drawn = figures(&screen.picture);
    for figure in ["22 %", "17 %", "18 %"] {
        assert!(drawn.contains(&figure), "{figure}: {drawn:?}");
    }
    assert_eq!(in_ink(&screen, Ink::Short), 1);
    assert!(screen.picture.alt.starts_with("3 May: 2 readings"), "{}", screen.picture.alt);
}

#[test]
fn before_anything_is_measured_nothing_is_made_up() {
    for kind in Kind::ALL.into_iter().filter(|kind| *kind != Kind::StudSpacing) {
        let screen = shown(kind, &[], &[]);
        assert!(screen.picture.marks.is_empty(), "{kind:?}");
        assert_eq!(screen.picture.alt, "Nothing is drawn yet.");
    }
}

proptest! {
    /// Any wall: inside its sheet, no longer than a phone takes, and each bay out of its limit told in words.
    #[test]
    fn any_wall_stays_inside_its_sheet(
        steps in prop::collection::vec(1_u32..80, 1..40),
        reading in 0_usize..45,
        long in prop::option::of(20_u32..900),
        opening in prop::option::of((10_u32..200, 1_u32..90)),
    ) {
        let pulls: Vec<String> = steps
            .iter()
            .scan(0, |at, step| { *at += step; Some(at.to_string()) })
            .collect();
        let mut wall = typed(&[("required_spacing", "16")], &[]);
        wall.lists.insert("pulls".to_owned(), pulls);
        if let Some(long) = long { wall.texts.insert("plate_length".to_owned(), long.to_string()); }
        if let Some((from, wide)) = opening {
            wall.lists.insert("openings".to_owned(), vec![format!("{from} to {}", from + wide)]);
        }
        let screen = look(Kind::StudSpacing, &wall, InHand { field: "pulls", reading }, None);
        prop_assert!(screen.current);
        is_inside(&screen.picture).map_err(TestCaseError::fail)?;
        prop_assert!(screen.picture.width < 200.0 && screen.picture.height < screen.picture.width * 1.2);
    }

    /// Any plate piece and its bolts.
    #[test]
    fn any_sill_stays_inside_its_sheet(
        bolts in prop::collection::vec(0_u32..200, 0..12),
        long in prop::option::of(200_u32..1200),
        washer in 1_u32..12,
        face in 0_u32..24,
    ) {
        let mut sill = typed(&[], &[("nuts", &["loose"])]);
        sill.lists.insert("bolts".to_owned(), bolts.iter().map(u32::to_string).collect());
        sill.lists.insert("washers".to_owned(), vec![format!("{washer} x {washer} x 0.25")]);
        sill.lists.insert("from_faces".to_owned(), vec![face.to_string()]);
        if let Some(long) = long { sill.texts.insert("plate_length".to_owned(), long.to_string()); }
        let screen = look(Kind::HoldDownPoint, &sill, InHand { field: "nuts", reading: 0 }, None);
        prop_assert!(screen.current, "{:?}", screen.questions);
        is_inside(&screen.picture).map_err(TestCaseError::fail)?;
    }

    /// Any cut that the member can have.
    #[test]
    fn any_cut_stays_inside_its_sheet(
        member in prop::sample::select(vec!["stud", "joist", "rafter", "top_plate", "engineered"]),
        notch in 1_u32..28,
        hole in prop::option::of(1_u32..28),
        beside in prop::option::of(0_u32..60),
    ) {
        let eighths = |count: u32| format!("{}/8", count);
        let mut cut = typed(&[("member", member), ("member_width", "3-1/2"), ("tie", "yes")], &[]);
        for (id, count) in [("notch_depth", Some(notch)), ("hole_diameter", hole), ("to_edge", beside), ("tie_past_opening", beside), ("tie_width", Some(notch + 1))] {
            if let Some(count) = count { cut.texts.insert(id.to_owned(), eighths(count)); }
        }
        let screen = look(Kind::NotchFound, &cut, InHand { field: "notch_depth", reading: 0 }, None);
        is_inside(&screen.picture).map_err(TestCaseError::fail)?;
    }
}
