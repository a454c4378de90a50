//! Ports as the tape, the caliper and the eye found them on the unit in the yard.

use std::collections::BTreeMap;

use super::anchors;
use crate::build::{Measurement, Presence, Side};
use crate::fit::mating::spans::{Span, by_spans};
use crate::item::{Body, ItemRef, Port, Refused, span_of};
use crate::quantity::{Length, Source, Stated, Tool};

/// The longest that anything on a unit is measured. Common sense, no source; it catches a slip of the decimal point.
pub const LONGEST: Length = Length::from_m(100.0);

/// The port with what was measured on it or found missing, or `None` if nothing was. What was not looked at keeps the
/// catalogue's value, half range and source. What cannot be entered is left out; [`refused`] tells of it.
pub(crate) fn found(side: &Side, item: ItemRef, port: &Port) -> Option<Port> {
    let mut found = port.clone();
    let mut touched = false;
    for measurement in side.measured.iter().filter(|m| m.item == item && m.port == port.name) {
        touched |= enter(&mut found, measurement).is_ok();
    }
    enter_spans(&mut found, side, item);
    touched |= drop_missing_holes(&mut found, side, item);
    touched.then_some(found)
}

/// The names of all that can be measured on a port of an item: its dimensions, how far its holes or points are apart, and from the
/// axle anchor to a front anchor.
pub fn measurable(body: &Body, port: &Port) -> Vec<String> {
    let own = port.dimensions().into_iter().map(|dimension| dimension.name.to_string());
    let anchors = anchors::NAMES.into_iter().filter(|name| anchors::stated(body, &port.name, name).is_some());
    own.chain(port.spans()).chain(anchors.map(str::to_owned)).collect()
}

/// Enters one measurement. It is as unsure as it says, as its tool usually is or as its readings are apart, whatever the port's
/// tolerance.
fn enter(port: &mut Port, measurement: &Measurement) -> Result<(), Refused> {
    let (value, half_range) = (measurement.value, measurement.half_range());
    let is_length = |length: &Length| length.abs() <= LONGEST;
    if !is_length(&value) || !measurement.readings.iter().all(is_length) {
        return Err(Refused::Impossible);
    }
    let said = measurement.plus_minus.unwrap_or_default();
    if !is_length(&half_range) || said < Length::ZERO || said.m().is_nan() {
        return Err(Refused::HalfRange);
    }
    if span_of(&measurement.dimension).is_some() {
        return of_span(port, measurement);
    }
    if anchors::NAMES.contains(&measurement.dimension.as_str()) {
        return anchors::refused(port, measurement);
    }
    let source = Source::Measured(measurement.tool);
    port.enter(&measurement.dimension, Stated { value, plus_minus: Some(half_range), source })
}

/// Why a distance between two holes or points cannot be entered.
fn of_span(port: &Port, measurement: &Measurement) -> Result<(), Refused> {
    if port.span(&measurement.dimension).is_none() {
        return Err(Refused::NoDimension);
    }
    if measurement.value <= Length::ZERO {
        return Err(Refused::Impossible);
    }
    if measurement.half_range() > measurement.value { Err(Refused::HalfRange) } else { Ok(()) }
}

/// Moves the holes or points to where the distances between them say that they are; of two of one pair the later counts.
fn enter_spans(port: &mut Port, side: &Side, item: ItemRef) {
    let mut latest: BTreeMap<[usize; 2], &Measurement> = BTreeMap::new();
    for measurement in side.measured.iter().filter(|m| m.item == item && m.port == port.name) {
        if let Some((_, [a, b])) = span_of(&measurement.dimension)
            && enter(&mut port.clone(), measurement).is_ok()
        {
            latest.insert([a.min(b), a.max(b)], measurement);
        }
    }
    if latest.is_empty() {
        return;
    }
    let (_, points) = port.points();
    let places: Vec<[f64; 2]> = points.iter().map(|point| point.map(|stated| stated.value.m())).collect();
    let half_ranges: Vec<[f64; 2]> =
        points.iter().map(|point| [0, 1].map(|axis| port.half_range(&point[axis]).m())).collect();
    let span = |(&between, m): (&[usize; 2], &&Measurement)| Span {
        between,
        length: m.value.m(),
        half_range: m.half_range().m(),
    };
    let spans: Vec<Span> = latest.iter().map(span).collect();
    let Some(found) = by_spans(&places, &half_ranges, &spans) else { return };
    let coarsest = latest.values().map(|m| m.tool).max().unwrap_or(Tool::Tape);
    let moved = points.iter().enumerate().map(|(at, point)| {
        let is_spanned = latest.keys().any(|between| between.contains(&at));
        [0, 1].map(|axis| {
            if !is_spanned {
                return point[axis];
            }
            let plus_minus = Some(Length::from_m(found.half_ranges[at][axis]));
            // What rests on the drawing still is no measurement.
            let is_measured = found.from_before[at][axis] <= MEASURED;
            let source = if is_measured { Source::Measured(coarsest) } else { point[axis].source };
            Stated { value: Length::from_m(found.points[at][axis]), plus_minus, source }
        })
    });
    port.put_points(&moved.collect::<Vec<_>>());
}

