//! What is chosen, measured and on hand.

mod arm_pose;
mod choice;
mod linkage;
mod placing;
mod step;

pub use arm_pose::{ArmAngles, ArmPose, LinkPose, arm_pose};
pub use choice::{Build, Carrying, Change, Measurement, Presence, Seating};
pub use linkage::{Linkage, linkage};
pub use placing::{OpenPort, Placed, Placement, Stack, StackJoint, place};
pub use step::{Step, options};
