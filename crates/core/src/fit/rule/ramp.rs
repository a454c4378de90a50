//! The way up the trailer's ramp, and how the machine stands that has driven up so.

use super::finished::{OnDeck, OnRamp};
use super::missing::missing;
use super::trailer::standing;
use super::{Datum, Rule, Seen, View};
use crate::dimension::Facing;
use crate::finding::{AxleName, Caution, Drawn, Fact, Finding, Grade, NeededLength, Subject, Unstated, Verdict};
use crate::fit::desk::Desk;
use crate::fit::whole::{Drive, RAMP_MARGIN, Rolling, way_up};
use crate::item::{ItemRef, Machine};
use crate::quantity::{Length, Mass};
use crate::{findings, words};

findings! {
    /// The machine gets up the ramp.
    RampClears = "ramp-clears", Travel { item: ItemRef, way: Way, ramp: Drawn, clearance: Drawn }
    /// It drags, and the shortest ramp on which it would not.
    RampDrags = "ramp-drags", Travel {
        item: ItemRef, way: Way, ramp: Drawn, drags_by: Drawn,
        wanted: Drawn, place: Along, distance: Drawn, shortest: Option<NeededLength>,
    }
    /// It clears by less than is wanted, and the shortest ramp on which it would not.
    RampTight = "ramp-tight", Travel {
        item: ItemRef, way: Way, ramp: Drawn, clearance: Drawn,
        wanted: Drawn, place: Along, distance: Drawn, shortest: Option<NeededLength>,
    }
    /// An axle lifts on the way up: the machine tips over.
    RampTips = "ramp-tips", Travel { way: Way, axle: AxleName, ramp: Drawn }
    /// An axle keeps less weight on the way up than is wanted.
    RampAxleLight = "ramp-axle-light", Travel { way: Way, axle: AxleName, load: Mass, least: Mass }
    /// What loading depends on is not stated.
    LoadingUnknown = "loading-unknown", Travel { missing: Unstated, item: ItemRef }
}

words! {
    /// Which way the machine drives up.
    Way { Forward = "forward", Backward = "backward", Either = "either" }
}

words! {
    /// Where along the machine: behind the rear axle, between the axles, ahead of the front axle.
    Along { Behind = "behind", Between = "between", Ahead = "ahead" }
}

/// The underside has to clear the trailer's ramp by [`RAMP_MARGIN`], both axles have to keep weight on the way up, and the machine
/// has to stand well on the trailer as it drove up: forwards or backwards, whichever is better for all of it counts.
pub(super) struct UpTheRamp;

/// How far ahead the front axle is.
#[derive(PartialEq)]
pub struct FrontAxleAt(Datum<Length>);

impl<'c> View<'c, Machine> for FrontAxleAt {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self(Datum::new(Unstated::Wheelbase, machine.wheelbase).map(|wheelbase| wheelbase.value))
    }
}

impl Rule for UpTheRamp {
    type Machine<'c> = FrontAxleAt;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = (OnRamp, OnDeck);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (OnRamp(ramp), OnDeck(on)) = &seen.asks;
        let (Some(machine), Some((rolling, not_stated))) = (&seen.machine, ramp) else { return };
        missing(seen, |missing, item| LoadingUnknown { missing, item }, Subject::Loading, not_stated, out);
        let drive = |facing| rolling.as_ref().and_then(|rolling| rolling.drive(facing));
        let drives = [Facing::Forward, Facing::Backward].map(drive);
        let is_helped = |facing| rolling.as_ref().is_some_and(|rolling| rolling.shortest_below(facing).is_some());
        let way = way_up(&drives, on.as_ref(), is_helped);
        // What rolls has a wheelbase.
        if let (Some(rolling), Some(front)) = (rolling, machine.sees.0.or_said_by::<LoadingUnknown>()) {
            drive_up(rolling, &drives, way, front, out);
        }
        if let Some(on) = on {
            standing(on, way, out);
        }
    }
}

/// The better way; the ramp itself may do either way.
fn drive_up(rolling: &Rolling, drives: &[Option<Drive>; 2], way_up: Facing, front: Length, out: &mut Vec<Finding>) {
    let Some(best) = drives.iter().flatten().find(|drive| drive.facing == way_up) else { return };
    weight(rolling, best, out);
    let Some((nearest, item)) = best.touch() else { return };
    let clearance = Length::from_m(nearest.vertical);
    let does = |drive: &Drive| drive.clears() && !drive.tips() && drive.is_light() == best.is_light();
    let both = drives.iter().all(|drive| drive.as_ref().is_some_and(does));
    let way = if both { Way::Either } else { way(best.facing) };
    let ramp = Length::from_m(rolling.ramp.length);
    if best.clears() {
        out.push(about(RampClears { item, way, ramp, clearance }, Verdict::BoltsUp));
        return;
    }
    let shortest = rolling.shortest_below(best.facing).map(|ramp| Length::from_m(ramp.length));
    // Longer ramps are parts to buy; where none helps, that trailer does not carry it.
    let verdict = if shortest.is_some() { Verdict::BoltsUpWithWork } else { Verdict::WontMount };
    let at = Length::from_m(nearest.point.x);
    let (wanted, place, distance) = (RAMP_MARGIN, place(front, at), at.abs());
    out.push(if clearance < Length::ZERO {
        about(RampDrags { item, way, ramp, drags_by: -clearance, wanted, place, distance, shortest }, verdict)
    } else {
        let fact = RampTight { item, way, ramp, clearance, wanted, place, distance, shortest };
        about(fact, Verdict::BoltsUpWithWork)
    });
}

/// What the axles keep on the way that is best.
fn weight(rolling: &Rolling, best: &Drive, out: &mut Vec<Finding>) {
    let Some((axle, load)) = best.lightest() else { return };
    let way = way(best.facing);
    if best.tips() {
        let ramp = Length::from_m(rolling.ramp.length);
        out.push(about(RampTips { way, axle, ramp }, Verdict::WontMount));
    } else if best.is_light() {
        out.push(about(RampAxleLight { way, axle, load, least: best.least_load }, Verdict::CheckFirst));
    }
}

fn about<F: Fact>(fact: F, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Loading, verdict, Grade::Drawing).caution(Caution::LoadingRamps)
}

const fn way(facing: Facing) -> Way {
    match facing {
        Facing::Forward => Way::Forward,
        Facing::Backward => Way::Backward,
    }
}

fn place(front: Length, x: Length) -> Along {
    if x < Length::ZERO {
        Along::Behind
    } else if x > front {
        Along::Ahead
    } else {
        Along::Between
    }
}
