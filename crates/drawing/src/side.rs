//! The machine from its right-hand side, to scale, with its dimensions.

use fitup_core::finding::Verdict;
use fitup_core::fit::{Answer, Footprint};
use fitup_core::item::View;
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length};

use crate::clash::clashes;
use crate::dimension::{Along, state};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Look, Pen};
use crate::marker;
use crate::outline::{Laid, Weight, draw, extent, lay, wheels};
use crate::scene::{FigureName, Node, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;
use crate::wedge::{End, Wedge, wedge};

/// Distance between rows of dimensions, in letter sizes.
const ROW: f64 = 2.7;

/// Width of the sheet, in letter sizes, from which the overhangs stand beside the wheelbase: on a
/// narrower one their figures would run into each other.
const CHAIN_WIDTH: f64 = 45.0;

/// The side view of a build: outlines, ground, dimensions, departure wedge and joint markers.
///
/// `answer` gives the figures and the verdicts; without one the shapes stand alone. `ghost` lies
/// beneath, to compare with.
pub fn side(subject: &Subject, answer: Option<&Answer>, ghost: Option<&Subject>, sheet: &Sheet) -> Scene {
    let laid = lay(subject, View::Side);
    let ghost_laid = ghost.map(|ghost| lay(ghost, View::Side)).unwrap_or_default();
    let mut whole = whole_extent(subject, &laid);
    if let Some(ghost) = ghost {
        whole.join(&whole_extent(ghost, &ghost_laid));
    }
    whole.low = whole.low.min(0.0);
    let map = Mapping::fit(whole, margins(sheet, answer), sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Side));
    if let Some(ghost) = ghost {
        scene.nodes.push(ink::group(Target::Ghost, ghost_nodes(ghost, &ghost_laid, &map)));
        scene.facts.push(Fact::Ghost);
    }
    scene.nodes.push(ink::group(Target::Ground, vec![ground(&map, sheet)]));
    for item in &laid {
        scene.nodes.push(ink::group(Target::Item(item.item), draw(&item.shapes, &map, Weight::Full)));
        let span = extent(&item.shapes);
        if span.is_some() {
            scene.facts.push(Fact::Item(item.item, Length::from_m(span.left), Length::from_m(span.right)));
        }
    }
    scene.nodes.extend(wheels(subject, View::Side, &map, Weight::Full));
    if let Some(answer) = answer {
        if sheet.has_dimensions() {
            // The wedges first: their labels have the fewest places to stand.
            angles(&mut scene, subject, &answer.footprint, &map, sheet);
            figures(&mut scene, subject, &answer.footprint, whole, &map, sheet);
        }
        if sheet.has_markers() {
            let clashes = clashes(subject, answer);
            markers(&mut scene, answer, &clashes, &map, sheet, |x, _, z| Point::new(x, z));
        }
    }
    scene
}

/// What the shapes and wheels of a subject take up from the side.
fn whole_extent(subject: &Subject, laid: &[Laid]) -> Extent {
    let mut whole = extent(laid.iter().flat_map(|item| &item.shapes));
    if let Some((_, machine)) = subject.machine() {
        for wheel in tyre::wheels(machine) {
            whole.join(&wheel.extent(View::Side));
        }
    }
    whole
}

fn margins(sheet: &Sheet, answer: Option<&Answer>) -> Margins {
    let l = sheet.letters;
    if let Some(answer) = answer.filter(|_| sheet.has_dimensions()) {
        let right = l * if front_wedge(&answer.footprint).is_some() { 6.0 } else { 4.4 };
        Margins { left: 2.4 * l, right, top: 1.6 * l, bottom: ROW * 2.0 * l + 2.0 * l }
    } else {
        Margins { left: l, right: l, top: l, bottom: l }
    }
}

fn ghost_nodes(ghost: &Subject, laid: &[Laid], map: &Mapping) -> Vec<Node> {
    let mut nodes: Vec<Node> = laid.iter().flat_map(|item| draw(&item.shapes, map, Weight::Ghost)).collect();
    nodes.extend(wheels(ghost, View::Side, map, Weight::Ghost));
    nodes
}

fn ground(map: &Mapping, sheet: &Sheet) -> Node {
    let y = map.at(Point::ORIGIN).y;
    let inset = sheet.letters * 0.5;
    ink::line(Look::line(Pen::Ground), Point::new(inset, y), Point::new(map.size.0 - inset, y))
}

fn figures(scene: &mut Scene, subject: &Subject, footprint: &Footprint, whole: Extent, map: &Mapping, sheet: &Sheet) {
    let ground = map.at(Point::ORIGIN).y;
    let row = |n: f64| Along::Level(ground + (0.6 + ROW * n) * sheet.letters);
    let mut add = |name: FigureName, value: Option<Length>, from: Point, to: Point, line: Along| {
        if let Some(value) = value {
            state(scene, sheet, map, name, value, [from, to], line);
        }
    };
    let ends = footprint.extent_x.map(|(rear, front)| (rear.m(), front.m()));
    let on_ground = |x: f64| Point::new(x, 0.0);
    if let Some((rear, front)) = ends {
        let chained = map.size.0 >= CHAIN_WIDTH * sheet.letters;
        if chained {
            add(FigureName::RearOverhang, footprint.rear_overhang, on_ground(rear), on_ground(0.0), row(1.0));
        }
        if let Some(wheelbase) = footprint.wheelbase {
            let w = wheelbase.m();
            add(FigureName::Wheelbase, footprint.wheelbase, on_ground(0.0), on_ground(w), row(1.0));
            if chained {
                add(FigureName::FrontOverhang, footprint.front_overhang, on_ground(w), on_ground(front), row(1.0));
            }
        }
        add(FigureName::Length, footprint.length, on_ground(rear), on_ground(front), row(2.0));
        if let Some(height) = footprint.height {
            let top = Point::new(highest_x(subject, whole), height.m());
            let room = if front_wedge(footprint).is_some() { ROW * 1.6 } else { ROW };
            let line = Along::Upright(map.at(Point::new(whole.right, 0.0)).x + room * sheet.letters);
            add(FigureName::Height, footprint.height, top, Point::new(whole.right, 0.0), line);
        }
    }
    if let Some((x, z)) = lowest(subject)
        && let Some(clearance) = footprint.ground_clearance
    {
        let at = Along::Upright(map.at(Point::new(beside_wheels(subject, x), z)).x);
        add(FigureName::GroundClearance, Some(clearance), on_ground(x), Point::new(x, clearance.m()), at);
    }
}

