//! Axle and tyre ratings, and the front axle's share.

use crate::build::{Build, Placed};
use crate::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::loads::{Loads, OnAxles, loads, on_axles};
use crate::fit::rated_load::RatedLoad;
use crate::fit::rule::Alike;
use crate::item::{Axle, Body, Catalogue, ItemRef, Machine};
use crate::quantity::{Length, Mass};

/// Least load on the front axle as a share of the bare machine's mass.
///
/// Source: German road traffic rule for tractors with a rear implement, 20 % of the unladen mass,
/// as reported by a farm journal from a ministry leaflet; the same figure stands in most
/// implement manuals.
pub const LEAST_FRONT_SHARE: f64 = 0.2;

/// Of [`unknown`]: reads what is stated, not its value.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| known_of(a) == known_of(b),
    frame: |_, a, b| weighed(&a.body) == weighed(&b.body),
    seat: |_, a, b| weighed(&a.body) == weighed(&b.body),
    implement: |_, a, b| weighed(&a.body) == weighed(&b.body),
};

fn known_of(machine: &Machine) -> [bool; 5] {
    let Machine { front, rear, .. } = machine;
    [
        machine.wheelbase.is_some(),
        front.bare_load.is_some(),
        rear.bare_load.is_some(),
        front.rated.is_some(),
        rear.rated.is_some(),
    ]
}

const fn weighed(body: &Body) -> [bool; 2] {
    [body.mass.is_some(), body.centre_of_gravity.is_some()]
}

/// What is missing for the loads to be judged.
pub(super) fn unknown(context: &Context, out: &mut Vec<Finding>) {
    let (Some(_), Some((id, machine))) = (context.implement(), context.machine()) else { return };
    let item = ItemRef::Machine(id);
    // That a place is not stated is a finding of its own.
    let mut missing = loads(context).and_then(Result::err).unwrap_or_default();
    missing.retain(|&(_, what)| what != "pose");
    if missing.is_empty() {
        let unrated = [machine.front, machine.rear].into_iter().filter(|axle| axle.rated.is_none());
        missing.extend(unrated.map(|_| (item, "rated-load")));
    }
    for (item, what) in missing {
        out.push(
            Finding::new("loads-unknown", Subject::Loads, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label(what.to_owned()))
                .with("item", Value::Item(item))
                .check(Check::FindOut { item, what }),
        );
    }
}

/// The worst of what [`rule`] finds, found without words.
pub(super) fn verdict(catalogue: &Catalogue, build: &Build, placed: &[Placed]) -> Verdict {
    let (Some(_), Some(machine)) = (build.implement, build.machine) else { return Verdict::BoltsUp };
    let Some(OnAxles { front, rear, .. }) = on_axles(catalogue, build, placed) else { return Verdict::BoltsUp };
    let machine = catalogue.machine(machine);
    let is_over = |load, axle| [of_axle(load, axle), of_tyre(load, axle)].iter().any(RatedLoad::is_over);
    if is_over(front, &machine.front) || is_over(rear, &machine.rear) {
        return Verdict::WontMount;
    }
    let bare = machine.front.bare_load.zip(machine.rear.bare_load).map(|(front, rear)| front + rear);
    bare.map_or(Verdict::BoltsUp, |bare| of_front(front, bare))
}

/// Every axle within its rating, every tyre within its own, and enough weight in front to steer.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some(_), Some((_, machine))) = (context.implement(), context.machine()) else { return };
    let Some(Ok(known)) = loads(context) else { return };
    rating("front", known.front, &machine.front, out);
    rating("rear", known.rear, &machine.rear, out);
    front_share(context, &known, out);
}

fn rating(name: &str, load: Mass, axle: &Axle, out: &mut Vec<Finding>) {
    let axle_name = || Value::Label(name.to_owned());
    let told = |code, verdict, load, rated, (name, value): (&'static str, Mass)| {
        Finding::new(code, Subject::Loads, verdict, Grade::Drawing)
            .with("axle", axle_name())
            .with("load", Value::Mass(load))
            .with("rated", Value::Mass(rated))
            .with(name, Value::Mass(value))
    };
    let whole = of_axle(load, axle);
    match axle.rated.zip(whole.left()) {
        // Said by [`unknown`].
        None => {}
        Some((rated, left)) if whole.is_over() => {
            out.push(told("axle-overloaded", Verdict::WontMount, load, rated, ("over", -left)));
        }
        Some((rated, left)) => out.push(told("axle-within-rating", Verdict::BoltsUp, load, rated, ("left", left))),
    }
    let tyre = of_tyre(load, axle);
    if let (Some(half), Some(rated), Some(left), true) = (tyre.load, tyre.rated, tyre.left(), tyre.is_over()) {
        out.push(told("tyre-overloaded", Verdict::WontMount, half, rated, ("over", -left)));
    }
}

const fn of_axle(load: Mass, axle: &Axle) -> RatedLoad {
    RatedLoad { load: Some(load), rated: axle.rated }
}

/// Each of two tyres bears half the axle's load.
fn of_tyre(load: Mass, axle: &Axle) -> RatedLoad {
    RatedLoad { load: Some(load / 2.0), rated: axle.tyre_rated }
}

/// Whether a front axle bears enough of what the bare machine weighs.
fn of_front(front: Mass, bare: Mass) -> Verdict {
    if front >= bare * LEAST_FRONT_SHARE {
        Verdict::BoltsUp
    } else if front < Mass::ZERO {
        Verdict::WontMount
    } else {
        Verdict::BoltsUpWithWork
    }
}

fn front_share(context: &Context, loads: &Loads, out: &mut Vec<Finding>) {
    let wanted = loads.bare * LEAST_FRONT_SHARE;
    let share = Value::Share(loads.front / loads.bare);
    let verdict = of_front(loads.front, loads.bare);
    let base = |code| Finding::new(code, Subject::Loads, verdict, Grade::Drawing).caution(Caution::LightFrontAxle);
    if verdict == Verdict::BoltsUp {
        out.push(
            base("front-axle-heavy-enough")
                .with("share", share)
                .with("least", Value::Share(LEAST_FRONT_SHARE))
                .with("rule", Value::Label("front-share-of-unladen".to_owned())),
        );
        return;
    }
    let at = ballast_place(context, loads.wheelbase);
    let ballast = ballast(loads, wanted, at);
    let finding = if verdict == Verdict::WontMount {
        base("front-axle-lifts").with("lift", Value::Mass(-loads.front))
    } else {
        base("front-axle-light")
            .with("share", share)
            .with("least", Value::Share(LEAST_FRONT_SHARE))
            .with("rule", Value::Label("front-share-of-unladen".to_owned()))
    };
    out.push(finding.with("ballast", Value::Mass(ballast)).with("ballast-at", Value::Length(at)));
}

/// Front ballast hangs ahead of the foremost point of the machine; where that is not known, a
/// front overhang of 500 mm is taken (common practice, no source).
pub(in crate::fit) fn ballast_place(context: &Context, wheelbase: Length) -> Length {
    let nose = context.machine().and_then(|(id, _)| context.desk.foremost(ItemRef::Machine(id)));
    nose.unwrap_or(wheelbase + Length::from_mm(500.0))
}

/// Mass at `at` that brings the front axle up to `wanted`: front + m·at/w ≥ wanted.
fn ballast(loads: &Loads, wanted: Mass, at: Length) -> Mass {
    (wanted - loads.front) * (loads.wheelbase / at)
}
