//! The finished machine as a whole, on the demonstration yard: each figure against what it is made of.
//!
//! Covers: core/src/fit/whole.

use std::collections::BTreeSet;

use fitup_core::build::{Build, Change};
use fitup_core::dimension::{Facing, Heading, TipEdge};
use fitup_core::fit::{
    Bearer, Desk, MissingOf, RAMP_MARGIN, SwingStop, access, arm_at_work, hydraulics, judge, lifting, loading,
    on_trailer, shortest_ramps, stand_after, tip, way_up, weight, whole,
};
use fitup_core::item::{SiteId, TrailerId};
use fitup_core::quantity::{Length, Mass};
use fitup_tests::stories::{desk, story};

fn close(a: f64, b: f64) {
    assert!((a - b).abs() < 1e-6, "{a} against {b}");
}

#[test]
fn a_ramp_of_the_shortest_length_just_keeps_the_margin() {
    let desk = desk();
    let dragging = story(&desk, "ramp");
    let shortest = shortest_ramps(&desk, &dragging);
    for (facing, shortest) in [Facing::Forward, Facing::Backward].into_iter().zip(shortest) {
        let length = Length::from_m(shortest.unwrap().length);
        let with = dragging.clone().changed(|build| build.side.changes = vec![Change::Ramps { length }]);
        let room = loading(&desk, &with).unwrap().drive(facing).unwrap().clearance().unwrap();
        close(room.mm(), RAMP_MARGIN.mm());
    }
    assert_eq!(loading(&desk, &dragging.changed(|build| build.side.trailer = None)), None);
}

#[test]
fn on_the_trailer_the_moments_balance_and_the_operator_stays_behind() {
    let desk = desk();
    let carried = story(&desk, "ramp");
    let on = on_trailer(&desk, &carried).unwrap();
    let stand = stand_after(&on, way_up(&[None, None], Some(&on), |_| false)).unwrap();
    assert_eq!(stand.heading, Heading::Backward);
    let loads = weight(&desk, &carried, None).unwrap().loads.unwrap();
    let travelling = loads.bodies.iter().filter(|body| body.of != Bearer::Operator);
    // Every body at its own place on the trailer, the machine turned round.
    let moment: f64 = travelling.clone().map(|body| body.mass.kg() * (stand.rear_axle - body.x.m())).sum();
    let row = desk.catalogue().trailer(on.trailer);
    let empty = row.empty_mass.unwrap().kg() * row.centre_of_gravity.unwrap().m();
    close(stand.loads.nose, (moment + empty) / row.coupling.unwrap().m());
    let mass: f64 = travelling.map(|body| body.mass.kg()).sum();
    close(on.total.load.unwrap().kg(), mass + row.empty_mass.unwrap().kg());
    let (least, most) = stand.nose_range;
    assert!(least.kg() <= stand.loads.nose && stand.loads.nose <= most.kg());
    // 2.5 m of machine need two tie-downs, each as strong as the machine is heavy by half.
    assert_eq!(on.tie_downs.unwrap().needed, 2);
    close(on.each_tie_down().unwrap().kg(), mass / 2.0);
}

#[test]
fn the_ballast_of_each_rule_meets_it_when_it_is_hung() {
    let desk = desk();
    let light = story(&desk, "light-front");
    let found = weight(&desk, &light, Some(Length::from_mm(2000.0))).unwrap();
    assert!(found.missing.is_empty() && found.rules.len() == 2);
    for (index, rule) in found.rules.iter().enumerate() {
        assert!(!rule.is_met());
        let (mass, x) = (rule.ballast.unwrap(), found.ballast_at.unwrap());
        let hung = light.clone().changed(|build| build.side.changes = vec![Change::Ballast { mass, x }]);
        let after = weight(&desk, &hung, found.ballast_at).unwrap().rules[index];
        close(after.share, after.least);
    }
}

/// "Merkblatt für Anbaugeräte" (German federal transport ministry), reported by a regional farm journal: 20 % of the
/// unladen mass, not of the total (`s08.front20`).
#[test]
fn the_road_rule_asks_a_fifth_of_the_unladen_mass_of_the_front_axle() {
    let desk = desk();
    let found = weight(&desk, &story(&desk, "light-front"), None).unwrap();
    let rule = found.rules.iter().find(|rule| rule.rule == "front-share-of-unladen").unwrap();
    close(rule.least * 100.0, 20.0);
    let loads = found.loads.unwrap();
    let (front, rear) = found.bare.unwrap();
    close(rule.share, loads.front.kg() / (front + rear).kg());
}

/// Length identity (`s02.length.check`): overall length = front overhang + wheelbase + rear overhang.
#[test]
fn the_length_is_the_wheelbase_and_both_overhangs() {
    let desk = desk();
    let told = ["ramp", "light-front"].map(|name| judge(&desk, &story(&desk, name)).footprint);
    for footprint in told {
        let parts = [footprint.front_overhang, footprint.wheelbase, footprint.rear_overhang].map(Option::unwrap);
        close(footprint.length.unwrap().m(), parts.iter().map(|part| part.m()).sum());
    }
}

