//! What the rules on trailer and site miss, one finding a value.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::whole::{Missing, MissingOf};

/// One open finding of `code` for each value of the build's items that is missing; those of trailer and site have
/// codes of their own, since no check can be made on a row that is no item.
pub(super) fn missing(
    context: &Context,
    code: &'static str,
    subject: Subject,
    missing: &[Missing],
    out: &mut Vec<Finding>,
) {
    for &Missing { of, what } in missing {
        let finding = |code| {
            Finding::new(code, subject, Verdict::CheckFirst, Grade::None).with("missing", Value::Label(what.to_owned()))
        };
        let found = match of {
            MissingOf::Item(item) => finding(code).with("item", Value::Item(item)).check(Check::FindOut { item, what }),
            MissingOf::Trailer(id) => {
                finding("trailer-unknown").with("trailer", Value::Label(context.catalogue().trailer(id).label.clone()))
            }
            MissingOf::Site(id) => {
                finding("site-unknown").with("site", Value::Label(context.catalogue().site(id).label.clone()))
            }
        };
        if !out.contains(&found) {
            out.push(found);
        }
    }
}
