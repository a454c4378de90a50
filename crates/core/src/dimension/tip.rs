//! Static tip angles: how far the ground may lean before the standing machine tips.

use super::input::{InputError, not_negative, positive, sound};
use super::moment::{span, without_rounding};

/// What the machine stands on and where it balances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stance {
    /// Distance between the rear tyres' contacts, metres.
    pub rear_track: f64,
    /// Wheelbase, metres.
    pub wheelbase: f64,
    /// How the front axle holds the machine up.
    pub front: FrontSupport,
    /// Centre of gravity (x, y, z) of what tips, metres. The mass of an axle that swings freely is no part of it.
    pub centre: [f64; 3],
}

/// How the front axle holds the machine up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FrontSupport {
    /// Rigid: each front tyre's contact is a support.
    Fixed {
        /// Distance between the front tyres' contacts, metres.
        track: f64,
    },
    /// Swinging about a pin along x in the middle: the pin is the one front support against rolling.
    Pivot {
        /// Height of the pin, metres.
        height: f64,
    },
}

/// One of the four edges the machine can tip over, and the way it faces.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum TipEdge {
    /// Over the line of the rear tyres' contacts, uphill.
    Rear,
    /// Over the line from the left front support to the left rear one.
    Left,
    /// Over the line from the right rear support to the right front one.
    Right,
    /// Over the line of the front tyres' contacts, downhill.
    Front,
}

impl TipEdge {
    /// Every side.
    pub const ALL: [Self; 4] = [Self::Rear, Self::Left, Self::Right, Self::Front];

    /// Unit direction in plan that faces this side.
    fn facing(self) -> [f64; 2] {
        match self {
            Self::Rear => [-1.0, 0.0],
            Self::Left => [0.0, 1.0],
            Self::Right => [0.0, -1.0],
            Self::Front => [1.0, 0.0],
        }
    }
}

/// The three angles of one edge, radians. For a level edge square to the slope they are one number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EdgeAngles {
    /// Least ground slope, over every direction it may fall in, at which the machine tips over this edge;
    /// negative when it does so on level ground.
    pub least: f64,
    /// Ground slope falling straight to the edge's own side at which it tips; `None` when it never tips that way.
    pub own_slope: Option<f64>,
    /// Turn of the body about the edge until its centre of gravity stands straight above it. Not a slope of
    /// the ground: for an inclined edge it is larger than the other two.
    pub rotation: f64,
}

/// Static tip angles of a standing machine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TipAngles {
    edges: [EdgeAngles; 4],
    slopes: [Option<f64>; 4],
    /// Whether the centre of gravity lies inside every edge on level ground, none of them just under it.
    pub stable_on_level: bool,
}

impl TipAngles {
    /// The angles of one edge.
    pub fn edge(&self, side: TipEdge) -> EdgeAngles {
        self.edges[side as usize]
    }

    /// Least slope of ground falling straight to `side` at which the machine tips over whichever edge comes
    /// first, radians; `None` when it does not stand on level ground, or never tips that way.
    pub fn slope(&self, side: TipEdge) -> Option<f64> {
        self.slopes[side as usize]
    }

    /// Least ground slope of all directions and edges, radians; negative when the machine tips on level ground.
    pub fn least(&self) -> f64 {
        self.edges.iter().fold(f64::INFINITY, |least, edge| least.min(edge.least))
    }
}

