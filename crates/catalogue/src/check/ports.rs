//! Ports: each can be placed and can mate with something.

use std::collections::BTreeMap;

use fitup_core::fit::mating::thread::Thread;

use super::figures::{above_zero, any_value, not_below_zero};
use super::ranges::upright_whole;
use super::rows::not_blank;
use crate::at::At;
use crate::problem::{Code, Problem};
use crate::report::Report;
use crate::shortened::shortened;
use crate::wire::body::{Body, Serials};
use crate::wire::port::{
    BoltPattern, End, HookRack, Pins, Port, PortKind, Pose, PowerTakeOff, Role, ThreePoint, Towards,
};

/// Most holes of one pattern. Plates of the trade have up to some 24; the search for the best
/// match grows with the square of the number. No source.
pub const MOST_HOLES: usize = 100;

/// The categories of ISO 730, and 0 as the trade names the size below 1N.
const CATEGORIES: [&str; 9] = ["0", "1N", "1", "2N", "2", "3N", "3", "4N", "4"];

/// Checks the ports of an item.
pub fn ports(at: At<'_>, body: Body<'_>, report: &mut Report) {
    let place = at.field("ports");
    let mut names: BTreeMap<&str, usize> = BTreeMap::new();
    for (index, one) in body.ports.iter().enumerate() {
        let at = place.index(index);
        not_blank(&one.name, at.field("name"), report);
        if names.insert(&one.name, index).is_some() {
            report.add(Problem::new(Code::DuplicatePort, at.field("name")).with("found", shortened(&one.name)));
        }
        port(one, at, report);
    }
}

fn port(port: &Port, at: At<'_>, report: &mut Report) {
    if let Some(serials) = port.serials {
        if serials == Serials::default() {
            report.add(Problem::new(Code::EmptyRecord, at.field("serials")));
        }
        upright_whole(serials.first, serials.last, at.field("serials"), report);
    }
    not_below_zero(port.tolerance, at.field("tolerance"), report);
    match port.pose {
        Some(pose) => square(pose, at.field("pose"), report),
        None if places(port.role) => report.add(Problem::new(Code::PoseMissing, at)),
        None => {}
    }
    let expected = kinds_of(port.role);
    if !expected.contains(&port.kind.name()) {
        let problem = Problem::new(Code::KindNotOfRole, at.field("kind")).with("kind", port.kind.name());
        report.add(problem.with("role", port.role.name()).with("expected", expected.join(", ")));
    }
    let kind = at.field("kind");
    let at = kind.field(port.kind.name());
    match &port.kind {
        PortKind::BoltPattern(pattern) => bolt_pattern(pattern, at, report),
        PortKind::SeatBase(base) => {
            bolt_pattern(&base.pattern, at.field("pattern"), report);
            above_zero(base.pedestal, at.field("pedestal"), report);
        }
        PortKind::Pins(it) => pins(it, at, report),
        PortKind::HookRack(it) => hook_rack(it, at, report),
        PortKind::ThreePoint(it) => three_point(it, port.end, at, report),
        PortKind::PowerTakeOff(it) => power_take_off(it, at, report),
        PortKind::Coupler(it) => {
            not_blank(&it.standard, at.field("standard"), report);
            not_blank(&it.size, at.field("size"), report);
        }
        PortKind::Electric(it) => {
            not_blank(&it.connector, at.field("connector"), report);
            not_blank(&it.function, at.field("function"), report);
        }
    }
}

/// Whether a joint of the role has a place: without a pose nothing can be put there.
const fn places(role: Role) -> bool {
    matches!(role, Role::AxleAnchor | Role::FrontAnchor | Role::Rack | Role::Hitch | Role::SeatDeck)
}

/// The kinds of port that can serve a role.
const fn kinds_of(role: Role) -> &'static [&'static str] {
    match role {
        Role::AxleAnchor | Role::FrontAnchor => &["bolt_pattern", "pins", "hook_rack"],
        Role::Rack => &["hook_rack", "pins", "bolt_pattern"],
        Role::Hitch => &["three_point"],
        Role::SeatDeck => &["seat_base", "bolt_pattern"],
        Role::PowerTakeOff => &["power_take_off"],
        Role::Pressure | Role::Return | Role::CaseDrain => &["coupler"],
        Role::Wiring => &["electric"],
    }
}

fn square(pose: Pose, at: At<'_>, report: &mut Report) {
    let axis = |towards: Towards| match towards {
        Towards::Front | Towards::Rear => 'x',
        Towards::Left | Towards::Right => 'y',
        Towards::Up | Towards::Down => 'z',
    };
    if axis(pose.faces) == axis(pose.up) {
        let problem = Problem::new(Code::PoseNotSquare, at).with("faces", pose.faces.name());
        report.add(problem.with("up", pose.up.name()));
    }
}

