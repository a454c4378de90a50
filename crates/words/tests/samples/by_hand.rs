//! What no declaration tells of: the evidence and the checks that findings come with.

use fitup_core::finding::{
    Chain, ChainStep, Check, Evidence, Finding, Grade, ReadOff, Subject, Unstated, Value, Verdict,
};
use fitup_core::item::Role;
use fitup_core::quantity::{Length, Tool};
use fitup_yard::{ARM, FRAME, MACHINE, OTHER_FRAME, finding};

pub fn samples() -> Vec<Finding> {
    let steps = vec![
        ChainStep { old: "FR-201".into(), new: vec!["FR-210".into()], both_ways: true, backwards: false },
        ChainStep { old: "FR-211".into(), new: vec!["FR-210".into()], both_ways: true, backwards: true },
    ];
    let guide = [("guide", name("Attachment guide")), ("date", name("2024-03-01"))];
    let part = [
        ("part", Value::Part("FR-211".to_owned())),
        ("witness", Value::Item(OTHER_FRAME)),
        ("witness-other", Value::Item(ARM)),
    ];
    vec![
        joint("joint-listed", listed(Some(6)), &guide),
        joint("joint-listed", listed(None), &[]),
        joint("joint-same-part", witnessed(Grade::SamePart, Vec::new()), &part),
        joint("joint-replaced-part", witnessed(Grade::ReplacedPart, steps), &part),
        joint("seat-turns-not", Evidence::of(Grade::Listed), &[]),
        joint("port-looked-missing", Evidence::of(Grade::Measured), &[("port", name("spacer holes"))]),
        joint("hooks-unknown", Evidence::of(Grade::None), &[("missing", Value::Dimension("latch".to_owned()))]),
        checked(),
    ]
}

fn name(text: &str) -> Value {
    Value::Name(text.to_owned())
}

fn joint(code: &str, evidence: Evidence, figures: &[(&str, Value)]) -> Finding {
    let subject = Subject::Joint(Role::Rack, FRAME, ARM);
    Finding { evidence, ..finding(code, subject, Verdict::BoltsUp, Grade::Drawing, figures) }
}

fn listed(guide_row: Option<usize>) -> Evidence {
    Evidence { witness: Some((FRAME, ARM)), guide_row, ..Evidence::of(Grade::Listed) }
}

fn witnessed(grade: Grade, steps: Vec<ChainStep>) -> Evidence {
    let chains = vec![Chain { item: FRAME, stands_for: OTHER_FRAME, steps, parts: vec!["FR-211".into()] }];
    let (witness, tools) = (Some((OTHER_FRAME, ARM)), vec![Tool::Caliper]);
    Evidence { witness, guide_row: Some(6), chains, tools, grade, read: vec![read_off()] }
}

fn read_off() -> ReadOff {
    let (port, by, when) = ("axle plates".to_owned(), "the workshop".to_owned(), "Monday".to_owned());
    ReadOff { item: FRAME, port, parts: vec!["FR-211".into()], by, when }
}

/// A finding with a check of every kind, measurements for every tool.
fn checked() -> Finding {
    let measure = |dimension: &str, within: Option<f64>| Check::Measure {
        item: ARM,
        port: "lower lugs".to_owned(),
        dimension: dimension.to_owned(),
        within: within.map(Length::from_mm),
    };
    let look = |what: &str| Check::Look { item: MACHINE, what: what.to_owned() };
    let checks = vec![
        Check::CompareParts { a: (FRAME, "axle plates".to_owned()), b: (ARM, "rack plate".to_owned()) },
        measure("point-1-diameter", Some(0.05)),
        measure("hole-3-u", Some(0.3)),
        measure("spread", Some(1.6)),
        measure("bolt", None),
        look("spacer holes"),
        look("presence-switch"),
        look("axle plates/hole-3"),
        Check::FindOut { item: MACHINE, what: Unstated::Flow },
        Check::Ask { a: FRAME, b: ARM },
    ];
    Finding { checks, ..joint("wiring-fits", Evidence::of(Grade::Drawing), &[("connector", name("4-pin"))]) }
}
