//! Items, clearances, loads, operator, drive.

use fitup_core::finding::{Caution, Check, Evidence, Finding, Grade, Subject, Value, Verdict};
use fitup_core::quantity::{Flow, Power, Pressure, Work};

use super::{ARM, FRAME, MACHINE, SEAT, SPACER, about, find_out, kg, label, mm};

#[expect(clippy::too_many_lines, reason = "a list")]
pub fn samples() -> Vec<Finding> {
    use Verdict::{BoltsUp, BoltsUpWithWork, CheckFirst, WontMount};
    vec![
        about("adapter-goes-in", Subject::Item(SPACER), BoltsUpWithWork)
            .with("work", Value::Work(Work::from_hours(1.5)))
            .with("item", Value::Item(SPACER)),
        about("adapter-goes-in", Subject::Item(SPACER), BoltsUpWithWork)
            .with("work", Value::Work(Work::ZERO))
            .with("item", Value::Item(SPACER)),
        about("adapter-not-needed", Subject::Item(SPACER), BoltsUp).with("item", Value::Item(SPACER)),
        about("arm-on-hitch", Subject::Item(ARM), CheckFirst)
            .with("item", Value::Item(ARM))
            .caution(Caution::ArmOnHitch)
            .check(find_out(ARM, "hitch-stay")),
        about("axle-overloaded", Subject::Loads, WontMount)
            .with("axle", label("rear"))
            .with("load", kg(1480.0))
            .with("rated", kg(1400.0))
            .with("over", kg(80.0)),
        about("axle-within-rating", Subject::Loads, BoltsUp)
            .with("axle", label("front"))
            .with("load", kg(310.0))
            .with("rated", kg(650.0))
            .with("left", kg(340.0)),
        about("bar-in-the-way", Subject::Clearance(MACHINE, ARM), BoltsUpWithWork)
            .with("item", Value::Item(ARM))
            .with("overlap", mm(85.0))
            .with("bar", label("up")),
        about("bar-in-the-way", Subject::Clearance(ARM, MACHINE), BoltsUp)
            .with("item", Value::Item(ARM))
            .with("overlap", mm(60.0))
            .with("bar", label("stays-up"))
            .caution(Caution::RollOverBarUp),
        about("clearance-hit", Subject::Clearance(ARM, SEAT), WontMount)
            .with("item", Value::Item(ARM))
            .with("other", Value::Item(SEAT))
            .with("shape", label("Console"))
            .with("other-shape", label("backrest"))
            .with("overlap", mm(42.0)),
        about("clearance-tight", Subject::Clearance(ARM, SEAT), CheckFirst)
            .with("item", Value::Item(ARM))
            .with("other", Value::Item(SEAT))
            .with("shape", label("Console"))
            .with("other-shape", label("backrest"))
            .with("gap", mm(12.0))
            .with("wanted", mm(25.0)),
        about("clearance-hit", Subject::Clearance(ARM, MACHINE), CheckFirst)
            .with("item", Value::Item(ARM))
            .with("other", Value::Item(MACHINE))
            .with("shape", label("Left stabiliser"))
            .with("other-shape", label("rear-tyre"))
            .with("overlap", mm(12.0)),
        about("clearance-unknown", Subject::Item(ARM), CheckFirst)
            .with("missing", label("outline"))
            .check(find_out(ARM, "outline")),
        about("frame-in-the-ground", Subject::Item(FRAME), WontMount)
            .with("item", Value::Item(FRAME))
            .with("below", mm(40.0)),
        about("frame-low", Subject::Item(FRAME), CheckFirst)
            .with("item", Value::Item(FRAME))
            .with("height", mm(70.0))
            .with("wanted", mm(100.0))
            .check(Check::Look { item: FRAME, what: "underside".to_owned() }),
        about("frame-idle", Subject::Item(FRAME), CheckFirst)
            .with("item", Value::Item(FRAME))
            .with("other", Value::Item(ARM))
            .check(Check::Ask { a: FRAME, b: ARM }),
        about("place-unknown", Subject::Item(ARM), CheckFirst)
            .with("item", Value::Item(ARM))
            .check(find_out(ARM, "pose")),
        about("front-axle-heavy-enough", Subject::Loads, BoltsUp)
            .with("share", Value::Share(0.31))
            .with("least", Value::Share(0.2))
            .with("rule", label("front-share-of-unladen"))
            .caution(Caution::LightFrontAxle),
        about("front-axle-light", Subject::Loads, BoltsUpWithWork)
            .with("share", Value::Share(0.14))
            .with("least", Value::Share(0.2))
            .with("rule", label("front-share-of-unladen"))
            .with("ballast", kg(57.0))
            .with("ballast-at", mm(2100.0))
            .caution(Caution::LightFrontAxle),
        about("front-axle-lifts", Subject::Loads, WontMount)
            .with("lift", kg(36.0))
            .with("ballast", kg(195.0))
            .with("ballast-at", mm(2100.0))
            .caution(Caution::LightFrontAxle),
        about("front-seat-in-the-way", Subject::Operator, WontMount)
            .with("need", label("flips-forward"))
            .with("has", label("fixed")),
        about("front-seat-in-the-way", Subject::Operator, BoltsUpWithWork)
            .with("need", label("comes-off"))
            .with("has", label("bolted")),
        about("front-seat-in-the-way", Subject::Operator, WontMount).with("need", mm(120.0)).with("has", mm(80.0)),
        about("holes-plan-not-needed", Subject::Item(SEAT), BoltsUp)
            .with("item", Value::Item(SEAT))
            .with("port", label("base"))
            .with("kind", label("drilling")),
        about("holes-plan-not-needed", Subject::Item(SEAT), BoltsUp)
            .with("item", Value::Item(SEAT))
            .with("port", label("base"))
            .with("kind", label("opening")),
        about("holes-plan-not-possible", Subject::Item(SEAT), CheckFirst)
            .with("item", Value::Item(SEAT))
            .with("port", label("base"))
            .with("kind", label("drilling"))
            .with("reason", label("no-port")),
        about("holes-plan-not-possible", Subject::Item(SEAT), CheckFirst)
            .with("item", Value::Item(SEAT))
            .with("port", label("base"))
            .with("kind", label("drilling"))
            .with("reason", label("no-holes")),
        about("holes-plan-not-possible", Subject::Item(SEAT), CheckFirst)
            .with("item", Value::Item(SEAT))
            .with("port", label("base"))
            .with("kind", label("opening"))
            .with("reason", label("too-much")),
        about("hydraulics-flow-high", Subject::Hydraulics, CheckFirst)
            .with("flow", Value::Flow(Flow::from_l_min(45.0)))
            .with("most", Value::Flow(Flow::from_l_min(38.0)))
            .caution(Caution::HydraulicPressure),
        about("hydraulics-flow-short", Subject::Hydraulics, CheckFirst)
            .with("flow", Value::Flow(Flow::from_l_min(18.0)))
            .with("least", Value::Flow(Flow::from_l_min(24.0)))
            .with("time-ratio", Value::Share(24.0 / 18.0))
            .caution(Caution::HydraulicPressure),
        about("hydraulics-match", Subject::Hydraulics, BoltsUp)
            .with("flow", Value::Flow(Flow::from_l_min(28.0)))
            .with("pressure", Value::Pressure(Pressure::from_bar(175.0)))
            .with("power", Value::Power(Power::from_kw(8.17)))
            .caution(Caution::HydraulicPressure),
        about("hydraulics-no-power-beyond", Subject::Hydraulics, BoltsUpWithWork),
        about("hydraulics-outlets-short", Subject::Hydraulics, BoltsUpWithWork)
            .with("has", Value::Count(1))
            .with("need", Value::Count(2)),
        about("hydraulics-pressure-high", Subject::Hydraulics, WontMount)
            .with("pressure", Value::Pressure(Pressure::from_bar(210.0)))
            .with("most", Value::Pressure(Pressure::from_bar(180.0))),
        about("hydraulics-pressure-short", Subject::Hydraulics, CheckFirst)
            .with("pressure", Value::Pressure(Pressure::from_bar(140.0)))
            .with("least", Value::Pressure(Pressure::from_bar(160.0))),
        about("hydraulics-unknown", Subject::Hydraulics, CheckFirst)
            .with("missing", label("flow"))
            .check(find_out(MACHINE, "flow")),
        about("implement-own-seat", Subject::Operator, WontMount),
        about("lift-enough", Subject::Item(ARM), BoltsUp)
            .with("mass", kg(280.0))
            .with("lift", kg(420.0))
            .with("left", kg(140.0)),
        about("lift-short", Subject::Item(ARM), WontMount)
            .with("mass", kg(480.0))
            .with("lift", kg(420.0))
            .with("over", kg(60.0)),
        about("lift-unknown", Subject::Item(ARM), CheckFirst)
            .with("missing", label("mass"))
            .check(find_out(ARM, "mass")),
        about("loads-unknown", Subject::Loads, CheckFirst)
            .with("missing", label("centre-of-gravity"))
            .with("item", Value::Item(ARM))
            .check(find_out(ARM, "centre-of-gravity")),
        about("measurement-not-used", Subject::Item(ARM), CheckFirst)
            .with("item", Value::Item(ARM))
            .with("port", label("rack"))
            .with("dimension", label("spread"))
            .with("reason", label("no-port")),
        about("measurement-not-used", Subject::Item(ARM), CheckFirst)
            .with("item", Value::Item(ARM))
            .with("port", label("rack"))
            .with("dimension", label("hole-3-u"))
            .with("reason", label("no-dimension")),
        about("measurement-not-used", Subject::Item(ARM), CheckFirst)
            .with("item", Value::Item(ARM))
            .with("port", label("rack"))
            .with("dimension", label("spread"))
            .with("reason", label("impossible")),
        about("must-come-off", Subject::Item(FRAME), BoltsUpWithWork)
            .with("what", label("Belly mower"))
            .with("item", Value::Item(FRAME)),
        about("must-go-on", Subject::Item(FRAME), BoltsUpWithWork)
            .with("what", label("Loader base"))
            .with("item", Value::Item(FRAME)),
        about("needs-frame", Subject::Item(ARM), WontMount).with("item", Value::Item(ARM)),
        about("nothing-answers", Subject::Item(ARM), WontMount)
            .with("role", label("rack"))
            .with("port", label("hooks"))
            .check(Check::Look { item: ARM, what: "hooks".to_owned() }),
        about("nothing-answers", Subject::Item(ARM), BoltsUpWithWork)
            .with("role", label("case-drain"))
            .with("port", label("drain hose")),
        about("power-high", Subject::Drive, CheckFirst)
            .with("power", Value::Power(Power::from_kw(22.0)))
            .with("most", Value::Power(Power::from_kw(18.0))),
        about("power-short", Subject::Drive, WontMount)
            .with("power", Value::Power(Power::from_kw(12.0)))
            .with("least", Value::Power(Power::from_kw(15.0))),
        about("power-unknown", Subject::Drive, CheckFirst)
            .with("missing", label("power"))
            .check(find_out(MACHINE, "power")),
        about("seat-faces-forward", Subject::Operator, WontMount),
        about("seat-reach-far", Subject::Operator, CheckFirst).with("distance", mm(910.0)).with("most", mm(820.0)),
        about("seat-room", Subject::Operator, BoltsUp).with("room", mm(640.0)).with("least", mm(560.0)),
        about("seat-room-short", Subject::Operator, WontMount)
            .with("room", mm(480.0))
            .with("least", mm(560.0))
            .with("short", mm(80.0)),
        about("seat-room-unknown", Subject::Operator, CheckFirst)
            .with("missing", label("console"))
            .check(find_out(ARM, "console")),
        about("seat-station-differs", Subject::Item(SEAT), WontMount).with("station", label("cab")),
        about("seat-switch-missing", Subject::Wiring, BoltsUpWithWork)
            .check(Check::Look { item: SEAT, what: "presence-switch".to_owned() }),
        about("seat-switch-unknown", Subject::Wiring, CheckFirst),
        Finding { evidence: Evidence::of(Grade::Listed), ..about("seat-turns-not", Subject::Operator, WontMount) },
        about("seat-without-its-supplier", Subject::Item(SEAT), CheckFirst)
            .with("supplier", label("frame"))
            .check(find_out(SEAT, "supplier")),
        about("serial-of-another", Subject::Item(ARM), CheckFirst)
            .with("serial", label("4711"))
            .with("item", Value::Item(ARM))
            .check(find_out(ARM, "serials")),
        about("station-differs", Subject::Item(FRAME), WontMount).with("station", label("open")),
        about("station-unknown", Subject::Item(FRAME), CheckFirst).check(find_out(FRAME, "stations")),
        about("swivel-hits", Subject::Operator, WontMount)
            .with("radius", mm(520.0))
            .with("room", mm(470.0))
            .with("item", Value::Item(ARM)),
        about("tyre-overloaded", Subject::Loads, WontMount)
            .with("axle", label("rear"))
            .with("load", kg(740.0))
            .with("rated", kg(700.0))
            .with("over", kg(40.0)),
    ]
}
