//! One finding of each kind, about a small invented catalogue.

#![allow(dead_code, reason = "each test file uses a part of it")]

use fitup_core::finding::{Caution, Chain, ChainStep, Check, Evidence, Finding, Grade, Subject, Value, Verdict};
use fitup_core::item::{
    Adapter, AdapterId, Body, Catalogue, CatalogueName, Frame, FrameId, FrontAxle, FrontSeatEffect, HydraulicSupply,
    Implement, ImplementId, ImplementKind, ItemRef, Machine, MachineId, Mount, Role, Seat, SeatId, SeatKind, Station,
    SuppliedWith,
};
use fitup_core::quantity::{Flow, Length, Mass, Power, Pressure, Tool, Work};

pub const MACHINE: ItemRef = ItemRef::Machine(MachineId(0));
pub const OTHER_MACHINE: ItemRef = ItemRef::Machine(MachineId(1));
pub const FRAME: ItemRef = ItemRef::Frame(FrameId(0));
pub const OTHER_FRAME: ItemRef = ItemRef::Frame(FrameId(1));
pub const SEAT: ItemRef = ItemRef::Seat(SeatId(0));
pub const ARM: ItemRef = ItemRef::Implement(ImplementId(0));
pub const SPACER: ItemRef = ItemRef::Adapter(AdapterId(0));

pub fn catalogue() -> Catalogue {
    let body = |id: &str, label: &str| Body { id: id.to_owned(), label: label.to_owned(), ..Body::default() };
    let machine = |id, label| Machine {
        body: body(id, label),
        station: Station::Open,
        wheelbase: None,
        rear: fitup_core::item::Axle::default(),
        front: fitup_core::item::Axle::default(),
        front_axle: FrontAxle::Unknown,
        centre_of_gravity_height: None,
        turning_radius: None,
        roll_over_bar: None,
        cab_rear: None,
        operator_seat: None,
        hydraulics: HydraulicSupply::default(),
        fitted: Vec::new(),
    };
    let frame =
        |id, label| Frame { body: body(id, label), stations: Vec::new(), excludes: Vec::new(), requires: Vec::new() };
    Catalogue {
        name: CatalogueName { currency: "USD".to_owned(), ..CatalogueName::default() },
        machines: vec![machine("hedge", "Hedge tractor"), machine("path", "Path tractor")],
        frames: vec![frame("long-frame", "Long frame"), frame("short-frame", "Short frame")],
        seats: vec![Seat {
            body: body("rear-seat", "Rear seat"),
            kind: SeatKind::Separate,
            supplied_with: SuppliedWith::Kit,
            stations: Vec::new(),
            index_point: None,
            swivel_radius: None,
            front_seat: FrontSeatEffect::None,
            least_room: None,
            greatest_reach: None,
            presence_switch: None,
        }],
        implements: vec![Implement {
            body: body("arm", "Digging arm"),
            kind: ImplementKind::DiggingArm,
            mount: Mount::Rack,
            arm: None,
            console: None,
            worked_from_seat: true,
            hydraulics: None,
            power_least: None,
            power_most: None,
            own_seat: false,
            transport_width: None,
        }],
        adapters: vec![Adapter { body: body("spacer", "Rack spacer"), work: Work::from_hours(1.5), sleeve: None }],
        ..Catalogue::default()
    }
}

fn mm(value: f64) -> Value {
    Value::Length(Length::from_mm(value))
}

fn kg(value: f64) -> Value {
    Value::Mass(Mass::from_kg(value))
}

fn label(text: &str) -> Value {
    Value::Label(text.to_owned())
}

fn joint(code: &'static str, role: Role, verdict: Verdict) -> Finding {
    let (a, b) = match role {
        Role::AxleAnchor | Role::FrontAnchor => (MACHINE, FRAME),
        Role::SeatDeck => (FRAME, SEAT),
        Role::Rack => (FRAME, ARM),
        _ => (MACHINE, ARM),
    };
    Finding::new(code, Subject::Joint(role, a, b), verdict, Grade::Drawing)
}

fn measure(item: ItemRef, port: &str, dimension: &str, within: Option<f64>) -> Check {
    Check::Measure { item, port: port.to_owned(), dimension: dimension.to_owned(), within: within.map(Length::from_mm) }
}

