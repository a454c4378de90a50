//! Space geometry: vectors, rotations and rigid motions. Knows no machine.
//!
//! A vector's three numbers are the axes x, y, z of a right-handed frame. All lengths are in one unit, all angles in radians.

mod motion;
mod rotation;
mod vector;

pub use motion::RigidMotion;
pub use rotation::Rotation;
pub use vector::{Vector, angle_between, cross, dot, minus, norm, plus, times};
