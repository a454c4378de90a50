//! A build as text, against a catalogue, and back to its file.

use fitup_core::build::{
    ArmAngles, Build, Carrying, Change, Choices, Measurement, NumberRead, Presence, Seating, Side,
};
use fitup_core::item::{
    AdapterId, ArmLink, Catalogue, DiggingArm, EquipmentId, FrameId, ImplementId, ItemRef, MachineId, Port, SeatId,
    SiteId, TrailerId,
};
use fitup_core::quantity::{Angle, Length, Mass, Tool};

use super::*;
use crate::link;
use crate::problem::{Code, Position};

/// A yard of one of everything, its arm beside an implement that has none.
fn catalogue() -> Catalogue {
    let mut yard = fitup_yard::Yard::new();
    yard.trailer();
    yard.site();
    yard.equipment("belly mower");
    yard.equipment("loader base");
    let (rack, auger) = (yard.port(fitup_yard::ARM, "hooks").clone(), &mut yard.catalogue.implements);
    auger.swap(0, 1);
    auger[0].body.id = "auger".into();
    auger[1].body.ports = vec![Port { name: "rack".into(), ..rack }];
    let link = |least: f64, greatest: f64| ArmLink {
        length: Length::from_m(1.0),
        least: Angle::from_deg(least),
        greatest: Angle::from_deg(greatest),
        transport: Angle::ZERO,
        mass: None,
        centre: None,
    };
    auger[1].arm = Some(DiggingArm {
        swing_x: Length::ZERO,
        foot_u: Length::ZERO,
        foot_z: Length::ZERO,
        boom: link(-30.0, 60.0),
        dipper: link(-120.0, 0.0),
        bucket: link(-90.0, 45.0),
        swing: Angle::ZERO,
        stabilisers: None,
        lift_at_full_reach: None,
    });
    yard.catalogue
}

#[test]
fn what_resolves_is_kept_and_what_does_not_is_named_once() {
    let file = BuildFile {
        machine: Some("gone".into()),
        implement: Some("auger".into()),
        on_hand: vec!["auger".into(), "lost".into()],
        ..BuildFile::default()
    };
    let (build, unresolved) = file.resolve(&catalogue());
    assert_eq!(build.choices.implement, Some(ImplementId(0)));
    assert_eq!(build.choices.machine, None);
    assert_eq!(build.side.on_hand.len(), 1);
    let named: Vec<_> = unresolved.iter().map(|u| (u.place, u.text.as_str())).collect();
    assert_eq!(named, [(UnresolvedIn::Machine, "gone"), (UnresolvedIn::OnHand, "lost")]);
}

#[test]
fn an_id_of_another_table_is_not_taken_for_this_one() {
    let file = BuildFile { machine: Some("auger".into()), ..BuildFile::default() };
    let (build, unresolved) = file.resolve(&catalogue());
    assert_eq!(build, Build::default());
    assert_eq!(unresolved.len(), 1);
}

#[test]
fn impossible_lengths_and_masses_are_named_and_dropped() {
    let file = BuildFile {
        changes: vec![
            ChangeFile::Ballast(BallastFile { mass_kg: -5.0, x_mm: 0.0 }),
            ChangeFile::Ramps(LengthFile { length_mm: -2.0 }),
            ChangeFile::OpenUp(OpenUpFile { item: "auger".into(), port: "hitch".into(), by_mm: 1e9 }),
        ],
        ..BuildFile::default()
    };
    let (build, unresolved) = file.resolve(&catalogue());
    assert_eq!(build.side.changes, []);
    assert_eq!(unresolved.iter().map(|u| u.text.as_str()).collect::<Vec<_>>(), ["-5 kg", "-2 mm", "1000000000 mm"]);
}

#[test]
fn what_no_unit_can_measure_is_named_with_its_port_and_dropped() {
    let of = |dimension: &str, mm: f64, plus_minus_mm: Option<f64>, readings_mm: &[f64]| {
        let measured = MeasuredFile {
            item: "arm".into(),
            port: "rack".into(),
            dimension: dimension.into(),
            mm,
            tool: ToolFile::Caliper,
            plus_minus_mm,
            readings_mm: readings_mm.to_vec(),
            note: String::new(),
        };
        let (build, unresolved) = BuildFile { measured: vec![measured], ..BuildFile::default() }.resolve(&catalogue());
        let named: Vec<_> = unresolved.into_iter().map(|it| (it.place, it.text)).collect();
        assert_eq!(build.side.measured.len() + named.len(), 1);
        named.into_iter().next()
    };
    let value = |text: &str| Some((UnresolvedIn::MeasuredValue, text.to_owned()));
    let half = |text: &str| Some((UnresolvedIn::MeasuredHalfRange, text.to_owned()));
    assert_eq!(of("spread", 51.6, Some(0.1), &[51.5, 51.7]), None);
    assert_eq!(of("spread", -51.6, None, &[]), value("arm rack spread: -51.6 mm"));
    assert_eq!(of("spread", 0.0, None, &[]), value("arm rack spread: 0 mm"));
    assert_eq!(of("spread", 1e8, None, &[]), value("arm rack spread: 100000000 mm"));
    assert_eq!(of("spread", 51.6, None, &[51.5, 1e8]), value("arm rack spread: 100000000 mm"));
    assert_eq!(of("spread", 51.6, Some(-0.1), &[]), half("arm rack spread: ±-0.1 mm"));
    assert_eq!(of("spread", 51.6, Some(60.0), &[]), half("arm rack spread: ±60 mm"));
    assert_eq!(of("at-x", -51.6, Some(60.0), &[]), None, "a place may be anywhere");
    assert_eq!(of("girth", 51.6, None, &[]), None, "the judgement tells of a dimension that is not there");
}