/// At least one finding of each kind, in the order of the codes.
#[allow(clippy::too_many_lines, reason = "a list")]
pub fn samples() -> Vec<Finding> {
    use Verdict::{BoltsUp, BoltsUpWithWork, CheckFirst, WontMount};
    let find_out = |item, what| Check::FindOut { item, what };
    let about = |code, subject, verdict| Finding::new(code, subject, verdict, Grade::Drawing);
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
        witnessed("joint-listed", Grade::Listed, BoltsUp, Vec::new())
            .with("guide", label("Attachment guide"))
            .with("date", label("2024-03-01")),
        Finding {
            evidence: Evidence { witness: Some((FRAME, ARM)), ..Evidence::of(Grade::Listed) },
            ..joint("joint-listed", Role::Rack, BoltsUp)
        },
        witnessed(
            "joint-replaced-part",
            Grade::ReplacedPart,
            BoltsUp,
            vec![
                ChainStep { old: "FR-201".into(), new: vec!["FR-210".into()], both_ways: true, backwards: false },
                ChainStep { old: "FR-211".into(), new: vec!["FR-210".into()], both_ways: true, backwards: true },
            ],
        )
        .with("part", label("FR-211"))
        .with("witness", Value::Item(OTHER_FRAME))
        .with("witness-other", Value::Item(ARM)),
        witnessed("joint-same-part", Grade::SamePart, BoltsUp, Vec::new())
            .with("part", label("FR-211"))
            .with("witness", Value::Item(OTHER_FRAME))
            .with("witness-other", Value::Item(ARM)),
        joint("kinds-differ", Role::Rack, WontMount).with("carrier", label("hook-rack")).with("carried", label("pins")),
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
        joint("listing-and-dimensions-disagree", Role::AxleAnchor, CheckFirst)
            .with("margin", mm(-3.2))
            .with("worst-case", mm(0.4)),
        joint("listing-and-dimensions-disagree", Role::Rack, CheckFirst),
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
        Finding {
            evidence: Evidence::of(Grade::Measured),
            ..joint("port-looked-missing", Role::AxleAnchor, WontMount)
        }
        .with("port", label("spacer holes")),
        joint("port-not-on-serial", Role::AxleAnchor, WontMount)
            .with("port", label("spacer holes"))
            .with("serial", label("40211")),
        joint("port-serial-unknown", Role::AxleAnchor, CheckFirst)
            .with("port", label("spacer holes"))
            .check(Check::Look { item: MACHINE, what: "spacer holes".to_owned() })
            .check(Check::Look { item: MACHINE, what: "axle plates/hole-3".to_owned() }),
        about("power-high", Subject::Drive, CheckFirst)
            .with("power", Value::Power(Power::from_kw(22.0)))
            .with("most", Value::Power(Power::from_kw(18.0))),
        about("power-short", Subject::Drive, WontMount)
            .with("power", Value::Power(Power::from_kw(12.0)))
            .with("least", Value::Power(Power::from_kw(15.0))),
        about("power-unknown", Subject::Drive, CheckFirst)
            .with("missing", label("power"))
            .check(find_out(MACHINE, "power")),
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
        joint("wiring-differs", Role::Wiring, BoltsUpWithWork)
            .with("carrier", label("7-pin"))
            .with("carried", label("4-pin")),
        joint("wiring-fits", Role::Wiring, BoltsUp).with("connector", label("4-pin")),
        about("access-unknown", Subject::Site, CheckFirst)
            .with("missing", label("turning-radius"))
            .with("item", Value::Item(MACHINE))
            .check(find_out(MACHINE, "turning-radius")),
        about("corner-clears", Subject::Site, BoltsUp)
            .with("wanted", mm(2310.0))
            .with("gate", mm(2400.0))
            .with("path", mm(2600.0)),
        about("corner-tight", Subject::Site, CheckFirst)
            .with("wanted", mm(2310.0))
            .with("gate", mm(1500.0))
            .with("path", mm(1900.0)),
        about("corner-tight", Subject::Site, CheckFirst).with("gate", mm(1200.0)).with("path", mm(1900.0)),
        about("gate-low", Subject::Site, WontMount)
            .with("height", mm(2350.0))
            .with("gate", mm(2300.0))
            .with("beyond", mm(50.0)),
        about("gate-low", Subject::Site, BoltsUpWithWork)
            .with("height", mm(2350.0))
            .with("gate", mm(2300.0))
            .with("beyond", mm(50.0))
            .with("folded", mm(1780.0)),
        about("gate-narrow", Subject::Site, WontMount)
            .with("beyond", mm(256.0))
            .with("width", mm(1456.0))
            .with("gate", mm(1200.0)),
        about("gate-passes", Subject::Site, BoltsUp)
            .with("left", mm(54.0))
            .with("width", mm(1092.0))
            .with("gate", mm(1200.0)),
        about("ground-carries", Subject::Site, BoltsUp)
            .with("left", kg(310.0))
            .with("axle", label("rear"))
            .with("load", kg(890.0))
            .with("most", kg(1200.0)),
        about("ground-overloaded", Subject::Site, WontMount)
            .with("over", kg(110.0))
            .with("axle", label("front"))
            .with("load", kg(1010.0))
            .with("most", kg(900.0)),
        about("loading-unknown", Subject::Loading, CheckFirst)
            .with("missing", label("track"))
            .with("item", Value::Item(MACHINE))
            .check(find_out(MACHINE, "track")),
        about("nose-load-in-range", Subject::Loading, BoltsUp)
            .with("from", mm(177.0))
            .with("to", mm(244.0))
            .with("nose", kg(85.0))
            .with("least", kg(71.0))
            .with("most", kg(100.0))
            .with("heading", label("backward")),
        about("nose-load-in-range", Subject::Loading, BoltsUp)
            .with("from", mm(1740.0))
            .with("to", mm(1920.0))
            .with("nose", kg(119.0))
            .with("least", kg(89.0))
            .with("most", kg(150.0))
            .with("heading", label("forward")),
        about("nose-load-out-of-range", Subject::Loading, WontMount)
            .with("nose", kg(-151.0))
            .with("least", kg(118.0))
            .with("most", kg(118.0))
            .with("heading", label("forward")),
        ramp("ramp-clears", BoltsUp, "forward").with("clearance", mm(75.0)),
        ramp("ramp-clears", BoltsUp, "backward").with("clearance", mm(75.0)),
        ramp("ramp-clears", BoltsUp, "either").with("clearance", mm(75.0)),
        ramp("ramp-drags", BoltsUpWithWork, "forward")
            .with("drags-by", mm(29.0))
            .with("wanted", mm(30.0))
            .with("place", label("behind"))
            .with("distance", mm(780.0))
            .with("shortest", mm(1858.0)),
        ramp("ramp-drags", WontMount, "backward")
            .with("drags-by", mm(318.0))
            .with("wanted", mm(30.0))
            .with("place", label("ahead"))
            .with("distance", mm(2080.0)),
        ramp("ramp-tight", BoltsUpWithWork, "forward")
            .with("clearance", mm(12.0))
            .with("wanted", mm(30.0))
            .with("place", label("between"))
            .with("distance", mm(640.0))
            .with("shortest", mm(2010.0)),
        ramp("ramp-tight", WontMount, "backward")
            .with("clearance", mm(12.0))
            .with("wanted", mm(30.0))
            .with("place", label("behind"))
            .with("distance", mm(1240.0)),
        about("site-unknown", Subject::Site, CheckFirst)
            .with("missing", label("gate-width"))
            .with("site", label("Walled garden")),
        about("tie-downs-needed", Subject::Loading, BoltsUp)
            .with("count", Value::Count(1))
            .with("together", kg(240.0))
            .with("each", kg(480.0))
            .caution(Caution::TieDown),
        about("tie-downs-needed", Subject::Loading, BoltsUp)
            .with("count", Value::Count(2))
            .with("together", kg(545.0))
            .with("each", kg(545.0))
            .caution(Caution::TieDown),
        about("trailer-carries", Subject::Loading, BoltsUp)
            .with("left", kg(89.0))
            .with("rating", label("total"))
            .with("load", kg(1411.0))
            .with("rated", kg(1500.0)),
        about("trailer-narrow", Subject::Loading, WontMount)
            .with("width", mm(1440.0))
            .with("deck", mm(1400.0))
            .with("beyond", mm(40.0)),
        about("trailer-overloaded", Subject::Loading, WontMount)
            .with("over", kg(867.0))
            .with("rating", label("total"))
            .with("load", kg(2367.0))
            .with("rated", kg(1500.0)),
        about("trailer-overloaded", Subject::Loading, WontMount)
            .with("over", kg(126.0))
            .with("rating", label("axle"))
            .with("load", kg(1526.0))
            .with("rated", kg(1400.0)),
        about("trailer-short", Subject::Loading, WontMount).with("wheelbase", mm(1980.0)).with("deck", mm(1900.0)),
        about("trailer-unknown", Subject::Loading, CheckFirst)
            .with("missing", label("nose-load"))
            .with("trailer", label("Tilting trailer")),
    ]
}

/// A finding on the trailer's ramp.
fn ramp(code: &'static str, verdict: Verdict, way: &str) -> Finding {
    Finding::new(code, Subject::Loading, verdict, Grade::Drawing)
        .with("item", Value::Item(ARM))
        .with("way", label(way))
        .with("ramp", mm(1200.0))
        .caution(Caution::LoadingRamps)
}

fn witnessed(code: &'static str, grade: Grade, verdict: Verdict, steps: Vec<ChainStep>) -> Finding {
    let mut finding = joint(code, Role::Rack, verdict);
    let chains = if grade == Grade::Listed {
        Vec::new()
    } else {
        vec![Chain { item: FRAME, stands_for: OTHER_FRAME, steps, parts: vec!["FR-211".into()] }]
    };
    let witness = Some(if grade == Grade::Listed { (FRAME, ARM) } else { (OTHER_FRAME, ARM) });
    finding.evidence = Evidence { witness, guide_row: Some(6), chains, tools: vec![Tool::Caliper], grade };
    finding
}
