//! Where the second plate comes to lie: its bolts in the middle of their play.

use super::search::excess;
use super::{Face, Hole, Lay, Motion, RESOLUTION, allowance, pair};

/// The lay at which a plate's bolts are in the middle of their play, as near as they can all be.
///
/// Where a margin is limited by the play of a hole itself, many lays reach it, and [`Lay::motion`] is any one of
/// them. This one is the same whatever the search tried first: equal patterns lie exactly on each other. It is where the
/// plate is taken to be in the stack.
///
/// # Units
/// Metres and radians.
///
/// # Accuracy
/// A turn or shift below [`RESOLUTION`] (radians, metres) comes out as exactly none.
///
/// # Source
/// Least squares of the paired centres (slots: the middle of their travel): centroid on centroid, turned by the sum of
/// products. Where that leaves a bolt out that the best lay lets in, the best lay stands.
///
/// # Examples
/// Both holes of the second plate are 3 mm further along: it lies 3 mm back.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, centred, lay_on};
/// let a = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.100, 0.0, 0.0135)];
/// let b = [Hole::plain(0.003, 0.0, 0.0135), Hole::plain(0.103, 0.0, 0.0135)];
/// let registered = lay_on(&a, &b, 0.012, 2, Flip::Forbidden)?;
/// let lay = centred(&a, &b, 0.012, registered.found().expect("two pairs are possible"));
/// assert!((lay.shift_u + 0.003).abs() < 1e-12);
/// assert_eq!((lay.turn, lay.shift_v), (0.0, 0.0));
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn centred(a: &[Hole], b: &[Hole], bolt: f64, lay: &Lay) -> Motion {
    let best = lay.motion;
    let mirror = if best.face == Face::Flipped { -1.0 } else { 1.0 };
    let pairs: Vec<_> = lay
        .pairs
        .iter()
        .filter_map(|paired| {
            let (a, b) = (a.get(paired.a)?, b.get(paired.b)?);
            let half = b.half_travel();
            Some(pair::Pair {
                row: paired.a,
                col: paired.b,
                a: [a.u, a.v],
                b: [mirror * b.u, b.v],
                allowance: allowance(a, b, bolt)?,
                slot_a: a.half_travel(),
                slot_b: [mirror * half[0], half[1]],
            })
        })
        .collect();
    if pairs.is_empty() {
        return best;
    }
    let count = pairs.len() as f64;
    let mean = |part: fn(&pair::Pair) -> pair::P| {
        let sum = pairs.iter().map(part).fold([0.0; 2], |sum, p| [sum[0] + p[0], sum[1] + p[1]]);
        [sum[0] / count, sum[1] / count]
    };
    let (middle_a, middle_b) = (mean(|pair| pair.a), mean(|pair| pair.b));
    let (mut across, mut along) = (0.0, 0.0);
    for paired in &pairs {
        let (p, q) = (pair::minus(paired.b, middle_b), pair::minus(paired.a, middle_a));
        across += pair::cross(p, q);
        along += pair::dot(p, q);
    }
    // One bolt says nothing of the turn.
    let turn = if across == 0.0 && along == 0.0 { best.turn } else { libm::atan2(across, along) };
    let turn = if turn.abs() <= RESOLUTION { 0.0 } else { turn };
    let (sin, cos) = libm::sincos(turn);
    let shift = pair::minus(middle_a, pair::turned(middle_b, sin, cos));
    let shift = shift.map(|part| if part.abs() <= RESOLUTION { 0.0 } else { part });
    let worst = pairs.iter().map(|paired| excess(paired, sin, cos, shift)).fold(f64::NEG_INFINITY, f64::max);
    if worst > RESOLUTION.max(-lay.margin + RESOLUTION) {
        return best;
    }
    Motion { face: best.face, turn, shift_u: shift[0], shift_v: shift[1] }
}

#[cfg(test)]
mod tests {
    use super::super::{Flip, Limits, lay_on};
    use super::*;

    fn plate(holes: &[(f64, f64)]) -> Vec<Hole> {
        holes.iter().map(|&(u, v)| Hole::plain(u * 1e-3, v * 1e-3, 0.0135)).collect()
    }

    fn lay(a: &[Hole], b: &[Hole], limits: impl Into<Limits>) -> Motion {
        let registered = lay_on(a, b, 0.012, a.len().min(b.len()), limits).unwrap();
        centred(a, b, 0.012, registered.found().unwrap())
    }

    const PLATE: [(f64, f64); 4] = [(0.0, 0.0), (100.0, 0.0), (90.0, 60.0), (0.0, 70.0)];

    #[test]
    fn equal_plates_lie_exactly_on_each_other() {
        assert_eq!(lay(&plate(&PLATE), &plate(&PLATE), Flip::Forbidden), Motion::NONE);
    }

    #[test]
    fn a_shift_and_a_turn_of_the_whole_pattern_come_back_exactly() {
        let put = Motion { face: Face::AsDrawn, turn: 0.03, shift_u: 0.3, shift_v: -0.02 };
        let moved: Vec<Hole> = plate(&PLATE)
            .iter()
            .map(|hole| {
                let [u, v] = put.applied([hole.u, hole.v]);
                Hole { u, v, ..*hole }
            })
            .collect();
        let back = lay(&plate(&PLATE), &moved, Limits::UPRIGHT);
        let expected = put.inverse();
        assert!((back.turn - expected.turn).abs() < 1e-9);
        assert!((back.shift_u - expected.shift_u).abs() < 1e-9 && (back.shift_v - expected.shift_v).abs() < 1e-9);
    }

    #[test]
    fn a_plate_turned_over_is_centred_on_its_other_face() {
        let mirrored: Vec<Hole> = plate(&PLATE).into_iter().map(Hole::through_the_back).collect();
        let lay = lay(&plate(&PLATE), &mirrored, Flip::Allowed);
        assert_eq!(lay, Motion { face: Face::Flipped, ..Motion::NONE });
    }

    #[test]
    fn slots_are_centred_in_their_travel() {
        let slotted: Vec<Hole> = plate(&PLATE).into_iter().map(|hole| hole.slotted(0.03, 0.0)).collect();
        assert_eq!(lay(&slotted, &plate(&PLATE), Flip::Forbidden), Motion::NONE);
    }

    #[test]
    fn where_the_middle_leaves_a_bolt_out_the_best_lay_stands() {
        // One hole of four is 2.8 mm off: shared evenly all go in; by least squares it keeps most of its offset.
        let mut off = PLATE;
        off[1].0 += 2.8;
        let (a, b) = (plate(&PLATE), plate(&off));
        let registered = lay_on(&a, &b, 0.012, 4, Flip::Forbidden).unwrap();
        let best = registered.found().unwrap();
        assert!(best.fits());
        let lay = centred(&a, &b, 0.012, best);
        let worst = PLATE.iter().zip(off).map(|(p, q)| {
            let [u, v] = lay.applied([q.0 * 1e-3, q.1 * 1e-3]);
            libm::hypot(u - p.0 * 1e-3, v - p.1 * 1e-3)
        });
        assert!(worst.fold(0.0, f64::max) <= 0.0015 + 1e-8);
        assert_eq!(lay, best.motion);
    }

    #[test]
    fn one_bolt_puts_hole_on_hole() {
        let (a, b) = (plate(&[(10.0, 5.0)]), plate(&[(0.0, 0.0)]));
        let lay = lay(&a, &b, Flip::Forbidden);
        assert_eq!((lay.turn, lay.shift_u, lay.shift_v), (0.0, 0.01, 0.005));
    }
}
