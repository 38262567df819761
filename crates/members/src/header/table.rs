//! The code's own tables beside the calculation: header spans with jacks, and kings by wind.

use loads::header::HeaderSupport;
use loads::site::exposure_category;
use lumber::{Family, Grade, Member, Product, SawnSize, Species};
use measure::Length;
use standards::irc_2021::r602_7::{self, InteriorSupporting, Supporting};
use standards::irc_2021::{HeaderSize, HeaderSpan};
use standards::{OutsideTable, irc_2012, irc_2018, irc_2021};

use super::input::{Above, CodeEdition, HeaderInput, Wind};
use super::result::{Check, KingTable, Limit, TableAnswer};
use crate::working::figure;

/// What the code's header table says of a size in this case.
///
/// Common practice, and the code's own footnote: the table is not read before it is known what stands on the header.
pub(super) fn answer(member: &Member, checks: &[Check], input: &HeaderInput) -> TableAnswer {
    if input.support == HeaderSupport::GableEnd {
        let flat_two_by_four = r602_7::flat_two_by_four_may_head(input.opening, super::room(input));
        return TableAnswer::Nonbearing { flat_two_by_four };
    }
    let Some(above) = input.above else { return TableAnswer::AskAbove };
    match read(member, input) {
        Ok((size, found)) => span(size, &found, above, checks, input),
        Err(sentence) => TableAnswer::Outside(sentence),
    }
}

fn span(size: HeaderSize, found: &HeaderSpan, above: Above, checks: &[Check], input: &HeaderInput) -> TableAnswer {
    let unbraced_top_factor = match (above, input.edition) {
        (Above::CrippleStuds, CodeEdition::Irc2021 | CodeEdition::Irc2018) => r602_7::unbraced_top_factor(size),
        // The older table has no such footnote.
        (Above::CrippleStuds, CodeEdition::Irc2012) | (Above::FramingBears, _) => 1.0,
    };
    // Spans are printed to the inch, and a limit is never rounded up: so is what lies between two of them.
    let printed = Length::from_inches(found.span.inches().floor());
    TableAnswer::Span {
        allowed: printed * unbraced_top_factor,
        printed,
        unbraced_top_factor,
        jacks: found.jack_studs,
        cells: cells(found),
        source: found.source,
        differences: differences(found, unbraced_top_factor, checks, input),
    }
}

fn read(member: &Member, input: &HeaderInput) -> Result<(HeaderSize, HeaderSpan), String> {
    let size = table_size(member)?;
    listed_wood(input)?;
    let found = match (input.edition, supporting(input.support)?) {
        (CodeEdition::Irc2021, Row::Exterior(row)) => {
            irc_2021::r602_7::header_span(row, size, input.site.ground_snow, input.site.roof_live, input.building_width)
        }
        (CodeEdition::Irc2018, Row::Exterior(row)) => {
            irc_2018::header_span(row, size, input.site.ground_snow, input.site.roof_live, input.building_width)
        }
        (CodeEdition::Irc2012, Row::Exterior(row)) => {
            irc_2012::header_span(row, size, input.site.ground_snow, input.site.roof_live, input.building_width)
        }
        (CodeEdition::Irc2021, Row::Interior(row)) => {
            irc_2021::r602_7::interior_header_span(row, size, input.building_width)
        }
        (CodeEdition::Irc2018, Row::Interior(row)) => irc_2018::interior_header_span(row, size, input.building_width),
        (CodeEdition::Irc2012, Row::Interior(_)) => {
            return Err("The inner-wall table of the 2012 edition is not held here. Read it in the book.".to_owned());
        }
    };
    found.map(|found| (size, found)).map_err(|outside| outside.to_string())
}

fn table_size(member: &Member) -> Result<HeaderSize, String> {
    let refused = || format!("{} is not in the code's header table, which lists built-up 2x sizes.", member.name());
    if member.family() != Family::BuiltUp2x {
        return Err(refused());
    }
    let Product::Sawn(sawn) = member.product() else { return Err(refused()) };
    HeaderSize::from_name(&format!("{}-{}", member.plies(), SawnSize::nominal(sawn.size))).ok_or_else(refused)
}

/// The tables are made for No. 2 of four species: a better grade may use them, another species may not.
fn listed_wood(input: &HeaderInput) -> Result<(), String> {
    if input.species == Species::SprucePineFirSouth {
        return Err("Spruce-Pine-Fir (South) is not among the four species of the code's header table.".to_owned());
    }
    if matches!(input.grade, Grade::No3 | Grade::Stud | Grade::Construction | Grade::Standard | Grade::Utility) {
        return Err(format!("The code's header table is made for No. 2 and better, not for {}.", input.grade.name()));
    }
    Ok(())
}

