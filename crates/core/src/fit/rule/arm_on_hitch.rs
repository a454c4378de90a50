//! A digging arm on the three-point hitch.

use super::{Carried, Joints, Rule, Seen, View};
use crate::finding::{Caution, Check, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Implement, ImplementKind, ItemRef, Mount};

findings! {
    /// A digging arm made for a rack has nothing to hang on.
    NeedsFrame = "needs-frame", Fit { item: ItemRef }
    /// A digging arm hangs on the bare hitch.
    ArmOnHitch = "arm-on-hitch", Work { item: ItemRef }
}

/// A digging arm on a bare hitch can be forced up and over towards the operator; it needs a frame
/// or the maker's own stay. One made for a rack has nothing to hang on at all.
pub(super) struct ArmOnBareHitch;

/// What the implement is and what it is made to hang on.
#[derive(PartialEq)]
pub struct Kind {
    kind: ImplementKind,
    mount: Mount,
}

impl<'c> View<'c, Implement> for Kind {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self { kind: implement.kind, mount: implement.mount }
    }
}

impl Rule for ArmOnBareHitch {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Kind;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(implement), Carried::Hitch) = (&seen.implement, &seen.carrying) else { return };
        let item = implement.item;
        if implement.sees.mount == Mount::Rack && !seen.asks.holds(item) {
            out.push(Finding::of(NeedsFrame { item }, Subject::Item(item), Verdict::WontMount, Grade::Drawing));
        } else if implement.sees.kind == ImplementKind::DiggingArm {
            out.push(
                Finding::of(ArmOnHitch { item }, Subject::Item(item), Verdict::CheckFirst, Grade::Drawing)
                    .caution(Caution::ArmOnHitch)
                    .check(Check::FindOut { item, what: Unstated::HitchStay }),
            );
        }
    }
}
