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

/// Every single 2x piece that a joist or a rafter is chosen from: 2x4 to 2x14, in this species and grade, where a
/// published value is held.
pub fn joist_candidates(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    [4, 6, 8, 10, 12, 14].into_iter().filter_map(move |width| published(sawn(species, grade, 2, width), 1))
}

/// Every beam that a floor or a roof is carried on: what a header is chosen from, and 1 to 4 plies of 2x14, 4x14 and
/// 4x16 where a published value is held, LVL and glulam up to 24 in deep.
pub fn beam_candidates(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    let deep_plies = (1..=4).filter_map(move |plies| published(sawn(species, grade, 2, 14), plies));
    let deep_solid = [14, 16].into_iter().filter_map(move |width| published(sawn(species, grade, 4, width), 1));
    let deep_lvl = [20.0, 24.0].into_iter().filter_map(lvl_piece).flat_map(|piece| in_plies(&Product::Lvl(piece)));
    let deep_glulam = [3.5, 5.5, 6.75].into_iter().flat_map(|breadth| {
        let depths = [9.0, 12.0, 15.0, 18.0, 19.5, 21.0, 22.5, 24.0];
        depths
            .into_iter()
            .filter(move |depth| breadth > 6.0 || *depth > 18.0)
            .filter_map(move |depth| glulam_piece(breadth, depth).map(|beam| Member::single(Product::Glulam(beam))))
    });
    header_candidates(species, grade).chain(deep_plies).chain(deep_solid).chain(deep_lvl).chain(deep_glulam)
}

/// Every stud: 2x4, 2x6 and 2x8, alone and doubled, where a published value is held.
pub fn stud_candidates(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    let sizes = [4, 6, 8].into_iter();
    sizes.flat_map(move |width| (1..=2).filter_map(move |plies| published(sawn(species, grade, 2, width), plies)))
}

/// Every post: 2 to 5 plies of 2x4 to 2x8, 4x4 to 4x8, 6x6 to 8x8, where a published value is held.
pub fn post_candidates(species: Species, grade: Grade) -> impl Iterator<Item = Member> {
    let plies = [4, 6, 8]
        .into_iter()
        .flat_map(move |width| (2..=5).filter_map(move |plies| published(sawn(species, grade, 2, width), plies)));
    let solid = [(4, 4), (4, 6), (4, 8), (6, 6), (6, 8), (8, 8)].into_iter();
    plies.chain(solid.filter_map(move |(thickness, width)| published(sawn(species, grade, thickness, width), 1)))
}

/// So many plies of a piece, where a published value is held for it.
fn published(piece: Option<Product>, plies: u8) -> Option<Member> {
    Member::new(piece?, plies).ok().filter(|member| member.reference_values().is_ok())
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
    LVL_DEPTHS_INCHES.into_iter().filter_map(lvl_piece).flat_map(|piece| in_plies(&Product::Lvl(piece)))
}

fn glulam() -> impl Iterator<Item = Member> {
    [3.5, 5.5]
        .into_iter()
        .flat_map(move |breadth| {
            GLULAM_DEPTHS_INCHES.into_iter().filter_map(move |depth| glulam_piece(breadth, depth)).map(Product::Glulam)
        })
        .map(Member::single)
}

fn lvl_piece(depth: f64) -> Option<Lvl> {
    Lvl::new(LvlGrade::E20Fb2600, Lvl::USUAL_BREADTH, Length::from_inches(depth)).ok()
}

fn glulam_piece(breadth: f64, depth: f64) -> Option<Glulam> {
    Glulam::new(GlulamLayup::V4DouglasFir, Length::from_inches(breadth), Length::from_inches(depth)).ok()
}
