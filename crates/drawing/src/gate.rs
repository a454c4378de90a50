//! The path the machine sweeps through a gateway and round the corner behind it, from above.

use fitup_core::dimension::{Block, Swing, turned};
use fitup_core::item::View;
use fitup_core::plane::Point;
use fitup_core::quantity::Length;

use crate::dimension::{Along, state};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Look, Pen, Tone};
use crate::outline::{LaidShape, Weight, draw, lay};
use crate::scene::{FigureName, Node, Path, PathStep, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;

/// A turn to the left through a gateway.
#[derive(Debug, Clone, Copy)]
pub struct GateTurn<'a> {
    /// Width of the gateway.
    pub gate: Length,
    /// Radius the rear axle's centre turns on, metres.
    pub radius: f64,
    /// The machine's block over the rear axle.
    pub block: Block,
    /// What the turn sweeps.
    pub swept: &'a Swing,
}

/// How many places of the machine the swept path is drawn with, straight in to straight out.
const PLACES: u32 = 13;

/// The gateway and the path behind it, the places of the machine in a quarter turn, and the machine in the middle of it.
///
/// The machine comes from the left along x and turns to the left (up the sheet). Empty where the turn is
/// not finite.
pub fn gate(subject: &Subject, turn: &GateTurn, sheet: &Sheet) -> Scene {
    let (subject, gate) = (&subject.driven(), turn.gate);
    if !turn.radius.is_finite() {
        return Scene { width: sheet.sound_width(), height: 0.0, scale: 1.0, ..Scene::default() };
    }
    let places: Vec<[Point; 4]> =
        (0..PLACES).map(|i| corners(turn, quarter() * f64::from(i) / f64::from(PLACES - 1))).collect();
    let mut whole = Extent::NONE;
    for &corner in places.iter().flatten() {
        whole.take(corner);
    }
    // The turn begins when the rear end has passed the gate.
    let posts = [Point::new(turn.block.rear, gate.m() / 2.0), Point::new(turn.block.rear, -gate.m() / 2.0)];
    for &post in &posts {
        whole.take(post);
    }
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: 3.4 * l, right: l, top: l, bottom: 4.4 * l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Plan));
    let outlines = places.iter().map(|place| ink::polygon(Look::line(Pen::Ghost), &place.map(|p| map.at(p))));
    let swept: Vec<Node> = ring(turn, &map).into_iter().chain(outlines).collect();
    scene.nodes.push(ink::group(Target::Figure(FigureName::SwingOut), swept));
    scene.nodes.extend(treads(subject, turn.radius, &map));
    // The machine half way round.
    let half_way = |p: Point| turned(p, turn.radius, quarter() / 2.0);
    for item in lay(subject, View::Plan) {
        let shapes: Vec<LaidShape> = item.shapes.into_iter().map(|shape| shape.moved(half_way)).collect();
        scene.nodes.push(ink::group(Target::Item(item.item), draw(&shapes, &map, Weight::Light)));
    }
    scene.nodes.push(ink::group(Target::Ground, walls(posts, &map, sheet)));
    let beside = Along::Upright(1.6 * l);
    state(&mut scene, sheet, &map, FigureName::GateWidth, gate, [posts[1], posts[0]], beside);
    let width = Length::from_m(turn.swept.swept_width());
    scene.facts.push(Fact::Length(FigureName::PathWidth, width));
    scene.facts.push(Fact::Length(FigureName::SwingOut, Length::from_m(turn.swept.swing_out)));
    scene
}

const fn quarter() -> f64 {
    core::f64::consts::FRAC_PI_2
}

fn corners(turn: &GateTurn, heading: f64) -> [Point; 4] {
    let Block { rear, front, half_width } = turn.block;
    [(rear, half_width), (front, half_width), (front, -half_width), (rear, -half_width)]
        .map(|(x, y)| turned(Point::new(x, y), turn.radius, heading))
}

/// The ring between the outermost and the innermost circle of the turn.
fn ring(turn: &GateTurn, map: &Mapping) -> Vec<Node> {
    let (outer, inner) = (turn.swept.outer_radius, turn.swept.inner_radius);
    if !(outer.is_finite() && inner.is_finite()) {
        return Vec::new();
    }
    let centre = map.at(Point::new(0.0, turn.radius));
    let mut steps = ink::arc_steps(centre, map.length(outer), -quarter(), 0.0);
    let mut back = ink::arc_steps(centre, map.length(inner), 0.0, -quarter());
    if let Some(PathStep::Move(start)) = back.first().copied() {
        back[0] = PathStep::Line(start);
    }
    steps.extend(back);
    steps.push(PathStep::Close);
    let edges = [outer, inner].map(|r| ink::arc(Look::line(Pen::Accent), centre, map.length(r), -quarter(), 0.0));
    let area = Node::Path(Path { look: Look::fill(Tone::Area), steps });
    [area].into_iter().chain(edges).collect()
}

/// The wheels as plain rectangles, half way round.
fn treads(subject: &Subject, radius: f64, map: &Mapping) -> Vec<Node> {
    let wheels = subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default();
    let mut nodes = Vec::new();
    for wheel in wheels {
        let Some((track, width)) = wheel.track.zip(wheel.width) else { continue };
        for y in [track / 2.0, -track / 2.0] {
            let (r, w) = (wheel.radius, width / 2.0);
            let corners = [(-r, -w), (r, -w), (r, w), (-r, w)].map(|(dx, dy)| Point::new(wheel.x + dx, y + dy));
            let corners = corners.map(|p| map.at(turned(p, radius, quarter() / 2.0)));
            nodes.push(ink::polygon(Look::new(Pen::Thin, Tone::Tyre), &corners));
        }
    }
    nodes
}

/// Gate posts with the wall on either side of them.
fn walls(posts: [Point; 2], map: &Mapping, sheet: &Sheet) -> Vec<Node> {
    let thick = sheet.letters * 0.9;
    let [left, right] = posts.map(|p| map.at(p));
    let wall = |post: Point, edge: f64| {
        let corners = [
            Point::new(post.x - thick / 2.0, post.y),
            Point::new(post.x + thick / 2.0, post.y),
            Point::new(post.x + thick / 2.0, edge),
            Point::new(post.x - thick / 2.0, edge),
        ];
        ink::polygon(Look::new(Pen::Outline, Tone::Earth), &corners)
    };
    vec![wall(left, (left.y - 5.0 * thick).max(0.0)), wall(right, (right.y + 5.0 * thick).min(map.size.1))]
}
