//! What is required of a mark: typed once from the drawing, and gone with every look at that mark.

use std::collections::BTreeMap;

use framing::walk::stud_spacing::packs_to_look_at;
use framing::walk::{judge, which_reading};

use super::fields::understood;
use super::kind::Kind;
use super::kinds::{hold_down_point, nailing, notch_found, stud_spacing};
use super::spec::{COUNT, POUNDS, Spec, YES_NO, inches};
use crate::model::Entry::{Choice, Text};
use crate::model::Group::{Around, Required};
use crate::model::{Field, FieldId, Origin};

const PACKS: FieldId = "packs";

/// The inputs of a mark, in the order they are asked.
const SPECS: &[Spec] = &[
    Spec::new("drawing", "Drawing", "The sheet that asks for it: S2.1.", Text, Required),
    Spec::new("drawing_revision", "Revision", "Of that sheet.", Text, Required),
    Spec::new("studs", "Studs", "Nominal size.", Choice(stud_spacing::STUDS), Required),
    Spec::new("stud_spacing", "Stud spacing", "Centre to centre.", inches(4.0, 48.0), Required),
    Spec::new(PACKS, "Packs of studs", "Places and counts, as drawn: 64: 2, 96: 3.", Text, Required),
    Spec::new("sheathed", "Sheathed", "Sheets meet on studs.", YES_NO, Required),
    Spec::new("sheathing", "Sheathing", "What the nails go through.", Choice(nailing::SIDES), Required),
    Spec::new("sheathing_thickness", "Its thickness", "As stamped: 7/16.", inches(0.125, 4.0), Required),
    Spec::new("nail", "Nail", "Diameter and length, or 8d common.", Text, Required),
    Spec::new("edge_spacing", "Edge spacing", "Nails along panel edges.", inches(1.0, 16.0), Required),
    Spec::new("field_spacing", "Field spacing", "Nails on the studs between.", inches(1.0, 24.0), Required),
    Spec::new("boundary_spacing", "Boundary spacing", "Nails along the boundary.", inches(1.0, 16.0), Required),
    Spec::new("nails_hold", "Nails hold", "Who must say yes to another nail.", Choice(nailing::WORK), Required),
    Spec::new("plate", "Sill plate", "Nominal size.", Choice(hold_down_point::PLATES), Required),
    Spec::new("bolt_spacing", "Bolt spacing", "The greatest that is asked for.", inches(1.0, 144.0), Required),
    Spec::new("bolt_diameter", "Bolts", "Their diameter.", inches(0.25, 2.0), Required),
    Spec::new("plate_washers", "Plate washers", "Whether they are asked for.", YES_NO, Required),
    Spec::new("rod_diameter", "Hold-down rod", "Its diameter.", inches(0.25, 2.0), Required),
    Spec::new("rod_embedment", "Rod embedment", "In the concrete.", inches(0.5, 48.0), Required),
    Spec::new("hold_down_fasteners", "Hold-down fasteners", "By the drawing or the maker.", COUNT, Required),
    Spec::new("hold_down_studs", "Hold-down studs", "That it must be fixed to.", COUNT, Required),
    Spec::new("uplift", "Uplift", "Asked of a roof tie or a strap.", POUNDS, Required),
    Spec::new("moisture_limit", "Moisture limit", "Before the wall is closed.", Choice(MOISTURE), Required),
    Spec::new("carries", "Wall carries", "What stands on this wall.", Choice(stud_spacing::CARRIES), Around),
    Spec::new("wall", "The wall", "A partition may be cut deeper.", Choice(notch_found::WALLS), Around),
    Spec::new("stud_height", "Stud height", "Between supports at its sides.", inches(12.0, 360.0), Around),
    Spec::new("species", "Framing", "Species of the studs, as stamped.", Text, Around),
];

const MOISTURE: &[(&str, &str)] = &[("18", "18 %"), ("19", "19 %")];

