//! Holes to drill, drawn as large as they are: to be laid on the plate and centre-punched through the paper.

use fitup_core::item::Hole;
use fitup_core::plane::Point;

use crate::dimension::{Along, Linear, linear};
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::room::Lettered;
use crate::scene::{Anchor, Node, Scene};
use crate::sheet::Labels;

/// Size of the letters, millimetres (ISO 3098: 2.5 is its least).
const LETTERS: f64 = 3.0;
/// Room round the holes, millimetres, without that for dimensions.
const RIM: f64 = 8.0;
/// From one dimension line to the next, millimetres.
const ROW: f64 = 7.0;
/// How far a centre line runs over its hole, millimetres.
const OVER: f64 = 3.0;
/// Length of the scale bar, millimetres.
pub const BAR: f64 = 100.0;

/// A plate's holes as one looks at its face, and how many of the last of them are still to be drilled.
#[derive(Debug, Clone, PartialEq)]
pub struct Plate<'a> {
    /// The holes, those to be drilled last.
    pub holes: &'a [Hole],
    /// How many are to be drilled.
    pub drill: usize,
    /// The holes are given as seen through the plate's back.
    pub mirrored: bool,
}

/// The plate at 1:1. Dimensions run from the hole that is there already and lies lowest at the left, or else from the first to
/// be drilled.
pub fn template(plate: &Plate, labels: &dyn Labels) -> Scene {
    let across = if plate.mirrored { -1000.0 } else { 1000.0 };
    let places: Vec<Point> =
        plate.holes.iter().map(|hole| Point::new(hole.u.value.m() * across, -hole.v.value.mm())).collect();
    let radius = |hole: &Hole| hole.diameter.value.mm() / 2.0 + hole.slot.map_or(0.0, |slot| slot.travel.mm() / 2.0);
    let reach = plate.holes.iter().map(radius).fold(0.0, f64::max) + OVER + RIM;
    let least = |of: fn(&Point) -> f64| places.iter().map(of).fold(f64::INFINITY, f64::min);
    let most = |of: fn(&Point) -> f64| places.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
    let there = plate.holes.len().saturating_sub(plate.drill);
    let (known, fresh) = places.split_at(there);
    let lowest = |a: &&Point, b: &&Point| b.y.total_cmp(&a.y).then(a.x.total_cmp(&b.x));
    let Some(&datum) = known.iter().min_by(lowest).or(fresh.first()) else { return Scene::default() };
    let columns = apart(fresh.iter().map(|at| at.x), datum.x);
    let rows = apart(fresh.iter().map(|at| at.y), datum.y);
    let (beside, below) = (ROW * (rows.len() as f64 + 1.5), ROW * (columns.len() as f64 + 0.5));
    let shift = Point::new(reach + beside - least(|p| p.x), reach - least(|p| p.y));
    let size = (shift.x + most(|p| p.x) + reach, shift.y + most(|p| p.y) + reach + below);
    let mut scene = Scene { width: size.0, height: size.1, scale: 1.0, ..Scene::default() };
    for (at, (hole, place)) in plate.holes.iter().zip(&places).enumerate() {
        scene.nodes.extend(drawn(hole, *place + shift, at >= there, labels));
    }
    let (low, left) = (shift.y + most(|p| p.y) + reach - RIM, reach + beside - (reach - RIM));
    let dimension = |from, to, line, value: f64| Linear {
        from,
        to,
        line,
        words: labels.length(fitup_core::quantity::Length::from_mm(value.abs())),
        letters: LETTERS,
    };
    for (row, x) in columns.into_iter().enumerate() {
        let (from, to) = (datum + shift, Point::new(x, datum.y) + shift);
        let line = Along::Level(low + ROW * (row as f64 + 1.0));
        let nodes = linear(&dimension(from, to, line, x - datum.x), &Lettered::of(&scene));
        scene.nodes.extend(nodes);
    }
    for (column, y) in rows.into_iter().enumerate() {
        let (from, to) = (datum + shift, Point::new(datum.x, y) + shift);
        let line = Along::Upright(left - ROW * (column as f64 + 1.0));
        let nodes = linear(&dimension(from, to, line, y - datum.y), &Lettered::of(&scene));
        scene.nodes.extend(nodes);
    }
    scene
}

/// The bar that tells whether a sheet was printed at its size: exactly [`BAR`] long, with `words` beside it.
pub fn scale_bar(words: &str) -> Scene {
    let (left, line) = (2.0, 6.0);
    let mut scene = Scene { width: BAR + 30.0, height: 10.0, scale: 1.0, ..Scene::default() };
    let look = Look::line(Pen::Outline);
    scene.nodes.push(ink::line(look, Point::new(left, line), Point::new(left + BAR, line)));
    for tenth in 0..=10_u8 {
        let (x, up) = (left + BAR * f64::from(tenth) / 10.0, if tenth % 5 == 0 { 4.0 } else { 2.0 });
        scene.nodes.push(ink::line(Look::line(Pen::Thin), Point::new(x, line), Point::new(x, line - up)));
    }
    scene.nodes.push(ink::text(Letter::Label, Point::new(left + BAR + 4.0, line), Anchor::Start, LETTERS, words));
    scene
}

