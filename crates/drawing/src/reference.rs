//! An item by itself in its own axes, as its data have it: outlines, origin, ports with the way they
//! face. For whoever keeps the data, not for a shopper.

use std::fmt::Write as _;

use fitup_core::item::{Body, PortKind, View, flatten};

use crate::svg::escaped;

/// Room round what is drawn, as a share of its greater side.
const MARGIN: f64 = 0.12;

/// One view of an item as an SVG element in millimetres; nothing where nothing is drawn in it. Its
/// classes are `outline`, `origin`, `port` and `hole`.
pub fn reference(body: &Body, view: View) -> Option<String> {
    let mut lines: Vec<Vec<(f64, f64)>> = Vec::new();
    for shape in body.shapes.iter().filter(|shape| shape.view == view) {
        lines.extend(flatten(shape).into_iter().map(|run| run.into_iter().map(|(a, b)| (a * 1e3, b * 1e3)).collect()));
    }
    let on_view = |[x, y, z]: [f64; 3]| match view {
        View::Side => (x, z),
        View::Plan => (x, y),
        View::Rear => (y, z),
    };
    let ports: Vec<_> = body.ports.iter().filter_map(|port| Some((port, port.pose?))).collect();
    let place = |pose: fitup_core::item::Pose| on_view([pose.at.x.value.mm(), pose.at.y.mm(), pose.at.z.value.mm()]);
    let points = lines.iter().flatten().copied().chain(ports.iter().map(|(_, pose)| place(*pose)));
    let points: Vec<(f64, f64)> = points.chain([(0.0, 0.0)]).collect();
    if lines.is_empty() && ports.is_empty() {
        return None;
    }
    let span = |of: fn(&(f64, f64)) -> f64| {
        let least = points.iter().map(of).fold(f64::INFINITY, f64::min);
        (least, points.iter().map(of).fold(f64::NEG_INFINITY, f64::max))
    };
    let (across, up) = (span(|point| point.0), span(|point| point.1));
    let size = (across.1 - across.0).max(up.1 - up.0).max(100.0);
    let room = MARGIN * size;
    let mut out = String::new();
    let (left, top) = (across.0 - room, -up.1 - room);
    let (width, height) = (across.1 - across.0 + 2.0 * room, up.1 - up.0 + 2.0 * room);
    let _ = write!(
        out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{left:.1} {top:.1} {width:.1} {height:.1}\" stroke-width=\"{:.2}\" font-size=\"{:.1}\">",
        size / 250.0,
        size / 28.0,
    );
    for line in &lines {
        let points: Vec<String> = line.iter().map(|(a, b)| format!("{a:.1},{:.1}", -b)).collect();
        let _ = write!(out, "<polyline class=\"outline\" points=\"{}\"/>", points.join(" "));
    }
    let arm = size / 30.0;
    let _ = write!(out, "<path class=\"origin\" d=\"M {:.1} 0 H {arm:.1} M 0 {:.1} V {arm:.1}\"/>", -arm, -arm);
    for (port, pose) in ports {
        let (a, b) = place(pose);
        let (da, db) = on_view(pose.faces.unit());
        let _ = write!(
            out,
            "<g class=\"port\"><path d=\"M {a:.1} {:.1} l {:.1} {:.1}\"/><circle cx=\"{a:.1}\" cy=\"{:.1}\" r=\"{:.1}\"/>",
            -b,
            2.0 * arm * da,
            -2.0 * arm * db,
            -b,
            size / 120.0,
        );
        let pattern = match &port.kind {
            PortKind::BoltPattern(pattern) => Some(pattern),
            PortKind::SeatBase(base) => Some(&base.pattern),
            _ => None,
        };
        let (faces, v) = (pose.faces.unit(), pose.up.unit());
        // Seen from before the face: u to the right of one who looks at it with v upwards.
        let u =
            [v[1] * faces[2] - v[2] * faces[1], v[2] * faces[0] - v[0] * faces[2], v[0] * faces[1] - v[1] * faces[0]];
        for hole in pattern.iter().flat_map(|pattern| &pattern.holes) {
            let (along, high) = (hole.u.value.mm(), hole.v.value.mm());
            let (ha, hb) = on_view(std::array::from_fn(|axis| along * u[axis] + high * v[axis]));
            let radius = 0.5 * hole.diameter.value.mm();
            let _ =
                write!(out, "<circle class=\"hole\" cx=\"{:.1}\" cy=\"{:.1}\" r=\"{radius:.1}\"/>", a + ha, -b - hb);
        }
        let _ = write!(
            out,
            "<text x=\"{:.1}\" y=\"{:.1}\">{}</text></g>",
            a + arm / 2.0,
            -b - arm / 2.0,
            escaped(&port.name)
        );
    }
    out.push_str("</svg>");
    Some(out)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ports_stand_where_their_data_say_and_nothing_is_drawn_of_nothing() {
        let body = fitup_yard::Yard::new().catalogue.body(fitup_yard::MACHINE).clone();
        let drawn = reference(&body, View::Side).expect("it has ports");
        for port in body.ports.iter().filter(|port| port.pose.is_some()) {
            assert!(drawn.contains(&format!(">{}</text>", port.name)), "{drawn}");
        }
        let bare = Body { shapes: Vec::new(), ports: Vec::new(), ..body };
        assert_eq!(reference(&bare, View::Plan), None);
    }
}
