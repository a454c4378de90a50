//! Drilling and opening up that is decided on: whether there is anything to do it to, and whether it is of use.

use super::{Rule, Seen, SpokenOf};
use crate::build::Change;
use crate::finding::{Check, Fact, Finding, Grade, Name, Subject, Verdict};
use crate::fit::context::Context;
use crate::fit::context::decided::{NotPossible, may_open, port_in};
use crate::fit::joint::{HolesDrilled, HolesOpened};
use crate::item::{Body, ItemRef};
use crate::{findings, words};

findings! {
    /// Drilling or opening up that no joint makes use of.
    HolesPlanNotNeeded = "holes-plan-not-needed", Fit { item: ItemRef, port: Name, kind: Plan }
    /// Drilling or opening up that cannot be done.
    HolesPlanNotPossible = "holes-plan-not-possible", Fit { item: ItemRef, port: Name, kind: Plan, reason: NotPossible }
}

words! {
    for NotPossible { NoPort = "no-port", NoHoles = "no-holes", TooMuch = "too-much" }
}

words! {
    /// What is planned.
    Plan { Drilling = "drilling", Opening = "opening" }
}

/// A decision that names no port, or a port without holes, or more than a hole may be opened up, is *check first*: what was
/// meant cannot be told.
pub(super) struct HolesPlanned;

impl Rule for HolesPlanned {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = SpokenOf<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        for planned in planned(&seen.side.changes, |item| seen.asks.body(item)) {
            if let Err(reason) = planned.possible {
                let Planned { item, port, kind, .. } = planned;
                let fact = HolesPlanNotPossible { item, port: port.to_owned(), kind, reason };
                out.push(
                    Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                        .check(Check::Look { item, what: port.to_owned() }),
                );
            }
        }
    }
}

/// A decision that no joint makes use of is said to be superfluous, as an adapter is. Told from what the joints found.
pub(crate) fn superfluous(context: &Context, found: &[Finding], out: &mut Vec<Finding>) {
    let items = context.build.items();
    let body = |item| items.contains(&item).then(|| context.catalogue().body(item));
    for planned in planned(&context.build.side.changes, body) {
        if planned.possible.is_ok() && !planned.is_used(found) {
            let Planned { item, port, kind, .. } = planned;
            let fact = HolesPlanNotNeeded { item, port: port.to_owned(), kind };
            out.push(Finding::of(fact, Subject::Item(item), Verdict::BoltsUp, Grade::Drawing));
        }
    }
}

/// Drilling or opening up that is decided on.
struct Planned<'b> {
    item: ItemRef,
    port: &'b str,
    kind: Plan,
    possible: Result<(), NotPossible>,
}

/// The decisions on items of the build, each once.
fn planned<'b>(changes: &'b [Change], body: impl Fn(ItemRef) -> Option<&'b Body>) -> Vec<Planned<'b>> {
    let mut said: Vec<&Change> = Vec::new();
    let mut all = Vec::new();
    for change in changes {
        let (item, port, kind, possible) = match change {
            Change::Drill { item, port } => (*item, port, Plan::Drilling, Ok(())),
            Change::OpenUp { item, port, by } => (*item, port, Plan::Opening, may_open(*by)),
            _ => continue,
        };
        let Some(body) = body(item) else { continue };
        if said.contains(&change) {
            continue;
        }
        said.push(change);
        all.push(Planned { item, port, kind, possible: port_in(body, port).and(possible) });
    }
    all
}

impl Planned<'_> {
    /// Whether a joint makes use of the decision.
    fn is_used(&self, findings: &[Finding]) -> bool {
        findings.iter().any(|finding| {
            let made_in = match self.kind {
                Plan::Drilling => HolesDrilled::read(finding).map(|made| (made.side, made.port)),
                Plan::Opening => HolesOpened::read(finding).map(|made| (made.side, made.port)),
            };
            made_in.is_some_and(|(side, port)| side == self.item && port == self.port)
        })
    }
}
