//! The build's site: gateway, turn behind it, ground.

use super::finished::AtSite;
use super::missing::missing;
use super::{Rule, Seen};
use crate::finding::{AxleName, Drawn, Fact, Finding, Grade, NeededLength, Subject, Unstated, Verdict};
use crate::fit::whole::Access;
use crate::fit::whole::rated_load::Against;
use crate::item::ItemRef;
use crate::quantity::{Length, Mass};
use crate::{findings, words};

findings! {
    /// The machine goes through the gate; what is left on each side.
    GatePasses = "gate-passes", Site { left: Drawn, width: Drawn, gate: Drawn }
    /// It is so nearly as wide or as high as the gate that measuring decides.
    GateClose = "gate-close", Site { way: GateWay, size: Drawn, gate: Drawn, off: Drawn }
    /// It is too wide.
    GateNarrow = "gate-narrow", Site { beyond: Drawn, width: Drawn, gate: Drawn }
    /// It is too high, and how high it is with the roll-over bar folded if that is low enough.
    GateLow = "gate-low", Site { height: Drawn, gate: Drawn, beyond: Drawn, folded: Option<Drawn> }
    /// It turns into the path in one sweep.
    CornerClears = "corner-clears", Site { wanted: NeededLength, gate: Drawn, path: Drawn }
    /// It does not; no width of path may be enough.
    CornerTight = "corner-tight", Site { wanted: Option<NeededLength>, gate: Drawn, path: Drawn }
    /// The ground carries the heavier axle.
    GroundCarries = "ground-carries", Site { left: Mass, axle: AxleName, load: Mass, most: Mass }
    /// The heavier axle is so near to what the ground carries that what the masses may be off decides.
    GroundLoadNear = "ground-load-near", Site { axle: AxleName, load: Mass, most: Mass, off: Mass }
    /// It does not.
    GroundOverloaded = "ground-overloaded", Site { over: Mass, axle: AxleName, load: Mass, most: Mass }
    /// What getting in depends on is not stated.
    AccessUnknown = "access-unknown", Site { missing: Unstated, item: ItemRef }
}

words! {
    /// Which size of the gate.
    GateWay { Width = "width", Height = "height", Folded = "folded" }
}

/// The machine has to go through the site's gateway, turn behind it where the path does, and not sink its ground.
pub(super) struct IntoSite;

impl Rule for IntoSite {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = AtSite;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(access) = &seen.asks.0 else { return };
        missing(seen, |missing, item| AccessUnknown { missing, item }, Subject::Site, &access.missing, out);
        width(access, out);
        height(access, out);
        corner(access, out);
        ground(access, out);
    }
}

fn about<F: Fact>(fact: F, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Site, verdict, Grade::Drawing)
}

fn width(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(width), Some(left)) = (access.gate, access.width, access.gate_left()) else { return };
    let Some((against, off)) = access.through_gate() else { return };
    out.push(match against {
        Against::Over => about(GateNarrow { beyond: -left, width, gate }, Verdict::WontMount),
        Against::Near => about(GateClose { way: GateWay::Width, size: width, gate, off }, Verdict::CheckFirst),
        Against::Within => about(GatePasses { left: left / 2.0, width, gate }, Verdict::BoltsUp),
    });
}

fn height(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(height), Some(left)) = (access.gate_height, access.height, access.height_left()) else {
        return;
    };
    let Some((against, off)) = access.under_gate() else { return };
    if against == Against::Within {
        return;
    }
    let close = |way, size| about(GateClose { way, size, gate, off }, Verdict::CheckFirst);
    let low = |beyond, folded, verdict| about(GateLow { height, gate, beyond, folded }, verdict);
    out.push(match access.folded_under_gate() {
        // Nearly too high is folded as well as too high.
        Some((folded, Against::Within)) => low((-left).max(Length::ZERO), Some(folded), Verdict::BoltsUpWithWork),
        _ if against == Against::Near => close(GateWay::Height, height),
        Some((folded, _)) => close(GateWay::Folded, folded),
        None => low(-left, None, Verdict::WontMount),
    });
}

/// Where one sweep does not do, a few moves to and fro may: that has to be tried.
fn corner(access: &Access, out: &mut Vec<Finding>) {
    let (Some(gate), Some(path), Some(turns)) = (access.gate, access.path, access.turns()) else { return };
    // Whether a machine of unknown width passes is not known either, nor what it sweeps.
    if access.is_too_wide() {
        return;
    }
    out.push(match access.path_wanted.filter(|_| turns) {
        Some(wanted) => about(CornerClears { wanted, gate, path }, Verdict::BoltsUp),
        None => about(CornerTight { wanted: access.path_wanted, gate, path }, Verdict::CheckFirst),
    });
}

fn ground(access: &Access, out: &mut Vec<Finding>) {
    let carried = access.heavier_axle();
    let (Some((front, rear)), Some(load), Some(most), Some(left)) =
        (access.axle_loads, carried.load, carried.rated, carried.left())
    else {
        return;
    };
    let axle = if front > rear { AxleName::Front } else { AxleName::Rear };
    out.push(if carried.is_over() {
        about(GroundOverloaded { over: -left, axle, load, most }, Verdict::WontMount)
    } else if carried.is_near() {
        about(GroundLoadNear { axle, load, most, off: carried.off }, Verdict::CheckFirst)
    } else {
        about(GroundCarries { left, axle, load, most }, Verdict::BoltsUp)
    });
}
