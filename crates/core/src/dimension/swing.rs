//! Swing-out, swept path, and the narrowest corridor and gateway the machine turns through.

use super::input::{Fault, InputError, not_negative, sound};
use crate::plane::Point;

/// A rectangle of the footprint in plan, symmetric about the machine's middle line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    /// x of its rear edge, metres from the rear axle.
    pub rear: f64,
    /// x of its front edge, metres from the rear axle.
    pub front: f64,
    /// Half its width, metres.
    pub half_width: f64,
}

/// What a turn sweeps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swing {
    /// Greatest distance of the footprint from the turn centre, metres.
    pub outer_radius: f64,
    /// Least distance of the footprint from the turn centre, metres; 0 when it covers the centre.
    pub inner_radius: f64,
    /// Greatest radius of an outer corner at or behind the rear axle; `None` when there is none.
    pub rear_corner_radius: Option<f64>,
    /// Greatest radius of an outer corner ahead of the rear axle; `None` when there is none.
    pub front_corner_radius: Option<f64>,
    /// How far a rear outer corner leaves the straight track of the widest part, metres.
    pub swing_out: f64,
    /// Right-angled corridor; `None` when the turn centre lies under the machine or a second block
    /// wider than the body makes the inner side no circle.
    pub corridor: Option<Corridor>,
}

impl Swing {
    /// Width of the ring the turn sweeps, metres.
    pub fn swept_width(&self) -> f64 {
        self.outer_radius - self.inner_radius
    }
}

/// Two corridors that meet at a right angle with sharp corners, driven straight in, through a
/// quarter turn about one centre, and straight out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corridor {
    /// Extent from the turn centre to the outer side of the corridor driven in, metres.
    pub entry_extent: f64,
    /// Extent from the turn centre to the outer side of the corridor driven out, metres.
    pub exit_extent: f64,
    /// Radius of the circle the inner corner may not enter, metres.
    pub inner_radius: f64,
}

impl Corridor {
    /// Least width of two equally wide corridors, metres.
    ///
    /// The inner corner sits on the inner circle at an angle φ from 0 to 90°; what is left of the
    /// entry extent falls with φ, what is left of the exit extent grows: the least greater of the
    /// two lies where they are equal, or at an end.
    pub fn width(&self) -> f64 {
        let quarter = core::f64::consts::FRAC_PI_4;
        let phi = if self.inner_radius > 0.0 {
            let share = (self.entry_extent - self.exit_extent) / (self.inner_radius * core::f64::consts::SQRT_2);
            quarter + libm::asin(share.clamp(-1.0, 1.0))
        } else {
            0.0
        };
        let (sin, cos) = libm::sincos(phi.max(0.0).min(2.0 * quarter));
        (self.entry_extent - self.inner_radius * sin).max(self.exit_extent - self.inner_radius * cos)
    }

    /// Least width of a gateway at right angles to a lane of width `lane`, metres: the corridor driven
    /// out may be that narrow when the one driven in is that wide. `None` when the lane is too narrow for any gateway.
    ///
    /// # Examples
    /// A lane as wide as the whole entry extent leaves the gateway to the straight ring.
    /// ```
    /// use fitup_core::dimension::Corridor;
    /// let corridor = Corridor { entry_extent: 3.3, exit_extent: 3.7, inner_radius: 1.9 };
    /// assert!((corridor.gateway(3.3).unwrap() - 1.8).abs() < 1e-12);
    /// assert_eq!(corridor.gateway(1.3), None);
    /// ```
    pub fn gateway(&self, lane: f64) -> Option<f64> {
        let least = self.entry_extent - self.inner_radius;
        if lane < least || lane.is_nan() {
            return None;
        }
        let over = (self.entry_extent - lane).max(0.0);
        Some(self.exit_extent - ((self.inner_radius - over) * (self.inner_radius + over)).max(0.0).sqrt())
    }
}

