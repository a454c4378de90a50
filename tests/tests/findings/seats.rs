//! The operator's seat, the seat behind it and the implement's own: each in a state that leaves the others their place.

use fitup_core::build::Change;
use fitup_core::item::{SeatState, ShapeRole, View};
use fitup_core::quantity::Work;
use fitup_yard::{MACHINE, SEAT, Yard, block, mm};

/// Lets the seat behind reach forward to an x of its own axes. The operator's seat begins 270 mm before its base.
fn behind(yard: &mut Yard, to: f64) {
    let shapes = &mut yard.body(SEAT).shapes;
    shapes.push(block("back", View::Side, ShapeRole::Seat, (-60.0, 120.0), (to, 600.0)));
    shapes.push(block("back", View::Plan, ShapeRole::Seat, (-60.0, -220.0), (to, 220.0)));
}

/// The same where the operator's seat only folds.
fn folds(yard: &mut Yard) {
    behind(yard, 300.0);
    yard.machine().operator_seat.as_mut().expect("the machine has a seat").slides_forward = mm(0.0);
}

fn decide(yard: &mut Yard, change: Change) {
    yard.build.side.changes.push(change);
}

crate::case::findings! {
    driver_seat_cannot: "driver-seat-cannot", |yard| decide(yard, Change::DriverSeat(SeatState::Turned)), "wont, state 'turned'", "The operator’s seat cannot stand as you chose: it does not turn.",
        unless |yard| decide(yard, Change::DriverSeat(SeatState::Folded));
    driver_seat_moves: "driver-seat-moves", |yard| folds(yard), "work, state 'folded'", "To work from the seat behind, fold the operator’s seat forward.";
    rear_seat_cannot: "rear-seat-cannot", |yard| decide(yard, Change::RearSeat(SeatState::Folded)), "wont, item rear-seat, state 'folded'", "Rear seat cannot stand as you chose while the machine is driven.",
        unless |yard| decide(yard, Change::RearSeat(SeatState::Off));
    rear_seat_moves: "rear-seat-moves", |yard| folds(yard), "work, item rear-seat, state 'off', hours 0.25 h", "To drive, Rear seat has to come off.";
    seats_clash: "seats-clash",
        |yard| {
            behind(yard, 300.0);
            decide(yard, Change::DriverSeat(SeatState::Driving));
        },
        "wont, item rear-seat, overlap 30.00 mm, used 'working', driver 'driving', behind 'driving'", "While somebody works, Rear seat and the operator’s seat stand in each other’s place.",
        unless |yard| behind(yard, 300.0);
    seats_unknown: "seats-unknown",
        |yard| yard.body(MACHINE).shapes.retain(|shape| shape.role != ShapeRole::Seat),
        "check, missing 'outline', used 'working'", "It is not known whether the operator’s seat leaves room for the seat behind while somebody works.";
    own_seat_comes_off: "own-seat-comes-off",
        |yard| {
            yard.implement().own_seat = Some(true);
            yard.implement().own_seat_moves.off = Some(Work::from_hours(0.4));
        },
        "work, hours 0.40 h", "The implement’s own seat is not the one you chose. It has to come off.";
    own_seat_unknown: "own-seat-unknown", |yard| yard.implement().own_seat = None, "check, missing 'own-seat'", "It is not known whether the implement carries a seat of its own, or whether that comes off.";
}

mod ways {
    use super::*;
    use fitup_core::build::SeatStands;
    use fitup_core::finding::Verdict;
    use fitup_core::fit::Desk;
    use fitup_core::item::FrontSeatEffect;
    use fitup_core::search::remedies;

