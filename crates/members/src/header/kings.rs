//! The kings: full-height studs that take the wind on half the opening.

use measure::{Length, Ratio};
use standards::irc_2021::r301::{DeflectionOf, WIND_FOR_DEFLECTION, WIND_FOR_DEFLECTION_SOURCE};
use standards::nds_2018::chapter_2::LoadDuration;

use super::input::HeaderInput;
use super::jacks::stud;
use super::result::Kings;
use super::wind::Pressure;
use crate::beam::simple_span_uniform;
use crate::working::{Basis, Part, figure};

/// The most kings one side is given; more than that is a post, and its own design.
const MOST_KINGS: u8 = 12;

/// How many kings each side needs; none on an inner wall.
///
/// Each side's kings hold half the opening and half a stud space, over the wall's whole height: taking the height for
/// the span is on the safe side of plate to plate. Jacks do not help, since they stop at the header. No repetitive
/// factor: a king has no neighbour to lean on. The little dead load on them is left out. (Common practice.)
pub(super) fn kings(input: &HeaderInput) -> Result<Option<(Kings, Part)>, String> {
    let tributary = (input.opening + input.wall.spacing) / 2.0;
    let height = input.wall.height;
    let Some(pressure) = Pressure::on(input, height, tributary)? else { return Ok(None) };
    let king = stud(input)?;
    let strength = king.adjusted(&input.conditions, LoadDuration::TenMinutes).map_err(|problem| problem.to_string())?;
    let section = king.section();
    let line_load = pressure.allowable() * tributary;
    let rigidity = strength.e.value * section.second_moment_strong;
    let whole = simple_span_uniform(line_load, height, rigidity);
    let one_king_share = (whole.moment / section.section_modulus_strong) / strength.fb_star.value;
    let bow_of_one = simple_span_uniform(line_load * WIND_FOR_DEFLECTION, height, rigidity).deflection;
    let allowed_bow = height / DeflectionOf::ExteriorWallGypsumInside.span_over();
    let for_bending = whole_number_of(one_king_share)?;
    let for_stiffness = whole_number_of(bow_of_one / allowed_bow)?;
    let each_side = for_bending.max(for_stiffness);
    let kings = Kings {
        for_bending,
        for_stiffness,
        one_king_share,
        bow: bow_over(height, bow_of_one / f64::from(each_side)),
        pressure: pressure.allowable(),
        tributary,
        line_load,
    };
    let part =
        working(&kings, &pressure, input, (&strength, section.section_modulus_strong.cubic_inches()), bow_of_one);
    Ok(Some((kings, part)))
}

fn bow_over(height: Length, bow: Length) -> Ratio {
    if bow > Length::ZERO { height / bow } else { f64::INFINITY }
}

/// The least whole number of kings that share a demand of so many kings.
fn whole_number_of(kings: Ratio) -> Result<u8, String> {
    (1..=MOST_KINGS).find(|&count| kings <= f64::from(count)).ok_or_else(|| {
        format!(
            "The wind on half this opening asks for {} kings a side; up to {MOST_KINGS} are worked out here. An \
             engineer designs a post for it.",
            figure(kings.ceil())
        )
    })
}

fn working(
    kings: &Kings,
    pressure: &Pressure,
    input: &HeaderInput,
    (strength, modulus): (&lumber::Adjusted, f64),
    bow_of_one: Length,
) -> Part {
    let mut part = Part::new("Kings in the wind");
    pressure.steps(&mut part);
    part.step(
        "w",
        "wind on each side's kings",
        format!(
            "{} psf × ({} + {}) / 2 / 12",
            figure(kings.pressure.psf()),
            figure(input.opening.inches()),
            figure(input.wall.spacing.inches())
        ),
        (kings.line_load.plf(), "plf"),
        Basis::Arithmetic,
    );
    let moment = kings.line_load * input.wall.height * input.wall.height / 8.0;
    part.step(
        "f_b",
        "bending of one king",
        format!(
            "{} plf × ({} ft)² / 8 × 12 / {} in³",
            figure(kings.line_load.plf()),
            figure(input.wall.height.feet()),
            figure(modulus)
        ),
        (moment.inch_pounds() / modulus, "psi"),
        Basis::Arithmetic,
    );
    super::working::adjusted_step(&mut part, &strength.fb_star, "bending strength of a king");
    part.step("", "kings by strength", "", (f64::from(kings.for_bending), ""), Basis::Arithmetic);
    part.step(
        "Δ",
        "bow of one king under 0.7 of that wind",
        "",
        (bow_of_one.inches(), "in"),
        Basis::Published(WIND_FOR_DEFLECTION_SOURCE),
    );
    part.step(
        "",
        "kings by stiffness, height over 180 behind gypsum board",
        "",
        (f64::from(kings.for_stiffness), ""),
        Basis::Published(standards::irc_2021::r301::DEFLECTION),
    );
    part
}
