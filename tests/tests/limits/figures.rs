//! What the yard measures and weighs, turns on and drives up.

use fitup_core::build::Change;
use fitup_core::dimension::{Facing, Heading, TipEdge};
use fitup_core::finding::Unstated;
use fitup_core::fit::{Desk, WeightRule, access, loading, on_trailer, tip, way_up, weight};
use fitup_core::item::{FrontAxle, RampSize};
use fitup_core::plane::Point;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_yard::{Yard, mm};

fn desk_of(yard: &Yard) -> Desk {
    Desk::new(yard.catalogue.clone())
}

fn close(found: Option<Length>, millimetres: f64) {
    let found = found.expect("it is known").mm();
    assert!((found - millimetres).abs() < 1e-6, "{found} against {millimetres}");
}

#[test]
fn the_bare_machine_measures_what_is_drawn_of_it() {
    let bare = Yard::new().judge().bare;
    // Tyres of 390 mm radius at 0 and 1,450 mm; 860 mm of track and 220 mm of tyre; the bar up; the bonnet's lower edge.
    close(bare.rear_overhang, 390.0);
    close(bare.front_overhang, 390.0);
    close(bare.length, 2230.0);
    close(bare.width, 1080.0);
    close(bare.height, 1880.0);
    close(bare.ground_clearance, 440.0);
    let (rear, front) = bare.extent_x.expect("it is drawn");
    close(Some(rear), -390.0);
    close(Some(front), 1840.0);
    assert_eq!(bare.mass.map(Mass::kg), Some(980.0));
    assert_eq!((bare.front_load, bare.rear_load), (Some(Mass::from_kg(480.0)), Some(Mass::from_kg(500.0))));
}

#[test]
fn the_build_measures_what_stands_on_it() {
    let mut yard = Yard::new();
    let now = yard.judge().footprint;
    // The frame stands at (100, 400), its rack 500 mm behind and 200 mm up; the boom reaches 800 mm behind that.
    close(now.rear_overhang, 1200.0);
    close(now.length, 1200.0 + 1840.0);
    close(now.ground_clearance, 340.0);
    // Machine, frame, seat, arm, operator.
    assert_eq!(now.mass.map(Mass::kg), Some(980.0 + 60.0 + 18.0 + 180.0 + 75.0));
    yard.implement().transport_width = Some(mm(1400.0));
    close(yard.judge().footprint.width, 1400.0);
    close(yard.judge().bare.width, 1080.0);
    // The arm's boom stands 600 + 900 mm high, less than the bar up and more than the bar folded.
    close(now.height, 1880.0);
    yard.build.side.changes.push(Change::FoldRollOverBar);
    close(yard.judge().footprint.height, 1500.0);
    close(yard.judge().bare.height, 1880.0);
    // Without a radius the tyre takes no part; the other radius stands in for the overall one.
    yard.machine().front.overall_radius = None;
    close(yard.judge().bare.front_overhang, 375.0);
    yard.machine().front.static_loaded_radius = None;
    close(yard.judge().bare.front_overhang, 310.0);
}

#[test]
fn moments_about_the_rear_axle_give_the_front_load() {
    let mut yard = Yard::new();
    yard.build.side.changes.push(Change::Ballast { mass: Mass::from_kg(50.0), x: mm(1800.0) });
    let desk = desk_of(&yard);
    let found = weight(&desk, &yard.build, None).expect("there is a machine");
    // Front axle 480 kg at 1,450; operator at 210; frame at 100 + 200; arm at -400 - 450; seat at -150 - 30; ballast.
    let moment = 480.0 * 1.45 + 75.0 * 0.21 + 60.0 * 0.3 - 180.0 * 0.85 - 18.0 * 0.18 + 50.0 * 1.8;
    let loads = found.loads.as_ref().expect("everything is stated");
    assert!((loads.front.kg() - moment / 1.45).abs() < 1e-9);
    let total = 480.0 + 500.0 + 75.0 + 60.0 + 180.0 + 18.0 + 50.0;
    assert!((loads.total.kg() - total).abs() < 1e-9);
    assert!((loads.front_share() - moment / 1.45 / total).abs() < 1e-12);
    assert!((found.front_tyre.load.expect("it is known").kg() - moment / 2.9).abs() < 1e-9);
    assert!((found.rear_tyre.load.expect("it is known").kg() - (total - moment / 1.45) / 2.0).abs() < 1e-9);
    assert!(found.rules.iter().all(WeightRule::is_met));
    close(found.ballast_at, 1760.0);
    assert!((loads.without_operator().total.kg() - total + 75.0).abs() < 1e-9);
    // Where no seat is stated nobody knows where the operator sits.
    yard.machine().operator_seat = None;
    assert_eq!(weight(&desk_of(&yard), &yard.build, None).and_then(|found| found.loads), None);
}

#[test]
fn the_rear_axle_turns_inside_of_the_outer_front_wheel() {
    let mut yard = Yard::new();
    let turning = |yard: &Yard| access(&desk_of(yard), &yard.build).expect("there is a machine").turning_radius;
    close(turning(&yard), f64::sqrt(2200.0 * 2200.0 - 1450.0 * 1450.0) - 430.0);
    // A circle no larger than the wheelbase is none that it turns on.
    yard.machine().turning_radius = Some(mm(1450.0));
    assert_eq!(turning(&yard), None);
    let site = access(&desk_of(&yard), &yard.build).expect("there is a machine");
    assert_eq!((site.gate, site.path, site.right_angle_turn), (None, None, false));
    close(site.height_folded, 1500.0);
}

