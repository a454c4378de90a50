//! What is chosen, measured and on hand.

mod arm_pose;
mod choice;
mod placing;

pub use arm_pose::{ArmAngles, ArmPose, LinkPose, arm_pose};
pub use choice::{Build, Carrying, Change, Measurement, Presence, Seating};
pub use placing::{OpenPort, Placed, Placement, Stack, StackJoint, place};
