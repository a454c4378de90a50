//! From anchor to anchor of one item, as a tape takes it: from the first hole or pin of the axle anchor to that of the front
//! anchor, along the machine and in height.

use crate::build::Measurement;
use crate::fit::desk::joined::frame;
use crate::item::{Body, Port, PortKind, Refused, Role};
use crate::quantity::{Length, Source, Stated};

/// How far the front anchor is ahead of the axle anchor.
pub(crate) const ALONG: &str = "from-axle-along";

/// How much higher it is.
pub(crate) const HEIGHT: &str = "from-axle-height";

/// Both, as checks and measurements name them, on the front anchor.
pub(crate) const NAMES: [&str; 2] = [ALONG, HEIGHT];

/// The indices of an item's axle anchor and of this front anchor, if it has one of each whose places are stated.
pub(crate) fn anchors(body: &Body, front: &str) -> Option<[usize; 2]> {
    let ports = &body.ports;
    let is_front = |port: &Port| port.role == Role::FrontAnchor && port.name == front;
    let at = ports.iter().position(is_front)?;
    let mut axles = (0..ports.len()).filter(|&at| ports[at].role == Role::AxleAnchor);
    let axle = axles.next()?;
    (axles.next().is_none() && [axle, at].iter().all(|&at| first(&ports[at]).is_some())).then_some([axle, at])
}

/// The first hole or pin of a port in its item's axes.
fn first(port: &Port) -> Option<[f64; 3]> {
    let [u, v] = match &port.kind {
        PortKind::Pins(pins) => {
            let point = pins.points.first()?;
            [point.across, point.height].map(|stated| stated.map_or(Length::ZERO, |stated| stated.value))
        }
        kind => kind.pattern()?.holes.first().map(|hole| [hole.u.value, hole.v.value])?,
    };
    Some(frame(&port.pose?)?.point(u.m(), v.m(), 0.0))
}

/// What is stated of one of the two, with its half range.
pub(crate) fn stated(body: &Body, front: &str, name: &str) -> Option<(Length, Length)> {
    let [axle, front] = anchors(body, front)?.map(|at| &body.ports[at]);
    let (from, to) = (first(axle)?, first(front)?);
    let of_place =
        |port: &Port, x: bool| port.pose.map(|pose| port.half_range(if x { &pose.at.x } else { &pose.at.z }));
    let along = name == ALONG;
    let axis = if along { 0 } else { 2 };
    let value = Length::from_m(to[axis] - from[axis]);
    let is_known = name == HEIGHT || along && value > Length::ZERO;
    is_known.then_some((value, of_place(axle, along)? + of_place(front, along)?))
}

/// Why such a measurement cannot be entered.
pub(super) fn refused(port: &Port, measurement: &Measurement) -> Result<(), Refused> {
    if port.role != Role::FrontAnchor || !NAMES.contains(&measurement.dimension.as_str()) {
        return Err(Refused::NoDimension);
    }
    let is_length = measurement.dimension == ALONG;
    if is_length && measurement.value <= Length::ZERO {
        return Err(Refused::Impossible);
    }
    if is_length && measurement.half_range() > measurement.value { Err(Refused::HalfRange) } else { Ok(()) }
}

/// Moves the front anchor to where it was measured from the axle anchor. The two are then known against each other as well as
/// it was measured, wherever the item has its origin.
pub(crate) fn enter(ports: &mut [Port], [axle, front]: [usize; 2], measured: &Measurement) {
    let (Some(from), Some(to)) = (first(&ports[axle]), first(&ports[front])) else { return };
    let along = measured.dimension == ALONG;
    let axis = if along { 0 } else { 2 };
    let shift = measured.value - Length::from_m(to[axis] - from[axis]);
    let mut put = |at: usize, shift: Length, half: Length| {
        let Some(pose) = &mut ports[at].pose else { return };
        let coordinate = if along { &mut pose.at.x } else { &mut pose.at.z };
        let value = coordinate.value + shift;
        *coordinate = Stated { value, plus_minus: Some(half), source: Source::Measured(measured.tool) };
    };
    put(front, shift, measured.half_range());
    put(axle, Length::ZERO, Length::ZERO);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::{Build, Choices, Side};
    use crate::fit::context::Context;
    use crate::fit::desk::Desk;
    use crate::item::{ItemRef, MachineId};
    use crate::quantity::Tool;
    use crate::search::tests::catalogues;
    use crate::search::tests::chance::Chance;

    #[test]
    fn the_front_anchor_comes_to_lie_where_it_was_measured_and_the_axle_anchor_stays() {
        let mut tried = 0;
        for seed in 0..40 {
            let desk = Desk::new(catalogues::catalogue(&Chance::new(seed)));
            let item = ItemRef::Machine(MachineId::at(0));
            let body = desk.catalogue().body(item);
            let Some(front) = body.ports.iter().find(|port| port.role == Role::FrontAnchor) else { continue };
            let Some([axle, at]) = anchors(body, &front.name) else { continue };
            let Some((length, _)) = stated(body, &front.name, ALONG) else { continue };
            let longer = length + Length::from_mm(3.0);
            let entry = Measurement::new(item, front.name.clone(), ALONG, longer, Tool::Tape);
            let choices = Choices { machine: Some(MachineId::at(0)), ..Choices::default() };
            let build = Build { choices, side: Side { measured: vec![entry], ..Side::default() } };
            let context = Context::new(&desk, &build);
            let place = |at: usize| context.port(item, at).pose.unwrap().at;
            let before = |at: usize| body.ports[at].pose.unwrap().at;
            assert!((place(at).x.value - before(at).x.value - Length::from_mm(3.0)).abs() < Length::from_mm(1e-9));
            assert_eq!((place(axle).x.value, place(at).z), (before(axle).x.value, before(at).z));
            assert_eq!(place(axle).x.plus_minus, Some(Length::ZERO));
            assert_eq!(place(at).x.plus_minus, Some(Length::from_mm(1.5)));
            tried += 1;
        }
        assert!(tried > 10, "{tried}");
    }

    #[test]
    fn only_a_front_anchor_has_such_a_distance_and_it_is_above_zero() {
        let desk = Desk::new(catalogues::catalogue(&Chance::new(1)));
        let item = ItemRef::Machine(MachineId::at(0));
        let ports = &desk.catalogue().body(item).ports;
        for port in ports {
            let with = |name: &str, mm| Measurement::new(item, "", name, Length::from_mm(mm), Tool::Tape);
            let is_front = port.role == Role::FrontAnchor;
            let said = [with(ALONG, 1200.0), with(ALONG, -1.0), with(ALONG, 1.0), with(HEIGHT, -50.0)];
            let found = said.map(|entry| refused(port, &entry));
            let wanted = [Ok(()), Err(Refused::Impossible), Err(Refused::HalfRange), Ok(())];
            assert_eq!(found, if is_front { wanted } else { [Err(Refused::NoDimension); 4] });
        }
    }
}
