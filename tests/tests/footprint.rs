//! The footprint of the demonstration yard's stories against what it is made of.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::build::{Change, Stack};
use fitup_core::fit::{Desk, EndAngle, judge};
use fitup_core::item::{Machine, RollOverBar};
use fitup_core::quantity::Length;
use fitup_tests::stories::{desk, story};
use fitup_yard::Yard;

const STORIES: [&str; 6] = ["listed", "shared-parts", "sleeve", "no-adapter", "light-front", "missing-data"];

/// Corners of every placed underside, metres.
fn underside(desk: &Desk, stack: &Stack) -> Vec<(f64, f64)> {
    let placed = stack.placed.iter().flat_map(|placed| {
        let lines = desk.catalogue().body(placed.item).underside.iter().flatten();
        lines.map(|&(x, z)| placed.placement.expect("it is known").side(x, z))
    });
    placed.map(|(x, z)| (x.m(), z.m())).collect()
}

fn radii(machine: &Machine) -> (f64, f64, f64) {
    let radius = |radius: Option<Length>| radius.unwrap().m();
    let wheelbase = machine.wheelbase.unwrap().value.m();
    (radius(machine.rear.static_loaded_radius), radius(machine.front.static_loaded_radius), wheelbase)
}

/// What is left of 49 CFR 523.2's condition for a line from the point that touches the tyre's arc: d sin a + h cos a = r.
fn off_the_arc(end: EndAngle, axle: f64, radius: f64) -> f64 {
    let (distance, below) = ((end.x.m() - axle).abs(), radius - end.z.m());
    let angle = end.angle.rad();
    distance * angle.sin() + below * angle.cos() - radius
}

#[test]
fn end_angles_touch_the_tyres_arc_at_their_point_and_no_corner_of_the_underside_reaches_below_them() {
    let desk = desk();
    for name in STORIES {
        let build = story(&desk, name);
        let answer = judge(&desk, &build);
        let (rear, front, wheelbase) = radii(desk.catalogue().machine(build.choices.machine.unwrap()));
        let (departure, approach) = (answer.footprint.departure.unwrap(), answer.footprint.approach.unwrap());
        assert!(departure.x < Length::ZERO && approach.x.m() > wheelbase, "{name}");
        for (end, axle, radius) in [(departure, 0.0, rear), (approach, wheelbase, front)] {
            assert!(off_the_arc(end, axle, radius).abs() < 1e-9, "{name}");
            let (sin, cos) = end.angle.rad().sin_cos();
            let behind = |x: f64| if axle == 0.0 { -x } else { x - axle };
            // Above the line is where d sin a + h cos a is less than r.
            for (x, z) in underside(&desk, &answer.stack) {
                let beyond = behind(x);
                if beyond > radius {
                    assert!(beyond * sin + (radius - z) * cos <= radius + 1e-9, "{name}: ({x}, {z})");
                }
            }
        }
    }
}

#[test]
fn the_breakover_angle_is_that_of_its_point_and_of_no_corner_between_the_axles_less() {
    let desk = desk();
    for name in STORIES {
        let build = story(&desk, name);
        let answer = judge(&desk, &build);
        let (rear, front, wheelbase) = radii(desk.catalogue().machine(build.choices.machine.unwrap()));
        let tangent = |distance: f64, z: f64, radius: f64| {
            let reach = distance * distance + (radius - z).powi(2) - radius * radius;
            (reach >= 0.0).then(|| 2.0 * z.atan2(distance + reach.sqrt()))
        };
        let at = |x: f64, z: f64| Some(tangent(x, z, rear)? + tangent(wheelbase - x, z, front)?);
        let found = answer.footprint.breakover.unwrap();
        let there = at(found.x.m(), found.z.m()).unwrap();
        assert!((there - found.angle.rad()).abs() < 1e-9, "{name}: {there} at its point");
        for (x, z) in underside(&desk, &answer.stack) {
            if x > 0.0 && x < wheelbase {
                assert!(at(x, z).is_none_or(|angle| angle >= found.angle.rad() - 1e-9), "{name}: ({x}, {z})");
            }
        }
    }
}

#[test]
fn the_roll_over_bar_is_as_high_as_it_is_stated_to_be_whatever_the_outlines_show() {
    let mut yard = Yard::new();
    let [height_up, folded] = [5.0, 4.0].map(Length::from_m);
    yard.machine().roll_over_bar = Some(RollOverBar { x: Length::ZERO, height_up, height_folded: Some(folded) });
    let height = |yard: &Yard| yard.judge().footprint.height;
    assert_eq!(height(&yard), Some(height_up));
    yard.build.side.changes.push(Change::FoldRollOverBar);
    assert_eq!(height(&yard), Some(folded));
    yard.machine().roll_over_bar = Some(RollOverBar { x: Length::ZERO, height_up, height_folded: None });
    assert_eq!(height(&yard), Some(height_up), "it does not fold");
}
