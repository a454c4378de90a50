//! Ports as the tape, the caliper and the eye found them on the unit in the yard.

use super::mating::LARGEST;
use super::measured::numbered;
use crate::build::{Build, Measurement, Presence};
use crate::item::{BoltPattern, ItemRef, Port, PortKind, SeatBase};
use crate::quantity::{Length, Source, Stated, Tool};

/// A port with what was found on it. What was not looked at keeps the catalogue's value, half range and evidence.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Found {
    /// The port as found.
    pub port: Port,
    /// What was read off each hole, in the order of the pattern; empty for other kinds.
    holes: Vec<HoleReadings>,
    /// What the bolt was measured with.
    bolt: Option<Reading>,
    /// What the port's place was measured with, x and z.
    at: [Option<Reading>; 2],
}

/// A value read off the unit: with what, and how far it may be off.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Reading {
    tool: Tool,
    half_range: Length,
}

/// What was read off one hole: u, v and diameter.
type HoleReadings = [Option<Reading>; 3];

/// Why a measurement cannot be entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Refused {
    /// The item has no port of that name.
    NoPort,
    /// The port has no such dimension.
    NoDimension,
    /// No unit has that value: not a number, beyond [`LARGEST`], or no size where one is needed; or a half range like that.
    Impossible,
}

impl Found {
    /// The port as the catalogue states it.
    fn as_stated(port: &Port) -> Self {
        let mut found = Self { port: port.clone(), holes: Vec::new(), bolt: None, at: [None; 2] };
        found.holes = vec![HoleReadings::default(); found.pattern().map_or(0, |pattern| pattern.holes.len())];
        found
    }

    /// The port with what was measured on it or found missing, or `None` if nothing was. What cannot be entered is left out;
    /// [`refused`] tells of it.
    pub fn of(build: &Build, item: ItemRef, port: &Port) -> Option<Self> {
        let mut found = Self::as_stated(port);
        let mut touched = false;
        for measurement in build.measured.iter().filter(|m| m.item == item && m.port == port.name) {
            touched |= found.enter(measurement).is_ok();
        }
        touched |= found.drop_missing_holes(build, item);
        touched.then_some(found)
    }

    /// How far a hole may be off: the largest half range among its place and diameter, each as measured or, where it was not,
    /// as the port has it.
    pub fn hole_half_range(&self, hole: usize) -> Length {
        let usual = self.port.usual_half_range();
        let readings = self.holes.get(hole).copied().unwrap_or_default();
        readings
            .into_iter()
            .map(|reading| reading.map_or(usual, |reading| reading.half_range))
            .fold(Length::ZERO, Length::max)
    }

    /// How far the least known of the holes may be off.
    pub fn greatest_hole_half_range(&self) -> Length {
        (0..self.holes.len()).map(|hole| self.hole_half_range(hole)).fold(Length::ZERO, Length::max)
    }

    /// How far the port's place in the side plane may be off: the larger of x and z.
    pub fn place_half_range(&self) -> Length {
        let usual = self.port.usual_half_range();
        self.at
            .iter()
            .map(|reading| reading.map_or(usual, |reading| reading.half_range))
            .fold(Length::ZERO, Length::max)
    }

