//! Axle and tyre ratings, and the front axle's share.

use crate::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::loads::{Loads, loads};
use crate::item::{Axle, ItemRef};
use crate::quantity::{Length, Mass};

/// Least load on the front axle as a share of the bare machine's mass.
///
/// Source: German road traffic rule for tractors with a rear implement, 20 % of the unladen mass,
/// as reported by a farm journal from a ministry leaflet; the same figure stands in most
/// implement manuals.
pub const LEAST_FRONT_SHARE: f64 = 0.2;

/// Every axle within its rating, every tyre within its own, and enough weight in front to steer.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    if context.implement().is_none() {
        return;
    }
    let Some((id, machine)) = context.machine() else { return };
    let item = ItemRef::Machine(id);
    let known = match loads(context) {
        None => return,
        Some(Err(missing)) => {
            for (item, what) in missing {
                out.push(
                    Finding::new("loads-unknown", Subject::Loads, Verdict::CheckFirst, Grade::None)
                        .with("missing", Value::Label(what.to_owned()))
                        .with("item", Value::Item(item))
                        .check(Check::FindOut { item, what }),
                );
            }
            return;
        }
        Some(Ok(loads)) => loads,
    };
    rating(item, "front", known.front, &machine.front, out);
    rating(item, "rear", known.rear, &machine.rear, out);
    front_share(context, &known, out);
}

fn rating(item: ItemRef, name: &str, load: Mass, axle: &Axle, out: &mut Vec<Finding>) {
    let axle_name = || Value::Label(name.to_owned());
    match axle.rated {
        None => out.push(
            Finding::new("loads-unknown", Subject::Loads, Verdict::CheckFirst, Grade::None)
                .with("missing", Value::Label("rated-load".to_owned()))
                .with("item", Value::Item(item))
                .check(Check::FindOut { item, what: "rated-load" }),
        ),
        Some(rated) if load > rated => out.push(
            Finding::new("axle-overloaded", Subject::Loads, Verdict::WontMount, Grade::Drawing)
                .with("axle", axle_name())
                .with("load", Value::Mass(load))
                .with("rated", Value::Mass(rated))
                .with("over", Value::Mass(load - rated)),
        ),
        Some(rated) => out.push(
            Finding::new("axle-within-rating", Subject::Loads, Verdict::BoltsUp, Grade::Drawing)
                .with("axle", axle_name())
                .with("load", Value::Mass(load))
                .with("rated", Value::Mass(rated))
                .with("left", Value::Mass(rated - load)),
        ),
    }
    if let Some(rated) = axle.tyre_rated.filter(|&rated| load / 2.0 > rated) {
        out.push(
            Finding::new("tyre-overloaded", Subject::Loads, Verdict::WontMount, Grade::Drawing)
                .with("axle", axle_name())
                .with("load", Value::Mass(load / 2.0))
                .with("rated", Value::Mass(rated))
                .with("over", Value::Mass(load / 2.0 - rated)),
        );
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
fn ballast_place(context: &Context, wheelbase: Length) -> Length {
    let nose = context.machine().and_then(|(id, _)| context.desk.foremost(ItemRef::Machine(id)));
    nose.unwrap_or(wheelbase + Length::from_mm(500.0))
}

/// Mass at `at` that brings the front axle up to `wanted`: front + m·at/w ≥ wanted.
fn ballast(loads: &Loads, wanted: Mass, at: Length) -> Mass {
    (wanted - loads.front) * (loads.wheelbase / at)
}
