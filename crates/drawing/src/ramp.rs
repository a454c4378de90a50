//! The machine driving over a ramp: ground, ramp, beaver tail and deck, and where it comes nearest.

use fitup_core::dimension::{Facing, Nearest, Ramp, RampStand, Wheels, ramp_corners, ramp_stand};
use fitup_core::item::{ItemRef, View};
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length};

use crate::dimension::{Along, Linear, linear};
use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::outline::{LaidShape, Weight, draw, extent, lay};
use crate::room::Lettered;
use crate::scene::{Anchor, FigureName, Node, Scene, Target, Text};
use crate::sheet::{Extent, Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre::{self, Wheel};

/// A drive over a ramp at one place.
#[derive(Debug, Clone, Copy)]
pub struct RampDrive<'a> {
    /// Ramp and beaver tail.
    pub ramp: Ramp,
    /// Which end goes up first.
    pub facing: Facing,
    /// Where the rear axle is, metres from the ramp's foot.
    pub rear_axle: f64,
    /// Where the machine comes nearest on the whole drive and which item does, if that is known.
    pub nearest: Option<(&'a Nearest, ItemRef)>,
}

/// The machine on a ramp, with the place it comes nearest marked.
///
/// Empty where the machine has no wheels of known size, or cannot stand there.
pub fn ramp(subject: &Subject, drive: &RampDrive, sheet: &Sheet) -> Scene {
    let subject = &subject.driven();
    let empty = || Scene { width: sheet.sound_width(), height: 0.0, scale: 1.0, ..Scene::default() };
    let Some((wheels, stand, corners)) = stand(subject, drive) else { return empty() };
    let placed: Vec<(ItemRef, Vec<LaidShape>)> = lay(subject, View::Side)
        .into_iter()
        .map(|item| (item.item, item.shapes.into_iter().map(|shape| shape.moved(|p| stand.place(p))).collect()))
        .collect();
    let whole = drive_extent(subject, drive, &corners);
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: l, right: l, top: l, bottom: 4.4 * l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Side));
    scene.nodes.push(ink::group(Target::Ground, profile(&corners, &map)));
    for (item, shapes) in &placed {
        scene.nodes.push(ink::group(Target::Item(*item), draw(shapes, &map, Weight::Full)));
    }
    for (wheel, centre) in wheels.iter().zip([stand.front, stand.rear]) {
        // Rigid circles, as the drive is computed with.
        let rolled = Wheel { x: centre.x, loaded: centre.y, radius: wheel.loaded, ..*wheel };
        scene.nodes.extend(tyre::draw(&rolled, View::Side, &map, Weight::Full));
    }
    ramp_angle(&mut scene, drive, &map, sheet);
    if let Some((nearest, item)) = drive.nearest {
        let nodes = touching(nearest, &Lettered::of(&scene), &map, sheet);
        scene.nodes.push(nodes);
        scene.facts.push(Fact::Nearest(item, Length::from_m(nearest.vertical)));
    }
    if let (Some(&foot), Some(&deck)) = (corners.first(), corners.last()) {
        let dimension = Linear {
            from: map.at(foot),
            to: map.at(deck),
            line: Along::Level(map.at(Point::ORIGIN).y + 2.6 * l),
            words: sheet.labels.length(Length::from_m(deck.x - foot.x)),
            letters: l,
        };
        let nodes = linear(&dimension, &Lettered::of(&scene));
        scene.nodes.extend(nodes);
    }
    scene
}

/// The machine at several places of its drive, for a sequence of pictures: rear axle from the first to the last place,
/// equal steps.
pub fn ramp_places(subject: &Subject, ramp: &Ramp, facing: Facing, count: usize) -> Vec<f64> {
    let wheelbase = subject.machine().and_then(|(_, machine)| machine.wheelbase).map_or(0.0, |w| w.value.m());
    let top = ramp_corners(ramp).ok().and_then(|corners| corners.last().copied()).unwrap_or_default().x;
    let (from, to) = match facing {
        Facing::Forward => (-wheelbase, top),
        Facing::Backward => (0.0, top + wheelbase),
    };
    let last = count.saturating_sub(1).max(1) as f64;
    (0..count).map(|i| from + (to - from) * (i as f64) / last).collect()
}

type Standing = (Vec<Wheel>, RampStand, Vec<Point>);

fn stand(subject: &Subject, drive: &RampDrive) -> Option<Standing> {
    let (_, machine) = subject.machine()?;
    // Front first, then rear, as `tyre::wheels` has them.
    let wheels = tyre::wheels(machine);
    let [front, rear] = wheels.as_slice() else { return None };
    let rolling = Wheels { rear: rear.loaded, front: front.loaded, wheelbase: front.x };
    let stand = ramp_stand(rolling, &drive.ramp, drive.facing, drive.rear_axle).ok()??;
    let corners = ramp_corners(&drive.ramp).ok()?;
    Some((wheels, stand, corners))
}

/// What the whole drive takes up, so that the picture keeps its scale while the machine moves.
fn drive_extent(subject: &Subject, drive: &RampDrive, corners: &[Point]) -> Extent {
    const PLACES: usize = 9;
    let level = level_extent(subject);
    let mut whole = Extent::NONE;
    for &corner in corners {
        whole.take(corner);
    }
    let places = ramp_places(subject, &drive.ramp, drive.facing, PLACES);
    for place in places.into_iter().chain([drive.rear_axle]) {
        let at = RampDrive { rear_axle: place, ..*drive };
        let Some((_, stand, _)) = stand(subject, &at) else { continue };
        for (x, z) in
            [(level.left, level.low), (level.right, level.low), (level.left, level.high), (level.right, level.high)]
        {
            whole.take(stand.place(Point::new(x, z)));
        }
    }
    whole.low = whole.low.min(0.0);
    whole
}

