//! Published and worked values of the angles, the arm, the turn and the steering, each with its source.
//!
//! Worked examples were each computed by two independent routes before any of this code existed; the
//! second route is named beside them.

#![allow(clippy::disallowed_methods, reason = "a second way uses the platform's own functions")]

use fitup_core::dimension::{
    Block, DiggingArm, EndWheel, Facing, Ramp, Rider, Swivel, Wheels, approach, attitude, breakover, departure,
    digging, ramp_corners, ramp_roll, steering, swing,
};
use fitup_core::plane::Point;
use fitup_tests::published::rel;

/// Points behind an axle at x = 0, given rearward and up.
fn behind(points: &[(f64, f64)]) -> Vec<Point> {
    points.iter().map(|&(d, z)| Point::new(-d, z)).collect()
}

/// 49 CFR 523.2 (2015 annual edition; 77 FR 63187, 78 FR 36401): departure angle from the static loaded radius arc.
/// Values: worked examples 1 to 4; second way bisection with a half-plane, third 2,000,001 sampled tangents.
#[test]
fn departure_angle_worked_examples() {
    type Example = (&'static str, f64, &'static [(f64, f64)], f64, f64, (f64, f64));
    let examples: [Example; 4] = [
        ("s01.departure.ex1", 0.6, &[(1.2, 0.4)], 20.088_603_9, 18.434_948_8, (1.2, 0.4)),
        (
            "s01.departure.ex2",
            0.45,
            &[(0.7, 0.55), (1.1, 0.38), (1.65, 0.42), (1.9, 0.8)],
            14.782_309_5,
            14.281_095_7,
            (1.65, 0.42),
        ),
        (
            "s01.departure.ex3",
            0.305,
            &[(0.45, 0.4), (0.8, 0.3), (1.3, 0.25), (1.75, 0.36)],
            11.133_985_5,
            10.885_527_1,
            (1.3, 0.25),
        ),
        ("s01.departure.ex4", 0.4, &[(0.9, 0.65)], 40.879_406_4, 35.837_653, (0.9, 0.65)),
    ];
    for (id, radius, points, angle, shortcut, critical) in examples {
        let found = departure(EndWheel { axle: 0.0, radius }, &[behind(points)]).expect("sound").expect("limits");
        rel(id, found.angle.to_degrees(), angle, 1e-6);
        assert_eq!(found.point, Point::new(-critical.0, critical.1), "{id}");
        // The shortcut from the contact point, atan(z / d), is another and smaller number.
        let contact = points.iter().map(|(d, z)| z.atan2(*d)).fold(f64::INFINITY, f64::min);
        rel(&format!("{id}.contact_point"), contact.to_degrees(), shortcut, 1e-6);
        assert!(contact < found.angle);
        // Definition of the approach angle: the same in front (s01.def.approach).
        let front: Vec<Point> = points.iter().map(|&(d, z)| Point::new(1.7 + d, z)).collect();
        let mirrored = approach(EndWheel { axle: 1.7, radius }, &[front]).expect("sound").expect("limits");
        rel("s01.def.approach", mirrored.angle.to_degrees(), angle, 1e-6);
    }
}

/// `s01.departure.prop.zero_height` and `s01.departure.prop.r_to_zero`: limits of the same formula.
#[test]
fn departure_angle_limits() {
    let at = |radius, d: f64, z: f64| {
        let found = departure(EndWheel { axle: 0.0, radius }, &[behind(&[(d, z)])]).expect("sound");
        found.expect("limits").angle.to_degrees()
    };
    assert!(at(0.6, 1.2, 0.0).abs() < 1e-12);
    rel("s01.departure.prop.r_to_zero", at(1e-9, 1.2, 0.4), 18.434_948_8, 1e-5);
}

/// `s01.def.slr_arc` (49 CFR 523.2): the arc touches the ground under the wheel centre; `s01.def.eu_departure` (EU wording
/// of ISO 612): the largest angle with nothing below the plane is the same number.
#[test]
fn departure_angle_definitions_agree() {
    let points = [(0.7, 0.55), (1.1, 0.38), (1.65, 0.42), (1.9, 0.8)];
    let (r, found) = (0.45, departure(EndWheel { axle: 0.0, radius: 0.45 }, &[behind(&points)]).expect("sound"));
    let angle = found.expect("limits").angle;
    let lowest = |a: f64| {
        // Height above the plane tangent to the arc at angle a.
        let over = |(d, z): (f64, f64)| (z - r) * a.cos() - d * a.sin() + r;
        points.iter().copied().map(over).fold(f64::INFINITY, f64::min)
    };
    assert!(lowest(angle).abs() < 1e-12 && lowest(angle - 1e-6) > 0.0 && lowest(angle + 1e-6) < 0.0);
}

