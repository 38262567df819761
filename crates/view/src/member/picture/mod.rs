//! Members drawn to scale.

mod beam;
mod corner;
mod cut;
mod path;
mod rafter;
mod upright;

use framing::member::MemberKind;
use framing::quick::reply::{Drawn, QuickReply};

use crate::pen::Pen;
use crate::scene::Scene;

pub(super) fn picture(kind: MemberKind, reply: &QuickReply) -> Scene {
    match &reply.drawn {
        Drawn::Beam(drawn) => beam::picture(kind, drawn, reply),
        Drawn::Rafter(drawn) => rafter::picture(drawn, reply),
        Drawn::Corner(drawn) => corner::picture(drawn, reply),
        Drawn::Upright(drawn) => upright::picture(drawn, reply),
        Drawn::Cut(drawn) => cut::picture(drawn),
        Drawn::Nothing | Drawn::Wall(_) | Drawn::Path(_) | Drawn::Lines(_) | Drawn::Floor(_) => table(reply),
    }
}

/// The way of a ridge's load to the ground.
pub(super) fn path_down(kind: MemberKind, reply: &QuickReply) -> Option<Scene> {
    match &reply.drawn {
        Drawn::Beam(drawn) if kind == MemberKind::Ridge => Some(path::picture(drawn, reply)),
        _ => None,
    }
}

/// The span table as bars: the deeper, the farther.
fn table(reply: &QuickReply) -> Scene {
    use crate::pen::rectangle;
    use crate::scene::{Ink, Weight};
    const ROW: f64 = 40.0;
    const LONGEST: f64 = 26.0 * 12.0;
    let Some(table) = reply.tables.first() else {
        return Pen::new((0.0, 0.0), (100.0, 60.0)).scene("Nothing to draw yet.".to_owned());
    };
    let rows: Vec<(String, String, f64)> = table
        .rows
        .iter()
        .filter_map(|row| {
            let cell = row.get(2)?;
            let inches = measure::read_length(cell.trim_end_matches(['*', '+', ' ']), measure::LengthUnit::Feet)
                .ok()?
                .length
                .inches();
            Some((row.first()?.clone(), cell.clone(), inches))
        })
        .collect();
    let mut pen = Pen::new((0.0, 0.0), (LONGEST, ROW * rows.len().max(1) as f64));
    pen.margin(24.0, 26.0, 8.0);
    let mut alt = "Spans at 16 inches:".to_owned();
    for (index, (name, cell, inches)) in rows.iter().enumerate() {
        let top = ROW * index as f64;
        pen.shape(rectangle(0.0, top + 24.0, *inches, top + 34.0), Weight::Seen, Ink::Ink, true);
        pen.label_from((0.0, top + 10.0), &format!("{name}: {cell}"));
        alt.push_str(&format!(" {name} {cell},"));
    }
    let (top, heading) = (pen.paper(16.0), "clear span at 16\"");
    pen.label_from((0.0, -top), heading);
    pen.scene(alt.trim_end_matches(',').to_owned() + ".")
}
