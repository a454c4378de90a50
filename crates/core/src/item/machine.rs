//! The machine: the tractor that everything else goes on.

use super::{Body, On, SeatMoves};
use crate::quantity::{Flow, Length, Mass, Pressure, Stated, Work};

/// Whether the operator sits in the open or in a cab.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Station {
    /// Open station with a roll-over bar.
    Open,
    /// Closed cab.
    Cab,
}

/// One axle with its tyres.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Axle {
    /// Track: centre to centre of the tyres.
    pub track: Option<Length>,
    /// Tyre width.
    pub tyre_width: Option<Length>,
    /// Static loaded radius: height of the wheel centre over level ground.
    pub static_loaded_radius: Option<Length>,
    /// Overall (unloaded) radius.
    pub overall_radius: Option<Length>,
    /// Rated load of the axle.
    pub rated: Option<Mass>,
    /// Rated load of one tyre.
    pub tyre_rated: Option<Mass>,
    /// Load of the bare machine on this axle.
    pub bare_load: Option<Mass>,
}

/// How the front axle is held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FrontAxle {
    /// Not known.
    Unknown,
    /// Fixed to the body.
    Fixed,
    /// Swings about a pin along x at this height.
    Oscillating {
        /// Height of the pin over the ground.
        pivot_height: Length,
    },
}

/// Roll-over bar.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RollOverBar {
    /// Its x in the machine's axes.
    pub x: Length,
    /// Height standing.
    pub height_up: Length,
    /// Height folded; `None` = does not fold.
    pub height_folded: Option<Length>,
}

/// The operator's seat as built in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatorSeat {
    /// Seat index point, x.
    pub index_x: Length,
    /// Seat index point, z.
    pub index_z: Length,
    /// Whether it turns to face the rear.
    pub turns: bool,
    /// Whether its back flips forward out of the way.
    pub flips_forward: bool,
    /// How far it slides forward.
    pub slides_forward: Length,
    /// Workshop time to take it off; `None` = not known whether it comes off.
    pub off: Option<Work>,
}

impl OperatorSeat {
    /// How it gets out of the way.
    pub const fn moves(&self) -> SeatMoves {
        SeatMoves { folds: self.flips_forward, slides: self.slides_forward, off: self.off }
    }
}

/// What the machine's hydraulics supply.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HydraulicSupply {
    /// Flow at the outlets.
    pub flow: Option<Flow>,
    /// Relief pressure.
    pub relief: Option<Pressure>,
    /// Number of double-acting outlets.
    pub outlets: Option<u32>,
    /// Whether power-beyond is provided.
    pub power_beyond: Option<bool>,
}

/// A machine. Its local origin is the frame of the crate: on the ground under the rear axle.
#[derive(Debug, Clone, PartialEq)]
pub struct Machine {
    /// What every item has; its mass is the bare machine's, without equipment.
    pub body: Body,
    /// Station.
    pub station: Station,
    /// Wheelbase.
    pub wheelbase: Option<Stated<Length>>,
    /// Rear axle.
    pub rear: Axle,
    /// Front axle.
    pub front: Axle,
    /// How the front axle is held.
    pub front_axle: FrontAxle,
    /// Height of the bare machine's centre of gravity.
    pub centre_of_gravity_height: Option<Length>,
    /// Least turning radius of the outer front wheel's track circle.
    pub turning_radius: Option<Length>,
    /// Roll-over bar, if it has one.
    pub roll_over_bar: Option<RollOverBar>,
    /// Rear plane of the cab.
    pub cab_rear: Option<Length>,
    /// The operator's seat.
    pub operator_seat: Option<OperatorSeat>,
    /// What its hydraulics supply.
    pub hydraulics: HydraulicSupply,
    /// Ids of the equipment that it is sold with.
    pub fitted: Vec<String>,
    /// Of a machine as it stands, the equipment that is on it and already part of all the rest; of a machine of the list nothing.
    pub on: Vec<On>,
}
