//! What the finished machine measures: one published quantity a file.
//!
//! Every function takes plain SI numbers (metres, radians, kilograms) in the frame of the crate:
//! x forward, y left, z up, origin on level ground under the centre of the rear axle. Side-view
//! points are (x, z), written as the two numbers of a [`Point`](crate::plane::Point). Functions
//! are total: every input gives a value or an [`InputError`] that names what is wrong. Where a
//! machine has nothing that limits an angle or a distance, the answer is `None`.
//!
//! A new quantity is a file here and a figure of the command line: `DEVELOPERS.md` names every place.

mod arm;
mod axle_loads;
mod bolted_joint;
mod breakover;
mod centre;
mod departure;
mod hydraulics;
mod input;
mod moment;
mod photo_plane;
mod photo_spans;
mod ramp;
mod side_tipping;
mod steering;
mod swing;
mod tie_downs;
mod tip;
mod tipping;
mod trailer;

pub use arm::{
    ArmPlan, Attitude, Digging, DiggingArm, Loading, SwingReach, Swivel, attitude, digging, loading, swing_arc,
};
pub use axle_loads::{AxleLoads, ShareOf, axle_loads};
pub use bolted_joint::{
    BoltEnd, BoltLength, BoltedJoint, ENGAGEMENT, FittedBolt, HoleDistance, LEAST_EDGE, LEAST_SPACING,
    PITCHES_PAST_NUT, Shank, StockBolt, bolted_joint, edge_distance, hole_spacing,
};
pub use breakover::{Breakover, Wheels, breakover};
pub use centre::centre;
pub use departure::{EndAngle, EndWheel, approach, departure};
pub use hydraulics::{Cylinder, Stroke, Travel, cycle_time, hydraulic_power, line_velocity, shaft_power};
pub use input::{Fault, InputError, LARGEST, SMALLEST};
pub use moment::PointMass;
pub use photo_plane::{CornersFault, PhotoFault, PhotoPlane, Placed, PlacedDistance, SheetPhoto, photo_plane};
pub use photo_spans::{LENS, MarkedPhoto, MarksFault, PhotoSpan, photo_spans};
pub use ramp::{
    Facing, LeastLoad, LoadingJob, Nearest, Ramp, RampLoads, RampRoll, RampStand, Rider, ShortestRamp, Weight,
    ramp_corners, ramp_gap, ramp_loads, ramp_roll, ramp_stand, shortest_ramp,
};
pub use side_tipping::{GroundMass, SideStand, side_tipping};
pub use steering::{Steering, steering};
pub use swing::{Block, Corridor, Swing, swing, turned};
pub use tie_downs::{Article, Tie, TieDowns, TieRun, tie_downs};
pub use tip::{EdgeAngles, FrontSupport, Stance, TipAngles, TipEdge, tip_angles};
pub use tipping::{
    DigLoads, DigStand, Governs, LiftCylinder, SHARE_OF_HYDRAULIC, SHARE_OF_TIPPING, cylinder_lift, dig_loads,
};
pub use trailer::{
    Cargo, Heading, Stretch, TrailerBed, TrailerLoads, deck_overhang, nose_window, trailer_loads, wheels_on_deck,
    wheels_window,
};
