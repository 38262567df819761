//! Layers of a wall: what braces, and what reaches.

use bracing::{Braces, Layer, LayerKind, MakeUp, Misplaced, ShearFastener, check_make_up};
use measure::{AreaLoad, Length};
use standards::irc_2021::r703_15::FurringFastener;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn wall(layers: &[(LayerKind, f64)]) -> MakeUp {
    MakeUp {
        layers: layers.iter().map(|(kind, thick)| Layer { kind: *kind, thickness: inches(*thick) }).collect(),
        panel_nail: ShearFastener::Common8d,
        panel_nail_length: inches(2.5),
        outer_fastener: None,
        furring_fastener: (FurringFastener::Nail131, inches(12.0)),
        furring_spacing: inches(16.0),
        cladding: AreaLoad::from_psf(3.0),
    }
}

use LayerKind::{Barrier, Cladding, Foam, Furring, Gap, Gypsum, InsulatedPanel, InsulatingBoard, Panel};

/// Field case FC-67: an inch of foam between stud and panel: none, by an engineer or a listing only. In front of the panel the
/// panel counts, and the fastener goes through foam, furring and panel 1-1/4 in into the stud. (The case counts 1-1/4 in
/// into any wood, which the panel is too; here it is into the framing, the longer.)
#[test]
fn foam_behind_the_panel_braces_nothing_and_before_it_asks_for_length() {
    let behind = check_make_up(&wall(&[(Foam, 1.0), (Panel, 0.4375), (Barrier, 0.0), (Cladding, 0.5)]));
    assert_eq!((behind.braces, behind.panel_nails), (Braces::Kept(Foam), None));
    let before =
        check_make_up(&wall(&[(Panel, 0.4375), (Barrier, 0.0), (Foam, 1.0), (Furring, 0.75), (Cladding, 0.5)]));
    assert_eq!(before.braces, Braces::Yes);
    let outer = before.outer.unwrap();
    assert!((outer.least.inches() - (0.4375 + 1.0 + 0.75 + 1.25)).abs() < 1e-12 && outer.reaches().is_none());
    assert_eq!(before.foam, Some(Ok(inches(4.0))));
    assert!(before.misplaced.is_empty());
}

/// What is between decides: a barrier is no gap, anything that holds the nail off the stud is.
#[test]
fn only_a_barrier_or_gypsum_board_may_lie_between() {
    let braces = |between: &[(LayerKind, f64)]| {
        let mut layers = between.to_vec();
        layers.push((Panel, 0.4375));
        check_make_up(&wall(&layers)).braces
    };
    assert_eq!(braces(&[]), Braces::Yes);
    assert_eq!(braces(&[(Barrier, 0.0)]), Braces::Yes);
    assert_eq!(braces(&[(Gypsum, 0.5)]), Braces::OverGypsum);
    for (kind, thick) in [
        (Gypsum, 0.25),
        (Gypsum, 1.0),
        (Foam, 0.5),
        (InsulatedPanel, 1.0),
        (InsulatingBoard, 0.5),
        (Gap, 0.25),
        (Furring, 0.75),
    ] {
        assert_eq!(braces(&[(kind, thick)]), Braces::Kept(kind));
    }
    assert_eq!(braces(&[(Gypsum, 0.5), (Gypsum, 0.5)]), Braces::Kept(Gypsum));
    assert_eq!(check_make_up(&wall(&[(InsulatedPanel, 1.0), (Barrier, 0.0), (Cladding, 0.5)])).braces, Braces::NoPanel);
}

/// SDPWS 2015 Table 4.3A: 8d goes 1-3/8 in into the framing; so a 2-1/2 in nail is long enough for panels to 1-1/8 in.
#[test]
fn panel_nails_reach_the_framing() {
    let mut thin = wall(&[(Panel, 0.4375), (Barrier, 0.0), (Cladding, 0.5)]);
    let reach = check_make_up(&thin).panel_nails.unwrap();
    assert!((reach.least.inches() - 1.8125).abs() < 1e-12 && reach.reaches() == Some(true));
    thin.panel_nail_length = inches(1.75);
    assert_eq!(check_make_up(&thin).panel_nails.unwrap().reaches(), Some(false));
}

#[test]
fn order_of_the_layers() {
    let faults = |layers: &[(LayerKind, f64)]| check_make_up(&wall(layers)).misplaced;
    assert_eq!(faults(&[(Panel, 0.5), (Cladding, 0.5)]), [Misplaced::NoBarrier]);
    assert_eq!(faults(&[(Barrier, 0.0), (Panel, 0.5), (Cladding, 0.5)]), [Misplaced::BarrierInside]);
    assert_eq!(faults(&[(Panel, 0.5), (Furring, 0.75), (Barrier, 0.0), (Cladding, 0.5)]), [Misplaced::BarrierOutside]);
    assert_eq!(faults(&[(Panel, 0.5), (Barrier, 0.0), (Furring, 0.75), (Foam, 1.0)]), [Misplaced::FurringInside]);
}
