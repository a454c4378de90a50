//! Measurements that cannot be entered.

use super::{Rule, Seen, SpokenOf};
use crate::finding::{Check, Dimension, Finding, Grade, Name, Subject, Verdict};
use crate::fit::context::found::refused;
use crate::item::ItemRef;
use crate::item::Refused;
use crate::order;
use crate::{findings, words};

findings! {
    /// A measurement is not used.
    MeasurementNotUsed = "measurement-not-used", Fit { item: ItemRef, port: Name, dimension: Dimension, reason: Refused }
}

words! {
    for Refused { NoPort = "no-port", NoDimension = "no-dimension", Impossible = "impossible", HalfRange = "half-range" }
}

/// A measurement of a port or dimension that the item does not have, or of a value that no unit has, is not used, and that is
/// said: the user believes that something is settled which is not.
pub(super) struct MeasurementsUsed;

impl Rule for MeasurementsUsed {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = SpokenOf<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let mut items: Vec<_> = seen.asks.iter().collect();
        order::sort_by_key(&mut items, |&(item, _)| item);
        items.dedup_by_key(|&mut (item, _)| item);
        for (item, body) in items {
            for (measurement, reason) in refused(&seen.side.measured, item, &body.ports) {
                let (port, dimension) = (measurement.port.clone(), measurement.dimension.clone());
                let check = Check::Measure { item, port: port.clone(), dimension: dimension.clone(), within: None };
                let fact = MeasurementNotUsed { item, port, dimension, reason };
                out.push(Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::None).check(check));
            }
        }
    }
}
