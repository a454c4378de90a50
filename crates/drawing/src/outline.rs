//! Items' outlines laid out in a view: posed, placed, in the order they hide one another.

use fitup_core::build::{ArmAngles, ArmPose, LinkPose, Placement, arm_pose};
use fitup_core::item::{Body, Carrier, Catalogue, ItemRef, PathCommand, Point3, SeatState, Shape, ShapeRole, View};
use fitup_core::order;
use fitup_core::plane::Point;
use fitup_core::quantity::Length;

use crate::look::{Look, Pen, Tone};
use crate::scene::{Group, Node, Path, PathStep, Target};
use crate::sheet::{Extent, Mapping};
use crate::subject::Subject;
use crate::tyre;

/// An item's shapes in a view, metres in the machine's axes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Laid {
    pub item: ItemRef,
    pub shapes: Vec<LaidShape>,
    /// Order: farther items first.
    layer: u8,
}

impl Laid {
    /// Whether the wheels hide it: the frame from above; nothing else.
    pub fn is_under(&self, view: View) -> bool {
        view == View::Plan && matches!(self.item, ItemRef::Frame(_))
    }
}

/// One shape, metres in the view's axes.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct LaidShape {
    pub role: ShapeRole,
    pub steps: Vec<PathStep>,
}

impl LaidShape {
    /// The shape with every point put somewhere else.
    pub fn moved(mut self, place: impl Fn(Point) -> Point) -> Self {
        for step in &mut self.steps {
            match step {
                PathStep::Move(p) | PathStep::Line(p) => *p = place(*p),
                PathStep::Cubic(points) => points.iter_mut().for_each(|p| *p = place(*p)),
                PathStep::Close => {}
            }
        }
        self
    }
}

/// Every placed item's shapes in a view.
///
/// Shapes of one item are drawn in the order of the catalogue; a roll-over bar is drawn standing or
/// folded, the lower links only where the hitch carries, and each seat as it stands in what the picture shows.
pub(crate) fn lay(subject: &Subject, view: View) -> Vec<Laid> {
    let mut all: Vec<Laid> = subject
        .stack
        .placed
        .iter()
        .filter_map(|placed| {
            let shapes = item_shapes(subject, placed.item, &placed.placement?, view);
            Some(Laid { item: placed.item, shapes, layer: layer(view, placed.item) })
        })
        .collect();
    // A seat that turns is the machine's own: it brings no shapes and nothing places it.
    order::sort_by_key(&mut all, |laid| laid.layer);
    all
}

/// An item by itself, in its own axes; a digging arm as in transport.
pub(crate) fn lay_alone(catalogue: &Catalogue, item: ItemRef, view: View) -> Vec<LaidShape> {
    let pose = arm_of(catalogue, item, None);
    let body = catalogue.body(item);
    body.shapes
        .iter()
        .filter(|shape| shape.view == view)
        .filter(|shape| !matches!(shape.role, ShapeRole::RollOverBarFolded | ShapeRole::SeatFolded))
        .map(|shape| laid(shape, pose.as_ref(), &Placement::default()))
        .collect()
}

fn item_shapes(subject: &Subject, item: ItemRef, placement: &Placement, view: View) -> Vec<LaidShape> {
    let body: &Body = subject.catalogue.body(item);
    let pose = arm_of(subject.catalogue, item, subject.pose);
    let is_machine = matches!(item, ItemRef::Machine(_));
    let hidden_bar = if subject.bar_is_folded() { ShapeRole::RollOverBar } else { ShapeRole::RollOverBarFolded };
    let seat = subject.seat_of(item);
    let hidden_seats: &[ShapeRole] = match seat.state {
        SeatState::Off => &[ShapeRole::Seat, ShapeRole::SeatFolded],
        SeatState::Folded => &[ShapeRole::Seat],
        SeatState::Driving | SeatState::Turned | SeatState::Slid => &[ShapeRole::SeatFolded],
    };
    body.shapes
        .iter()
        .filter(|shape| shape.view == view && shape.role != hidden_bar && !hidden_seats.contains(&shape.role))
        .filter(|shape| !(is_machine && shape.role == ShapeRole::Hitch && subject.links_are_off()))
        .filter(|shape| subject.pose.is_none() || !is_tied(shape))
        .map(|shape| {
            let is_seat = shape.role == ShapeRole::Seat;
            let at = match seat.state {
                SeatState::Slid if is_seat => forward(seat.by).on(placement),
                _ => *placement,
            };
            let mut shape_laid = laid(shape, pose.as_ref(), &at);
            if is_machine && is_seat && seat.state == SeatState::Turned && view != View::Rear {
                turn_about_index(subject, &mut shape_laid);
            }
            shape_laid
        })
        .collect()
}

/// A cylinder between two bodies stands as in transport; in another pose it would have to follow both.
fn is_tied(shape: &Shape) -> bool {
    shape.role == ShapeRole::Cylinder && shape.carrier == Carrier::Item && shape.view == View::Side
}

/// Forward by so much, in an item's own axes.
fn forward(by: Length) -> Placement {
    Placement { at: Point3 { x: by, ..Point3::default() }, ..Placement::default() }
}

/// Mirrors a seat about its index point: turned half round the vertical, seen from the side or above.
fn turn_about_index(subject: &Subject, shape: &mut LaidShape) {
    let Some(seat) = subject.machine().and_then(|(_, machine)| machine.operator_seat) else { return };
    let middle = 2.0 * seat.index_x.m();
    for step in &mut shape.steps {
        match step {
            PathStep::Move(p) | PathStep::Line(p) => p.x = middle - p.x,
            PathStep::Cubic(points) => points.iter_mut().for_each(|p| p.x = middle - p.x),
            PathStep::Close => {}
        }
    }
}

