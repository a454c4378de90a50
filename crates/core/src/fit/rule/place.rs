//! Items that stand somewhere on the machine, though nothing says where.

use crate::build::Step;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::{Alike, Placed};

/// Reads whether frame, seat and implement have a place and, of what nothing places, whether it could be mounted.
pub(super) const PLACED: Placed = Placed {
    alike: Alike {
        frame: |_, a, b| a.body.is_mounted() == b.body.is_mounted(),
        implement: |_, a, b| a.body.is_mounted() == b.body.is_mounted(),
        ..Alike::ALL
    },
    stand: &[Step::Frame, Step::Seat, Step::Implement],
    ..Placed::NOTHING
};

/// Where something stands has to be known before anything can be said of what the machine measures and weighs with it.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    for item in context.without_place() {
        let finding = Finding::new("place-unknown", Subject::Item(item), Verdict::CheckFirst, Grade::None)
            .with("item", Value::Item(item))
            .check(Check::FindOut { item, what: "pose" });
        if !out.contains(&finding) {
            out.push(finding);
        }
    }
}
