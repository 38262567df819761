//! Which factors adjust which value of which product: NDS 2018 Tables 4.3.1, 5.3.1 and 8.3.1.

use measure::{Length, Stress};
use standards::nds_2018::{
    Cited,
    chapter_2::{TemperatureFactors, temperature_factors},
    chapter_4::{self, IncisingFactors, SizeFactorGrade, SizeFactors, TimberGrade, WetServiceFactors, WideFaceFactors},
    chapter_5::{self, GlulamWood},
    chapter_8,
    supplement::GlulamLayup,
};

use crate::{
    Adjusted, AdjustedSet, AdjustedStresses, AdjustedValue, Conditions, Glulam, Grade, LoadDuration, LumberError,
    Product, ReferenceValues, Sawn, ServiceMoisture, Species, SustainedTemperature, adjusted::Chain,
    reference::takes_no_3_values,
};

/// Reference values of a member and every factor but load duration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DesignBasis {
    reference: ReferenceValues,
    wet: Option<Cited<WetServiceFactors>>,
    temperature: Option<Cited<TemperatureFactors>>,
    size: Option<Cited<SizeFactors>>,
    size_weak: Option<Cited<f64>>,
    flat_use: Option<Cited<f64>>,
    wide_face: Option<Cited<WideFaceFactors>>,
    incising: Option<Cited<IncisingFactors>>,
    repetitive: Option<Cited<f64>>,
    /// Only a volume factor over 1: it is multiplied with `C_L`.
    volume: Option<Cited<f64>>,
}

impl DesignBasis {
    pub(crate) fn of(product: &Product, conditions: &Conditions) -> Result<Self, LumberError> {
        let bare = Self::bare(ReferenceValues::of(product)?, conditions);
        match product {
            Product::Sawn(sawn) if sawn.size.is_timber() => Ok(bare.timber(*sawn, conditions)),
            Product::Sawn(sawn) => bare.dimension(*sawn, conditions),
            Product::Glulam(glulam) => bare.glulam(*glulam, conditions),
            Product::Lvl(lvl) => bare.composite("Generic LVL", lvl.depth_exponent(), lvl.depth(), conditions),
            Product::Labelled(label) => {
                bare.composite("A piece typed in from its label", label.depth_exponent, label.depth(), conditions)
            }
        }
    }

    fn bare(reference: ReferenceValues, conditions: &Conditions) -> Self {
        let hot = conditions.temperature != SustainedTemperature::UpTo100F;
        Self {
            reference,
            wet: None,
            temperature: hot.then(|| temperature_factors(conditions.temperature, conditions.service)),
            size: None,
            size_weak: None,
            flat_use: None,
            wide_face: None,
            incising: None,
            repetitive: None,
            volume: None,
        }
    }

    fn dimension(self, sawn: Sawn, conditions: &Conditions) -> Result<Self, LumberError> {
        let (thickness, width) = (sawn.size.nominal_thickness(), sawn.size.nominal_width());
        let size = if sawn.species == Species::SouthernPine {
            chapter_4::southern_pine_size_factors(thickness, width)
        } else {
            chapter_4::size_factors(size_factor_grade(sawn), thickness, width)?
        };
        let fc = self.reference.fc.unwrap_or(Stress::ZERO);
        let wet =
            |size: SizeFactors| chapter_4::dimension_wet_service_factors(self.reference.fb * size.fb, fc * size.fc);
        Ok(Self {
            wet: is_wet(conditions).then(|| wet(size.value)),
            size: Some(size),
            size_weak: Some(size.map(|size| size.fb)),
            flat_use: Some(chapter_4::flat_use_factor(thickness, width)?),
            incising: conditions.incised.then(chapter_4::incising_factors),
            repetitive: conditions.repetitive.then(chapter_4::repetitive_member_factor),
            ..self
        })
    }

