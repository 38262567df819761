//! Tables of results: what, and its numbers.

use maud::{Markup, html};

use super::{Act, figure};
use crate::model::Table;

/// In the order of the screen. A row that can be followed brings up the working.
#[must_use]
pub fn tables(tables: &[Table]) -> Markup {
    html! { @for table in tables { (one(table)) } }
}

fn one(table: &Table) -> Markup {
    html! {
        section.results {
            h2 { (table.heading) }
            table data-act=[table.working.map(Act::Working)] {
                thead { tr { @for column in &table.columns { th scope="col" { (column) } } } }
                tbody {
                    @for row in &table.rows {
                        tr class=[row.strong.then_some("strong")] {
                            th scope="row" { (figure(&row.what)) }
                            @for value in &row.values { td { (figure(value)) } }
                        }
                    }
                }
            }
            @for line in &table.notes { p.note { (figure(line)) } }
            @if let Some(part) = table.working {
                button.plain.to-working
                    type="button"
                    aria-haspopup="dialog"
                    aria-label={ "Working: " (table.heading) }
                    data-act=(Act::Working(part))
                    { "Working" }
            }
        }
    }
}