/// Metres of a coordinate's half range that may rest on the drawing where it counts as measured. Own choice, far below any tool.
const MEASURED: f64 = 1e-5;

/// Why a measurement cannot be entered on a port, if it cannot.
pub fn refusal(port: &Port, measurement: &Measurement) -> Option<Refused> {
    enter(&mut port.clone(), measurement).err()
}

/// Takes out the holes that were looked for and are not there ("port/hole-3").
fn drop_missing_holes(port: &mut Port, side: &Side, item: ItemRef) -> bool {
    let name = &port.name;
    let there = |number: usize| side.looked.get(&(item, format!("{name}/hole-{number}"))) != Some(&Presence::No);
    let Some(pattern) = port.kind.pattern_mut() else { return false };
    let before = pattern.holes.len();
    let mut number = 0;
    pattern.holes.retain(|_| {
        number += 1;
        there(number)
    });
    pattern.holes.len() != before
}

/// How far a hole may be off: the largest half range among its place and diameter.
pub(crate) fn hole_half_range(port: &Port, hole: usize) -> Length {
    let hole = port.kind.pattern().and_then(|pattern| pattern.holes.get(hole));
    hole.map_or(Length::ZERO, |hole| of_all(port, &[hole.u, hole.v, hole.diameter]))
}

/// How far the least known of the holes may be off.
pub(crate) fn greatest_hole_half_range(port: &Port) -> Length {
    let holes = port.kind.pattern().map_or(0, |pattern| pattern.holes.len());
    (0..holes).map(|hole| hole_half_range(port, hole)).fold(Length::ZERO, Length::max)
}

/// How far the port's place in the side plane may be off: the larger of x and z.
pub(crate) fn place_half_range(port: &Port) -> Length {
    port.pose.map_or(Length::ZERO, |pose| of_all(port, &[pose.at.x, pose.at.z]))
}

fn of_all(port: &Port, lengths: &[Stated<Length>]) -> Length {
    lengths.iter().map(|length| port.half_range(length)).fold(Length::ZERO, Length::max)
}

