//! Ports whose faces look the wrong way: brought together, what they join would stand wrongly.

use super::Meeting;
use crate::finding::{Finding, Verdict};
use crate::fit::context::Context;
use crate::fit::desk::joined::stands;
use crate::item::Role;
use crate::{findings, words};

findings! {
    /// Face to face the item would not stand as it is made to.
    FacesTurned = "faces-turned", Fit { way: TurnedWay }
}

words! {
    /// How the item would come to stand.
    TurnedWay { OnItsSide = "on-its-side", HalfRound = "half-round", Tipped = "tipped" }
}

/// How far an item may lean and count as upright: two degrees. Common practice, no source: what bolts in their holes leave is less.
const UPRIGHT: f64 = 0.035;

/// Of a joint that places an item: whether its two faces, brought to look at each other, let it stand upright and the right way
/// round. A seat may be turned round, all else may not.
pub(super) fn judge(context: &Context, meeting: &Meeting) -> Option<Finding> {
    let is_placed = matches!(meeting.role, Role::AxleAnchor | Role::Rack | Role::Hitch | Role::SeatDeck);
    let motion = context.brought(meeting.carrier, meeting.carried).filter(|_| is_placed)?;
    let way = match stands(&motion) {
        None => TurnedWay::OnItsSide,
        Some(place) if place.pitch.rad().abs() > UPRIGHT => TurnedWay::Tipped,
        Some(place) if place.reversed && meeting.role != Role::SeatDeck => TurnedWay::HalfRound,
        Some(_) => return None,
    };
    Some(meeting.finding(FacesTurned { way }, Verdict::WontMount))
}
