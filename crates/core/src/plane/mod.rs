//! Plane geometry: points, polylines, circles, tangents, distances. Knows no machine.
//!
//! A point's two numbers are the two axes of whichever plane it lies in: (x, z) in the side
//! view, (x, y) in plan, (y, z) from behind. All lengths are in one unit, all angles in radians.

mod arc;
mod area;
mod circle;
mod point;

pub use arc::Arc;
pub use area::{Bounds, between_x, gap, overlap, overlap_somewhere, simplified};
pub use circle::Circle;
pub use point::Point;