#[test]
fn a_place_behind_the_rear_axle_takes_no_ballast_that_helps() {
    let desk = desk();
    let found = weight(&desk, &story(&desk, "light-front"), Some(Length::from_mm(-100.0))).unwrap();
    assert!(found.rules.iter().all(|rule| rule.ballast.is_none()));
}

#[test]
fn the_machine_tips_first_where_its_centre_lies_nearest() {
    let desk = desk();
    let found = tip(&desk, &story(&desk, "ramp")).unwrap();
    let (x, y, z) = found.centre.unwrap();
    let angles = found.angles.unwrap();
    close(y.mm(), 0.0);
    // Straight behind the centre the slope is as steep as the centre is far ahead for its height.
    let (sin, cos) = angles.slope(TipEdge::Rear).map(fitup_core::plane::Point::unit).map(|to| (to.y, to.x)).unwrap();
    close(sin / cos, x.m() / z.m());
    close(angles.slope(TipEdge::Left).unwrap(), angles.slope(TipEdge::Right).unwrap());
    // Ballast has no height of its own: it moves the centre along and not up.
    let ballast = Change::Ballast { mass: Mass::from_kg(60.0), x: Length::from_m(1.8) };
    let hung = tip(&desk, &story(&desk, "ramp").changed(|build| build.side.changes = vec![ballast])).unwrap();
    let (further, _, height) = hung.centre.unwrap();
    assert!(further > x);
    close(height.m(), z.m());
}

#[test]
fn the_arm_digs_as_deep_as_its_links_allow_and_is_stopped_by_nothing_but_its_feet() {
    let desk = desk();
    let dug = story(&desk, "listed");
    let found = arm_at_work(&desk, &dug).unwrap();
    let all = found.arm.boom + found.arm.dipper + found.arm.bucket;
    assert!(found.reach.depth > 1.0 && found.reach.depth < all - found.arm.foot.y);
    assert!(found.reach.flat_depth.unwrap() < found.reach.depth);
    let reach = found.reach.reach_at_ground.unwrap();
    close(found.reach_from_axle.unwrap().m(), reach - found.swing_x.m());
    assert!(found.pose.is_some(), "it is shown with its tip on the ground, within its reach");
    let free = found.free_swing.unwrap();
    assert!(free.iter().all(|(angle, _)| angle.rad() <= found.swing.rad() + 1e-12));
    assert!(free.iter().all(|(_, stop)| stop.is_none_or(|stop| stop == SwingStop::Stabiliser)));
    assert_eq!(arm_at_work(&desk, &story(&desk, "light-front")), None);
}

#[test]
fn the_tipping_load_balances_and_less_is_lifted_farther_out() {
    let desk = desk();
    let dug = story(&desk, "listed");
    let found = lifting(&desk, &dug).unwrap();
    assert!(found.on_stabilisers && found.missing.is_empty() && found.places.len() >= 6);
    let ground: Vec<_> = found.places.iter().filter(|place| place.height == Length::ZERO).collect();
    for pair in ground.windows(2) {
        assert!(pair[0].rear.tipping.unwrap() > pair[1].rear.tipping.unwrap());
    }
    let far = ground.last().unwrap();
    // The moment of all that stands, about the line, is what the load at its lever takes up.
    let swing_x = arm_at_work(&desk, &dug).unwrap().swing_x;
    let lever = found.line.m() - (swing_x - far.reach).m();
    close(far.rear.tipping.unwrap() * lever / far.rear.stabilising_moment, 1.0);
    assert!(far.rear.hydraulic.is_some() && far.side_tipping.unwrap() > Mass::ZERO);
    assert!(ground[0].rear.hydraulic.is_none());
}

#[test]
fn a_wider_gate_asks_for_less_path() {
    let desk = desk();
    let at = story(&desk, "ramp");
    let wanted = |gate: f64| {
        let gateway = Change::Gateway { width: Length::from_mm(gate) };
        access(&desk, &at.clone().changed(|build| build.side.changes = vec![gateway]))
            .unwrap()
            .path_wanted
            .map(Length::mm)
    };
    // Driving straight out before it turns, a gate that only just lets it through will do.
    let widths: Vec<f64> = [1200.0, 1700.0, 2000.0, 2400.0].into_iter().map(|gate| wanted(gate).unwrap()).collect();
    assert!(widths.windows(2).all(|pair| pair[0] >= pair[1]), "{widths:?}");
    // Two equal corridors of the least width let it round.
    let corridor = access(&desk, &at).unwrap().corridor.unwrap().mm();
    assert!((wanted(corridor + 0.001).unwrap() - corridor).abs() < 1.0);
}