/// Static tip angles over the rear, the sides and the front.
///
/// Shape: a rigid body on its tyres' contacts; a front axle on a pivot holds against rolling at its pin alone,
/// and against pitching at its contacts. Units: metres, radians. Frame: the machine's. Valid for: standing still; the
/// axle's stops, soft tyres and soft ground, slipping and every motion are left out, each of which can tip a machine
/// earlier. Accuracy: closed form, rounding only.
///
/// With an edge's unit direction e, A on it and the centre of gravity C, n = e × (C − A). Ground leaning by b
/// downhill along u has gravity along sin b · u − cos b · k in the body; the machine tips when that lies in
/// the plane of edge and C: tan b = n·k / n·u, least over every u sin b = n·k / |n|.
///
/// # Errors
/// A track or wheelbase not above zero, a height below the ground, or a number that is not finite.
///
/// # Source
/// Statics of a rigid body on a polygon of supports. ISO 16231-2:2015 has the same static overturning angle for its
/// subject; measured angles of a small tractor were found 2.4 to 4.0 % larger than calculated ones (Slovak University of
/// Agriculture, Applied Sciences 2021, 11(1), 381).
///
/// # Examples
/// A centre of gravity as high as it is ahead of the rear axle, and as high as half the track.
/// ```
/// use fitup_core::dimension::{FrontSupport, TipEdge, Stance, tip_angles};
/// let stance = Stance {
///     rear_track: 1.2,
///     wheelbase: 1.5,
///     front: FrontSupport::Fixed { track: 1.2 },
///     centre: [0.6, 0.0, 0.6],
/// };
/// let found = tip_angles(&stance).unwrap();
/// assert!((found.slope(TipEdge::Rear).unwrap().to_degrees() - 45.0).abs() < 1e-12);
/// assert!((found.edge(TipEdge::Left).least.to_degrees() - 45.0).abs() < 1e-12);
/// ```
pub fn tip_angles(stance: &Stance) -> Result<TipAngles, InputError> {
    positive("rear-track", stance.rear_track)?;
    span("wheelbase", stance.wheelbase)?;
    match stance.front {
        FrontSupport::Fixed { track } => positive("front-track", track)?,
        FrontSupport::Pivot { height } => not_negative("pivot-height", height)?,
    };
    let [x, y, z] = stance.centre;
    sound("centre-x", x)?;
    sound("centre-y", y)?;
    not_negative("centre-z", z)?;

    let normals = TipEdge::ALL.map(|side| edge(stance, side));
    let edges = core::array::from_fn(|at| {
        let Edge { normal: [nx, ny, nz], height } = normals[at];
        EdgeAngles {
            least: libm::atan2(nz, libm::hypot(nx, ny)),
            own_slope: slope(normals[at].normal, TipEdge::ALL[at]),
            rotation: libm::atan2(nz, height),
        }
    });
    let stable_on_level = normals.iter().all(|edge| edge.normal[2] > 0.0);
    let slopes = TipEdge::ALL.map(|to| {
        let over = |edge: &Edge| slope(edge.normal, to);
        if stable_on_level { normals.iter().filter_map(over).min_by(f64::total_cmp) } else { None }
    });
    Ok(TipAngles { edges, slopes, stable_on_level })
}

/// An edge as the centre of gravity sees it.
struct Edge {
    /// Edge direction × arm to the centre of gravity.
    normal: [f64; 3],
    /// Height of the centre of gravity over the nearest point of the edge.
    height: f64,
}

fn edge(stance: &Stance, side: TipEdge) -> Edge {
    let (rear, w) = (stance.rear_track / 2.0, stance.wheelbase);
    let (front, height) = match stance.front {
        FrontSupport::Fixed { track } => (track / 2.0, 0.0),
        FrontSupport::Pivot { height } => (0.0, height),
    };
    // Both level edges run along y whatever the tracks, so that any point of their line will do.
    let (from, to) = match side {
        TipEdge::Rear => ([0.0, rear, 0.0], [0.0, -rear, 0.0]),
        TipEdge::Right => ([0.0, -rear, 0.0], [w, -front, height]),
        TipEdge::Front => ([w, -rear, 0.0], [w, rear, 0.0]),
        TipEdge::Left => ([w, front, height], [0.0, rear, 0.0]),
    };
    let along: [f64; 3] = core::array::from_fn(|i| to[i] - from[i]);
    let length = dot(along, along).sqrt();
    let e = along.map(|part| part / length);
    let arm: [f64; 3] = core::array::from_fn(|i| stance.centre[i] - from[i]);
    let run = dot(arm, e);
    // Each part is a difference of these places: a balance exact on paper stays exact.
    let part = |value| without_rounding(value, stance.centre.into_iter().chain(from));
    Edge {
        normal: [
            part(e[1] * arm[2] - e[2] * arm[1]),
            part(e[2] * arm[0] - e[0] * arm[2]),
            part(e[0] * arm[1] - e[1] * arm[0]),
        ],
        height: part(arm[2] - run * e[2]),
    }
}

/// Ground slope falling straight to a side at which the edge with this normal gives way.
fn slope(normal: [f64; 3], to: TipEdge) -> Option<f64> {
    let [ux, uy] = to.facing();
    let outward = normal[0] * ux + normal[1] * uy;
    (outward > 0.0).then(|| libm::atan(normal[2] / outward))
}

fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

#[cfg(test)]
#[expect(clippy::float_cmp, reason = "exact values are what is asserted")]
mod tests {
    use super::*;

