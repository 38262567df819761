//! The numbers of a member, and what its supports give.

use framing::quick::reply::{QuickReply, SupportReply};
use framing::words::figure;

use crate::model::{Table, TableRow};

pub(super) fn tables(reply: &QuickReply) -> Vec<Table> {
    let mut tables: Vec<Table> = reply.tables.iter().map(own).collect();
    if !reply.facts.is_empty() {
        let row = |fact: &framing::quick::reply::FactReply| TableRow {
            what: super::answer::capital(&fact.what),
            values: vec![fact.written.clone()],
            strong: false,
        };
        tables.push(Table {
            heading: "Its numbers".to_owned(),
            columns: vec!["what".to_owned(), "how much".to_owned()],
            rows: reply.facts.iter().map(row).collect(),
            notes: Vec::new(),
            working: None,
        });
    }
    if !reply.supports.is_empty() {
        tables.push(supports(&reply.supports));
    }
    tables
}

fn own(table: &framing::quick::reply::TableReply) -> Table {
    let row = |row: &Vec<String>| {
        let (what, values) =
            row.split_first().map_or_else(Default::default, |(first, rest)| (first.clone(), rest.to_vec()));
        TableRow { what, values, strong: false }
    };
    Table {
        heading: table.heading.clone(),
        columns: table.columns.clone(),
        rows: table.rows.iter().map(row).collect(),
        notes: table.notes.clone(),
        working: None,
    }
}

fn supports(supports: &[SupportReply]) -> Table {
    let whole = |pounds: f64| {
        let away = if pounds < 0.0 { pounds.floor() } else { pounds.ceil() };
        figure(away).replace('-', "\u{2212}")
    };
    let row = |support: &SupportReply| TableRow {
        what: format!("at {}", support.at),
        values: vec![whole(support.most_lb), whole(support.least_lb)],
        strong: support.least_lb < -0.5,
    };
    let cases: Vec<String> = supports
        .iter()
        .map(|support| {
            let by_case = support.by_case_lb.iter().map(|(case, pounds)| format!("{case} {}", whole(*pounds)));
            format!("At {}: {} lb.", support.at, by_case.collect::<Vec<_>>().join(", "))
        })
        .collect();
    let mut notes = cases;
    notes.push("By kind of load with all spans loaded, wind at strength level; the most and the least are those of combinations.".to_owned());
    Table {
        heading: "What its supports give".to_owned(),
        columns: vec!["support".to_owned(), "most, lb".to_owned(), "least, lb".to_owned()],
        rows: supports.iter().map(row).collect(),
        notes,
        working: None,
    }
}
