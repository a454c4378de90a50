//! The table of machines.

use fitup_core::item as core;

use super::body::item_row;
use super::define::{choice, record, words};
use super::value::{Flow, Hours, Length, Mass, Pressure, Stated};

item_row! {
    /// A machine. Local origin: on the ground under the centre of the rear axle. Its mass, axle loads
    /// and ports are those of the bare machine, without equipment.
    Machine {
        /// Whether the operator sits in the open or in a cab.
        required station: Station,
        /// Wheelbase.
        optional wheelbase: Option<Stated<Length>>,
        /// Rear axle.
        optional rear: Option<Axle>,
        /// Front axle.
        optional front: Option<Axle>,
        /// How the front axle is held; left out = not known.
        optional front_axle: Option<FrontAxle>,
        /// Height of the bare machine's centre of gravity.
        optional centre_of_gravity_height: Option<Length>,
        /// Least turning radius of the outer front wheel's track circle.
        optional turning_radius: Option<Length>,
        /// Roll-over bar, if it has one.
        optional roll_over_bar: Option<RollOverBar>,
        /// x of the cab's rear plane.
        optional cab_rear: Option<Length>,
        /// The operator's seat as built in.
        optional operator_seat: Option<OperatorSeat>,
        /// What its hydraulics supply.
        optional hydraulics: Option<HydraulicSupply>,
        /// Ids of the equipment that it is sold with.
        optional fitted: Vec<String>,
    }
}

words! {
    /// Whether the operator sits in the open or in a cab.
    pub enum Station => core::Station {
        /// Open station with a roll-over bar.
        Open "open",
        /// Closed cab.
        Cab "cab",
    }
}

record! {
    /// One axle with its tyres.
    #[derive(Copy, Default)]
    pub struct Axle => core::Axle {
        /// Track: centre to centre of the tyres.
        optional track: Option<Length>,
        /// Tyre width.
        optional tyre_width: Option<Length>,
        /// Static loaded radius: height of the wheel centre over level ground.
        optional static_loaded_radius: Option<Length>,
        /// Overall (unloaded) radius.
        optional overall_radius: Option<Length>,
        /// Rated load of the axle.
        optional rated: Option<Mass>,
        /// Rated load of one tyre.
        optional tyre_rated: Option<Mass>,
        /// Load of the bare machine on this axle.
        optional bare_load: Option<Mass>,
    }
}

choice! {
    /// How the front axle is held.
    #[derive(Copy)]
    pub enum FrontAxle {
        /// Fixed to the body.
        Fixed "fixed",
        /// Swings about a pin along x.
        Oscillating(Pivot) "oscillating",
    }
}

record! {
    /// The pin an oscillating front axle swings about.
    #[derive(Copy)]
    pub struct Pivot {
        /// Height of the pin over the ground.
        required pivot_height: Length,
    }
}

record! {
    /// Roll-over bar.
    #[derive(Copy)]
    pub struct RollOverBar => core::RollOverBar {
        /// Its x.
        required x: Length,
        /// Height over the ground, standing.
        required height_up: Length,
        /// Height over the ground, folded; left out = does not fold.
        optional height_folded: Option<Length>,
    }
}

record! {
    /// The operator's seat as built in.
    #[derive(Copy)]
    pub struct OperatorSeat => core::OperatorSeat {
        /// x of the seat index point.
        required index_x: Length,
        /// z of the seat index point.
        required index_z: Length,
        /// Whether it turns to face the rear.
        required turns: bool,
        /// Whether its back flips forward out of the way.
        required flips_forward: bool,
        /// How far it slides forward.
        required slides_forward: Length,
        /// Hours to take it off; left out = not known whether it comes off.
        optional off: Option<Hours>,
    }
}

record! {
    /// What the machine's hydraulics supply.
    #[derive(Copy, Default)]
    pub struct HydraulicSupply => core::HydraulicSupply {
        /// Flow at the outlets.
        optional flow: Option<Flow>,
        /// Relief pressure.
        optional relief: Option<Pressure>,
        /// Number of double-acting outlets.
        optional outlets: Option<u32>,
        /// Whether power-beyond is provided; left out = not known.
        optional power_beyond: Option<bool>,
    }
}
