//! End angles and breakover of the placed stack.

use super::answer::EndAngle;
use crate::item::{ItemRef, Machine};

/// Angles of a stack; each `None` where nothing limits it or a radius or the wheelbase is missing.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Angles {
    pub departure: Option<EndAngle>,
    pub approach: Option<EndAngle>,
    pub breakover: Option<EndAngle>,
}

/// The angles over the undersides given, metres in the machine's axes.
pub(super) fn angles(_machine: &Machine, _underside: &[(ItemRef, Vec<(f64, f64)>)]) -> Angles {
    Angles::default()
}
