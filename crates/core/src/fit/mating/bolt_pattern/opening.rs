//! Which clearance holes would have to be opened up, and by how much, for the bolts to go through.

use super::{Hole, HoleKind, Lay, Limits, PatternFault, Plate, RESOLUTION, lay_above};
use crate::order;

/// The most a hole may be opened up, metres in diameter: 1 mm.
///
/// Common practice, no source: more would change which washer and which bolt belong there.
pub const GREATEST_OPENING: f64 = 1e-3;

/// A set of holes that, opened up, let all bolts through.
#[derive(Clone, Debug, PartialEq)]
pub struct Opening {
    /// The lay at which they do. Its margins are those of the holes as they are now, for holes not smaller than the bolt.
    pub lay: Lay,
    /// The holes, first pattern first.
    pub holes: Vec<Opened>,
    /// The greatest of the enlargements, metres in diameter.
    pub greatest: f64,
}

/// One hole opened up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opened {
    /// In which pattern.
    pub side: Plate,
    /// Which hole.
    pub hole: usize,
    /// By how much, metres in diameter.
    pub by: f64,
}

/// The least opening-up, by at most [`GREATEST_OPENING`] a hole, that lets all `required` bolts through.
///
/// `None` when no such opening does it, when none is needed, or when the patterns could not be settled. A pair that is
/// short by `s` is mended by opening one clearance hole by `2 s`, or both by `s` where one alone would have to grow too much.
/// The work is bounded by `effort` as in [`lay_on_within`](super::lay_on_within).
///
/// # Units
/// Metres.
///
/// # Valid for
/// Holes with enough material round them; that is for the eye at the plate.
///
/// # Errors
/// As [`lay_on`](super::lay_on).
///
/// # Examples
/// One pitch is 3.4 mm longer: each of the two pairs is short by 0.2 mm, so one hole of each is opened by 0.4 mm.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, USUAL_EFFORT, opening};
/// let a = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.100, 0.0, 0.0135)];
/// let b = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.1034, 0.0, 0.0135)];
/// let mut effort = USUAL_EFFORT;
/// let opening = opening(&a, &b, 0.012, 2, Flip::Forbidden, &mut effort)?.expect("0.4 mm does it");
/// assert_eq!(opening.holes.len(), 2);
/// assert!((opening.greatest - 0.0004).abs() < 1e-8);
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn opening(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    limits: impl Into<Limits>,
    effort: &mut u64,
) -> Result<Option<Opening>, PatternFault> {
    let limits = limits.into();
    // Holes a little too small are first brought to the bolt's diameter; the bolt itself has no play in them yet.
    let raised = [raised(a, bolt), raised(b, bolt)];
    // The lay with the greatest least margin asks for the least opening where all pairs can be opened alike. Where some can
    // take less than others, the lay that goes with every hole opened to the limit may still do.
    let limit = [enlarged(a), enlarged(b)];
    for (holes, least) in [(&raised, -GREATEST_OPENING - RESOLUTION), (&limit, -RESOLUTION)] {
        let lay = lay_above([&holes[0], &holes[1]], bolt, required, limits, least, effort)?;
        if let Some(opening) = lay.and_then(|lay| opened([a, b], &raised, holes, lay)) {
            return Ok(Some(opening));
        }
    }
    Ok(None)
}

