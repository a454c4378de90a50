//! Bolt holes.

use fitup_core::build::Change;
use fitup_core::quantity::Tool;
use fitup_yard::{ARM, FRAME, SEAT, SQUARE, mm, plate};

crate::case::findings! {
    bolts_unknown: "bolts-unknown", |yard| *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]), "check, bolts 2, holes 4", "Bolts go through 2 of 4 holes, and it is not stated whether that is enough.",
        unless |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(2);
        };
    holes_drilled: "holes-drilled",
        |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(4);
            yard.build.changes.push(Change::Drill { item: FRAME, port: "deck".into() });
        },
        "work, bolts 4, drill 2, margin 1.50 mm, side long-frame, port 'deck', work 0.50 h", "2 holes are drilled in Long frame, as decided.";
    holes_need_drilling: "holes-need-drilling",
        |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(4);
        },
        "work, bolts 4, drill 2, margin 1.50 mm, side long-frame, port 'deck', work 0.50 h", "2 holes have to be drilled in Long frame.";
    holes_need_opening: "holes-need-opening",
        |yard| yard.holes(SEAT, "base").holes[2].u = mm(84.0),
        "work, bolts 4, open-by 1.00 mm, margin -0.50 mm, open-carrier 1.00 mm, open-carried 0.50 mm, carrier-port 'deck', carried-port 'base', work 0.50 h", "The bolt holes have to be opened up a little.";
    holes_opened: "holes-opened",
        |yard| {
            yard.holes(SEAT, "base").holes[2].u = mm(84.0);
            yard.build.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(1.0) });
            yard.build.changes.push(Change::OpenUp { item: FRAME, port: "deck".into(), by: mm(1.0) });
        },
        "work, bolts 4, open-by 1.00 mm, margin 0.50 mm, side long-frame, port 'deck', work 0.40 h", "The bolt holes of Long frame are opened up, as decided.";
    holes_plan_not_needed: "holes-plan-not-needed",
        |yard| yard.build.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(0.5) }),
        "up, item rear-seat, port 'base', kind 'opening'", "The bolt holes of Rear seat need no opening up here.";
    holes_plan_not_possible: "holes-plan-not-possible",
        |yard| yard.build.changes.push(Change::Drill { item: ARM, port: "hooks".into() }),
        "check, item arm, port 'hooks', kind 'drilling', reason 'no-holes'", "Drilling Digging arm is decided, but not as it can be done.";
    holes_may_meet: "holes-may-meet", |yard| yard.port(FRAME, "deck").tolerance = Some(mm(1.6)), "check, bolts 4, margin 1.50 mm, worst-case 1.80 mm, probability 0.997, settles 1.30 mm", "Whether the bolt holes of Rear seat and Long frame line up is too close to call from the drawings.";
    holes_meet: "holes-meet", |_| {}, "up, bolts 2, margin 1.50 mm, worst-case 0.40 mm", "The bolt holes of Long frame and Hedge tractor line up.", unless |yard| *yard = fitup_yard::Yard::new().with_flail();
    holes_miss: "holes-miss", |yard| *yard.holes(SEAT, "base") = plate(&[(0.0, 0.0), (31.0, 0.0), (0.0, 57.0)]), "wont, bolts 3, margin -94.15 mm, worst-case 0.40 mm", "The bolt holes of Rear seat and Long frame do not line up.";
    holes_too_many: "holes-too-many",
        |yard| {
            for (item, name) in [(FRAME, "deck"), (SEAT, "base")] {
                let holes: Vec<(f64, f64)> = (0..600).map(|n| (f64::from(n) * 20.0, f64::from(n * n % 97))).collect();
                *yard.holes(item, name) = plate(&holes);
            }
        },
        "check, holes 600, most 500", "There are too many bolt holes to try every way of laying Rear seat on Long frame. Lay one on the other, or compare the part numbers.";
    holes_unknown: "holes-unknown", |yard| yard.holes(FRAME, "deck").holes.clear(), "check, missing 'holes'", "The bolt holes are not stated on one side, so nobody can say yet whether they line up.";
    measurement_not_used: "measurement-not-used",
        |yard| yard.measure(SEAT, "base", "hole-9-u", 80.0, Tool::Tape),
        "check, item rear-seat, port 'base', dimension 'hole-9-u', reason 'no-dimension'", "A measurement of Rear seat cannot be used. Take it again.";
}