fn angles(scene: &mut Scene, subject: &Subject, footprint: &Footprint, map: &Mapping, sheet: &Sheet) {
    let Some((_, machine)) = subject.machine() else { return };
    let wheels = tyre::wheels(machine);
    let ends = [
        (FigureName::Departure, footprint.departure, End::Rear, wheels.iter().find(|w| w.x == 0.0)),
        (FigureName::Approach, footprint.approach, End::Front, wheels.iter().find(|w| w.x > 0.0)),
    ];
    for (name, angle, end, wheel) in ends {
        let (Some(angle), Some(wheel)) = (angle, wheel) else { continue };
        let it = Wedge {
            wheel: Point::new(wheel.x, wheel.loaded),
            limit: Point::new(angle.x.m(), angle.z.m()),
            angle: angle.angle.rad(),
            end,
        };
        scene.facts.push(Fact::Angle(name, angle.angle, Some(angle.item)));
        if end == End::Front && front_wedge(footprint).is_none() {
            continue;
        }
        let nodes = wedge(&it, map, &sheet.labels.angle(angle.angle), sheet.letters);
        scene.nodes.push(ink::group(Target::Figure(name), nodes));
    }
}

/// The approach angle where it is drawn: only a small one is news, a large one says that nothing is in the way.
fn front_wedge(footprint: &Footprint) -> Option<Angle> {
    footprint.approach.map(|approach| approach.angle).filter(|angle| *angle <= Angle::from_deg(50.0))
}

/// x of the highest shape, for the extension line of the height.
fn highest_x(subject: &Subject, whole: Extent) -> f64 {
    let laid = lay(subject, View::Side);
    let spans = laid.iter().flat_map(|item| &item.shapes).map(|shape| extent([shape])).filter(Extent::is_some);
    spans.filter(|span| span.high >= whole.high - 1e-3).map(|span| span.right).reduce(f64::max).unwrap_or(whole.right)
}

/// A place for an upright dimension near `x` where no wheel lies behind it: between the axles if there is one.
fn beside_wheels(subject: &Subject, x: f64) -> f64 {
    let wheels = subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default();
    let over = wheels.iter().find(|wheel| (x - wheel.x).abs() < wheel.radius);
    over.map_or(x, |wheel| if wheel.x > 0.0 { wheel.x - wheel.radius * 1.12 } else { wheel.radius * 1.12 })
}

/// The lowest point of what is not a tyre.
fn lowest(subject: &Subject) -> Option<(f64, f64)> {
    let mut best: Option<(f64, f64)> = None;
    let mut take = |x: f64, z: f64| {
        if best.is_none_or(|(_, least)| z < least) {
            best = Some((x, z));
        }
    };
    for placed in &subject.stack.placed {
        let Some(at) = placed.placement else { continue };
        for &(x, z) in subject.catalogue.body(placed.item).underside.iter().flatten() {
            let (x, z) = at.side(x, z);
            take(x.m(), z.m());
        }
    }
    for shape in lay(subject, View::Side).iter().flat_map(|item| &item.shapes) {
        let span = extent([shape]);
        if span.is_some() && shape.role != fitup_core::item::ShapeRole::Tyre {
            take(f64::midpoint(span.left, span.right), span.low);
        }
    }
    best
}

/// The markers of joints and clashes in a view.
pub(crate) fn markers(
    scene: &mut Scene,
    answer: &Answer,
    clashes: &[(usize, Point)],
    map: &Mapping,
    sheet: &Sheet,
    view: impl Fn(f64, f64, f64) -> Point,
) {
    let joints = answer.joints.iter().enumerate().filter_map(|(index, joint)| {
        let (x, y, z) = joint.at?;
        Some((Target::Joint(index), joint.verdict, map.at(view(x.m(), y.m(), z.m()))))
    });
    let clashes = clashes
        .iter()
        .filter_map(|&(index, at)| Some((Target::Finding(index), answer.findings.get(index)?.verdict, map.at(at))));
    // Where a clash is comes first: a joint's mark gives way to it.
    let placed: Vec<(Target, Verdict, Point)> = clashes.chain(joints).filter(|(.., at)| at.is_finite()).collect();
    let reach = sheet.letters * 0.72;
    let places = marker::spread(&placed.iter().map(|p| p.2).collect::<Vec<_>>(), reach);
    for ((target, verdict, stands), at) in placed.into_iter().zip(places) {
        let mut nodes = Vec::new();
        if at != stands {
            nodes.push(ink::line(Look::line(Pen::Verdict(verdict)), stands, at));
        }
        nodes.extend(marker::shape(verdict, at, reach));
        scene.nodes.push(ink::group(target, nodes));
        scene.facts.extend(match target {
            Target::Joint(index) => Some(Fact::Joint(index, verdict)),
            Target::Finding(index) => Some(Fact::Clash(index, verdict)),
            _ => None,
        });
    }
}
