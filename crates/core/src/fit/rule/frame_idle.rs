//! A frame that nothing hangs on.

use super::{Joints, Rule, Seen};
use crate::finding::{Check, Finding, Grade, Subject, Verdict};
use crate::findings;
use crate::item::ItemRef;

findings! {
    /// The implement hangs on the machine's hitch past the frame.
    FrameIdle = "frame-idle", Fit { item: ItemRef, other: ItemRef }
}

/// A frame is chosen, yet the implement hangs on the machine's hitch past it.
///
/// That is *check first*: every joint by itself may bolt up, but the frame fills the room that links and
/// implement move in, nobody lists or states that the two stand there together, and the frame is paid for and
/// carries nothing. It is no *won't mount*, since nothing known keeps the parts from being fitted, and no
/// *work*, since no work named here would make the choice a sound one.
pub(super) struct FrameInUse;

impl Rule for FrameInUse {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(frame), Some(implement)) = (seen.frame(), &seen.implement) else { return };
        let (frame, implement, joints) = (frame.item, implement.item, seen.asks);
        if !joints.holds(frame) || !joints.holds(implement) || joints.carries(frame, implement) {
            return;
        }
        out.push(
            Finding::of(
                FrameIdle { item: frame, other: implement },
                Subject::Item(frame),
                Verdict::CheckFirst,
                Grade::Drawing,
            )
            .check(Check::Ask { a: frame, b: implement }),
        );
    }
}
