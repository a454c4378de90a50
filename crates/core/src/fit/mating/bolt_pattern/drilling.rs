//! Which bolts go through as the plates are, and where the holes for the others would have to be drilled.

use super::{Hole, HoleKind, Lay, Limits, PatternFault, Plate, RESOLUTION, lay_above};
use crate::order;

/// A lay at which some of the required bolts go through, with the holes to drill for the rest.
#[derive(Clone, Debug, PartialEq)]
pub struct Drilling {
    /// The lay and the pairs that fit at it.
    pub lay: Lay,
    /// The holes to drill, as many as bolts are missing.
    pub holes: Vec<Drilled>,
}

/// A hole to drill: it is marked through a hole of one plate onto the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drilled {
    /// The plate that is drilled.
    pub into: Plate,
    /// The hole of the other plate through which it is marked.
    pub through: usize,
    /// Where, in the drilled plate's own axes, metres.
    pub u: f64,
    /// Where, in the drilled plate's own axes, metres.
    pub v: f64,
    /// From the new centre to the nearest existing hole centre of the drilled plate, metres; `None` on a plate without holes.
    ///
    /// Whether enough metal is left between is for the rule and the eye at the plate.
    pub nearest: Option<f64>,
}

/// The work spent on each number of bolts, in single hole-to-hole comparisons: a few milliseconds. Own choice.
///
/// A lay that takes longer to find is not proposed; that the plates do not meet as they are stands all the same.
const DRILLING_EFFORT: u64 = 200_000;

/// The most bolts that go through as the plates are, and the holes that would have to be drilled for the rest.
///
/// `None` when all go through anyway, when not even two do (one bolt does not place a plate), or when there are not
/// enough holes left to mark through. Unused holes of `a` are marked onto `b` first, then those of `b` onto `a`; of several,
/// those that come farthest from existing holes. Only clearance holes wide enough for the bolt are marked through.
///
/// The work is bounded by `effort` as in [`lay_on_within`](super::lay_on_within).
///
/// # Units
/// Metres.
///
/// # Errors
/// As [`lay_on`](super::lay_on).
///
/// # Examples
/// A four-hole plate against one that lacks the two upper holes.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, Plate, USUAL_EFFORT, drilling};
/// let hole = |u, v| Hole::plain(u, v, 0.0135);
/// let a = [hole(0.0, 0.0), hole(0.1, 0.0), hole(0.1, 0.06), hole(0.0, 0.06)];
/// let b = [hole(0.0, 0.0), hole(0.1, 0.0)];
/// let mut effort = USUAL_EFFORT;
/// let drilling = drilling(&a, &b, 0.012, 4, Flip::Forbidden, &mut effort)?.expect("two fit");
/// assert_eq!(drilling.holes.len(), 2);
/// assert!(drilling.holes.iter().all(|hole| hole.into == Plate::B));
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn drilling(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    limits: impl Into<Limits>,
    effort: &mut u64,
) -> Result<Option<Drilling>, PatternFault> {
    let limits = limits.into();
    let mut fits = |bolts: usize| {
        let share = (*effort).min(DRILLING_EFFORT);
        let mut left = share;
        let lay = lay_above([a, b], bolt, bolts, limits, -RESOLUTION, &mut left);
        *effort -= share - left;
        lay
    };
    if fits(required)?.is_some() {
        return Ok(None);
    }
    let most = required.saturating_sub(1).min(a.len()).min(b.len());
    for bolts in (2..=most).rev() {
        if let Some(lay) = fits(bolts)? {
            let missing = required - bolts;
            return Ok(marked(a, b, bolt, &lay, missing).map(|holes| Drilling { lay, holes }));
        }
    }
    Ok(None)
}

fn marked(a: &[Hole], b: &[Hole], bolt: f64, lay: &Lay, missing: usize) -> Option<Vec<Drilled>> {
    let mut holes = Vec::new();
    let back = lay.motion.inverse();
    for (into, from, unpaired, target, motion) in
        [(Plate::B, a, &lay.unpaired_a, b, back), (Plate::A, b, &lay.unpaired_b, a, lay.motion)]
    {
        let mut through: Vec<Drilled> = unpaired
            .iter()
            .filter(|i| from[**i].kind == HoleKind::Plain && from[**i].diameter >= bolt)
            .map(|&i| {
                let [u, v] = motion.applied([from[i].u, from[i].v]);
                let apart = |hole: &Hole| super::pair::length([hole.u - u, hole.v - v]);
                let nearest = target.iter().map(apart).min_by(f64::total_cmp);
                Drilled { into, through: i, u, v, nearest }
            })
            .collect();
        let room = |hole: &Drilled| hole.nearest.unwrap_or(f64::INFINITY);
        order::sort(&mut through, |p, q| room(q).total_cmp(&room(p)).then(p.through.cmp(&q.through)));
        holes.extend(through);
    }
    (holes.len() >= missing).then(|| {
        holes.truncate(missing);
        holes
    })
}

