//! What is on the machine as it stands: what it brings, what it needs, what it stands in the way of.

use fitup_core::item::{ShapeRole, View};
use fitup_yard::{MACHINE, Yard, block};

/// A mower under the frame's rails, from the side, and from above where that is drawn.
fn mower(yard: &mut Yard, has_plan: bool) {
    let shapes = &mut yard.fitted("belly mower").body.shapes;
    shapes.push(block("deck", View::Side, ShapeRole::Guard, (300.0, 200.0), (900.0, 380.0)));
    if has_plan {
        shapes.push(block("deck", View::Plan, ShapeRole::Guard, (300.0, -400.0), (900.0, 400.0)));
    }
}

/// The machine's front pads are those of a loader base.
fn base(yard: &mut Yard) {
    let ports = &mut yard.body(MACHINE).ports;
    let at = ports.iter().position(|port| port.role == fitup_core::item::Role::FrontAnchor).expect("it has a front");
    let port = ports.remove(at);
    yard.equipment("loader base").body.ports.push(port);
}

crate::case::findings! {
    equipment_answers: "equipment-answers", base, "wont, what loader-base, role 'front-anchor', port 'front plate'", "Long frame joins to loader-base at “front plate”, and that is not on the machine. Without it the joint is not proven.",
        unless |yard| {
            base(yard);
            yard.fitted("loader base");
        };
    equipment_in_the_way: "equipment-in-the-way", |yard| mower(yard, true), "work, what belly-mower, item long-frame, shape 'deck', other-shape 'rail', overlap 40.00 mm", "belly-mower is in the way of Long frame and comes off.";
    equipment_lacks: "equipment-lacks",
        |yard| yard.fitted("front loader").needs.push("loader pads".into()),
        "wont, what 'loader pads', item front-loader", "front-loader has nothing on the machine to go on: “loader pads” is missing.";
    equipment_may_be_in_the_way: "equipment-may-be-in-the-way", |yard| mower(yard, false), "check, what belly-mower, item long-frame, shape 'deck', other-shape 'rail', overlap 40.00 mm", "belly-mower may be in the way of Long frame.",
        unless |yard| mower(yard, true);
    must_come_off: "must-come-off",
        |yard| {
            yard.frame().excludes.push("belly mower".into());
            yard.fitted("belly mower");
        },
        "work, what belly-mower, item long-frame", "To come off the machine: belly-mower.",
        unless |yard| {
            yard.frame().excludes.push("belly mower".into());
            yard.equipment("belly mower");
        };
    must_go_on: "must-go-on",
        |yard| {
            yard.frame().requires.push("loader base".into());
            yard.equipment("loader base");
        },
        "work, what loader-base, item long-frame", "The machine needs: loader-base.",
        unless |yard| {
            yard.frame().requires.push("loader base".into());
            yard.fitted("loader base");
        };
    nothing_to_put_on: "nothing-to-put-on", |yard| yard.frame().requires.push("loader base".into()), "check, what 'loader base', item long-frame", "The machine needs: loader base. None is listed for it.",
        unless |yard| {
            yard.frame().requires.push("loader base".into());
            yard.equipment("loader base");
        };
}
