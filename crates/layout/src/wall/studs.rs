//! What stands from plate to plate: first what has its place, then the layout's studs around it.

use measure::Length;

use super::{BACKING, Backing, End, Part, Partition, Piece, Settled, Span, Wall, WallError, settle, solids};

/// A piece that stands on the plates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Standing {
    pub(super) part: Part,
    pub(super) along: Span,
    /// The layout center that it stands for.
    pub(super) layout: Option<Length>,
}

impl Standing {
    const fn fixed(part: Part, along: Span) -> Self {
        Self { part, along, layout: None }
    }
}

pub(super) fn spans(standing: &[Standing]) -> Vec<Span> {
    standing.iter().map(|stood| stood.along).collect()
}

/// Every full-height stud, flat stud and jack of the wall, ascending.
pub(super) fn stand(wall: &Wall) -> Result<Vec<Standing>, WallError> {
    let mut standing = ends(wall)?;
    openings(wall, &mut standing)?;
    posts(wall, &mut standing)?;
    hold_downs(wall, &mut standing)?;
    partitions(wall, &mut standing);
    layout(wall, &mut standing);
    standing.sort_by(|a, b| a.along.from.inches().total_cmp(&b.along.from.inches()));
    Ok(standing)
}

fn ends(wall: &Wall) -> Result<Vec<Standing>, WallError> {
    let (thickness, depth) = (wall.stud.thickness, wall.stud.depth);
    let of = |end: &End| {
        let mut studs = vec![Standing::fixed(Part::EndStud, Span::new(Length::ZERO, thickness))];
        match *end {
            End::OneStud | End::TwoStudsAndClips => {}
            End::ThreeStuds { meets } => {
                // Half an inch lies behind the other wall, and an inch backs its wallboard.
                let from = (meets + BACKING - thickness).max(thickness);
                studs.push(Standing::fixed(Part::CornerStud, Span::new(from, from + thickness)));
            }
            End::FlatStud { meets } => {
                let from = (meets + thickness - depth).max(thickness);
                studs.push(Standing::fixed(Part::FlatStud, Span::new(from, from + depth)));
            }
        }
        studs
    };
    let near = of(&wall.ends[0]);
    let far = of(&wall.ends[1]).into_iter().map(|stud| Standing { along: stud.along.mirrored(wall.length), ..stud });
    let both: Vec<Standing> = near.iter().copied().chain(far.clone()).collect();
    let meet = far.into_iter().any(|far| near.iter().any(|near| near.along.overlaps(far.along)));
    if !meet {
        return Ok(both);
    }
    let meets = wall.ends.iter().find_map(|end| match *end {
        End::ThreeStuds { meets } | End::FlatStud { meets } => Some(meets),
        _ => None,
    });
    Err(WallError::Corner { meets: meets.unwrap_or(depth) })
}

fn openings(wall: &Wall, standing: &mut Vec<Standing>) -> Result<(), WallError> {
    let thickness = wall.stud.thickness;
    for (at, opening) in wall.openings.iter().enumerate() {
        let framed = opening.framed(thickness);
        let side = opening.from - framed.from;
        if let Some(met) = standing.iter().find(|stood| stood.along.overlaps(framed)) {
            let nearest = if met.along.centre() < framed.centre() {
                met.along.to + side
            } else {
                met.along.from - side - opening.width
            };
            return Err(WallError::OpeningMeets { opening: at, from: opening.from, nearest });
        }
    }
    for opening in &wall.openings {
        let (framed, headed) = (opening.framed(thickness), opening.between_kings(thickness));
        for ply in 0..opening.kings {
            let near =
                Span::new(framed.from + thickness * f64::from(ply), framed.from + thickness * f64::from(ply + 1));
            let far = Span::new(headed.to + thickness * f64::from(ply), headed.to + thickness * f64::from(ply + 1));
            standing.extend([near, far].map(|along| Standing::fixed(Part::King, along)));
        }
        for ply in 0..opening.jacks {
            let near =
                Span::new(headed.from + thickness * f64::from(ply), headed.from + thickness * f64::from(ply + 1));
            let rough = opening.rough();
            let far = Span::new(rough.to + thickness * f64::from(ply), rough.to + thickness * f64::from(ply + 1));
            standing.extend([near, far].map(|along| Standing::fixed(Part::Jack, along)));
        }
    }
    Ok(())
}

/// What is taken on the plates: studs, and openings from king to king.
fn taken(wall: &Wall, standing: &[Standing]) -> Vec<Span> {
    let openings = wall.openings.iter().map(|opening| opening.framed(wall.stud.thickness));
    standing.iter().map(|stood| stood.along).chain(openings).collect()
}

fn posts(wall: &Wall, standing: &mut Vec<Standing>) -> Result<(), WallError> {
    let thickness = wall.stud.thickness;
    for (at, post) in wall.posts.iter().enumerate() {
        let width = thickness * f64::from(post.plies.max(1));
        let pack = Span::about(post.centre, width);
        let taken = solids(taken(wall, standing));
        let on_wall = Span::new(Length::ZERO, wall.length).holds(pack);
        if post.plies == 0 || !on_wall || taken.iter().any(|span| span.overlaps(pack)) {
            let free = |centre: &Length| {
                let pack = Span::about(*centre, width);
                Span::new(Length::ZERO, wall.length).holds(pack) && !taken.iter().any(|span| span.overlaps(pack))
            };
            let beside = taken.iter().flat_map(|span| [span.from - width / 2.0, span.to + width / 2.0]).filter(free);
            let off = |centre: &Length| (*centre - post.centre).abs().inches();
            let nearest = beside.min_by(|a, b| off(a).total_cmp(&off(b))).unwrap_or(wall.length / 2.0);
            return Err(WallError::Post { post: at, given: post.centre, nearest });
        }
        standing.extend((0..post.plies).map(|ply| {
            let from = pack.from + thickness * f64::from(ply);
            Standing::fixed(Part::PostStud, Span::new(from, from + thickness))
        }));
    }
    Ok(())
}

