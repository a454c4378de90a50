//! Ports: the connecting places of items, and what decides whether two of them mate. One kind a file, each with the table of
//! what decides ([`table`]).

mod bolt_pattern;
mod coupler;
mod electric;
mod hook_rack;
mod pins;
mod place;
mod power_take_off;
mod seat_base;
mod span;
mod table;
mod three_point;

pub use bolt_pattern::{BoltPattern, Hole, HoleKind, Metal, Slot};
pub use coupler::{Coupler, CouplerGender};
pub use electric::Electric;
pub use hook_rack::{HookRack, HookSide};
pub use pins::{PinForm, PinPoint, Pins};
pub use place::{Place, Pose, Towards};
pub use power_take_off::{PowerTakeOff, PtoRotation};
pub use seat_base::SeatBase;
pub use span::span_of;
pub use table::{Dimension, DimensionName, Line, Refused};
pub use three_point::ThreePoint;

use self::table::Lengths;
use super::{PartNumber, Serials};
use crate::quantity::{Length, Source, Stated};

/// What a port is for; ports of one role meet in a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// Frame to the machine's rear axle: this joint places the frame.
    AxleAnchor,
    /// Frame to the machine's front: the closure.
    FrontAnchor,
    /// Implement to the frame's rack.
    Rack,
    /// Implement to the machine's three-point hitch.
    Hitch,
    /// Seat to its deck.
    SeatDeck,
    /// Drive shaft.
    PowerTakeOff,
    /// Hydraulic pressure line.
    Pressure,
    /// Hydraulic return line.
    Return,
    /// Case drain line of a hydraulic motor.
    CaseDrain,
    /// Wiring: seat switch, lights.
    Wiring,
}

impl Role {
    /// Every role, in the order joints are shown.
    pub const ALL: [Self; 10] = [
        Self::AxleAnchor,
        Self::FrontAnchor,
        Self::Rack,
        Self::Hitch,
        Self::SeatDeck,
        Self::PowerTakeOff,
        Self::Pressure,
        Self::Return,
        Self::CaseDrain,
        Self::Wiring,
    ];
}

/// Which side of a joint a port is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum End {
    /// The side that carries or supplies.
    Carrier,
    /// The side that is carried or supplied.
    Carried,
}

/// A connecting place of an item.
#[derive(Debug, Clone, PartialEq)]
pub struct Port {
    /// Name, unique within its item.
    pub name: String,
    /// What it is for.
    pub role: Role,
    /// Which side of the joint it is.
    pub end: End,
    /// Where it is; `None` for lines and wiring, which place nothing.
    pub pose: Option<Pose>,
    /// Numbers of the parts that bear it; empty = not known.
    pub parts: Vec<PartNumber>,
    /// Serial numbers of the item that have this port.
    pub serials: Serials,
    /// Half range of every length of this port that states none of its own.
    pub tolerance: Option<Length>,
    /// Where the lengths come from.
    pub source: Source,
    /// What decides whether it mates.
    pub kind: PortKind,
}

impl Port {
    /// Half range of a length of this port: its own, the port's, or the usual one of its source.
    pub fn half_range(&self, length: &Stated<Length>) -> Length {
        length.plus_minus.or(self.tolerance).unwrap_or(length.source.usual_half_range())
    }

    /// Gives the holes, the bolt and the place, of which a file states no source, that of the port.
    pub fn spread_source(&mut self) {
        let pattern = self.kind.pattern_mut();
        let in_pattern = pattern.into_iter().flat_map(|pattern| {
            let holes = pattern.holes.iter_mut().flat_map(|hole| [&mut hole.u, &mut hole.v, &mut hole.diameter]);
            holes.chain(&mut pattern.bolt).chain(&mut pattern.edge).chain(&mut pattern.pair_width)
        });
        let at = self.pose.iter_mut().flat_map(|pose| [&mut pose.at.x, &mut pose.at.z]);
        for length in in_pattern.chain(at) {
            length.source = self.source;
        }
    }

    /// The dimensions that can be measured on it, in the order of its kind's table; its place last.
    pub fn dimensions(&self) -> Vec<Dimension> {
        let mut all = Vec::new();
        self.each(&mut |dimension| all.push(dimension));
        all
    }

    /// What is stated of a dimension by its name, or of the distance between two holes or points; `None` if it states none.
    pub fn stated(&self, name: &str) -> Option<Stated<Length>> {
        let mut stated = None;
        self.each(&mut |dimension| {
            if dimension.name.is(name) {
                stated = dimension.stated;
            }
        });
        stated.or_else(|| self.span(name))
    }

    /// Where what it states comes from: the port itself, then every length.
    pub fn sources(&self) -> Vec<Source> {
        let mut all = vec![self.source];
        self.each(&mut |dimension| all.extend(dimension.stated.map(|stated| stated.source)));
        all
    }