#[test]
fn a_number_read_belongs_to_a_port_and_is_a_number() {
    let read = |port: &str, number: &str| NumberReadFile {
        item: "arm".into(),
        port: port.into(),
        parts: vec![number.into()],
        by: String::new(),
        when: String::new(),
    };
    let numbers_read = vec![read("rack", "AX-1104"), read("girth", "AX-1104"), read("rack", " - ")];
    let (build, unresolved) = BuildFile { numbers_read, ..BuildFile::default() }.resolve(&catalogue());
    assert_eq!(build.side.read.len(), 1);
    let named: Vec<_> = unresolved.iter().map(|it| (it.place, it.text.as_str())).collect();
    let place = UnresolvedIn::NumberRead;
    assert_eq!(named, [(place, "arm girth"), (place, "arm rack: \" - \"")]);
}

#[test]
fn a_pose_is_within_its_arms_limits_and_needs_an_arm() {
    let catalogue = catalogue();
    let told = |file: BuildFile| {
        let (build, unresolved) = file.resolve(&catalogue);
        (build.side.pose.is_some(), unresolved.into_iter().map(|it| (it.place, it.text)).collect::<Vec<_>>())
    };
    let posed = |boom_deg: f64, dipper_deg: f64| BuildFile {
        implement: Some("arm".into()),
        pose: Some(PoseFile { boom_deg, dipper_deg, bucket_deg: 0.0 }),
        ..BuildFile::default()
    };
    assert_eq!(told(posed(60.0, -120.0)), (true, Vec::new()));
    let beyond = ["61°", "NaN°"].map(|text| (UnresolvedIn::Pose, text.to_owned())).to_vec();
    assert_eq!(told(posed(61.0, f64::NAN)), (false, beyond));
    let other = BuildFile { implement: Some("auger".into()), ..posed(0.0, 0.0) };
    assert_eq!(told(other), (false, Vec::new()));
}

#[test]
fn a_build_survives_the_file_and_back() {
    let catalogue = catalogue();
    let arm = ItemRef::Implement(ImplementId(1));
    let length = Length::from_mm;
    let changes = vec![
        Change::Drill { item: arm, port: "rack".into() },
        Change::OpenUp { item: arm, port: "rack".into(), by: length(0.5) },
        Change::DriverSeat(SeatState::Folded),
        Change::RearSeat(SeatState::Off),
        Change::FoldRollOverBar,
        Change::TakeOff(EquipmentId(0)),
        Change::PutOn(EquipmentId(1)),
        Change::Ramps { length: length(2600.0) },
        Change::Gateway { width: length(1250.5) },
        Change::Path { width: length(1900.0) },
        Change::Ballast { mass: Mass::from_kg(120.0), x: length(1850.0) },
    ];
    let measured = Measurement {
        item: arm,
        port: "rack".into(),
        dimension: "spread".into(),
        value: length(25.1),
        tool: Tool::Caliper,
        plus_minus: Some(length(0.05)),
        readings: vec![length(25.08), length(25.12)],
        note: "cold".into(),
    };
    let read = NumberRead {
        item: arm,
        port: "rack".into(),
        parts: vec!["AX-1104".into(), "AX-1105".into()],
        by: "the workshop".into(),
        when: "Monday".into(),
    };
    let degrees = Angle::from_deg;
    // Every field by its name, so that a new one cannot be left out here.
    let build = Build {
        choices: Choices {
            machine: Some(MachineId(0)),
            carrying: Carrying::Frame(FrameId(0)),
            seating: Seating::This(SeatId(0)),
            implement: Some(ImplementId(1)),
        },
        side: Side {
            adapters: vec![AdapterId(0), AdapterId(0)],
            changes,
            measured: vec![measured],
            read: vec![read],
            looked: [((arm, "spacer holes".to_owned()), Presence::No)].into_iter().collect(),
            serials: [(arm, 40_211)].into_iter().collect(),
            on_hand: [arm].into_iter().collect(),
            trailer: Some(TrailerId(0)),
            site: Some(SiteId(0)),
            pose: Some(ArmAngles { boom: degrees(31.0), dipper: degrees(-70.25), bucket: degrees(5.1) }),
        },
    };
    let file = BuildFile::of(&catalogue, &build);
    assert_eq!(file.resolve(&catalogue), (build.clone(), Vec::new()));
    assert_eq!(link::read(&link::write(&file)).as_ref(), Ok(&file));
    let hung = build.changed(|build| build.choices.carrying = Carrying::Hitch);
    assert_eq!(BuildFile::of(&catalogue, &hung).resolve(&catalogue), (hung, Vec::new()));
}