    const FIXED: Stance =
        Stance { rear_track: 1.0, wheelbase: 1.5, front: FrontSupport::Fixed { track: 1.0 }, centre: [0.6, 0.0, 0.6] };

    fn of(stance: Stance) -> TipAngles {
        tip_angles(&stance).expect("sound")
    }

    fn near(a: f64, degrees: f64) {
        assert!((a.to_degrees() - degrees).abs() < 1e-9, "{} against {degrees}", a.to_degrees());
    }

    #[test]
    fn a_level_edge_has_one_angle_in_three_forms() {
        let edge = of(FIXED).edge(TipEdge::Front);
        let expected = libm::atan(0.9 / 0.6).to_degrees();
        near(edge.least, expected);
        near(edge.own_slope.expect("tips"), expected);
        near(edge.rotation, expected);
    }

    #[test]
    fn an_inclined_edge_has_three() {
        let found = of(Stance { front: FrontSupport::Pivot { height: 0.4 }, ..FIXED });
        let edge = found.edge(TipEdge::Left);
        near(edge.own_slope.expect("tips"), libm::atan(0.5 * (1.0 - 0.4) / (0.6 - 0.4 * 0.4)).to_degrees());
        assert!(edge.least < edge.own_slope.expect("tips") && edge.own_slope.expect("tips") < edge.rotation);
        assert_eq!(found.least().to_bits(), edge.least.to_bits());
    }

    #[test]
    fn a_centre_outside_the_base_is_not_stable_and_has_no_slopes() {
        let found = of(Stance { centre: [-0.1, 0.0, 0.6], ..FIXED });
        assert!(!found.stable_on_level && found.edge(TipEdge::Rear).least < 0.0);
        assert!(TipEdge::ALL.iter().all(|&side| found.slope(side).is_none()));
        assert!(found.edge(TipEdge::Rear).own_slope.expect("tips that way") < 0.0);
        assert!(found.least() < 0.0);
    }

    #[test]
    fn a_centre_just_above_an_edge_is_not_stable() {
        assert!(!of(Stance { centre: [0.0, 0.0, 0.6], ..FIXED }).stable_on_level);
        assert!(!of(Stance { centre: [0.6, 0.5, 0.6], ..FIXED }).stable_on_level);
        let pivot = Stance { front: FrontSupport::Pivot { height: 0.4 }, wheelbase: 1.8, ..FIXED };
        let found = of(Stance { centre: [0.6, 0.5 * (1.0 - 0.6 / 1.8), 0.7], ..pivot });
        assert!(!found.stable_on_level);
        assert_eq!(found.edge(TipEdge::Left).least, 0.0);
    }

    #[test]
    fn a_centre_to_the_left_tips_left_first() {
        let found = of(Stance { centre: [0.6, 0.1, 0.6], ..FIXED });
        near(found.slope(TipEdge::Left).expect("tips"), libm::atan(0.4 / 0.6).to_degrees());
        near(found.slope(TipEdge::Right).expect("tips"), libm::atan(1.0).to_degrees());
    }

    #[test]
    fn a_centre_below_the_roll_edge_never_tips_over_it() {
        let low = Stance { front: FrontSupport::Pivot { height: 1.2 }, centre: [1.0, 0.0, 0.1], ..FIXED };
        let edge = of(low).edge(TipEdge::Left);
        assert_eq!(edge.own_slope, None);
        assert!(edge.rotation > core::f64::consts::FRAC_PI_2);
    }

    #[test]
    fn a_centre_on_the_ground_never_tips_on_a_straight_slope() {
        let found = of(Stance { centre: [0.6, 0.0, 0.0], ..FIXED });
        assert_eq!(found.slope(TipEdge::Left), None);
        near(found.least(), 90.0);
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |stance: Stance| tip_angles(&stance).expect_err("unsound").what;
        assert_eq!(what(Stance { rear_track: 0.0, ..FIXED }), "rear-track");
        assert_eq!(what(Stance { wheelbase: -1.0, ..FIXED }), "wheelbase");
        assert_eq!(what(Stance { front: FrontSupport::Fixed { track: 0.0 }, ..FIXED }), "front-track");
        assert_eq!(what(Stance { front: FrontSupport::Pivot { height: -0.1 }, ..FIXED }), "pivot-height");
        assert_eq!(what(Stance { centre: [0.6, f64::NAN, 0.6], ..FIXED }), "centre-y");
        assert_eq!(what(Stance { centre: [0.6, 0.0, -0.6], ..FIXED }), "centre-z");
    }
}
