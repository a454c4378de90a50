//! Measurements that cannot be entered.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::found::{Refused, refused};
use crate::order;

/// A measurement of a port or dimension that the item does not have, or of a value that no unit has, is not used, and that is
/// said: the user believes that something is settled which is not.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    if context.build.measured.is_empty() {
        return;
    }
    let mut items = context.build.items();
    order::sort_by_key(&mut items, |&item| item);
    items.dedup();
    for item in items {
        for (measurement, reason) in refused(context.build, item, &context.catalogue().body(item).ports) {
            let reason = match reason {
                Refused::NoPort => "no-port",
                Refused::NoDimension => "no-dimension",
                Refused::Impossible => "impossible",
            };
            out.push(
                Finding::new("measurement-not-used", Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .with("item", Value::Item(item))
                    .with("port", Value::Label(measurement.port.clone()))
                    .with("dimension", Value::Label(measurement.dimension.clone()))
                    .with("reason", Value::Label(reason.to_owned()))
                    .check(Check::Measure {
                        item,
                        port: measurement.port.clone(),
                        dimension: measurement.dimension.clone(),
                        within: None,
                    }),
            );
        }
    }
}