/// The holes to open at a lay found with holes `laid`; `None` if one would have to grow too much, or none at all.
fn opened(now: [&[Hole]; 2], raised: &[Vec<Hole>; 2], laid: &[Vec<Hole>; 2], mut lay: Lay) -> Option<Opening> {
    let mut holes = Vec::new();
    for pair in &mut lay.pairs {
        let index = [pair.a, pair.b];
        let mut done = [0.0; 2];
        let mut room = [0.0; 2];
        for side in 0..2 {
            let [now, raised, laid] = [now[side], &raised[side], &laid[side]].map(|holes| &holes[index[side]]);
            done[side] = raised.diameter - now.diameter;
            room[side] = if now.kind == HoleKind::Plain { GREATEST_OPENING - done[side] } else { 0.0 };
            pair.margin -= 0.5 * (laid.diameter - raised.diameter);
        }
        let short = if pair.margin < -RESOLUTION { -2.0 * pair.margin } else { 0.0 };
        let more = shared(short, room[0], room[1])?;
        holes.push(Opened { side: Plate::A, hole: pair.a, by: done[0] + more[0] });
        holes.push(Opened { side: Plate::B, hole: pair.b, by: done[1] + more[1] });
    }
    lay.margin = lay.pairs.iter().map(|pair| pair.margin).fold(f64::INFINITY, f64::min);
    holes.retain(|opened| opened.by > 0.0);
    if holes.is_empty() {
        return None;
    }
    order::sort_by_key(&mut holes, |opened| (opened.side, opened.hole));
    let greatest = holes.iter().map(|opened| opened.by).fold(0.0, f64::max);
    Some(Opening { lay, holes, greatest })
}

/// How much of the enlargement `needed` each of two holes takes: one alone where it can, else both alike, else as they can.
fn shared(needed: f64, room_a: f64, room_b: f64) -> Option<[f64; 2]> {
    if needed <= room_a {
        Some([needed, 0.0])
    } else if needed <= room_b {
        Some([0.0, needed])
    } else if needed <= room_a + room_b + 2.0 * RESOLUTION {
        let a = (0.5 * needed).max(needed - room_b).min(room_a);
        Some([a, (needed - a).min(room_b)])
    } else {
        None
    }
}

/// Every clearance hole opened as far as it may be.
fn enlarged(holes: &[Hole]) -> Vec<Hole> {
    let larger = |hole: &Hole| match hole.kind {
        HoleKind::Plain => Hole { diameter: hole.diameter + GREATEST_OPENING, ..*hole },
        HoleKind::Tapped => *hole,
    };
    holes.iter().map(larger).collect()
}

/// Clearance holes too small for the bolt by no more than may be opened brought up to its diameter.
fn raised(holes: &[Hole], bolt: f64) -> Vec<Hole> {
    let raise = |hole: &Hole| {
        let small = hole.kind == HoleKind::Plain && hole.diameter < bolt && hole.diameter >= bolt - GREATEST_OPENING;
        Hole { diameter: if small { bolt } else { hole.diameter }, ..*hole }
    };
    holes.iter().map(raise).collect()
}

#[cfg(test)]
mod tests {
    use super::super::Flip;
    use super::*;

    fn mm(u: f64, v: f64, diameter: f64) -> Hole {
        Hole::plain(u * 1e-3, v * 1e-3, diameter * 1e-3)
    }

    fn opened_mm(a: &[Hole], b: &[Hole], required: usize) -> Option<Vec<(Plate, usize, f64)>> {
        let opening = opening(a, b, 0.012, required, Flip::Forbidden, &mut 100_000).expect("well formed")?;
        let greatest = opening.holes.iter().map(|hole| hole.by).fold(0.0, f64::max);
        assert!((opening.greatest - greatest).abs() < 1e-15);
        Some(opening.holes.iter().map(|hole| (hole.side, hole.hole, (hole.by * 1e6).round() / 1e3)).collect())
    }

    #[test]
    fn holes_that_meet_need_no_opening() {
        let plate = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
        assert_eq!(opened_mm(&plate, &plate, 2), None);
    }

    #[test]
    fn one_plate_is_opened_where_that_is_enough() {
        let a = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
        let b = [Hole::tapped(0.0, 0.0, 0.012), Hole::tapped(0.1018, 0.0, 0.012)];
        // 1.8 mm apart, 0.5 mm of play at each: 0.4 mm short at each, taken up by 0.8 mm in diameter.
        assert_eq!(opened_mm(&a, &b, 2), Some(vec![(Plate::A, 0, 0.8), (Plate::A, 1, 0.8)]));
        // Swapped, the clearance holes are the second plate's.
        assert_eq!(opened_mm(&b, &a, 2), Some(vec![(Plate::B, 0, 0.8), (Plate::B, 1, 0.8)]));
    }