/// Measurements of an item's ports that cannot be entered, with the reason.
pub(crate) fn refused<'b>(
    measured: &'b [Measurement],
    item: ItemRef,
    ports: &[Port],
) -> Vec<(&'b Measurement, Refused)> {
    let entered = |measurement: &Measurement| {
        let port = ports.iter().find(|port| port.name == measurement.port).ok_or(Refused::NoPort)?;
        refusal(port, measurement).map_or(Ok(()), Err)
    };
    measured.iter().filter(|m| m.item == item).filter_map(|m| Some((m, entered(m).err()?))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::Side;
    use crate::item::{
        BoltPattern, End, Hole, HookRack, HookSide, MachineId, PinForm, PinPoint, Pins, Place, PortKind, Pose, Role,
        SeatBase, Serials, ThreePoint, Towards,
    };

    const ITEM: ItemRef = ItemRef::Machine(MachineId(0));

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn port(kind: PortKind) -> Port {
        Port {
            name: "plate".to_owned(),
            role: Role::Rack,
            end: End::Carrier,
            pose: Some(Pose { at: Place::default(), faces: Towards::Rear, up: Towards::Up }),
            parts: Vec::new(),
            serials: Serials::default(),
            tolerance: Some(mm(0.2)),
            source: Source::Drawing,
            kind,
        }
    }

    fn two_holes() -> BoltPattern {
        let hole = |u| Hole::drawn(mm(u), mm(7.0), mm(13.5));
        BoltPattern {
            holes: vec![hole(0.0), hole(60.0)],
            bolt: Some(Stated::drawn(mm(12.0))),
            edge: Some(Stated::drawn(mm(30.0))),
            pair_width: Some(Stated::drawn(mm(400.0))),
            ..BoltPattern::default()
        }
    }

    fn measured(dimension: &str, value: Length, plus_minus: f64) -> Measurement {
        Measurement {
            item: ITEM,
            port: "plate".to_owned(),
            dimension: dimension.to_owned(),
            value,
            tool: Tool::Caliper,
            plus_minus: Some(mm(plus_minus)),
            readings: Vec::new(),
            note: String::new(),
        }
    }

    fn with(port: &Port, measured: Vec<Measurement>) -> Option<Port> {
        found(&Side { measured, ..Side::default() }, ITEM, port)
    }

    #[test]
    fn every_dimension_is_read_back_as_it_was_entered_and_moves_no_other() {
        let stated = |value| Some(Stated::drawn(mm(value)));
        let point = PinPoint {
            name: String::new(),
            diameter: stated(1.0),
            width: stated(2.0),
            height: stated(3.0),
            across: stated(4.0),
        };
        let rack = HookRack {
            diameter: stated(1.0),
            spread: stated(2.0),
            drop: stated(3.0),
            latch: stated(4.0),
            setback: stated(5.0),
            ..HookRack::of(HookSide::Bar)
        };
        let hitch = ThreePoint {
            lower_pin: stated(1.0),
            upper_pin: stated(2.0),
            span: stated(3.0),
            mast: stated(4.0),
            ..ThreePoint::default()
        };
        let pins = Pins { points: vec![point.clone(), point], spread: stated(4.0), ..Pins::of(PinForm::Lug) };
        for (kind, count) in [
            (PortKind::BoltPattern(two_holes()), 9),
            (PortKind::SeatBase(SeatBase { pattern: two_holes(), pedestal: None }), 9),
            (PortKind::Pins(pins), 9),
            (PortKind::HookRack(rack), 5),
            (PortKind::ThreePoint(hitch), 4),
        ] {
            let port = port(kind);
            let all: Vec<String> = port.dimensions().iter().map(|dimension| dimension.name.to_string()).collect();
            assert_eq!(all.len(), count + 2, "and x and z of its place");
            for dimension in &all {
                let found = with(&port, vec![measured(dimension, mm(41.0), 0.1)]).expect("it can be measured");
                let tools = |port: &Port| port.sources().iter().filter(|source| **source != Source::Drawing).count();
                assert_eq!((tools(&port), tools(&found)), (0, 1), "{dimension}");
                for other in &all {
                    let value = found.stated(other).map(|stated| stated.value);
                    let was = port.stated(other).map(|stated| stated.value);
                    assert!(was.is_some());
                    assert_eq!(value, if other == dimension { Some(mm(41.0)) } else { was }, "{dimension}, {other}");
                }
            }
            for unknown in ["girth", "hole-1-girth", "hole-3-u", "point-1-girth", "point-3-width"] {
                assert_eq!(port.stated(unknown), None);
                assert_eq!(with(&port, vec![measured(unknown, mm(41.0), 0.1)]), None);
            }
        }
    }

    #[test]
    fn sizes_are_above_nothing_places_may_be_anything_and_both_end_at_the_largest() {
        let largest = LONGEST;
        let port = port(PortKind::BoltPattern(two_holes()));
        for (dimension, value, plus_minus, entered) in [
            ("hole-1-u", Length::ZERO, 0.0, true),
            ("hole-1-v", -largest, 0.1, true),
            ("at-x", mm(-1.0), 0.1, true),
            ("hole-1-diameter", Length::ZERO, 0.1, false),
            ("bolt", Length::ZERO, 0.1, false),
            ("bolt", largest, 1.0, true),
            ("bolt", largest * 1.001, 0.1, false),
            ("bolt", mm(12.0), -0.1, false),
            ("bolt", mm(12.0), 12.0, true),
            ("bolt", mm(12.0), 12.1, false),
            ("bolt", mm(12.0), f64::NAN, false),
            ("hole-1-u", mm(12.0), 12.1, true),
        ] {
            let entry = vec![measured(dimension, value, plus_minus)];
            assert_eq!(with(&port, entry).is_some(), entered, "{dimension} {value:?} {plus_minus}");
        }
        let spread = Pins::of(PinForm::Lug);
        assert_eq!(with(&self::port(PortKind::Pins(spread)), vec![measured("spread", Length::ZERO, 0.1)]), None);
    }

    #[test]
    fn holes_stand_as_far_apart_as_was_measured_and_the_later_of_two_counts() {
        let port = port(PortKind::BoltPattern(two_holes()));
        let entries = [("hole-1-to-hole-2", 61.0), ("hole-2-to-hole-1", 60.4)];
        let all = entries.map(|(dimension, value)| measured(dimension, mm(value), 0.1)).to_vec();
        let found = with(&port, all).expect("it can be measured");
        let span = found.stated("hole-1-to-hole-2").expect("two holes");
        assert!((span.value - mm(60.4)).abs() < mm(1e-3), "{span:?}");
        assert!(hole_half_range(&found, 0) < mm(0.21), "the diameter is as drawn");
        let u = found.stated("hole-1-u").expect("stated");
        assert!((u.value - mm(-0.2)).abs() < mm(1e-3) && u.source == Source::Measured(Tool::Caliper));
        for (dimension, value, half) in
            [("hole-1-to-hole-3", 60.0, 0.1), ("hole-1-to-hole-2", -60.0, 0.1), ("hole-1-to-hole-2", 60.0, 61.0)]
        {
            assert_eq!(with(&port, vec![measured(dimension, mm(value), half)]), None, "{dimension} {value} {half}");
        }
    }

    #[test]
    fn what_was_not_measured_is_as_unsure_as_the_port() {
        let port = port(PortKind::BoltPattern(two_holes()));
        let read = |all: &[(&str, f64)]| {
            let entries = all.iter().map(|&(dimension, off)| measured(dimension, mm(9.0), off)).collect();
            let found = with(&port, entries).expect("it can be measured");
            [
                hole_half_range(&found, 0),
                hole_half_range(&found, 1),
                greatest_hole_half_range(&found),
                place_half_range(&found),
            ]
        };
        let off = |values: [f64; 4]| values.map(mm);
        assert_eq!(read(&[("hole-1-u", 0.3)]), off([0.3, 0.2, 0.3, 0.2]));
        assert_eq!(read(&[("hole-1-u", 0.1)]), off([0.2, 0.2, 0.2, 0.2]));
        let three = [("hole-1-u", 0.1), ("hole-1-v", 0.05), ("hole-1-diameter", 0.05)];
        assert_eq!(read(&three), off([0.1, 0.2, 0.2, 0.2]));
        assert_eq!(read(&[("at-x", 0.5)]), off([0.2, 0.2, 0.2, 0.5]));
        assert_eq!(read(&[("at-x", 0.1), ("at-z", 0.05)]), off([0.2, 0.2, 0.2, 0.1]));
    }

    #[test]
    fn a_measurement_is_as_unsure_as_its_tool_whatever_the_tolerance_of_the_port() {
        let spread = Pins { spread: Some(Stated::drawn(mm(500.0))), ..Pins::of(PinForm::Lug) };
        let port = port(PortKind::Pins(spread));
        let mut taped = measured("spread", mm(501.0), 0.0);
        (taped.tool, taped.plus_minus) = (Tool::Tape, None);
        let found = with(&port, vec![taped]).expect("it can be measured");
        let off = |port: &Port| port.stated("spread").map(|spread| port.half_range(&spread));
        assert_eq!((off(&port), off(&found)), (Some(mm(0.2)), Some(mm(1.5))));
    }

    #[test]
    fn a_hole_that_is_not_there_leaves_the_others_with_their_readings() {
        let port = port(PortKind::BoltPattern(two_holes()));
        let look = |hole: &str, presence| {
            let looked = [((ITEM, format!("plate/{hole}")), presence)].into_iter().collect();
            let measured = vec![measured("hole-2-u", mm(61.0), 0.5)];
            Side { measured, looked, ..Side::default() }
        };
        let holes = |port: &Port| port.kind.pattern().map_or(0, |pattern| pattern.holes.len());
        let unmeasured = |mut side: Side| {
            side.measured.clear();
            side
        };
        let found_of = |side: &Side| found(side, ITEM, &port);
        let without = found_of(&look("hole-1", Presence::No)).expect("something was found");
        assert_eq!(without.stated("hole-1-u").map(|u| u.value), Some(mm(61.0)));
        assert_eq!((holes(&without), hole_half_range(&without, 0)), (1, mm(0.5)));
        let with = found_of(&look("hole-1", Presence::Yes)).expect("something was measured");
        assert_eq!(holes(&with), 2);
        let seen = unmeasured(look("hole-1", Presence::Yes));
        assert_eq!(found_of(&seen), None, "what is there as stated is nothing new");
        let gone = unmeasured(look("hole-2", Presence::No));
        assert!(found_of(&gone).is_some());
    }
}
