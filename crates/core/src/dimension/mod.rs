//! What the finished machine measures: one published quantity a file.
//!
//! Every function takes plain SI numbers (metres, radians, kilograms) in the frame of the crate:
//! x forward, y left, z up, origin on level ground under the centre of the rear axle. Side-view
//! points are (x, z), written as the two numbers of a [`Point`](crate::plane::Point). Functions
//! are total: every input gives a value or an [`InputError`] that names what is wrong; nothing
//! that limits nothing is `None`.

mod arm;
mod breakover;
mod departure;
mod input;
mod ramp;
mod steering;
mod swing;

pub use arm::{Attitude, Digging, DiggingArm, Loading, Swivel, attitude, digging, loading};
pub use breakover::{Breakover, Wheels, breakover};
pub use departure::{EndAngle, EndWheel, approach, departure};
pub use input::{Fault, InputError, LARGEST};
pub use ramp::{
    Facing, LoadingJob, Nearest, Ramp, RampRoll, RampStand, Rider, ShortestRamp, ramp_corners, ramp_roll, ramp_stand,
    shortest_ramp,
};
pub use steering::{Steering, steering};
pub use swing::{Block, Corridor, Swing, swing, turned};
