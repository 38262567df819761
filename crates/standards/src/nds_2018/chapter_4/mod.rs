//! Chapter 4: sawn lumber, and the adjustment factors printed with its tables in the Supplement.

mod service;
mod size;
mod stability;

pub use service::{
    IncisingFactors, WetServiceFactors, dimension_wet_service_factors, incising_factors, repetitive_member_factor,
    timber_wet_service_factors,
};
pub use size::{
    SizeFactorGrade, SizeFactors, TimberGrade, WideFaceFactors, flat_use_factor, size_factors,
    southern_pine_size_factors, timber_size_factor, wide_face_factors,
};
pub use stability::{LateralSupport, end_notch_depth_limit, lateral_support_for_full_strength};
