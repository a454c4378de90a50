//! Seat arrangements for working the implement.

use super::{Body, Station};
use crate::quantity::Length;

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
    /// Kind.
    pub kind: SeatKind,
    /// What it comes with.
    pub supplied_with: SuppliedWith,
    /// Stations it can be used in; empty = any.
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
}
