//! Where a port sits, and how it looks.

use super::table::{DimensionName, table};
use crate::item::Point3;
use crate::quantity::{Length, Stated};

/// One of the six directions along the axes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Towards {
    /// +x.
    Front,
    /// −x.
    Rear,
    /// +y.
    Left,
    /// −y.
    Right,
    /// +z.
    Up,
    /// −z.
    Down,
}

impl Towards {
    /// The direction as a vector of length one.
    pub const fn unit(self) -> [f64; 3] {
        match self {
            Self::Front => [1.0, 0.0, 0.0],
            Self::Rear => [-1.0, 0.0, 0.0],
            Self::Left => [0.0, 1.0, 0.0],
            Self::Right => [0.0, -1.0, 0.0],
            Self::Up => [0.0, 0.0, 1.0],
            Self::Down => [0.0, 0.0, -1.0],
        }
    }
}

/// Where a port sits and how it looks, in its item's local axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pose {
    /// Reference point of the port.
    pub at: Place,
    /// The way its face looks.
    pub faces: Towards,
    /// The way its v axis points.
    pub up: Towards,
}

impl Pose {
    /// The name under which a place is asked for that is not stated.
    pub const NAME: DimensionName = DimensionName { part: None, what: "pose" };
}

/// The reference point of a port, in its item's local axes.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Place {
    /// Forward.
    pub x: Stated<Length>,
    /// To the left; no joint weighs it.
    pub y: Length,
    /// Up.
    pub z: Stated<Length>,
}

impl Place {
    /// The point itself.
    pub const fn point(self) -> Point3 {
        Point3 { x: self.x.value, y: self.y, z: self.z.value }
    }
}

impl From<Point3> for Place {
    /// A place as a drawing gives it.
    fn from(point: Point3) -> Self {
        Self { x: Stated::drawn(point.x), y: point.y, z: Stated::drawn(point.z) }
    }
}

table! {
    Place, besides [y]
    place AT_X "at-x" x;
    place AT_Z "at-z" z;
}