/// What a left turn about the point (0, `radius`) sweeps, starting at once from straight driving.
///
/// Shape: `body` is the machine's block over the rear axle (rear edge at or behind the axle, front
/// edge at or ahead of it); `second` is one more, such as an implement. `heading` is how far the turn
/// goes on, `None` for far enough that the corner reaches its lowest point. Units: metres,
/// radians. Frame: plan, the machine's. Valid for: no slip at the rear axle, radius 0 or above.
/// Accuracy: closed form, rounding only.
///
/// The outer corner (x, y) behind the axle runs on the circle of radius ρ = √(x² + (R + y)²); it
/// swings out by ρ less the straight track R + the greatest half width, reached after a turn of atan(|x| / (R + y)).
///
/// # Errors
/// A negative radius, half width or heading, a body that does not reach the axle from both sides,
/// a block whose rear edge lies ahead of its front edge, or a number that is not finite.
///
/// # Source
/// Plane kinematics of a turn about the rear axle's line; no standard.
///
/// # Examples
/// A corner 4 m behind the axle and 1 m out, turning about a centre 2 m aside: ρ = √(4² + 3²) = 5,
/// 2 m beyond the straight track of 3 m.
/// ```
/// use fitup_core::dimension::{Block, swing};
/// let body = Block { rear: -4.0, front: 2.0, half_width: 1.0 };
/// let swept = swing(2.0, None, body, None).unwrap();
/// assert_eq!(swept.swing_out, 2.0);
/// assert_eq!((swept.outer_radius, swept.inner_radius), (5.0, 1.0));
/// ```
pub fn swing(radius: f64, heading: Option<f64>, body: Block, second: Option<Block>) -> Result<Swing, InputError> {
    not_negative("turn-radius", radius)?;
    let heading = heading.map(|heading| not_negative("turn", heading)).transpose()?;
    sound("rear-overhang", body.rear)?;
    not_negative("rear-overhang", -body.rear)?;
    not_negative("front-extent", body.front)?;
    not_negative("half-width", body.half_width)?;
    if let Some(block) = second {
        sound("second-rear", block.rear)?;
        sound("second-front", block.front)?;
        not_negative("second-half-width", block.half_width)?;
        if block.rear > block.front {
            return Err(InputError { what: "second-rear", fault: Fault::Unordered });
        }
    }
    let blocks: Vec<Block> = [Some(body), second].into_iter().flatten().collect();
    let greatest =
        |values: &mut dyn Iterator<Item = f64>| values.fold(None, |m: Option<f64>, v| Some(m.map_or(v, |m| m.max(v))));
    let corners: Vec<Point> =
        blocks.iter().flat_map(|b| [Point::new(b.rear, b.half_width), Point::new(b.front, b.half_width)]).collect();
    let out = |corner: &Point| libm::hypot(corner.x, radius + corner.y);
    let rear = greatest(&mut corners.iter().filter(|c| c.x <= 0.0).map(out));
    let front = greatest(&mut corners.iter().filter(|c| c.x > 0.0).map(out));
    let half = greatest(&mut blocks.iter().map(|b| b.half_width)).unwrap_or(0.0);
    let reach = greatest(&mut corners.iter().filter(|c| c.x < 0.0).map(|c| lowest_reach(*c, radius, heading)));
    Ok(Swing {
        outer_radius: rear.unwrap_or(0.0).max(front.unwrap_or(0.0)),
        inner_radius: blocks.iter().map(|b| nearest(*b, radius)).fold(f64::INFINITY, f64::min),
        rear_corner_radius: rear,
        front_corner_radius: front,
        swing_out: reach.map_or(0.0, |reach| (reach - radius - half).max(0.0)),
        corridor: corridor(radius, &blocks, rear, front),
    })
}

/// Where a point of the footprint stands after turning left by `heading` about (0, `radius`).
///
/// Units: metres, radians. Frame: plan, of the machine before the turn.
///
/// # Examples
/// ```
/// use fitup_core::dimension::turned;
/// use fitup_core::plane::Point;
/// let after = turned(Point::new(0.0, 0.0), 2.0, std::f64::consts::FRAC_PI_2);
/// assert!(after.distance(Point::new(2.0, 2.0)) < 1e-15);
/// ```
pub fn turned(point: Point, radius: f64, heading: f64) -> Point {
    let centre = Point::new(0.0, radius);
    centre + (point - centre).turned(Point::unit(heading))
}

/// How far right of the turn centre's parallel a corner behind the axle comes at most.
fn lowest_reach(corner: Point, radius: f64, heading: Option<f64>) -> f64 {
    let aside = radius + corner.y;
    let rho = libm::hypot(corner.x, aside);
    let lowest = libm::atan2(-corner.x, aside);
    match heading {
        Some(heading) if heading < lowest => rho * libm::cos(lowest - heading),
        _ => rho,
    }
}

/// Least distance of a block from the turn centre.
fn nearest(block: Block, radius: f64) -> f64 {
    let along = block.rear.max(-block.front).max(0.0);
    let aside = (radius - block.half_width).max(0.0);
    libm::hypot(along, aside)
}

