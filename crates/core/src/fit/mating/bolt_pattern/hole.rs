//! One hole of a bolt pattern, and how far a bolt may wander in a pair of holes.

/// A hole of a plate, in the plate's own plane.
///
/// # Units
/// Metres and radians.
///
/// # Frame
/// `u`, `v` are any two perpendicular axes in the plate, the same for all holes of a pattern.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// First coordinate of the centre (of a slot: the middle of its travel).
    pub u: f64,
    /// Second coordinate of the centre.
    pub v: f64,
    /// Diameter; the width where the hole is a slot.
    pub diameter: f64,
    /// Whether the bolt passes through or is screwed in.
    pub kind: HoleKind,
    /// The travel of an elongated hole; `None` for a round one.
    pub slot: Option<Slot>,
}

/// How a hole takes the bolt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum HoleKind {
    /// A clearance hole: the bolt passes through with play.
    Plain,
    /// A threaded hole: the bolt is held on its axis.
    Tapped,
}

/// The elongation of a hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slot {
    /// Distance between the two end centres, metres: the bolt may move half of it either way.
    pub travel: f64,
    /// Direction of the travel in the plate's own axes, radians from `u` towards `v`.
    pub direction: f64,
}

impl Hole {
    /// A round clearance hole.
    pub fn plain(u: f64, v: f64, diameter: f64) -> Self {
        Self { u, v, diameter, kind: HoleKind::Plain, slot: None }
    }

    /// A round threaded hole.
    pub fn tapped(u: f64, v: f64, diameter: f64) -> Self {
        Self { u, v, diameter, kind: HoleKind::Tapped, slot: None }
    }

    /// The same hole with a travel.
    #[must_use]
    pub fn slotted(self, travel: f64, direction: f64) -> Self {
        Self { slot: Some(Slot { travel, direction }), ..self }
    }

    /// The same hole seen through the plate's back, u to the other side.
    #[must_use]
    pub fn through_the_back(self) -> Self {
        let mirrored = |slot: Slot| Slot { direction: core::f64::consts::PI - slot.direction, ..slot };
        Self { u: 0.0 - self.u, slot: self.slot.map(mirrored), ..self }
    }

    /// Half the travel as a vector, zero for a round hole.
    pub(in crate::fit::mating) fn half_travel(&self) -> [f64; 2] {
        self.slot.map_or([0.0, 0.0], |slot| {
            let (sin, cos) = libm::sincos(slot.direction);
            [0.5 * slot.travel * cos, 0.5 * slot.travel * sin]
        })
    }
}

/// A pattern as the plate that it faces has it: u reversed, slots with it.
///
/// Patterns are written as one looks at their own face. Where two plates face each other, each sees the other through its
/// back, so the second is mirrored before [`lay_on`](super::lay_on), [`opening`](super::opening()) and
/// [`drilling`](super::drilling()); a place that these give in the second plate's axes is mirrored back by reversing u.
///
/// # Frame
/// Each pattern in its own face: u to the right as one looks at it, v up.
///
/// # Examples
/// A plate with a third hole at the right meets one with its third hole at the left, and not its own twin.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, facing_pattern, lay_on};
/// let hole = |u, v| Hole::plain(u, v, 0.0135);
/// let right = [hole(0.0, 0.0), hole(0.0, 0.06), hole(0.1, 0.0)];
/// let left = [hole(0.0, 0.0), hole(0.0, 0.06), hole(-0.1, 0.0)];
/// let fits = |a: &[Hole], b: &[Hole]| {
///     let registered = lay_on(a, &facing_pattern(b), 0.012, 3, Flip::Forbidden)?;
///     Ok::<_, fitup_core::fit::mating::bolt_pattern::PatternFault>(registered.found().is_some_and(|best| best.fits()))
/// };
/// assert!(fits(&right, &left)?);
/// assert!(!fits(&right, &right)?);
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn facing_pattern(holes: &[Hole]) -> Vec<Hole> {
    holes.iter().map(|hole| hole.through_the_back()).collect()
}

/// How far apart the centres of two round holes may lie with a bolt of diameter `bolt` through both.
///
/// Each clearance hole adds half its play; a threaded hole holds the bolt and adds nothing. `None`
/// where no bolt goes through at all: two threaded holes, or a clearance hole smaller than the bolt.
///
/// # Units
/// Metres.
///
/// # Source
/// The floating fastener (clearance holes in both plates) and fixed fastener (one plate threaded) cases of ASME Y14.5,
/// appendix B: tolerance zones of diameter H − F on each plate, or H − F shared between both.
///
/// # Examples
/// M12 through two 13.5 mm holes: 0.75 mm each way from each.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Hole, allowance};
/// let hole = Hole::plain(0.0, 0.0, 0.0135);
/// assert!((allowance(&hole, &hole, 0.012).unwrap() - 0.0015).abs() < 1e-15);
/// assert_eq!(allowance(&hole, &Hole::plain(0.0, 0.0, 0.011), 0.012), None);
/// ```
pub fn allowance(a: &Hole, b: &Hole, bolt: f64) -> Option<f64> {
    let of_one = |hole: &Hole| match hole.kind {
        HoleKind::Tapped => Some(0.0),
        HoleKind::Plain if hole.diameter >= bolt => Some(0.5 * (hole.diameter - bolt)),
        HoleKind::Plain => None,
    };
    if a.kind == HoleKind::Tapped && b.kind == HoleKind::Tapped {
        return None;
    }
    Some(of_one(a)? + of_one(b)?)
}
