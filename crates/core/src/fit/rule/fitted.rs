//! What a frame needs on the machine and what it needs off it.

use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::ItemRef;

/// Reads what is on the machine and what the frame excludes and requires.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| a.fitted == b.fitted,
    frame: |_, a, b| a.excludes == b.excludes && a.requires == b.requires,
    ..Alike::ALL
};

/// Things the frame excludes have to come off; things it requires have to go on.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((id, frame)), Some(_)) = (context.frame(), context.machine()) else { return };
    let item = ItemRef::Frame(id);
    let mut say = |code, what: &str| {
        out.push(
            Finding::new(code, Subject::Item(item), Verdict::BoltsUpWithWork, Grade::Listed)
                .with("what", Value::Label(what.to_owned()))
                .with("item", Value::Item(item)),
        );
    };
    for what in frame.excludes.iter().filter(|what| context.is_on(what)) {
        say("must-come-off", what);
    }
    for what in frame.requires.iter().filter(|what| !context.is_on(what)) {
        say("must-go-on", what);
    }
}
