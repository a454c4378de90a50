//! Where a port sits on its item, and the two anchors between which a tape goes.

use fitup_core::item::{Body, Port, Role};
use fitup_core::plane::Point;

use super::detail::rule;
use crate::scene::Node;

/// Whether a dimension goes from the axle anchor to the front anchor.
pub(super) fn is_between(dimension: &str) -> bool {
    dimension.starts_with("from-axle-")
}

/// The places that are ringed, in the item's own axes, metres: the port, or both anchors.
pub(super) fn places(body: &Body, port: Option<&Port>, dimension: &str) -> Vec<(f64, f64)> {
    let place = |port: &Port| port.pose.map(|pose| (pose.at.x.value.m(), pose.at.z.value.m()));
    let here = port.and_then(place);
    let axle = body.ports.iter().find(|port| port.role == Role::AxleAnchor).filter(|_| is_between(dimension));
    axle.and_then(place).into_iter().chain(here).collect()
}

/// The line of the tape between the two anchors on the sheet, level or upright; nothing for another dimension.
pub(super) fn ruled(from: Point, to: Point, dimension: &str, letters: f64) -> Vec<Node> {
    match dimension {
        "from-axle-along" => rule(from, Point::new(to.x, from.y), 3.0 * letters, letters),
        "from-axle-height" => rule(Point::new(to.x, from.y), to, -3.0 * letters, letters),
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use fitup_yard::{FRAME, Yard};

    use super::*;

    #[test]
    fn a_distance_from_the_axle_anchor_rings_both_anchors_and_another_dimension_its_own_port() {
        let yard = Yard::new();
        let body = yard.catalogue.body(FRAME);
        let front = body.ports.iter().find(|port| port.role == Role::FrontAnchor).expect("the frame has one");
        assert_eq!(places(body, Some(front), "from-axle-along").len(), 2);
        assert_eq!(places(body, Some(front), "bolt").len(), 1);
        assert!(places(body, None, "bolt").is_empty());
        assert!(ruled(Point::ORIGIN, Point::new(9.0, 9.0), "bolt", 3.0).is_empty());
    }
}
