//! One finding of each kind, about the small invented yard.

mod evidence;
mod items;
mod joints;
mod travel;

use fitup_core::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use fitup_core::item::{ItemRef, Role};
use fitup_core::quantity::{Length, Mass};
pub use fitup_yard::{ARM, FRAME, MACHINE, OTHER_FRAME, SEAT};

pub const SPACER: ItemRef = ItemRef::Adapter(fitup_yard::SPACER);

/// At least one finding of each kind, in the order of the codes.
pub fn samples() -> Vec<Finding> {
    let mut all = [evidence::samples(), items::samples(), joints::samples(), travel::samples()].concat();
    all.sort_by_key(|finding| finding.code);
    all
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

fn about(code: &'static str, subject: Subject, verdict: Verdict) -> Finding {
    Finding::new(code, subject, verdict, Grade::Drawing)
}

const fn find_out(item: ItemRef, what: &'static str) -> Check {
    Check::FindOut { item, what }
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