/// 49 CFR 523.2, breakover angle. Worked examples 1 and 2: flat bellies; second way 2,000,001 samples.
#[test]
fn breakover_angle_worked_examples() {
    let flat = |wheels: Wheels, z: f64| {
        let belly = [Point::new(0.0, z), Point::new(wheels.wheelbase, z)];
        breakover(wheels, &[belly]).expect("sound").expect("limits")
    };
    let one = flat(Wheels { rear: 0.4, front: 0.4, wheelbase: 1.8 }, 0.35);
    rel("s01.breakover.ex1", one.angle.to_degrees(), 46.328_422_2, 1e-6);
    assert!((one.point.x - 0.9).abs() < 1e-5);
    let two = flat(Wheels { rear: 0.46, front: 0.3, wheelbase: 1.65 }, 0.32);
    rel("s01.breakover.ex2", two.angle.to_degrees(), 46.371_063_7, 1e-6);
    assert!((two.point.x - 0.849_447).abs() < 1e-5);
    // s01.def.breakover: the supplement of the widest angle the two lines make.
    rel("s01.def.breakover", two.angle, two.rear_part + two.front_part, 1e-15);
}

fn deg(least: f64, greatest: f64) -> Swivel {
    Swivel { least: least.to_radians(), greatest: greatest.to_radians() }
}

/// Boom 1.8 m and dipper 1.2 m from a pivot 0.9 m up, no bucket.
fn two_links(boom: Swivel, dipper: Swivel) -> DiggingArm {
    DiggingArm {
        foot: Point::new(0.0, 0.9),
        boom: 1.8,
        dipper: 1.2,
        bucket: 0.0,
        boom_elevation: boom,
        dipper_relative: dipper,
        bucket_relative: deg(0.0, 0.0),
    }
}

/// `s14.arm`: two free links; second ways a root finder and a robotics text's annulus |L1 − L2| to L1 + L2.
#[test]
fn free_two_link_arm() {
    let any = deg(-180.0, 180.0);
    let found = digging(&two_links(any, any), None).expect("sound");
    rel("s14.arm.ground", found.reach_at_ground.expect("reaches the ground"), 2.861_817_6, 1e-6);
    rel("s14.arm.annulus outer", found.height - 0.9, 3.0, 1e-9);
    rel("s14.arm.annulus outer", found.depth + 0.9, 3.0, 1e-9);
    let least = found.edge.iter().map(|arc| arc.circle.radius).fold(f64::INFINITY, f64::min);
    rel("s14.arm.annulus inner", least, 0.6, 1e-9);
}

/// `s14.ik`: the target (2.2, −0.8) from the pivot, elbow up; second way a numerical solver.
#[test]
fn two_link_attitude() {
    let arm = two_links(deg(-180.0, 180.0), deg(-170.0, 0.0));
    let tip = Point::new(2.2, 0.1);
    let found = attitude(&arm, tip).expect("sound").expect("within reach");
    rel("s14.ik.boom", found.boom.to_degrees(), 10.265_185_7, 1e-6);
    rel("s14.ik.stick", found.dipper.to_degrees(), -79.328_070_7, 1e-6);
    rel("s14.ik.included", 180.0 - found.dipper.to_degrees().abs(), 100.671_929, 1e-6);
    assert!(found.tip(&arm).distance(tip) < 1e-12);
    // Elbow down gives the same radius.
    let down = two_links(deg(-180.0, 180.0), deg(0.0, 170.0));
    let other = attitude(&down, tip).expect("sound").expect("within reach");
    rel("elbow down", other.dipper, -found.dipper, 1e-9);
}

/// `s14.lim`: the same arm with limits; second way 6 million sampled attitudes.
#[test]
fn limited_two_link_arm() {
    let found = digging(&two_links(deg(-50.0, 70.0), deg(-150.0, -25.0)), None).expect("sound");
    rel("s14.lim.depth", found.depth, 1.678_88, 1e-6);
    rel("s14.lim.reach_ground", found.reach_at_ground.expect("reaches the ground"), 2.790_206_02, 1e-6);
    let around = |arc: &fitup_core::plane::Arc| arc.circle.centre == Point::new(0.0, 0.9);
    let radii = found.edge.iter().filter(|arc| around(arc)).map(|arc| arc.circle.radius);
    let (least, most) = radii.fold((f64::INFINITY, 0.0_f64), |(a, b), r| (a.min(r), b.max(r)));
    rel("s14.lim.rmax", most, 2.931_765_62, 1e-6);
    rel("s14.lim.rmin", least, 0.968_901_572, 1e-6);
}

