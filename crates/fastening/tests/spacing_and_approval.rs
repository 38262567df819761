//! Where nails split the framing, who must agree to another nail, and what the code's schedule lists.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use std::collections::BTreeSet;

use fastening::{
    Approval, EdgeFraming, Nail, NailedWork, approval, edge_framing, least_edge_spacing, least_spacing_along_grain,
    listed, nails_may_be_added, read_nail,
};
use measure::Length;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn nail(text: &str) -> Nail {
    read_nail(text).unwrap().nail
}

/// Source: SDPWS 2021 §4.3.7.1 (from memory), FEMA P-499 (closer than 3 in): nail, penetration, spacing, framing.
#[test]
fn framing_at_panel_joints() {
    use EdgeFraming::{ThreeByOrTwoStitched, TwoBy};
    let rows = [
        ("8d common", 2.06, 6.0, TwoBy),
        ("8d common", 2.06, 4.0, TwoBy),
        ("8d common", 2.06, 3.0, TwoBy),
        ("8d common", 2.06, 2.99, ThreeByOrTwoStitched),
        ("8d common", 2.06, 2.0, ThreeByOrTwoStitched),
        ("2-3/8 x .113", 1.94, 3.0, TwoBy),
        ("2-3/8 x .113", 1.94, 2.5, ThreeByOrTwoStitched),
        ("10d common", 2.5, 3.0, ThreeByOrTwoStitched),
        ("10d common", 1.5, 3.0, TwoBy),
        ("10d common", 2.5, 3.01, TwoBy),
        ("10d common", 2.5, 4.0, TwoBy),
        // Between 8d and 10d counts as 10d.
        ("3-1/2 x .135", 2.5, 3.0, ThreeByOrTwoStitched),
    ];
    for (name, penetration, spacing, framing) in rows {
        let found = edge_framing(nail(name), inches(penetration), inches(spacing)).unwrap().value;
        assert_eq!(found, framing, "{name} at {spacing}");
    }
    for spacing in [1.99, 12.01, 0.0, -3.0] {
        let refused = edge_framing(nail("8d common"), inches(2.0), inches(spacing)).unwrap_err().to_string();
        assert!(refused.contains("from 2 to 12 in") && refused.contains("engineer"), "{refused}");
    }
}

/// The least spacing is the closest of the half inches that the rule itself lets stand on the framing.
#[test]
fn least_spacing_is_the_other_side_of_the_rule() {
    use EdgeFraming::{ThreeByOrTwoStitched, TwoBy};
    for name in ["8d common", "10d common", "2-3/8 x .113", "3 x .131"] {
        for penetration in [1.25, 1.5, 1.75, 2.5].map(inches) {
            let framing =
                |halves: u32| edge_framing(nail(name), penetration, inches(f64::from(halves) / 2.0)).unwrap().value;
            let closest =
                (4..=24).find(|&halves| framing(halves) == TwoBy).map(|halves| inches(f64::from(halves) / 2.0));
            assert_eq!(Some(least_edge_spacing(nail(name), penetration, TwoBy).value), closest, "{name}");
            assert_eq!(least_edge_spacing(nail(name), penetration, ThreeByOrTwoStitched).value, inches(2.0));
        }
    }
}

/// Source: NDS 2018 Commentary Table C12.1.6.6 (from memory): 15 D.
#[test]
fn a_row_along_the_grain() {
    assert!((least_spacing_along_grain(nail("16d common")).value.inches() - 2.43).abs() < 1e-12);
}

/// Source: Technical Topic TT-012A as restated: no nails are added at 4 in and closer.
#[test]
fn nails_between_nails() {
    for (spacing, may) in [(6.0, true), (4.5, true), (4.0, false), (3.0, false)] {
        assert_eq!(nails_may_be_added(inches(spacing)).value, may, "{spacing}");
    }
}

#[test]
fn who_must_agree() {
    use NailedWork as W;
    let (found, required) = (nail("10d common"), nail("16d common"));
    let table = [
        (W::CodeFraming, Approval::CodeOfficial),
        (W::CodePanels, Approval::CodeOfficial),
        (W::EngineersDrawing, Approval::Engineer),
        (W::Truss, Approval::TrussDesigner),
        (W::MetalConnector, Approval::Maker),
        (W::NoLoad, Approval::Crew),
    ];
    assert_eq!(table.map(|(work, _)| work), W::ALL);
    for (work, who) in table {
        assert_eq!(approval(work, found, required), who);
        // A stronger nail needs the same yes.
        assert_eq!(approval(work, required, found), who);
        assert_eq!(approval(work, required, required), Approval::Crew);
    }
}

/// Source: IRC 2021 Table R602.3(1) item 13: 16d common at 16 in (looked up), 10d box and 3 x 0.131 at 12 in (from
/// memory).
#[test]
fn nails_of_the_schedule() {
    let spacings = |name: &str| -> BTreeSet<u32> {
        let rows = listed("top plate to top plate", nail(name));
        rows.map(|row| row.spacing.unwrap().inches() as u32).collect()
    };
    assert_eq!(spacings("16d common"), BTreeSet::from([12, 16]));
    assert_eq!(spacings("3 x 0.131"), BTreeSet::from([12]));
    assert_eq!(spacings("16d sinker"), BTreeSet::from([12]));
    assert_eq!(spacings("8d common"), BTreeSet::new());
    assert_eq!(listed("no such joint", nail("16d common")).count(), 0);
}
