//! The table of machines.

use serde::{Deserialize, Serialize};

use super::body::item_row;
use super::value::{Flow, Length, Mass, Pressure, Stated};

item_row! {
    /// A machine. Local origin: on the ground under the centre of the rear axle. Its mass is the bare machine's.
    Machine {
        /// Whether the operator sits in the open or in a cab.
        station: Station,
        /// Wheelbase.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        wheelbase: Option<Stated<Length>>,
        /// Rear axle.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        rear: Option<Axle>,
        /// Front axle.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        front: Option<Axle>,
        /// How the front axle is held; left out = not known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        front_axle: Option<FrontAxle>,
        /// Height of the bare machine's centre of gravity.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        centre_of_gravity_height: Option<Length>,
        /// Least turning radius of the outer front wheel's track circle.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        turning_radius: Option<Length>,
        /// Roll-over bar, if it has one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        roll_over_bar: Option<RollOverBar>,
        /// x of the cab's rear plane.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        cab_rear: Option<Length>,
        /// The operator's seat as built in.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        operator_seat: Option<OperatorSeat>,
        /// What its hydraulics supply.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        hydraulics: Option<HydraulicSupply>,
        /// What else is on it, in the catalogue's words: "loader base", "belly mower".
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        fitted: Vec<String>,
    }
}

/// Whether the operator sits in the open or in a cab.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Station {
    /// Open station with a roll-over bar.
    Open,
    /// Closed cab.
    Cab,
}

/// One axle with its tyres.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Axle {
    /// Track: centre to centre of the tyres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub track: Option<Length>,
    /// Tyre width.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre_width: Option<Length>,
    /// Static loaded radius: height of the wheel centre over level ground.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub static_loaded_radius: Option<Length>,
    /// Overall (unloaded) radius.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overall_radius: Option<Length>,
    /// Rated load of the axle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rated: Option<Mass>,
    /// Rated load of one tyre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre_rated: Option<Mass>,
    /// Load of the bare machine on this axle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bare_load: Option<Mass>,
}

/// How the front axle is held.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FrontAxle {
    /// Fixed to the body.
    Fixed,
    /// Swings about a pin along x.
    Oscillating(Pivot),
}

/// The pin an oscillating front axle swings about.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pivot {
    /// Height of the pin over the ground.
    pub pivot_height: Length,
}

/// Roll-over bar.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RollOverBar {
    /// Its x.
    pub x: Length,
    /// Height over the ground, standing.
    pub height_up: Length,
    /// Height over the ground, folded; left out = does not fold.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height_folded: Option<Length>,
}

/// The operator's seat as built in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OperatorSeat {
    /// x of the seat index point.
    pub index_x: Length,
    /// z of the seat index point.
    pub index_z: Length,
    /// Whether it turns to face the rear.
    pub turns: bool,
    /// Whether its back flips forward out of the way.
    pub flips_forward: bool,
    /// How far it slides forward.
    pub slides_forward: Length,
}

/// What the machine's hydraulics supply.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HydraulicSupply {
    /// Flow at the outlets.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flow: Option<Flow>,
    /// Relief pressure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub relief: Option<Pressure>,
    /// Number of double-acting outlets.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outlets: Option<u32>,
    /// Whether power-beyond is provided; left out = not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub power_beyond: Option<bool>,
}
