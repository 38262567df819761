//! A member on its supports: its loads, and below it the shear, the moment and the sag with their peaks.

use framing::member::MemberKind;
use framing::quick::QuickKind as _;
use framing::quick::reply::{DrawnBeam, QuickReply};
use framing::words;
use measure::Length;
use members::beam::{Load, Section};
use members::flexure::{Case, Cut};

use crate::markup::Act;
use crate::pen::{Pen, circle, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Heights on paper, in pixels of a phone: the arrows of loads, the figures over them, the room from the member to the
/// curves, and each curve with its figures.
const ARROWS: f64 = 26.0;
const FIGURES: f64 = 18.0;
const TO_CURVES: f64 = 58.0;
const CURVE: f64 = 42.0;

pub(super) fn picture(kind: MemberKind, drawn: &DrawnBeam, reply: &QuickReply) -> Scene {
    let length = drawn.length.inches().max(1.0);
    let mut pen = Pen::new((0.0, 0.0), (length, 0.0));
    let depth = drawn.depth.inches().clamp(pen.paper(7.0), pen.paper(16.0));
    let curves = [Curve::shear(drawn), Curve::moment(drawn), Curve::sag(drawn)];
    let lines = load_lines(drawn);
    let above = ARROWS + FIGURES * (lines.len() as f64) + 6.0;
    pen.margin(24.0, above, TO_CURVES + CURVE * curves.len() as f64 + depth / pen.paper(1.0));
    loads(&mut pen, drawn, &lines, length);
    pen.shape(rectangle(0.0, 0.0, length, depth), Weight::Cut, Ink::Ink, true);
    supports(&mut pen, drawn, reply, depth, length);
    cut(&mut pen, drawn, depth);
    dimensions(&mut pen, kind, drawn, depth, length);
    let mut alt = format!("The member on {} supports. {}.", drawn.supports.len(), lines.join("; "));
    let (first, high) = (depth + pen.paper(TO_CURVES), pen.paper(CURVE));
    for (index, curve) in curves.iter().enumerate() {
        curve.draw(&mut pen, (first + high * index as f64, high), length);
        alt.push_str(&format!(" {}: {}.", curve.name, curve.peaks_in_words()));
    }
    let top = pen.paper(ARROWS);
    pen.pick((0.0, -top), (length, first), Act::Bring(kind.first()), "Its span".to_owned());
    pen.scene(alt)
}

/// What lies along it, by kind: what presses on one line, wind on another.
fn load_lines(drawn: &DrawnBeam) -> Vec<String> {
    let mut kinds: Vec<(Case, f64)> = Vec::new();
    for one in &drawn.loads {
        let most = size(&one.load);
        match kinds.iter_mut().find(|(case, _)| *case == one.case) {
            Some((_, held)) => *held = held.max(most),
            None if most > 0.0 => kinds.push((one.case, most)),
            None => {}
        }
    }
    let wind = |case: Case| matches!(case, Case::WindDown | Case::WindUp);
    let line = |windy: bool| {
        let of_line = kinds.iter().filter(|(case, _)| wind(*case) == windy);
        let says: Vec<String> = of_line
            .map(|(case, most)| {
                let sign = if *case == Case::WindUp { "\u{2212}" } else { "" };
                format!("{} {sign}{}", case.of_combination().symbol(), words::figure(most.ceil()))
            })
            .collect();
        (!says.is_empty()).then(|| format!("{} plf", says.join(", ")))
    };
    [line(false), line(true)].into_iter().flatten().collect()
}

/// Loads as arrows over the member; a point load with its figure.
fn loads(pen: &mut Pen, drawn: &DrawnBeam, lines: &[String], length: f64) {
    let (top, foot) = (-pen.paper(ARROWS), -pen.paper(3.0));
    // One even load, or a slope between its ends, as a shape; a row of arrows says that it presses.
    let largest = drawn.loads.iter().map(|one| size(&one.load)).fold(1e-9, f64::max);
    for one in drawn.loads.iter().filter(|one| one.case != Case::WindUp) {
        if let Load::Distributed { from, to, start, end } = one.load {
            let high = |load: measure::LineLoad| top * (0.45 + 0.55 * load.plf().abs() / largest);
            let flat = |load: measure::LineLoad| if load.plf() == 0.0 { foot } else { high(load) };
            pen.line((from.inches(), flat(start)), (to.inches(), flat(end)), Weight::Fine, Ink::Ink);
        }
    }
    const GAPS: u32 = 7;
    for index in 0..=GAPS {
        let x = length * f64::from(index) / f64::from(GAPS);
        let from = (x, top * 0.9);
        pen.marks.push(Mark::Arrow { from, to: (x, foot), figure: String::new(), ink: Ink::Ink });
    }
    for one in &drawn.loads {
        if let Load::Point { at, force } = one.load {
            let x = at.inches();
            let (from, to) = if one.case == Case::WindUp { (foot, top * 1.2) } else { (top * 1.2, foot) };
            pen.marks.push(Mark::Arrow { from: (x, from), to: (x, to), figure: String::new(), ink: Ink::Chalk });
            let text =
                format!("{} {} lb", one.case.of_combination().symbol(), words::figure(force.pounds().abs().ceil()));
            let half = pen.paper(30.0);
            let y = pen.paper(ARROWS * 0.5);
            pen.label((x.clamp(half, (length - half).max(half)), -y), &text);
        }
    }
    for (index, line) in lines.iter().rev().enumerate() {
        let y = pen.paper(ARROWS + FIGURES * (0.7 + index as f64));
        pen.label((length / 2.0, -y), line);
    }
}

fn size(load: &Load) -> f64 {
    match *load {
        Load::Distributed { start, end, .. } => start.plf().abs().max(end.plf().abs()),
        _ => 0.0,
    }
}

/// A triangle under each support, with what it gives.
fn supports(pen: &mut Pen, drawn: &DrawnBeam, reply: &QuickReply, depth: f64, length: f64) {
    let (half, high) = (pen.paper(5.0), pen.paper(8.0));
    for (index, at) in drawn.supports.iter().enumerate() {
        let x = at.inches();
        pen.shape(vec![(x, depth), (x + half, depth + high), (x - half, depth + high)], Weight::Seen, Ink::Ink, false);
        let Some(support) = reply.supports.get(index) else { continue };
        let most = words::figure(support.most_lb.ceil());
        let text = if support.least_lb < -0.5 {
            format!("{most} / \u{2212}{}", words::figure((-support.least_lb).ceil()))
        } else {
            format!("{most} lb")
        };
        let room = pen.paper(4.4 * text.chars().count() as f64) - pen.paper(20.0);
        let y = depth + high + pen.paper(10.0);
        pen.label((x.clamp(room, (length - room).max(room)), y), &text);
    }
}

fn cut(pen: &mut Pen, drawn: &DrawnBeam, depth: f64) {
    let scale = depth / drawn.depth.inches().max(1e-6);
    match drawn.cut {
        Some(Cut::Notch { at, length, depth: notch, edge, .. }) => {
            let (left, right) = (at.inches(), (at + length).inches().max(at.inches() + pen.paper(4.0)));
            let cut = notch.inches() * scale;
            let (top, bottom) = if edge == members::flexure::Edge::Top { (0.0, cut) } else { (depth - cut, depth) };
            pen.shape(rectangle(left, top, right, bottom), Weight::Seen, Ink::Chalk, false);
        }
        Some(Cut::Hole { at, diameter, to_edge }) => {
            let radius = diameter.inches() * scale / 2.0;
            pen.shape(
                circle((at.inches(), to_edge.inches() * scale + radius), radius),
                Weight::Seen,
                Ink::Chalk,
                false,
            );
        }
        None => {}
    }
}

fn dimensions(pen: &mut Pen, kind: MemberKind, drawn: &DrawnBeam, depth: f64, length: f64) {
    let mut ends = vec![0.0];
    ends.extend(drawn.supports.iter().map(|at| at.inches()));
    ends.push(drawn.length.inches());
    let y = depth + pen.paper(44.0);
    for pair in ends.windows(2) {
        if pair[1] - pair[0] > length * 0.01 {
            let figure = words::length(Length::from_inches(pair[1] - pair[0]));
            pen.dimension((pair[0], y), (pair[1], y), &figure, Some(kind.first()));
        }
    }
}

/// A curve along the member, with its peaks.
struct Curve {
    name: &'static str,
    /// Place and value, in the unit of `unit`.
    points: Vec<(f64, f64)>,
    unit: &'static str,
    /// Down on the paper is positive: sag is drawn as it hangs.
    down: bool,
}

impl Curve {
    fn of(
        name: &'static str,
        unit: &'static str,
        down: bool,
        drawn: &DrawnBeam,
        value: impl Fn(&Section) -> f64,
    ) -> Self {
        let points = drawn.diagram.iter().map(|section| (section.at.inches(), value(section))).collect();
        Self { name, points, unit, down }
    }

    fn shear(drawn: &DrawnBeam) -> Self {
        Self::of("Shear", "lb", false, drawn, |section| section.shear.pounds())
    }

    fn moment(drawn: &DrawnBeam) -> Self {
        Self::of("Moment", "ft-lb", true, drawn, |section| section.moment.foot_pounds())
    }

    fn sag(drawn: &DrawnBeam) -> Self {
        Self::of("Sag", "in", true, drawn, |section| section.deflection.inches())
    }

    /// The greatest and the least.
    fn peaks(&self) -> Vec<(f64, f64)> {
        let most = self.points.iter().copied().reduce(|a, b| if b.1 > a.1 { b } else { a });
        let least = self.points.iter().copied().reduce(|a, b| if b.1 < a.1 { b } else { a });
        let scale = self.scale();
        let mut peaks: Vec<(f64, f64)> =
            most.into_iter().chain(least).filter(|(_, value)| value.abs() > scale * 0.02).collect();
        peaks.dedup();
        peaks
    }

    fn scale(&self) -> f64 {
        self.points.iter().map(|(_, value)| value.abs()).fold(1e-12, f64::max)
    }

    fn written(&self, value: f64) -> String {
        let figure = if self.unit == "in" { format!("{:.2}", value.abs()) } else { words::figure(value.abs().ceil()) };
        format!("{}{figure} {}", if value < 0.0 { "\u{2212}" } else { "" }, self.unit)
    }

    fn peaks_in_words(&self) -> String {
        let one = |(at, value): &(f64, f64)| {
            format!("{} at {}", self.written(*value), words::length(Length::from_inches(*at)))
        };
        let peaks: Vec<String> = self.peaks().iter().map(one).collect();
        if peaks.is_empty() { "none".to_owned() } else { peaks.join(", ") }
    }

    fn draw(&self, pen: &mut Pen, (top, height): (f64, f64), length: f64) {
        let high = self.points.iter().map(|(_, value)| *value).fold(0.0, f64::max);
        let low = self.points.iter().map(|(_, value)| *value).fold(0.0, f64::min);
        let room = (high - low).max(self.scale() * 0.05);
        let (edge, curve) = (height * 0.22, height * 0.60);
        let scale = curve / room;
        let sign = if self.down { 1.0 } else { -1.0 };
        // Where nothing is, inside the strip.
        let zero = top + edge + if self.down { -low * scale } else { high * scale };
        let place = |(at, value): (f64, f64)| (at, zero + sign * value * scale);
        let mut outline = vec![(0.0, zero)];
        outline.extend(self.points.iter().map(|point| place(*point)));
        outline.push((length, zero));
        pen.shape(outline, Weight::Seen, Ink::Ink, true);
        pen.line((0.0, zero), (length, zero), Weight::Fine, Ink::Ink);
        let peaks = self.peaks();
        // The name where no peak's figure is: in the middle over the shear, at the left over the others.
        let at_ends = peaks.iter().all(|(at, _)| *at < length * 0.2 || *at > length * 0.8);
        let x = if at_ends { length / 2.0 } else { pen.paper(22.0) };
        let y = top + edge - pen.paper(4.0);
        pen.label((x, y), self.name);
        for (at, value) in peaks {
            let (x, y) = place((at, value));
            let figure = self.written(value);
            let place = words::length(Length::from_inches(at));
            let text = if at_ends { figure } else { format!("{figure} at {place}") };
            let half = pen.paper(4.4 * text.chars().count() as f64);
            let x = x.clamp(half.min(length / 2.0), (length - half).max(length / 2.0));
            let inward = if (value > 0.0) == self.down { -1.0 } else { 1.0 };
            pen.label((x, y + inward * pen.paper(9.0)), &text);
        }
    }
}
