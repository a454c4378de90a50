//! Power take-offs.

use super::table::table;
use crate::quantity::Power;

/// Which way a power take-off turns, seen from behind the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PtoRotation {
    /// Clockwise.
    Clockwise,
    /// Counter-clockwise.
    CounterClockwise,
}

/// A power take-off.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PowerTakeOff {
    /// Type of ISO 500-1: 1, 2, 3 or 4.
    pub shaft_type: Option<u8>,
    /// Speeds in revolutions per minute that it gives, or needs.
    pub speeds: Vec<u16>,
    /// Rotation; `None` = not known.
    pub rotation: Option<PtoRotation>,
    /// Power it gives.
    pub power: Option<Power>,
}

table! {
    PowerTakeOff, besides [shaft_type, speeds, rotation, power]
    told SHAFT_TYPE "shaft-type";
    told SPEED "speed";
    told ROTATION "rotation";
}
