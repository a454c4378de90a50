//! A frame that nothing hangs on.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::ItemRef;

/// A frame is chosen, yet the implement hangs on the machine's hitch past it.
///
/// That is *check first*: every joint by itself may bolt up, but the frame fills the room that links and
/// implement move in, nobody lists or states that the two stand there together, and the frame is paid for and
/// carries nothing. It is no *won't mount*, since nothing known keeps the parts from being fitted, and no
/// *work*, since no work named here would make the choice a sound one.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((frame, _)), Some((implement, _))) = (context.frame(), context.implement()) else { return };
    let (frame, implement) = (ItemRef::Frame(frame), ItemRef::Implement(implement));
    if !context.stack.holds(frame) || !context.stack.holds(implement) {
        return;
    }
    if context.stack.carries(frame, implement) {
        return;
    }
    out.push(
        Finding::new("frame-idle", Subject::Item(frame), Verdict::CheckFirst, Grade::Drawing)
            .with("item", Value::Item(frame))
            .with("other", Value::Item(implement))
            .check(Check::Ask { a: frame, b: implement }),
    );
}
