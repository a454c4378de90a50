//! The arcs that the edge of an arm's reach is made of.

use super::DiggingArm;
use super::reaches::reaches;
use crate::order;
use crate::plane::{Arc, Point};

/// Every arc on which the tip has only one way to go: the edge of its reach lies on them, and all of them are reachable.
///
/// With the joints that move named, the others at a limit:
/// one moving: the tip runs on a circle about it;
/// two moving: what follows the second is in line with what lies between the two;
/// all moving: boom, dipper and bucket are in line.
pub(super) fn critical(arm: &DiggingArm) -> Vec<Arc> {
    let DiggingArm { foot, boom, dipper, bucket, .. } = *arm;
    let (b, d, g) = (arm.boom_elevation, arm.dipper_relative, arm.bucket_relative);
    let straight = |length: f64| Point::new(length, 0.0);
    // Seen from the dipper pivot along the boom: dipper and bucket at given angles.
    let beyond = |d: f64, g: f64| straight(dipper).turned(Point::unit(d)) + straight(bucket).turned(Point::unit(d + g));
    let mut arcs = Vec::new();
    for g_at in g.limits() {
        // Bucket held: dipper and bucket are one link, in line with the boom or folded on it.
        let link = straight(dipper) + straight(bucket).turned(Point::unit(g_at));
        let off = libm::atan2(link.y, link.x);
        for (tilt, length) in in_line(link.norm()) {
            if d.allows(tilt - off) {
                arcs.push(b.arc(foot, 0.0, straight(boom + length)));
            }
        }
        for d_at in d.limits() {
            arcs.push(b.arc(foot, 0.0, straight(boom) + beyond(d_at, g_at)));
        }
        for b_at in b.limits() {
            arcs.push(d.arc(foot + Point::unit(b_at) * boom, b_at, link));
        }
    }
    for d_at in d.limits() {
        // Dipper held: boom and dipper are one link, the bucket in line with it or folded on it.
        let link = straight(boom) + straight(dipper).turned(Point::unit(d_at));
        let direction = libm::atan2(link.y, link.x);
        for (tilt, length) in in_line(bucket) {
            if g.allows(direction - d_at + tilt) {
                arcs.push(b.arc(foot, 0.0, link + Point::unit(direction) * length));
            }
        }
        for b_at in b.limits() {
            let pivot = foot + link.turned(Point::unit(b_at));
            arcs.push(g.arc(pivot, b_at + d_at, straight(bucket)));
        }
    }
    for (tilt, length) in in_line(bucket) {
        if !g.allows(tilt) {
            continue;
        }
        for b_at in b.limits() {
            arcs.push(d.arc(foot + Point::unit(b_at) * boom, b_at, straight(dipper + length)));
        }
        for (fold, reach) in in_line(dipper + length) {
            if d.allows(fold) {
                arcs.push(b.arc(foot, 0.0, straight(boom + reach)));
            }
        }
    }
    arcs
}

/// Straight on and folded back: the angle, and the link's length counted along what it is in line with.
fn in_line(length: f64) -> [(f64, f64); 2] {
    [(0.0, length), (core::f64::consts::PI, -length)]
}

/// How far to each side of an arc its neighbourhood is looked at, metres: a hundredth of a millimetre.
const ASIDE: f64 = 1e-5;

/// Pieces of arc shorter than this are not looked at, radians.
const SHORTEST: f64 = 1e-6;

/// The parts of the arcs that have reachable ground on one side only.
pub(super) fn outline(arm: &DiggingArm, arcs: &[Arc]) -> Vec<Arc> {
    let mut edge: Vec<Arc> = Vec::new();
    for (index, arc) in arcs.iter().enumerate() {
        if arcs[..index].iter().any(|other| covers(other, arc)) {
            continue;
        }
        let sweep = arc.sweep.min(2.0 * core::f64::consts::PI);
        let mut cuts = vec![0.0, sweep];
        for other in arcs.iter().filter(|other| !same_circle(arc, other)) {
            for point in arc.cut(other) {
                let to = point - arc.circle.centre;
                cuts.extend(arc.along(libm::atan2(to.y, to.x)));
            }
        }
        // Ends of arcs on the same circle, where one stops and the other goes on.
        for other in arcs.iter().filter(|other| same_circle(arc, other)) {
            cuts.extend([other.from, other.from + other.sweep].into_iter().filter_map(|angle| arc.along(angle)));
        }
        order::sort(&mut cuts, f64::total_cmp);
        for pair in cuts.windows(2).filter(|pair| pair[1] - pair[0] > SHORTEST) {
            let middle = arc.from + f64::midpoint(pair[0], pair[1]);
            let beside =
                |aside: f64| reaches(arm, arc.circle.centre + Point::unit(middle) * (arc.circle.radius + aside));
            if beside(ASIDE) != beside(-ASIDE) {
                edge.push(Arc { circle: arc.circle, from: arc.from + pair[0], sweep: pair[1] - pair[0] });
            }
        }
    }
    edge
}

/// Whether an arc lies on another wholly: the same attitude found twice, as with limits that meet.
fn covers(other: &Arc, arc: &Arc) -> bool {
    let start = other.along(arc.from);
    same_circle(arc, other) && start.is_some_and(|start| start + arc.sweep <= other.sweep + SHORTEST)
}

fn same_circle(a: &Arc, b: &Arc) -> bool {
    a.circle.centre.distance(b.circle.centre) < 1e-12 && (a.circle.radius - b.circle.radius).abs() < 1e-12
}

#[cfg(test)]
mod tests {
    use super::super::tests::{deg, usual};
    use super::*;

    #[test]
    fn every_point_of_every_arc_can_be_reached() {
        let arms = [
            usual(),
            DiggingArm { bucket_relative: deg(-180.0, 180.0), dipper_relative: deg(-170.0, 10.0), ..usual() },
        ];
        for arm in &arms {
            let arcs = critical(arm);
            assert!(arcs.len() >= 12);
            for arc in &arcs {
                for k in 1..10 {
                    let point = arc.at(arc.from + arc.sweep * f64::from(k) / 10.0);
                    // Just beside it, on one side at least.
                    let out = (point - arc.circle.centre) * (1e-7 / arc.circle.radius.max(1e-9));
                    assert!(reaches(arm, point + out) || reaches(arm, point - out), "{arc:?} at {k}");
                }
            }
        }
    }

    #[test]
    fn the_outline_is_closed() {
        // Every end of a piece meets an end of another.
        let arcs = critical(&usual());
        let edge = outline(&usual(), &arcs);
        let ends: Vec<Point> = edge.iter().flat_map(Arc::ends).collect();
        for (i, end) in ends.iter().enumerate() {
            let met = ends.iter().enumerate().any(|(j, other)| j / 2 != i / 2 && end.distance(*other) < 1e-6);
            assert!(met, "{end:?} meets nothing");
        }
    }
}
