//! Reads walls, line by line.

use measure::{Force, Length, LengthUnit, LineLoad, read_length, read_number};

use super::{BracedWall, BracedWallProblem, BracedWalls, MOST};

/// The longest name of a wall, and the longest mark.
const NAME: usize = 24;
const MARK: usize = 16;
/// The most pieces of a wall.
const PIECES: usize = 12;

/// What may stand between the commas of a line.
const TAKEN: &str = "a mark first, then walls 4', 6', high 8', push 2,400 lb, dead 180 plf, under Front above";

/// Reads walls. Lines end at a line's end or a semicolon; empty ones are passed over.
///
/// # Errors
/// Every line that is not understood, with what is wrong with it; where all are, every wall whose name or stack is not in
/// order.
///
/// ```
/// use bracing::braced_walls::read_braced_walls;
/// let walls = read_braced_walls(
///     "Front above: W1, walls 3' 0\", 4' 0\", high 8' 0\", push 2,000 lb\n\
///      Front below: W3, walls 3' 0\", 4' 0\", high 9' 0\", push 5,400 lb, dead 180 plf, under Front above",
/// )?;
/// assert_eq!(walls.as_slice()[1].push.pounds(), 5400.0);
/// assert_eq!(walls.stack(&walls.as_slice()[1]).len(), 2);
/// assert_eq!(read_braced_walls(&walls.to_string()), Ok(walls));
/// # Ok::<(), Vec<bracing::braced_walls::BracedWallProblem>>(())
/// ```
pub fn read_braced_walls(text: &str) -> Result<BracedWalls, Vec<BracedWallProblem>> {
    let lines = text.split(['\n', ';']).map(str::trim).enumerate().filter(|(_, line)| !line.is_empty());
    let (mut walls, mut problems) = (Vec::new(), Vec::new());
    // One more than is taken, so that it is said.
    for (index, text) in lines.take(MOST + 1) {
        match wall(text) {
            Ok(wall) => walls.push((index + 1, wall)),
            Err(problem) => problems.push(BracedWallProblem { line: index + 1, problem }),
        }
    }
    if problems.is_empty() { BracedWalls::of_lines(walls) } else { Err(problems) }
}

/// A wall while its line is read.
#[derive(Default)]
struct Draft {
    mark: Option<String>,
    pieces: Option<Vec<Length>>,
    height: Option<Length>,
    push: Option<Force>,
    dead: Option<LineLoad>,
    under: Option<String>,
}

fn wall(text: &str) -> Result<BracedWall, String> {
    let (name, rest) = text.split_once(':').ok_or_else(|| {
        format!("“{text}” was given; a name, a colon and the wall are taken, such as Front: P1, walls 4', 6', high 8', push 2,400 lb.")
    })?;
    let name = plain(name);
    if name.is_empty() || name.chars().count() > NAME || name.contains(',') {
        return Err(format!(
            "“{name}” was given; a name of one to {NAME} letters without a comma is taken before the colon."
        ));
    }
    let mut draft = Draft::default();
    let mut in_pieces = false;
    for (index, part) in parts(rest).iter().enumerate() {
        in_pieces = draft.take(part, (index == 0, in_pieces)).map_err(|problem| format!("{name}: {problem}"))?;
    }
    let missing = |what: &str, taken: &str| format!("{name}: {what} not given; {taken} is taken.");
    Ok(BracedWall {
        pieces: draft.pieces.ok_or_else(|| missing("its full-height pieces are", "walls 4', 6'"))?,
        height: draft.height.ok_or_else(|| missing("its height is", "high 8'"))?,
        push: draft.push.ok_or_else(|| missing("the push along it is", "push 2,400 lb"))?,
        dead: draft.dead.unwrap_or(LineLoad::ZERO),
        mark: draft.mark,
        under: draft.under,
        name,
    })
}

impl Draft {
    /// Takes what stands between two commas; says whether pieces may follow it.
    fn take(&mut self, part: &str, (first, in_pieces): (bool, bool)) -> Result<bool, String> {
        let (word, rest) = part.split_once(' ').unwrap_or((part, ""));
        let rest = rest.trim();
        match word.to_lowercase().as_str() {
            "walls" | "wall" => once(&mut self.pieces, part, vec![piece(rest)?])?,
            "high" => once(&mut self.height, part, length(rest, (4.0, 24.0))?)?,
            "push" => once(&mut self.push, part, Force::from_pounds(number(rest, POUNDS)?))?,
            "dead" => once(&mut self.dead, part, LineLoad::from_plf(number(rest, PLF)?))?,
            "under" if rest.is_empty() => return Err(format!("“{part}”: no name follows the word.")),
            "under" => once(&mut self.under, part, rest.to_owned())?,
            _ if in_pieces => self.another_piece(part)?,
            _ if first && part.chars().count() <= MARK => self.mark = Some(part.to_owned()),
            _ => return Err(format!("“{part}” was given; these are taken: {TAKEN}.")),
        }
        Ok(word.eq_ignore_ascii_case("walls") || word.eq_ignore_ascii_case("wall") || (in_pieces && !is_word(word)))
    }

    fn another_piece(&mut self, part: &str) -> Result<(), String> {
        let another = piece(part)?;
        let pieces = self.pieces.get_or_insert_default();
        if pieces.len() == PIECES {
            return Err(format!("to {PIECES} pieces of a wall are taken."));
        }
        pieces.push(another);
        Ok(())
    }
}

fn is_word(word: &str) -> bool {
    ["walls", "wall", "high", "push", "dead", "under"].iter().any(|one| one.eq_ignore_ascii_case(word))
}

fn once<T>(place: &mut Option<T>, part: &str, value: T) -> Result<(), String> {
    if place.replace(value).is_some() {
        return Err(format!("“{part}” was given after another of its kind; each word is taken once."));
    }
    Ok(())
}

/// Words with one space between them.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What stands between commas; the comma of `5,400` parts nothing.
fn parts(text: &str) -> Vec<String> {
    let mut parts: Vec<String> = Vec::new();
    for part in text.split(',') {
        let thousands = part.chars().take_while(char::is_ascii_digit).count() == 3;
        match parts.last_mut().filter(|last| thousands && last.ends_with(|end: char| end.is_ascii_digit())) {
            Some(last) => last.push_str(part.trim_end()),
            None => parts.push(plain(part)),
        }
    }
    parts.retain(|part| !part.is_empty());
    parts
}

fn piece(text: &str) -> Result<Length, String> {
    length(text, (0.5, 100.0))
}

fn length(text: &str, (least, most): (f64, f64)) -> Result<Length, String> {
    let read = read_length(text, LengthUnit::Feet).map_err(|problem| problem.to_string())?.length;
    if (least..=most).contains(&read.feet()) {
        return Ok(read);
    }
    Err(format!("{text} was given; from {least} to {most} ft is taken."))
}

/// A number's units, and the least and the most of it in words and digits.
type Taken = (&'static [&'static str], (f64, f64), &'static str);

const POUNDS: Taken = (&["lb", "lbs", "pounds"], (1.0, 200_000.0), "a push from 1 to 200,000 lb");
const PLF: Taken = (&["plf", "lb/ft"], (0.0, 20_000.0), "a dead load to 20,000 plf");

fn number(text: &str, (units, (least, most), taken): Taken) -> Result<f64, String> {
    let read = read_number(text, units).map_err(|problem| problem.to_string())?;
    if (least..=most).contains(&read) { Ok(read) } else { Err(format!("{text} was given; {taken} is taken.")) }
}
