//! Joints: ports that meet, port by port.

use fitup_core::finding::{Caution, Check, Finding, Value, Verdict};
use fitup_core::item::Role;
use fitup_core::quantity::Work;

use super::{ARM, FRAME, MACHINE, SEAT, SPACER, joint, label, measure, mm};

#[expect(clippy::too_many_lines, reason = "a list")]
pub fn samples() -> Vec<Finding> {
    use Verdict::{BoltsUp, BoltsUpWithWork, CheckFirst, WontMount};
    vec![
        joint("closure-meets", Role::FrontAnchor, BoltsUp)
            .with("margin", mm(1.1))
            .with("worst-case", mm(0.8))
            .with("off-by", mm(0.4))
            .with("slot", mm(12.0)),
        joint("closure-meets", Role::FrontAnchor, BoltsUp)
            .with("margin", mm(1.1))
            .with("worst-case", mm(0.8))
            .with("off-by", mm(0.4))
            .with("slot", mm(0.0)),
        joint("closure-misses", Role::FrontAnchor, WontMount)
            .with("margin", mm(-17.5))
            .with("worst-case", mm(0.8))
            .with("off-by", mm(38.0))
            .with("longer", mm(-38.0)),
        joint("closure-open", Role::FrontAnchor, CheckFirst)
            .with("margin", mm(0.3))
            .with("worst-case", mm(0.8))
            .with("off-by", mm(1.9))
            .with("probability", Value::Share(0.87))
            .with("settles", mm(0.25))
            .check(measure(FRAME, "front plates", "at-x", Some(0.25))),
        joint("closure-unknown", Role::FrontAnchor, CheckFirst).with("missing", label("pose")).check(measure(
            FRAME,
            "front plates",
            "pose",
            None,
        )),
        joint("coupler-differs", Role::Pressure, BoltsUpWithWork)
            .with("line", label("pressure"))
            .with("carrier", label("ISO 7241-A 12.5"))
            .with("carried", label("ISO 16028 12.5")),
        joint("coupler-fits", Role::Return, BoltsUp)
            .with("line", label("return"))
            .with("standard", label("ISO 7241-A"))
            .with("size", label("12.5")),
        joint("coupler-unknown", Role::CaseDrain, CheckFirst)
            .with("line", label("case-drain"))
            .with("missing", label("size"))
            .check(measure(ARM, "drain hose", "size", None)),
        joint("hitch-differs", Role::Hitch, WontMount).with("carrier", label("1N, 1")).with("carried", label("2")),
        joint("hitch-dimension-misfits", Role::Hitch, WontMount)
            .with("dimension", label("lower-pin"))
            .with("carrier", mm(22.0))
            .with("carried", mm(28.0))
            .with("limit", mm(0.0))
            .with("over", mm(6.0)),
        joint("hitch-dimension-open", Role::Hitch, CheckFirst)
            .with("dimension", label("span"))
            .with("carrier", mm(683.0))
            .with("carried", mm(684.0))
            .with("limit", mm(1.5))
            .with("probability", Value::Share(0.8))
            .with("settles", mm(0.5)),
        joint("hitch-fits", Role::Hitch, BoltsUp).with("category", label("1")),
        joint("hitch-frame-stiff", Role::Hitch, WontMount).with("carrier", label("2")).with("carried", label("2N")),
        joint("hitch-needs-bushings", Role::Hitch, BoltsUpWithWork)
            .with("carrier", label("2"))
            .with("carried", label("1")),
        joint("hitch-other-span", Role::Hitch, BoltsUpWithWork)
            .with("carrier", label("2"))
            .with("carried", label("2N")),
        joint("hitch-unknown", Role::Hitch, CheckFirst).with("missing", label("category")).check(measure(
            ARM,
            "hitch pins",
            "category",
            None,
        )),
        joint("holes-drilled", Role::SeatDeck, BoltsUpWithWork)
            .with("bolts", Value::Count(4))
            .with("drill", Value::Count(2))
            .with("margin", mm(0.75))
            .with("side", Value::Item(SEAT))
            .with("port", label("base"))
            .with("work", Value::Work(Work::from_hours(0.5)))
            .caution(Caution::DrillingOrWelding),
        joint("holes-may-meet", Role::AxleAnchor, CheckFirst)
            .with("bolts", Value::Count(4))
            .with("margin", mm(0.2))
            .with("worst-case", mm(0.4))
            .with("probability", Value::Share(0.998))
            .with("settles", mm(0.1))
            .check(measure(FRAME, "axle plates", "hole-3-u", Some(0.1)))
            .check(Check::CompareParts {
                a: (MACHINE, "axle plates".to_owned()),
                b: (FRAME, "axle plates".to_owned()),
            }),
        joint("holes-meet", Role::AxleAnchor, BoltsUp)
            .with("bolts", Value::Count(4))
            .with("margin", mm(1.0))
            .with("worst-case", mm(0.4)),
        joint("holes-miss", Role::AxleAnchor, WontMount)
            .with("bolts", Value::Count(4))
            .with("margin", mm(-6.3))
            .with("worst-case", mm(0.4)),
        joint("holes-miss", Role::AxleAnchor, WontMount).with("bolts", Value::Count(4)),
        joint("holes-need-drilling", Role::AxleAnchor, BoltsUpWithWork)
            .with("bolts", Value::Count(4))
            .with("drill", Value::Count(2))
            .with("margin", mm(1.0))
            .with("side", Value::Item(FRAME))
            .caution(Caution::DrillingOrWelding),
        joint("holes-need-drilling", Role::AxleAnchor, BoltsUpWithWork)
            .with("bolts", Value::Count(1))
            .with("drill", Value::Count(1))
            .with("margin", mm(1.0))
            .with("side", Value::Item(FRAME))
            .caution(Caution::DrillingOrWelding),
        joint("holes-need-opening", Role::AxleAnchor, BoltsUpWithWork)
            .with("bolts", Value::Count(4))
            .with("open-by", mm(0.8))
            .with("margin", mm(0.0))
            .caution(Caution::DrillingOrWelding),
        joint("holes-opened", Role::Rack, BoltsUpWithWork)
            .with("bolts", Value::Count(2))
            .with("open-by", mm(0.4))
            .with("margin", mm(0.05))
            .with("side", Value::Item(ARM))
            .with("port", label("rack plate"))
            .with("work", Value::Work(Work::from_hours(0.2)))
            .caution(Caution::DrillingOrWelding),
        joint("bolts-unknown", Role::SeatDeck, CheckFirst)
            .with("bolts", Value::Count(2))
            .with("holes", Value::Count(4))
            .check(Check::Ask { a: FRAME, b: SEAT }),
        joint("holes-too-many", Role::SeatDeck, CheckFirst)
            .with("holes", Value::Count(600))
            .with("most", Value::Count(500)),
        joint("holes-unknown", Role::AxleAnchor, CheckFirst).with("missing", label("holes")).check(measure(
            FRAME,
            "axle plates",
            "holes",
            None,
        )),
        joint("hooks-hold", Role::Rack, BoltsUp).with("play", mm(1.2)).with("limit", mm(3.0)),
        joint("hooks-may-hold", Role::Rack, CheckFirst)
            .with("dimension", label("spread"))
            .with("play", mm(2.9))
            .with("limit", mm(3.0))
            .with("probability", Value::Share(0.62))
            .with("settles", mm(1.6))
            .check(measure(ARM, "hooks", "spread", Some(1.6))),
        joint("hooks-misfit", Role::Rack, WontMount)
            .with("dimension", label("spread"))
            .with("carrier", mm(420.0))
            .with("carried", mm(460.0))
            .with("off-by", mm(40.0))
            .with("limit", mm(3.0)),
        joint("hooks-unknown", Role::Rack, CheckFirst)
            .with("missing", label("latch"))
            .check(measure(ARM, "hooks", "latch", None)),
        joint("kinds-differ", Role::Rack, WontMount).with("carrier", label("hook-rack")).with("carried", label("pins")),
        joint("listing-and-dimensions-disagree", Role::AxleAnchor, CheckFirst)
            .with("margin", mm(-3.2))
            .with("worst-case", mm(0.4)),
        joint("listing-and-dimensions-disagree", Role::Rack, CheckFirst),
        joint("pins-enter", Role::Rack, BoltsUp)
            .with("running", mm(0.4))
            .with("limit", mm(1.5))
            .with("point", label("lower left")),
        joint("pins-may-enter", Role::Rack, CheckFirst)
            .with("dimension", label("diameter"))
            .with("point", label("lower left"))
            .with("running", mm(0.1))
            .with("limit", mm(1.5))
            .with("probability", Value::Share(0.84))
            .with("settles", mm(0.05))
            .check(measure(ARM, "lower lugs", "point-1-diameter", Some(0.05))),
        joint("pins-may-enter", Role::Rack, CheckFirst)
            .with("dimension", label("spread"))
            .with("running", mm(0.1))
            .with("limit", mm(2.0))
            .with("probability", Value::Share(0.84)),
        joint("pins-need-sleeve", Role::Rack, BoltsUpWithWork)
            .with("running", mm(5.0))
            .with("limit", mm(1.5))
            .with("point", label("lower left"))
            .with("bore", mm(30.0))
            .with("pin", mm(25.0)),
        joint("pins-side-play", Role::Rack, BoltsUpWithWork)
            .with("play", mm(9.0))
            .with("limit", mm(6.0))
            .with("point", label("lower left")),
        joint("pins-sleeved", Role::Rack, BoltsUpWithWork)
            .with("bore", mm(30.0))
            .with("pin", mm(25.0))
            .with("item", Value::Item(SPACER)),
        joint("pins-spread-off", Role::Rack, WontMount)
            .with("carrier", mm(420.0))
            .with("carried", mm(431.0))
            .with("off-by", mm(11.0))
            .with("limit", mm(2.0)),
        joint("pins-unknown", Role::Rack, CheckFirst)
            .with("missing", label("point-2-diameter"))
            .with("point", label("upper"))
            .check(measure(ARM, "lower lugs", "point-2-diameter", None)),
        joint("pins-will-not-enter", Role::Rack, WontMount)
            .with("dimension", label("diameter"))
            .with("point", label("lower left"))
            .with("carrier", mm(25.0))
            .with("carried", mm(28.0))
            .with("over", mm(3.0)),
        joint("pins-will-not-enter", Role::Rack, WontMount)
            .with("dimension", label("width"))
            .with("point", label("lower left"))
            .with("carrier", mm(45.0))
            .with("carried", mm(50.0))
            .with("over", mm(5.0)),
        joint("port-not-on-serial", Role::AxleAnchor, WontMount)
            .with("port", label("spacer holes"))
            .with("serial", label("40211")),
        joint("port-serial-unknown", Role::AxleAnchor, CheckFirst)
            .with("port", label("spacer holes"))
            .check(Check::Look { item: MACHINE, what: "spacer holes".to_owned() })
            .check(Check::Look { item: MACHINE, what: "axle plates/hole-3".to_owned() }),
        joint("pto-differs", Role::PowerTakeOff, WontMount)
            .with("dimension", label("speed"))
            .with("carrier", label("540"))
            .with("carried", label("1000")),
        joint("pto-differs", Role::PowerTakeOff, WontMount)
            .with("dimension", label("rotation"))
            .with("carrier", label("clockwise"))
            .with("carried", label("counter-clockwise")),
        joint("pto-differs", Role::PowerTakeOff, BoltsUpWithWork)
            .with("dimension", label("shaft-type"))
            .with("carrier", label("1"))
            .with("carried", label("2")),
        joint("pto-fits", Role::PowerTakeOff, BoltsUp)
            .with("shaft-type", Value::Count(1))
            .with("speed", Value::Count(540)),
        joint("pto-unknown", Role::PowerTakeOff, CheckFirst).with("missing", label("speed")).check(measure(
            ARM,
            "drive shaft",
            "speed",
            None,
        )),
        joint("wiring-differs", Role::Wiring, BoltsUpWithWork)
            .with("carrier", label("7-pin"))
            .with("carried", label("4-pin")),
        joint("wiring-fits", Role::Wiring, BoltsUp).with("connector", label("4-pin")),
    ]
}
