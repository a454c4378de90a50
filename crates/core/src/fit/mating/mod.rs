//! Whether two ports mate by their dimensions: plain numbers in, margins out.
//!
//! Knows holes, pins, hooks and the standards' tables, but no machine and no catalogue. Everything is in metres and radians.
//! A margin is a signed length: what is left over before the parts no longer go together.

/// The largest figure that is taken for a length at all, metres. Own choice: no machine is a thousand kilometres long, and
/// squares and sums of such lengths still have all their digits.
pub const LARGEST: f64 = 1e6;

pub mod bolt_pattern;
pub mod bolted_joint;
pub mod clearance_hole;
pub mod closure;
pub mod closure_in_space;
pub mod coupler;
pub mod facing;
pub mod freedom;
pub mod half_range;
pub mod hardware;
mod lowest;
pub mod pin_fit;
pub mod pins;
pub mod power_take_off;
pub mod side_plates;
pub mod spans;
pub mod thread;
pub mod three_point;
pub mod tolerance;
