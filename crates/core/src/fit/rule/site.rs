//! The build's site: gateway, turn behind it, ground.

use super::missing::missing;
use crate::finding::{Finding, Grade, Subject, Value, Verdict};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::whole::{Access, access_of};

/// The machine has to go through the site's gateway, turn behind it where the path does, and not sink its ground.
pub(super) fn rule(context: &Context, footprint: &Footprint, out: &mut Vec<Finding>) {
    if context.build.site.is_none() {
        return;
    }
    let Some(access) = access_of(context, footprint) else { return };
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
    let finding = if access.is_too_wide() {
        about("gate-narrow", Verdict::WontMount).with("beyond", Value::Length(-left))
    } else {
        about("gate-passes", Verdict::BoltsUp).with("left", Value::Length(left / 2.0))
    };
    out.push(finding.with("width", Value::Length(width)).with("gate", Value::Length(gate)));
}

fn height(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(height), Some(left)) = (access.gate_height, access.height, access.height_left()) else {
        return;
    };
    if !access.is_too_high() {
        return;
    }
    let folded = access.height_folded.filter(|folded| *folded <= gate);
    let verdict = if folded.is_some() { Verdict::BoltsUpWithWork } else { Verdict::WontMount };
    let mut finding = about("gate-low", verdict)
        .with("height", Value::Length(height))
        .with("gate", Value::Length(gate))
        .with("beyond", Value::Length(-left));
    if let Some(folded) = folded {
        finding = finding.with("folded", Value::Length(folded));
    }
    out.push(finding);
}

/// Where one sweep does not do, a few moves to and fro may: that has to be tried.
fn corner(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(path), Some(turns)) = (access.gate, access.path, access.turns()) else { return };
    // Whether a machine of unknown width passes is not known either, nor what it sweeps.
    if access.is_too_wide() {
        return;
    }
    let (code, verdict) =
        if turns { ("corner-clears", Verdict::BoltsUp) } else { ("corner-tight", Verdict::CheckFirst) };
    let mut finding = about(code, verdict);
    if let Some(wanted) = access.path_wanted {
        finding = finding.with("wanted", Value::Length(wanted));
    }
    out.push(finding.with("gate", Value::Length(gate)).with("path", Value::Length(path)));
}

fn ground(access: &Access, out: &mut Vec<Finding>) {
    let carried = access.heavier_axle();
    let (Some((front, rear)), Some(load), Some(most), Some(left)) =
        (access.axle_loads, carried.load, carried.rated, carried.left())
    else {
        return;
    };
    let axle = if front > rear { "front" } else { "rear" };
    let finding = if carried.is_over() {
        about("ground-overloaded", Verdict::WontMount).with("over", Value::Mass(-left))
    } else {
        about("ground-carries", Verdict::BoltsUp).with("left", Value::Mass(left))
    };
    out.push(
        finding
            .with("axle", Value::Label(axle.to_owned()))
            .with("load", Value::Mass(load))
            .with("most", Value::Mass(most)),
    );
}
