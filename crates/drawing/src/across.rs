//! The machine from above and from behind, to scale.

use fitup_core::fit::Answer;
use fitup_core::item::View;
use fitup_core::plane::Point;
use fitup_core::quantity::Length;

use crate::dimension::{Along, state};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Look, Pen};
use crate::outline::{Laid, Weight, draw, extent, lay, wheels};
use crate::scene::{FigureName, Node, Scene, Target};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::side::markers;
use crate::subject::Subject;
use crate::tyre;

/// The plan of a build, forward to the right, the left side up.
pub fn plan(subject: &Subject, answer: Option<&Answer>, ghost: Option<&Subject>, sheet: &Sheet) -> Scene {
    across(View::Plan, subject, answer, ghost, sheet)
}

/// The build from behind, its left side on the left.
pub fn rear(subject: &Subject, answer: Option<&Answer>, ghost: Option<&Subject>, sheet: &Sheet) -> Scene {
    across(View::Rear, subject, answer, ghost, sheet)
}

fn across(view: View, subject: &Subject, answer: Option<&Answer>, ghost: Option<&Subject>, sheet: &Sheet) -> Scene {
    let laid = lay(subject, view);
    let mut whole = whole_extent(subject, &laid, view);
    let ghost = ghost.map(|ghost| (ghost, lay(ghost, view)));
    if let Some((ghost, laid)) = &ghost {
        whole.join(&whole_extent(ghost, laid, view));
    }
    if view == View::Rear {
        whole.low = whole.low.min(0.0);
    }
    let map = Mapping::fit(whole, margins(view, sheet, answer), sheet, view == View::Rear);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(view));
    if let Some((ghost, laid)) = &ghost {
        let mut nodes: Vec<Node> = laid.iter().flat_map(|item| draw(&item.shapes, &map, Weight::Ghost)).collect();
        nodes.extend(wheels(ghost, view, &map, Weight::Ghost));
        scene.nodes.push(ink::group(Target::Ghost, nodes));
        scene.facts.push(Fact::Ghost);
    }
    middle_line(&mut scene, view, whole, &map, sheet);
    let below = laid.iter().filter(|item| item.is_under(view));
    let above = laid.iter().filter(|item| !item.is_under(view));
    items(&mut scene, below, &map);
    scene.nodes.extend(wheels(subject, view, &map, Weight::Full));
    items(&mut scene, above, &map);
    if let Some(answer) = answer {
        if sheet.has_dimensions() {
            figures(&mut scene, view, subject, answer, whole, &map, sheet);
        }
        if sheet.has_markers() {
            match view {
                View::Rear => markers(&mut scene, answer, &[], &map, sheet, |_, y, z| Point::new(y, z)),
                _ => markers(&mut scene, answer, &[], &map, sheet, |x, y, _| Point::new(x, y)),
            }
        }
    }
    scene
}

fn items<'a>(scene: &mut Scene, laid: impl Iterator<Item = &'a Laid>, map: &Mapping) {
    for item in laid {
        scene.nodes.push(ink::group(Target::Item(item.item), draw(&item.shapes, map, Weight::Full)));
        let span = extent(&item.shapes);
        if span.is_some() {
            scene.facts.push(Fact::Item(item.item, Length::from_m(span.left), Length::from_m(span.right)));
        }
    }
}

fn whole_extent(subject: &Subject, laid: &[Laid], view: View) -> Extent {
    let mut whole = extent(laid.iter().flat_map(|item| &item.shapes));
    if let Some((_, machine)) = subject.machine() {
        for wheel in tyre::wheels(machine) {
            whole.join(&wheel.extent(view));
        }
    }
    whole
}

fn margins(view: View, sheet: &Sheet, answer: Option<&Answer>) -> Margins {
    let l = sheet.letters;
    if answer.is_none() || !sheet.has_dimensions() {
        return Margins { left: l, right: l, top: l, bottom: l };
    }
    match view {
        View::Plan => Margins { left: 2.4 * l, right: 4.4 * l, top: l, bottom: l },
        _ => Margins { left: 2.4 * l, right: 2.4 * l, top: l, bottom: 7.5 * l },
    }
}

/// The middle plane as a centre line, and the ground where it is seen.
fn middle_line(scene: &mut Scene, view: View, whole: Extent, map: &Mapping, sheet: &Sheet) {
    let whole = whole.or_square();
    let over = sheet.letters * 0.6;
    let (a, b) = match view {
        View::Rear => {
            let ground = map.at(Point::ORIGIN).y;
            let (left, right) = (Point::new(over, ground), Point::new(map.size.0 - over, ground));
            scene.nodes.push(ink::group(Target::Ground, vec![ink::line(Look::line(Pen::Ground), left, right)]));
            (map.at(Point::new(0.0, whole.high)) - Point::new(0.0, over), map.at(Point::ORIGIN) + Point::new(0.0, over))
        }
        _ => (
            map.at(Point::new(whole.left, 0.0)) - Point::new(over, 0.0),
            map.at(Point::new(whole.right, 0.0)) + Point::new(over, 0.0),
        ),
    };
    scene.nodes.push(ink::line(Look::line(Pen::Centre), a, b));
}

fn figures(
    scene: &mut Scene,
    view: View,
    subject: &Subject,
    answer: &Answer,
    whole: Extent,
    map: &Mapping,
    sheet: &Sheet,
) {
    let mut add = |name: FigureName, value: Option<Length>, from: Point, to: Point, line: Along| {
        if let Some(value) = value {
            state(scene, sheet, map, name, value, [from, to], line);
        }
    };
    let width = answer.footprint.width;
    let half = width.map_or(0.0, |width| width.m() / 2.0);
    let track = subject.machine().and_then(|(_, machine)| machine.rear.track);
    let half_track = track.map_or(0.0, |track| track.m() / 2.0);
    if view == View::Rear {
        let ground = map.at(Point::ORIGIN).y;
        let row = |n: f64| Along::Level(ground + (0.6 + 2.7 * n) * sheet.letters);
        let at = |y: f64| Point::new(y, 0.0);
        add(FigureName::RearTrack, track, at(half_track), at(-half_track), row(1.0));
        add(FigureName::Width, width, at(half), at(-half), row(2.0));
    } else {
        let line = Along::Upright(map.at(Point::new(whole.right, 0.0)).x + 2.7 * sheet.letters);
        let at = |y: f64| Point::new(whole.right, y);
        add(FigureName::Width, width, at(half), at(-half), line);
    }
}
