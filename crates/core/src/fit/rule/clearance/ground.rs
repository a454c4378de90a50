//! A frame over the ground.

use crate::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::fit::solid::bounds_at;
use crate::item::{ItemRef, View};
use crate::quantity::Length;

/// Height over the ground below which a frame is worth a look: 100 mm. Common practice, no source; more is better on soft or
/// uneven ground.
pub const LEAST_HEIGHT: Length = Length::from_mm(100.0);

/// The lowest point of the frame's side outline and underside is over the ground, and not by too little.
pub(super) fn rule(context: &Context, out: &mut Vec<Finding>) {
    let (Some((id, frame)), Some(_)) = (context.frame(), context.machine()) else { return };
    let item = ItemRef::Frame(id);
    let Some(at) = context.placement(item) else { return };
    let underside = frame.body.underside.iter().flatten().map(|&(x, z)| at.side(x, z).1.m());
    let outline = context.desk.solids(item).into_iter().flat_map(|solids| &solids.parts).flat_map(|part| &part.side);
    let lowest = outline.filter_map(|area| bounds_at(View::Side, &at, area)).map(|bounds| bounds.least.1);
    let Some(lowest) = lowest.chain(underside).reduce(f64::min).map(Length::from_m) else { return };
    if lowest >= LEAST_HEIGHT {
        return;
    }
    let finding = if lowest < Length::ZERO {
        Finding::new("frame-in-the-ground", Subject::Item(item), Verdict::WontMount, Grade::Drawing)
            .with("item", Value::Item(item))
            .with("below", Value::Length(-lowest))
    } else {
        Finding::new("frame-low", Subject::Item(item), Verdict::CheckFirst, Grade::Drawing)
            .with("item", Value::Item(item))
            .with("height", Value::Length(lowest))
            .with("wanted", Value::Length(LEAST_HEIGHT))
            .check(Check::Look { item, what: "underside".to_owned() })
    };
    out.push(finding);
}