/// Which input of a look follows from which of the mark.
pub(super) const FOLLOWS: &[(FieldId, Kind, FieldId)] = &[
    ("drawing", Kind::StudSpacing, "drawing"),
    ("drawing_revision", Kind::StudSpacing, "drawing_revision"),
    ("studs", Kind::StudSpacing, "studs"),
    ("stud_spacing", Kind::StudSpacing, "required_spacing"),
    ("sheathed", Kind::StudSpacing, "sheathed"),
    ("carries", Kind::StudSpacing, "carries"),
    ("stud_height", Kind::StudSpacing, "stud_height"),
    ("drawing", Kind::Nailing, "drawing"),
    ("drawing_revision", Kind::Nailing, "drawing_revision"),
    ("nail", Kind::Nailing, "required_nail"),
    ("nails_hold", Kind::Nailing, "work"),
    ("sheathing", Kind::Nailing, "side"),
    ("sheathing_thickness", Kind::Nailing, "side_thickness"),
    ("species", Kind::Nailing, "species"),
    ("edge_spacing", Kind::Nailing, "edge_spacing"),
    ("field_spacing", Kind::Nailing, "field_spacing"),
    ("boundary_spacing", Kind::Nailing, "boundary_spacing"),
    ("stud_spacing", Kind::Nailing, "stud_spacing"),
    ("drawing", Kind::HoldDownPoint, "drawing"),
    ("drawing_revision", Kind::HoldDownPoint, "drawing_revision"),
    ("plate", Kind::HoldDownPoint, "plate"),
    ("bolt_spacing", Kind::HoldDownPoint, "required_spacing"),
    ("bolt_diameter", Kind::HoldDownPoint, "required_bolt_diameter"),
    ("plate_washers", Kind::HoldDownPoint, "plate_washers_required"),
    ("rod_diameter", Kind::HoldDownPoint, "required_diameter"),
    ("rod_embedment", Kind::HoldDownPoint, "required_embedment"),
    ("hold_down_fasteners", Kind::HoldDownPoint, "required_fasteners"),
    ("hold_down_studs", Kind::HoldDownPoint, "required_studs"),
    ("uplift", Kind::HoldDownPoint, "required_uplift"),
    ("wall", Kind::NotchFound, "wall"),
    ("moisture_limit", Kind::Moisture, "limit"),
];

/// The inputs of a mark as the screen shows them, filled from what was typed. A value that a look would refuse is said
/// where it is typed.
#[must_use]
pub fn mark_fields(fields: &BTreeMap<String, String>) -> Vec<Field> {
    SPECS.iter().map(|spec| field(spec, fields.get(spec.id).map_or("", |text| text.trim()))).collect()
}

fn field(spec: &Spec, text: &str) -> Field {
    let (shown, echo, number) = understood(spec, text);
    Field {
        id: spec.id,
        label: spec.label,
        help: spec.help,
        entry: spec.entry.clone(),
        text: text.to_owned(),
        shown,
        echo,
        number,
        origin: if text.is_empty() { Origin::Unknown } else { Origin::Typed },
        problem: problem(spec.id, text),
        group: spec.group,
    }
}

/// What the first look that takes the value says of it.
fn problem(id: FieldId, text: &str) -> Option<String> {
    if text.is_empty() {
        return None;
    }
    if id == PACKS {
        return packs_to_look_at(text).err();
    }
    FOLLOWS.iter().filter(|(from, _, _)| *from == id).find_map(|(_, kind, to)| {
        let texts = BTreeMap::from([((*to).to_owned(), text.to_owned())]);
        let refused = judge(kind.name(), &texts, &BTreeMap::new())?.err()?;
        let refusal = refused.into_iter().find(|refusal| refusal.field == *to)?;
        Some(which_reading(&refusal.problem).1.to_owned())
    })
}

/// The inputs of a look that follow from its mark. What was not typed in the mark is left out.
#[must_use]
pub fn required_of(kind: Kind, mark: &BTreeMap<String, String>) -> BTreeMap<String, String> {
    let of_kind = FOLLOWS.iter().filter(|(_, of, _)| *of == kind);
    let typed = |from: &str| mark.get(from).map(|text| text.trim()).filter(|text| !text.is_empty());
    of_kind.filter_map(|(from, _, to)| Some(((*to).to_owned(), typed(from)?.to_owned()))).collect()
}

