//! End angles as they are measured: a line from the ground along the tyre's arc to the point that limits it.

use fitup_core::plane::Point;

use crate::dimension::arrow;
use crate::ink;
use crate::look::{Letter, Look, Pen, Tone};
use crate::room::width;
use crate::scene::{Anchor, Node, PathStep};
use crate::sheet::Mapping;

/// An end angle, metres and radians in the side view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Wedge {
    /// Wheel centre; its height is the radius of the arc that the line touches.
    pub wheel: Point,
    /// The point that limits the angle.
    pub limit: Point,
    /// The angle.
    pub angle: f64,
    /// Whether it opens to the rear or to the front.
    pub end: End,
}

/// Which end of the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum End {
    Rear,
    Front,
}

/// Draws the wedge with its arc, its label and a ring round the limiting point. Angles that are not
/// between 0 and 90° are not drawn: there is no wedge to see.
pub(crate) fn wedge(wedge: &Wedge, map: &Mapping, words: &str, letters: f64) -> Vec<Node> {
    let Wedge { wheel, limit, angle, end } = *wedge;
    if !(angle > 0.01 && angle < 1.55 && wheel.is_finite() && limit.is_finite()) {
        return Vec::new();
    }
    let out = match end {
        End::Rear => -1.0,
        End::Front => 1.0,
    };
    // The line touches the arc and meets the ground r·tan(a/2) outward of the wheel's centre.
    let foot = Point::new(wheel.x + out * wheel.y * libm::tan(angle / 2.0), 0.0);
    let direction = Point::new(out * libm::cos(angle), libm::sin(angle));
    let reach = foot.distance(limit);
    let centre = map.at(foot);
    // Whatever the reach, line and arcs stay on the sheet.
    let room = match end {
        End::Rear => centre.x - 1.0,
        End::Front => map.size.0 - centre.x - 1.0,
    };
    let outer = (map.length(reach) * 1.08).min(room);
    let radius = outer * 0.68;
    let far = (map.length(reach) * 1.18).min(room / libm::cos(angle).max(0.1));
    let far = centre + Point::new(direction.x, -direction.y) * far;
    let (from, to) = match end {
        End::Rear => (core::f64::consts::PI, core::f64::consts::PI - angle),
        End::Front => (0.0, angle),
    };
    let mut area = ink::arc_steps(centre, outer, from, to);
    if let Some(PathStep::Move(first)) = area.first().copied() {
        area[0] = PathStep::Line(first);
    }
    area.insert(0, PathStep::Move(centre));
    area.push(PathStep::Close);
    let mut nodes = vec![
        Node::Path(crate::scene::Path { look: Look::fill(Tone::Wedge), steps: area }),
        ink::line(Look::line(Pen::Accent), centre, far),
        ink::arc(Look::line(Pen::Dimension), centre, radius, from, to),
    ];
    nodes.extend(arrows(centre, radius, from, to));
    nodes.push(ink::text(
        Letter::Dimension,
        label(centre, outer, (from, to), map, words, letters),
        Anchor::Middle,
        letters,
        words,
    ));
    nodes.push(ink::circle(Look::new(Pen::Accent, Tone::Paper), map.at(limit), 0.9));
    nodes
}

/// Where the label stands: beyond the area if the sheet has room there, else within the arc.
fn label(centre: Point, outer: f64, (from, to): (f64, f64), map: &Mapping, words: &str, letters: f64) -> Point {
    let half = width(words, letters) / 2.0;
    let unit = Point::unit(f64::midpoint(from, to));
    let along = |reach: f64| centre + Point::new(unit.x, -unit.y) * reach + Point::new(0.0, letters * 0.35);
    let beyond = along(outer + half + 0.8);
    let fits = beyond.x - half > 0.5 && beyond.x + half < map.size.0 - 0.5;
    if fits { beyond } else { along(outer * 0.5) }
}

/// Arrowheads at both ends of an arc, where it is long enough for them.
fn arrows(centre: Point, radius: f64, from: f64, to: f64) -> Vec<Node> {
    if radius * (to - from).abs() < 8.0 {
        return Vec::new();
    }
    let sign = (to - from).signum();
    [(from, sign), (to, -sign)]
        .map(|(angle, sign)| {
            let unit = Point::unit(angle);
            let tip = centre + Point::new(unit.x, -unit.y) * radius;
            // Bent inward by half the head's own turn, so that it lies along the arc.
            let bend = angle + sign * 1.3 / radius;
            let along = Point::new(-libm::sin(bend), -libm::cos(bend)) * sign;
            arrow(tip, along)
        })
        .to_vec()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plain::Plain;
    use crate::sheet::{Extent, Margins, Sheet};

    #[test]
    fn the_line_goes_through_the_limiting_point_and_touches_the_tyres_arc() {
        // d sin a + h cos a = r with a = 30°, r = 0.4, d = 1: h = (0.4 − 0.5) / cos 30°.
        let angle = core::f64::consts::FRAC_PI_6;
        let h = (0.4 - 0.5) / libm::cos(angle);
        let limit = Point::new(-1.0, 0.4 - h);
        let extent = Extent { left: -2.0, right: 1.0, low: 0.0, high: 2.0 };
        let margins = Margins { left: 0.0, right: 0.0, top: 0.0, bottom: 0.0 };
        let map = Mapping::fit(extent, margins, &Sheet::new(300.0, 300.0, &Plain), false);
        let it = Wedge { wheel: Point::new(0.0, 0.4), limit, angle, end: End::Rear };
        let nodes = wedge(&it, &map, "30°", 3.0);
        let Node::Path(line) = &nodes[1] else { panic!("the line is second") };
        let [PathStep::Move(a), PathStep::Line(b)] = line.steps[..] else { panic!("straight") };
        let off = |p: Point| (b - a).cross(p - a).abs() / a.distance(b);
        assert!(off(map.at(limit)) < 1e-9);
        assert!((off(map.at(Point::new(0.0, 0.4))) - map.length(0.4)).abs() < 1e-9);
    }
}
