//! Tables 4.2A to 4.2C row by row, against what they were made from and against each other.

use measure::{Area, Force, Length, LineLoad, Stress};
use standards::Status;
use standards::sdpws_2015::ApparentShearStiffness;
use standards::sdpws_2015::deflection::{PanelMake, apparent_stiffness, nail_slip, panel_rigidity};
use standards::sdpws_2015::diaphragm::{BendingDiaphragm, Splice, four_terms, ratio, three_terms};
use standards::sdpws_2015::table_4_2::{
    Cases, DIAPHRAGMS, DiaphragmPanel, DiaphragmRow, DiaphragmTable, LayoutCase, blocked, unblocked,
};
use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};
use standards::sdpws_2021;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn of(table: DiaphragmTable) -> impl Iterator<Item = &'static DiaphragmRow> {
    DIAPHRAGMS.iter().filter(move |row| row.table == table)
}

/// Source: IBC 2009 Table 2306.2.1(1) as a state adopted it, allowable pounds a foot for earthquakes, Structural I, blocked
/// at 6, 4, 2-1/2 and 2 in, then unblocked in case 1 and the others. The nominal value is twice that.
#[test]
fn panels_that_were_read_are_twice_the_building_code() {
    use ShearFastener::{Common8d, Common10d};
    let rows = [
        (12.0, Common8d, 2, [270.0, 360.0, 530.0, 600.0], [240.0, 180.0]),
        (12.0, Common8d, 3, [300.0, 400.0, 600.0, 675.0], [265.0, 200.0]),
        (15.0, Common10d, 2, [320.0, 425.0, 640.0, 730.0], [285.0, 215.0]),
        (15.0, Common10d, 3, [360.0, 480.0, 720.0, 820.0], [320.0, 240.0]),
    ];
    for (thickness, fastener, framing, spaced, plain) in rows {
        let panel =
            DiaphragmPanel { grade: Sheathing::StructuralI, thickness: inches(thickness / 32.0), fastener, framing };
        for ((boundary, edge), allowable) in [(6.0, 6.0), (4.0, 6.0), (2.5, 4.0), (2.0, 3.0)].into_iter().zip(spaced) {
            let row = blocked(&panel, inches(boundary), inches(edge)).expect("the table has it");
            assert_eq!(row.seismic.plf(), 2.0 * allowable, "{panel:?} at {boundary}");
            assert_eq!((row.framing, row.status), (framing, Status::PartlyLookedUp));
        }
        for (case, allowable) in [LayoutCase::One, LayoutCase::Four].into_iter().zip(plain) {
            let row = unblocked(&panel, case).expect("the table has it");
            assert_eq!(row.seismic.plf(), 2.0 * allowable, "{panel:?} unblocked {case:?}");
        }
    }
}

/// Source: a journal's article on the 2005 edition: the value for wind is 1.4 times that for earthquakes, printed to the
/// nearest 5 lb. The later edition prints that value alone.
#[test]
fn wind_is_two_fifths_more() {
    for row in DIAPHRAGMS {
        assert!((row.wind.plf() - 1.4 * row.seismic.plf()).abs() <= 2.5, "{row:?}");
        assert_eq!(sdpws_2021::nominal_of_diaphragm(row), row.wind);
        assert_eq!(row.wind.plf() % 5.0, 0.0, "{row:?}");
    }
}

