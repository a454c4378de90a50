//! A digging arm on the three-point hitch.

use crate::build::Carrying;
use crate::finding::{Caution, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::rule::Alike;
use crate::item::{ImplementKind, ItemRef, Mount};

/// Reads the implement's kind and mount.
pub(super) const ALIKE: Alike = Alike { implement: |_, a, b| a.kind == b.kind && a.mount == b.mount, ..Alike::ALL };

/// A digging arm on a bare hitch can be forced up and over towards the operator; it needs a frame
/// or the maker's own stay. One made for a rack has nothing to hang on at all.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let Some((id, implement)) = context.implement() else { return };
    if context.build.carrying != Carrying::Hitch {
        return;
    }
    let item = ItemRef::Implement(id);
    if implement.mount == Mount::Rack && !context.stack.holds(item) {
        out.push(
            Finding::new("needs-frame", Subject::Item(item), Verdict::WontMount, Grade::Drawing)
                .with("item", Value::Item(item)),
        );
    } else if implement.kind == ImplementKind::DiggingArm {
        out.push(
            Finding::new("arm-on-hitch", Subject::Item(item), Verdict::CheckFirst, Grade::Drawing)
                .with("item", Value::Item(item))
                .caution(Caution::ArmOnHitch)
                .check(crate::finding::Check::FindOut { item, what: "hitch-stay" }),
        );
    }
}
