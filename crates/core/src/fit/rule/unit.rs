//! Whether the unit in the yard is of the row that was chosen.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;

/// A serial number outside the range that a row speaks of is *check first*: the unit is another one, and what the row states may
/// not be so on it.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    for (&item, &serial) in context.build.serials.iter() {
        if context.build.items().contains(&item) && !context.catalogue().body(item).serials.holds(serial) {
            out.push(
                Finding::new("serial-of-another", Subject::Item(item), Verdict::CheckFirst, Grade::Listed)
                    .with("serial", Value::Label(serial.to_string()))
                    .with("item", Value::Item(item))
                    .check(Check::FindOut { item, what: "serials" }),
            );
        }
    }
}