enum Row {
    Exterior(Supporting),
    Interior(InteriorSupporting),
}

fn supporting(support: HeaderSupport) -> Result<Row, String> {
    Ok(match support {
        HeaderSupport::RoofCeiling => Row::Exterior(Supporting::RoofCeiling),
        HeaderSupport::OneFloorCenterBearing => Row::Exterior(Supporting::OneFloorCenterBearing),
        HeaderSupport::OneFloorClearSpan => Row::Exterior(Supporting::OneFloorClearSpan),
        HeaderSupport::TwoFloorsCenterBearing => Row::Exterior(Supporting::TwoFloorsCenterBearing),
        HeaderSupport::TwoFloorsClearSpan => Row::Exterior(Supporting::TwoFloorsClearSpan),
        HeaderSupport::InteriorOneFloor => Row::Interior(InteriorSupporting::OneFloor),
        HeaderSupport::InteriorTwoFloors => Row::Interior(InteriorSupporting::TwoFloors),
        HeaderSupport::FloorOnly | HeaderSupport::GableEnd => {
            return Err("The code's header table has no row for one floor alone on an outer wall.".to_owned());
        }
    })
}

fn cells(found: &HeaderSpan) -> String {
    let [narrow, wide] = found.widths.map(|width| figure(width.feet()));
    let widths =
        if narrow == wide { format!("{wide} ft wide") } else { format!("between {narrow} and {wide} ft wide") };
    match found.ground_snow {
        Some(snow) => format!("{} psf ground snow column, building {widths}", figure(snow.psf())),
        None => format!("building {widths}"),
    }
}

/// Why the table and the calculation differ. The table's basis was worked back from its own spans: one load a column,
/// bending alone, snow duration, the weakest of the four species, and 1.11 for two plies (see the table's tests).
fn differences(found: &HeaderSpan, unbraced: f64, checks: &[Check], input: &HeaderInput) -> Vec<String> {
    let mut reasons = Vec::new();
    if let Some(line_load) = found.line_load {
        let plf = figure(line_load.plf());
        reasons
            .push(format!("The table stands for about {plf} plf in these columns; compare the load worked out here."));
    }
    reasons.push(
        "The table takes the weakest of four species, bending alone, snow duration, and a gain of 1.11 for two plies."
            .to_owned(),
    );
    let governing = checks.iter().reduce(|most, check| if check.share > most.share { check } else { most });
    if let Some(governing) = governing.filter(|check| check.limit != Limit::Bending) {
        reasons.push(format!("Here {} governs; the table does not look at it.", governing.limit.words()));
    }
    if unbraced < 1.0 {
        reasons
            .push("Its footnote cuts the span to 0.70 for cripples; the calculation cuts strength by C_L.".to_owned());
    }
    if unbraced == 1.0 && input.above == Some(Above::CrippleStuds) && input.edition == CodeEdition::Irc2012 {
        reasons.push(
            "The older table says nothing of a top that nothing holds; later editions cut it to 0.70.".to_owned(),
        );
    }
    if input.wind != Wind::None {
        reasons.push("The table has no wind across the header; the calculation has.".to_owned());
    }
    reasons
}

/// Jacks that the header table asks for; 0 where it says nothing.
pub(super) const fn jacks_asked(table: &TableAnswer) -> u8 {
    match table {
        TableAnswer::Span { jacks, .. } => *jacks,
        _ => 0,
    }
}

/// Kings that the code's table asks for; 0 where it says nothing.
pub(super) const fn kings_asked(table: Option<&KingTable>) -> u8 {
    match table {
        Some(KingTable::Kings { each_side, .. }) => *each_side,
        _ => 0,
    }
}

/// Kings by the code's table; none where the wind was given as a pressure, or the wall is an inner one.
pub(super) fn kings(input: &HeaderInput) -> Option<KingTable> {
    let Wind::Site(_) = input.wind else { return None };
    let speed = input.site.wind.speed;
    let exposure = exposure_category(input.site.wind.exposure);
    let opening: Length = input.opening;
    let found: Result<_, OutsideTable> = match input.edition {
        CodeEdition::Irc2021 => irc_2021::r602_7_5::king_studs(opening, speed, exposure),
        CodeEdition::Irc2018 => irc_2018::king_studs(opening, speed, exposure),
        CodeEdition::Irc2012 => {
            return Some(KingTable::Outside("The 2012 edition has no table of kings by wind.".to_owned()));
        }
    };
    Some(match found {
        Ok(studs) => KingTable::Kings { each_side: studs.count, source: studs.source },
        Err(outside) => KingTable::Outside(outside.to_string()),
    })
}
