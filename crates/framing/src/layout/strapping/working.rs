//! The steps of the working: rows, strips, the plane and its shims.

use layout::strapping::{Aim, NAILS_A_CROSSING, Strapping, TakeOff};
use members::working::{Basis, Part};

use super::given::Given;
use super::shimmed::{Shimmed, level_datum, under};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::figure;

pub(super) fn parts(
    about: &mut About<'_>,
    reading: &Reading,
    given: &Given,
    strapping: &Strapping,
    takes: &TakeOff,
    shimmed: Option<&Shimmed>,
) {
    about.part(set_out(given, strapping, takes));
    if let Some(shimmed) = shimmed {
        about.part(shims(reading, given, shimmed));
    }
}

fn set_out(given: &Given, strapping: &Strapping, takes: &TakeOff) -> Part {
    let mut part = Part::new("Rows and strips");
    let room = &given.room;
    let (along, width, spacing) = (room.along.inches(), room.strip.width.inches(), room.spacing.inches());
    let whole = |count: usize| (count as f64, "");
    part.step("b", "room along the joists", "", (along, "in"), Basis::Input("strap_along"));
    part.step("s", "from row to row", "", (spacing, "in"), Basis::Input("strap_every"));
    part.step("w", "width of a strip", "", (width, "in"), Basis::Input("strap_strip"));
    part.step(
        "n",
        "rows, (b - w) / s rounded up, and one",
        format!("({} - {}) / {} + 1", figure(along), figure(width), figure(spacing)),
        whole(strapping.rows.len()),
        Basis::Arithmetic,
    );
    part.step(
        "a",
        "length of a row, the room less its clearance",
        format!("{} - {}", figure(room.across.inches()), figure(room.clearance.inches())),
        ((room.across - room.clearance).inches(), "in"),
        Basis::Input("strap_across"),
    );
    part.step("L", "all pieces, short ones counted", "", (takes.length.inches(), "in"), Basis::Arithmetic);
    part.step(
        "N",
        "strips, each piece cut from the first one with room for it, the longest first",
        "",
        whole(takes.strips),
        Basis::Arithmetic,
    );
    part.step(
        "N_b",
        "bundles, rounded up",
        format!("{} / {}", takes.strips, given.buy.bundle),
        whole(takes.bundles),
        Basis::Input("strap_bundle"),
    );
    part.step(
        "F",
        "nails or screws, two at each crossing and at each joint",
        format!("{} × ({} + {})", given.buy.fasteners, strapping.crossings, strapping.joints),
        whole(takes.fasteners),
        Basis::Published(NAILS_A_CROSSING.1),
    );
    part
}

fn shims(reading: &Reading, given: &Given, shimmed: &Shimmed) -> Part {
    let mut part = Part::new("The plane of the strips' backs and the shims");
    let plan = &shimmed.plan;
    let [across, along] = plan.plane.slopes();
    let start = plan.plane.height_at(measure::Length::ZERO, measure::Length::ZERO).inches();
    let aim = match shimmed.wish.aim {
        Aim::Level => "level: the lowest joist decides",
        Aim::LeastTotal => "flat, the sum of all gaps least",
        Aim::LeastGreatest => "flat, the greatest gap least",
        Aim::BestFit => "flat, by least squares, lowered until no joist pokes below",
    };
    part.step(
        "p_0",
        format!("height at the near left corner over the laser or string; {aim}"),
        "",
        (start, "in"),
        Basis::Arithmetic,
    );
    part.step("p_x", "its rise in a foot across", "", (across * 12.0, "in/ft"), Basis::Arithmetic);
    part.step("p_y", "its rise in a foot along", "", (along * 12.0, "in/ft"), Basis::Arithmetic);
    part.step("Σg", "all gaps that were read", "", (plan.total.inches(), "in"), Basis::Input("strap_readings"));
    part.step("g", "the greatest of them", "", (plan.greatest.inches(), "in"), Basis::Input("strap_readings"));
    let under = under(reading, given);
    part.step(
        "d",
        "from the strips' backs down to the ceiling's face",
        format!("{} + {}", figure(under.strip.inches()), figure(under.board.inches())),
        (under.thickness().inches(), "in"),
        Basis::Input("strap_board"),
    );
    if let Some(datum) = level_datum(reading) {
        part.step(
            "H",
            "finished ceiling over the subfloor at the near left corner",
            format!("{} + {} - {}", figure(datum.inches()), figure(start), figure(under.thickness().inches())),
            (datum.inches() + start - under.thickness().inches(), "in"),
            Basis::Input("strap_datum_high"),
        );
    }
    part
}