#[test]
fn everything_that_is_written_is_read() {
    let port = || PortFile { item: "f".into(), port: "rack".into() };
    // Every field by its name, so that a new one cannot be left out here.
    let build = BuildFile {
        format: BUILD_FORMAT,
        machine: Some("m".into()),
        frame: Some("f".into()),
        hitch: true,
        seat: Some("s".into()),
        implement: Some("i".into()),
        adapters: vec!["a".into(), "a".into()],
        changes: vec![
            ChangeFile::Drill(port()),
            ChangeFile::OpenUp(OpenUpFile { item: "f".into(), port: "rack".into(), by_mm: 0.5 }),
            ChangeFile::DriverSeat(SeatStateFile::Slid),
            ChangeFile::RearSeat(SeatStateFile::Driving),
            ChangeFile::FoldRollOverBar,
            ChangeFile::TakeOff("loader".into()),
            ChangeFile::PutOn("loader".into()),
            ChangeFile::Ramps(LengthFile { length_mm: 1896.0 }),
            ChangeFile::Gateway(WidthFile { width_mm: 2410.0 }),
            ChangeFile::Path(WidthFile { width_mm: 1905.5 }),
            ChangeFile::Ballast(BallastFile { mass_kg: 120.0, x_mm: -900.25 }),
        ],
        measured: vec![MeasuredFile {
            item: "m".into(),
            port: "rack".into(),
            dimension: "hole-1".into(),
            mm: 25.1,
            tool: ToolFile::Caliper,
            plus_minus_mm: Some(0.05),
            readings_mm: vec![25.05, 25.15],
            note: "cold \"morning\"\nü".into(),
        }],
        numbers_read: vec![NumberReadFile {
            item: "m".into(),
            port: "rack".into(),
            parts: vec!["AX-1104".into()],
            by: "J.".into(),
            when: "Monday".into(),
        }],
        looked: vec![LookedFile { item: "m".into(), what: "stay".into(), there: true }],
        serials: [("m".to_owned(), 12_345)].into_iter().collect(),
        on_hand: vec!["s".into()],
        trailer: Some("t".into()),
        site: Some("g".into()),
        pose: Some(PoseFile { boom_deg: 31.0, dipper_deg: -70.25, bucket_deg: 5.0 }),
    };
    let text = crate::json::json(&build);
    assert!(text.contains(r#"{"open_up":{"item":"f","port":"rack","by_mm":0.5}},{"driver_seat":"slid"}"#), "{text}");
    assert_eq!(BuildFile::read(&text), Ok(build));
}

#[test]
fn what_is_not_said_is_not_written() {
    assert_eq!(crate::json::json(&BuildFile::default()), r#"{"format":1}"#);
    assert_eq!(BuildFile::read(r#"{"format": 1}"#), Ok(BuildFile::default()));
}

#[test]
fn a_newer_format_is_told_from_a_fault_and_all_faults_are_told_with_their_place() {
    let codes = |text: &str| BuildFile::read(text).unwrap_err().iter().map(|p| p.code).collect::<Vec<_>>();
    assert_eq!(codes(r#"{"format": 2, "new": []}"#), [Code::NewerFormat]);
    assert_eq!(codes(r#"{"format": 0}"#), [Code::UnknownFormat]);
    assert_eq!(codes(r#"{"machine": "a"}"#), [Code::MissingFormat]);
    assert_eq!(codes(r#"{"format": 1, "changes": [{"weld": 1}]}"#), [Code::UnknownWord]);
    assert_eq!(codes("[]"), [Code::WrongType]);
    assert_eq!(codes("{"), [Code::Syntax]);
    let problems = BuildFile::read("{\"format\": 1,\n \"machine\": 7,\n \"serials\": {\"a\": -1}}").unwrap_err();
    let places: Vec<_> = problems.iter().map(|problem| (problem.path.as_str(), problem.position.clone())).collect();
    let at = |line, column| Some(Position::Text { line, column });
    assert_eq!(places, [("machine", at(2, 13)), ("serials.a", at(3, 19))]);
}

#[test]
fn a_change_of_an_older_file_is_told_as_it_is_written_now() {
    let problems = BuildFile::read(r#"{"format": 1, "changes": ["front_seat_forward"]}"#).unwrap_err();
    let told: Vec<_> = problems.iter().map(|problem| (problem.path.as_str(), problem.arg("suggestion"))).collect();
    assert_eq!(told, [("changes[0]", Some(r#"{"driver_seat": "folded"}"#))]);
}
