//! Ports and shapes, with the dimensions that everything in the yard shares.

use fitup_core::item::{
    Body, BoltPattern, Carrier, Coupler, CouplerGender, Electric, End, Hole, HookRack, HookSide, PathCommand, PinForm,
    PinPoint, Pins, Point3, Port, PortKind, Pose, Role, Serials, Shape, ShapeRole, ThreePoint, Towards, View,
};
use fitup_core::quantity::{Length, Source, Stated};

pub fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

pub fn drawn(value: f64) -> Option<Stated<Length>> {
    Some(Stated::drawn(mm(value)))
}

pub fn hole(u: f64, v: f64) -> Hole {
    Hole::drawn(mm(u), mm(v), mm(13.5))
}

/// A large plate of 13.5 mm holes for 12 mm bolts.
pub fn plate(holes: &[(f64, f64)]) -> BoltPattern {
    BoltPattern {
        holes: holes.iter().map(|&(u, v)| hole(u, v)).collect(),
        bolt: drawn(12.0),
        edge: drawn(250.0),
        ..BoltPattern::default()
    }
}

pub fn point(x: f64, y: f64, z: f64) -> Point3 {
    Point3 { x: mm(x), y: mm(y), z: mm(z) }
}

/// A rectangle in a view, from corner to corner.
pub fn block(name: &str, view: View, role: ShapeRole, from: (f64, f64), to: (f64, f64)) -> Shape {
    let line = |a, b| PathCommand::Line(mm(a), mm(b));
    let path = vec![
        PathCommand::Move(mm(from.0), mm(from.1)),
        line(to.0, from.1),
        line(to.0, to.1),
        line(from.0, to.1),
        PathCommand::Close,
    ];
    Shape { name: name.to_owned(), view, role, carrier: Carrier::Item, clearance: true, path }
}

pub fn port(name: &str, role: Role, end: End, at: Option<Point3>, kind: PortKind) -> Port {
    // Anchors are plates on the left side, decks lie flat, all else looks along the machine.
    let (carrier, carried, up) = match role {
        Role::AxleAnchor | Role::FrontAnchor => (Towards::Left, Towards::Right, Towards::Up),
        Role::SeatDeck => (Towards::Up, Towards::Down, Towards::Front),
        _ => (Towards::Rear, Towards::Front, Towards::Up),
    };
    let faces = if end == End::Carrier { carrier } else { carried };
    Port {
        name: name.to_owned(),
        role,
        end,
        pose: at.map(|at| Pose { at: at.into(), faces, up }),
        parts: Vec::new(),
        serials: Serials::default(),
        tolerance: None,
        source: Source::Drawing,
        kind,
    }
}

pub fn coupler() -> PortKind {
    PortKind::Coupler(Coupler { standard: "ISO 7241-A".into(), size: "12.5".into(), gender: None })
}

pub fn lead() -> PortKind {
    PortKind::Electric(Electric { connector: "three-way".into(), function: "seat switch".into() })
}

pub fn half(kind: PortKind, gender: CouplerGender) -> PortKind {
    match kind {
        PortKind::Coupler(coupler) => PortKind::Coupler(Coupler { gender: Some(gender), ..coupler }),
        other => other,
    }
}

pub fn rack(side: HookSide) -> HookRack {
    let (diameter, latch) = if side == HookSide::Bar { (40.0, 25.5) } else { (41.5, 24.5) };
    HookRack {
        diameter: drawn(diameter),
        spread: drawn(460.0),
        drop: drawn(240.0),
        latch: drawn(latch),
        setback: drawn(80.0),
        ..HookRack::of(side)
    }
}

pub fn hitch(category: &str) -> ThreePoint {
    ThreePoint { categories: vec![category.to_owned()], ..ThreePoint::default() }
}

/// Two points: lugs with 25.5 mm bores, or clevises with 25 mm pins.
pub fn pins(form: PinForm) -> Pins {
    let (diameter, width) = if form == PinForm::Lug { (25.5, 30.0) } else { (25.0, 33.0) };
    // Each side as one looks at its own face.
    let left = if form == PinForm::Lug { 250.0 } else { -250.0 };
    let one = |name: &str, across: f64| PinPoint {
        name: name.to_owned(),
        diameter: drawn(diameter),
        width: drawn(width),
        height: drawn(0.0),
        across: drawn(across),
    };
    Pins { points: vec![one("left", left), one("right", -left)], spread: drawn(500.0), ..Pins::of(form) }
}

/// The holes of seat and deck.
pub const SQUARE: [(f64, f64); 4] = [(-80.0, -100.0), (80.0, -100.0), (80.0, 100.0), (-80.0, 100.0)];

pub fn body(id: &str, label: &str, ports: Vec<Port>, shapes: Vec<Shape>) -> Body {
    Body { id: id.to_owned(), label: label.to_owned(), ports, shapes, ..Body::default() }
}

/// A side plate with two holes, and the width of the pair.
pub fn two_holes(pair_width: f64) -> PortKind {
    PortKind::BoltPattern(BoltPattern { pair_width: drawn(pair_width), ..plate(&[(-60.0, 0.0), (60.0, 0.0)]) })
}
