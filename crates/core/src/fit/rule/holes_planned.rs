//! Drilling and opening up that is decided on: whether there is anything to do it to, and whether it is of use.

use crate::build::Change;
use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::decided::{NotPossible, may_open, port_of};
use crate::item::ItemRef;

/// A decision that names no port, or a port without holes, or more than a hole may be opened up, is *check first*: what was
/// meant cannot be told. One that no joint makes use of is said to be superfluous, as an adapter is.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let items = context.build.items();
    let mut said: Vec<(&Change, ItemRef)> = Vec::new();
    for change in &context.build.changes {
        let (item, port, kind, possible) = match change {
            Change::Drill { item, port } => (*item, port, "drilling", Ok(())),
            Change::OpenUp { item, port, by } => (*item, port, "opening", may_open(*by)),
            _ => continue,
        };
        if !items.contains(&item) || said.contains(&(change, item)) {
            continue;
        }
        said.push((change, item));
        let figures = |finding: Finding| {
            finding
                .with("item", Value::Item(item))
                .with("port", Value::Label(port.clone()))
                .with("kind", Value::Label(kind.to_owned()))
        };
        let possible = port_of(context.catalogue(), item, port).and(possible);
        if let Err(reason) = possible {
            out.push(not_possible(figures, item, port, reason));
        } else if !is_used(out, item, port, kind) {
            out.push(figures(Finding::new(
                "holes-plan-not-needed",
                Subject::Item(item),
                Verdict::BoltsUp,
                Grade::Drawing,
            )));
        }
    }
}

fn not_possible(figures: impl Fn(Finding) -> Finding, item: ItemRef, port: &str, reason: NotPossible) -> Finding {
    figures(Finding::new("holes-plan-not-possible", Subject::Item(item), Verdict::CheckFirst, Grade::None))
        .with("reason", Value::Label(reason.name().to_owned()))
        .check(Check::Look { item, what: port.to_owned() })
}

/// Whether a joint makes use of the decision.
fn is_used(findings: &[Finding], item: ItemRef, port: &str, kind: &str) -> bool {
    let code = if kind == "drilling" { "holes-drilled" } else { "holes-opened" };
    findings.iter().any(|finding| {
        finding.code == code
            && finding.figure("side") == Some(&Value::Item(item))
            && matches!(finding.figure("port"), Some(Value::Label(named)) if named == port)
    })
}
