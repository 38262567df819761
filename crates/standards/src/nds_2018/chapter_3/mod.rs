//! Chapter 3: design provisions and equations for bending, shear, compression, bearing and their combinations.

mod bearing;
mod columns;
mod combined;
mod deflection;
mod shear;
mod stability;

pub use bearing::{bearing_area_factor, bearing_stress, hankinson};
pub use columns::{
    ColumnMaterial, ColumnStage, EndCondition, column_critical_stress, column_slenderness_ratio,
    column_stability_factor, effective_length_factor,
};
pub use combined::{
    BendingStress, CombinedCompression, CombinedTension, StrongAxis, WeakAxis, combined_bending_compression,
    combined_bending_tension, two_way_bending,
};
pub use deflection::{Seasoning, creep_factor, long_term_deflection};
pub use shear::{
    compression_notch_shear, rectangular_shear_stress, shear_from_point_load_near_support, tension_notch_shear,
};
pub use stability::{
    BendingCase, beam_stability_factor, critical_buckling_stress, effective_length, slenderness_ratio,
};

/// The lesser root shared by Eq. 3.3-6 and Eq. 3.7-1, `h − √(h² − q/c)` with `h = (1 + q)/(2c)`.
///
/// Written as `(q/c) / (h + √(h² − q/c))`, the same number: the printed form subtracts two nearly equal numbers when
/// `q` is large. The root is real for every `q` above 0 when `c` is under 1, and the result never exceeds 1 but for
/// the last bit, which is cut off.
fn interaction_root(q: f64, c: f64) -> f64 {
    let half = (1.0 + q) / (2.0 * c);
    let product = q / c;
    (product / (half + (half * half - product).sqrt())).min(1.0)
}

#[cfg(test)]
mod tests {
    use super::interaction_root;

    /// The printed form and the form used here are the same number.
    #[test]
    fn root_equals_the_printed_form() {
        for c in [0.8, 0.9, 0.95] {
            for q in [0.01_f64, 0.3, 1.0, 2.5, 40.0] {
                let half = (1.0 + q) / (2.0 * c);
                let printed = half - (half * half - q / c).sqrt();
                assert!((interaction_root(q, c) - printed).abs() < 1e-12, "q {q}, c {c}");
            }
        }
    }

    #[test]
    fn root_nears_one_when_buckling_is_far() {
        assert!((interaction_root(1e15, 0.95) - 1.0).abs() < 1e-12);
    }
}
