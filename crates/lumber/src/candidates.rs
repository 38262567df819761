//! The sizes that a header is chosen from.

use measure::Length;
use standards::nds_2018::supplement::{GlulamLayup, LvlGrade};

use crate::{Glulam, Grade, Lvl, Member, Product, Sawn, SawnSize, Species};

/// Every member that a header is chosen from, in this species and grade where it is sawn: 1 to 4 plies of 2x6 to
/// 2x12; 4x6 to 4x12; 6x6 to 6x12; 1 to 4 plies of generic 2.0E-2600Fb LVL, 1-3/4 in each, 9-1/2 to 18 in deep;
/// 24F-V4 Douglas fir glulam 3-1/2 and 5-1/2 in broad, 9 to 18 in deep.
///
/// Sawn members of which no published value is held are left out. Within a family the sizes ascend.
pub fn header_candidates(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    built_up_2x(species, grade)
        .chain(solid_sawn(species, grade))
        .filter(|member| member.reference_values().is_ok())
        .chain(lvl())
        .chain(glulam())
}

const SAWN_WIDTHS: [u8; 4] = [6, 8, 10, 12];
const LVL_DEPTHS_INCHES: [f64; 6] = [9.5, 11.25, 11.875, 14.0, 16.0, 18.0];
const GLULAM_DEPTHS_INCHES: [f64; 7] = [9.0, 10.5, 12.0, 13.5, 15.0, 16.5, 18.0];

fn sawn(species: Species, grade: Grade, thickness: u8, width: u8) -> Option<Product> {
    let size = SawnSize::new(thickness, width).ok()?;
    Some(Product::Sawn(Sawn { species, grade, size }))
}

fn in_plies(product: &Product) -> impl Iterator<Item = Member> + use<> {
    let product = product.clone();
    (1..=4).filter_map(move |plies| Member::new(product.clone(), plies).ok())
}

fn built_up_2x(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    let pieces = SAWN_WIDTHS.into_iter().filter_map(move |width| sawn(species, grade, 2, width));
    pieces.flat_map(|piece| in_plies(&piece))
}

fn solid_sawn(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    [4, 6].into_iter().flat_map(move |thickness| {
        SAWN_WIDTHS.into_iter().filter_map(move |width| sawn(species, grade, thickness, width)).map(Member::single)
    })
}

fn lvl() -> impl Iterator<Item = Member> {
    let piece = |depth| Lvl::new(LvlGrade::E20Fb2600, Lvl::USUAL_BREADTH, Length::from_inches(depth)).ok();
    LVL_DEPTHS_INCHES.into_iter().filter_map(piece).flat_map(|piece| in_plies(&Product::Lvl(piece)))
}

fn glulam() -> impl Iterator<Item = Member> {
    let beam = |breadth: f64, depth: f64| {
        Glulam::new(GlulamLayup::V4DouglasFir, Length::from_inches(breadth), Length::from_inches(depth)).ok()
    };
    [3.5, 5.5]
        .into_iter()
        .flat_map(move |breadth| {
            GLULAM_DEPTHS_INCHES.into_iter().filter_map(move |depth| beam(breadth, depth)).map(Product::Glulam)
        })
        .map(Member::single)
}
