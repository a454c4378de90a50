//! How far the second plate may be moved about on the first.

use core::f64::consts::PI;

use super::Flip;
use super::pair::Arc;

/// Which lays of the second plate count.
///
/// A plate by itself may be turned any way. What is bolted on by it may not: an implement mounted upside down is no lay.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Whether the plate may be put on with its other face forward.
    pub flip: Flip,
    /// The most it may be turned either way, radians: from 0 to a quarter turn, or from half a turn up for any turn.
    ///
    /// Between a quarter and half a turn it is taken as a quarter turn. A figure that is not a number lets no turn pass.
    pub most_turn: f64,
}

impl Limits {
    /// Up stays up: no flip, and at most an eighth of a turn either way, far beyond what bolts leave. Own choice.
    pub const UPRIGHT: Self = Self { flip: Flip::Forbidden, most_turn: core::f64::consts::FRAC_PI_4 };

    /// The turns that count.
    pub(super) fn turns(self) -> Arc {
        let half = match self.most_turn {
            turn if turn.is_nan() => 0.0,
            turn if turn >= PI => PI,
            turn => turn.clamp(0.0, 0.5 * PI),
        };
        Arc { mid: 0.0, half }
    }
}

impl From<Flip> for Limits {
    /// Any turn.
    fn from(flip: Flip) -> Self {
        Self { flip, most_turn: PI }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Hole, Motion, lay_on};
    use super::*;

    fn rectangle() -> Vec<Hole> {
        [(0.0, 0.0), (0.1, 0.0), (0.1, 0.06), (0.0, 0.06)].map(|(u, v)| Hole::plain(u, v, 0.0135)).to_vec()
    }

    /// A plate that fits its own half turn alone.
    fn upside_down(holes: &[Hole]) -> Vec<Hole> {
        holes.iter().map(|hole| Hole { u: -hole.u, v: -hole.v, ..*hole }).collect()
    }

    #[test]
    fn a_pattern_upside_down_is_no_lay_where_up_stays_up() {
        let mut plate = rectangle();
        plate.push(Hole::plain(0.03, 0.02, 0.0135));
        let turned = upside_down(&plate);
        let fits = |limits: Limits| {
            let registered = lay_on(&plate, &turned, 0.012, 5, limits).unwrap();
            registered.found().is_some_and(super::super::Lay::fits)
        };
        assert!(fits(Flip::Forbidden.into()));
        assert!(!fits(Limits::UPRIGHT));
    }

    #[test]
    fn a_plate_that_goes_on_either_way_up_is_laid_upright() {
        let best = lay_on(&upside_down(&rectangle()), &rectangle(), 0.012, 4, Limits::UPRIGHT).unwrap();
        let best = best.found().unwrap();
        assert!((best.margin - 0.0015).abs() < 1e-9);
        assert!(best.motion.turn.abs() < 0.05 && (best.motion.shift_u + 0.1).abs() < 1.6e-3);
    }

    #[test]
    fn no_turn_at_all_leaves_only_shifts() {
        let turned: Vec<Hole> = rectangle()
            .iter()
            .map(|hole| {
                let [u, v] = Motion { turn: 0.02, ..Motion::NONE }.applied([hole.u, hole.v]);
                Hole { u, v, ..*hole }
            })
            .collect();
        let margin = |most_turn| {
            let limits = Limits { flip: Flip::Forbidden, most_turn };
            lay_on(&rectangle(), &turned, 0.012, 4, limits).unwrap().found().unwrap().margin
        };
        // From the middle to a corner it is 58.3 mm; the chord of 0.02 rad there, 1.166 mm.
        assert!((margin(0.0) - (0.0015 - 2.0 * libm::hypot(0.05, 0.03) * libm::sin(0.01))).abs() < 1e-8);
        assert!((margin(0.3) - 0.0015).abs() < 1e-9);
        assert!(margin(0.01) > margin(0.0) && margin(0.01) < margin(0.3));
        assert!((margin(f64::NAN) - margin(0.0)).abs() < 1e-9);
    }
}