fn corridor(radius: f64, blocks: &[Block], rear: Option<f64>, front: Option<f64>) -> Option<Corridor> {
    let body = blocks.first()?;
    let inner_radius = radius - body.half_width;
    if inner_radius < 0.0 || blocks.iter().any(|block| block.half_width > body.half_width) {
        return None;
    }
    // A body that ends at the axle leaves its straight track as the extent.
    let track = radius + body.half_width;
    Some(Corridor {
        entry_extent: rear.unwrap_or(track).max(track),
        exit_extent: front.unwrap_or(track).max(track),
        inner_radius,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const BODY: Block = Block { rear: -1.2, front: 2.0, half_width: 0.6 };

    fn near(a: f64, b: f64) {
        assert!((a - b).abs() < 1e-12, "{a} against {b}");
    }

    fn of(radius: f64, body: Block, second: Option<Block>) -> Swing {
        swing(radius, None, body, second).expect("sound")
    }

    #[test]
    fn no_overhang_swings_nowhere() {
        let swept = of(2.5, Block { rear: 0.0, ..BODY }, None);
        near(swept.swing_out, 0.0);
        near(swept.rear_corner_radius.expect("at the axle"), 3.1);
    }

    #[test]
    fn a_tail_narrower_than_the_body_swings_less_and_a_hidden_one_not_at_all() {
        let body = Block { rear: -0.3, ..BODY };
        let tail = Block { rear: -1.2, front: -0.3, half_width: 0.6 };
        let same = of(2.5, body, Some(tail)).swing_out;
        near(same, of(2.5, BODY, None).swing_out);
        let narrow = of(2.5, body, Some(Block { half_width: 0.4, ..tail })).swing_out;
        assert!(narrow < same && narrow > 0.0);
        near(of(2.5, Block { rear: 0.0, ..BODY }, Some(Block { half_width: 0.1, ..tail })).swing_out, 0.0);
    }

    #[test]
    fn a_short_turn_swings_out_by_where_the_corner_then_stands() {
        let heading = 0.1;
        let swept = swing(2.5, Some(heading), BODY, None).expect("sound");
        let corner = turned(Point::new(-1.2, -0.6), 2.5, heading);
        near(swept.swing_out, -corner.y - 0.6);
        // Turning on beyond the lowest point changes nothing more.
        near(swing(2.5, Some(3.0), BODY, None).expect("sound").swing_out, of(2.5, BODY, None).swing_out);
        near(swing(2.5, Some(0.0), BODY, None).expect("sound").swing_out, 0.0);
    }

    #[test]
    fn the_inner_radius_is_a_side_point_a_corner_or_nothing() {
        near(of(2.5, BODY, None).inner_radius, 1.9);
        near(of(0.5, BODY, None).inner_radius, 0.0);
        near(of(0.0, BODY, None).inner_radius, 0.0);
        // A wide plate far behind comes nearest with its front corner.
        let plate = Block { rear: -0.5, front: -0.3, half_width: 2.1 };
        near(of(2.5, BODY, Some(plate)).inner_radius, 0.5);
        let bucket = Block { rear: 1.2, front: 1.5, half_width: 1.6 };
        near(of(2.5, Block { front: 1.2, ..BODY }, Some(bucket)).inner_radius, 1.5);
    }

    #[test]
    fn the_corridor_lies_between_straight_width_and_the_whole_extent() {
        let swept = of(2.5, BODY, None);
        let corridor = swept.corridor.expect("turns about a point beside it");
        assert!(corridor.width() > 1.2 && corridor.width() < corridor.exit_extent);
        // At the width found, each corridor is just wide enough for the other.
        near(corridor.gateway(corridor.width()).expect("wide enough"), corridor.width());
        assert_eq!(of(0.5, BODY, None).corridor, None);
        let wide = Block { rear: -0.5, front: -0.3, half_width: 0.7 };
        assert_eq!(of(2.5, BODY, Some(wide)).corridor, None);
        assert_eq!(corridor.gateway(f64::NAN), None);
    }

    #[test]
    fn a_turn_about_the_machines_own_side_needs_the_longer_extent() {
        let corridor = of(0.6, BODY, None).corridor.expect("just beside it");
        near(corridor.width(), libm::hypot(2.0, 1.2));
    }

    #[test]
    fn very_unequal_ends_put_the_inner_corner_at_an_end_of_its_circle() {
        let long = of(1.0, Block { rear: 0.0, front: 9.0, half_width: 0.5 }, None).corridor.expect("beside it");
        near(long.width(), long.exit_extent - long.inner_radius);
        let tail = of(1.0, Block { rear: -9.0, front: 0.0, half_width: 0.5 }, None).corridor.expect("beside it");
        near(tail.width(), tail.entry_extent - tail.inner_radius);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |radius, heading, body, second| swing(radius, heading, body, second).expect_err("unsound").what;
        assert_eq!(what(-1.0, None, BODY, None), "turn-radius");
        assert_eq!(what(f64::NAN, None, BODY, None), "turn-radius");
        assert_eq!(what(1.0, Some(-0.1), BODY, None), "turn");
        assert_eq!(what(1.0, None, Block { rear: 0.1, ..BODY }, None), "rear-overhang");
        assert_eq!(what(1.0, None, Block { rear: f64::NAN, ..BODY }, None), "rear-overhang");
        assert_eq!(what(1.0, None, Block { front: -0.1, ..BODY }, None), "front-extent");
        assert_eq!(what(1.0, None, Block { half_width: -0.1, ..BODY }, None), "half-width");
        let second = |rear, front, half_width| Some(Block { rear, front, half_width });
        assert_eq!(what(1.0, None, BODY, second(1.0, 0.5, 0.1)), "second-rear");
        assert_eq!(what(1.0, None, BODY, second(f64::NAN, 0.5, 0.1)), "second-rear");
        assert_eq!(what(1.0, None, BODY, second(0.0, f64::INFINITY, 0.1)), "second-front");
        assert_eq!(what(1.0, None, BODY, second(0.0, 0.5, -0.1)), "second-half-width");
    }
}
