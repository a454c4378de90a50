//! The gap between one piece of the underside and the profile, in one stand.

use super::profile::Profile;
use super::rolling::Stand;
use crate::plane::Point;

/// An edge of the underside, or a lone point (both ends the same), given from the trailing wheel's centre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Piece {
    /// Index of its line.
    pub line: usize,
    /// Its ends.
    pub ends: [Point; 2],
}

/// How a gap is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Measure {
    /// Straight down; negative below the profile.
    Vertical,
    /// The shortest way; 0 when touching or crossing is not told apart.
    Shortest,
}

/// One of the gaps whose least is the piece's: smooth in the motion as long as its kind stays.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Gap {
    /// The gap, metres.
    pub value: f64,
    /// Its change for each metre driven.
    pub change: f64,
    /// Which share of the way from the piece's first end to its second it is measured at.
    pub share: f64,
    /// What it is measured to; gaps of different kind do not follow one smooth course.
    pub kind: u8,
}

/// No gap is measured here: no corner lies under the edge.
pub(super) const NO_GAP: Gap = Gap { value: f64::INFINITY, change: 0.0, share: 0.0, kind: u8::MAX };

/// Most gaps one piece can have: two ends over four stretches, and three corners.
pub(super) const MOST_GAPS: usize = 11;

/// The gaps of one piece in one stand. Filled anew for every piece: there are millions in a search.
#[derive(Debug)]
pub(super) struct Gaps {
    pub list: [Gap; MOST_GAPS],
    pub count: usize,
    /// Place in the list of the least, the first of equal ones.
    least: usize,
    /// How fast the least of the piece can change at most for each metre driven: as fast as its fastest point.
    pub fastest: f64,
}

impl Gaps {
    pub const fn none() -> Self {
        Self { list: [NO_GAP; MOST_GAPS], count: 0, least: 0, fastest: 0.0 }
    }

    fn push(&mut self, gap: Gap) {
        if gap.value < self.list[self.least].value || self.count == 0 {
            self.least = self.count;
        }
        self.list[self.count] = gap;
        self.count += 1;
    }

    /// The gaps, always the same number in the same order for one profile and measure.
    pub fn as_slice(&self) -> &[Gap] {
        &self.list[..self.count]
    }

    /// The least of them; there are always two at least.
    pub const fn least(&self) -> &Gap {
        &self.list[self.least]
    }
}

/// A moving point of the piece.
#[derive(Clone, Copy)]
struct Moving {
    at: Point,
    motion: Point,
}

/// Fills in the gaps of `piece` in `stand`.
pub(super) fn gaps(profile: &Profile, stand: &Stand, piece: &Piece, measure: Measure, gaps: &mut Gaps) {
    let ends = piece.ends.map(|end| {
        let at = stand.place(end);
        Moving { at, motion: stand.motion_at(at) }
    });
    (gaps.count, gaps.least, gaps.fastest) = (0, 0, 0.0);
    match measure {
        Measure::Vertical => {
            let steepest = profile.steepest;
            for end in ends {
                gaps.fastest = gaps.fastest.max(end.motion.y.abs() + steepest * end.motion.x.abs());
            }
            vertical(profile, ends, gaps);
        }
        Measure::Shortest => {
            for end in ends {
                gaps.fastest = gaps.fastest.max(end.motion.norm());
            }
            shortest(profile, ends, gaps);
        }
    }
}

/// Ends straight down to the profile; edge straight down to each crest under it. Over a valley an edge has no least.
fn vertical(profile: &Profile, ends: [Moving; 2], gaps: &mut Gaps) {
    for (end, share) in ends.into_iter().zip([0.0, 1.0]) {
        let over = profile.stretch_at(end.at.x);
        let stretch = &profile.stretches[over];
        gaps.push(Gap {
            value: end.at.y - stretch.height(end.at.x),
            change: end.motion.y - stretch.slope * end.motion.x,
            share,
            kind: u8::try_from(over).unwrap_or(u8::MAX),
        });
    }
    let [a, b] = ends;
    let run = b.at - a.at;
    for corner in profile.corners.iter().filter(|corner| corner.is_crest()) {
        let share = (corner.at.x - a.at.x) / run.x;
        if !(0.0..=1.0).contains(&share) {
            gaps.push(NO_GAP);
            continue;
        }
        let motion = a.motion.lerp(b.motion, share);
        gaps.push(Gap {
            value: a.at.lerp(b.at, share).y - corner.at.y,
            change: motion.y - run.y / run.x * motion.x,
            share,
            kind: 0,
        });
    }
}

