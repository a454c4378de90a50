//! Static tip angles of the build as it stands in transport.

use super::loads::{Loads, PlacedMass};
use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{FrontSupport, Stance, TipAngles, centre, tip_angles};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{FrontAxle, ItemRef};
use crate::quantity::{Length, Mass};

/// How far the ground may lean before the standing machine tips. No safe working slope: shown with its caution only.
#[derive(Debug, Clone, PartialEq)]
pub struct Tip {
    /// Common centre of gravity, (x, y, z).
    pub centre: Option<(Length, Length, Length)>,
    /// The angles, plain SI.
    pub angles: Option<TipAngles>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

/// Static tip angles of the build in transport, the operator in the seat. `None` without a machine.
///
/// Ballast, whose height a build does not state, counts at the height of all else. An axle that swings freely counts
/// with the rest, since no catalogue states its mass.
pub fn tip(desk: &Desk, build: &Build) -> Option<Tip> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<Tip> {
    let (id, machine) = context.machine()?;
    let item = MissingOf::Item(ItemRef::Machine(id));
    let mut ask = Ask::default();
    let track = ask.need(item, Unstated::Track, machine.rear.track);
    let front = match machine.front_axle {
        FrontAxle::Oscillating { pivot_height } => Some(FrontSupport::Pivot { height: pivot_height.m() }),
        FrontAxle::Fixed => {
            ask.need(item, Unstated::Track, machine.front.track).map(|track| FrontSupport::Fixed { track: track.m() })
        }
        FrontAxle::Unknown => ask.need(item, Unstated::FrontAxle, None),
    };
    let centre = ask.loads(context).and_then(|loads| {
        let height = ask.need(item, Unstated::CentreOfGravity, machine.centre_of_gravity_height);
        let seat = ask.need(item, Unstated::IndexPoint, machine.operator_seat);
        height.and(seat).and_then(|_| centre_of(&loads))
    });
    let angles =
        track.zip(front).zip(centre).zip(machine.wheelbase).and_then(|(((track, front), centre), wheelbase)| {
            let centre = [centre.0.m(), centre.1.m(), centre.2.m()];
            tip_angles(&Stance { rear_track: track.m(), wheelbase: wheelbase.value.m(), front, centre }).ok()
        });
    Some(Tip { centre, angles, missing: ask.0 })
}

/// The common centre of gravity; what has no height of its own counts at the height of the rest.
fn centre_of(loads: &Loads) -> Option<(Length, Length, Length)> {
    let mean = |of: &dyn Fn(&PlacedMass) -> Option<Length>| {
        let known = loads.bodies.iter().filter_map(|body| Some((body.mass.kg(), of(body)?.m())));
        centre(known).map(Length::from_m)
    };
    let found = (mean(&|body| Some(body.x))?, mean(&|body| Some(body.y))?, mean(&|body| body.z)?);
    (loads.total > Mass::ZERO).then_some(found)
}
