//! The digging arm at work: the machine on its ground, the arm in a pose, the edge of its reach.

use fitup_core::dimension::Digging;
use fitup_core::item::{ItemRef, View};
use fitup_core::plane::{Arc, Point};
use fitup_core::quantity::Length;

use crate::dimension::{Along, state};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Look, Pen, Tone};
use crate::outline::{Weight, draw, extent, lay, wheels};
use crate::scene::{FigureName, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;

/// The arm in its pose, with the edge of the tip's reach over ground, greatest depth, height and reach.
///
/// `reach` is in the arm's own plane: u outward from the swing centre, z from the ground. Empty where the
/// build has no digging arm that stands anywhere.
pub fn digging(subject: &Subject, reach: &Digging, sheet: &Sheet) -> Scene {
    let Some(swing_x) = swing_centre(subject) else {
        return Scene { width: sheet.sound_width(), height: 0.0, scale: 1.0, ..Scene::default() };
    };
    let seen = |p: Point| Point::new(swing_x - p.x, p.y);
    let laid = lay(subject, View::Side);
    let mut whole = extent(laid.iter().flat_map(|item| &item.shapes));
    for wheel in subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default() {
        whole.join(&wheel.extent(View::Side));
    }
    for arc in &reach.edge {
        for point in along(arc) {
            whole.take(seen(point));
        }
    }
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: 4.0 * l, right: l, top: l, bottom: 4.4 * l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Side));
    earth(&mut scene, &map);
    for arc in &reach.edge {
        let points: Vec<Point> = along(arc).into_iter().map(|p| map.at(seen(p))).collect();
        scene.nodes.push(ink::polyline(Look::line(Pen::Accent), &points));
    }
    for item in &laid {
        scene.nodes.push(ink::group(Target::Item(item.item), draw(&item.shapes, &map, Weight::Full)));
    }
    scene.nodes.extend(wheels(subject, View::Side, &map, Weight::Full));
    let swing = map.at(Point::new(swing_x, 0.0));
    let top = map.at(Point::new(swing_x, whole.high));
    scene.nodes.push(ink::line(Look::line(Pen::Centre), swing + Point::new(0.0, l), top));
    if sheet.has_dimensions() {
        figures(&mut scene, reach, swing_x, whole, &map, sheet);
    }
    scene
}

/// x of the swing centre in the machine's axes.
fn swing_centre(subject: &Subject) -> Option<f64> {
    let id = subject.build.choices.implement?;
    let arm = subject.catalogue.implement(id).arm?;
    let placed = subject.stack.placement(ItemRef::Implement(id))?;
    Some(placed.side(arm.swing_x, Length::ZERO).0.m())
}

/// Points along an arc, close enough that no chord leaves it by more than a millimetre at arm's length.
fn along(arc: &Arc) -> Vec<Point> {
    const PIECES: u32 = 64;
    (0..=PIECES).map(|i| arc.at(arc.from + arc.sweep * f64::from(i) / f64::from(PIECES))).collect()
}

fn earth(scene: &mut Scene, map: &Mapping) {
    let ground = map.at(Point::ORIGIN).y;
    let (width, height) = map.size;
    let corners =
        [Point::new(0.0, ground), Point::new(width, ground), Point::new(width, height), Point::new(0.0, height)];
    let nodes = vec![
        ink::polygon(Look::fill(Tone::Earth), &corners),
        ink::line(Look::line(Pen::Ground), corners[0], corners[1]),
    ];
    scene.nodes.push(ink::group(Target::Ground, nodes));
}

fn figures(scene: &mut Scene, reach: &Digging, swing_x: f64, whole: Extent, map: &Mapping, sheet: &Sheet) {
    let l = sheet.letters;
    let mut add = |name: FigureName, value: f64, from: Point, to: Point, line: Along| {
        state(scene, sheet, map, name, Length::from_m(value), [from, to], line);
    };
    let edge = whole.left;
    let beside = Along::Upright(map.at(Point::new(edge, 0.0)).x - 1.4 * l);
    let at = |z: f64| Point::new(edge, z);
    if reach.depth > 0.0 {
        add(FigureName::DigDepth, reach.depth, at(-reach.depth), at(0.0), beside);
    }
    if reach.height > 0.0 {
        add(FigureName::LoadHeight, reach.height, at(0.0), at(reach.height), beside);
    }
    if let Some(far) = reach.reach_at_ground {
        let below = Along::Level(map.at(Point::new(0.0, whole.low.min(0.0))).y + 2.6 * l);
        add(FigureName::DigReach, far, Point::new(swing_x - far, 0.0), Point::new(swing_x, 0.0), below);
    }
}