    /// Puts what was measured in the place of what is stated.
    pub(crate) fn enter(&mut self, name: &str, measured: Stated<Length>) -> Result<(), Refused> {
        let place = self.pose.as_mut().map(|pose| &mut pose.at as &mut dyn Lengths);
        for lengths in place.into_iter().chain(self.kind.lengths_mut()) {
            match lengths.put(name, measured) {
                Err(Refused::NoDimension) => {}
                entered => return entered,
            }
        }
        Err(Refused::NoDimension)
    }

    fn each(&self, see: &mut dyn FnMut(Dimension)) {
        if let Some(lengths) = self.kind.lengths() {
            lengths.each(None, see);
        }
        if let Some(pose) = &self.pose {
            pose.at.each(None, see);
        }
    }
}

/// The names of the dimensions of all kinds of port, without the numbers of holes and points: what a port may leave unsaid.
pub fn dimension_names() -> impl Iterator<Item = &'static str> {
    let tables = [
        BoltPattern::NAMES,
        Hole::NAMES,
        Pins::NAMES,
        PinPoint::NAMES,
        HookRack::NAMES,
        ThreePoint::NAMES,
        PowerTakeOff::NAMES,
        Coupler::NAMES,
        Place::NAMES,
        &[Pose::NAME.what],
    ];
    tables.into_iter().flatten().copied()
}

/// The kinds of port, each with the dimensions that decide whether it mates.
#[derive(Debug, Clone, PartialEq)]
pub enum PortKind {
    /// Holes in a plate.
    BoltPattern(BoltPattern),
    /// Pins in lugs or clevises.
    Pins(Pins),
    /// Hooks on a bar, held by a latch pin.
    HookRack(HookRack),
    /// Three-point hitch.
    ThreePoint(ThreePoint),
    /// Power take-off.
    PowerTakeOff(PowerTakeOff),
    /// Hydraulic coupler.
    Coupler(Coupler),
    /// Seat base: a bolt pattern with a pedestal.
    SeatBase(SeatBase),
    /// Electric connector.
    Electric(Electric),
}

