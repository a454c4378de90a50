//! What is chosen, measured and on hand.

mod arm_pose;
mod assembly;
mod choice;
mod placing;
mod step;
mod unit;

pub use arm_pose::{ArmAngles, ArmPose, LinkPose, arm_pose};
pub use assembly::{Assembly, assembly};
pub use choice::{Build, Carrying, Change, Choices, Seating, Side};
pub use placing::{
    Joined, OpenPort, Placed, Placement, SeatStands, Seats, Stack, StackJoint, is_mountable, place, unmountable,
};
pub use step::{Step, options};
pub use unit::{Measurement, NumberRead, Presence};
