//! Pieces of the underside that lie near each other, looked at together.

use core::ops::Range;

use super::gap::{Measure, Piece};
use super::profile::Profile;
use super::rolling::Stand;
use crate::plane::Point;

/// Pieces in a row within a circle: what the circle keeps off the profile, each of them does.
#[derive(Debug)]
pub(super) struct Bunch {
    pub pieces: Range<usize>,
    middle: Point,
    radius: f64,
}

/// What no piece of a bunch goes beyond in one stand.
#[derive(Debug, Clone, Copy)]
pub(super) struct Reach {
    /// No gap is less.
    pub nearest: f64,
    /// No gap changes faster for each metre driven.
    pub fastest: f64,
}

/// Pieces in a bunch. More of them make the circle large, fewer make many circles; it decides about time only. Own choice.
const PIECES: usize = 8;

/// Added to every radius, metres: far above rounding, so that a bunch never seems farther off than a piece of it.
const ROUNDING: f64 = 1e-9;

/// The pieces in bunches, in their order.
pub(super) fn bunches(pieces: &[Piece]) -> Vec<Bunch> {
    let bunch = |from: usize| {
        let of = from..(from + PIECES).min(pieces.len());
        let ends = || pieces[of.clone()].iter().flat_map(|piece| piece.ends);
        let least = ends().reduce(|a, b| Point::new(a.x.min(b.x), a.y.min(b.y))).unwrap_or(Point::ORIGIN);
        let most = ends().reduce(|a, b| Point::new(a.x.max(b.x), a.y.max(b.y))).unwrap_or(Point::ORIGIN);
        let middle = least.lerp(most, 0.5);
        let radius = ends().map(|end| end.distance(middle)).fold(0.0, f64::max);
        Bunch { pieces: of, middle, radius: radius + ROUNDING }
    };
    (0..pieces.len()).step_by(PIECES).map(bunch).collect()
}

impl Bunch {
    /// How near and how fast any of the pieces can be in a stand. The profile rises or is level, so that it is highest under the
    /// foremost point of the circle.
    pub fn reach(&self, profile: &Profile, stand: &Stand, measure: Measure) -> Reach {
        let at = stand.place(self.middle);
        let motion = stand.motion_at(at);
        let below = at.y - self.radius - profile.height(at.x + self.radius);
        let turn = self.radius * stand.turning.abs();
        match measure {
            Measure::Vertical => {
                Reach { nearest: below, fastest: motion.y.abs() + turn + profile.steepest * (motion.x.abs() + turn) }
            }
            Measure::Shortest => Reach {
                // The shortest way to a slope is its cosine of the way straight down.
                nearest: if below > 0.0 { below / libm::hypot(1.0, profile.steepest) } else { below },
                fastest: motion.norm() + turn,
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::ramp::gap::{Gaps, gaps};
    use crate::dimension::ramp::tests::wavy_drives;

    #[test]
    fn no_piece_comes_nearer_or_moves_faster_than_its_bunch() {
        let mut looked = 0;
        for (rolling, pieces) in wavy_drives() {
            let mut of = Gaps::none();
            for stage in &rolling.stages {
                for step in 0..=6 {
                    let x = stage.from + (stage.to - stage.from) * f64::from(step) / 6.0;
                    let stand = rolling.stand(stage, x).expect("within the stage");
                    for bunch in bunches(&pieces) {
                        for measure in [Measure::Vertical, Measure::Shortest] {
                            let reach = bunch.reach(&rolling.profile, &stand, measure);
                            for piece in &pieces[bunch.pieces.clone()] {
                                gaps(&rolling.profile, &stand, piece, measure, &mut of);
                                assert!(of.least().value >= reach.nearest, "{measure:?} {x}");
                                assert!(of.fastest <= reach.fastest, "{measure:?} {x}");
                                looked += 1;
                            }
                        }
                    }
                }
            }
        }
        assert!(looked > 1_000, "{looked}");
    }
}