    /// The tools that holes, bolt and place were measured with. Other dimensions carry their own source.
    pub fn tools(&self) -> impl Iterator<Item = Tool> + '_ {
        self.holes.iter().flatten().chain(&self.at).chain([&self.bolt]).flatten().map(|reading| reading.tool)
    }

    fn pattern(&mut self) -> Option<&mut BoltPattern> {
        match &mut self.port.kind {
            PortKind::BoltPattern(pattern) | PortKind::SeatBase(SeatBase { pattern, .. }) => Some(pattern),
            _ => None,
        }
    }

    /// Enters one measurement.
    pub fn enter(&mut self, measurement: &Measurement) -> Result<(), Refused> {
        let value = measurement.value;
        let source = Source::Measured(measurement.tool);
        let half_range = measurement.plus_minus.unwrap_or(source.usual_half_range());
        let possible = value.m().abs() <= LARGEST && (0.0..=LARGEST).contains(&half_range.m());
        if !possible {
            return Err(Refused::Impossible);
        }
        let reading = Reading { tool: measurement.tool, half_range };
        let dimension = measurement.dimension.as_str();
        match dimension {
            "at-x" | "at-z" => return self.enter_place(dimension, value, reading),
            _ if self.pattern().is_some() => return self.enter_hole(dimension, value, reading),
            _ => {}
        }
        let slot = self.stated(dimension).ok_or(Refused::NoDimension)?;
        if value <= Length::ZERO {
            return Err(Refused::Impossible);
        }
        *slot = Some(Stated { value, plus_minus: measurement.plus_minus, source });
        Ok(())
    }

    fn enter_place(&mut self, dimension: &str, value: Length, reading: Reading) -> Result<(), Refused> {
        let pose = self.port.pose.as_mut().ok_or(Refused::NoDimension)?;
        let axis = usize::from(dimension == "at-z");
        *[&mut pose.at.x, &mut pose.at.z][axis] = value;
        self.at[axis] = Some(reading);
        Ok(())
    }

    fn enter_hole(&mut self, dimension: &str, value: Length, reading: Reading) -> Result<(), Refused> {
        let sized = |value: Length| if value > Length::ZERO { Ok(value) } else { Err(Refused::Impossible) };
        let pattern = self.pattern().ok_or(Refused::NoDimension)?;
        if dimension == "bolt" {
            pattern.bolt = Some(sized(value)?);
            self.bolt = Some(reading);
            return Ok(());
        }
        let (index, what) = numbered(dimension, "hole-").ok_or(Refused::NoDimension)?;
        let hole = pattern.holes.get_mut(index).ok_or(Refused::NoDimension)?;
        let axis = match what {
            "u" => {
                hole.u = value;
                0
            }
            "v" => {
                hole.v = value;
                1
            }
            "diameter" => {
                hole.diameter = sized(value)?;
                2
            }
            _ => return Err(Refused::NoDimension),
        };
        self.holes[index][axis] = Some(reading);
        Ok(())
    }

    /// The place of a dimension that carries its own source.
    fn stated(&mut self, dimension: &str) -> Option<&mut Option<Stated<Length>>> {
        match &mut self.port.kind {
            PortKind::Pins(pins) => match numbered(dimension, "point-") {
                Some((index, what)) => pins.points.get_mut(index).and_then(|point| match what {
                    "diameter" => Some(&mut point.diameter),
                    "width" => Some(&mut point.width),
                    "height" => Some(&mut point.height),
                    _ => None,
                }),
                None if dimension == "spread" => Some(&mut pins.spread),
                None => None,
            },
            PortKind::HookRack(rack) => match dimension {
                "diameter" => Some(&mut rack.diameter),
                "spread" => Some(&mut rack.spread),
                "drop" => Some(&mut rack.drop),
                "latch" => Some(&mut rack.latch),
                "setback" => Some(&mut rack.setback),
                _ => None,
            },
            PortKind::ThreePoint(hitch) => match dimension {
                "lower-pin" => Some(&mut hitch.lower_pin),
                "upper-pin" => Some(&mut hitch.upper_pin),
                "span" => Some(&mut hitch.span),
                "mast" => Some(&mut hitch.mast),
                _ => None,
            },
            _ => None,
        }
    }

    /// Takes out the holes that were looked for and are not there ("port/hole-3").
    fn drop_missing_holes(&mut self, build: &Build, item: ItemRef) -> bool {
        let name = self.port.name.clone();
        let there = |number: usize| build.looked.get(&(item, format!("{name}/hole-{number}"))) != Some(&Presence::No);
        let Some(pattern) = self.pattern() else { return false };
        let before = pattern.holes.len();
        let mut number = 0;
        pattern.holes.retain(|_| {
            number += 1;
            there(number)
        });
        let dropped = pattern.holes.len() != before;
        let mut number = 0;
        self.holes.retain(|_| {
            number += 1;
            there(number)
        });
        dropped
    }
}

