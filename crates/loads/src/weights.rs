//! What a roof, a ceiling, a floor or a wall weighs, layer by layer, along its own surface.

use measure::{Angle, AreaLoad};
use standards::{Source, Status};

/// One layer that is sold or framed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// Its name.
    pub name: &'static str,
    /// Its weight on its own surface.
    pub weight: AreaLoad,
    /// How the weight came here.
    pub status: Status,
}

const GUIDE: &str = "Residential Structural Design Guide";

impl Layer {
    /// The source of its weight.
    #[must_use]
    pub const fn source(&self) -> Source {
        match self.status {
            Status::LookedUp => Source::new(GUIDE, "dead load tables, and a lecture note's", self.status),
            status => Source::new("ASCE 7-16", "Table C3.1-1", status),
        }
    }
}

const fn looked_up(name: &'static str, psf: f64) -> Layer {
    Layer { name, weight: AreaLoad::from_psf(psf), status: Status::LookedUp }
}

const fn remembered(name: &'static str, psf: f64) -> Layer {
    Layer { name, weight: AreaLoad::from_psf(psf), status: Status::FromMemory }
}

/// The layers, roof first. Where a source gives a range, the heavier end; metal roofing and ceramic tile are differences of
/// the guide's assemblies.
pub const LAYERS: &[Layer] = &[
    looked_up("asphalt shingles", 3.0),
    looked_up("wood shingles", 3.0),
    looked_up("metal roofing", 2.0),
    looked_up("slate", 10.0),
    looked_up("clay tile", 15.0),
    looked_up("built-up roof", 7.0),
    remembered("7/16 panel", 1.5),
    looked_up("1/2 panel", 2.0),
    remembered("3/4 panel", 2.5),
    remembered("2x4 at 16", 1.1),
    remembered("2x6 at 16", 1.7),
    looked_up("2x8 at 16", 2.0),
    remembered("2x10 at 16", 2.6),
    looked_up("2x12 at 16", 3.0),
    looked_up("1/2 gypsum board", 2.0),
    remembered("5/8 gypsum board", 2.75),
    remembered("1x3 strapping", 0.2),
    remembered("batts", 1.0),
    looked_up("hardwood floor", 4.0),
    remembered("carpet or vinyl", 1.0),
    looked_up("ceramic tile", 6.0),
    looked_up("vinyl siding", 1.0),
    looked_up("lap siding", 2.0),
    looked_up("7/8 stucco", 9.0),
    looked_up("3-1/2 brick", 39.0),
];

/// A layer as it was written, with its weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    /// What was written.
    pub name: String,
    /// Its weight on its own surface.
    pub weight: AreaLoad,
    /// Where the weight comes from; none where it was typed.
    pub source: Option<Source>,
}

/// Why layers could not be weighed; `Display` is a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnknownLayer(String);

impl core::fmt::Display for UnknownLayer {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(
            f,
            "{} is not a layer that is known here. Choose one of the list, or write its weight behind it: slate 10 psf.",
            self.0
        )
    }
}

/// Weighs layers written one after the other with a plus between them: `asphalt shingles + 1/2 panel + ballast 6 psf`.
///
/// # Errors
/// The first layer that is neither known nor written with its weight.
pub fn weigh(text: &str) -> Result<Vec<Weighed>, UnknownLayer> {
    text.split('+').map(str::trim).filter(|layer| !layer.is_empty()).map(weigh_one).collect()
}

fn weigh_one(text: &str) -> Result<Weighed, UnknownLayer> {
    if let Some(layer) = LAYERS.iter().find(|layer| layer.name.eq_ignore_ascii_case(text)) {
        return Ok(Weighed { name: layer.name.to_owned(), weight: layer.weight, source: Some(layer.source()) });
    }
    let unknown = || UnknownLayer(text.to_owned());
    let (name, psf) = text.strip_suffix("psf").and_then(|rest| rest.trim_end().rsplit_once(' ')).ok_or_else(unknown)?;
    let weight = measure::read_number(psf, &[]).ok().filter(|psf| (0.0..=200.0).contains(psf)).ok_or_else(unknown)?;
    Ok(Weighed { name: name.trim().to_owned(), weight: AreaLoad::from_psf(weight), source: None })
}

/// All layers together, on their own surface.
#[must_use]
pub fn sum(layers: &[Weighed]) -> AreaLoad {
    layers.iter().map(|layer| layer.weight).sum()
}

/// A weight on a slope as it loads the level below it.
#[must_use]
pub fn on_the_level(weight: AreaLoad, angle: Angle) -> AreaLoad {
    weight / angle.cos()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn psf(text: &str) -> f64 {
        sum(&weigh(text).unwrap()).psf()
    }

    /// Source: Residential Structural Design Guide: a 2x12 floor with a 3/4 panel, 1/2 gypsum board below and carpet
    /// weighs 10 psf, without the ceiling 2 psf less; a 2x4 outer wall with 1/2 panel and 1/2 gypsum 6 psf, 2x6 one
    /// more, with vinyl 7 and lap siding 8. Layers are rounded up, so their sums lie within 1.5 psf.
    #[test]
    fn assembled_totals_of_the_guide() {
        for (layers, printed) in [
            ("2x12 at 16 + 3/4 panel + 1/2 gypsum board + carpet or vinyl", 10.0),
            ("2x12 at 16 + 3/4 panel + carpet or vinyl", 8.0),
            ("2x12 at 16 + 3/4 panel + 1/2 gypsum board + ceramic tile", 15.0),
            ("2x4 at 16 + 1/2 panel + 1/2 gypsum board + batts", 6.0),
            ("2x4 at 16 + 1/2 panel + 1/2 gypsum board + batts + vinyl siding", 7.0),
            ("2x4 at 16 + 1/2 panel + 1/2 gypsum board + batts + lap siding", 8.0),
            ("2x4 at 16 + 1/2 panel + 1/2 gypsum board + batts + 3-1/2 brick", 45.0),
        ] {
            assert!((psf(layers) - printed).abs() <= 1.5, "{layers}: {}", psf(layers));
        }
    }

    #[test]
    fn a_layer_may_bring_its_own_weight() {
        assert!((psf("Slate + roof garden 35 psf") - 45.0).abs() < 1e-9);
        for wrong in ["moss", "moss psf", "moss 900 psf", "slate + moss"] {
            assert!(weigh(wrong).unwrap_err().to_string().contains("moss"), "{wrong}");
        }
        assert!(weigh("").unwrap().is_empty());
    }

    /// Source: common practice: 10 psf along a roof of 12 in 12 is 14.1 on the level.
    #[test]
    fn a_slope_weighs_more_on_the_level() {
        let level = on_the_level(AreaLoad::from_psf(10.0), Angle::from_degrees(45.0)).psf();
        assert!((level - 14.142).abs() < 1e-3);
    }
}
