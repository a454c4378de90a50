//! Seat bases: a bolt pattern with a pedestal.

use super::{Mating, Meeting, holes};
use crate::item::SeatBase;

pub(super) fn judge(meeting: &Meeting, carrier: &SeatBase, carried: &SeatBase) -> Mating {
    holes::judge(meeting, &carrier.pattern, &carried.pattern)
}