/// Every apparent stiffness of blocked diaphragms, made anew from the panel's rigidity and its nails' slip at 1.4 times the
/// allowable unit shear, the load of a nail being that at the other panel edges, where nails are farthest apart: within 0.9
/// kips an inch or 6 per cent, since two figures are printed and shears to the nearest 5 or 10 plf.
#[test]
fn every_blocked_stiffness_is_made_anew() {
    let mut count = 0;
    for row in of(DiaphragmTable::A) {
        let structural = row.grade == Sheathing::StructuralI;
        let shear = LineLoad::from_plf(row.seismic.plf() / 2.0 * 1.4);
        let on_a_nail = Force::from_pounds(shear.plf() * row.edge.inches() / 12.0);
        let slip = nail_slip(row.fastener, on_a_nail, structural).expect("its nail slips");
        let grade = if structural { PanelMake::PlywoodStructuralI } else { PanelMake::Plywood };
        for (printed, make) in [(row.osb, PanelMake::StrandBoard), (row.plywood, grade)] {
            let Some(printed) = printed.map(ApparentShearStiffness::pounds_per_inch) else {
                panic!("a blocked diaphragm without a stiffness: {row:?}");
            };
            let panel = panel_rigidity(make, row.thickness).expect("the table has its thickness");
            let made = apparent_stiffness(shear, panel, slip).pounds_per_inch();
            assert!((made - printed).abs() <= 900.0_f64.max(0.06 * printed), "{row:?}: {made}");
            count += 1;
        }
    }
    assert_eq!(count, 160);
}

/// An unblocked diaphragm is about 0.6 (case 1) and 0.4 (others) as stiff as the same one blocked at 6 in; two figures are
/// printed, so of the softest a half of the last one is a tenth.
#[test]
fn unblocked_is_softer_by_its_share() {
    let mut pairs = 0;
    for row in of(DiaphragmTable::C) {
        let share = if row.cases == Cases::One { 0.6 } else { 0.4 };
        let same = of(DiaphragmTable::A)
            .find(|of| {
                (of.grade, of.fastener, of.thickness, of.framing)
                    == (row.grade, row.fastener, row.thickness, row.framing)
                    && of.boundary.inches() == 6.0
            })
            .expect("every unblocked panel is there blocked");
        for (one, other) in [(row.osb, same.osb), (row.plywood, same.plywood)] {
            let (Some(one), Some(other)) = (one, other) else { panic!("without a stiffness: {row:?}") };
            let (one, whole) = (one.pounds_per_inch(), other.pounds_per_inch());
            assert!((one - share * whole).abs() <= 500.0 + 0.03 * whole, "{row:?}: {one} of {whole}");
            pairs += 1;
        }
        assert!(row.seismic < same.seismic, "{row:?}");
    }
    assert_eq!(pairs, 80);
}

/// Nails closer together, thicker panels, wider framing, more lines and case 1 never carry less.
#[test]
fn closer_thicker_and_wider_are_never_weaker() {
    let mut pairs = 0;
    for a in DIAPHRAGMS {
        for b in DIAPHRAGMS.iter().filter(|b| (a.table, a.grade, a.fastener) == (b.table, b.grade, b.fastener)) {
            let no_worse = a.thickness >= b.thickness
                && a.framing >= b.framing
                && a.lines >= b.lines
                && a.cases <= b.cases
                && a.boundary <= b.boundary
                && a.edge <= b.edge;
            if no_worse && a != b {
                assert!(a.wind >= b.wind, "{a:?} beside {b:?}");
                pairs += 1;
            }
        }
    }
    assert!(pairs > 1000, "{pairs}");
}

/// What was read is not taken for what was remembered.
#[test]
fn what_was_read_is_said() {
    let partly = |table| of(table).filter(|row| row.status == Status::PartlyLookedUp).count();
    assert_eq!([DiaphragmTable::A, DiaphragmTable::B, DiaphragmTable::C].map(partly), [17, 0, 8]);
    assert_eq!([DiaphragmTable::A, DiaphragmTable::B, DiaphragmTable::C].map(|table| of(table).count()), [80, 72, 40]);
    assert!(DIAPHRAGMS.iter().all(|row| row.stiffness_status == Status::FromMemory));
    assert!(of(DiaphragmTable::B).all(|row| row.osb.is_none() && row.lines >= 2 && row.framing >= 3));
}

