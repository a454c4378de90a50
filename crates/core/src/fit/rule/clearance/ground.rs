//! A frame over the ground.

use super::outline::Standing;
use super::{ClearanceUnknown, Datum};
use crate::finding::{Check, Drawn, Finding, Grade, Subject, Unstated, Verdict};
use crate::findings;
use crate::fit::desk::solid::bounds_at;
use crate::item::{ItemRef, View};
use crate::quantity::Length;

findings! {
    /// A frame reaches into the ground.
    FrameInTheGround = "frame-in-the-ground", Fit { item: ItemRef, below: Length }
    /// A frame is nearer to the ground than is wanted.
    FrameLow = "frame-low", Fit { item: ItemRef, height: Drawn, wanted: Drawn }
}

/// Height over the ground below which a frame is worth a look: 100 mm. Common practice, no source; more is better on soft or
/// uneven ground.
pub const LEAST_HEIGHT: Length = Length::from_mm(100.0);

/// How far a frame's lowest point may be off: ±6 mm, as weldments beyond 2 m are made (ISO 13920-B).
const LOWEST_OFF: Length = Length::from_mm(6.0);

/// The lowest point of the frame's side outline and underside is over the ground, and not by too little.
pub(super) fn judge(frame: Standing, underside: &[Vec<(Length, Length)>], out: &mut Vec<Finding>) {
    let Standing { item, outline, at } = frame;
    let underside = underside.iter().flatten().map(|&(x, z)| at.side(x, z).1.m());
    let outline = outline.parts().flat_map(|part| &part.side);
    let lowest = outline.filter_map(|area| bounds_at(View::Side, &at, area)).map(|bounds| bounds.least.1);
    let lowest = Datum::new(Unstated::Outline, lowest.chain(underside).reduce(f64::min).map(Length::from_m));
    let Some(lowest) = lowest.or_said_by::<ClearanceUnknown>() else { return };
    if lowest >= LEAST_HEIGHT {
        return;
    }
    let finding = if lowest < -LOWEST_OFF {
        Finding::of(FrameInTheGround { item, below: -lowest }, Subject::Item(item), Verdict::WontMount, Grade::Drawing)
    } else {
        let fact = FrameLow { item, height: lowest, wanted: LEAST_HEIGHT };
        Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::Drawing)
            .check(Check::Look { item, what: "underside".to_owned() })
    };
    out.push(finding);
}