/// The places that are not the datum's, each once, nearest first.
fn apart(places: impl Iterator<Item = f64>, datum: f64) -> Vec<f64> {
    /// Two places nearer than this are one, millimetres.
    const ONE: f64 = 0.05;
    let mut apart: Vec<f64> = places.filter(|place| (place - datum).abs() > ONE).collect();
    apart.sort_by(|a, b| (a - datum).abs().total_cmp(&(b - datum).abs()).then(a.total_cmp(b)));
    apart.dedup_by(|a, b| (*a - *b).abs() <= ONE);
    apart
}

/// A hole with its centre lines: one to be drilled thick, with its diameter.
fn drawn(hole: &Hole, at: Point, is_fresh: bool, labels: &dyn Labels) -> Vec<Node> {
    let radius = hole.diameter.value.mm() / 2.0;
    let reach = radius + OVER;
    let look = if is_fresh { Look::new(Pen::Outline, Tone::Paper) } else { Look::line(Pen::Hidden) };
    let mut nodes = vec![ink::circle(look, at, radius)];
    for arm in [Point::new(reach, 0.0), Point::new(0.0, reach)] {
        nodes.push(ink::line(Look::line(Pen::Centre), at - arm, at + arm));
    }
    if is_fresh {
        let words = format!("⌀ {}", labels.length(hole.diameter.value));
        nodes.push(ink::text(
            Letter::Label,
            at + Point::new(radius + 1.5, -radius - 1.0),
            Anchor::Start,
            LETTERS,
            words,
        ));
    }
    nodes
}

#[cfg(test)]
mod tests {
    use fitup_core::quantity::Length;

    use super::*;
    use crate::plain::Plain;
    use crate::scene::PathStep;

    fn hole(u: f64, v: f64) -> Hole {
        Hole::drawn(Length::from_mm(u), Length::from_mm(v), Length::from_mm(13.0))
    }

    /// Centres and radii of the circles, in the order drawn.
    fn circles(scene: &Scene) -> Vec<(Point, f64)> {
        let circle =
            |node: &Node| if let Node::Circle(circle) = node { Some((circle.centre, circle.radius)) } else { None };
        scene.nodes.iter().filter_map(circle).collect()
    }

    #[test]
    fn holes_lie_as_far_apart_on_the_paper_as_on_the_plate_and_above_stays_above() {
        let holes = [hole(0.0, 0.0), hole(160.0, 0.0), hole(160.0, 90.0)];
        let scene = template(&Plate { holes: &holes, drill: 1, mirrored: false }, &Plain);
        let drawn = circles(&scene);
        assert_eq!(
            (drawn[1].0 - drawn[0].0, drawn[2].0 - drawn[1].0),
            (Point::new(160.0, 0.0), Point::new(0.0, -90.0))
        );
        assert!(drawn.iter().all(|&(_, radius)| (radius - 6.5).abs() < 1e-12));
        assert_eq!(scene.words(), ["⌀ 13 mm", "160 mm", "90 mm"]);
        assert!((scene.scale - 1.0).abs() < 1e-12);
    }

    #[test]
    fn seen_from_the_other_face_left_and_right_change_places() {
        let holes = [hole(0.0, 0.0), hole(40.0, 10.0)];
        let scene = template(&Plate { holes: &holes, drill: 1, mirrored: true }, &Plain);
        let drawn = circles(&scene);
        assert_eq!(drawn[1].0 - drawn[0].0, Point::new(-40.0, -10.0));
    }

    #[test]
    fn no_hole_at_all_is_an_empty_sheet_and_one_alone_is_its_own_datum() {
        assert!(template(&Plate { holes: &[], drill: 0, mirrored: false }, &Plain).nodes.is_empty());
        let alone = template(&Plate { holes: &[hole(3.0, 4.0)], drill: 1, mirrored: false }, &Plain);
        assert_eq!(alone.words(), ["⌀ 13 mm"]);
    }

    #[test]
    fn the_bar_is_a_hundred_millimetres_long() {
        let scene = scale_bar("100 mm");
        let Some(Node::Path(path)) = scene.nodes.first() else { panic!("the bar comes first") };
        let [PathStep::Move(from), PathStep::Line(to)] = path.steps[..] else { panic!("it is one line") };
        assert!((to.x - from.x - 100.0).abs() < 1e-12 && (to.y - from.y).abs() < 1e-12);
    }
}
