//! The build's trailer and site.

use fitup_core::item::RampSize;
use fitup_core::quantity::Mass;
use fitup_yard::{ARM, Yard, mm};

/// With the trailer as it stands in the yard.
fn carried(yard: &mut Yard) {
    yard.trailer();
}

/// At the site as it stands in the yard.
fn let_in(yard: &mut Yard) {
    yard.site();
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
        "Whether the machine gets into the site is not known, because something it depends on is not stated.", unless let_in;
    corner_clears: "corner-clears", let_in, "up, wanted 1449.38 mm, gate 2600.00 mm, path 2800.00 mm",
        "The machine gets round the corner behind the gate in one sweep.";
    corner_tight: "corner-tight",
        |yard| yard.site().gate_width = Some(mm(1200.0)),
        "check, gate 1200.00 mm, path 2800.00 mm",
        "The machine does not get round the corner behind the gate in one sweep. Try whether a few moves to and fro do.", unless let_in;
    gate_low: "gate-low",
        |yard| yard.site().gate_height = Some(mm(1800.0)),
        "work, height 1880.00 mm, gate 1800.00 mm, beyond 80.00 mm, folded 1500.00 mm",
        "With its roll-over bar up the machine is too high for the gate; with the bar folded it goes through.", unless let_in;
    gate_narrow: "gate-narrow",
        |yard| yard.site().gate_width = Some(mm(1000.0)),
        "wont, beyond 80.00 mm, width 1080.00 mm, gate 1000.00 mm",
        "The machine is 80\u{a0}mm wider than the gate.", unless let_in;
    gate_passes: "gate-passes", let_in, "up, left 760.00 mm, width 1080.00 mm, gate 2600.00 mm",
        "The machine goes through the gate with 760\u{a0}mm left on each side.";
    ground_carries: "ground-carries", let_in, "up, left 1582.5 kg, axle 'rear', load 917.5 kg, most 2500.0 kg",
        "The site’s ground takes the machine’s heaviest axle.";
    ground_overloaded: "ground-overloaded",
        |yard| yard.site().greatest_axle_load = Some(Mass::from_kg(600.0)),
        "wont, over 317.5 kg, axle 'rear', load 917.5 kg, most 600.0 kg",
        "The machine’s heaviest axle is 317\u{a0}kg more than the site’s ground takes.", unless let_in;
    loading_unknown: "loading-unknown",
        |yard| { yard.trailer(); yard.machine().front.static_loaded_radius = None; },
        "check, missing 'static-loaded-radius', item hedge",
        "How the machine travels on the trailer is not known, because something it depends on is not stated.", unless carried;
    nose_load_in_range: "nose-load-in-range", carried, "up, from 1567.78 mm, to 1823.41 mm, nose 143.8 kg, least 95.9 kg, most 191.8 kg, heading 'forward'",
        "Facing forwards on the trailer, the machine can stand so that the nose load is in range.";
    nose_load_out_of_range: "nose-load-out-of-range",
        |yard| { let trailer = yard.trailer(); trailer.nose_least = Some(0.3); trailer.nose_most = Some(0.4); },
        "wont, nose 314.3 kg, least 575.4 kg, most 767.2 kg, heading 'forward'",
        "Nowhere on the trailer’s deck does the machine stand with the nose load in range.", unless carried;
    ramp_clears: "ramp-clears", carried, "up, item long-frame, way 'either', ramp 2400.00 mm, clearance 270.01 mm",
        "The machine gets up the trailer’s ramp without dragging.";
    ramp_drags: "ramp-drags",
        |yard| low_arm(yard, 1200.0),
        "work, item arm, way 'forward', ramp 1200.00 mm, drags-by 73.99 mm, wanted 30.00 mm, place 'behind', distance 1000.00 mm, shortest 2151.00 mm",
        "Digging arm drags by 74\u{a0}mm on the trailer’s ramp. Ramps of 2,151\u{a0}mm clear it.", unless carried;
    ramp_tight: "ramp-tight",
        |yard| low_arm(yard, 2060.0),
        "work, item arm, way 'backward', ramp 2060.00 mm, clearance 21.01 mm, wanted 30.00 mm, place 'behind', distance 1000.00 mm, shortest 2143.47 mm",
        "Digging arm comes within 21\u{a0}mm of the trailer’s ramp; 30\u{a0}mm are wanted. Ramps of 2,143\u{a0}mm leave them.", unless carried;
    site_unknown: "site-unknown",
        |yard| yard.site().gate_width = None,
        "check, missing 'gate-width', site 'Park'",
        "Not stated for Park: width of the gate.", unless let_in;
    tie_downs_needed: "tie-downs-needed", carried, "up, count 2, together 619.0 kg, each 619.0 kg",
        "Tie the machine down with at least 2 lashings.";
    trailer_carries: "trailer-carries", carried, "up, left 782.0 kg, rating 'total', load 1918.0 kg, rated 2700.0 kg",
        "Machine and trailer together are within the trailer’s rating.";
    trailer_narrow: "trailer-narrow",
        |yard| yard.trailer().deck_width = Some(mm(1050.0)),
        "wont, width 1080.00 mm, deck 1050.00 mm, beyond 30.00 mm",
        "The machine’s tyres stand 30\u{a0}mm wider than the trailer’s deck.", unless carried;
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
        "Not stated for Flat trailer: range of the nose load.", unless carried;
}