    /// Incising factors are printed for dimension lumber; a slit timber takes them too, the safe side.
    fn timber(self, sawn: Sawn, conditions: &Conditions) -> Self {
        let by_depth = |fb| SizeFactors { fb, ft: 1.0, fc: 1.0 };
        let southern = sawn.species == Species::SouthernPine;
        let grade = match sawn.grade {
            Grade::SelectStructural | Grade::DenseSelectStructural => TimberGrade::SelectStructural,
            Grade::No1 | Grade::No1Dense => TimberGrade::No1,
            _ => TimberGrade::No2,
        };
        let stringer = sawn.size.is_beam_or_stringer();
        Self {
            wet: is_wet(conditions).then(|| chapter_4::timber_wet_service_factors(southern)),
            size: Some(chapter_4::timber_size_factor(sawn.size.depth()).map(by_depth)),
            wide_face: stringer.then(|| chapter_4::wide_face_factors(grade)),
            incising: conditions.incised.then(chapter_4::incising_factors),
            ..self
        }
    }

    fn glulam(self, glulam: Glulam, conditions: &Conditions) -> Result<Self, LumberError> {
        if conditions.incised {
            return Err(LumberError::NotIncised { product: "Glulam" });
        }
        Ok(Self {
            wet: is_wet(conditions).then(chapter_5::wet_service_factors),
            flat_use: Some(chapter_5::flat_use_factor(glulam.breadth())),
            ..self
        })
    }

    fn composite(
        self,
        product: &'static str,
        exponent: f64,
        depth: Length,
        conditions: &Conditions,
    ) -> Result<Self, LumberError> {
        if is_wet(conditions) {
            return Err(LumberError::DryServiceOnly { product });
        }
        if conditions.incised {
            return Err(LumberError::NotIncised { product });
        }
        let volume = chapter_8::depth_factor(exponent, depth)?;
        Ok(Self {
            repetitive: conditions.repetitive.then(chapter_8::repetitive_member_factor),
            volume: (volume.value > 1.0).then_some(volume),
            ..self
        })
    }

    /// Design values with every factor and source.
    #[must_use]
    pub fn adjusted(&self, duration: LoadDuration) -> Adjusted {
        self.set::<AdjustedValue>(duration)
    }

    /// Design values as numbers alone.
    #[must_use]
    pub fn stresses(&self, duration: LoadDuration) -> AdjustedStresses {
        self.set::<Stress>(duration)
    }

    /// Of those numbers the two that loads square to the strong axis ask for again with each duration: `F_b*` and `F_v'`.
    #[must_use]
    pub fn bending_and_shear(&self, duration: LoadDuration) -> (Stress, Stress) {
        let (reference, timed) = (&self.reference, duration.factor());
        (self.bending(reference.fb, timed), self.shear(reference.fv, timed))
    }

    fn set<V: Chain>(&self, duration: LoadDuration) -> AdjustedSet<V> {
        let reference = &self.reference;
        let timed = duration.factor();
        let edge = |symbol, value| V::start(symbol, value, reference.source);
        let flat = |symbol, value| V::start(symbol, value, reference.weak_source);
        AdjustedSet {
            fb_star: self.bending(edge("F_b*", reference.fb), timed),
            fb_weak: reference.fb_weak.map(|value| self.flat_bending(flat("F_b2'", value), timed)),
            ft: reference.ft.map(|value| self.tension(edge("F_t'", value), timed)),
            fv: self.shear(edge("F_v'", reference.fv), timed),
            fv_weak: reference.fv_weak.map(|value| self.shear(flat("F_v2'", value), timed)),
            fc_star: reference.fc.map(|value| self.compression(edge("F_c*", value), timed)),
            fc_perp: self.crushing(edge("F_c⊥'", reference.fc_perp)),
            e: self.stiffness(edge("E'", reference.e)),
            e_min: self.stiffness(edge("E_min'", reference.e_min)),
            e_weak: self.flat_stiffness(flat("E_y'", reference.e_weak)),
            e_min_weak: self.flat_stiffness(flat("E_y,min'", reference.e_min_weak)),
        }
    }

    fn bending<V: Chain>(&self, value: V, timed: Cited<f64>) -> V {
        let value = self.wet(value.times("C_D", DURATION, timed), |wet| wet.fb);
        let value = self.heat(value, |heat| heat.others);
        let value = self.incised(self.sized(value, |size| size.fb), |slits| slits.strength);
        value.maybe("C_r", "repetitive member", self.repetitive).maybe("C_V", "volume", self.volume)
    }