fn arm_of(catalogue: &Catalogue, item: ItemRef, pose: Option<ArmAngles>) -> Option<ArmPose> {
    let ItemRef::Implement(id) = item else { return None };
    let arm = catalogue.implement(id).arm?;
    Some(arm_pose(&arm, pose.unwrap_or(ArmAngles::transport(&arm))))
}

fn laid(shape: &Shape, pose: Option<&ArmPose>, placement: &Placement) -> LaidShape {
    let link = pose.and_then(|pose| pose.link(shape.carrier)).filter(|_| shape.view == View::Side);
    let at = |(a, b): (Length, Length)| place(shape.view, link, placement, a, b);
    let steps = shape
        .path
        .iter()
        .map(|step| match *step {
            PathCommand::Move(a, b) => PathStep::Move(at((a, b))),
            PathCommand::Line(a, b) => PathStep::Line(at((a, b))),
            PathCommand::Cubic(points) => PathStep::Cubic(points.map(at)),
            PathCommand::Close => PathStep::Close,
        })
        .collect();
    LaidShape { role: shape.role, steps }
}

fn place(view: View, link: Option<LinkPose>, placement: &Placement, a: Length, b: Length) -> Point {
    let (a, b) = link.map_or((a, b), |link| link.point(a, b));
    fitup_core::fit::placed(view, placement, (a.m(), b.m())).into()
}

/// What hides what: from the side the frame's rails lie between body and wheels; from above the
/// frame lies lowest; from behind the implement is nearest.
const fn layer(view: View, item: ItemRef) -> u8 {
    match (view, item) {
        (View::Plan, ItemRef::Frame(_)) => 0,
        (_, ItemRef::Machine(_) | ItemRef::Equipment(_)) => 1,
        (View::Side, ItemRef::Seat(_)) | (_, ItemRef::Frame(_)) => 2,
        (_, ItemRef::Seat(_)) => 3,
        (_, ItemRef::Adapter(_)) => 4,
        (_, ItemRef::Implement(_)) => 5,
    }
}

/// The extent of laid shapes, curves taken at their ends and quarters.
pub(crate) fn extent<'a>(shapes: impl IntoIterator<Item = &'a LaidShape>) -> Extent {
    let mut extent = Extent::NONE;
    for shape in shapes {
        let mut last = Point::ORIGIN;
        for step in &shape.steps {
            match *step {
                PathStep::Move(p) | PathStep::Line(p) => {
                    extent.take(p);
                    last = p;
                }
                PathStep::Cubic([a, b, c]) => {
                    for t in [0.25, 0.5, 0.75, 1.0] {
                        let s = 1.0 - t;
                        extent
                            .take(last * (s * s * s) + a * (3.0 * s * s * t) + b * (3.0 * s * t * t) + c * (t * t * t));
                    }
                    last = c;
                }
                PathStep::Close => {}
            }
        }
    }
    extent
}

/// How heavy the lines are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Weight {
    /// Outlines thick, as on a full sheet.
    Full,
    /// Everything thin, for small pictures.
    Light,
    /// Outlines only, pale, without filling.
    Ghost,
}

/// Nodes of laid shapes on the sheet.
pub(crate) fn draw(shapes: &[LaidShape], map: &Mapping, weight: Weight) -> Vec<Node> {
    shapes
        .iter()
        .filter(|shape| weight != Weight::Ghost || shape.role != ShapeRole::Detail)
        .map(|shape| {
            let steps = shape
                .steps
                .iter()
                .map(|step| match *step {
                    PathStep::Move(p) => PathStep::Move(map.at(p)),
                    PathStep::Line(p) => PathStep::Line(map.at(p)),
                    PathStep::Cubic(points) => PathStep::Cubic(points.map(|p| map.at(p))),
                    PathStep::Close => PathStep::Close,
                })
                .collect();
            Node::Path(Path { look: look(shape, weight), steps })
        })
        .collect()
}

fn look(shape: &LaidShape, weight: Weight) -> Look {
    // An open path is a line, such as a panel gap or a hose.
    let is_open = !shape.steps.contains(&PathStep::Close);
    let pen = match (weight, shape.role) {
        (Weight::Ghost, _) => return Look::line(Pen::Ghost),
        (Weight::Light, _) | (_, ShapeRole::Detail | ShapeRole::Glass) => Pen::Thin,
        (Weight::Full, _) => Pen::Outline,
    };
    if is_open { Look::line(pen) } else { Look::new(pen, Tone::Shape(shape.role)) }
}

/// The machine's wheels in a view, each in a group of the machine.
pub(crate) fn wheels(subject: &Subject, view: View, map: &Mapping, weight: Weight) -> Vec<Node> {
    let Some((id, machine)) = subject.machine() else { return Vec::new() };
    let states_tyres = machine.body.shapes.iter().any(|shape| shape.view == view && shape.role == ShapeRole::Tyre);
    if states_tyres {
        return Vec::new();
    }
    let nodes: Vec<Node> = tyre::wheels(machine)
        .iter()
        .flat_map(|wheel| match weight {
            Weight::Ghost => tyre::ghost(wheel, view, map),
            Weight::Full | Weight::Light => tyre::draw(wheel, view, map, weight),
        })
        .collect();
    if nodes.is_empty() {
        return nodes;
    }
    vec![Node::Group(Group { target: Some(Target::Item(ItemRef::Machine(id))), nodes })]
}
