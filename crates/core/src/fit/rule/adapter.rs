//! Adapters of the build: what they take to fit, and those that nothing uses.

use super::{Joints, Rule, Seen};
use crate::finding::{Finding, Grade, Subject, Verdict};
use crate::findings;
use crate::item::ItemRef;
use crate::quantity::Work;

findings! {
    /// An adapter of the build joins something.
    AdapterGoesIn = "adapter-goes-in", Fit { work: Work, item: ItemRef }
    /// An adapter of the build joins nothing.
    AdapterNotNeeded = "adapter-not-needed", Fit { item: ItemRef }
}

/// An adapter that joins is work; a sleeve counts where a pin joint uses it; one that joins
/// nothing is said to be superfluous.
pub(super) struct AdaptersInUse;

impl Rule for AdaptersInUse {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let mut said = Vec::new();
        for &id in &seen.side.adapters {
            if said.contains(&id) {
                continue;
            }
            said.push(id);
            let item = ItemRef::Adapter(id);
            let adapter = seen.adapter(id);
            let subject = Subject::Item(item);
            if seen.asks.holds(item) {
                let fact = AdapterGoesIn { work: adapter.work, item };
                out.push(Finding::of(fact, subject, Verdict::BoltsUpWithWork, Grade::Drawing));
            } else if adapter.sleeve.is_none() {
                out.push(Finding::of(AdapterNotNeeded { item }, subject, Verdict::BoltsUp, Grade::Drawing));
            }
        }
    }
}
