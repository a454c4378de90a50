//! Where a dimension of a port is taken: the item with the place of the port, and beside it the port with the two places
//! between which caliper or tape go.

mod anchors;
mod detail;
mod hooks;
mod pattern;
mod pinned;

use fitup_core::item::{Catalogue, ItemRef, Port, PortKind};
use fitup_core::plane::Point;
use fitup_core::quantity::Length;

use crate::fact::Fact;
use crate::ink;
use crate::look::{Look, Pen, Tone};
use crate::scene::{Node, Scene, Target};
use crate::sheet::Sheet;
use crate::silhouette::stand;
use detail::Detail;

/// Share of the sheet's width that the item takes beside the port.
const ITEM: f64 = 0.36;

/// The picture of where a dimension of a port is taken; with a dimension that is not measured, of the port alone. Nothing where
/// neither the item nor the port can be drawn.
///
/// Holes lie as they are stated. What is not stated of the rest is drawn in usual proportions: the picture shows where, not how
/// long.
pub fn gauge(catalogue: &Catalogue, item: ItemRef, port: &str, dimension: &str, sheet: &Sheet) -> Scene {
    let (width, height) = (sheet.sound_width(), sheet.sound_height());
    let mut scene = Scene { width, height, scale: 1.0, ..Scene::default() };
    let body = catalogue.body(item);
    let port = body.ports.iter().find(|known| known.name == port);
    let detail = port.and_then(|port| detail_of(port, dimension));
    let left = if detail.is_some() { width * ITEM } else { width };
    // A ring round a port at the item's edge stays on the sheet.
    let ring = sheet.letters * 0.95;
    let inset = ring + 0.5;
    let beside = Sheet { width: left - 2.0 * inset, height: height - 2.0 * inset, ..*sheet };
    let mut begins = 0.0;
    if let Some((_, map, mut nodes)) = stand(catalogue, item, None, &beside) {
        shift(&mut nodes, Point::new(inset, inset));
        scene.nodes.push(ink::group(Target::Item(item), nodes));
        scene.facts.push(Fact::Item(item, Length::ZERO, Length::ZERO));
        let places = anchors::places(body, port, dimension);
        let at: Vec<Point> = places.iter().map(|&(x, z)| map.at(Point::new(x, z)) + Point::new(inset, inset)).collect();
        scene.nodes.extend(at.iter().flat_map(|&at| {
            [
                ink::circle(Look::line(Pen::Halo), at, ring),
                ink::circle(Look::line(Pen::Accent), at, ring),
                ink::circle(Look::fill(Tone::Accent), at, ring * 0.22),
            ]
        }));
        if let [from, to] = at[..] {
            scene.nodes.extend(anchors::ruled(from, to, dimension, sheet.letters));
        }
        begins = left;
    }
    if let Some(detail) = detail {
        let room = Sheet { width: width - begins, ..*sheet };
        let mut nodes = detail.nodes(&room);
        shift(&mut nodes, Point::new(begins, 0.0));
        scene.nodes.extend(nodes);
    }
    scene
}

fn detail_of(port: &Port, dimension: &str) -> Option<Detail> {
    match &port.kind {
        PortKind::HookRack(rack) => Some(hooks::detail(rack, dimension)),
        PortKind::Pins(pins) => Some(pinned::pins(pins, dimension)),
        PortKind::ThreePoint(hitch) => Some(pinned::hitch(hitch, dimension)),
        kind => pattern::detail(kind.pattern()?, port, dimension),
    }
    .filter(|_| !anchors::is_between(dimension))
}

/// Puts nodes somewhere else.
fn shift(nodes: &mut [Node], by: Point) {
    use crate::scene::PathStep;
    for node in nodes {
        match node {
            Node::Group(group) => shift(&mut group.nodes, by),
            Node::Circle(circle) => circle.centre = circle.centre + by,
            Node::Text(text) => text.at = text.at + by,
            Node::Path(path) => {
                for step in &mut path.steps {
                    match step {
                        PathStep::Move(p) | PathStep::Line(p) => *p = *p + by,
                        PathStep::Cubic(points) => points.iter_mut().for_each(|p| *p = *p + by),
                        PathStep::Close => {}
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use fitup_yard::{ARM, FRAME, MACHINE, Yard};

    use super::*;
    use crate::plain::Plain;

    fn marks(scene: &Scene) -> usize {
        scene.words().iter().filter(|&&words| words == "?").count()
    }

    #[test]
    fn every_dimension_that_can_be_taken_has_one_place_and_nothing_leaves_the_sheet() {
        let yard = Yard::new();
        for item in [MACHINE, FRAME, ARM] {
            for port in &yard.catalogue.body(item).ports {
                for dimension in port.measurable() {
                    for (width, height) in [(95.0, 40.0), (180.0, 60.0)] {
                        let sheet = Sheet::new(width, height, &Plain);
                        let scene = gauge(&yard.catalogue, item, &port.name, &dimension, &sheet);
                        assert_eq!(marks(&scene), 1, "{} {dimension}", port.name);
                        for (_, node) in scene.flat() {
                            let at = match node {
                                Node::Circle(circle) => circle.centre,
                                Node::Text(text) => text.at,
                                _ => continue,
                            };
                            let is_in = at.x >= 0.0 && at.x <= width && at.y >= 0.0 && at.y <= height;
                            assert!(is_in, "{} {dimension}: {at:?}", port.name);
                        }
                    }
                }
            }
        }
    }

    #[test]
    fn what_is_not_measured_shows_the_port_alone_and_what_is_unknown_nothing() {
        let yard = Yard::new();
        let sheet = Sheet::new(120.0, 40.0, &Plain);
        let shown = gauge(&yard.catalogue, FRAME, "rack", "", &sheet);
        assert_eq!((marks(&shown), shown.nodes.is_empty()), (0, false));
        let mut bare = yard;
        bare.body(ARM).shapes.clear();
        assert!(gauge(&bare.catalogue, ARM, "no such port", "", &sheet).nodes.is_empty());
    }
}
