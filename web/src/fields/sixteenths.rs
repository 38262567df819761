//! The tape's own arithmetic: whole sixteenths of an inch, as they are marked on it.

use measure::{Denominator, Length};

/// Sixteenths in an inch.
pub const PER_INCH: i32 = 16;

/// The nearest mark. Tapes are shorter than the whole numbers that this can hold.
pub fn nearest(inches: f64) -> i32 {
    (inches * f64::from(PER_INCH)).round() as i32
}

/// A mark in inches.
pub fn inches(marks: i32) -> f64 {
    f64::from(marks) / f64::from(PER_INCH)
}

/// A mark that stays on the tape.
pub fn within(marks: i32, (least, most): (f64, f64)) -> i32 {
    marks.clamp((least * f64::from(PER_INCH)).ceil() as i32, (most * f64::from(PER_INCH)).floor() as i32)
}

/// A mark as it is typed: `6' 2-3/8"`.
pub fn written(marks: i32, ends: (f64, f64)) -> String {
    Length::from_inches(inches(within(marks, ends))).to_feet_inches(Denominator::Sixteenth)
}

/// A mark said aloud.
pub fn spoken(marks: i32) -> String {
    Length::from_inches(inches(marks)).spoken(Denominator::Sixteenth)
}

#[cfg(test)]
mod tests {
    use super::{inches, nearest, within};
    use wasm_bindgen_test::wasm_bindgen_test;

    #[wasm_bindgen_test]
    fn every_mark_is_its_own_nearest() {
        for marks in -32..8000 {
            assert_eq!(nearest(inches(marks)), marks);
        }
    }

    #[wasm_bindgen_test]
    fn a_mark_stays_on_the_tape() {
        assert_eq!(within(5, (12.0, 288.0)), 192);
        assert_eq!(within(9999, (12.0, 288.0)), 4608);
        assert_eq!(within(200, (12.03, 288.0)), 200);
        assert_eq!(within(0, (12.03, 288.0)), 193);
    }
}
