//! What a frame needs on the machine and what it needs off it.

use super::{Rule, Seen, View};
use crate::build::{Change, Side};
use crate::finding::{Finding, Grade, Name, Subject, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Frame, ItemRef, Machine};

findings! {
    /// Something on the machine has to come off for the frame.
    MustComeOff = "must-come-off", Fit { what: Name, item: ItemRef }
    /// The frame needs something on the machine that is not there.
    MustGoOn = "must-go-on", Fit { what: Name, item: ItemRef }
}

/// Things the frame excludes have to come off; things it requires have to go on.
pub(super) struct FittedOnMachine;

/// What is on the machine as it is sold, in the catalogue's words.
#[derive(PartialEq)]
pub struct Fitted<'c>(&'c [String]);

impl<'c> View<'c, Machine> for Fitted<'c> {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(&machine.fitted)
    }
}

/// What the frame excludes and requires.
#[derive(PartialEq)]
pub struct Wants<'c> {
    excludes: &'c [String],
    requires: &'c [String],
}

impl<'c> View<'c, Frame> for Wants<'c> {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self { excludes: &frame.excludes, requires: &frame.requires }
    }
}

impl Rule for FittedOnMachine {
    type Machine<'c> = Fitted<'c>;
    type Frame<'c> = Wants<'c>;
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = ();

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(frame), Some(machine)) = (seen.frame(), &seen.machine) else { return };
        let item = frame.item;
        let subject = Subject::Item(item);
        let is_on = |what: &&String| is_left_on(machine.sees.0, seen.side, what);
        for what in frame.sees.excludes.iter().filter(is_on) {
            let fact = MustComeOff { what: what.clone(), item };
            out.push(Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Listed));
        }
        for what in frame.sees.requires.iter().filter(|what| !is_on(what)) {
            let fact = MustGoOn { what: what.clone(), item };
            out.push(Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Listed));
        }
    }
}

/// Whether something is on the machine as the build leaves it.
fn is_left_on(fitted: &[String], side: &Side, what: &str) -> bool {
    let mut on = fitted.iter().any(|fitted| fitted == what);
    for change in &side.changes {
        match change {
            Change::TakeOff(taken) if taken == what => on = false,
            Change::PutOn(put) if put == what => on = true,
            _ => {}
        }
    }
    on
}