#[test]
fn a_row_that_is_not_there_is_refused_and_a_thicker_panel_has_the_thinner_row() {
    let panel = |thickness: f64, framing| DiaphragmPanel {
        grade: Sheathing::Sheathing,
        thickness: inches(thickness),
        fastener: ShearFastener::Common8d,
        framing,
    };
    assert!(blocked(&panel(5.0 / 16.0, 2), inches(6.0), inches(6.0)).is_err(), "8d in a panel of 5/16 in");
    assert!(blocked(&panel(7.0 / 16.0, 1), inches(6.0), inches(6.0)).is_err(), "framing 1 in nominal");
    assert!(unblocked(&panel(5.0 / 16.0, 2), LayoutCase::One).is_err());
    // The column of 4 in is not to be had with boundaries at 6 in (a trade association's answer on Table 4.2A).
    let says = blocked(&panel(7.0 / 16.0, 2), inches(6.0), inches(4.0)).expect_err("not printed").to_string();
    assert!(says.contains("Table 4.2A") && says.contains("6 and 4 in"), "{says}");
    let found = |thickness, framing| {
        let row = blocked(&panel(thickness, framing), inches(6.0), inches(6.0)).expect("the table has it");
        (row.thickness.inches() * 32.0, row.framing)
    };
    assert_eq!(found(0.75, 4), (15.0, 3));
    assert_eq!(found(0.45, 2), (14.0, 2));
}

/// Source: the standard's commentary as it is remembered: Structural I strand board of 5/16 in with 6d at 6 in, 370 plf for
/// earthquakes: 14,656 lb/in, printed 15.
#[test]
fn a_stiffness_of_the_commentary() {
    let slip = nail_slip(ShearFastener::Common6d, Force::from_pounds(129.5), true).expect("its nail slips");
    let panel = panel_rigidity(PanelMake::StrandBoard, inches(5.0 / 16.0)).expect("the table has it");
    let made = apparent_stiffness(LineLoad::from_plf(259.0), panel, slip).pounds_per_inch();
    assert!((made - 14_656.0).abs() < 5.0, "{made}");
}

/// *Own*: three terms and four agree where the stiffness was made, at 1.4 times the allowable unit shear, but for 0.188
/// against a quarter of 0.75; a splice of 1/16 in 10 ft from a line gives 10 × 0.0625 / (2 × 28) in.
#[test]
fn three_terms_and_four_are_near() {
    let floor = BendingDiaphragm {
        length: Length::from_feet(40.0),
        width: Length::from_feet(28.0),
        chord: Area::from_square_inches(10.5),
        modulus: Stress::from_psi(1.4e6),
    };
    let shear = LineLoad::from_plf(357.0);
    let slip = nail_slip(ShearFastener::Common8d, Force::from_pounds(178.5), false).expect("its nail slips");
    let panel = panel_rigidity(PanelMake::StrandBoard, inches(7.0 / 16.0)).expect("the table has it");
    let three = three_terms(&floor, shear, apparent_stiffness(shear, panel, slip), &[]).total();
    let four = four_terms(&floor, shear, panel, slip, &[]).total();
    assert!((three / four - 1.0).abs() < 0.003, "{three:?} {four:?}");
    let splice = Splice { from_support: Length::from_feet(10.0), slip: inches(0.0625) };
    let spliced = four_terms(&floor, shear, panel, slip, &[splice]).splices;
    assert!((spliced.inches() - 10.0 * 0.0625 / 56.0).abs() < 1e-12);
}

/// Source: one house's calculation cites 4:1 blocked and 3:1 unblocked; nothing is rounded before the limit.
#[test]
fn slender_diaphragms_are_refused() {
    let of = |length, blocked| ratio(Length::from_feet(length), Length::from_feet(10.0), blocked);
    assert!(of(40.0, true).is_ok() && of(40.01, true).is_err());
    assert!(of(30.0, false).is_ok() && of(30.01, false).is_err());
    assert!(of(0.0, true).is_err());
}