#[test]
fn oil_is_what_the_machine_gives_and_the_implement_stands() {
    let desk = desk();
    let found = hydraulics(&desk, &story(&desk, "listed")).unwrap();
    close(found.flow.unwrap().l_min(), 22.0);
    close(found.power.unwrap().kw(), 22.0 * 140.0 / 600.0);
    close(found.time_to_least.unwrap(), 15.0 / 22.0);
    close(found.time_to_greatest.unwrap(), 30.0 / 22.0);
    assert!(found.line_speeds.windows(2).all(|pair| pair[0].1 > pair[1].1));
}

#[test]
fn what_is_missing_is_named_and_everything_else_is_there() {
    let desk = desk();
    let lost = story(&desk, "missing-data").changed(|build| build.side.trailer = story(&desk, "ramp").side.trailer);
    let found = whole(&desk, &lost);
    let weight = found.weight.unwrap();
    assert!(weight.loads.is_none() && !weight.missing.is_empty());
    assert!(weight.missing.iter().all(|missing| matches!(missing.of, MissingOf::Item(_))));
    assert!(found.arm_at_work.is_some_and(|arm| arm.reach.depth > 0.0));
    assert!(found.loading.is_some_and(|loading| loading.forward.is_some()));
    assert!(found.on_trailer.is_some_and(|on| on.forward.is_none() && on.height.is_some()));
}

#[test]
fn nothing_chosen_has_no_whole_and_no_trailer_leaves_the_four_steps_alone() {
    let desk = desk();
    let empty = whole(&desk, &Build::default());
    assert!(empty.loading.is_none() && empty.weight.is_none() && empty.access.is_none() && empty.tip.is_none());
    let with = story(&desk, "ramp");
    let without = with.clone().changed(|build| (build.side.trailer, build.side.site) = (None, None));
    let listed = judge(&desk, &story(&desk, "listed"));
    assert_eq!(judge(&desk, &without).findings, listed.findings);
    assert_ne!(judge(&desk, &with).findings, listed.findings);
}

/// Whether what a view marks as out of bounds is what the findings refuse, by the finding's code.
fn out_and_told(desk: &Desk, build: &Build) -> Vec<(&'static str, bool, bool)> {
    let answer = judge(desk, build);
    let found = whole(desk, build);
    let (weight, on) = (found.weight.unwrap(), found.on_trailer.unwrap());
    let (access, loading) = (found.access.unwrap(), found.loading.unwrap());
    let drives = [loading.forward, loading.backward];
    let way = way_up(&drives, Some(&on), |way| shortest_ramps(desk, build)[way as usize].is_some());
    let stand = stand_after(&on, way);
    let is_too_high = access.is_too_high();
    let out = [
        ("axle-overloaded", weight.front.is_over() || weight.rear.is_over()),
        ("tyre-overloaded", weight.front_tyre.is_over() || weight.rear_tyre.is_over()),
        ("trailer-overloaded", on.total.is_over() || on.axles(stand).is_over()),
        ("nose-load-out-of-range", stand.is_some_and(|it| it.places_on_deck.is_some() && !it.is_in_range())),
        ("ramp-drags", loading.drive(way).is_some_and(|drive| !drive.clears())),
        ("gate-narrow", access.is_too_wide()),
        ("gate-low", is_too_high),
        ("corner-tight", access.turns() == Some(false) && !access.is_too_wide()),
        ("ground-overloaded", access.heavier_axle().is_over()),
    ];
    let says = |code: &str| answer.findings.iter().any(|finding| finding.code == code);
    let told = |code| match code {
        "ramp-drags" => says(code) || says("ramp-tight"),
        // A coupling that bears less than the least load is out of range wherever the machine stands.
        "nose-load-out-of-range" => says(code) || says("coupling-weak"),
        // Too high with the bar up, and so nearly with it folded that measuring decides.
        "gate-low" => says(code) || is_too_high && says("gate-close"),
        _ => says(code),
    };
    out.map(|(code, out)| (code, out, told(code))).to_vec()
}

#[test]
fn a_view_marks_as_out_of_bounds_what_the_findings_refuse() {
    let desk = desk();
    let mut refused = BTreeSet::new();
    let yard = desk.catalogue();
    for (name, kg) in [("light-front", 0.0), ("light-front", 900.0), ("ramp", 3000.0), ("missing-data", 0.0)] {
        for at in 0..yard.trailers.len().max(yard.sites.len()) {
            let mut build = story(&desk, name);
            build.side.trailer = Some(TrailerId::at(at % yard.trailers.len()));
            build.side.site = Some(SiteId::at(at % yard.sites.len()));
            build.hang(Mass::from_kg(kg), Length::from_m(0.7));
            for (code, out, told) in out_and_told(&desk, &build) {
                assert_eq!(out, told, "{code}: {build:?}");
                refused.extend(told.then_some(code));
            }
        }
    }
    assert!(refused.len() >= 7, "{refused:?}");
}