/// What the machine takes up on level ground.
fn level_extent(subject: &Subject) -> Extent {
    let mut level = extent(lay(subject, View::Side).iter().flat_map(|item| &item.shapes));
    for wheel in subject.machine().map(|(_, machine)| tyre::wheels(machine)).unwrap_or_default() {
        level.join(&wheel.extent(View::Side));
    }
    level
}

/// Ground, ramp and deck as one thick line with the earth and the deck's depth beneath.
fn profile(corners: &[Point], map: &Mapping) -> Vec<Node> {
    let ground = map.at(Point::ORIGIN).y;
    let mut line = vec![Point::new(0.0, ground)];
    line.extend(corners.iter().map(|&corner| map.at(corner)));
    let end = line.last().map_or(ground, |p| p.y);
    line.push(Point::new(map.size.0, end));
    let mut area = line.clone();
    area.extend([Point::new(map.size.0, ground), Point::new(0.0, ground)]);
    vec![
        ink::polygon(Look::fill(Tone::Earth), &area),
        ink::line(Look::line(Pen::Thin), Point::new(0.0, ground), Point::new(map.size.0, ground)),
        ink::polyline(Look::line(Pen::Ground), &line),
    ]
}

fn ramp_angle(scene: &mut Scene, drive: &RampDrive, map: &Mapping, sheet: &Sheet) {
    let angle = drive.ramp.angle;
    if angle <= 0.01 {
        return;
    }
    let foot = map.at(Point::ORIGIN);
    let radius = (map.length(drive.ramp.length) * 0.55).max(6.0);
    let at = foot + Point::new(radius + sheet.letters * 0.6, -sheet.letters * 0.4);
    let nodes = vec![
        ink::arc(Look::line(Pen::Dimension), foot, radius, 0.0, angle),
        ink::text(Letter::Dimension, at, Anchor::Start, sheet.letters, sheet.labels.angle(Angle::from_rad(angle))),
    ];
    scene.nodes.push(ink::group(Target::Figure(FigureName::RampAngle), nodes));
    scene.facts.push(Fact::Angle(FigureName::RampAngle, Angle::from_rad(angle), None));
}

/// Where the value of the nearest place stands under it, in letters; over it if there is no room. Under the ground there
/// is least that it could hide.
const DROPS: [f64; 3] = [1.9, 3.1, -1.2];

/// A ring round the nearest place with its clearance in words, red where it touches.
fn touching(nearest: &Nearest, lettered: &Lettered, map: &Mapping, sheet: &Sheet) -> Node {
    use fitup_core::finding::Verdict;
    let verdict = if nearest.vertical < 0.0 { Verdict::WontMount } else { Verdict::BoltsUp };
    let at = map.at(nearest.place);
    let l = sheet.letters;
    let label = |drop: f64| Text {
        letter: Letter::Label,
        at: at + Point::new(0.0, l * drop),
        anchor: Anchor::Middle,
        turn: 0.0,
        size: l,
        words: sheet.labels.length(Length::from_m(nearest.vertical)),
    };
    let drop = DROPS.into_iter().find(|&drop| lettered.is_free(&label(drop))).unwrap_or(DROPS[0]);
    let near = if drop > 0.0 { -0.85 } else { 0.15 };
    let nodes = vec![
        ink::line(Look::line(Pen::Verdict(verdict)), at, at + Point::new(0.0, l * (drop + near))),
        ink::circle(Look::new(Pen::Verdict(verdict), Tone::Paper), at, l * 0.36),
        Node::Text(label(drop)),
    ];
    ink::group(Target::Figure(FigureName::RampClearance), nodes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drive_starts_before_the_ramp_and_ends_on_the_deck() {
        let catalogue = fitup_core::item::Catalogue::default();
        let (build, stack) = (fitup_core::build::Build::default(), fitup_core::build::Stack::default());
        let subject = Subject::new(&catalogue, &build, &stack);
        let ramp = Ramp { angle: 0.0, length: 2.0, ..Ramp::default() };
        assert!(ramp_places(&subject, &ramp, Facing::Forward, 0).is_empty());
        let steep = Ramp { angle: core::f64::consts::FRAC_PI_6, length: 2.0, ..Ramp::default() };
        let places = ramp_places(&subject, &steep, Facing::Forward, 3);
        let top = 2.0 * libm::cos(core::f64::consts::FRAC_PI_6);
        assert!(places[0].abs() < 1e-12 && (places[1] - top / 2.0).abs() < 1e-12 && (places[2] - top).abs() < 1e-12);
    }

    #[test]
    fn nothing_that_rolls_gives_an_empty_picture() {
        let catalogue = fitup_core::item::Catalogue::default();
        let (build, stack) = (fitup_core::build::Build::default(), fitup_core::build::Stack::default());
        let drive = RampDrive { ramp: Ramp::default(), facing: Facing::Forward, rear_axle: 0.0, nearest: None };
        let sheet = Sheet::new(100.0, 100.0, &crate::plain::Plain);
        assert!(super::ramp(&Subject::new(&catalogue, &build, &stack), &drive, &sheet).nodes.is_empty());
    }
}
