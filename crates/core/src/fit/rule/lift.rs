//! Lift capacity of the hitch against the implement's mass.

use super::{Carried, Datum, HitchIsUsed, Joints, Place, Rule, Seen, View};
use crate::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::fit::mating::three_point::LIFT_REFERENCE;
use crate::fit::whole::loads::off;
use crate::fit::whole::rated_load::Against;
use crate::item::{Implement, ItemRef, Machine, Point3, Port, PortKind, Pose, Role, ThreePoint};
use crate::quantity::{Length, Mass, Stated};

use super::loads::{LoadBearer, LoadNearRating};

findings! {
    /// The hitch lifts the implement.
    LiftEnough = "lift-enough", Work { left: Mass, mass: Mass, lift: Mass }
    /// It does not.
    LiftShort = "lift-short", Work { over: Mass, mass: Mass, lift: Mass }
    /// The rating or the implement's mass is not stated.
    LiftUnknown = "lift-unknown", Work { missing: Unstated }
}

/// Distance behind the lower hitch points at which the second lift rating is taken.
const LIFT_POINT_BEHIND: Length = Length::from_m(LIFT_REFERENCE);

fn hitch(machine: &Machine) -> Option<(&Port, &ThreePoint)> {
    machine.body.ports.iter().find_map(|port| match &port.kind {
        PortKind::ThreePoint(hitch) => Some((port, hitch)),
        _ => None,
    })
}

/// What is missing for the lift to be judged. It reads what is stated, not its value, so that few items differ before it.
pub(super) struct LiftKnown;

/// Whether the machine has a three-point hitch with a rating.
#[derive(PartialEq)]
pub struct Rated(Datum<()>);

impl<'c> View<'c, Machine> for Rated {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        let rating = hitch(machine).and_then(|(_, hitch)| hitch.lift.or(hitch.lift_610));
        Self(Datum::new(Unstated::Lift, rating).stated())
    }
}

/// Whether the implement's mass is stated.
#[derive(PartialEq)]
pub struct Weighed(Datum<()>);

impl<'c> View<'c, Implement> for Weighed {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self(Datum::new(Unstated::Mass, implement.body.mass).stated())
    }
}

impl Rule for LiftKnown {
    type Machine<'c> = Rated;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Weighed;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        if !matches!(seen.carrying, Carried::Hitch) || !seen.asks.iter().any(|(role, _)| role == Role::Hitch) {
            return;
        }
        if implement.sees.0.need(out, unknown(implement.item)).is_some() {
            machine.sees.0.need(out, unknown(machine.item));
        }
    }
}

fn unknown(item: ItemRef) -> impl FnOnce(Unstated) -> Finding {
    move |what| {
        Finding::of(LiftUnknown { missing: what }, Subject::Item(item), Verdict::CheckFirst, Grade::None)
            .check(Check::FindOut { item, what })
    }
}

/// An implement on the hitch has to be lighter than the lift capacity where its centre of gravity
/// hangs: the rating 610 mm behind the points if it hangs that far back, else the one at the points.
pub(super) struct Lifts;

/// The hitch: where it is and what it lifts.
#[derive(Clone, Copy, PartialEq)]
pub struct Hitch {
    pose: Datum<Pose>,
    lift: Datum<Mass>,
    lift_610: Datum<Mass>,
}

impl<'c> View<'c, Machine> for Datum<Hitch> {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Datum::new(Unstated::Lift, hitch(machine)).map(|(port, hitch)| Hitch {
            pose: Datum::new(Unstated::Pose, port.pose),
            lift: Datum::new(Unstated::Lift, hitch.lift),
            lift_610: Datum::new(Unstated::Lift, hitch.lift_610),
        })
    }
}

/// Mass and centre of gravity of the implement.
#[derive(PartialEq)]
pub struct Weight {
    mass: Datum<Stated<Mass>>,
    centre: Datum<Point3>,
}

impl<'c> View<'c, Implement> for Weight {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self {
            mass: Datum::new(Unstated::Mass, implement.body.mass),
            centre: Datum::new(Unstated::CentreOfGravity, implement.body.centre_of_gravity),
        }
    }
}

impl Rule for Lifts {
    type Machine<'c> = Datum<Hitch>;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Weight;
    type Asks<'c> = (Place<Implement>, HitchIsUsed);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        let (place, HitchIsUsed(is_used)) = &seen.asks;
        if !matches!(seen.carrying, Carried::Hitch) || !is_used {
            return;
        }
        let (item, weight) = (implement.item, &implement.sees);
        let Some(stated) = weight.mass.or_said_by::<LiftUnknown>() else { return };
        let (mass, off) = (stated.value, off(stated));
        let Some(hitch) = machine.sees.or_said_by::<LiftUnknown>() else { return };
        let (lift, lift_610) = (hitch.lift, hitch.lift_610);
        if lift.or(lift_610).or_said_by::<LiftUnknown>().is_none() {
            return;
        }
        let behind = hitch
            .pose
            .and(place.at)
            .and(weight.centre)
            .map(|((pose, placed), centre)| pose.at.x.value - placed.point(centre).x);
        let behind =
            behind.map(Some).or_taken_as(None, "where it hangs is not known: the smaller rating is on the safe side");
        let lift = match behind {
            Some(behind) if behind <= Length::ZERO => lift.or(lift_610),
            // Farther back than either rating the same moment lifts less.
            Some(behind) if behind > LIFT_POINT_BEHIND => lift_610.map(|lift| lift * (LIFT_POINT_BEHIND / behind)),
            // Between the two ratings the smaller one is on the safe side.
            _ => lift_610,
        };
        // The rating at the points says nothing of what hangs behind them.
        let Some(lift) = lift.need(out, unknown(machine.item)) else { return };
        let subject = Subject::Item(item);
        out.push(match Against::of((lift - mass).kg(), off.kg()) {
            Against::Within => {
                Finding::of(LiftEnough { left: lift - mass, mass, lift }, subject, Verdict::BoltsUp, Grade::Drawing)
            }
            Against::Near => {
                let fact = LoadNearRating { bearer: LoadBearer::Hitch, load: mass, rated: lift, off };
                Finding::of(fact, subject, Verdict::CheckFirst, Grade::Drawing)
                    .check(Check::FindOut { item, what: Unstated::Mass })
            }
            Against::Over => {
                Finding::of(LiftShort { over: mass - lift, mass, lift }, subject, Verdict::WontMount, Grade::Drawing)
            }
        });
    }
}
