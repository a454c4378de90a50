//! Joints compare bodies in space: each test turns one thing of the yard that no foreman would pass.

use fitup_core::finding::Verdict;
use fitup_core::fit::Answer;
use fitup_core::item::{BoltPattern, ItemRef, PinPoint, Towards};
use fitup_core::quantity::{Length, Tool};
use fitup_yard::{ARM, FRAME, MACHINE, SLEEVE, Yard, drawn, hole, mm};

/// The worst verdict of findings with these codes, and the codes that are found.
fn worst(answer: &Answer) -> Vec<&'static str> {
    answer.findings.iter().filter(|f| f.verdict == answer.verdict).map(|f| f.code).collect()
}

fn puts(yard: &mut Yard, item: ItemRef, port: &str, holes: &[(f64, f64)]) {
    let pattern = yard.holes(item, port);
    *pattern = BoltPattern { holes: holes.iter().map(|&(u, v)| hole(u, v)).collect(), ..pattern.clone() };
}

/// An asymmetric pattern as one looks at the machine's face.
const CROOKED: [(f64, f64); 3] = [(-60.0, 0.0), (60.0, 0.0), (40.0, 70.0)];

fn with_axle_plates(frame: impl Fn((f64, f64)) -> (f64, f64)) -> Yard {
    let mut yard = Yard::new();
    puts(&mut yard, MACHINE, "axle plate", &CROOKED);
    puts(&mut yard, FRAME, "axle plate", &CROOKED.map(frame));
    yard
}

#[test]
fn plates_that_face_each_other_meet_mirrored() {
    let mirrored = with_axle_plates(|(u, v)| (-u, v)).judge();
    assert_eq!(mirrored.verdict, Verdict::BoltsUp, "{:?}", worst(&mirrored));
    let unmirrored = with_axle_plates(|at| at).judge();
    assert!(worst(&unmirrored).contains(&"holes-need-drilling"), "{:?}", worst(&unmirrored));
}

#[test]
fn a_pattern_upside_down_does_not_go_on_whether_or_not_the_plate_may_be_turned() {
    let upside_down = |(u, v): (f64, f64)| (u, -v);
    let turned = with_axle_plates(upside_down).judge();
    assert!(turned.verdict > Verdict::BoltsUp, "{:?}", worst(&turned));
    // Turned round it meets; but then the frame lies on its head, and where it stands nobody can draw.
    let mut may = with_axle_plates(upside_down);
    may.holes(FRAME, "axle plate").may_flip = true;
    assert!(may.judge().verdict > Verdict::BoltsUp, "{:?}", worst(&may.judge()));
}

#[test]
fn a_front_plate_too_high_too_far_aside_or_facing_elsewhere_does_not_meet() {
    let with = |turn: fn(&mut fitup_core::item::Pose)| {
        let mut yard = Yard::new();
        turn(yard.port(FRAME, "front plate").pose.as_mut().expect("it is placed"));
        yard.judge()
    };
    assert_eq!(with(|_| {}).verdict, Verdict::BoltsUp);
    let codes = [
        with(|pose| pose.at.z.value = mm(120.0)),
        with(|pose| pose.at.y = mm(60.0)),
        with(|pose| pose.at.y = mm(-60.0)),
        with(|pose| (pose.faces, pose.up) = (Towards::Up, Towards::Front)),
    ]
    .map(|answer| (answer.verdict, worst(&answer)));
    let no = |code| (Verdict::WontMount, vec![code]);
    let wanted = ["closure-height-off", "closure-aside", "closure-aside", "closure-faces-apart"].map(no);
    assert_eq!(codes, wanted);
}

fn frame_at(yard: &Yard) -> Length {
    yard.judge().stack.placement(FRAME).expect("the frame stands").at.x
}