    /// Without the repetitive member factor: plies laid on each other do not stand side by side.
    fn flat_bending<V: Chain>(&self, value: V, timed: Cited<f64>) -> V {
        let value = self.wet(value.times("C_D", DURATION, timed), |wet| wet.fb);
        let value = self.heat(value, |heat| heat.others);
        let wide_face = self.wide_face.map(|cited| cited.map(|factors| factors.fb));
        let value = value.maybe("C_F", "size", self.size_weak).maybe("C_F", WIDE_FACE, wide_face);
        self.incised(value.maybe("C_fu", "flat use", self.flat_use), |slits| slits.strength)
    }

    fn tension<V: Chain>(&self, value: V, timed: Cited<f64>) -> V {
        let value = self.wet(value.times("C_D", DURATION, timed), |wet| wet.ft);
        let value = self.heat(value, |heat| heat.tension_and_modulus);
        self.incised(self.sized(value, |size| size.ft), |slits| slits.strength)
    }

    fn compression<V: Chain>(&self, value: V, timed: Cited<f64>) -> V {
        let value = self.wet(value.times("C_D", DURATION, timed), |wet| wet.fc);
        let value = self.heat(value, |heat| heat.others);
        self.incised(self.sized(value, |size| size.fc), |slits| slits.strength)
    }

    fn shear<V: Chain>(&self, value: V, timed: Cited<f64>) -> V {
        let value = self.wet(value.times("C_D", DURATION, timed), |wet| wet.fv);
        self.incised(self.heat(value, |heat| heat.others), |slits| slits.strength)
    }

    fn crushing<V: Chain>(&self, value: V) -> V {
        let value = self.heat(self.wet(value, |wet| wet.fc_perp), |heat| heat.others);
        self.incised(value, |slits| slits.fc_perp)
    }

    fn stiffness<V: Chain>(&self, value: V) -> V {
        let value = self.heat(self.wet(value, |wet| wet.e), |heat| heat.tension_and_modulus);
        self.incised(value, |slits| slits.e)
    }

    fn flat_stiffness<V: Chain>(&self, value: V) -> V {
        let wide_face = self.wide_face.map(|cited| cited.map(|factors| factors.e));
        self.stiffness(value).maybe("C_F", WIDE_FACE, wide_face)
    }

    fn wet<V: Chain>(&self, value: V, pick: fn(WetServiceFactors) -> f64) -> V {
        value.maybe("C_M", "wet service", self.wet.map(|cited| cited.map(pick)))
    }

    fn heat<V: Chain>(&self, value: V, pick: fn(TemperatureFactors) -> f64) -> V {
        value.maybe("C_t", "temperature", self.temperature.map(|cited| cited.map(pick)))
    }

    fn sized<V: Chain>(&self, value: V, pick: fn(SizeFactors) -> f64) -> V {
        value.maybe("C_F", "size", self.size.map(|cited| cited.map(pick)))
    }

    fn incised<V: Chain>(&self, value: V, pick: fn(IncisingFactors) -> f64) -> V {
        value.maybe("C_i", "incising", self.incising.map(|cited| cited.map(pick)))
    }
}

const DURATION: &str = "load duration";
const WIDE_FACE: &str = "size, on the wide face";

fn is_wet(conditions: &Conditions) -> bool {
    conditions.service == ServiceMoisture::Wet
}

/// The column of size factors that a grade reads.
fn size_factor_grade(sawn: Sawn) -> SizeFactorGrade {
    match sawn.grade {
        Grade::Stud if takes_no_3_values(sawn) => SizeFactorGrade::Structural,
        Grade::Stud => SizeFactorGrade::Stud,
        Grade::Construction | Grade::Standard => SizeFactorGrade::ConstructionOrStandard,
        Grade::Utility => SizeFactorGrade::Utility,
        _ => SizeFactorGrade::Structural,
    }
}

pub(crate) const fn glulam_wood(layup: GlulamLayup) -> GlulamWood {
    match layup {
        GlulamLayup::V4DouglasFir => GlulamWood::Other,
        GlulamLayup::V3SouthernPine => GlulamWood::SouthernPine,
    }
}
