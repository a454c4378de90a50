//! The table of seat arrangements.

use serde::{Deserialize, Serialize};

use super::body::item_row;
use super::machine::Station;
use super::value::Length;

item_row! {
    /// A seat arrangement. Local origin: where its base meets the deck; of a turning seat, the machine's origin.
    Seat {
        /// Kind.
        kind: SeatKind,
        /// What it comes with; left out = kit.
        #[serde(default, skip_serializing_if = "SuppliedWith::is_kit")]
        supplied_with: SuppliedWith,
        /// Stations it can be used in; left out = any.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        stations: Vec<Station>,
        /// Seat index point over the local origin, facing the implement.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        index_point: Option<IndexPoint>,
        /// Radius of the circle it sweeps when it turns.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        swivel_radius: Option<Length>,
        /// What it does to the operator's seat.
        front_seat: FrontSeatEffect,
        /// Least room needed behind the seat index point to the implement's controls.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        least_room: Option<Length>,
        /// Farthest the controls may be behind the seat index point.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        greatest_reach: Option<Length>,
        /// Whether it has an operator-presence switch; left out = not known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        presence_switch: Option<bool>,
    }
}

/// The kinds of seat arrangement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SeatKind {
    /// The operator's seat turns round.
    Turning,
    /// A second seat stands behind.
    Separate,
    /// The implement brings its own.
    ImplementsOwn,
    /// The operator's seat as it is, facing forward.
    Forward,
}

/// What a seat arrangement comes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SuppliedWith {
    /// Bought as a kit.
    #[default]
    Kit,
    /// Comes with the machine.
    Machine,
    /// Comes with the frame.
    Frame,
    /// Comes with the implement.
    Implement,
}

impl SuppliedWith {
    /// Whether it is bought as a kit.
    pub fn is_kit(&self) -> bool {
        *self == Self::Kit
    }
}

/// What an arrangement does to the operator's own seat.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FrontSeatEffect {
    /// Leaves it alone.
    None,
    /// It is this seat, turned round.
    Turns,
    /// Its back has to flip forward.
    FlipsForward,
    /// It has to slide forward so far.
    SlidesForward(Length),
    /// It has to come off.
    ComesOff,
}

/// A point in the side view.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct IndexPoint {
    /// Forward.
    pub x: Length,
    /// Up.
    pub z: Length,
}
