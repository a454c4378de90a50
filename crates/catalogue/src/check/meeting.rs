//! Ports that could hardly meet anything: holes off their reference or in one another, faces that look
//! away from what they carry, frames that nothing holds, bolts that the two sides state otherwise.

use fitup_core::quantity::shortest;

use super::each_item;
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::CatalogueFile;
use crate::wire::body::Body;
use crate::wire::port::{BoltPattern, End, Port, PortKind, Role, Towards};

/// How far two statements of one bolt may differ, as a share: rounding between inches and millimetres.
/// Common practice, no source.
const SAME_BOLT: f64 = 0.02;

/// Checks how a file's ports can meet.
pub fn meeting(file: &CatalogueFile, report: &mut Report) {
    each_item(file, |at, body| {
        let place = at.field("ports");
        for (index, port) in body.ports.iter().enumerate() {
            let at = place.index(index);
            looks(port, at, report);
            if let Some((pattern, at_pattern)) = pattern(port) {
                let at = at.field("kind");
                let at = at.field(at_pattern[0]);
                match at_pattern.get(1) {
                    Some(inner) => holes(pattern, at.field(inner), report),
                    None => holes(pattern, at, report),
                }
            }
        }
    });
    let table = At::top("frames");
    for (index, row) in file.frames.iter().enumerate() {
        for (role, end) in [(Role::AxleAnchor, End::Carried), (Role::Rack, End::Carrier)] {
            if !row.ports.iter().any(|port| port.role == role && port.end == end) {
                let problem = Problem::new(Code::FrameWithoutPort, table.index(index).field("ports"));
                report.add(problem.with("role", role.name()).with("end", end.name()));
            }
        }
    }
    bolts(file, report);
}

/// The bolt pattern of a port, and the way to it from `kind`.
fn pattern(port: &Port) -> Option<(&BoltPattern, &'static [&'static str])> {
    match &port.kind {
        PortKind::BoltPattern(pattern) => Some((pattern, &["bolt_pattern"])),
        PortKind::SeatBase(base) => Some((&base.pattern, &["seat_base", "pattern"])),
        _ => None,
    }
}

/// A rack and a hitch look to the rear on what carries, to the front on what is carried.
fn looks(port: &Port, at: At<'_>, report: &mut Report) {
    let Some(pose) = port.pose.filter(|_| matches!(port.role, Role::Rack | Role::Hitch)) else { return };
    let (away, expected) = match port.end {
        End::Carrier => (Towards::Front, Towards::Rear),
        End::Carried => (Towards::Rear, Towards::Front),
    };
    if pose.faces == away {
        let problem = Problem::new(Code::LooksAway, at.field("pose").field("faces")).with("found", away.name());
        report.add(problem.with("role", port.role.name()).with("expected", expected.name()));
    }
}

fn holes(pattern: &BoltPattern, at: At<'_>, report: &mut Report) {
    let place = at.field("holes");
    for (index, hole) in pattern.holes.iter().enumerate() {
        for (first, other) in pattern.holes[..index].iter().enumerate() {
            let apart = libm::hypot(hole.u.0 - other.u.0, hole.v.0 - other.v.0);
            if apart > 0.0 && apart < 0.5 * (hole.diameter.0 + other.diameter.0) {
                let problem = Problem::new(Code::HolesOverlap, place.index(index)).with("first", first + 1);
                report.add(problem.with("second", index + 1).with("apart", told(apart)));
            }
        }
        if let Some(bolt) =
            pattern.bolt.filter(|bolt| bolt.0 > hole.diameter.0 * (1.0 + SAME_BOLT) && hole.diameter.0 > 0.0)
        {
            let problem = Problem::new(Code::BoltAboveHole, place.index(index).field("diameter"));
            report.add(problem.with("found", told(hole.diameter.0)).with("bolt", told(bolt.0)));
        }
    }
    let span = |of: fn(&crate::wire::port::Hole) -> f64| {
        let least = pattern.holes.iter().map(of).fold(f64::INFINITY, f64::min);
        (least, pattern.holes.iter().map(of).fold(f64::NEG_INFINITY, f64::max))
    };
    let (u, v) = (span(|hole| hole.u.0), span(|hole| hole.v.0));
    if pattern.holes.len() < 2 {
        return;
    }
    // The reference may lie outside of the holes, but hardly farther than they are apart.
    let size = (u.1 - u.0).max(v.1 - v.0);
    let off = |(least, most): (f64, f64)| least > size || most < -size;
    if size > 0.0 && (off(u) || off(v)) {
        let problem = Problem::new(Code::HolesOffReference, place).with("u", told(0.5 * (u.0 + u.1)));
        report.add(problem.with("v", told(0.5 * (v.0 + v.1))));
    }
}

/// Sets that are listed together and state other bolts for one joint.
fn bolts(file: &CatalogueFile, report: &mut Report) {
    let mut bodies: Vec<Body> = Vec::new();
    each_item(file, |_, body| bodies.push(body));
    let find = |id: &str| bodies.iter().find(|body| body.id == id);
    let mut said: Vec<(String, String, Role)> = Vec::new();
    for (index, set) in file.guide.iter().flat_map(|guide| &guide.sets).enumerate() {
        for (carrier, carried) in [(&set.machine, &set.frame), (&set.frame, &set.implement), (&set.frame, &set.seat)] {
            let (Some(a), Some(b)) = (find(carrier), find(carried)) else { continue };
            for role in [Role::AxleAnchor, Role::FrontAnchor, Role::Rack, Role::SeatDeck] {
                let stated = |body: &Body, end: End| -> Vec<f64> {
                    let of_role = body.ports.iter().filter(|port| port.role == role && port.end == end);
                    of_role.filter_map(|port| pattern(port)?.0.bolt).map(|bolt| bolt.0).collect()
                };
                let (ours, theirs) = (stated(a, End::Carrier), stated(b, End::Carried));
                let alike = |one: &f64| theirs.iter().any(|other| (one - other).abs() <= SAME_BOLT * one.max(*other));
                let key = (carrier.clone(), carried.clone(), role);
                if let (Some(our), Some(their)) = (ours.first(), theirs.first())
                    && !ours.iter().any(alike)
                    && !said.contains(&key)
                {
                    said.push(key);
                    let sets = At::top("guide");
                    let sets = sets.field("sets");
                    let problem = Problem::new(Code::BoltsDisagree, sets.index(index)).with("role", role.name());
                    let problem = problem.with("a", shortened(carrier)).with("bolt_a", told(*our));
                    report.add(problem.with("b", shortened(carried)).with("bolt_b", told(*their)));
                }
            }
        }
    }
}

fn told(number: f64) -> String {
    shortest((number * 1e3).round() / 1e3)
}
