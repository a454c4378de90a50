//! Rules beyond joints, one a file. Each looks at the build and adds the findings it has.

mod adapter;
mod alike;
mod arm_on_hitch;
mod clearance;
mod fitted;
mod frame_idle;
mod front_seat;
mod holes_planned;
mod hydraulics;
mod lift;
mod loads;
mod measurement;
mod missing;
mod place;
mod power;
mod presence;
mod ramp;
mod seat_kind;
mod seat_room;
mod seat_supplier;
mod seat_switch;
mod site;
mod station;
mod trailer;
mod unit;

pub(super) use loads::{LEAST_FRONT_SHARE, ballast_place};

use super::answer::Footprint;
use super::context::Context;
use crate::build::{Build, Placed as PlacedItem};
use crate::finding::{Finding, Verdict};
use crate::item::Catalogue;

pub(super) use alike::{Alike, Placed};

/// A rule with what the search for completions has to know of it.
pub(super) struct Rule {
    /// Adds the findings it has.
    pub judge: fn(&Context, &mut Vec<Finding>),
    /// What it reads.
    pub reads: Reads,
}

/// What a rule reads of a build beyond its side.
pub(super) enum Reads {
    /// Of the items what this compares.
    Items(Alike),
    /// Of the items what this compares, and which ports meet.
    Joined(Alike),
    /// Of some items what this compares and where they stand.
    Placed(Placed),
    /// Anything: its verdict is asked anew for every build.
    Whole(QuickVerdict),
}

/// The worst of what a rule finds in a build whose items are placed.
pub(super) type QuickVerdict = fn(&Catalogue, &Build, &[PlacedItem]) -> Verdict;

impl Rule {
    /// A rule that reads of the items alone what `alike` compares.
    const fn of_items(judge: fn(&Context, &mut Vec<Finding>), alike: Alike) -> Self {
        Self { judge, reads: Reads::Items(alike) }
    }

    /// A rule that also asks which ports meet.
    const fn of_joined(judge: fn(&Context, &mut Vec<Finding>), alike: Alike) -> Self {
        Self { judge, reads: Reads::Joined(alike) }
    }

    /// A rule that asks where some items stand.
    const fn of_placed(judge: fn(&Context, &mut Vec<Finding>), placed: Placed) -> Self {
        Self { judge, reads: Reads::Placed(placed) }
    }

    /// A rule that reads whatever it likes, and says its verdict by itself, because it will be asked often.
    const fn of_whole(judge: fn(&Context, &mut Vec<Finding>), verdict: QuickVerdict) -> Self {
        Self { judge, reads: Reads::Whole(verdict) }
    }
}

/// Every rule: in the order of the files, then those that ask where items stand, whole rules last, the cheapest first.
pub(super) const RULES: &[Rule] = &[
    Rule::of_joined(adapter::rule, adapter::ALIKE),
    Rule::of_joined(arm_on_hitch::rule, arm_on_hitch::ALIKE),
    Rule::of_joined(clearance::unknown, clearance::ALIKE),
    Rule::of_items(fitted::rule, fitted::ALIKE),
    Rule::of_joined(frame_idle::rule, Alike::ALL),
    Rule::of_items(front_seat::rule, front_seat::ALIKE),
    Rule::of_items(holes_planned::rule, Alike::ALL),
    Rule::of_items(hydraulics::rule, hydraulics::ALIKE),
    Rule::of_joined(lift::unknown, lift::ALIKE),
    Rule::of_joined(loads::unknown, loads::ALIKE),
    Rule::of_items(measurement::rule, Alike::ALL),
    Rule::of_items(power::rule, power::ALIKE),
    Rule::of_joined(presence::rule, presence::ALIKE),
    Rule::of_items(seat_kind::rule, seat_kind::ALIKE),
    Rule::of_joined(seat_room::unknown, seat_room::ALIKE),
    Rule::of_items(seat_supplier::rule, seat_supplier::ALIKE),
    Rule::of_items(seat_switch::rule, seat_switch::ALIKE),
    Rule::of_items(station::rule, station::ALIKE),
    Rule::of_items(unit::rule, Alike::ALL),
    Rule::of_placed(place::rule, place::PLACED),
    Rule::of_placed(clearance::frame, clearance::FRAME),
    Rule::of_placed(clearance::seat_and_machine, clearance::SEAT_AND_MACHINE),
    Rule::of_placed(clearance::implement_and_machine, clearance::IMPLEMENT_AND_MACHINE),
    Rule::of_placed(clearance::implement_and_seat, clearance::IMPLEMENT_AND_SEAT),
    Rule::of_placed(clearance::swivel, clearance::SWIVEL),
    Rule::of_placed(seat_room::rule, seat_room::PLACED),
    Rule::of_placed(lift::rule, lift::PLACED),
    Rule::of_whole(loads::rule, loads::verdict),
];

/// A rule on the finished machine, which looks at what it measures too.
pub(super) type TravelRule = fn(&Context, &Footprint, &mut Vec<Finding>);

/// The rules on the build's trailer and site, in the order of the files. They have no say in the four steps:
/// a build without trailer and site finds nothing here.
pub(super) const TRAVEL: &[TravelRule] = &[ramp::rule, site::rule, trailer::rule];

#[cfg(test)]
mod tests;
