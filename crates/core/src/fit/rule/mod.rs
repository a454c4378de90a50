//! Rules beyond joints, one a file. Each looks at the build and adds the findings it has.

mod adapter;
mod arm_on_hitch;
mod fitted;
mod frame_idle;
mod front_seat;
mod holes_planned;
mod hydraulics;
mod lift;
mod loads;
mod measurement;
mod power;
mod presence;
mod seat_kind;
mod seat_room;
mod seat_switch;
mod station;

use super::context::Context;
use crate::finding::Finding;

/// Every rule, in the order of the files.
pub(super) const RULES: &[fn(&Context, &mut Vec<Finding>)] = &[
    adapter::rule,
    arm_on_hitch::rule,
    fitted::rule,
    frame_idle::rule,
    front_seat::rule,
    holes_planned::rule,
    hydraulics::rule,
    lift::rule,
    loads::rule,
    measurement::rule,
    power::rule,
    presence::rule,
    seat_kind::rule,
    seat_room::rule,
    seat_switch::rule,
    station::rule,
];