#[test]
fn the_frame_stands_where_its_holes_put_it() {
    let stands = frame_at(&Yard::new());
    let mut moved = Yard::new();
    for hole in &mut moved.holes(FRAME, "axle plate").holes {
        hole.u.value += mm(300.0);
    }
    // The frame's plate looks to the right, so that its u points forward, and the frame comes to lie 300 mm back.
    assert!((frame_at(&moved) - stands + mm(300.0)).abs() < mm(0.001));
    let moved_back = moved.judge();
    assert!(worst(&moved_back).contains(&"closure-misses"), "{:?}", worst(&moved_back));
    for hole in &mut moved.holes(FRAME, "axle plate").holes {
        hole.u.value += mm(-300.0);
        hole.v.value += mm(300.0);
    }
    let raised = moved.judge();
    assert!((raised.stack.placement(FRAME).expect("the frame stands").at.z - mm(100.0)).abs() < mm(0.001));
    assert!(worst(&raised).contains(&"closure-height-off"), "{:?}", worst(&raised));
}

fn pinned(turn: impl Fn(&mut Yard)) -> Answer {
    let mut yard = Yard::new();
    yard.pinned();
    turn(&mut yard);
    yard.judge()
}

#[test]
fn lugs_go_into_clevises_by_where_they_are_and_as_many_as_there_are() {
    assert_eq!(pinned(|_| {}).verdict, Verdict::BoltsUp);
    let rows_changed = pinned(|yard| yard.pins(ARM, "hooks").points.reverse());
    assert_eq!(rows_changed.verdict, Verdict::BoltsUp, "{:?}", worst(&rows_changed));
    let one_higher = pinned(|yard| yard.pins(ARM, "hooks").points[1].height = drawn(200.0));
    assert_eq!(worst(&one_higher), ["pins-heights-off"]);
    let four = pinned(|yard| {
        let points = &mut yard.pins(ARM, "hooks").points;
        points.extend(points.clone());
    });
    assert_eq!(worst(&four), ["pins-count-differs"]);
}

#[test]
fn where_points_differ_and_nobody_says_which_is_where_it_is_asked() {
    let without_across = |yard: &mut Yard| {
        for (item, port) in [(ARM, "hooks"), (FRAME, "rack")] {
            yard.pins(item, port).points.iter_mut().for_each(|point| point.across = None);
        }
    };
    assert_eq!(pinned(without_across).verdict, Verdict::BoltsUp, "all points of a side are alike");
    let unlike = pinned(|yard| {
        without_across(yard);
        yard.pins(ARM, "hooks").points[0].width = drawn(31.0);
    });
    assert_eq!((unlike.verdict, worst(&unlike)), (Verdict::CheckFirst, vec!["pins-unknown"]));
    let without_height = pinned(|yard| yard.pins(ARM, "hooks").points[0].height = None);
    assert_eq!((without_height.verdict, worst(&without_height)), (Verdict::CheckFirst, vec!["pins-unknown"]));
}

/// All points of the arm, so many of them: bores of 28 mm on 25 mm pins, and a set of two sleeves.
fn sleeved(points: usize) -> Yard {
    let mut yard = Yard::new();
    yard.pinned();
    for (item, port) in [(ARM, "hooks"), (FRAME, "rack")] {
        let pins = yard.pins(item, port);
        let upper: Vec<_> =
            pins.points.iter().cloned().map(|point| PinPoint { height: drawn(150.0), ..point }).collect();
        pins.points.extend(upper);
        pins.points.truncate(points);
    }
    yard.pins(ARM, "hooks").points.iter_mut().for_each(|point| point.diameter = drawn(28.0));
    yard.build.side.adapters.push(SLEEVE);
    yard
}

#[test]
fn a_sleeve_goes_into_one_bore_and_into_one_that_is_known_well_enough() {
    let has = |yard: &Yard, code: &str| yard.judge().findings.iter().any(|finding| finding.code == code);
    assert!(has(&sleeved(2), "pins-sleeved") && !has(&sleeved(2), "pins-need-sleeve"));
    assert!(has(&sleeved(4), "pins-need-sleeve"), "two sleeves, four bores");
    let mut taped = sleeved(2);
    for point in ["point-1-diameter", "point-2-diameter"] {
        taped.measure(ARM, "hooks", point, 29.0, Tool::Tape);
    }
    assert!(!has(&taped, "pins-sleeved") && taped.judge().verdict == Verdict::CheckFirst);
}

