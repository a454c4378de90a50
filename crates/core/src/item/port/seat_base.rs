//! Seat bases.

use super::BoltPattern;
use crate::quantity::Length;

/// A seat base.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SeatBase {
    /// Its holes.
    pub pattern: BoltPattern,
    /// Height of the pedestal from the deck to the seat's underside.
    pub pedestal: Option<Length>,
}
