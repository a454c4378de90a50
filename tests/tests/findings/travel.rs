//! The build's trailer and site.

use fitup_core::item::RampSize;
use fitup_core::quantity::{Angle, Mass, Stated};
use fitup_yard::{ARM, Yard, mm};

/// With the trailer as it stands in the yard.
fn carried(yard: &mut Yard) {
    yard.trailer();
}

/// At the site as it stands in the yard.
fn let_in(yard: &mut Yard) {
    yard.site();
}

/// With an arm of so many kilograms, before a trailer.
fn laden(yard: &mut Yard, kg: f64) {
    yard.body(ARM).mass = Some(Stated::drawn(Mass::from_kg(kg)));
    yard.trailer();
}

/// With a low part behind and ramps of so many millimetres.
fn low_arm(yard: &mut Yard, ramp: f64) {
    yard.body(ARM).underside = vec![vec![(mm(-300.0), mm(-380.0)), (mm(-600.0), mm(-350.0))]];
    yard.trailer().ramp = Some(RampSize::Length(mm(ramp)));
}

crate::case::findings! {
    access_unknown: "access-unknown",
        |yard| { yard.site(); yard.machine().turning_radius = None; },
        "check, missing 'turning-radius', item hedge",
        "Some data are missing, so it is not known whether the machine gets into the site.", unless let_in;
    coupling_weak: "coupling-weak", |yard| yard.trailer().rated_nose = Some(Mass::from_kg(20.0)),
        "wont, least 95.9 kg, most 20.0 kg",
        "The trailer’s coupling may carry 20\u{a0}kg; laden, the trailer needs a nose weight (tongue weight) of at least 96\u{a0}kg.", unless carried;
    deck_close: "deck-close",
        |yard| yard.trailer().deck_width = Some(mm(1082.0)),
        "check, way 'width', size 1080.00 mm, deck 1082.00 mm, off 5.40 mm",
        "Over its tyres the machine is just about as wide as the trailer’s deck. Measure both before you load it.", unless carried;
    gate_close: "gate-close",
        |yard| yard.site().gate_width = Some(mm(1080.0)),
        "check, way 'width', size 1080.00 mm, gate 1080.00 mm, off 5.40 mm",
        "The machine is just about as wide as the gate. Measure both before you drive through.", unless let_in;
    ground_load_near: "ground-load-near",
        |yard| yard.site().greatest_axle_load = Some(Mass::from_kg(917.0)),
        "check, axle 'rear', load 917.5 kg, most 917.0 kg, off 23.7 kg",
        "The machine’s heaviest axle is so near to what the site’s ground bears that it has to be weighed.", unless let_in;
    load_long: "load-long",
        |yard| { yard.body(ARM).underside = vec![vec![(mm(-300.0), mm(0.0)), (mm(-3000.0), mm(0.0))]]; yard.trailer().ramp = None; },
        "check, overhang 1704.41 mm, most 1500.00 mm, beyond 204.41 mm, limit 'de-stvzo-22'",
        "The load reaches farther behind the trailer than a road limit. Ask the road authority before you travel with it.", unless carried;
    trailer_load_near: "trailer-load-near",
        |yard| yard.trailer().rated_total = Some(Mass::from_kg(1918.0)),
        "check, rating 'total', load 1918.0 kg, rated 1918.0 kg, off 19.2 kg",
        "Machine and trailer together are so near to the trailer’s rating that they have to be weighed.", unless carried;
    load_wide: "load-wide",
        |yard| { yard.trailer(); yard.implement().transport_width = Some(mm(2570.0)); },
        "check, width 2570.00 mm, most 2550.00 mm, beyond 20.00 mm, limit 'eu-96-53'",
        "The load is wider than a road limit. Ask the road authority before you travel with it.", unless carried;
    corner_clears: "corner-clears", let_in, "up, wanted 1449.38 mm, gate 2600.00 mm, path 2800.00 mm",
        "The machine gets round the corner behind the gate in one go.";
    corner_tight: "corner-tight",
        |yard| yard.site().gate_width = Some(mm(1200.0)),
        "check, wanted 3749.35 mm, gate 1200.00 mm, path 2800.00 mm",
        "The machine cannot turn the corner behind the gate in one go. It may work with some shunting; try it.", unless let_in;
    gate_low: "gate-low",
        |yard| yard.site().gate_height = Some(mm(1800.0)),
        "work, height 1880.00 mm, gate 1800.00 mm, beyond 80.00 mm, folded 1500.00 mm",
        "With its roll-over bar up the machine is 80\u{a0}mm too high for the gate. Fold the bar only to pass, on level ground, at walking pace, as the manual allows; then raise it again. Do not wear the belt while the bar is folded.", unless let_in;
    gate_narrow: "gate-narrow",
        |yard| yard.site().gate_width = Some(mm(1000.0)),
        "wont, beyond 80.00 mm, width 1080.00 mm, gate 1000.00 mm",
        "The machine is 80\u{a0}mm wider than the gate.", unless let_in;
    gate_passes: "gate-passes", let_in, "up, left 760.00 mm, width 1080.00 mm, gate 2600.00 mm",
        "The machine goes through the gate with 760\u{a0}mm to spare on each side.";
    ground_carries: "ground-carries", let_in, "up, left 1582.5 kg, axle 'rear', load 917.5 kg, most 2500.0 kg",
        "The site’s ground bears the machine’s heaviest axle.";
    ground_overloaded: "ground-overloaded",
        |yard| yard.site().greatest_axle_load = Some(Mass::from_kg(600.0)),
        "wont, over 317.5 kg, axle 'rear', load 917.5 kg, most 600.0 kg",
        "The machine’s heaviest axle is 317\u{a0}kg more than the site’s ground bears.", unless let_in;
    loading_unknown: "loading-unknown",
        |yard| { yard.trailer(); yard.machine().front.static_loaded_radius = None; },
        "check, missing 'static-loaded-radius', item hedge",
        "Some data are missing, so it is not known how the machine travels on the trailer.", unless carried;
    nose_load_in_range: "nose-load-in-range", carried, "up, from 2468.84 mm, to 2724.47 mm, nose 143.8 kg, least 95.9 kg, most 191.8 kg, heading 'backward'",
        "Facing backwards on the trailer, the machine can stand so that the nose weight (tongue weight) is right.";
    nose_load_out_of_range: "nose-load-out-of-range",
        |yard| { let trailer = yard.trailer(); trailer.nose_least = Some(0.3); trailer.nose_most = Some(0.4); },
        "wont, nose 520.3 kg, least 575.4 kg, most 767.2 kg, heading 'backward'",
        "Nowhere on the trailer’s deck is the nose weight (tongue weight) right.", unless carried;
    nose_load_near: "nose-load-near",
        |yard| { let trailer = yard.trailer(); trailer.nose_least = Some(0.272); trailer.nose_most = Some(0.4); },
        "check, nose 520.3 kg, least 521.7 kg, most 767.2 kg, off 6.4 kg, heading 'backward'",
        "What the masses may be off decides whether the nose weight (tongue weight) can be brought into range on this deck. Weigh it at the coupling before you drive.", unless carried;
    ramp_near: "ramp-near",
        |yard| { low_arm(yard, 6000.0); yard.body(ARM).underside = vec![vec![(mm(-300.0), mm(-517.0)), (mm(-301.0), mm(-517.0))]]; },
        "check, item arm, way 'backward', ramp 6000.00 mm, clearance 27.95 mm, wanted 30.00 mm, off 4.00 mm",
        "Digging arm comes so near the trailer’s ramp that measuring decides, and no ramp short enough to carry along leaves the 30\u{a0}mm needed for certain. Measure before you load; then drive up at a crawl while somebody watches from the side, away from the ramp.", unless carried;
    ramp_steep: "ramp-steep",
        |yard| { low_arm(yard, 1200.0); let trailer = yard.trailer(); (trailer.ramp, trailer.beaver_angle, trailer.beaver_length) = (Some(RampSize::Angle(Angle::from_deg(30.0))), Some(Angle::from_deg(88.0)), Some(mm(100.0))); },
        "wont, angle 88.0 deg",
        "The trailer’s ramp rises at 88.0°: nothing drives up that. Take another trailer.", unless carried;
    ramp_clears: "ramp-clears", carried, "up, item long-frame, way 'either', ramp 2400.00 mm, clearance 270.01 mm",
        "The machine gets up the trailer’s ramp without dragging.";
    ramp_axle_light: "ramp-axle-light",
        |yard| laden(yard, 550.0),
        "check, way 'backward', axle 'front', load 178.6 kg, least 196.0 kg",
        "On the way up the ramp the front axle is left with little weight: 179\u{a0}kg, at least 196\u{a0}kg is needed. It may not steer, and a jolt may lift it.", unless carried;
    ramp_tips: "ramp-tips",
        |yard| laden(yard, 900.0),
        "wont, way 'backward', axle 'front', ramp 2400.00 mm",
        "The machine tips over on the ramp: the front axle lifts on the way up.", unless carried;
    ramp_drags: "ramp-drags",
        |yard| low_arm(yard, 1200.0),
        "work, item arm, way 'forward', ramp 1200.00 mm, drags-by 73.99 mm, wanted 30.00 mm, place 'behind', distance 1000.00 mm, shortest 2151.00 mm",
        "Digging arm drags by 74\u{a0}mm on the trailer’s ramp. Ramps of at least 2,160\u{a0}mm clear it.", unless carried;
    ramp_tight: "ramp-tight",
        |yard| low_arm(yard, 2060.0),
        "work, item arm, way 'backward', ramp 2060.00 mm, clearance 21.01 mm, wanted 30.00 mm, place 'behind', distance 1000.00 mm, shortest 2143.47 mm",
        "Only 21\u{a0}mm between Digging arm and the trailer’s ramp; 30\u{a0}mm is needed. Ramps of at least 2,150\u{a0}mm give that.", unless carried;
    site_unknown: "site-unknown",
        |yard| yard.site().gate_width = None,
        "check, missing 'gate-width', site 'Park'",
        "Data missing for Park: gate width.", unless let_in;
    tie_downs_needed: "tie-downs-needed", carried, "up, count 2, together 619.0 kg, each 619.0 kg",
        "Tie the machine down with at least 2 chains or straps of 619\u{a0}kg working load limit each (US rule). Where you drive, the local law counts.";
    trailer_carries: "trailer-carries", carried, "up, left 782.0 kg, rating 'total', load 1918.0 kg, rated 2700.0 kg",
        "Machine and trailer together are within the trailer’s rating.";
    trailer_narrow: "trailer-narrow",
        |yard| yard.trailer().deck_width = Some(mm(1050.0)),
        "wont, width 1080.00 mm, deck 1050.00 mm, beyond 30.00 mm",
        "Over its tyres the machine is 30\u{a0}mm wider than the trailer’s deck.", unless carried;
    trailer_overloaded: "trailer-overloaded",
        |yard| yard.trailer().rated_total = Some(Mass::from_kg(1800.0)),
        "wont, over 118.0 kg, rating 'total', load 1918.0 kg, rated 1800.0 kg",
        "Machine and trailer together are 118\u{a0}kg heavier than the trailer is rated for.", unless carried;
    trailer_short: "trailer-short",
        |yard| yard.trailer().deck_length = Some(mm(1400.0)),
        "wont, wheelbase 1450.00 mm, deck 1400.00 mm",
        "The trailer’s deck is shorter than the machine’s wheelbase.", unless carried;
    trailer_unknown: "trailer-unknown",
        |yard| yard.trailer().nose_least = None,
        "check, missing 'nose-load', trailer 'Flat trailer'",
        "Data missing for Flat trailer: allowed nose weight (tongue weight).", unless carried;
}
