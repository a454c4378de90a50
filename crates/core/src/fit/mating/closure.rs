//! Does the frame meet both anchors of the machine at once?
//!
//! A frame is held at the axle and at the front. Once the axle anchor is bolted, the front one has to meet the machine's front
//! mounting: what is left over there is the closure.

use super::LARGEST;

/// The two anchors of one side, in the side plane.
///
/// # Units
/// Metres.
///
/// # Frame
/// (x, z): forward and up, any origin, the same for both anchors.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Anchors {
    /// The anchor at the rear axle.
    pub axle: [f64; 2],
    /// The front anchor.
    pub front: [f64; 2],
}

/// How far the centres may lie apart at each anchor: the allowances of its bolts or pins, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowances {
    /// At the axle anchor.
    pub axle: f64,
    /// At the front anchor.
    pub front: f64,
    /// Whole travel of a slot at the front anchor along the machine's x; 0 for round holes.
    pub front_slot: f64,
}

/// What is left over when a frame is brought to a machine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Closure {
    /// The frame front anchor as seen from its axle anchor, less the same on the machine, (x, z) in metres.
    pub residual: [f64; 2],
    /// Length of `residual`.
    pub residual_length: f64,
    /// Least margin of the two anchors when the frame keeps its attitude, shifted for the best.
    pub margin_level: f64,
    /// Margin at the front anchor when the frame keeps its attitude and the axle anchor is exactly met.
    pub margin_level_pinned: f64,
    /// The same with the frame free to turn in the side plane; `None` with a slot, whose gain depends on the turn.
    pub turning: Option<Turning>,
}

/// What is left over when the frame may also turn in the side plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turning {
    /// Frame span less machine span, signed, metres.
    pub span_residual: f64,
    /// Turn that lays the frame's span along the machine's, radians, counter-clockwise positive in (x, z).
    pub turn: f64,
    /// Least margin of the two anchors, metres.
    pub margin: f64,
    /// Margin at the front anchor when the axle anchor is exactly met, metres.
    pub margin_pinned: f64,
}

/// The closure of a frame on a machine; `None` when a figure is not a number or beyond [`LARGEST`].
///
/// # Units
/// Metres and radians.
///
/// # Frame
/// Plate plane (x, z). The frame's anchors and the machine's may have different origins.
///
/// # Valid for
/// One side of a frame; both anchors round, or a slot at the front along the machine's x. Allowances below zero mean that
/// the bolt does not go in at all and come out as negative margins.
///
/// # Source
/// Own derivation: two offsets that must differ by the residual share it, so each anchor gives up at least half of what exceeds
/// both allowances.
///
/// # Examples
/// The frame is 2 mm longer than the machine's mounting; the anchors allow 1 mm and 1.5 mm: (1 + 1.5 − 2) / 2 is left.
/// ```
/// use fitup_core::fit::mating::closure::{Allowances, Anchors, closure};
/// let frame = Anchors { axle: [0.0, 0.0], front: [1.202, 0.0] };
/// let machine = Anchors { axle: [0.0, 0.4], front: [1.200, 0.4] };
/// let closed = closure(&frame, &machine, Allowances { axle: 0.001, front: 0.0015, front_slot: 0.0 }).unwrap();
/// assert!((closed.margin_level - 0.00025).abs() < 1e-12);
/// ```
pub fn closure(frame: &Anchors, machine: &Anchors, allowances: Allowances) -> Option<Closure> {
    let Allowances { axle, front, front_slot } = allowances;
    let figures = [frame.axle, frame.front, machine.axle, machine.front, [axle, front]];
    // A figure that is not a number is not within any range either.
    if !figures.iter().flatten().all(|x| x.abs() <= LARGEST) || !(0.0..=LARGEST).contains(&front_slot) {
        return None;
    }
    let of_frame = [frame.front[0] - frame.axle[0], frame.front[1] - frame.axle[1]];
    let of_machine = [machine.front[0] - machine.axle[0], machine.front[1] - machine.axle[1]];
    let residual = [of_frame[0] - of_machine[0], of_frame[1] - of_machine[1]];
    let past_slot = (residual[0].abs() - 0.5 * front_slot).max(0.0);
    let apart = libm::hypot(past_slot, residual[1]);
    let residual_length = libm::hypot(residual[0], residual[1]);
    let turning = (front_slot == 0.0).then(|| {
        let span_residual = libm::hypot(of_frame[0], of_frame[1]) - libm::hypot(of_machine[0], of_machine[1]);
        let turn = libm::atan2(of_machine[1], of_machine[0]) - libm::atan2(of_frame[1], of_frame[0]);
        Turning {
            span_residual,
            turn: libm::remainder(turn, core::f64::consts::TAU),
            margin: shared(axle, front, span_residual.abs()),
            margin_pinned: front - span_residual.abs(),
        }
    });
    Some(Closure {
        residual,
        residual_length,
        margin_level: shared(axle, front, apart),
        margin_level_pinned: front - apart,
        turning,
    })
}