impl PortKind {
    /// Its name in kebab-case: "hook-rack".
    pub const fn word(&self) -> &'static str {
        match self {
            Self::BoltPattern(_) => "bolt-pattern",
            Self::Pins(_) => "pins",
            Self::HookRack(_) => "hook-rack",
            Self::ThreePoint(_) => "three-point",
            Self::PowerTakeOff(_) => "power-take-off",
            Self::Coupler(_) => "coupler",
            Self::SeatBase(_) => "seat-base",
            Self::Electric(_) => "electric",
        }
    }

    /// The name of what is seen of it: of hooks and pins its half, of the rest its kind.
    pub const fn half(&self) -> &'static str {
        match self {
            Self::HookRack(HookRack { side: HookSide::Bar, .. }) => "bar",
            Self::HookRack(HookRack { side: HookSide::Hook, .. }) => "hook",
            Self::Pins(Pins { form: PinForm::Lug, .. }) => "lug",
            Self::Pins(Pins { form: PinForm::Clevis, .. }) => "clevis",
            kind => kind.word(),
        }
    }

    /// The bolt pattern, if it has one.
    pub const fn pattern(&self) -> Option<&BoltPattern> {
        match self {
            Self::BoltPattern(pattern) => Some(pattern),
            Self::SeatBase(base) => Some(&base.pattern),
            _ => None,
        }
    }

    /// The bolt pattern, to be changed.
    pub const fn pattern_mut(&mut self) -> Option<&mut BoltPattern> {
        match self {
            Self::BoltPattern(pattern) => Some(pattern),
            Self::SeatBase(base) => Some(&mut base.pattern),
            _ => None,
        }
    }

    fn lengths(&self) -> Option<&dyn Lengths> {
        match self {
            Self::BoltPattern(pattern) => Some(pattern),
            Self::Pins(pins) => Some(pins),
            Self::HookRack(rack) => Some(rack),
            Self::ThreePoint(hitch) => Some(hitch),
            Self::PowerTakeOff(shaft) => Some(shaft),
            Self::Coupler(coupler) => Some(coupler),
            Self::SeatBase(base) => Some(&base.pattern),
            Self::Electric(_) => None,
        }
    }

    fn lengths_mut(&mut self) -> Option<&mut dyn Lengths> {
        match self {
            Self::BoltPattern(pattern) => Some(pattern),
            Self::Pins(pins) => Some(pins),
            Self::HookRack(rack) => Some(rack),
            Self::ThreePoint(hitch) => Some(hitch),
            Self::PowerTakeOff(shaft) => Some(shaft),
            Self::Coupler(coupler) => Some(coupler),
            Self::SeatBase(base) => Some(&mut base.pattern),
            Self::Electric(_) => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::item::Point3;
    use crate::quantity::Tool;

    fn mm(value: f64) -> Length {
        Length::from_mm(value)
    }

    fn port(kind: PortKind, pose: Option<Pose>) -> Port {
        Port {
            name: "plate".to_owned(),
            role: Role::Rack,
            end: End::Carrier,
            pose,
            parts: Vec::new(),
            serials: Serials::default(),
            tolerance: None,
            source: Source::Drawing,
            kind,
        }
    }

    fn placed() -> Pose {
        Pose { at: Point3::default().into(), faces: Towards::Rear, up: Towards::Up }
    }

    fn names(port: &Port) -> Vec<String> {
        port.dimensions().iter().map(|dimension| dimension.name.to_string()).collect()
    }

    #[test]
    fn the_half_range_of_a_length_is_its_own_then_the_ports_then_that_of_its_source() {
        let mut plate = port(PortKind::Pins(Pins::of(PinForm::Lug)), None);
        let mut spread = Stated { value: mm(500.0), plus_minus: None, source: Source::Measured(Tool::Tape) };
        assert_eq!(plate.half_range(&spread), mm(1.5));
        plate.tolerance = Some(mm(0.4));
        assert_eq!(plate.half_range(&spread), mm(0.4));
        spread.plus_minus = Some(mm(0.05));
        assert_eq!(plate.half_range(&spread), mm(0.05));
    }

    #[test]
    fn holes_and_points_are_named_by_their_number_and_the_place_comes_last() {
        let hole = Hole::drawn(mm(0.0), mm(0.0), mm(13.5));
        let pattern = BoltPattern { holes: vec![hole; 2], ..BoltPattern::default() };
        let all = [
            "bolt",
            "edge",
            "pair-width",
            "hole-1-u",
            "hole-1-v",
            "hole-1-diameter",
            "hole-2-u",
            "hole-2-v",
            "hole-2-diameter",
        ];
        let base = SeatBase { pattern: pattern.clone(), pedestal: None };
        assert_eq!(names(&port(PortKind::SeatBase(base), None)), all);
        assert_eq!(
            names(&port(PortKind::BoltPattern(pattern), Some(placed()))),
            [&all[..], &["at-x", "at-z"]].concat()
        );
        let points = vec![PinPoint::default()];
        let pins = PortKind::Pins(Pins { points, ..Pins::of(PinForm::Lug) });
        let point = ["point-1-diameter", "point-1-width", "point-1-height", "point-1-across"];
        assert_eq!(names(&port(pins, None)), [&["spread"][..], &point].concat());
        assert_eq!(names(&port(PortKind::PowerTakeOff(PowerTakeOff::default()), None)), [""; 0]);
    }

    #[test]
    fn what_is_read_off_or_asked_for_cannot_be_measured_nor_a_place_that_a_port_has_not() {
        let taped = Stated { value: mm(1.0), plus_minus: None, source: Source::Measured(Tool::Tape) };
        let mut hitch = port(PortKind::ThreePoint(ThreePoint::default()), None);
        for name in ["category", "at-x", "pose", "hole-1-u", ""] {
            assert_eq!(hitch.enter(name, taped), Err(Refused::NoDimension), "{name}");
        }
        assert_eq!(hitch.enter("mast", taped), Ok(()));
        assert_eq!(hitch.enter("mast", Stated { value: Length::ZERO, ..taped }), Err(Refused::Impossible));
        assert_eq!(hitch.stated("mast"), Some(taped));
        let at = |value| Stated { value: mm(value), ..taped };
        let points = vec![PinPoint::default()];
        let mut pins = port(PortKind::Pins(Pins { points, ..Pins::of(PinForm::Lug) }), None);
        assert_eq!(pins.enter("point-1-height", at(-4.0)), Ok(()), "below the port's reference point");
        let mut rack = port(PortKind::HookRack(HookRack::of(HookSide::Bar)), None);
        let setback = [-1.0, 0.0].map(|value| rack.enter("setback", at(value)));
        assert_eq!(setback, [Err(Refused::Impossible), Ok(())]);
        let mut lead =
            port(PortKind::Electric(Electric { connector: String::new(), function: String::new() }), Some(placed()));
        assert_eq!(lead.enter("at-z", taped), Ok(()));
        assert_eq!(lead.stated("at-z"), Some(taped));
    }

    #[test]
    fn a_port_names_every_source_of_what_it_states() {
        let taped = |value| Stated { value: mm(value), plus_minus: None, source: Source::Measured(Tool::Tape) };
        let hole = Hole { v: taped(3.0), ..Hole::drawn(mm(0.0), mm(0.0), mm(13.5)) };
        let plate =
            port(PortKind::BoltPattern(BoltPattern { holes: vec![hole], ..BoltPattern::default() }), Some(placed()));
        let drawing = Source::Drawing;
        let wanted = [drawing, drawing, Source::Measured(Tool::Tape), drawing, drawing, drawing];
        assert_eq!(plate.sources(), wanted, "the port, u, v, diameter, x, z");
        let mut listed = Port { source: Source::Listed, ..plate };
        listed.spread_source();
        assert_eq!(listed.sources(), [Source::Listed; 6]);
    }
}
