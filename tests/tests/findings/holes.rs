//! Bolt holes.

use fitup_core::build::Change;
use fitup_core::item::{HoleKind, Metal};
use fitup_core::quantity::{Stated, Tool};
use fitup_yard::{ARM, FRAME, MACHINE, SEAT, SQUARE, Yard, drawn, mm, plate};

/// The machine's axle plate with tapped holes in 12 mm of steel.
fn tapped(yard: &mut Yard, diameter: f64, thread: &str) {
    let pattern = yard.holes(MACHINE, "axle plate");
    for hole in &mut pattern.holes {
        (hole.kind, hole.diameter) = (HoleKind::Tapped, Stated::drawn(mm(diameter)));
    }
    (pattern.thread, pattern.plate, pattern.metal) = (Some(thread.into()), Some(mm(12.0)), Some(Metal::Steel));
}

crate::case::findings! {
    bolts_unknown: "bolts-unknown", |yard| *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]), "check, bolts 2, holes 4", "Bolts go through only 2 of 4 holes. The maker has to say whether that is enough.",
        unless |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(2);
        };
    bolts_stated_differently: "bolts-stated-differently",
        |yard| yard.holes(FRAME, "axle plate").bolt = drawn(10.0),
        "check, least 10.00 mm, most 12.00 mm", "The bolts between Long frame and Hedge tractor are stated in two sizes: 10\u{a0}mm and 12\u{a0}mm. Ask which is meant.";
    bolt_not_for_tapped: "bolt-not-for-tapped",
        |yard| {
            tapped(yard, 14.0, "M12");
            yard.holes(MACHINE, "axle plate").thread = None;
        },
        "wont, bolt 12.00 mm, tapped 14.00 mm, side hedge", "Bolts of 12\u{a0}mm do not go into the holes of Hedge tractor, which are tapped 14\u{a0}mm.";
    bolt_too_thick: "bolt-too-thick",
        |yard| yard.holes(FRAME, "axle plate").holes.iter_mut().for_each(|hole| hole.diameter = Stated::drawn(mm(10.5))),
        "wont, hole 10.50 mm, bolt 12.00 mm, over 1.50 mm, side long-frame", "Bolts of 12\u{a0}mm do not enter the 10.5\u{a0}mm holes of Long frame.";
    bolts_will_not_hold: "bolts-will-not-hold",
        |yard| yard.holes(FRAME, "axle plate").holes[0].diameter.value = mm(24.0),
        "wont, hole 24.00 mm, bolt 12.00 mm, side long-frame", "The 24\u{a0}mm holes of Long frame are far too wide for 12\u{a0}mm bolts: head and washer fall through.";
    holes_need_washers: "holes-need-washers",
        |yard| yard.holes(FRAME, "axle plate").holes[0].diameter.value = mm(22.0),
        "work, hole 22.00 mm, bolt 12.00 mm, side long-frame", "The 22\u{a0}mm holes of Long frame are wide for 12\u{a0}mm bolts: fit plate washers.";
    threads_differ: "threads-differ",
        |yard| {
            tapped(yard, 12.0, "M12x1.25");
            yard.holes(FRAME, "axle plate").thread = Some("M12".into());
        },
        "wont, bolt 'M12', tapped 'M12x1.25', side hedge", "The bolts are M12 and the holes of Hedge tractor are tapped M12x1.25: they do not screw together.",
        unless |yard| tapped(yard, 12.0, "M12");
    thread_unknown: "thread-unknown",
        |yard| {
            tapped(yard, 12.0, "M12");
            yard.holes(MACHINE, "axle plate").thread = None;
        },
        "check, size 12.00 mm, side hedge", "The size alone (12\u{a0}mm) does not tell which thread the bolts of Hedge tractor have: metric or inch, coarse or fine. Find out first.",
        unless |yard| tapped(yard, 12.0, "M12");
    thread_too_short: "thread-too-short",
        |yard| {
            tapped(yard, 12.0, "M12");
            yard.holes(MACHINE, "axle plate").plate = Some(mm(10.0));
        },
        "wont, depth 10.00 mm, least 12.00 mm, side hedge", "The holes of Hedge tractor are tapped 10\u{a0}mm deep; the bolts need 12\u{a0}mm of thread.",
        unless |yard| tapped(yard, 12.0, "M12");
    thread_depth_unknown: "thread-depth-unknown",
        |yard| {
            tapped(yard, 12.0, "M12");
            yard.holes(MACHINE, "axle plate").metal = None;
        },
        "check, least 24.00 mm, side hedge", "How deep the holes of Hedge tractor are tapped, and in what metal, is not known. 24\u{a0}mm of thread is enough in any.",
        unless |yard| tapped(yard, 12.0, "M12");
    metal_too_little: "metal-too-little",
        |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(FRAME, "deck").edge = drawn(210.0);
            yard.holes(SEAT, "base").required = Some(4);
        },
        "wont, hole 13.50 mm, metal 10.00 mm, least 16.20 mm, towards 'edge', side long-frame, port 'deck'", "A 13.5\u{a0}mm hole in Long frame would leave too little metal: 10\u{a0}mm to the edge, and 16.2\u{a0}mm is needed.";
    metal_unknown: "metal-unknown",
        |yard| {
            yard.holes(SEAT, "base").holes[2].u.value = mm(84.0);
            yard.holes(SEAT, "base").edge = None;
        },
        "check, hole 14.00 mm, least 16.80 mm, side rear-seat, port 'base'", "Before a 14\u{a0}mm hole is made in Rear seat, see how far the plate reaches: 16.8\u{a0}mm of metal is needed from its middle to the edge.",
        unless |yard| yard.holes(SEAT, "base").holes[2].u.value = mm(84.0);
    holes_drilled: "holes-drilled",
        |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(4);
            yard.build.side.changes.push(Change::Drill { item: FRAME, port: "deck".into() });
        },
        "work, bolts 4, drill 2, margin 1.50 mm, side long-frame, port 'deck', work 0.50 h", "You chose to drill 2 holes in Long frame. Ask the maker before you drill.";
    holes_need_drilling: "holes-need-drilling",
        |yard| {
            *yard.holes(FRAME, "deck") = plate(&SQUARE[..2]);
            yard.holes(SEAT, "base").required = Some(4);
        },
        "work, bolts 4, drill 2, margin 1.50 mm, side long-frame, port 'deck', work 0.50 h", "2 holes have to be drilled in Long frame.";
    holes_need_opening: "holes-need-opening",
        |yard| yard.holes(SEAT, "base").holes[2].u.value = mm(84.0),
        "work, bolts 4, open-by 0.50 mm, margin -0.50 mm, open-carrier 0.50 mm, open-carried 0.50 mm, carrier-port 'deck', carried-port 'base', work 0.80 h", "The bolt holes have to be opened up by up to 0.5\u{a0}mm.";
    holes_opened: "holes-opened",
        |yard| {
            yard.holes(SEAT, "base").holes[2].u.value = mm(84.0);
            yard.build.side.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(1.0) });
            yard.build.side.changes.push(Change::OpenUp { item: FRAME, port: "deck".into(), by: mm(1.0) });
        },
        "work, bolts 4, open-by 1.00 mm, margin 0.50 mm, side long-frame, port 'deck', work 0.40 h", "You chose to open up the bolt holes of Long frame by 1.0\u{a0}mm.";
    holes_plan_not_needed: "holes-plan-not-needed",
        |yard| yard.build.side.changes.push(Change::OpenUp { item: SEAT, port: "base".into(), by: mm(0.5) }),
        "up, item rear-seat, port 'base', kind 'opening'", "The bolt holes of Rear seat need no opening up here.";
    holes_plan_not_possible: "holes-plan-not-possible",
        |yard| yard.build.side.changes.push(Change::Drill { item: ARM, port: "hooks".into() }),
        "check, item arm, port 'hooks', kind 'drilling', reason 'no-holes'", "The drilling you chose for Digging arm cannot be done.";
    holes_may_meet: "holes-may-meet", |yard| yard.port(FRAME, "deck").tolerance = Some(mm(1.6)), "check, bolts 4, margin 1.50 mm, worst-case 1.80 mm, probability 0.997, settles 1.30 mm", "The drawings cannot tell whether the bolt holes of Rear seat and Long frame line up. Measure first.";
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
    holes_unknown: "holes-unknown", |yard| yard.holes(FRAME, "deck").holes.clear(), "check, missing 'holes'", "The bolt holes of one side are not known, so nobody can say yet whether they line up.";
    measurement_not_used: "measurement-not-used",
        |yard| yard.measure(SEAT, "base", "hole-9-u", 80.0, Tool::Tape),
        "check, item rear-seat, port 'base', dimension 'hole-9-u', reason 'no-dimension'", "A measurement of Rear seat cannot be used. Take it again.";
}
