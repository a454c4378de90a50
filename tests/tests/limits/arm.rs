//! The digging arm at work in the yard, with every mass where it can be told by hand.

use fitup_core::finding::Unstated;
use fitup_core::fit::{Desk, Lift, SwingStop, arm_at_work, lifting};
use fitup_core::item::{ArmLink, DiggingArm, FrontAxle, Stabilisers};
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_yard::{Yard, mm};

/// The yard's arm with links: its rack stands at (-400, 600) mm, its swing centre 500 mm behind that and its boom's foot
/// another 100 mm. All of the links' mass is 60 kg at the foot.
fn dug() -> Yard {
    let link = |length: f64, least: f64, greatest: f64, kilograms: f64| ArmLink {
        length: mm(length),
        least: Angle::from_deg(least),
        greatest: Angle::from_deg(greatest),
        transport: Angle::from_deg(greatest),
        mass: Some(Mass::from_kg(kilograms)),
        centre: Some(Length::ZERO),
    };
    let mut yard = Yard::new();
    yard.implement().arm = Some(DiggingArm {
        swing_x: mm(-500.0),
        foot_u: mm(100.0),
        foot_z: mm(-100.0),
        boom: link(1400.0, -40.0, 70.0, 60.0),
        dipper: link(1000.0, -150.0, -20.0, 0.0),
        bucket: link(500.0, -90.0, 30.0, 0.0),
        swing: Angle::from_deg(110.0),
        stabilisers: Some(Stabilisers { spread: mm(1600.0), transport_width: mm(1000.0), x: mm(-300.0) }),
        lift_at_full_reach: Some(Mass::from_kg(200.0)),
    });
    yard
}

fn arm(yard: &mut Yard) -> &mut DiggingArm {
    yard.implement().arm.as_mut().expect("it was given one")
}

fn close(a: f64, b: f64) {
    assert!((a - b).abs() < 1e-6 * b.abs().max(1.0), "{a} against {b}");
}

#[test]
fn the_arm_swings_until_its_side_meets_a_foot_or_a_tyre() {
    let free = |yard: &Yard| {
        let found = arm_at_work(&Desk::new(yard.catalogue.clone()), &yard.build).expect("it has an arm");
        close(found.swing_x.m(), -0.9);
        close(found.arm.foot.x, 0.1);
        close(found.arm.foot.y, 0.5);
        let reach = found.reach.reach_at_ground.expect("it reaches the ground");
        close(found.reach_from_axle.expect("it reaches the ground").m(), reach + 0.9);
        found.free_swing.expect("everything is drawn")
    };
    let mut yard = dug();
    // A foot 800 mm to the side and 200 mm ahead of the swing centre; the boom is 120 mm wide to either side.
    for (angle, stop) in free(&yard) {
        close(angle.rad(), 1.669_735_053);
        assert_eq!(stop, Some(SwingStop::Stabiliser));
    }
    // The outer rear corner of the tyre lies 540 mm to the side and 510 mm ahead.
    arm(&mut yard).stabilisers = None;
    arm(&mut yard).swing = Angle::from_deg(170.0);
    for (angle, stop) in free(&yard) {
        close(angle.rad(), 2.165_361_158);
        assert_eq!(stop, Some(SwingStop::Tyre));
    }
    arm(&mut yard).swing = Angle::from_deg(90.0);
    assert!(free(&yard).iter().all(|(angle, stop)| (angle.deg() - 90.0).abs() < 1e-9 && stop.is_none()));
}

/// Machine, operator, frame, seat, the arm without its links: kilograms and metres ahead of the rear axle. The links are
/// taken out of the arm's 180 kg at 850 mm behind.
const BODIES: [(f64, f64); 5] =
    [(980.0, 0.48 * 1450.0 / 980.0), (75.0, 0.21), (60.0, 0.3), (18.0, -0.18), (120.0, (180.0 * -0.85 + 60.0) / 120.0)];

fn lifted(yard: &Yard) -> (Length, bool, Vec<Lift>) {
    let found = lifting(&Desk::new(yard.catalogue.clone()), &yard.build).expect("it has an arm");
    (found.line, found.on_stabilisers, found.places)
}

#[test]
fn the_loads_that_tip_the_machine_balance_its_masses() {
    let mut yard = dug();
    let fixed = {
        let mut yard = yard.clone();
        yard.machine().front_axle = FrontAxle::Fixed;
        yard
    };
    let without = {
        let mut yard = yard.clone();
        arm(&mut yard).stabilisers = None;
        yard
    };
    // The line, half the supports' distance behind and in front.
    for (yard, on, line, rear, front) in
        [(&yard, true, -0.7, 0.8, 0.0), (&fixed, true, -0.7, 0.8, 0.43), (&without, false, 0.0, 0.43, 0.0)]
    {
        let (at, on_stabilisers, places) = lifted(yard);
        close(at.m(), line);
        assert_eq!((on_stabilisers, places.is_empty()), (on, false));
        let moment: f64 = BODIES.iter().map(|(mass, x)| mass * (x - line)).sum::<f64>() + 60.0 * (-1.0 - line);
        let inside = |x: f64, y: f64| (rear - y) * (1.45 - line) + (x - line) * (front - rear);
        let beside: f64 = BODIES.iter().map(|(mass, x)| mass * inside(*x, 0.0)).sum::<f64>() + 60.0 * inside(-0.9, 0.1);
        for place in &places {
            let reach = place.reach.m();
            close(place.rear.stabilising_moment, moment);
            close(place.rear.tipping.expect("it hangs behind"), moment / (line + 0.9 + reach));
            close(place.side_tipping.expect("it hangs beside").kg(), beside / -inside(-0.9, reach));
        }
    }
    let places = lifted(&yard).2;
    let farthest = places.iter().map(|place| place.reach).reduce(Length::max);
    for place in places {
        let stated = place.height == Length::ZERO && Some(place.reach) == farthest;
        assert_eq!(place.rear.hydraulic, stated.then_some(200.0));
    }
    yard.machine().front_axle = FrontAxle::Unknown;
    assert!(lifted(&yard).2.iter().all(|place| place.side_tipping.is_none()));
}

#[test]
fn links_without_a_mass_or_with_all_of_it_lift_nothing() {
    let mut unweighed = dug();
    arm(&mut unweighed).bucket.mass = None;
    let mut outweighed = dug();
    outweighed.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(60.0);
    for yard in [unweighed, outweighed] {
        let found = lifting(&Desk::new(yard.catalogue.clone()), &yard.build).expect("it has an arm");
        assert!(found.places.is_empty() && found.farthest_on_ground().is_none());
        assert_eq!(found.missing.iter().map(|missing| missing.what).collect::<Vec<_>>(), [Unstated::LinkMass]);
    }
    let mut just = dug();
    just.implement().body.mass.as_mut().expect("it has one").value = Mass::from_kg(60.1);
    assert!(!lifted(&just).2.is_empty());
}