/// Ends to each stretch, and crests to the edge.
fn shortest(profile: &Profile, ends: [Moving; 2], gaps: &mut Gaps) {
    for (end, share) in ends.into_iter().zip([0.0, 1.0]) {
        for stretch in &profile.stretches {
            let along = Point::new(1.0, stretch.slope);
            let foot =
                end.at.x + (end.at - Point::new(end.at.x, stretch.height(end.at.x))).dot(along) / along.dot(along);
            let foot = foot.max(stretch.from).min(stretch.to);
            gaps.push(between(end, Point::new(foot, stretch.height(foot)), share));
        }
    }
    let [a, b] = ends;
    let run = b.at - a.at;
    let square = run.dot(run);
    for corner in profile.corners.iter().filter(|corner| corner.is_crest()) {
        let share = if square > 0.0 { ((corner.at - a.at).dot(run) / square).clamp(0.0, 1.0) } else { 0.0 };
        let near = Moving { at: a.at.lerp(b.at, share), motion: a.motion.lerp(b.motion, share) };
        gaps.push(between(near, corner.at, share));
    }
}

/// The straight gap between a moving point of the piece and a point of the profile.
fn between(near: Moving, fixed: Point, share: f64) -> Gap {
    let apart = near.at - fixed;
    let value = apart.norm();
    let change = if value > 0.0 { apart.dot(near.motion) / value } else { 0.0 };
    Gap { value, change, share, kind: 0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::ramp::rolling::{Rolling, Stage};
    use crate::dimension::ramp::tests::wavy_drives;

    /// Second method: the course of each gap, told apart by its place in the list, from a little before to a little after.
    #[test]
    fn each_gap_changes_as_its_course_does_and_the_least_no_faster_than_the_piece() {
        for measure in [Measure::Vertical, Measure::Shortest] {
            let mut compared = 0;
            for (rolling, pieces) in wavy_drives() {
                for stage in &rolling.stages {
                    for share in [0.21, 0.5, 0.77] {
                        let x = stage.from + (stage.to - stage.from) * share;
                        compared += pieces.iter().map(|piece| follow(&rolling, stage, x, piece, measure)).sum::<u32>();
                    }
                }
            }
            assert!(compared > 1_000, "{measure:?}: {compared}");
        }
    }

    /// Compares the changes at `x` with the courses about it; how many could be.
    fn follow(rolling: &Rolling, stage: &Stage, x: f64, piece: &Piece, measure: Measure) -> u32 {
        let step = 1e-6;
        let at = |x: f64| {
            let mut all = Gaps::none();
            let stand = rolling.stand(stage, x).expect("within the stage");
            gaps(&rolling.profile, &stand, piece, measure, &mut all);
            all
        };
        let (before, here, after) = (at(x - step), at(x), at(x + step));
        let moved = (after.least().value - before.least().value).abs();
        assert!(moved <= 2.0 * step * here.fastest + 1e-10, "{measure:?} {x}: {moved}");
        let mut compared = 0;
        for ((a, gap), b) in before.as_slice().iter().zip(here.as_slice()).zip(after.as_slice()) {
            let one_course = [a, gap, b].iter().all(|other| other.value.is_finite() && other.kind == gap.kind);
            if one_course && gap.value.abs() > 0.01 {
                let change = (b.value - a.value) / (2.0 * step);
                assert!((gap.change - change).abs() < 1e-5, "{measure:?} {x}: {gap:?} {change}");
                compared += 1;
            }
        }
        compared
    }

    #[test]
    fn of_equal_gaps_the_first_is_the_least() {
        let mut all = Gaps::none();
        for (share, value) in [(0.0, 2.0), (0.5, 1.0), (1.0, 1.0)] {
            all.push(Gap { value, change: 0.0, share, kind: 0 });
        }
        assert!((all.least().share - 0.5).abs() < 1e-15 && all.as_slice().len() == 3);
    }
}
