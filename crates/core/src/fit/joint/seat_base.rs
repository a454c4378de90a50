//! Seat bases: a bolt pattern with a pedestal.

use super::{Mating, Meeting, holes};
use crate::fit::context::Context;
use crate::item::SeatBase;

pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &SeatBase, carried: &SeatBase) -> Mating {
    holes::judge(context, meeting, &carrier.pattern, &carried.pattern)
}
