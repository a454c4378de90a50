//! The least gap of a whole drive.

use super::bunch::{Bunch, bunches};
use super::gap::{Gap, Gaps, Measure, Piece, gaps};
use super::rolling::{Rolling, Stage, Stand};

/// Where the least gap was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Least {
    pub value: f64,
    pub stand: Stand,
    /// Index of the piece.
    pub piece: usize,
    /// Share of the way from the piece's first end to its second.
    pub share: f64,
}

/// How far above the true least the search may stop, metres: a ten-millionth of a millimetre.
/// Smaller costs time only. Common practice, no source.
const CLOSE_ENOUGH: f64 = 1e-10;

/// Parts a stage is cut into before the bounds are trusted.
const FIRST_PARTS: u32 = 4;

/// How much faster than at its ends a gap may change within a part. The speeds vary slowly within
/// a part; half as much again is far beyond what a quarter stage can hide.
const FASTER_BETWEEN: f64 = 1.5;

/// Halvings of a part at most: beyond this it is shorter than rounding.
const MOST_HALVINGS: u32 = 48;

/// The least gap over the drive, by halving stretches of the drive until none can hold a gap
/// noticeably below the least known. `known` is a gap that is known from elsewhere: nothing above it is looked for.
pub(super) fn least(rolling: &Rolling, pieces: &[Piece], measure: Measure, known: Option<Least>) -> Option<Least> {
    let ends = [Gaps::none(), Gaps::none()];
    let mut search =
        Search { rolling, pieces, bunches: bunches(pieces), measure, least: known, alive: Vec::new(), ends };
    // Both ends of every stage first, so that a good bound is known early; the first stand, on
    // level ground, is the one named where others only equal it.
    for stage in &rolling.stages {
        for x in [stage.from, stage.to] {
            search.look(stage, x);
        }
    }
    for stage in &rolling.stages {
        let step = (stage.to - stage.from) / f64::from(FIRST_PARTS);
        let place = |i: u32| if i == FIRST_PARTS { stage.to } else { stage.from + step * f64::from(i) };
        for i in 0..FIRST_PARTS {
            search.part(stage, place(i), place(i + 1));
        }
    }
    search.least
}

struct Search<'a> {
    rolling: &'a Rolling,
    pieces: &'a [Piece],
    bunches: Vec<Bunch>,
    measure: Measure,
    least: Option<Least>,
    /// Pieces that can still hold the least, list behind list.
    alive: Vec<usize>,
    /// Of the piece looked at, at both ends of a part.
    ends: [Gaps; 2],
}

/// A stretch of a stage still open.
struct Open {
    from: (f64, Stand),
    to: (f64, Stand),
    alive: core::ops::Range<usize>,
    halvings: u32,
}