fn bolt_pattern(pattern: &BoltPattern, at: At<'_>, report: &mut Report) {
    above_zero(pattern.plate, at.field("plate"), report);
    above_zero(pattern.bolt, at.field("bolt"), report);
    not_below_zero(pattern.edge, at.field("edge"), report);
    above_zero(pattern.pair_width, at.field("pair_width"), report);
    above_zero(pattern.torque, at.field("torque"), report);
    if let Some(thread) = pattern.thread.as_deref().filter(|thread| Thread::read(thread).is_none()) {
        report.add(Problem::new(Code::ThreadNotRead, at.field("thread")).with("found", shortened(thread)));
    }
    let place = at.field("holes");
    if pattern.holes.is_empty() {
        report.add(Problem::new(Code::NoHoles, place));
        return;
    }
    if pattern.holes.len() > MOST_HOLES {
        let problem = Problem::new(Code::TooManyHoles, place).with("found", pattern.holes.len());
        report.add(problem.with("greatest", MOST_HOLES));
        return;
    }
    if let Some(required) = pattern.required {
        let holes = pattern.holes.len();
        if required == 0 {
            report.add(Problem::new(Code::NotPositive, at.field("required")).with("found", 0));
        } else if required as usize > holes {
            let problem = Problem::new(Code::MoreBoltsThanHoles, at.field("required")).with("required", required);
            report.add(problem.with("holes", holes));
        }
    }
    for (index, hole) in pattern.holes.iter().enumerate() {
        let at = place.index(index);
        above_zero(hole.diameter, at.field("diameter"), report);
        if let Some(slot) = hole.slot {
            above_zero(slot.travel, at.field("slot").field("travel"), report);
        }
        let same = |other: &crate::wire::port::Hole| other.u == hole.u && other.v == hole.v;
        if let Some(first) = pattern.holes[..index].iter().position(same) {
            report.add(Problem::new(Code::HolesCoincide, at).with("first", first + 1).with("second", index + 1));
        }
    }
}

fn pins(pins: &Pins, at: At<'_>, report: &mut Report) {
    above_zero(pins.spread, at.field("spread"), report);
    let place = at.field("points");
    if pins.points.is_empty() {
        report.add(Problem::new(Code::NoPoints, place));
    }
    for (index, point) in pins.points.iter().enumerate() {
        let at = place.index(index);
        above_zero(point.diameter, at.field("diameter"), report);
        above_zero(point.width, at.field("width"), report);
        any_value(point.height, at.field("height"), report);
    }
}

fn hook_rack(rack: &HookRack, at: At<'_>, report: &mut Report) {
    above_zero(rack.diameter, at.field("diameter"), report);
    above_zero(rack.spread, at.field("spread"), report);
    above_zero(rack.drop, at.field("drop"), report);
    above_zero(rack.latch, at.field("latch"), report);
    not_below_zero(rack.setback, at.field("setback"), report);
}

fn three_point(hitch: &ThreePoint, end: End, at: At<'_>, report: &mut Report) {
    for (index, category) in hitch.categories.iter().enumerate() {
        if !CATEGORIES.contains(&category.as_str()) {
            let place = at.field("categories");
            let problem = Problem::new(Code::UnknownWord, place.index(index)).with("found", shortened(category));
            report.add(problem.with("expected", CATEGORIES.join(", ")));
        }
    }
    // Lift is the carrier's to give; on the carried side nothing of it is looked at.
    if end == End::Carrier {
        above_zero(hitch.lift, at.field("lift"), report);
        above_zero(hitch.lift_610, at.field("lift_610"), report);
    }
    above_zero(hitch.lower_pin, at.field("lower_pin"), report);
    above_zero(hitch.upper_pin, at.field("upper_pin"), report);
    above_zero(hitch.span, at.field("span"), report);
    above_zero(hitch.mast, at.field("mast"), report);
}

fn power_take_off(shaft: &PowerTakeOff, at: At<'_>, report: &mut Report) {
    if let Some(kind) = shaft.shaft_type
        && !(1..=4).contains(&kind)
    {
        let problem = Problem::new(Code::NumberOutOfRange, at.field("shaft_type")).with("found", kind);
        report.add(problem.with("least", 1).with("greatest", 4));
    }
    for (index, speed) in shaft.speeds.iter().enumerate() {
        if *speed == 0 {
            report.add(Problem::new(Code::NotPositive, at.field("speeds").index(index)).with("found", 0));
        }
    }
    above_zero(shaft.power, at.field("power"), report);
}
