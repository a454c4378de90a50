//! Axle and tyre ratings, and the front axle's share.

use crate::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::loads::{Loads, loads};
use crate::fit::rated_load::RatedLoad;
use crate::fit::rule::Alike;
use crate::item::{Axle, Body, ItemRef, Machine};
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
    let missing = match loads(context) {
        None => return,
        Some(Err(missing)) => missing,
        Some(Ok(_)) => [machine.front, machine.rear]
            .iter()
            .filter(|axle| axle.rated.is_none())
            .map(|_| (item, "rated-load"))
            .collect(),
    };
    for (item, what) in missing {
        out.push(
            Finding::new("loads-unknown", Subject::Loads, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label(what.to_owned()))
                .with("item", Value::Item(item))
                .check(Check::FindOut { item, what }),
        );
    }
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
    let whole = RatedLoad { load: Some(load), rated: axle.rated };
    match axle.rated.zip(whole.left()) {
        // Said by [`unknown`].
        None => {}
        Some((rated, left)) if whole.is_over() => {
            out.push(told("axle-overloaded", Verdict::WontMount, load, rated, ("over", -left)));
        }
        Some((rated, left)) => out.push(told("axle-within-rating", Verdict::BoltsUp, load, rated, ("left", left))),
    }
    let half = load / 2.0;
    let tyre = RatedLoad { load: Some(half), rated: axle.tyre_rated };
    if let Some((rated, left)) = axle.tyre_rated.zip(tyre.left()).filter(|_| tyre.is_over()) {
        out.push(told("tyre-overloaded", Verdict::WontMount, half, rated, ("over", -left)));
    }
}

fn front_share(context: &Context, loads: &Loads, out: &mut Vec<Finding>) {
    let wanted = loads.bare * LEAST_FRONT_SHARE;
    let share = Value::Share(loads.front / loads.bare);
    let base =
        |code, verdict| Finding::new(code, Subject::Loads, verdict, Grade::Drawing).caution(Caution::LightFrontAxle);
    if loads.front >= wanted {
        out.push(
            base("front-axle-heavy-enough", Verdict::BoltsUp)
                .with("share", share)
                .with("least", Value::Share(LEAST_FRONT_SHARE))
                .with("rule", Value::Label("front-share-of-unladen".to_owned())),
        );
        return;
    }
    let at = ballast_place(context, loads.wheelbase);
    let ballast = ballast(loads, wanted, at);
    let finding = if loads.front < Mass::ZERO {
        base("front-axle-lifts", Verdict::WontMount).with("lift", Value::Mass(-loads.front))
    } else {
        base("front-axle-light", Verdict::BoltsUpWithWork)
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
