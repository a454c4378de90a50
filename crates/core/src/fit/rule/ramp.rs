//! The trailer's ramp: does the machine get up it without dragging.

use super::missing::missing;
use crate::dimension::Facing;
use crate::finding::{Caution, Finding, Grade, Subject, Value, Verdict};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::whole::{Drive, RAMP_MARGIN, Rolling};
use crate::order;
use crate::quantity::Length;

/// The underside has to clear the trailer's ramp by [`RAMP_MARGIN`], forwards or backwards: whichever is better counts.
pub(super) fn rule(context: &Context, _: &Footprint, out: &mut Vec<Finding>) {
    let Some((rolling, not_stated)) = Rolling::new(context) else { return };
    missing(context, "loading-unknown", Subject::Loading, &not_stated, out);
    let Some(rolling) = rolling else { return };
    let room = |drive: &Drive| drive.clearance().map_or(f64::INFINITY, Length::m);
    let drives = [Facing::Forward, Facing::Backward].map(|facing| rolling.drive(facing));
    let mut drives: Vec<Drive> = drives.into_iter().flatten().collect();
    order::sort(&mut drives, |a, b| room(b).total_cmp(&room(a)));
    let Some(best) = drives.first() else { return };
    let Some((nearest, item)) = best.touch() else { return };
    let clearance = Length::from_m(nearest.vertical);
    let both = drives.len() == 2 && drives.iter().all(Drive::clears);
    let way = if both { "either" } else { way(best.facing) };
    let finding = |code, verdict| {
        Finding::new(code, Subject::Loading, verdict, Grade::Drawing)
            .with("item", Value::Item(item))
            .with("way", Value::Label(way.to_owned()))
            .with("ramp", Value::Length(Length::from_m(rolling.ramp.length)))
            .caution(Caution::LoadingRamps)
    };
    if best.clears() {
        out.push(finding("ramp-clears", Verdict::BoltsUp).with("clearance", Value::Length(clearance)));
        return;
    }
    let shortest = rolling.shortest_below(best.facing).map(|ramp| Length::from_m(ramp.length));
    // Longer ramps are parts to buy; where none helps, that trailer does not carry it.
    let verdict = if shortest.is_some() { Verdict::BoltsUpWithWork } else { Verdict::WontMount };
    let at = Length::from_m(nearest.point.x);
    let mut finding = if clearance < Length::ZERO {
        finding("ramp-drags", verdict).with("drags-by", Value::Length(-clearance))
    } else {
        finding("ramp-tight", Verdict::BoltsUpWithWork).with("clearance", Value::Length(clearance))
    };
    finding = finding
        .with("wanted", Value::Length(RAMP_MARGIN))
        .with("place", Value::Label(place(context, at).to_owned()))
        .with("distance", Value::Length(at.abs()));
    if let Some(shortest) = shortest {
        finding = finding.with("shortest", Value::Length(shortest));
    }
    out.push(finding);
}

const fn way(facing: Facing) -> &'static str {
    match facing {
        Facing::Forward => "forward",
        Facing::Backward => "backward",
    }
}

/// Where along the machine: behind the rear axle, between the axles, ahead of the front axle.
fn place(context: &Context, x: Length) -> &'static str {
    let front = context.machine().and_then(|(_, machine)| machine.wheelbase).map(|wheelbase| wheelbase.value);
    if x < Length::ZERO {
        "behind"
    } else if front.is_some_and(|front| x > front) {
        "ahead"
    } else {
        "between"
    }
}
