//! End angles and breakover of the placed stack.

use crate::dimension::{self, EndWheel, Wheels};
use crate::item::{ItemRef, Machine};
use crate::plane::Point;
use crate::quantity::{Angle, Length};

/// An angle with the point of the underside that limits it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EndAngle {
    /// The angle.
    pub angle: Angle,
    /// The item that limits it.
    pub item: ItemRef,
    /// The limiting point, x in the machine's axes.
    pub x: Length,
    /// The limiting point, z.
    pub z: Length,
}

/// Angles of a stack; each `None` where nothing limits it or a radius or the wheelbase is missing.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Angles {
    pub departure: Option<EndAngle>,
    pub approach: Option<EndAngle>,
    pub breakover: Option<EndAngle>,
}

/// The angles over the edges of the underside, each of its item, metres in the machine's axes.
pub(crate) fn angles(machine: &Machine, items: &[ItemRef], edges: &[[Point; 2]]) -> Angles {
    let at = |angle: f64, line: usize, point: Point| EndAngle {
        angle: Angle::from_rad(angle),
        item: items[line],
        x: Length::from_m(point.x),
        z: Length::from_m(point.y),
    };
    let rear = machine.rear.static_loaded_radius.map(Length::m);
    let front = machine.front.static_loaded_radius.map(Length::m);
    let wheelbase = machine.wheelbase.map(|wheelbase| wheelbase.value.m());
    // An impossible radius or wheelbase is a problem of the catalogue; here it is simply not known.
    let end = |found: Result<Option<dimension::EndAngle>, dimension::InputError>| {
        found.ok().flatten().map(|end| at(end.angle, end.line, end.point))
    };
    Angles {
        departure: rear.and_then(|radius| end(dimension::departure(EndWheel { axle: 0.0, radius }, edges))),
        approach: front
            .zip(wheelbase)
            .and_then(|(radius, axle)| end(dimension::approach(EndWheel { axle, radius }, edges))),
        breakover: rear.zip(front).zip(wheelbase).and_then(|((rear, front), wheelbase)| {
            let found = dimension::breakover(Wheels { rear, front, wheelbase }, edges).ok().flatten()?;
            Some(at(found.angle, found.line, found.point))
        }),
    }
}
