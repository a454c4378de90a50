//! What is chosen, measured and on hand.

mod choice;
mod placing;

pub use choice::{Build, Carrying, Change, Measurement, Presence, Seating};
pub use placing::{OpenPort, Placed, Placement, Stack, StackJoint, place};