impl Search<'_> {
    fn known(&self) -> f64 {
        self.least.map_or(f64::INFINITY, |least| least.value)
    }

    fn look(&mut self, stage: &Stage, x: f64) {
        let Some(stand) = self.rolling.stand(stage, x) else { return };
        for at in 0..self.bunches.len() {
            let bunch = &self.bunches[at];
            if bunch.reach(&self.rolling.profile, &stand, self.measure).nearest >= self.known() {
                continue;
            }
            for index in bunch.pieces.clone() {
                gaps(&self.rolling.profile, &stand, &self.pieces[index], self.measure, &mut self.ends[0]);
                self.keep(0, stand, index);
            }
        }
    }

    /// Keeps the least gap at one end of a part if it is less than the least known.
    fn keep(&mut self, end: usize, stand: Stand, piece: usize) {
        let &Gap { value, share, .. } = self.ends[end].least();
        if value < self.known() - CLOSE_ENOUGH / 4.0 {
            self.least = Some(Least { value, stand, piece, share });
        }
    }

    fn part(&mut self, stage: &Stage, from: f64, to: f64) {
        let (Some(a), Some(b)) = (self.rolling.stand(stage, from), self.rolling.stand(stage, to)) else { return };
        self.alive.clear();
        for bunch in &self.bunches {
            let [at_a, at_b] = [&a, &b].map(|stand| bunch.reach(&self.rolling.profile, stand, self.measure));
            let fastest = at_a.fastest.max(at_b.fastest) * FASTER_BETWEEN;
            let between = f64::midpoint(at_a.nearest, at_b.nearest) - fastest * (to - from) / 2.0;
            // What holds for the whole bunch holds for each of its pieces.
            if between.min(at_a.nearest).min(at_b.nearest) < self.known() {
                self.alive.extend(bunch.pieces.clone());
            }
        }
        let alive = 0..self.alive.len();
        let mut open = vec![Open { from: (from, a), to: (to, b), alive, halvings: 0 }];
        while let Some(part) = open.pop() {
            let start = part.alive.end;
            self.alive.truncate(start);
            for place in part.alive.clone() {
                let index = self.alive[place];
                if self.can_hold_less(&part, index) {
                    self.alive.push(index);
                }
            }
            let still = start..self.alive.len();
            let middle = f64::midpoint(part.from.0, part.to.0);
            if still.is_empty() || part.halvings >= MOST_HALVINGS {
                continue;
            }
            let Some(stand) = self.rolling.stand(stage, middle) else { continue };
            let halvings = part.halvings + 1;
            open.push(Open { from: (middle, stand), to: part.to, alive: still.clone(), halvings });
            open.push(Open { from: part.from, to: (middle, stand), alive: still, halvings });
        }
    }

    /// Whether the piece can come nearer in this part than the least known. Looks at both ends on the way.
    fn can_hold_less(&mut self, part: &Open, index: usize) -> bool {
        for (end, stand) in [part.from.1, part.to.1].into_iter().enumerate() {
            gaps(&self.rolling.profile, &stand, &self.pieces[index], self.measure, &mut self.ends[end]);
            self.keep(end, stand, index);
        }
        let [a, b] = &self.ends;
        let floor = self.known() - CLOSE_ENOUGH;
        let width = part.to.0 - part.from.0;
        // No point of the piece moves faster, whichever gap is the least meanwhile.
        let fastest = a.fastest.max(b.fastest) * FASTER_BETWEEN;
        let meets = f64::midpoint(a.least().value, b.least().value) - fastest * width / 2.0;
        if meets >= floor {
            return false;
        }
        a.as_slice().iter().zip(b.as_slice()).any(|(a, b)| {
            let both = a.kind == b.kind;
            let bound = match (both, a.value.is_finite()) {
                (true, true) => lower_bound(a, b, width),
                (true, false) => f64::INFINITY,
                (false, _) => meets,
            };
            bound < floor
        })
    }
}

/// A value that a gap, smooth from `a` to `b` over `width`, does not go below.
///
/// The course is compared with the cubic that its values and changes allow: the third derivative
/// follows from how far the chord's rise misses the mean change, and with it the least second
/// derivative, doubled for safety. A course whose second derivative is nowhere below −m lies above the
/// same course made convex by subtracting m/2 of the product of the distances to both ends.
pub(super) fn lower_bound(a: &Gap, b: &Gap, width: f64) -> f64 {
    let bend = (b.change - a.change) / width;
    let missed = (b.value - a.value) - width * f64::midpoint(a.change, b.change);
    let doubt = 12.0 * missed.abs() / (width * width);
    let hollow = (doubt - bend).max(0.0);
    let (down, up) = (a.change - hollow * width / 2.0, b.change + hollow * width / 2.0);
    if down >= 0.0 {
        a.value
    } else if up <= 0.0 {
        b.value
    } else {
        // Where the tangents at both ends meet.
        let along = (b.value - a.value - up * width) / (down - up);
        a.value + down * along
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    type Course = fn(f64) -> f64;

    fn gap(value: f64, change: f64) -> Gap {
        Gap { value, change, share: 0.0, kind: 0 }
    }

    #[test]
    fn the_bound_of_a_straight_course_is_its_lower_end() {
        assert!((lower_bound(&gap(1.0, -0.5), &gap(0.5, -0.5), 1.0) - 0.5).abs() < 1e-15);
        assert!((lower_bound(&gap(0.5, 0.5), &gap(1.0, 0.5), 1.0) - 0.5).abs() < 1e-15);
    }

    #[test]
    fn the_bound_lies_below_every_course_it_bounds_and_closes_on_it() {
        // Courses with hollows and humps, by their values and changes.
        let courses: [(Course, Course); 4] = [
            (|x| x * x, |x| 2.0 * x),
            (|x| -x * x, |x| -2.0 * x),
            (libm::sin, libm::cos),
            (|x| x * x * x - 0.2 * x, |x| 3.0 * x * x - 0.2),
        ];
        for (f, g) in courses {
            for i in 0..40 {
                let from = f64::from(i) * 0.1 - 2.0;
                for width in [0.4, 0.1, 0.01] {
                    let at = |x: f64| gap(f(x), g(x));
                    let bound = lower_bound(&at(from), &at(from + width), width);
                    let least =
                        (0..=1000).map(|k| f(from + width * f64::from(k) / 1000.0)).fold(f64::INFINITY, f64::min);
                    assert!(bound <= least + 1e-12, "{bound} above {least} from {from} over {width}");
                    assert!(bound >= least - 2.0 * width * width, "{bound} far below {least}");
                }
            }
        }
    }
}
