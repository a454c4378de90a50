//! Whether the unit in the yard has the ports the joints rely on.

use crate::build::Presence;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{Body, Port};

/// Reads which serial numbers have the ports that meet.
pub(super) const ALIKE: Alike = Alike {
    machine: |_, a, b| same_serials(&a.body, &b.body),
    frame: |_, a, b| same_serials(&a.body, &b.body),
    seat: |_, a, b| same_serials(&a.body, &b.body),
    implement: |_, a, b| same_serials(&a.body, &b.body),
};

/// A port that only some serial numbers have, or that was looked for and is not there.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    for joint in &context.stack.joints {
        let ends = [joint.carrier, joint.carried].map(|(at, port)| (context.stack.placed[at].item, port));
        let subject = Subject::Joint(joint.role, ends[0].0, ends[1].0);
        for (item, index) in ends {
            let port = context.port(item, index);
            let seen = context.build.looked.get(&(item, port.name.clone())).copied();
            let named = |code, verdict, grade| {
                Finding::new(code, subject, verdict, grade).with("port", Value::Label(port.name.clone()))
            };
            match (seen, context.build.serials.get(&item)) {
                (Some(Presence::No), _) => {
                    out.push(named("port-looked-missing", Verdict::WontMount, Grade::Measured));
                }
                (None, Some(&serial)) if !port.serials.holds(serial) => out.push(
                    named("port-not-on-serial", Verdict::WontMount, Grade::Listed)
                        .with("serial", Value::Label(serial.to_string())),
                ),
                (None, None) if !port.serials.is_open() => out.push(
                    named("port-serial-unknown", Verdict::CheckFirst, Grade::None)
                        .check(Check::Look { item, what: port.name.clone() }),
                ),
                (Some(Presence::Yes) | None, _) => {}
            }
        }
    }
}

fn same_serials(a: &Body, b: &Body) -> bool {
    let serials = |port: &Port| port.serials;
    a.ports.iter().map(serials).eq(b.ports.iter().map(serials))
}
