//! Greatest depth with a flat bottom.

use super::DiggingArm;
use super::reaches::reaches;
use crate::order;
use crate::plane::{Arc, Circle, Point};

/// Lengths this little short count as long enough, metres: rounding.
const ROUNDING: f64 = 1e-9;

/// Gaps between arcs narrower than this are not looked into, metres.
const NARROW: f64 = 1e-7;

/// A depth that may be the greatest, and the stretch that would have just the length there.
struct Trial {
    depth: f64,
    stretch: Option<(f64, f64)>,
}

/// Greatest depth below ground at which one unbroken stretch of the length is within the tip's reach.
///
/// At a given depth the reachable places form stretches that end on arcs. As the depth changes, the longest stretch
/// changes smoothly but where arcs meet, end, or lie level. So the greatest depth is one where two arcs lie just
/// the length apart, or one of those places.
pub(super) fn depth(arm: &DiggingArm, arcs: &[Arc], length: f64) -> Option<f64> {
    let mut trials = Vec::new();
    for right in arcs {
        for left in arcs {
            // The right arc moved inward by the length meets the left one.
            let centre = right.circle.centre - Point::new(length, 0.0);
            let moved = Arc { circle: Circle::new(centre, right.circle.radius), ..*right };
            let stretches = moved.cut(left).map(|at| Trial { depth: -at.y, stretch: Some((at.x, at.x + length)) });
            trials.extend(stretches);
        }
    }
    let mut turn = |at: Point| trials.push(Trial { depth: -at.y, stretch: None });
    for (index, arc) in arcs.iter().enumerate() {
        arc.ends().into_iter().chain(arc.lowest_and_highest()).for_each(&mut turn);
        for other in &arcs[index + 1..] {
            arc.cut(other).for_each(&mut turn);
        }
    }
    trials.retain(|trial| trial.depth > 0.0);
    order::sort(&mut trials, |a, b| b.depth.total_cmp(&a.depth));
    trials.iter().find(|trial| holds(arm, arcs, trial, length)).map(|trial| trial.depth)
}

fn holds(arm: &DiggingArm, arcs: &[Arc], trial: &Trial, length: f64) -> bool {
    let mut places: Vec<f64> = arcs.iter().flat_map(|arc| arc.at_height(-trial.depth)).collect();
    if let Some((from, to)) = trial.stretch {
        places.retain(|u| (from..=to).contains(u));
        places.extend([from, to]);
    }
    order::sort(&mut places, f64::total_cmp);
    if places.last().zip(places.first()).is_none_or(|(last, first)| last - first < length - ROUNDING) {
        return false;
    }
    let mut start = places[0];
    if length <= ROUNDING {
        return true;
    }
    for pair in places.windows(2) {
        let middle = Point::new(f64::midpoint(pair[0], pair[1]), -trial.depth);
        if pair[1] - pair[0] > NARROW && !reaches(arm, middle) {
            if trial.stretch.is_some() {
                return false;
            }
            start = pair[1];
        }
        if pair[1] - start >= length - ROUNDING {
            return true;
        }
    }
    false
}

#[cfg(test)]
mod tests {
    use super::super::tests::usual;
    use super::super::{Swivel, digging};
    use super::*;

    #[test]
    fn no_length_asks_for_no_stretch() {
        let found = digging(&usual(), Some(0.0)).expect("sound");
        assert!((found.flat_depth.expect("digs") - found.depth).abs() < 1e-9);
    }

    /// Here the stretch grows to its length at once, where two arcs meet, and not where two lie the length apart.
    #[test]
    fn the_bottom_is_found_where_the_reach_breaks_off() {
        let arm = DiggingArm {
            foot: Point::new(0.284, 0.751),
            boom: 1.908,
            dipper: 0.796,
            bucket: 0.322,
            boom_elevation: Swivel { least: -0.8255, greatest: -0.6768 },
            dipper_relative: Swivel { least: -2.8116, greatest: -2.2407 },
            bucket_relative: Swivel { least: -2.0709, greatest: -0.2279 },
        };
        let length = 0.423;
        let found = digging(&arm, Some(length)).expect("sound").flat_depth.expect("digs");
        let longest = |depth: f64| {
            let (mut most, mut now) = (0, 0);
            for step in 0..12_000 {
                now = if reaches(&arm, Point::new(f64::from(step) * 2.5e-4, -depth)) { now + 1 } else { 0 };
                most = most.max(now);
            }
            f64::from(most) * 2.5e-4
        };
        assert!(longest(found - 1e-5) > length + 0.02, "{found}: {}", longest(found - 1e-5));
        assert!(longest(found + 1e-5) < length - 0.02, "{found}: {}", longest(found + 1e-5));
    }
}