    /// What is found of the seats, worst first, and how they stand.
    fn told(turn: impl FnOnce(&mut Yard)) -> (Vec<(&'static str, Verdict)>, [SeatState; 2]) {
        let mut yard = Yard::new();
        turn(&mut yard);
        let answer = yard.judge();
        let about = ["driver-seat", "rear-seat", "seats-"];
        let is_told = |code: &str| about.iter().any(|start| code.starts_with(start));
        let found = answer.findings.iter().filter(|f| is_told(f.code)).map(|f| (f.code, f.verdict)).collect();
        (found, [answer.stack.seats.driver.state, answer.stack.seats.rear.state])
    }

    #[test]
    fn what_is_done_by_hand_is_tried_before_what_takes_tools() {
        let to = |to: f64, slides: f64, folds: bool| {
            told(|yard| {
                behind(yard, to);
                let own = yard.machine().operator_seat.as_mut().expect("the machine has a seat");
                (own.slides_forward, own.flips_forward) = (mm(slides), folds);
            })
            .1
        };
        assert_eq!(to(260.0, 120.0, true), [SeatState::Driving; 2], "10 mm are left");
        assert_eq!(to(300.0, 120.0, true), [SeatState::Slid, SeatState::Off]);
        assert_eq!(to(300.0, 0.0, true), [SeatState::Folded, SeatState::Off]);
        assert_eq!(to(300.0, 0.0, false), [SeatState::Off, SeatState::Off]);
        assert_eq!(to(480.0, 120.0, true), [SeatState::Off, SeatState::Off], "in the way however it is moved");
    }

    #[test]
    fn what_the_arrangement_asks_for_or_the_user_decides_is_no_work_where_it_is_done_by_hand() {
        let work = |code| (code, Verdict::BoltsUpWithWork);
        assert_eq!(told(folds).0, [work("driver-seat-moves"), work("rear-seat-moves")]);
        let decided = |yard: &mut Yard| {
            folds(yard);
            decide(yard, Change::DriverSeat(SeatState::Folded));
        };
        assert_eq!(told(decided).0, [work("rear-seat-moves"), ("driver-seat-moves", Verdict::BoltsUp)]);
        let asked = |yard: &mut Yard| {
            folds(yard);
            yard.seat().front_seat = FrontSeatEffect::FlipsForward;
            (yard.seat().moves.folds, yard.seat().body.shapes) = (true, {
                let mut shapes = yard.seat().body.shapes.clone();
                shapes.push(block("down", View::Side, ShapeRole::SeatFolded, (-60.0, 120.0), (100.0, 200.0)));
                shapes
            });
            decide(yard, Change::RearSeat(SeatState::Folded));
        };
        let found = told(asked);
        assert!(found.0.iter().all(|(_, verdict)| *verdict == Verdict::BoltsUp), "{found:?}");
        assert_eq!(found.1, [SeatState::Folded; 2]);
    }

    #[test]
    fn whether_a_seat_comes_off_has_to_be_known() {
        let unknown = |yard: &mut Yard| {
            behind(yard, 480.0);
            yard.machine().operator_seat.as_mut().expect("the machine has a seat").off = None;
            yard.seat().moves.off = None;
        };
        assert_eq!(told(unknown).0, [("seats-clash", Verdict::CheckFirst)], "told once");
    }

    #[test]
    fn folding_the_seat_is_found_as_a_remedy_with_what_it_costs() {
        let mut yard = Yard::new();
        folds(&mut yard);
        yard.seat().moves.folds = true;
        let down = block("down", View::Side, ShapeRole::SeatFolded, (-60.0, 120.0), (100.0, 200.0));
        yard.body(SEAT).shapes.push(down);
        decide(&mut yard, Change::DriverSeat(SeatState::Driving));
        assert_eq!(yard.judge().verdict, Verdict::WontMount);
        let found = remedies(&Desk::new(yard.catalogue.clone()), &yard.build).found;
        let best = found.first().expect("folding helps");
        assert_eq!(best.build.side.driver_seat(), Some(SeatState::Folded), "{:?}", best.steps);
        assert_eq!(best.verdict, Verdict::BoltsUp);
        assert_eq!(best.build.side.rear_seat(), Some(SeatState::Folded), "to drive, the seat behind is folded");
    }

    #[test]
    fn how_far_a_seat_slides_is_told_with_it() {
        let mut yard = Yard::new();
        behind(&mut yard, 300.0);
        assert_eq!(yard.judge().stack.seats.driver, SeatStands { state: SeatState::Slid, by: mm(120.0) });
        yard.seat().front_seat = FrontSeatEffect::SlidesForward(mm(50.0));
        assert_eq!(yard.judge().stack.seats.driver, SeatStands { state: SeatState::Slid, by: mm(50.0) });
    }
}

mod strip {
    use super::*;
    use fitup_core::fit::StripWhat;
    use fitup_core::item::EquipmentId;
    use fitup_yard::{ARM, FRAME};

    #[test]
    fn what_comes_off_stays_and_goes_on_is_told_in_order_with_its_hours() {
        let mut yard = Yard::new();
        folds(&mut yard);
        yard.frame().excludes.push("belly mower".into());
        yard.frame().requires.push("loader base".into());
        yard.fitted("belly mower").off = Some(Work::from_hours(0.5));
        yard.fitted("loader base");
        let strip = yard.judge().strip;
        let hours: Vec<_> = strip.steps.iter().map(|step| step.hours.map(Work::hours)).collect();
        let told: Vec<_> = strip.steps.iter().map(|step| step.what.clone()).collect();
        assert_eq!(
            told[..5],
            [
                StripWhat::TakeOff(EquipmentId(0)),
                StripWhat::Stays(EquipmentId(1)),
                StripWhat::Fit(FRAME),
                StripWhat::Fit(SEAT),
                StripWhat::Fit(ARM),
            ]
        );
        assert!(matches!(told[5], StripWhat::DriverSeat(stands) if stands.state == SeatState::Folded));
        assert!(matches!(told[6], StripWhat::RearSeat(stands) if stands.state == SeatState::Off));
        assert_eq!(hours, [Some(0.5), Some(0.0), Some(3.0), Some(0.25), None, Some(0.0), Some(0.25)]);
        let (total, is_least) = strip.total();
        assert!((total.hours() - 4.0).abs() < 1e-9 && is_least);
    }
}
