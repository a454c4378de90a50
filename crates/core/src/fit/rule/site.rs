//! The build's site: gateway, turn behind it, ground.

use super::missing::missing;
use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::whole::{Access, Widths, access_of};
use crate::quantity::Length;

/// The machine has to go through the site's gateway, turn behind it where the path does, and not sink its ground.
pub(super) fn rule(context: &Context, footprint: &Footprint, out: &mut Vec<Finding>) {
    if context.build.site.is_none() {
        return;
    }
    let Some(access) = access_of(context, footprint, Widths::default()) else { return };
    missing(context, "access-unknown", Subject::Site, &access.missing, out);
    width(&access, out);
    height(&access, out);
    corner(&access, out);
    ground(&access, out);
}

fn about(code: &'static str, verdict: Verdict) -> Finding {
    Finding::new(code, Subject::Site, verdict, Grade::Drawing)
}

fn width(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(width), Some(left)) = (access.gate, access.width, access.gate_left()) else { return };
    let finding = if left < Length::ZERO {
        about("gate-narrow", Verdict::WontMount).with("beyond", Value::Length(-left))
    } else {
        about("gate-passes", Verdict::BoltsUp).with("left", Value::Length(left / 2.0))
    };
    out.push(finding.with("width", Value::Length(width)).with("gate", Value::Length(gate)));
}

fn height(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(height)) = (access.gate_height, access.height) else { return };
    if height <= gate {
        return;
    }
    let folded = access.height_folded.filter(|folded| *folded <= gate);
    let verdict = if folded.is_some() { Verdict::BoltsUpWithWork } else { Verdict::WontMount };
    let mut finding = about("gate-low", verdict)
        .with("height", Value::Length(height))
        .with("gate", Value::Length(gate))
        .with("beyond", Value::Length(height - gate));
    if let Some(folded) = folded {
        finding = finding.with("folded", Value::Length(folded));
    }
    out.push(finding);
}

/// Where one sweep does not do, a few moves to and fro may: that has to be tried.
fn corner(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(path)) = (access.gate, access.path) else { return };
    let passes = access.gate_left().is_some_and(|left| left >= Length::ZERO);
    if !access.right_angle_turn || access.swept.is_none() || !passes {
        return;
    }
    let finding = match access.path_wanted {
        Some(wanted) if wanted <= path => {
            about("corner-clears", Verdict::BoltsUp).with("wanted", Value::Length(wanted))
        }
        Some(wanted) => about("corner-tight", Verdict::CheckFirst).with("wanted", Value::Length(wanted)),
        None => about("corner-tight", Verdict::CheckFirst),
    };
    out.push(finding.with("gate", Value::Length(gate)).with("path", Value::Length(path)));
}

fn ground(access: &Access, out: &mut Vec<Finding>) {
    let (Some((front, rear)), Some(most)) = (access.axle_loads, access.greatest_axle_load) else { return };
    let (axle, load) = if front > rear { ("front", front) } else { ("rear", rear) };
    let finding = if load > most {
        about("ground-overloaded", Verdict::WontMount).with("over", Value::Mass(load - most))
    } else {
        about("ground-carries", Verdict::BoltsUp).with("left", Value::Mass(most - load))
    };
    out.push(
        finding
            .with("axle", Value::Label(axle.to_owned()))
            .with("load", Value::Mass(load))
            .with("most", Value::Mass(most)),
    );
}
