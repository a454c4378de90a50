//! The way up the trailer's ramp, and how the machine stands that has driven up so.

use super::finished::{OnDeck, OnRamp};
use super::missing::missing;
use super::trailer::standing;
use super::{Datum, Rule, Seen, View};
use crate::dimension::Facing;
use crate::finding::{AxleName, Caution, Drawn, Fact, Finding, Grade, NeededLength, Subject, Unstated, Verdict};
use crate::fit::desk::Desk;
use crate::fit::whole::near::drawn_off;
use crate::fit::whole::{Drive, Missing, MissingOf, RAMP_MARGIN, Rolling, way_up};
use crate::item::{ItemRef, Machine};
use crate::quantity::{Angle, Length, Mass};
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
    /// It comes so near, and no ramp helps for certain, that measuring decides.
    RampNear = "ramp-near", Travel {
        item: ItemRef, way: Way, ramp: Drawn, clearance: Drawn, wanted: Drawn, off: Drawn,
    }
    /// Ramp or beaver tail is steeper than anything that is driven up, and the shortest ramp that would clear.
    RampSteep = "ramp-steep", Travel { angle: Angle, shortest: Option<NeededLength> }
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

/// From here on a slope is no ramp: 60°, the steepest for which a shortest ramp is looked for. Common practice, no source.
const STEEP: Angle = Angle::from_deg(60.0);

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
        let not_reckoned = |what| Missing { of: MissingOf::Item(machine.item), what };
        let tell = |what, out: &mut Vec<Finding>| {
            missing(
                seen,
                |missing, item| LoadingUnknown { missing, item },
                Subject::Loading,
                &[not_reckoned(what)],
                out,
            );
        };
        if let Some(rolling) = rolling {
            let best = drives.iter().flatten().find(|drive| drive.facing == way);
            match best {
                None if rolling.steepest() >= STEEP => {
                    let ways = [Facing::Forward, Facing::Backward].into_iter();
                    let shortest = ways.filter_map(|facing| rolling.shortest(facing)).map(|ramp| ramp.length);
                    let shortest = shortest.reduce(f64::min).map(Length::from_m);
                    let verdict = helped(shortest, Verdict::WontMount);
                    out.push(about(RampSteep { angle: rolling.steepest(), shortest }, verdict));
                }
                None => tell(Unstated::Ramp, out),
                Some(best) if best.loads.is_none() && rolling.is_weighed() => tell(Unstated::CentreOfGravity, out),
                Some(_) => {}
            }
        }
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
    let at = Length::from_m(nearest.point.x);
    let (wanted, place, distance) = (RAMP_MARGIN, place(front, at), at.abs());
    let off = drawn_off(rolling.wheelbase());
    if shortest.is_none() && (clearance >= wanted - off || rolling.is_nearly_helped(best.facing, off)) {
        let fact = RampNear { item, way, ramp, clearance, wanted, off };
        out.push(about(fact, Verdict::CheckFirst));
        return;
    }
    let verdict = helped(shortest, if clearance < Length::ZERO { Verdict::WontMount } else { Verdict::CheckFirst });
    out.push(if clearance < Length::ZERO {
        about(RampDrags { item, way, ramp, drags_by: -clearance, wanted, place, distance, shortest }, verdict)
    } else {
        let fact = RampTight { item, way, ramp, clearance, wanted, place, distance, shortest };
        about(fact, verdict)
    });
}

/// Longer ramps are parts to buy; where none helps, it is as it is.
fn helped(shortest: Option<Length>, else_it_is: Verdict) -> Verdict {
    if shortest.is_some() { Verdict::BoltsUpWithWork } else { else_it_is }
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
