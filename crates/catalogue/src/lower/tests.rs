//! What records of the file become in the core.
//!
//! Covers: core/src/item.

use fitup_core::item as core;
use fitup_core::quantity::{Angle, Length, Mass, Money, Source, Stated, Tool};

use super::{Lower, Units};
use crate::decode::{Decode, read};
use crate::report::Report;
use crate::wire::body::Point;
use crate::wire::header;
use crate::wire::machine::Machine;
use crate::wire::part::Part;
use crate::wire::port::Port;
use crate::wire::seat::FrontSeatEffect;
use crate::wire::trailer::Trailer;
use crate::wire::value;

fn units() -> Units {
    let header: header::Units = read(
        r#"{"length": "in", "mass": "lb", "pressure": "psi", "flow": "gal/min", "power": "hp", "angle": "deg", "money": "USD"}"#,
    )
    .unwrap();
    Units::of(&header, &mut Report::new())
}

fn lowered<T: Decode + Lower>(text: &str) -> T::Core {
    read::<T>(text).unwrap().lower(units())
}

/// Inches, exactly 25.4 mm (International Yard and Pound agreement, 1959).
fn inches(inches: f64) -> Length {
    Length::new(inches, fitup_core::quantity::LengthUnit::Inch)
}

#[test]
fn a_port_keeps_every_field_in_the_units_of_the_header() {
    let port = lowered::<Port>(
        r#"{"name": "deck", "role": "seat_deck", "end": "carried", "parts": ["A-1"], "tolerance": 0.25, "source": "tape",
            "serials": {"first": 7}, "pose": {"at": {"x": -10, "z": 20}, "faces": "down", "up": "front"},
            "kind": {"seat_base": {"pedestal": 4, "pattern": {"required": 3, "may_flip": true, "plate": 0.5, "metal": "cast_iron", "edge": 2, "pair_width": 30, "thread": "1/2-13 UNC", "holes": [
                {"u": 1, "v": -2, "diameter": 0.5, "kind": "tapped", "slot": {"travel": 3, "direction": 90}}]}}}}"#,
    );
    let hole = core::Hole {
        u: Stated::drawn(inches(1.0)),
        v: Stated::drawn(inches(-2.0)),
        diameter: Stated::drawn(inches(0.5)),
        kind: core::HoleKind::Tapped,
        slot: Some(core::Slot { travel: inches(3.0), direction: Angle::from_deg(90.0) }),
    };
    let pattern = core::BoltPattern {
        holes: vec![hole],
        plate: Some(inches(0.5)),
        metal: Some(core::Metal::CastIron),
        bolt: None,
        edge: Some(Stated::drawn(inches(2.0))),
        pair_width: Some(Stated::drawn(inches(30.0))),
        thread: Some("1/2-13 UNC".into()),
        class: None,
        torque: None,
        required: Some(3),
        may_flip: true,
    };
    let mut expected = core::Port {
        name: "deck".into(),
        role: core::Role::SeatDeck,
        end: core::End::Carried,
        pose: Some(core::Pose {
            at: core::Point3 { x: inches(-10.0), y: Length::ZERO, z: inches(20.0) }.into(),
            faces: core::Towards::Down,
            up: core::Towards::Front,
        }),
        parts: vec!["A-1".into()],
        serials: core::Serials { first: Some(7), last: None },
        tolerance: Some(inches(0.25)),
        source: Source::Measured(Tool::Tape),
        kind: core::PortKind::SeatBase(core::SeatBase { pattern, pedestal: Some(inches(4.0)) }),
    };
    expected.spread_source();
    assert_eq!(port, expected);
}

#[test]
fn what_the_file_leaves_out_is_not_known_in_the_core() {
    let row = r#"{"id": "m", "label": "M", "station": "cab", "rear": {"track": 40}, "wheelbase": {"value": 60, "plus_minus": 1, "source": "caliper"}}"#;
    let machine = read::<Machine>(row).unwrap().lower(core::Body::default(), units());
    assert_eq!((machine.station, machine.front_axle), (core::Station::Cab, core::FrontAxle::Unknown));
    assert_eq!(
        (machine.rear.track, machine.rear.rated, machine.front),
        (Some(inches(40.0)), None, core::Axle::default())
    );
    let wheelbase =
        Stated { value: inches(60.0), plus_minus: Some(inches(1.0)), source: Source::Measured(Tool::Caliper) };
    assert_eq!(machine.wheelbase, Some(wheelbase));
    assert_eq!(machine.hydraulics, core::HydraulicSupply::default());
    assert_eq!(lowered::<Point>(r#"{"x": 1, "z": 2}"#).y, Length::ZERO);
}

#[test]
fn choices_shares_money_and_parts_are_what_they_were() {
    assert_eq!(lowered::<FrontSeatEffect>(r#""comes_off""#), core::FrontSeatEffect::ComesOff);
    let slides = lowered::<FrontSeatEffect>(r#"{"slides_forward": 2}"#);
    assert_eq!(slides, core::FrontSeatEffect::SlidesForward(inches(2.0)));
    let trailer = lowered::<Trailer>(
        r#"{"id": "t", "label": "T", "ramp": {"angle": 15}, "nose_least": 0.05, "rated_nose": 100}"#,
    );
    assert_eq!(trailer.ramp, Some(core::RampSize::Angle(Angle::from_deg(15.0))));
    assert_eq!(trailer.nose_least, Some(0.05));
    // One pound is exactly 0.453 592 37 kg (the same agreement).
    assert!((trailer.rated_nose.unwrap() - Mass::from_kg(45.359_237)).kg().abs() < 1e-9);
    assert_eq!(value::Money(19.999).lower(units()), Money::from_hundredths(2000));
    let both_ways = |word: &str| {
        let part = format!(r#"{{"number": "a", "name": "A", "replaced": {{"by": ["b"], "serves": "{word}"}}}}"#);
        lowered::<Part>(&part).replaced.map(|it| it.both_ways)
    };
    assert_eq!((both_ways("both_ways"), both_ways("forward_only")), (Some(true), Some(false)));
}