/// The bolts of the axle joint as a caliper finds them, in millimetres, with the thread where one is stated.
fn bolts(measured: f64, thread: Option<&str>) -> Yard {
    let mut yard = Yard::new();
    for (item, port) in [(MACHINE, "axle plate"), (FRAME, "axle plate")] {
        let pattern = yard.holes(item, port);
        (pattern.bolt, pattern.thread) = (None, thread.map(Into::into));
        pattern.holes.iter_mut().for_each(|hole| hole.diameter.value = mm(17.5));
    }
    yard.holes(MACHINE, "axle plate").bolt = drawn(16.0);
    yard.measure(MACHINE, "axle plate", "bolt", measured, Tool::Caliper);
    yard
}

#[test]
fn a_measured_bolt_may_be_metric_or_inch_until_its_thread_is_known() {
    let asked = |yard: &Yard| yard.judge().findings.iter().any(|finding| finding.code == "thread-unknown");
    // M16 and 5/8 in, 15.875 mm.
    assert!(asked(&bolts(15.8, None)));
    assert!(!asked(&bolts(15.8, Some("M16"))) && !asked(&bolts(15.8, Some("5/8-11 UNC"))));
    assert!(!asked(&Yard::new()), "a drawing that says 12 mm means M12");
}

#[test]
fn no_bolt_goes_into_a_hole_tapped_for_another_and_a_stated_thread_counts_as_its_size() {
    for tapped in [10.0, 12.7, 14.0] {
        let mut yard = Yard::new();
        for hole in &mut yard.holes(MACHINE, "axle plate").holes {
            (hole.kind, hole.diameter.value) = (fitup_core::item::HoleKind::Tapped, mm(tapped));
        }
        let answer = yard.judge();
        assert_eq!((answer.verdict, worst(&answer)), (Verdict::WontMount, vec!["bolt-not-for-tapped"]), "{tapped}");
    }
    let mut inch = Yard::new();
    inch.holes(FRAME, "axle plate").thread = Some("1/2-13 UNC".into());
    assert!(worst(&inch.judge()).contains(&"bolts-stated-differently"), "{:?}", worst(&inch.judge()));
}

#[test]
fn slack_that_a_bush_takes_up_is_work_and_more_of_it_another_size() {
    let with = |opening: f64| {
        let mut yard = Yard::new();
        yard.rack(ARM, "hooks").diameter = drawn(opening);
        yard.judge().verdict
    };
    assert_eq!([41.5, 43.5, 52.0].map(with), [Verdict::BoltsUp, Verdict::BoltsUpWithWork, Verdict::WontMount]);
    let mut thin = Yard::new();
    thin.rack(ARM, "hooks").latch = drawn(21.0);
    assert_eq!(thin.judge().verdict, Verdict::BoltsUpWithWork);
}

#[test]
fn an_edge_that_is_measured_settles_whether_holes_may_be_made() {
    let mut yard = Yard::new();
    yard.holes(fitup_yard::SEAT, "base").holes[2].u.value = mm(84.0);
    yard.holes(fitup_yard::SEAT, "base").edge = None;
    assert_eq!(yard.judge().verdict, Verdict::CheckFirst);
    yard.measure(fitup_yard::SEAT, "base", "edge", 30.0, Tool::Tape);
    assert_eq!(yard.judge().verdict, Verdict::BoltsUpWithWork);
    yard.measure(fitup_yard::SEAT, "base", "edge", 10.0, Tool::Tape);
    assert_eq!(yard.judge().verdict, Verdict::WontMount);
}

#[test]
fn an_arm_that_looks_the_wrong_way_does_not_go_on() {
    let with = |faces: Towards, up: Towards| {
        let mut yard = Yard::new();
        let pose = yard.port(ARM, "hooks").pose.as_mut().expect("it is placed");
        (pose.faces, pose.up) = (faces, up);
        let answer = yard.judge();
        (answer.verdict, answer.findings.iter().any(|finding| finding.code == "faces-turned"))
    };
    assert!(!with(Towards::Front, Towards::Up).1);
    for (faces, up) in [(Towards::Rear, Towards::Up), (Towards::Front, Towards::Down), (Towards::Up, Towards::Rear)] {
        assert_eq!(with(faces, up), (Verdict::WontMount, true), "{faces:?}");
    }
}
