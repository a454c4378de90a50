//! Which way the machine drives up, and so stands on the trailer: one answer for the ramp, the nose load and the overhang.

use super::{Drive, OnTrailer, TrailerStand};
use crate::dimension::{Facing, Heading};
use crate::quantity::Length;

/// The better way: no axle lifts, the machine stands with the nose load in range, it does not drag, each axle keeps weight, in
/// that order; then the one with more room, then forwards. It stands as it drove up.
///
/// A way that drags counts as one that does not where longer ramps help it, `is_helped`: that is work, and an axle too light on the
/// other way is a doubt. It is asked only where that decides, since it takes its time.
pub fn way_up(drives: &[Option<Drive>; 2], on: Option<&OnTrailer>, is_helped: impl Fn(Facing) -> bool) -> Facing {
    let stands = [Heading::Forward, Heading::Backward].map(|heading| on.and_then(|on| on.stand(heading)));
    let rank = |at: usize| {
        let (drive, stand) = (drives[at].as_ref(), stands[at]);
        (
            drive.is_none() && drives[1 - at].is_some(),
            drive.is_some_and(Drive::tips),
            stand.is_some_and(|stand| !stand.is_in_range()),
            stand.is_some_and(|stand| stand.places_on_deck.is_none()),
            drive.is_some_and(|drive| !drive.clears()),
            drive.is_some_and(Drive::is_light),
        )
    };
    let ways = [Facing::Forward, Facing::Backward];
    let drags_and_is_light = |at: usize| (rank(at).4, rank(at).5);
    let is_as_good = |at: usize, other: usize| {
        let (one, two) = (rank(at), rank(other));
        (one.0, one.1, one.2, one.3) == (two.0, two.1, two.2, two.3)
    };
    for (at, other) in [(0, 1), (1, 0)] {
        let decides = drags_and_is_light(at) == (true, false) && drags_and_is_light(other) == (false, true);
        if decides && is_as_good(at, other) {
            return if is_helped(ways[at]) { ways[at] } else { ways[other] };
        }
    }
    let room = |at: usize| drives[at].as_ref().and_then(Drive::clearance).map_or(f64::INFINITY, Length::m);
    if rank(1).cmp(&rank(0)).then(room(0).total_cmp(&room(1))).is_lt() { Facing::Backward } else { Facing::Forward }
}

/// How it stands that has driven up so.
pub fn stand_after(on: &OnTrailer, way: Facing) -> Option<&TrailerStand> {
    on.stand(match way {
        Facing::Forward => Heading::Forward,
        Facing::Backward => Heading::Backward,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::{LeastLoad, Nearest, RampLoads, RampRoll, Stretch, TrailerLoads};
    use crate::fit::RatedLoad;
    use crate::fit::whole::rated_load::Against;
    use crate::item::{ItemRef, MachineId, TrailerId};
    use crate::plane::Point;
    use crate::quantity::Mass;

    /// No longer ramps help.
    const NOT: fn(Facing) -> bool = |_| false;

    fn drive(facing: Facing, clearance: f64, least: f64) -> Drive {
        let place = Point::new(0.0, 0.0);
        let nearest = Nearest { vertical: clearance, rear_axle: 0.0, pitch: 0.0, line: 0, point: place, place };
        let load = LeastLoad { share: least / 1000.0, load: least, rear_axle: 0.0, pitch: 0.0 };
        Drive {
            facing,
            roll: RampRoll { nearest: Some(nearest), least_pitch: 0.0, greatest_pitch: 0.0 },
            item: Some(ItemRef::Machine(MachineId(0))),
            loads: Some(RampLoads { front: load, rear: load }),
            least_load: Mass::from_kg(100.0),
        }
    }

    fn on(in_range: [bool; 2]) -> OnTrailer {
        let deck = Stretch { low: 0.0, high: 1.0 };
        let stand = |at: usize, heading| TrailerStand {
            heading,
            nose_in_range: deck,
            places_on_deck: Some(deck),
            places: in_range[at].then_some(deck),
            rear_axle: 0.5,
            loads: TrailerLoads { total: 0.0, nose: 0.0, axle: 0.0 },
            nose_range: (Mass::ZERO, Mass::ZERO),
            nose_off: Mass::ZERO,
            nose: if in_range[at] { Against::Within } else { Against::Over },
            beyond: None,
        };
        OnTrailer {
            trailer: TrailerId(0),
            wheelbase: None,
            total: RatedLoad { load: None, rated: None, off: Mass::ZERO },
            forward: Some(stand(0, Heading::Forward)),
            backward: Some(stand(1, Heading::Backward)),
            rated_axle: None,
            deck_width: None,
            deck_length: None,
            deck_left: None,
            side_room: None,
            height: None,
            width: None,
            tie_downs: None,
            missing: Vec::new(),
        }
    }

    #[test]
    fn one_way_counts_for_ramp_and_stand_together() {
        let drives = |forward, backward| [Some(forward), Some(backward)];
        let (f, b) = (Facing::Forward, Facing::Backward);
        // It would clear forwards, but stands well only backwards: backwards it is, and what drags there is told.
        let clears_forwards = drives(drive(f, 0.1, 200.0), drive(b, -0.1, 200.0));
        let way = way_up(&clears_forwards, Some(&on([false, true])), NOT);
        assert_eq!(way, b);
        assert_eq!(stand_after(&on([false, true]), way).map(|stand| stand.heading), Some(Heading::Backward));
        assert_eq!(way_up(&clears_forwards, Some(&on([true, true])), NOT), f);
        assert_eq!(way_up(&clears_forwards, None, NOT), f);
        // A machine that tips over on the way is not saved by a good nose load.
        let tips_backwards = drives(drive(f, 0.1, 200.0), drive(b, 0.1, -1.0));
        assert_eq!(way_up(&tips_backwards, Some(&on([false, true])), NOT), f);
        // Weight on the axles decides among those that clear, then the room, then forwards.
        assert_eq!(way_up(&drives(drive(f, 0.1, 50.0), drive(b, 0.05, 200.0)), Some(&on([true, true])), NOT), b);
        assert_eq!(way_up(&drives(drive(f, 0.1, 200.0), drive(b, 0.2, 200.0)), None, NOT), b);
        assert_eq!(way_up(&drives(drive(f, 0.1, 200.0), drive(b, 0.1, 200.0)), None, NOT), f);
        // What cannot be driven does not count, and without anything known it is forwards.
        assert_eq!(way_up(&[None, Some(drive(b, -0.1, 200.0))], Some(&on([true, true])), NOT), b);
        assert_eq!(way_up(&[None, None], Some(&on([false, true])), NOT), b);
        assert_eq!(way_up(&[None, None], None, NOT), f);
    }

    #[test]
    fn a_way_that_longer_ramps_help_goes_before_one_that_leaves_an_axle_light() {
        let (f, b) = (Facing::Forward, Facing::Backward);
        let ways = [Some(drive(f, -0.1, 200.0)), Some(drive(b, 0.2, 50.0))];
        assert_eq!(way_up(&ways, None, |facing| facing == f), f);
        assert_eq!(way_up(&ways, None, NOT), b);
    }
}
