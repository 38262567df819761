//! What holds for every stair.

use layout::stair::{
    Edition, Finish, Flight, Floors, Run, Stringer, Top, Well, Winders, choices, headroom, judge, marks, mend,
    risers_of, stringer, temporary, well, winders, with_risers,
};
use measure::{Angle, Length};
use proptest::prelude::*;

/// Arithmetic alone.
const BITS: f64 = 1e-9;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn sixteenths(range: core::ops::Range<u32>) -> impl Strategy<Value = Length> {
    range.prop_map(|marks| inches(f64::from(marks) / 16.0))
}

prop_compose! {
    fn any_stringer()(
        measured in sixteenths(800..2400),
        bottom in sixteenths(0..24),
        top in sixteenths(0..24),
        tread in sixteenths(144..200),
        tread_thickness in sixteenths(8..28),
        more in 0_u16..3,
    ) -> Stringer {
        let floors = Floors { measured, bottom: Finish::ToCome(bottom), top: Finish::ToCome(top) };
        let rise = floors.measured + top - bottom;
        Stringer {
            floors,
            risers: (rise / inches(7.75)).ceil() as u16 + more,
            tread,
            tread_thickness,
            nosing: inches(1.0),
            riser_board: inches(0.75),
            board: inches(11.25),
            top: Top::RiserBelowFloor,
        }
    }
}

