//! Seat arrangements for working the implement.

use super::{Body, Station};
use crate::quantity::{Length, Work};

/// The kinds of seat arrangement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
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
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
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

/// How a seat stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum SeatState {
    /// As it is built in; the machine is driven from the operator's seat so.
    #[default]
    Driving,
    /// Turned half round about its index point.
    Turned,
    /// Its back folded down.
    Folded,
    /// Slid forward.
    Slid,
    /// Taken off.
    Off,
}

/// How a seat gets out of the way.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SeatMoves {
    /// Whether its back folds down; it is then outlined by shapes of the role [`ShapeRole::SeatFolded`](super::ShapeRole).
    pub folds: bool,
    /// How far it slides forward, in its own axes.
    pub slides: Length,
    /// Workshop time to take it off; `None` = not known whether it comes off.
    pub off: Option<Work>,
}

/// What an arrangement does to the operator's own seat.
#[derive(Debug, Clone, Copy, PartialEq)]
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

/// A seat arrangement. Its local origin is where its base meets the deck, or, for a turning
/// seat, the machine's origin.
#[derive(Debug, Clone, PartialEq)]
pub struct Seat {
    /// What every item has; its side outline is the envelope to keep clear.
    pub body: Body,
    /// Workshop time to put it on; `None` = not known.
    pub fitting: Option<Work>,
    /// Kind.
    pub kind: SeatKind,
    /// What it comes with.
    pub supplied_with: SuppliedWith,
    /// Stations it can be used in; empty = not known.
    pub stations: Vec<Station>,
    /// Seat index point over the local origin, (x, z), when facing the implement.
    pub index_point: Option<(Length, Length)>,
    /// Radius of the circle it sweeps when it turns.
    pub swivel_radius: Option<Length>,
    /// What it does to the operator's seat.
    pub front_seat: FrontSeatEffect,
    /// Least room needed behind the seat index point to the implement's controls.
    pub least_room: Option<Length>,
    /// Farthest the controls may be behind the seat index point.
    pub greatest_reach: Option<Length>,
    /// Whether it has an operator-presence switch.
    pub presence_switch: Option<bool>,
    /// How it gets out of the way of the operator's seat while the machine is driven.
    pub moves: SeatMoves,
}