/// Measurements of an item's ports that cannot be entered, with the reason.
pub(super) fn refused<'b>(build: &'b Build, item: ItemRef, ports: &[Port]) -> Vec<(&'b Measurement, Refused)> {
    let entered = |measurement: &Measurement| {
        let port = ports.iter().find(|port| port.name == measurement.port).ok_or(Refused::NoPort)?;
        Found::as_stated(port).enter(measurement)
    };
    build.measured.iter().filter(|m| m.item == item).filter_map(|m| Some((m, entered(m).err()?))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fit::measured::{dimension_of, dimensions};
    use crate::item::{
        End, Hole, HoleKind, HookRack, HookSide, MachineId, PinForm, PinPoint, Pins, Point3, Pose, Role, Serials,
        ThreePoint, Towards,
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
            pose: Some(Pose { at: Point3::default(), faces: Towards::Rear, up: Towards::Up }),
            parts: Vec::new(),
            serials: Serials::default(),
            tolerance: Some(mm(0.2)),
            source: Source::Drawing,
            kind,
        }
    }

    fn two_holes() -> BoltPattern {
        let hole = |u| Hole { u: mm(u), v: mm(7.0), diameter: mm(13.5), kind: HoleKind::Plain, slot: None };
        BoltPattern { holes: vec![hole(0.0), hole(60.0)], bolt: Some(mm(12.0)), ..BoltPattern::default() }
    }

    fn measured(dimension: &str, value: Length, plus_minus: f64) -> Measurement {
        Measurement {
            item: ITEM,
            port: "plate".to_owned(),
            dimension: dimension.to_owned(),
            value,
            tool: Tool::Caliper,
            plus_minus: Some(mm(plus_minus)),
            note: String::new(),
        }
    }

    fn with(port: &Port, measured: Vec<Measurement>) -> Option<Found> {
        Found::of(&Build { measured, ..Build::default() }, ITEM, port)
    }

    #[test]
    fn every_dimension_is_read_back_as_it_was_entered_and_moves_no_other() {
        let stated = |value| Some(Stated::drawn(mm(value)));
        let point = PinPoint { name: String::new(), diameter: stated(1.0), width: stated(2.0), height: stated(3.0) };
        let rack = HookRack {
            side: HookSide::Bar,
            diameter: stated(1.0),
            spread: stated(2.0),
            drop: stated(3.0),
            latch: stated(4.0),
            setback: stated(5.0),
        };
        let hitch = ThreePoint {
            lower_pin: stated(1.0),
            upper_pin: stated(2.0),
            span: stated(3.0),
            mast: stated(4.0),
            ..ThreePoint::default()
        };
        let pins = Pins { form: PinForm::Lug, points: vec![point.clone(), point], spread: stated(4.0) };
        for (kind, count) in [
            (PortKind::BoltPattern(two_holes()), 7),
            (PortKind::SeatBase(SeatBase { pattern: two_holes(), pedestal: None }), 7),
            (PortKind::Pins(pins), 7),
            (PortKind::HookRack(rack), 5),
            (PortKind::ThreePoint(hitch), 4),
        ] {
            let port = port(kind);
            let all = dimensions(&port);
            assert_eq!(all.len(), count + 2, "and x and z of its place");
            for dimension in &all {
                let found = with(&port, vec![measured(dimension, mm(41.0), 0.1)]).expect("it can be measured");
                let kept_here = !found.holes.is_empty() || dimension.starts_with("at-");
                assert_eq!(found.tools().collect::<Vec<_>>(), vec![Tool::Caliper; usize::from(kept_here)]);
                for other in &all {
                    let value = dimension_of(&found.port, other).map(|(value, _)| value);
                    let was = dimension_of(&port, other).map(|(value, _)| value);
                    assert!(was.is_some());
                    assert_eq!(value, if other == dimension { Some(mm(41.0)) } else { was }, "{dimension}, {other}");
                }
            }
            for unknown in ["girth", "hole-1-girth", "hole-3-u", "point-1-girth", "point-3-width"] {
                assert_eq!(dimension_of(&port, unknown), None);
                assert_eq!(with(&port, vec![measured(unknown, mm(41.0), 0.1)]), None);
            }
        }
    }

    #[test]
    fn sizes_are_above_nothing_places_may_be_anything_and_both_end_at_the_largest() {
        let largest = Length::from_m(LARGEST);
        let port = port(PortKind::BoltPattern(two_holes()));
        for (dimension, value, plus_minus, entered) in [
            ("hole-1-u", Length::ZERO, 0.0, true),
            ("hole-1-v", -largest, 0.1, true),
            ("at-x", mm(-1.0), 0.1, true),
            ("hole-1-diameter", Length::ZERO, 0.1, false),
            ("bolt", Length::ZERO, 0.1, false),
            ("bolt", largest, LARGEST * 1e3, true),
            ("bolt", largest * 1.001, 0.1, false),
            ("bolt", mm(12.0), -0.1, false),
            ("bolt", mm(12.0), LARGEST * 1001.0, false),
        ] {
            let entry = vec![measured(dimension, value, plus_minus)];
            assert_eq!(with(&port, entry).is_some(), entered, "{dimension} {value:?} {plus_minus}");
        }
        let spread = Pins { form: PinForm::Lug, points: Vec::new(), spread: None };
        assert_eq!(with(&self::port(PortKind::Pins(spread)), vec![measured("spread", Length::ZERO, 0.1)]), None);
    }

    #[test]
    fn what_was_not_measured_is_as_unsure_as_the_port() {
        let port = port(PortKind::BoltPattern(two_holes()));
        let read = |all: &[(&str, f64)]| {
            let entries = all.iter().map(|&(dimension, off)| measured(dimension, mm(9.0), off)).collect();
            let found = with(&port, entries).expect("it can be measured");
            [
                found.hole_half_range(0),
                found.hole_half_range(1),
                found.greatest_hole_half_range(),
                found.place_half_range(),
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
    fn a_hole_that_is_not_there_leaves_the_others_with_their_readings() {
        let port = port(PortKind::BoltPattern(two_holes()));
        let look = |hole: &str, presence| Build {
            looked: [((ITEM, format!("plate/{hole}")), presence)].into_iter().collect(),
            measured: vec![measured("hole-2-u", mm(61.0), 0.5)],
            ..Build::default()
        };
        let found = Found::of(&look("hole-1", Presence::No), ITEM, &port).expect("something was found");
        assert_eq!(dimension_of(&found.port, "hole-1-u").map(|(u, _)| u), Some(mm(61.0)));
        assert_eq!((found.holes.len(), found.hole_half_range(0)), (1, mm(0.5)));
        let found = Found::of(&look("hole-1", Presence::Yes), ITEM, &port).expect("something was measured");
        assert_eq!(found.holes.len(), 2);
        let seen = Build { measured: Vec::new(), ..look("hole-1", Presence::Yes) };
        assert_eq!(Found::of(&seen, ITEM, &port), None, "what is there as stated is nothing new");
        let gone = Build { measured: Vec::new(), ..look("hole-2", Presence::No) };
        assert!(Found::of(&gone, ITEM, &port).is_some());
    }
}
