//! How the blade follows the thumb: fast when it is fast, down to sixteenths when it slows.

use view::tape::PIXELS_PER_INCH;

/// Thumb speeds, pixels a millisecond, and how far the blade goes for each pixel of the thumb.
const GEARS: [(f64, f64); 4] = [(0.06, 0.25), (0.35, 1.0), (0.9, 2.5), (2.0, 8.0)];

/// The blade's travel for a pixel of thumb at that speed.
pub fn gear(speed: f64) -> f64 {
    let mut before = (0.0, GEARS[0].1);
    for (at, ratio) in GEARS {
        if speed < at {
            return before.1 + (ratio - before.1) * (speed - before.0) / (at - before.0);
        }
        before = (at, ratio);
    }
    before.1
}

/// A thumb on the blade.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drag {
    /// What is under the hairline, inches.
    pub inches: f64,
    x: f64,
    time: f64,
    /// Smoothed over the last few events, so that one late event does not change the gear.
    speed: f64,
}

impl Drag {
    /// The thumb comes down.
    pub const fn begin(inches: f64, x: f64, time: f64) -> Self {
        Self { inches, x, time, speed: 0.0 }
    }

    /// The thumb moves: right brings lower figures under the hairline.
    pub fn moved(self, x: f64, time: f64, (least, most): (f64, f64)) -> Self {
        let (way, span) = (self.x - x, (time - self.time).max(1.0));
        let speed = self.speed * 0.6 + way.abs() / span * 0.4;
        let inches = self.inches + way * gear(speed) / PIXELS_PER_INCH;
        Self { inches: inches.clamp(least, most), x, time, speed }
    }
}

#[cfg(test)]
mod tests {
    use super::{Drag, gear};
    use wasm_bindgen_test::wasm_bindgen_test;

    #[wasm_bindgen_test]
    fn the_gear_never_falls_as_the_thumb_gets_faster() {
        let mut before = 0.0;
        for step in 0..400 {
            let now = gear(f64::from(step) / 100.0);
            assert!(now >= before, "at step {step}: {now} after {before}");
            before = now;
        }
    }

    #[wasm_bindgen_test]
    fn a_slow_thumb_moves_less_than_a_mark_for_each_pixel() {
        let drag = Drag::begin(72.0, 100.0, 0.0).moved(99.0, 50.0, (12.0, 288.0));
        assert!(drag.inches > 72.0 && drag.inches < 72.0 + 1.0 / 16.0);
    }

    #[wasm_bindgen_test]
    fn a_flick_crosses_feet_and_stops_at_the_end_of_the_tape() {
        let mut drag = Drag::begin(72.0, 300.0, 0.0);
        for step in 1..=10 {
            drag = drag.moved(300.0 - 30.0 * f64::from(step), 15.0 * f64::from(step), (12.0, 100.0));
        }
        assert!(drag.inches > 90.0 && drag.inches <= 100.0);
    }
}
