//! The figure the machine stands on, from above, with its centre of gravity.

use fitup_core::fit::Loads;
use fitup_core::item::{FrontAxle, View};
use fitup_core::plane::Point;
use fitup_core::quantity::{Length, Mass};

use crate::fact::Fact;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::outline::{Weight, draw, extent, lay};
use crate::scene::{Anchor, FigureName, Node, Scene, Target};
use crate::sheet::{Mapping, Margins, Sheet};
use crate::subject::Subject;
use crate::tyre;

/// Rear contacts and front contacts (or the pin of a front axle that swings) as a polygon, the centre of gravity of all
/// masses in it, and the load on each axle.
///
/// Empty where track, wheelbase, radii or the axle loads are not known: without them there is no figure.
pub fn support(subject: &Subject, loads: Option<&Loads>, sheet: &Sheet) -> Scene {
    let empty = || Scene { width: sheet.sound_width(), height: 0.0, scale: 1.0, ..Scene::default() };
    let (Some(corners), Some(balance)) = (corners(subject), loads.and_then(Balance::of)) else { return empty() };
    let laid = lay(subject, View::Plan);
    let mut whole = extent(laid.iter().flat_map(|item| &item.shapes));
    let (_, machine) = subject.machine().expect("its corners are known");
    let wheels = tyre::wheels(machine);
    for wheel in &wheels {
        whole.join(&wheel.extent(View::Plan));
    }
    let l = sheet.letters;
    let map = Mapping::fit(whole, Margins { left: l, right: l, top: 2.6 * l, bottom: l }, sheet, false);
    let mut scene = Scene { width: map.size.0, height: map.size.1, scale: map.scale(), ..Scene::default() };
    scene.facts.push(Fact::View(View::Plan));
    for item in &laid {
        scene.nodes.push(ink::group(Target::Item(item.item), draw(&item.shapes, &map, Weight::Ghost)));
    }
    for wheel in &wheels {
        scene.nodes.extend(tyre::ghost(wheel, View::Plan, &map));
    }
    let points: Vec<Point> = corners.iter().map(|&p| map.at(p)).collect();
    scene.nodes.push(ink::polygon(Look::new(Pen::Accent, Tone::Area), &points));
    for &point in &points {
        scene.nodes.push(ink::circle(Look::new(Pen::Accent, Tone::Paper), point, l * 0.3));
    }
    let axles = [(FigureName::RearLoad, 0.0, balance.rear), (FigureName::FrontLoad, balance.wheelbase, balance.front)];
    for (name, x, load) in axles {
        let at = Point::new(map.at(Point::new(x, 0.0)).x, 1.8 * l);
        axle_load(&mut scene, name, at, map.at(Point::ORIGIN).y, load, sheet);
    }
    let at = map.at(Point::new(balance.x, 0.0));
    scene.nodes.push(ink::group(Target::Figure(FigureName::CentreOfGravity), centre_mark(at, l * 0.85)));
    scene.facts.push(Fact::Length(FigureName::CentreOfGravity, Length::from_m(balance.x)));
    scene.facts.push(Fact::Mass(FigureName::Mass, balance.total));
    scene
}

/// What stands on the axles, and where it balances.
struct Balance {
    front: Mass,
    rear: Mass,
    total: Mass,
    wheelbase: f64,
    /// x of the centre of gravity, metres: the front axle's share of the wheelbase.
    x: f64,
}

impl Balance {
    fn of(loads: &Loads) -> Option<Self> {
        let Loads { front, rear, total, .. } = *loads;
        let wheelbase = loads.wheelbase.m();
        let x = wheelbase * (front / total);
        (total > Mass::ZERO && x.is_finite()).then_some(Self { front, rear, total, wheelbase, x })
    }
}

/// Supports in plan, counter-clockwise from the rear right.
fn corners(subject: &Subject) -> Option<Vec<Point>> {
    let (_, machine) = subject.machine()?;
    let rear = machine.rear.track?.m() / 2.0;
    let wheelbase = machine.wheelbase?.value.m();
    let mut corners = vec![Point::new(0.0, -rear)];
    match machine.front_axle {
        // The pin is the one front support against rolling.
        FrontAxle::Oscillating { .. } => corners.push(Point::new(wheelbase, 0.0)),
        FrontAxle::Fixed => {
            let front = machine.front.track?.m() / 2.0;
            corners.extend([Point::new(wheelbase, -front), Point::new(wheelbase, front)]);
        }
        FrontAxle::Unknown => return None,
    }
    corners.push(Point::new(0.0, rear));
    corners.iter().all(|corner| corner.is_finite()).then_some(corners)
}

fn axle_load(scene: &mut Scene, name: FigureName, at: Point, middle: f64, load: Mass, sheet: &Sheet) {
    let l = sheet.letters;
    let nodes = vec![
        ink::line(Look::line(Pen::Centre), at + Point::new(0.0, l * 0.4), Point::new(at.x, middle)),
        ink::text(Letter::Label, at, Anchor::Middle, l, sheet.labels.mass(load)),
    ];
    scene.nodes.push(ink::group(Target::Figure(name), nodes));
    scene.facts.push(Fact::Mass(name, load));
}

/// The usual sign of a centre of gravity: a circle with two opposite quarters filled.
fn centre_mark(at: Point, radius: f64) -> Vec<Node> {
    use crate::scene::{Path, PathStep};
    let quarter = core::f64::consts::FRAC_PI_2;
    let mut nodes = vec![ink::circle(Look::new(Pen::Outline, Tone::Paper), at, radius)];
    for start in [0.0, 2.0 * quarter] {
        let mut steps = ink::arc_steps(at, radius, start, start + quarter);
        if let Some(PathStep::Move(first)) = steps.first().copied() {
            steps[0] = PathStep::Line(first);
        }
        steps.insert(0, PathStep::Move(at));
        steps.push(PathStep::Close);
        nodes.push(Node::Path(Path { look: Look::fill(Tone::Ink), steps }));
    }
    nodes
}