fn hold_downs(wall: &Wall, standing: &mut Vec<Standing>) -> Result<(), WallError> {
    for (at, braced) in wall.braced.iter().enumerate() {
        let refused = || WallError::Braced { piece: at, from: braced.from, to: braced.to };
        let near = pack_inward(wall, standing, Span::new(braced.from, braced.to), braced.plies).ok_or_else(refused)?;
        standing.extend(near);
        let seen_from_far: Vec<Standing> =
            standing.iter().map(|stood| Standing { along: stood.along.mirrored(wall.length), ..*stood }).collect();
        let mirrored = Span::new(braced.from, braced.to).mirrored(wall.length);
        let far = pack_inward(wall, &seen_from_far, mirrored, braced.plies).ok_or_else(refused)?;
        standing.extend(far.into_iter().map(|stood| Standing { along: stood.along.mirrored(wall.length), ..stood }));
    }
    Ok(())
}

/// Studs to add so that so many full-height ones stand together from the near end of a piece inward. Full-height studs
/// that are met count; jacks and flat studs are passed. None where they do not fit.
fn pack_inward(wall: &Wall, standing: &[Standing], piece: Span, plies: u8) -> Option<Vec<Standing>> {
    let thickness = wall.stud.thickness;
    let (mut at, mut there, mut added) = (piece.from, 0, Vec::new());
    // Kings and jacks beside an opening stand outside of the opening, within the piece.
    while there < plies {
        let ply = Span::new(at, at + thickness);
        if !piece.holds(ply) {
            return None;
        }
        match standing.iter().filter(|stood| stood.along.overlaps(ply)).map(|stood| (stood.along.to, stood.part)).next()
        {
            Some((to, part)) => {
                there += u8::from(part.is_full_height());
                at = to;
            }
            None => {
                there += 1;
                added.push(Standing::fixed(Part::HoldDownStud, ply));
                at = ply.to;
            }
        }
    }
    Some(added)
}

/// Partition studs and flat backing, where nothing stands yet; what stands there may back the wallboard as well.
fn partitions(wall: &Wall, standing: &mut Vec<Standing>) {
    let whole = Span::new(Length::ZERO, wall.length);
    for partition in &wall.partitions {
        for (part, along) in backing_studs(partition, wall.stud.thickness) {
            if whole.holds(along) && !taken(wall, standing).iter().any(|span| span.overlaps(along)) {
                standing.push(Standing::fixed(part, along));
            }
        }
    }
}

fn backing_studs(partition: &Partition, thickness: Length) -> Vec<(Part, Span)> {
    let Span { from, to } = partition.meets();
    match partition.backing {
        Backing::TwoStudsAndBlocks => {
            let (near, far) = (Span::new(from - thickness, from), Span::new(to, to + thickness));
            vec![(Part::PartitionStud, near), (Part::PartitionStud, far)]
        }
        Backing::FlatStud(width) => vec![(Part::FlatStud, Span::about(partition.centre, width))],
        Backing::Ladder => Vec::new(),
    }
}

fn layout(wall: &Wall, standing: &mut Vec<Standing>) {
    let thickness = wall.stud.thickness;
    for (_, mark) in wall.layout.centres(wall.length, thickness) {
        let within = |span: Span| span.from < mark && mark < span.to;
        if wall.openings.iter().any(|opening| within(opening.between_kings(thickness))) {
            continue;
        }
        if let Settled::At(centre) = settle(mark, thickness, &spans(standing), &taken(wall, standing)) {
            let along = Span::about(centre, thickness);
            standing.push(Standing { part: Part::Stud, along, layout: Some(mark) });
        }
    }
}

/// The elevation of what stands: jacks to their header, the rest from plate to plate.
pub(super) fn pieces(wall: &Wall, standing: &[Standing]) -> Vec<Piece> {
    let (plate, top) = (wall.heights.plate, wall.heights.stud_top());
    let head = |along: Span| {
        let of = wall.openings.iter().find(|opening| opening.between_kings(wall.stud.thickness).holds(along));
        of.map_or(top, |opening| opening.head)
    };
    let piece = |stood: &Standing| {
        let to = if stood.part == Part::Jack { head(stood.along) } else { top };
        Piece::standing(stood.part, stood.along, Span::new(plate, to))
    };
    standing.iter().map(piece).collect()
}

/// Posts, and stacks of jacks under headers' ends.
pub(super) fn carried_down(wall: &Wall) -> Vec<Span> {
    let thickness = wall.stud.thickness;
    let posts = wall.posts.iter().map(|post| Span::about(post.centre, thickness * f64::from(post.plies)));
    let jacks = wall.openings.iter().filter(|opening| opening.jacks > 0).flat_map(|opening| {
        let (headed, rough) = (opening.between_kings(thickness), opening.rough());
        [Span::new(headed.from, rough.from), Span::new(rough.to, headed.to)]
    });
    let mut down: Vec<Span> = posts.chain(jacks).collect();
    down.sort_by(|a, b| a.from.inches().total_cmp(&b.from.inches()));
    down
}
