//! How far the arm swings before it meets a tyre, a stabiliser or anything else, in plan.

use crate::dimension::input::{InputError, between, not_negative, positive, sound, sound_points};
use crate::plane::{Circle, Point};

/// An arm in plan: a strip from the swing centre outward.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmPlan {
    /// Swing centre (x, y), metres.
    pub centre: Point,
    /// Length of the strip from the swing centre, metres.
    pub length: f64,
    /// Half its width, metres.
    pub half_width: f64,
}

/// How far the arm swings to one side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SwingReach {
    /// Angle from straight back, radians; 0 when it already meets something.
    pub angle: f64,
    /// Index of the line that stops it; `None` when nothing does within the limit.
    pub stop: Option<usize>,
}

/// How far the arm swings to the left and to the right of straight back before it meets something.
///
/// Shape: a strip turning about one end, against open polylines in plan (close a line by repeating its first point).
/// Units: metres, radians. Frame: the machine's, straight back is −x, left is +y. `limit` is the swing the machine allows to each
/// side, up to half a turn. Valid for: an arm held at one height; lines that hold an arm straight back
/// inside themselves without touching it do not count. Accuracy: closed form.
///
/// Contact comes where the arm's leading side meets a corner, or the corners at its ends meet an edge.
///
/// # Errors
/// A length not above zero, a negative width, a limit outside half a turn, or a number that is not finite.
///
/// # Source
/// Plane geometry; no standard. SAE J49 and J326 end their scope at 190° of swing in all.
///
/// # Examples
/// A post level with the swing centre stops a thin arm at a quarter turn.
/// ```
/// use fitup_core::dimension::{ArmPlan, swing_arc};
/// use fitup_core::plane::Point;
/// let arm = ArmPlan { centre: Point::new(-1.0, 0.0), length: 2.0, half_width: 0.0 };
/// let [left, right] = swing_arc(&arm, &[[Point::new(-1.0, 1.0)]], 1.6).unwrap();
/// assert!((left.angle.to_degrees() - 90.0).abs() < 1e-12);
/// assert_eq!((left.stop, right.stop), (Some(0), None));
/// ```
pub fn swing_arc<L: AsRef<[Point]>>(arm: &ArmPlan, lines: &[L], limit: f64) -> Result<[SwingReach; 2], InputError> {
    sound("swing-centre", arm.centre.x)?;
    sound("swing-centre", arm.centre.y)?;
    positive("length", arm.length)?;
    not_negative("half-width", arm.half_width)?;
    between("swing-limit", limit, 0.0, core::f64::consts::PI)?;
    sound_points("obstacle", lines)?;
    let side = |left: bool| {
        // Seen from the swing centre with straight back along the first axis and the side swung to above it.
        let seen = |p: &Point| {
            let from = *p - arm.centre;
            Point::new(-from.x, if left { from.y } else { -from.y })
        };
        let mut reach = SwingReach { angle: limit, stop: None };
        for (index, line) in lines.iter().map(AsRef::as_ref).enumerate() {
            let points: Vec<Point> = line.iter().map(seen).collect();
            let angle = first_contact(arm, &points);
            if angle <= reach.angle && reach.stop.is_none_or(|_| angle < reach.angle) {
                reach = SwingReach { angle, stop: Some(index) };
            }
        }
        reach
    };
    Ok([side(true), side(false)])
}

/// Angle at which the strip first meets the line, 0 when it does at once, infinite when never.
fn first_contact(arm: &ArmPlan, points: &[Point]) -> f64 {
    let outer = libm::hypot(arm.length, arm.half_width);
    let edges = || points.windows(2).map(|pair| (pair[0], pair[1]));
    if points.iter().any(|p| inside(arm, *p)) || edges().any(|(a, b)| crosses(arm, a, b)) {
        return 0.0;
    }
    let corners = points.iter().copied().filter(|p| p.norm() <= outer);
    let met = edges().flat_map(|(a, b)| {
        let rings = [outer, arm.half_width].map(|radius| Circle::new(Point::ORIGIN, radius).cut_line(a, b));
        rings
            .into_iter()
            .flatten()
            .flat_map(|(s, t)| [s, t])
            .filter(|t| (0.0..=1.0).contains(t))
            .map(move |t| a.lerp(b, t))
    });
    corners.chain(met).map(|p| contact(arm, p)).fold(f64::INFINITY, f64::min)
}

/// Turn of the strip at which its leading side, or its end at the centre, comes to a point.
fn contact(arm: &ArmPlan, p: Point) -> f64 {
    let lead = libm::asin((arm.half_width / p.norm()).min(1.0));
    let turn = libm::atan2(p.y, p.x) - lead;
    if turn < 0.0 { turn + 2.0 * core::f64::consts::PI } else { turn }
}

fn inside(arm: &ArmPlan, p: Point) -> bool {
    (0.0..=arm.length).contains(&p.x) && p.y.abs() <= arm.half_width
}

/// Whether an edge passes through the strip pointing straight back: the part of it between two sides still lies between the other two.
fn crosses(arm: &ArmPlan, a: Point, b: Point) -> bool {
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    let sides = [(a.x, b.x, 0.0, arm.length), (a.y, b.y, -arm.half_width, arm.half_width)];
    for (start, end, least, most) in sides {
        let run = end - start;
        if run == 0.0 {
            if start < least || start > most {
                return false;
            }
            continue;
        }
        let (enters, leaves) = ((least - start) / run, (most - start) / run);
        from = from.max(enters.min(leaves));
        to = to.min(enters.max(leaves));
    }
    from <= to
}

