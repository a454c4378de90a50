//! Adapters of the build: what they take to fit, and those that nothing uses.

use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::ItemRef;

/// Reads the build's adapters alone.
pub(super) const ALIKE: Alike = Alike::ALL;

/// An adapter that joins is work; a sleeve counts where a pin joint uses it; one that joins
/// nothing is said to be superfluous.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let mut seen = Vec::new();
    for &id in &context.build.adapters {
        if seen.contains(&id) {
            continue;
        }
        seen.push(id);
        let item = ItemRef::Adapter(id);
        let adapter = context.catalogue().adapter(id);
        let finding = if context.stack.holds(item) {
            Finding::new("adapter-goes-in", Subject::Item(item), Verdict::BoltsUpWithWork, Grade::Drawing)
                .with("work", Value::Work(adapter.work))
        } else if adapter.sleeve.is_some() {
            continue;
        } else {
            Finding::new("adapter-not-needed", Subject::Item(item), Verdict::BoltsUp, Grade::Drawing)
        };
        out.push(finding.with("item", Value::Item(item)));
    }
}