    #[test]
    fn both_plates_share_what_is_too_much_for_one() {
        let a = [mm(0.0, 0.0, 12.5), mm(100.0, 0.0, 12.5)];
        let b = [mm(0.0, 0.0, 12.5), mm(102.4, 0.0, 12.5)];
        // 2.4 mm apart, 0.5 mm of play at each: 0.7 mm short, 1.4 mm in diameter, 0.7 mm in each hole.
        let all = |by| vec![(Plate::A, 0, by), (Plate::A, 1, by), (Plate::B, 0, by), (Plate::B, 1, by)];
        assert_eq!(opened_mm(&a, &b, 2), Some(all(0.7)));
    }

    #[test]
    fn more_than_a_millimetre_is_not_proposed() {
        let a = [mm(0.0, 0.0, 12.5), mm(100.0, 0.0, 12.5)];
        let b = |pitch| [mm(0.0, 0.0, 12.5), mm(pitch, 0.0, 12.5)];
        assert!(opened_mm(&a, &b(102.99), 2).is_some());
        assert_eq!(opened_mm(&a, &b(103.01), 2), None);
        let tapped = |pitch: f64| [Hole::tapped(0.0, 0.0, 0.012), Hole::tapped(pitch * 1e-3, 0.0, 0.012)];
        assert!(opened_mm(&a, &tapped(101.49), 2).is_some());
        assert_eq!(opened_mm(&a, &tapped(101.51), 2), None);
    }

    #[test]
    fn a_hole_smaller_than_the_bolt_is_brought_to_it() {
        let a = [mm(0.0, 0.0, 11.5), mm(100.0, 0.0, 13.0)];
        let b = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
        assert_eq!(opened_mm(&a, &b, 2), Some(vec![(Plate::A, 0, 0.5)]));
        let small = [mm(0.0, 0.0, 10.9), mm(100.0, 0.0, 13.0)];
        assert_eq!(opened_mm(&small, &b, 2), None, "1.1 mm is too much");
        // Brought to the bolt and still short by 0.15 mm at each: both mates take 0.3 mm.
        let b = [mm(0.0, 0.0, 12.0), mm(100.8, 0.0, 12.0)];
        let a = [mm(0.0, 0.0, 11.5), mm(100.0, 0.0, 13.0)];
        let opened = opened_mm(&a, &b, 2).expect("little is missing");
        assert!(opened.contains(&(Plate::A, 0, 0.8)), "{opened:?}");
    }

    #[test]
    fn a_tapped_partner_gets_the_better_part_of_the_lay() {
        // The first pair can take 0.5 mm by opening, the second 1 mm; 1.4 mm are missing in all. Shared alike the first would
        // lack 0.2 mm.
        let a = [mm(0.0, 0.0, 12.0), mm(100.0, 0.0, 12.0)];
        let b = [Hole::tapped(0.0, 0.0, 0.012), mm(101.4, 0.0, 12.0)];
        let opened = opened_mm(&a, &b, 2).expect("an uneven lay does it");
        assert_eq!(opened[0].0, Plate::A);
        assert!(opened.iter().all(|(_, _, by)| *by <= 1.0), "{opened:?}");
    }

    #[test]
    fn what_brings_a_hole_to_the_bolt_counts_towards_the_millimetre() {
        // The first hole is brought up by 0.5 mm and can take 0.5 mm more, the second 1 mm: 0.75 mm between them.
        let a = [mm(0.0, 0.0, 11.5), mm(100.0, 0.0, 12.0)];
        let tapped = |pitch: f64| [Hole::tapped(0.0, 0.0, 0.012), Hole::tapped(pitch * 1e-3, 0.0, 0.012)];
        let opened = opened_mm(&a, &tapped(100.74), 2).expect("an uneven lay does it");
        assert!(opened.iter().all(|(_, _, by)| *by <= 1.0) && opened[0].2 > 0.97, "{opened:?}");
        assert_eq!(opened_mm(&a, &tapped(100.76), 2), None);
    }

    #[test]
    fn faults_are_passed_on() {
        assert!(opening(&[], &[], -1.0, 1, Flip::Forbidden, &mut 100).is_err());
        assert_eq!(opening(&[], &[], 0.012, 1, Flip::Forbidden, &mut 100), Ok(None));
    }
}