/// The packs of studs that the mark's drawing asks for, as readings of a look that nobody has looked at yet. Empty where
/// there are none, or where they cannot be read, which the mark says.
#[must_use]
pub fn packs_of(kind: Kind, mark: &BTreeMap<String, String>) -> BTreeMap<String, Vec<String>> {
    let drawn = mark.get(PACKS).filter(|_| kind == Kind::StudSpacing);
    let packs = drawn.and_then(|drawn| packs_to_look_at(drawn).ok()).filter(|packs| !packs.is_empty());
    packs.map(|packs| ("doubles".to_owned(), packs)).into_iter().collect()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::{FOLLOWS, Kind, SPECS, mark_fields, packs_of, required_of};
    use crate::model::{Entry, Origin};

    fn mark(fields: &[(&str, &str)]) -> BTreeMap<String, String> {
        fields.iter().map(|(id, text)| ((*id).to_owned(), (*text).to_owned())).collect()
    }

    /// What a schedule asks is an input of a mark and taken as it is; what it does not say is left to be typed.
    #[test]
    fn a_mark_is_filled_from_the_schedule() {
        let lines = "sheet S2.1 rev B\nP1: 15/32 10d 3/12, studs 2x6, bolts 5/8 at 32, washer 3x3x1/4, hold-down H1\n\
                     H1: hold-down 5,000 lb, rod 7/8\nP2: 7/16 8d 6";
        let marks = framing::walk::scheduled(lines);
        assert_eq!(marks.iter().map(|one| one.mark.as_str()).collect::<Vec<_>>(), ["P1", "P2"]);
        let asks = &marks[0].asks;
        let fields = mark_fields(asks);
        assert!(asks.keys().all(|id| fields.iter().any(|field| field.id == id)), "{asks:?}");
        assert!(fields.iter().all(|field| field.problem.is_none()), "{fields:?}");
        let nailing = required_of(Kind::Nailing, asks);
        assert_eq!((nailing["required_nail"].as_str(), nailing["edge_spacing"].as_str()), ("10d common", "3\""));
        let bolts = required_of(Kind::HoldDownPoint, asks);
        assert_eq!((bolts["required_spacing"].as_str(), bolts["required_diameter"].as_str()), ("32\"", "7/8\""));
        assert!(!marks[1].asks.contains_key("studs") && framing::walk::scheduled("P1: brick").is_empty());
    }

    #[test]
    fn what_follows_from_a_mark_is_an_input_of_the_look_and_of_the_mark() {
        for (number, (from, kind, to)) in FOLLOWS.iter().enumerate() {
            let source = SPECS.iter().find(|spec| spec.id == *from).unwrap();
            let target = kind.specs().iter().find(|spec| spec.id == *to && !spec.many);
            let target = target.unwrap_or_else(|| panic!("{kind:?} {to}"));
            let same = |one: &Entry, other: &Entry| core::mem::discriminant(one) == core::mem::discriminant(other);
            assert!(same(&source.entry, &target.entry), "{from} is filled otherwise than {to}");
            let twice = FOLLOWS[number + 1..].iter().any(|(_, of, other)| of == kind && other == to);
            assert!(!twice, "{kind:?} {to} follows from two");
        }
        let ids: Vec<&str> = SPECS.iter().map(|spec| spec.id).collect();
        assert!(ids.iter().all(|id| ids.iter().filter(|other| *other == id).count() == 1));
    }

    #[test]
    fn what_was_typed_of_a_mark_goes_with_its_looks() {
        let mark = mark(&[("stud_spacing", " 16\" "), ("nail", "8d common"), ("edge_spacing", ""), ("not_ours", "x")]);
        let studs = required_of(Kind::StudSpacing, &mark);
        assert_eq!(studs, self::mark(&[("required_spacing", "16\"")]));
        let nails = required_of(Kind::Nailing, &mark);
        assert_eq!(nails, self::mark(&[("required_nail", "8d common"), ("stud_spacing", "16\"")]));
        assert!(required_of(Kind::Flatness, &mark).is_empty());
        let lifted = required_of(Kind::HoldDownPoint, &self::mark(&[("uplift", "334")]));
        assert_eq!(lifted, self::mark(&[("required_uplift", "334")]));
    }

    #[test]
    fn a_wrong_value_is_said_where_it_is_typed() {
        let fields = mark_fields(&mark(&[
            ("stud_spacing", "90"),
            ("nail", "16d"),
            ("species", "oak"),
            ("plate", "2x40"),
            ("bolt_diameter", "5/8"),
            ("drawing", "S2.1"),
            ("uplift", "0 lb"),
        ]));
        let field = |id: &str| fields.iter().find(|field| field.id == id).unwrap();
        assert!(field("stud_spacing").problem.as_deref().unwrap().contains("from 4\" to 4' 0\" is taken"));
        assert!(field("nail").problem.as_deref().unwrap().contains("16d is not one nail"));
        assert!(field("species").problem.is_some() && field("plate").problem.is_some());
        let bolt = field("bolt_diameter");
        assert_eq!((bolt.problem.as_deref(), bolt.number, bolt.shown.as_str()), (None, Some(0.625), "5/8\""));
        assert_eq!(field("drawing").problem, None);
        assert!(field("uplift").problem.as_deref().unwrap().contains("from 1 lb to 50000 lb is taken"));
        let empty = field("carries");
        assert_eq!((empty.origin, empty.problem.as_deref(), empty.text.as_str()), (Origin::Unknown, None, ""));
    }

    #[test]
    fn packs_of_the_drawing_become_readings_to_look_at() {
        let packs = |drawn: &str| packs_of(Kind::StudSpacing, &mark(&[("packs", drawn)]));
        let readings = ["64: not seen of 2".to_owned(), "8' 0\": not seen of 3".to_owned()];
        assert_eq!(packs("64: 2, 8' 0\": 3"), BTreeMap::from([("doubles".to_owned(), readings.to_vec())]));
        assert!(packs("two at the door").is_empty() && packs("").is_empty());
        assert!(packs_of(Kind::Nailing, &mark(&[("packs", "64: 2")])).is_empty());
        let said = |drawn: &str| mark_fields(&mark(&[("packs", drawn)])).remove(4);
        assert_eq!((said("64: 2").id, said("64: 2").problem), ("packs", None));
        assert!(said("two at the door").problem.unwrap().contains("like 64: 2, 96: 3"));
        assert!(said("64: 90").problem.unwrap().contains("90"));
    }
}