proptest! {
    /// Marks end at the rise; each is within 1/32; risers differ by 1/16 at most where the rise is whole sixteenths.
    #[test]
    fn marks_never_drift(rise in sixteenths(64..2416), risers in 1_u16..30) {
        let marks = marks(rise, risers).unwrap();
        for mark in &marks {
            prop_assert!((mark.at - mark.exact).abs().inches() <= 1.0 / 32.0 + BITS);
        }
        let risers = risers_of(&marks);
        prop_assert_eq!(risers.iter().copied().sum::<Length>(), rise);
        let (most, least) = (risers.iter().copied().reduce(Length::max), risers.iter().copied().reduce(Length::min));
        prop_assert!(most.unwrap() - least.unwrap() <= inches(1.0 / 16.0));
    }

    /// More risers are never higher; the fewest is the first that the limit takes, and every one listed holds.
    #[test]
    fn more_risers_are_lower(rise in 10.0..200.0_f64, tread in 10.0..14.0_f64) {
        let floors = Floors { measured: inches(rise), bottom: Finish::Laid, top: Finish::Laid };
        let flight = Flight { floors, run: Run::OfTread(inches(tread)), edition: Edition::Of2021 };
        let found = choices(&flight).unwrap();
        prop_assert!(found.within.windows(2).all(|pair| pair[0].riser > pair[1].riser && pair[0].angle > pair[1].angle));
        prop_assert!(found.within.iter().all(|choice| choice.holds() && choice.riser >= inches(4.0 - BITS)));
        prop_assert_eq!(found.within.first().map(|choice| choice.risers), Some(found.fewest));
        if found.fewest > 2 {
            prop_assert!(!with_risers(&flight, found.fewest - 1).unwrap().holds());
        }
    }

    /// First cut, middle risers and last cut make the height between the floors as they are; every finished riser is alike once
    /// treads and finishes are on.
    #[test]
    fn cuts_close(given in any_stringer()) {
        let found = stringer(&given).unwrap();
        let middle = found.riser * f64::from(given.risers - 2);
        let sum = found.first_cut + middle + found.last_below_floor;
        prop_assert!((sum - given.floors.measured).abs().inches() <= BITS);
        let (Finish::ToCome(bottom), Finish::ToCome(top)) = (given.floors.bottom, given.floors.top) else { unreachable!() };
        let first = found.first_cut + given.tread_thickness - bottom;
        let last = found.last_below_floor + top - given.tread_thickness;
        prop_assert!((first - found.riser).abs().inches() <= BITS);
        prop_assert!((last - found.riser).abs().inches() <= BITS);
        for step in &found.steps {
            prop_assert!((step.at - step.exact).abs().inches() <= 1.0 / 32.0 + BITS);
        }
    }

    /// Outer corners lie on the upper edge; inner ones a throat from the lower: the area inside the outline is that of its parts.
    #[test]
    fn a_stringer_lies_in_its_board(given in any_stringer()) {
        let found = stringer(&given).unwrap();
        let (cos, sin) = (found.angle.cos(), found.angle.sin());
        let first = found.steps[0].corner;
        for step in &found.steps {
            let (run, height) = (step.corner.run - first.run, step.corner.height - first.height);
            prop_assert!((run * cos + height * sin - step.along).abs().inches() <= BITS);
            prop_assert!((height * cos - run * sin).abs().inches() <= BITS);
            let (run, height) = (step.inside.run - first.run, step.inside.height - first.height);
            let below_edge = run * sin - height * cos;
            prop_assert!((given.board - below_edge - found.throat.left).abs().inches() <= BITS);
        }
        prop_assert!(found.outline.iter().all(|point| point.height >= Length::ZERO && point.run >= Length::ZERO));
        prop_assert!(found.stock >= found.to_order && found.to_order > found.line);
    }

    /// Temporary risers make the height between the floors as they are, and the evenest treads are never worse by more than the
    /// rounding of two marks.
    #[test]
    fn temporary_risers_close(given in any_stringer(), thickness in sixteenths(8..28)) {
        let found = temporary(&given, thickness, Edition::Of2018).unwrap();
        prop_assert!((found.risers.iter().copied().sum::<Length>() - given.floors.measured).abs().inches() <= BITS);
        if let Some(evenest) = found.evenest {
            let even = temporary(&given, evenest, Edition::Of2018).unwrap();
            prop_assert!(even.code.spread <= found.code.spread + inches(1.0 / 8.0 + BITS));
        }
    }

    /// A well as long as is needed has its headroom, and one an inch shorter has not.
    #[test]
    fn a_well_just_does(riser in 6.0..7.75_f64, tread in 10.0..12.0_f64, risers in 12_u16..20, thick in 6.0..16.0_f64) {
        let given = Well {
            riser: inches(riser),
            tread: inches(tread),
            risers,
            floor_thickness: inches(thick),
            header_finish: inches(0.5),
            top_finish: inches(1.0),
            edition: Edition::Of2018,
        };
        let Some(length) = well(&given).unwrap().length else { return Ok(()) };
        let flight = inches(tread) * f64::from(risers - 1);
        // At the end of the flight one stands on the floor only past it.
        let past = if length >= flight { length + inches(0.001) } else { length };
        prop_assert!(headroom(&given, past).unwrap().check.holds());
        let short = headroom(&given, length - inches(1.0)).unwrap();
        prop_assert!(!short.check.holds());
        prop_assert!((short.longer_by.unwrap() - inches(1.0)).abs().inches() <= BITS);
    }

    /// The least radius works, and a tenth less does not.
    #[test]
    fn the_least_radius_just_does(count in 2_u8..8, width in 30.0..60.0_f64) {
        let turn = Angle::from_degrees(90.0);
        let at = |radius: Length| winders(&Winders {
            winders: count, turn, narrow_radius: radius, width: inches(width), edition: Edition::Of2018,
        }).unwrap();
        let least = at(inches(1.0)).least_radius;
        prop_assert!(at(least).holds());
        prop_assert!(!at(least - inches(0.1)).holds());
    }

    /// Mended risers meet their aim, keep the rise, and take no wood away.
    #[test]
    fn mends_hold(risers in prop::collection::vec(sixteenths(80..124), 2..16), serves in any::<bool>()) {
        let before = judge(&risers, Edition::Of2018).unwrap();
        for found in mend(&risers, serves, Edition::Of2018).unwrap() {
            prop_assert!(found.after.holds());
            prop_assert!((found.after.total - before.total).abs().inches() <= BITS);
            prop_assert!(!found.pads.is_empty());
            prop_assert!(found.pads.iter().all(|pad| pad.thickness > Length::ZERO && pad.tread < risers.len()));
        }
    }

    /// No fewer pads do: every set of fewer treads, with pads of any sixteenth, fails. Tried in full on short flights.
    #[test]
    fn no_fewer_pads_do(risers in prop::collection::vec(sixteenths(112..122), 3..=4)) {
        let found = mend(&risers, false, Edition::Of2018).unwrap();
        let Some(code) = found.first().filter(|mend| mend.aim == layout::stair::Aim::Code) else { return Ok(()) };
        prop_assert!(!fewer_do(&risers, code.pads.len()));
    }
}

/// Whether pads of 0 to 1 in on fewer treads bring the risers within the code.
fn fewer_do(risers: &[Length], than: usize) -> bool {
    let treads = risers.len() - 1;
    let sizes = 17_usize;
    (0..sizes.pow(treads as u32)).any(|mut code| {
        let pads: Vec<f64> = (0..treads)
            .map(|_| {
                let pad = code % sizes;
                code /= sizes;
                pad as f64 / 16.0
            })
            .collect();
        if pads.iter().filter(|pad| **pad > 0.0).count() >= than {
            return false;
        }
        let mut padded = risers.to_vec();
        for (tread, pad) in pads.iter().enumerate() {
            padded[tread] += inches(*pad);
            padded[tread + 1] = padded[tread + 1] - inches(*pad);
        }
        padded.iter().all(|riser| *riser > Length::ZERO)
            && judge(&padded, Edition::Of2018).is_ok_and(|judged| judged.holds())
    })
}