/// `s14.swing`: swing-out; second way 2,000,001 sampled rotations.
#[test]
fn swing_out_worked_examples() {
    let out = |radius: f64, width: f64, rear: f64, implement: Option<f64>| {
        let body = Block { rear: if implement.is_some() { 0.0 } else { -rear }, front: 1.0, half_width: width / 2.0 };
        let second = implement.map(|width| Block { rear: -rear, front: -0.5, half_width: width / 2.0 });
        swing(radius, None, body, second).expect("sound").swing_out
    };
    rel("s14.swing.ex1", out(2.4, 1.2, 1.9, None), 0.551_056_181, 1e-9);
    rel("s14.swing.ex2", out(3.1, 1.35, 2.25, None), 0.619_670_067, 1e-9);
    // The worked value counts from the body's own track; counted here from the widest part, the implement, 0.15 m further out.
    rel("s14.swing.ex3", out(2.4, 1.2, 1.9, Some(1.5)) + 0.15, 0.678_654_645, 1e-9);
}

/// `s14.ack`: Ackermann steering; second ways the meeting of the wheels' normals, and b / sin outer.
#[test]
fn ackermann_worked_example() {
    let found = steering(1.65, 0.95, 50_f64.to_radians()).expect("sound");
    rel("s14.ack.R", found.rear_axle_radius, 1.859_514_39, 1e-6);
    rel("s14.ack.outer_angle", found.outer_angle.to_degrees(), 35.252_100_7, 1e-6);
    rel("s14.ack.outer_radius", found.outer_radius, 2.858_751_03, 1e-6);
    rel("s14.ack.bicycle", found.middle_angle.to_degrees(), 41.583_555_9, 1e-6);
}

/// Ramp angle of a deck height and a length along the slope, asin(deck / length). Worked examples, own arithmetic.
#[test]
fn ramp_angle_of_a_deck_height() {
    for (id, deck, length, degrees) in
        [("s09.ramp.a", 0.6, 2.1, 16.601_549_6_f64), ("s09.ramp.b", 0.45, 1.8, 14.477_512_2)]
    {
        let ramp = Ramp { angle: degrees.to_radians(), length, ..Ramp::default() };
        let top = ramp_corners(&ramp).expect("sound").last().copied().expect("a crest");
        rel(id, top.y, deck, 1e-8);
    }
}

/// `s14.ramp.foot`: a rear overhang clears level ground at the foot when the departure angle is not below the ramp's, exactly.
#[test]
fn ramp_foot_rule() {
    let wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.5 };
    for (d, z) in [(0.9, 0.2), (1.4, 0.5), (0.6, 0.25), (2.0, 0.35)] {
        let lines = [[Point::new(-d, z)]];
        let limit = departure(EndWheel { axle: 0.0, radius: 0.38 }, &lines).expect("sound").expect("limits").angle;
        let rider = Rider { wheels, lines: &lines };
        let clears = |angle: f64| {
            let ramp = Ramp { angle, length: 5.0, ..Ramp::default() };
            ramp_roll(&rider, &ramp, Facing::Forward).expect("sound").nearest.expect("has an underside").vertical
        };
        assert!(clears(limit).abs() < 1e-9, "touches exactly at its departure angle");
        assert!(clears(limit - 1e-4) > 1e-6 && clears(limit + 1e-4) < -1e-6);
    }
}

/// `s14.ramp.crest`: the belly clears the crest when the breakover angle is not below the ramp's (sufficient).
#[test]
fn ramp_crest_rule() {
    let wheels = Wheels { rear: 0.38, front: 0.28, wheelbase: 1.5 };
    for z in [0.1, 0.18, 0.26] {
        let lines = [[Point::new(0.3, z), Point::new(1.2, z)]];
        let limit = breakover(wheels, &lines).expect("sound").expect("limits").angle;
        let rider = Rider { wheels, lines: &lines };
        for facing in [Facing::Forward, Facing::Backward] {
            let ramp = Ramp { angle: limit, length: 6.0, ..Ramp::default() };
            let nearest = ramp_roll(&rider, &ramp, facing).expect("sound").nearest.expect("has an underside");
            assert!(nearest.vertical > -1e-9, "{z} {facing:?}: {}", nearest.vertical);
        }
    }
}
