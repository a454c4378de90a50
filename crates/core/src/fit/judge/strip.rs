//! What comes off, folds, turns or slides before the implement goes on, what goes on, and what has to stay: in the order it is
//! done, with its hours.

use super::equipped::Equipped;
use crate::build::{Change, SeatStands, Seats};
use crate::finding::{Fact, Finding, Subject, Value};
use crate::fit::context::Context;
use crate::fit::rule::OwnSeatComesOff;
use crate::item::{EquipmentId, ItemRef, On, SeatKind, SeatState};
use crate::quantity::Work;

/// What is done to the machine as it stands.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StripList {
    /// The steps, in the order they are done.
    pub steps: Vec<StripStep>,
}

/// One step.
#[derive(Debug, Clone, PartialEq)]
pub struct StripStep {
    /// What is done.
    pub what: StripWhat,
    /// Its workshop time, 0 where it is done by hand; `None` = not known.
    pub hours: Option<Work>,
}

/// What is done in a step.
#[derive(Debug, Clone, PartialEq)]
pub enum StripWhat {
    /// This equipment comes off the machine.
    TakeOff(EquipmentId),
    /// This equipment has to stay on the machine.
    Stays(EquipmentId),
    /// This equipment goes on the machine.
    PutOn(EquipmentId),
    /// The implement's own seat comes off.
    OwnSeatOff(ItemRef),
    /// The roll-over bar is folded, for transport and storage only.
    FoldBar,
    /// Holes are drilled or opened up, as the finding on their joint says.
    Holes(Box<Finding>),
    /// This item of the build goes on.
    Fit(ItemRef),
    /// The operator's seat stands so while somebody works.
    DriverSeat(SeatStands),
    /// The seat behind stands so while somebody drives.
    RearSeat(SeatStands),
}

impl StripList {
    /// The workshop time of all steps as far as it is stated, and whether it is only a part of it.
    pub fn total(&self) -> (Work, bool) {
        let stated = self.steps.iter().filter_map(|step| step.hours).sum();
        (stated, self.steps.iter().any(|step| step.hours.is_none()))
    }
}

/// The strip list of a judged build.
pub(super) fn strip(context: &Context, findings: &[Finding], seats: Seats) -> StripList {
    let mut steps = Vec::new();
    let mut step = |what, hours| steps.push(StripStep { what, hours });
    let Some((_, machine)) = context.machine() else { return StripList::default() };
    let catalogue = context.catalogue();
    let switched = Equipped::of(context, machine, findings);
    for &id in &switched.off {
        step(StripWhat::TakeOff(id), catalogue.equipment(id).off);
    }
    if context.build.side.changes.contains(&Change::FoldRollOverBar) {
        step(StripWhat::FoldBar, Some(Work::ZERO));
    }
    if let Some((_, frame)) = context.frame() {
        let is_needed = |on: &&On| frame.requires.contains(&catalogue.equipment(on.id).kind);
        let stays = machine.on.iter().filter(is_needed).filter(|on| !switched.on.contains(&on.id));
        stays.for_each(|on| step(StripWhat::Stays(on.id), Some(Work::ZERO)));
    }
    for &id in &switched.on {
        step(StripWhat::PutOn(id), catalogue.equipment(id).on);
    }
    // Decided or not: without them it does not go on.
    for finding in findings.iter().filter(|finding| matches!(finding.subject, Subject::Joint(..))) {
        if let Some(&Value::Work(work)) = finding.figure("work") {
            step(StripWhat::Holes(Box::new(finding.clone())), Some(work));
        }
    }
    for item in context.build.items() {
        fit(context, item, &mut step);
        if let (ItemRef::Implement(_), Some(own)) = (item, findings.iter().find_map(OwnSeatComesOff::read)) {
            step(StripWhat::OwnSeatOff(item), Some(own.hours));
        }
    }
    let off = |seat: SeatStands, hours| if seat.state == SeatState::Off { hours } else { Some(Work::ZERO) };
    if seats.driver.state != SeatState::Driving {
        let hours = machine.operator_seat.and_then(|own| own.off);
        step(StripWhat::DriverSeat(seats.driver), off(seats.driver, hours));
    }
    if seats.rear.state != SeatState::Driving {
        let seat = context.build.choices.seating.seat().map(|id| context.catalogue().seat(id));
        let own = context.implement().and_then(|(_, implement)| implement.own_seat_moves.off);
        let hours = seat.and_then(|seat| if seat.kind == SeatKind::ImplementsOwn { own } else { seat.moves.off });
        step(StripWhat::RearSeat(seats.rear), off(seats.rear, hours));
    }
    StripList { steps }
}

/// What has to be put on, with its hours. A seat that is part of the machine or the implement is there already.
fn fit(context: &Context, item: ItemRef, step: &mut impl FnMut(StripWhat, Option<Work>)) {
    let catalogue = context.catalogue();
    let hours = match item {
        ItemRef::Machine(_) | ItemRef::Equipment(_) => return,
        ItemRef::Seat(id) if catalogue.seat(id).kind != SeatKind::Separate => return,
        ItemRef::Frame(id) => catalogue.frame(id).fitting,
        ItemRef::Seat(id) => catalogue.seat(id).fitting,
        ItemRef::Implement(id) => catalogue.implement(id).fitting,
        ItemRef::Adapter(id) => Some(catalogue.adapter(id).work),
    };
    step(StripWhat::Fit(item), hours);
}
