//! Table R301.6: roof live load by pitch and by the area that a member carries.

use measure::{Area, AreaLoad, Slope};

use super::DOCUMENT;
use crate::{Source, Status};

/// Table R301.6. The first column, 14 and the last cell were read; the others are from memory.
pub const ROOF_LIVE: Source = Source::new(DOCUMENT, "Table R301.6", Status::PartlyLookedUp);

/// Least roof live load, on the level: by pitch, and for 0 to 200, to 600 and over 600 sq ft.
#[must_use]
pub fn roof_live_load(slope: Slope, area: Area) -> AreaLoad {
    let row = match slope.rise_in_twelve() {
        ..4.0 => [20.0, 16.0, 12.0],
        4.0..12.0 => [16.0, 14.0, 12.0],
        _ => [12.0, 12.0, 12.0],
    };
    let column = match area.square_feet() {
        ..=200.0 => 0,
        ..=600.0 => 1,
        _ => 2,
    };
    AreaLoad::from_psf(row[column])
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: an annotated 2018 IRC R301.6 page: a ridge beam of 8 in 12 with 400 sq ft: 14 psf; a rafter under 4 in 12:
    /// 20 psf.
    #[test]
    fn published_rows() {
        let of = |rise, area| roof_live_load(Slope::from_rise_in_twelve(rise), Area::from_square_feet(area)).psf();
        for (rise, area, printed) in [(8.0, 400.0, 14.0), (3.0, 50.0, 20.0), (6.0, 50.0, 16.0), (12.0, 900.0, 12.0)] {
            assert!((of(rise, area) - printed).abs() < 1e-9);
        }
    }
}
