//! Which clearance holes would have to be opened up, and by how much, for the bolts to go through.

use super::{Flip, Hole, HoleKind, PatternFault, Registered, Registration, Side, register};

/// The most a hole may be opened up, metres in diameter: 1 mm.
///
/// Common practice, no source: more would change which washer and which bolt belong there.
pub const GREATEST_OPENING: f64 = 1e-3;

/// A set of holes that, opened up, let all bolts through.
#[derive(Clone, Debug, PartialEq)]
pub struct Opening {
    /// The lay at which they do. Its margins are those of the holes as they are now, for holes not smaller than the bolt.
    pub registration: Registration,
    /// The holes, first pattern first.
    pub holes: Vec<Opened>,
    /// The greatest of the enlargements, metres in diameter.
    pub greatest: f64,
}

/// One hole opened up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opened {
    /// In which pattern.
    pub side: Side,
    /// Which hole.
    pub hole: usize,
    /// By how much, metres in diameter.
    pub by: f64,
}

/// The least opening-up, by at most [`GREATEST_OPENING`] a hole, that lets all `required` bolts through.
///
/// `None` when no such opening does it, when none is needed, or when the patterns could not be settled. A pair that is
/// short by `s` is mended by opening one clearance hole by `2 s`, or both by `s` where one alone would have to grow too much.
///
/// # Units
/// Metres.
///
/// # Valid for
/// Holes with enough material round them; that is for the eye at the plate.
///
/// # Errors
/// As [`register`].
///
/// # Examples
/// One pitch is 3.4 mm longer: each of the two pairs is short by 0.2 mm, so one hole of each is opened by 0.4 mm.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, opening};
/// let a = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.100, 0.0, 0.0135)];
/// let b = [Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.1034, 0.0, 0.0135)];
/// let opening = opening(&a, &b, 0.012, 2, Flip::Forbidden)?.expect("0.4 mm does it");
/// assert_eq!(opening.holes.len(), 2);
/// assert!((opening.greatest - 0.0004).abs() < 1e-8);
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn opening(
    a: &[Hole],
    b: &[Hole],
    bolt: f64,
    required: usize,
    flip: Flip,
) -> Result<Option<Opening>, PatternFault> {
    // Holes a little too small are first brought to the bolt's diameter; the bolt itself has no play in them yet.
    let raised_a = raised(a, bolt);
    let raised_b = raised(b, bolt);
    let Registered::Found(registration) = register(&raised_a, &raised_b, bolt, required, flip)? else {
        return Ok(None);
    };
    let mut holes = Vec::new();
    for pair in &registration.pairs {
        let room = |now: &Hole, raised: &Hole| match now.kind {
            HoleKind::Tapped => 0.0,
            HoleKind::Plain => GREATEST_OPENING - (raised.diameter - now.diameter),
        };
        let done_a = raised_a[pair.a].diameter - a[pair.a].diameter;
        let done_b = raised_b[pair.b].diameter - b[pair.b].diameter;
        let room_a = room(&a[pair.a], &raised_a[pair.a]);
        let room_b = room(&b[pair.b], &raised_b[pair.b]);
        let short = if pair.margin < -super::RESOLUTION { -2.0 * pair.margin } else { 0.0 };
        let Some([more_a, more_b]) = shared(short, room_a, room_b) else { return Ok(None) };
        holes.push(Opened { side: Side::A, hole: pair.a, by: done_a + more_a });
        holes.push(Opened { side: Side::B, hole: pair.b, by: done_b + more_b });
    }
    holes.retain(|opened| opened.by > 0.0);
    if holes.is_empty() {
        return Ok(None);
    }
    holes.sort_by_key(|opened| (opened.side, opened.hole));
    let greatest = holes.iter().map(|opened| opened.by).fold(0.0, f64::max);
    Ok(Some(Opening { registration, holes, greatest }))
}

/// How much of the enlargement `needed` each of two holes takes: one alone where it can, else both alike, else as they can.
fn shared(needed: f64, room_a: f64, room_b: f64) -> Option<[f64; 2]> {
    if needed <= room_a {
        Some([needed, 0.0])
    } else if needed <= room_b {
        Some([0.0, needed])
    } else if needed <= room_a + room_b {
        let a = (0.5 * needed).clamp(needed - room_b, room_a);
        Some([a, needed - a])
    } else {
        None
    }
}

fn raised(holes: &[Hole], bolt: f64) -> Vec<Hole> {
    let raise = |hole: &Hole| {
        let small = hole.kind == HoleKind::Plain && hole.diameter < bolt && hole.diameter >= bolt - GREATEST_OPENING;
        Hole { diameter: if small { bolt } else { hole.diameter }, ..*hole }
    };
    holes.iter().map(raise).collect()
}