#[cfg(test)]
mod tests {
    use super::*;

    const ARM: ArmPlan = ArmPlan { centre: Point::new(-1.0, 0.0), length: 2.5, half_width: 0.15 };

    fn rectangle(x: (f64, f64), y: (f64, f64)) -> Vec<Point> {
        [(x.0, y.0), (x.1, y.0), (x.1, y.1), (x.0, y.1), (x.0, y.0)].map(Point::from).to_vec()
    }

    fn meets(arm: &ArmPlan, line: &[Point], turn: f64) -> bool {
        // The strip turned instead of the line, sampled along the line.
        line.windows(2).any(|pair| {
            (0..=2000).any(|i| {
                let from = pair[0].lerp(pair[1], f64::from(i) / 2000.0) - arm.centre;
                inside(arm, Point::new(-from.x, from.y).turned(Point::unit(-turn)))
            })
        })
    }

    #[test]
    fn a_tyre_on_the_left_stops_the_left_swing_where_it_touches() {
        let tyres = [
            rectangle((-0.4, 0.4), (0.5, 0.8)),
            rectangle((-1.9, -1.6), (0.9, 1.2)),
            rectangle((-3.6, -2.9), (0.8, 1.4)),
        ];
        for (index, tyre) in tyres.iter().enumerate() {
            let [left, right] = swing_arc(&ARM, std::slice::from_ref(tyre), 3.0).expect("sound");
            assert_eq!((left.stop, right.stop), (Some(0), None), "{index}");
            assert!((right.angle - 3.0).abs() < 1e-15);
            assert!(!meets(&ARM, tyre, left.angle - 0.003) && meets(&ARM, tyre, left.angle + 0.003), "{index}");
        }
        let [left, _] = swing_arc(&ARM, &tyres, 3.0).expect("sound");
        assert_eq!(left.stop, Some(2));
    }

    #[test]
    fn the_mirrored_yard_exchanges_the_sides() {
        let left = rectangle((-1.9, -1.6), (0.9, 1.2));
        let right: Vec<Point> = left.iter().map(|p| Point::new(p.x, -p.y)).collect();
        let [a, _] = swing_arc(&ARM, &[left], 3.0).expect("sound");
        let [_, b] = swing_arc(&ARM, &[right], 3.0).expect("sound");
        assert!((a.angle - b.angle).abs() < 1e-15 && a.stop == b.stop);
    }

    #[test]
    fn what_stands_behind_or_across_stops_it_at_once_and_what_is_far_never() {
        for line in [vec![Point::new(-2.0, 0.1)], vec![Point::new(-2.0, -1.0), Point::new(-2.2, 1.0)]] {
            let [left, right] = swing_arc(&ARM, &[line], 1.0).expect("sound");
            assert!(left.angle.abs() < 1e-300 && right.angle.abs() < 1e-300);
        }
        let far = rectangle((3.0, 4.0), (-2.0, 2.0));
        let [left, right] = swing_arc(&ARM, &[far], 3.1).expect("sound");
        assert_eq!((left.stop, right.stop), (None, None));
        let [left, _] = swing_arc::<Vec<Point>>(&ARM, &[], 1.0).expect("sound");
        assert_eq!(left, SwingReach { angle: 1.0, stop: None });
    }

    #[test]
    fn a_wall_longer_than_the_arm_is_met_by_the_arms_corner() {
        let wall = vec![Point::new(-9.0, 2.0), Point::new(9.0, 2.0)];
        let [left, _] = swing_arc(&ARM, std::slice::from_ref(&wall), 3.0).expect("sound");
        // The outer corner comes 2 m out: length sin a + half width cos a = 2.
        assert!((2.5 * libm::sin(left.angle) + 0.15 * libm::cos(left.angle) - 2.0).abs() < 1e-12);
    }

    #[test]
    fn a_wall_close_to_the_centre_is_met_by_the_inner_end() {
        let wall = vec![Point::new(-0.9, -0.1), Point::new(-0.9, 0.1)];
        let [left, right] = swing_arc(&ARM, std::slice::from_ref(&wall), 3.0).expect("sound");
        assert!(!meets(&ARM, &wall, left.angle - 0.003) && meets(&ARM, &wall, left.angle + 0.003));
        assert!((left.angle - right.angle).abs() < 1e-12);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let post = [[Point::new(0.0, 1.0)]];
        let what = |arm: ArmPlan, limit| swing_arc(&arm, &post, limit).expect_err("unsound").what;
        assert_eq!(what(ArmPlan { centre: Point::new(f64::NAN, 0.0), ..ARM }, 1.0), "swing-centre");
        assert_eq!(what(ArmPlan { centre: Point::new(0.0, f64::NAN), ..ARM }, 1.0), "swing-centre");
        assert_eq!(what(ArmPlan { length: 0.0, ..ARM }, 1.0), "length");
        assert_eq!(what(ArmPlan { half_width: -0.1, ..ARM }, 1.0), "half-width");
        assert_eq!(what(ARM, 3.2), "swing-limit");
        let bad = [[Point::new(f64::NAN, 1.0)]];
        assert_eq!(swing_arc(&ARM, &bad, 1.0).expect_err("unsound").what, "obstacle");
    }
}
