//! What the rules on trailer and site miss, one finding a value.

use super::{Rule, Seen};
use crate::finding::{Check, Fact, Finding, Grade, Name, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::whole::{Missing, MissingOf};
use crate::item::ItemRef;

findings! {
    /// A value of the build's trailer is not stated.
    TrailerUnknown = "trailer-unknown", Travel { missing: Unstated, trailer: Name }
    /// A value of the build's site is not stated.
    SiteUnknown = "site-unknown", Site { missing: Unstated, site: Name }
}

/// One open finding for each value of the build's items that is missing; those of trailer and site have
/// codes of their own, since no check can be made on a row that is no item.
pub(super) fn missing<F: Fact, R: Rule>(
    seen: &Seen<'_, R>,
    of_item: fn(Unstated, ItemRef) -> F,
    subject: Subject,
    missing: &[Missing],
    out: &mut Vec<Finding>,
) {
    for &Missing { of, what } in missing {
        let found = match of {
            MissingOf::Item(item) => open(of_item(what, item), subject).check(Check::FindOut { item, what }),
            MissingOf::Trailer(id) => {
                let trailer = seen.label_of_trailer(id).to_owned();
                open(TrailerUnknown { missing: what, trailer }, subject)
            }
            MissingOf::Site(id) => {
                let site = seen.label_of_site(id).to_owned();
                open(SiteUnknown { missing: what, site }, subject)
            }
        };
        if !out.contains(&found) {
            out.push(found);
        }
    }
}

fn open<F: Fact>(fact: F, subject: Subject) -> Finding {
    Finding::of(fact, subject, Verdict::CheckFirst, Grade::None)
}
