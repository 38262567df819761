//! The code's span tables, as they were read or as their own rule makes them anew.

use lumber::candidates::joist_candidates;
use lumber::{Conditions, Grade, Product, Species};
use measure::{AreaLoad, Length};
use members::span_table::{LONGEST, SpanModel, model_span, printed_row, printed_span};
use standards::Status;
use standards::span_row::{PrintedSpan, SpanTable};

use super::say::{cautions, fact};
use crate::quick::reply::{QuickReply, TableReply};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &["span_table", "table_dead", "species", "grade"];

const SPACINGS: [f64; 4] = [12.0, 16.0, 19.2, 24.0];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (table, name) = match reading.word("span_table")? {
        "ceiling_20" => (SpanTable::CeilingJoists20, "Ceiling joists"),
        "rafter_50" => (SpanTable::Rafters50, "Rafters, 50 psf of snow"),
        "rafter_70" => (SpanTable::Rafters70, "Rafters, 70 psf of snow"),
        "rafter_roof_live" => (SpanTable::RaftersRoofLiveCeiling, "Rafters, roof live load"),
        _ => (SpanTable::FloorJoists40, "Floor joists"),
    };
    let dead = AreaLoad::from_psf(reading.word("table_dead")?.parse().ok()?);
    if table == SpanTable::CeilingJoists20 && dead.psf() > 10.0 {
        reading.refuse("table_dead", "20 psf was given; the table of ceiling joists is for 10 psf.".to_owned());
        return None;
    }
    let reading = &*reading;
    let species = Species::from_text(reading.word("species")?).ok()?;
    let grade = Grade::from_text(reading.word("grade")?).ok()?;
    let mut about = About::of(reading, FIELDS);
    let (mut read, mut made) = (0.0, 0.0);
    let mut rows = Vec::new();
    let mut statuses: Vec<Status> = Vec::new();
    for member in joist_candidates(species, grade) {
        let Product::Sawn(sawn) = member.product() else { continue };
        if sawn.size.nominal_width() > 12 || (sawn.size.nominal_width() == 4 && table == SpanTable::FloorJoists40) {
            continue;
        }
        let mut row = vec![sawn.size.nominal().to_owned()];
        for spacing in SPACINGS {
            let spacing = Length::from_inches(spacing);
            let found = printed_row(table, dead, (species, grade), spacing);
            let printed = found.and_then(|found| printed_span(found, sawn.size.nominal()));
            let cell = match printed {
                Some(PrintedSpan::Of(span)) if span < LONGEST => {
                    read += 1.0;
                    feet_inches(span)
                }
                Some(_) => {
                    read += 1.0;
                    "26' +".to_owned()
                }
                None => {
                    made += 1.0;
                    let model = model_span(&SpanModel::of(table, dead), &member, Conditions::default(), spacing).ok();
                    model
                        .and_then(members::span_table::ModelSpan::printed)
                        .map_or_else(|| "26' +".to_owned(), |span| format!("{}*", feet_inches(span)))
                }
            };
            statuses.extend(found.map(|found| found.status));
            row.push(cell);
        }
        rows.push(row);
    }
    let status = statuses.first().copied().unwrap_or(Status::Computed);
    let source = words::source(table.source(status));
    let mut notes = vec![
        format!(
            "{source}. Live load {} psf, sag to the span over {}.",
            words::figure(table.live().psf()),
            words::figure(table.deflection_limit())
        ),
        "Clear spans, on the level. Dry lumber with a grade stamp.".to_owned(),
    ];
    if made > 0.0 {
        notes.push("* not read: made anew by the rule that gives every cell that was read, to the inch.".to_owned());
    }
    let heading = format!("{name}, {} {}, {} psf dead", species.short_name(), grade.name(), words::figure(dead.psf()));
    let widest = rows.last().and_then(|row| row.get(2)).cloned().unwrap_or_default();
    let largest = rows.last().and_then(|row| row.first()).cloned().unwrap_or_default();
    cautions(&mut about);
    about.say("A spacing between two columns takes the wider one's span.");
    if matches!(table, SpanTable::Rafters50 | SpanTable::Rafters70 | SpanTable::RaftersRoofLiveCeiling) {
        about.say("With ties above the plate the span is less, to two thirds; see Rafter. Snow above 70 psf is outside the tables.");
    }
    about.say("A table knows no wall across the joists, no cantilever, no cut, and no wind.");
    Some(QuickReply {
        verdict: "spans at 16\"".to_owned(),
        size: format!("{largest}: {}", widest.trim_end_matches('*')),
        facts: vec![
            fact("cells_read", "cells as they were read", read, words::figure(read)),
            fact("cells_made", "cells made anew by the table's own rule", made, words::figure(made)),
        ],
        tables: vec![TableReply {
            heading,
            columns: ["size", "12\"", "16\"", "19.2\"", "24\""].map(str::to_owned).to_vec(),
            rows,
            notes,
        }],
        about: about.finish(),
        ..QuickReply::default()
    })
}

fn feet_inches(span: Length) -> String {
    span.to_feet_inches(measure::Denominator::Eighth)
}
