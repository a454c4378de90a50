//! Whether the unit in the yard is of the row that was chosen.

use super::{Rule, Seen, SpokenOf};
use crate::finding::{Check, Finding, Grade, Name, Subject, Unstated, Verdict};
use crate::findings;
use crate::item::ItemRef;

findings! {
    /// The unit's serial number is not of the row that was chosen.
    SerialOfAnother = "serial-of-another", Fit { serial: Name, item: ItemRef }
}

/// A serial number outside the range that a row speaks of is *check first*: the unit is another one, and what the row states may
/// not be so on it.
pub(super) struct UnitOfRow;

impl Rule for UnitOfRow {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = SpokenOf<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        for (&item, &serial) in &seen.side.serials {
            if seen.asks.body(item).is_some_and(|body| !body.serials.holds(serial)) {
                let fact = SerialOfAnother { serial: serial.to_string(), item };
                out.push(
                    Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::Listed)
                        .check(Check::FindOut { item, what: Unstated::Serials }),
                );
            }
        }
    }
}