#[test]
fn a_ramp_stated_by_its_angle_is_the_one_of_its_length() {
    let mut yard = Yard::new();
    yard.trailer();
    let drive = |yard: &Yard| loading(&desk_of(yard), &yard.build).expect("it is carried");
    let level = drive(&yard).ramp.expect("it is stated");
    assert!((Point::unit(level.angle).y - 0.48 / 2.4).abs() < 1e-12 && level.length == 2.4);
    yard.trailer().ramp = Some(RampSize::Angle(Angle::from_rad(level.angle)));
    assert!((drive(&yard).ramp.expect("it is stated").length - 2.4).abs() < 1e-9);
    // A beaver tail of 0.4 m at 30° takes 0.2 m of the height.
    yard.trailer().beaver_length = Some(mm(400.0));
    assert_eq!(drive(&yard).ramp, None);
    yard.trailer().beaver_angle = Some(Angle::from_deg(30.0));
    yard.trailer().ramp = Some(RampSize::Length(mm(560.0)));
    let tailed = drive(&yard).ramp.expect("it is stated");
    assert!((Point::unit(tailed.angle).y - 0.28 / 0.56).abs() < 1e-9);
    // Too short to reach the deck, and a tail that is higher than the deck.
    yard.trailer().ramp = Some(RampSize::Length(mm(279.0)));
    assert_eq!(drive(&yard).ramp, None);
    yard.trailer().ramp = Some(RampSize::Length(mm(560.0)));
    yard.trailer().beaver_length = Some(mm(960.1));
    assert_eq!(drive(&yard).ramp, None);
}

#[test]
fn the_machine_tips_sideways_over_its_tyres_on_a_fixed_axle() {
    let mut yard = Yard::new();
    yard.machine().front_axle = FrontAxle::Fixed;
    let found = tip(&desk_of(&yard), &yard.build).expect("there is a machine");
    let (_, y, z) = found.centre.expect("every height is stated");
    assert!(y.m().abs() < 1e-12);
    // 980 kg at 560, operator 75 at 760, frame 60 at 400, arm 180 at 600 + 300, seat 18 at 550 + 200 mm.
    let moment = 980.0 * 560.0 + 75.0 * 760.0 + 60.0 * 400.0 + 180.0 * 900.0 + 18.0 * 750.0;
    close(Some(z), moment / (980.0 + 75.0 + 60.0 + 180.0 + 18.0));
    let left = found.angles.and_then(|angles| angles.slope(TipEdge::Left)).expect("it tips");
    // Half of 860 mm of track beside, the centre above.
    assert!((Point::unit(left).y / Point::unit(left).x - 0.43 / z.m()).abs() < 1e-9, "{left}");
    yard.machine().front_axle = FrontAxle::Unknown;
    let unknown = tip(&desk_of(&yard), &yard.build).expect("there is a machine");
    assert!(unknown.angles.is_none() && unknown.missing.iter().any(|missing| missing.what == Unstated::FrontAxle));
}

#[test]
fn on_the_trailer_everything_but_the_operator_counts() {
    let mut yard = Yard::new();
    yard.trailer();
    let on = on_trailer(&desk_of(&yard), &yard.build).expect("it stands on one");
    close(on.height, 480.0 + 1880.0);
    close(on.width, 1080.0);
    close(on.deck_left, 3600.0 - 3040.0);
    close(on.side_room, 1750.0 - 1080.0);
    close(on.wheelbase.map(|wheelbase| wheelbase.value), 1450.0);
    let total = 680.0 + 980.0 + 60.0 + 18.0 + 180.0;
    assert!((on.total.load.expect("it is stated").kg() - total).abs() < 1e-9);
    // Of machine, frame, arm and seat, ahead of the rear axle.
    let (mass, moment) = (980.0 + 60.0 + 180.0 + 18.0, 480.0 * 1.45 + 60.0 * 0.3 - 180.0 * 0.85 - 18.0 * 0.18);
    for (heading, sign, high) in [(Heading::Forward, 1.0, 1.7 - 1.45), (Heading::Backward, -1.0, 1.7)] {
        let stand = on.stand(heading).expect("it stands");
        assert_eq!(stand.heading, heading);
        let deck = stand.places_on_deck.expect("the deck is longer than the wheelbase");
        let low = high - (3.6 - 1.45);
        assert!((deck.low - low).abs() < 1e-9 && (deck.high - high).abs() < 1e-9, "{deck:?}");
        let nose = (680.0 * 0.25 + mass * stand.rear_axle + sign * moment) / 3.3;
        assert!((stand.nose_load().kg() - nose).abs() < 1e-9);
        assert!((stand.loads.axle - (total - nose)).abs() < 1e-9);
        let (least, most) = stand.nose_range;
        assert!((least.kg() - 0.05 * total).abs() < 1e-9 && (most.kg() - 0.1 * total).abs() < 1e-9);
        assert!(stand.is_in_range() && least.kg() <= nose && nose <= most.kg());
    }
    assert_eq!(way_up(&[None, None], Some(&on), |_| false), Facing::Forward);
    // A rated nose load narrows the range from above, even to nothing.
    for (rated, most) in [(150.0, 150.0), (10.0, 10.0), (900.0, 0.1 * total)] {
        yard.trailer().rated_nose = Some(Mass::from_kg(rated));
        let stand = on_trailer(&desk_of(&yard), &yard.build).and_then(|on| on.forward).expect("it stands");
        assert!((stand.nose_range.1.kg() - most).abs() < 1e-9, "{rated}");
        assert_eq!(stand.is_in_range(), rated > 50.0, "{rated}");
    }
}