#[cfg(test)]
mod tests {
    use super::super::Flip;
    use super::*;

    fn mm(u: f64, v: f64) -> Hole {
        Hole::plain(u * 1e-3, v * 1e-3, 0.013)
    }

    fn rectangle() -> Vec<Hole> {
        vec![mm(0.0, 0.0), mm(100.0, 0.0), mm(100.0, 60.0), mm(0.0, 60.0)]
    }

    fn close(a: f64, b: f64) -> bool {
        (a - b).abs() < 1e-6
    }

    #[test]
    fn what_fits_is_not_drilled() {
        assert_eq!(drilling(&rectangle(), &rectangle(), 0.012, 4, Flip::Forbidden, &mut 100_000), Ok(None));
    }

    #[test]
    fn a_hole_in_the_wrong_place_is_drilled_anew() {
        let mut b = rectangle();
        b[2] = mm(80.0, 60.0);
        let drilling = drilling(&rectangle(), &b, 0.012, 4, Flip::Forbidden, &mut 100_000).unwrap().expect("three fit");
        assert_eq!(drilling.lay.pairs.len(), 3);
        let [hole] = drilling.holes[..] else { panic!("one hole is missing") };
        assert_eq!((hole.into, hole.through), (Plate::B, 2));
        // Where the three fit perfectly the plates lie edge on edge.
        assert!((hole.u - 0.1).abs() < 1e-3 && (hole.v - 0.06).abs() < 1e-3);
        assert!((hole.nearest.unwrap() - 0.02).abs() < 1e-3);
    }

    #[test]
    fn the_first_plate_is_drilled_when_the_second_has_the_holes() {
        let few = [mm(0.0, 0.0), mm(100.0, 0.0)];
        let found = drilling(&few, &rectangle(), 0.012, 4, Flip::Forbidden, &mut 100_000).unwrap().expect("two fit");
        assert_eq!(found.holes.len(), 2);
        assert!(found.holes.iter().all(|hole| hole.into == Plate::A));
        let mut along: Vec<f64> = found.holes.iter().map(|hole| hole.v.abs()).collect();
        along.sort_by(f64::total_cmp);
        assert!(close(along[0], 0.06) && close(along[1], 0.06), "{along:?}");
    }

    #[test]
    fn the_farthest_from_other_holes_are_marked_first() {
        let a = [mm(0.0, 0.0), mm(100.0, 0.0), mm(105.0, 0.0), mm(0.0, 60.0)];
        let b = [mm(0.0, 0.0), mm(100.0, 0.0)];
        let found = drilling(&a, &b, 0.012, 3, Flip::Forbidden, &mut 100_000).unwrap().expect("two fit");
        assert_eq!(found.holes.len(), 1);
        assert_eq!(found.holes[0].through, 3);
    }

    #[test]
    fn threads_and_tight_holes_mark_nothing() {
        let tapped: Vec<Hole> = rectangle().iter().map(|h| Hole::tapped(h.u, h.v, 0.012)).collect();
        let two = [mm(0.0, 0.0), mm(100.0, 0.0)];
        assert_eq!(
            drilling(&tapped, &two, 0.012, 4, Flip::Forbidden, &mut 100_000),
            Ok(None),
            "one cannot drill through a thread"
        );
        let mut tight = rectangle();
        tight[3].diameter = 0.011;
        assert_eq!(
            drilling(&tight, &two, 0.012, 4, Flip::Forbidden, &mut 100_000),
            Ok(None),
            "only one hole lets the drill through"
        );
    }

    #[test]
    fn one_bolt_does_not_place_a_plate() {
        let a = [mm(0.0, 0.0), mm(100.0, 0.0)];
        let b = [mm(0.0, 0.0), mm(300.0, 0.0)];
        assert_eq!(drilling(&a, &b, 0.012, 2, Flip::Forbidden, &mut 100_000), Ok(None));
        assert!(drilling(&a, &b, f64::NAN, 2, Flip::Forbidden, &mut 100_000).is_err());
    }
}