/// Two anchors whose offsets must differ by `apart`: the best least margin.
fn shared(axle: f64, front: f64, apart: f64) -> f64 {
    axle.min(front).min(0.5 * (axle + front - apart))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn anchors(axle: [f64; 2], front: [f64; 2]) -> Anchors {
        Anchors { axle, front }
    }

    fn close(a: f64, b: f64) -> bool {
        (a - b).abs() < 1e-12
    }

    #[test]
    fn a_perfect_frame_leaves_the_smaller_allowance() {
        let frame = anchors([0.0, 0.0], [1.2, 0.15]);
        let machine = anchors([0.03, 0.4], [1.23, 0.55]);
        let closed = closure(&frame, &machine, Allowances { axle: 0.001, front: 0.0015, front_slot: 0.0 }).unwrap();
        let turning = closed.turning.unwrap();
        assert!(close(closed.margin_level, 0.001) && close(turning.margin, 0.001));
        assert!(close(closed.margin_level_pinned, 0.0015) && close(turning.margin_pinned, 0.0015));
        assert!(close(closed.residual_length, 0.0) && close(turning.turn, 0.0) && close(turning.span_residual, 0.0));
    }

    #[test]
    fn turning_the_frame_takes_up_a_difference_in_height_but_not_in_length() {
        let frame = anchors([0.0, 0.0], [1.0, 0.0]);
        let machine = anchors([0.0, 0.0], [0.8, 0.6]);
        let closed = closure(&frame, &machine, Allowances { axle: 0.001, front: 0.001, front_slot: 0.0 }).unwrap();
        let turning = closed.turning.unwrap();
        assert!(close(turning.span_residual, 0.0));
        assert!(close(turning.margin, 0.001));
        assert!(close(turning.turn, libm::atan2(0.6, 0.8)), "counter-clockwise is positive");
        assert!(close(closed.residual[0], 0.2) && close(closed.residual[1], -0.6));
        assert!(close(closed.residual_length, 0.4_f64.sqrt()));
        assert!(close(closed.margin_level, 0.5 * (0.002 - 0.4_f64.sqrt())));
    }

    #[test]
    fn a_frame_that_is_longer_takes_of_both_allowances_or_of_the_front_alone() {
        let frame = anchors([0.0, 0.0], [1.002, 0.0]);
        let machine = anchors([0.0, 0.0], [1.0, 0.0]);
        for (frame, machine) in [(frame, machine), (machine, frame)] {
            let closed = closure(&frame, &machine, Allowances { axle: 0.001, front: 0.0015, front_slot: 0.0 }).unwrap();
            let turning = closed.turning.unwrap();
            assert!(close(turning.margin, 0.5 * (0.0025 - 0.002)) && close(turning.margin_pinned, 0.0015 - 0.002));
        }
    }

    #[test]
    fn the_turn_is_wrapped() {
        let frame = anchors([0.0, 0.0], [-1.0, -0.1]);
        let machine = anchors([0.0, 0.0], [-1.0, 0.1]);
        let closed = closure(&frame, &machine, Allowances { axle: 0.0, front: 0.0, front_slot: 0.0 }).unwrap();
        assert!(close(closed.turning.unwrap().turn, -2.0 * libm::atan(0.1)));
    }

    #[test]
    fn a_slot_takes_half_its_travel_off_the_length_only() {
        let frame = anchors([0.0, 0.0], [1.005, 0.003]);
        let machine = anchors([0.0, 0.0], [1.0, 0.0]);
        let closed = closure(&frame, &machine, Allowances { axle: 0.002, front: 0.004, front_slot: 0.002 }).unwrap();
        // 5 mm less 1 mm along x and 3 mm up: 5 mm apart.
        assert!(close(closed.margin_level, 0.5 * (0.006 - 0.005)));
        assert!(close(closed.margin_level_pinned, 0.004 - 0.005));
        assert!(close(closed.residual[0], 0.005), "the residual itself is told without the slot");
        assert_eq!(closed.turning, None);
        let long = closure(&frame, &machine, Allowances { axle: 0.002, front: 0.004, front_slot: 0.050 }).unwrap();
        assert!(close(long.margin_level_pinned, 0.001));
    }

    #[test]
    fn figures_that_are_not_numbers_close_nothing() {
        let good = anchors([0.0, 0.0], [1.0, 0.0]);
        let allow = Allowances { axle: 0.0, front: 0.0, front_slot: 0.0 };
        assert_eq!(closure(&anchors([f64::NAN, 0.0], [1.0, 0.0]), &good, allow), None);
        assert_eq!(closure(&good, &anchors([0.0, 0.0], [1.0, f64::INFINITY]), allow), None);
        assert_eq!(closure(&anchors([-1e308, 0.0], [1e308, 1e308]), &good, allow), None);
        assert_eq!(closure(&good, &anchors([0.0, 0.0], [0.0, 1.001e6]), allow), None);
        assert_eq!(closure(&good, &good, Allowances { front: f64::NAN, ..allow }), None);
        assert_eq!(closure(&good, &good, Allowances { front_slot: -0.001, ..allow }), None);
        assert_eq!(closure(&good, &good, Allowances { front_slot: f64::NAN, ..allow }), None);
    }

    #[test]
    fn the_origins_of_frame_and_machine_do_not_matter() {
        let frame = anchors([0.5, -0.25], [1.75, 0.0]);
        let machine = anchors([-2.0, 0.5], [-0.5, 1.5]);
        let allow = Allowances { axle: 0.001, front: 0.001, front_slot: 0.0 };
        // Spans (1.25, 0.25) and (1.5, 1).
        let closed = closure(&frame, &machine, allow).unwrap();
        assert_eq!(closed, closure(&anchors([0.0; 2], [1.25, 0.25]), &anchors([0.0; 2], [1.5, 1.0]), allow).unwrap());
        assert!(close(closed.residual[0], -0.25) && close(closed.residual[1], -0.75));
    }

    #[test]
    fn the_largest_figure_still_closes() {
        let far = anchors([0.0; 2], [LARGEST, 0.0]);
        let allow = Allowances { axle: LARGEST, front: 0.0, front_slot: LARGEST };
        assert!(closure(&far, &far, allow).is_some());
        assert_eq!(closure(&far, &far, Allowances { front_slot: 1.001 * LARGEST, ..allow }), None);
    }
}
